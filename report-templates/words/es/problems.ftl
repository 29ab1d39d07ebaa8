# What was found in lab files, and what to do about it; registers.ftl has what was found in registers. Printed in
# inbox-report.txt; in English in results.json, in results.xlsx and on the screen. Each message is a whole sentence. "found_" says what was found, "do_" what to do about the one
# before it.

## Where a problem stands, and the report that lists all of them

# Where something stands, within a sentence. The name of a cell, the number of a row, the letter of a column.
place = { $file }{ $sheet_is ->
    [named] , hoja «{ $sheet }»
   *[none] { "" }
}{ $at ->
    [cell] , celda { $cell }
    [row] , fila { $cell }
    [column] , columna { $cell }
   *[none] { "" }
}

# The same below the name of its file, before the colon of an entry.
place_in_file = { $sheet_is ->
    [named] { $at ->
        [cell] hoja «{ $sheet }», celda { $cell }
        [row] hoja «{ $sheet }», fila { $cell }
        [column] hoja «{ $sheet }», columna { $cell }
       *[none] hoja «{ $sheet }»
    }
   *[none] { $at ->
        [cell] celda { $cell }
        [row] fila { $cell }
        [column] columna { $cell }
       *[none] { "" }
    }
}

# Words from a file, one of several.
item = «{ $text }»

# The same with where they stand: a column's letter, or a place.
item_at = «{ $text }» ({ $at })

# The margin of an entry; at most eight letters.
problem_severity = { $severity ->
    [error] Error
    [warning] Aviso
   *[note] Nota
}

# The first line of an entry behind its margin: where, and what was found.
problem_entry = { $at ->
    [somewhere] { $place }: { $found }
   *[whole] { $found }
}

# The second line of an entry.
problem_to_do = Qué hacer: { $hint }

# The heading of the report.
report_heading = Lo que se encontró en los archivos del laboratorio y en los registros

# Below it, where there is no problem.
report_clean = Archivos del laboratorio leídos: { $files }. No hay nada que mirar.

# Below it, where there are some.
report_counts = Archivos del laboratorio leídos: { $files }. Errores: { $errors }, avisos: { $warnings }, notas: { $notes }. { $errors ->
    [0] Ningún resultado encontrado se dejó fuera.
   *[other] Un error significa que algo se dejó fuera y alguien tiene que mirarlo.
}

## Files that cannot be read

# The file passes a bound; $part is the bound of one part of a workbook.
found_too_large = El archivo es demasiado grande: como máximo se leen { $bound ->
    [file] archivos de { $most } MB
    [unpacked] { $part } MB en una parte de un libro y { $most } MB en todas sus partes, una vez descomprimidas
    [parts] { $most } partes de un libro
    [sheets] { $most } hojas
    [cells] { $most } celdas llenas
    [rows] { $most } filas llenas
    [row] { $most } celdas llenas en una fila
    [repeats] { $most } repeticiones de una fila llena
    [text] { $most } MB de texto en las celdas
    [cell_text] { $most } MB de texto en una celda
    [styles] { $most } formatos de celda
    [tables] { $most } tablas con sus encabezados
   *[results] { $most } resultados
}.

# What to do about it.
do_results_alone = Pida al laboratorio un archivo que contenga solo los resultados.

# There are more problems of this kind in the file than are told one by one; they stand above this line.
found_more_of_a_kind = { $count ->
    [one] Otra celda o fila de este archivo tiene un problema del mismo tipo y no se enumera.
   *[other] Otras { $count } celdas o filas de este archivo tienen un problema del mismo tipo y no se enumeran una a una.
}

# What to do about it.
do_mend_those_first = Corrija lo que se enumera y vuelva a ejecutar el programa.

# The file holds nothing.
found_empty_file = { $with ->
    [zeros] El archivo no contiene más que ceros, como una copia interrumpida.
   *[nothing] El archivo está vacío.
}

# What to do about it.
do_send_or_copy_again = Pida al laboratorio que lo envíe de nuevo, o cópielo otra vez si la copia se interrumpió.

