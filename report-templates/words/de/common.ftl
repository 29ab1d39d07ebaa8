# Wörter, die alle Dokumente teilen.

## Tage und Aufzählungen

# A day in full, wherever one is printed: 7. März 2031.
day = { $day }. { $month ->
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
} { $year }

# Two items.
list_of_two = { $first } und { $last }

# Three or more items; the others are parted by commas already.
list_of_more = { $others } und { $last }
