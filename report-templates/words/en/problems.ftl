# What was found in lab files, and what to do about it; registers.ftl has what was found in registers. Printed in
# inbox-report.txt; in English in results.json, in results.xlsx and on the screen. Each message is a whole sentence. "found_" says what was found, "do_" what to do about the one
# before it.

## Where a problem stands, and the report that lists all of them

# Where something stands, within a sentence. The name of a cell, the number of a row, the letter of a column.
place = { $file }{ $sheet_is ->
    [named] , sheet “{ $sheet }”
   *[none] { "" }
}{ $at ->
    [cell] , cell { $cell }
    [row] , row { $cell }
    [column] , column { $cell }
   *[none] { "" }
}

# The same below the name of its file, before the colon of an entry.
place_in_file = { $sheet_is ->
    [named] { $at ->
        [cell] sheet “{ $sheet }”, cell { $cell }
        [row] sheet “{ $sheet }”, row { $cell }
        [column] sheet “{ $sheet }”, column { $cell }
       *[none] sheet “{ $sheet }”
    }
   *[none] { $at ->
        [cell] cell { $cell }
        [row] row { $cell }
        [column] column { $cell }
       *[none] { "" }
    }
}

# Words from a file, one of several.
item = “{ $text }”

# The same with where they stand: a column's letter, or a place.
item_at = “{ $text }” ({ $at })

# The margin of an entry; at most eight letters.
problem_severity = { $severity ->
    [error] Error
    [warning] Warning
   *[note] Note
}

# The first line of an entry behind its margin: where, and what was found.
problem_entry = { $at ->
    [somewhere] { $place }: { $found }
   *[whole] { $found }
}

# The second line of an entry.
problem_to_do = What to do: { $hint }

# The heading of the report.
report_heading = What was found in the lab files and registers

# Below it, where there is no problem.
report_clean = Lab files read: { $files }. Nothing needs to be looked at.

# Below it, where there are some.
report_counts = Lab files read: { $files }. Errors: { $errors }, warnings: { $warnings }, notes: { $notes }. { $errors ->
    [0] No result that was found was left out.
   *[other] An error means that something was left out and a person must look at it.
}

## Files that cannot be read

# The file passes a bound; $part is the bound of one part of a workbook.
found_too_large = The file is too large: at most { $bound ->
    [file] a file of { $most } MB
    [unpacked] { $part } MB in a part of a workbook and { $most } MB in all its parts, once unpacked,
    [parts] { $most } parts of a workbook
    [sheets] { $most } sheets
    [cells] { $most } filled cells
    [rows] { $most } filled rows
    [row] { $most } filled cells in a row
    [repeats] a filled row repeated { $most } times
    [text] { $most } MB of text in its cells
    [cell_text] { $most } MB of text in a cell
    [styles] { $most } styles of cells
    [tables] { $most } tables and headings
   *[results] { $most } results
} can be read.

# What to do about it.
do_results_alone = Ask the lab for a file that holds the results alone.

# There are more problems of this kind in the file than are told one by one; they stand above this line.
found_more_of_a_kind = { $count ->
    [one] { $count } further cell or row of this file has a problem of this kind
   *[other] { $count } further cells or rows of this file have a problem of this kind
}; they are not listed one by one.

# What to do about it.
do_mend_those_first = Put right what is listed, and run again.

# The file holds nothing.
found_empty_file = { $with ->
    [zeros] The file holds nothing but zeros, as a copy that was cut short does.
   *[nothing] The file is empty.
}

# What to do about it.
do_send_or_copy_again = Ask the lab to send it again, or copy it again if the copy was cut short.

# The file is of a kind that holds no table, by its first bytes.
found_other_kind = { $kind ->
    [pdf] The file is a PDF, whatever its name says: it holds no table that can be read.
    [web] The file is a web page, whatever its name says: it holds no table that can be read.
    [xml] The file is an XML file, whatever its name says: it holds no table that can be read.
   *[other] The file is neither text nor a workbook, whatever its name says: it holds no table that can be read.
}

# What to do about it.
do_save_as_workbook = Ask the lab for the results as .csv or .xlsx, or open it in a spreadsheet program and save it as .xlsx.

