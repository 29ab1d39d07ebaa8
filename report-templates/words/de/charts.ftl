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
    [one] zur anderen gibt das Labor kein Ergebnis an
   *[other] zu anderen gibt das Labor kein Ergebnis an
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

# At the end of a row: the extractions that were made first, of a package that has more. "open": they are not compared.
ruler_first = { $outcome ->
    [agree] { $extractions ->
        [2] Erstes Paar stimmt überein
       *[other] Erste { $extractions } stimmen überein
    }
    [disagree] { $extractions ->
        [2] Erstes Paar weicht ab
       *[other] Erste { $extractions } weichen ab
    }
   *[open] Erster Bericht
}

# Likewise: extractions that were made once more.
ruler_repeat = Wiederholung

# Likewise: reported once more, in the place of what was set aside.
ruler_again = Neu berichtet

# Likewise: more than the programme asks for.
ruler_further = Weitere Extraktionen

# Under it.
ruler_no_reason = ohne vermerkten Grund

# Likewise: who decided on a repeat, and when.
ruler_decided = von { $by }, { $day }

# Likewise.
ruler_set_aside_by = { $extractions ->
    [one] eine ausgeschlossen von { $by }, { $day }
   *[other] { $extractions } ausgeschlossen von { $by }, { $day }
}

# Likewise: the lab withdrew an earlier report, and this one took its place.
ruler_replaces = aus einem Bericht, der einen anderen ersetzt

# Beside one mark that stands for several alike.
ruler_times = { $marks } × { $figure }

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
ruler_key = Jedes Zeichen ist eine Extraktion. Gefüllt: { over_the_limit }. Offen: { within_the_limit }. Pfeil: außerhalb des Messbereichs.

# Likewise, each only where the ruler has such marks. "result": the mean of a package's extractions; "range": where they leave one.
ruler_key_more = { $what ->
    [result] Senkrechter Strich: das Ergebnis der Packung.
    [range] Linie mit Enden: das Ergebnis der Packung, ein Bereich.
    [aside] Grau und durchkreuzt: ausgeschlossen.
    [conflict] Graue Raute: Die Berichte des Labors widersprechen einander, nicht verwendet.
    [many] Wo Zeichen einander verdecken würden, steht eines für alle.
   *[disagree] Gestrichelte Linie: Sie stimmen nicht überein.
}

# In keys: the band round the limit. "simple": half of what two extractions of a package at the limit may differ by, on either side.
chart_close_means = { $decision ->
    [guarded] { $from } bis { $to }: zu nahe am Grenzwert für ein Urteil.
   *[simple] { $from } bis { $to }: nahe am Grenzwert; ein zweiter Test könnte auf der anderen Seite liegen.
}

# The same in a sentence of its own, beside or below a drawing.
chart_close = Schraffiert, { chart_close_means }

# In the key of the plots.
ruler_mark_hatched = Schraffiert

# Read aloud in place of the ruler.
ruler_alt = { $rule ->
    [detection] Glutenskala, logarithmisch von { $scale } { $unit }, mit der Nachweisgrenze bei { $limit }. { $rows }
   *[other] Glutenskala, logarithmisch von { $scale } { $unit }, mit dem Grenzwert bei { $limit }. { $rows }
}

# Likewise, a package.
ruler_row = Packung { $package }: { $figures }. { $head }: { $detail }.

# Likewise, where no more is said.
ruler_row_bare = Packung { $package }: { $figures }. { $head }.

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

ruler_mark_arrow = Pfeil auf der Skala, nach links

ruler_mark_arrow_means = unter der Zahl an seiner Spitze

ruler_mark_arrow_right = Pfeil auf der Skala, nach rechts

ruler_mark_arrow_right_means = über der Zahl an seiner Spitze

ruler_mark_dashed = Gestrichelter Kreis

ruler_mark_dashed_means = unentschieden, oder Extraktionen weichen ab

ruler_mark_line = Senkrechte Linie

# $line is "the limit" or "the limit of detection", $limit its figure.
ruler_mark_line_means = { $line }, { $limit }

# Read aloud in place of them.
ruler_marks_alt = Die Zeichen der Abbildungen. { $marks }

# Likewise, one of them.
ruler_mark_alt = { $mark }: { $meaning }.

## Words of several charts

# Below the name of a food group, and at the end of a line of the chart of chances.
chart_packages = { $packages ->
    [one] { $packages } Packung
   *[other] { $packages } Packungen
}

# Second line at the foot of a plot, before its scale.
chart_scale = { $unit }, logarithmisch

# Head of a column of packages that are neither over the limit nor within it; also in the table of bands.
chart_undecided = unentschieden

# In keys.
chart_no_verdict = kein Urteil

# In the place of a food group's name, where the register has none.
chart_no_group = Ohne Warengruppe

