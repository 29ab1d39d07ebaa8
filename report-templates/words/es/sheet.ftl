# What a results sheet says: verdict, ruler, packages, what the result says and does not say.

## The verdict

# A package in the list of the sentence below.
near_limit_package = { $chance } en { $package } ({ $figure })

# Further packages in it, which are not named.
near_limit_more = { $packages ->
    [one] más de { $chance } en otro envase
   *[other] más de { $chance } en otros { $packages } envases
}

# Beside a verdict that rests on packages near the limit, under simple decisions: the chance that the true content is on the
# other side (JCGM 106:2012, 7.2), where it is more than 5 %. "assumed" knows only the scatter within the lab, so that the
# chance is a least one.
near_limit = Cerca del límite: la probabilidad de que el contenido real sea { $side ->
    [over] { side_over }
   *[within] { side_within }
} es de { $basis ->
    [lab] aproximadamente { $packages }, según la incertidumbre del laboratorio.
    [lab_k2] aproximadamente { $packages }, según la incertidumbre del laboratorio, tomada como k = 2.
   *[assumed] al menos { $packages } aproximadamente, solo por la dispersión que este programa supone dentro de un laboratorio.
}
