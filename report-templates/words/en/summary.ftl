# The programme summary.

## What the document is

# In the header, and among the PDF's keywords.
summary_name = Programme summary

# The PDF's description, which catalogues show.
summary_of = Programme summary of { $programme }.

# Keyword of the PDF.
summary_keyword_gluten = gluten

# Keyword of the PDF.
summary_keyword_results = test results

# On the cover and in the header of a summary that holds what may not be published yet.
summary_proof = Proof, not for publication

# At the foot of each page.
summary_mistakes = Found a mistake? { $address }

# At the foot of the cover.
summary_made_on = Made on { $day }.

# Before words that are printed as they stand on a package, or as a maker wrote them.
summary_quote_open = “

# Behind them.
summary_quote_close = ”

## Cover

# Title of the cover. $claim: as all packages bear it, in small letters. A food that was tested in two rounds is one food.
summary_title = { $foods ->
    [0] No food has been tested yet
    [one] What we found in { $foods } food { $claimed ->
        [yes] labelled { $claim }
       *[no] with a claim about gluten
    }
   *[other] What we found in { $foods } foods { $claimed ->
        [yes] labelled { $claim }
       *[no] with a claim about gluten
    }
}

# Under the title: from the first to the last day of testing.
summary_subtitle = Summary of results, tested { $days }

# Likewise, where no day of testing is known.
summary_subtitle_undated = Summary of results

# In the block of a verdict.
summary_count = { $products ->
    [one] { $of_them } of { $products } product
   *[other] { $of_them } of { $products } products
}

# Beside the block of a verdict.
summary_head = { $n ->
    [0] No products
    [one] One product
   *[other] { spelt_first } products
}

# In the block of products without a verdict, and among the words that are explained.
summary_no_verdict = No verdict

# Beside the block of products within the limit. "nobody": there is none. "none", "some", "all": in how many of them gluten
# was measured; in $below of them no package had enough.
summary_within = { $measured ->
    [nobody] No product had every package { within_the_limit }.
    [none] Every package tested { within_the_limit }. None had enough gluten to measure.
    [some] Every package tested { within_the_limit }. In { $below } of these products no package had enough gluten to measure.
   *[all] Every package tested { within_the_limit }.
}

# Beside the block of products over the limit. $packages, where there is no such product: "none": every package has a
# result, and none is over; "open": some package is undecided; "some": a package is over in a product that got no verdict.
summary_over = { $products ->
    [some] At least one package tested { over_the_limit }. This summary lists them all.
   *[none] { $packages ->
        [some] No product got this verdict. Packages that tested { over_the_limit } belong to products without a verdict.
        [open] No package was shown to be { over_the_limit }.
       *[none] No package tested { over_the_limit }.
    }
}

# Beside the block of products without a verdict. "claims": products of several claims, each with a limit of its own.
summary_none = { $products ->
    [some] { $shown ->
        [detection] The results do not show whether every package has detectable gluten.
        [claims] The results do not show on which side of the limit of its claim every package is.
       *[limit] The results do not show on which side of { $limit } every package is.
    } This summary gives the reasons.
   *[none] Every product has a verdict.
}

# Below the squares of the cover, or the bar that takes their place where there are many products. $over_band: "at or above
# 20 ppm".
summary_squares = { $form ->
    [squares] One square for each product. Filled: { $over_band } ({ $over }). Dashed: no verdict ({ $undecided }). With a dot: { limit_within_short }, gluten measured in at least one package ({ $measured }). Empty: too little to measure in every package ({ $below }).
   *[bar] The bar holds every product. Black: { $over_band } ({ $over }). Dashed: no verdict ({ $undecided }). Grey: { limit_within_short }, gluten measured in at least one package ({ $measured }). Empty: too little to measure in every package ({ $below }).
}

# Below the squares, where a food was tested in more than one round. $products and $foods_spelt are in words up to nine.
summary_rounds = { $foods ->
    [one] The { $products } products are one food: a food that is tested in a further round counts again.
   *[other] The { $products } products are { $foods_spelt } foods: a food that is tested in a further round counts again.
}

# Below the squares: products of which the lab has reported nothing yet; there is at least one.
summary_with_lab = { $n ->
    [0] { "" }
    [one] One more product is with the lab and counted nowhere here.
   *[other] { spelt_first } more products are with the lab and counted nowhere here.
}

