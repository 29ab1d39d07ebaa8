# What stands in and beside the charts: axes, keys, and what is read aloud in their place.

## The ruler of a results sheet

# At the end of a package's row, in a place of about 25 letters: how its extractions agree (ISO 5725-6:1994, 5.2).
ruler_agree = Agree

# Likewise, where all are below what the test measures, or above: they may be equal and may be far apart.
ruler_no_sign = No sign they differ

# Likewise.
ruler_disagree = Disagree

# Likewise.
ruler_no_result = No result

# Likewise, where fewer are usable than the programme asks for.
ruler_incomplete = { $usable ->
    [0] No sound extraction
    [one] One extraction only
   *[other] { $usable } extractions only
}

# Under it, in smaller type, in a place of about 36 letters.
ruler_nothing_reported = nothing reported yet

# Likewise: there are rows, and they say that there is no result.
ruler_none_reported = the lab reported none

# Likewise.
ruler_reports_differ = two reports differ

# Likewise: a person set readings aside.
ruler_set_aside = { $usable ->
    [0] set aside
    [one] the other was set aside
   *[other] others were set aside
}

# Likewise: the lab says that it has none.
ruler_not_given = { $usable ->
    [0] the lab gave no result
    [one] the lab gave no result for the other
   *[other] the lab gave none for others
}

# Likewise: what the lab wrote cannot be read as a result.
ruler_unreadable = { $usable ->
    [0] what was reported reads as no result
    [one] the other reads as no result
   *[other] others read as no result
}

# Likewise.
ruler_second_missing = the second was not reported

# Likewise.
ruler_more_asked = more are asked for

# Likewise; $bound is the end of what the test measures.
ruler_beyond = { $extractions ->
    [2] { $side ->
        [below] both below { $bound }
       *[above] both above { $bound }
    }
   *[other] { $side ->
        [below] all below { $bound }
       *[above] all above { $bound }
    }
}

# Likewise. "least": one is a bound, so that they may be farther apart. "equal": likewise, and they may be equal.
ruler_apart = { $extractions ->
    [2] { $how ->
        [least] at least { $gap } apart, { $allowed } allowed
        [equal] may be equal, { $allowed } allowed
       *[exact] { $gap } apart, { $allowed } allowed
    }
   *[other] { $how ->
        [least] all { $extractions }: at least { $gap } apart, { $allowed } allowed
        [equal] all { $extractions }: may be equal, { $allowed } allowed
       *[exact] all { $extractions }: { $gap } apart, { $allowed } allowed
    }
}

# At the end of a row: the extractions that were made first, of a package that has more. "open": they are not compared.
ruler_first = { $outcome ->
    [agree] { $extractions ->
        [2] First pair agrees
       *[other] First { $extractions } agree
    }
    [disagree] { $extractions ->
        [2] First pair disagrees
       *[other] First { $extractions } disagree
    }
   *[open] First report
}

# Likewise: extractions that were made once more.
ruler_repeat = Repeat

# Likewise: reported once more, in the place of what was set aside.
ruler_again = Reported again

# Likewise: more than the programme asks for.
ruler_further = Further extractions

# Under it.
ruler_no_reason = no reason on record

# Likewise: who decided on a repeat, and when.
ruler_decided = by { $by }, { $day }

# Likewise.
ruler_set_aside_by = { $extractions ->
    [one] one set aside by { $by }, { $day }
   *[other] { $extractions } set aside by { $by }, { $day }
}

# Likewise: the lab withdrew an earlier report, and this one took its place.
ruler_replaces = from a report that replaces another

# Beside one mark that stands for several alike.
ruler_times = { $marks } × { $figure }

# Over the cell at the left.
ruler_below = below { $bound }

# Under a package's code.
ruler_lot = lot { $lot }

# Right of the scale.
ruler_unit = { $unit ->
    [mg] mg/kg gluten (ppm)
   *[ppm] ppm gluten (mg per kg)
}

# Under it.
ruler_log = log scale: equal steps multiply

# Two values beside their marks, where both stand on one side of them.
ruler_both = { $first }, { $last }

# Under the ruler.
ruler_key = Each mark is one extraction. Filled: { over_the_limit }. Open: { within_the_limit }. Arrow: beyond what the test measures.

# Likewise, each only where the ruler has such marks. "result": the mean of a package's extractions; "range": where they leave one.
ruler_key_more = { $what ->
    [result] Upright stroke: the package’s result.
    [range] Line with ends: the package’s result, a range.
    [aside] Crossed, grey: set aside.
    [conflict] Diamond, grey: the lab’s reports differ, not used.
    [many] Where marks would cover one another, one stands for all of them.
   *[disagree] Dashed line: they disagree.
}

# In keys: the band round the limit. "simple": half of what two extractions of a package at the limit may differ by, on either side.
chart_close_means = { $decision ->
    [guarded] { $from } to { $to }: too close to the limit to call.
   *[simple] { $from } to { $to }: close to the limit; a second test could fall on its other side.
}

# The same in a sentence of its own, beside or below a drawing.
chart_close = Hatched, { chart_close_means }

