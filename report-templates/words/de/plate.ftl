# Platten: die Vertiefungen, die ein Labor gemessen hat, und die Seite einer Platte.

## What was found of them

# What is not understood. What it is worth stands at its end: the plate as a whole is not read, or the sample in the well.
found_plate_fault = { $fault ->
    [absorbance] Die Extinktion der Vertiefung { $well } ist „{ $written }“, und das ist keine Zahl.
    [content] Was in Vertiefung { $well } ist, ist nicht zu verstehen: „{ $written }“.
    [concentration] Der Standard in Vertiefung { $well } hat keine lesbare Konzentration: „{ $written }“.
    [stated] Was die Kontrolle in Vertiefung { $well } enthalten soll, ist nicht zu verstehen: „{ $written }“.
    [dilution] Die Verdünnung der Vertiefung { $well } ist nicht zu verstehen: „{ $written }“.
    [extraction] Die Nummer der Extraktion in Vertiefung { $well } ist nicht zu verstehen: „{ $written }“.
    [twice] Vertiefung { $well } steht zweimal auf der Platte.
    [well] „{ $written }“ ist keine Vertiefung einer Platte: Das sind A1 bis H12.
    [unit] Was in Vertiefung { $well } ist, „{ $written }“, ist in { $other } angegeben, und nach den Einstellungen haben Standards eine andere Einheit.
    [columns] Zwei Spalten, „{ $written }“ und „{ $other }“, sagen von jeder Vertiefung dasselbe.
    [no_contents] Da ist ein Raster von Extinktionen und kein zweites, das sagt, was in jeder Vertiefung ist.
    [grids] Raster einer Platte passen nicht zusammen: Zu jedem mit Extinktionen gehört eines von gleicher Form, das sagt, was in jeder Vertiefung ist.
    [numbers] Die Standards heißen von Vertiefung { $well } an 1, 2, 3 und so weiter: Das können ihre Nummern ebenso wie ihre Konzentrationen sein.
    [no_standards] Die Platte hat keine Standards.
    [unnumbered] Es ist nicht gesagt, welche Extraktion der Packung „{ $written }“ in Vertiefung { $well } ist; ihre Vertiefungen werden zusammen gelesen und mit nichts verglichen.
    [code] „{ $written }“ in Vertiefung { $well } ist keine eingetragene Packung; „{ $other }“ ist ihr ähnlich.
   *[many] Die Datei hat { $written } Platten; gelesen werden höchstens { $other }.
}{ $lost ->
    [plate] { " " }Die Platte wird nicht gelesen.
    [sample] { " " }Diese Probe wird nicht gelesen.
   *[nothing] { "" }
}

# What to do about it.
do_plate_fault = { $fault ->
    [absorbance] Bitten Sie das Labor um den Wert des Plattenlesegeräts.
    [content] Bitten Sie das Labor um Packungscode, Extraktion und Verdünnung, etwa „FH-114-A E1 1:10“.
    [concentration] Bitten Sie das Labor um die Konzentration jedes Standards, etwa „Std 20 ppm“, oder um eine Spalte der Konzentrationen.
    [stated] Bitten Sie das Labor um den Wert oder den Bereich der Kontrolle, etwa „18-26“.
    [dilution] Bitten Sie das Labor um die Verdünnung, etwa „1:10“.
    [extraction] Bitten Sie das Labor um die Nummer der Extraktion: 1 oder 2.
    [twice] Bitten Sie das Labor um eine Spalte, die die Platte nennt, falls die Tabelle mehrere enthält.
    [well] Fragen Sie das Labor, welche Vertiefung es ist.
    [unit] Setzen Sie standards in [plate] von programme.toml auf die Einheit, die das Labor verwendet.
    [columns] Lassen Sie in der Datei die eine Spalte, an die die Kurve angepasst wird.
    [no_contents] Bitten Sie das Labor um die Belegung der Platte: dasselbe Raster mit dem Inhalt jeder Vertiefung.
    [grids] Bitten Sie das Labor für jede Platte um ein Raster der Extinktionen und eines der Inhalte.
    [numbers] Bitten Sie das Labor um Konzentrationen mit ihrer Einheit, etwa „Std 20 ppm“.
    [no_standards] Bitten Sie das Labor um die Vertiefungen seiner Standards.
    [unnumbered] Bitten Sie das Labor um die Nummer der Extraktion: 1 oder 2.
    [code] Fragen Sie das Labor, welche Packung es ist.
   *[many] Verteilen Sie die Platten auf mehrere Dateien.
}

