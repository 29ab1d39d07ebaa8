# What a results sheet says: verdict, ruler, packages, what the result says and does not say.

## The head, the foot and the headings

# In the head, before the number of the sheet and its revision.
sheet_kind = Ergebnisblatt

# In the foot, before the address to which mistakes are reported.
sheet_mistake = Fehler gefunden?

# The title of the PDF.
sheet_title = { $branded ->
    [yes] Prüfergebnisse: { $product }, { $brand }. Blatt { $number }
   *[no] Prüfergebnisse: { $product }. Blatt { $number }
}

# Under the name of the product. $claim is as on the package.
claim_sold = { $known ->
    [yes] Angabe auf der Packung: „{ $claim }“.
   *[no] Was die Packung angibt, ist nicht verzeichnet.
}

# Likewise. A first round is not counted. $when is a day or two.
claim_bought = { $later ->
    [yes] { $dated ->
        [day] { $packages ->
            [one] Runde { $round }: 1 Packung, gekauft am { $when }.
           *[other] Runde { $round }: { $packages } Packungen, gekauft am { $when }.
        }
        [days] { $packages ->
            [one] Runde { $round }: 1 Packung, gekauft vom { $when }.
           *[other] Runde { $round }: { $packages } Packungen, gekauft vom { $when }.
        }
       *[no] { $packages ->
            [0] Runde { $round }: Es ist keine Packung verzeichnet.
            [one] Runde { $round }: 1 Packung gekauft.
           *[other] Runde { $round }: { $packages } Packungen gekauft.
        }
    }
   *[no] { $dated ->
        [day] { $packages ->
            [one] Gekauft am { $when }: 1 Packung.
           *[other] Gekauft am { $when }: { $packages } Packungen.
        }
        [days] { $packages ->
            [one] Gekauft vom { $when }: 1 Packung.
           *[other] Gekauft vom { $when }: { $packages } Packungen.
        }
       *[no] { $packages ->
            [0] Es ist keine Packung verzeichnet.
            [one] Gekauft: 1 Packung.
           *[other] Gekauft: { $packages } Packungen.
        }
    }
}

# Likewise.
claim_barcode = Strichcode { $barcode }.

# Likewise; the certifier's name as on the package.
claim_certifier = Zertifizierungsstelle laut Packung: { $certifier }.

# Likewise, where the name has emoji, which the fonts lack.
claim_pictures = Die Bildzeichen in seinem Namen sind hier weggelassen.

# Heading of the ruler and the table.
results_heading = Die Ergebnisse, Packung für Packung

# Heading of what so few packages say.
says_heading = Was dieses Ergebnis sagt

# Heading beside it.
says_not_heading = Was es nicht sagt

# Heading of the label review. It is a reading of words by the programme, an opinion in the sense of ISO/IEC 17025:2017,
# 7.8.7, and no test.
label_heading = Prüfung der Kennzeichnung

# Heading of what passed between programme and maker.
reply_heading = Die Antwort des Herstellers

# Heading of how was tested and decided.
method_heading = Wie geprüft und entschieden wurde

# Heading of the lab files.
sources_heading = Woher die Zahlen stammen

# Heading of the caution.
note_heading = Bitte beachten

# Heading of the list of revisions.
revisions_heading = Fassungen

# Before the list of ingredients as it stands on the package.
label_ingredients = Zutaten wie gedruckt:

# Before "may contain" and the like, quoted from the package.
label_precautionary = Vorsorgliche Hinweise:

# After it, where the register has none.
label_none_on_record = keine verzeichnet.

## The verdict

# In the block, where a package is over the limit. See limit_over for the three rules.
verdict_over = { $rule ->
    [passes] Über { $limit }
    [detection] Gluten nachgewiesen
   *[fails] Bei oder über { $limit }
}

# In the block, where every package is within it.
verdict_within = { $rule ->
    [passes] Höchstens { $limit }
    [detection] Kein Gluten nachgewiesen (Nachweisgrenze { $limit })
   *[fails] Unter { $limit }
}

# In the block, where the results do not say.
verdict_none = Kein Urteil

# Under the verdict. "guarded": a package counts as over only where it still is with the expanded uncertainty taken off
# (ILAC-G8:09/2019), so that others may have figures over the limit, too.
count_over = { $packages ->
    [one] { $rule ->
        [detection] In der einen Packung wurde Gluten nachgewiesen
       *[other] Die eine Packung liegt { over_the_limit }
    }{ $guarded ->
        [yes] , auch nach Abzug der Messunsicherheit
       *[no] { "" }
    }.
   *[other] { $rule ->
        [detection] In { $over } von { $packages } Packungen wurde Gluten nachgewiesen
       *[other] { $over ->
            [one] Von { $packages } Packungen liegt 1 { over_the_limit }
           *[other] Von { $packages } Packungen liegen { $over } { over_the_limit }
        }
    }{ $guarded ->
        [yes] , auch nach Abzug der Messunsicherheit
       *[no] { "" }
    }.
}

# Under the verdict.
count_within = { $packages ->
    [one] { $rule ->
        [detection] In der einen Packung wurde kein Gluten nachgewiesen
       *[other] Die eine Packung liegt { within_the_limit }
    }{ $guarded ->
        [yes] , auch mit der Messunsicherheit als Zuschlag
       *[no] { "" }
    }.
    [2] { $rule ->
        [detection] In beiden Packungen wurde kein Gluten nachgewiesen
       *[other] Beide Packungen liegen { within_the_limit }
    }{ $guarded ->
        [yes] , auch mit der Messunsicherheit als Zuschlag
       *[no] { "" }
    }.
   *[other] { $rule ->
        [detection] In keiner der { $packages } Packungen wurde Gluten nachgewiesen
       *[other] Alle { $packages } Packungen liegen { within_the_limit }
    }{ $guarded ->
        [yes] , auch mit der Messunsicherheit als Zuschlag
       *[no] { "" }
    }.
}

# Under "no verdict".
count_unresolved = { $packages ->
    [one] Die eine Packung hat kein Ergebnis, das entscheidet.
   *[other] { $undecided ->
        [one] Von { $packages } Packungen hat 1 kein Ergebnis, das entscheidet.
       *[other] Von { $packages } Packungen haben { $undecided } kein Ergebnis, das entscheidet.
    }
}

# Likewise, under guarded decisions.
count_close = { $packages ->
    [one] Die eine Packung liegt für eine Entscheidung zu nahe am Grenzwert.
   *[other] { $undecided ->
        [one] Von { $packages } Packungen liegt 1 für eine Entscheidung zu nahe am Grenzwert.
       *[other] Von { $packages } Packungen liegen { $undecided } für eine Entscheidung zu nahe am Grenzwert.
    }
}

