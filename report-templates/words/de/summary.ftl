# The programme summary.

## What the document is

# In the header, and among the PDF's keywords.
summary_name = Übersicht des Programms

# The PDF's description, which catalogues show.
summary_of = Übersicht des Programms { $programme }.

# Keyword of the PDF.
summary_keyword_gluten = Gluten

# Keyword of the PDF.
summary_keyword_results = Prüfergebnisse

# On the cover and in the header of a summary that holds what may not be published yet.
summary_proof = Entwurf, nicht zur Veröffentlichung

# At the foot of each page.
summary_mistakes = Fehler gefunden? { $address }

# At the foot of the cover.
summary_made_on = Erstellt am { $day }.

# Before words that are printed as they stand on a package, or as a maker wrote them.
summary_quote_open = „

# Behind them.
summary_quote_close = “

## Cover

# Title of the cover. $claim: as all packages bear it, in small letters. A food that was tested in two rounds is one food.
summary_title = { $foods ->
    [0] Noch ist kein Lebensmittel geprüft
    [one] Was wir in { $foods } Lebensmittel mit { $claimed ->
        [yes] der Angabe „{ $claim }“
       *[no] einer Angabe zu Gluten
    } fanden
   *[other] Was wir in { $foods } Lebensmitteln mit { $claimed ->
        [yes] der Angabe „{ $claim }“
       *[no] einer Angabe zu Gluten
    } fanden
}

# Under the title: from the first to the last day of testing.
summary_subtitle = Übersicht der Ergebnisse, geprüft { $days }

# Likewise, where no day of testing is known.
summary_subtitle_undated = Übersicht der Ergebnisse

# In the block of a verdict.
summary_count = { $products ->
    [one] { $of_them } von { $products } Produkt
   *[other] { $of_them } von { $products } Produkten
}

# Beside the block of a verdict.
summary_head = { $n ->
    [0] Kein Produkt
    [one] Ein Produkt
   *[other] { spelt_first } Produkte
}

# In the block of products without a verdict, and among the words that are explained.
summary_no_verdict = Kein Urteil

# Beside the block of products within the limit. "nobody": there is none. "none", "some", "all": in how many of them gluten
# was measured; in $below of them no package had enough.
summary_within = { $measured ->
    [nobody] { $rule ->
        [detection] Bei keinem Produkt waren alle Packungen { within_the_limit }.
        [passes] Kein Produkt hielt mit allen Packungen den Grenzwert ein.
       *[other] Bei keinem Produkt lagen alle Packungen { within_the_limit }.
    }
    [none] { $rule ->
        [detection] Jede Packung war { within_the_limit }.
       *[other] Jede Packung lag { within_the_limit }.
    } Keine enthielt genug Gluten, um es zu messen.
    [some] { $rule ->
        [detection] Jede Packung war { within_the_limit }.
       *[other] Jede Packung lag { within_the_limit }.
    } Bei { $below } dieser Produkte enthielt keine Packung genug Gluten, um es zu messen.
   *[all] { $rule ->
        [detection] Jede Packung war { within_the_limit }.
       *[other] Jede Packung lag { within_the_limit }.
    }
}

# Beside the block of products over the limit. $packages, where there is no such product: "none": every package has a
# result, and none is over; "open": some package is undecided; "some": a package is over in a product that got no verdict.
summary_over = { $products ->
    [some] { $rule ->
        [detection] Mindestens eine Packung war { over_the_limit }.
       *[other] Mindestens eine Packung lag { over_the_limit }.
    } Diese Übersicht führt alle auf.
   *[none] { $packages ->
        [some] { $rule ->
            [detection] Kein Produkt hat dieses Urteil. Packungen, die { over_the_limit } waren, gehören zu Produkten ohne Urteil.
           *[other] Kein Produkt hat dieses Urteil. Packungen, die { over_the_limit } lagen, gehören zu Produkten ohne Urteil.
        }
        [open] { $rule ->
            [detection] Von keiner Packung ist gezeigt, dass sie { over_the_limit } ist.
           *[other] Von keiner Packung ist gezeigt, dass sie { over_the_limit } liegt.
        }
       *[none] { $rule ->
            [detection] Keine Packung war { over_the_limit }.
           *[other] Keine Packung lag { over_the_limit }.
        }
    }
}

# Beside the block of products without a verdict. "claims": products of several claims, each with a limit of its own.
summary_none = { $products ->
    [some] { $shown ->
        [detection] Die Ergebnisse zeigen nicht für jede Packung, ob sie nachweisbares Gluten enthält.
        [claims] Die Ergebnisse zeigen nicht für jede Packung, auf welcher Seite des Grenzwerts ihrer Angabe sie liegt.
       *[limit] Die Ergebnisse zeigen nicht für jede Packung, auf welcher Seite von { $limit } sie liegt.
    } Diese Übersicht nennt die Gründe.
   *[none] Jedes Produkt hat ein Urteil.
}

