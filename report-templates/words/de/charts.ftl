# What stands in and beside the charts: axes, keys, and what is read aloud in their place.

## The ruler of a results sheet

# At the end of a package's row, in a place of about 25 letters: how its extractions agree (ISO 5725-6:1994, 5.2).
ruler_agree = Stimmen überein

# Likewise, where all are below what the test measures, or above: they may be equal and may be far apart.
ruler_no_sign = Kein Anzeichen für Abweichung

# Likewise.
ruler_disagree = Stimmen nicht überein

# Likewise.
ruler_no_result = Kein Ergebnis

# Likewise, where fewer are usable than the programme asks for.
ruler_incomplete = { $usable ->
    [0] Keine brauchbare Extraktion
    [one] Nur eine Extraktion
   *[other] Nur { $usable } Extraktionen
}

# Under it, in smaller type, in a place of about 36 letters.
ruler_nothing_reported = noch nichts berichtet

# Likewise: there are rows, and they say that there is no result.
ruler_none_reported = das Labor berichtet keines

# Likewise.
ruler_reports_differ = zwei Berichte widersprechen sich

# Likewise: a person set readings aside.
ruler_set_aside = { $usable ->
    [0] ausgeschlossen
    [one] die andere wurde ausgeschlossen
   *[other] andere wurden ausgeschlossen
}

# Likewise: the lab says that it has none.
ruler_not_given = { $usable ->
    [0] das Labor gibt kein Ergebnis an
    [one] zur anderen gibt das Labor keines an
   *[other] zu anderen gibt das Labor keines an
}

# Likewise: what the lab wrote cannot be read as a result.
ruler_unreadable = { $usable ->
    [0] nicht als Ergebnis zu lesen
    [one] die andere ist kein Ergebnis
   *[other] andere sind keine Ergebnisse
}

# Likewise.
ruler_second_missing = die zweite wurde nicht berichtet

# Likewise.
ruler_more_asked = mehr sind verlangt

# Likewise; $bound is the end of what the test measures.
ruler_beyond = { $extractions ->
    [2] { $side ->
        [below] beide unter { $bound }
       *[above] beide über { $bound }
    }
   *[other] { $side ->
        [below] alle unter { $bound }
       *[above] alle über { $bound }
    }
}

# Likewise. "least": one is a bound, so that they may be farther apart. "equal": likewise, and they may be equal.
ruler_apart = { $extractions ->
    [2] { $how ->
        [least] Abstand mindestens { $gap }, erlaubt { $allowed }
        [equal] vielleicht gleich, erlaubt { $allowed }
       *[exact] Abstand { $gap }, erlaubt { $allowed }
    }
   *[other] { $how ->
        [least] alle { $extractions }: Abstand mindestens { $gap }, erlaubt { $allowed }
        [equal] alle { $extractions }: vielleicht gleich, erlaubt { $allowed }
       *[exact] alle { $extractions }: Abstand { $gap }, erlaubt { $allowed }
    }
}

# Over the cell at the left.
ruler_below = unter { $bound }

# Under a package's code.
ruler_lot = Charge { $lot }

# Right of the scale.
ruler_unit = { $unit ->
    [mg] mg/kg Gluten (ppm)
   *[ppm] ppm Gluten (mg je kg)
}

# Under it.
ruler_log = Log-Skala: Schritte vervielfachen

# Two values beside their marks, where both stand on one side of them.
ruler_both = { $first }; { $last }

# Under the ruler.
ruler_key = { $thin ->
    [yes] Jedes Zeichen ist eine Extraktion. Gefüllt: { over_the_limit }. Offen: { within_the_limit }. Pfeil: außerhalb des Messbereichs. Dünner grauer Ring oder Pfeil: berichtet, nicht verwendet. Gestrichelte Linie: Sie stimmen nicht überein.
   *[no] Jedes Zeichen ist eine Extraktion. Gefüllt: { over_the_limit }. Offen: { within_the_limit }. Pfeil: außerhalb des Messbereichs. Gestrichelte Linie: Sie stimmen nicht überein.
}

# Read aloud in place of the ruler.
ruler_alt = { $rule ->
    [detection] Glutenskala, logarithmisch von { $scale } { $unit }, mit der Nachweisgrenze bei { $limit }. { $rows }
   *[other] Glutenskala, logarithmisch von { $scale } { $unit }, mit dem Grenzwert bei { $limit }. { $rows }
}

# Likewise, a package.
ruler_row = Packung { $package }: { $figures }. { $head }: { $detail }.

# Likewise, where the lab gave no reading.
ruler_row_empty = Packung { $package }: keine Messung. { $head }: { $detail }.

# Likewise: a reading that is a bound.
ruler_spoken = { $side ->
    [below] unter { $bound }
   *[above] über { $bound }
}

## The marks of the plots, explained once

ruler_mark_open_arrow = Offener Pfeil

ruler_mark_open_circle = Offener Kreis

ruler_mark_filled_circle = Gefüllter Kreis

ruler_mark_arrow = Pfeil auf der Skala

ruler_mark_arrow_means = unter der Zahl an seiner Spitze

ruler_mark_dashed = Gestrichelter Kreis

ruler_mark_dashed_means = unentschieden, oder Extraktionen weichen ab

ruler_mark_line = Senkrechte Linie

# $line is "the limit" or "the limit of detection", $limit its figure.
ruler_mark_line_means = { $line }, { $limit }

# Read aloud in place of them.
ruler_marks_alt = Die Zeichen der Abbildungen. { $marks }

# Likewise, one of them.
ruler_mark_alt = { $mark }: { $meaning }.
