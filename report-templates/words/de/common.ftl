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
