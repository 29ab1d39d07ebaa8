# Por qué un dictamen es el que es: en la hoja, en results.json y products.csv, en `explain`, en el resumen y en las cartas.
# Cada motivo es una oración completa.

## What the reasons are made of

# Taken in by other messages. "fails": exactly the limit is over it (21 CFR 101.91). "passes": exactly the limit is within it
# (Reglamento (UE) n.º 828/2014, CXS 118-1979, CAA, RSA). "detection": the rule knows no limit; $limit is the limit of detection.
side_over = { $rule ->
    [passes] superior al límite de { $limit }
    [detection] una detección de gluten
   *[fails] igual o superior al límite de { $limit }
}

# Taken in likewise.
side_within = { $rule ->
    [passes] no superior al límite de { $limit }
    [detection] sin detección de gluten (límite de detección { $limit })
   *[fails] inferior al límite de { $limit }
}

# Taken in likewise: what a package's extractions give together.
held = { $kind ->
    [mean] { $figure } (media)
    [below] menos de { $upper }
    [range] de { $figure } a { $upper }
    [above] más de { $figure }
    [detected] { $figure }
   *[nothing] ningún resultado válido
}

## Before anything else: what is not known

# The claim on the package is none that the rule knows.
reason_unknown_claim = El envase declara «{ $claim }», que no es una declaración sobre el gluten que esta norma conozca: no hay límite con el que compararlo. ¿Qué dice el envase?

# The register of products has no claim.
reason_no_claim = El registro no dice qué declara el envase: no hay límite con el que compararlo.

# `processing` has a word that is none of none, fermented, hydrolysed.
reason_unknown_processing = La palabra del registro sobre el proceso del alimento no se entiende, y de ella depende qué ensayo puede ver su gluten.

# A register's heading is nearly the name of a column that is missing.
reason_heading = Un registro tiene una columna «{ $found }» y ninguna llamada «{ $meant }»: mientras no se aclare, no se decide nada.

# A register has two columns of one name.
reason_heading_twice = Un registro tiene dos columnas «{ $heading }»: mientras no se quite una, no se decide nada.

# A field that bears on the verdict cannot be read.
reason_field = «{ $written }» en la columna «{ $column }» de un registro no se entiende, y el dictamen depende de ello.

# A row of a register that bears on the verdict cannot be used.
reason_row = Una fila de un registro que atañe a este producto no puede usarse.

# A row of the register of reports cannot be used.
reason_report = Lo que el registro de informes dice de { $file } no puede usarse.

# A file in the folder of registers is nearly named as one.
reason_misnamed = Un archivo se llama casi como el registro { $meant } y no se ha leído: mientras no se aclare, no se decide nada.

# Likewise as the workbook in which registers are kept together.
reason_misnamed_workbook = Un archivo tiene casi el nombre del libro de registros y no se leyó: mientras no se aclare, no se decide nada.

## Within

# Every package had less than the assay can put a number on, and that is within the limit.
reason_none_measured = { $packages ->
    [one] El único envase contenía demasiado poco gluten para medirlo (menos de { $below }), lo que está { $rule ->
        [passes] dentro del límite de { $limit }
        [detection] por debajo del límite de detección de { $limit }
       *[fails] por debajo del límite de { $limit }
    }.
   *[other] Cada uno de los { $packages } envases contenía demasiado poco gluten para medirlo (menos de { $below }), lo que está { $rule ->
        [passes] dentro del límite de { $limit }
        [detection] por debajo del límite de detección de { $limit }
       *[fails] por debajo del límite de { $limit }
    }.
}

# Every package is within the limit, and gluten was measured in at least one.
reason_all_within = { $packages ->
    [one] { $rule ->
        [passes] El único envase está dentro del límite de { $limit }
        [detection] En el único envase no se detectó gluten (límite de detección { $limit })
       *[fails] El único envase está por debajo del límite de { $limit }
    }{ $guarded ->
        [yes] , incluida la incertidumbre del ensayo
       *[no] { "" }
    }.
   *[other] { $rule ->
        [passes] Cada uno de los { $packages } envases está dentro del límite de { $limit }
        [detection] En ninguno de los { $packages } envases se detectó gluten (límite de detección { $limit })
       *[fails] Cada uno de los { $packages } envases está por debajo del límite de { $limit }
    }{ $guarded ->
        [yes] , incluida la incertidumbre del ensayo
       *[no] { "" }
    }.
}

