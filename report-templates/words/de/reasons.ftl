# Warum ein Urteil so lautet: auf dem Blatt, in results.json und products.csv, in `explain`, in der Übersicht und in den Briefen.
# Jeder Grund ist ein ganzer Satz.

## What the reasons are made of

# Taken in by other messages. "fails": exactly the limit is over it (21 CFR 101.91). "passes": exactly the limit is within it
# (Verordnung (EU) Nr. 828/2014, CXS 118-1979). "detection": the rule knows no limit; $limit is the limit of detection.
side_over = { $rule ->
    [passes] über dem Grenzwert von { $limit }
    [detection] ein Nachweis von Gluten
   *[fails] nicht unter dem Grenzwert von { $limit }
}

# Taken in likewise.
side_within = { $rule ->
    [passes] nicht über dem Grenzwert von { $limit }
    [detection] kein Nachweis von Gluten (Nachweisgrenze { $limit })
   *[fails] unter dem Grenzwert von { $limit }
}

# Taken in likewise: what a package's extractions give together.
held = { $kind ->
    [mean] { $figure } (Mittelwert)
    [below] weniger als { $upper }
    [range] { $figure } bis { $upper }
    [above] mehr als { $figure }
    [detected] { $figure }
   *[nothing] kein brauchbares Ergebnis
}

## Before anything else: what is not known

# The claim on the package is none that the rule knows.
reason_unknown_claim = Die Packung trägt die Angabe „{ $claim }“; das ist keine Angabe zu Gluten, die diese Regel kennt, und so gibt es keinen Grenzwert dafür. Was steht auf der Packung?

# The register of products has no claim.
reason_no_claim = Das Register sagt nicht, welche Angabe auf der Packung steht: So gibt es keinen Grenzwert dafür.

# `processing` has a word that is none of none, fermented, hydrolysed.
reason_unknown_processing = Das Wort des Registers für die Verarbeitung ist nicht zu lesen; davon hängt aber ab, welches Verfahren das Gluten sehen kann.

# A register's heading is nearly the name of a column that is missing.
reason_heading = Ein Register hat eine Spalte „{ $found }“ und keine mit dem Namen „{ $meant }“: Bis das geklärt ist, wird nichts entschieden.

# A register has two columns of one name.
reason_heading_twice = Ein Register hat zwei Spalten „{ $heading }“: Bis eine davon weg ist, wird nichts entschieden.

# A field that bears on the verdict cannot be read.
reason_field = „{ $written }“ in der Spalte „{ $column }“ eines Registers ist nicht zu lesen, und davon hängt das Urteil ab.

# A row of a register that bears on the verdict cannot be used.
reason_row = Eine Zeile eines Registers, die dieses Produkt betrifft, ist nicht zu verwenden.

# A row of the register of reports cannot be used.
reason_report = Was das Register der Prüfberichte zu { $file } sagt, ist nicht zu verwenden.

# A file in the folder of registers is nearly named as one.
reason_misnamed = Eine Datei heißt beinahe wie das Register { $meant } und wurde nicht gelesen: Bis das geklärt ist, wird nichts entschieden.

# Likewise as the workbook in which registers are kept together.
reason_misnamed_workbook = Eine Datei heißt beinahe wie die Arbeitsmappe der Register und wurde nicht gelesen: Bis das geklärt ist, wird nichts entschieden.

## Within

# Every package had less than the assay can put a number on, and that is within the limit.
reason_none_measured = { $packages ->
    [one] In der einen Packung war zu wenig Gluten, um es zu messen (unter { $below }); das ist { side_within }.
   *[other] In jeder der { $packages } Packungen war zu wenig Gluten, um es zu messen (unter { $below }); das ist { side_within }.
}

# Every package is within the limit, and gluten was measured in at least one.
reason_all_within = { $packages ->
    [one] { $rule ->
        [detection] In der einen Packung wurde kein Gluten nachgewiesen (Nachweisgrenze { $limit })
       *[other] Die eine Packung liegt { side_within }
    }{ $guarded ->
        [yes] , die Messunsicherheit eingerechnet
       *[no] { "" }
    }.
   *[other] { $rule ->
        [detection] In keiner der { $packages } Packungen wurde Gluten nachgewiesen (Nachweisgrenze { $limit })
       *[other] Jede der { $packages } Packungen liegt { side_within }
    }{ $guarded ->
        [yes] , die Messunsicherheit eingerechnet
       *[no] { "" }
    }.
}

