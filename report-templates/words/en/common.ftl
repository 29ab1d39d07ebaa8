# Words that every document shares.

## Days and lists

# A day in full, wherever one is printed: 7 March 2031.
day = { $day } { $month ->
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
} { $year }

# Two items.
list_of_two = { $first } and { $last }

# Three or more items; the others are parted by commas already.
list_of_more = { $others } and { $last }
