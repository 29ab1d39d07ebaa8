# Words that every document shares.

## Days and lists

# Taken in by the days.
month_name = { $month ->
    [1] January
    [2] February
    [3] March
    [4] April
    [5] May
    [6] June
    [7] July
    [8] August
    [9] September
    [10] October
    [11] November
   *[12] December
}

# A day in full, wherever one is printed: 7 March 2031. A line never breaks in it.
day = { $day } { month_name } { $year }

# From one day to another of the same month; the last in full: 4 to 19 March 2031.
days_of_month = { $first } to { $last }

# Of the same year: 28 March to 2 April 2031.
days_of_year = { $day } { month_name } to { $last }

# Of different years, both in full.
days_of_years = { $first } to { $last }

# A count in a sentence, in words up to nine. From two on: what depends on one is settled in the sentence itself.
spelt = { $n ->
    [0] none
    [1] one
    [2] two
    [3] three
    [4] four
    [5] five
    [6] six
    [7] seven
    [8] eight
    [9] nine
   *[other] { $n }
}

# The same where a sentence begins with it.
spelt_first = { $n ->
    [0] None
    [1] One
    [2] Two
    [3] Three
    [4] Four
    [5] Five
    [6] Six
    [7] Seven
    [8] Eight
    [9] Nine
   *[other] { $n }
}

# Two items.
list_of_two = { $first } and { $last }

# Three or more items; the others are parted by commas already.
list_of_more = { $others } and { $last }

# The last item of a list that names the first ones alone.
list_rest = { $items } more

# Likewise, of figures.
list_more_figures = { $figures } more from { $lowest } to { $highest }

## Figures and the limit

# A range from nothing: "up to 12.0". Below quantification is not zero, so that no nought is printed.
up_to = up to { $figure }

# A range in a sentence, where a dash would be read as a minus.
range_in_text = { $lower } to { $upper }

# In the place of the name of a lab, where programme.toml has none.
lab_unnamed = the laboratory

# In a table, where a package has no result; it stands in a list as well.
no_figure = no result

# In a table, where an extraction has no reading.
no_reading = none

# Taken in, and in keys. "fails": exactly the limit is over it (21 CFR 101.91). "passes": exactly the limit is within it
# (Regulation (EU) No 828/2014, CXS 118-1979). "detection": the rule knows no limit (Food Standards Code 1.2.7); $limit is the
# assay's limit of detection.
limit_over = { $rule ->
    [passes] above { $limit }
    [detection] gluten detected
   *[fails] at or above { $limit }
}

# Likewise.
limit_within = { $rule ->
    [passes] at or below { $limit }
    [detection] no gluten detected (LOD { $limit })
   *[fails] below { $limit }
}

# Likewise, where the figure of the limit stands elsewhere.
over_the_limit = { $rule ->
    [passes] above the limit
    [detection] positive for gluten
   *[fails] at or above the limit
}

# Likewise.
within_the_limit = { $rule ->
    [passes] at or below the limit
    [detection] negative for gluten
   *[fails] below the limit
}

# Likewise, beside an arrow or in the head of a column.
limit_over_short = { $rule ->
    [passes] above
    [detection] detected
   *[fails] at or above
}

# Likewise.
limit_within_short = { $rule ->
    [passes] at or below
    [detection] not detected
   *[fails] below
}

# The limit where a reader meets it first.
limit_in_full = { $unit ->
    [mg] { $figure } milligrams in a kilogram (mg/kg)
   *[ppm] { $figure } parts per million (ppm)
}

# The flag at the line of the limit in charts.
limit_flag = { $rule ->
    [detection] LOD { $limit }
   *[other] Limit { $limit }
}

# The same line in a sentence.
the_line = { $rule ->
    [detection] the limit of detection
   *[other] the limit
}

# Where the limit is written: the last sentence of how was decided. Canada's figure is a position of the authority, not the
# regulation itself; for Australia and New Zealand see Standard 1.2.7.
limit_source = { $rule ->
    [detection] The claim asks for no detectable gluten (Food Standards Code, Standard 1.2.7); the test detects from { $limit } on (LOD).
    [passes] Limit: no more than { $limit } ({ $regime ->
        [us] 21 CFR 101.91
        [codex] Codex standard CXS 118
        [eu] Regulation (EU) No 828/2014
        [uk] Regulation (EU) No 828/2014 as kept in UK law
        [canada] Health Canada’s position on B.24.018 of the Food and Drug Regulations
        [argentina] Resolución Conjunta 32/2023
        [chile] article 518 of the Reglamento Sanitario de los Alimentos
        [au] the Food Standards Code, Schedule 4
       *[custom] the programme’s own rule
    }).
   *[fails] Limit: less than { $limit } ({ $regime ->
        [us] 21 CFR 101.91
        [codex] Codex standard CXS 118
        [eu] Regulation (EU) No 828/2014
        [uk] Regulation (EU) No 828/2014 as kept in UK law
        [canada] Health Canada’s position on B.24.018 of the Food and Drug Regulations
        [argentina] Resolución Conjunta 32/2023
        [chile] article 518 of the Reglamento Sanitario de los Alimentos
        [au] the Food Standards Code, Schedule 4
       *[custom] the programme’s own rule
    }).
}

# Where products of several claims stand together, each with the limit of its own claim.
over_its_own_limit = over the limit of its claim

# Likewise.
within_its_own_limit = within the limit of its claim

# The band of packages that could not be measured. "one": every assay measures from $below (with its unit) on. "several": they
# differ, so that no figure names the band.
band_below = { $lloq ->
    [one] below { $below }
   *[several] too little to measure
}

# Likewise, in the head of a column; $below without its unit.
band_below_short = { $lloq ->
    [one] below { $below }
   *[several] too little
}

# The band of packages that were measured, within the limit. "unsaid": a range begins below the quantification limit, or
# assays differ in it. $below stands without its unit.
band_measured = { $from ->
    [lloq] { $rule ->
        [passes] { $below } to { $limit }
        [detection] measured, { limit_within }
       *[fails] { $below } to { limit_within }
    }
   *[unsaid] measured, { limit_within }
}

# Likewise, where each claim has its own limit.
band_measured_mixed = measured, within the limit of its claim

# The flag at the line of the limit in charts that hold products with limits of their own.
mixed_flag = Gluten-free: { $limit }

# The same line in a sentence.
mixed_line = the limit of the claim gluten-free

# In the foot of every page.
page_of = Page { $page } of { $pages }

# Words as somebody else has them: on a package, in a file.
quoted = “{ $said }”
