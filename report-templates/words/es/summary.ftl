# The programme summary.

## What the document is

# In the header, and among the PDF's keywords.
summary_name = Resumen del programa

# The PDF's description, which catalogues show.
summary_of = Resumen del programa { $programme }.

# Keyword of the PDF.
summary_keyword_gluten = gluten

# Keyword of the PDF.
summary_keyword_results = resultados de análisis

# On the cover and in the header of a summary that holds what may not be published yet.
summary_proof = Prueba, no publicable

# At the foot of each page.
summary_mistakes = ¿Ha visto un error? { $address }

# At the foot of the cover.
summary_made_on = Hecho el { $day }.

# Before words that are printed as they stand on a package, or as a maker wrote them.
summary_quote_open = «

# Behind them.
summary_quote_close = »

## Cover

# Title of the cover. $claim: as all packages bear it, in small letters. A food that was tested in two rounds is one food.
summary_title = { $foods ->
    [0] Aún no se ha analizado ningún alimento
    [one] Lo que hallamos en { $foods } alimento { $claimed ->
        [yes] con la declaración «{ $claim }»
       *[no] con una declaración sobre el gluten
    }
   *[other] Lo que hallamos en { $foods } alimentos { $claimed ->
        [yes] con la declaración «{ $claim }»
       *[no] con una declaración sobre el gluten
    }
}

# Under the title: from the first to the last day of testing.
summary_subtitle = Resumen de resultados, análisis del { $days }

# Likewise, where no day of testing is known.
summary_subtitle_undated = Resumen de resultados

# In the block of a verdict.
summary_count = { $products ->
    [one] { $of_them } de { $products } producto
   *[other] { $of_them } de { $products } productos
}

# Beside the block of a verdict.
summary_head = { $n ->
    [0] Ningún producto
    [one] Un producto
   *[other] { spelt_first } productos
}

# In the block of products without a verdict, and among the words that are explained.
summary_no_verdict = Sin dictamen

# Beside the block of products within the limit. "nobody": there is none. "none", "some", "all": in how many of them gluten
# was measured; in $below of them no package had enough.
summary_within = { $measured ->
    [nobody] { $rule ->
        [detection] Ningún producto quedó sin gluten detectado en todos sus envases.
       *[other] En ningún producto quedaron todos los envases { within_the_limit }.
    }
    [none] { $rule ->
        [detection] En ninguno de sus envases se detectó gluten.
       *[other] Todos sus envases quedaron { within_the_limit }.
    } Ninguno contenía bastante gluten para medirlo.
    [some] { $rule ->
        [detection] En ninguno de sus envases se detectó gluten.
       *[other] Todos sus envases quedaron { within_the_limit }.
    } En { $below } de estos productos ningún envase contenía bastante gluten para medirlo.
   *[all] { $rule ->
        [detection] En ninguno de sus envases se detectó gluten.
       *[other] Todos sus envases quedaron { within_the_limit }.
    }
}

# Beside the block of products over the limit. $packages, where there is no such product: "none": every package has a
# result, and none is over; "open": some package is undecided; "some": a package is over in a product that got no verdict.
summary_over = { $products ->
    [some] { $rule ->
        [detection] En al menos un envase se detectó gluten.
       *[other] Al menos un envase quedó { over_the_limit }.
    } Este resumen enumera todos estos productos.
   *[none] { $packages ->
        [some] Ningún producto tiene este dictamen. Los envases { over_the_limit } son de productos sin dictamen.
        [open] { $rule ->
            [detection] De ningún envase se ha demostrado que contenga gluten detectable.
           *[other] De ningún envase se ha demostrado que esté { over_the_limit }.
        }
       *[none] { $rule ->
            [detection] En ningún envase se detectó gluten.
           *[other] Ningún envase quedó { over_the_limit }.
        }
    }
}

# Beside the block of products without a verdict. "claims": products of several claims, each with a limit of its own.
summary_none = { $products ->
    [some] { $shown ->
        [detection] Los resultados no muestran de cada envase si contiene gluten detectable.
        [claims] Los resultados no muestran de cada envase de qué lado del límite de su declaración está.
       *[limit] Los resultados no muestran de cada envase de qué lado de { $limit } está.
    } Este resumen da los motivos.
   *[none] Todos los productos tienen dictamen.
}