# In the key of the plots.
ruler_mark_hatched = Hatched

# Read aloud in place of the ruler.
ruler_alt = Gluten ruler, log scale from { $scale } { $unit } with { the_line } at { $limit }. { $rows }

# Likewise, a package.
ruler_row = Package { $package }: { $figures }. { $head }: { $detail }.

# Likewise, where no more is said.
ruler_row_bare = Package { $package }: { $figures }. { $head }.

# Likewise, where the lab gave no reading.
ruler_row_empty = Package { $package }: no reading. { $head }: { $detail }.

# Likewise: a reading that is a bound.
ruler_spoken = { $side ->
    [below] below { $bound }
   *[above] above { $bound }
}

## The marks of the plots, explained once

ruler_mark_open_arrow = Open arrow

ruler_mark_open_circle = Open circle

ruler_mark_filled_circle = Filled circle

ruler_mark_arrow = Arrow on the scale, to the left

ruler_mark_arrow_means = below the figure at its tip

ruler_mark_arrow_right = Arrow on the scale, to the right

ruler_mark_arrow_right_means = above the figure at its tip

ruler_mark_dashed = Dashed circle

ruler_mark_dashed_means = undecided, or extractions disagree

ruler_mark_line = Upright line

# $line is "the limit" or "the limit of detection", $limit its figure.
ruler_mark_line_means = { $line }, { $limit }

# Read aloud in place of them.
ruler_marks_alt = The marks of the plots. { $marks }

# Likewise, one of them.
ruler_mark_alt = { $mark }: { $meaning }.

## Words of several charts

# Below the name of a food group, and at the end of a line of the chart of chances.
chart_packages = { $packages ->
    [one] { $packages } package
   *[other] { $packages } packages
}

# Second line at the foot of a plot, before its scale.
chart_scale = { $unit }, log scale

# Head of a column of packages that are neither over the limit nor within it; also in the table of bands.
chart_undecided = undecided

# In keys.
chart_no_verdict = no verdict

# In the place of a food group's name, where the register has none.
chart_no_group = No category

# In the place of a food group's name: the small ones together, where there are too many for a chart.
chart_other_groups = Other food groups

# A list of package codes that is too long to be read aloud.
chart_codes_more = { $codes } and { $more } more

## Bars by band

# Name of a row, in the chart and in the table above it.
chart_bands_kind = { $kind ->
    [extractions] Extractions
    [packages] Packages
   *[products] Products
}

# Below the name of a row.
chart_bands_all = { $all } in all

# Alternative text; a sentence for each row follows.
chart_bands = Bars of extractions, packages and products by band.

# Alternative text of one row. The bands are "below 5 ppm", "5 to below 20 ppm", "at or above 20 ppm" and the like.
chart_bands_row = { $kind ->
    [extractions] { $all ->
        [one] { $all } extraction
       *[other] { $all } extractions
    }
    [packages] { $all ->
        [one] { $all } package
       *[other] { $all } packages
    }
   *[products] { $all ->
        [one] { $all } product
       *[other] { $all } products
    }
}: { $below } { $below_band }; { $measured } { $measured_band }; { $over } { $over_band }; { $undecided } undecided.

## All products at once

# Alternative text of the cover's squares, or of the bar in their place.
chart_squares = { $products ->
    [one] { $products } product
   *[other] { $products } products
}: { $over } { over_the_limit }, { $undecided } without a verdict, { $measured } { within_the_limit } with gluten measured, { $below } { within_the_limit } with too little to measure.

## Every package on the scale

# Beside the flag of the limit.
chart_strip_left = ← { limit_within_short }

# Likewise, on its other side.
chart_strip_right = { limit_over_short } →

# First line at the foot of the plot; the unit follows on the second.
chart_strip_foot = package result,

# Alternative text; a sentence for each food group follows. $line is "the limit", "the limit of detection" or the like.
chart_strip = Strip plot of package results by food group, log scale in { $unit } with { $line } at { $limit }.

# Alternative text of one food group.
chart_strip_group = { $group }: { $packages ->
    [one] { $packages } package
   *[other] { $packages } packages
}; { $below } { $below_band }; { $measured } { $measured_band }; { $over } { over_the_limit }; { $undecided } undecided{ $measured_any ->
    [yes] ; the highest measured { $highest }
   *[no] { "" }
}.

## A few products, a row each

# On the scale, before the limit, in the row of a product with such packages.
chart_products_undecided = { $packages ->
    [one] { $packages } package: undecided
   *[other] { $packages } packages: undecided
}

# Head of the last column.
chart_products_verdict = verdict

# First line at the foot of the plot; the unit follows on the second.
chart_products_foot = one mark for each package,

# Alternative text; a sentence for each product follows.
chart_products = Package results of { $products ->
    [one] { $products } product
   *[other] { $products } products
} in { $unit }, log scale with { $line } at { $limit }.

# Alternative text of one product; its results are parted by commas. The limit is that of the product's own claim.
chart_products_row = { $product }: { $results }; { $verdict ->
    [over] verdict: { side_over }
    [within] verdict: { side_within }
   *[none] no verdict
}.