# Below the squares of the cover, or the bar that takes their place where there are many products. $over_band: "at or above
# 20 ppm".
summary_squares = { $form ->
    [squares] Ein Quadrat je Produkt. Gefüllt: { $over_band } ({ $over }). Gestrichelt: kein Urteil ({ $undecided }). Mit Punkt: { within_the_limit }, messbar in mindestens einer Packung ({ $measured }). Leer: in jeder Packung zu wenig zum Messen ({ $below }).
   *[bar] Der Balken enthält jedes Produkt. Schwarz: { $over_band } ({ $over }). Gestrichelt: kein Urteil ({ $undecided }). Grau: { within_the_limit }, messbar in mindestens einer Packung ({ $measured }). Leer: in jeder Packung zu wenig zum Messen ({ $below }).
}

# Below the squares, where a food was tested in more than one round. $products and $foods_spelt are in words up to nine.
summary_rounds = { $foods ->
    [one] Die { $products } Produkte sind ein Lebensmittel: Wird ein Lebensmittel in einer weiteren Runde geprüft, zählt es noch einmal.
   *[other] Die { $products } Produkte sind { $foods_spelt } Lebensmittel: Wird ein Lebensmittel in einer weiteren Runde geprüft, zählt es noch einmal.
}

# Below the squares: products of which the lab has reported nothing yet; there is at least one.
summary_with_lab = { $n ->
    [0] { "" }
    [one] Ein weiteres Produkt ist im Labor und hier nirgends mitgezählt.
   *[other] { spelt_first } weitere Produkte sind im Labor und hier nirgends mitgezählt.
}

# On the cover: products whose list of ingredients names a gluten source that the rule does not allow; there is at least
# one.
summary_labels_on_cover = { $n ->
    [0] { "" }
    [one] Was die Prüfung auch ergab: Das Etikett eines Produkts nennt eine Glutenquelle, die die Regel in einem Lebensmittel mit dieser Angabe nicht zulässt.
   *[other] Was die Prüfung auch ergab: Die Etiketten von { spelt } Produkten nennen eine Glutenquelle, die die Regel in einem Lebensmittel mit dieser Angabe nicht zulässt.
}

# At the foot of the cover. The counts are those of programme.toml; from two on they are given in words, too.
summary_how = Dieses Programm prüft { $packages ->
    [one] eine Packung je Produkt
   *[other] { $packages_spelt } Packungen je Produkt
} und { $extractions ->
    [one] eine Extraktion je Packung.
   *[other] { $extractions_spelt } Extraktionen je Packung, jede für sich gemessen.
} Jede Zahl lässt sich bis zur Datei des Labors zurückverfolgen.

# Head of the list of chapters on the cover.
summary_contents = Inhalt

# On the cover of a proof: further published sheets that do not stand any more.
summary_revised_more = Und { $sheets } weitere, in products.csv.

## The results in one table

# Title of the chapter.
summary_bands_title = Die Ergebnisse in einer Tabelle

# First sentence of the chapter, where nothing has a result.
summary_bands_empty = Noch zählt keine Packung: Keine ist ins Labor gegangen, und keine Labordatei hat ein Ergebnis.

# First sentence of the chapter: how many packages had too little gluten to measure.
summary_bands_unmeasured = { $n ->
    [0] In keiner Packung war zu wenig Gluten, um es zu messen.
    [one] In einer von { $packages } war zu wenig Gluten, um es zu messen.
   *[other] In { spelt } von { $packages } war zu wenig Gluten, um es zu messen.
}

# After the number of packages with too little gluten to measure, here, above the strip and in the newsletter, where a
# sandwich assay was used for fermented or hydrolysed foods, in which proteins in pieces escape it (J AOAC 98:1346, 2015).
summary_perhaps_missed = { $n ->
    [one] Eine davon ist von einem fermentierten oder hydrolysierten Lebensmittel, in dem der Test Gluten übersehen kann.
   *[other] Davon sind { $n } von fermentierten oder hydrolysierten Lebensmitteln, in denen der Test Gluten übersehen kann.
}

# Taken into the sentence above, and the one on what would have to be tested.
summary_packages_spelt = { $n ->
    [0] null Packungen
    [one] einer Packung
   *[other] { spelt } Packungen
}

