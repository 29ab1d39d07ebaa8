# What was found in the registers, and what to do about it: printed as what stands in problems.ftl. Each message is a whole
# sentence. "found_" says what was found, "do_" what to do about the one before it.

## Registers: files and headings

# A file whose name is nearly that of a register.
found_misnamed = So heißt beinahe das Register { $register }, dessen Datei { $register }.csv (oder .xlsx, .xls, .ods) ist; sie wird nicht gelesen, und bis das geklärt ist, { $bars ->
    [verdict] erhält kein Produkt ein Urteil
   *[issue] wird nichts herausgegeben
}.

# What to do about it.
do_rename = Falls es das Register { $register } ist, nennen Sie es { $register }.csv oder speichern Sie es als { $register }.xlsx. Falls nicht, nehmen Sie die Datei aus registers/ heraus.

# What in registers/ is no register.
found_no_register = { $what ->
    [folder] In einen Ordner in registers/ wird nicht hineingesehen.
    [sheet] Dieses Tabellenblatt ist kein Register, und nichts wird daraus gelesen.
   *[file] Dies ist kein Register, und nichts wird daraus gelesen.
}

# What to do about it.
do_keep_elsewhere = Register heißen { $names }. Bewahren Sie alles andere außerhalb von registers/ auf.

# What to do about a sheet of the workbook of registers that is none.
do_keep_sheet_elsewhere = Tabellenblätter mit Registern heißen { $names }. Bewahren Sie alles andere in einer anderen Datei außerhalb von registers/ auf.

# A sheet of the workbook of registers whose name is nearly a register's.
found_misnamed_sheet = So heißt beinahe das Register { $register }; das Tabellenblatt wird nicht gelesen, und bis das geklärt ist, { $bars ->
    [verdict] erhält kein Produkt ein Urteil
   *[issue] wird nichts herausgegeben
}.

# What to do about it.
do_rename_sheet = Falls es dieses Register ist, nennen Sie das Tabellenblatt „{ $register }“. Falls nicht, entfernen Sie es.

# A file whose name is nearly that of the workbook of registers.
found_misnamed_workbook = So heißt beinahe die Arbeitsmappe der Register, registers.xlsx (oder .xls, .ods); die Datei wird nicht gelesen, und bis das geklärt ist, erhält kein Produkt ein Urteil.

# What to do about it.
do_rename_workbook = Falls es diese Arbeitsmappe ist, nennen Sie sie registers.xlsx oder speichern Sie sie so. Falls nicht, nehmen Sie die Datei aus registers/ heraus.

# What to do where it is the register that the program keeps itself.
do_take_issued_out = Das Register dessen, was herausgegeben wurde, führt die Software selbst in registers/issued.csv. Entfernen Sie das Tabellenblatt.

# A register without headings.
found_empty_register = Das Register ist leer: Es hat keine Überschriften.

# What to do about it.
do_put_headings = Schreiben Sie die Überschriften in die erste Zeile, wie README sie zeigt.

# A second sheet of a register that holds something.
found_further_sheet = Von einem Register wird nur das erste Tabellenblatt gelesen, und auch dieses weitere enthält etwas.

# What to do about it.
do_one_sheet = Bringen Sie, was zum Register gehört, auf dessen erstes Tabellenblatt, und bewahren Sie alles andere in einer Datei außerhalb von registers/ auf.

# A heading that is nearly the name of a missing column, and what that keeps from being done.
found_near_heading = Die Überschrift „{ $found }“ heißt beinahe wie „{ $meant }“, die fehlt; { $costs ->
    [column] ihre Spalte wird nicht verwendet
    [verdict] bis das behoben ist, erhält kein Produkt ein Urteil
   *[issue] bis das behoben ist, wird nichts herausgegeben
}.

# What to do about it.
do_write_heading = Falls { $meant } gemeint ist, schreiben Sie die Überschrift so. Falls nicht, geben Sie dieser Spalte einen anderen Namen, oder fügen Sie eine Spalte { $meant } hinzu.

# Two columns of one name.
found_heading_twice = Die Überschrift „{ $heading }“ kommt zweimal vor, und die erste der beiden Spalten wird gelesen; { $costs ->
    [column] die andere wird nicht verwendet
    [verdict] bis das behoben ist, erhält kein Produkt ein Urteil
   *[issue] bis das behoben ist, wird nichts herausgegeben
}.

