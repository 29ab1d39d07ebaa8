# The newsletter, on paper, on a screen and as text.

## What is new

# The newsletter's name at the head of its paper.
newsletter_name = Rundbrief { $short_name }

# The title in the PDF's data.
newsletter_title = { $programme }, Rundbrief. { $headline }

# What it is, in the PDF's data.
newsletter_of = Rundbrief von { $programme }.

# Words for the catalogue in the PDF's data, divided by semicolons.
newsletter_keywords = Gluten; Untersuchungsergebnisse; Rundbrief

# The subject of the newsletter as a mail; a proof says that it is one.
newsletter_subject = { $proof ->
    [yes] Probedruck, nicht zur Veröffentlichung: Rundbrief von { $programme }. { $headline }
   *[no] Rundbrief von { $programme }. { $headline }
}

# In place of the readers' addresses in that mail. ASCII, since some mail programs cannot read it otherwise.
newsletter_no_readers = Hier die Adressen der Leser eintragen

# The first line of the plain text.
newsletter_first_line = { $programme }: Rundbrief

# Taken in by the headline: how many of the new products are within the limit, over it, without a verdict.
newsletter_part = { $n ->
    [one] { $verdict ->
        [within] { $rule ->
            [passes] eines nicht über dem Grenzwert
            [detection] eines negativ auf Gluten
           *[fails] eines unter dem Grenzwert
        }
        [over] { $rule ->
            [passes] eines über dem Grenzwert
            [detection] eines positiv auf Gluten
           *[fails] eines nicht unter dem Grenzwert
        }
       *[none] eines ohne Urteil
    }
   *[other] { $verdict ->
        [within] { $rule ->
            [passes] { $number } nicht über dem Grenzwert
            [detection] { $number } negativ auf Gluten
           *[fails] { $number } unter dem Grenzwert
        }
        [over] { $rule ->
            [passes] { $number } über dem Grenzwert
            [detection] { $number } positiv auf Gluten
           *[fails] { $number } nicht unter dem Grenzwert
        }
       *[none] { $number } ohne Urteil
    }
}

# The headline: what is new. $parts is a list of the parts before.
newsletter_new = { $n ->
    [one] Ein Produkt ist neu: { $parts }.
   *[other] Neu sind { $n } Produkte: { $parts }.
}

# The headline where nothing is new: since the last issue, or at all.
newsletter_nothing = { $results ->
    [yes] Seit der letzten Ausgabe ist nichts neu.
   *[no] Nichts ist neu: Noch hat kein Produkt ein Ergebnis.
}

# After the headline: revisions of published sheets, which are no new products.
newsletter_amended_count = { $n ->
    [one] Ein Blatt ist geändert.
   *[other] { $number } Blätter sind geändert.
}

## How it was done

# How the programme tests: settings.
newsletter_how = { $packages ->
    [one] Wir kaufen von jedem Produkt eine Packung und lassen sie { $times ->
        [one] einmal
        [2] zweimal
       *[other] in { $spelt_times } Extraktionen
    } untersuchen.
   *[other] Wir kaufen von jedem Produkt { $spelt_packages } Packungen und lassen jede { $times ->
        [one] einmal
        [2] zweimal
       *[other] in { $spelt_times } Extraktionen
    } untersuchen.
}

# The limit. "mixed": some product's claim has another limit. "detection": Food Standards Code 1.2.7.
newsletter_limit = { $rule ->
    [detection] Die Regel verlangt, dass kein Gluten nachweisbar ist; das Verfahren weist es ab { $limit } nach.
   *[fails] { $mixed ->
        [yes] Der Grenzwert hängt von der Angabe ab; für „glutenfrei“ beträgt er { $limit }.
       *[no] Der Grenzwert für die Angabe beträgt { $limit }.
    }
}

# What too little to measure means; the amount is known where all assays measure from the same on.
newsletter_measured = { $known ->
    [yes] Zu wenig, um es zu messen, heißt: unter { $amount }. Es heißt nicht null.
   *[no] Zu wenig, um es zu messen, heißt nicht null.
}

