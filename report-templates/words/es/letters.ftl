# Las cartas a un fabricante: comunicación, rectificación, correo.

## The frame of a letter

# At the head of each page of a notice; the number of the sheet follows.
letter_notice_head = Comunicación de resultados · hoja

# At the head of each page of a letter of correction; the number of the sheet follows.
letter_correction_head = Rectificación · hoja

# At the foot of each page; the programme's mail address follows.
letter_questions = Preguntas:

# The first line of the address.
letter_addressee = Responsable de calidad

# How a letter on paper begins.
letter_dear = Estimado equipo de calidad:

# How letters and mails end; the name of who writes follows.
letter_yours = Atentamente,

## The notice

# The first line of a notice: the product, with what is in a package.
letter_title = Resultados de su producto { $name }{ $has_net ->
    [yes] , { $net }
   *[no] { "" }
}

# The title of a notice as a file.
letter_notice_document = { $title }. Comunicación al fabricante, hoja { $sheet }

# What was bought. "some", "none": the lab has not reported on every package. "shops": the register names the shop of each.
letter_bought = { $reported ->
    [all] { $packages ->
        [one] Compramos 1 envase de este producto{ $place ->
            [shops] { " " }en una tienda
           *[unknown] { "" }
        } y encargamos un análisis de gluten.
       *[other] Compramos { $packages } envases de este producto{ $place ->
            [shops] { " " }en tiendas
           *[unknown] { "" }
        } y encargamos un análisis de gluten.
    }
    [some] { $packages ->
        [one] Compramos 1 envase de este producto.
       *[other] Compramos { $packages } envases de este producto.
    } Hasta ahora el laboratorio ha informado sobre { $tested } de ellos.
   *[none] { $packages ->
        [one] Compramos 1 envase de este producto. El laboratorio todavía no ha informado sobre él.
       *[other] Compramos { $packages } envases de este producto. El laboratorio todavía no ha informado sobre ellos.
    }
}

# How many of the packages that the lab has reported on are over the limit. $first, $counted and $tested are
# numbers in words, $first as a sentence begins with it.
letter_found_over = { $rule ->
    [detection] { $share ->
        [one] En el único envase se detectó gluten.
        [both] En los dos envases se detectó gluten.
        [all] En los { $tested } envases se detectó gluten.
       *[some] Se detectó gluten en { $counted } de { $tested } envases.
    }
   *[other] { $share ->
        [one] El único envase dio un resultado
        [both] Los dos envases dieron un resultado
        [all] Los { $tested } envases dieron un resultado
       *[some] { $first } de { $tested } envases { $over ->
            [one] dio un resultado
           *[other] dieron un resultado
        }
    } { side_over }.
}

# That every package is within the limit, in a letter about the label.
letter_found_within = { $rule ->
    [detection] { $packages ->
        [one] En el único envase no se detectó gluten (límite de detección { $limit }).
        [2] En ninguno de los dos envases se detectó gluten (límite de detección { $limit }).
       *[other] En ninguno de los { $tested } envases se detectó gluten (límite de detección { $limit }).
    }
   *[other] { $packages ->
        [one] El único envase dio un resultado { side_within }.
       *[other] Los { $tested } envases dieron un resultado { side_within }.
    }
}

# That the results give no verdict, in a letter about the label.
letter_found_nothing = Los resultados no permiten un dictamen.

# That the letter asks about the label: besides a result over the limit, or for that alone.
letter_label_too = { $over ->
    [yes] También tenemos una pregunta sobre la lista de ingredientes.
   *[no] Nuestra pregunta se refiere a la lista de ingredientes.
}

# Why the letter comes now.
letter_before = Les escribimos antes de publicar para que puedan comprobar los hechos y responder.

# Heads of the table of packages.
letter_package = Envase
letter_lot = Lote
letter_bought_on = Compra

# Head of a column of extractions; its number follows.
letter_extraction = Extr.

# Head of the column of results; a comma and the unit follow.
letter_result = Resultado

# In a letter on a result over the limit, where no package's extractions disagree. "no": those of a package are all beyond the
# same end of the assay's range, so that only the absence of a contradiction is known.
letter_agree = { $sure ->
    [yes] Las extracciones de cada envase concuerdan, según la regla que figura en la hoja.
   *[no] Nada indica que las extracciones de algún envase difieran, según la regla que figura en la hoja.
}

