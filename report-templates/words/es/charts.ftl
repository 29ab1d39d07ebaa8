# What stands in and beside the charts: axes, keys, and what is read aloud in their place.

## The ruler of a results sheet

# At the end of a package's row, in a place of about 25 letters: how its extractions agree (ISO 5725-6:1994, 5.2).
ruler_agree = Concuerdan

# Likewise, where all are below what the test measures, or above: they may be equal and may be far apart.
ruler_no_sign = Sin indicio de diferencia

# Likewise.
ruler_disagree = No concuerdan

# Likewise.
ruler_no_result = Sin resultado

# Likewise, where fewer are usable than the programme asks for.
ruler_incomplete = { $usable ->
    [0] Ninguna extracción válida
    [one] Una sola extracción
   *[other] Solo { $usable } extracciones
}

# Under it, in smaller type, in a place of about 36 letters.
ruler_nothing_reported = aún no se ha informado nada

# Likewise: there are rows, and they say that there is no result.
ruler_none_reported = el laboratorio no informó ninguno

# Likewise.
ruler_reports_differ = dos informes difieren

# Likewise: a person set readings aside.
ruler_set_aside = { $usable ->
    [0] descartado
    [one] la otra se descartó
   *[other] otras se descartaron
}

# Likewise: the lab says that it has none.
ruler_not_given = { $usable ->
    [0] el laboratorio no da resultado
    [one] sin resultado para la otra
   *[other] sin resultado para otras
}

# Likewise: what the lab wrote cannot be read as a result.
ruler_unreadable = { $usable ->
    [0] no puede leerse como resultado
    [one] la otra no es un resultado
   *[other] otras no son resultados
}

# Likewise.
ruler_second_missing = no se informó la segunda

# Likewise.
ruler_more_asked = se piden más

# Likewise; $bound is the end of what the test measures.
ruler_beyond = { $extractions ->
    [2] { $side ->
        [below] ambas por debajo de { $bound }
       *[above] ambas por encima de { $bound }
    }
   *[other] { $side ->
        [below] todas por debajo de { $bound }
       *[above] todas por encima de { $bound }
    }
}

# Likewise. "least": one is a bound, so that they may be farther apart. "equal": likewise, and they may be equal.
ruler_apart = { $extractions ->
    [2] { $how ->
        [least] diferencia de al menos { $gap }, máximo { $allowed }
        [equal] quizá iguales, máximo { $allowed }
       *[exact] diferencia { $gap }, máximo { $allowed }
    }
   *[other] { $how ->
        [least] las { $extractions }: diferencia de al menos { $gap }, máximo { $allowed }
        [equal] las { $extractions }: quizá iguales, máximo { $allowed }
       *[exact] las { $extractions }: diferencia { $gap }, máximo { $allowed }
    }
}

# At the end of a row: the extractions that were made first, of a package that has more. "open": they are not compared.
ruler_first = { $outcome ->
    [agree] { $extractions ->
        [2] El primer par concuerda
       *[other] Las primeras { $extractions } concuerdan
    }
    [disagree] { $extractions ->
        [2] El primer par no concuerda
       *[other] Las primeras { $extractions } no concuerdan
    }
   *[open] Primer informe
}

# Likewise: extractions that were made once more.
ruler_repeat = Repetición

# Likewise: reported once more, in the place of what was set aside.
ruler_again = Informado de nuevo

# Likewise: more than the programme asks for.
ruler_further = Otras extracciones

# Under it.
ruler_no_reason = sin motivo registrado

# Likewise: who decided on a repeat, and when.
ruler_decided = por { $by }, { $day }

# Likewise.
ruler_set_aside_by = { $extractions ->
    [one] una descartada por { $by }, { $day }
   *[other] { $extractions } descartadas por { $by }, { $day }
}

# Likewise: the lab withdrew an earlier report, and this one took its place.
ruler_replaces = de un informe que sustituye a otro

# Beside one mark that stands for several alike.
ruler_times = { $marks } × { $figure }

# Over the cell at the left.
ruler_below = menos de { $bound }

# Under a package's code.
ruler_lot = lote { $lot }

