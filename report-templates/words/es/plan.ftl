# El plan de una ronda, las etiquetas, la hoja de contactos y la agenda.

## The plan

# The first line, and the title of the file.
plan_title = Plan de la ronda { $round }

# What the file is, for catalogues.
plan_about = { $products ->
    [one] 1 producto por analizar, lo que cuesta y lo que puede mostrar
   *[other] { $products } productos por analizar, lo que cuestan y lo que pueden mostrar
}

# At the head of each page; the round's name follows.
plan_head = Plan de la ronda

plan_foot = Solo para el programa. Los códigos no deben llegar al laboratorio junto con los nombres de los productos.

# Below the first line, where nothing is to be bought.
plan_nothing = Por ahora no hay que comprar ningún producto del registro; las listas siguientes dicen por qué.

# Below the first line. The packages include the blinds.
plan_round = La ronda tiene { $products ->
    [one] 1 producto,
   *[other] { $products } productos,
} { $packages ->
    [one] 1 envase
   *[other] { $packages } envases
}{ $blinds ->
    [0] { "" }
   *[other] , { $blinds } de ellos de contenido conocido,
} y { $extractions ->
    [one] 1 extracción.
   *[other] { $extractions } extracciones.
}

# Where any price is known.
plan_costs = { $has_budget ->
    [yes] Cuesta { $total } de un presupuesto de { $budget }.
   *[no] Cuesta { $total }.
}

# What has no price. Names in brackets are keys of programme.toml.
plan_unpriced = En ninguna suma figura: { $what }.
plan_unpriced_thing = { $thing ->
    [packages] los envases, pues ninguno tiene todavía precio en el registro
    [lab] el trabajo del laboratorio (extraction_price)
   *[shipping] el envío (shipping_price)
}

plan_products = Qué analizar, y por qué

# Heads of the table of products.
plan_id = Clave
plan_product = Producto
plan_why_head = Por qué
plan_price_head = Precio de un envase

# Why a product is worth testing; in a table, and on the screen after its name.
plan_why = { $why ->
    [new] Nunca analizado
    [no_verdict] Sin dictamen en la ronda { $round }
    [answered] Por encima del límite en la ronda { $round }, y el fabricante ha respondido
    [tested] Analizado por última vez el { $day }
    [undated] Analizado antes, en un día que no se conoce
   *[asked_for] Pedido expresamente; estaba por encima del límite
}{ $competitive ->
    [yes] ; necesita un ensayo competitivo
   *[no] { "" }
}

# What a package is expected to cost: the median of what was paid for the same kind of food, or for any; or the settings' figure.
plan_price = { $median } ({ $of ->
    [settings] programme.toml
    [everything] { $paid ->
        [one] todos los alimentos, 1 compra
       *[other] todos los alimentos, { $paid } compras
    }{ $range ->
        [yes] , de { $lowest } a { $highest }
       *[no] { "" }
    }
   *[category] { $paid ->
        [one] 1 compra
       *[other] { $paid } compras
    }{ $range ->
        [yes] , de { $lowest } a { $highest }
       *[no] { "" }
    }
})

plan_later = A continuación, fuera del presupuesto
plan_write = Escribir, no analizar
plan_write_lead = Sea cual sea el resultado de un análisis, estas etiquetas ya nombran lo que la norma no permite con esta declaración: escriba al fabricante.
plan_label_names = La etiqueta nombra { $terms }.
plan_quoted = «{ $printed }»
plan_not_now = Ahora no

# Why a product is not to be bought now.
plan_why_not = { $why ->
    [under_way] Hay envases de la ronda { $round } comprados o en el laboratorio.
    [not_answered] Estaba por encima del límite en la ronda { $round }, y no consta respuesta del fabricante.
    [no_assay] Es fermentado o hidrolizado: con esta norma ningún ensayo decide. Pida al fabricante los registros de lo que empleó.
    [processing] El registro tiene para su proceso una palabra que no es ninguna de las conocidas: corríjala primero.
    [claim] Su declaración en el registro no es ninguna que la norma conozca, de modo que no hay límite con el que comparar un resultado.
    [open] El registro deja abierto algo sin lo cual no habría dictamen: `galleyproof check` dice qué.
   *[in_round] Ya tiene envases en esta ronda.
}

plan_costs_head = Lo que cuesta, y lo que aportaría más

# Heads of the comparison: packages of a product, extractions of a package.
plan_each_product = La ronda, con por producto
plan_design = { $packages ->
    [one] 1 envase
   *[other] { $packages } envases
} × { $extractions ->
    [one] 1 extracción
   *[other] { $extractions } extracciones
}