# The verdict in the words of the sheet.
letter_verdict = El dictamen de la hoja dirá: «{ $verdict }».

# A word of the list of ingredients and the grain that it is of.
letter_term = «{ $printed }»{ $grain ->
    [wheat] { " " }(trigo)
    [barley] { " " }(cebada)
    [rye] { " " }(centeno)
    [oats] { " " }(avena)
    [triticale] { " " }(triticale)
    [wheat_or_barley] { " " }(trigo o cebada)
    [wheat_or_rye] { " " }(trigo o centeno)
   *[unknown] { "" }
}

# What the list of ingredients names: a fact.
letter_label_names = La lista de ingredientes nombra { $terms }; el envase declara «{ $claim }».

# What the rule says of ingredients, quoted and not applied. 21 CFR 101.91(a)(3)(i); CXS 118-1979, 2.1.1; B.24.018 of the Food
# and Drug Regulations; Resolución Conjunta 32/2023; Reglamento Sanitario de los Alimentos, articles 516 and 518; Food Standards
# Code, Standard 1.2.7 with Schedule 4.
letter_label_rule = { $law ->
    [us] La norma 21 CFR 101.91 pide que un alimento con esta declaración no tenga ningún ingrediente que sea un cereal con gluten, ni ninguno procedente de tal cereal que no se haya tratado para eliminar el gluten.
    [codex] La norma CXS 118 del Codex pide que un alimento con esta declaración no tenga ningún ingrediente de trigo, centeno o cebada, salvo que se haya tratado especialmente para eliminar el gluten.
    [canada] La disposición B.24.018 de las Food and Drug Regulations de Canadá pide que un alimento con esta declaración no contenga, por sus ingredientes, gluten de cebada, avena, centeno, triticale o trigo.
    [argentina] La Resolución Conjunta 32/2023 pide que un alimento con esta declaración se elabore sin trigo, avena, cebada ni centeno.
    [chile] El Reglamento Sanitario de los Alimentos pide que un alimento con esta declaración se elabore sin cereales con gluten.
    [au-nz] La norma 1.2.7 del Food Standards Code pide que un alimento con esta declaración no contenga avena, ni cereales con gluten malteados, ni productos de estos.
   *[other] La norma del programa pregunta por los ingredientes de un alimento con esta declaración.
}

letter_ask_head = Lo que les pedimos

# What is asked of every maker. The statement is of up to 100 words, as the sheet has room for.
letter_ask = Les rogamos que nos indiquen si algún hecho es erróneo: el lote, las fechas, los ingredientes tal como los leímos. Si lo desean, envíen una declaración de hasta 100 palabras. La imprimimos sin cambios en la hoja. No es necesario que expliquen el resultado.

# Where the list of ingredients names a source of gluten.
letter_ask_ingredient = ¿Hemos leído mal la lista, o se elabora el ingrediente de modo que no es una fuente de gluten? En ese caso, dígannos cómo y de qué cereal.

# Where the list names oats and nothing is on record of them.
letter_ask_oats = La lista nombra avena: dígannos si se mantiene separada de otros cereales en el cultivo, el transporte y la molienda, y de qué modo.

letter_offer_head = Lo que podemos enviarles

# What goes along of the lab's files, as publishing.attach has it. "some": the lab has not reported on every package.
letter_offer_files = { $attach ->
    [whole] { $reported ->
        [all] Los archivos del laboratorio van adjuntos al borrador de la hoja que acompaña esta carta.
       *[some] Lo que el laboratorio ha enviado hasta ahora va adjunto al borrador de la hoja que acompaña esta carta.
    }
    [excerpt] Lo que usamos de los archivos del laboratorio va adjunto al borrador que acompaña esta carta.
   *[none] Si lo piden, les enviamos celda por celda lo que usamos de los archivos del laboratorio.
}

# What is kept of the packages: $kept is the setting "retained".
letter_kept = Conservamos { $kept }.

# After what is kept.
letter_offer_kept = Si lo piden, enviamos una parte al laboratorio que elijan.