# Second sentence. "open": some package is undecided, so that none can be said to be below.
summary_bands_over = { $n ->
    [0] { $packages ->
        [open] Bei keinem Produkt ist von einer Packung gezeigt, dass sie { $rule ->
            [detection] { over_the_limit } ist.
           *[other] { over_the_limit } liegt.
        }
       *[none] Kein Produkt hatte eine Packung { $rule ->
            [detection] mit nachgewiesenem Gluten.
           *[other] { over_the_limit }.
        }
    }
    [one] Ein Produkt hatte mindestens eine Packung { $rule ->
        [detection] mit nachgewiesenem Gluten.
       *[other] { over_the_limit }.
    }
   *[other] { spelt_first } Produkte hatten mindestens eine Packung { $rule ->
        [detection] mit nachgewiesenem Gluten.
       *[other] { over_the_limit }.
    }
}

# Third sentence, where packages had too little to measure and yet may be on either side: the assay measures from more than
# the limit on.
summary_bands_loose = { $shown ->
    [detection] Zu wenig zum Messen zeigt nicht, ob eine Packung nachweisbares Gluten enthält
    [claims] Zu wenig zum Messen zeigt nicht, auf welcher Seite des Grenzwerts ihrer Angabe eine Packung liegt
   *[limit] Zu wenig zum Messen zeigt nicht, auf welcher Seite von { $limit } eine Packung liegt
}; { $packages ->
    [one] so bleibt { $packages } Packung unentschieden.
   *[other] so bleiben { $packages } Packungen unentschieden.
}

# Last sentence; there is at least one.
summary_bands_undecided = { $n ->
    [0] { "" }
    [one] Ein Produkt hat kein Urteil.
   *[other] { spelt_first } Produkte haben kein Urteil.
}

# Head of the first column.
summary_bands_counted = Gezählt

# Head of the last column.
summary_bands_all = insgesamt

# Below the bars. The bands: "below 5 ppm", "5 to below 20 ppm", "at or above 20 ppm".
summary_bands_note = Weiß: { $below }. Grau: { $measured }. Schwarz: { $over }. Gestrichelt: kein Ergebnis oder eines, das nicht entscheidet. Ein Produkt zählt einmal je Prüfrunde: nach seiner höchsten Packung, oder als unentschieden, wenn es kein Urteil hat.

# Head of what the numbers say.
summary_says_title = Was diese Zahlen sagen

# Left of what they do not say. $left_out: rounds that a later one of the same product supersedes. The interval is exact
# (Clopper and Pearson, 1934), and holds only for a random pick.
summary_says = { $packages ->
    [one] Sie beschreiben die { $packages } Packung, die wir gekauft haben.
   *[other] Sie beschreiben die { $packages } Packungen, die wir gekauft haben.
} { $verdict ->
    [some] Von { $products ->
        [one] { $products } Produkt
       *[other] { $products } Produkten
    } mit Urteil{ $left_out ->
        [0] { "" }
        [one] , jedes einmal nach seiner letzten Runde gezählt (eine frühere Runde ist weggelassen, denn Runden eines Produkts sind nicht unabhängig),
       *[other] , jedes einmal nach seiner letzten Runde gezählt ({ $left_out_spelt } frühere Runden sind weggelassen, denn Runden eines Produkts sind nicht unabhängig),
    } { $over ->
        [one] hatte { $over }
       *[other] hatten { $over }
    } eine Packung { $rule ->
        [detection] mit nachgewiesenem Gluten
       *[other] { over_the_limit }
    }. Wären die Produkte zufällig gewählt, läge der Anteil unter allen solchen Produkten zwischen { $lower } und { $upper } % (Vertrauensniveau 95 %).
   *[none] Noch hat kein Produkt ein Urteil.
}

# Head of what they do not say.
summary_says_not_title = Was sie nicht sagen

# $packages: how many of each product the programme tests; $upper: the one-sided 95 % bound for none of them over the limit,
# 1 - 0.05^(1/n).
summary_says_not = Sie sagen nicht, wie häufig Gluten in Lebensmitteln ist, die wir nicht gekauft haben, und wenige Packungen können ein Problem verfehlen. Bei 0 von { $packages } { over_the_limit } könnten es immer noch bis zu { $upper } % aller Packungen eines Produkts sein (Vertrauensniveau 95 %, falls die Packungen eine Zufallsauswahl waren).

# Head of the key to the marks of all plots.
summary_marks_title = Die Zeichen

# Head of the glossary.
summary_words_title = Wörter, die wir verwenden

# Head of its first column.
summary_words_word = Wort

# Head of its second column.
summary_words_meaning = Was wir damit meinen

# Meaning of "ppm" or "mg/kg".
summary_word_unit = { $unit ->
    [ppm] Teile je Million: Milligramm Gluten in einem Kilogramm Lebensmittel (mg/kg).
   *[mg] Milligramm Gluten in einem Kilogramm Lebensmittel, dasselbe wie Teile je Million (ppm).
}

# Meaning of "below 5 ppm".
summary_word_below = Zu wenig, um es zu beziffern. Es heißt nicht null.

# A word that is explained.
summary_word_extraction = Extraktion

