# How was tested and decided, and where the figures come from.

## How we tested and decided (the sheet)

# The assay in the lab's words, and how often the programme has each package extracted.
method_assay = { $times ->
    [one] Verfahren: { $assays }. Jede Packung soll einmal extrahiert werden.
    [2] Verfahren: { $assays }. Jede Packung soll zweimal extrahiert werden.
   *[other] Verfahren: { $assays }. Von jeder Packung sollen { $spelt } Extraktionen gemessen werden.
}

# When extractions agree; the summary has the formula, and the sheet a sum worked out.
method_agreement = Extraktionen stimmen überein, wenn sie nicht weiter auseinanderliegen, als es Wiederholungen an einem Material dürfen (ISO 5725-6; die Formel steht in unserer Zusammenfassung).

# How often sound packages are found to disagree, where one does; in the summary always.
method_false_alarm = { $packages ->
    [one] Bei einer einwandfreien Packung wird in etwa { $chance } aller Fälle allein durch Zufall festgestellt, dass ihre Extraktionen nicht übereinstimmen.
   *[other] Bei wenigstens einer von { $packages } einwandfreien Packungen wird in etwa { $chance } aller Fälle allein durch Zufall festgestellt, dass ihre Extraktionen nicht übereinstimmen.
}

# What a package's result is, and what "<n" means.
method_result = Das Ergebnis einer Packung ist der Mittelwert ihrer Extraktionen; „<n“ ist irgendein Wert unter n.

# That nothing is rounded first, and that one package decides.
method_one_decides = { $rule ->
    [passes] Vorher wird nichts gerundet. Eine einzige Packung über dem Grenzwert entscheidet.
    [detection] Vorher wird nichts gerundet. Eine einzige Packung mit nachgewiesenem Gluten entscheidet.
   *[fails] Vorher wird nichts gerundet. Eine einzige Packung, die nicht unter dem Grenzwert liegt, entscheidet.
}

# Simple acceptance (ILAC-G8:09/2019, 4.2.1) and its risk.
method_simple = Eine Unsicherheit wird weder zugerechnet noch abgezogen (einfache Entscheidungsregel, ILAC-G8): Ein Ergebnis genau am Grenzwert liegt in bis zur Hälfte aller Fälle auf der falschen Seite.

# Guard bands (ILAC-G8:09/2019, 4.2.2); the uncertainty is a setting of the programme's.
method_guarded = Ein Ergebnis entscheidet nur, wenn es das auch noch tut, nachdem { $share } zugerechnet oder abgezogen sind: die erweiterte Messunsicherheit (k = 2), mit der dieses Programm rechnet (Schutzabstand, ILAC-G8).

# Where the rule knows no limit.
method_detection = Jede Zahl, die das Labor angibt, gilt als Nachweis, wie unsicher sie auch ist.

# Taken in by the next one.
method_limit_source = { $law ->
    [us] 21 CFR 101.91
    [codex] Codex-Standard CXS 118
    [eu] Verordnung (EU) Nr. 828/2014
    [uk] Verordnung (EU) Nr. 828/2014, wie sie im Vereinigten Königreich fortgilt
    [canada] Standpunkt von Health Canada zu B.24.018 der Food and Drug Regulations
    [argentina] Resolución Conjunta 32/2023
    [chile] Artikel 518 des Reglamento Sanitario de los Alimentos
    [au_nz] Food Standards Code, Schedule 4
   *[custom] eigene Regel des Programms
}

# The limit, as its law words it. "detection": Food Standards Code 1.2.7, where $limit is the assay's limit of detection.
method_limit = { $rule ->
    [passes] Grenzwert: Höchstgehalt { $limit } ({ method_limit_source }).
    [detection] Die Angabe verlangt, dass kein Gluten nachweisbar ist (Food Standards Code, Standard 1.2.7); das Verfahren weist es ab { $limit } nach (Nachweisgrenze).
   *[fails] Grenzwert: weniger als { $limit } ({ method_limit_source }).
}

# Whose the verdict is: a sheet that passes a lab's figures on must not look like the lab's own report (ISO/IEC 17025:2017, 7.8.6,
# 7.8.7, and the conditions of accreditation).
method_own = Das Urteil ist unseres: Das Labor hat es nicht gesehen, und seine Akkreditierung deckt es nicht ab.

