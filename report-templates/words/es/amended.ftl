# What is not what it was: printed among the revisions of an amended sheet, in the digest, on the page of corrections and in
# the register of issues.

## One change

# What it is, what is printed now, and what was.
amended_change = { $what }: ahora { $new }; antes { $old }.

# What of the product it is.
amended_of_product = { $part ->
    [name] Nombre del producto
    [verdict] Dictamen
    [label] Etiqueta
    [claim] Declaración sobre el gluten
    [brand] Marca
    [net_content] Contenido neto
    [certifier] Certificador
   *[barcode] Código de barras
}

# What of a package it is.
amended_of_package = { $part ->
    [result] Envase { $package }, resultado
    [extractions] Envase { $package }, extracciones
    [lot] Envase { $package }, lote
    [best_by] Envase { $package }, consumo preferente
    [bought_on] Envase { $package }, fecha de compra
   *[shop] Envase { $package }, tienda
}

# A verdict, before or after.
amended_verdict = { $verdict ->
    [over_limit] por encima del límite
    [within_limit] dentro del límite
   *[no_verdict] sin dictamen
}

# What the label review found, before or after.
amended_finding = { $finding ->
    [none] sin hallazgos
    [gluten_source] fuente de gluten
    [unverified_oats] avena sin verificar
    [needs_review] por revisar
   *[no_ingredients] sin ingredientes registrados
}

# The same with the terms that it rests on.
amended_finding_terms = { amended_finding } ({ $terms })

# A result of which only the upper end is known.
amended_up_to = hasta { $figure }

# Where there was, or is, nothing.
amended_no_value = ninguno

# A package that the sheet did not have, or has no more.
amended_not_listed = no figuraba

# A reading that a correction takes out.
amended_set_aside = { $reported } (descartada)

## All of them

# A part of the sheet that reads otherwise. "wording": the same files give other words than were published.
amended_part = { $part ->
    [ingredients] los ingredientes registrados
    [correspondence] la correspondencia con el fabricante
    [method] cómo se analizó y se decidió
    [provenance] de dónde proceden las cifras
    [earlier] lo que hallaron las rondas anteriores
    [programme] lo que el programa dice de sí mismo
   *[wording] la redacción, por otra versión del programa informático
}

# Before the other changes, where none is of a figure, the verdict or the finding on the label.
amended_no_figure = No ha cambiado ninguna cifra ni el dictamen.

# After them; $parts is a list of parts of the sheet.
amended_parts = Estas partes dicen otra cosa: { $parts }.

# In their place, where no archive has the revision before.
amended_unknown = Lo que decía la revisión { $revision } ya no está en ningún archivo histórico, así que aquí no se puede decir cifra por cifra qué cambió.
