# What a results sheet says: verdict, ruler, packages, what the result says and does not say.

## The head, the foot and the headings

# In the head, before the number of the sheet and its revision.
sheet_kind = Hoja de resultados

# In the foot, before the address to which mistakes are reported.
sheet_mistake = ¿Ha visto un error?

# The title of the PDF.
sheet_title = { $branded ->
    [yes] Resultados del análisis: { $product }, { $brand }. Hoja { $number }
   *[no] Resultados del análisis: { $product }. Hoja { $number }
}

# Under the name of the product. $claim is as on the package.
claim_sold = { $known ->
    [yes] Se vende como «{ $claim }».
   *[no] No consta qué declara el envase.
}

# Likewise. A first round is not counted. $when is a day or two.
claim_bought = { $later ->
    [yes] { $dated ->
        [day] { $packages ->
            [one] Ronda { $round }: compramos 1 envase el { $when }.
           *[other] Ronda { $round }: compramos { $packages } envases el { $when }.
        }
        [days] { $packages ->
            [one] Ronda { $round }: compramos 1 envase del { $when }.
           *[other] Ronda { $round }: compramos { $packages } envases del { $when }.
        }
       *[no] { $packages ->
            [0] Ronda { $round }: no consta ningún envase.
            [one] Ronda { $round }: compramos 1 envase.
           *[other] Ronda { $round }: compramos { $packages } envases.
        }
    }
   *[no] { $dated ->
        [day] { $packages ->
            [one] Compramos 1 envase el { $when }.
           *[other] Compramos { $packages } envases el { $when }.
        }
        [days] { $packages ->
            [one] Compramos 1 envase del { $when }.
           *[other] Compramos { $packages } envases del { $when }.
        }
       *[no] { $packages ->
            [0] No consta ningún envase.
            [one] Compramos 1 envase.
           *[other] Compramos { $packages } envases.
        }
    }
}

# Likewise.
claim_barcode = Código de barras { $barcode }.

# Likewise; the certifier's name as on the package.
claim_certifier = El envase nombra como certificador a { $certifier }.

# Likewise, where the name has emoji, which the fonts lack.
claim_pictures = Los pictogramas de su nombre se omiten aquí.

# Heading of the ruler and the table.
results_heading = Los resultados, envase por envase

# Heading of what so few packages say.
says_heading = Qué dice este resultado

# Heading beside it.
says_not_heading = Qué no dice

# Heading of the label review. It is a reading of words by the programme, an opinion in the sense of ISO/IEC 17025:2017,
# 7.8.7, and no test.
label_heading = Revisión del etiquetado

# Heading of what passed between programme and maker.
reply_heading = La respuesta del fabricante

# Heading of how was tested and decided.
method_heading = Cómo se analizó y se decidió

# Heading of the lab files.
sources_heading = De dónde proceden las cifras

# Heading of the caution.
note_heading = Tenga en cuenta

# Heading of the list of revisions.
revisions_heading = Revisiones

# Before the list of ingredients as it stands on the package.
label_ingredients = Ingredientes tal como figuran:

# Before "may contain" and the like, quoted from the package.
label_precautionary = Advertencias de precaución:

# After it, where the register has none.
label_none_on_record = no consta ninguna.

## The verdict

# In the block, where a package is over the limit. See limit_over for the three rules.
verdict_over = { $rule ->
    [passes] Superior a { $limit }
    [detection] Gluten detectado
   *[fails] Igual o superior a { $limit }
}

# In the block, where every package is within it.
verdict_within = { $rule ->
    [passes] No superior a { $limit }
    [detection] Gluten no detectado (límite de detección { $limit })
   *[fails] Inferior a { $limit }
}

# In the block, where the results do not say.
verdict_none = Sin dictamen

# Under the verdict. "guarded": a package counts as over only where it still is with the expanded uncertainty taken off
# (ILAC-G8:09/2019), so that others may have figures over the limit, too.
count_over = { $packages ->
    [one] { $rule ->
        [detection] En el único envase se detectó gluten
        [passes] El único envase supera el límite
       *[fails] El único envase alcanza o supera el límite
    }{ $guarded ->
        [yes] , incluso restada la incertidumbre del ensayo
       *[no] { "" }
    }.
   *[other] { $over ->
        [one] { $rule ->
            [detection] En 1 de { $packages } envases se detectó gluten
            [passes] De { $packages } envases, 1 supera el límite
           *[fails] De { $packages } envases, 1 alcanza o supera el límite
        }
       *[other] { $rule ->
            [detection] En { $over } de { $packages } envases se detectó gluten
            [passes] De { $packages } envases, { $over } superan el límite
           *[fails] De { $packages } envases, { $over } alcanzan o superan el límite
        }
    }{ $guarded ->
        [yes] , incluso restada la incertidumbre del ensayo
       *[no] { "" }
    }.
}

# Under the verdict.
count_within = { $packages ->
    [one] { $rule ->
        [detection] En el único envase no se detectó gluten
        [passes] El único envase no supera el límite
       *[fails] El único envase está por debajo del límite
    }{ $guarded ->
        [yes] , incluso sumada la incertidumbre del ensayo
       *[no] { "" }
    }.
    [2] { $rule ->
        [detection] En ninguno de los 2 envases se detectó gluten
        [passes] Ninguno de los 2 envases supera el límite
       *[fails] Los 2 envases están por debajo del límite
    }{ $guarded ->
        [yes] , incluso sumada la incertidumbre del ensayo
       *[no] { "" }
    }.
   *[other] { $rule ->
        [detection] En ninguno de los { $packages } envases se detectó gluten
        [passes] Ninguno de los { $packages } envases supera el límite
       *[fails] Los { $packages } envases están por debajo del límite
    }{ $guarded ->
        [yes] , incluso sumada la incertidumbre del ensayo
       *[no] { "" }
    }.
}

# Under "no verdict".
count_unresolved = { $packages ->
    [one] El único envase no tiene un resultado que decida.
   *[other] { $undecided ->
        [one] De { $packages } envases, 1 no tiene un resultado que decida.
       *[other] De { $packages } envases, { $undecided } no tienen un resultado que decida.
    }
}

