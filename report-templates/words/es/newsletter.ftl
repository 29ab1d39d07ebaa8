# The newsletter, on paper, on a screen and as text.

## What is new

# The newsletter's name at the head of its paper.
newsletter_name = Boletín { $short_name }

# The title in the PDF's data.
newsletter_title = { $programme }, boletín. { $headline }

# What it is, in the PDF's data.
newsletter_of = Boletín de { $programme }.

# Words for the catalogue in the PDF's data, divided by semicolons.
newsletter_keywords = gluten; resultados de análisis; boletín

# The subject of the newsletter as a mail; a proof says that it is one.
newsletter_subject = { $proof ->
    [yes] Prueba, no publicable: boletín de { $programme }. { $headline }
   *[no] Boletín de { $programme }. { $headline }
}

# In place of the readers' addresses in that mail. ASCII, since some mail programs cannot read it otherwise.
newsletter_no_readers = Escriba aqui las direcciones de los lectores

# The first line of the plain text.
newsletter_first_line = { $programme }: boletín

# Taken in by the headline: how many of the new products are within the limit, over it, without a verdict.
newsletter_part = { $verdict ->
    [within] { $rule ->
        [passes] { $number } dentro del límite
        [detection] { $n ->
            [one] uno negativo en gluten
           *[other] { $number } negativos en gluten
        }
       *[fails] { $number } por debajo del límite
    }
    [over] { $rule ->
        [passes] { $number } por encima del límite
        [detection] { $n ->
            [one] uno positivo en gluten
           *[other] { $number } positivos en gluten
        }
       *[fails] { $n ->
            [one] uno en el límite o por encima
           *[other] { $number } en el límite o por encima
        }
    }
   *[none] { $number } sin dictamen
}

# The headline: what is new. $parts is a list of the parts before.
newsletter_new = { $n ->
    [one] Un producto es nuevo: { $parts }.
   *[other] Hay { $n } productos nuevos: { $parts }.
}

# The headline where nothing is new: since the last issue, or at all.
newsletter_nothing = { $results ->
    [yes] No hay nada nuevo desde el último número.
   *[no] No hay nada nuevo: ningún producto tiene aún resultado.
}

# After the headline: revisions of published sheets, which are no new products.
newsletter_amended_count = { $n ->
    [one] Una hoja se ha modificado.
   *[other] Se han modificado { $n } hojas.
}

## How it was done

# How the programme tests: settings.
newsletter_how = { $packages ->
    [one] Compramos un envase de cada producto y lo hacemos analizar { $times ->
        [one] una vez
        [2] dos veces
       *[other] { $spelt_times } veces
    }.
   *[other] Compramos { $spelt_packages } envases de cada producto y hacemos analizar cada envase { $times ->
        [one] una vez
        [2] dos veces
       *[other] { $spelt_times } veces
    }.
}

# The limit. "mixed": some product's claim has another limit. "detection": Food Standards Code 1.2.7.
newsletter_limit = { $rule ->
    [detection] La norma exige que no se detecte gluten; el ensayo lo detecta desde { $limit }.
   *[fails] { $mixed ->
        [yes] El límite depende de la declaración; para «sin gluten» es de { $limit }.
       *[no] El límite para la declaración es de { $limit }.
    }
}

# What too little to measure means; the amount is known where all assays measure from the same on.
newsletter_measured = { $known ->
    [yes] Demasiado poco para medirlo significa menos de { $amount }. No significa cero.
   *[no] Demasiado poco para medirlo no significa cero.
}

# What so few packages can say: the one-sided exact bound for 0 of n, 1 less the n-th root of 0.05.
newsletter_snapshot = { $packages ->
    [one] Son instantáneas de los envases que compramos. Aunque nuestro único envase { $rule ->
        [passes] no supere el límite
        [detection] sea negativo en gluten
       *[fails] esté por debajo del límite
    }, podría no ser así hasta en el { $share } de los envases de un producto (confianza del 95 %, si el nuestro fuera una muestra al azar).
   *[other] Son instantáneas de los envases que compramos. Aunque ninguno de nuestros { $packages } envases { $rule ->
        [passes] supere el límite
        [detection] sea positivo en gluten
       *[fails] esté en el límite o por encima
    }, podría no ser así hasta en el { $share } de los envases de un producto (confianza del 95 %, si los nuestros fueran una muestra al azar).
}

## Charts and lists

