# Lo que va a un laboratorio: el formulario de envío, la consulta y su correo.

## The query

# At the head of each page; the day follows, where it is known.
lab_query_head = Consultas al laboratorio

# At the foot of each page; the programme's mail address follows.
lab_query_reply = Se ruega responder a

# Below the lab's name in the address.
lab_sample_desk = Recepción de muestras

# The first line.
lab_query_title = { $packages ->
    [one] Consultas sobre 1 envase
   *[other] Consultas sobre { $packages } envases
}

# The title of the letter as a file.
lab_query_document = { $title }, { $lab }

# What the file is, for catalogues.
lab_query_about = Consultas al laboratorio sobre resultados que no encajan

# Why we write. "no": nothing of these packages is reported.
lab_query_opening = { $reported ->
    [yes] { $packages ->
        [one] Gracias por sus informes. Sobre 1 envase aún no podemos decidir, por el motivo que sigue.
       *[other] Gracias por sus informes. Sobre { $packages } envases aún no podemos decidir, por los motivos que siguen.
    }
   *[no] { $packages ->
        [one] De 1 envase que les enviamos no tenemos informe.
       *[other] De { $packages } envases que les enviamos no tenemos informe.
    }
} Los códigos son los que figuran en los envases.

# Heads of the table of questions.
lab_package = Envase
lab_report = Informe
lab_found = Lo que observamos
lab_asked = Lo que pedimos

# What kind of question, before what was found; a full stop follows.
lab_kind = { $kind ->
    [conflict] Dos resultados para una extracción
    [unreadable] Ningún resultado legible
    [disagreement] Las extracciones no concuerdan
    [set_aside] Una extracción no se usa
    [missing_extraction] Falta una extracción
   *[missing_result] Aún sin resultado
}

# An extraction as the lab reported it, in a list: its figure, and the file, sheet and cell that it stands in. "no": the cell's
# words, which read as no figure.
lab_extraction = extracción { $number }: { $read ->
    [yes] { $figure }
   *[no] «{ $figure }»
} ({ $file }{ $has_sheet ->
    [yes] , hoja { $sheet }
   *[no] { "" }
}, { $cell })

# Two reports of one extraction differ.
lab_conflict = Sus informes dan resultados distintos para una extracción: { $extractions }.
lab_conflict_ask = ¿Cuál de ellos es válido? Si el posterior es una repetición, numérenlo como una extracción más.

# A cell that reads as no result.
lab_unreadable = No podemos leer un resultado en su informe: { $extractions }.
lab_unreadable_ask = Les rogamos que envíen la cifra con su unidad, o «<» y el límite de cuantificación.

# Extractions that are farther apart than repeats of one material may be (ISO 5725-6:1994, 5.2). "yes": one of them is a bound,
# so that the gap is a least one.
lab_disagree = Las extracciones difieren más que las repeticiones de un mismo material: { $extractions }. Las separan { $least ->
    [yes] al menos { $gap }
   *[no] { $gap }
}; se admiten { $allowed }.

# Where only the first pair is there. The numbers are those of the extractions to come.
lab_disagree_repeat = Les rogamos que comprueben el cálculo y la dilución. Si son correctos, extraigan dos veces más la misma muestra molida e informen de las extracciones { $first } y { $second }; las anteriores permanecen en el registro.

# Where repeats are there already.
lab_disagree_check = Les rogamos que comprueben el cálculo y la dilución de cada una. Las repeticiones ya están: no pedimos más.

# The programme set an extraction aside (corrections.csv), so that too few are left.
lab_set_aside = Ustedes informaron: { $extractions }. Hemos descartado lo que no pudimos usar; { $usable ->
    [0] no queda ninguna extracción.
    [one] queda 1 extracción.
   *[other] quedan { $usable } extracciones.
}
lab_set_aside_ask = Les rogamos que extraigan una vez más la misma muestra molida e informen de ella como extracción { $number }, o que nos digan por qué no es posible.

# Fewer extractions than asked for.
lab_incomplete = { $usable ->
    [0] No tenemos ninguna de las { $asked } extracciones que pedimos: { $extractions }.
   *[other] Tenemos { $usable } de { $asked } extracciones: { $extractions }.
}
lab_incomplete_ask = Les rogamos que informen de la extracción que falta, o que nos digan por qué no la hay.

# Nothing is reported, and the time for it is over.
lab_missing = { $dated ->
    [yes] Enviado el { $day }. No tenemos resultado.
   *[no] No tenemos resultado.
}
lab_missing_ask = Les rogamos que nos digan cuándo podemos esperarlo, o por qué no lo hay.

# How an answer is wanted.
lab_answer = Les rogamos que respondan con un informe corregido o adicional, como archivo de tabla (CSV o XLSX), con una fila para cada extracción: nuestro código, el número de la extracción, el resultado, su unidad, el límite de cuantificación.

# What an extraction is.
lab_answer_extraction = Una extracción es una porción de ensayo propia, llevada por todo el procedimiento. Los pocillos leídos de un mismo extracto no son extracciones. No cambien nada en un informe anterior sin un nuevo número de informe.

# By when an answer is wanted, and what it is to name. "no": the query has no date.
lab_answer_by = { $dated ->
    [yes] Les agradeceríamos una respuesta hasta el { $day }. Citen en ella { $number }.
   *[no] Citen { $number } en su respuesta.
}

# How the query ends; the name of who writes follows.
lab_yours = Atentamente,

## The mail to a lab

# The subject; $packages are codes, with an ellipsis where there are more, $number is that of the query.
lab_mail_subject = Consultas sobre sus resultados: { $packages } ({ $number })