# In the place of a food group's name: the small ones together, where there are too many for a chart.
chart_other_groups = Weitere Warengruppen

# A list of package codes that is too long to be read aloud.
chart_codes_more = { $codes } und { $more } weitere

## Bars by band

# Name of a row, in the chart and in the table above it.
chart_bands_kind = { $kind ->
    [extractions] Extraktionen
    [packages] Packungen
   *[products] Produkte
}

# Below the name of a row.
chart_bands_all = { $all } insgesamt

# Alternative text; a sentence for each row follows.
chart_bands = Balken der Extraktionen, Packungen und Produkte nach Bereichen.

# Alternative text of one row. The bands are "below 5 ppm", "5 to below 20 ppm", "at or above 20 ppm" and the like.
chart_bands_row = { $kind ->
    [extractions] { $all ->
        [one] { $all } Extraktion
       *[other] { $all } Extraktionen
    }
    [packages] { $all ->
        [one] { $all } Packung
       *[other] { $all } Packungen
    }
   *[products] { $all ->
        [one] { $all } Produkt
       *[other] { $all } Produkte
    }
}: { $below } { $below_band }; { $measured } { $measured_band }; { $over } { $over_band }; { $undecided } unentschieden.

## All products at once

# Alternative text of the cover's squares, or of the bar in their place.
chart_squares = { $products ->
    [one] { $products } Produkt
   *[other] { $products } Produkte
}: { $over } { over_the_limit }, { $undecided } ohne Urteil, { $measured } { within_the_limit } mit gemessenem Gluten, { $below } { within_the_limit } mit zu wenig Gluten zum Messen.

## Every package on the scale

# Beside the flag of the limit.
chart_strip_left = ← { limit_within_short }

# Likewise, on its other side.
chart_strip_right = { limit_over_short } →

# First line at the foot of the plot; the unit follows on the second.
chart_strip_foot = Ergebnis der Packung,

# Alternative text; a sentence for each food group follows. $line is "the limit", "the limit of detection" or the like.
chart_strip = Ergebnisse der Packungen nach Warengruppen auf einer logarithmischen Skala in { $unit }; { $line } liegt bei { $limit }.

# Alternative text of one food group.
chart_strip_group = { $group }: { $packages ->
    [one] { $packages } Packung
   *[other] { $packages } Packungen
}; { $below } { $below_band }; { $measured } { $measured_band }; { $over } { over_the_limit }; { $undecided } unentschieden{ $measured_any ->
    [yes] ; höchster Messwert { $highest }
   *[no] { "" }
}.

## A few products, a row each

# On the scale, before the limit, in the row of a product with such packages.
chart_products_undecided = { $packages ->
    [one] { $packages } Packung: unentschieden
   *[other] { $packages } Packungen: unentschieden
}

# Head of the last column.
chart_products_verdict = Urteil

# First line at the foot of the plot; the unit follows on the second.
chart_products_foot = ein Zeichen je Packung,

# Alternative text; a sentence for each product follows.
chart_products = Ergebnisse der Packungen { $products ->
    [one] eines Produkts
   *[other] von { $products } Produkten
} auf einer logarithmischen Skala in { $unit }; { $line } liegt bei { $limit }.

# Alternative text of one product; its results are parted by commas. The limit is that of the product's own claim.
chart_products_row = { $product }: { $results }; { $verdict ->
    [over] Urteil: { side_over }
    [within] Urteil: { side_within }
   *[none] kein Urteil
}.

# Taken into the sentence above.
chart_brand_and_product = { $brand }, { $product }

## Shares of products over the limit

# Head of the column of names.
chart_shares_by = { $by ->
    [category] Warengruppe
    [certification] Zertifizierung
   *[oats] Hafer
}

# Above the scale.
chart_shares_axis = { $rule ->
    [detection] Anteil der Produkte mit nachgewiesenem Gluten
   *[other] Anteil der Produkte { over_the_limit }
}

# Head of the column "3 of 24".
chart_shares_products = Produkte

# Head of the column "13 % (3 to 32)". Exact two-sided interval (Clopper and Pearson, Biometrika 26:404, 1934).
chart_shares_interval = Anteil, 95-%-Intervall

# Name of the last row.
chart_shares_all = Alle Produkte

# In the place of an interval.
chart_shares_none = kein Produkt mit Urteil

# Likewise, where it would say next to nothing (below 10 products).
chart_shares_few = zu wenige für einen Anteil

# In the column of counts.
chart_share_count = { $k } von { $n }

# In the column of intervals, in per cent.
chart_share_interval = { $share } % ({ $lower } bis { $upper })

# Alternative text; a sentence for each group follows.
chart_shares = { $rule ->
    [detection] Anteil der Produkte mit nachgewiesenem Gluten
   *[other] Anteil der Produkte { over_the_limit }
} mit exakten zweiseitigen 95-%-Intervallen, nach { $by ->
    [category] Warengruppe
    [certification] Zertifizierung
   *[oats] Hafer
}.

