# What was found in the registers, and what to do about it: printed as what stands in problems.ftl. Each message is a whole
# sentence. "found_" says what was found, "do_" what to do about the one before it.

## Registers: files and headings

# A file whose name is nearly that of a register.
found_misnamed = Este es casi el nombre del registro { $register }, que es { $register }.csv (o .xlsx, .xls, .ods); no se lee y, mientras no se aclare, { $bars ->
    [verdict] ningún producto recibe un dictamen
   *[issue] no se emite nada
}.

# What to do about it.
do_rename = Si es el registro { $register }, cámbiele el nombre a { $register }.csv o guárdelo como { $register }.xlsx. Si no, sáquelo de registers/.

# What in registers/ is no register.
found_no_register = { $what ->
    [folder] No se mira dentro de una carpeta en registers/.
    [sheet] Esta hoja no es ningún registro, y no se lee nada de ella.
   *[file] Esto no es ningún registro, y no se lee nada de él.
}

# What to do about it.
do_keep_elsewhere = Los registros se llaman { $names }. Guarde todo lo demás fuera de registers/.

# What to do about a sheet of the workbook of registers that is none.
do_keep_sheet_elsewhere = Las hojas con registros se llaman { $names }. Guarde todo lo demás en otro archivo fuera de registers/.

# A sheet of the workbook of registers whose name is nearly a register's.
found_misnamed_sheet = Este es casi el nombre del registro { $register }; la hoja no se lee y, mientras no se aclare, { $bars ->
    [verdict] ningún producto recibe un dictamen
   *[issue] no se emite nada
}.

# What to do about it.
do_rename_sheet = Si es ese registro, llame a la hoja «{ $register }». Si no, quítela.

# A file whose name is nearly that of the workbook of registers.
found_misnamed_workbook = Este es casi el nombre del libro de registros, registers.xlsx (o .xls, .ods); no se lee y, mientras no se aclare, ningún producto recibe un dictamen.

# What to do about it.
do_rename_workbook = Si es ese libro, cámbiele el nombre a registers.xlsx o guárdelo así. Si no, sáquelo de registers/.

# What to do where it is the register that the program keeps itself.
do_take_issued_out = El registro de lo emitido lo lleva el propio programa informático en registers/issued.csv. Quite la hoja.

# A register without headings.
found_empty_register = El registro está vacío: no tiene encabezados.

# What to do about it.
do_put_headings = Ponga los encabezados en la primera fila, como los muestra README.

# A second sheet of a register that holds something.
found_further_sheet = De un registro solo se lee la primera hoja, y esta otra también contiene algo.

# What to do about it.
do_one_sheet = Ponga lo que pertenece al registro en su primera hoja, y guarde lo demás en otro archivo fuera de registers/.

# A heading that is nearly the name of a missing column, and what that keeps from being done.
found_near_heading = El encabezado «{ $found }» es casi «{ $meant }», que falta; { $costs ->
    [column] su columna no se usa
    [verdict] mientras no se corrija, ningún producto recibe un dictamen
   *[issue] mientras no se corrija, no se emite nada
}.

# What to do about it.
do_write_heading = Si se quiso decir { $meant }, escriba así el encabezado. Si no, dé otro nombre a esta columna, o añada una columna { $meant }.

# Two columns of one name.
found_heading_twice = El encabezado «{ $heading }» está dos veces, y se lee la primera de las dos columnas; { $costs ->
    [column] la otra no se usa
    [verdict] mientras no se corrija, ningún producto recibe un dictamen
   *[issue] mientras no se corrija, no se emite nada
}.

# What to do about it.
do_keep_one_column = Conserve una de las dos columnas, o dé otro nombre a la otra.

# A column of a register that nothing is read from.
found_unknown_column = El registro { $register } no tiene uso para la columna «{ $column }»; no se lee.

## Registers: fields

# A field that a spreadsheet could not work out.
found_cell_error = «{ $written }» es un error de la hoja de cálculo.

# What to do about it.
do_mend_cell = Corrija la celda.

# What to do about a formula of a register that was never worked out.
do_calculate = Abra el registro en un programa de hojas de cálculo y guárdelo allí, o escriba lo que la celda debe contener.

# A field with more letters than any document holds.
found_too_long = El campo «{ $column }» tiene { $length } caracteres, y { $most } es el máximo; no se usa.

# What to do about it.
do_shorten = Acórtelo: puede haberse pegado en la celda equivocada.