# Below the squares of the cover, or the bar that takes their place where there are many products. $over_band: "at or above
# 20 ppm".
summary_squares = { $form ->
    [squares] Un cuadrado por producto. Lleno: { $over_band } ({ $over }). Discontinuo: sin dictamen ({ $undecided }). Con punto: { limit_within_short }, gluten medido en al menos un envase ({ $measured }). Vacío: demasiado poco para medirlo en todos los envases ({ $below }).
   *[bar] La barra contiene todos los productos. Negro: { $over_band } ({ $over }). Discontinuo: sin dictamen ({ $undecided }). Gris: { limit_within_short }, gluten medido en al menos un envase ({ $measured }). Vacío: demasiado poco para medirlo en todos los envases ({ $below }).
}

# Below the squares, where a food was tested in more than one round. $products and $foods_spelt are in words up to nine.
summary_rounds = { $foods ->
    [one] Los { $products } productos son un alimento: el que se analiza en otra ronda cuenta otra vez.
   *[other] Los { $products } productos son { $foods_spelt } alimentos: el que se analiza en otra ronda cuenta otra vez.
}

# Below the squares: products of which the lab has reported nothing yet; there is at least one.
summary_with_lab = { $n ->
    [0] { "" }
    [one] Otro producto está en el laboratorio y no se cuenta aquí.
   *[other] Otros { $n } productos están en el laboratorio y no se cuentan aquí.
}

# On the cover: products whose list of ingredients names a gluten source that the rule does not allow; there is at least
# one.
summary_labels_on_cover = { $n ->
    [0] { "" }
    [one] Al margen de los análisis, la etiqueta de un producto nombra una fuente de gluten que la norma no admite en un alimento con esta declaración.
   *[other] Al margen de los análisis, las etiquetas de { spelt } productos nombran una fuente de gluten que la norma no admite en un alimento con esta declaración.
}

# At the foot of the cover. The counts are those of programme.toml; from two on they are given in words, too.
summary_how = Este programa analiza { $packages ->
    [one] un envase de cada producto
   *[other] { $packages_spelt } envases de cada producto
} y { $extractions ->
    [one] una extracción de cada envase.
   *[other] { $extractions_spelt } extracciones de cada envase, medidas por separado.
} Cada cifra puede seguirse hasta el archivo del laboratorio.

# Head of the list of chapters on the cover.
summary_contents = Contenido

# On the cover of a proof: further published sheets that do not stand any more.
summary_revised_more = Y { $sheets } más, en products.csv.

## The results in one table

# Title of the chapter.
summary_bands_title = Los resultados en una tabla

# First sentence of the chapter, where nothing has a result.
summary_bands_empty = Aún no cuenta ningún envase: ninguno se ha enviado al laboratorio y ningún archivo del laboratorio tiene un resultado.

# First sentence of the chapter: how many packages had too little gluten to measure.
summary_bands_unmeasured = { $n ->
    [0] En ningún envase había demasiado poco gluten para medirlo.
    [one] En uno de { $packages } había demasiado poco gluten para medirlo.
   *[other] En { spelt } de { $packages } había demasiado poco gluten para medirlo.
}

# After the number of packages with too little gluten to measure, here, above the strip and in the newsletter, where a
# sandwich assay was used for fermented or hydrolysed foods, in which proteins in pieces escape it (J AOAC 98:1346, 2015).
summary_perhaps_missed = { $n ->
    [one] Uno de ellos es de un alimento fermentado o hidrolizado, en el que el ensayo puede no detectar el gluten.
   *[other] De ellos, { $n } son de alimentos fermentados o hidrolizados, en los que el ensayo puede no detectar el gluten.
}

# Taken into the sentence above, and the one on what would have to be tested.
summary_packages_spelt = { $n ->
    [0] cero envases
    [one] un envase
   *[other] { spelt } envases
}

