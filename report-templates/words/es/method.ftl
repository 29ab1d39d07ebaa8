# How was tested and decided, and where the figures come from.

## How we tested and decided (the sheet)

# The assay in the lab's words, and how often the programme has each package extracted.
method_assay = { $times ->
    [one] Ensayo: { $assays }. Cada envase debe extraerse una vez.
    [2] Ensayo: { $assays }. Cada envase debe extraerse dos veces.
   *[other] Ensayo: { $assays }. Cada envase debe extraerse { $spelt } veces.
}

# When extractions agree; the summary has the formula, and the sheet a sum worked out.
method_agreement = Las extracciones concuerdan si no distan entre sí más de lo que pueden las repeticiones de un mismo material (ISO 5725-6; la fórmula está en nuestro resumen).

# How often sound packages are found to disagree, where one does; in the summary always.
method_false_alarm = { $packages ->
    [one] Solo por azar, en un envase correcto las extracciones no concuerdan en aproximadamente el { $chance } de los casos.
   *[other] Solo por azar, en al menos uno de { $spelt } envases correctos las extracciones no concuerdan en aproximadamente el { $chance } de los casos.
}

# What a package's result is, and what "<n" means.
method_result = El resultado de un envase es la media de sus extracciones; «<n» es cualquier valor inferior a n.

# That nothing is rounded first, and that one package decides.
method_one_decides = { $rule ->
    [passes] Antes no se redondea nada. Un solo envase por encima del límite decide.
    [detection] Antes no se redondea nada. Un solo envase con gluten detectado decide.
   *[fails] Antes no se redondea nada. Un solo envase en el límite o por encima decide.
}

# Simple acceptance (ILAC-G8:09/2019, 4.2.1) and its risk.
method_simple = No se suma ni se resta ninguna incertidumbre (aceptación simple, ILAC-G8): un resultado justo en el límite está del lado equivocado hasta en la mitad de los casos.

# Guard bands (ILAC-G8:09/2019, 4.2.2); the uncertainty is a setting of the programme's.
method_guarded = Un resultado decide solo si sigue decidiendo con { $share } de más o de menos: la incertidumbre expandida (k = 2) con la que cuenta este programa (banda de guarda, ILAC-G8).

# Where the rule knows no limit.
method_detection = Toda cifra que da el laboratorio cuenta como detección, por incierta que sea.

# Taken in by the next one.
method_limit_source = { $law ->
    [us] 21 CFR 101.91
    [codex] norma CXS 118 del Codex
    [eu] Reglamento (UE) n.º 828/2014
    [uk] Reglamento (UE) n.º 828/2014, conservado en el derecho del Reino Unido
    [canada] posición de Health Canada sobre B.24.018 de las Food and Drug Regulations
    [argentina] Resolución Conjunta 32/2023
    [chile] artículo 518 del Reglamento Sanitario de los Alimentos
    [au_nz] Food Standards Code, Schedule 4
   *[custom] norma propia del programa
}

# The limit, as its law words it. "detection": Food Standards Code 1.2.7, where $limit is the assay's limit of detection.
method_limit = { $rule ->
    [passes] Límite: contenido de gluten que no sobrepase { $limit } ({ method_limit_source }).
    [detection] La declaración exige que no se detecte gluten (Food Standards Code, norma 1.2.7); el ensayo lo detecta desde { $limit } (límite de detección).
   *[fails] Límite: menos de { $limit } ({ method_limit_source }).
}

# Whose the verdict is: a sheet that passes a lab's figures on must not look like the lab's own report (ISO/IEC 17025:2017, 7.8.6,
# 7.8.7, and the conditions of accreditation).
method_own = El dictamen es nuestro: el laboratorio no lo ha visto y su acreditación no lo cubre.

## To bear in mind

# The label names barley as grain, and a sandwich R5 assay gave a figure (J Agric Food Chem 65:2155, 2017).
caution_barley = Un ensayo así da demasiado gluten de cebada, aproximadamente de dos a seis veces más.

# Oats: R5 does not see them, and grain in them lies in single kernels (Food Chem 240:391, 2018).
caution_oats = En la avena el ensayo solo detecta los otros cereales que contenga, repartidos de forma desigual.

# Tannins bind gluten; skimmed milk powder in the extraction is the remedy.
caution_tannins = Los polifenoles del cacao, la castaña, el alforfón y similares retienen gluten y pueden bajar una cifra; el laboratorio no dice que añadiera leche desnatada en polvo para evitarlo.