# A workbook whose parts do not fit together.
found_damaged_workbook = The workbook is damaged or cut short.

# What to do about it.
do_copy_or_send_again = Copy it again from the lab’s message, or ask the lab to send it again.

# A workbook that a password protects.
found_password = The workbook is protected by a password.

# What to do about it.
do_take_off_password = Ask the lab for a copy without one, or open it with the password and save it without.

# An archive that holds something else.
found_no_workbook = The file is an archive or a document, whatever its name says, and no workbook.

# What to do about it.
do_take_out_of_archive = Take the lab’s file out of it, or ask the lab for the results as .csv or .xlsx.

# A line of delimited text that no table has.
found_long_line = The file’s line { $line } is longer than any row of a table of results.

# What to do about it.
do_ask_for_table = Ask the lab for the results as a table, a row a sample or an extraction.

# Quotation marks of delimited text that are not closed.
found_open_quote = The quotation mark that opens a cell in line { $line } is not closed, so that where its rows end is not known.

# What to do about it.
do_send_again_or_workbook = Ask the lab to send the file again, or for the same as .xlsx.

# Damage that the reader does not know.
found_damaged = The file is damaged in a way that was not foreseen.

# What to do about it.
do_send_again = Ask the lab to send it again.

# The file's content was another one a moment before.
found_changing = The file was changed while it was being read.

# What to do about it.
do_wait_until_whole = Run again once it is whole.

# A file that was listed and is not there.
found_gone = The file is no longer there.

# What to do about it.
do_copy_again = Run again. If it should be there, copy it into the inbox again.

# The system refuses the reading.
found_not_permitted = The file cannot be opened: you are not permitted to read it.

# What to do about it.
do_permit_or_copy = Change its permissions, or copy it anew, then run again.

# Any other reason of the system.
found_cannot_open = The file cannot be opened.

# What to do about it.
do_close_programs = Close it in other programs and wait until it is copied whole, then run again.

# A register that is damaged in a way that the reader does not know.
found_damaged_register = The register is damaged.

# What to do about it.
do_restore = Restore it from a copy.

## What lies in the inbox

# A folder or file that cannot be looked into.
found_unopened = The folder or file cannot be opened.

# What to do about what cannot be opened or read.
do_permit = Look at its permissions, then run again.

# A link that is not followed.
found_link = { $to ->
    [folder] This is a link to a folder, and such links are not followed.
    [outward] This is a link that leads out of the programme folder, and such links are not followed.
   *[nothing] This is a link that leads nowhere, or in a circle.
}

# What to do about it.
do_copy_itself = { $to ->
    [folder] Copy the files themselves into the inbox.
   *[nothing] Copy the file itself into the inbox.
}

# A device, a pipe and the like.
found_no_file = This is no ordinary file.

# What to do about it.
do_lab_files = Lab files are spreadsheets or delimited text.

# A file whose name ends otherwise than a lab file's.
found_other_ending = A file of this kind holds no table that is read (lab files end in { $endings }).

# What to do about it.
do_ask_for_spreadsheet = If it holds results, ask the lab for them as a spreadsheet.

# The same bytes under two names.
found_same_file = This file has the same content as { $file }; it counts once.

# A certificate or photograph in the inbox that cannot be read.
found_exhibit_unreadable = This certificate or photograph cannot be read.

## A lab's file as a whole

# Text that is not in UTF-8.
found_encoding = The file does not say how its letters are written, and was read as Western European text (Windows-1252).

# What to do about it.
do_ask_for_utf8 = If letters such as é or µ look wrong, ask the lab for the file in UTF-8.

# What to do about it where it is a register.
do_save_as_utf8 = If letters such as é or µ look wrong in the outputs, save the register again as “CSV UTF-8”.

# Control characters in cells of a lab's file; $more is how many further cells have some.
found_control_characters = { $more ->
    [0] The cell holds characters that steer a device and show nothing; they are left out.
    [one] The cell holds characters that steer a device and show nothing, as 1 more does; they are left out.
   *[other] The cell holds characters that steer a device and show nothing, as { $more } more do; they are left out.
}

