# Der Plan einer Runde, die Etiketten, der Bildbogen und der Kalender.

## The plan

# The first line, and the title of the file.
plan_title = Plan der Runde { $round }

# What the file is, for catalogues.
plan_about = { $products ->
    [one] 1 Produkt zu untersuchen, was das kostet und was es zeigen kann
   *[other] { $products } Produkte zu untersuchen, was das kostet und was es zeigen kann
}

# At the head of each page; the round's name follows.
plan_head = Plan der Runde

plan_foot = Nur für das Programm. Die Codes dürfen das Labor nicht zusammen mit den Namen der Produkte erreichen.

# Below the first line, where nothing is to be bought.
plan_nothing = Jetzt ist kein Produkt des Registers zu kaufen; die Listen unten sagen, warum.

# Below the first line. The packages include the blinds.
plan_round = Die Runde hat { $products ->
    [one] 1 Produkt,
   *[other] { $products } Produkte,
} { $packages ->
    [one] 1 Packung
   *[other] { $packages } Packungen
}{ $blinds ->
    [0] { "" }
   *[other] , davon { $blinds } mit bekanntem Gehalt,
} und { $extractions ->
    [one] 1 Extraktion.
   *[other] { $extractions } Extraktionen.
}

# Where any price is known.
plan_costs = { $has_budget ->
    [yes] Sie kostet { $total } von verfügbaren { $budget }.
   *[no] Sie kostet { $total }.
}

# What has no price. Names in brackets are keys of programme.toml.
plan_unpriced = In keiner Summe enthalten: { $what }.
plan_unpriced_thing = { $thing ->
    [packages] die Packungen, da noch keine im Register einen Preis hat
    [lab] die Arbeit des Labors (extraction_price)
   *[shipping] der Versand (shipping_price)
}

plan_products = Was untersucht wird, und warum

# Heads of the table of products.
plan_id = Kennung
plan_product = Produkt
plan_why_head = Warum
plan_price_head = Preis einer Packung

# Why a product is worth testing; in a table, and on the screen after its name.
plan_why = { $why ->
    [new] Noch nie untersucht
    [no_verdict] Kein Urteil in Runde { $round }
    [answered] Über dem Grenzwert in Runde { $round }, und der Hersteller hat geantwortet
    [tested] Zuletzt untersucht am { $day }
    [undated] Schon untersucht, an einem unbekannten Tag
   *[asked_for] Eigens gewünscht; lag über dem Grenzwert
}{ $competitive ->
    [yes] ; braucht ein kompetitives Verfahren
   *[no] { "" }
}

# What a package is expected to cost: the median of what was paid for the same kind of food, or for any; or the settings' figure.
plan_price = { $median } ({ $of ->
    [settings] programme.toml
    [everything] alle Lebensmittel, { $paid }-mal bezahlt{ $range ->
        [yes] , { $lowest } bis { $highest }
       *[no] { "" }
    }
   *[category] { $paid }-mal bezahlt{ $range ->
        [yes] , { $lowest } bis { $highest }
       *[no] { "" }
    }
})

plan_later = Als Nächstes, über die Mittel hinaus
plan_write = Schreiben, nicht untersuchen
plan_write_lead = Was eine Untersuchung auch fände: Diese Kennzeichnungen nennen bereits, was die Regel bei dieser Angabe nicht zulässt. Schreiben Sie dem Hersteller.
plan_label_names = Das Zutatenverzeichnis nennt { $terms }.
plan_quoted = „{ $printed }“
plan_not_now = Jetzt nicht

# Why a product is not to be bought now.
plan_why_not = { $why ->
    [under_way] Packungen der Runde { $round } sind gekauft oder im Labor.
    [not_answered] Es lag in Runde { $round } über dem Grenzwert, und keine Antwort des Herstellers ist verzeichnet.
    [no_assay] Es ist fermentiert oder hydrolysiert: Nach dieser Regel entscheidet dafür kein Test. Fragen Sie den Hersteller nach seinen Aufzeichnungen über die Zutaten.
    [processing] Das Register hat für die Verarbeitung ein Wort, das keines der bekannten ist: Berichtigen Sie es zuerst.
    [claim] Die Angabe im Register ist keine, die die Regel kennt; so gibt es keinen Grenzwert für ein Ergebnis.
    [open] Das Register lässt etwas offen, ohne das es kein Urteil gäbe: `galleyproof check` sagt, was.
   *[in_round] Es hat in dieser Runde schon Packungen.
}