# Likewise, where fewer packages were tested than the programme asks for.
count_short = { $tested ->
    [0] Keine Packung hat ein Ergebnis.
    [one] Von { $asked } Packungen hat 1 ein Ergebnis.
   *[other] Von { $asked } Packungen haben { $tested } ein Ergebnis.
}

# Likewise, where the assay cannot see all gluten in a food of this kind.
count_unfit = Bei einem Lebensmittel dieser Art kann das Verfahren nicht entscheiden.

# Likewise, where claim, processing or a row of the registers is not known.
count_open = Etwas muss geklärt sein, bevor entschieden wird.

# Beside the verdict: the one package over the limit. "disagree": its extractions differ too much for one figure.
over_one = { $kind ->
    [range] In einer Packung wurden { $figure } gemessen.
    [above] In einer Packung wurden mehr als { $figure } gemessen.
    [disagree] { $rule ->
        [detection] Die Extraktionen einer Packung ({ $package }) liegen zu weit auseinander, um einen einzigen Wert zu ergeben; Gluten wurde darin aber nachgewiesen.
       *[other] Die Extraktionen einer Packung ({ $package }) liegen zu weit auseinander, um einen einzigen Wert zu ergeben; die Packung liegt aber { over_the_limit }.
    }
   *[mean] In einer Packung wurden { $figure } gemessen.
}

# Likewise, several packages; $packages is their number in words.
over_several = { $highest ->
    [known] { $rule ->
        [detection] { $packages } Packungen waren positiv auf Gluten; das höchste Ergebnis war { $figure }.
       *[other] { $packages } Packungen liegen { over_the_limit }; das höchste Ergebnis war { $figure }.
    }
   *[unknown] { $rule ->
        [detection] { $packages } Packungen waren positiv auf Gluten.
       *[other] { $packages } Packungen liegen { over_the_limit }.
    }
}

# After it: no package makes good for another, since the claim stands on each.
over_enough = { $rule ->
    [detection] Eine Packung mit nachgewiesenem Gluten genügt für dieses Urteil.
   *[other] Eine Packung { over_the_limit } von { $limit } genügt für dieses Urteil.
}

# After it, under guarded decisions: packages that are neither over nor within.
over_too_close = { $by ->
    [count] Für eine Entscheidung zu nahe am Grenzwert: { $packages } Packungen.
   *[name] { $packages ->
        [one] Für eine Entscheidung zu nahe am Grenzwert: Packung { $named }.
       *[other] Für eine Entscheidung zu nahe am Grenzwert: die Packungen { $named }.
    }
}

# After it: packages whose extractions disagree, are missing and the like.
over_unresolved = { $by ->
    [count] Ohne ein Ergebnis, das entscheidet: { $packages } Packungen.
   *[name] { $packages ->
        [one] Ohne ein Ergebnis, das entscheidet: Packung { $named }.
       *[other] Ohne ein Ergebnis, das entscheidet: die Packungen { $named }.
    }
}

# Beside the verdict, where no package could be measured.
none_measured = { $packages ->
    [one] { $rule ->
        [detection] In der Packung war zu wenig Gluten, um es zu messen: Das Ergebnis lag unter { $below }. Das Verfahren weist Gluten ab { $limit } nach.
       *[other] In der Packung war zu wenig Gluten, um es zu messen: Das Ergebnis lag unter { $below }. Für diese Angabe gilt ein Grenzwert von { $limit }.
    }
   *[other] { $rule ->
        [detection] In keiner Packung war genug Gluten, um es zu messen: Jedes Ergebnis lag unter { $below }. Das Verfahren weist Gluten ab { $limit } nach.
       *[other] In keiner Packung war genug Gluten, um es zu messen: Jedes Ergebnis lag unter { $below }. Für diese Angabe gilt ein Grenzwert von { $limit }.
    }
}

# Beside the verdict, where gluten was measured in some or all packages. It speaks of results: a single extraction of them may
# have measured more.
measured_within = { $part ->
    [the_one] { $rule ->
            [detection] Gluten wurde in der einen Packung gemessen, mit einem Ergebnis, das kein Nachweis ist.
           *[other] Gluten wurde in der einen Packung gemessen, mit einem Ergebnis, das { within_the_limit } von { $limit } liegt.
        }
    [all] { $packages ->
        [2] { $rule ->
            [detection] Gluten wurde in beiden Packungen gemessen, mit Ergebnissen, die kein Nachweis sind.
           *[other] Gluten wurde in beiden Packungen gemessen, mit Ergebnissen, die { within_the_limit } von { $limit } liegen.
        }
       *[other] { $rule ->
            [detection] Gluten wurde in allen { $packages } Packungen gemessen, mit Ergebnissen, die kein Nachweis sind.
           *[other] Gluten wurde in allen { $packages } Packungen gemessen, mit Ergebnissen, die { within_the_limit } von { $limit } liegen.
        }
    }
   *[some] { $measured ->
        [one] { $rule ->
            [detection] Gluten wurde in 1 der { $packages } Packungen gemessen, mit einem Ergebnis, das kein Nachweis ist.
           *[other] Gluten wurde in 1 der { $packages } Packungen gemessen, mit einem Ergebnis, das { within_the_limit } von { $limit } liegt.
        }
       *[other] { $rule ->
            [detection] Gluten wurde in { $measured } der { $packages } Packungen gemessen, mit Ergebnissen, die kein Nachweis sind.
           *[other] Gluten wurde in { $measured } der { $packages } Packungen gemessen, mit Ergebnissen, die { within_the_limit } von { $limit } liegen.
        }
    }
}

# After it.
measured_others = { $others ->
    [one] In der anderen lag der Gehalt unter { $below }.
   *[other] In den anderen lag der Gehalt unter { $below }.
}

# Beside "no verdict"; the causes follow, a sentence each.
cannot_tell = { $rule ->
    [detection] Ob in diesem Produkt Gluten nachweisbar ist, können wir nicht sagen.
   *[other] Auf welcher Seite des Grenzwerts von { $limit } dieses Produkt liegt, können wir nicht sagen.
}

# Likewise, where the food is the cause.
cannot_show = { $rule ->
    [detection] Die Ergebnisse können nicht zeigen, ob in diesem Lebensmittel Gluten nachweisbar ist.
   *[other] Die Ergebnisse können nicht zeigen, auf welcher Seite des Grenzwerts von { $limit } dieses Lebensmittel liegt.
}