# The cocktail extraction frees gluten that heat has set (Eur J Gastroenterol Hepatol 17:1053, 2005).
caution_no_cocktail = El laboratorio no menciona la extracción con cóctel; sin ella un alimento calentado puede dar cifras demasiado bajas.

# A competitive assay where the food is neither fermented nor hydrolysed.
caution_competitive = Un ensayo competitivo está hecho para proteínas fragmentadas, no para gluten entero.

# The label names what is fermented or hydrolysed; $terms are up to three of its words.
caution_pieces = La etiqueta nombra { $terms }: en lo fermentado o hidrolizado puede escapársele gluten a un ensayo sándwich, así que una cifra baja muestra menos de lo que parece.

## Where the figures come from

# A lab file. $first and $last are days as digits. What a report must carry, and a sheet that passes it on: ISO/IEC 17025:2017, 7.8.2.
method_source = { $lab }{ $reported ->
    [yes] , informe { $report }
   *[no] { "" }
}{ $tested ->
    [day] , analizado el { $first }.
    [days] , analizado del { $first } al { $last }.
   *[no] .
}

# The lab's postal address.
method_address = Dirección: { $address }.

# When the lab received the packages; $condition is in the lab's words.
method_received = { $described ->
    [yes] Recibido el { $day } ({ $condition }).
   *[no] Recibido el { $day }.
}

# When the report was issued.
method_issued = Informe emitido el { $day }.

# The lowest amount given as a number, and the lowest that is detected.
method_lowest = Límite de cuantificación { $lloq }, de detección { $lod }.

# In the lab's words.
method_uncertainty = Incertidumbre según el laboratorio: { $stated }.

# Whether the lab says that it is accredited for this test.
method_accredited = { $accredited ->
    [yes] El laboratorio dice estar acreditado para este ensayo.
   *[no] El laboratorio dice no estar acreditado para este ensayo.
}

# The lab's remarks, deviations from its method among them; $remarks are quoted.
method_remarks = El laboratorio observa: { $remarks }.

# Words of the lab's.
method_quoted = «{ $words }»

# A thing in the list of the next one.
method_thing = { $thing ->
    [address] dirección del laboratorio
    [report] número de informe
    [received] fecha de recepción
    [tested] fecha del análisis
    [uncertainty] incertidumbre
   *[accreditation] acreditación
}

# What the lab does not state: said, and not passed over.
method_not_stated = No consta: { $things }.

# The file's name.
method_file = Archivo { $file }.

# Where in the file the figures stand, and the beginning and end of its checksum.
method_rows = { $rows ->
    [one] Fila { $first }. SHA-256 { $sha256 }.
    [more] Filas { $first } a { $last }. SHA-256 { $sha256 }.
   *[none] Ninguna fila. SHA-256 { $sha256 }.
}

# A certificate of the lab's or a photograph of a package.
method_exhibit = { $kind ->
    [certificate] Certificado { $file }. SHA-256 { $sha256 }.
   *[photograph] Fotografía { $file }. SHA-256 { $sha256 }.
}

# What every sheet, the newsletter and the web pages say last. $name is the authority of the settings, without "the".
method_caution = { $regulator ->
    [named] Esto no es consejo médico. Pregunte en su consulta médica o de nutrición qué significa para usted. Un análisis de gluten no es un análisis de alergia al trigo. Si un alimento puede venderse como sin gluten lo decide la autoridad competente ({ $name }); su palabra está por encima de la nuestra. No use nuestros resultados en publicidad.
   *[none] Esto no es consejo médico. Pregunte en su consulta médica o de nutrición qué significa para usted. Un análisis de gluten no es un análisis de alergia al trigo. Si un alimento puede venderse como sin gluten lo deciden las autoridades; su palabra está por encima de la nuestra. No use nuestros resultados en publicidad.
}

## What a sheet's PDF carries

# The words of the sheet as data.
carried_data = Todo lo que dice esta hoja, como datos

# The case.
carried_case = En qué se basa esta hoja: las filas de los registros, la norma, las lecturas con sus lugares, el dictamen

# A lab file as it came.
carried_whole = El archivo del laboratorio, tal como llegó. SHA-256 { $sha256 }

# The cells of a lab file that are used for the sheet.
carried_excerpt = Las celdas del archivo del laboratorio que se usan aquí. SHA-256 del archivo entero { $sha256 }

## How we test and decide (the summary)

