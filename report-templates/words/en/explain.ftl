# The reasoning of one verdict, step by step: what `galleyproof explain` prints. A command's words are English alone.

## Product and rule

# The first line.
explain_product = { $name } ({ $id }), round { $round }

# The claim and its class, a word of the data.
explain_claim = Claim: “{ $claim }” ({ $class })

# Before the series of the assay that does not decide.
explain_beside = { $assay ->
    [competitive] The same package by the competitive assay, printed beside
   *[sandwich] The same package by the sandwich assay, printed beside
}

# Heading.
explain_rule = The rule

# The regime, a word of the settings, and what is over its limit.
explain_over = { $rule ->
    [passes] Regime { $regime }: over the limit is x > { $limit } ppm.
    [detection] Regime { $regime }: over is every figure that the lab gives, and what reaches its limit of detection.
   *[fails] Regime { $regime }: over the limit is x >= { $limit } ppm.
}

# Decisions.
explain_simple = Simple decision: the figure as it stands.

# With a guard band.
explain_guarded = Guarded decision: over where x (1 - { $uncertainty }) is over, within where x (1 + { $uncertainty }) is not; between them inconclusive.

# What the programme asks for.
explain_asked = { $packages ->
    [one] { $extractions ->
        [one] Asked for: 1 package with 1 extraction; relative repeatability { $repeatability }.
       *[other] Asked for: 1 package with { $extractions } extractions; relative repeatability { $repeatability }.
    }
   *[other] { $extractions ->
        [one] Asked for: { $packages } packages with 1 extraction each; relative repeatability { $repeatability }.
       *[other] Asked for: { $packages } packages with { $extractions } extractions each; relative repeatability { $repeatability }.
    }
}

## The verdict

# Heading.
explain_verdict = The verdict

# The packages that count. One that is over decides; all have to be within.
explain_count = { $asked ->
    [one] { $packages } of 1 package counts; the worst one decides.
   *[other] { $packages } of { $asked } packages count; the worst one decides.
}

# A caution, in a few words.
explain_bear = To bear in mind: { $caution }

# Whether there is something to tell the maker.
explain_told = To be told to the maker: { $told ->
    [yes] yes
   *[no] no
}

## A package

# Heading.
explain_package = Package { $package }

# The lab has reported nothing of it.
explain_no_row = No lab file has a row for it.

# How its readings agree.
explain_state = { $state ->
    [agree] The readings agree: the gap is not larger than allowed.
    [disagree] The readings disagree: the gap is larger than allowed.
    [incomplete] Incomplete: fewer usable readings than asked for.
   *[missing] Missing: the lab has reported nothing.
}

# As the register has it.
explain_custody = Custody: { $custody }

# A photograph of it.
explain_photograph = Photograph: { $file }, SHA-256 { $sha256 }

# A reading: what the cell says, where it stands, and how it is read.
explain_reading = { $readable ->
    [yes] Extraction { $number }: “{ $reported }” in { $place }, read as { $interval } ppm (LLOQ { $lloq } ppm)
   *[no] Extraction { $number }: “{ $reported }” in { $place }, read as no reading (LLOQ { $lloq } ppm)
}

# In place of the upper end of an interval that has none.
explain_no_end = no upper end

# The lab reports gliadin (the factor is a convention of CXS 118-1979).
explain_gliadin = reported as gliadin: gluten = 2 x gliadin

# The same reading in another cell.
explain_again = the same in { $place }: counted once

# Why it is not used.
explain_unused = { $cause ->
    [conflict] not used: another cell reports this extraction otherwise
   *[unread] not used: it gives no reading
}

# Set aside by a row of corrections.csv.
explain_set_aside = not used: set aside by { $by }: { $reason }

# The comparison (ISO 5725-6:1994, 5.2).
explain_comparison = { $n ->
    [one] Comparison of 1 reading (ISO 5725-6, on intervals)
   *[other] Comparison of { $n } readings (ISO 5725-6, on intervals)
}

# How far they are apart.
explain_gap = { $bounded ->
    [yes] gap = max(0, largest lower bound { $lower } - smallest upper bound { $upper }) = { $gap } ppm
   *[no] gap = max(0, largest lower bound { $lower } - smallest upper bound no end) = { $gap } ppm
}

# The mean that the allowed difference is reckoned from.
explain_mean = { $apart ->
    [yes] m = the mean of the readings, each at its point nearest to the middle of those two bounds = { $mean } ppm
   *[no] m = the mean of all finite bounds = { $mean } ppm
}