# What to do about it.
do_keep_one_column = Behalten Sie eine der beiden Spalten, oder geben Sie der anderen einen anderen Namen.

# A column of a register that nothing is read from.
found_unknown_column = Das Register { $register } kennt die Spalte „{ $column }“ nicht; sie wird nicht gelesen.

## Registers: fields

# A field that a spreadsheet could not work out.
found_cell_error = „{ $written }“ ist ein Fehler des Tabellenprogramms.

# What to do about it.
do_mend_cell = Berichtigen Sie die Zelle.

# What to do about a formula of a register that was never worked out.
do_calculate = Öffnen Sie das Register in einem Tabellenprogramm und speichern Sie es dort, oder tippen Sie ein, was die Zelle enthalten soll.

# A field with more letters than any document holds.
found_too_long = Das Feld „{ $column }“ hat { $length } Zeichen, und höchstens { $most } sind erlaubt; es wird nicht verwendet.

# What to do about it.
do_shorten = Kürzen Sie es: Vielleicht wurde es in die falsche Zelle eingefügt.

# Control characters in a field of a register.
found_control_characters_in = „{ $written }“ enthält Zeichen, die ein Gerät steuern und nichts zeigen; { $costs ->
    [row] die Zeile wird nicht verwendet
   *[letters] sie werden ausgelassen
}.

# What to do about it.
do_type_anew = { $when ->
    [missing] Tippen Sie den Text neu, falls etwas darin fehlt.
   *[always] Tippen Sie es neu.
}

# A text that a spreadsheet program would take for a formula.
found_formula = „{ $written }“ beginnt wie eine Formel eines Tabellenprogramms; es bleibt als Text stehen.

# What to do about it.
do_mend_formula = Falls es nicht dastehen soll, berichtigen Sie die Zelle.

# A field for mail addresses that holds something else.
found_no_address = „{ $written }“ im Feld „maker_email“ ist keine E-Mail-Adresse; die Schreiben an diesen Hersteller haben deshalb keinen Empfänger.

# What to do about it.
do_write_address = Schreiben Sie die Adresse wie quality@maker.example, mehrere durch Kommas getrennt, oder lassen Sie das Feld leer.

# A needed field without anything in it.
found_blank = Das Feld „{ $column }“ ist leer, wird aber gebraucht; die Zeile wird nicht verwendet.

# What to do about it.
do_fill_in = Füllen Sie es aus.

# A field that may have one of several words, and has another one.
found_unknown_word = „{ $written }“ ist kein Wort, das „{ $column }“ haben kann.

# What to do about it.
do_write_one_of = Schreiben Sie eines von diesen: { $words }.

# A field that should hold a number.
found_no_number = { $wanted ->
    [count] „{ $written }“ ist keine ganze Zahl ab 1.
   *[figure] „{ $written }“ ist keine Zahl über 0.
}

# What to do about it.
do_write_number = { $wanted ->
    [count] Schreiben Sie 1, 2, 3 …
   *[figure] Schreiben Sie nur die Zahl, in ppm, etwa 5 oder 2,5.
}

# A spreadsheet program has made a day of an id.
found_id_is_day = „{ $written }“ ist ein Tag, den ein Tabellenprogramm aus dem Feld { $column } gemacht hat; die Zeile wird nicht verwendet.

# What to do about it.
do_format_column = Stellen Sie das Format der Spalte auf Text, und tippen Sie es neu.

# What no id can be.
found_bad_id = { $since ->
    [file_name] „{ $written }“ kann keine Kennung im Feld { $column } sein, da nicht auf jedem Rechner eine Datei so heißen kann; die Zeile wird nicht verwendet.
   *[letters] „{ $written }“ kann keine Kennung im Feld { $column } sein; die Zeile wird nicht verwendet.
}

# What to do about it.
do_mend_id = { $since ->
    [file_name] Wählen Sie einen anderen Namen; er darf nicht auf „.“ enden und nicht CON, NUL, COM1 oder dergleichen sein.
   *[letters] Verwenden Sie 1 bis 64 der Buchstaben A bis Z, Ziffern, „.“, „_“ und „-“, und beginnen Sie nicht mit „.“.
}

## Registers: products and packages

# A second row of one product.
found_product_twice = „{ $product }“ steht zweimal im Register; diese Zeile wird nicht verwendet, und das Produkt erhält kein Urteil.

