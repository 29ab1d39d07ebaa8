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