# Likewise, under guarded decisions.
count_close = { $packages ->
    [one] El único envase está demasiado cerca del límite para decidir.
   *[other] { $undecided ->
        [one] De { $packages } envases, 1 está demasiado cerca del límite para decidir.
       *[other] De { $packages } envases, { $undecided } están demasiado cerca del límite para decidir.
    }
}

# Likewise, where fewer packages were tested than the programme asks for.
count_short = { $tested ->
    [0] Ningún envase tiene resultado.
    [one] De { $asked } envases, 1 tiene resultado.
   *[other] De { $asked } envases, { $tested } tienen resultado.
}

# Likewise, where the assay cannot see all gluten in a food of this kind.
count_unfit = En un alimento de este tipo el ensayo no puede decidir.

# Likewise, where claim, processing or a row of the registers is not known.
count_open = Queda algo por aclarar antes de poder decidir.

# Beside the verdict: the one package over the limit. "disagree": its extractions differ too much for one figure.
over_one = { $kind ->
    [range] En un envase se midieron { $figure }.
    [above] En un envase se midieron más de { $figure }.
    [disagree] { $rule ->
        [detection] Las extracciones de un envase ({ $package }) difieren demasiado para dar una sola cifra, pero en él se detectó gluten.
        [passes] Las extracciones de un envase ({ $package }) difieren demasiado para dar una sola cifra, pero muestran que supera el límite.
       *[fails] Las extracciones de un envase ({ $package }) difieren demasiado para dar una sola cifra, pero muestran que alcanza o supera el límite.
    }
   *[mean] En un envase se midieron { $figure }.
}

# Likewise, several packages; $packages is their number in words.
over_several = { $highest ->
    [known] { $rule ->
        [detection] { $packages } envases dieron positivo en gluten; el resultado más alto fue de { $figure }.
        [passes] { $packages } envases superan el límite; el resultado más alto fue de { $figure }.
       *[fails] { $packages } envases alcanzan o superan el límite; el resultado más alto fue de { $figure }.
    }
   *[unknown] { $rule ->
        [detection] { $packages } envases dieron positivo en gluten.
        [passes] { $packages } envases superan el límite.
       *[fails] { $packages } envases alcanzan o superan el límite.
    }
}

# After it: no package makes good for another, since the claim stands on each.
over_enough = { $rule ->
    [detection] Basta un envase con gluten detectado para este dictamen.
    [passes] Basta un envase que supere el límite de { $limit } para este dictamen.
   *[fails] Basta un envase que alcance o supere el límite de { $limit } para este dictamen.
}

# After it, under guarded decisions: packages that are neither over nor within.
over_too_close = { $by ->
    [count] Demasiado cerca del límite para decidir: { $packages } envases.
   *[name] { $packages ->
        [one] Demasiado cerca del límite para decidir: el envase { $named }.
       *[other] Demasiado cerca del límite para decidir: los envases { $named }.
    }
}

# After it: packages whose extractions disagree, are missing and the like.
over_unresolved = { $by ->
    [count] Sin un resultado que decida: { $packages } envases.
   *[name] { $packages ->
        [one] Sin un resultado que decida: el envase { $named }.
       *[other] Sin un resultado que decida: los envases { $named }.
    }
}

# Beside the verdict, where no package could be measured.
none_measured = { $packages ->
    [one] { $rule ->
        [detection] El envase tenía demasiado poco gluten para medirlo: el resultado fue inferior a { $below }. El ensayo detecta gluten a partir de { $limit }.
       *[other] El envase tenía demasiado poco gluten para medirlo: el resultado fue inferior a { $below }. El límite para esta declaración es de { $limit }.
    }
   *[other] { $rule ->
        [detection] Ningún envase tenía gluten suficiente para medirlo: todos los resultados fueron inferiores a { $below }. El ensayo detecta gluten a partir de { $limit }.
       *[other] Ningún envase tenía gluten suficiente para medirlo: todos los resultados fueron inferiores a { $below }. El límite para esta declaración es de { $limit }.
    }
}

# Beside the verdict, where gluten was measured in some or all packages. It speaks of results: a single extraction of them may
# have measured more.
measured_within = { $part ->
    [the_one] { $rule ->
            [detection] Se midió gluten en el único envase, con un resultado que no es una detección.
            [passes] Se midió gluten en el único envase, con un resultado no superior al límite de { $limit }.
           *[fails] Se midió gluten en el único envase, con un resultado por debajo del límite de { $limit }.
        }
    [all] { $packages ->
        [2] { $rule ->
            [detection] Se midió gluten en ambos envases, con resultados que no son una detección.
            [passes] Se midió gluten en ambos envases, con resultados no superiores al límite de { $limit }.
           *[fails] Se midió gluten en ambos envases, con resultados por debajo del límite de { $limit }.
        }
       *[other] { $rule ->
            [detection] Se midió gluten en los { $packages } envases, con resultados que no son una detección.
            [passes] Se midió gluten en los { $packages } envases, con resultados no superiores al límite de { $limit }.
           *[fails] Se midió gluten en los { $packages } envases, con resultados por debajo del límite de { $limit }.
        }
    }
   *[some] { $measured ->
        [one] { $rule ->
            [detection] Se midió gluten en 1 de los { $packages } envases, con un resultado que no es una detección.
            [passes] Se midió gluten en 1 de los { $packages } envases, con un resultado no superior al límite de { $limit }.
           *[fails] Se midió gluten en 1 de los { $packages } envases, con un resultado por debajo del límite de { $limit }.
        }
       *[other] { $rule ->
            [detection] Se midió gluten en { $measured } de los { $packages } envases, con resultados que no son una detección.
            [passes] Se midió gluten en { $measured } de los { $packages } envases, con resultados no superiores al límite de { $limit }.
           *[fails] Se midió gluten en { $measured } de los { $packages } envases, con resultados por debajo del límite de { $limit }.
        }
    }
}

# After it.
measured_others = { $others ->
    [one] En el otro fue inferior a { $below }.
   *[other] En los demás fue inferior a { $below }.
}

# Beside "no verdict"; the causes follow, a sentence each.
cannot_tell = { $rule ->
    [detection] No podemos decir si este producto contiene gluten detectable.
   *[other] No podemos decir de qué lado del límite de { $limit } está este producto.
}

