# What was found in the registers, and what to do about it: printed as what stands in problems.ftl. Each message is a whole
# sentence. "found_" says what was found, "do_" what to do about the one before it.

## Registers: files and headings

# A file whose name is nearly that of a register.
found_misnamed = This is nearly the name of the register of { $register }, which is { $register }.csv (or .xlsx, .xls, .ods); it is not read, and until that is settled, { $bars ->
    [verdict] no product gets a verdict
   *[issue] nothing is issued
}.

# What to do about it.
do_rename = If it is the register of { $register }, rename it to { $register }.csv or save it as { $register }.xlsx. If not, move it out of registers/.

# What in registers/ is no register.
found_no_register = { $what ->
    [folder] A folder in registers/ is not looked into.
    [sheet] This sheet is no register, and nothing is read from it.
   *[file] This is no register, and nothing is read from it.
}

# What to do about it.
do_keep_elsewhere = Registers are named { $names }. Keep all else outside registers/.

# What to do about a sheet of the workbook of registers that is none.
do_keep_sheet_elsewhere = Sheets of registers are named { $names }. Keep all else in another file outside registers/.

# A sheet of the workbook of registers whose name is nearly a register's.
found_misnamed_sheet = This is nearly the name of the register of { $register }; the sheet is not read, and until that is settled, { $bars ->
    [verdict] no product gets a verdict
   *[issue] nothing is issued
}.

# What to do about it.
do_rename_sheet = If it is that register, name the sheet “{ $register }”. If not, take it out.

# A file whose name is nearly that of the workbook of registers.
found_misnamed_workbook = This is nearly the name of the workbook of registers, which is registers.xlsx (or .xls, .ods); it is not read, and until that is settled, no product gets a verdict.

# What to do about it.
do_rename_workbook = If it is that workbook, rename it to registers.xlsx or save it as that. If not, move it out of registers/.

# What to do where it is the register that the program keeps itself.
do_take_issued_out = The program keeps the register of what was issued by itself, in registers/issued.csv. Take the sheet out.

# A register without headings.
found_empty_register = The register is empty: it has no headings.

# What to do about it.
do_put_headings = Put the headings into its first row, as README shows them.

# A second sheet of a register that holds something.
found_further_sheet = Only the first sheet of a register is read, and this further one holds something.

# What to do about it.
do_one_sheet = Put what belongs to the register into its first sheet, and keep all else in another file outside registers/.

# A heading that is nearly the name of a missing column, and what that keeps from being done.
found_near_heading = The heading “{ $found }” is nearly “{ $meant }”, which is missing; { $costs ->
    [column] its column is not used
    [verdict] until it is mended, no product gets a verdict
   *[issue] until it is mended, nothing is issued
}.

# What to do about it.
do_write_heading = If { $meant } is meant, write the heading so. If not, give this column another name, or add a column { $meant }.

# Two columns of one name.
found_heading_twice = The heading “{ $heading }” is there twice, and the first of the two columns is read; { $costs ->
    [column] the other is not used
    [verdict] until it is mended, no product gets a verdict
   *[issue] until it is mended, nothing is issued
}.

# What to do about it.
do_keep_one_column = Keep one of the two columns, or give the other another name.

# A column of a register that nothing is read from.
found_unknown_column = The register of { $register } has no use for the column “{ $column }”; it is not read.

## Registers: fields

# A field that a spreadsheet could not work out.
found_cell_error = “{ $written }” is a spreadsheet’s error.

# What to do about it.
do_mend_cell = Mend the cell.

# What to do about a formula of a register that was never worked out.
do_calculate = Open the register in a spreadsheet program and save it there, or type what the cell should hold.

# A field with more letters than any document holds.
found_too_long = The field “{ $column }” has { $length } characters, and { $most } are the most; it is not used.

# What to do about it.
do_shorten = Shorten it: it may have been pasted into the wrong cell.

# Control characters in a field of a register.
found_control_characters_in = “{ $written }” holds characters that steer a device and show nothing; { $costs ->
    [row] the row is not used
   *[letters] they are left out
}.

# What to do about it.
do_type_anew = { $when ->
    [missing] Type the text anew if anything is missing from it.
   *[always] Type it anew.
}

# A text that a spreadsheet program would take for a formula.
found_formula = “{ $written }” starts like a spreadsheet formula; it is kept as text.

# What to do about it.
do_mend_formula = If it should not be there, mend the cell.

# A field for mail addresses that holds something else.
found_no_address = “{ $written }” in the field “maker_email” is no mail address, so the letters to this maker have nobody to go to.

# What to do about it.
do_write_address = Write the address as in quality@maker.example, several parted by commas, or leave the field blank.

# A needed field without anything in it.
found_blank = The field “{ $column }” is blank, but it is needed; the row is not used.

# What to do about it.
do_fill_in = Fill it in.

# A field that may have one of several words, and has another one.
found_unknown_word = “{ $written }” is not a word that “{ $column }” can have.

# What to do about it.
do_write_one_of = Write one of these: { $words }.

# A field that should hold a number.
found_no_number = { $wanted ->
    [count] “{ $written }” is no whole number from 1.
   *[figure] “{ $written }” is no number above 0.
}

