# What a results sheet says: verdict, ruler, packages, what the result says and does not say.

## The verdict

# A package in the list of the sentence below.
near_limit_package = { $chance } bei { $package } ({ $figure })

# Further packages in it, which are not named.
near_limit_more = { $packages ->
    [one] mehr als { $chance } bei einer weiteren
   *[other] mehr als { $chance } bei { $packages } weiteren
}

# Beside a verdict that rests on packages near the limit, under simple decisions: the chance that the true content is on the
# other side (JCGM 106:2012, 7.2), where it is more than 5 %. "assumed" knows only the scatter within the lab, so that the
# chance is a least one.
near_limit = Nahe am Grenzwert: Die Wahrscheinlichkeit, dass der wahre Gehalt { $side ->
    [over] { side_over }
   *[within] { side_within }
} liegt, beträgt { $basis ->
    [lab] nach der Messunsicherheit des Labors etwa { $packages }.
    [lab_k2] nach der Messunsicherheit des Labors (als k = 2 gelesen) etwa { $packages }.
   *[assumed] allein nach der Streuung, die dieses Programm innerhalb eines Labors annimmt, mindestens etwa { $packages }.
}
