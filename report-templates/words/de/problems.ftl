# What was found in lab files, and what to do about it; registers.ftl has what was found in registers. Printed in
# inbox-report.txt; in English in results.json, in results.xlsx and on the screen. Each message is a whole sentence. "found_" says what was found, "do_" what to do about the one
# before it.

## Where a problem stands, and the report that lists all of them

# Where something stands, within a sentence. The name of a cell, the number of a row, the letter of a column.
place = { $file }{ $sheet_is ->
    [named] , Tabellenblatt „{ $sheet }“
   *[none] { "" }
}{ $at ->
    [cell] , Zelle { $cell }
    [row] , Zeile { $cell }
    [column] , Spalte { $cell }
   *[none] { "" }
}

# The same below the name of its file, before the colon of an entry.
place_in_file = { $sheet_is ->
    [named] { $at ->
        [cell] Tabellenblatt „{ $sheet }“, Zelle { $cell }
        [row] Tabellenblatt „{ $sheet }“, Zeile { $cell }
        [column] Tabellenblatt „{ $sheet }“, Spalte { $cell }
       *[none] Tabellenblatt „{ $sheet }“
    }
   *[none] { $at ->
        [cell] Zelle { $cell }
        [row] Zeile { $cell }
        [column] Spalte { $cell }
       *[none] { "" }
    }
}

# Words from a file, one of several.
item = „{ $text }“

# The same with where they stand: a column's letter, or a place.
item_at = „{ $text }“ ({ $at })

# The margin of an entry; at most eight letters.
problem_severity = { $severity ->
    [error] Fehler
    [warning] Warnung
   *[note] Hinweis
}

# The first line of an entry behind its margin: where, and what was found.
problem_entry = { $at ->
    [somewhere] { $place }: { $found }
   *[whole] { $found }
}

# The second line of an entry.
problem_to_do = Was zu tun ist: { $hint }

# The heading of the report.
report_heading = Was in den Dateien des Labors und in den Registern gefunden wurde

# Below it, where there is no problem.
report_clean = Gelesene Dateien des Labors: { $files }. Nichts muss angesehen werden.

# Below it, where there are some.
report_counts = Gelesene Dateien des Labors: { $files }. Fehler: { $errors }, Warnungen: { $warnings }, Hinweise: { $notes }. { $errors ->
    [0] Kein gefundenes Ergebnis wurde ausgelassen.
   *[other] Ein Fehler heißt, dass etwas ausgelassen wurde und jemand es ansehen muss.
}

## Files that cannot be read

# The file passes a bound; $part is the bound of one part of a workbook.
found_too_large = Die Datei ist zu groß. Gelesen { $bound ->
    [file] wird höchstens eine Datei von { $most } MB
    [unpacked] werden entpackt höchstens { $part } MB in einem Teil einer Arbeitsmappe und { $most } MB in allen Teilen
    [parts] werden höchstens { $most } Teile einer Arbeitsmappe
    [sheets] werden höchstens { $most } Tabellenblätter
    [cells] werden höchstens { $most } gefüllte Zellen
    [rows] werden höchstens { $most } gefüllte Zeilen
    [row] werden höchstens { $most } gefüllte Zellen in einer Zeile
    [repeats] wird eine gefüllte Zeile, die höchstens { $most } Mal wiederholt ist
    [text] werden höchstens { $most } MB Text in den Zellen
    [cell_text] werden höchstens { $most } MB Text in einer Zelle
    [styles] werden höchstens { $most } Zellformate
    [tables] werden höchstens { $most } Tabellen mit ihren Kopfzeilen
   *[results] werden höchstens { $most } Ergebnisse
}.

# What to do about it.
do_results_alone = Bitten Sie das Labor um eine Datei, die nur die Ergebnisse enthält.

# There are more problems of this kind in the file than are told one by one; they stand above this line.
found_more_of_a_kind = { $count ->
    [one] { $count } weitere Zelle oder Zeile dieser Datei hat
   *[other] { $count } weitere Zellen oder Zeilen dieser Datei haben
} dasselbe Problem und { $count ->
    [one] ist
   *[other] sind
} hier nicht einzeln aufgeführt.

# What to do about it.
do_mend_those_first = Berichtigen Sie, was aufgeführt ist, und starten Sie einen neuen Lauf.

# The file holds nothing.
found_empty_file = { $with ->
    [zeros] Die Datei enthält nichts als Nullen, wie eine abgebrochene Kopie.
   *[nothing] Die Datei ist leer.
}

# What to do about it.
do_send_or_copy_again = Bitten Sie das Labor, sie erneut zu senden, oder kopieren Sie sie noch einmal, falls das Kopieren abgebrochen wurde.

# The file is of a kind that holds no table, by its first bytes.
found_other_kind = { $kind ->
    [pdf] Die Datei ist ein PDF, was auch immer ihr Name sagt: Sie enthält keine lesbare Tabelle.
    [web] Die Datei ist eine Webseite, was auch immer ihr Name sagt: Sie enthält keine lesbare Tabelle.
    [xml] Die Datei ist eine XML-Datei, was auch immer ihr Name sagt: Sie enthält keine lesbare Tabelle.
   *[other] Die Datei ist weder Text noch eine Arbeitsmappe, was auch immer ihr Name sagt: Sie enthält keine lesbare Tabelle.
}