# Second sentence. "open": some package is undecided, so that none can be said to be below.
summary_bands_over = { $n ->
    [0] { $packages ->
        [open] { $rule ->
            [detection] De ningún producto se ha demostrado que un envase contenga gluten detectable.
           *[other] De ningún producto se ha demostrado que un envase esté { over_the_limit }.
        }
       *[none] Ningún producto tuvo un envase { over_the_limit }.
    }
    [one] Un producto tuvo al menos un envase { over_the_limit }.
   *[other] { spelt_first } productos tuvieron al menos un envase { over_the_limit }.
}

# Third sentence, where packages had too little to measure and yet may be on either side: the assay measures from more than
# the limit on.
summary_bands_loose = { $shown ->
    [detection] Demasiado poco para medirlo no muestra si un envase contiene gluten detectable
    [claims] Demasiado poco para medirlo no muestra de qué lado del límite de su declaración está un envase
   *[limit] Demasiado poco para medirlo no muestra de qué lado de { $limit } está un envase
}; { $packages ->
    [one] por eso { $packages } queda sin decidir.
   *[other] por eso { $packages } quedan sin decidir.
}

# Last sentence; there is at least one.
summary_bands_undecided = { $n ->
    [0] { "" }
    [one] Un producto queda sin dictamen.
   *[other] { spelt_first } productos quedan sin dictamen.
}

# Head of the first column.
summary_bands_counted = Recuento

# Head of the last column.
summary_bands_all = en total

# Below the bars. The bands: "below 5 ppm", "5 to below 20 ppm", "at or above 20 ppm".
summary_bands_note = Blanco: { $below }. Gris: { $measured }. Negro: { $over }. Discontinuo: sin resultado, o con uno que no decide. Un producto cuenta una vez por ronda de análisis: por su envase más alto, o como sin decidir si no tiene dictamen.

# Head of what the numbers say.
summary_says_title = Lo que dicen estas cifras

# Left of what they do not say. $left_out: rounds that a later one of the same product supersedes. The interval is exact
# (Clopper and Pearson, 1934), and holds only for a random pick.
summary_says = { $packages ->
    [one] Describen el único envase que compramos.
   *[other] Describen los { $packages } envases que compramos.
} { $verdict ->
    [some] De { $products ->
        [one] { $products } producto
       *[other] { $products } productos
    } con dictamen{ $left_out ->
        [0] ,
        [one] , cada uno contado una vez por su última ronda (se omite una ronda anterior, porque las rondas de un mismo producto no son independientes),
       *[other] , cada uno contado una vez por su última ronda (se omiten { $left_out_spelt } rondas anteriores, porque las rondas de un mismo producto no son independientes),
    }{ " " }{ $over ->
        [one] { $over } tuvo
       *[other] { $over } tuvieron
    } un envase { over_the_limit }. Si los productos se hubieran elegido al azar, la proporción entre todos los productos de este tipo estaría entre { $lower } y { $upper } % (confianza del 95 %).
   *[none] Ningún producto tiene dictamen todavía.
}

# Head of what they do not say.
summary_says_not_title = Lo que no dicen

# $packages: how many of each product the programme tests; $upper: the one-sided 95 % bound for none of them over the limit,
# 1 - 0.05^(1/n).
summary_says_not = No dicen con qué frecuencia hay gluten en alimentos que no compramos, y unos pocos envases pueden pasar por alto un problema. Con 0 de { $packages } envases { over_the_limit }, aún podría { $rule ->
    [detection] tenerlo
   *[other] estarlo
} hasta el { $upper } % de todos los envases de un producto (confianza del 95 %, si los envases fueran una muestra al azar).

# Head of the key to the marks of all plots.
summary_marks_title = Las marcas

# Head of the glossary.
summary_words_title = Palabras que usamos

# Head of its first column.
summary_words_word = Palabra

# Head of its second column.
summary_words_meaning = Qué queremos decir

# Meaning of "ppm" or "mg/kg".
summary_word_unit = { $unit ->
    [ppm] Partes por millón: miligramos de gluten en un kilogramo de alimento (mg/kg).
   *[mg] Miligramos de gluten en un kilogramo de alimento, lo mismo que partes por millón (ppm).
}