## To bear in mind

# The label names barley as grain, and a sandwich R5 assay gave a figure (J Agric Food Chem 65:2155, 2017).
caution_barley = Ein solches Verfahren zeigt Gluten aus Gerste zu hoch an, etwa um das Zwei- bis Sechsfache.

# Oats: R5 does not see them, and grain in them lies in single kernels (Food Chem 240:391, 2018).
caution_oats = In Hafer erfasst das Verfahren nur das andere Getreide darin, das ungleich verteilt ist.

# Tannins bind gluten; skimmed milk powder in the extraction is the remedy.
caution_tannins = Polyphenole aus Kakao, Kastanie, Buchweizen und dergleichen binden Gluten und können ein Ergebnis senken; das Labor sagt nicht, dass es dagegen Magermilchpulver zugesetzt hat.

# The cocktail extraction frees gluten that heat has set (Eur J Gastroenterol Hepatol 17:1053, 2005).
caution_no_cocktail = Das Labor nennt die Cocktail-Extraktion nicht; ohne sie können erhitzte Lebensmittel zu niedrige Werte ergeben.

# A competitive assay where the food is neither fermented nor hydrolysed.
caution_competitive = Ein kompetitives Verfahren ist für zerlegte Eiweiße gemacht, nicht für unversehrtes Gluten.

# The label names what is fermented or hydrolysed; $terms are up to three of its words.
caution_pieces = Das Etikett nennt { $terms }: In Fermentiertem oder Hydrolysiertem kann einem Sandwich-Verfahren Gluten entgehen, sodass ein niedriger Wert weniger besagt, als es scheint.

## Where the figures come from

# A lab file. $first and $last are days as digits. What a report must carry, and a sheet that passes it on: ISO/IEC 17025:2017, 7.8.2.
method_source = { $lab }{ $reported ->
    [yes] , Prüfbericht { $report }
   *[no] { "" }
}{ $tested ->
    [day] , untersucht am { $first }.
    [days] , untersucht vom { $first } bis { $last }.
   *[no] .
}

# The lab's postal address.
method_address = Anschrift: { $address }.

# When the lab received the packages; $condition is in the lab's words.
method_received = { $described ->
    [yes] Eingang { $day } ({ $condition }).
   *[no] Eingang { $day }.
}

# When the report was issued.
method_issued = Prüfbericht vom { $day }.

# The lowest amount given as a number, and the lowest that is detected.
method_lowest = Bestimmungsgrenze { $lloq }, Nachweisgrenze { $lod }.

# In the lab's words.
method_uncertainty = Messunsicherheit nach Angabe des Labors: { $stated }.

# Whether the lab says that it is accredited for this test.
method_accredited = { $accredited ->
    [yes] Nach eigener Angabe ist das Labor für diese Prüfung akkreditiert.
   *[no] Nach eigener Angabe ist das Labor für diese Prüfung nicht akkreditiert.
}

# The lab's remarks, deviations from its method among them; $remarks are quoted.
method_remarks = Das Labor bemerkt: { $remarks }.

# Words of the lab's.
method_quoted = „{ $words }“

# A thing in the list of the next one.
method_thing = { $thing ->
    [address] Anschrift des Labors
    [report] Nummer des Prüfberichts
    [received] Tag des Eingangs
    [tested] Tag der Untersuchung
    [uncertainty] Messunsicherheit
   *[accreditation] Akkreditierung
}

# What the lab does not state: said, and not passed over.
method_not_stated = Nicht angegeben: { $things }.

# The file's name.
method_file = Datei { $file }.

# Where in the file the figures stand, and the beginning and end of its checksum.
method_rows = { $rows ->
    [one] Zeile { $first }. SHA-256 { $sha256 }.
    [more] Zeilen { $first } bis { $last }. SHA-256 { $sha256 }.
   *[none] Keine Zeilen. SHA-256 { $sha256 }.
}

# A certificate of the lab's or a photograph of a package.
method_exhibit = { $kind ->
    [certificate] Analysenzertifikat { $file }. SHA-256 { $sha256 }.
   *[photograph] Foto { $file }. SHA-256 { $sha256 }.
}