# What to do about it.
do_save_as_workbook = Bitten Sie das Labor um die Ergebnisse als .csv oder .xlsx, oder öffnen Sie die Datei in einem Tabellenprogramm und speichern Sie sie als .xlsx.

# A workbook whose parts do not fit together.
found_damaged_workbook = Die Arbeitsmappe ist beschädigt oder unvollständig.

# What to do about it.
do_copy_or_send_again = Kopieren Sie sie noch einmal aus der Nachricht des Labors, oder bitten Sie das Labor, sie erneut zu senden.

# A workbook that a password protects.
found_password = Die Arbeitsmappe ist mit einem Kennwort geschützt.

# What to do about it.
do_take_off_password = Bitten Sie das Labor um eine Kopie ohne Kennwort, oder öffnen Sie sie mit dem Kennwort und speichern Sie sie ohne.

# An archive that holds something else.
found_no_workbook = Die Datei ist ein Archiv oder ein Dokument, was auch immer ihr Name sagt, und keine Arbeitsmappe.

# What to do about it.
do_take_out_of_archive = Nehmen Sie die Datei des Labors heraus, oder bitten Sie das Labor um die Ergebnisse als .csv oder .xlsx.

# A line of delimited text that no table has.
found_long_line = Die Zeile { $line } der Datei ist länger als jede Zeile einer Ergebnistabelle.

# What to do about it.
do_ask_for_table = Bitten Sie das Labor um die Ergebnisse als Tabelle, je Probe oder Extraktion eine Zeile.

# Quotation marks of delimited text that are not closed.
found_open_quote = Das Anführungszeichen, das in Zeile { $line } eine Zelle öffnet, wird nicht geschlossen; wo die Zeilen enden, ist daher nicht bekannt.

# What to do about it.
do_send_again_or_workbook = Bitten Sie das Labor, die Datei erneut zu senden, oder um dasselbe als .xlsx.

# Damage that the reader does not know.
found_damaged = Die Datei ist auf eine Weise beschädigt, die nicht vorgesehen war.

# What to do about it.
do_send_again = Bitten Sie das Labor, sie erneut zu senden.

# The file's content was another one a moment before.
found_changing = Die Datei wurde geändert, während sie gelesen wurde.

# What to do about it.
do_wait_until_whole = Starten Sie das Programm noch einmal, sobald sie vollständig ist.

# A file that was listed and is not there.
found_gone = Die Datei ist nicht mehr da.

# What to do about it.
do_copy_again = Starten Sie das Programm noch einmal. Falls die Datei da sein sollte, kopieren Sie sie erneut in den Ordner inbox.

# The system refuses the reading.
found_not_permitted = Die Datei lässt sich nicht öffnen: Sie haben keine Leserechte.

# What to do about it.
do_permit_or_copy = Ändern Sie die Zugriffsrechte, oder kopieren Sie die Datei neu, und starten Sie das Programm dann noch einmal.

# Any other reason of the system.
found_cannot_open = Die Datei lässt sich nicht öffnen.

# What to do about it.
do_close_programs = Schließen Sie sie in anderen Programmen und warten Sie, bis sie ganz kopiert ist; starten Sie das Programm dann noch einmal.

# A register that is damaged in a way that the reader does not know.
found_damaged_register = Das Register ist beschädigt.

# What to do about it.
do_restore = Stellen Sie es aus einer Kopie wieder her.

## What lies in the inbox

# A folder or file that cannot be looked into.
found_unopened = Der Ordner oder die Datei lässt sich nicht öffnen.

# What to do about what cannot be opened or read.
do_permit = Sehen Sie die Zugriffsrechte an und starten Sie das Programm dann noch einmal.

# A link that is not followed.
found_link = { $to ->
    [folder] Dies ist eine Verknüpfung zu einem Ordner; solchen wird nicht gefolgt.
    [outward] Dies ist eine Verknüpfung, die aus dem Programmordner hinausführt; solchen wird nicht gefolgt.
   *[nothing] Dies ist eine Verknüpfung, die nirgendwohin oder im Kreis führt.
}

# What to do about it.
do_copy_itself = { $to ->
    [folder] Kopieren Sie die Dateien selbst in den Ordner inbox.
   *[nothing] Kopieren Sie die Datei selbst in den Ordner inbox.
}

# A device, a pipe and the like.
found_no_file = Dies ist keine gewöhnliche Datei.

# What to do about it.
do_lab_files = Dateien des Labors sind Tabellen oder Text mit Trennzeichen.

# A file whose name ends otherwise than a lab file's.
found_other_ending = Eine Datei dieser Art enthält keine Tabelle, die gelesen wird (Dateien des Labors enden auf { $endings }).

# What to do about it.
do_ask_for_spreadsheet = Falls sie Ergebnisse enthält, bitten Sie das Labor darum als Tabelle.

# The same bytes under two names.
found_same_file = Diese Datei hat denselben Inhalt wie { $file }; sie zählt einmal.