# Where nothing is reported and nothing kept.
letter_offer_nothing = Todavía no hay nada que enviarles.

letter_next_head = Próximos pasos

# The steps of what happens next, each below its day.
letter_step_letter = esta carta
letter_step_reply = plazo de su respuesta
letter_step_publish = publicamos

# The days of the steps in a letter without a date.
letter_today = hoy
letter_day = día { $day }

# What happens without an answer, by a day or within days.
letter_without_reply = { $dated ->
    [yes] Si no tenemos respuesta a más tardar el { $day }, la hoja lo dirá y nada más.
   *[no] { $days ->
        [one] Si no tenemos respuesta en 1 día, la hoja lo dirá y nada más.
       *[other] Si no tenemos respuesta en { $days } días, la hoja lo dirá y nada más.
    }
} Una respuesta posterior se añade en una nueva revisión.

letter_says_not_head = Lo que esta carta no dice

# What a notice or a correction does not say: $over, $label are what it says against the product.
letter_says_not = { $over ->
    [yes] No dice cómo llegó el gluten, ni que otros envases sean iguales, ni que alguien fuera negligente. No es una conclusión jurídica: dice { $rule ->
        [detection] en qué envases se detectó gluten
        [passes] qué envases dieron un resultado por encima del límite
       *[fails] qué envases dieron un resultado igual o superior al límite
    }{ $label ->
        [yes] { " " }y qué nombra la lista de ingredientes, nada más.
       *[no] , nada más.
    }
   *[no] { $label ->
        [yes] No dice que el alimento contenga gluten, ni que otros envases sean iguales, ni que alguien fuera negligente. No es una conclusión jurídica: dice qué nombra la lista de ingredientes, nada más.
       *[no] No dice que otros envases sean iguales. No es una conclusión jurídica ni un sello: dice lo que mostraron estos envases, nada más.
    }
}

## Beside the notice

# Above the largest item beside the letter: a day, or a number of days.
letter_reply_by = Se ruega respuesta a más tardar el
letter_reply_within = Se ruega respuesta en
letter_days = { $days ->
    [one] 1 día
   *[other] { $days } días
}

letter_publish_label = Día previsto de publicación
letter_publish_after = { $days ->
    [one] 1 día después de esta carta
   *[other] { $days } días después de esta carta
}
letter_sheet_label = Hoja
letter_sheet = { $sheet }, borrador adjunto
letter_limit_label = Límite

# Taken in by the limit.
letter_law = { $law ->
    [us] 21 CFR 101.91
    [codex] norma CXS 118 del Codex
    [eu] Reglamento (UE) n.º 828/2014
    [uk] Reglamento (UE) n.º 828/2014, conservado en el derecho del Reino Unido
    [canada] posición de Health Canada sobre B.24.018 de las Food and Drug Regulations
    [argentina] Resolución Conjunta 32/2023
    [chile] artículo 518 del Reglamento Sanitario de los Alimentos
    [au-nz] Food Standards Code, norma 1.2.7
   *[custom] norma propia del programa
}

# The limit that the claim on the package must keep.
letter_limit = { $rule ->
    [detection] Sin gluten detectable ({ letter_law }); el ensayo detecta a partir de { $limit } (límite de detección)
    [passes] Contenido de gluten que no sobrepase { $limit } ({ letter_law })
   *[fails] Menos de { $limit } ({ letter_law })
}

letter_method_label = Método
letter_lab_label = Laboratorio
letter_reply_label = Responder a
letter_enclosed_label = Adjunto

# What goes along, as publishing.attach has it.
letter_enclosed = { $attach ->
    [whole] Borrador de la hoja { $sheet }, con los archivos del laboratorio adjuntos; un formulario de respuesta
    [excerpt] Borrador de la hoja { $sheet }, con las celdas del laboratorio adjuntas; un formulario de respuesta
   *[none] Borrador de la hoja { $sheet }; un formulario de respuesta
}

## The form for the reply

# The title of the form.
letter_form_head = Su respuesta

# Before the number of the sheet.
letter_form_sheet = hoja

# Over what the maker can mend.
letter_form_facts_head = Los datos del borrador

# A box.
letter_form_right = El producto, los lotes, las fechas y los ingredientes son correctos tal como figuran.

