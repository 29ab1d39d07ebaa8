# Words that every document shares.

## Days and lists

# Taken in by the days.
month_name = { $month ->
    [1] enero
    [2] febrero
    [3] marzo
    [4] abril
    [5] mayo
    [6] junio
    [7] julio
    [8] agosto
    [9] septiembre
    [10] octubre
    [11] noviembre
   *[12] diciembre
}

# A day in full, wherever one is printed: 7 March 2031. A line never breaks in it.
day = { $day } de { month_name } de { $year }

# From one day to another of the same month; the last in full: 4 to 19 March 2031.
days_of_month = { $first } al { $last }

# Of the same year: 28 March to 2 April 2031.
days_of_year = { $day } de { month_name } al { $last }

# Of different years, both in full.
days_of_years = { $first } al { $last }

# A count in a sentence, in words up to nine. From two on: what depends on one is settled in the sentence itself.
spelt = { $n ->
    [0] ninguno
    [1] uno
    [2] dos
    [3] tres
    [4] cuatro
    [5] cinco
    [6] seis
    [7] siete
    [8] ocho
    [9] nueve
   *[other] { $n }
}

# The same where a sentence begins with it.
spelt_first = { $n ->
    [0] Ninguno
    [1] Uno
    [2] Dos
    [3] Tres
    [4] Cuatro
    [5] Cinco
    [6] Seis
    [7] Siete
    [8] Ocho
    [9] Nueve
   *[other] { $n }
}

# Two items.
list_of_two = { $sound ->
    [i] { $first } e { $last }
   *[other] { $first } y { $last }
}

# Three or more items; the others are parted by commas already.
list_of_more = { $sound ->
    [i] { $others } e { $last }
   *[other] { $others } y { $last }
}

# The last item of a list that names the first ones alone.
list_rest = { $items } más

# Likewise, of figures.
list_more_figures = { $figures } más, de { $lowest } a { $highest }

## Figures and the limit

# A range from nothing: "up to 12.0". Below quantification is not zero, so that no nought is printed.
up_to = hasta { $figure }

# A range in a sentence, where a dash would be read as a minus.
range_in_text = { $lower } a { $upper }

# In the place of the name of a lab, where programme.toml has none.
lab_unnamed = el laboratorio

# In a table, where a package has no result; it stands in a list as well.
no_figure = sin resultado

# In a table, where an extraction has no reading.
no_reading = ninguna

# Taken in, and in keys. "fails": exactly the limit is over it (21 CFR 101.91). "passes": exactly the limit is within it
# (Regulation (EU) No 828/2014, CXS 118-1979). "detection": the rule knows no limit (Food Standards Code 1.2.7); $limit is the
# assay's limit of detection.
limit_over = { $rule ->
    [passes] superior a { $limit }
    [detection] gluten detectado
   *[fails] igual o superior a { $limit }
}

# Likewise.
limit_within = { $rule ->
    [passes] no superior a { $limit }
    [detection] gluten no detectado (límite de detección { $limit })
   *[fails] inferior a { $limit }
}

# Likewise, where the figure of the limit stands elsewhere.
over_the_limit = { $rule ->
    [passes] por encima del límite
    [detection] con gluten detectado
   *[fails] en el límite o por encima
}

# Likewise.
within_the_limit = { $rule ->
    [passes] dentro del límite
    [detection] sin gluten detectado
   *[fails] por debajo del límite
}

# Likewise, beside an arrow or in the head of a column.
limit_over_short = { $rule ->
    [passes] por encima
    [detection] detectado
   *[fails] igual o por encima
}

# Likewise.
limit_within_short = { $rule ->
    [passes] dentro
    [detection] no detectado
   *[fails] por debajo
}

# The limit where a reader meets it first.
limit_in_full = { $unit ->
    [mg] { $figure } miligramos por kilogramo (mg/kg)
   *[ppm] { $figure } partes por millón (ppm)
}

# The flag at the line of the limit in charts.
limit_flag = { $rule ->
    [detection] Detección { $limit }
   *[other] Límite { $limit }
}

# The same line in a sentence.
the_line = { $rule ->
    [detection] el límite de detección
   *[other] el límite
}

# Where the limit is written: the last sentence of how was decided. Canada's figure is a position of the authority, not the
# regulation itself; for Australia and New Zealand see Standard 1.2.7.
limit_source = { $rule ->
    [detection] La declaración exige que no haya gluten detectable (Food Standards Code, norma 1.2.7); el ensayo lo detecta a partir de { $limit } (límite de detección).
    [passes] Límite: no más de { $limit } ({ $regime ->
        [us] 21 CFR 101.91
        [codex] norma CXS 118 del Codex
        [eu] Reglamento de Ejecución (UE) n.º 828/2014
        [uk] Reglamento (UE) n.º 828/2014, conservado en el derecho del Reino Unido
        [canada] posición de Health Canada sobre B.24.018 de las Food and Drug Regulations
        [argentina] Resolución Conjunta 32/2023
        [chile] artículo 518 del Reglamento Sanitario de los Alimentos
        [au] Food Standards Code, Schedule 4
       *[custom] norma propia del programa
    }).
   *[fails] Límite: menos de { $limit } ({ $regime ->
        [us] 21 CFR 101.91
        [codex] norma CXS 118 del Codex
        [eu] Reglamento de Ejecución (UE) n.º 828/2014
        [uk] Reglamento (UE) n.º 828/2014, conservado en el derecho del Reino Unido
        [canada] posición de Health Canada sobre B.24.018 de las Food and Drug Regulations
        [argentina] Resolución Conjunta 32/2023
        [chile] artículo 518 del Reglamento Sanitario de los Alimentos
        [au] Food Standards Code, Schedule 4
       *[custom] norma propia del programa
    }).
}

# Where products of several claims stand together, each with the limit of its own claim.
over_its_own_limit = por encima del límite de su declaración

# Likewise.
within_its_own_limit = dentro del límite de su declaración

# The band of packages that could not be measured. "one": every assay measures from $below (with its unit) on. "several": they
# differ, so that no figure names the band.
band_below = { $lloq ->
    [one] menos de { $below }
   *[several] demasiado poco para medirlo
}

# Likewise, in the head of a column; $below without its unit.
band_below_short = { $lloq ->
    [one] menos de { $below }
   *[several] muy poco
}

# The band of packages that were measured, within the limit. "unsaid": a range begins below the quantification limit, or
# assays differ in it. $below stands without its unit.
band_measured = { $from ->
    [lloq] { $rule ->
        [passes] de { $below } a { $limit }
        [detection] medido, { limit_within }
       *[fails] de { $below } a menos de { $limit }
    }
   *[unsaid] medido, { limit_within }
}

# Likewise, where each claim has its own limit.
band_measured_mixed = medido, dentro del límite de su declaración

# The flag at the line of the limit in charts that hold products with limits of their own.
mixed_flag = Sin gluten: { $limit }

# The same line in a sentence.
mixed_line = el límite de la declaración «sin gluten»

# In the foot of every page.
page_of = Página { $page } de { $pages }

# Words as somebody else has them: on a package, in a file.
quoted = «{ $said }»