# What so few packages can say: the one-sided exact bound for 0 of n, 1 less the n-th root of 0.05.
newsletter_snapshot = { $packages ->
    [one] Dies sind Momentaufnahmen der Packungen, die wir gekauft haben. Auch wenn unsere eine Packung { $rule ->
        [passes] nicht über dem Grenzwert liegt
        [detection] negativ auf Gluten ist
       *[fails] unter dem Grenzwert liegt
    }, könnte das für bis zu { $share } aller Packungen eines Produkts dennoch nicht gelten (Vertrauensniveau 95 %, wäre unsere zufällig ausgewählt).
   *[other] Dies sind Momentaufnahmen der Packungen, die wir gekauft haben. Auch wenn 0 von { $packages } Packungen { $rule ->
        [passes] über dem Grenzwert liegen
        [detection] positiv auf Gluten sind
       *[fails] nicht unter dem Grenzwert liegen
    }, könnte es bei bis zu { $share } aller Packungen eines Produkts so sein (Vertrauensniveau 95 %, wären unsere zufällig ausgewählt).
}

## Charts and lists

# What the marks of the chart mean.
newsletter_marks = { $rule ->
    [passes] Gefülltes Zeichen: Packung über dem Grenzwert. Offenes Zeichen: nicht darüber. { $known ->
        [yes] Pfeil: unter { $amount } oder unter der Zahl an seiner Spitze; nach rechts: darüber. Gestrichelt oder in Worten: unentschieden.
       *[no] Pfeil: zu wenig, um es zu messen, oder unter der Zahl an seiner Spitze; nach rechts: darüber. Gestrichelt oder in Worten: unentschieden.
    }
    [detection] Gefülltes Zeichen: Packung positiv auf Gluten. Offenes Zeichen: negativ auf Gluten. { $known ->
        [yes] Pfeil: unter { $amount } oder unter der Zahl an seiner Spitze; nach rechts: darüber. Gestrichelt oder in Worten: unentschieden.
       *[no] Pfeil: zu wenig, um es zu messen, oder unter der Zahl an seiner Spitze; nach rechts: darüber. Gestrichelt oder in Worten: unentschieden.
    }
   *[fails] Gefülltes Zeichen: Packung nicht unter dem Grenzwert. Offenes Zeichen: unter dem Grenzwert. { $known ->
        [yes] Pfeil: unter { $amount } oder unter der Zahl an seiner Spitze; nach rechts: darüber. Gestrichelt oder in Worten: unentschieden.
       *[no] Pfeil: zu wenig, um es zu messen, oder unter der Zahl an seiner Spitze; nach rechts: darüber. Gestrichelt oder in Worten: unentschieden.
    }
}

# After it, where the list does not name every new product.
newsletter_listed = { $rule ->
    [passes] Die Liste nennt die Produkte über dem Grenzwert, die ohne Urteil und die, deren Etikett eine Glutenquelle nennt; alle stehen im Register der Programmübersicht.
    [detection] Die Liste nennt die Produkte, die positiv auf Gluten sind, die ohne Urteil und die, deren Etikett eine Glutenquelle nennt; alle stehen im Register der Programmübersicht.
   *[fails] Die Liste nennt die Produkte, die nicht unter dem Grenzwert liegen, die ohne Urteil und die, deren Etikett eine Glutenquelle nennt; alle stehen im Register der Programmübersicht.
}

# After that, in a mail that cannot list all of these.
newsletter_first_of = Diese Liste endet nach den ersten { $n } davon; alle stehen im gedruckten Rundbrief.

# In a mail, before the key to the inks of the figures.
newsletter_each_package = Je Packung ein Wert:

# A meaning of the key, printed in the ink that it explains.
newsletter_figure = { $state ->
    [over] { $rule ->
        [passes] über dem Grenzwert
        [detection] Gluten nachgewiesen
       *[fails] nicht unter dem Grenzwert
    }
    [within] { $rule ->
        [passes] nicht über dem Grenzwert
        [detection] kein Gluten nachgewiesen
       *[fails] unter dem Grenzwert
    }
   *[none] unentschieden
}