# What to do about it.
do_look_for_missing_text = Look whether anything is missing from the text, and ask the lab if it is.

# Sheets of a workbook that hold no cells.
found_sheets_passed_over = { $sheets ->
    [one] The sheet { $names } of the workbook holds no cells and was passed over: it is a chart, a macro, or an entry that leads nowhere.
   *[other] The sheets { $names } of the workbook hold no cells and were passed over: each is a chart, a macro, or an entry that leads nowhere.
}

# What to do about it.
do_open_workbook = Open the workbook if results may stand there, and ask the lab for them in a worksheet.

# Stray quotation marks have drawn rows into one cell.
found_swallowed_rows = The cell holds several lines, and one of them begins with the package code “{ $code }”: quotation marks that stand wrongly have drawn rows into it, and their results are not read.

# What to do about it.
do_ask_anew = Ask the lab for the file anew, as a spreadsheet if that is easier.

# A table without readings.
found_no_results = { $has ->
    [means] The table has means but no results of single extractions; a mean is not a reading.
   *[nothing] None of the table’s columns holds results.
}

# What to do about it.
do_ask_for_extractions = Ask the lab for the result of each extraction.

# What the spreadsheet program does not show.
found_hidden = { $what ->
    [row] The row is hidden in the spreadsheet program; its results are read.
    [column] The column is hidden in the spreadsheet program; what stands in it is read.
   *[sheet] The sheet is hidden in the spreadsheet program; its results are read.
}

# What to do about it.
do_ask_whether_meant = Ask the lab whether they were meant to be sent. A correction can set them aside.

## Files without a table that is known

# A file of a plate reader's figures.
found_absorbances = The file holds absorbances and no results; nothing of it is used.

# A file that holds controls alone.
found_controls = The file holds controls, blanks or standards alone; nothing of it is used.

# What to do about it.
do_want_results = The results that were worked out from them are wanted, in this file or in another.

# No row could be headings.
found_no_table = No table was recognised in this file: it has no row that could be headings.

# What to do about it.
do_ask_for_columns = Ask the lab for a table with a column for the sample code and one for the result.

# A row that is most like headings, and what it lacks; $more says that there are further ones.
found_headings = The headings found are { $headings }{ $more ->
    [yes] , …
   *[no] { "" }
}; { $lacking ->
    [result] none of them is known to name the result of an extraction.
    [sample] none of them is known to name the sample.
   *[both] none of them is known to name the sample, and none the result.
}

# What to do about it; $block is a [[layout]] for programme.toml.
do_describe_table =
    If this row holds the headings, put this into programme.toml and mend the names between quotes:
    { $block }

# A registered code beside figures, outside of any table.
found_lost_code = Package “{ $code }” stands here with figures, but under no headings that are known; what they say is not used.

# What to do about it.
do_ask_for_headings = If the figures are results, ask the lab for headings that name the sample and the result, or describe the table in programme.toml with a [[layout]].

## Tables, rows and codes

# A column that may count extractions or wells.
found_replicates = The column “{ $heading }” may count extractions or wells; it is taken for extractions.

# What to do about it.
do_ask_whether_wells = If they are wells of one extract, ask the lab for its extractions: wells say nothing about the package.

# A heading of results with a unit that cannot be converted.
found_foreign_heading = The heading “{ $heading }” gives the unit “{ $unit }”, which cannot be converted to ppm. Results under this heading are not used.

# What to do about a unit.
do_ask_for_ppm = { $results ->
    [all] Ask the lab for the results in mg/kg (ppm).
   *[one] Ask the lab for the result in mg/kg (ppm).
}

# A code that no register has.
found_unknown_code = “{ $code }” is no package code of the register; its result is not used.

# What to do where a registered code is much like it.
do_look_at_near_code = The register has “{ $code }”. If the lab mistyped it, ask for a corrected report; if the package is yours, add it to registers/packages.

# What to do where none is.
do_register_or_ask = If the package is yours, add it to registers/packages (a blind: to registers/blinds); else ask the lab whose sample this is.

# A result whose row and those above it name no package.
found_no_code = There is a result here, but no package code on this row or above it.