# On the cover: products whose list of ingredients names a gluten source that the rule does not allow; there is at least
# one.
summary_labels_on_cover = { $n ->
    [0] { "" }
    [one] Whatever the tests found, the label of one product names a gluten source that the rule does not allow in a food with this claim.
   *[other] Whatever the tests found, the labels of { spelt } products name a gluten source that the rule does not allow in a food with this claim.
}

# At the foot of the cover. The counts are those of programme.toml; from two on they are given in words, too.
summary_how = { $packages ->
    [one] This programme tests one package of each product
   *[other] This programme tests { $packages_spelt } packages of each product
}, and { $extractions ->
    [one] one extraction of each package.
   *[other] { $extractions_spelt } extractions of each package, measured on their own.
} Every figure can be followed back to the lab’s file.

# Head of the list of chapters on the cover.
summary_contents = Contents

# On the cover of a proof: further published sheets that do not stand any more.
summary_revised_more = And { $sheets } more, in products.csv.

## The results in one table

# Title of the chapter.
summary_bands_title = The results in one table

# First sentence of the chapter, where nothing has a result.
summary_bands_empty = No package counts yet: none has been sent to the lab, and no lab file has a result.

# First sentence of the chapter: how many packages had too little gluten to measure.
summary_bands_unmeasured = { $n ->
    [0] No package had too little gluten to measure.
    [one] One of { $packages } had too little gluten to measure.
   *[other] In { spelt } of { $packages } there was too little gluten to measure.
}

# After the number of packages with too little gluten to measure, here, above the strip and in the newsletter, where a
# sandwich assay was used for fermented or hydrolysed foods, in which proteins in pieces escape it (J AOAC 98:1346, 2015).
summary_perhaps_missed = { $n ->
    [one] One of these is of a fermented or hydrolysed food, in which the test can miss gluten.
   *[other] Of these, { $n } are of fermented or hydrolysed foods, in which the test can miss gluten.
}

# Taken into the sentence above, and the one on what would have to be tested.
summary_packages_spelt = { $n ->
    [0] no packages
    [one] one package
   *[other] { spelt } packages
}

# Second sentence. "open": some package is undecided, so that none can be said to be below.
summary_bands_over = { $n ->
    [0] { $packages ->
        [open] No product had a package that was shown to be { over_the_limit }.
       *[none] No product had a package { over_the_limit }.
    }
    [one] One product had at least one package { over_the_limit }.
   *[other] { spelt_first } products had at least one package { over_the_limit }.
}

# Third sentence, where packages had too little to measure and yet may be on either side: the assay measures from more than
# the limit on.
summary_bands_loose = { $shown ->
    [detection] Too little to measure does not show whether a package has detectable gluten; this leaves { $packages } undecided.
    [claims] Too little to measure does not show on which side of the limit of its claim a package is; this leaves { $packages } undecided.
   *[limit] Too little to measure does not show on which side of { $limit } a package is; this leaves { $packages } undecided.
}

# Last sentence; there is at least one.
summary_bands_undecided = { $n ->
    [0] { "" }
    [one] One product got no verdict.
   *[other] { spelt_first } products got no verdict.
}

# Head of the first column.
summary_bands_counted = Counted

# Head of the last column.
summary_bands_all = in all

# Below the bars. The bands: "below 5 ppm", "5 to below 20 ppm", "at or above 20 ppm".
summary_bands_note = White: { $below }. Grey: { $measured }. Black: { $over }. Dashed: no result, or one that does not decide. A product counts once for each round of testing: by its highest package, or as undecided where it has no verdict.

# Head of what the numbers say.
summary_says_title = What these numbers say

# Left of what they do not say. $left_out: rounds that a later one of the same product supersedes. The interval is exact
# (Clopper and Pearson, 1934), and holds only for a random pick.
summary_says = { $packages ->
    [one] They describe the { $packages } package that we bought.
   *[other] They describe the { $packages } packages that we bought.
} { $verdict ->
    [some] Of the { $products ->
        [one] { $products } product
       *[other] { $products } products
    } with a verdict{ $left_out ->
        [0] { "" }
        [one] , each taken once by its latest round (one earlier round is left out, since rounds of one product are not independent)
       *[other] , each taken once by its latest round ({ $left_out_spelt } earlier rounds are left out, since rounds of one product are not independent)
    }, { $over } had a package { over_the_limit }. If we had picked products at random, the share among all such products would lie between { $lower } and { $upper } % (95 % confidence).
   *[none] No product has a verdict yet.
}

