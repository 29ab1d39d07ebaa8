# What is said of a label: on the sheet under "Label review", in the letter to the maker, in the newsletter.

## What the sentences are made of

# What stands for the words where the finding rests on the register and not on a word of the list.
label_one_ingredient = Eine Zutat

# The grain of a word, in brackets after it.
label_grain = { $grain ->
    [wheat] Weizen
    [barley] Gerste
    [rye] Roggen
    [triticale] Triticale
    [oats] Hafer
    [wheat_or_barley] Weizen oder Gerste
    [barley_or_wheat] Gerste oder Weizen
    [wheat_or_rye] Weizen oder Roggen
   *[wheat_rye_or_barley] Weizen, Roggen oder Gerste
}

# A language in which the review reads lists.
label_language = { $language ->
    [english] Englisch
    [german] Deutsch
    [spanish] Spanisch
    [french] Französisch
   *[italian] Italienisch
}

# What the rule says of a gluten source as an ingredient. 21 CFR 101.91(a)(3); CXS 118-1979, 2.1.1; Food and Drug Regulations,
# B.24.018; Resolución Conjunta 32/2023; Reglamento Sanitario de los Alimentos, 516 to 518; Standard 1.2.7.
label_source_rule = { $regime ->
    [us] Wurde sie nicht so verarbeitet, dass ihr Gluten entfernt wurde, ist eine solche Zutat nach 21 CFR 101.91 in einem als „{ $claim }“ verkauften Lebensmittel nicht zulässig, was auch immer die Untersuchung ergab.
    [codex] Wurde sie nicht eigens so verarbeitet, dass ihr Gluten entfernt wurde, lässt der Codex-Standard CXS 118 eine solche Zutat in einem als „{ $claim }“ verkauften Lebensmittel nicht zu, was auch immer die Untersuchung ergab.
    [eu] Die Verordnung (EU) Nr. 828/2014 lässt eine solche Zutat in einem als „{ $claim }“ verkauften Lebensmittel nicht zu, was auch immer die Untersuchung ergab.
    [canada] B.24.018 der kanadischen Food and Drug Regulations lässt eine solche Zutat in einem als „{ $claim }“ verkauften Lebensmittel nicht zu, was auch immer die Untersuchung ergab.
    [argentina] Die Resolución Conjunta 32/2023 lässt eine solche Zutat in einem als „{ $claim }“ verkauften Lebensmittel nicht zu, was auch immer die Untersuchung ergab.
    [chile] Das Reglamento Sanitario de los Alimentos lässt eine solche Zutat in einem als „{ $claim }“ verkauften Lebensmittel nicht zu, was auch immer die Untersuchung ergab.
    [au_nz] Standard 1.2.7 des Food Standards Code lässt eine solche Zutat in einem als „{ $claim }“ verkauften Lebensmittel nicht zu, was auch immer die Untersuchung ergab.
   *[custom] Die Regel des Programms lässt eine solche Zutat in einem als „{ $claim }“ verkauften Lebensmittel nicht zu, was auch immer die Untersuchung ergab.
}

## The finding

# The list is in none of the languages, or too little of it is.
label_unread = Dieses Zutatenverzeichnis konnten wir nicht lesen: Nichts davon, oder zu wenig, ist auf Englisch, Deutsch, Spanisch, Französisch oder Italienisch. Bis es jemand gelesen hat, spricht es weder für noch gegen das Lebensmittel.

# A gluten source that the rule does not allow with this claim.
label_source = { $n ->
    [one] { $terms } bezeichnet eine Glutenquelle. { label_source_rule }
   *[other] { $terms } bezeichnen eine Glutenquelle. { label_source_rule }
}

# Oats, and the register says nothing of how they were kept apart. R5 and like antibodies do not see oats.
label_oats = Das Zutatenverzeichnis nennt Hafer, und uns liegt nichts darüber vor, wie er angebaut und vermahlen wurde. Hafer wird leicht mit Weizen, Roggen und Gerste vermischt; die Untersuchung erfasst diese drei und nicht den Hafer selbst.

# Words that may or may not name a gluten source.
label_asked = { $terms }: Ob dies eine Glutenquelle ist, hängt von der Herstellung ab. Das ist eine Frage an den Hersteller, kein Ergebnis.