# A box, with lines to write on.
letter_form_wrong = Esto no es correcto; lo correcto es:

# Over the statement.
letter_form_statement_head = Su declaración

# A box.
letter_form_no_statement = No hacemos ninguna declaración.

# A box, with lines to write on.
letter_form_statement = Publiquen esto en la hoja sin cambios (hasta 100 palabras):

# Over the test that a maker may have made.
letter_form_rest_head = Un análisis propio

# A box, where something is kept.
letter_form_rest = Envíen una parte de lo que se conserva de los envases a este laboratorio:

# A line to fill in.
letter_form_name = Nombre

# Likewise.
letter_form_position = Cargo

# Likewise.
letter_form_day = Fecha

# Likewise.
letter_form_signature = Firma

## The letter of correction

letter_correction_title = Rectificación de lo que publicamos sobre su producto { $name }

# The title of the letter as a file.
letter_correction_document = { $title }. Hoja { $sheet }

# What the file is, for catalogues.
letter_correction_about = Carta de rectificación al fabricante

letter_said_head = Lo que dijimos
letter_says_head = Lo que decimos ahora
letter_why_head = Por qué
letter_does_head = Lo que hacemos

# What the earlier revision said against the product; "no", "no": nothing.
letter_said = La revisión { $revision } de nuestra hoja { $sheet }, del { $day }, decía que { $over ->
    [yes] { $rule ->
        [detection] se detectó gluten en al menos un envase
        [passes] al menos un envase dio un resultado por encima del límite
       *[fails] al menos un envase dio un resultado igual o superior al límite
    }{ $label ->
        [yes] { " " }y que la lista de ingredientes nombra una fuente de gluten.
       *[no] .
    }
   *[no] { $label ->
        [yes] la lista de ingredientes nombra una fuente de gluten.
       *[no] { $rule ->
            [detection] no se sabe de ningún envase en el que se detectara gluten
            [passes] no se sabe de ningún envase con un resultado por encima del límite
           *[fails] no se sabe de ningún envase con un resultado igual o superior al límite
        } y que la lista de ingredientes no nombra ninguna fuente de gluten.
    }
}

# The same of what is said now.
letter_says = { $over ->
    [yes] { $rule ->
        [detection] Se detectó gluten en al menos un envase
        [passes] Al menos un envase dio un resultado por encima del límite
       *[fails] Al menos un envase dio un resultado igual o superior al límite
    }{ $label ->
        [yes] { " " }y la lista de ingredientes nombra una fuente de gluten.
       *[no] .
    }
   *[no] { $label ->
        [yes] La lista de ingredientes nombra una fuente de gluten.
       *[no] { $rule ->
            [detection] No se sabe de ningún envase en el que se detectara gluten
            [passes] No se sabe de ningún envase con un resultado por encima del límite
           *[fails] No se sabe de ningún envase con un resultado igual o superior al límite
        } y la lista de ingredientes no nombra ninguna fuente de gluten.
    }
}

# The verdict of the new revision, issued or not yet.
letter_reads = { $issued ->
    [yes] El dictamen de la hoja dice ahora: «{ $verdict }».
   *[no] El dictamen de la hoja dirá: «{ $verdict }».
}

# Where the register of what was issued gives no reason (yet).
letter_why = Lo que sabemos ahora no es lo que sabíamos entonces. La hoja revisada da el motivo y cada cifra con su fuente.

# What is done about the sheet.
letter_does = { $issued ->
    [yes] La hoja revisada se publicó el { $day }.
   *[no] Publicamos la hoja revisada de inmediato; nada la retiene.
} Nombra la revisión a la que sustituye. Nuestra página de correcciones y nuestro próximo boletín empiezan con esta rectificación. La hoja anterior permanece en nuestro archivo, para que cualquiera pueda ver qué se cambió.

# Where the correction says something against the product for the first time.
letter_does_accuse = No esperamos, porque los lectores confían en la hoja anterior. Dígannos en { $days ->
    [one] 1 día
   *[other] { $days } días
} si algún hecho es erróneo y, si lo desean, envíen una declaración de hasta 100 palabras: la imprimimos sin cambios en una nueva revisión de la hoja.