# What the marks of the chart mean.
newsletter_marks = { $rule ->
    [passes] Marca llena: envase por encima del límite. Marca vacía: dentro del límite. { $known ->
        [yes] Flecha: menos de { $amount }, o menos de la cifra en su punta; hacia la derecha: más. Discontinua o en palabras: sin decidir.
       *[no] Flecha: demasiado poco para medirlo, o menos de la cifra en su punta; hacia la derecha: más. Discontinua o en palabras: sin decidir.
    }
    [detection] Marca llena: envase positivo en gluten. Marca vacía: negativo en gluten. { $known ->
        [yes] Flecha: menos de { $amount }, o menos de la cifra en su punta; hacia la derecha: más. Discontinua o en palabras: sin decidir.
       *[no] Flecha: demasiado poco para medirlo, o menos de la cifra en su punta; hacia la derecha: más. Discontinua o en palabras: sin decidir.
    }
   *[fails] Marca llena: envase en el límite o por encima. Marca vacía: por debajo del límite. { $known ->
        [yes] Flecha: menos de { $amount }, o menos de la cifra en su punta; hacia la derecha: más. Discontinua o en palabras: sin decidir.
       *[no] Flecha: demasiado poco para medirlo, o menos de la cifra en su punta; hacia la derecha: más. Discontinua o en palabras: sin decidir.
    }
}

# After it, where the list does not name every new product.
newsletter_listed = { $rule ->
    [passes] La lista nombra los productos por encima del límite, los que no tienen dictamen y aquellos cuya etiqueta nombra una fuente de gluten; el registro del resumen del programa los recoge todos.
    [detection] La lista nombra los productos positivos en gluten, los que no tienen dictamen y aquellos cuya etiqueta nombra una fuente de gluten; el registro del resumen del programa los recoge todos.
   *[fails] La lista nombra los productos en el límite o por encima, los que no tienen dictamen y aquellos cuya etiqueta nombra una fuente de gluten; el registro del resumen del programa los recoge todos.
}

# After that, in a mail that cannot list all of these.
newsletter_first_of = Esta lista acaba tras los primeros { $n }; el boletín impreso los recoge todos.

# In a mail, before the key to the inks of the figures.
newsletter_each_package = Una cifra por envase:

# A meaning of the key, printed in the ink that it explains.
newsletter_figure = { $state ->
    [over] { $rule ->
        [passes] por encima del límite
        [detection] gluten detectado
       *[fails] en el límite o por encima
    }
    [within] { $rule ->
        [passes] en el límite o por debajo
        [detection] gluten no detectado
       *[fails] por debajo del límite
    }
   *[none] sin decidir
}

# In a mail, below a bar: how many are in a band. $of has the band's words, as the chart has them.
newsletter_bar = { $band ->
    [undecided] { $n }: sin decidir
   *[other] { $n }: { $of }
}

# Below a product in a list: a later round of the same food.
newsletter_again = Analizado de nuevo en la ronda { $round }: { $verdict ->
    [over] { $rule ->
        [passes] más de { $limit }
        [detection] gluten detectado
       *[fails] { $limit } o más
    }
    [within] { $rule ->
        [passes] no más de { $limit }
        [detection] gluten no detectado
       *[fails] menos de { $limit }
    }
   *[none] sin dictamen
} (hoja { $number }).

# What the greys of the bars mean. $measured is the middle band, as the chart has it: "5 to below 20 ppm".
newsletter_bands = Blanco: { $known ->
    [yes] menos de { $amount }
   *[no] demasiado poco para medirlo
}. Gris: { $measured }. Negro: { $mixed ->
    [yes] por encima del límite de su declaración
   *[no] { $rule ->
        [passes] más de { $limit }
        [detection] gluten detectado
       *[fails] { $limit } o más
    }
}. Discontinuo: sin decidir.

# The number of a sheet on a line of its own.
newsletter_sheet = Hoja { $number }

# The same in brackets, or below a product's name.
newsletter_sheet_within = hoja { $number }

# The verdict in a list, with the limit.
list_verdict_of = { $verdict ->
    [over] { $rule ->
        [passes] Más de { $limit }
        [detection] Gluten detectado
       *[fails] { $limit } o más
    }
    [within] { $rule ->
        [passes] No más de { $limit }
        [detection] Gluten no detectado (límite de detección { $limit })
       *[fails] Menos de { $limit }
    }
   *[none] Sin dictamen
}

# What parts results that stand in a row: no comma where figures have one.
list_between = { "; " }

# In place of the result of a package whose extractions disagree.
list_disagree = discrepan

# A product's name, where it is not its first round.
list_round = { $product } (ronda { $round })

## Makers, labels, amended sheets, totals

# What a maker says, as it was written, and when.
newsletter_reply = «{ $statement }» ({ $day })

# Whose makers, who were told, have said nothing so far; of more than a few it is only counted.
newsletter_silent = { $named ->
    [yes] { $n ->
        [one] No consta ninguna declaración del fabricante de { $products }. Imprimimos todas las que llegan.
       *[other] No consta ninguna declaración de los fabricantes de { $products }. Imprimimos todas las que llegan.
    }
   *[no] No consta ninguna declaración de los fabricantes de { $n } productos. Imprimimos todas las que llegan.
}