# A certificate or photograph in the inbox that cannot be read.
found_exhibit_unreadable = Dieses Analysenzertifikat oder dieses Foto lässt sich nicht lesen.

## A lab's file as a whole

# Text that is not in UTF-8.
found_encoding = Die Datei sagt nicht, wie ihre Buchstaben geschrieben sind, und wurde als westeuropäischer Text (Windows-1252) gelesen.

# What to do about it.
do_ask_for_utf8 = Wenn Buchstaben wie é oder µ falsch aussehen, bitten Sie das Labor um die Datei in UTF-8.

# What to do about it where it is a register.
do_save_as_utf8 = Wenn Buchstaben wie é oder µ in den Ausgaben falsch aussehen, speichern Sie das Register noch einmal als „CSV UTF-8“.

# Control characters in cells of a lab's file; $more is how many further cells have some.
found_control_characters = { $more ->
    [0] Die Zelle enthält Zeichen, die ein Gerät steuern und nichts zeigen; sie werden ausgelassen.
    [one] Die Zelle enthält Zeichen, die ein Gerät steuern und nichts zeigen, ebenso 1 weitere; sie werden ausgelassen.
   *[other] Die Zelle enthält Zeichen, die ein Gerät steuern und nichts zeigen, ebenso { $more } weitere; sie werden ausgelassen.
}

# What to do about it.
do_look_for_missing_text = Sehen Sie nach, ob im Text etwas fehlt, und fragen Sie in diesem Fall das Labor.

# Sheets of a workbook that hold no cells.
found_sheets_passed_over = { $sheets ->
    [one] Das Blatt { $names } der Arbeitsmappe enthält keine Zellen und wurde übergangen: Es ist ein Diagramm, ein Makro oder ein Eintrag, der nirgendwohin führt.
   *[other] Die Blätter { $names } der Arbeitsmappe enthalten keine Zellen und wurden übergangen: Jedes ist ein Diagramm, ein Makro oder ein Eintrag, der nirgendwohin führt.
}

# What to do about it.
do_open_workbook = Öffnen Sie die Arbeitsmappe, falls dort Ergebnisse stehen können, und bitten Sie das Labor darum in einem Tabellenblatt.

# Stray quotation marks have drawn rows into one cell.
found_swallowed_rows = Die Zelle enthält mehrere Zeilen, und eine davon beginnt mit dem Packungscode „{ $code }“: Falsch stehende Anführungszeichen haben Zeilen hineingezogen, deren Ergebnisse nicht gelesen werden.

# What to do about it.
do_ask_anew = Bitten Sie das Labor erneut um die Datei, als Tabelle, wenn das einfacher ist.

# A table without readings.
found_no_results = { $has ->
    [means] Die Tabelle enthält Mittelwerte, aber keine Ergebnisse einzelner Extraktionen; ein Mittelwert ist kein Messwert.
   *[nothing] Keine Spalte der Tabelle enthält Ergebnisse.
}

# What to do about it.
do_ask_for_extractions = Bitten Sie das Labor um das Ergebnis jeder Extraktion.

# What the spreadsheet program does not show.
found_hidden = { $what ->
    [row] Die Zeile ist im Tabellenprogramm ausgeblendet; ihre Ergebnisse werden gelesen.
    [column] Die Spalte ist im Tabellenprogramm ausgeblendet; was in ihr steht, wird gelesen.
   *[sheet] Das Tabellenblatt ist im Tabellenprogramm ausgeblendet; seine Ergebnisse werden gelesen.
}

# What to do about it.
do_ask_whether_meant = Fragen Sie das Labor, ob sie mitgeschickt werden sollten. Eine Korrektur kann sie beiseitelegen.

## Files without a table that is known

# A file of a plate reader's figures.
found_absorbances = Die Datei enthält Extinktionen und keine Ergebnisse; nichts davon wird verwendet.

# A file that holds controls alone.
found_controls = Die Datei enthält nur Kontrollen, Blindwerte oder Standards; nichts davon wird verwendet.

# What to do about it.
do_want_results = Gebraucht werden die Ergebnisse, die daraus berechnet wurden, in dieser oder in einer anderen Datei.

# No row could be headings.
found_no_table = In dieser Datei wurde keine Tabelle erkannt: Keine Zeile darin könnte aus Überschriften bestehen.

# What to do about it.
do_ask_for_columns = Bitten Sie das Labor um eine Tabelle mit einer Spalte für den Probencode und einer für das Ergebnis.

# A row that is most like headings, and what it lacks; $more says that there are further ones.
found_headings = Gefunden wurden die Überschriften { $headings }{ $more ->
    [yes] , …
   *[no] { "" }
}; { $lacking ->
    [result] von keiner ist bekannt, dass sie das Ergebnis einer Extraktion nennt.
    [sample] von keiner ist bekannt, dass sie die Probe nennt.
   *[both] von keiner ist bekannt, dass sie die Probe nennt, und von keiner, dass sie das Ergebnis nennt.
}

# What to do about it; $block is a [[layout]] for programme.toml.
do_describe_table =
    Falls diese Zeile die Überschriften enthält, tragen Sie dies in programme.toml ein und berichtigen Sie die Namen zwischen den Anführungszeichen:
    { $block }