# Alternative text of one group: "Breads: 1 of 4, 25 % (1 to 81)."
chart_shares_row = { $group }: { $count }, { $interval }.

# Likewise, where no product of the group has a verdict.
chart_shares_row_none = { $group }: kein Produkt mit Urteil.

# Likewise, a group of few products.
chart_shares_row_few = { $group }: { $count }, zu wenige für einen Anteil.

# Name of a group: whether the register names a certifier.
chart_certification = { $kind ->
    [certified] Zertifiziert
   *[not] Nicht zertifiziert
}

# Name of a group, by the register's word on oats. "purity": kept apart from sowing on, with records (purity protocol).
chart_oats = { $kind ->
    [none] Kein Hafer
    [certified] Zertifizierter Hafer
    [purity] Hafer nach Reinheitsprotokoll
   *[unverified] Hafer ohne Nachweis
}

## Products by quarter

# Name of a row.
chart_quarter = { $quarter ->
    [first] Jan. bis März
    [second] Apr. bis Juni
    [third] Juli bis Sept.
   *[fourth] Okt. bis Dez.
} { $year }

# Where a quarter begins on the range control chart.
chart_quarter_short = Q{ $quarter } { $year }

# Behind the squares of a quarter.
chart_quarter_none = kein Produkt

# Likewise, where there are products: those over the limit and those without a verdict.
chart_quarter_outcome = { $over ->
    [0] keines { over_the_limit }
   *[other] { $over } { over_the_limit }
}{ $undecided ->
    [0] { "" }
   *[other] , { $undecided } ohne Urteil
}

# In the key; "no verdict" stands beside it.
chart_quarters_over = { limit_over_short }

# Likewise.
chart_quarters_measured = { limit_within_short }, Gluten gemessen

# Likewise.
chart_quarters_below = { limit_within_short }, nichts gemessen

# Alternative text; a sentence for each quarter follows.
chart_quarters = Produkte nach dem Quartal ihrer letzten Prüfung.

# Alternative text of one quarter.
chart_quarters_row = { $products ->
    [0] { $quarter }: kein Produkt.
    [one] { $quarter }: { $products } Produkt; { $over } { over_the_limit }, { $undecided } ohne Urteil, { $measured } { within_the_limit } mit gemessenem Gluten, { $below } ohne messbares Gluten.
   *[other] { $quarter }: { $products } Produkte; { $over } { over_the_limit }, { $undecided } ohne Urteil, { $measured } { within_the_limit } mit gemessenem Gluten, { $below } ohne messbares Gluten.
}

## Two extractions of a package against each other

# Above the plot of differences (Bland and Altman, Lancet 1:307, 1986).
chart_agreement_up = Differenz der zwei Extraktionen, % ihres Mittelwerts

# Below it.
chart_agreement_along = Mittelwert der zwei Extraktionen, { $unit }, logarithmisch

# At the end of either edge. Room for about ten letters.
chart_agreement_allowed = zulässig

# Alternative text. $codes: the packages whose two first extractions disagree.
chart_agreement = Differenz der zwei Extraktionen in Prozent ihres Mittelwerts gegen den Mittelwert, für { $packages ->
    [one] { $packages } Packung, in der beide gemessen sind
   *[other] { $packages } Packungen, in denen beide gemessen sind
}. { $outside ->
    [0] Jedes Paar liegt innerhalb der zulässigen Differenz.
    [one] Außerhalb der zulässigen Differenz liegt { $outside } Paar: { $codes }.
   *[other] Außerhalb der zulässigen Differenz liegen { $outside } Paare: { $codes }.
}

## Range control chart

# Above the control chart (ISO 7870-2:2023).
chart_range_up = Spannweite jedes Paars, % seines Mittelwerts

# Below it.
chart_range_along = Paare in der Reihenfolge ihrer Prüfung

# At its end. Room for about twelve letters.
chart_range_control = Grenze { $percent } %

# At its end.
chart_range_mean = Mittel { $percent } %

# Alternative text. $codes: the packages whose pairs lie above the control line.
chart_range = Spannweiten-Regelkarte von { $pairs ->
    [one] { $pairs } Paar
   *[other] { $pairs } Paaren
} in der Reihenfolge der Prüfung. Mittlere Spannweite { $centre } % des Mittelwerts eines Paars, Regelgrenze { $upper } %. { $beyond ->
    [0] Kein Paar überschreitet die Regelgrenze.
    [one] Jenseits der Regelgrenze liegt { $beyond } Paar: { $codes }.
   *[other] Jenseits der Regelgrenze liegen { $beyond } Paare: { $codes }.
}
