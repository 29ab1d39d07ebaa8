# Placas: los pocillos que un laboratorio ha leído, y la página de una placa.

## What was found of them

# What is not understood. What it is worth stands at its end: the plate as a whole is not read, or the sample in the well.
found_plate_fault = { $fault ->
    [absorbance] La absorbancia del pocillo { $well } es «{ $written }», que no es una cifra.
    [content] No se entiende qué hay en el pocillo { $well }: «{ $written }».
    [concentration] El estándar del pocillo { $well } no tiene ninguna concentración que se pueda leer: «{ $written }».
    [stated] No se entiende qué debería contener el control del pocillo { $well }: «{ $written }».
    [dilution] No se entiende la dilución del pocillo { $well }: «{ $written }».
    [extraction] No se entiende el número de la extracción del pocillo { $well }: «{ $written }».
    [twice] El pocillo { $well } figura dos veces en la placa.
    [well] «{ $written }» no es un pocillo de una placa: van de A1 a H12.
    [unit] Lo que hay en el pocillo { $well }, «{ $written }», está en { $other }, y según los ajustes los estándares están en otra unidad.
    [columns] Dos columnas, «{ $written }» y «{ $other }», dicen lo mismo de cada pocillo.
    [no_contents] Hay una cuadrícula de absorbancias y ninguna segunda que diga qué hay en cada pocillo.
    [grids] Las cuadrículas de una placa no casan: por cada una de absorbancias hace falta una de la misma forma que diga qué hay en cada pocillo.
    [numbers] Los estándares son 1, 2, 3 y así sucesivamente desde el pocillo { $well }: pueden ser tanto sus números como sus concentraciones.
    [no_standards] La placa no tiene estándares.
    [unnumbered] No se dice qué extracción del envase «{ $written }» hay en el pocillo { $well }; sus pocillos se leen juntos y no se comparan con nada.
    [code] «{ $written }» en el pocillo { $well } no es un envase registrado; «{ $other }» se le parece.
   *[many] El archivo tiene { $written } placas; se leen como máximo { $other }.
}{ $lost ->
    [plate] { " " }La placa no se lee.
    [sample] { " " }Esta muestra no se lee.
   *[nothing] { "" }
}

# What to do about it.
do_plate_fault = { $fault ->
    [absorbance] Pida al laboratorio la cifra del lector de placas.
    [content] Pida al laboratorio el código del envase, la extracción y la dilución, por ejemplo «FH-114-A E1 1:10».
    [concentration] Pida al laboratorio la concentración de cada estándar, por ejemplo «Std 20 ppm», o una columna de concentraciones.
    [stated] Pida al laboratorio el valor o el intervalo del control, por ejemplo «18-26».
    [dilution] Pida al laboratorio la dilución, por ejemplo «1:10».
    [extraction] Pida al laboratorio el número de la extracción: 1 o 2.
    [twice] Pida al laboratorio una columna que nombre la placa, si la tabla contiene varias.
    [well] Pregunte al laboratorio qué pocillo es.
    [unit] Ponga en standards, en [plate] de programme.toml, la unidad que usa el laboratorio.
    [columns] Deje en el archivo la única columna a la que se ajusta la curva.
    [no_contents] Pida al laboratorio la disposición de la placa: la misma cuadrícula con lo que hay en cada pocillo.
    [grids] Pida al laboratorio, por cada placa, una cuadrícula de absorbancias y otra de contenidos.
    [numbers] Pida al laboratorio las concentraciones con su unidad, por ejemplo «Std 20 ppm».
    [no_standards] Pida al laboratorio los pocillos de sus estándares.
    [unnumbered] Pida al laboratorio el número de la extracción: 1 o 2.
    [code] Pregunte al laboratorio qué envase es.
   *[many] Reparta las placas en varios archivos.
}

# The curve needs more standards; two of them must be above zero.
found_plate_standards = La placa { $plate } tiene { $standards ->
    [one] 1 estándar
   *[other] { $standards } estándares
}; la curva { $curve } necesita { $needed } de concentraciones distintas, dos de ellas por encima de cero.

# Nothing can be read on it.
found_plate_no_curve = { $why ->
    [monotone] La curva { $curve } de la placa { $plate } no sube siempre ni baja siempre de un estándar a otro: no se puede leer nada en ella.
    [weights] Un estándar de la placa { $plate } tiene una absorbancia media que no está por encima de cero: no tiene peso 1/y^2, y la curva { $curve } no se puede ajustar.
   *[fitted] No se puede ajustar ninguna curva { $curve } a los estándares de la placa { $plate }.
}

# What to do about either.
do_plate_curve = Pregunte al laboratorio qué curva usó y póngala en curve, en [plate] de programme.toml; o pregunte si la placa era buena.

# A check of a plate, each named by its word in the data.
found_plate_monotone = Placa { $plate }, comprobación monotone: { $steps ->
    [one] 1 estándar no va en el sentido de los demás.
   *[other] { $steps } estándares no van en el sentido de los demás.
}

found_plate_blank = Placa { $plate }, comprobación blank: la absorbancia media de { $wells } es { $found }, y el máximo es { $allowed }.

found_plate_top = Placa { $plate }, comprobación top: la absorbancia media de { $wells } es { $found }, y el mínimo es { $allowed }.

found_plate_wells = Placa { $plate }, comprobación well_cv: los pocillos { $wells } tienen una desviación típica relativa del { $found } %, y el máximo es el { $allowed } %.