# A registered code beside figures, outside of any table.
found_lost_code = Packung „{ $code }“ steht hier mit Zahlen, aber unter keinen bekannten Überschriften; was sie sagen, wird nicht verwendet.

# What to do about it.
do_ask_for_headings = Falls die Zahlen Ergebnisse sind, bitten Sie das Labor um Überschriften, die Probe und Ergebnis nennen, oder beschreiben Sie die Tabelle in programme.toml mit einem [[layout]].

## Tables, rows and codes

# A column that may count extractions or wells.
found_replicates = Die Spalte „{ $heading }“ kann Extraktionen oder Kavitäten zählen; sie wird als Zählung von Extraktionen genommen.

# What to do about it.
do_ask_whether_wells = Falls es Kavitäten eines Extrakts sind, bitten Sie das Labor um seine Extraktionen: Kavitäten sagen nichts über die Packung.

# A heading of results with a unit that cannot be converted.
found_foreign_heading = Die Überschrift „{ $heading }“ nennt die Einheit „{ $unit }“, die sich nicht in ppm umrechnen lässt. Ergebnisse darunter werden nicht verwendet.

# What to do about a unit.
do_ask_for_ppm = { $results ->
    [all] Bitten Sie das Labor um die Ergebnisse in mg/kg (ppm).
   *[one] Bitten Sie das Labor um das Ergebnis in mg/kg (ppm).
}

# A code that no register has.
found_unknown_code = „{ $code }“ ist kein Packungscode des Registers; das Ergebnis wird nicht verwendet.

# What to do where a registered code is much like it.
do_look_at_near_code = Das Register hat „{ $code }“. Falls das Labor sich vertippt hat, bitten Sie um einen berichtigten Prüfbericht; falls die Packung Ihre ist, tragen Sie sie in registers/packages ein.

# What to do where none is.
do_register_or_ask = Falls die Packung Ihre ist, tragen Sie sie in registers/packages ein (eine Blindprobe in registers/blinds); sonst fragen Sie das Labor, wessen Probe das ist.

# A result whose row and those above it name no package.
found_no_code = Hier steht ein Ergebnis, aber kein Packungscode in dieser Zeile oder darüber.

# What to do about it.
do_ask_which_package = Fragen Sie das Labor, zu welcher Packung es gehört.

# A result without a package code, beside a word that may say that it is none of the package above.
found_unclear_row = Hier steht ein Ergebnis ohne Packungscode, und in seiner Zeile steht „{ $word }“: Ob es ein weiteres Ergebnis der Packung „{ $code }“ ist, lässt sich nicht sagen. Es wird nicht verwendet.

# What to do about it.
do_ask_what_result_is_of = Fragen Sie das Labor, wovon das Ergebnis ist. Ist es von der Packung, bitten Sie um ihren Code in der Zeile; ist es von keiner, so setzt eine Korrektur es beiseite.

# A registered code in a column that is not that of the codes.
found_code_astray = Der Packungscode „{ $code }“ steht in dieser Zeile, aber nicht in der Spalte der Codes; die Zeile wird nicht verwendet.

# What to do about it.
do_ask_what_row_says = Fragen Sie das Labor, was die Zeile sagt. Falls darüber eine andere Tabelle beginnt, bitten Sie um deren Überschriften.

# What a spreadsheet has made of a code.
found_mangled_code = „{ $written }“ steht, wo ein Packungscode stehen sollte: Ein Tabellenprogramm hat daraus { $into ->
    [date] ein Datum
    [scientific] eine Zahl in wissenschaftlicher Schreibweise
   *[zeros] eine Zahl ohne ihre führenden Nullen
} gemacht; das Ergebnis wird nicht verwendet.

# What to do about it; $code is the registered code that it may have been.
do_format_as_text = { $registered ->
    [known] Das Register hat „{ $code }“. Bitten Sie das Labor, die Spalte der Codes als Text zu formatieren und die Datei erneut zu senden.
   *[unknown] Bitten Sie das Labor, die Spalte der Codes als Text zu formatieren und die Datei erneut zu senden.
}

# What stands where a day should. In a lab's file it is left out; in a register more may follow, which is told elsewhere.
found_no_day = { $of ->
    [lab] „{ $written }“ ist kein Tag oder kann zwei verschiedene bedeuten; die Angabe wird ausgelassen.
   *[register] „{ $written }“ ist kein Tag oder kann zwei verschiedene bedeuten.
}

# What to do about it.
do_write_day = { $of ->
    [lab] Bitten Sie das Labor, Tage wie 2031-03-07 zu schreiben.
   *[register] Schreiben Sie ihn wie 2031-03-07.
}

# No unit is stated anywhere.
found_no_unit = Für diese Ergebnisse ist keine Einheit angegeben: Sie werden als ppm (mg/kg) gelesen.

# What to do about it.
do_ask_for_unit = Bitten Sie das Labor, die Einheit anzugeben.

# A second code on the row of a package.
found_second_code = Der Packungscode „{ $other }“ steht in der Zeile von „{ $code }“, außerhalb der Spalte der Codes; für ihn wird hier nichts gelesen.