# Control characters in a field of a register.
found_control_characters_in = «{ $written }» contiene caracteres que gobiernan un aparato y no muestran nada; { $costs ->
    [row] la fila no se usa
   *[letters] se omiten
}.

# What to do about it.
do_type_anew = { $when ->
    [missing] Escriba el texto de nuevo si le falta algo.
   *[always] Escríbalo de nuevo.
}

# A text that a spreadsheet program would take for a formula.
found_formula = «{ $written }» empieza como una fórmula de hoja de cálculo; se conserva como texto.

# What to do about it.
do_mend_formula = Si no debe estar ahí, corrija la celda.

# A field for mail addresses that holds something else.
found_no_address = «{ $written }», en el campo «maker_email», no es una dirección de correo; las cartas a este fabricante quedan sin destinatario.

# What to do about it.
do_write_address = Escriba la dirección como quality@maker.example, varias separadas por comas, o deje el campo en blanco.

# A needed field without anything in it.
found_blank = El campo «{ $column }» está en blanco, pero hace falta; la fila no se usa.

# What to do about it.
do_fill_in = Rellénelo.

# A field that may have one of several words, and has another one.
found_unknown_word = «{ $written }» no es una palabra que «{ $column }» pueda tener.

# What to do about it.
do_write_one_of = Escriba una de estas: { $words }.

# A field that should hold a number.
found_no_number = { $wanted ->
    [count] «{ $written }» no es un número entero desde 1.
   *[figure] «{ $written }» no es un número mayor que 0.
}

# What to do about it.
do_write_number = { $wanted ->
    [count] Escriba 1, 2, 3…
   *[figure] Escriba solo la cifra, en ppm, por ejemplo 5 o 2,5.
}

# A spreadsheet program has made a day of an id.
found_id_is_day = «{ $written }» es un día: un programa de hojas de cálculo lo ha puesto en lugar de lo que se escribió en el campo { $column }; la fila no se usa.

# What to do about it.
do_format_column = Ponga la columna en formato de texto y escríbalo de nuevo.

# What no id can be.
found_bad_id = { $since ->
    [file_name] «{ $written }» no puede ser un identificador en el campo { $column }, porque ningún archivo puede llamarse así en todos los sistemas; la fila no se usa.
   *[letters] «{ $written }» no puede ser un identificador en el campo { $column }; la fila no se usa.
}

# What to do about it.
do_mend_id = { $since ->
    [file_name] Elija otro; no debe terminar en '.' ni ser CON, NUL, COM1 o similares.
   *[letters] Use de 1 a 64 letras de la A a la Z, cifras, '.', '_' y '-', sin empezar por '.'.
}

## Registers: products and packages

# A second row of one product.
found_product_twice = «{ $product }» está dos veces en el registro; esta fila no se usa, y el producto no recibe un dictamen.

# A second row whose id differs in case alone.
found_product_alike = «{ $written }» no se distingue de «{ $first }» en nada que cuente, y sus archivos se sobrescribirían; esta fila no se usa, y el producto no recibe un dictamen.

# What to do about it.
do_one_id_each = Dé a cada producto un identificador propio, o quite una de las dos filas.

# Oats that are called certified.
found_no_certifier = Se dice que la avena está certificada, y no se nombra a ningún certificador.

# What to do about it.
do_name_certifier = Nombre al certificador en la columna certifier, o escriba unverified.

# A product without a claim.
found_no_claim = El campo «claim» está en blanco, pero hace falta; sin él el producto no recibe un dictamen.

# What to do about it.
do_write_claim = Escriba las palabras del envase, por ejemplo sin gluten.

# Two products and rounds whose sheets would have one number.
found_sheets_alike = La hoja de «{ $product }», ronda «{ $round }», tendría el número o el nombre de archivo de la de «{ $other_product }», ronda «{ $other_round }»; la fila no se usa.

# What to do about it.
do_rename_round = Dé otro nombre a una de las dos rondas, por ejemplo uno solo de cifras.

# A code that is there twice.
found_package_twice = { $spelt ->
    [alike] El código de envase «{ $second }» está dos veces en el registro
   *[differently] Los códigos de envase «{ $first }» y «{ $second }» no se distinguen en nada que cuente
}; { $kept ->
    [first] esta fila no se usa
   *[neither] como pertenecen a productos o rondas distintos, no se usa ninguno
}.

# What to do about it.
do_one_code_each = Cada envase tiene un código propio: corrija el registro.

# A row about a product that there is not.
found_unknown_product = «{ $written }» no está en el registro de productos; la fila no se usa.