## Over

# One package is over the limit.
reason_over = { $kind ->
    [detected] En el envase { $package } se detectó gluten: el laboratorio da { $figure }.
   *[other] El envase { $package } contiene { held }, lo que es { side_over }.
}

# Its extractions are too far apart to agree, and each of them is over by itself.
reason_each_over = Las extracciones del envase { $package } no concuerdan, y cada una de ellas es { side_over }.

# Likewise, of three or more extractions the median is over (ISO 5725-6:1994, 5.2).
reason_median_over = Las extracciones del envase { $package } no concuerdan, y su mediana es { side_over }.

# A fermented or hydrolysed food: the sandwich assay, which sees too little there, finds it over.
reason_over_by_sandwich = El envase { $package } contiene { held } según el ensayo sándwich, lo que es { side_over }; en un alimento así ese ensayo da de menos más que de más.

## Undecided packages

# No row of the lab's has a result of the package.
reason_missing = El laboratorio aún no ha informado nada del envase { $package }.

# Fewer usable extractions than the programme asks for.
reason_too_few_extractions = El envase { $package } tiene { $usable } de las { $asked } extracciones válidas que un resultado necesita.

# Two reports of one extraction differ; neither is used until a correction settles it.
reason_conflict = Los informes del laboratorio sobre el envase { $package } difieren, y no se usa ninguno hasta que se aclare cuál vale: quedan { $usable } de las { $asked } extracciones que un resultado necesita.

# The extractions are farther apart than repeats of one material may be (ISO 5725-6:1994, 5.2).
reason_disagree = { $how ->
    [exact] Las extracciones del envase { $package } no concuerdan: las separan { $gap }, cuando se admiten { $allowed }.
   *[least] Las extracciones del envase { $package } no concuerdan: las separan al menos { $gap }, cuando se admiten { $allowed }.
}

# Guarded decisions (ILAC-G8:09/2019): the expanded uncertainty reaches over the limit.
reason_too_close = El envase { $package } contiene { held }, demasiado cerca del límite de { $limit } para la incertidumbre del ensayo.

# The bounds of the result lie on both sides.
reason_either_side = { $rule ->
    [detection] El envase { $package } contiene { held }, lo que no muestra si se detectó gluten (límite de detección { $limit }).
   *[other] El envase { $package } contiene { held }, lo que no muestra de qué lado de { $limit } está.
}

## Undecided products

# Fewer packages than the programme asks for.
reason_too_few_packages = { $tested ->
    [one] Solo se ha analizado 1 de { $asked } envases.
   *[other] Solo se han analizado { $tested } de { $asked } envases.
}

# J AOAC 98:1346 (2015): a sandwich assay needs two binding sites on one molecule.
reason_sandwich_unfit = { $food ->
    [fermented] Este alimento está fermentado: un ensayo sándwich da en él demasiado poco gluten, porque se le escapan las proteínas fragmentadas. Hace falta un ensayo competitivo.
   *[hydrolysed] Este alimento está hidrolizado: un ensayo sándwich da en él demasiado poco gluten, porque se le escapan las proteínas fragmentadas. Hace falta un ensayo competitivo.
}

# 85 FR 49240 (2020): the maker's records of what went in decide.
reason_records_decide = { $food ->
    [fermented] Este alimento está fermentado: ningún ensayo muestra de forma fiable cuánto gluten contiene. En los Estados Unidos deciden los registros del fabricante sobre los ingredientes.
   *[hydrolysed] Este alimento está hidrolizado: ningún ensayo muestra de forma fiable cuánto gluten contiene. En los Estados Unidos deciden los registros del fabricante sobre los ingredientes.
}