# Right of the scale.
ruler_unit = { $unit ->
    [mg] mg/kg de gluten (ppm)
   *[ppm] ppm de gluten (mg por kg)
}

# Under it.
ruler_log = logarítmica: pasos iguales multiplican

# Two values beside their marks, where both stand on one side of them.
ruler_both = { $first }; { $last }

# Under the ruler.
ruler_key = Cada marca es una extracción. Llena: { over_the_limit }. Vacía: { within_the_limit }. Flecha: fuera de lo que mide el ensayo.

# Likewise, each only where the ruler has such marks. "result": the mean of a package's extractions; "range": where they leave one.
ruler_key_more = { $what ->
    [result] Trazo vertical: el resultado del envase.
    [range] Línea con extremos: el resultado del envase, un intervalo.
    [aside] Gris y tachada: descartada.
    [conflict] Rombo gris: los informes del laboratorio difieren, no utilizada.
    [many] Donde las marcas se taparían, una sola las representa a todas.
   *[disagree] Línea discontinua: no concuerdan.
}

# In keys: the band round the limit. "simple": half of what two extractions of a package at the limit may differ by, on either side.
chart_close_means = { $decision ->
    [guarded] de { $from } a { $to }: demasiado cerca del límite para decidir.
   *[simple] de { $from } a { $to }: cerca del límite; un segundo ensayo podría caer del otro lado.
}

# The same in a sentence of its own, beside or below a drawing.
chart_close = Rayado, { chart_close_means }

# In the key of the plots.
ruler_mark_hatched = Rayado

# Read aloud in place of the ruler.
ruler_alt = Regla de gluten, escala logarítmica de { $scale } { $unit }, con { the_line } en { $limit }. { $rows }

# Likewise, a package.
ruler_row = Envase { $package }: { $figures }. { $head }: { $detail }.

# Likewise, where no more is said.
ruler_row_bare = Envase { $package }: { $figures }. { $head }.

# Likewise, where the lab gave no reading.
ruler_row_empty = Envase { $package }: sin lectura. { $head }: { $detail }.

# Likewise: a reading that is a bound.
ruler_spoken = { $side ->
    [below] menos de { $bound }
   *[above] más de { $bound }
}

## The marks of the plots, explained once

ruler_mark_open_arrow = Flecha vacía

ruler_mark_open_circle = Círculo vacío

ruler_mark_filled_circle = Círculo lleno

ruler_mark_arrow = Flecha en la escala, a la izquierda

ruler_mark_arrow_means = por debajo de la cifra en su punta

ruler_mark_arrow_right = Flecha en la escala, a la derecha

ruler_mark_arrow_right_means = por encima de la cifra en su punta

ruler_mark_dashed = Círculo discontinuo

ruler_mark_dashed_means = sin decidir, o extracciones que difieren

ruler_mark_line = Línea vertical

# $line is "the limit" or "the limit of detection", $limit its figure.
ruler_mark_line_means = { $line }, { $limit }

# Read aloud in place of them.
ruler_marks_alt = Las marcas de los gráficos. { $marks }

# Likewise, one of them.
ruler_mark_alt = { $mark }: { $meaning }.

## Words of several charts

# Below the name of a food group, and at the end of a line of the chart of chances.
chart_packages = { $packages ->
    [one] { $packages } envase
   *[other] { $packages } envases
}

# Second line at the foot of a plot, before its scale.
chart_scale = { $unit }, escala log.

# Head of a column of packages that are neither over the limit nor within it; also in the table of bands.
chart_undecided = sin decidir

# In keys.
chart_no_verdict = sin dictamen

# In the place of a food group's name, where the register has none.
chart_no_group = Sin grupo

# In the place of a food group's name: the small ones together, where there are too many for a chart.
chart_other_groups = Otros grupos de alimentos

# A list of package codes that is too long to be read aloud.
chart_codes_more = { $codes } y { $more } más

## Bars by band

# Name of a row, in the chart and in the table above it.
chart_bands_kind = { $kind ->
    [extractions] Extracciones
    [packages] Envases
   *[products] Productos
}