# What to do about it.
do_ask_for_headings_over_each = Falls neben dieser Tabelle eine andere steht, bitten Sie das Labor um Überschriften über jeder, die Probe und Ergebnis nennen.

# Whole results with bare figures beside them, in a column for words.
found_parted_decimals = Unter „{ $left }“ (Spalte { $left_column }) stehen ganze Zahlen und daneben bloße Zahlen unter „{ $right }“ (Spalte { $right_column }): Ein Dezimalkomma kann sie getrennt haben. Keine Zeile dieser Tabelle wird verwendet.

# What to do about it; $block is a [[layout]] for programme.toml.
do_ask_for_points =
    Bitten Sie das Labor um eine Arbeitsmappe oder um eine Datei mit Dezimalpunkten. Falls die Ergebnisse ganze Zahlen sind, setzen Sie dies in programme.toml:
    { $block }

# A figure without a package code that is the mean of those above it.
found_like_a_mean = „{ $written }“ steht ohne Packungscode und ist der Mittelwert der Ergebnisse darüber: Der Wert zählt als weitere Extraktion der Packung „{ $code }“.

# What to do about it.
do_ask_whether_mean = Fragen Sie das Labor, ob es ein Mittelwert ist. Wenn ja, setzt eine Korrektur ihn beiseite.

# Packages that a further sheet goes on with.
found_counted_on = Dieses Blatt hat die Überschriften eines früheren: Seine Zeilen zu { $packages } zählen als weitere Extraktionen.

# What to do about it.
do_ask_whether_further = Sind die Blätter ein Entwurf und ein Endbericht oder eine Kopie, so setzen Sie die Extraktionen des einen durch Korrekturen beiseite.

# Two columns between which nothing decides.
found_two_columns = Sowohl { $left_is ->
    [headed] „{ $left }“ (Spalte { $left_column })
   *[bare] Spalte { $left_column }, die keine Überschrift hat,
} als auch { $right_is ->
    [headed] „{ $right }“ (Spalte { $right_column })
   *[bare] Spalte { $right_column }, die keine Überschrift hat,
} könnte { $what ->
    [package] der Packungscode
    [gluten] das Gluten
   *[result] das Ergebnis
} sein, und sie unterscheiden sich: Keine Zeile dieser Tabelle wird verwendet.

# What to do about it; $block is a [[layout]] for programme.toml.
do_choose_column =
    { $takes ->
        [headed] Fragen Sie das Labor, welche es ist, und nennen Sie sie in programme.toml. Dieser Block nimmt die mit der Überschrift:
       *[second] Fragen Sie das Labor, welche es ist, und nennen Sie sie in programme.toml. Dieser Block nimmt die zweite:
    }
    { $block }

# What to do where both columns have one heading.
do_tell_columns_apart = Fragen Sie das Labor, welche der Spalten es ist, und bitten Sie um verschiedene Überschriften. Sind beides Extraktionen, bitten Sie um Überschriften, die sie zählen.

# A row that may be the headings of another table.
found_doubtful_row = Die Zeile { $cells } kann aus den Überschriften einer anderen Tabelle oder aus einer Bemerkung innerhalb dieser bestehen: Keine Zeile darunter wird verwendet.

# What to do about it.
do_ask_what_stands_below = Fragen Sie das Labor, was darunter steht. Falls es Ergebnisse sind, bitten Sie um sie ohne diese Zeile.

## Results

# A footnote mark behind a figure.
found_footnote = „{ $written }“ trägt ein Fußnotenzeichen; die Zahl wird ohne dieses gelesen.

# What to do about it.
do_look_up_footnote = Sehen Sie die Fußnote in der Datei des Labors nach.

# A figure a little below zero.
found_below_zero = „{ $written }“ liegt unter null: Es wird für weniger genommen, als das Verfahren beziffern kann.

# What to do about it.
do_nothing_below_zero = Nichts ist zu tun. Fragen Sie das Labor, falls es solche Zahlen oft angibt.

# A column of units with one that cannot be converted.
found_bad_unit_cell = Die Einheit „{ $unit }“ lässt sich nicht in ppm umrechnen; das Ergebnis „{ $written }“ wird nicht verwendet.

# Two units are stated for one result, one of them in its own cell: that one is taken.
found_two_units = „{ $written }“ wird in { $unit } gelesen, aber auch eine andere Einheit, { $other }, ist dafür angegeben.

# Likewise by its row, its heading or a line of the file: none is taken.
found_units_contradict = „{ $written }“ ist in { $unit } und in { $other } angegeben: Es wird nicht verwendet.

# What to do about it.
do_ask_which_unit = Fragen Sie das Labor, welche Einheit richtig ist.

# A result with a unit that cannot be converted.
found_bad_unit = „{ $written }“ hat die Einheit „{ $unit }“, die sich nicht in ppm umrechnen lässt; das Ergebnis wird nicht verwendet.

