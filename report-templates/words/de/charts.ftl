# What stands in and beside the charts: axes, keys, and what is read aloud in their place.

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
chart_shares_axis = Anteil der Produkte { over_the_limit }

# Head of the column "3 of 24".
chart_shares_products = Produkte

# Head of the column "13 % (3 to 32)". Exact two-sided interval (Clopper and Pearson, Biometrika 26:404, 1934).
chart_shares_interval = Anteil, 95-%-Intervall

# Name of the last row.
chart_shares_all = Alle Produkte

# In the place of an interval.
chart_shares_none = kein Produkt mit Urteil

# In the column of counts.
chart_share_count = { $k } von { $n }

# In the column of intervals, in per cent.
chart_share_interval = { $share } % ({ $lower } bis { $upper })

# Alternative text; a sentence for each group follows.
chart_shares = Anteil der Produkte { over_the_limit } mit exakten zweiseitigen 95-%-Intervallen, nach { $by ->
    [category] Warengruppe
    [certification] Zertifizierung
   *[oats] Hafer
}.

# Alternative text of one group: "Breads: 1 of 4, 25 % (1 to 81)."
chart_shares_row = { $group }: { $count }, { $interval }.

# Likewise, where no product of the group has a verdict.
chart_shares_row_none = { $group }: kein Produkt mit Urteil.

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
    [one] { $outside } Paar liegt außerhalb der zulässigen Differenz: { $codes }.
   *[other] { $outside } Paare liegen außerhalb der zulässigen Differenz: { $codes }.
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
    [one] { $beyond } Paar liegt jenseits der Regelgrenze: { $codes }.
   *[other] { $beyond } Paare liegen jenseits der Regelgrenze: { $codes }.
}