# Likewise, where the food is the cause.
cannot_show = { $rule ->
    [detection] Los resultados no pueden mostrar si este alimento contiene gluten detectable.
   *[other] Los resultados no pueden mostrar de qué lado del límite de { $limit } está este alimento.
}

# A cause. Up to four packages are named, more are counted.
cause_conflict = { $by ->
    [count] Los informes del laboratorio sobre { $packages } envases difieren.
   *[name] { $packages ->
        [one] Los informes del laboratorio sobre el envase { $named } difieren.
       *[other] Los informes del laboratorio sobre los envases { $named } difieren.
    }
}

# Likewise (ISO 5725-6:1994, 5.2).
cause_disagree = { $by ->
    [count] Las extracciones de { $packages } envases no concuerdan.
   *[name] { $packages ->
        [one] Las extracciones del envase { $named } no concuerdan.
       *[other] Las extracciones de los envases { $named } no concuerdan.
    }
}

# Likewise.
cause_incomplete = { $by ->
    [count] De { $packages } envases hay menos extracciones válidas de las que pide el programa.
   *[name] { $packages ->
        [one] El envase { $named } tiene menos extracciones válidas de las que pide el programa.
       *[other] Los envases { $named } tienen menos extracciones válidas de las que pide el programa.
    }
}

# Likewise.
cause_missing = { $by ->
    [count] No ha llegado ningún resultado de { $packages } envases.
   *[name] { $packages ->
        [one] No ha llegado ningún resultado del envase { $named }.
       *[other] No ha llegado ningún resultado de los envases { $named }.
    }
}

# Likewise: its bounds lie on both sides of the limit.
cause_either_side = { $by ->
    [count] Los resultados de { $packages } envases pueden estar a uno u otro lado.
   *[name] { $packages ->
        [one] El resultado del envase { $named } puede estar a uno u otro lado.
       *[other] Los resultados de los envases { $named } pueden estar a uno u otro lado.
    }
}

# Likewise, under guarded decisions (ILAC-G8:09/2019).
cause_too_close = { $by ->
    [count] Los resultados de { $packages } envases distan del límite menos que la incertidumbre del ensayo ({ $uncertainty }).
   *[name] { $packages ->
        [one] El resultado del envase { $named } dista del límite menos que la incertidumbre del ensayo ({ $uncertainty }).
       *[other] Los resultados de los envases { $named } distan del límite menos que la incertidumbre del ensayo ({ $uncertainty }).
    }
}

# Where the packages' results are within the limit, or decide nothing, and single extractions are over it: no verdict hides one.
single_over = { $extractions ->
    [one] { $kind ->
        [above] Una sola extracción dio más de { $figure }.
       *[figure] Una sola extracción dio { $figure }.
    }
   *[other] { $kind ->
        [above] { $rule ->
            [detection] { $spelt } extracciones detectaron gluten; la más alta dio más de { $figure }.
           *[other] { $spelt } extracciones dieron un valor { limit_over }; la más alta, más de { $figure }.
        }
       *[figure] { $rule ->
            [detection] { $spelt } extracciones detectaron gluten; la más alta dio { $figure }.
           *[other] { $spelt } extracciones dieron un valor { limit_over }; la más alta, { $figure }.
        }
    }
}

# A package in the list of the sentence below.
near_limit_package = { $chance } en { $package } ({ $figure })

# Further packages in it, which are not named; $chance is the smallest of theirs.
near_limit_more = { $packages ->
    [one] { $chance } en otro envase
   *[other] { $chance } o más en otros { $packages } envases
}

# Beside a verdict that rests on packages near the limit, under simple decisions: the chance that the true content is on the
# other side (JCGM 106:2012, 7.2), where one lies in the band drawn round it, or that is more than 5 %. "assumed" knows only the scatter within the lab, so that the
# chance is a least one.
near_limit = { $rule ->
    [detection] Cerca del límite de detección: la probabilidad de que { $side ->
        [over] el alimento contenga gluten detectable
       *[within] el alimento no contenga gluten detectable
    } (límite de detección { $limit })
    [passes] Cerca del límite: la probabilidad de que el contenido real { $side ->
        [over] sea superior
       *[within] no sea superior
    } al límite de { $limit }
   *[fails] Cerca del límite: la probabilidad de que el contenido real sea { $side ->
        [over] igual o superior
       *[within] inferior
    } al límite de { $limit }
} es de { $basis ->
    [lab] aproximadamente { $packages }, según la incertidumbre del laboratorio.
    [lab_k2] aproximadamente { $packages }, según la incertidumbre del laboratorio, tomada como k = 2.
   *[assumed] al menos { $packages } aproximadamente, solo por la dispersión que este programa supone dentro de un laboratorio.
}

## The table

# Head of the packages' codes.
head_package = Envase

# Head of the maker's lots.
head_lot = Lote

# Head of the dates as printed on the packages.
head_best_by = Consumo preferente

# Head of the day and place of purchase.
head_bought = Compra: fecha, tienda

# Head over the extractions.
head_extractions = Extracciones, { $unit }

# Head over the two columns of differences between extractions.
head_difference = Diferencia, { $unit }

# Under it.
head_found = hallada

# Under it.
head_allowed = admitida

# Head of the results; it may be set in two lines.
head_result = Resultado del envase, { $unit }

# In the place of a difference that is not known: every extraction is below what the test measures, or above. $bound has its sign.
cell_beyond = { $extractions ->
    [2] ambas { $bound }
   *[other] todas { $bound }
}

# The name of a package's further row: what it holds. "first": the other of two reports that differ.
row_chapter = { $package }, { $event ->
    [first] { $extractions ->
        [one] informada también: extracción { $numbers }
       *[other] informadas también: extracciones { $numbers }
    }
    [again] { $extractions ->
        [one] informada de nuevo: extracción { $numbers }
       *[other] informadas de nuevo: extracciones { $numbers }
    }
    [repeat] { $extractions ->
        [one] repetición: extracción { $numbers }
       *[other] repetición: extracciones { $numbers }
    }
    [further] { $extractions ->
        [one] otra extracción { $numbers }
       *[other] otras extracciones { $numbers }
    }
   *[together] { $extractions ->
        [0] ninguna extracción cuenta
        [one] la extracción que cuenta
        [2] las dos que cuentan, juntas
       *[other] las { $extractions } que cuentan, juntas
    }
}