# Gluten sources that the rule does not forbid. "amount": Regulation (EU) No 828/2014, Annex A, limits the amount alone.
# "processed": claims such as "very low gluten". "unsaid": a limit of the programme's own. "unknown_claim": the claim is not settled.
label_not_forbidden = { $leave ->
    [amount] { $n ->
        [one] { $terms }: eine Glutenquelle, die die Regel für diese Angabe nicht verbietet. Die Verordnung (EU) Nr. 828/2014 fragt allein nach dem Glutengehalt.
       *[other] { $terms }: Glutenquellen, die die Regel für diese Angabe nicht verbietet. Die Verordnung (EU) Nr. 828/2014 fragt allein nach dem Glutengehalt.
    }
    [processed] { $n ->
        [one] { $terms }: eine Glutenquelle, die die Regel für diese Angabe nicht verbietet. Lebensmittel mit dieser Angabe werden aus Getreide hergestellt, dessen Glutengehalt verringert wurde.
       *[other] { $terms }: Glutenquellen, die die Regel für diese Angabe nicht verbietet. Lebensmittel mit dieser Angabe werden aus Getreide hergestellt, dessen Glutengehalt verringert wurde.
    }
    [unsaid] { $n ->
        [one] { $terms }: eine Glutenquelle. Die eigene Regel des Programms setzt einen Grenzwert und sagt nichts über Zutaten.
       *[other] { $terms }: Glutenquellen. Die eigene Regel des Programms setzt einen Grenzwert und sagt nichts über Zutaten.
    }
   *[unknown_claim] { $n ->
        [one] { $terms }: eine Glutenquelle. Was die Packung zu Gluten angibt, ist nicht geklärt; daher wird keine Regel über Zutaten angewandt.
       *[other] { $terms }: Glutenquellen. Was die Packung zu Gluten angibt, ist nicht geklärt; daher wird keine Regel über Zutaten angewandt.
    }
}

# The register has no list of ingredients.
label_no_list = Zu diesem Produkt liegt uns kein Zutatenverzeichnis vor; es gab also nichts zu prüfen.

# The list was read, and nothing was found.
label_nothing = Kein Wort des Zutatenverzeichnisses bezeichnet eine Glutenquelle.

## What the rule says besides

# Where the list names oats. 21 CFR 101.91; CXS 118-1979, footnote 1; Regulation (EU) No 828/2014, Annex B; SOR/2015-114.
label_oats_rule = { $regime ->
    [us] Nach 21 CFR 101.91 ist Hafer kein glutenhaltiges Getreide; das Lebensmittel muss dennoch unter 20 ppm bleiben.
    [codex] Der Codex-Standard CXS 118 überlässt es jedem Land, ob Hafer zulässig ist.
    [eu] Nach der Verordnung (EU) Nr. 828/2014 muss Hafer so hergestellt sein, dass eine Kontamination durch anderes Getreide ausgeschlossen ist; sein Glutengehalt darf höchstens 20 mg/kg betragen.
    [canada] Kanada lässt Hafer zu, der besonders hergestellt wurde, höchstens 20 ppm Gluten anderer Getreide enthält und glutenfreier Hafer genannt wird (SOR/2015-114).
   *[chile] Ob die Regel Chiles Hafer zulässt, ist nicht geklärt.
}

# Where the list names starch of wheat. The same sources, and Standard 1.2.7, Resolución Conjunta 32/2023, article 518.
label_starch_rule = { $regime ->
    [us] Nach 21 CFR 101.91 ist Weizenstärke zulässig, der das Gluten entzogen wurde, wenn das Lebensmittel unter 20 ppm bleibt; steht auf dem Etikett „wheat“, so muss dabeistehen, dass der Weizen nach der Regel verarbeitet wurde.
    [codex] Der Codex-Standard CXS 118 lässt Weizenstärke zu, der das Gluten eigens entzogen wurde, bis 20 mg/kg.
    [eu] Die Verordnung (EU) Nr. 828/2014 verbietet Weizenstärke in einem glutenfreien Lebensmittel nicht; es entscheidet der Glutengehalt.
    [canada] B.24.018 lässt kein Glutenprotein des Weizens als Zutat zu.
    [argentina] Die Resolución Conjunta 32/2023 lässt höchstens 10 mg/kg zu.
    [chile] Das Reglamento Sanitario de los Alimentos lässt höchstens 5 mg/kg zu.
   *[au_nz] Standard 1.2.7 lässt in einem als glutenfrei verkauften Lebensmittel kein nachweisbares Gluten zu.
}

# Where the register says how the oats were kept apart.
label_oats_register = { $oats ->
    [apart] Nach unserem Register wurde der Hafer getrennt von anderem Getreide angebaut und vermahlen. Den Hafer selbst erfasst die Untersuchung nicht.
   *[certified] Nach unserem Register deckt die Zertifizierung des Produkts den Hafer ab. Den Hafer selbst erfasst die Untersuchung nicht.
}

## Why

# Why words count; $why is a whole sentence.
label_explained = { $terms }: { $why }