# Below the name of a row.
chart_bands_all = { $all } en total

# Alternative text; a sentence for each row follows.
chart_bands = Barras de las extracciones, los envases y los productos por tramos.

# Alternative text of one row. The bands are "below 5 ppm", "5 to below 20 ppm", "at or above 20 ppm" and the like.
chart_bands_row = { $kind ->
    [extractions] { $all ->
        [one] { $all } extracción
       *[other] { $all } extracciones
    }
    [packages] { $all ->
        [one] { $all } envase
       *[other] { $all } envases
    }
   *[products] { $all ->
        [one] { $all } producto
       *[other] { $all } productos
    }
}: { $below }: { $below_band }; { $measured }: { $measured_band }; { $over }: { $over_band }; { $undecided }: sin decidir.

## All products at once

# Alternative text of the cover's squares, or of the bar in their place.
chart_squares = { $products ->
    [one] { $products } producto
   *[other] { $products } productos
}: { $over } { over_the_limit }, { $undecided } sin dictamen, { $measured } { within_the_limit } con gluten medido, { $below } { within_the_limit } con demasiado poco gluten para medirlo.

## Every package on the scale

# Beside the flag of the limit.
chart_strip_left = ← { limit_within_short }

# Likewise, on its other side.
chart_strip_right = { limit_over_short } →

# First line at the foot of the plot; the unit follows on the second.
chart_strip_foot = resultado del envase,

# Alternative text; a sentence for each food group follows. $line is "the limit", "the limit of detection" or the like.
chart_strip = Resultados de los envases por grupo de alimentos en escala logarítmica de { $unit }; { $line } está en { $limit }.

# Alternative text of one food group.
chart_strip_group = { $group }: { $packages ->
    [one] { $packages } envase
   *[other] { $packages } envases
}; { $below }: { $below_band }; { $measured }: { $measured_band }; { $over }: { over_the_limit }; { $undecided }: sin decidir{ $measured_any ->
    [yes] ; el valor medido más alto, { $highest }
   *[no] { "" }
}.

## A few products, a row each

# On the scale, before the limit, in the row of a product with such packages.
chart_products_undecided = { $packages ->
    [one] { $packages } envase: sin decidir
   *[other] { $packages } envases: sin decidir
}

# Head of the last column.
chart_products_verdict = dictamen

# First line at the foot of the plot; the unit follows on the second.
chart_products_foot = una marca por envase,

# Alternative text; a sentence for each product follows.
chart_products = Resultados de los envases de { $products ->
    [one] un producto
   *[other] { $products } productos
} en escala logarítmica de { $unit }; { $line } está en { $limit }.

# Alternative text of one product; its results are parted by commas. The limit is that of the product's own claim.
chart_products_row = { $product }: { $results }; { $verdict ->
    [over] dictamen: { limit_over }
    [within] dictamen: { limit_within }
   *[none] sin dictamen
}.

# Taken into the sentence above.
chart_brand_and_product = { $brand }, { $product }

## Shares of products over the limit

# Head of the column of names.
chart_shares_by = { $by ->
    [category] Grupo de alimentos
    [certification] Certificación
   *[oats] Avena
}

# Above the scale.
chart_shares_axis = proporción de productos { over_the_limit }

# Head of the column "3 of 24".
chart_shares_products = productos

# Head of the column "13 % (3 to 32)". Exact two-sided interval (Clopper and Pearson, Biometrika 26:404, 1934).
chart_shares_interval = proporción (IC 95 %)

# Name of the last row.
chart_shares_all = Todos los productos

# In the place of an interval.
chart_shares_none = ningún producto con dictamen

# Likewise, where it would say next to nothing (below 10 products).
chart_shares_few = muy pocos para un porcentaje

# In the column of counts.
chart_share_count = { $k } de { $n }

# In the column of intervals, in per cent.
chart_share_interval = { $share } % ({ $lower } a { $upper })

# Alternative text; a sentence for each group follows.
chart_shares = Proporción de productos { over_the_limit } con intervalos exactos bilaterales del 95 %, por { $by ->
    [category] grupo de alimentos
    [certification] certificación
   *[oats] avena
}.