# Its meaning.
summary_word_extraction_meaning = Eine Teilmenge einer gemahlenen Packung, für sich extrahiert und gemessen.

# Meaning of "At or above 20 ppm".
summary_word_over = Das Urteil über ein Produkt, wenn mindestens eine Packung { $rule ->
    [detection] { over_the_limit } ist.
   *[other] { over_the_limit } liegt.
}

# Meaning of "Below 20 ppm".
summary_word_within = Das Urteil über ein Produkt, wenn jede Packung { $rule ->
    [detection] { within_the_limit } ist.
   *[other] { within_the_limit } liegt.
}

# Meaning of "No verdict".
summary_word_none = { $shown ->
    [detection] Die Ergebnisse zeigen nicht für jede Packung, ob sie nachweisbares Gluten enthält
    [claims] Die Ergebnisse zeigen nicht für jede Packung, auf welcher Seite des Grenzwerts ihrer Angabe sie liegt
   *[limit] Die Ergebnisse zeigen nicht für jede Packung, auf welcher Seite von { $limit } sie liegt
}: Eine hat kein brauchbares Ergebnis oder liegt zu nahe am Grenzwert, Packungen fehlen, kein Verfahren entscheidet bei diesem Lebensmittel, oder etwas muss zuerst geklärt werden.

## Where each package landed

# Title of the chapter.
summary_strip_title = Wo jede Packung liegt

# Head of the chapter with a row for each product.
summary_products_title = Jedes Produkt auf der Skala

# Below it.
summary_products_lede = Jede Zeile ist ein Produkt, in der Reihenfolge der Nummern des Registers, mit einem Zeichen für jede Packung. Alle Zeilen haben dieselbe Skala, damit die Produkte sich vergleichen lassen.

# In the place of the sentences below.
summary_strip_empty = Noch ist keine Packung zu zeigen.

# First sentence above the plot.
summary_strip_packages = { $packages ->
    [one] Die { $packages } Packung ist dort gezeigt, wo ihr Ergebnis liegt.
   *[other] Jede der { $packages } Packungen ist dort gezeigt, wo ihr Ergebnis liegt.
}

# Second sentence.
summary_strip_unmeasured = { $n ->
    [0] In keiner davon war zu wenig Gluten, um es zu messen.
    [one] In einer davon war zu wenig Gluten, um es zu messen.
   *[other] In { spelt } davon war zu wenig Gluten, um es zu messen.
}

# Last sentence. $n of $groups food groups have one. "open": some package is undecided.
summary_strip_over = { $n ->
    [0] { $packages ->
        [open] Von keiner ist gezeigt, dass sie { $rule ->
            [detection] { over_the_limit } ist.
           *[other] { over_the_limit } liegt.
        }
       *[none] { $rule ->
            [detection] Keine ist { over_the_limit }.
           *[other] Keine liegt { over_the_limit }.
        }
    }
    [one] { $groups ->
        [one] Die Packungen { $rule ->
            [detection] mit nachgewiesenem Gluten
           *[other] { over_the_limit }
        } stammen aus der einen Warengruppe.
       *[other] Die Packungen { $rule ->
            [detection] mit nachgewiesenem Gluten
           *[other] { over_the_limit }
        } stammen aus einer von { $groups_spelt } Warengruppen.
    }
   *[other] Die Packungen { $rule ->
        [detection] mit nachgewiesenem Gluten
       *[other] { over_the_limit }
    } stammen aus { spelt } von { $groups_spelt } Warengruppen.
}

# Below the plot. "yes": some rows have columns in the place of marks that would touch.
summary_strip_note = Pfeile links: { $below }, davor ihre Zahl. Pfeil auf der Skala: unter der Zahl an seiner Spitze oder über ihr. Offener Kreis: { $measured }. Gefüllt: { $over }. Gestrichelt, rechts: Die Ergebnisse entscheiden nicht. Nach oben oder unten verschoben sind Zeichen nur, damit sie sich nicht berühren.{ $crowded ->
    [yes] { " " }Wo sie sich trotzdem berührten, stehen Säulen gleicher Schritte an ihrer Stelle, mit der größten Anzahl darüber.
   *[no] { "" }
}

# Head of the part on products whose packages lie on both sides of the limit.
summary_uneven_title = Ungleiche Packungen

# In $n of the $over products over the limit. There is at least one.
summary_uneven = { $over ->
    [one] Bei dem einen Produkt
   *[other] { $n ->
        [one] Bei einem
       *[other] Bei { spelt }
    } der { $over_spelt } Produkte
} { $rule ->
    [detection] mit nachgewiesenem Gluten war ein Teil der Packungen { within_the_limit } und mindestens eine positiv.
    [passes] { over_the_limit } lag ein Teil der Packungen { within_the_limit } und mindestens eine darüber.
   *[other] { over_the_limit } lag ein Teil der Packungen { within_the_limit } und ein Teil nicht.
} Darum wird mehr als eine Packung gekauft, und darum kann eine Packung allein nicht für ein Produkt sprechen.