# A cause. Up to four packages are named, more are counted.
cause_conflict = { $by ->
    [count] Die Berichte des Labors zu { $packages } Packungen widersprechen einander.
   *[name] { $packages ->
        [one] Die Berichte des Labors zu Packung { $named } widersprechen einander.
       *[other] Die Berichte des Labors zu den Packungen { $named } widersprechen einander.
    }
}

# Likewise (ISO 5725-6:1994, 5.2).
cause_disagree = { $by ->
    [count] Die Extraktionen von { $packages } Packungen stimmen nicht überein.
   *[name] { $packages ->
        [one] Die Extraktionen von Packung { $named } stimmen nicht überein.
       *[other] Die Extraktionen der Packungen { $named } stimmen nicht überein.
    }
}

# Likewise.
cause_incomplete = { $by ->
    [count] Von { $packages } Packungen gibt es weniger brauchbare Extraktionen, als das Programm verlangt.
   *[name] { $packages ->
        [one] Packung { $named } hat weniger brauchbare Extraktionen, als das Programm verlangt.
       *[other] Die Packungen { $named } haben weniger brauchbare Extraktionen, als das Programm verlangt.
    }
}

# Likewise.
cause_missing = { $by ->
    [count] Zu { $packages } Packungen liegt kein Ergebnis vor.
   *[name] { $packages ->
        [one] Zu Packung { $named } liegt kein Ergebnis vor.
       *[other] Zu den Packungen { $named } liegt kein Ergebnis vor.
    }
}

# Likewise: its bounds lie on both sides of the limit.
cause_either_side = { $by ->
    [count] Die Ergebnisse von { $packages } Packungen können auf beiden Seiten liegen.
   *[name] { $packages ->
        [one] Das Ergebnis von Packung { $named } kann auf beiden Seiten liegen.
       *[other] Die Ergebnisse der Packungen { $named } können auf beiden Seiten liegen.
    }
}

# Likewise, under guarded decisions (ILAC-G8:09/2019).
cause_too_close = { $by ->
    [count] Die Ergebnisse von { $packages } Packungen liegen näher am Grenzwert, als die Messunsicherheit ({ $uncertainty }) reicht.
   *[name] { $packages ->
        [one] Das Ergebnis von Packung { $named } liegt näher am Grenzwert, als die Messunsicherheit ({ $uncertainty }) reicht.
       *[other] Die Ergebnisse der Packungen { $named } liegen näher am Grenzwert, als die Messunsicherheit ({ $uncertainty }) reicht.
    }
}

# Where the packages' results are within the limit, or decide nothing, and single extractions are over it: no verdict hides one.
single_over = { $extractions ->
    [one] { $kind ->
        [above] Eine einzelne Extraktion ergab mehr als { $figure }.
       *[figure] Eine einzelne Extraktion ergab { $figure }.
    }
   *[other] { $kind ->
        [above] { $rule ->
            [detection] { $spelt } Extraktionen ergaben einen Nachweis von Gluten, die höchste mehr als { $figure }.
            [passes] { $spelt } Extraktionen ergaben mehr als { $limit }, die höchste mehr als { $figure }.
           *[fails] { $spelt } Extraktionen ergaben { $limit } oder mehr, die höchste mehr als { $figure }.
        }
       *[figure] { $rule ->
            [detection] { $spelt } Extraktionen ergaben einen Nachweis von Gluten, die höchste { $figure }.
            [passes] { $spelt } Extraktionen ergaben mehr als { $limit }, die höchste { $figure }.
           *[fails] { $spelt } Extraktionen ergaben { $limit } oder mehr, die höchste { $figure }.
        }
    }
}

# A package in the list of the sentence below.
near_limit_package = { $chance } bei { $package } ({ $figure })

# Further packages in it, which are not named; $chance is the smallest of theirs.
near_limit_more = { $packages ->
    [one] { $chance } bei einer weiteren
   *[other] { $chance } und mehr bei { $packages } weiteren
}

# Beside a verdict that rests on packages near the limit, under simple decisions: the chance that the true content is on the
# other side (JCGM 106:2012, 7.2), where one lies in the band drawn round it, or that is more than 5 %. "assumed" knows only the scatter within the lab, so that the
# chance is a least one.
near_limit = { $rule ->
    [detection] Nahe an der Nachweisgrenze: Die Wahrscheinlichkeit, dass tatsächlich { $side ->
        [over] Gluten nachweisbar ist
       *[within] kein Gluten nachweisbar ist (Nachweisgrenze { $limit })
    }
   *[other] Nahe am Grenzwert: Die Wahrscheinlichkeit, dass der wahre Gehalt { $side ->
        [over] { side_over } liegt
       *[within] { side_within } liegt
    }
}, beträgt { $basis ->
    [lab] nach der Messunsicherheit des Labors etwa { $packages }.
    [lab_k2] nach der Messunsicherheit des Labors (als k = 2 gelesen) etwa { $packages }.
   *[assumed] allein nach der Streuung, die dieses Programm innerhalb eines Labors annimmt, mindestens etwa { $packages }.
}

## The table

# Head of the packages' codes.
head_package = Packung

# Head of the maker's lots.
head_lot = Charge

# Head of the dates as printed on the packages.
head_best_by = Haltbar bis

# Head of the day and place of purchase.
head_bought = Gekauft: Tag, Geschäft

# Head over the extractions.
head_extractions = Extraktionen, { $unit }

# Head over the two columns of differences between extractions.
head_difference = Abstand, { $unit }

# Under it.
head_found = ist

# Under it.
head_allowed = erlaubt

# Head of the results; it may be set in two lines.
head_result = Ergebnis der Packung, { $unit }

# In the place of a difference that is not known: every extraction is below what the test measures, or above. $bound has its sign.
cell_beyond = { $extractions ->
    [2] beide { $bound }
   *[other] alle { $bound }
}

# The name of a package's further row: what it holds. "first": the other of two reports that differ.
row_chapter = { $package }, { $event ->
    [first] { $extractions ->
        [one] ebenfalls berichtet: Extraktion { $numbers }
       *[other] ebenfalls berichtet: Extraktionen { $numbers }
    }
    [again] { $extractions ->
        [one] neu berichtet: Extraktion { $numbers }
       *[other] neu berichtet: Extraktionen { $numbers }
    }
    [repeat] { $extractions ->
        [one] Wiederholung: Extraktion { $numbers }
       *[other] Wiederholung: Extraktionen { $numbers }
    }
    [further] { $extractions ->
        [one] weitere Extraktion { $numbers }
       *[other] weitere Extraktionen { $numbers }
    }
   *[together] { $extractions ->
        [0] keine Extraktion zählt
        [one] die Extraktion, die zählt
        [2] beide, die zählen, zusammen
       *[other] alle { $extractions }, die zählen, zusammen
    }
}