lab_mail_dear = { $has_lab ->
    [yes] Estimado equipo de { $lab }:
   *[no] Estimado equipo:
}

# Why we write. "no": nothing of these packages is reported.
lab_mail_opening = { $reported ->
    [yes] { $questions ->
        [one] Gracias por sus resultados. Antes de poder publicar tenemos 1 pregunta sobre ellos.
       *[other] Gracias por sus resultados. Antes de poder publicar tenemos { $questions } preguntas sobre ellos.
    }
   *[no] { $questions ->
        [one] Tenemos 1 pregunta sobre un envase que les enviamos.
       *[other] Tenemos { $questions } preguntas sobre envases que les enviamos.
    }
}

# One question, a paragraph each.
lab_mail_question = Envase { $package }: { $asked }

lab_mail_answer = Les rogamos que respondan a este mensaje o envíen un informe corregido o complementario. Dejen los códigos de los envases como están y numeren las nuevas extracciones a continuación de las ya informadas.

# How the mail ends; the name of who writes follows.
lab_mail_regards = Saludos cordiales,

# Where the address would stand. Plain letters without accents, which every mail program can show.
lab_mail_no_address = Falta el correo del laboratorio

## The request form

request_title = Muestras para análisis de gluten

# The title of the form as a file.
request_document = { $has_round ->
    [yes] Muestras para análisis de gluten, ronda { $round }
   *[no] Muestras para análisis de gluten
}

# What the file is, for catalogues.
request_about = { $samples ->
    [one] 1 muestra para { $lab }
   *[other] { $samples } muestras para { $lab }
}

# At the head of each page.
request_head = Envío de muestras

# After it, where the form is of one round; the round's name follows.
request_head_round = · ronda

request_foot = Dos ejemplares: uno queda con las muestras, el otro vuelve firmado.

# Below the first line.
request_to = A { $lab }, recepción de muestras. El laboratorio trabaja con códigos: en este formulario no figura ninguna marca, producto ni tienda.

# In an empty box.
request_sticker = Para el laboratorio: número o etiqueta

# Labels of the lines below it.
request_sent_by = Enviado por
request_sent_on = Fecha de envío
request_parcels = Paquetes
request_reply_to = Responder a

request_samples = Muestras

# Heads of the table of samples; the columns of crosses are narrow.
request_code = Código
request_kind = Tipo de alimento
request_kind_unknown = no indicado
request_content = Contenido
request_tannin = cacao o tanino
request_legume = soja o legumbre
request_oats = avena
request_fermented = fermentado, hidrolizado
request_condition = Estado al recibirla

# Below the table.
request_crosses = Las cruces indican al laboratorio qué extracción usar. Proceden de nuestro registro; corríjanlas donde ustedes sepan más.

request_asked = Lo que se pide

# Where a food is fermented or hydrolysed and the assay is a sandwich one (J AOAC 98:1346, 2015).
request_competitive = Para las muestras marcadas como fermentadas o hidrolizadas, además un ensayo competitivo: un ensayo sándwich da ahí valores demasiado bajos.

request_grind = { $extractions ->
    [one] Moler cada envase entero; luego 1 extracción, de una porción de ensayo propia. Los pocillos de un mismo extracto no son extracciones.
   *[other] Moler cada envase entero; luego { $extractions } extracciones separadas, cada una de una porción de ensayo propia. Los pocillos de un mismo extracto no son extracciones.
}

request_report = Informar de cada extracción como gluten en mg/kg, «<» y el límite de cuantificación (a lo sumo { $lloq }) donde quede por debajo, y diluir lo que exceda el intervalo.

request_table = Enviar los resultados en la tabla que acompaña este formulario (.xlsx), una fila para cada extracción; también sirve un archivo propio con las mismas columnas (CSV o XLSX).

request_as_measured = No promediar, redondear ni omitir ninguna extracción, y no dar ninguna declaración de conformidad.

# The rule of agreement (ISO 5725-6:1994, 5.2, factor of two extractions), with the programme's own repeatability.
request_pair_rule = Dos extracciones de una muestra no concuerdan si difieren en más de 2,8 s, s² = ({ $lloq }/10)² + ({ $share } de la media)²: en más de { $allowed } con una media de { $mean }. Entonces, extraer dos veces más la misma muestra molida e informar de los números 3 y 4; no omitir ningún resultado.

request_state = Indicar el límite de detección y el de cuantificación, la incertidumbre expandida (k = 2) de un resultado cercano al límite, el estado de cada muestra al recibirla y toda desviación del método.

# $kept is the setting "retained".
request_keep = Les rogamos que conserven { $kept }.

request_custody = Quién tuvo las muestras

# Heads and rows of the table of custody.
request_name = Nombre
request_signature = Firma
request_date = Fecha
request_time = Hora
request_seals = ¿Sellos intactos?
request_yes = sí
request_no = no
request_handed_over = Entregadas
request_carried = Llevadas
request_received = Recibidas

# Lines to write on, below it.
request_unusual = Estado al recibirlas, algo inusual
request_refused = Muestras no aceptadas, y por qué

## The empty table that goes with the form

# The line above it.
form_title = { $has_round ->
    [yes] Resultados de los análisis de gluten para { $programme }, ronda { $round }
   *[no] Resultados de los análisis de gluten para { $programme }
}

# Below that.
form_hint = Una fila para cada extracción, tal como se midió, sin promediar ni redondear. Por debajo de la cuantificación: el signo < y el límite.