# A cell of results that cannot be read as one.
found_bad_value = { $fault ->
    [no_result] „{ $written }“ ist kein lesbares Ergebnis; es wird nicht verwendet.
    [comma] „{ $written }“ lässt sich auf zwei Arten lesen: Ihr Komma oder Punkt kann ein Dezimalzeichen sein oder die Tausender trennen; der Wert wird nicht verwendet.
    [negative] „{ $written }“ liegt weiter unter null, als die Bestimmungsgrenze darüber liegt; der Wert wird nicht verwendet.
    [too_much] „{ $written }“ ergibt mehr als eine Million ppm, mehr Gluten als Probe; der Wert wird nicht verwendet.
    [scientific] „{ $written }“ steht in wissenschaftlicher Schreibweise, bei der Ziffern verloren gegangen sein können; der Wert wird nicht verwendet.
    [date] „{ $written }“ ist ein Datum, wo ein Ergebnis stehen sollte; es wird nicht verwendet.
    [cell_error] „{ $written }“ ist ein Fehler des Tabellenprogramms und kein Ergebnis; der Wert wird nicht verwendet.
    [sign] „{ $written }“ zeigt die Zelle, aber die Zahl, die sie enthält, widerspricht dem Zeichen; sie wird nicht verwendet.
   *[uncalculated] Die Zelle enthält eine Formel, deren Ergebnis nicht in der Datei steht; sie wird nicht verwendet.
}

# What to do about it.
do_bad_value = { $fault ->
    [no_result] Ein Ergebnis ist eine Zahl (12,4), eine Angabe darunter (<5, <BG, nicht nachweisbar) oder darüber (>80) oder ein Wort dafür, dass es keines gibt. Fragen Sie das Labor, was gemeint ist.
    [comma] Bitten Sie das Labor, die Zahl ohne getrennte Tausender zu schreiben. Nichts anderes in der Datei klärt, was es ist.
    [negative] Bitten Sie das Labor um das Ergebnis, wie es dieses berichten würde, etwa <5.
    [too_much] Fragen Sie das Labor nach der Zahl und ihrer Einheit.
    [scientific] Bitten Sie das Labor um die ausgeschriebene Zahl.
    [date] Ein Tabellenprogramm kann aus einer Zahl ein Datum gemacht haben. Fragen Sie das Labor nach der Zahl.
    [cell_error] Bitten Sie das Labor, die Zelle zu berichtigen und die Datei erneut zu senden.
    [sign] Bitten Sie das Labor um das Ergebnis mit einem Zeichen und einer Zahl, die zueinander passen.
   *[uncalculated] Öffnen Sie die Datei in einem Tabellenprogramm, speichern Sie sie dort und ersetzen Sie sie; oder bitten Sie das Labor um Zahlen.
}

# A sign such as < in a cell of its own that goes with no figure.
found_loose_sign = „{ $sign }“ steht in einer eigenen Zelle, und nichts sagt, zu welcher Zahl der Zeile es gehört: Kein Ergebnis der Zeile wird verwendet.

# A sign or a word beside a result that contradicts it.
found_sign_contradicts = „{ $sign }“ steht neben dem Ergebnis „{ $written }“, und beides zugleich kann nicht sein; das Ergebnis wird nicht verwendet.

# What to do about both.
do_ask_for_sign_before = Bitten Sie das Labor, Zeichen und Zahl in eine Zelle zu schreiben, etwa <20.

# A number format that shows something else than a figure in place of one.
found_figure_hidden = Die Zelle zeigt „{ $shown }“, enthält aber die Zahl { $written }; diese wird gelesen.

# An extraction that is numbered 0.
found_zeroth = Die Extraktion dieser Zeile hat die Nummer 0; ihr Ergebnis wird nicht verwendet.

# What to do about it.
do_ask_for_numbers = Bitten Sie das Labor, die Extraktionen jeder Packung ab 1 zu zählen.

# A row that says of itself that it is no result of the package.
found_withdrawn = { $why ->
    [spiked] „{ $written }“ sagt, dass dieser Probe etwas zugesetzt wurde: Ihre Ergebnisse werden nicht verwendet.
   *[invalid] „{ $written }“ sagt, dass das Labor zu dieser Zeile nicht steht: Ihre Ergebnisse werden nicht verwendet.
}

# What to do about it.
do_ask_without_row = Bitten Sie das Labor um einen Bericht ohne diese Zeile oder um einen, der sagt, dass sie ein Ergebnis der Packung ist.

# A row, or a table, of another substance than gluten, where nothing names gluten.
found_other_analyte = { $what ->
    [row] Die Zeile betrifft „{ $written }“, und keine Überschrift oder Zeile der Datei nennt Gluten; ihr Ergebnis wird nicht verwendet.
   *[table] „{ $written }“ nennt einen anderen Stoff, und nichts sagt, dass die Ergebnisse dieser Tabelle Gluten sind: Keine ihrer Zeilen wird verwendet.
}

# What to do about it.
do_ask_for_gluten = { $what ->
    [row] Bitten Sie das Labor um die Ergebnisse für Gluten.
   *[table] Bitten Sie das Labor um die Ergebnisse für Gluten oder um eine Überschrift, die sagt, dass es diese sind. Wenn Sie es sicher wissen, benennen Sie die Spalten der Tabelle in einem [[layout]] in programme.toml.
}

# A table of another substance beside one of gluten.
found_table_of_other = Die Tabelle betrifft „{ $written }“ und nicht Gluten; sie wird übergangen.

