# The pages for a web site and their feed.

## The index and the corrections

# Title of the index, and the link to it.
web_sheets = Hojas de resultados

# Head of the index.
web_sheets_of = { $programme }: hojas de resultados

# Instead of the table.
web_none = Actualmente no hay ninguna hoja de resultados publicada.

# Title of the table.
web_published = Hojas de resultados publicadas

# Head of a column.
web_product = Producto

# Head of a column.
web_verdict = Dictamen

# Head of a column.
web_sheet = Hoja

# Heading: published sheets that do not stand any more.
web_under_revision = En revisión

# Title of the page of corrections, and the link to it.
web_corrections = Correcciones

# Its head.
web_corrections_of = { $programme }: correcciones

# Instead of the list.
web_no_corrections = No se ha corregido ninguna hoja publicada.

# Heading: a product and its sheet.
web_correction_of = { $product }, hoja { $number }

# A revision; what was changed and why follows as it was written down.
web_replaces = La revisión { $revision } del { $day } sustituye a la revisión { $replaced } del { $replaced_day }.

# The title of a page in the browser.
web_title = { $page }: { $programme }

# Where mistakes are reported.
web_mistake = ¿Ha visto un error? { $address }

## The frame of every page

# The first link of every page: it leads past the list of pages. Shown when it has the focus.
web_skip = Ir al contenido

# What the list of pages is called by a screen reader.
web_pages = Páginas

# Title of the page on how the programme tests, and the link to it.
web_how = Cómo analizamos

# Its head.
web_how_of = { $programme }: cómo analizamos y decidimos

# The link to the Atom feed.
web_feed = Canal de hojas nuevas y modificadas (Atom)

# What the index is, for a search engine; also the feed's subtitle.
web_about = Lo que { $programme } ha encontrado en alimentos que se venden como «sin gluten»: todas las hojas de resultados publicadas y sus correcciones.

## The filter of the index

# Heading of the filter.
web_find = Buscar una hoja

# Label of the field for words: a sheet's number, a product's or a brand's name.
web_words = Palabras del nombre o número de la hoja

# Label of the choice of brands.
web_brand = Marca

# Label of the choice of food groups, and head of a column.
web_group = Grupo de alimentos

# Label of the choice of years: of the sheet's last revision.
web_year = Año de emisión

# The first choice of each: nothing is chosen. It stands for brand, group, verdict and year alike.
web_any = Cualquiera

# The button that puts the filter back.
web_all = Mostrar todas

# How many sheets are shown: two figures, put in by the page's script.
web_shown = Hojas mostradas: { $shown } de { $all }.

# A verdict to choose.
web_choice = { $verdict ->
    [over] { $rule ->
        [passes] Por encima del límite
        [detection] Gluten detectado
       *[fails] Igual o superior al límite
    }
    [within] { $rule ->
        [passes] No sobrepasa el límite
        [detection] Gluten no detectado
       *[fails] Inferior al límite
    }
   *[none] Sin dictamen
}

## The page of a product

# The link to the PDF beside the page.
web_pdf = Hoja { $number } en PDF, con los datos en que se basa

# The same in the table of the index, before the number of the sheet.
web_pdf_short = PDF

# Above a product's name: the number of the sheet, and which revision it is.
web_number = Hoja de resultados { $number } · { $edition }

# Heading of the ruler and the table.
web_ruler = Los resultados, envase por envase

# Title of the table of packages.
web_packages = Los envases y sus extracciones, en { $unit }

# Head of a column: the code that the lab was given.
web_package = Envase

# Head of a column.
web_lot = Lote

# Head of a column.
web_best_by = Consumir preferentemente antes de

# Head of a column: a day and a shop.
web_bought = Compra: fecha, tienda

# Head of a column of extractions.
web_extraction = Extracción { $number }

# Head of a column: how far the extractions are apart.
web_found = Diferencia hallada

# Head of a column: how far they may be apart.
web_allowed = Diferencia admitida

# Head of a column.
web_result = Resultado del envase

# In the place of a figure: the lab reported the extraction without a readable result.
web_no_reading = ninguno

# Read out in the place of a dash: nothing is known or nothing applies.
web_nothing = sin dato

# Below the table.
web_unused = Entre paréntesis: informado, no utilizado.

# Heading.
web_says = Qué dice este resultado

# Heading.
web_says_not = Qué no dice

# Heading.
web_label = Revisión del etiquetado

# Before the ingredient statement.
web_ingredients = Ingredientes, tal como figuran:

# After it, where words of it are marked.
web_marked = Marcadas: las palabras de las que trata esta revisión.

# Before the precautionary words.
web_precautionary = Advertencias de precaución:

# Instead of them.
web_none_on_record = no consta ninguna.

# Heading: what passed between the programme and the maker.
web_correspondence = Lo tratado con el fabricante

# Heading.
web_method = Cómo se analizó y se decidió

# Heading.
web_sources = De dónde proceden las cifras

# Heading of the last words of every page.
web_note = Tenga en cuenta

# Heading.
web_revisions = Revisiones de esta hoja

# A revision in the list, where why it was made follows; in the table of the index with the day as 2031-06-30.
web_revision_of = Revisión { $revision }, { $day }

# Heading: the same product in other rounds of testing.
web_rounds = Otras rondas de este producto

# One of them, as a link.
web_round = Ronda { $round }, hoja { $number }: { $verdict }

## The feed

# Title of an entry: the first issue of a sheet.
web_entry_new = { $product }: hoja { $number }

# Title of an entry: a further revision.
web_entry_amended = Modificada: { $product }, hoja { $number }, revisión { $revision }

# Title of an entry: a revision that takes back what was said against a product, or says it for the first time.
web_entry_corrected = Corrección: { $product }, hoja { $number }, revisión { $revision }

# Title of an entry: a published sheet does not stand any more, and the next one is not issued yet.
web_entry_under_revision = En revisión: { $product }, hoja { $number }

# An entry of a revision that does not stand any more; its verdict is not said again.
web_entry_replaced = La revisión { $revision } de esta hoja, emitida el { $day }, ha sustituido a esta.

# A product with its brand before it: in the feed.
web_named = { $brand }: { $product }