# Under the table, where a figure stands in parentheses.
table_unused = Entre paréntesis: informado, no utilizado.

# Under the table. "decides": what they give together decides. "close": it does not, under guarded decisions. "open": its bounds
# lie on both sides.
note_straddles = { $standing ->
    [close] { $kind ->
        [range] { $package }: sus extracciones concuerdan, pero están a ambos lados del límite. Juntas dan { $figure }, demasiado cerca del límite para decidir.
       *[mean] { $package }: sus extracciones concuerdan, pero están a ambos lados del límite. Su media, { $figure }, está demasiado cerca de él para decidir.
    }
    [open] { $package }: sus extracciones concuerdan, pero están a ambos lados del límite. Juntas dan { $figure }, lo que no decide.
   *[decides] { $kind ->
        [range] { $package }: sus extracciones concuerdan, pero están a ambos lados del límite. Decide lo que dan juntas: { $figure }.
       *[mean] { $package }: sus extracciones concuerdan, pero están a ambos lados del límite. Decide su media: { $figure }.
    }
}

# In the table, above their row: a person declared extractions a repeat of the test; $reason is that person's sentence.
note_repeat = { $extractions ->
    [one] { $package }: la extracción { $numbers } es una repetición, decidida por { $by } el { $day }. { $reason }
   *[other] { $package }: las extracciones { $numbers } son una repetición, decidida por { $by } el { $day }. { $reason }
}

# Under the table: the lab reported more extractions than the programme asks for, and the register of corrections has no decision.
note_beyond = { $by ->
    [count] En { $packages } envases hay más extracciones de las que pide el programa ({ $asked }). No consta el motivo.
   *[name] { $named }: más extracciones de las que pide el programa ({ $asked }). No consta el motivo.
}

# In the table, below their row: two reports of one extraction differ.
note_conflict = { $package }: aquí difieren los informes del laboratorio y no se usa ninguna de las cifras. En { $unit }: { $reports }.

# One of them, as the note lists it.
note_conflict_report = extracción { $extraction }, { $figure } en { $file }, { $cell }

# In the table, below their row: a person set readings aside; $reason is that person's sentence.
note_set_aside = { $extractions ->
    [one] { $package }: la extracción { $numbers } fue descartada por { $by } el { $day }. { $reason }
   *[other] { $package }: las extracciones { $numbers } fueron descartadas por { $by } el { $day }. { $reason }
}

# In the table, below their row: a lab reported more extractions than a document lists one by one.
note_left_out = { $package }: { $extractions ->
    [one] aquí no figura una extracción más
   *[other] aquí no figuran { $extractions } extracciones más
}{ $figures ->
    [yes] , de { $lowest } a { $highest } { $unit }
   *[no] { "" }
}. El archivo extractions.csv las contiene todas.

# Under the table, after the first that are named: extractions whose results cannot be read, or that have none.
note_more_unused = { $extractions ->
    [one] { $package }: una extracción más no tiene un resultado que pueda usarse.
   *[other] { $package }: { $extractions } extracciones más no tienen un resultado que pueda usarse.
}

# Under the table: the lab withdrew a report, and another took its place; it is not named.
note_replaced = { $by ->
    [count] En { $packages } envases el laboratorio sustituyó un informe anterior. Aquí no se usa ninguna de sus cifras.
   *[name] { $named }: el laboratorio sustituyó un informe anterior. Aquí no se usa ninguna de sus cifras.
}

# Under the table: the lab gave a row, and in it what says that there is no result.
note_not_reported = { $empty ->
    [yes] { $package }, extracción { $extraction }: el laboratorio dio una fila sin resultado.
   *[no] { $package }, extracción { $extraction }: el laboratorio dio una fila sin resultado («{ $written }»).
}

# Under the table: what the lab wrote cannot be read as a result.
note_unreadable = { $empty ->
    [yes] { $package }, extracción { $extraction }: lo que informó el laboratorio no puede leerse como resultado.
   *[no] { $package }, extracción { $extraction }: lo que informó el laboratorio («{ $written }») no puede leerse como resultado.
}

# Under the table.
note_range = { $by ->
    [count] En { $packages } envases una extracción es una cota y no un número, de modo que el resultado es un intervalo.
   *[name] { $named }: una extracción es una cota y no un número, de modo que el resultado es un intervalo.
}

# Under the table.
note_open_end = { $by ->
    [count] En { $packages } envases todas las extracciones superan lo que mide el ensayo, de modo que el resultado no tiene extremo superior.
   *[name] { $named }: todas las extracciones superan lo que mide el ensayo, de modo que el resultado no tiene extremo superior.
}

# Under the table: gluten is taken as twice the gliadin (CXS 118-1979, 5.1).
note_gliadin = { $all ->
    [yes] El laboratorio informó gliadina. Las cifras son aquí el doble de las informadas: gluten en { $unit }, como lo cuenta la norma CXS 118 del Codex.
   *[no] { $by ->
        [count] El laboratorio informó gliadina. Las cifras de { $packages } envases son aquí el doble de las informadas: gluten en { $unit }, como lo cuenta la norma CXS 118 del Codex.
       *[name] El laboratorio informó gliadina. Las cifras de { $named } son aquí el doble de las informadas: gluten en { $unit }, como lo cuenta la norma CXS 118 del Codex.
    }
}

# Under the table: wells of one extract are no repeats of the test.
note_wells = Donde el laboratorio leyó una extracción en varios pocillos, la cifra de la extracción es su media.

## What the result says, and what it does not