# What to do about it.
do_add_product = Añada el producto a registers/products, o corrija aquí su identificador.

# Rows of a lab's file about packages whose row in the register is not used; $more is how many codes are not named.
found_lost_rows = Este archivo tiene { $rows ->
    [one] 1 fila con el código de un envase
   *[other] { $rows } filas con códigos de envases
} cuya fila en el registro no se usa: { $packages }{ $more ->
    [0] { "" }
   *[other] {" "}y { $more } más
}.

# What to do about it.
do_mend_registers = Corrija primero los registros: esto se sigue de sus errores. Después vuelva a ejecutar el programa.

## Registers: photographs

# A path of photographs that is not opened.
found_folder_outside = La carpeta de fotografías «{ $folder }» lleva fuera de la carpeta de su programa de análisis, o es un enlace; no se abre.

# What to do about it.
do_copy_photographs = Copie las fotografías en una carpeta dentro de la de su programa de análisis, y escriba aquí su ruta.

# A path of photographs that leads nowhere.
found_no_folder = No existe la carpeta de fotografías «{ $folder }».

# What to do about it.
do_make_folder = Cree la carpeta en la de su programa de análisis y copie en ella las fotografías, o vacíe esta celda.

# A folder of photographs that the system does not list.
found_folder_unlisted = No se puede listar la carpeta de fotografías «{ $folder }».

# What to do about it.
do_look_at_names = Mire sus permisos y los nombres que contiene.

# What stands in a folder of photographs and is not taken for one.
found_photograph = { $fault ->
    [link] «{ $path }» es un enlace, no es un archivo corriente o tiene un nombre que no es texto; no se toma por fotografía.
    [ending] «{ $path }» no es una fotografía según su nombre (.jpg, .jpeg, .png, .webp, .heic o .pdf); se pasa por alto.
   *[unreadable] La fotografía «{ $path }» no se puede leer.
}

# What to do about it.
do_mend_photograph = { $fault ->
    [link] Copie la fotografía misma en la carpeta.
    [ending] Guárdela en uno de estos formatos, o en otro lugar.
   *[unreadable] Mire los permisos y vuelva a ejecutar el programa.
}

## Registers: corrections, reports, key, issued sheets, terms

# A path that leads to no lab file.
found_no_lab_file = { $costs ->
    [correction] No hay ningún archivo del laboratorio «{ $written }» en inbox; la corrección no se usa.
   *[nothing] No hay ningún archivo del laboratorio «{ $written }» en inbox.
}

# What to do about it.
do_write_path = { $of ->
    [several] Escriba la ruta por debajo de inbox/, como la muestra inbox-report.txt; * vale por cualesquiera letras.
    [replaced] Escriba la ruta del archivo sustituido por debajo de inbox/, como la muestra inbox-report.txt.
   *[one] Escriba la ruta por debajo de inbox/, como la muestra inbox-report.txt.
}

# A correction of a package that there is not.
found_unknown_package = «{ $written }» no está en el registro de envases; la corrección no se usa.

# What to do about it.
do_add_package = Corrija aquí el código, o añada el envase a registers/packages.

# A correction that fits no reading.
found_idle_correction = { $extraction_is ->
    [one] Esta corrección no cambia nada: «{ $file }» no tiene ninguna lectura de la extracción { $extraction } del envase «{ $package }».
   *[any] Esta corrección no cambia nada: «{ $file }» no tiene ninguna lectura del envase «{ $package }».
}

# What to do about it; the files that report the package.
do_mend_correction = { $reported ->
    [nowhere] Ningún archivo del laboratorio informa de este envase. Compruebe el código, o quite la línea.
   *[somewhere] De este envase se informa en { $files }. Corrija el archivo o la extracción de la línea, o quite la línea.
}

# An exclusion of every reading that another row declares a repeat.
found_corrections_clash = Esta corrección aparta todas las lecturas que la fila { $row } toma por repetición: no pueden valer las dos.

# What to do about it.
do_keep_one_correction = Conserve la línea que vale y quite la otra.

# A cell of a register that stands under no heading.
found_beyond_headings = «{ $written }» no está bajo ningún encabezado. Puede que un texto se haya partido por sus comas y que lo que se lee en esta fila no sea todo; { $costs ->
    [verdict] mientras no se corrija, no hay dictamen sobre lo que toca la fila
    [issue] mientras no se corrija, no se emite nada de lo que toca la fila
   *[nothing] no se lee
}.

# What to do about it.
do_mend_columns = Ponga entre comillas el texto con comas, o guarde el registro desde un programa de hojas de cálculo. Si la celda es una nota suya, dé un encabezado a su columna.