# Head of what they do not say.
summary_says_not_title = What they do not say

# $packages: how many of each product the programme tests; $upper: the one-sided 95 % bound for none of them over the limit,
# 1 - 0.05^(1/n).
summary_says_not = They do not say how common gluten is in foods that we did not buy, and a few packages can miss a problem. With 0 of { $packages } { over_the_limit }, up to { $upper } % of all packages of a product could still be (95 % confidence, if the packages were a random pick).

# Head of the key to the marks of all plots.
summary_marks_title = The marks

# Head of the glossary.
summary_words_title = Words we use

# Head of its first column.
summary_words_word = Word

# Head of its second column.
summary_words_meaning = What we mean by it

# Meaning of "ppm" or "mg/kg".
summary_word_unit = { $unit ->
    [ppm] Parts per million: milligrams of gluten in a kilogram of food.
   *[mg] Milligrams of gluten in a kilogram of food, the same as parts per million (ppm).
}

# Meaning of "below 5 ppm".
summary_word_below = Too little to put a number on. It does not mean zero.

# A word that is explained.
summary_word_extraction = Extraction

# Its meaning.
summary_word_extraction_meaning = One portion of a package, ground, extracted and measured on its own.

# Meaning of "At or above 20 ppm".
summary_word_over = The verdict for a product when at least one package tests { over_the_limit }.

# Meaning of "Below 20 ppm".
summary_word_within = The verdict for a product when every package tests { within_the_limit }.

# Meaning of "No verdict".
summary_word_none = { $shown ->
    [detection] The results do not show whether every package has detectable gluten
    [claims] The results do not show on which side of the limit of its claim every package is
   *[limit] The results do not show on which side of { $limit } every package is
}: one has no sound result or lies too near, packages are missing, no test decides for this food, or something has to be settled first.

## Where each package landed

# Title of the chapter.
summary_strip_title = Where each package landed

# Head of the chapter with a row for each product.
summary_products_title = Each product on the scale

# Below it.
summary_products_lede = Each row is a product, in the order of the register’s numbers, with a mark for each package. All rows have one scale, so that products can be held against one another.

# In the place of the sentences below.
summary_strip_empty = There is no package to show yet.

# First sentence above the plot.
summary_strip_packages = { $packages ->
    [one] The { $packages } package is shown where its result lies.
   *[other] Each of the { $packages } packages is shown where its result lies.
}

# Second sentence.
summary_strip_unmeasured = { $n ->
    [0] None of them had too little gluten to measure.
    [one] One of them had too little gluten to measure.
   *[other] In { spelt } of them there was too little gluten to measure.
}

# Last sentence. $n of $groups food groups have one. "open": some package is undecided.
summary_strip_over = { $n ->
    [0] { $packages ->
        [open] None is shown to be { over_the_limit }.
       *[none] None is { over_the_limit }.
    }
   *[other] { $groups ->
        [one] Those { over_the_limit } come from the one food group.
       *[other] Those { over_the_limit } come from { spelt } of { $groups_spelt } food groups.
    }
}

# Below the plot. "yes": some rows have columns in the place of marks that would touch.
summary_strip_note = Arrows at the left: { $below }, with their number in front. Arrow on the scale: below the figure at its tip, or above it. Open circle: { $measured }. Filled: { $over }. Dashed, at the right: the results do not decide. Marks are moved up or down only so that they do not touch.{ $crowded ->
    [yes] { " " }Where they still would, columns of equal steps take their place, with the highest number on top.
   *[no] { "" }
}

# Head of the part on products whose packages lie on both sides of the limit.
summary_uneven_title = Uneven products

# In $n of the $over products over the limit. There is at least one.
summary_uneven = { $over ->
    [one] In the one product { over_the_limit }
   *[other] In { $n ->
        [one] one
       *[other] { spelt }
    } of the { $over_spelt } products { over_the_limit }
}, some packages were { within_the_limit } and some were not. That is why more than one package is bought, and why one package alone cannot speak for a product.

# Likewise, where it is all of two products or more.
summary_uneven_all = In all { spelt } products { over_the_limit }, some packages were { within_the_limit } and some were not. That is why more than one package is bought, and why one package alone cannot speak for a product.

## By food group, and by quarter

# Title of the chapter.
summary_groups_title = By food group, and by quarter