# What to do about it.
do_ask_which_package = Ask the lab which package it belongs to.

# A result without a package code, beside a word that may say that it is none of the package above.
found_unclear_row = There is a result here without a package code, and “{ $word }” stands on its row: whether it is a further result of package “{ $code }” cannot be told. It is not used.

# What to do about it.
do_ask_what_result_is_of = Ask the lab what the result is of. If it is of the package, ask for its code on the row; if it is of none, a correction sets it aside.

# A registered code in a column that is not that of the codes.
found_code_astray = The package code “{ $code }” stands on this row, but not in the column of codes; the row is not used.

# What to do about it.
do_ask_what_row_says = Ask the lab what the row says. If another table begins above it, ask for its headings.

# What a spreadsheet has made of a code.
found_mangled_code = “{ $written }” stands where a package code should: a spreadsheet has made it into { $into ->
    [date] a date
    [scientific] a number in scientific form
   *[zeros] a number that has lost its zeros
}; its result is not used.

# What to do about it; $code is the registered code that it may have been.
do_format_as_text = { $registered ->
    [known] The register has “{ $code }”. Ask the lab to format the column of codes as text and to send the file again.
   *[unknown] Ask the lab to format the column of codes as text and to send the file again.
}

# What stands where a day should. In a lab's file it is left out; in a register more may follow, which is told elsewhere.
found_no_day = { $of ->
    [lab] “{ $written }” is no day, or can be two different ones; it is left out.
   *[register] “{ $written }” is no day, or can be two different ones.
}

# What to do about it.
do_write_day = { $of ->
    [lab] Ask the lab to write days as 2031-03-07.
   *[register] Write it as 2031-03-07.
}

# No unit is stated anywhere.
found_no_unit = No unit is stated for these results: they are read as ppm (mg/kg).

# What to do about it.
do_ask_for_unit = Ask the lab to state the unit.

# A second code on the row of a package.
found_second_code = The package code “{ $other }” stands on the row of “{ $code }”, outside of the column of codes; nothing is read for it here.

# What to do about it.
do_ask_for_headings_over_each = If another table stands beside this one, ask the lab for headings over each that name the sample and the result.

# Whole results with bare figures beside them, in a column for words.
found_parted_decimals = Under “{ $left }” (column { $left_column }) stand whole figures, and beside them bare figures under “{ $right }” (column { $right_column }): a decimal comma may have parted them. No row of this table is used.

# What to do about it; $block is a [[layout]] for programme.toml.
do_ask_for_points =
    Ask the lab for a workbook, or for a file with decimal points. If the results are whole figures, put this into programme.toml:
    { $block }

# A figure without a package code that is the mean of those above it.
found_like_a_mean = “{ $written }” stands without a package code and is the mean of the results above it: it is counted as a further extraction of package “{ $code }”.

# What to do about it.
do_ask_whether_mean = Ask the lab whether it is a mean. If it is, a correction sets it aside.

# Packages that a further sheet goes on with.
found_counted_on = This sheet has the headings of one before it: its rows of { $packages } are counted as further extractions.

# What to do about it.
do_ask_whether_further = If the sheets are a draft and a final report, or a copy, set the extractions of one aside by corrections.

# Two columns between which nothing decides.
found_two_columns = Both { $left_is ->
    [headed] “{ $left }” (column { $left_column })
   *[bare] column { $left_column }, which has no heading,
} and { $right_is ->
    [headed] “{ $right }” (column { $right_column })
   *[bare] column { $right_column }, which has no heading,
} could be { $what ->
    [package] the package code
    [gluten] the gluten
   *[result] the result
}, and they differ: no row of this table is used.

# What to do about it; $block is a [[layout]] for programme.toml.
do_choose_column =
    { $takes ->
        [headed] Ask the lab which it is, then name it in programme.toml. This block takes the one that has a heading:
       *[second] Ask the lab which it is, then name it in programme.toml. This block takes the second of the two:
    }
    { $block }

# What to do where both columns have one heading.
do_tell_columns_apart = Ask the lab which of the columns it is, and for headings that differ. If both are extractions, ask for headings that number them.