# The file is of a kind that holds no table, by its first bytes.
found_other_kind = { $kind ->
    [pdf] El archivo es un PDF, diga lo que diga su nombre: no contiene ninguna tabla que pueda leerse.
    [web] El archivo es una página web, diga lo que diga su nombre: no contiene ninguna tabla que pueda leerse.
    [xml] El archivo es un archivo XML, diga lo que diga su nombre: no contiene ninguna tabla que pueda leerse.
   *[other] El archivo no es ni texto ni un libro de cálculo, diga lo que diga su nombre: no contiene ninguna tabla que pueda leerse.
}

# What to do about it.
do_save_as_workbook = Pida al laboratorio los resultados en .csv o .xlsx, o abra el archivo en un programa de hojas de cálculo y guárdelo como .xlsx.

# A workbook whose parts do not fit together.
found_damaged_workbook = El libro de cálculo está dañado o incompleto.

# What to do about it.
do_copy_or_send_again = Cópielo otra vez del mensaje del laboratorio, o pida al laboratorio que lo envíe de nuevo.

# A workbook that a password protects.
found_password = El libro de cálculo está protegido con una contraseña.

# What to do about it.
do_take_off_password = Pida al laboratorio una copia sin contraseña, o ábralo con ella y guárdelo sin ella.

# An archive that holds something else.
found_no_workbook = El archivo es un archivo comprimido o un documento, diga lo que diga su nombre, y no un libro de cálculo.

# What to do about it.
do_take_out_of_archive = Extraiga de él el archivo del laboratorio, o pida al laboratorio los resultados en .csv o .xlsx.

# A line of delimited text that no table has.
found_long_line = La línea { $line } del archivo es más larga que cualquier fila de una tabla de resultados.

# What to do about it.
do_ask_for_table = Pida al laboratorio los resultados en una tabla, con una fila por muestra o por extracción.

# Quotation marks of delimited text that are not closed.
found_open_quote = Las comillas que abren una celda en la línea { $line } no se cierran, de modo que no se sabe dónde terminan sus filas.

# What to do about it.
do_send_again_or_workbook = Pida al laboratorio que envíe de nuevo el archivo, o que envíe lo mismo en .xlsx.

# Damage that the reader does not know.
found_damaged = El archivo está dañado de un modo que no se había previsto.

# What to do about it.
do_send_again = Pida al laboratorio que lo envíe de nuevo.

# The file's content was another one a moment before.
found_changing = El archivo cambió mientras se leía.

# What to do about it.
do_wait_until_whole = Vuelva a ejecutar el programa cuando esté completo.

# A file that was listed and is not there.
found_gone = El archivo ya no está.

# What to do about it.
do_copy_again = Vuelva a ejecutar el programa. Si el archivo debe estar, cópielo otra vez en la carpeta inbox.

# The system refuses the reading.
found_not_permitted = El archivo no se puede abrir: usted no tiene permiso para leerlo.

# What to do about it.
do_permit_or_copy = Cambie los permisos o cópielo de nuevo, y vuelva a ejecutar el programa.

# Any other reason of the system.
found_cannot_open = El archivo no se puede abrir.

# What to do about it.
do_close_programs = Ciérrelo en otros programas y espere a que esté copiado por completo; después vuelva a ejecutar el programa.

# A register that is damaged in a way that the reader does not know.
found_damaged_register = El registro está dañado.

# What to do about it.
do_restore = Restáurelo desde una copia.

## What lies in the inbox

# A folder or file that cannot be looked into.
found_unopened = La carpeta o el archivo no se puede abrir.

# What to do about what cannot be opened or read.
do_permit = Mire los permisos y vuelva a ejecutar el programa.

# A link that is not followed.
found_link = { $to ->
    [folder] Esto es un enlace a una carpeta, y tales enlaces no se siguen.
    [outward] Esto es un enlace que sale de la carpeta del programa, y tales enlaces no se siguen.
   *[nothing] Esto es un enlace que no lleva a ninguna parte, o que vuelve sobre sí mismo.
}

# What to do about it.
do_copy_itself = { $to ->
    [folder] Copie los archivos mismos en la carpeta inbox.
   *[nothing] Copie el archivo mismo en la carpeta inbox.
}

# A device, a pipe and the like.
found_no_file = Esto no es un archivo corriente.

# What to do about it.
do_lab_files = Los archivos del laboratorio son hojas de cálculo o texto con separadores.

# A file whose name ends otherwise than a lab file's.
found_other_ending = Un archivo de este tipo no contiene ninguna tabla que se lea (los archivos del laboratorio terminan en { $endings }).

