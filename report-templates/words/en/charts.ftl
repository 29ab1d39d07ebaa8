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
    [one] the lab gave none for the other
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
ruler_key = { $thin ->
    [yes] Each mark is one extraction. Filled: { over_the_limit }. Open: { within_the_limit }. Arrow: beyond what the test measures. Thin grey ring or arrow: reported, not used. Dashed line: they disagree.
   *[no] Each mark is one extraction. Filled: { over_the_limit }. Open: { within_the_limit }. Arrow: beyond what the test measures. Dashed line: they disagree.
}

# Read aloud in place of the ruler.
ruler_alt = Gluten ruler, log scale from { $scale } { $unit } with { the_line } at { $limit }. { $rows }

# Likewise, a package.
ruler_row = Package { $package }: { $figures }. { $head }: { $detail }.

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

ruler_mark_arrow = Arrow on the scale

ruler_mark_arrow_means = below the figure at its tip

ruler_mark_dashed = Dashed circle

ruler_mark_dashed_means = undecided, or extractions disagree

ruler_mark_line = Upright line

# $line is "the limit" or "the limit of detection", $limit its figure.
ruler_mark_line_means = { $line }, { $limit }

# Read aloud in place of them.
ruler_marks_alt = The marks of the plots. { $marks }

# Likewise, one of them.
ruler_mark_alt = { $mark }: { $meaning }.