# Meaning of "below 5 ppm".
summary_word_below = Demasiado poco para darle una cifra. No significa cero.

# A word that is explained.
summary_word_extraction = Extracción

# Its meaning.
summary_word_extraction_meaning = Una porción de un envase molido, extraída y medida por separado.

# Meaning of "At or above 20 ppm".
summary_word_over = { $rule ->
    [detection] El dictamen de un producto cuando en al menos un envase se detectó gluten.
   *[other] El dictamen de un producto cuando al menos un envase queda { over_the_limit }.
}

# Meaning of "Below 20 ppm".
summary_word_within = { $rule ->
    [detection] El dictamen de un producto cuando en ningún envase se detectó gluten.
   *[other] El dictamen de un producto cuando todos los envases quedan { within_the_limit }.
}

# Meaning of "No verdict".
summary_word_none = { $shown ->
    [detection] Los resultados no muestran de cada envase si contiene gluten detectable
    [claims] Los resultados no muestran de cada envase de qué lado del límite de su declaración está
   *[limit] Los resultados no muestran de cada envase de qué lado de { $limit } está
}: alguno no tiene un resultado válido o queda demasiado cerca, faltan envases, ningún ensayo decide en este alimento o algo tiene que aclararse antes.

## Where each package landed

# Title of the chapter.
summary_strip_title = Dónde quedó cada envase

# Head of the chapter with a row for each product.
summary_products_title = Cada producto en la escala

# Below it.
summary_products_lede = Cada fila es un producto, en el orden de los números del registro, con una marca por envase. Todas las filas tienen la misma escala, para que los productos se puedan comparar.

# In the place of the sentences below.
summary_strip_empty = Aún no hay ningún envase que mostrar.

# First sentence above the plot.
summary_strip_packages = { $packages ->
    [one] El único envase se muestra donde está su resultado.
   *[other] Cada uno de los { $packages } envases se muestra donde está su resultado.
}

# Second sentence.
summary_strip_unmeasured = { $n ->
    [0] En ninguno de ellos había demasiado poco gluten para medirlo.
    [one] En uno de ellos había demasiado poco gluten para medirlo.
   *[other] En { spelt } de ellos había demasiado poco gluten para medirlo.
}

# Last sentence. $n of $groups food groups have one. "open": some package is undecided.
summary_strip_over = { $n ->
    [0] { $packages ->
        [open] { $rule ->
            [detection] De ninguno se ha demostrado que contenga gluten detectable.
           *[other] De ninguno se ha demostrado que esté { over_the_limit }.
        }
       *[none] { $rule ->
            [detection] En ninguno se detectó gluten.
           *[other] Ninguno está { over_the_limit }.
        }
    }
   *[other] { $groups ->
        [one] Los envases { over_the_limit } son del único grupo de alimentos.
       *[other] Los envases { over_the_limit } son de { spelt } de los { $groups_spelt } grupos de alimentos.
    }
}

# Below the plot. "yes": some rows have columns in the place of marks that would touch.
summary_strip_note = Flechas a la izquierda: { $below }, con su número delante. Flecha en la escala: por debajo de la cifra de su punta, o por encima. Círculo vacío: { $measured }. Lleno: { $over }. Discontinuo, a la derecha: los resultados no deciden. Las marcas se desplazan arriba o abajo solo para que no se toquen.{ $crowded ->
    [yes] { " " }Donde aun así se tocarían, las sustituyen columnas de pasos iguales, con el número más alto encima.
   *[no] { "" }
}

# Head of the part on products whose packages lie on both sides of the limit.
summary_uneven_title = Productos desiguales

# In $n of the $over products over the limit. There is at least one.
summary_uneven = { $over ->
    [one] En el único producto { over_the_limit }
   *[other] En { $n ->
        [one] uno
       *[other] { spelt }
    } de los { $over_spelt } productos { over_the_limit }
}, { $rule ->
    [detection] en unos envases no se detectó gluten y en otros sí
   *[other] unos envases quedaron { within_the_limit } y otros no
}. Por eso se compra más de un envase, y por eso un solo envase no puede hablar por un producto.

