# Words that every document shares.

## Days and lists

# Taken in by the days.
month_name = { $month ->
    [1] Januar
    [2] Februar
    [3] März
    [4] April
    [5] Mai
    [6] Juni
    [7] Juli
    [8] August
    [9] September
    [10] Oktober
    [11] November
   *[12] Dezember
}

# A day in full, wherever one is printed: 7 March 2031. A line never breaks in it.
day = { $day }. { month_name } { $year }

# From one day to another of the same month; the last in full: 4 to 19 March 2031.
days_of_month = { $first }. bis { $last }

# Of the same year: 28 March to 2 April 2031.
days_of_year = { $day }. { month_name } bis { $last }

# Of different years, both in full.
days_of_years = { $first } bis { $last }

# A count in a sentence, in words up to nine. From two on: what depends on one is settled in the sentence itself.
spelt = { $n ->
    [0] keine
    [1] eine
    [2] zwei
    [3] drei
    [4] vier
    [5] fünf
    [6] sechs
    [7] sieben
    [8] acht
    [9] neun
   *[other] { $n }
}

# The same where a sentence begins with it.
spelt_first = { $n ->
    [0] Keine
    [1] Eine
    [2] Zwei
    [3] Drei
    [4] Vier
    [5] Fünf
    [6] Sechs
    [7] Sieben
    [8] Acht
    [9] Neun
   *[other] { $n }
}

# Two items.
list_of_two = { $first } und { $last }

# Three or more items; the others are parted by commas already.
list_of_more = { $others } und { $last }

# The last item of a list that names the first ones alone.
list_rest = { $items } weitere

# Likewise, of figures.
list_more_figures = { $figures } weitere von { $lowest } bis { $highest }

## Figures and the limit

# A range from nothing: "up to 12.0". Below quantification is not zero, so that no nought is printed.
up_to = bis { $figure }

# A range in a sentence, where a dash would be read as a minus.
range_in_text = { $lower } bis { $upper }

# In the place of the name of a lab, where programme.toml has none.
lab_unnamed = das Labor

# In a table, where a package has no result; it stands in a list as well.
no_figure = kein Ergebnis

# In a table, where an extraction has no reading.
no_reading = keine

# Taken in, and in keys. "fails": exactly the limit is over it (21 CFR 101.91). "passes": exactly the limit is within it
# (Regulation (EU) No 828/2014, CXS 118-1979). "detection": the rule knows no limit (Food Standards Code 1.2.7); $limit is the
# assay's limit of detection.
limit_over = { $rule ->
    [passes] über { $limit }
    [detection] Gluten nachgewiesen
   *[fails] bei oder über { $limit }
}

# Likewise.
limit_within = { $rule ->
    [passes] höchstens { $limit }
    [detection] kein Gluten nachgewiesen (Nachweisgrenze { $limit })
   *[fails] unter { $limit }
}

# Likewise, where the figure of the limit stands elsewhere.
over_the_limit = { $rule ->
    [passes] über dem Grenzwert
    [detection] positiv auf Gluten
   *[fails] am oder über dem Grenzwert
}

# Likewise.
within_the_limit = { $rule ->
    [passes] nicht über dem Grenzwert
    [detection] negativ auf Gluten
   *[fails] unter dem Grenzwert
}

# Likewise, beside an arrow or in the head of a column.
limit_over_short = { $rule ->
    [passes] über
    [detection] nachgewiesen
   *[fails] bei oder über
}

# Likewise.
limit_within_short = { $rule ->
    [passes] höchstens
    [detection] nicht nachgewiesen
   *[fails] unter
}

# The limit where a reader meets it first.
limit_in_full = { $unit ->
    [mg] { $figure } Milligramm je Kilogramm (mg/kg)
   *[ppm] { $figure } Teilen je Million (ppm)
}

# The flag at the line of the limit in charts.
limit_flag = { $rule ->
    [detection] Nachweisgrenze { $limit }
   *[other] Grenzwert { $limit }
}

# The same line in a sentence.
the_line = { $rule ->
    [detection] die Nachweisgrenze
   *[other] der Grenzwert
}

# Where the limit is written: the last sentence of how was decided. Canada's figure is a position of the authority, not the
# regulation itself; for Australia and New Zealand see Standard 1.2.7.
limit_source = { $rule ->
    [detection] Die Angabe verlangt, dass kein Gluten nachweisbar ist (Food Standards Code, Standard 1.2.7); das Verfahren weist Gluten ab { $limit } nach (Nachweisgrenze).
    [passes] Grenzwert: höchstens { $limit } ({ $regime ->
        [us] 21 CFR 101.91
        [codex] Codex-Standard CXS 118
        [eu] Durchführungsverordnung (EU) Nr. 828/2014
        [uk] Verordnung (EU) Nr. 828/2014, wie sie im Vereinigten Königreich fortgilt
        [canada] Standpunkt von Health Canada zu B.24.018 der Food and Drug Regulations
        [argentina] Resolución Conjunta 32/2023
        [chile] Artikel 518 des Reglamento Sanitario de los Alimentos
        [au] Food Standards Code, Schedule 4
       *[custom] eigene Regel des Programms
    }).
   *[fails] Grenzwert: weniger als { $limit } ({ $regime ->
        [us] 21 CFR 101.91
        [codex] Codex-Standard CXS 118
        [eu] Durchführungsverordnung (EU) Nr. 828/2014
        [uk] Verordnung (EU) Nr. 828/2014, wie sie im Vereinigten Königreich fortgilt
        [canada] Standpunkt von Health Canada zu B.24.018 der Food and Drug Regulations
        [argentina] Resolución Conjunta 32/2023
        [chile] Artikel 518 des Reglamento Sanitario de los Alimentos
        [au] Food Standards Code, Schedule 4
       *[custom] eigene Regel des Programms
    }).
}

# Where products of several claims stand together, each with the limit of its own claim.
over_its_own_limit = über dem Grenzwert der eigenen Angabe

# Likewise.
within_its_own_limit = innerhalb des Grenzwerts der eigenen Angabe

# The band of packages that could not be measured. "one": every assay measures from $below (with its unit) on. "several": they
# differ, so that no figure names the band.
band_below = { $lloq ->
    [one] unter { $below }
   *[several] zu wenig, um es zu messen
}

# Likewise, in the head of a column; $below without its unit.
band_below_short = { $lloq ->
    [one] unter { $below }
   *[several] zu wenig
}

# The band of packages that were measured, within the limit. "unsaid": a range begins below the quantification limit, or
# assays differ in it. $below stands without its unit.
band_measured = { $from ->
    [lloq] { $rule ->
        [passes] { $below } bis { $limit }
        [detection] gemessen, { limit_within }
       *[fails] { $below } bis { limit_within }
    }
   *[unsaid] gemessen, { limit_within }
}

# Likewise, where each claim has its own limit.
band_measured_mixed = gemessen, innerhalb des Grenzwerts der eigenen Angabe

# The flag at the line of the limit in charts that hold products with limits of their own.
mixed_flag = Glutenfrei: { $limit }

# The same line in a sentence.
mixed_line = der Grenzwert der Angabe „glutenfrei“

# In the foot of every page.
page_of = Seite { $page } von { $pages }

# Words as somebody else has them: on a package, in a file.
quoted = „{ $said }“