# The heads of the part.
practice_head = { $passage ->
    [buying] Compra
    [testing] Análisis
    [agreement] Concordancia
    [result] Un resultado por envase
    [misses] Lo que el ensayo puede no ver
    [rule] La norma
    [deciding] Decisión
    [intervals] Intervalos
    [reply] Derecho de respuesta
    [about] Sobre el programa
   *[change] Qué cambiaría un dictamen
}

# How many packages the programme buys. How and where they are bought stands in the registers of each.
practice_buying = { $packages ->
    [one] De cada producto se compra un envase, que se envía al laboratorio con un código.
   *[other] { $spelt } envases de cada producto se compran y se envían al laboratorio, cada uno con un código.
}

# What is kept of each package, as the settings have it: "the ground rest of each package, for six months".
practice_kept = Conservamos { $kept }.

# How often each package is extracted.
practice_extractions = { $times ->
    [one] Cada envase debe extraerse una vez.
    [2] Cada envase debe extraerse dos veces; cada extracción se mide por separado.
   *[other] Cada envase debe extraerse { $spelt } veces; cada extracción se mide por separado.
}

# The labs, divided by semicolons.
practice_labs = { $n ->
    [one] Laboratorio: { $labs }.
   *[other] Laboratorios: { $labs }.
}

# The assays in the labs' words, divided by semicolons.
practice_assays = { $n ->
    [one] Ensayo: { $assays }.
   *[other] Ensayos: { $assays }.
}

# The limits of quantification.
practice_lowest = { $n ->
    [one] La cantidad más pequeña que se da como cifra (límite de cuantificación) es { $amounts }.
   *[other] Las cantidades más pequeñas que se dan como cifra (límites de cuantificación) son { $amounts }.
}

# When extractions agree (ISO 5725-6:1994, 5.2); the repeatability is a setting of the programme's.
practice_agreement = Las extracciones de un envase concuerdan si la distancia entre ellas no pasa de f(n) por s. Aquí f(2) es 2,8, f(3) 3,3 y f(4) 3,6 (ISO 5725-6), s es la raíz cuadrada de (q/10)² + (r·m)², q la cantidad más pequeña que se da como cifra, m la media y r la repetibilidad de una extracción que este programa supone, { $share }. Un envase cuyas extracciones no concuerdan nunca cuenta como dentro del límite.

# What a package's result is.
practice_result = { $rule ->
    [detection] La media de sus extracciones. Si en una hay demasiado poco para medirlo, la media es un intervalo. No se redondea nada antes de decidir, y ninguna cifra impresa se redondea al otro lado del límite de detección de { $limit }.
   *[fails] La media de sus extracciones. Si en una hay demasiado poco para medirlo, la media es un intervalo. No se redondea nada antes de decidir, y ninguna cifra impresa se redondea al otro lado de { $limit }.
}

# What the test can miss (J AOAC 98:1346, 2015; Food Chem 216:170, 2017).
practice_misses = Un ensayo para el gluten de trigo, centeno y cebada no detecta la avena. En un alimento fermentado o hidrolizado un ensayo sándwich da demasiado poco, así que una cifra baja no decide nada en él. El gluten que está en unas pocas migas puede escapar a toda porción que no las incluya.

# The rule of the programme's regime.
practice_rule = { $law ->
    [us] Estados Unidos, 21 CFR 101.91: menos de 20 ppm. Un alimento con exactamente 20 ppm no cumple la norma.
    [codex] Codex Alimentarius, CXS 118-1979: no más de 20 mg/kg.
    [eu] Unión Europea, Reglamento de Ejecución (UE) n.º 828/2014: contenido de gluten que no sobrepase 20 mg/kg.
    [uk] Reino Unido, Reglamento de Ejecución (UE) n.º 828/2014, conservado: contenido de gluten que no sobrepase 20 mg/kg.
    [canada] Canadá, Food and Drug Regulations B.24.018 y la posición de Health Canada al respecto: no más de 20 ppm por contacto cruzado.
    [argentina] Argentina, Código Alimentario Argentino: como máximo 10 mg/kg.
    [chile] Chile, Reglamento Sanitario de los Alimentos, artículo 518: no más de 5 mg/kg.
    [au_nz] Australia y Nueva Zelanda, Food Standards Code, norma 1.2.7: sin gluten detectable, lo que no es un límite de cantidad. Toda cifra que da el laboratorio es una detección; «<n» no lo es si n no supera el límite de detección del ensayo, { $limit } si el laboratorio no indica el suyo.
   *[custom] { $rule ->
        [passes] Límite propio del programa: no más de { $limit }.
       *[fails] Límite propio del programa: menos de { $limit }.
    }
}

