# Was an ein Labor geht: das Begleitformular, die Rückfrage und ihre Nachricht.

## The query

# At the head of each page; the day follows, where it is known.
lab_query_head = Rückfragen an das Labor

# At the foot of each page; the programme's mail address follows.
lab_query_reply = Bitte antworten Sie an

# Below the lab's name in the address.
lab_sample_desk = Probenannahme

# The first line.
lab_query_title = { $packages ->
    [one] Rückfragen zu 1 Packung
   *[other] Rückfragen zu { $packages } Packungen
}

# The title of the letter as a file.
lab_query_document = { $title }, { $lab }

# What the file is, for catalogues.
lab_query_about = Rückfragen an das Labor zu Ergebnissen, die nicht zusammenpassen

# Why we write. "no": nothing of these packages is reported.
lab_query_opening = { $reported ->
    [yes] { $packages ->
        [one] Vielen Dank für Ihre Prüfberichte. Bei 1 Packung können wir noch nicht entscheiden; der Grund steht unten.
       *[other] Vielen Dank für Ihre Prüfberichte. Bei { $packages } Packungen können wir noch nicht entscheiden; die Gründe stehen unten.
    }
   *[no] { $packages ->
        [one] Zu 1 Packung, die wir Ihnen gesandt haben, fehlt uns ein Bericht.
       *[other] Zu { $packages } Packungen, die wir Ihnen gesandt haben, fehlt uns ein Bericht.
    }
} Die Codes stehen auf den Packungen.

# Heads of the table of questions.
lab_package = Packung
lab_report = Bericht
lab_found = Was uns auffiel
lab_asked = Worum wir bitten

# What kind of question, before what was found; a full stop follows.
lab_kind = { $kind ->
    [conflict] Zwei Ergebnisse für eine Extraktion
    [unreadable] Kein lesbares Ergebnis
    [disagreement] Die Extraktionen stimmen nicht überein
    [set_aside] Eine Extraktion wird nicht verwendet
    [missing_extraction] Eine Extraktion fehlt
   *[missing_result] Noch kein Ergebnis
}

# An extraction as the lab reported it, in a list: its figure, and the file, sheet and cell that it stands in. "no": the cell's
# words, which read as no figure.
lab_extraction = Extraktion { $number }: { $read ->
    [yes] { $figure }
   *[no] „{ $figure }“
} ({ $file }{ $has_sheet ->
    [yes] , Tabellenblatt { $sheet }
   *[no] { "" }
}, { $cell })

# Two reports of one extraction differ.
lab_conflict = Ihre Berichte geben für eine Extraktion verschiedene Ergebnisse an: { $extractions }.
lab_conflict_ask = Welches gilt? Wenn das spätere eine Wiederholung ist, geben Sie ihm bitte die Nummer einer weiteren Extraktion.

# A cell that reads as no result.
lab_unreadable = Wir können Ihrem Bericht kein Ergebnis entnehmen: { $extractions }.
lab_unreadable_ask = Bitte senden Sie uns die Zahl mit ihrer Einheit, oder „<“ und die Bestimmungsgrenze.

# Extractions that are farther apart than repeats of one material may be (ISO 5725-6:1994, 5.2). "yes": one of them is a bound,
# so that the gap is a least one.
lab_disagree = Die Extraktionen unterscheiden sich mehr als Wiederholungen desselben Materials: { $extractions }. Sie liegen { $least ->
    [yes] mindestens { $gap }
   *[no] { $gap }
} auseinander; erlaubt sind { $allowed }.

# Where only the first pair is there. The numbers are those of the extractions to come.
lab_disagree_repeat = Bitte prüfen Sie Berechnung und Verdünnung. Wenn sie stimmen, extrahieren Sie bitte dieselbe gemahlene Probe noch zweimal und berichten Sie die Extraktionen { $first } und { $second }; die früheren bleiben im Protokoll.

# Where repeats are there already.
lab_disagree_check = Bitte prüfen Sie Berechnung und Verdünnung bei jeder. Die Wiederholungen liegen schon vor: Um mehr bitten wir nicht.