# Rows of the comparison.
plan_row_packages = Envases
plan_row_lab = Laboratorio
plan_row_shipping = Envío
plan_row_total = Todo lo que se conoce
plan_row_budget = Productos que cubre el presupuesto
plan_of = { $part } de { $whole }
plan_row_tenth = Halla uno por encima, si lo está el 10 % de los envases
plan_row_double = Dice «por encima» al doble del límite
plan_row_half = Dice «por debajo» a la mitad del límite
plan_row_error = Error estándar de la media de un producto

# Where the next money is best spent. "package_scatter": since packages scatter more than extractions.
plan_next = { $best ->
    [package] El próximo gasto rinde más en un envase más.
    [package_scatter] El próximo gasto rinde más en un envase más: los envases de un producto difieren más que las extracciones de un envase.
   *[extraction] El próximo gasto rinde más en una extracción más de cada envase.
}
plan_next_package = El error estándar de la media de un producto es ahora de { $now }; un envase más de cada producto lo baja a { $share }{ $priced ->
    [yes] , por { $cost } por producto.
   *[no] .
}
plan_next_extraction = Una extracción más de cada envase lo baja a { $share }{ $priced ->
    [yes] , por { $cost } por producto.
   *[no] .
}
plan_next_basis = { $priced ->
    [yes] La comparación es para el mismo gasto.
   *[no] La comparación es de los pasos mismos, sin contar precios.
}

## Its charts

# The first chart: head, axes, and what it shows for who cannot see it.
plan_finding = La probabilidad de hallar al menos un envase por encima, si lo está esta parte de todos los envases
plan_finding_up = probabilidad de hallar uno
plan_finding_along = parte de todos los envases que está por encima del límite
plan_finding_alt = Curvas de la probabilidad de que entre envases tomados al azar haya al menos uno por encima del límite, frente a la parte de todos los envases que lo está. Con { $packages ->
    [one] 1 envase
   *[other] { $packages } envases
}: { $tenth } si lo está el 10 %, { $fifth } si lo está el 20 %, { $half } si lo está la mitad.

# The second chart.
plan_verdicts = La probabilidad de cada dictamen, si esta es la media verdadera del producto
plan_verdicts_up = probabilidad del dictamen
plan_verdicts_along = media verdadera del producto, { $unit }
plan_chart_limit = { $rule ->
    [detection] límite de detección { $limit }
   *[other] límite { $limit }
}
plan_over = { $rule ->
    [detection] gluten detectado
    [passes] por encima del límite
   *[fails] igual o superior al límite
}
plan_within = { $rule ->
    [detection] gluten no detectado
    [passes] no superior al límite
   *[fails] por debajo del límite
}
plan_undecided = sin dictamen
plan_verdicts_alt = Curvas de la probabilidad de cada dictamen frente a la media verdadera de un producto, con el límite de { $limit } en el centro. A la mitad del límite el dictamen es «por debajo» en { $within } de los casos; al doble es «por encima» en { $over }; sin dictamen quedan { $undecided_half } y { $undecided_double }.

## Other designs, and what statements need

plan_designs = Otros diseños
plan_designs_packages = Envases de un producto
plan_grid_over = { $rule ->
    [detection] Gluten detectado, con media verdadera { $mean }
    [passes] Hallado por encima del límite, con media verdadera { $mean }
   *[fails] Hallado igual o superior al límite, con media verdadera { $mean }
}
plan_grid_within = { $rule ->
    [detection] Gluten no detectado, con media verdadera { $mean }
    [passes] Hallado no superior al límite, con media verdadera { $mean }
   *[fails] Hallado por debajo del límite, con media verdadera { $mean }
}
plan_extractions = { $extractions ->
    [one] 1 extracción
   *[other] { $extractions } extracciones
}

plan_statements = Envases que necesita una afirmación
plan_statements_lead = Tantos envases, tomados al azar y ninguno por encima, sostienen la afirmación con una confianza del 95 %.
plan_statement_head = Afirmación sobre un producto
plan_statement_packages = Envases
plan_statement_cost = Coste
plan_statement = Menos del { $share } de todos los envases está por encima

## What the figures rest on

plan_assumptions = En qué se basan estas cifras

# "no": a stand-in, until the programme has results enough of its own: the collaborative study of OMA 2018.15.
plan_between = { $own ->
    [yes] Desviación estándar relativa entre los envases de un producto: { $share }, de los propios resultados del programa ({ $df ->
        [one] 1 grado
       *[other] { $df } grados
    } de libertad).
   *[no] Desviación estándar relativa entre los envases de un producto: { $share }, un valor sustituto (harina de avena contaminada de forma natural en un estudio colaborativo de 19 laboratorios, del 41 al 43 %), pues el programa tiene muy pocas cifras propias.
}
plan_scatter_within = { $own ->
    [yes] Desviación estándar relativa entre las extracciones de un envase: { $share }, de los propios resultados del programa ({ $df ->
        [one] 1 grado
       *[other] { $df } grados
    } de libertad).
   *[no] Desviación estándar relativa entre las extracciones de un envase: { $share }, un valor sustituto (relative_repeatability en programme.toml), pues el programa tiene muy pocas cifras propias.
}