## Over

# One package is over the limit.
reason_over = { $kind ->
    [detected] In Packung { $package } wurde Gluten nachgewiesen: Das Labor gibt { $figure } an.
   *[other] Packung { $package } enthält { held }; das ist { side_over }.
}

# Its extractions are too far apart to agree, and each of them is over by itself.
reason_each_over = Die Extraktionen von Packung { $package } stimmen nicht überein, und jede von ihnen { $rule ->
    [detection] ist { side_over }
   *[other] liegt { side_over }
}.

# Likewise, of three or more extractions the median is over (ISO 5725-6:1994, 5.2).
reason_median_over = Die Extraktionen von Packung { $package } stimmen nicht überein, und ihr Median { $rule ->
    [detection] ist { side_over }
   *[other] liegt { side_over }
}.

# A fermented or hydrolysed food: the sandwich assay, which sees too little there, finds it over.
reason_over_by_sandwich = Packung { $package } enthält nach dem Sandwich-Verfahren { held }; das ist { side_over }. In einem solchen Lebensmittel zeigt dieses Verfahren eher zu wenig als zu viel an.

## Undecided packages

# No row of the lab's has a result of the package.
reason_missing = Zu Packung { $package } hat das Labor noch nichts berichtet.

# Fewer usable extractions than the programme asks for.
reason_too_few_extractions = Packung { $package } hat { $usable } von { $asked } brauchbaren Extraktionen, die ein Ergebnis braucht.

# Two reports of one extraction differ; neither is used until a correction settles it.
reason_conflict = Die Berichte des Labors zu Packung { $package } widersprechen einander; keiner wird verwendet, bis geklärt ist, welcher gilt: { $usable } von { $asked } nötigen Extraktionen bleiben.

# The extractions are farther apart than repeats of one material may be (ISO 5725-6:1994, 5.2).
reason_disagree = { $how ->
    [exact] Die Extraktionen von Packung { $package } stimmen nicht überein: Sie liegen { $gap } auseinander, erlaubt sind { $allowed }.
   *[least] Die Extraktionen von Packung { $package } stimmen nicht überein: Sie liegen mindestens { $gap } auseinander, erlaubt sind { $allowed }.
}

# Guarded decisions (ILAC-G8:09/2019): the expanded uncertainty reaches over the limit.
reason_too_close = Packung { $package } enthält { held }; das liegt für die Unsicherheit des Verfahrens zu nahe am Grenzwert von { $limit }.

# The bounds of the result lie on both sides.
reason_either_side = { $rule ->
    [detection] Packung { $package } enthält { held }; das zeigt nicht, ob Gluten nachgewiesen wurde (Nachweisgrenze { $limit }).
   *[other] Packung { $package } enthält { held }; das zeigt nicht, auf welcher Seite von { $limit } sie liegt.
}

## Undecided products

# Fewer packages than the programme asks for.
reason_too_few_packages = { $tested ->
    [one] Nur 1 von { $asked } Packungen wurde untersucht.
   *[other] Nur { $tested } von { $asked } Packungen wurden untersucht.
}

# J AOAC 98:1346 (2015): a sandwich assay needs two binding sites on one molecule.
reason_sandwich_unfit = { $food ->
    [fermented] Dieses Lebensmittel ist fermentiert: Ein Sandwich-Verfahren zeigt darin zu wenig Gluten an, weil ihm zerlegte Eiweiße entgehen. Nötig ist ein kompetitives Verfahren.
   *[hydrolysed] Dieses Lebensmittel ist hydrolysiert: Ein Sandwich-Verfahren zeigt darin zu wenig Gluten an, weil ihm zerlegte Eiweiße entgehen. Nötig ist ein kompetitives Verfahren.
}

# 85 FR 49240 (2020): the maker's records of what went in decide.
reason_records_decide = { $food ->
    [fermented] Dieses Lebensmittel ist fermentiert: Kein Test zeigt verlässlich, wie viel Gluten es enthält. In den Vereinigten Staaten entscheiden die Aufzeichnungen des Herstellers über die Zutaten.
   *[hydrolysed] Dieses Lebensmittel ist hydrolysiert: Kein Test zeigt verlässlich, wie viel Gluten es enthält. In den Vereinigten Staaten entscheiden die Aufzeichnungen des Herstellers über die Zutaten.
}