# A row that may be the headings of another table.
found_doubtful_row = The row { $cells } can be the headings of another table or a remark within this one: no row below it is used.

# What to do about it.
do_ask_what_stands_below = Ask the lab what stands below it. If the rows are results, ask for them without this row.

## Results

# A footnote mark behind a figure.
found_footnote = “{ $written }” carries a footnote mark; the figure is read without it.

# What to do about it.
do_look_up_footnote = Look up the footnote in the lab’s file.

# A figure a little below zero.
found_below_zero = “{ $written }” is below zero: it is taken for less than the assay can put a number on.

# What to do about it.
do_nothing_below_zero = Nothing to do. Ask the lab if it reports such figures often.

# A column of units with one that cannot be converted.
found_bad_unit_cell = The unit “{ $unit }” is none that can be converted to ppm; the result “{ $written }” is not used.

# Two units are stated for one result, one of them in its own cell: that one is taken.
found_two_units = “{ $written }” is read in { $unit }, but another unit, { $other }, is stated for it too.

# Likewise by its row, its heading or a line of the file: none is taken.
found_units_contradict = “{ $written }” is stated in { $unit } and in { $other }: it is not used.

# What to do about it.
do_ask_which_unit = Ask the lab which unit is right.

# A result with a unit that cannot be converted.
found_bad_unit = “{ $written }” has the unit “{ $unit }”, which cannot be converted to ppm; it is not used.

# A cell of results that cannot be read as one.
found_bad_value = { $fault ->
    [no_result] “{ $written }” is not a result that can be read; it is not used.
    [comma] “{ $written }” can be read in two ways: its comma or point may be a decimal mark or part the thousands; it is not used.
    [negative] “{ $written }” is further below zero than the lowest quantity that can be measured is above it; it is not used.
    [too_much] “{ $written }” comes to more than a million ppm, more gluten than there is sample; it is not used.
    [scientific] “{ $written }” is in scientific form, in which digits may have been lost; it is not used.
    [date] “{ $written }” is a date where a result should stand; it is not used.
    [cell_error] “{ $written }” is a spreadsheet’s error, no result; it is not used.
    [sign] “{ $written }” is what the cell shows, but the figure that it holds contradicts the sign; it is not used.
   *[uncalculated] The cell holds a formula whose result is not in the file; it is not used.
}

# What to do about it.
do_bad_value = { $fault ->
    [no_result] A result is a number (12.4), below (<5, BLQ, not detected), above (>80) or a word that there is none. Ask the lab what is meant.
    [comma] Ask the lab to write the figure without thousands parted. Nothing else in the file settles which it is.
    [negative] Ask the lab for the result as it would report it, such as <5.
    [too_much] Ask the lab for the figure and its unit.
    [scientific] Ask the lab for the figure in full.
    [date] A spreadsheet may have made a figure into a date. Ask the lab for the figure.
    [cell_error] Ask the lab to mend the cell and to send the file again.
    [sign] Ask the lab for the result in a sign and a figure that agree.
   *[uncalculated] Open the file in a spreadsheet program, save it there, and replace it; or ask the lab for figures.
}

# A sign such as < in a cell of its own that goes with no figure.
found_loose_sign = “{ $sign }” stands in a cell of its own, and nothing says to which figure of the row it belongs: no result of the row is used.

# A sign or a word beside a result that contradicts it.
found_sign_contradicts = “{ $sign }” stands beside the result “{ $written }”, and both cannot be so; the result is not used.

# What to do about both.
do_ask_for_sign_before = Ask the lab to write the sign and its figure in one cell, such as <20.

# A number format that shows something else than a figure in place of one.
found_figure_hidden = The cell shows “{ $shown }”, but it holds the figure { $written }, which is read.

# An extraction that is numbered 0.
found_zeroth = The extraction of this row is numbered 0; its result is not used.

# What to do about it.
do_ask_for_numbers = Ask the lab to number the extractions of each package from 1.

# A row that says of itself that it is no result of the package.
found_withdrawn = { $why ->
    [spiked] “{ $written }” says that something was added to this sample: its results are not used.
   *[invalid] “{ $written }” says that the lab does not stand by this row: its results are not used.
}