plan_costs_head = Was es kostet, und was mehr brächte

# Heads of the comparison: packages of a product, extractions of a package.
plan_each_product = Die Runde, mit je Produkt
plan_design = { $packages ->
    [one] 1 Packung
   *[other] { $packages } Packungen
} × { $extractions ->
    [one] 1 Extraktion
   *[other] { $extractions } Extraktionen
}

# Rows of the comparison.
plan_row_packages = Packungen
plan_row_lab = Labor
plan_row_shipping = Versand
plan_row_total = Alles, was bekannt ist
plan_row_budget = Produkte, für die die Mittel reichen
plan_of = { $part } von { $whole }
plan_row_tenth = Findet eine darüber, wenn es 10 % aller Packungen sind
plan_row_double = Sagt „darüber“ beim Doppelten des Grenzwerts
plan_row_half = Sagt „darunter“ bei der Hälfte des Grenzwerts
plan_row_error = Standardfehler des Mittelwerts eines Produkts

# Where the next money is best spent. "package_scatter": since packages scatter more than extractions.
plan_next = { $best ->
    [package] Weiteres Geld ist am besten für eine weitere Packung ausgegeben.
    [package_scatter] Weiteres Geld ist am besten für eine weitere Packung ausgegeben: Die Packungen eines Produkts unterscheiden sich mehr als die Extraktionen einer Packung.
   *[extraction] Weiteres Geld ist am besten für eine weitere Extraktion jeder Packung ausgegeben.
}
plan_next_package = Der Standardfehler des Mittelwerts eines Produkts ist jetzt { $now }; eine weitere Packung jedes Produkts senkt ihn auf { $share }{ $priced ->
    [yes] , für { $cost } je Produkt.
   *[no] .
}
plan_next_extraction = Eine weitere Extraktion jeder Packung senkt ihn auf { $share }{ $priced ->
    [yes] , für { $cost } je Produkt.
   *[no] .
}
plan_next_basis = { $priced ->
    [yes] Verglichen wird für dasselbe Geld.
   *[no] Verglichen werden die Schritte selbst, ohne Preise.
}

## Its charts

# The first chart: head, axes, and what it shows for who cannot see it.
plan_finding = Die Aussicht, mindestens eine Packung über dem Grenzwert zu finden, wenn es dieser Anteil aller Packungen ist
plan_finding_up = Aussicht, eine zu finden
plan_finding_along = Anteil aller Packungen, der über dem Grenzwert liegt
plan_finding_alt = Kurven der Aussicht, dass unter zufällig gezogenen Packungen mindestens eine über dem Grenzwert ist, gegen den Anteil aller Packungen, der es ist. Mit { $packages ->
    [one] 1 Packung
   *[other] { $packages } Packungen
}: { $tenth }, wenn es 10 % sind, { $fifth } bei 20 %, { $half } bei der Hälfte.

# The second chart.
plan_verdicts = Die Aussicht auf jedes Urteil, wenn dies der wahre Mittelwert des Produkts ist
plan_verdicts_up = Aussicht auf das Urteil
plan_verdicts_along = wahrer Mittelwert des Produkts, { $unit }
plan_chart_limit = { $rule ->
    [detection] Nachweisgrenze { $limit }
   *[other] Grenzwert { $limit }
}
plan_over = { $rule ->
    [detection] Gluten nachgewiesen
    [passes] über dem Grenzwert
   *[fails] nicht unter dem Grenzwert
}
plan_within = { $rule ->
    [detection] kein Gluten nachgewiesen
    [passes] nicht über dem Grenzwert
   *[fails] unter dem Grenzwert
}
plan_undecided = kein Urteil
plan_verdicts_alt = Kurven der Aussicht auf jedes Urteil gegen den wahren Mittelwert eines Produkts, mit dem Grenzwert von { $limit } in der Mitte. Bei der Hälfte des Grenzwerts lautet das Urteil in { $within } aller Fälle „darunter“, beim Doppelten in { $over } „darüber“; ohne Urteil bleiben { $undecided_half } und { $undecided_double }.