# What every sheet, the newsletter and the web pages say last. $name is the authority of the settings, without "the".
method_caution = { $regulator ->
    [named] Dies ist kein ärztlicher Rat. Was es für Sie bedeutet, sagt Ihnen die ärztliche Praxis oder die Ernährungsberatung. Ein Test auf Gluten ist kein Test auf Weizenallergie. Ob ein Lebensmittel als glutenfrei verkauft werden darf, entscheidet die zuständige Behörde ({ $name }); ihr Wort geht unserem vor. Bitte werben Sie nicht mit unseren Ergebnissen.
   *[none] Dies ist kein ärztlicher Rat. Was es für Sie bedeutet, sagt Ihnen die ärztliche Praxis oder die Ernährungsberatung. Ein Test auf Gluten ist kein Test auf Weizenallergie. Ob ein Lebensmittel als glutenfrei verkauft werden darf, entscheiden die Behörden; ihr Wort geht unserem vor. Bitte werben Sie nicht mit unseren Ergebnissen.
}

## What a sheet's PDF carries

# The words of the sheet as data.
carried_data = Alles, was dieses Blatt sagt, als Daten

# The case.
carried_case = Worauf dieses Blatt beruht: die Zeilen der Register, die Regel, die Messwerte mit ihren Stellen, das Urteil

# A lab file as it came.
carried_whole = Die Datei des Labors, wie sie kam. SHA-256 { $sha256 }

# The cells of a lab file that are used for the sheet.
carried_excerpt = Die Zellen der Datei des Labors, die hier verwendet sind. SHA-256 der ganzen Datei { $sha256 }

## How we test and decide (the summary)

# The heads of the part.
practice_head = { $passage ->
    [buying] Kauf
    [testing] Untersuchung
    [agreement] Übereinstimmung
    [result] Ein Ergebnis je Packung
    [misses] Was der Untersuchung entgehen kann
    [rule] Die Regel
    [deciding] Entscheidung
    [intervals] Intervalle
    [reply] Recht auf Stellungnahme
    [about] Über das Programm
   *[change] Was ein Urteil ändern würde
}

# How many packages the programme buys. How and where they are bought stands in the registers of each.
practice_buying = { $packages ->
    [one] Von jedem Produkt wird eine Packung gekauft und unter einem Code an das Labor geschickt.
   *[other] { $spelt } Packungen jedes Produkts werden gekauft und jede unter einem Code an das Labor geschickt.
}

# What is kept of each package, as the settings have it: "the ground rest of each package, for six months".
practice_kept = Wir bewahren auf: { $kept }.

# How often each package is extracted.
practice_extractions = { $times ->
    [one] Jede Packung soll einmal extrahiert werden.
    [2] Jede Packung soll zweimal extrahiert werden; jede Extraktion wird für sich gemessen.
   *[other] Von jeder Packung sollen { $spelt } Extraktionen gemacht werden; jede wird für sich gemessen.
}

# The labs, divided by semicolons.
practice_labs = { $n ->
    [one] Labor: { $labs }.
   *[other] Labore: { $labs }.
}

# The assays in the labs' words, divided by semicolons.
practice_assays = { $n ->
    [one] Verfahren: { $assays }.
   *[other] Verfahren: { $assays }.
}

# The limits of quantification.
practice_lowest = { $n ->
    [one] Die kleinste Menge, die als Zahl angegeben wird (Bestimmungsgrenze), ist { $amounts }.
   *[other] Die kleinsten Mengen, die als Zahl angegeben werden (Bestimmungsgrenzen), sind { $amounts }.
}

# When extractions agree (ISO 5725-6:1994, 5.2); the repeatability is a setting of the programme's.
practice_agreement = Extraktionen einer Packung stimmen überein, wenn der Abstand zwischen ihnen höchstens f(n) mal s beträgt. Dabei ist f(2) gleich 2,8, f(3) gleich 3,3 und f(4) gleich 3,6 (ISO 5725-6), s die Wurzel aus (q/10)² + (r·m)², q die Bestimmungsgrenze des Verfahrens, m der Mittelwert und r die Wiederholpräzision einer Extraktion, die dieses Programm annimmt, { $share }. Eine Packung, deren Extraktionen nicht übereinstimmen, gilt nie als innerhalb des Grenzwerts.