# Packages over the limit.
says_over = { $packages ->
    [one] { $rule ->
        [detection] En el único envase que compramos se detectó gluten.
        [passes] { $guarded ->
            [yes] El único envase que compramos supera el límite de { $limit }, incluso restada la incertidumbre del ensayo.
           *[no] El único envase que compramos supera el límite de { $limit }.
        }
       *[fails] { $guarded ->
            [yes] El único envase que compramos alcanza o supera el límite de { $limit }, incluso restada la incertidumbre del ensayo.
           *[no] El único envase que compramos alcanza o supera el límite de { $limit }.
        }
    }
   *[other] { $rule ->
        [detection] De los { $packages } envases que compramos, se detectó gluten en { $over }.
       *[other] { $guarded ->
            [yes] { $over ->
                [one] { $rule ->
                    [passes] De los { $packages } envases que compramos, 1 supera el límite de { $limit }, incluso restada la incertidumbre del ensayo.
                   *[fails] De los { $packages } envases que compramos, 1 alcanza o supera el límite de { $limit }, incluso restada la incertidumbre del ensayo.
                }
               *[other] { $rule ->
                    [passes] De los { $packages } envases que compramos, { $over } superan el límite de { $limit }, incluso restada la incertidumbre del ensayo.
                   *[fails] De los { $packages } envases que compramos, { $over } alcanzan o superan el límite de { $limit }, incluso restada la incertidumbre del ensayo.
                }
            }
           *[no] { $over ->
                [one] { $rule ->
                    [passes] De los { $packages } envases que compramos, 1 supera el límite de { $limit }.
                   *[fails] De los { $packages } envases que compramos, 1 alcanza o supera el límite de { $limit }.
                }
               *[other] { $rule ->
                    [passes] De los { $packages } envases que compramos, { $over } superan el límite de { $limit }.
                   *[fails] De los { $packages } envases que compramos, { $over } alcanzan o superan el límite de { $limit }.
                }
            }
        }
    }
}

# After it: the exact two-sided interval (Clopper and Pearson 1934). Its ends cover both outcomes of undecided packages.
says_share = { $undecided ->
    [0] Si fueran una muestra al azar, la proporción real podría estar entre { $lower } y { $upper } (nivel de confianza del 95 %).
   *[other] Si fueran una muestra al azar, la proporción real podría estar entre { $lower } y { $upper } (nivel de confianza del 95 %, sea cual sea el resultado de los envases sin decidir).
}

# Every package below quantification. "lowest": that is the lowest figure that the assay gives; a lab may also say "below 19".
says_none_measured = { $lowest ->
    [yes] { $packages ->
        [one] El único envase que compramos dio menos de { $below }. Es la respuesta más baja que da este ensayo. No significa cero.
        [2] Los 2 envases que compramos dieron menos de { $below }. Es la respuesta más baja que da este ensayo. No significa cero.
       *[other] Los { $packages } envases que compramos dieron menos de { $below }. Es la respuesta más baja que da este ensayo. No significa cero.
    }
   *[no] { $packages ->
        [one] El único envase que compramos dio menos de { $below }. Cuánto menos, el laboratorio no lo dice. No significa cero.
        [2] Los 2 envases que compramos dieron menos de { $below }. Cuánto menos, el laboratorio no lo dice. No significa cero.
       *[other] Los { $packages } envases que compramos dieron menos de { $below }. Cuánto menos, el laboratorio no lo dice. No significa cero.
    }
}

# Every package within the limit.
says_within = { $packages ->
    [one] { $rule ->
        [detection] En el único envase que compramos no se detectó gluten (límite de detección { $limit }).
        [passes] El único envase que compramos no supera el límite de { $limit }.
       *[fails] El único envase que compramos está por debajo del límite de { $limit }.
    }
    [2] { $rule ->
        [detection] En ninguno de los 2 envases que compramos se detectó gluten (límite de detección { $limit }).
        [passes] Ninguno de los 2 envases que compramos supera el límite de { $limit }.
       *[fails] Los 2 envases que compramos están por debajo del límite de { $limit }.
    }
   *[other] { $rule ->
        [detection] En ninguno de los { $packages } envases que compramos se detectó gluten (límite de detección { $limit }).
        [passes] Ninguno de los { $packages } envases que compramos supera el límite de { $limit }.
       *[fails] Los { $packages } envases que compramos están por debajo del límite de { $limit }.
    }
}

# After it, where every package has a result that ends somewhere.
says_highest = El resultado más alto de un envase fue { $figure }.

# No verdict, and no package decides.
says_none_decides = { $packages ->
    [0] No se ha analizado ningún envase.
    [one] El único envase que compramos no dio un resultado que decida.
    [2] Ninguno de los 2 envases que compramos dio un resultado que decida.
   *[other] Ninguno de los { $packages } envases que compramos dio un resultado que decida.
}

# No verdict though every figure is within the limit: the assay can miss gluten in such a food.
says_unfit = { $packages ->
    [one] { $rule ->
        [detection] En el único envase que compramos no se detectó gluten. En un alimento de este tipo al ensayo puede escapársele gluten, de modo que eso no decide.
       *[other] El único envase que compramos dio una cifra { limit_within }. En un alimento de este tipo al ensayo puede escapársele gluten, de modo que eso no decide.
    }
    [2] { $rule ->
        [detection] En ninguno de los 2 envases que compramos se detectó gluten. En un alimento de este tipo al ensayo puede escapársele gluten, de modo que eso no decide.
        [passes] Los 2 envases que compramos dieron cifras no superiores a { $limit }. En un alimento de este tipo al ensayo puede escapársele gluten, de modo que eso no decide.
       *[fails] Los 2 envases que compramos dieron cifras inferiores a { $limit }. En un alimento de este tipo al ensayo puede escapársele gluten, de modo que eso no decide.
    }
   *[other] { $rule ->
        [detection] En ninguno de los { $packages } envases que compramos se detectó gluten. En un alimento de este tipo al ensayo puede escapársele gluten, de modo que eso no decide.
        [passes] Los { $packages } envases que compramos dieron cifras no superiores a { $limit }. En un alimento de este tipo al ensayo puede escapársele gluten, de modo que eso no decide.
       *[fails] Los { $packages } envases que compramos dieron cifras inferiores a { $limit }. En un alimento de este tipo al ensayo puede escapársele gluten, de modo que eso no decide.
    }
}

# No verdict, and some packages are within the limit.
says_some_decide = { $decided ->
    [one] { $rule ->
        [detection] De los { $packages } envases que compramos, en 1 no se detectó gluten; sin un resultado que decida: { $open }.
        [passes] De los { $packages } envases que compramos, 1 no supera el límite de { $limit }; sin un resultado que decida: { $open }.
       *[fails] De los { $packages } envases que compramos, 1 está por debajo del límite de { $limit }; sin un resultado que decida: { $open }.
    }
   *[other] { $rule ->
        [detection] De los { $packages } envases que compramos, en { $decided } no se detectó gluten; sin un resultado que decida: { $open }.
        [passes] De los { $packages } envases que compramos, { $decided } no superan el límite de { $limit }; sin un resultado que decida: { $open }.
       *[fails] De los { $packages } envases que compramos, { $decided } están por debajo del límite de { $limit }; sin un resultado que decida: { $open }.
    }
}