# What to do about it.
do_ask_for_spreadsheet = Si contiene resultados, pídalos al laboratorio en una hoja de cálculo.

# The same bytes under two names.
found_same_file = Este archivo tiene el mismo contenido que { $file }; cuenta una vez.

# A certificate or photograph in the inbox that cannot be read.
found_exhibit_unreadable = Este certificado o esta fotografía no se puede leer.

## A lab's file as a whole

# Text that is not in UTF-8.
found_encoding = El archivo no dice cómo están escritas sus letras, y se leyó como texto de Europa occidental (Windows-1252).

# What to do about it.
do_ask_for_utf8 = Si letras como é o µ se ven mal, pida al laboratorio el archivo en UTF-8.

# What to do about it where it is a register.
do_save_as_utf8 = Si letras como é o µ se ven mal en los resultados, guarde el registro otra vez como «CSV UTF-8».

# Control characters in cells of a lab's file; $more is how many further cells have some.
found_control_characters = { $more ->
    [0] La celda contiene caracteres que gobiernan un aparato y no muestran nada; se omiten.
    [one] La celda contiene caracteres que gobiernan un aparato y no muestran nada, como otra más; se omiten.
   *[other] La celda contiene caracteres que gobiernan un aparato y no muestran nada, como otras { $more }; se omiten.
}

# What to do about it.
do_look_for_missing_text = Mire si falta algo en el texto y, si es así, pregunte al laboratorio.

# Sheets of a workbook that hold no cells.
found_sheets_passed_over = { $sheets ->
    [one] La hoja { $names } del libro no contiene celdas y se pasó por alto: es un gráfico, una macro o una entrada que no lleva a ninguna parte.
   *[other] Las hojas { $names } del libro no contienen celdas y se pasaron por alto: cada una es un gráfico, una macro o una entrada que no lleva a ninguna parte.
}

# What to do about it.
do_open_workbook = Abra el libro si allí puede haber resultados, y pídalos al laboratorio en una hoja de celdas.

# Stray quotation marks have drawn rows into one cell.
found_swallowed_rows = La celda contiene varias líneas, y una de ellas empieza con el código de envase «{ $code }»: unas comillas mal puestas han metido filas en ella, y sus resultados no se leen.

# What to do about it.
do_ask_anew = Pida de nuevo el archivo al laboratorio, como hoja de cálculo si resulta más fácil.

# A table without readings.
found_no_results = { $has ->
    [means] La tabla contiene medias, pero ningún resultado de extracciones sueltas; una media no es una lectura.
   *[nothing] Ninguna columna de la tabla contiene resultados.
}

# What to do about it.
do_ask_for_extractions = Pida al laboratorio el resultado de cada extracción.

# What the spreadsheet program does not show.
found_hidden = { $what ->
    [row] La fila está oculta en el programa de hojas de cálculo; sus resultados se leen.
    [column] La columna está oculta en el programa de hojas de cálculo; lo que contiene se lee.
   *[sheet] La hoja está oculta en el programa de hojas de cálculo; sus resultados se leen.
}

# What to do about it.
do_ask_whether_meant = Pregunte al laboratorio si debían enviarse. Una corrección puede descartarlos.

## Files without a table that is known

# A file of a plate reader's figures.
found_absorbances = El archivo contiene absorbancias y ningún resultado; no se usa nada de él.

# A file that holds controls alone.
found_controls = El archivo contiene solo controles, blancos o patrones; no se usa nada de él.

# What to do about it.
do_want_results = Hacen falta los resultados calculados a partir de ellas, en este archivo o en otro.

# No row could be headings.
found_no_table = No se reconoció ninguna tabla en este archivo: no tiene ninguna fila que pueda contener encabezados.

# What to do about it.
do_ask_for_columns = Pida al laboratorio una tabla con una columna para el código de la muestra y otra para el resultado.

# A row that is most like headings, and what it lacks; $more says that there are further ones.
found_headings = Los encabezados encontrados son { $headings }{ $more ->
    [yes] , …
   *[no] { "" }
}; { $lacking ->
    [result] de ninguno se sabe que nombre el resultado de una extracción.
    [sample] de ninguno se sabe que nombre la muestra.
   *[both] de ninguno se sabe que nombre la muestra, ni de ninguno que nombre el resultado.
}