# Likewise, where it is all of two products or more.
summary_uneven_all = { $n ->
    [2] Bei beiden Produkten
   *[other] Bei allen { spelt } Produkten
} { $rule ->
    [detection] mit nachgewiesenem Gluten war ein Teil der Packungen { within_the_limit } und mindestens eine positiv.
    [passes] { over_the_limit } lag ein Teil der Packungen { within_the_limit } und mindestens eine darüber.
   *[other] { over_the_limit } lag ein Teil der Packungen { within_the_limit } und ein Teil nicht.
} Darum wird mehr als eine Packung gekauft, und darum kann eine Packung allein nicht für ein Produkt sprechen.

## By food group, and by quarter

# Title of the chapter.
summary_groups_title = Nach Warengruppe und nach Quartal

# First sentence, where the groups are too small for a test.
summary_groups_small = Die Gruppen sind klein. Ihre Intervalle sind breit, und ein Unterschied zwischen zwei Anteilen kann durch Zufall entstehen.

# First sentence, where no group differs from the others (Fisher's exact test, adjusted by Holm, Scand J Stat 6:65, 1979).
summary_groups_alike = Keine Warengruppe unterscheidet sich von allen anderen um mehr, als der Zufall bewirken kann, wenn man einrechnet, dass wir jede von ihnen betrachtet haben.

# First sentence, where some do. $groups: their names as a list.
summary_groups_apart = Von allen anderen um mehr verschieden, als der Zufall bewirken würde: { $groups } (exakter Test nach Fisher, nach Holm angepasst).

# In the place of the charts.
summary_groups_none = Noch hat kein Produkt ein Urteil.

# Head of a chart of shares.
summary_shares_title = { $by ->
    [category] Anteil nach Warengruppe
    [certification] Anteil nach Zertifizierung
   *[oats] Anteil nach Hafer
}

# Below them.
summary_shares_note = Punkt: gefundener Anteil. Linie: exaktes zweiseitiges 95-%-Intervall (Clopper-Pearson). Offener Punkt: kein Produkt { over_the_limit }. Jedes Produkt einmal, nach seiner letzten Runde mit Urteil. Produkte ohne Urteil sind weggelassen. Die Intervalle gelten nur, falls die Produkte zufällig gewählt sind. Die Reihenfolge bedeutet nichts.

# Head of the table of means.
summary_means_title = Mittleres Ergebnis der Packungen nach Warengruppe

# Heads of its columns, from here on.
summary_means_group = Packungen aus

# Likewise.
summary_means_packages = Packungen

# Likewise.
summary_means_censored = Zu wenig zum Messen

# Likewise.
summary_means_mean = Mittel, { $unit }

# Likewise.
summary_means_ranks = Nach Rängen

# Likewise.
summary_means_lognormal = Lognormal

# Name of the first row.
summary_means_all = Alle

# In the column of means.
summary_means_between = { $lower } bis { $upper }

# In the last column.
summary_means_fit = { $mean } (Median { $median })

# Below the table. Robust regression on order statistics and maximum likelihood for left-censored data: Helsel, Statistics
# for Censored Environmental Data, 2012.
summary_means_note = Aus Packungen, deren Extraktionen übereinstimmen, in jeder Runde. Das Mittel liegt zwischen den zwei Zahlen: Die erste setzt 0 für jede Packung mit zu wenig zum Messen ein, die zweite die kleinste messbare Menge. Nach Rängen, lognormal: Schätzungen (robuste Regression auf Ordnungsstatistiken; zensierte lognormale Maximum-Likelihood) nur, wo genug Packungen sind. Eine Packung über dem Messbereich ist nicht dabei, sodass das Mittel ihrer Gruppe höher liegt. An einem Mittel wird keine Angabe gemessen: Jede Packung trägt sie.

# Head of the chart of quarters.
summary_quarters_title = Ergebnisse nach Quartal

# Below the chart.
summary_quarters_note = Jedes Produkt steht in dem Quartal, in dem seine letzte Packung geprüft wurde, einmal je Runde; der Trend nimmt es einmal. Die Reihenfolge in einer Zeile bedeutet nichts.

# Head of why there is no ranking.
summary_ranking_title = Warum es keine Rangliste gibt

# Below it.
summary_ranking = Ein paar Produkte mehr oder weniger würden die Gruppen umordnen. Keine Marke wird eingestuft, denn es werden zu wenige ihrer Packungen geprüft, um Marken zu unterscheiden.

# Head of what the quarters say taken together.
summary_trend_title = Gibt es einen Trend?

