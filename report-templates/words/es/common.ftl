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
list_of_two = { $first } y { $last }

# Three or more items; the others are parted by commas already.
list_of_more = { $others } y { $last }