# A table whose results are gliadin or gluten; what leaves it open.
found_gluten_or_gliadin = „{ $written }“ spricht von Gliadin, und es ist nicht zu erkennen, ob die Ergebnisse dieser Tabelle Gliadin sind oder Gluten, also das Doppelte: Keine ihrer Zeilen wird verwendet.

# What to do about it.
do_ask_gluten_or_gliadin = Bitten Sie das Labor, „Gluten“ oder „Gliadin“ in die Überschrift der Ergebnisse zu schreiben.

# The lab's mean is not that of its readings.
found_mean_differs = Der Mittelwert des Labors für { $package } ist „{ $written }“, aber seine Messwerte ergeben { $kind ->
    [number] { $lower } ppm
    [range] { $lower } bis { $upper } ppm
   *[above] mehr als { $lower } ppm
}.

# What to do about it.
do_ask_about_mean = Der Mittelwert wird aus den Messwerten neu berechnet. Fragen Sie das Labor, welche der Zahlen falsch ist.

## What the lab reports

# Two reports of one extraction differ.
found_conflict = Extraktion { $extraction } der Packung „{ $package }“ ist als „{ $one }“ ({ $one_at }) und als „{ $other }“ ({ $other_at }) berichtet; keiner der Werte wird verwendet.

# What to do about it.
do_settle_conflict = Fragen Sie das Labor, welcher gilt. Fügen Sie dann dem Register der Korrekturen eine Zeile hinzu: „exclude“ für die Datei, deren Messwert zurückgezogen ist, oder „repeat“ für die Datei, falls ihre Messwerte weitere Extraktionen sind.

# One reading in each of two files, both the same.
found_halves = Packung „{ $package }“ hat hier einen einzigen Messwert und denselben in { $other }: Er zählt einmal.

# What to do about it.
do_number_extractions = Falls es zwei Extraktionen sind, die zufällig gleich sind, bitten Sie das Labor, sie zu nummerieren, oder fügen Sie dem Register der Korrekturen eine Zeile hinzu: „repeat“ für eine der Dateien.

# Two files agree about an extraction.
found_counted_once = Extraktion { $extraction } der Packung „{ $package }“ ist mit demselben Ergebnis in { $other } berichtet; sie zählt einmal.

# A package that counts and of which the lab reported nothing.
found_missing_package = Für Packung „{ $package }“ des Produkts „{ $product }“ gibt es noch kein Ergebnis des Labors.

# What to do about it.
do_wait_for_lab = Nichts ist zu tun, solange das Labor arbeitet. Falls der Prüfbericht da ist, suchen Sie diesen Code darin.

## What can hardly be so

# A claim that the rule does not know.
found_unknown_claim = „{ $claim }“, die Angabe auf „{ $product }“, ist keine Angabe zu Gluten, für die es unter der Regel { $rule } einen Grenzwert gibt: Das Produkt erhält kein Urteil.

# What to do about it.
do_look_at_package = Sehen Sie die Packung an. Falls sie mit diesen oder anderen Worten glutenfrei sagt, schreiben Sie glutenfrei; sonst lassen Sie es, wie es ist: Die Regel hat keinen Grenzwert, mit dem sich die Ergebnisse vergleichen ließen.

# Two days of a package that cannot both be right; the second is a best-by date as it is printed in "bought_best_by".
found_package_days = Packung „{ $package }“ wurde { $order ->
    [sent_bought] am { $day } verschickt, vor dem Kauf am { $other }
    [bought_best_by] am { $day } gekauft, nach dem Mindesthaltbarkeitsdatum „{ $other }“
    [received_sent] am { $day } vom Labor empfangen, vor dem Versand am { $other }
    [received_bought] am { $day } vom Labor empfangen, vor dem Kauf am { $other }
    [tested_sent] am { $day } untersucht, vor dem Versand am { $other }
    [tested_bought] am { $day } untersucht, vor dem Kauf am { $other }
    [tested_received] am { $day } untersucht, vor dem Eingang im Labor am { $other }
   *[reported_tested] am { $day } berichtet, vor dem Ende der Untersuchung am { $other }
}.

# What to do about it.
do_mend_days = { $of ->
    [register] Sehen Sie Kassenzettel, Packung und Register an: Einer der beiden Tage ist falsch getippt.
   *[report] Sehen Sie den Prüfbericht des Labors an, und fragen Sie das Labor, falls er dasselbe sagt. Ein Tag, der in der Datei falsch ist, lässt sich in registers/reports.csv richtigstellen.
}

# All packages of a round are of one lot.
found_one_lot = { $number ->
    [two] Beide Packungen des Produkts „{ $product }“, Runde „{ $round }“, stammen aus der Charge „{ $lot }“: Sie sprechen für diese Charge und sind keine zufällige Auswahl des Produkts.
   *[more] Alle { $packages } Packungen des Produkts „{ $product }“, Runde „{ $round }“, stammen aus der Charge „{ $lot }“: Sie sprechen für diese Charge und sind keine zufällige Auswahl des Produkts.
}