# Where there are results from fewer than two quarters.
summary_trend_short = Mit Ergebnissen aus weniger als zwei Quartalen ist kein Trend zu suchen.

# Where there are too few products in the quarters.
summary_trend_thin = Je Quartal sind es zu wenige Produkte, um nach einem Trend zu suchen.

# Where there are enough (Cochran, Biometrics 10:417, 1954; Armitage, Biometrics 11:375, 1955). $p: "= 0.32" or "< 0.001".
summary_trend = { $found ->
    [grew] Über { $quarters } Quartale ist der Anteil gewachsen: mehr, als der Zufall oft bewirken würde (Cochran-Armitage-Test, p { $p }).
    [fell] Über { $quarters } Quartale ist der Anteil gefallen: mehr, als der Zufall oft bewirken würde (Cochran-Armitage-Test, p { $p }).
   *[none] Über { $quarters } Quartale zeigt der Anteil keinen Trend, der sich vom Zufall abhebt (Cochran-Armitage-Test, p { $p }).
}

# Head of the table of packages that would say more.
summary_needed_title = Was nötig wäre, um mehr zu sagen

# Above the table. Exact one-sided 95 % bound for none of n: 1 - 0.05^(1/n).
summary_needed = Von jedem Produkt prüfen wir { $n ->
    [one] eine Packung
   *[other] { spelt } Packungen
}. { $rule ->
    [detection] { $n ->
        [one] Ist sie nicht { over_the_limit },
       *[other] Ist keine davon { over_the_limit },
    }
   *[other] { $n ->
        [one] Liegt sie nicht { over_the_limit },
       *[other] Liegt keine davon { over_the_limit },
    }
} so zeigt das, und nur bei zufälliger Auswahl, auf dem Vertrauensniveau 95 %, dass weniger als { $shows } % aller Packungen des Produkts { $rule ->
    [detection] { over_the_limit } sind.
   *[other] { over_the_limit } liegen.
} Um zu zeigen, dass es noch weniger sind, müssten mehr Packungen zufällig gewählt und geprüft werden, und { $rule ->
    [detection] keine davon dürfte { over_the_limit } sein:
   *[other] keine davon dürfte { over_the_limit } liegen:
}

# Head of its first column; the shares follow.
summary_needed_share = Weniger als

# Name of its row.
summary_needed_packages = Zu prüfende Packungen

## How well the extractions agree

# Title of the chapter.
summary_pairs_title = Wie gut die Extraktionen übereinstimmen

# First sentence, where no package has results.
summary_pairs_empty = Noch hat keine Packung Ergebnisse.

# First sentences of the chapter. Two extractions that are both too small to measure, or both too large, cannot disagree:
# all that can be said is that nothing speaks against it.
summary_pairs = Die Extraktionen einer Packung sollten fast dieselbe Zahl ergeben. Von { $packages ->
    [one] { $packages } Packung
   *[other] { $packages } Packungen
} mit Ergebnissen spricht bei { $agree } nichts dagegen, und { $disagree ->
    [one] { $disagree } stimmte
   *[other] { $disagree } stimmten
} nicht überein{ $incomplete ->
    [0] { "" }
    [one] ; { $incomplete } hatte zu wenige brauchbare Extraktionen
   *[other] ; { $incomplete } hatten zu wenige brauchbare Extraktionen
}.

# In the place of the charts.
summary_pairs_nothing = Keine Packung hat zwei Extraktionen, die beide messbar waren; so ist nichts darzustellen.

# Head of the plot of differences.
summary_agreement_title = Differenz gegen Mittelwert

# Below it.
summary_agreement_note = { $pairs ->
    [one] Gezeigt ist { $pairs } Paar, bei dem beide Extraktionen gemessen sind.
   *[other] Gezeigt sind { $pairs } Paare, bei denen beide Extraktionen gemessen sind.
} Schattiert: die Differenz, die zwischen zweien zulässig ist, wie der Teil über das Vorgehen sie angibt. Gestrichelter Kreis: Das Paar stimmt nicht überein; wo das Labor die Prüfung wiederholt hat, wurde über die Packung nach allen ihren Extraktionen entschieden. Zeichen, die einander verdecken würden, sind einmal gezeichnet.

# Head of the control chart.
summary_range_title = Spannweiten-Regelkarte