# A second row whose id differs in case alone.
found_product_alike = „{ $written }“ unterscheidet sich von „{ $first }“ in nichts, was zählt, und ihre Dateien würden einander überschreiben; diese Zeile wird nicht verwendet, und das Produkt erhält kein Urteil.

# What to do about it.
do_one_id_each = Geben Sie jedem Produkt eine eigene Kennung, oder nehmen Sie eine der beiden Zeilen heraus.

# Oats that are called certified.
found_no_certifier = Der Hafer soll zertifiziert sein, und keine Zertifizierungsstelle ist genannt.

# What to do about it.
do_name_certifier = Nennen Sie die Stelle in der Spalte certifier, oder schreiben Sie unverified.

# A product without a claim.
found_no_claim = Das Feld „claim“ ist leer, wird aber gebraucht; ohne es erhält das Produkt kein Urteil.

# What to do about it.
do_write_claim = Schreiben Sie die Worte auf der Packung, etwa glutenfrei.

# Two products and rounds whose sheets would have one number.
found_sheets_alike = Das Blatt von „{ $product }“, Runde „{ $round }“, hätte die Nummer oder den Dateinamen von dem für „{ $other_product }“, Runde „{ $other_round }“; die Zeile wird nicht verwendet.

# What to do about it.
do_rename_round = Geben Sie einer der beiden Runden einen anderen Namen, etwa einen nur aus Ziffern.

# A code that is there twice.
found_package_twice = { $spelt ->
    [alike] Der Packungscode „{ $second }“ steht zweimal im Register
   *[differently] Die Packungscodes „{ $first }“ und „{ $second }“ unterscheiden sich in nichts, was zählt
}; { $kept ->
    [first] diese Zeile wird nicht verwendet
   *[neither] da sie zu verschiedenen Produkten oder Runden gehören, wird keiner verwendet
}.

# What to do about it.
do_one_code_each = Jede Packung hat einen eigenen Code: Berichtigen Sie das Register.

# A row about a product that there is not.
found_unknown_product = „{ $written }“ steht nicht im Register der Produkte; die Zeile wird nicht verwendet.

# What to do about it.
do_add_product = Tragen Sie das Produkt in registers/products ein, oder berichtigen Sie hier seine Kennung.

# Rows of a lab's file about packages whose row in the register is not used; $more is how many codes are not named.
found_lost_rows = Diese Datei hat { $rows ->
    [one] 1 Zeile mit dem Code einer Packung, deren
   *[other] { $rows } Zeilen mit Codes von Packungen, deren
} Zeile im Register nicht verwendet wird: { $packages }{ $more ->
    [0] { "" }
   *[other] {" "}und { $more } weitere
}.

# What to do about it.
do_mend_registers = Berichtigen Sie zuerst die Register: Dies folgt aus deren Fehlern. Starten Sie das Programm dann noch einmal.

## Registers: photographs

# A path of photographs that is not opened.
found_folder_outside = Der Ordner mit Fotos „{ $folder }“ führt aus dem Ordner Ihres Prüfprogramms hinaus oder ist eine Verknüpfung; er wird nicht geöffnet.

# What to do about it.
do_copy_photographs = Kopieren Sie die Fotos in einen Ordner innerhalb des Ordners Ihres Prüfprogramms, und schreiben Sie seinen Pfad hierher.

# A path of photographs that leads nowhere.
found_no_folder = Es gibt keinen Ordner mit Fotos „{ $folder }“.

# What to do about it.
do_make_folder = Legen Sie den Ordner im Ordner Ihres Prüfprogramms an und kopieren Sie die Fotos hinein, oder leeren Sie diese Zelle.

# A folder of photographs that the system does not list.
found_folder_unlisted = Der Ordner mit Fotos „{ $folder }“ lässt sich nicht auflisten.

# What to do about it.
do_look_at_names = Sehen Sie seine Zugriffsrechte und die Namen darin an.

# What stands in a folder of photographs and is not taken for one.
found_photograph = { $fault ->
    [link] „{ $path }“ ist eine Verknüpfung, keine gewöhnliche Datei oder hat einen Namen, der kein Text ist; es wird nicht als Foto genommen.
    [ending] „{ $path }“ ist dem Namen nach kein Foto (.jpg, .jpeg, .png, .webp, .heic oder .pdf); es wird übergangen.
   *[unreadable] Das Foto „{ $path }“ lässt sich nicht lesen.
}