# Where it takes something back.
letter_does_clear = Si alguien ha repetido lo que dijimos, dígannos quién y escribiremos a esa persona. Si nuestro error les ha causado un perjuicio, dígannoslo también.

# Beside the letter.
letter_corrected_label = Se rectifica
letter_corrected = Hoja { $sheet }, revisión { $revision } del { $day }
letter_replaced_label = Sustituida por
letter_replaced = { $issued ->
    [yes] Revisión { $revision }, publicada el { $day }
   *[no] Revisión { $revision }, borrador adjunto
}

## The mails

# The subject of the mail to a maker.
mail_subject = { $about ->
    [both] Resultados y etiqueta de
    [label] Etiqueta de
   *[results] Resultados de
} { $name }{ $has_brand ->
    [yes] { " " }({ $brand })
   *[no] { "" }
}, hoja { $sheet }{ $dated ->
    [yes] , se ruega respuesta a más tardar el { $day }
   *[no] { "" }
}

# The subject of a mail of correction.
mail_correction_subject = Rectificación de nuestra hoja { $sheet } sobre { $name }

# How a mail to a maker begins.
mail_dear = { $has_maker ->
    [yes] Estimado equipo de calidad de { $maker }:
   *[no] Estimado equipo de calidad:
}

# The first paragraph.
mail_who = Somos { $programme } y encargamos análisis de gluten de alimentos que declaran «{ $claim }». Les escribimos sobre su producto { $name }{ $has_brand ->
    [yes] { " " }({ $brand })
   *[no] { "" }
}, nuestra hoja { $sheet }.

# A package over the limit, on a line of its own.
mail_package = Envase { $package }{ $has_lot ->
    [yes] , lote { $lot }
   *[no] { "" }
}: { $result }

# After the packages: the rule is the programme's.
mail_enough = Según la regla del programa, un envase así basta para el dictamen que publicamos.

# What the list of ingredients names, besides a result over the limit ("yes") or alone.
mail_label = { $also ->
    [yes] La lista de ingredientes nombra además
   *[no] La lista de ingredientes nombra
} { $terms }, que leemos como fuente de gluten en un alimento con esta declaración. Dígannos si la hemos leído mal.

# What is attached, and why we write.
mail_attached = Adjuntamos la comunicación y nuestra hoja de resultados. Muestran cada cifra, los lotes, las fechas, el método y la regla con la que decidimos. Les escribimos antes de publicar para que puedan comprobar los hechos y responder.

# By when, and what happens then. Without a day, in days from the message on.
mail_reply = { $dated ->
    [yes] Les rogamos que respondan a más tardar el { $day }.
   *[no] { $days ->
        [one] Les rogamos que respondan en 1 día desde este mensaje.
       *[other] Les rogamos que respondan en { $days } días desde este mensaje.
    }
} Dígannos si algún hecho es erróneo y, si lo desean, envíen una declaración: la imprimimos sin cambios en la hoja. No es necesario que expliquen el resultado.{ $dated ->
    [yes] { " " }Prevemos publicar el { $publish }.
   *[no] { "" }
} Si vencido el plazo no ha llegado respuesta, la hoja lo dice y nada más. Una respuesta posterior se añade.

# What the mail does not say.
mail_says_not = Este mensaje no dice cómo llegó el gluten, ni que otros envases sean iguales, ni que alguien fuera negligente. No es una conclusión jurídica{ $has_regulator ->
    [yes] : si un alimento puede venderse como sin gluten lo decide la autoridad competente ({ $regulator }).
   *[no] .
}

# The first paragraph of a mail of correction.
mail_correction_who = Somos { $programme }. Esta es una rectificación de lo que publicamos sobre su producto { $name }{ $has_brand ->
    [yes] { " " }({ $brand })
   *[no] { "" }
}, nuestra hoja { $sheet }.

mail_correction_attached = Adjuntamos la carta y la hoja.

# Where the address would stand: "yes": the register has one that cannot be used. Plain letters without accents, which every
# mail program can show.
mail_no_maker = { $unusable ->
    [yes] Falta el correo del fabricante: el registro no tiene ninguno que pueda usarse
   *[no] Falta el correo del fabricante
}