## Other designs, and what statements need

plan_designs = Andere Versuchspläne
plan_designs_packages = Packungen eines Produkts
plan_grid_over = { $rule ->
    [detection] Gluten nachgewiesen bei wahrem Mittelwert { $mean }
    [passes] Über dem Grenzwert gefunden bei wahrem Mittelwert { $mean }
   *[fails] Nicht unter dem Grenzwert gefunden bei wahrem Mittelwert { $mean }
}
plan_grid_within = { $rule ->
    [detection] Kein Gluten nachgewiesen bei wahrem Mittelwert { $mean }
    [passes] Nicht über dem Grenzwert gefunden bei wahrem Mittelwert { $mean }
   *[fails] Unter dem Grenzwert gefunden bei wahrem Mittelwert { $mean }
}
plan_extractions = { $extractions ->
    [one] 1 Extraktion
   *[other] { $extractions } Extraktionen
}

plan_statements = Packungen, die eine Aussage braucht
plan_statements_lead = So viele Packungen, zufällig gezogen und keine über dem Grenzwert, tragen die Aussage (Vertrauensniveau 95 %).
plan_statement_head = Aussage über ein Produkt
plan_statement_packages = Packungen
plan_statement_cost = Kosten
plan_statement = Weniger als { $share } aller Packungen sind darüber

## What the figures rest on

plan_assumptions = Worauf diese Zahlen beruhen

# "no": a stand-in, until the programme has results enough of its own: the collaborative study of OMA 2018.15.
plan_between = { $own ->
    [yes] Relative Standardabweichung zwischen den Packungen eines Produkts: { $share }, aus eigenen Ergebnissen des Programms ({ $df ->
        [one] 1 Freiheitsgrad
       *[other] { $df } Freiheitsgrade
    }).
   *[no] Relative Standardabweichung zwischen den Packungen eines Produkts: { $share }, ein Ersatzwert (natürlich verunreinigtes Hafermehl in einem Ringversuch von 19 Laboren, 41 bis 43 %), da das Programm zu wenige eigene Zahlen hat.
}
plan_scatter_within = { $own ->
    [yes] Relative Standardabweichung zwischen den Extraktionen einer Packung: { $share }, aus eigenen Ergebnissen des Programms ({ $df ->
        [one] 1 Freiheitsgrad
       *[other] { $df } Freiheitsgrade
    }).
   *[no] Relative Standardabweichung zwischen den Extraktionen einer Packung: { $share }, ein Ersatzwert (relative_repeatability in programme.toml), da das Programm zu wenige eigene Zahlen hat.
}

plan_model = Packungen streuen um den wahren Mittelwert eines Produkts und Extraktionen um den Gehalt ihrer Packung, lognormal und unabhängig voneinander. Die Regel der Doppelbestimmung, die Bestimmungsgrenze von { $lloq } und der Grenzwert von { $limit } gelten, wie sie sind; eine Angabe mit eigenem Grenzwert ist nicht gezeichnet.
plan_random = Die Packungen gelten als zufällige Auswahl aller Packungen. Packungen aus einem Regal oder einer Charge sagen weniger aus.
plan_bias = Die eigene systematische Abweichung eines Labors steckt nicht in diesen Zahlen: Keine Anzahl von Packungen oder Extraktionen zeigt sie.
plan_average = Ein Plan sagt, was eine Runde bei vielen Produkten im Mittel zeigen kann, und nichts über ein einzelnes. Wie ein Lebensmittel heißen darf, entscheidet die Behörde.

plan_blinds_head = Packungen mit bekanntem Gehalt