# On the sheet of an earlier round, once a later one is published. $rounds are sentences on these.
tested_again = Desde entonces se ha vuelto a analizar. { $rounds }

# A later round does not undo an earlier one. $number is that of its sheet.
other_round = { $verdict ->
    [over] { $packages ->
        [one] { $rule ->
            [detection] En la ronda { $round } ({ $number }), se detectó gluten en el único envase.
            [passes] En la ronda { $round } ({ $number }), el único envase superó el límite.
           *[fails] En la ronda { $round } ({ $number }), el único envase alcanzó o superó el límite.
        }
       *[other] { $over ->
            [one] { $rule ->
                [detection] En la ronda { $round } ({ $number }), se detectó gluten en 1 de { $packages } envases.
                [passes] En la ronda { $round } ({ $number }), 1 de { $packages } envases superó el límite.
               *[fails] En la ronda { $round } ({ $number }), 1 de { $packages } envases alcanzó o superó el límite.
            }
           *[other] { $rule ->
                [detection] En la ronda { $round } ({ $number }), se detectó gluten en { $over } de { $packages } envases.
                [passes] En la ronda { $round } ({ $number }), { $over } de { $packages } envases superaron el límite.
               *[fails] En la ronda { $round } ({ $number }), { $over } de { $packages } envases alcanzaron o superaron el límite.
            }
        }
    }
    [within] { $packages ->
        [one] { $rule ->
            [detection] En la ronda { $round } ({ $number }), no se detectó gluten en el único envase.
            [passes] En la ronda { $round } ({ $number }), el único envase no superó el límite.
           *[fails] En la ronda { $round } ({ $number }), el único envase estuvo por debajo del límite.
        }
       *[other] { $rule ->
            [detection] En la ronda { $round } ({ $number }), no se detectó gluten en ninguno de los { $packages } envases.
            [passes] En la ronda { $round } ({ $number }), ninguno de los { $packages } envases superó el límite.
           *[fails] En la ronda { $round } ({ $number }), los { $packages } envases estuvieron por debajo del límite.
        }
    }
   *[none] En la ronda { $round } ({ $number }), no hubo dictamen.
}

# Beside a verdict over the limit.
says_not_over = No dice que todos los envases sean como estos, cómo llegó el gluten ni que alguien fuera descuidado. Otro lote puede dar otro resultado.

# Beside a verdict within it: the one-sided upper bound for none of n (exact binomial).
says_not_within = { $rule ->
    [detection] No demuestra que ningún envase contenga gluten detectable. Incluso en una muestra al azar con 0 de { $packages } envases positivos, hasta el { $upper } de todos los envases podría serlo (nivel de confianza del 95 %).
    [passes] No demuestra que ningún envase supere el límite. Incluso en una muestra al azar con 0 de { $packages } por encima del límite, hasta el { $upper } de todos los envases podría estarlo (nivel de confianza del 95 %).
   *[fails] No demuestra que todos los envases estén por debajo del límite. Incluso en una muestra al azar con 0 de { $packages } en el límite o por encima, hasta el { $upper } de todos los envases podría estarlo (nivel de confianza del 95 %).
}

# Likewise, where no share can be given.
says_not_proven = { $rule ->
    [detection] No demuestra que ningún envase contenga gluten detectable.
    [passes] No demuestra que ningún envase supere el límite.
   *[fails] No demuestra que todos los envases estén por debajo del límite.
}

# Beside "no verdict".
says_not_none = { $rule ->
    [detection] No responde ni en un sentido ni en otro: no dice que el producto esté libre de gluten detectable, y no dice que lo contenga.
    [passes] No responde ni en un sentido ni en otro: no dice que el producto respete el límite, y no dice que lo supere.
   *[fails] No responde ni en un sentido ni en otro: no dice que el producto esté por debajo del límite, y no dice que lo alcance o lo supere.
}

## What passed between the programme and the maker

# An answer, quoted whole.
told_reply = El fabricante respondió el { $day }: «{ $said }»

# Something that the maker did, in the programme's words, which are no quotation.
told_action = El { $day } se anotó una medida del fabricante: { $said }

# Nothing further is expected.
told_closed = Cerrado el { $day }: { $said }

## The story in days

# Heading of the days.
story_heading = De la tienda a la hoja

# Before a day. "next": what has to happen yet.
story_what = { $what ->
    [bought] Compra
    [sent] Envío al laboratorio
    [tested] Análisis
    [told] Aviso al fabricante
    [answered] Respuesta del fabricante
    [closed] Cierre
    [issued] Publicación
    [amended] Modificación
   *[next] A continuación
}

# After "maker told".
story_told = { $asked ->
    [yes] { $day }; respuesta solicitada para el { $due }
   *[no] { $day }
}

# In the place of a day.
story_no_day = no consta

# After "maker told", where the maker is to be told.
story_no_notice = no consta ningún aviso

# After "maker answered", where a notice was sent.
story_no_answer = no consta ninguna declaración

# After "issued", on a proof.
story_not_yet = todavía no

# After "next", on a proof.
story_next_tell = Hay que avisar al fabricante antes de publicar.

# Likewise.
story_next_answer = La respuesta del fabricante se espera para el { $due }.

# Likewise: the maker has until then.
story_next_issue = Esta hoja puede publicarse a partir del { $day }.

# After "next", where there is no verdict.
story_next_settle = Primero hay que aclarar lo que los registros dejan abierto.

# Likewise. Up to four packages are named, more are counted.
story_next_conflict = { $by ->
    [count] El laboratorio debe decir cuál de sus informes vale para { $packages } envases.
   *[name] { $packages ->
        [one] El laboratorio debe decir cuál de sus informes vale para el envase { $named }.
       *[other] El laboratorio debe decir cuáles de sus informes valen para los envases { $named }.
    }
}

# Likewise.
story_next_lab = { $by ->
    [count] Faltan aún resultados del laboratorio de { $packages } envases.
   *[name] { $packages ->
        [one] Falta aún un resultado del laboratorio del envase { $named }.
       *[other] Faltan aún resultados del laboratorio de los envases { $named }.
    }
}