# Likewise, where it is all of two products or more.
summary_uneven_all = En los { spelt } productos { over_the_limit }, { $rule ->
    [detection] en unos envases no se detectó gluten y en otros sí
   *[other] unos envases quedaron { within_the_limit } y otros no
}. Por eso se compra más de un envase, y por eso un solo envase no puede hablar por un producto.

## By food group, and by quarter

# Title of the chapter.
summary_groups_title = Por grupo de alimentos y por trimestre

# First sentence, where the groups are too small for a test.
summary_groups_small = Los grupos son pequeños. Sus intervalos son amplios, y una diferencia entre dos proporciones puede deberse al azar.

# First sentence, where no group differs from the others (Fisher's exact test, adjusted by Holm, Scand J Stat 6:65, 1979).
summary_groups_alike = Ningún grupo de alimentos se aparta de los demás más de lo que puede causar el azar, una vez descontado que miramos cada uno de ellos.

# First sentence, where some do. $groups: their names as a list.
summary_groups_apart = Distintos de todos los demás más de lo que causaría el azar: { $groups } (prueba exacta de Fisher, ajustada según Holm).

# In the place of the charts.
summary_groups_none = Ningún producto tiene dictamen todavía.

# Head of a chart of shares.
summary_shares_title = { $by ->
    [category] Proporción por grupo de alimentos
    [certification] Proporción por certificación
   *[oats] Proporción por avena
}

# Below them.
summary_shares_note = Punto: proporción hallada. Línea: intervalo exacto bilateral del 95 % (Clopper-Pearson). Punto vacío: ningún producto { over_the_limit }. Cada producto una vez, por su última ronda con dictamen. Se omiten los productos sin dictamen. Los intervalos solo valen si los productos se eligieron al azar. El orden no significa nada.

# Head of the table of means.
summary_means_title = Resultado medio de los envases por grupo de alimentos

# Heads of its columns, from here on.
summary_means_group = Envases de

# Likewise.
summary_means_packages = Envases

# Likewise.
summary_means_censored = Demasiado poco para medirlo

# Likewise.
summary_means_mean = Media, { $unit }

# Likewise.
summary_means_ranks = Por rangos

# Likewise.
summary_means_lognormal = Lognormal

# Name of the first row.
summary_means_all = Todos

# In the column of means.
summary_means_between = { $lower } a { $upper }

# In the last column.
summary_means_fit = { $mean } (mediana { $median })

# Below the table. Robust regression on order statistics and maximum likelihood for left-censored data: Helsel, Statistics
# for Censored Environmental Data, 2012.
summary_means_note = De envases cuyas extracciones concuerdan, en todas las rondas. La media está entre las dos cifras: la primera toma 0 por cada envase con demasiado poco para medirlo; la segunda, la menor cantidad medible. Por rangos, lognormal: estimaciones (regresión robusta sobre estadísticos de orden; máxima verosimilitud lognormal censurada) solo donde hay envases suficientes. Un envase por encima de lo que mide el ensayo queda fuera, de modo que la media de su grupo es mayor. Ninguna declaración se compara con una media: la lleva cada envase.

# Head of the chart of quarters.
summary_quarters_title = Resultados por trimestre

# Below the chart.
summary_quarters_note = Cada producto está en el trimestre en que se analizó su último envase, una vez por ronda; la tendencia lo toma una vez. El orden dentro de una fila no significa nada.

# Head of why there is no ranking.
summary_ranking_title = Por qué no hay clasificación

# Below it.
summary_ranking = Unos pocos productos más o menos cambiarían el orden de los grupos. No se clasifica ninguna marca, porque se analizan demasiado pocos de sus envases para distinguir unas de otras.

# Head of what the quarters say taken together.
summary_trend_title = ¿Hay una tendencia?

# Where there are results from fewer than two quarters.
summary_trend_short = Con resultados de menos de dos trimestres no hay tendencia que buscar.