# Under the table, where a figure stands in parentheses.
table_unused = In Klammern: berichtet, nicht verwendet.

# Under the table. "decides": what they give together decides. "close": it does not, under guarded decisions. "open": its bounds
# lie on both sides.
note_straddles = { $standing ->
    [close] { $kind ->
        [range] { $package }: Die Extraktionen stimmen überein, liegen aber auf beiden Seiten des Grenzwerts. Zusammen ergeben sie { $figure }, für eine Entscheidung zu nahe am Grenzwert.
       *[mean] { $package }: Die Extraktionen stimmen überein, liegen aber auf beiden Seiten des Grenzwerts. Ihr Mittelwert, { $figure }, liegt für eine Entscheidung zu nahe daran.
    }
    [open] { $package }: Die Extraktionen stimmen überein, liegen aber auf beiden Seiten des Grenzwerts. Zusammen ergeben sie { $figure }; das entscheidet nicht.
   *[decides] { $kind ->
        [range] { $package }: Die Extraktionen stimmen überein, liegen aber auf beiden Seiten des Grenzwerts. Es entscheidet, was sie zusammen ergeben: { $figure }.
       *[mean] { $package }: Die Extraktionen stimmen überein, liegen aber auf beiden Seiten des Grenzwerts. Es entscheidet ihr Mittelwert: { $figure }.
    }
}

# In the table, above their row: a person declared extractions a repeat of the test; $reason is that person's sentence.
note_repeat = { $extractions ->
    [one] { $package }: Extraktion { $numbers } ist eine Wiederholung, entschieden von { $by } am { $day }. { $reason }
   *[other] { $package }: Die Extraktionen { $numbers } sind eine Wiederholung, entschieden von { $by } am { $day }. { $reason }
}

# Under the table: the lab reported more extractions than the programme asks for, and the register of corrections has no decision.
note_beyond = { $by ->
    [count] Bei { $packages } Packungen gibt es mehr Extraktionen, als das Programm verlangt ({ $asked }). Der Grund ist nicht verzeichnet.
   *[name] { $named }: mehr Extraktionen, als das Programm verlangt ({ $asked }). Der Grund ist nicht verzeichnet.
}

# In the table, below their row: two reports of one extraction differ.
note_conflict = { $package }: Hier widersprechen sich die Berichte des Labors; keine der Zahlen wird verwendet. In { $unit }: { $reports }.

# One of them, as the note lists it.
note_conflict_report = Extraktion { $extraction } ist { $figure } in { $file }, { $cell }

# In the table, below their row: a person set readings aside; $reason is that person's sentence.
note_set_aside = { $extractions ->
    [one] { $package }: Extraktion { $numbers } wurde am { $day } von { $by } ausgeschlossen. { $reason }
   *[other] { $package }: Die Extraktionen { $numbers } wurden am { $day } von { $by } ausgeschlossen. { $reason }
}

# In the table, below their row: a lab reported more extractions than a document lists one by one.
note_left_out = { $package }: { $extractions ->
    [one] Eine weitere Extraktion ist
   *[other] { $extractions } weitere Extraktionen sind
} hier nicht aufgeführt{ $figures ->
    [yes] , von { $lowest } bis { $highest } { $unit }
   *[no] { "" }
}. Die Datei extractions.csv enthält sie alle.

# Under the table, after the first that are named: extractions whose results cannot be read, or that have none.
note_more_unused = { $extractions ->
    [one] { $package }: Eine weitere Extraktion hat kein Ergebnis, das verwendet werden kann.
   *[other] { $package }: { $extractions } weitere Extraktionen haben kein Ergebnis, das verwendet werden kann.
}

# Under the table: the lab withdrew a report, and another took its place; it is not named.
note_replaced = { $by ->
    [count] Bei { $packages } Packungen hat das Labor einen früheren Bericht ersetzt. Keine seiner Zahlen wird hier verwendet.
   *[name] { $named }: Das Labor hat einen früheren Bericht ersetzt. Keine seiner Zahlen wird hier verwendet.
}

# Under the table: the lab gave a row, and in it what says that there is no result.
note_not_reported = { $empty ->
    [yes] { $package }, Extraktion { $extraction }: Das Labor hat eine Zeile ohne Ergebnis geliefert.
   *[no] { $package }, Extraktion { $extraction }: Das Labor hat eine Zeile ohne Ergebnis geliefert („{ $written }“).
}

# Under the table: what the lab wrote cannot be read as a result.
note_unreadable = { $empty ->
    [yes] { $package }, Extraktion { $extraction }: Was das Labor berichtet, lässt sich nicht als Ergebnis lesen.
   *[no] { $package }, Extraktion { $extraction }: Was das Labor berichtet („{ $written }“), lässt sich nicht als Ergebnis lesen.
}

# Under the table.
note_range = { $by ->
    [count] Bei { $packages } Packungen ist eine Extraktion eine Schranke und keine Zahl; das Ergebnis ist deshalb ein Bereich.
   *[name] { $named }: Eine Extraktion ist eine Schranke und keine Zahl; das Ergebnis ist deshalb ein Bereich.
}

# Under the table.
note_open_end = { $by ->
    [count] Bei { $packages } Packungen liegt jede Extraktion über dem Messbereich; das Ergebnis hat deshalb kein oberes Ende.
   *[name] { $named }: Jede Extraktion liegt über dem Messbereich; das Ergebnis hat deshalb kein oberes Ende.
}

# Under the table: gluten is taken as twice the gliadin (CXS 118-1979, 5.1).
note_gliadin = { $all ->
    [yes] Das Labor hat Gliadin berichtet. Die Zahlen hier sind das Doppelte der berichteten: Gluten in { $unit }, wie der Codex-Standard CXS 118 es rechnet.
   *[no] { $by ->
        [count] Das Labor hat Gliadin berichtet. Die Zahlen von { $packages } Packungen sind hier das Doppelte der berichteten: Gluten in { $unit }, wie der Codex-Standard CXS 118 es rechnet.
       *[name] Das Labor hat Gliadin berichtet. Die Zahlen von { $named } sind hier das Doppelte der berichteten: Gluten in { $unit }, wie der Codex-Standard CXS 118 es rechnet.
    }
}

# Under the table: wells of one extract are no repeats of the test.
note_wells = Wo das Labor eine Extraktion in mehreren Kavitäten gemessen hat, steht hier deren Mittelwert.

## What the result says, and what it does not