# The curve needs more standards; two of them must be above zero.
found_plate_standards = Platte { $plate } hat { $standards ->
    [one] 1 Standard
   *[other] { $standards } Standards
}; die Kurve { $curve } braucht { $needed } verschiedener Konzentration, zwei davon über null.

# Nothing can be read on it.
found_plate_no_curve = { $why ->
    [monotone] Die Kurve { $curve } der Platte { $plate } steigt oder fällt nicht durchweg von Standard zu Standard: An ihr lässt sich nichts ablesen.
    [weights] Ein Standard der Platte { $plate } hat eine mittlere Extinktion, die nicht über null liegt: Für ihn gibt es kein Gewicht 1/y^2, und die Kurve { $curve } lässt sich nicht anpassen.
   *[fitted] An die Standards der Platte { $plate } lässt sich keine Kurve { $curve } anpassen.
}

# What to do about either.
do_plate_curve = Fragen Sie das Labor, welche Kurve es verwendet hat, und setzen Sie curve in [plate] von programme.toml; oder fragen Sie, ob die Platte in Ordnung war.

# A check of a plate, each named by its word in the data.
found_plate_monotone = Platte { $plate }, Prüfung monotone: { $steps ->
    [one] 1 Standard geht nicht in der Richtung der anderen.
   *[other] { $steps } Standards gehen nicht in der Richtung der anderen.
}

found_plate_blank = Platte { $plate }, Prüfung blank: Die mittlere Extinktion von { $wells } ist { $found }, höchstens { $allowed } ist erlaubt.

found_plate_top = Platte { $plate }, Prüfung top: Die mittlere Extinktion von { $wells } ist { $found }, mindestens { $allowed } ist verlangt.

found_plate_wells = Platte { $plate }, Prüfung well_cv: Die Vertiefungen { $wells } haben eine relative Standardabweichung von { $found } %, höchstens { $allowed } % ist erlaubt.

found_plate_standard = Platte { $plate }, Prüfung back_calculated: { $read ->
    [yes] Der Standard { $standard }, auf seiner eigenen Kurve zurückgelesen, weicht um { $found } % ab, höchstens { $allowed } % ist erlaubt.
   *[no] Der Standard { $standard } lässt sich auf seiner eigenen Kurve nicht zurücklesen.
}

found_plate_control = Platte { $plate }, Prüfung recovery: { $read ->
    [yes] Die Kontrolle „{ $control }“ ergibt { $stated ->
        [value] { $found } % ihres Wertes, erlaubt ist { $low } bis { $high } %.
       *[range] { $found } { $amount }, erlaubt ist { $low } bis { $high } { $amount }.
    }
   *[no] Die Kontrolle „{ $control }“ liegt außerhalb der Standards, und es lässt sich kein Wert ablesen.
}

# What to do about any of these.
do_plate_quality = Fragen Sie das Labor, ob es die Platte anerkannt hat und weshalb. Was es berichtet hat, gilt.

found_plate_differs = Die Extinktionen der Packung „{ $package }“, Extraktion { $extraction }, ergeben { $is ->
    [below] weniger als { $recomputed } { $amount }
    [above] mehr als { $recomputed } { $amount }
   *[figure] { $recomputed } { $amount }
}; berichtet ist „{ $reported }“ ({ $reported_at }).

# What to do about it.
do_plate_differs = Fragen Sie das Labor, wie der Wert berechnet wurde: mit welcher Kurve und welcher Verdünnung. Was es berichtet hat, gilt.

## The page of a plate

# The first line, and the title of the file.
plate_title = Platte { $plate }

plate_about = Eine Platte aus { $file }, ihre Kurve neu angepasst

# At the head of each page; the plate's name follows.
plate_head = Platte

plate_foot = Für das Programm und das Labor. Auf einer Platte sind Proben mehrerer Hersteller.

plate_source = Aus { $file }{ $sheet_is ->
    [named] , Blatt „{ $sheet }“, ab Zeile { $row }.
   *[none] , ab Zeile { $row }.
}