# In a mail, below a bar: how many are in a band. $of has the band's words, as the chart has them.
newsletter_bar = { $band ->
    [undecided] { $n } unentschieden
   *[other] { $n } { $of }
}

# Below a product in a list: a later round of the same food.
newsletter_again = In Runde { $round } erneut untersucht: { $verdict ->
    [over] { $rule ->
        [passes] über { $limit }
        [detection] Gluten nachgewiesen
       *[fails] nicht unter { $limit }
    }
    [within] { $rule ->
        [passes] nicht über { $limit }
        [detection] kein Gluten nachgewiesen
       *[fails] unter { $limit }
    }
   *[none] kein Urteil
} (Blatt { $number }).

# What the greys of the bars mean. $measured is the middle band, as the chart has it: "5 to below 20 ppm".
newsletter_bands = Weiß: { $known ->
    [yes] unter { $amount }
   *[no] zu wenig, um es zu messen
}. Grau: { $measured }. Schwarz: { $mixed ->
    [yes] nicht innerhalb des Grenzwerts der Angabe
   *[no] { $rule ->
        [passes] über { $limit }
        [detection] Gluten nachgewiesen
       *[fails] nicht unter { $limit }
    }
}. Gestrichelt: unentschieden.

# The number of a sheet on a line of its own.
newsletter_sheet = Blatt { $number }

# The same in brackets, or below a product's name.
newsletter_sheet_within = Blatt { $number }

# The verdict in a list, with the limit.
list_verdict_of = { $verdict ->
    [over] { $rule ->
        [passes] Über { $limit }
        [detection] Gluten nachgewiesen
       *[fails] Nicht unter { $limit }
    }
    [within] { $rule ->
        [passes] Nicht über { $limit }
        [detection] Kein Gluten nachgewiesen (Nachweisgrenze { $limit })
       *[fails] Unter { $limit }
    }
   *[none] Kein Urteil
}

# What parts results that stand in a row: no comma where figures have one.
list_between = { "; " }

# In place of the result of a package whose extractions disagree.
list_disagree = uneinig

# A product's name, where it is not its first round.
list_round = { $product } (Runde { $round })

## Makers, labels, amended sheets, totals

# What a maker says, as it was written, and when.
newsletter_reply = „{ $statement }“ ({ $day })

# Whose makers, who were told, have said nothing so far; of more than a few it is only counted.
newsletter_silent = { $named ->
    [yes] { $n ->
        [one] Vom Hersteller von { $products } liegt keine Stellungnahme vor. Wir drucken jede, die kommt.
       *[other] Von den Herstellern von { $products } liegt keine Stellungnahme vor. Wir drucken jede, die kommt.
    }
   *[no] Von den Herstellern von { $n } Produkten liegt keine Stellungnahme vor. Wir drucken jede, die kommt.
}

# Whose makers are still to be told.
newsletter_to_tell = { $named ->
    [yes] { $n ->
        [one] Dem Hersteller von { $products } ist es noch mitzuteilen.
       *[other] Den Herstellern von { $products } ist es noch mitzuteilen.
    }
   *[no] Den Herstellern von { $n } Produkten ist es noch mitzuteilen.
}

# What labels say, their words and products in lines below. Regulation (EU) No 828/2014 forbids no ingredient: "not_forbidden".
newsletter_labels = { $n ->
    [one] { $finding ->
        [gluten_source] Ein Etikett nennt eine Glutenquelle, die die Regel nicht zulässt:
        [not_forbidden] Ein Etikett nennt eine Glutenquelle, die die Regel für diese Angabe nicht verbietet:
        [unverified_oats] Ein Etikett nennt Hafer und sagt nicht, wie er getrennt gehalten wird:
       *[needs_review] Ein Etikett nennt ein Wort unklarer Herkunft:
    }
   *[other] { $finding ->
        [gluten_source] { $number } Etiketten nennen eine Glutenquelle, die die Regel nicht zulässt:
        [not_forbidden] { $number } Etiketten nennen eine Glutenquelle, die die Regel für diese Angabe nicht verbietet:
        [unverified_oats] { $number } Etiketten nennen Hafer und sagen nicht, wie er getrennt gehalten wird:
       *[needs_review] { $number } Etiketten nennen ein Wort unklarer Herkunft:
    }
}