# What to do about it; $block is a [[layout]] for programme.toml.
do_describe_table =
    Si esta fila contiene los encabezados, ponga esto en programme.toml y corrija los nombres entre comillas:
    { $block }

# A registered code beside figures, outside of any table.
found_lost_code = El envase «{ $code }» está aquí con cifras, pero bajo ningún encabezado conocido; lo que dicen no se usa.

# What to do about it.
do_ask_for_headings = Si las cifras son resultados, pida al laboratorio encabezados que nombren la muestra y el resultado, o describa la tabla en programme.toml con un [[layout]].

## Tables, rows and codes

# A column that may count extractions or wells.
found_replicates = La columna «{ $heading }» puede contar extracciones o pocillos; se toma por extracciones.

# What to do about it.
do_ask_whether_wells = Si son pocillos de un mismo extracto, pida al laboratorio sus extracciones: los pocillos no dicen nada del envase.

# A heading of results with a unit that cannot be converted.
found_foreign_heading = El encabezado «{ $heading }» da la unidad «{ $unit }», que no puede convertirse a ppm. Los resultados bajo este encabezado no se usan.

# What to do about a unit.
do_ask_for_ppm = { $results ->
    [all] Pida al laboratorio los resultados en mg/kg (ppm).
   *[one] Pida al laboratorio el resultado en mg/kg (ppm).
}

# A code that no register has.
found_unknown_code = «{ $code }» no es un código de envase del registro; su resultado no se usa.

# What to do where a registered code is much like it.
do_look_at_near_code = El registro tiene «{ $code }». Si el laboratorio lo escribió mal, pida un informe corregido; si el envase es suyo, añádalo a registers/packages.

# What to do where none is.
do_register_or_ask = Si el envase es suyo, añádalo a registers/packages (una muestra ciega, a registers/blinds); si no, pregunte al laboratorio de quién es esta muestra.

# A result whose row and those above it name no package.
found_no_code = Aquí hay un resultado, pero ningún código de envase en esta fila ni por encima.

# What to do about it.
do_ask_which_package = Pregunte al laboratorio a qué envase pertenece.

# A result without a package code, beside a word that may say that it is none of the package above.
found_unclear_row = Aquí hay un resultado sin código de envase, y en su fila está «{ $word }»: no se puede saber si es otro resultado del envase «{ $code }». No se usa.

# What to do about it.
do_ask_what_result_is_of = Pregunte al laboratorio de qué es el resultado. Si es del envase, pida su código en la fila; si no es de ninguno, una corrección lo deja aparte.

# A registered code in a column that is not that of the codes.
found_code_astray = El código de envase «{ $code }» está en esta fila, pero no en la columna de los códigos; la fila no se usa.

# What to do about it.
do_ask_what_row_says = Pregunte al laboratorio qué dice la fila. Si por encima empieza otra tabla, pida sus encabezados.

# What a spreadsheet has made of a code.
found_mangled_code = «{ $written }» está donde debería haber un código de envase: una hoja de cálculo lo ha convertido en { $into ->
    [date] una fecha
    [scientific] un número en notación científica
   *[zeros] un número que ha perdido sus ceros
}; su resultado no se usa.

# What to do about it; $code is the registered code that it may have been.
do_format_as_text = { $registered ->
    [known] El registro tiene «{ $code }». Pida al laboratorio que dé formato de texto a la columna de los códigos y que envíe de nuevo el archivo.
   *[unknown] Pida al laboratorio que dé formato de texto a la columna de los códigos y que envíe de nuevo el archivo.
}

# What stands where a day should. In a lab's file it is left out; in a register more may follow, which is told elsewhere.
found_no_day = { $of ->
    [lab] «{ $written }» no es un día, o puede ser dos distintos; se omite.
   *[register] «{ $written }» no es un día, o puede ser dos distintos.
}

# What to do about it.
do_write_day = { $of ->
    [lab] Pida al laboratorio que escriba los días como 2031-03-07.
   *[register] Escríbalo como 2031-03-07.
}

# No unit is stated anywhere.
found_no_unit = No se indica ninguna unidad para estos resultados: se leen como ppm (mg/kg).

# What to do about it.
do_ask_for_unit = Pida al laboratorio que indique la unidad.