# Packages over the limit.
says_over = { $packages ->
    [one] { $rule ->
        [detection] In der 1 Packung, die wir gekauft haben, wurde Gluten nachgewiesen.
       *[other] { $guarded ->
            [yes] Die 1 Packung, die wir gekauft haben, liegt { over_the_limit } von { $limit }, auch nach Abzug der Messunsicherheit.
           *[no] Die 1 Packung, die wir gekauft haben, liegt { over_the_limit } von { $limit }.
        }
    }
   *[other] { $rule ->
        [detection] Von den { $packages } Packungen, die wir gekauft haben, wurde in { $over } Gluten nachgewiesen.
       *[other] { $guarded ->
            [yes] { $over ->
                [one] Von den { $packages } Packungen, die wir gekauft haben, liegt 1 { over_the_limit } von { $limit }, auch nach Abzug der Messunsicherheit.
               *[other] Von den { $packages } Packungen, die wir gekauft haben, liegen { $over } { over_the_limit } von { $limit }, auch nach Abzug der Messunsicherheit.
            }
           *[no] { $over ->
                [one] Von den { $packages } Packungen, die wir gekauft haben, liegt 1 { over_the_limit } von { $limit }.
               *[other] Von den { $packages } Packungen, die wir gekauft haben, liegen { $over } { over_the_limit } von { $limit }.
            }
        }
    }
}

# After it: the exact two-sided interval (Clopper and Pearson 1934). Its ends cover both outcomes of undecided packages.
says_share = { $undecided ->
    [0] Wären sie zufällig gezogen, könnte der wahre Anteil zwischen { $lower } und { $upper } liegen (Vertrauensniveau 95 %).
   *[other] Wären sie zufällig gezogen, könnte der wahre Anteil zwischen { $lower } und { $upper } liegen (Vertrauensniveau 95 %, was immer die unentschiedenen Packungen sind).
}

# Every package below quantification. "lowest": that is the lowest figure that the assay gives; a lab may also say "below 19".
says_none_measured = { $lowest ->
    [yes] { $packages ->
        [one] Die 1 Packung, die wir gekauft haben, lag unter { $below }. Das ist die niedrigste Angabe, die dieses Verfahren macht. Null heißt es nicht.
        [2] Beide Packungen, die wir gekauft haben, lagen unter { $below }. Das ist die niedrigste Angabe, die dieses Verfahren macht. Null heißt es nicht.
       *[other] Alle { $packages } Packungen, die wir gekauft haben, lagen unter { $below }. Das ist die niedrigste Angabe, die dieses Verfahren macht. Null heißt es nicht.
    }
   *[no] { $packages ->
        [one] Die 1 Packung, die wir gekauft haben, lag unter { $below }. Wie weit darunter, sagt das Labor nicht. Null heißt es nicht.
        [2] Beide Packungen, die wir gekauft haben, lagen unter { $below }. Wie weit darunter, sagt das Labor nicht. Null heißt es nicht.
       *[other] Alle { $packages } Packungen, die wir gekauft haben, lagen unter { $below }. Wie weit darunter, sagt das Labor nicht. Null heißt es nicht.
    }
}

# Every package within the limit.
says_within = { $packages ->
    [one] { $rule ->
        [detection] In der 1 Packung, die wir gekauft haben, wurde kein Gluten nachgewiesen (Nachweisgrenze { $limit }).
       *[other] Die 1 Packung, die wir gekauft haben, liegt { within_the_limit } von { $limit }.
    }
    [2] { $rule ->
        [detection] In beiden Packungen, die wir gekauft haben, wurde kein Gluten nachgewiesen (Nachweisgrenze { $limit }).
       *[other] Beide Packungen, die wir gekauft haben, liegen { within_the_limit } von { $limit }.
    }
   *[other] { $rule ->
        [detection] In keiner der { $packages } Packungen, die wir gekauft haben, wurde Gluten nachgewiesen (Nachweisgrenze { $limit }).
       *[other] Alle { $packages } Packungen, die wir gekauft haben, liegen { within_the_limit } von { $limit }.
    }
}

# After it, where every package has a result that ends somewhere.
says_highest = Das höchste Ergebnis einer Packung war { $figure }.

# No verdict, and no package decides.
says_none_decides = { $packages ->
    [0] Es wurde keine Packung untersucht.
    [one] Die 1 Packung, die wir gekauft haben, hat kein Ergebnis, das entscheidet.
    [2] Keine der beiden Packungen, die wir gekauft haben, hat ein Ergebnis, das entscheidet.
   *[other] Keine der { $packages } Packungen, die wir gekauft haben, hat ein Ergebnis, das entscheidet.
}

# No verdict though every figure is within the limit: the assay can miss gluten in such a food.
says_unfit = { $packages ->
    [one] { $rule ->
        [detection] In der 1 Packung, die wir gekauft haben, wurde kein Gluten nachgewiesen. Bei einem Lebensmittel dieser Art kann dem Verfahren Gluten entgehen; deshalb entscheidet das nicht.
       *[other] Die 1 Packung, die wir gekauft haben, ergab einen Wert, der { within_the_limit } von { $limit } liegt. Bei einem Lebensmittel dieser Art kann dem Verfahren Gluten entgehen; deshalb entscheidet das nicht.
    }
    [2] { $rule ->
        [detection] In beiden Packungen, die wir gekauft haben, wurde kein Gluten nachgewiesen. Bei einem Lebensmittel dieser Art kann dem Verfahren Gluten entgehen; deshalb entscheidet das nicht.
       *[other] Beide Packungen, die wir gekauft haben, ergaben Werte, die { within_the_limit } von { $limit } liegen. Bei einem Lebensmittel dieser Art kann dem Verfahren Gluten entgehen; deshalb entscheidet das nicht.
    }
   *[other] { $rule ->
        [detection] In keiner der { $packages } Packungen, die wir gekauft haben, wurde Gluten nachgewiesen. Bei einem Lebensmittel dieser Art kann dem Verfahren Gluten entgehen; deshalb entscheidet das nicht.
       *[other] Alle { $packages } Packungen, die wir gekauft haben, ergaben Werte, die { within_the_limit } von { $limit } liegen. Bei einem Lebensmittel dieser Art kann dem Verfahren Gluten entgehen; deshalb entscheidet das nicht.
    }
}