# What to do about it.
do_mend_photograph = { $fault ->
    [link] Kopieren Sie das Foto selbst in den Ordner.
    [ending] Speichern Sie es in einer dieser Arten, oder bewahren Sie es anderswo auf.
   *[unreadable] Sehen Sie die Zugriffsrechte an und starten Sie das Programm dann noch einmal.
}

## Registers: corrections, reports, key, issued sheets, terms

# A path that leads to no lab file.
found_no_lab_file = { $costs ->
    [correction] Im Ordner inbox liegt keine Datei des Labors „{ $written }“; die Korrektur wird nicht verwendet.
   *[nothing] Im Ordner inbox liegt keine Datei des Labors „{ $written }“.
}

# What to do about it.
do_write_path = { $of ->
    [several] Schreiben Sie den Pfad unterhalb von inbox/, wie inbox-report.txt ihn zeigt; * steht für beliebige Zeichen.
    [replaced] Schreiben Sie den Pfad der ersetzten Datei unterhalb von inbox/, wie inbox-report.txt ihn zeigt.
   *[one] Schreiben Sie den Pfad unterhalb von inbox/, wie inbox-report.txt ihn zeigt.
}

# A correction of a package that there is not.
found_unknown_package = „{ $written }“ steht nicht im Register der Packungen; die Korrektur wird nicht verwendet.

# What to do about it.
do_add_package = Berichtigen Sie hier den Code, oder tragen Sie die Packung in registers/packages ein.

# A correction that fits no reading.
found_idle_correction = { $extraction_is ->
    [one] Diese Korrektur ändert nichts: „{ $file }“ enthält keinen Messwert von Extraktion { $extraction } der Packung „{ $package }“.
   *[any] Diese Korrektur ändert nichts: „{ $file }“ enthält keinen Messwert der Packung „{ $package }“.
}

# What to do about it; the files that report the package.
do_mend_correction = { $reported ->
    [nowhere] Keine Datei des Labors berichtet über diese Packung. Prüfen Sie den Code, oder nehmen Sie die Zeile heraus.
   *[somewhere] Über diese Packung wird in { $files } berichtet. Berichtigen Sie Datei oder Extraktion der Zeile, oder nehmen Sie die Zeile heraus.
}

# An exclusion of every reading that another row declares a repeat.
found_corrections_clash = Diese Korrektur nimmt jede Messung heraus, die Zeile { $row } als Wiederholung nimmt: Beides zugleich kann nicht gemeint sein.

# What to do about it.
do_keep_one_correction = Behalten Sie die gemeinte Zeile, und nehmen Sie die andere heraus.

# A cell of a register that stands under no heading.
found_beyond_headings = „{ $written }“ steht unter keiner Überschrift. Ein Text kann an seinen Kommas zerrissen sein, und was in dieser Zeile gelesen wird, ist dann nicht alles; { $costs ->
    [verdict] bis das behoben ist, erhält das, was die Zeile betrifft, kein Urteil
    [issue] bis das behoben ist, wird nichts herausgegeben, was die Zeile betrifft
   *[nothing] es wird nicht gelesen
}.

# What to do about it.
do_mend_columns = Setzen Sie einen Text mit Kommas in Anführungszeichen, oder speichern Sie das Register aus einem Tabellenprogramm. Ist die Zelle eine Notiz von Ihnen, geben Sie ihrer Spalte eine Überschrift.

# A notice that is dated before there was anything to tell.
found_early_notice = Die Mitteilung zum Produkt „{ $product }“ ist auf den { $on } datiert, vor den Tag, an dem seine erste Packung gekauft oder versandt wurde ({ $day }): Bis das behoben ist, wird sein Blatt zurückgehalten.

# What to do about it.
do_mend_notice = Berichtigen Sie den Tag der Mitteilung oder ihre Runde, oder den Tag in registers/packages.

# Two rows about one file.
found_report_twice = Die Datei { $file } hat in diesem Register schon eine Zeile, Zeile { $row }; diese Zeile wird nicht verwendet.

# What to do about it.
do_one_row_each = Behalten Sie eine Zeile je Datei.

# The last day of the tests and the first.
found_days_reversed = Der letzte Tag der Untersuchungen liegt vor dem ersten.

# What to do about it.
do_mend_day = Berichtigen Sie einen der beiden Tage.