# Below it. $n pairs crossed the control line (ISO 7870-2:2023: 3.267 mean ranges); $stood: how many of them are still
# within what two readings may differ by; $apart: how many are not.
summary_range_note = Die Spannweite ist die größere Zahl weniger die kleinere, in Prozent ihres Mittelwerts. Die Regelgrenze ist das 3,267-Fache der mittleren Spannweite der übereinstimmenden Paare. { $n ->
    [0] Kein Paar hat sie überschritten.
    [one] { $stood ->
        [none] Ein Paar hat sie überschritten; es stimmt nicht überein.
       *[all] Ein Paar hat sie überschritten; seine Differenz ist noch in dem, was zwischen zweien zulässig ist.
    }
   *[other] { $stood ->
        [none] { spelt_first } Paare haben sie überschritten; keines davon stimmt überein.
        [all] { spelt_first } Paare haben sie überschritten; alle sind noch in dem, was zwischen zweien zulässig ist (größere Kreise).
        [one] { spelt_first } Paare haben sie überschritten; eines davon ist noch in dem, was zwischen zweien zulässig ist (größerer Kreis), { $apart ->
            [one] eines stimmt nicht überein
           *[other] { $apart_spelt } stimmen nicht überein
        }.
       *[some] { spelt_first } Paare haben sie überschritten; { $stood_spelt } davon sind noch in dem, was zwischen zweien zulässig ist (größere Kreise), { $apart ->
            [one] eines stimmt nicht überein
           *[other] { $apart_spelt } stimmen nicht überein
        }.
    }
}

# Head of the table of repeatability.
summary_repeatability_title = Wiederholpräzision aus diesen Paaren

# Heads of its columns, from here on.
summary_repeatability_pairs = Paare

# Likewise. Room for one word.
summary_repeatability_agreeing = Im Einklang

# Likewise.
summary_repeatability_flagged = Auffällig, weggelassen

# Likewise.
summary_repeatability_size = Relative Standardabweichung einer Extraktion (95-%-Intervall)

# Likewise.
summary_repeatability_median = Nach dem Median aller Paare

# Names of its rows, from here on; a lab's name stands as it is.
summary_pairs_all = Alle

# Likewise: pairs whose mean is less than the limit.
summary_pairs_below = Mittel unter { $limit }

# Likewise: pairs whose mean is the limit or more.
summary_pairs_from = Mittel bei oder über { $limit }

# In the column of sizes, in per cent; from the chi-squared distribution.
summary_repeatability = { $size } % ({ $lower } bis { $upper })

# Below the table. $n: how many packages of each product are tested; $chance: how often sound ones are flagged (ISO
# 5725-6:1994, 4.2: 95 % of pairs are within the allowed difference).
summary_flagged = Paare, die nicht übereinstimmen, gelten als auffällig und sind weggelassen: Ein Krümel in einer Teilmenge ist nicht die Streuung des Verfahrens. Das macht die Zahlen etwas zu klein; den Median aller Paare verschieben einige wenige, die weit auseinanderliegen, kaum. { $n ->
    [one] Eine einwandfreie Packung wird in etwa { $chance } % aller Fälle allein durch Zufall auffällig.
   *[other] Von { spelt } einwandfreien Packungen wird in etwa { $chance } % aller Fälle allein durch Zufall mindestens eine auffällig.
}

# Below it. "fits": no cause to change it; "below": the interval lies below it, but not by enough; "smaller" and "larger":
# what is found differs, and $proposal is put forward; $setting is it as programme.toml has it, with a point.
summary_assumption = Paare werden an einer angenommenen Wiederholpräzision von { $assumed } % gemessen. { $finding ->
    [below] Das Intervall liegt darunter, aber nicht weiter, als das Weglassen auffälliger Paare bewirken kann, oder der Median aller Paare ist nicht kleiner: kein Anlass, sie zu ändern.
    [smaller] Sie streuen weniger: Zulässig sind Differenzen, die dieses Labor kaum je hat. Wir schlagen { $proposal } % vor (relative_repeatability = { $setting } in programme.toml), von der nächsten Runde an; was vorher entschieden wurde, bleibt, wie es ist.
    [larger] Sie streuen mehr: Mehr einwandfreie Paare werden auffällig, als hier gesagt ist, oder die Proben sind ungleichmäßig. Wir schlagen { $proposal } % vor (relative_repeatability = { $setting } in programme.toml), von der nächsten Runde an; was vorher entschieden wurde, bleibt, wie es ist.
   *[fits] Die Paare selbst geben keinen Anlass, sie zu ändern.
}

# Below it (Horwitz and others, J AOAC 63:1344, 1980; Thompson, Analyst 125:385, 2000).
summary_horwitz = Zum Vergleich: Chemische Verfahren streuen am Grenzwert zwischen Laboren um etwa { $between } % (Horwitz-Funktion). Die Streuung hier, innerhalb eines Labors, ist das { $ratio }-Fache davon; bis zum 1,3-Fachen ist bei ihnen üblich, und bei Glutenverfahren mehr.

# Below it, a sentence a lab. $p: "= 0.32" or "< 0.001".
summary_drift = { $lab }, ohne auffällige Paare: { $early } % in der früheren Hälfte, { $late } % in der späteren; { $apart ->
    [yes] weiter auseinander, als der Zufall oft bewirken würde
   *[no] nicht weiter auseinander, als der Zufall bewirkt
} (F-Test, p { $p }).