# No verdict, and some packages are within the limit.
says_some_decide = { $rule ->
    [detection] Von den { $packages } Packungen, die wir gekauft haben, wurde in { $decided } kein Gluten nachgewiesen; { $open ->
        [one] 1 hat
       *[other] { $open } haben
    } kein Ergebnis, das entscheidet.
   *[other] Von den { $packages } Packungen, die wir gekauft haben, { $decided ->
        [one] liegt 1
       *[other] liegen { $decided }
    } { within_the_limit } von { $limit }; { $open ->
        [one] 1 hat
       *[other] { $open } haben
    } kein Ergebnis, das entscheidet.
}

# On the sheet of an earlier round, once a later one is published. $rounds are sentences on these.
tested_again = Seither wurde es erneut untersucht. { $rounds }

# A later round does not undo an earlier one. $number is that of its sheet.
other_round = { $verdict ->
    [over] { $packages ->
        [one] { $rule ->
            [detection] In Runde { $round } ({ $number }) wurde in der 1 Packung Gluten nachgewiesen.
           *[other] In Runde { $round } ({ $number }) lag die 1 Packung { over_the_limit }.
        }
       *[other] { $rule ->
            [detection] In Runde { $round } ({ $number }) wurde in { $over } von { $packages } Packungen Gluten nachgewiesen.
           *[other] { $over ->
                [one] In Runde { $round } ({ $number }) lag 1 von { $packages } Packungen { over_the_limit }.
               *[other] In Runde { $round } ({ $number }) lagen { $over } von { $packages } Packungen { over_the_limit }.
            }
        }
    }
    [within] { $rule ->
        [detection] In Runde { $round } ({ $number }) wurde in keiner Packung Gluten nachgewiesen (untersucht: { $packages }).
       *[other] { $packages ->
            [one] In Runde { $round } ({ $number }) lag die 1 Packung { within_the_limit }.
            [2] In Runde { $round } ({ $number }) lagen beide Packungen { within_the_limit }.
           *[other] In Runde { $round } ({ $number }) lagen alle { $packages } Packungen { within_the_limit }.
        }
    }
   *[none] In Runde { $round } ({ $number }) gab es kein Urteil.
}

# Beside a verdict over the limit.
says_not_over = Es sagt nicht, dass jede Packung so ist wie diese, wie das Gluten hineinkam oder dass jemand nachlässig war. Eine andere Charge kann anders ausfallen.

# Beside a verdict within it: the one-sided upper bound for none of n (exact binomial).
says_not_within = { $rule ->
    [detection] Es beweist nicht, dass in keiner Packung Gluten nachweisbar ist. Selbst bei zufälliger Auswahl mit 0 von { $packages } positiv auf Gluten könnten es noch bis zu { $upper } aller Packungen sein (Vertrauensniveau 95 %).
   *[other] Es beweist nicht, dass jede Packung { within_the_limit } liegt. Selbst bei zufälliger Auswahl mit 0 von { $packages } { over_the_limit } könnten es noch bis zu { $upper } aller Packungen sein (Vertrauensniveau 95 %).
}

# Likewise, where no share can be given.
says_not_proven = { $rule ->
    [detection] Es beweist nicht, dass in keiner Packung Gluten nachweisbar ist.
   *[other] Es beweist nicht, dass jede Packung { within_the_limit } liegt.
}

# Beside "no verdict".
says_not_none = { $rule ->
    [detection] Es gibt keine Antwort, weder so noch so: Es sagt nicht, dass in dem Produkt kein Gluten nachweisbar ist, und nicht, dass welches nachweisbar ist.
   *[other] Es gibt keine Antwort, weder so noch so: Es sagt nicht, dass das Produkt { within_the_limit } liegt, und nicht, dass es { over_the_limit } liegt.
}

## What passed between the programme and the maker

# An answer, quoted whole.
told_reply = Der Hersteller antwortete am { $day }: „{ $said }“

# Something that the maker did, in the programme's words, which are no quotation.
told_action = Am { $day } wurde ein Schritt des Herstellers vermerkt: { $said }

# Nothing further is expected.
told_closed = Abgeschlossen am { $day }: { $said }

## The story in days

# Heading of the days.
story_heading = Vom Laden zum Blatt

# Before a day. "next": what has to happen yet.
story_what = { $what ->
    [bought] Gekauft
    [sent] Ans Labor geschickt
    [tested] Untersucht
    [told] Hersteller unterrichtet
    [answered] Antwort des Herstellers
    [closed] Abgeschlossen
    [issued] Veröffentlicht
    [amended] Geändert
   *[next] Als Nächstes
}

# After "maker told".
story_told = { $asked ->
    [yes] { $day }; Antwort erbeten bis { $due }
   *[no] { $day }
}

# In the place of a day.
story_no_day = nicht erfasst

# After "maker told", where the maker is to be told.
story_no_notice = kein Schreiben erfasst

# After "maker answered", where a notice was sent.
story_no_answer = keine Stellungnahme erfasst

# After "issued", on a proof.
story_not_yet = noch nicht

# After "next", on a proof.
story_next_tell = Der Hersteller ist vor der Veröffentlichung zu unterrichten.

# Likewise.
story_next_answer = Die Antwort des Herstellers ist bis { $due } erbeten.

# Likewise: the maker has until then.
story_next_issue = Dieses Blatt darf ab { $day } veröffentlicht werden.

# After "next", where there is no verdict.
story_next_settle = Was in den Registern offen ist, muss zuerst geklärt werden.

# Likewise. Up to four packages are named, more are counted.
story_next_conflict = { $by ->
    [count] Das Labor muss für { $packages } Packungen sagen, welcher seiner Berichte gilt.
   *[name] { $packages ->
        [one] Das Labor muss sagen, welcher seiner Berichte für Packung { $named } gilt.
       *[other] Das Labor muss sagen, welche seiner Berichte für die Packungen { $named } gelten.
    }
}

# Likewise.
story_next_lab = { $by ->
    [count] Für { $packages } Packungen stehen noch Ergebnisse des Labors aus.
   *[name] { $packages ->
        [one] Für Packung { $named } steht noch ein Ergebnis des Labors aus.
       *[other] Für die Packungen { $named } stehen noch Ergebnisse des Labors aus.
    }
}

# Likewise: nothing of it is on record yet.
story_next_repeat = { $by ->
    [count] Nötig sind Wiederholungen für { $packages } Packungen durch das Labor oder neue Packungen; beides ist noch nicht erfasst.
   *[name] { $packages ->
        [one] Nötig ist eine Wiederholung für Packung { $named } durch das Labor oder eine neue Packung; beides ist noch nicht erfasst.
       *[other] Nötig sind Wiederholungen für die Packungen { $named } durch das Labor oder neue Packungen; beides ist noch nicht erfasst.
    }
}