# Whose makers are still to be told.
newsletter_to_tell = { $named ->
    [yes] { $n ->
        [one] Falta avisar al fabricante de { $products }.
       *[other] Falta avisar a los fabricantes de { $products }.
    }
   *[no] Falta avisar a los fabricantes de { $n } productos.
}

# What labels say, their words and products in lines below. Regulation (EU) No 828/2014 forbids no ingredient: "not_forbidden".
newsletter_labels = { $n ->
    [one] { $finding ->
        [gluten_source] Una etiqueta nombra una fuente de gluten, que la norma no admite:
        [not_forbidden] Una etiqueta nombra una fuente de gluten, que la norma de esta declaración no prohíbe:
        [unverified_oats] Una etiqueta nombra avena, sin decir cómo se mantiene separada:
       *[needs_review] Una etiqueta nombra un término de origen dudoso:
    }
   *[other] { $finding ->
        [gluten_source] Hay { $n } etiquetas que nombran una fuente de gluten, que la norma no admite:
        [not_forbidden] Hay { $n } etiquetas que nombran una fuente de gluten, que la norma de esta declaración no prohíbe:
        [unverified_oats] Hay { $n } etiquetas que nombran avena, sin decir cómo se mantiene separada:
       *[needs_review] Hay { $n } etiquetas que nombran un término de origen dudoso:
    }
}

# A product that has a word on its label, with its brand.
newsletter_label_product = { $brand }, { $product }

# A word of labels, in quotes, with the products that have it; of many only how many.
newsletter_label_word = { $named ->
    [yes] { $word }: { $products }
   *[no] { $word }: { $n } productos
}

# The last of these lines, where there are more words than a list can hold.
newsletter_label_words_more = El registro del resumen del programa recoge los demás términos.

# After these.
newsletter_labels_ask = Esas palabras son un motivo para preguntar, no el resultado de un análisis.

# Where no label says anything.
newsletter_labels_none = Ninguna lista de ingredientes que pudimos leer nombra una fuente de gluten.

# A published sheet that was replaced; what was changed and why follows as it was written down.
newsletter_amended = { $product }, hoja { $number }: la revisión { $revision } sustituye a la revisión { $replaced } del { $day }.

# Taken in by the sentence on the programme so far.
newsletter_totals_of = { $rule ->
    [passes] { $within } dentro del límite, { $over } por encima, { $none } sin dictamen
    [detection] { $within } sin gluten detectado, { $over } con gluten detectado, { $none } sin dictamen
   *[fails] { $within } por debajo del límite, { $over } en el límite o por encima, { $none } sin dictamen
}

# The programme so far. "again": a food was tested in more than one round, and counts again.
newsletter_totals = { $products ->
    [0] Hasta ahora ningún producto tiene resultado.
    [one] Hasta ahora 1 producto: { newsletter_totals_of }.
   *[other] { $again ->
        [yes] Hasta ahora { $products } resultados de { $foods } alimentos: { newsletter_totals_of }.
       *[no] Hasta ahora { $products } productos: { newsletter_totals_of }.
    }
}

# Its packages.
newsletter_packages_so_far = { $packages ->
    [one] En total un envase; con demasiado poco gluten para medirlo: { $unmeasured }.
   *[other] En total { $packages } envases, { $unmeasured } de ellos con demasiado poco gluten para medirlo.
}

# What is not counted, since the lab has reported nothing of it.
newsletter_with_lab = { $n ->
    [one] Otro producto está en el laboratorio y no se cuenta aquí.
   *[other] Otros { $n } productos están en el laboratorio y no se cuentan aquí.
}

## Headings and fixed words

# Heading: corrections of what was published.
newsletter_corrections = Correcciones

# Heading of the plain text's list; the unit follows in brackets.
newsletter_new_results = Resultados nuevos

# Heading.
newsletter_makers = Lo que dicen los fabricantes

# Heading.
newsletter_on_labels = En las etiquetas

# Heading.
newsletter_amended_sheets = Hojas modificadas

# Heading.
newsletter_so_far = El programa hasta ahora

# Before the caution.
newsletter_note = Tenga en cuenta.

# The address follows.
newsletter_mistake = ¿Ha visto un error?

# Head of a column.
newsletter_head_sheet = Hoja

# Head of a column.
newsletter_head_product = Producto

# Head of a column.
newsletter_head_brand_and_product = Marca y producto

# Head of a column; the unit follows after a comma. In plain text a colon and the results follow.
newsletter_head_packages = Envases

# Head of a column; the unit follows after a comma.
newsletter_head_results = Resultados por envase

# Head of a column.
newsletter_head_verdict = Dictamen

# Head of a column: what the label says.
newsletter_head_label = Etiqueta

# Head of a column: the verdict, and below it what the label says.
newsletter_head_verdict_and_label = Dictamen y etiqueta

# What stands on every page that is not for publication.
newsletter_proof = Prueba, no publicable