# What to do about it.
do_ask_without_row = Ask the lab for a report without this row, or for one that says that it is a result of the package.

# A row, or a table, of another substance than gluten, where nothing names gluten.
found_other_analyte = { $what ->
    [row] The row is of “{ $written }”, and no heading or row of the file names gluten; its result is not used.
   *[table] “{ $written }” names another substance, and nothing says that the results of this table are gluten: no row of it is used.
}

# What to do about it.
do_ask_for_gluten = { $what ->
    [row] Ask the lab for the results of gluten.
   *[table] Ask the lab for the results of gluten, or for a heading that says that these are. If you know that they are, name the columns of the table in a [[layout]] in programme.toml.
}

# A table of another substance beside one of gluten.
found_table_of_other = The table is of “{ $written }”, not of gluten; it is passed over.

# A table whose results are gliadin or gluten; what leaves it open.
found_gluten_or_gliadin = “{ $written }” speaks of gliadin, and it cannot be told whether the results of this table are gliadin or gluten, which is twice as much: no row of it is used.

# What to do about it.
do_ask_gluten_or_gliadin = Ask the lab to write “gluten” or “gliadin” in the heading of the results.

# The lab's mean is not that of its readings.
found_mean_differs = The lab’s mean of { $package } is “{ $written }”, but its readings give { $kind ->
    [number] { $lower } ppm
    [range] { $lower } to { $upper } ppm
   *[above] more than { $lower } ppm
}.

# What to do about it.
do_ask_about_mean = The mean is worked out anew from the readings. Ask the lab which of the figures is wrong.

## What the lab reports

# Two reports of one extraction differ.
found_conflict = Extraction { $extraction } of package “{ $package }” is reported as “{ $one }” in { $one_at } and as “{ $other }” in { $other_at }; neither is used.

# What to do about it.
do_settle_conflict = Ask the lab which one stands. Then add a line to the register of corrections: “exclude” for the file whose reading is withdrawn, or “repeat” for the file if its readings are further extractions.

# One reading in each of two files, both the same.
found_halves = Package “{ $package }” has a single reading here and the same one in { $other }: it counts once.

# What to do about it.
do_number_extractions = If they are two extractions that happen to be equal, ask the lab to number them, or add a line to the register of corrections: “repeat” for one of the files.

# Two files agree about an extraction.
found_counted_once = Extraction { $extraction } of package “{ $package }” is reported with the same result in { $other }; it counts once.

# A package that counts and of which the lab reported nothing.
found_missing_package = Package “{ $package }” of product “{ $product }” has no result from the lab yet.

# What to do about it.
do_wait_for_lab = Nothing to do while the lab is at work. If its report has come, look for this code in it.

## What can hardly be so

# A claim that the rule does not know.
found_unknown_claim = “{ $claim }”, the claim of “{ $product }”, is no claim about gluten that has a limit under the rule { $rule }: the product gets no verdict.

# What to do about it.
do_look_at_package = Look at the package. If it says gluten-free in these or other words, write gluten-free; else leave it as it is: the rule has no limit that the results could be held against.

# Two days of a package that cannot both be right; the second is a best-by date as it is printed in "bought_best_by".
found_package_days = Package “{ $package }” { $order ->
    [sent_bought] was sent on { $day }, before it was bought on { $other }
    [bought_best_by] was bought on { $day }, after its best-by date “{ $other }”
    [received_sent] was received by the lab on { $day }, before it was sent on { $other }
    [received_bought] was received by the lab on { $day }, before it was bought on { $other }
    [tested_sent] was tested on { $day }, before it was sent on { $other }
    [tested_bought] was tested on { $day }, before it was bought on { $other }
    [tested_received] was tested on { $day }, before the lab received it on { $other }
   *[reported_tested] was reported on { $day }, before its test ended on { $other }
}.

# What to do about it.
do_mend_days = { $of ->
    [register] Look at the receipt, the package and the register: one of the two days is mistyped.
   *[report] Look at the lab’s report, and ask the lab where it says the same. A day that its file has wrong can be put right in registers/reports.csv.
}