# Taken into the sentence above.
chart_brand_and_product = { $brand }, { $product }

## Shares of products over the limit

# Head of the column of names.
chart_shares_by = { $by ->
    [category] Food group
    [certification] Certification
   *[oats] Oats
}

# Above the scale.
chart_shares_axis = share of products { over_the_limit }

# Head of the column "3 of 24".
chart_shares_products = products

# Head of the column "13 % (3 to 32)". Exact two-sided interval (Clopper and Pearson, Biometrika 26:404, 1934).
chart_shares_interval = share, 95 % interval

# Name of the last row.
chart_shares_all = All products

# In the place of an interval.
chart_shares_none = no product with a verdict

# Likewise, where it would say next to nothing (below 10 products).
chart_shares_few = too few for a share

# In the column of counts.
chart_share_count = { $k } of { $n }

# In the column of intervals, in per cent.
chart_share_interval = { $share } % ({ $lower } to { $upper })

# Alternative text; a sentence for each group follows.
chart_shares = Share of products { over_the_limit } with exact two-sided 95 % intervals, by { $by ->
    [category] food group
    [certification] certification
   *[oats] oats
}.

# Alternative text of one group: "Breads: 1 of 4, 25 % (1 to 81)."
chart_shares_row = { $group }: { $count }, { $interval }.

# Likewise, where no product of the group has a verdict.
chart_shares_row_none = { $group }: no product with a verdict.

# Likewise, a group of few products.
chart_shares_row_few = { $group }: { $count }, too few for a share.

# Name of a group: whether the register names a certifier.
chart_certification = { $kind ->
    [certified] Certified
   *[not] Not certified
}

# Name of a group, by the register's word on oats. "purity": kept apart from sowing on, with records (purity protocol).
chart_oats = { $kind ->
    [none] No oats
    [certified] Certified oats
    [purity] Purity-protocol oats
   *[unverified] Unverified oats
}

## Products by quarter

# Name of a row.
chart_quarter = { $quarter ->
    [first] Jan to Mar
    [second] Apr to Jun
    [third] Jul to Sep
   *[fourth] Oct to Dec
} { $year }

# Where a quarter begins on the range control chart.
chart_quarter_short = Q{ $quarter } { $year }

# Behind the squares of a quarter.
chart_quarter_none = no product

# Likewise, where there are products: those over the limit and those without a verdict.
chart_quarter_outcome = { $over ->
    [0] none { limit_over_short }
   *[other] { $over } { limit_over_short }
}{ $undecided ->
    [0] { "" }
   *[other] , { $undecided } no verdict
}

# In the key; "no verdict" stands beside it.
chart_quarters_over = { limit_over_short }

# Likewise.
chart_quarters_measured = { limit_within_short }, gluten measured

# Likewise.
chart_quarters_below = { limit_within_short }, none measured

# Alternative text; a sentence for each quarter follows.
chart_quarters = Products by quarter of their last test.

# Alternative text of one quarter.
chart_quarters_row = { $products ->
    [0] { $quarter }: no product.
    [one] { $quarter }: { $products } product; { $over } { over_the_limit }, { $undecided } without a verdict, { $measured } { within_the_limit } with gluten measured, { $below } with none measured.
   *[other] { $quarter }: { $products } products; { $over } { over_the_limit }, { $undecided } without a verdict, { $measured } { within_the_limit } with gluten measured, { $below } with none measured.
}

## Two extractions of a package against each other

# Above the plot of differences (Bland and Altman, Lancet 1:307, 1986).
chart_agreement_up = difference of the two extractions, % of their mean

# Below it.
chart_agreement_along = mean of the two extractions, { $unit }, log scale

# At the end of either edge. Room for about ten letters.
chart_agreement_allowed = allowed

# Alternative text. $codes: the packages whose two first extractions disagree.
chart_agreement = Difference of the two extractions in per cent of their mean, against the mean, for { $packages ->
    [one] { $packages } package
   *[other] { $packages } packages
} with both measured. { $outside ->
    [0] Every pair lies within the allowed difference.
    [one] Outside the allowed difference lies 1 pair: { $codes }.
   *[other] Outside the allowed difference lie { $outside } pairs: { $codes }.
}

## Range control chart

# Above the control chart (ISO 7870-2:2023).
chart_range_up = range of each pair, % of its mean

# Below it.
chart_range_along = pairs in the order of their tests

# At its end. Room for about twelve letters.
chart_range_control = control { $percent } %

# At its end.
chart_range_mean = mean { $percent } %

# Alternative text. $codes: the packages whose pairs lie above the control line.
chart_range = Range control chart of { $pairs ->
    [one] { $pairs } pair
   *[other] { $pairs } pairs
} in the order of their tests. Mean range { $centre } % of the pair’s mean, control limit { $upper } %. { $beyond ->
    [0] No pair crosses the control limit.
    [one] Beyond the control limit lies 1 pair: { $codes }.
   *[other] Beyond the control limit lie { $beyond } pairs: { $codes }.
}