# Where there are too few products in the quarters.
summary_trend_thin = Hay demasiado pocos productos por trimestre para buscar una tendencia.

# Where there are enough (Cochran, Biometrics 10:417, 1954; Armitage, Biometrics 11:375, 1955). $p: "= 0.32" or "< 0.001".
summary_trend = { $found ->
    [grew] A lo largo de { $quarters } trimestres la proporción creció: más de lo que el azar causaría a menudo (prueba de Cochran-Armitage, p { $p }).
    [fell] A lo largo de { $quarters } trimestres la proporción bajó: más de lo que el azar causaría a menudo (prueba de Cochran-Armitage, p { $p }).
   *[none] A lo largo de { $quarters } trimestres la proporción no muestra una tendencia que se distinga del azar (prueba de Cochran-Armitage, p { $p }).
}

# Head of the table of packages that would say more.
summary_needed_title = Qué haría falta para decir más

# Above the table. Exact one-sided 95 % bound for none of n: 1 - 0.05^(1/n).
summary_needed = De cada producto analizamos { $n ->
    [one] un envase
   *[other] { spelt } envases
}. Si { $rule ->
    [detection] en ninguno se detecta gluten
   *[other] ninguno está { over_the_limit }
}, y solo si se eligieron al azar, eso muestra con una confianza del 95 % que { $rule ->
    [detection] contiene gluten detectable
   *[other] lo está
} menos del { $shows } % de todos los envases del producto. Para mostrar que son aún menos habría que elegir al azar y analizar más envases, y que { $rule ->
    [detection] en ninguno se detectara gluten
   *[other] ninguno estuviera { over_the_limit }
}:

# Head of its first column; the shares follow.
summary_needed_share = Menos de

# Name of its row.
summary_needed_packages = Envases por analizar

## How well the extractions agree

# Title of the chapter.
summary_pairs_title = Cómo concuerdan las extracciones

# First sentence, where no package has results.
summary_pairs_empty = Ningún envase tiene resultados todavía.

# First sentences of the chapter. Two extractions that are both too small to measure, or both too large, cannot disagree:
# all that can be said is that nothing speaks against it.
summary_pairs = Las extracciones de un envase deberían dar casi la misma cifra. De { $packages ->
    [one] { $packages } envase
   *[other] { $packages } envases
} con resultados, en { $agree } nada lo contradice y en { $disagree } no concuerdan{ $incomplete ->
    [0] { "" }
    [one] ; { $incomplete } tuvo demasiado pocas extracciones válidas
   *[other] ; { $incomplete } tuvieron demasiado pocas extracciones válidas
}.

# In the place of the charts.
summary_pairs_nothing = Ningún envase tiene dos extracciones que pudieran medirse ambas, así que no hay nada que representar.

# Head of the plot of differences.
summary_agreement_title = Diferencia frente a media

# Below it.
summary_agreement_note = { $pairs ->
    [one] Un par
   *[other] Los { $pairs } pares
} con ambas extracciones medidas. Sombreado: la diferencia admitida entre dos, como la indica la parte sobre el método. Círculo discontinuo: el par no concuerda; donde el laboratorio repitió el análisis, el envase se decidió con todas sus extracciones. Las marcas que se taparían se dibujan una vez.

# Head of the control chart.
summary_range_title = Gráfico de control del rango

# Below it. $n pairs crossed the control line (ISO 7870-2:2023: 3.267 mean ranges); $stood: how many of them are still
# within what two readings may differ by; $apart: how many are not.
summary_range_note = El rango es la cifra mayor menos la menor, en porcentaje de su media. La línea de control es 3,267 veces el rango medio de los pares que concuerdan. { $n ->
    [0] Ningún par la cruzó.
    [one] { $stood ->
        [none] Un par la cruzó; no concuerda.
       *[all] Un par la cruzó; su diferencia aún está dentro de lo admitido entre dos.
    }
   *[other] { $stood ->
        [none] { spelt_first } pares la cruzaron; ninguno concuerda.
        [all] { spelt_first } pares la cruzaron; todos están aún dentro de lo admitido entre dos (círculos mayores).
        [one] { spelt_first } pares la cruzaron; uno está aún dentro de lo admitido entre dos (círculo mayor), { $apart ->
            [one] uno no concuerda
           *[other] { $apart_spelt } no concuerdan
        }.
       *[some] { spelt_first } pares la cruzaron; { $stood_spelt } están aún dentro de lo admitido entre dos (círculos mayores), { $apart ->
            [one] uno no concuerda
           *[other] { $apart_spelt } no concuerdan
        }.
    }
}