# The programme set an extraction aside (corrections.csv), so that too few are left.
lab_set_aside = Sie haben berichtet: { $extractions }. Was wir nicht verwenden konnten, haben wir ausgenommen; { $usable ->
    [0] es bleibt keine Extraktion.
    [one] es bleibt 1 Extraktion.
   *[other] es bleiben { $usable } Extraktionen.
}
lab_set_aside_ask = Bitte extrahieren Sie dieselbe gemahlene Probe noch einmal und berichten Sie das als Extraktion { $number }, oder teilen Sie uns mit, warum das nicht geht.

# Fewer extractions than asked for.
lab_incomplete = { $usable ->
    [0] Wir haben keine der { $asked } Extraktionen, um die wir gebeten hatten: { $extractions }.
   *[other] Wir haben { $usable } von { $asked } Extraktionen: { $extractions }.
}
lab_incomplete_ask = Bitte berichten Sie die fehlende Extraktion, oder teilen Sie uns mit, warum es sie nicht gibt.

# Nothing is reported, and the time for it is over.
lab_missing = { $dated ->
    [yes] Gesandt am { $day }. Wir haben kein Ergebnis.
   *[no] Wir haben kein Ergebnis.
}
lab_missing_ask = Bitte teilen Sie uns mit, wann wir es erwarten können oder warum es keines gibt.

# How an answer is wanted.
lab_answer = Bitte antworten Sie mit einem berichtigten oder weiteren Prüfbericht als Tabellendatei (CSV oder XLSX), mit einer Zeile für jede Extraktion: unser Code, die Nummer der Extraktion, das Ergebnis, seine Einheit, die Bestimmungsgrenze.

# What an extraction is.
lab_answer_extraction = Eine Extraktion ist eine eigene Einwaage, die durch das ganze Verfahren geht. Mehrere Kavitäten eines Extraktes sind keine Extraktionen. Bitte ändern Sie an einem früheren Bericht nichts ohne eine neue Berichtsnummer.

# By when an answer is wanted, and what it is to name. "no": the query has no date.
lab_answer_by = { $dated ->
    [yes] Für eine Antwort bis zum { $day } wären wir dankbar. Bitte nennen Sie darin { $number }.
   *[no] Bitte nennen Sie in Ihrer Antwort { $number }.
}

# How the query ends; the name of who writes follows.
lab_yours = Mit freundlichen Grüßen

## The mail to a lab

# The subject; $packages are codes, with an ellipsis where there are more, $number is that of the query.
lab_mail_subject = Rückfragen zu Ihren Ergebnissen: { $packages } ({ $number })

lab_mail_dear = Sehr geehrte Damen und Herren!

# Why we write. "no": nothing of these packages is reported.
lab_mail_opening = { $reported ->
    [yes] { $questions ->
        [one] Vielen Dank für Ihre Ergebnisse. Bevor wir veröffentlichen können, haben wir dazu 1 Frage.
       *[other] Vielen Dank für Ihre Ergebnisse. Bevor wir veröffentlichen können, haben wir dazu { $questions } Fragen.
    }
   *[no] { $questions ->
        [one] Wir haben 1 Frage zu einer Packung, die wir Ihnen gesandt haben.
       *[other] Wir haben { $questions } Fragen zu Packungen, die wir Ihnen gesandt haben.
    }
}

# One question, a paragraph each.
lab_mail_question = Packung { $package }: { $asked }

lab_mail_answer = Bitte antworten Sie auf diese Nachricht, oder senden Sie einen berichtigten oder ergänzenden Prüfbericht. Bitte lassen Sie die Codes der Packungen, wie sie sind, und zählen Sie weitere Extraktionen von den schon berichteten an weiter.

# How the mail ends; the name of who writes follows.
lab_mail_regards = Mit freundlichen Grüßen

# Where the address would stand. Plain letters without accents, which every mail program can show.
lab_mail_no_address = Hier die Adresse des Labors eintragen

## The request form

request_title = Proben zur Glutenuntersuchung

# The title of the form as a file.
request_document = { $has_round ->
    [yes] Proben zur Glutenuntersuchung, Runde { $round }
   *[no] Proben zur Glutenuntersuchung
}

# What the file is, for catalogues.
request_about = { $samples ->
    [one] 1 Probe für { $lab }
   *[other] { $samples } Proben für { $lab }
}

# At the head of each page.
request_head = Probenbegleitschein

# After it, where the form is of one round; the round's name follows.
request_head_round = · Runde

request_foot = Zwei Exemplare: Eines bleibt bei den Proben, eines geht unterschrieben zurück.