# First sentence, where the groups are too small for a test.
summary_groups_small = The groups are small. Their intervals are wide, and a difference between two shares can come about by chance.

# First sentence, where no group differs from the others (Fisher's exact test, adjusted by Holm, Scand J Stat 6:65, 1979).
summary_groups_alike = No food group differs from all others by more than chance can bring about, once it is counted that we looked at each of them.

# First sentence, where some do. $groups: their names as a list.
summary_groups_apart = Different from all others by more than chance would bring about: { $groups } (Fisher’s exact test, adjusted by Holm).

# In the place of the charts.
summary_groups_none = No product has a verdict yet.

# Head of a chart of shares.
summary_shares_title = { $by ->
    [category] Share by food group
    [certification] Share by certification
   *[oats] Share by oats
}

# Below them.
summary_shares_note = Dot: share found. Line: exact two-sided 95 % interval (Clopper-Pearson). Open dot: no product { over_the_limit }. Each product once, by its latest round with a verdict. Products without a verdict are left out. The intervals hold only if products were picked at random. The order has no meaning.

# Head of the table of means.
summary_means_title = Mean package result by food group

# Heads of its columns, from here on.
summary_means_group = Packages of

# Likewise.
summary_means_packages = Packages

# Likewise.
summary_means_censored = Too little to measure

# Likewise.
summary_means_mean = Mean, { $unit }

# Likewise.
summary_means_ranks = By ranks

# Likewise.
summary_means_lognormal = Lognormal

# Name of the first row.
summary_means_all = All

# In the column of means.
summary_means_between = { $lower } to { $upper }

# In the last column.
summary_means_fit = { $mean } (median { $median })

# Below the table. Robust regression on order statistics and maximum likelihood for left-censored data: Helsel, Statistics
# for Censored Environmental Data, 2012.
summary_means_note = Of packages whose extractions agree, in every round. The mean lies between the two figures: the first takes 0 for each package with too little to measure, the second the smallest amount that could be measured. By ranks, lognormal: estimates (robust regression on order statistics; censored lognormal maximum likelihood) only where there are enough packages. A package above what the test measures is left out, so that the mean of its group is higher than that. No claim is held against a mean: each package bears it.

# Head of the chart of quarters.
summary_quarters_title = Results by quarter

# Below the chart.
summary_quarters_note = Each product stands in the quarter in which its last package was tested, once for each of its rounds; the trend takes it once. The order inside a row has no meaning.

# Head of why there is no ranking.
summary_ranking_title = Why there is no ranking

# Below it.
summary_ranking = A few products more or less would reorder the groups. No brand is ranked, since too few of its packages are tested to tell brands apart.

# Head of what the quarters say taken together.
summary_trend_title = Is there a trend?

# Where there are results from fewer than two quarters.
summary_trend_short = With results from fewer than two quarters there is no trend to look for.

# Where there are too few products in the quarters.
summary_trend_thin = There are too few products in each quarter to look for a trend.

# Where there are enough (Cochran, Biometrics 10:417, 1954; Armitage, Biometrics 11:375, 1955). $p: "= 0.32" or "< 0.001".
summary_trend = { $found ->
    [grew] Over { $quarters } quarters the share grew: more than chance would often bring about (Cochran-Armitage test, p { $p }).
    [fell] Over { $quarters } quarters the share fell: more than chance would often bring about (Cochran-Armitage test, p { $p }).
   *[none] Over { $quarters } quarters the share shows no trend that stands out from chance (Cochran-Armitage test, p { $p }).
}

# Head of the table of packages that would say more.
summary_needed_title = What it would take to say more

# Above the table. Exact one-sided 95 % bound for none of n: 1 - 0.05^(1/n).
summary_needed = Of each product we test { summary_packages_spelt }. { $n ->
    [one] Where it is not { over_the_limit }, and only if it was a random pick,
   *[other] Where none of them is { over_the_limit }, and only if they were a random pick,
} that shows with 95 % confidence that fewer than { $shows } % of all its packages are. To show that it is still fewer, more packages would have to be picked at random and tested, and none of them be { over_the_limit }:

# Head of its first column; the shares follow.
summary_needed_share = Fewer than

# Name of its row.
summary_needed_packages = Packages to test

## How well the extractions agree

# Title of the chapter.
summary_pairs_title = How well the extractions agree

# First sentence, where no package has results.
summary_pairs_empty = No package has results yet.