# Likewise: nothing of it is on record yet.
story_next_repeat = { $by ->
    [count] Hace falta que el laboratorio repita { $packages } envases, o envases nuevos; todavía no consta ni lo uno ni lo otro.
   *[name] { $packages ->
        [one] Hace falta que el laboratorio repita el envase { $named }, o un envase nuevo; todavía no consta ni lo uno ni lo otro.
       *[other] Hace falta que el laboratorio repita los envases { $named }, o envases nuevos; todavía no consta ni lo uno ni lo otro.
    }
}

# Likewise.
story_next_finer = { $by ->
    [count] Para { $packages } envases hace falta un análisis más fino o envases nuevos.
   *[name] { $packages ->
        [one] Para el envase { $named } hace falta un análisis más fino o un envase nuevo.
       *[other] Para los envases { $named } hace falta un análisis más fino o envases nuevos.
    }
}

# Likewise.
story_next_buy = { $packages ->
    [one] Hay que comprar un envase más.
   *[other] Hay que comprar { $packages } envases más.
}

# Likewise: for fermented and hydrolysed food.
story_next_unfit = Ningún análisis de este tipo puede aclararlo; quizá sí la documentación del fabricante sobre los ingredientes.

# Likewise: packages of a later round are on record.
story_next_round = Constan envases de la ronda { $round }.

## Pictures

# Under a strip of a hundred small packages: what was tested, and how many of the hundred it leaves open.
shares_strip = { $over } de { $packages }: hasta { $most }

# Under a smaller strip beside it: so many packages, had none been over the limit.
shares_more = { $packages }: hasta { $most }

# Under the strips.
shares_key = Rayados: cuántos de 100 envases podrían resultar aún { over_the_limit }, si los nuestros fueran una muestra al azar. Debajo, en gris: qué mostrarían 6, 14 o 59 envases.

# Likewise, where some packages were over the limit.
shares_key_over = Si los nuestros fueran una muestra al azar, de 100 envases al menos los negros resultarían { over_the_limit }, y los rayados podrían resultarlo (confianza del 95 %).

# The strips for those who cannot see them; $strips are such as above.
shares_alt = Tiras de 100 envases cada una. Rayados: cuántos podrían resultar { over_the_limit } aunque ninguno de los analizados resultó así. { $strips }.

# Likewise.
shares_alt_over = { $least ->
    [0] Una tira de 100 envases: a lo sumo { $most } podrían resultar { over_the_limit }.
    [one] Una tira de 100 envases: al menos uno resultaría { over_the_limit }, a lo sumo { $most }.
   *[other] Una tira de 100 envases: al menos { $least } resultarían { over_the_limit }, a lo sumo { $most }.
}

# Heading of what the result means in a portion.
portion_heading = En una ración

# 1 ppm is 1 mg in a kilogram. No amount is called safe.
portion_said = { $kind ->
    [below] Una ración de { $portion } del envase { $package } (por debajo de { $figure }) tiene menos de { $own } de gluten. En el límite serían { $limit }.
   *[measured] Una ración de { $portion } del envase { $package } ({ $figure }) tiene { $own } de gluten. En el límite serían { $limit }.
} No llamamos segura a ninguna cantidad.

# Beside the squares of this food.
portion_own = { $kind ->
    [below] aquí menos de { $own }
   *[measured] aquí { $own }
}

# Beside the squares at the limit.
portion_limit = en el límite { $limit }

# The squares for those who cannot see them.
portion_alt = { $kind ->
    [below] Gluten en una ración en cuadros de { $square }: aquí menos de { $own }, en el límite { $limit }.
   *[measured] Gluten en una ración en cuadros de { $square }: aquí { $own }, en el límite { $limit }.
}

## How to check the sheet

# Heading.
check_heading = Cómo comprobar esta hoja

# A sum worked once; figures without their unit, since the heads of the table have it.
sum_mean = Envase { $package }: { $readings }. Su media es { $mean }{ $printed ->
    [rounded] , impresa como { $result }
   *[same] { "" }
}. Distan { $gap }; a ese nivel se admite hasta { $allowed }.

# Likewise.
sum_disagree = Envase { $package }: { $readings }. Distan { $gap }; a ese nivel se admite hasta { $allowed }, por eso no tienen media.

# Likewise.
sum_below = Envase { $package }: { $readings }. No se midió ninguna cifra, por eso no hay media: el resultado es { $result }.

# Likewise: "<5" may be any value from 0 to 5.
sum_range = Envase { $package }: { $readings }. «<» o «>» deja abierto un valor entre límites, y con él la media: { $result }.

# After the sum: the place of its first figure.
check_place = La primera cifra está en { $file }, fila { $row }, columna { $column }.

# Before the address of the sheet's page, on issued sheets.
check_page = Esta hoja y sus datos en la web:

# The square for those who cannot see it.
check_square = Código QR de { $address }

## Who answers for the sheet

# In the foot: who publishes it. ISO/IEC 17025:2017, 7.8.2.1 has a lab say so of its report; this sheet is not the lab's.
imprint = { $addressed ->
    [yes] { $directed ->
        [yes] Responsable: { $director }, { $programme }, { $address }.
       *[no] Responsable: { $programme }, { $address }.
    }
   *[no] { $directed ->
        [yes] Responsable: { $director }, { $programme } (no consta dirección postal).
       *[no] Responsable: { $programme } (no consta dirección postal).
    }
}

# Before it in the foot; the revision says what changed (7.8.8).
imprint_mistakes = Se corrige en una nueva revisión.

## Files and revisions

# Under "where the numbers come from".
sources_nothing = El laboratorio aún no ha informado nada.

# Likewise, where the PDF carries something of every lab file.
sources_carried = { $carried ->
    [files] Los archivos del laboratorio van adjuntos a este PDF.
   *[cells] Las celdas aquí utilizadas van adjuntas a este PDF.
}

# Likewise, where some are too large.
sources_some = { $files ->
    [one] Uno de estos archivos va adjunto a este PDF.
   *[other] Adjuntos a este PDF: { $files } de estos archivos.
}