# Head of the table of repeatability.
summary_repeatability_title = Repetibilidad según estos pares

# Heads of its columns, from here on.
summary_repeatability_pairs = Pares

# Likewise. Room for one word.
summary_repeatability_agreeing = Concordes

# Likewise.
summary_repeatability_flagged = Señalados, omitidos

# Likewise.
summary_repeatability_size = Desviación estándar relativa de una extracción (intervalo del 95 %)

# Likewise.
summary_repeatability_median = Según la mediana de todos los pares

# Names of its rows, from here on; a lab's name stands as it is.
summary_pairs_all = Todos

# Likewise: pairs whose mean is less than the limit.
summary_pairs_below = Media inferior a { $limit }

# Likewise: pairs whose mean is the limit or more.
summary_pairs_from = Media igual o superior a { $limit }

# In the column of sizes, in per cent; from the chi-squared distribution.
summary_repeatability = { $size } % ({ $lower } a { $upper })

# Below the table. $n: how many packages of each product are tested; $chance: how often sound ones are flagged (ISO
# 5725-6:1994, 4.2: 95 % of pairs are within the allowed difference).
summary_flagged = Los pares que no concuerdan se señalan y se omiten: una miga en una porción no es la dispersión del ensayo. Eso hace las cifras un poco pequeñas; a la mediana de todos los pares apenas la mueven unos pocos amplios. { $n ->
    [one] Un envase correcto se da por discordante en alrededor del { $chance } % de los casos, solo por azar.
   *[other] Al menos uno de { spelt } envases correctos se da por discordante en alrededor del { $chance } % de los casos, solo por azar.
}

# Below it. "fits": no cause to change it; "below": the interval lies below it, but not by enough; "smaller" and "larger":
# what is found differs, and $proposal is put forward; $setting is it as programme.toml has it, with a point.
summary_assumption = Los pares se comparan con una repetibilidad supuesta del { $assumed } %. { $finding ->
    [below] El intervalo queda por debajo, pero no más de lo que puede causar la omisión de pares señalados, o la mediana de todos los pares no es menor: no hay motivo para cambiarla.
    [smaller] Se dispersan menos: se admiten diferencias que este laboratorio casi nunca tiene. Proponemos el { $proposal } % (relative_repeatability = { $setting } en programme.toml) a partir de la próxima ronda; lo ya decidido queda como está.
    [larger] Se dispersan más: se señalan más pares correctos de lo que aquí se dice, o las muestras son desiguales. Proponemos el { $proposal } % (relative_repeatability = { $setting } en programme.toml) a partir de la próxima ronda; lo ya decidido queda como está.
   *[fits] Los propios pares no dan motivo para cambiarla.
}

# Below it (Horwitz and others, J AOAC 63:1344, 1980; Thompson, Analyst 125:385, 2000).
summary_horwitz = Como comparación: los métodos químicos se dispersan alrededor del { $between } % entre laboratorios en el límite (función de Horwitz). La dispersión de aquí, dentro de un laboratorio, es { $ratio } veces esa; en ellos es habitual hasta 1,3 veces, y más en los ensayos de gluten.

# Below it, a sentence a lab. $p: "= 0.32" or "< 0.001".
summary_drift = { $lab }, sin los pares señalados: { $early } % en la primera mitad, { $late } % en la segunda; { $apart ->
    [yes] más separados de lo que el azar causaría a menudo
   *[no] no más separados de lo que causa el azar
} (prueba F, p { $p }).

# Head of the table of pairs above the control line or farther apart than is allowed.
summary_flagged_title = Pares más allá de un límite