# First sentences of the chapter. Two extractions that are both too small to measure, or both too large, cannot disagree:
# all that can be said is that nothing speaks against it.
summary_pairs = The extractions of one package should give nearly the same figure. Of { $packages ->
    [one] { $packages } package
   *[other] { $packages } packages
} with results, nothing speaks against that in { $agree }, and { $disagree } disagreed{ $incomplete ->
    [0] { "" }
   *[other] ; { $incomplete } had too few usable extractions
}.

# In the place of the charts.
summary_pairs_nothing = No package has two extractions that could both be measured, so there is nothing to plot.

# Head of the plot of differences.
summary_agreement_title = Difference against mean

# Below it.
summary_agreement_note = { $pairs ->
    [one] The one pair
   *[other] The { $pairs } pairs
} with both extractions measured. Shaded: the difference that is allowed between two, as the part on methods states it. Dashed circle: the pair disagrees; where the lab repeated the test, the package was decided on all its extractions. Marks that would hide one another are drawn once.

# Head of the control chart.
summary_range_title = Range control chart

# Below it. $n pairs crossed the control line (ISO 7870-2:2023: 3.267 mean ranges); $stood: how many of them are still
# within what two readings may differ by; $apart: how many are not.
summary_range_note = The range is the larger figure less the smaller, in per cent of their mean. The control line is 3.267 times the mean range of the agreeing pairs. { $n ->
    [0] No pair crossed it.
    [one] { $stood ->
        [none] One pair crossed it; it disagrees.
       *[all] One pair crossed it; its difference is still within what is allowed between two.
    }
   *[other] { $stood ->
        [none] { spelt_first } pairs crossed it; all of them disagree.
        [all] { spelt_first } pairs crossed it; all of them are still within what is allowed between two (larger circles).
        [one] { spelt_first } pairs crossed it; one of them is still within what is allowed between two (larger circle), { $apart ->
            [one] one disagrees
           *[other] { $apart_spelt } disagree
        }.
       *[some] { spelt_first } pairs crossed it; { $stood_spelt } of them are still within what is allowed between two (larger circles), { $apart ->
            [one] one disagrees
           *[other] { $apart_spelt } disagree
        }.
    }
}

# Head of the table of repeatability.
summary_repeatability_title = Repeatability from these pairs

# Heads of its columns, from here on.
summary_repeatability_pairs = Pairs

# Likewise. Room for one word.
summary_repeatability_agreeing = Agreeing

# Likewise.
summary_repeatability_flagged = Flagged, left out

# Likewise.
summary_repeatability_size = Relative standard deviation of one extraction (95 % interval)

# Likewise.
summary_repeatability_median = By the median of all pairs

# Names of its rows, from here on; a lab's name stands as it is.
summary_pairs_all = All

# Likewise: pairs whose mean is less than the limit.
summary_pairs_below = Mean below { $limit }

# Likewise: pairs whose mean is the limit or more.
summary_pairs_from = Mean at or above { $limit }

# In the column of sizes, in per cent; from the chi-squared distribution.
summary_repeatability = { $size } % ({ $lower } to { $upper })

# Below the table. $n: how many packages of each product are tested; $chance: how often sound ones are flagged (ISO
# 5725-6:1994, 4.2: 95 % of pairs are within the allowed difference).
summary_flagged = Pairs that disagree are flagged and left out: a crumb in one portion is not the assay’s scatter. That makes the figures a little small; the median, of all pairs, is hardly moved by a few wide ones. { $n ->
    [one] A sound package is found to disagree in about { $chance } % of all cases, by chance alone.
   *[other] At least one of { spelt } sound packages is found to disagree in about { $chance } % of all cases, by chance alone.
}

# Below it. "fits": no cause to change it; "below": the interval lies below it, but not by enough; "smaller" and "larger":
# what is found differs, and $proposal is put forward; $setting is it as programme.toml has it, with a point.
summary_assumption = Pairs are held against an assumed repeatability of { $assumed } %. { $finding ->
    [below] The interval lies below it, but by no more than leaving out flagged pairs can bring about, or the median of all pairs is no smaller: no cause to change it.
    [smaller] They scatter less than that: differences that this lab hardly ever has are allowed. We propose { $proposal } % (relative_repeatability = { $setting } in programme.toml) from the next round on; results that were decided before stay as they are.
    [larger] They scatter more than that: more sound pairs are flagged than is said here, or the samples are uneven. We propose { $proposal } % (relative_repeatability = { $setting } in programme.toml) from the next round on; results that were decided before stay as they are.
   *[fits] The pairs themselves give no cause to change it.
}