# The same with the grain.
label_explained_of = { $terms } ({ $grain }): { $why }

# More words than a sheet has room to explain.
label_more = Die übrigen stehen in den Datendateien.

# In which languages the list was read.
label_read_in = Das Zutatenverzeichnis wurde gelesen auf { $languages }.

# Marks the review as an opinion (ISO/IEC 17025:2017, 7.8.7, of a laboratory's own reports).
label_opinion = Das ist unsere Lesart, kein Ergebnis des Labors.

## Beside the verdict

# What the label comes to, in few words: in a block beside that of the verdict at the head of the sheet, and beside the verdict in
# every list. $term is the first word in question, as printed on the package; $more counts the others.
label_judged = { $kind ->
    [source] { $named ->
        [one] Etikett nennt „{ $term }“
        [more] Etikett nennt „{ $term }“ und { $more } weitere
       *[none] Etikett nennt eine Glutenquelle
    }
    [allowed] { $named ->
        [more] Etikett nennt „{ $term }“ und { $more } weitere (nicht verboten)
       *[other] Etikett nennt „{ $term }“ (nicht verboten)
    }
    [oats] Etikett: Hafer ungeklärter Herkunft
    [ask] { $named ->
        [one] Etikett unklar: „{ $term }“
        [more] Etikett unklar: „{ $term }“ und { $more } weitere
       *[none] Etikett unklar
    }
    [unread] Etikett noch nicht gelesen
    [no_list] Kein Etikett erfasst
   *[nothing] Etikett: nichts gefunden
}

# In the block below these words.
label_judged_why = { $why ->
    [source] Die Regel lässt eine solche Zutat nicht zu, was auch immer die Untersuchung ergab.
    [amount] Die Regel für diese Angabe begrenzt den Glutengehalt, nicht die Zutaten.
    [processed] Lebensmittel mit dieser Angabe dürfen aus glutenvermindertem Getreide sein.
    [unsaid] Die eigene Regel des Programms sagt nichts über Zutaten.
    [unknown_claim] Was die Packung angibt, ist nicht geklärt; es wird keine Regel angewandt.
    [oats] Uns liegt nichts darüber vor, wie er angebaut und vermahlen wurde.
    [ask] Ob das eine Glutenquelle ist, ist eine Frage an den Hersteller.
    [unread] Nichts davon, oder zu wenig, ist in einer Sprache, die wir lesen.
    [no_list] Es gab kein Zutatenverzeichnis zu prüfen.
   *[nothing] Keines der Wörter, nach denen wir suchen, steht im Verzeichnis.
}

## The table of terms