plan_model = Los envases se dispersan en torno a la media verdadera de un producto, y las extracciones en torno al contenido de su envase, de forma lognormal e independiente. La regla del par, el límite de cuantificación de { $lloq } y el límite de { $limit } se aplican tal cual; una declaración con límite propio no se dibuja.
plan_random = Los envases se toman por una muestra al azar de todos los envases. Los de un mismo estante o lote dicen menos.
plan_bias = El sesgo propio de un laboratorio no está en estas cifras: ningún número de envases o extracciones lo muestra.
plan_average = Un plan dice lo que una ronda puede mostrar de muchos productos en promedio, y nada de un producto concreto. Cómo puede llamarse un alimento lo decide la autoridad.

plan_blinds_head = Envases de contenido conocido

# What blinds are and how they are used. File names are those of the program.
plan_blinds = { $blinds ->
    [one] Un envase de contenido conocido va con los demás bajo un código como los suyos: se sabe que no tiene gluten, o lleva añadida una cantidad conocida.
   *[other] La ronda tiene { $blinds } envases de contenido conocido, que van con los demás bajo códigos como los suyos: de unos se sabe que no tienen gluten, otros llevan añadida una cantidad conocida.
} Su clave está en blinds.csv: guárdela donde el laboratorio no pueda verla. En registers/blinds.csv (ahí la pone plan --blinds --enter) añade además sus códigos al formulario, y lo que el laboratorio halle en ellos se compara con ella y se le dice solo a usted: no están en ninguna hoja, recuento ni dictamen.

## The buying list

plan_buying = Lista de compras
plan_buying_lead = Una línea por envase. Pegue su etiqueta de inmediato, fotografíe el frente, los ingredientes, la declaración y el lote, y guarde el recibo. Deje los envases cerrados.

# Below a product's name, where more than one package is bought.
plan_lots = De lotes y tiendas distintos, donde los haya; anótese donde no.

# "yes": more than those that are named.
plan_lots_before = { $more ->
    [yes] Analizados antes, entre otros: { $lots }.
   *[no] Analizados antes: { $lots }.
}

# Heads of the list.
plan_code = Código
plan_shop = Tienda
plan_lot = Lote
plan_best_by = Consumo preferente
plan_bought_on = Compra
plan_paid = Precio
plan_photographs = Fotos

## The labels

labels_title = Etiquetas para envases, ronda { $round }

# What the file is, for catalogues.
labels_about = { $labels ->
    [one] 1 etiqueta
   *[other] { $labels } etiquetas
}

# On each label, after the programme's short name.
labels_keep_closed = no abrir

# For who cannot see it.
labels_square = Código QR de { $code }

# In place of labels.
labels_none = No hay ningún envase previsto.

## The contact sheet

contact_title = Los envases y sus fotografías

# What the file is, for catalogues.
contact_about = { $packages ->
    [one] 1 envase
   *[other] { $packages } envases
}

contact_foot = Privado: para el archivo del programa.

# Before the number of a page, and before the number of all pages.
contact_page = Página
contact_page_of = de

# What is told of a package, before a colon.
contact_label = { $of ->
    [lot] Lote
    [best_by] Consumo preferente
    [bought_on] Compra
    [shop] Tienda
   *[custody] Custodia
}
contact_unknown = no consta

# For who cannot see it.
contact_photograph = Fotografía del envase { $package }: { $name }

# A file that is not drawn.
contact_not_drawn = { $why ->
    [unread] { $path }: no puede leerse
    [broken] { $path }: está dañado y no se dibuja
    [kind] { $path }: por su contenido no es JPEG ni PNG y no se dibuja
    [large] { $path }: pasa de 64 MB y no se dibuja
   *[pixels] { $path }: tiene más de 100 millones de píxeles y no se dibuja
}
contact_none = No consta ninguna fotografía.

## The diary

# Entries of diary.ics, each with what it rests on.
diary_reply = Vence la respuesta: { $name } ({ $id })
diary_told = Se informó al fabricante el { $day }.
diary_publish = Puede publicarse: { $name } ({ $id })
diary_report = Vence el informe del laboratorio: envases enviados el { $day }
diary_not_reported = Sin informe: { $codes }.
diary_retest = Analizar de nuevo: { $name } ({ $id })
diary_last = Analizado por última vez el { $day }.