# A second code on the row of a package.
found_second_code = El código de envase «{ $other }» está en la fila de «{ $code }», fuera de la columna de los códigos; aquí no se lee nada para él.

# What to do about it.
do_ask_for_headings_over_each = Si al lado de esta tabla hay otra, pida al laboratorio encabezados sobre cada una que nombren la muestra y el resultado.

# Whole results with bare figures beside them, in a column for words.
found_parted_decimals = Bajo «{ $left }» (columna { $left_column }) hay cifras enteras y junto a ellas cifras sueltas bajo «{ $right }» (columna { $right_column }): una coma decimal puede haberlas separado. No se usa ninguna fila de esta tabla.

# What to do about it; $block is a [[layout]] for programme.toml.
do_ask_for_points =
    Pida al laboratorio un libro de cálculo o un archivo con puntos decimales. Si los resultados son cifras enteras, ponga esto en programme.toml:
    { $block }

# A figure without a package code that is the mean of those above it.
found_like_a_mean = «{ $written }» está sin código de envase y es la media de los resultados de arriba: cuenta como otra extracción del envase «{ $code }».

# What to do about it.
do_ask_whether_mean = Pregunte al laboratorio si es una media. Si lo es, una corrección la deja aparte.

# Packages that a further sheet goes on with.
found_counted_on = Esta hoja tiene los encabezados de una anterior: sus filas de { $packages } cuentan como otras extracciones.

# What to do about it.
do_ask_whether_further = Si las hojas son un borrador y un informe final, o una copia, deje aparte las extracciones de una con correcciones.

# Two columns between which nothing decides.
found_two_columns = Tanto { $left_is ->
    [headed] «{ $left }» (columna { $left_column })
   *[bare] la columna { $left_column }, que no tiene encabezado,
} como { $right_is ->
    [headed] «{ $right }» (columna { $right_column })
   *[bare] la columna { $right_column }, que no tiene encabezado,
} podrían ser { $what ->
    [package] el código del envase
    [gluten] el gluten
   *[result] el resultado
}, y difieren: no se usa ninguna fila de esta tabla.

# What to do about it; $block is a [[layout]] for programme.toml.
do_choose_column =
    { $takes ->
        [headed] Pregunte al laboratorio cuál es, y nómbrela en programme.toml. Este bloque toma la que tiene encabezado:
       *[second] Pregunte al laboratorio cuál es, y nómbrela en programme.toml. Este bloque toma la segunda de las dos:
    }
    { $block }

# What to do where both columns have one heading.
do_tell_columns_apart = Pregunte al laboratorio cuál de las columnas es, y pida encabezados distintos. Si ambas son extracciones, pida encabezados que las numeren.

# A row that may be the headings of another table.
found_doubtful_row = La fila { $cells } puede ser los encabezados de otra tabla o una observación dentro de esta: no se usa ninguna fila por debajo.

# What to do about it.
do_ask_what_stands_below = Pregunte al laboratorio qué hay debajo. Si son resultados, pídalos sin esta fila.

## Results

# A footnote mark behind a figure.
found_footnote = «{ $written }» lleva una llamada de nota; la cifra se lee sin ella.

# What to do about it.
do_look_up_footnote = Busque la nota en el archivo del laboratorio.

# A figure a little below zero.
found_below_zero = «{ $written }» está por debajo de cero: se toma por menos de lo que el ensayo puede cuantificar.

# What to do about it.
do_nothing_below_zero = No hay nada que hacer. Pregunte al laboratorio si da a menudo cifras así.

# A column of units with one that cannot be converted.
found_bad_unit_cell = La unidad «{ $unit }» no puede convertirse a ppm; el resultado «{ $written }» no se usa.

# Two units are stated for one result, one of them in its own cell: that one is taken.
found_two_units = «{ $written }» se lee en { $unit }, pero también se indica para él otra unidad, { $other }.

# Likewise by its row, its heading or a line of the file: none is taken.
found_units_contradict = «{ $written }» se indica en { $unit } y en { $other }: no se usa.

# What to do about it.
do_ask_which_unit = Pregunte al laboratorio qué unidad es la correcta.

# A result with a unit that cannot be converted.
found_bad_unit = «{ $written }» tiene la unidad «{ $unit }», que no puede convertirse a ppm; no se usa.