# After the certificates and photographs that are named; $file is attached to the PDF.
sources_more = { $exhibits ->
    [one] Otro certificado o fotografía, con nombre y SHA-256, en { $file }.
   *[other] Otros certificados y fotografías, con nombre y SHA-256, en { $file }: { $exhibits }.
}

# In the head of an issued sheet, after its number.
edition_line = revisión { $revision } · { $day }

# In the head of a proof.
edition_proof = { $dated ->
    [yes] Prueba de la revisión { $revision }, del { $day }, no destinada a publicarse
   *[no] Prueba de la revisión { $revision }, no destinada a publicarse
}

# Under "revisions" (ISO/IEC 17025:2017, 7.8.8: a changed report names the one it replaces).
edition_replaces = Sustituye a la revisión { $revision }, del { $day }.

# Beside the first revision.
edition_first = Primera emisión.

# Beside a later one of which the register gives no reason.
edition_unexplained = No consta el motivo.

# After the three latest.
edition_more = Todas las revisiones están en el archivo del programa.

## Where a product stands with its maker

# In lists: the maker need not be told.
maker_not_needed = Nada que comunicar al fabricante

# Likewise.
maker_to_send = Aún no se ha informado al fabricante

# Likewise.
maker_waiting = A la espera de respuesta

# Likewise; no reproach, since none is owed.
maker_overdue = Sin respuesta en la fecha pedida

# Likewise.
maker_replied = { $late ->
    [yes] La respuesta llegó tarde
   *[no] El fabricante respondió
}

# Likewise.
maker_closed = Cerrado el { $day }

# In the place of a long reply.
maker_long_text = El texto completo está en la hoja del producto.

## Whether a sheet may be published

# The state, as one would say it; the screens say it in English.
state_with_lab = en el laboratorio

# Likewise.
state_waiting = a la espera del laboratorio

# Likewise.
state_held = retenida

# Likewise.
state_ready = lista

# Likewise.
state_published = publicada

# State and reason. $until is a date in figures.
publication_standing = { $dated ->
    [yes] { $state } hasta { $until }. { $why }
   *[no] { $state }. { $why }
}

# What the state rests on.
why_nothing_reported = El laboratorio aún no ha informado nada.

# Likewise.
why_not_reported = { $packages ->
    [one] El laboratorio aún no ha dado el resultado de 1 envase: { $codes }.
   *[other] El laboratorio aún no ha dado los resultados de { $packages } envases: { $codes }.
}

# Likewise; files and lines.
why_register = Los registros dejan abierto algo que la afecta: { $places }. Hay que aclararlo antes.

# Likewise; files and cells.
why_reading = Una lectura propia no puede usarse como está: { $places }. Hay que corregirla o descartarla en corrections.csv.

# Likewise.
why_no_notice = No se ha informado al fabricante: no consta ninguna comunicación.

# Likewise.
why_no_reply = Se informó al fabricante el { $told } y no ha respondido: puede publicarse a partir del { $until }.

# Likewise.
why_nothing_to_tell = No hay nada que comunicar antes al fabricante.

# Likewise.
why_answered = El fabricante respondió el { $day }.

# Likewise.
why_time_is_over = Se informó al fabricante el { $told } y tuvo hasta el { $since } para responder.

# Likewise: a correction in the maker's favour, or for safety.
why_corrects = Corrige lo publicado, y eso no espera a nadie.

# Likewise.
why_issued = La revisión { $revision } se emitió el { $day } y dice lo mismo.

# After it, where an accusation was made or taken back.
why_letter_due = La revisión { $revision } decía otra cosa: procede de inmediato una carta de rectificación.

# Many codes or places.
some_and_more = { $some } y { $more } más

# On a sheet that was issued before its time, and in the register of what was issued: what it did not wait for. No full stop.
early_not_reported = { $packages ->
    [one] Emitida antes de que el laboratorio diera el resultado de 1 envase
   *[other] Emitida antes de que el laboratorio diera los resultados de { $packages } envases
}

# Likewise.
early_no_notice = Emitida antes de informar al fabricante

# Likewise.
early_no_reply = Emitida antes de que venciera, el { $day }, el plazo del fabricante para responder

# Likewise.
early_other = Emitida antes de tiempo

# In summary and newsletter: what was issued reads otherwise now. What it said is not repeated.
under_revision = { $branded ->
    [yes] { $product } ({ $brand }), hoja { $number }: en revisión. Ya no debe confiarse en la revisión { $revision }, del { $day }; aún no se ha emitido otra.
   *[no] { $product }, hoja { $number }: en revisión. Ya no debe confiarse en la revisión { $revision }, del { $day }; aún no se ha emitido otra.
}

# What leads the next newsletter, and stands on the page of corrections. $said is one of what a sheet says against a product.
corrected = { $branded ->
    [yes] Corrección: { $product } ({ $brand }), hoja { $number }. La revisión { $revision }, del { $day }, decía que { $said }.
   *[no] Corrección: { $product }, hoja { $number }. La revisión { $revision }, del { $day }, decía que { $said }.
}

# After it.
corrected_now = { $issued ->
    [yes] Desde el { $day } la hoja dice que { $says }.
   *[no] La próxima revisión, aún no emitida, dice que { $says }.
}

# After it; $reason is the programme's own sentence, without its full stop.
corrected_why = Motivo: { $reason }.

# Taken in by these sentences, and by the letter of correction. "amount": a package is over the limit. "label": an ingredient is a
# source of gluten.
accused = { $amount ->
    [yes] { $label ->
        [yes] { $rule ->
            [detection] en al menos un envase se detectó gluten, y la lista de ingredientes nombra una fuente de gluten
           *[other] al menos un envase dio un resultado { over_the_limit }, y la lista de ingredientes nombra una fuente de gluten
        }
       *[no] { $rule ->
            [detection] en al menos un envase se detectó gluten
           *[other] al menos un envase dio un resultado { over_the_limit }
        }
    }
   *[no] { $label ->
        [yes] la lista de ingredientes nombra una fuente de gluten
       *[no] { $rule ->
            [detection] no se conoce ningún envase con gluten detectable, y la lista de ingredientes no nombra ninguna fuente de gluten
           *[other] no se conoce ningún envase con un resultado { over_the_limit }, y la lista de ingredientes no nombra ninguna fuente de gluten
        }
    }
}