# Why a word counts, by the word that the table has in its column "why". What must be asked is asked of the maker, not here.
label_why = { $why ->
    [why_wheat] Weizen ist ein glutenhaltiges Getreide.
    [why_flour] Mehl ohne Angabe der Pflanze ist Weizenmehl.
    [why_milled_wheat] Gemahlener Weizen, wenn keine andere Pflanze genannt ist.
    [why_old_wheat] Eine alte Weizenart, ein glutenhaltiges Getreide, wie sie auch beworben wird.
    [why_made_of_wheat] Aus Weizen, wenn keine andere Pflanze genannt ist.
    [why_pasta] Teigwaren ohne Angabe der Pflanze sind aus Weizen.
    [why_orzo] Eine Teigware aus Weizen; auf Italienisch Gerste.
    [why_gluten] Gluten selbst.
    [why_soba] Soba enthält neben Buchweizen oft Weizen.
    [why_wheat_in_pieces] Zerlegtes Weizeneiweiß: Ein Sandwich-Verfahren zeigt davon zu wenig an.
    [why_wheat_kernel] Ein Teil des Weizenkorns.
    [why_purified] Kann so weit gereinigt sein, dass wenig Eiweiß übrig ist.
    [why_wheat_starch] Weizenstärke enthält Gluten, wenn es ihr nicht entzogen wurde.
    [why_wheat_syrup] Aus Weizenstärke gewonnen; in Europa von der Kennzeichnung als Allergen ausgenommen. Der Grenzwert gilt dennoch.
    [why_barley_syrup] Aus Gerstenstärke gewonnen; in Europa von der Kennzeichnung als Allergen ausgenommen. Der Grenzwert gilt dennoch.
    [why_baked] Backwaren sind aus Weizenmehl, wenn sie nicht als glutenfrei bezeichnet sind.
    [why_triticale] Eine Kreuzung aus Weizen und Roggen, als glutenhaltiges Getreide genannt.
    [why_rye] Roggen ist ein glutenhaltiges Getreide.
    [why_barley] Gerste ist ein glutenhaltiges Getreide.
    [why_barley_fibre] Ein Ballaststoff aus Gerste.
    [why_malt] Malz ohne Angabe der Pflanze ist Gerstenmalz.
    [why_malt_distilled] Destilliert, aber aus Gerstenmalz.
    [why_other_malt] Das Getreide hat kein Gluten, doch können Enzyme aus Gerste verwendet worden sein.
    [why_beer] Aus Gersten- oder Weizenmalz gebraut.
    [why_soft_drink] Ein Erfrischungsgetränk.
    [why_brewers_yeast] Gebrauchte Brauhefe enthält Getreideeiweiß; auf Zuckerrübe gezogene Hefe nicht.
    [why_yeast_extract] Kann aus gebrauchter Brauhefe hergestellt sein.
    [why_soy_sauce] Meist mit Weizen gebraut.
    [why_tamari] Oft ohne Weizen gebraut, aber nicht immer.
    [why_barley_miso] Mit Gerste fermentiert.
    [why_miso] Kann mit Gerste oder Weizen fermentiert sein.
    [why_fu] In der japanischen Küche: Weizengluten.
    [why_no_plant] Die Pflanze ist nicht genannt.
    [why_starch_in_the_us] Die Pflanze ist nicht genannt. In den Vereinigten Staaten ist Stärke ohne Zusatz aus Mais, und Weizen muss genannt werden.
    [why_distilled] Beim Destillieren bleibt das Eiweiß zurück.
    [why_unnamed] Kann Weizen oder Gerste enthalten, ohne dass sie genannt sind.
    [why_oats] Hafer wird oft zusammen mit glutenhaltigem Getreide angebaut, befördert und vermahlen.
    [why_oats_gluten_free] Die Packung nennt den Hafer glutenfrei; einen Nachweis hat das Programm nur, wenn er im Register steht.
    [why_grass] Das Blatt hat kein Gluten, doch können Körner hineingeraten.
    [why_another_plant] Eine andere Pflanze oder ein Land.
    [why_buckwheat] Kein Weizen.
    [why_letters_of_malt] Hat mit Malz nur Buchstaben gemein.
    [why_enzymes] Enzyme aus Gerste können verwendet worden sein.
    [why_sticky] Klebreis klebt nur; Gluten hat er nicht.
    [why_other_gluten] Das Eiweiß von Mais oder Reis ist kein Gluten in diesem Sinn.
    [why_statement] Eine Aussage über das Lebensmittel und keine Zutat.
    [why_no_gluten] Ein Lebensmittel ohne eigenes Gluten.
    [why_nothing] Hat mit Gluten nichts zu tun.
    [why_plant_named] Eine andere Pflanze ist genannt.
    [why_wheat_german] Weizen, auf Deutsch.
    [why_rye_german] Roggen, auf Deutsch.
    [why_barley_german] Gerste oder Malz, auf Deutsch.
    [why_plant_german] Eine Pflanze ohne Gluten, auf Deutsch.
    [why_wheat_french] Weizen, auf Französisch.
    [why_rye_french] Roggen, auf Französisch.
    [why_barley_french] Gerste oder Malz, auf Französisch.
    [why_plant_french] Eine Pflanze ohne Gluten, auf Französisch.
    [why_wheat_spanish] Weizen, auf Spanisch.
    [why_rye_spanish] Roggen, auf Spanisch.
    [why_barley_spanish] Gerste oder Malz, auf Spanisch.
    [why_plant_spanish] Eine Pflanze ohne Gluten, auf Spanisch.
    [why_wheat_italian] Weizen, auf Italienisch.
    [why_grano] Auf Italienisch Weizen, auf Spanisch irgendein Korn.
    [why_rye_italian] Roggen, auf Italienisch.
    [why_barley_italian] Gerste oder Malz, auf Italienisch.
    [why_plant_italian] Eine Pflanze ohne Gluten, auf Italienisch.
    [why_declared] Die Packung gibt Gluten an.
    [why_pointer] Ein Hinweis auf das Zutatenverzeichnis und keine Zutat.
    [why_no_grain] Das Getreide ist nicht genannt.
    [why_wheat_dextrin] Aus Weizen gewonnen; nach der Reinigung ist wenig Eiweiß übrig.
    [why_rice_miso] Mit Reis fermentiert, doch manches auch mit Gerste.
    [why_sourdough] Das Getreide des Sauerteigs ist nicht genannt.
    [why_coix] Ein Gras, das Gerste genannt wird und keine ist (Coix).
    [why_bread] Aus Weizenmehl, wenn keine andere Pflanze genannt oder es nicht als glutenfrei bezeichnet ist.
   *[why_cross] Eine Kreuzung aus Weizen und Roggen oder aus Weizen und Gerste.
}