# Alternative text of one group: "Breads: 1 of 4, 25 % (1 to 81)."
chart_shares_row = { $group }: { $count }, { $interval }.

# Likewise, where no product of the group has a verdict.
chart_shares_row_none = { $group }: ningún producto con dictamen.

# Likewise, a group of few products.
chart_shares_row_few = { $group }: { $count }, muy pocos para un porcentaje.

# Name of a group: whether the register names a certifier.
chart_certification = { $kind ->
    [certified] Certificados
   *[not] No certificados
}

# Name of a group, by the register's word on oats. "purity": kept apart from sowing on, with records (purity protocol).
chart_oats = { $kind ->
    [none] Sin avena
    [certified] Avena certificada
    [purity] Avena con protocolo de pureza
   *[unverified] Avena sin verificar
}

## Products by quarter

# Name of a row.
chart_quarter = { $quarter ->
    [first] Ene. a mar.
    [second] Abr. a jun.
    [third] Jul. a sep.
   *[fourth] Oct. a dic.
} { $year }

# Where a quarter begins on the range control chart.
chart_quarter_short = T{ $quarter } { $year }

# Behind the squares of a quarter.
chart_quarter_none = ningún producto

# Likewise, where there are products: those over the limit and those without a verdict.
chart_quarter_outcome = { $over ->
    [0] ninguno { over_the_limit }
   *[other] { $over } { over_the_limit }
}{ $undecided ->
    [0] { "" }
   *[other] , { $undecided } sin dictamen
}

# In the key; "no verdict" stands beside it.
chart_quarters_over = { limit_over_short }

# Likewise.
chart_quarters_measured = { limit_within_short }, gluten medido

# Likewise.
chart_quarters_below = { limit_within_short }, nada medido

# Alternative text; a sentence for each quarter follows.
chart_quarters = Productos según el trimestre de su último análisis.

# Alternative text of one quarter.
chart_quarters_row = { $products ->
    [0] { $quarter }: ningún producto.
    [one] { $quarter }: { $products } producto; { $over } { over_the_limit }, { $undecided } sin dictamen, { $measured } { within_the_limit } con gluten medido, { $below } sin gluten medible.
   *[other] { $quarter }: { $products } productos; { $over } { over_the_limit }, { $undecided } sin dictamen, { $measured } { within_the_limit } con gluten medido, { $below } sin gluten medible.
}

## Two extractions of a package against each other

# Above the plot of differences (Bland and Altman, Lancet 1:307, 1986).
chart_agreement_up = diferencia entre las dos extracciones, % de su media

# Below it.
chart_agreement_along = media de las dos extracciones, { $unit }, escala log.

# At the end of either edge. Room for about ten letters.
chart_agreement_allowed = admitida

# Alternative text. $codes: the packages whose two first extractions disagree.
chart_agreement = Diferencia entre las dos extracciones en porcentaje de su media, frente a la media, en { $packages ->
    [one] { $packages } envase
   *[other] { $packages } envases
} con ambas medidas. { $outside ->
    [0] Cada par está dentro de la diferencia admitida.
    [one] Un par queda fuera de la diferencia admitida: { $codes }.
   *[other] Quedan fuera de la diferencia admitida { $outside } pares: { $codes }.
}

## Range control chart

# Above the control chart (ISO 7870-2:2023).
chart_range_up = rango de cada par, % de su media

# Below it.
chart_range_along = pares en el orden de sus análisis

# At its end. Room for about twelve letters.
chart_range_control = control { $percent } %

# At its end.
chart_range_mean = media { $percent } %

# Alternative text. $codes: the packages whose pairs lie above the control line.
chart_range = Gráfico de control del rango de { $pairs ->
    [one] { $pairs } par
   *[other] { $pairs } pares
} en el orden de sus análisis. Rango medio: { $centre } % de la media del par; límite de control: { $upper } %. { $beyond ->
    [0] Ningún par cruza el límite de control.
    [one] Un par queda más allá del límite de control: { $codes }.
   *[other] Quedan más allá del límite de control { $beyond } pares: { $codes }.
}