# A cell of results that cannot be read as one.
found_bad_value = { $fault ->
    [no_result] «{ $written }» no es un resultado que pueda leerse; no se usa.
    [comma] «{ $written }» puede leerse de dos maneras: su coma o su punto puede ser un signo decimal o separar los millares; no se usa.
    [negative] «{ $written }» está más por debajo de cero de lo que el límite de cuantificación está por encima; no se usa.
    [too_much] «{ $written }» equivale a más de un millón de ppm, más gluten que muestra; no se usa.
    [scientific] «{ $written }» está en notación científica, en la que pueden haberse perdido cifras; no se usa.
    [date] «{ $written }» es una fecha donde debería haber un resultado; no se usa.
    [cell_error] «{ $written }» es un error de la hoja de cálculo, no un resultado; no se usa.
    [sign] La celda muestra «{ $written }», pero la cifra que contiene contradice el signo; no se usa.
   *[uncalculated] La celda contiene una fórmula cuyo resultado no está en el archivo; no se usa.
}

# What to do about it.
do_bad_value = { $fault ->
    [no_result] Un resultado es un número (12,4), una indicación por debajo (<5, no detectado) o por encima (>80), o una palabra que dice que no lo hay. Pregunte al laboratorio qué se quiso decir.
    [comma] Pida al laboratorio que escriba la cifra sin separar los millares. Nada más en el archivo aclara qué es.
    [negative] Pida al laboratorio el resultado tal como lo informaría, por ejemplo <5.
    [too_much] Pregunte al laboratorio por la cifra y su unidad.
    [scientific] Pida al laboratorio la cifra completa.
    [date] Una hoja de cálculo puede haber convertido una cifra en fecha. Pida la cifra al laboratorio.
    [cell_error] Pida al laboratorio que corrija la celda y que envíe de nuevo el archivo.
    [sign] Pida al laboratorio el resultado con un signo y una cifra que concuerden.
   *[uncalculated] Abra el archivo en un programa de hojas de cálculo, guárdelo allí y reemplácelo; o pida cifras al laboratorio.
}

# A sign such as < in a cell of its own that goes with no figure.
found_loose_sign = «{ $sign }» está en una celda propia y nada dice a qué cifra de la fila pertenece: no se usa ningún resultado de la fila.

# A sign or a word beside a result that contradicts it.
found_sign_contradicts = «{ $sign }» está junto al resultado «{ $written }», y no puede ser cierto lo uno y lo otro; el resultado no se usa.

# What to do about both.
do_ask_for_sign_before = Pida al laboratorio que escriba el signo y su cifra en una sola celda, como <20.

# A number format that shows something else than a figure in place of one.
found_figure_hidden = La celda muestra «{ $shown }», pero contiene la cifra { $written }, que es la que se lee.

# An extraction that is numbered 0.
found_zeroth = La extracción de esta fila lleva el número 0; su resultado no se usa.

# What to do about it.
do_ask_for_numbers = Pida al laboratorio que numere las extracciones de cada envase desde 1.

# A row that says of itself that it is no result of the package.
found_withdrawn = { $why ->
    [spiked] «{ $written }» dice que se añadió algo a esta muestra: sus resultados no se usan.
   *[invalid] «{ $written }» dice que el laboratorio no responde de esta fila: sus resultados no se usan.
}

# What to do about it.
do_ask_without_row = Pida al laboratorio un informe sin esta fila, o uno que diga que es un resultado del envase.

# A row, or a table, of another substance than gluten, where nothing names gluten.
found_other_analyte = { $what ->
    [row] La fila es de «{ $written }», y ningún encabezado ni fila del archivo nombra el gluten; su resultado no se usa.
   *[table] «{ $written }» nombra otra sustancia, y nada dice que los resultados de esta tabla sean de gluten: no se usa ninguna de sus filas.
}

# What to do about it.
do_ask_for_gluten = { $what ->
    [row] Pida al laboratorio los resultados de gluten.
   *[table] Pida al laboratorio los resultados de gluten, o un encabezado que diga que lo son. Si le consta, nombre las columnas de la tabla en un [[layout]] de programme.toml.
}

# A table of another substance beside one of gluten.
found_table_of_other = La tabla es de «{ $written }», no de gluten; se pasa por alto.