# Likewise.
story_next_finer = { $by ->
    [count] Für { $packages } Packungen braucht es eine feinere Untersuchung oder neue Packungen.
   *[name] { $packages ->
        [one] Für Packung { $named } braucht es eine feinere Untersuchung oder eine neue Packung.
       *[other] Für die Packungen { $named } braucht es eine feinere Untersuchung oder neue Packungen.
    }
}

# Likewise.
story_next_buy = { $packages ->
    [one] Eine weitere Packung ist zu kaufen.
   *[other] { $packages } weitere Packungen sind zu kaufen.
}

# Likewise: for fermented and hydrolysed food.
story_next_unfit = Keine Untersuchung dieser Art kann es klären; die Unterlagen des Herstellers über die Zutaten können es vielleicht.

# Likewise: packages of a later round are on record.
story_next_round = Packungen der Runde { $round } sind erfasst.

## Pictures

# Under a strip of a hundred small packages: what was tested, and how many of the hundred it leaves open.
shares_strip = { $over } von { $packages }: bis zu { $most }

# Under a smaller strip beside it: so many packages, had none been over the limit.
shares_more = { $packages }: bis zu { $most }

# Under the strips.
shares_key = Schraffiert: wie viele von 100 Packungen noch { over_the_limit } sein könnten, wären unsere eine Zufallsauswahl. Darunter, grau: was 6, 14 oder 59 Packungen zeigen würden.

# Likewise, where some packages were over the limit.
shares_key_over = Wären unsere eine Zufallsauswahl, so lägen von 100 Packungen mindestens die schwarzen { over_the_limit }, und die schraffierten könnten es (Vertrauensniveau 95 %).

# The strips for those who cannot see them; $strips are such as above.
shares_alt = Streifen aus je 100 Packungen. Schraffiert: wie viele { over_the_limit } sein könnten, obwohl es keine der untersuchten war. { $strips }.

# Likewise.
shares_alt_over = { $least ->
    [0] Ein Streifen aus 100 Packungen: höchstens { $most } könnten { over_the_limit } sein.
    [one] Ein Streifen aus 100 Packungen: mindestens eine ist { over_the_limit }, höchstens { $most } könnten es sein.
   *[other] Ein Streifen aus 100 Packungen: mindestens { $least } sind { over_the_limit }, höchstens { $most } könnten es sein.
}

# Heading of what the result means in a portion.
portion_heading = In einer Portion

# 1 ppm is 1 mg in a kilogram. No amount is called safe.
portion_said = { $kind ->
    [below] Eine Portion von { $portion } aus Packung { $package } (unter { $figure }) enthält weniger als { $own } Gluten. Am Grenzwert wären es { $limit }.
   *[measured] Eine Portion von { $portion } aus Packung { $package } ({ $figure }) enthält { $own } Gluten. Am Grenzwert wären es { $limit }.
} Wir nennen keine Menge unbedenklich.

# Beside the squares of this food.
portion_own = { $kind ->
    [below] hier weniger als { $own }
   *[measured] hier { $own }
}

# Beside the squares at the limit.
portion_limit = am Grenzwert { $limit }

# The squares for those who cannot see them.
portion_alt = { $kind ->
    [below] Gluten in einer Portion als Quadrate zu { $square }: hier weniger als { $own }, am Grenzwert { $limit }.
   *[measured] Gluten in einer Portion als Quadrate zu { $square }: hier { $own }, am Grenzwert { $limit }.
}

## How to check the sheet

# Heading.
check_heading = So lässt sich dieses Blatt prüfen

# A sum worked once; figures without their unit, since the heads of the table have it.
sum_mean = Packung { $package }: { $readings }. Ihr Mittelwert ist { $mean }{ $printed ->
    [rounded] , gedruckt als { $result }
   *[same] { "" }
}. Sie liegen { $gap } auseinander; bis zu { $allowed } sind dort zulässig.

# Likewise.
sum_disagree = Packung { $package }: { $readings }. Sie liegen { $gap } auseinander; bis zu { $allowed } sind dort zulässig, darum haben sie keinen Mittelwert.

# Likewise.
sum_below = Packung { $package }: { $readings }. Es wurde keine Zahl gemessen, darum gibt es keinen Mittelwert: Das Ergebnis ist { $result }.

# Likewise: "<5" may be any value from 0 to 5.
sum_range = Packung { $package }: { $readings }. „<“ oder „>“ lässt einen Wert zwischen Grenzen offen, darum auch den Mittelwert: { $result }.

# After the sum: the place of its first figure.
check_place = Die erste Zahl steht in { $file }, Zeile { $row }, Spalte { $column }.

# Before the address of the sheet's page, on issued sheets.
check_page = Dieses Blatt und seine Daten im Netz:

# The square for those who cannot see it.
check_square = QR-Code von { $address }

## Who answers for the sheet

# In the foot: who publishes it. ISO/IEC 17025:2017, 7.8.2.1 has a lab say so of its report; this sheet is not the lab's.
imprint = { $addressed ->
    [yes] { $directed ->
        [yes] Verantwortlich: { $director }, { $programme }, { $address }.
       *[no] Verantwortlich: { $programme }, { $address }.
    }
   *[no] { $directed ->
        [yes] Verantwortlich: { $director }, { $programme } (keine Anschrift verzeichnet).
       *[no] Verantwortlich: { $programme } (keine Anschrift verzeichnet).
    }
}

# Before it in the foot; the revision says what changed (7.8.8).
imprint_mistakes = Berichtigt wird in einer neuen Fassung.

## Files and revisions

# Under "where the numbers come from".
sources_nothing = Das Labor hat noch nichts berichtet.

# Likewise, where the PDF carries something of every lab file.
sources_carried = { $carried ->
    [files] Die Dateien des Labors sind dieser PDF-Datei beigefügt.
   *[cells] Die hier verwendeten Zellen sind dieser PDF-Datei beigefügt.
}

# Likewise, where some are too large.
sources_some = { $files ->
    [one] Eine dieser Dateien ist dieser PDF-Datei beigefügt.
   *[other] Dieser PDF-Datei beigefügt: { $files } dieser Dateien.
}

# After the certificates and photographs that are named; $file is attached to the PDF.
sources_more = { $exhibits ->
    [one] Ein weiteres Analysenzertifikat oder Foto mit Namen und SHA-256 in { $file }.
   *[other] Weitere Analysenzertifikate und Fotos mit Namen und SHA-256 in { $file }: { $exhibits }.
}

# In the head of an issued sheet, after its number.
edition_line = Fassung { $revision } · { $day }