# What to do about it.
do_write_number = { $wanted ->
    [count] Write 1, 2, 3 …
   *[figure] Write the figure alone, in ppm, such as 5 or 2.5.
}

# A spreadsheet program has made a day of an id.
found_id_is_day = “{ $written }” is a day that a spreadsheet program has made of a { $column }; the row is not used.

# What to do about it.
do_format_column = Set the column’s format to text, and type it anew.

# What no id can be.
found_bad_id = { $since ->
    [file_name] “{ $written }” cannot be a { $column }, since no file can have that name on every computer; the row is not used.
   *[letters] “{ $written }” cannot be a { $column }; the row is not used.
}

# What to do about it.
do_mend_id = { $since ->
    [file_name] Choose another one; it must not end in '.' or be CON, NUL, COM1 and the like.
   *[letters] Use 1 to 64 of the letters A to Z, digits, '.', '_' and '-', not starting with '.'.
}

## Registers: products and packages

# A second row of one product.
found_product_twice = “{ $product }” is in the register twice; this row is not used, and the product gets no verdict.

# A second row whose id differs in case alone.
found_product_alike = “{ $written }” differs from “{ $first }” in nothing that counts, and their files would overwrite each other; this row is not used, and the product gets no verdict.

# What to do about it.
do_one_id_each = Give each product an id of its own, or take one of the two rows out.

# Oats that are called certified.
found_no_certifier = The oats are said to be certified, and no certifier is named.

# What to do about it.
do_name_certifier = Name the certifier in the column certifier, or write unverified.

# A product without a claim.
found_no_claim = The field “claim” is blank, but it is needed; without it the product gets no verdict.

# What to do about it.
do_write_claim = Write the words on the package, such as gluten-free.

# Two products and rounds whose sheets would have one number.
found_sheets_alike = The sheet of “{ $product }”, round “{ $round }” would have the number or the file name of that of “{ $other_product }”, round “{ $other_round }”; the row is not used.

# What to do about it.
do_rename_round = Give one of the two rounds another name, such as one of digits alone.

# A code that is there twice.
found_package_twice = { $spelt ->
    [alike] The package code “{ $second }” is in the register twice
   *[differently] The package codes “{ $first }” and “{ $second }” differ in nothing that counts
}; { $kept ->
    [first] this row is not used
   *[neither] since they belong to different products or rounds, neither is used
}.

# What to do about it.
do_one_code_each = Each package has a code of its own: mend the register.

# A row about a product that there is not.
found_unknown_product = “{ $written }” is not in the register of products; the row is not used.

# What to do about it.
do_add_product = Add the product to registers/products, or mend its id here.

# Rows of a lab's file about packages whose row in the register is not used; $more is how many codes are not named.
found_lost_rows = This file has { $rows ->
    [one] 1 row with the code of a package
   *[other] { $rows } rows with codes of packages
} whose row in the register is not used: { $packages }{ $more ->
    [0] { "" }
   *[other] {" "}and { $more } more
}.

# What to do about it.
do_mend_registers = Mend the registers first: this follows from their errors. Then run again.

## Registers: photographs

# A path of photographs that is not opened.
found_folder_outside = The folder of photographs “{ $folder }” leads out of the programme folder, or is a link; it is not opened.

# What to do about it.
do_copy_photographs = Copy the photographs into a folder of the programme folder, and write its path here.

# A path of photographs that leads nowhere.
found_no_folder = There is no folder of photographs “{ $folder }”.

# What to do about it.
do_make_folder = Make the folder in the programme folder and copy the photographs into it, or empty this cell.

# A folder of photographs that the system does not list.
found_folder_unlisted = The folder of photographs “{ $folder }” cannot be listed.

# What to do about it.
do_look_at_names = Look at its permissions and at the names in it.

# What stands in a folder of photographs and is not taken for one.
found_photograph = { $fault ->
    [link] “{ $path }” is a link, no ordinary file, or has a name that is no text; it is not taken as a photograph.
    [ending] “{ $path }” is no photograph by its name (.jpg, .jpeg, .png, .webp, .heic or .pdf); it is passed over.
   *[unreadable] The photograph “{ $path }” cannot be read.
}

# What to do about it.
do_mend_photograph = { $fault ->
    [link] Copy the photograph itself into the folder.
    [ending] Save it as one of these kinds, or keep it elsewhere.
   *[unreadable] Look at its permissions, then run again.
}

## Registers: corrections, reports, key, issued sheets, terms

# A path that leads to no lab file.
found_no_lab_file = { $costs ->
    [correction] There is no lab file “{ $written }” in the inbox; the correction is not used.
   *[nothing] There is no lab file “{ $written }” in the inbox.
}

# What to do about it.
do_write_path = { $of ->
    [several] Write the path below inbox/, as inbox-report.txt shows it; * stands for any letters.
    [replaced] Write the path of the replaced file below inbox/, as inbox-report.txt shows it.
   *[one] Write the path below inbox/, as inbox-report.txt shows it.
}

# A correction of a package that there is not.
found_unknown_package = “{ $written }” is not in the register of packages; the correction is not used.