# How a package is decided. $share is, with "guarded", the expanded uncertainty of the settings, and otherwise the chance from which
# on a sheet tells it (JCGM 106:2012, 7.2).
practice_package = { $rule ->
    [detection] Un envase cuenta como positivo en gluten si el laboratorio da una cifra, y como negativo si todos sus resultados están por debajo del límite de detección. La incertidumbre de una cifra no cuenta.
    [passes] { $decision ->
        [guarded] Un envase cuenta como por encima del límite solo si su resultado menos { $share } lo está, y como no superior al límite solo si su resultado más { $share } no lo supera (la incertidumbre expandida, k = 2, con la que cuenta este programa). Entre ambos queda sin decidir.
       *[simple] Un envase cuenta como por encima del límite si su resultado lo está. La cifra se compara con el límite tal como es; no se suma ni se resta ninguna incertidumbre. Un resultado justo en el límite está del lado equivocado hasta en la mitad de los casos; si la probabilidad de ello pasa de { $share }, o si el resultado cae en la franja rayada de la hoja, la hoja lo dice cuando afecta al dictamen.
    }
   *[fails] { $decision ->
        [guarded] Un envase cuenta como en el límite o por encima solo si su resultado menos { $share } lo está, y como por debajo del límite solo si su resultado más { $share } lo está (la incertidumbre expandida, k = 2, con la que cuenta este programa). Entre ambos queda sin decidir.
       *[simple] Un envase cuenta como en el límite o por encima si su resultado lo está. La cifra se compara con el límite tal como es; no se suma ni se resta ninguna incertidumbre. Un resultado justo en el límite está del lado equivocado hasta en la mitad de los casos; si la probabilidad de ello pasa de { $share }, o si el resultado cae en la franja rayada de la hoja, la hoja lo dice cuando afecta al dictamen.
    }
}

# How a product is decided.
practice_product = { $rule ->
    [passes] Un solo envase por encima del límite decide sobre el producto. Un producto está dentro del límite solo si lo está cada envase. En los demás casos no hay dictamen.
    [detection] Un solo envase positivo en gluten decide sobre el producto. Un producto es negativo solo si lo es cada envase. En los demás casos no hay dictamen.
   *[fails] Un solo envase en el límite o por encima decide sobre el producto. Un producto está por debajo del límite solo si lo está cada envase. En los demás casos no hay dictamen.
}

# The intervals of the shares (Clopper-Pearson).
practice_intervals = Las proporciones van con intervalos bilaterales exactos del 95 % (Clopper-Pearson). Valdrían si los productos se hubieran elegido al azar, y cuentan cada producto una vez, por su última ronda con dictamen. Un envase sin decidir puede estar de cualquier lado: el extremo inferior lo toma como dentro del límite, el superior, como por encima de él. Para 0 de n envases, si fueran una muestra al azar, se da la cota superior unilateral del 95 %: 1 menos la raíz n-ésima de 0,05.

# Taken in by the next message.
reply_time = { $reply_days ->
    [one] 1 día
   *[other] { $reply_days } días
}

publish_time = { $publish_days ->
    [one] 1 día
   *[other] { $publish_days } días
}

# The maker's right of reply; the days are settings of the programme's.
practice_reply = { $rule ->
    [passes] Si un producto está por encima del límite, o su etiqueta nombra una fuente de gluten que la norma no admite, se avisa al fabricante, que recibe las cifras y tiene { reply_time } para responder. La hoja se publica cuando ha respondido, o { publish_time } después de esa carta. Lo que se publicó antes de tiempo lo dice. Las respuestas se imprimen tal como se escribieron.
    [detection] Si un producto es positivo en gluten, o su etiqueta nombra una fuente de gluten que la norma no admite, se avisa al fabricante, que recibe las cifras y tiene { reply_time } para responder. La hoja se publica cuando ha respondido, o { publish_time } después de esa carta. Lo que se publicó antes de tiempo lo dice. Las respuestas se imprimen tal como se escribieron.
   *[fails] Si un producto está en el límite o por encima, o su etiqueta nombra una fuente de gluten que la norma no admite, se avisa al fabricante, que recibe las cifras y tiene { reply_time } para responder. La hoja se publica cuando ha respondido, o { publish_time } después de esa carta. Lo que se publicó antes de tiempo lo dice. Las respuestas se imprimen tal como se escribieron.
}

# What would change a verdict.
practice_change = Una corrección, un análisis repetido o envases nuevos. La hoja recibe entonces una nueva revisión, que dice a cuál sustituye y por qué.