found_plate_standard = Placa { $plate }, comprobación back_calculated: { $read ->
    [yes] el estándar de { $standard }, leído en su propia curva, difiere en un { $found } %, y el máximo es el { $allowed } %.
   *[no] el estándar de { $standard } no se puede leer en su propia curva.
}

found_plate_control = Placa { $plate }, comprobación recovery: { $read ->
    [yes] el control «{ $control }» da { $stated ->
        [value] el { $found } % de su valor, y se admite del { $low } al { $high } %.
       *[range] { $found } { $amount }, y se admite de { $low } a { $high } { $amount }.
    }
   *[no] el control «{ $control }» queda fuera de los estándares, y no se puede leer ninguna cifra.
}

# What to do about any of these.
do_plate_quality = Pregunte al laboratorio si aceptó la placa y por qué. Lo que informó se mantiene.

found_plate_differs = Las absorbancias del envase «{ $package }», extracción { $extraction }, dan { $is ->
    [below] menos de { $recomputed } { $amount }
    [above] más de { $recomputed } { $amount }
   *[figure] { $recomputed } { $amount }
}; se informó «{ $reported }» en { $reported_at }.

# What to do about it.
do_plate_differs = Pregunte al laboratorio cómo calculó la cifra: con qué curva y con qué dilución. Lo que informó se mantiene.

## The page of a plate

# The first line, and the title of the file.
plate_title = Placa { $plate }

plate_about = Una placa de { $file }, con su curva ajustada de nuevo

# At the head of each page; the plate's name follows.
plate_head = Placa

plate_foot = Para el programa y el laboratorio. En una placa hay muestras de varios fabricantes.

plate_source = De { $file }{ $sheet_is ->
    [named] , hoja «{ $sheet }», desde la fila { $row }.
   *[none] , desde la línea { $row }.
}

# What the page is worth.
plate_stands = La curva se ha ajustado aquí de nuevo, con las absorbancias que envió el laboratorio. Lo que dan figura junto a lo que informó el laboratorio. No sustituye nada ni decide nada.

plate_curve_head = La curva

plate_curve = { $curve ->
    [four] Una curva logística de cuatro parámetros, y = D + (A − D) / (1 + (x / C)^B),
    [five] Una curva logística de cinco parámetros, y = D + (A − D) / (1 + (x / C)^B)^G,
    [spline] Un spline cúbico natural en log10(x + 1)
   *[straight] Líneas rectas de cada estándar al siguiente
} por la absorbancia media de los pocillos de cada estándar{ $weights ->
    [square] , cada una con el peso 1/y².
   *[none] .
}

plate_no_curve = No se pudo ajustar ninguna curva que solo suba o solo baje. De esta placa no se lee nada.

plate_unit = { $unit ->
    [extract] Las concentraciones están en ng/mL de gliadina en el extracto; a un gramo de alimento corresponden { $factor } mL, y el gluten es el doble de la gliadina.
   *[food] Las concentraciones están en { $amount } de gluten en el alimento.
}

plate_parameters = A = { $a }, B = { $b }, C = { $c }, D = { $d }{ $has_g ->
    [yes] , G = { $g }.
   *[no] .
}

plate_residual = Desviación típica residual: { $sd }.

plate_standards_head = Estándares y blancos

plate_controls_head = Controles

plate_samples_head = Muestras

plate_checks_head = Comprobaciones

plate_concentration = Concentración

plate_wells = Pocillos

plate_absorbances = Absorbancias

plate_mean = Media

plate_read_back = Leído en la curva

plate_near = Bastante cerca

plate_control = Control

plate_stated = Declarado, { $amount }

plate_package = Envase

plate_extraction = Extracción

plate_dilution = Dilución

plate_recomputed = Recalculado, { $amount }

plate_reported = Informado

plate_agree = Concuerda

plate_check = Comprobación

plate_found = Hallado

plate_allowed = Admitido

plate_blanks = Blanco

plate_check_name = { $check ->
    [monotone] Estándares que no van en el sentido de los demás
    [blank] Absorbancia de los blancos y del cero
    [top] Absorbancia del estándar más fuerte
    [well_cv] Desviación típica relativa de los pocillos
    [back_calculated] Estándares leídos en su curva
   *[recovery] Controles
}

plate_at_most = como máximo { $figure }

plate_at_least = como mínimo { $figure }

plate_ok = { $ok ->
    [yes] sí
   *[no] no
}

plate_agrees = { $agrees ->
    [yes] sí
    [no] no
   *[unsaid] no comparado
}

plate_others = Otros pocillos con muestras que no son de este programa: { $wells }.

plate_no_samples = En esta placa no hay ninguna muestra de este programa.

plate_key = Círculos: estándares, cada pocillo{ $controls ->
    [yes] ; rombos: controles
   *[no] { "" }
}{ $samples ->
    [yes] ; cruces: muestras, recalculadas
   *[no] { "" }
}{ $reported ->
    [yes] ; triángulos abiertos: las mismas, según el informe
   *[no] { "" }
}.

plate_along = { $unit ->
    [extract] Concentración, ng/mL de gliadina
   *[food] Concentración, { $amount } de gluten
}

plate_up = Absorbancia

plate_chart = Las absorbancias de { $standards ->
    [one] 1 estándar
   *[other] { $standards } estándares
}, de { $lowest } a { $highest }, con su curva, y { $samples ->
    [one] 1 muestra
   *[other] { $samples } muestras
} en ella. { $differing ->
    [0] Ninguna difiere de lo informado.
    [one] Una difiere de lo informado.
   *[other] De ellas, { $differing } difieren de lo informado.
}