# Below it (Horwitz and others, J AOAC 63:1344, 1980; Thompson, Analyst 125:385, 2000).
summary_horwitz = For comparison: chemical methods scatter by about { $between } % between laboratories at the limit (Horwitz function). The scatter here, within a laboratory, is { $ratio } times that; up to 1.3 times is usual for them, and more for gluten assays.

# Below it, a sentence a lab. $p: "= 0.32" or "< 0.001".
summary_drift = { $lab }, flagged pairs left out: { $early } % in the earlier half, { $late } % in the later half; { $apart ->
    [yes] more apart than chance would often bring about
   *[no] no more apart than chance brings about
} (F test, p { $p }).

# Head of the table of pairs above the control line or farther apart than is allowed.
summary_flagged_title = Pairs beyond a limit

# Heads of its columns, from here on.
summary_flagged_package = Package

# Likewise.
summary_flagged_mean = Mean

# Likewise.
summary_flagged_range = Range

# Likewise.
summary_flagged_allowed = Allowed

# Likewise.
summary_flagged_became = The pair is

# In the last column, below its head. $all: where the lab repeated the test, whether all $n extractions agree.
summary_became = { $pair ->
    [agrees] within what is allowed
   *[apart] disagrees
}{ $all ->
    [agree] ; all { spelt } agree
    [disagree] ; the { spelt } together disagree
   *[none] { "" }
}

## Lists of products

# Title of the chapter on products over the limit, and on those without a verdict.
summary_over_title = Products { over_the_limit }

# In the place of the list.
summary_over_empty = No product is shown to be { over_the_limit }.

# Above the list.
summary_over_lede = Each maker is to be told before publication, and asked to answer; what was issued before its time says so. Replies are printed as they were written.

# Heads of the columns of lists, from here on.
summary_list_number = Number

# Likewise.
summary_list_product = Brand and product

# Likewise.
summary_list_results = Package results, { $unit }

# Likewise: the day of the notice.
summary_list_told = Told

# Likewise: by when it asks for an answer.
summary_list_due = Reply due

# Likewise: the day of the answer.
summary_list_replied = Replied

# Likewise.
summary_list_why = Why

# Head of the second list.
summary_none_title = Products without a verdict

# In the place of the list.
summary_none_empty = Every product has a verdict.

## What the labels say

# Title of the chapter.
summary_labels_title = What the labels say

# First sentences of the chapter.
summary_labels_lede = Every ingredient statement on record is read beside the test, where it is in a language that we can read. A finding here is a question to the maker. It is not a test result.

# Heads of the columns, from here on.
summary_labels_finding = Finding

# Likewise.
summary_labels_example = Example, as printed

# Likewise.
summary_labels_products = Products

# Likewise. "claims": each product's claim has a limit of its own.
summary_labels_over = { $shown ->
    [claims] of these over the limit of their claim
   *[limit] of these { limit_over }
}

# Likewise.
summary_labels_printed = As printed

# Likewise.
summary_labels_verdict = Test verdict

# Head of the list of products with a finding.
summary_labels_ask = Products with something to ask about

# In both tables. "source": an ingredient that the rule does not allow; "no_list": the register has no list of ingredients;
# "precaution": words such as "may contain", whatever else is found.
summary_finding = { $kind ->
    [source] A gluten source in the ingredients
    [allowed] A gluten source that the claim rule does not forbid
    [oats] Oats, with no word on how they are kept apart
    [unclear] A term of unclear source
    [unread] A list that we could not read
    [nothing] No term names a gluten source
    [no_list] No ingredient statement to read
   *[precaution] Beside any of these: a precautionary statement
}

## How we test and decide, and the register

# Title of the chapter.
summary_methods_title = How we test and decide

# Title of the chapter.
summary_register_title = Register of all results

# Above the register; the meaning of its two letters follows. $over: "at or above 20 ppm".
summary_register_lede = Every product, by food group and brand. Black: { $over }. Dashed: no result, or one that does not decide.

# Under the product's name, where the lab repeated the test of a package.
summary_register_repeated = Test repeated

# Head of the column of what the labels come to.
summary_register_label = Label

# Likewise.
summary_register_product = Product

# Likewise.
summary_register_verdict = Verdict

# Before the results of a second and third line.
summary_register_further = further packages