# A product that has a word on its label, with its brand.
newsletter_label_product = { $brand }, { $product }

# A word of labels, in quotes, with the products that have it; of many only how many.
newsletter_label_word = { $named ->
    [yes] { $word }: { $products }
   *[no] { $word }: { $n } Produkte
}

# The last of these lines, where there are more words than a list can hold.
newsletter_label_words_more = Die übrigen Wörter stehen im Register der Programmübersicht.

# After these.
newsletter_labels_ask = Solche Wörter sind ein Grund zu fragen, kein Untersuchungsergebnis.

# Where no label says anything.
newsletter_labels_none = Kein Zutatenverzeichnis, das wir lesen konnten, nennt eine Glutenquelle.

# A published sheet that was replaced; what was changed and why follows as it was written down.
newsletter_amended = { $product }, Blatt { $number }: Fassung { $revision } ersetzt Fassung { $replaced } vom { $day }.

# Taken in by the sentence on the programme so far.
newsletter_totals_of = { $rule ->
    [passes] { $within } nicht über dem Grenzwert, { $over } darüber, { $none } ohne Urteil
    [detection] { $within } negativ auf Gluten, { $over } positiv auf Gluten, { $none } ohne Urteil
   *[fails] { $within } unter dem Grenzwert, { $over } nicht darunter, { $none } ohne Urteil
}

# The programme so far. "again": a food was tested in more than one round, and counts again.
newsletter_totals = { $products ->
    [0] Bisher hat kein Produkt ein Ergebnis.
    [one] Bisher 1 Produkt: { newsletter_totals_of }.
   *[other] { $again ->
        [yes] Bisher { $products } Ergebnisse von { $foods } Lebensmitteln: { newsletter_totals_of }.
       *[no] Bisher { $products } Produkte: { newsletter_totals_of }.
    }
}

# Its packages.
newsletter_packages_so_far = { $packages ->
    [one] Insgesamt eine Packung, davon { $unmeasured } mit zu wenig Gluten, um es zu messen.
   *[other] Insgesamt { $packages } Packungen, davon { $unmeasured } mit zu wenig Gluten, um es zu messen.
}

# What is not counted, since the lab has reported nothing of it.
newsletter_with_lab = { $n ->
    [one] Ein weiteres Produkt ist im Labor und hier nirgends mitgezählt.
   *[other] { $number } weitere Produkte sind im Labor und hier nirgends mitgezählt.
}

## Headings and fixed words

# Heading: corrections of what was published.
newsletter_corrections = Berichtigungen

# Heading of the plain text's list; the unit follows in brackets.
newsletter_new_results = Neue Ergebnisse

# Heading.
newsletter_makers = Was die Hersteller sagen

# Heading.
newsletter_on_labels = Auf den Etiketten

# Heading.
newsletter_amended_sheets = Geänderte Blätter

# Heading.
newsletter_so_far = Das Programm bisher

# Before the caution.
newsletter_note = Bitte beachten.

# The address follows.
newsletter_mistake = Fehler gefunden?

# Head of a column.
newsletter_head_sheet = Blatt

# Head of a column.
newsletter_head_product = Produkt

# Head of a column.
newsletter_head_brand_and_product = Marke und Produkt

# Head of a column; the unit follows after a comma. In plain text a colon and the results follow.
newsletter_head_packages = Packungen

# Head of a column; the unit follows after a comma.
newsletter_head_results = Ergebnis je Packung

# Head of a column.
newsletter_head_verdict = Urteil

# Head of a column: what the label says.
newsletter_head_label = Etikett

# Head of a column: the verdict, and below it what the label says.
newsletter_head_verdict_and_label = Urteil und Etikett

# What stands on every page that is not for publication.
newsletter_proof = Probedruck, nicht zur Veröffentlichung