# All packages of a round are of one lot.
found_one_lot = { $number ->
    [two] Both packages of product “{ $product }”, round “{ $round }”, are of lot “{ $lot }”: they speak for that lot, and are no random pick of the product.
   *[more] All { $packages } packages of product “{ $product }”, round “{ $round }”, are of lot “{ $lot }”: they speak for that lot, and are no random pick of the product.
}

# What to do about it.
do_buy_other_lots = Buy packages of different lots, in different shops, where you can. If the lots differ, put them right in the register.

# One lot with two best-by dates.
found_two_dates = Lot “{ $lot }” of product “{ $product }” has the best-by dates “{ $first }” (package “{ $first_package }”) and “{ $other }” (package “{ $other_package }”).

# What to do about it.
do_mend_lot = A lot has one best-by date. Look at the packages, or at their photographs, and put lot or date right.

# A claim beside an ingredient that denies it.
found_denied_claim = Product “{ $product }” is sold as “{ $claim }”, and its ingredients name { $terms }.

# What to do about it.
do_look_at_ingredients = Hold the ingredients in the register against a photograph of the package: sheet and letter will say this of the maker.

# A barcode that is none (GS1 General Specifications, 7.9.1).
found_barcode = The barcode “{ $barcode }” of product “{ $product }” { $fault ->
    [letters] is not made of digits alone
    [length] has { $digits ->
        [one] 1 digit
       *[other] { $digits } digits
    }, where a barcode of a food has 8, 12, 13 or 14
   *[check] ends in { $check }, where its other digits ask for { $wanted } (the check digit)
}.

# What to do about it.
do_type_barcode = Type it again from the package, as text: a spreadsheet program drops the zeros in front of a number. It is printed as it stands.

# A price without a digit.
found_price = The price “{ $price }” of package “{ $package }” has no figure.

# What to do about it.
do_write_price = Put in what stands on the receipt, or leave the cell empty.

# Words for fermented or hydrolysed food in a row that says that the food is neither (J AOAC 98:1346, 2015).
found_processing = The row of “{ $product }” names { $foods }, and its processing is none: in fermented or hydrolysed food a sandwich assay can miss gluten.

# What to do about it.
do_ask_about_processing = Ask the maker whether the food, or a good part of it, is fermented or hydrolysed; if so, write fermented or hydrolysed under processing, and have it tested by a competitive assay as well.

## What published sheets have behind them

# A published sheet whose product or packages are in no register any more; $sheet has number, revision and day.
found_nothing_behind = { $sheet } was published, and { $what ->
    [round] round { $round } of { $product } has no package
   *[product] there is no product { $product }
} in the registers any more.

# What to do about it.
do_put_rows_back = If the rows were taken out by mistake, put them back: the archive has the registers as they were. If not, what was published stays in the archive, and this line reminds of it.

# A lab file that published sheets rest on is gone; $sheets has number, revision and day of each.
found_file_gone = The file { $how ->
    [unopened] cannot be opened
   *[gone] is gone
} that what was published rests on: { $sheets }. Its SHA-256 was { $sha256 }.

# It is there, and not as it was.
found_file_changed = The file is not as it was when this was published: { $sheets }. Its SHA-256 was { $sha256 }, and is { $now }.

# What to do about both.
do_copy_back = It stands in { $kept } as it was. Copy it back, or issue anew what it bears on, with the reason.

# The register of issues against the archive; $sheets has number and revision of each.
found_register_differs = This register { $how ->
    [says] says something else than the archive of what was published
   *[lacks] lacks what the archive holds as published
}: { $sheets }.

# What to do about it.
do_let_run_mend = `galleyproof run` puts it right from the archive, and what is told here rests on the archive already.

# The register has what no archive has.
found_unarchived = This register says that this was published, and no archive has it: { $sheets }.

# What to do about it.
do_copy_archive_back = Copy archive/ back if it was moved; take the rows out if nobody issued them.

# A bag's copy of the register.
found_doubted_copy = The copy of registers/issued.csv in this archive is not as it was archived, and nothing is taken from it.

# What to do about it.
do_verify_bag = `galleyproof verify` names what has changed there.