# In the head of a proof.
edition_proof = { $dated ->
    [yes] Entwurf der Fassung { $revision }, erstellt am { $day }, nicht zur Veröffentlichung
   *[no] Entwurf der Fassung { $revision }, nicht zur Veröffentlichung
}

# Under "revisions" (ISO/IEC 17025:2017, 7.8.8: a changed report names the one it replaces).
edition_replaces = Ersetzt Fassung { $revision } vom { $day }.

# Beside the first revision.
edition_first = Erste Fassung.

# Beside a later one of which the register gives no reason.
edition_unexplained = Ein Grund ist nicht verzeichnet.

# After the three latest.
edition_more = Alle Fassungen liegen im Archiv des Programms.

## Where a product stands with its maker

# In lists: the maker need not be told.
maker_not_needed = Dem Hersteller ist nichts mitzuteilen

# Likewise.
maker_to_send = Dem Hersteller wurde noch nichts mitgeteilt

# Likewise.
maker_waiting = Antwort steht aus

# Likewise; no reproach, since none is owed.
maker_overdue = Keine Antwort zum erbetenen Tag

# Likewise.
maker_replied = { $late ->
    [yes] Antwort kam später
   *[no] Der Hersteller antwortete
}

# Likewise.
maker_closed = Abgeschlossen am { $day }

# In the place of a long reply.
maker_long_text = Der ganze Wortlaut steht auf dem Blatt des Produkts.

## Whether a sheet may be published

# The state, as one would say it; the screens say it in English.
state_with_lab = beim Labor

# Likewise.
state_waiting = wartet auf das Labor

# Likewise.
state_held = zurückgehalten

# Likewise.
state_ready = bereit

# Likewise.
state_published = veröffentlicht

# State and reason. $until is a date in figures.
publication_standing = { $dated ->
    [yes] { $state } bis { $until }. { $why }
   *[no] { $state }. { $why }
}

# What the state rests on.
why_nothing_reported = Das Labor hat noch nichts berichtet.

# Likewise.
why_not_reported = { $packages ->
    [one] Zu 1 Packung hat das Labor noch nicht berichtet: { $codes }.
   *[other] Zu { $packages } Packungen hat das Labor noch nicht berichtet: { $codes }.
}

# Likewise; files and lines.
why_register = In den Registern ist etwas offen, das dafür zählt: { $places }. Das ist zuerst zu klären.

# Likewise; files and cells.
why_reading = Ein Messwert dieses Produkts ist so nicht zu verwenden: { $places }. Er ist richtigzustellen oder in corrections.csv auszuschließen.

# Likewise.
why_no_notice = Dem Hersteller wurde nichts mitgeteilt: Eine Mitteilung ist nicht verzeichnet.

# Likewise.
why_no_reply = Dem Hersteller wurde es am { $told } mitgeteilt, er hat nicht geantwortet: Ab { $until } darf es veröffentlicht werden.

# Likewise.
why_nothing_to_tell = Dem Hersteller ist vorab nichts mitzuteilen.

# Likewise.
why_answered = Der Hersteller antwortete am { $day }.

# Likewise.
why_time_is_over = Dem Hersteller wurde es am { $told } mitgeteilt; er hatte bis { $since } Zeit zu antworten.

# Likewise: a correction in the maker's favour, or for safety.
why_corrects = Es berichtigt, was veröffentlicht war, und das wartet auf niemanden.

# Likewise.
why_issued = Fassung { $revision } wurde am { $day } herausgegeben und sagt dasselbe.

# After it, where an accusation was made or taken back.
why_letter_due = Fassung { $revision } sagte etwas anderes: Ein Berichtigungsschreiben ist sofort fällig.

# Many codes or places.
some_and_more = { $some } und { $more } weitere

# On a sheet that was issued before its time, and in the register of what was issued: what it did not wait for. No full stop.
early_not_reported = { $packages ->
    [one] Herausgegeben, bevor das Labor über 1 Packung berichtet hatte
   *[other] Herausgegeben, bevor das Labor über { $packages } Packungen berichtet hatte
}

# Likewise.
early_no_notice = Herausgegeben, bevor es dem Hersteller mitgeteilt war

# Likewise.
early_no_reply = Herausgegeben, bevor die Frist des Herstellers für eine Antwort am { $day } abgelaufen war

# Likewise.
early_other = Vor der Zeit herausgegeben

# In summary and newsletter: what was issued reads otherwise now. What it said is not repeated.
under_revision = { $branded ->
    [yes] { $product } ({ $brand }), Blatt { $number }: in Überarbeitung. Auf Fassung { $revision } vom { $day } ist kein Verlass mehr; eine neue ist noch nicht herausgegeben.
   *[no] { $product }, Blatt { $number }: in Überarbeitung. Auf Fassung { $revision } vom { $day } ist kein Verlass mehr; eine neue ist noch nicht herausgegeben.
}

# What leads the next newsletter, and stands on the page of corrections. $said is one of what a sheet says against a product.
corrected = { $branded ->
    [yes] Berichtigung: { $product } ({ $brand }), Blatt { $number }. Fassung { $revision } vom { $day } besagte: { $said }.
   *[no] Berichtigung: { $product }, Blatt { $number }. Fassung { $revision } vom { $day } besagte: { $said }.
}

# After it.
corrected_now = { $issued ->
    [yes] Seit { $day } gilt: { $says }.
   *[no] Die nächste Fassung, die noch nicht herausgegeben ist, besagt: { $says }.
}

# After it; $reason is the programme's own sentence, without its full stop.
corrected_why = Grund: { $reason }.

# Taken in by these sentences, and by the letter of correction. "amount": a package is over the limit. "label": an ingredient is a
# source of gluten.
accused = { $amount ->
    [yes] { $label ->
        [yes] { $rule ->
            [detection] In mindestens einer Packung wurde Gluten nachgewiesen, und das Zutatenverzeichnis nennt eine Glutenquelle
           *[other] Mindestens eine Packung liegt { over_the_limit }, und das Zutatenverzeichnis nennt eine Glutenquelle
        }
       *[no] { $rule ->
            [detection] In mindestens einer Packung wurde Gluten nachgewiesen
           *[other] Mindestens eine Packung liegt { over_the_limit }
        }
    }
   *[no] { $label ->
        [yes] Das Zutatenverzeichnis nennt eine Glutenquelle
       *[no] { $rule ->
            [detection] Es ist keine Packung mit nachweisbarem Gluten bekannt, und das Zutatenverzeichnis nennt keine Glutenquelle
           *[other] Es ist keine Packung bekannt, die { over_the_limit } liegt, und das Zutatenverzeichnis nennt keine Glutenquelle
        }
    }
}
