# What a results sheet says: verdict, ruler, packages, what the result says and does not say.

## The verdict

# A package in the list of the sentence below.
near_limit_package = { $chance } for { $package } ({ $figure })

# Further packages in it, which are not named.
near_limit_more = { $packages ->
    [one] more than { $chance } for one more
   *[other] more than { $chance } for { $packages } more
}

# Beside a verdict that rests on packages near the limit, under simple decisions: the chance that the true content is on the
# other side (JCGM 106:2012, 7.2), where it is more than 5 %. "assumed" knows only the scatter within the lab, so that the
# chance is a least one.
near_limit = Close to the limit: the chance that the true content is { $side ->
    [over] { side_over }
   *[within] { side_within }
} is { $basis ->
    [lab] about { $packages }, by the lab’s uncertainty.
    [lab_k2] about { $packages }, by the lab’s uncertainty, taken as k = 2.
   *[assumed] at least about { $packages }, by the scatter that this programme assumes within a lab alone.
}
