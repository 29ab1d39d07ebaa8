# Palabras que comparten todos los documentos.

## Días y enumeraciones

# A day in full, wherever one is printed: 7 de marzo de 2031.
day = { $day } de { $month ->
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
} de { $year }

# Two items.
list_of_two = { $first } y { $last }

# Three or more items; the others are parted by commas already.
list_of_more = { $others } y { $last }