# What a package's result is.
practice_result = { $rule ->
    [detection] Der Mittelwert ihrer Extraktionen. Ist in einer zu wenig, um es zu messen, so ist der Mittelwert ein Bereich. Vor einer Entscheidung wird nichts gerundet, und keine gedruckte Zahl wird über die Nachweisgrenze von { $limit } hinweg gerundet.
   *[fails] Der Mittelwert ihrer Extraktionen. Ist in einer zu wenig, um es zu messen, so ist der Mittelwert ein Bereich. Vor einer Entscheidung wird nichts gerundet, und keine gedruckte Zahl wird über { $limit } hinweg gerundet.
}

# What the test can miss (J AOAC 98:1346, 2015; Food Chem 216:170, 2017).
practice_misses = Ein Verfahren für Gluten aus Weizen, Roggen und Gerste erfasst Hafer nicht. In fermentierten oder hydrolysierten Lebensmitteln zeigt ein Sandwich-Verfahren zu wenig an, sodass ein niedriger Wert dort nichts entscheidet. Gluten, das in wenigen Krümeln sitzt, kann jeder Probe entgehen, in der sie fehlen.

# The rule of the programme's regime.
practice_rule = { $law ->
    [us] Vereinigte Staaten, 21 CFR 101.91: unter 20 ppm. Ein Lebensmittel mit genau 20 ppm hält die Regel nicht ein.
    [codex] Codex Alimentarius, CXS 118-1979: höchstens 20 mg/kg.
    [eu] Europäische Union, Durchführungsverordnung (EU) Nr. 828/2014: Höchstgehalt 20 mg/kg.
    [uk] Vereinigtes Königreich, fortgeltende Durchführungsverordnung (EU) Nr. 828/2014: Höchstgehalt 20 mg/kg.
    [canada] Kanada, Food and Drug Regulations B.24.018 und der Standpunkt von Health Canada dazu: höchstens 20 ppm durch Kreuzkontakt.
    [argentina] Argentinien, Código Alimentario Argentino: höchstens 10 mg/kg.
    [chile] Chile, Reglamento Sanitario de los Alimentos, Artikel 518: höchstens 5 mg/kg.
    [au_nz] Australien und Neuseeland, Food Standards Code, Standard 1.2.7: kein nachweisbares Gluten; das ist kein Grenzwert für eine Menge. Jede Zahl, die das Labor angibt, ist ein Nachweis; „<n“ ist keiner, wenn n nicht über der Nachweisgrenze des Verfahrens liegt: { $limit }, wenn das Labor keine eigene angibt.
   *[custom] { $rule ->
        [passes] Der eigene Grenzwert des Programms: höchstens { $limit }.
       *[fails] Der eigene Grenzwert des Programms: unter { $limit }.
    }
}

# How a package is decided. $share is, with "guarded", the expanded uncertainty of the settings, and otherwise the chance from which
# on a sheet tells it (JCGM 106:2012, 7.2).
practice_package = { $rule ->
    [detection] Eine Packung gilt als positiv auf Gluten, wenn das Labor eine Zahl angibt, und als negativ, wenn jedes ihrer Ergebnisse unter der Nachweisgrenze liegt. Wie unsicher eine Zahl ist, spielt dabei keine Rolle.
    [passes] { $decision ->
        [guarded] Als über dem Grenzwert gilt eine Packung nur, wenn ihr Ergebnis auch nach Abzug von { $share } darüber liegt, und als nicht darüber nur, wenn es auch mit { $share } dazu nicht darüber liegt (die erweiterte Messunsicherheit, k = 2, mit der dieses Programm rechnet). Dazwischen ist sie unentschieden.
       *[simple] Als über dem Grenzwert gilt eine Packung, wenn ihr Ergebnis darüber liegt. Die Zahl wird mit dem Grenzwert verglichen, wie sie ist; eine Unsicherheit wird weder zugerechnet noch abgezogen. Ein Ergebnis genau am Grenzwert liegt in bis zur Hälfte aller Fälle auf der falschen Seite; ist die Wahrscheinlichkeit dafür größer als { $share } oder liegt das Ergebnis im schraffierten Bereich des Blatts, so sagt es das Blatt, wo es für das Urteil zählt.
    }
   *[fails] { $decision ->
        [guarded] Als nicht unter dem Grenzwert gilt eine Packung nur, wenn ihr Ergebnis auch nach Abzug von { $share } nicht darunter liegt, und als darunter nur, wenn es auch mit { $share } dazu darunter liegt (die erweiterte Messunsicherheit, k = 2, mit der dieses Programm rechnet). Dazwischen ist sie unentschieden.
       *[simple] Als nicht unter dem Grenzwert gilt eine Packung, wenn ihr Ergebnis nicht darunter liegt. Die Zahl wird mit dem Grenzwert verglichen, wie sie ist; eine Unsicherheit wird weder zugerechnet noch abgezogen. Ein Ergebnis genau am Grenzwert liegt in bis zur Hälfte aller Fälle auf der falschen Seite; ist die Wahrscheinlichkeit dafür größer als { $share } oder liegt das Ergebnis im schraffierten Bereich des Blatts, so sagt es das Blatt, wo es für das Urteil zählt.
    }
}