# A table whose results are gliadin or gluten; what leaves it open.
found_gluten_or_gliadin = «{ $written }» habla de gliadina, y no se puede saber si los resultados de esta tabla son gliadina o gluten, que es el doble: no se usa ninguna de sus filas.

# What to do about it.
do_ask_gluten_or_gliadin = Pida al laboratorio que escriba «gluten» o «gliadina» en el encabezado de los resultados.

# The lab's mean is not that of its readings.
found_mean_differs = La media del laboratorio para { $package } es «{ $written }», pero sus lecturas dan { $kind ->
    [number] { $lower } ppm
    [range] de { $lower } a { $upper } ppm
   *[above] más de { $lower } ppm
}.

# What to do about it.
do_ask_about_mean = La media se calcula de nuevo a partir de las lecturas. Pregunte al laboratorio cuál de las cifras está mal.

## What the lab reports

# Two reports of one extraction differ.
found_conflict = De la extracción { $extraction } del envase «{ $package }» se informa «{ $one }» en { $one_at } y «{ $other }» en { $other_at }; no se usa ninguno.

# What to do about it.
do_settle_conflict = Pregunte al laboratorio cuál vale. Después añada una línea al registro de correcciones: «exclude» para el archivo cuya lectura se retira, o «repeat» para el archivo si sus lecturas son extracciones adicionales.

# One reading in each of two files, both the same.
found_halves = El envase «{ $package }» tiene aquí una sola lectura, y la misma en { $other }: cuenta una vez.

# What to do about it.
do_number_extractions = Si son dos extracciones que resultan ser iguales, pida al laboratorio que las numere, o añada una línea al registro de correcciones: «repeat» para uno de los archivos.

# Two files agree about an extraction.
found_counted_once = De la extracción { $extraction } del envase «{ $package }» se informa el mismo resultado en { $other }; cuenta una vez.

# A package that counts and of which the lab reported nothing.
found_missing_package = El envase «{ $package }» del producto «{ $product }» aún no tiene ningún resultado del laboratorio.

# What to do about it.
do_wait_for_lab = No hay nada que hacer mientras el laboratorio trabaja. Si su informe ha llegado, busque en él este código.

## What can hardly be so

# A claim that the rule does not know.
found_unknown_claim = «{ $claim }», lo que declara «{ $product }», no es una declaración sobre el gluten que tenga límite según la norma { $rule }: el producto no recibe un dictamen.

# What to do about it.
do_look_at_package = Mire el envase. Si dice sin gluten con estas u otras palabras, escriba sin gluten; si no, déjelo como está: la norma no tiene ningún límite con el que comparar los resultados.

# Two days of a package that cannot both be right; the second is a best-by date as it is printed in "bought_best_by".
found_package_days = El envase «{ $package }» { $order ->
    [sent_bought] se envió el { $day }, antes de comprarse el { $other }
    [bought_best_by] se compró el { $day }, después de su fecha de consumo preferente «{ $other }»
    [received_sent] lo recibió el laboratorio el { $day }, antes de enviarse el { $other }
    [received_bought] lo recibió el laboratorio el { $day }, antes de comprarse el { $other }
    [tested_sent] se analizó el { $day }, antes de enviarse el { $other }
    [tested_bought] se analizó el { $day }, antes de comprarse el { $other }
    [tested_received] se analizó el { $day }, antes de que el laboratorio lo recibiera el { $other }
   *[reported_tested] se informó el { $day }, antes de que terminara su análisis el { $other }
}.

# What to do about it.
do_mend_days = { $of ->
    [register] Mire el recibo, el envase y el registro: uno de los dos días está mal escrito.
   *[report] Mire el informe del laboratorio y, si dice lo mismo, pregunte al laboratorio. Un día que el archivo da mal puede corregirse en registers/reports.csv.
}

# All packages of a round are of one lot.
found_one_lot = { $number ->
    [two] Ambos envases del producto «{ $product }», ronda «{ $round }», son del lote «{ $lot }»: hablan por ese lote y no son una muestra al azar del producto.
   *[more] Los { $packages } envases del producto «{ $product }», ronda «{ $round }», son del lote «{ $lot }»: hablan por ese lote y no son una muestra al azar del producto.
}

# What to do about it.
do_buy_other_lots = Compre envases de lotes distintos, en tiendas distintas, donde pueda. Si los lotes son distintos, corríjalos en el registro.