# What to do about it.
do_add_package = Mend the code here, or add the package to registers/packages.

# A correction that fits no reading.
found_idle_correction = { $extraction_is ->
    [one] This correction changes nothing: “{ $file }” has no reading of extraction { $extraction } of package “{ $package }”.
   *[any] This correction changes nothing: “{ $file }” has no reading of package “{ $package }”.
}

# What to do about it; the files that report the package.
do_mend_correction = { $reported ->
    [nowhere] No lab file reports this package. Check the code, or take the line out.
   *[somewhere] This package is reported in { $files }. Correct the line’s file or extraction, or take the line out.
}

# An exclusion of every reading that another row declares a repeat.
found_corrections_clash = This correction sets aside every reading that row { $row } takes for a repeat: both cannot be meant.

# What to do about it.
do_keep_one_correction = Keep the one that is meant, and take the other line out.

# A cell of a register that stands under no heading.
found_beyond_headings = “{ $written }” stands under no heading. A text may have been torn apart at its commas, and what is read in this row may not be all; { $costs ->
    [verdict] until it is mended, what the row bears on gets no verdict
    [issue] until it is mended, nothing of what the row bears on is issued
   *[nothing] it is not read
}.

# What to do about it.
do_mend_columns = Put a text with commas into quotation marks, or save the register from a spreadsheet program. If the cell is a note of yours, give its column a heading.

# A notice that is dated before there was anything to tell.
found_early_notice = The notice on product “{ $product }” is dated { $on }, before its first package was bought or sent ({ $day }): until it is mended, its sheet is held.

# What to do about it.
do_mend_notice = Mend the day of the notice, or its round; or the day in registers/packages.

# Two rows about one file.
found_report_twice = The file { $file } has a row in this register already, row { $row }; this row is not used.

# What to do about it.
do_one_row_each = Keep one row for each file.

# The last day of the tests and the first.
found_days_reversed = The last day of the tests lies before the first.

# What to do about it.
do_mend_day = Mend one of the two days.

# A report that is said to replace another one.
found_nothing_replaced = { $since ->
    [itself] “{ $written }” cannot replace itself; nothing is replaced.
    [circle] “{ $written }” replaces this report in its turn: each would silence the other, and nothing is replaced.
   *[unclear] “{ $written }” is not one lab file in the inbox; nothing is replaced.
}

# What to do about it.
do_name_earlier_file = Name the file that came before it.

# A certificate that is not there.
found_no_certificate = There is no file “{ $written }” in the inbox.

# What to do about it.
do_copy_certificate = Copy the certificate into the inbox, and write its path below inbox/.

# A code of the key that is another package's.
found_blind_taken = { $by ->
    [package] “{ $code }” is the code of a package of the register of packages; this row of the key is not used.
   *[key] “{ $code }” is in the key already; this row of the key is not used.
}

# What to do about it.
do_own_code = Give each package a code of its own.

# A row of the register of what was issued that the program cannot have written.
found_no_checksum = “{ $written }” is no checksum as `issue` writes it; the row is not used.

# What to do about it.
do_restore_register = Restore the register from the last dated archive.

# A row of label terms that cannot be used.
found_bad_term = This row of label terms is not used: { $fault ->
    [term] it has no term.
    [class] “{ $written }”, said of “{ $term }”, is no class. Classes are always, depends, exempt and look-alike.
    [exception] “{ $written }”, said of “{ $term }”, is no exception. An exception is written us=depends.
   *[condition] “{ $written }”, said of “{ $term }”, is neither a regime nor named, listed, grain or gluten-free.
}

# What to do about it.
do_mend_row = Correct the row, or take it out.

# What to do where the lab has no result of it.
do_ask_for_blind = Ask the lab for the result under this code, as for any other package.

# What to do where the result is not what was expected.
do_look_at_key = Look at the key first: a code may have been mixed up. Then ask the lab about the whole run, without saying which package it was. No verdict was changed by this; weigh what was tested with it before you issue.

# Likewise, with the share of it that was found. AOAC SMPR 2017.021 allows 50 to 200 % for oats, an uneven food.
found_blind_share = The package { $package } is a blind with { $added } ppm of gluten added; the lab reports { $reported }: that is { $share } % of what was added, { $within ->
    [yes] within 50 to 200 %
   *[no] outside 50 to 200 %
}.

# A package to which gluten was added, and what the lab reports of it, where no share of it can be worked out.
found_blind_with = The package { $package } is a blind { $amount ->
    [known] with { $added } ppm of gluten added
   *[unknown] with gluten added, how much the key does not say
}; the lab reports { $reported }: { $outcome ->
    [no_result] there is no result to hold against the key
    [missed] in { $missed } of { $all } extractions nothing could be put a number on, though gluten was added
   *[found] gluten was found, as expected
}.

# A package that is known to hold no gluten, and what the lab reports of it.
found_blind_without = The package { $package } is a blind that is known to hold no gluten; the lab reports { $reported }: { $outcome ->
    [no_result] there is no result to hold against the key
    [none_found] no gluten was found, as expected
   *[found] gluten was found in { $found } of { $all } extractions where none is known to be
}.