# A report that is said to replace another one.
found_nothing_replaced = { $since ->
    [itself] „{ $written }“ kann sich nicht selbst ersetzen; nichts wird ersetzt.
    [circle] „{ $written }“ ersetzt seinerseits diesen Bericht: Jeder brächte den anderen zum Schweigen, und nichts wird ersetzt.
   *[unclear] „{ $written }“ ist nicht genau eine Datei des Labors im Ordner inbox; nichts wird ersetzt.
}

# What to do about it.
do_name_earlier_file = Nennen Sie die Datei, die vorher kam.

# A certificate that is not there.
found_no_certificate = Im Ordner inbox liegt keine Datei „{ $written }“.

# What to do about it.
do_copy_certificate = Kopieren Sie das Analysenzertifikat in den Ordner inbox, und schreiben Sie seinen Pfad unterhalb von inbox/.

# A code of the key that is another package's.
found_blind_taken = { $by ->
    [package] „{ $code }“ ist der Code einer Packung des Registers der Packungen; diese Zeile des Schlüssels wird nicht verwendet.
   *[key] „{ $code }“ steht schon im Schlüssel; diese Zeile des Schlüssels wird nicht verwendet.
}

# What to do about it.
do_own_code = Geben Sie jeder Packung einen eigenen Code.

# A row of the register of what was issued that the program cannot have written.
found_no_checksum = „{ $written }“ ist keine Prüfsumme, wie `issue` sie schreibt; die Zeile wird nicht verwendet.

# What to do about it.
do_restore_register = Stellen Sie das Register aus dem letzten datierten Archiv wieder her.

# A row of label terms that cannot be used.
found_bad_term = Diese Zeile der Begriffe auf Etiketten wird nicht verwendet: { $fault ->
    [term] Sie hat keinen Begriff.
    [class] „{ $written }“, von „{ $term }“ gesagt, ist keine Klasse. Klassen sind always, depends, exempt und look-alike.
    [exception] „{ $written }“, von „{ $term }“ gesagt, ist keine Ausnahme. Eine Ausnahme schreibt man us=depends.
   *[condition] „{ $written }“, von „{ $term }“ gesagt, ist weder ein Rechtsraum noch named, listed, grain oder gluten-free.
}

# What to do about it.
do_mend_row = Berichtigen Sie die Zeile, oder nehmen Sie sie heraus.

# What to do where the lab has no result of it.
do_ask_for_blind = Bitten Sie das Labor um das Ergebnis unter diesem Code, wie bei jeder anderen Packung.

# What to do where the result is not what was expected.
do_look_at_key = Sehen Sie zuerst den Schlüssel an: Ein Code kann verwechselt sein. Fragen Sie dann das Labor nach dem ganzen Lauf, ohne zu sagen, welche Packung es war. Kein Urteil wurde dadurch geändert; bedenken Sie, was zusammen damit untersucht wurde, bevor Sie etwas herausgeben.

# Likewise, with the share of it that was found. AOAC SMPR 2017.021 allows 50 to 200 % for oats, an uneven food.
found_blind_share = Die Packung { $package } ist eine Blindprobe, der { $added } ppm Gluten zugesetzt sind; das Labor berichtet { $reported }: Das sind { $share } % des Zugesetzten, { $within ->
    [yes] innerhalb von 50 bis 200 %
   *[no] außerhalb von 50 bis 200 %
}.

# A package to which gluten was added, and what the lab reports of it, where no share of it can be worked out.
found_blind_with = Die Packung { $package } ist eine Blindprobe, der { $amount ->
    [known] { $added } ppm Gluten zugesetzt sind
   *[unknown] Gluten zugesetzt ist, wie viel, sagt der Schlüssel nicht
}; das Labor berichtet { $reported }: { $outcome ->
    [no_result] Es gibt kein Ergebnis, das sich mit dem Schlüssel vergleichen lässt
    [missed] In { $missed } von { $all } Extraktionen ließ sich nichts beziffern, obwohl Gluten zugesetzt war
   *[found] Wie erwartet wurde Gluten gefunden
}.

# A package that is known to hold no gluten, and what the lab reports of it.
found_blind_without = Die Packung { $package } ist eine Blindprobe, von der bekannt ist, dass sie kein Gluten enthält; das Labor berichtet { $reported }: { $outcome ->
    [no_result] Es gibt kein Ergebnis, das sich mit dem Schlüssel vergleichen lässt
    [none_found] Wie erwartet wurde kein Gluten gefunden
   *[found] In { $found } von { $all } Extraktionen wurde Gluten gefunden, wo keines sein sollte
}.