# What to do about it.
do_buy_other_lots = Kaufen Sie, wo Sie können, Packungen verschiedener Chargen in verschiedenen Geschäften. Falls die Chargen verschieden sind, berichtigen Sie das Register.

# One lot with two best-by dates.
found_two_dates = Charge „{ $lot }“ des Produkts „{ $product }“ hat die Mindesthaltbarkeitsdaten „{ $first }“ (Packung „{ $first_package }“) und „{ $other }“ (Packung „{ $other_package }“).

# What to do about it.
do_mend_lot = Eine Charge hat ein Mindesthaltbarkeitsdatum. Sehen Sie die Packungen oder ihre Fotos an, und berichtigen Sie Charge oder Datum.

# A claim beside an ingredient that denies it.
found_denied_claim = Das Produkt „{ $product }“ wird als „{ $claim }“ verkauft, und seine Zutaten nennen { $terms }.

# What to do about it.
do_look_at_ingredients = Vergleichen Sie die Zutaten im Register mit einem Foto der Packung: Blatt und Brief werden dies vom Hersteller sagen.

# A barcode that is none (GS1 General Specifications, 7.9.1).
found_barcode = Der Strichcode „{ $barcode }“ des Produkts „{ $product }“ { $fault ->
    [letters] besteht nicht nur aus Ziffern
    [length] hat { $digits ->
        [one] 1 Ziffer
       *[other] { $digits } Ziffern
    }; ein Strichcode eines Lebensmittels hat 8, 12, 13 oder 14
   *[check] endet auf { $check }; seine übrigen Ziffern verlangen { $wanted } (die Prüfziffer)
}.

# What to do about it.
do_type_barcode = Tippen Sie ihn noch einmal von der Packung ab, als Text: Ein Tabellenprogramm lässt führende Nullen weg. Gedruckt wird er, wie er dasteht.

# A price without a digit.
found_price = Der Preis „{ $price }“ der Packung „{ $package }“ enthält keine Zahl.

# What to do about it.
do_write_price = Tragen Sie ein, was auf dem Kassenzettel steht, oder lassen Sie die Zelle leer.

# Words for fermented or hydrolysed food in a row that says that the food is neither (J AOAC 98:1346, 2015).
found_processing = Die Zeile von „{ $product }“ nennt { $foods }, und ihr Feld processing ist none: In fermentierten oder hydrolysierten Lebensmitteln kann ein Sandwich-Verfahren Gluten übersehen.

# What to do about it.
do_ask_about_processing = Fragen Sie den Hersteller, ob das Lebensmittel oder ein guter Teil davon fermentiert oder hydrolysiert ist; falls ja, schreiben Sie fermented oder hydrolysed unter processing, und lassen Sie es auch mit einem kompetitiven Verfahren untersuchen.

## What published sheets have behind them

# A published sheet whose product or packages are in no register any more; $sheet has number, revision and day.
found_nothing_behind = { $sheet } wurde veröffentlicht, und in den Registern { $what ->
    [round] hat Runde { $round } von { $product } keine Packung mehr
   *[product] gibt es kein Produkt { $product } mehr
}.

# What to do about it.
do_put_rows_back = Falls die Zeilen versehentlich entfernt wurden, setzen Sie sie wieder ein: Das Archiv enthält die Register, wie sie waren. Falls nicht, bleibt das Veröffentlichte im Archiv, und diese Zeile erinnert daran.

# A lab file that published sheets rest on is gone; $sheets has number, revision and day of each.
found_file_gone = Die Datei, auf der Veröffentlichtes beruht, { $how ->
    [unopened] lässt sich nicht öffnen
   *[gone] ist nicht mehr da
}: { $sheets }. Ihr SHA-256-Wert war { $sha256 }.

# It is there, and not as it was.
found_file_changed = Die Datei ist nicht mehr so, wie sie bei der Veröffentlichung war: { $sheets }. Ihr SHA-256-Wert war { $sha256 } und ist jetzt { $now }.

# What to do about both.
do_copy_back = In { $kept } liegt sie unverändert. Kopieren Sie sie zurück, oder geben Sie das, was darauf beruht, mit Begründung neu heraus.

# The register of issues against the archive; $sheets has number and revision of each.
found_register_differs = { $how ->
    [says] Dieses Register sagt über Veröffentlichtes etwas anderes als das Archiv
   *[lacks] Diesem Register fehlt, was das Archiv als veröffentlicht enthält
}: { $sheets }.

# What to do about it.
do_let_run_mend = `galleyproof run` stellt es aus dem Archiv richtig, und was hier steht, beruht schon auf dem Archiv.

# The register has what no archive has.
found_unarchived = Laut diesem Register wurde dies veröffentlicht, und kein Archiv enthält es: { $sheets }.

# What to do about it.
do_copy_archive_back = Kopieren Sie archive/ zurück, falls es verschoben wurde; nehmen Sie die Zeilen heraus, falls niemand sie herausgegeben hat.

# A bag's copy of the register.
found_doubted_copy = Die Kopie von registers/issued.csv in diesem Archiv ist nicht so, wie sie archiviert wurde, und nichts wird aus ihr übernommen.

# What to do about it.
do_verify_bag = `galleyproof verify` nennt, was sich dort geändert hat.