# Head of the table of pairs above the control line or farther apart than is allowed.
summary_flagged_title = Paare jenseits einer Grenze

# Heads of its columns, from here on.
summary_flagged_package = Packung

# Likewise.
summary_flagged_mean = Mittel

# Likewise.
summary_flagged_range = Spannweite

# Likewise.
summary_flagged_allowed = Zulässig

# Likewise.
summary_flagged_became = Das Paar

# In the last column, below its head. $all: where the lab repeated the test, whether all $n extractions agree.
summary_became = { $pair ->
    [agrees] ist im Zulässigen
   *[apart] stimmt nicht überein
}{ $all ->
    [agree] ; alle { spelt } stimmen überein
    [disagree] ; nicht alle { spelt } stimmen überein
   *[none] { "" }
}

## Lists of products

# Title of the chapter on products over the limit, and on those without a verdict.
summary_over_title = { $rule ->
    [detection] Produkte mit nachgewiesenem Gluten
   *[other] Produkte { over_the_limit }
}

# In the place of the list.
summary_over_empty = Von keinem Produkt ist gezeigt, dass es { $rule ->
    [detection] { over_the_limit } ist.
   *[other] { over_the_limit } liegt.
}

# Above the list.
summary_over_lede = Jeder Hersteller soll es vor der Veröffentlichung erfahren und wird um Antwort gebeten; was vor dieser Zeit veröffentlicht wurde, sagt es. Antworten sind gedruckt, wie sie geschrieben wurden.

# Heads of the columns of lists, from here on.
summary_list_number = Nummer

# Likewise.
summary_list_product = Marke und Produkt

# Likewise.
summary_list_results = Ergebnisse der Packungen, { $unit }

# Likewise: the day of the notice.
summary_list_told = Mitgeteilt

# Likewise: by when it asks for an answer.
summary_list_due = Antwort bis

# Likewise: the day of the answer.
summary_list_replied = Geantwortet

# Likewise.
summary_list_why = Warum

# Head of the second list.
summary_none_title = Produkte ohne Urteil

# In the place of the list.
summary_none_empty = Jedes Produkt hat ein Urteil.

## What the labels say

# Title of the chapter.
summary_labels_title = Was die Etiketten sagen

# First sentences of the chapter.
summary_labels_lede = Jedes Zutatenverzeichnis wird neben der Prüfung gelesen. Ein Befund ist hier eine Frage an den Hersteller. Er ist kein Prüfergebnis.

# Heads of the columns, from here on.
summary_labels_finding = Befund

# Likewise.
summary_labels_example = Beispiel, wie gedruckt

# Likewise.
summary_labels_products = Produkte

# Likewise. "claims": each product's claim has a limit of its own.
summary_labels_over = { $shown ->
    [claims] davon über dem Grenzwert ihrer Angabe
   *[limit] davon { limit_over }
}

# Likewise.
summary_labels_printed = Wie gedruckt

# Likewise.
summary_labels_verdict = Urteil der Prüfung

# Head of the list of products with a finding.
summary_labels_ask = Produkte, zu denen es etwas zu fragen gibt

# In both tables. "source": an ingredient that the rule does not allow; "no_list": the register has no list of ingredients;
# "precaution": words such as "may contain", whatever else is found.
summary_finding = { $kind ->
    [source] Eine Glutenquelle in den Zutaten
    [allowed] Eine Glutenquelle, die die Regel für die Angabe nicht verbietet
    [oats] Hafer, ohne ein Wort dazu, wie er getrennt gehalten wird
    [unclear] Ein Ausdruck unklarer Herkunft
    [unread] Ein Verzeichnis, das wir nicht lesen konnten
    [nothing] Kein Ausdruck nennt eine Glutenquelle
    [no_list] Kein Zutatenverzeichnis zu lesen
   *[precaution] Neben jedem davon: ein vorsorglicher Hinweis
}

## How we test and decide, and the register

# Title of the chapter.
summary_methods_title = Wie wir prüfen und entscheiden

# Title of the chapter.
summary_register_title = Register aller Ergebnisse

# Above the register; the meaning of its two letters follows. $over: "at or above 20 ppm".
summary_register_lede = Jedes Produkt, nach Warengruppe und Marke. Schwarz: { $over }. Gestrichelt: kein Ergebnis oder eines, das nicht entscheidet.

# Under the product's name, where the lab repeated the test of a package.
summary_register_repeated = Untersuchung wiederholt

# Head of the column of what the labels come to.
summary_register_label = Etikett

# Likewise.
summary_register_product = Produkt

# Likewise.
summary_register_verdict = Urteil

# Before the results of a second and third line.
summary_register_further = weitere Packungen