# Heads of its columns, from here on.
summary_flagged_package = Envase

# Likewise.
summary_flagged_mean = Media

# Likewise.
summary_flagged_range = Rango

# Likewise.
summary_flagged_allowed = Admitido

# Likewise.
summary_flagged_became = El par

# In the last column, below its head. $all: where the lab repeated the test, whether all $n extractions agree.
summary_became = { $pair ->
    [agrees] está en lo admitido
   *[apart] no concuerda
}{ $all ->
    [agree] ; las { $n } concuerdan
    [disagree] ; las { $n } no concuerdan
   *[none] { "" }
}

## Lists of products

# Title of the chapter on products over the limit, and on those without a verdict.
summary_over_title = Productos { over_the_limit }

# In the place of the list.
summary_over_empty = { $rule ->
    [detection] De ningún producto se ha demostrado que contenga gluten detectable.
   *[other] De ningún producto se ha demostrado que esté { over_the_limit }.
}

# Above the list.
summary_over_lede = A cada fabricante se le debe informar antes de publicar y se le pide respuesta; lo que se publicó antes de ese plazo lo dice. Las respuestas se imprimen como se escribieron.

# Heads of the columns of lists, from here on.
summary_list_number = Número

# Likewise.
summary_list_product = Marca y producto

# Likewise.
summary_list_results = Resultados de los envases, { $unit }

# Likewise: the day of the notice.
summary_list_told = Informado

# Likewise: by when it asks for an answer.
summary_list_due = Respuesta para

# Likewise: the day of the answer.
summary_list_replied = Respondió

# Likewise.
summary_list_why = Por qué

# Head of the second list.
summary_none_title = Productos sin dictamen

# In the place of the list.
summary_none_empty = Todos los productos tienen dictamen.

## What the labels say

# Title of the chapter.
summary_labels_title = Lo que dicen las etiquetas

# First sentences of the chapter.
summary_labels_lede = Cada lista de ingredientes se lee junto al análisis. Un hallazgo aquí es una pregunta al fabricante. No es un resultado de análisis.

# Heads of the columns, from here on.
summary_labels_finding = Hallazgo

# Likewise.
summary_labels_example = Ejemplo, tal como figura

# Likewise.
summary_labels_products = Productos

# Likewise. "claims": each product's claim has a limit of its own.
summary_labels_over = { $shown ->
    [claims] de ellos, por encima del límite de su declaración
   *[limit] de ellos, { limit_over }
}

# Likewise.
summary_labels_printed = Tal como figura

# Likewise.
summary_labels_verdict = Dictamen del análisis

# Head of the list of products with a finding.
summary_labels_ask = Productos sobre los que hay algo que preguntar

# In both tables. "source": an ingredient that the rule does not allow; "no_list": the register has no list of ingredients;
# "precaution": words such as "may contain", whatever else is found.
summary_finding = { $kind ->
    [source] Una fuente de gluten entre los ingredientes
    [allowed] Una fuente de gluten que la norma de la indicación no prohíbe
    [oats] Avena, sin decir cómo se mantiene separada
    [unclear] Un término de origen poco claro
    [unread] Una lista que no pudimos leer
    [nothing] Ningún término nombra una fuente de gluten
    [no_list] Ninguna lista de ingredientes que leer
   *[precaution] Junto a cualquiera de ellos: una advertencia de precaución
}

## How we test and decide, and the register

# Title of the chapter.
summary_methods_title = Cómo analizamos y decidimos

# Title of the chapter.
summary_register_title = Registro de todos los resultados

# Above the register; the meaning of its two letters follows. $over: "at or above 20 ppm".
summary_register_lede = Todos los productos, por grupo de alimentos y marca. Negro: { $over }. Discontinuo: sin resultado, o con uno que no decide.

# Under the product's name, where the lab repeated the test of a package.
summary_register_repeated = Análisis repetido

# Head of the column of what the labels come to.
summary_register_label = Etiqueta

# Likewise.
summary_register_product = Producto

# Likewise.
summary_register_verdict = Dictamen

# Before the results of a second and third line.
summary_register_further = más envases