# How a product is decided.
practice_product = { $rule ->
    [passes] Eine einzige Packung über dem Grenzwert entscheidet über das Produkt. Ein Produkt ist nur dann nicht über dem Grenzwert, wenn es keine seiner Packungen ist. In allen anderen Fällen gibt es kein Urteil.
    [detection] Eine einzige Packung, die positiv auf Gluten ist, entscheidet über das Produkt. Ein Produkt ist nur dann negativ, wenn es jede seiner Packungen ist. In allen anderen Fällen gibt es kein Urteil.
   *[fails] Eine einzige Packung, die nicht unter dem Grenzwert liegt, entscheidet über das Produkt. Ein Produkt ist nur dann unter dem Grenzwert, wenn es jede seiner Packungen ist. In allen anderen Fällen gibt es kein Urteil.
}

# The intervals of the shares (Clopper-Pearson).
practice_intervals = Zu Anteilen stehen exakte zweiseitige 95-%-Intervalle (Clopper-Pearson). Sie gälten, wenn die Produkte zufällig ausgewählt wären, und zählen jedes Produkt einmal, nach seiner letzten Runde mit Urteil. Eine unentschiedene Packung kann auf jeder Seite liegen: Die untere Grenze nimmt sie als innerhalb des Grenzwerts, die obere als außerhalb. Für 0 von n Packungen steht, wären sie zufällig ausgewählt, die einseitige obere Schranke zu 95 %: 1 weniger die n-te Wurzel aus 0,05.

# Taken in by the next message.
reply_time = { $reply_days ->
    [one] 1 Tag
   *[other] { $reply_days } Tage
}

publish_time = { $publish_days ->
    [one] 1 Tag
   *[other] { $publish_days } Tage
}

# The maker's right of reply; the days are settings of the programme's.
practice_reply = { $rule ->
    [passes] Liegt ein Produkt über dem Grenzwert oder nennt sein Etikett eine Glutenquelle, die die Regel nicht zulässt, so wird es dem Hersteller mitgeteilt; er erhält die Zahlen und hat { reply_time } für eine Antwort. Veröffentlicht wird, sobald er geantwortet hat oder { publish_time } nach dieser Mitteilung. Was vor seiner Zeit herauskam, sagt es. Antworten werden gedruckt, wie sie geschrieben wurden.
    [detection] Ist ein Produkt positiv auf Gluten oder nennt sein Etikett eine Glutenquelle, die die Regel nicht zulässt, so wird es dem Hersteller mitgeteilt; er erhält die Zahlen und hat { reply_time } für eine Antwort. Veröffentlicht wird, sobald er geantwortet hat oder { publish_time } nach dieser Mitteilung. Was vor seiner Zeit herauskam, sagt es. Antworten werden gedruckt, wie sie geschrieben wurden.
   *[fails] Liegt ein Produkt nicht unter dem Grenzwert oder nennt sein Etikett eine Glutenquelle, die die Regel nicht zulässt, so wird es dem Hersteller mitgeteilt; er erhält die Zahlen und hat { reply_time } für eine Antwort. Veröffentlicht wird, sobald er geantwortet hat oder { publish_time } nach dieser Mitteilung. Was vor seiner Zeit herauskam, sagt es. Antworten werden gedruckt, wie sie geschrieben wurden.
}

# What would change a verdict.
practice_change = Eine Berichtigung, eine wiederholte Untersuchung oder neue Packungen. Das Blatt erhält dann eine neue Fassung, die sagt, welche sie ersetzt und warum.