# The scatter.
explain_scatter = q = the largest quantification limit = { $q } ppm; s = sqrt((q / 10)^2 + ({ $repeatability } x m)^2) = { $s } ppm

# What is allowed.
explain_allowed = allowed = f({ $n }) x s = { $factor } x { $s } = { $allowed } ppm

# What they give together.
explain_result = { $kind ->
    [below] Result: below { $upper } ppm, the largest “below n”
    [mean] Result: mean = ({ $readings }) / { $n } = { $lower } ppm
    [outer] { $bounded ->
        [yes] Result: from the smallest to the largest bound, { $lower } to { $upper } ppm
       *[no] Result: from the smallest to the largest bound, { $lower } to no upper end ppm
    }
    [means] { $bounded ->
        [yes] Result: from the mean of the lower to the mean of the upper bounds, { $lower } to { $upper } ppm
       *[no] Result: from the mean of the lower to the mean of the upper bounds, { $lower } to no upper end ppm
    }
   *[none] Result: no sound result
}

# Taken in by the guard band below, as its ends.
explain_guard_lower = { $x } x (1 - { $uncertainty }) = { $scaled } ppm

# The other end.
explain_guard_upper = { $x } x (1 + { $uncertainty }) = { $scaled } ppm

# The guard band; its ends are divided by a semicolon.
explain_guard = Guard band: { $ends }

# They agree, and yet stand on both sides.
explain_straddles = The readings stand on both sides of the limit; since they agree, their mean decides.

# The standing, in words of the data.
explain_standing = Standing: { $standing }

# Of a package whose readings disagree: it is over only where every reading, or the median of three and more, is.
explain_standing_apart = { $n ->
    [one] Standing: { $standing } ({ $over } of 1 reading surely over; disagreeing readings are never within)
   *[other] Standing: { $standing } ({ $over } of { $n } readings surely over; disagreeing readings are never within)
}

## The label

# Heading.
explain_label = The label

# The statement; its terms stand in square brackets.
explain_statement = “{ $statement }”

# What the review comes to, in words of the data.
explain_finding = Finding: { $finding }

# A class of the table of terms.
explain_class = { $class ->
    [always] always a gluten source
    [not_forbidden] a gluten source, not forbidden
    [depends] depends: ask
    [exempt] exempt
   *[look_alike] no gluten source
}

# A term, why it counts, and where that is from.
explain_term = “{ $term }” ({ $grain }; { $class }): { $why } [{ $source }]

# Precautionary words.
explain_precaution = kept apart, no ingredient: “{ $statement }”

## What so few packages can say

# Heading.
explain_statistics = What so few packages can say

# Nothing to say.
explain_no_statistics = Nothing: no package has a sound result.

# Two-sided intervals, by Clopper and Pearson and by Wilson.
explain_share = { $n ->
    [one] { $k } of 1 package over the limit. Were it drawn at random, the share of all packages over it would be { $lower } to { $upper } % (Clopper-Pearson, 95 %) or { $wilson_lower } to { $wilson_upper } % (Wilson, 95 %).
   *[other] { $k } of { $n } packages over the limit. Were they drawn at random, the share of all packages over it would be { $lower } to { $upper } % (Clopper-Pearson, 95 %) or { $wilson_lower } to { $wilson_upper } % (Wilson, 95 %).
}

# Packages that may be on either side.
explain_undecided = { $n ->
    [one] 1 of them undecided: lower ends take it for within the limit, upper ends for over it.
   *[other] { $n } of them undecided: lower ends take these for within the limit, upper ends for over it.
}

# The one-sided bound, which takes the undecided for over.
explain_one_sided = { $n ->
    [one] One-sided: with { $k } of 1 over the limit, up to { $upper } % of all packages could be (95 %).
   *[other] One-sided: with { $k } of { $n } over the limit, up to { $upper } % of all packages could be (95 %).
}

# How likely the truth is on the other side of the limit (JCGM 106:2012, 7.2).
explain_other_side = { $package }: at { $figure } ppm with a standard uncertainty of { $u } ppm, the true content is on the other side of the limit with a chance of { $chance } %.

# The scatter between and within packages (analysis of variance).
explain_components = Between packages s = { $between } ppm, within packages s = { $within } ppm (mean squares { $ms_between } and { $ms_within }).

# Its F test.
explain_test = F({ $df1 }, { $df2 }) = { $f }, p = { $p }.