# A notice that is dated before there was anything to tell.
found_early_notice = El aviso sobre el producto «{ $product }» lleva fecha { $on }, anterior al día en que se compró o envió su primer envase ({ $day }): mientras no se corrija, su hoja queda retenida.

# What to do about it.
do_mend_notice = Corrija el día del aviso o su ronda, o el día en registers/packages.

# Two rows about one file.
found_report_twice = El archivo { $file } ya tiene una fila en este registro, la fila { $row }; esta fila no se usa.

# What to do about it.
do_one_row_each = Conserve una fila por archivo.

# The last day of the tests and the first.
found_days_reversed = El último día de los análisis es anterior al primero.

# What to do about it.
do_mend_day = Corrija uno de los dos días.

# A report that is said to replace another one.
found_nothing_replaced = { $since ->
    [itself] «{ $written }» no puede sustituirse a sí mismo; no se sustituye nada.
    [circle] «{ $written }» reemplaza a su vez este informe: cada uno callaría al otro, y no se reemplaza nada.
   *[unclear] «{ $written }» no es exactamente un archivo del laboratorio en inbox; no se sustituye nada.
}

# What to do about it.
do_name_earlier_file = Nombre el archivo que vino antes.

# A certificate that is not there.
found_no_certificate = No hay ningún archivo «{ $written }» en inbox.

# What to do about it.
do_copy_certificate = Copie el certificado en inbox, y escriba su ruta por debajo de inbox/.

# A code of the key that is another package's.
found_blind_taken = { $by ->
    [package] «{ $code }» es el código de un envase del registro de envases; esta fila de la clave no se usa.
   *[key] «{ $code }» ya está en la clave; esta fila de la clave no se usa.
}

# What to do about it.
do_own_code = Dé a cada envase un código propio.

# A row of the register of what was issued that the program cannot have written.
found_no_checksum = «{ $written }» no es una suma de comprobación como las que escribe `issue`; la fila no se usa.

# What to do about it.
do_restore_register = Restaure el registro desde el último archivo fechado.

# A row of label terms that cannot be used.
found_bad_term = Esta fila de términos de etiquetas no se usa: { $fault ->
    [term] no tiene término.
    [class] «{ $written }», dicho de «{ $term }», no es una clase. Las clases son always, depends, exempt y look-alike.
    [exception] «{ $written }», dicho de «{ $term }», no es una excepción. Una excepción se escribe us=depends.
   *[condition] «{ $written }», dicho de «{ $term }», no es ni un régimen ni named, listed, grain o gluten-free.
}

# What to do about it.
do_mend_row = Corrija la fila, o quítela.

# What to do where the lab has no result of it.
do_ask_for_blind = Pida al laboratorio el resultado de este código, como el de cualquier otro envase.

# What to do where the result is not what was expected.
do_look_at_key = Mire primero la clave: puede haberse confundido un código. Después pregunte al laboratorio por toda la serie, sin decir qué envase era. Ningún dictamen ha cambiado por esto; sopese lo que se analizó junto con él antes de emitir nada.

# Likewise, with the share of it that was found. AOAC SMPR 2017.021 allows 50 to 200 % for oats, an uneven food.
found_blind_share = El envase { $package } es una muestra ciega a la que se añadieron { $added } ppm de gluten; el laboratorio informa { $reported }: es el { $share } % de lo añadido, { $within ->
    [yes] dentro del 50 al 200 %
   *[no] fuera del 50 al 200 %
}.

# A package to which gluten was added, and what the lab reports of it, where no share of it can be worked out.
found_blind_with = El envase { $package } es una muestra ciega a la que { $amount ->
    [known] se añadieron { $added } ppm de gluten
   *[unknown] se añadió gluten; la clave no dice cuánto
}; el laboratorio informa { $reported }: { $outcome ->
    [no_result] no hay ningún resultado que comparar con la clave
    [missed] en { $missed } de { $all } extracciones no se pudo cuantificar nada, aunque se había añadido gluten
   *[found] se encontró gluten, como se esperaba
}.

# A package that is known to hold no gluten, and what the lab reports of it.
found_blind_without = El envase { $package } es una muestra ciega que se sabe que no contiene gluten; el laboratorio informa { $reported }: { $outcome ->
    [no_result] no hay ningún resultado que comparar con la clave
    [none_found] no se encontró gluten, como se esperaba
   *[found] se encontró gluten en { $found } de { $all } extracciones, donde no debía haberlo
}.