# One lot with two best-by dates.
found_two_dates = El lote «{ $lot }» del producto «{ $product }» tiene las fechas de consumo preferente «{ $first }» (envase «{ $first_package }») y «{ $other }» (envase «{ $other_package }»).

# What to do about it.
do_mend_lot = Un lote tiene una sola fecha de consumo preferente. Mire los envases o sus fotografías, y corrija el lote o la fecha.

# A claim beside an ingredient that denies it.
found_denied_claim = El producto «{ $product }» se vende como «{ $claim }», y sus ingredientes nombran { $terms }.

# What to do about it.
do_look_at_ingredients = Compare los ingredientes del registro con una fotografía del envase: la hoja y la carta dirán esto del fabricante.

# A barcode that is none (GS1 General Specifications, 7.9.1).
found_barcode = El código de barras «{ $barcode }» del producto «{ $product }» { $fault ->
    [letters] no consta solo de cifras
    [length] tiene { $digits ->
        [one] 1 cifra
       *[other] { $digits } cifras
    }; el código de barras de un alimento tiene 8, 12, 13 o 14
   *[check] termina en { $check }; sus otras cifras piden { $wanted } (el dígito de control)
}.

# What to do about it.
do_type_barcode = Escríbalo de nuevo a partir del envase, como texto: un programa de hojas de cálculo quita los ceros iniciales. Se imprime tal como está.

# A price without a digit.
found_price = El precio «{ $price }» del envase «{ $package }» no contiene ninguna cifra.

# What to do about it.
do_write_price = Ponga lo que dice el recibo, o deje la celda vacía.

# Words for fermented or hydrolysed food in a row that says that the food is neither (J AOAC 98:1346, 2015).
found_processing = La fila de «{ $product }» nombra { $foods }, y su campo processing es none: en alimentos fermentados o hidrolizados un ensayo sándwich puede pasar por alto el gluten.

# What to do about it.
do_ask_about_processing = Pregunte al fabricante si el alimento, o buena parte de él, está fermentado o hidrolizado; si es así, escriba fermented o hydrolysed en processing, y haga que se analice también con un ensayo competitivo.

## What published sheets have behind them

# A published sheet whose product or packages are in no register any more; $sheet has number, revision and day.
found_nothing_behind = { $sheet } se publicó, y en los registros { $what ->
    [round] la ronda { $round } de { $product } ya no tiene ningún envase
   *[product] ya no hay ningún producto { $product }
}.

# What to do about it.
do_put_rows_back = Si las filas se quitaron por error, vuelva a ponerlas: el archivo histórico tiene los registros tal como estaban. Si no, lo publicado permanece en el archivo histórico, y esta línea lo recuerda.

# A lab file that published sheets rest on is gone; $sheets has number, revision and day of each.
found_file_gone = { $how ->
    [unopened] No se puede abrir
   *[gone] Ya no está
} el archivo en que se basa lo publicado: { $sheets }. Su SHA-256 era { $sha256 }.

# It is there, and not as it was.
found_file_changed = El archivo no está como estaba cuando se publicó: { $sheets }. Su SHA-256 era { $sha256 } y ahora es { $now }.

# What to do about both.
do_copy_back = En { $kept } está tal como era. Cópielo de vuelta, o emita de nuevo lo que se basa en él, con el motivo.

# The register of issues against the archive; $sheets has number and revision of each.
found_register_differs = { $how ->
    [says] Este registro dice de lo publicado algo distinto que el archivo histórico
   *[lacks] A este registro le falta lo que el archivo histórico tiene como publicado
}: { $sheets }.

# What to do about it.
do_let_run_mend = `galleyproof run` lo corrige a partir del archivo histórico, y lo que aquí se dice ya se basa en él.

# The register has what no archive has.
found_unarchived = Según este registro esto se publicó, y ningún archivo histórico lo tiene: { $sheets }.

# What to do about it.
do_copy_archive_back = Copie archive/ de vuelta si se movió; quite las filas si nadie las emitió.

# A bag's copy of the register.
found_doubted_copy = La copia de registers/issued.csv en este archivo histórico no está como se archivó, y no se toma nada de ella.

# What to do about it.
do_verify_bag = `galleyproof verify` nombra lo que ha cambiado allí.