# What the page is worth.
plate_stands = Die Kurve ist hier neu angepasst, aus den Extinktionen, die das Labor geschickt hat. Was sie ergeben, steht neben dem, was das Labor berichtet hat. Es ersetzt nichts und entscheidet nichts.

plate_curve_head = Die Kurve

plate_curve = { $curve ->
    [four] Eine logistische Kurve mit vier Parametern, y = D + (A − D) / (1 + (x / C)^B),
    [five] Eine logistische Kurve mit fünf Parametern, y = D + (A − D) / (1 + (x / C)^B)^G,
    [spline] Ein natürlicher kubischer Spline in log10(x + 1)
   *[straight] Gerade Linien von jedem Standard zum nächsten
} durch die mittlere Extinktion der Vertiefungen jedes Standards{ $weights ->
    [square] , jede mit dem Gewicht 1/y².
   *[none] .
}

plate_no_curve = Es ließ sich keine Kurve anpassen, die nur steigt oder nur fällt. Von dieser Platte wird nichts abgelesen.

plate_unit = { $unit ->
    [extract] Konzentrationen sind in ng/mL Gliadin im Extrakt angegeben; auf ein Gramm des Lebensmittels kommen { $factor } mL davon, und Gluten ist das Doppelte des Gliadins.
   *[food] Konzentrationen sind in { $amount } Gluten im Lebensmittel angegeben.
}

plate_parameters = A = { $a }, B = { $b }, C = { $c }, D = { $d }{ $has_g ->
    [yes] , G = { $g }.
   *[no] .
}

plate_residual = Reststandardabweichung: { $sd }.

plate_standards_head = Standards und Leerwerte

plate_controls_head = Kontrollen

plate_samples_head = Proben

plate_checks_head = Prüfungen

plate_concentration = Konzentration

plate_wells = Vertiefungen

plate_absorbances = Extinktionen

plate_mean = Mittel

plate_read_back = Zurückgelesen

plate_near = Nah genug

plate_control = Kontrolle

plate_stated = Soll, { $amount }

plate_package = Packung

plate_extraction = Extraktion

plate_dilution = Verdünnung

plate_recomputed = Neu berechnet, { $amount }

plate_reported = Berichtet

plate_agree = Stimmt überein

plate_check = Prüfung

plate_found = Gefunden

plate_allowed = Erlaubt

plate_blanks = Leerwert

plate_check_name = { $check ->
    [monotone] Standards, die nicht in der Richtung der anderen gehen
    [blank] Extinktion von Leerwerten und Nullstandard
    [top] Extinktion des stärksten Standards
    [well_cv] Relative Standardabweichung der Vertiefungen
    [back_calculated] Standards, auf ihrer Kurve zurückgelesen
   *[recovery] Kontrollen
}

plate_at_most = höchstens { $figure }

plate_at_least = mindestens { $figure }

plate_ok = { $ok ->
    [yes] ja
   *[no] nein
}

plate_agrees = { $agrees ->
    [yes] ja
    [no] nein
   *[unsaid] nicht verglichen
}

plate_others = Weitere Vertiefungen mit Proben, die nicht zu diesem Programm gehören: { $wells }.

plate_no_samples = Auf dieser Platte ist keine Probe dieses Programms.

plate_key = Kreise: Standards, jede Vertiefung{ $controls ->
    [yes] ; Rauten: Kontrollen
   *[no] { "" }
}{ $samples ->
    [yes] ; Kreuze: Proben, neu berechnet
   *[no] { "" }
}{ $reported ->
    [yes] ; offene Dreiecke: dieselben, wie berichtet
   *[no] { "" }
}.

plate_along = { $unit ->
    [extract] Konzentration, ng/mL Gliadin
   *[food] Konzentration, { $amount } Gluten
}

plate_up = Extinktion

plate_chart = Die Extinktionen von { $standards ->
    [one] 1 Standard
   *[other] { $standards } Standards
} von { $lowest } bis { $highest } mit ihrer Kurve und { $samples ->
    [one] 1 Probe
   *[other] { $samples } Proben
} darauf. { $differing ->
    [0] Keine weicht von dem ab, was berichtet ist.
    [one] Eine weicht von dem ab, was berichtet ist.
   *[other] Davon weichen { $differing } von dem ab, was berichtet ist.
}
