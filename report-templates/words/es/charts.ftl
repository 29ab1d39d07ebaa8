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
ruler_key = { $thin ->
    [yes] Cada marca es una extracción. Llena: { over_the_limit }. Vacía: { within_the_limit }. Flecha: fuera de lo que mide el ensayo. Anillo o flecha gris y fina: informado, no utilizado. Línea discontinua: no concuerdan.
   *[no] Cada marca es una extracción. Llena: { over_the_limit }. Vacía: { within_the_limit }. Flecha: fuera de lo que mide el ensayo. Línea discontinua: no concuerdan.
}

# Read aloud in place of the ruler.
ruler_alt = Regla de gluten, escala logarítmica de { $scale } { $unit }, con { the_line } en { $limit }. { $rows }

# Likewise, a package.
ruler_row = Envase { $package }: { $figures }. { $head }: { $detail }.

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

ruler_mark_arrow = Flecha en la escala

ruler_mark_arrow_means = por debajo de la cifra en su punta

ruler_mark_dashed = Círculo discontinuo

ruler_mark_dashed_means = sin decidir, o extracciones que difieren

ruler_mark_line = Línea vertical

# $line is "the limit" or "the limit of detection", $limit its figure.
ruler_mark_line_means = { $line }, { $limit }

# Read aloud in place of them.
ruler_marks_alt = Las marcas de los gráficos. { $marks }

# Likewise, one of them.
ruler_mark_alt = { $mark }: { $meaning }.