# What blinds are and how they are used. File names are those of the program.
plan_blinds = { $blinds ->
    [one] Eine Packung mit bekanntem Gehalt geht unter einem Code wie die anderen mit: erwiesenermaßen ohne Gluten oder mit einer bekannten Menge versetzt.
   *[other] Die Runde hat { $blinds } Packungen mit bekanntem Gehalt, die unter Codes wie die anderen mitgehen: die einen erwiesenermaßen ohne Gluten, die anderen mit einer bekannten Menge versetzt.
} Der Schlüssel steht in blinds.csv: Bewahren Sie ihn auf, wo das Labor ihn nicht sehen kann. In registers/blinds.csv (dorthin bringt ihn plan --blinds --enter) setzt er ihre Codes auch auf das Formular, und was das Labor darin findet, wird damit verglichen und nur Ihnen gesagt: Kein Blatt, keine Zählung und kein Urteil enthält sie.

## The buying list

plan_buying = Einkaufsliste
plan_buying_lead = Eine Zeile je Packung. Kleben Sie das Etikett sofort auf, fotografieren Sie Vorderseite, Zutaten, Angabe und Charge, und heben Sie den Kassenzettel auf. Lassen Sie die Packungen geschlossen.

# Below a product's name, where more than one package is bought.
plan_lots = Aus verschiedenen Chargen und Geschäften, wo sie zu haben sind; sonst vermerken.

# "yes": more than those that are named.
plan_lots_before = { $more ->
    [yes] Schon untersucht, unter anderen: { $lots }.
   *[no] Schon untersucht: { $lots }.
}

# Heads of the list.
plan_code = Code
plan_shop = Geschäft
plan_lot = Charge
plan_best_by = Haltbar bis
plan_bought_on = Gekauft am
plan_paid = Preis
plan_photographs = Fotos

## The labels

labels_title = Etiketten für Packungen, Runde { $round }

# What the file is, for catalogues.
labels_about = { $labels ->
    [one] 1 Etikett
   *[other] { $labels } Etiketten
}

# On each label, after the programme's short name.
labels_keep_closed = nicht öffnen

# For who cannot see it.
labels_square = QR-Code von { $code }

# In place of labels.
labels_none = Keine Packung ist geplant.

## The contact sheet

contact_title = Die Packungen und ihre Fotos

# What the file is, for catalogues.
contact_about = { $packages ->
    [one] 1 Packung
   *[other] { $packages } Packungen
}

contact_foot = Vertraulich: nur für die Unterlagen des Programms.

# Before the number of a page, and before the number of all pages.
contact_page = Seite
contact_page_of = von

# What is told of a package, before a colon.
contact_label = { $of ->
    [lot] Charge
    [best_by] Haltbar bis
    [bought_on] Gekauft am
    [shop] Geschäft
   *[custody] Verbleib
}
contact_unknown = nicht verzeichnet

# For who cannot see it.
contact_photograph = Foto der Packung { $package }: { $name }

# A file that is not drawn.
contact_not_drawn = { $why ->
    [unread] { $path }: nicht zu lesen
    [broken] { $path }: beschädigt und nicht gezeichnet
    [kind] { $path }: dem Inhalt nach weder JPEG noch PNG und nicht gezeichnet
    [large] { $path }: größer als 64 MB und nicht gezeichnet
   *[pixels] { $path }: mehr als 100 Millionen Bildpunkte und nicht gezeichnet
}
contact_none = Kein Foto ist verzeichnet.

## The diary

# Entries of diary.ics, each with what it rests on.
diary_reply = Antwort fällig: { $name } ({ $id })
diary_told = Der Hersteller wurde am { $day } unterrichtet.
diary_publish = Darf veröffentlicht werden: { $name } ({ $id })
diary_report = Prüfbericht fällig: Packungen, gesandt am { $day }
diary_not_reported = Noch nicht berichtet: { $codes }.
diary_retest = Wieder untersuchen: { $name } ({ $id })
diary_last = Zuletzt untersucht am { $day }.