# Below the first line.
request_to = An { $lab }, Probenannahme. Das Labor arbeitet mit Codes: Auf diesem Formular steht weder Marke noch Produkt noch Geschäft.

# In an empty box.
request_sticker = Für das Labor: Nummer oder Aufkleber

# Labels of the lines below it.
request_sent_by = Gesandt von
request_sent_on = Gesandt am
request_parcels = Pakete
request_reply_to = Antwort an

request_samples = Proben

# Heads of the table of samples; the columns of crosses are narrow.
request_code = Code
request_kind = Art des Lebensmittels
request_kind_unknown = nicht angegeben
request_content = Inhalt
request_tannin = Kakao, Gerbstoff
request_legume = Soja, Hülsenfrucht
request_oats = Hafer
request_fermented = fermentiert, hydrolysiert
request_condition = Zustand bei Eingang

# Below the table.
request_crosses = Die Kreuze sagen dem Labor, welche Extraktion nötig ist. Sie stammen aus unserem Register; bitte berichtigen Sie sie, wo Sie es besser wissen.

request_asked = Worum wir bitten

# Where a food is fermented or hydrolysed and the assay is a sandwich one (J AOAC 98:1346, 2015).
request_competitive = Für Proben, die als fermentiert oder hydrolysiert angekreuzt sind, zusätzlich ein kompetitives Verfahren: Ein Sandwich-Verfahren zeigt dort zu wenig an.

request_grind = { $extractions ->
    [one] Jede Packung ganz vermahlen; daraus 1 Extraktion, eine eigene Einwaage. Mehrere Kavitäten eines Extraktes sind keine Extraktionen.
   *[other] Jede Packung ganz vermahlen; daraus { $extractions } getrennte Extraktionen, jede eine eigene Einwaage. Mehrere Kavitäten eines Extraktes sind keine Extraktionen.
}

request_report = Jede Extraktion als Gluten in mg/kg berichten, darunter „<“ und die Bestimmungsgrenze (höchstens { $lloq }); was über dem Messbereich liegt, verdünnen.

request_table = Die Ergebnisse in der Tabelle senden, die zu diesem Formular gehört (.xlsx), mit einer Zeile für jede Extraktion; eine eigene Datei mit denselben Spalten (CSV oder XLSX) ist ebenso recht.

request_as_measured = Keine Extraktion mitteln, runden oder weglassen, und keine Konformitätsaussage machen.

# The rule of agreement (ISO 5725-6:1994, 5.2, factor of two extractions), with the programme's own repeatability.
request_pair_rule = Zwei Extraktionen einer Probe stimmen nicht überein, wenn sie sich um mehr als 2,8 s unterscheiden, s² = ({ $lloq }/10)² + ({ $share } des Mittelwerts)²: um mehr als { $allowed } bei einem Mittelwert von { $mean }. Dann dieselbe gemahlene Probe noch zweimal extrahieren und die Nummern 3 und 4 berichten; kein Ergebnis weglassen.

request_state = Nachweisgrenze und Bestimmungsgrenze angeben, die erweiterte Messunsicherheit (k = 2) eines Ergebnisses nahe dem Grenzwert, den Zustand jeder Probe bei Eingang und jede Abweichung vom Verfahren.

# $kept is the setting "retained".
request_keep = Bitte bewahren Sie auf: { $kept }.

request_custody = Übergabe der Proben

# Heads and rows of the table of custody.
request_name = Name
request_signature = Unterschrift
request_date = Tag
request_time = Uhrzeit
request_seals = Siegel intakt?
request_yes = ja
request_no = nein
request_handed_over = Übergeben
request_carried = Befördert
request_received = Erhalten

# Lines to write on, below it.
request_unusual = Zustand bei Eingang, Auffälliges
request_refused = Nicht angenommene Proben, und warum

## The empty table that goes with the form

# The line above it.
form_title = { $has_round ->
    [yes] Ergebnisse der Glutenuntersuchung für { $programme }, Runde { $round }
   *[no] Ergebnisse der Glutenuntersuchung für { $programme }
}

# Below that.
form_hint = Eine Zeile für jede Extraktion, wie gemessen, weder gemittelt noch gerundet. Unter der Bestimmungsgrenze: das Zeichen < und die Grenze.
