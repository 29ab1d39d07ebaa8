# Die Schreiben an einen Hersteller: Mitteilung, Berichtigung, Nachricht.

## The frame of a letter

# At the head of each page of a notice; the number of the sheet follows.
letter_notice_head = Mitteilung von Ergebnissen · Blatt

# At the head of each page of a letter of correction; the number of the sheet follows.
letter_correction_head = Berichtigung · Blatt

# At the foot of each page; the programme's mail address follows.
letter_questions = Fragen an:

# The first line of the address.
letter_addressee = Qualitätsmanagement

# How a letter on paper begins.
letter_dear = Sehr geehrte Damen und Herren!

# How letters and mails end; the name of who writes follows.
letter_yours = Mit freundlichen Grüßen

## The notice

# The first line of a notice: the product, with what is in a package.
letter_title = Ergebnisse zu Ihrem Produkt { $name }{ $has_net ->
    [yes] , { $net }
   *[no] { "" }
}

# The title of a notice as a file.
letter_notice_document = { $title }. Mitteilung an den Hersteller, Blatt { $sheet }

# What was bought. "some", "none": the lab has not reported on every package. "shops": the register names the shop of each.
letter_bought = { $reported ->
    [all] { $packages ->
        [one] Wir haben 1 Packung dieses Produkts { $place ->
            [shops] im Handel gekauft
           *[unknown] gekauft
        } und auf Gluten untersuchen lassen.
       *[other] Wir haben { $packages } Packungen dieses Produkts { $place ->
            [shops] im Handel gekauft
           *[unknown] gekauft
        } und auf Gluten untersuchen lassen.
    }
    [some] { $packages ->
        [one] Wir haben 1 Packung dieses Produkts gekauft.
       *[other] Wir haben { $packages } Packungen dieses Produkts gekauft.
    } Das Labor hat bisher über { $tested } davon berichtet.
   *[none] { $packages ->
        [one] Wir haben 1 Packung dieses Produkts gekauft. Das Labor hat darüber noch nicht berichtet.
       *[other] Wir haben { $packages } Packungen dieses Produkts gekauft. Das Labor hat darüber noch nicht berichtet.
    }
}

# How many of the packages that the lab has reported on are over the limit. $first, $counted and $tested are
# numbers in words, $first as a sentence begins with it.
letter_found_over = { $rule ->
    [detection] { $share ->
        [one] In der einen Packung wurde Gluten nachgewiesen.
        [both] In beiden Packungen wurde Gluten nachgewiesen.
        [all] In allen { $tested } Packungen wurde Gluten nachgewiesen.
       *[some] Gluten wurde in { $over ->
            [one] einer
           *[other] { $counted }
        } von { $tested } Packungen nachgewiesen.
    }
   *[other] { $share ->
        [one] Die eine Packung lag
        [both] Beide Packungen lagen
        [all] Alle { $tested } Packungen lagen
       *[some] { $first } von { $tested } Packungen { $over ->
            [one] lag
           *[other] lagen
        }
    } { side_over }.
}

# That every package is within the limit, in a letter about the label.
letter_found_within = { $rule ->
    [detection] { $packages ->
        [one] In der einen Packung wurde kein Gluten nachgewiesen (Nachweisgrenze { $limit }).
        [2] In keiner der beiden Packungen wurde Gluten nachgewiesen (Nachweisgrenze { $limit }).
       *[other] In keiner der { $tested } Packungen wurde Gluten nachgewiesen (Nachweisgrenze { $limit }).
    }
   *[other] { $packages ->
        [one] Die eine Packung lag { side_within }.
        [2] Beide Packungen lagen { side_within }.
       *[other] Alle { $tested } Packungen lagen { side_within }.
    }
}

# That the results give no verdict, in a letter about the label.
letter_found_nothing = Die Ergebnisse lassen kein Urteil zu.

# That the letter asks about the label: besides a result over the limit, or for that alone.
letter_label_too = { $over ->
    [yes] Außerdem haben wir eine Frage zum Zutatenverzeichnis.
   *[no] Unsere Frage gilt dem Zutatenverzeichnis.
}

# Why the letter comes now.
letter_before = Wir schreiben Ihnen vor der Veröffentlichung, damit Sie die Tatsachen prüfen und antworten können.

# Heads of the table of packages.
letter_package = Packung
letter_lot = Charge
letter_bought_on = Gekauft

# Head of a column of extractions; its number follows.
letter_extraction = Extr.

# Head of the column of results; a comma and the unit follow.
letter_result = Ergebnis

# In a letter on a result over the limit, where no package's extractions disagree. "no": those of a package are all beyond the
# same end of the assay's range, so that only the absence of a contradiction is known.
letter_agree = { $sure ->
    [yes] Die Extraktionen jeder Packung stimmen überein, nach der Regel, die auf dem Blatt steht.
   *[no] Nichts zeigt, dass sich die Extraktionen einer Packung unterscheiden, nach der Regel, die auf dem Blatt steht.
}

# The verdict in the words of the sheet.
letter_verdict = Das Urteil auf dem Blatt wird lauten: „{ $verdict }“.

# A word of the list of ingredients and the grain that it is of.
letter_term = „{ $printed }“{ $grain ->
    [wheat] { " " }(Weizen)
    [barley] { " " }(Gerste)
    [rye] { " " }(Roggen)
    [oats] { " " }(Hafer)
    [triticale] { " " }(Triticale)
    [wheat_or_barley] { " " }(Weizen oder Gerste)
    [wheat_or_rye] { " " }(Weizen oder Roggen)
   *[unknown] { "" }
}

# What the list of ingredients names: a fact.
letter_label_names = Das Zutatenverzeichnis nennt { $terms }; auf der Packung steht „{ $claim }“.

# What the rule says of ingredients, quoted and not applied. 21 CFR 101.91(a)(3)(i); CXS 118-1979, 2.1.1; B.24.018 of the Food
# and Drug Regulations; Resolución Conjunta 32/2023; Reglamento Sanitario de los Alimentos, articles 516 and 518; Food Standards
# Code, Standard 1.2.7 with Schedule 4.
letter_label_rule = { $law ->
    [us] Die Regel 21 CFR 101.91 verlangt für Lebensmittel mit dieser Angabe, dass keine Zutat ein glutenhaltiges Getreide ist und keine aus solchem Getreide stammt, die nicht zur Entfernung von Gluten behandelt wurde.
    [codex] Der Codex-Standard CXS 118 verlangt für Lebensmittel mit dieser Angabe, dass keine Zutat aus Weizen, Roggen oder Gerste stammt, es sei denn, sie wurde eigens zur Entfernung von Gluten behandelt.
    [canada] B.24.018 der kanadischen Food and Drug Regulations verlangt für Lebensmittel mit dieser Angabe, dass sie aus ihren Zutaten kein Gluten von Gerste, Hafer, Roggen, Triticale oder Weizen enthalten.
    [argentina] Die Resolución Conjunta 32/2023 verlangt für Lebensmittel mit dieser Angabe, dass sie ohne Weizen, Hafer, Gerste und Roggen hergestellt werden.
    [chile] Das Reglamento Sanitario de los Alimentos verlangt für Lebensmittel mit dieser Angabe, dass sie ohne glutenhaltiges Getreide hergestellt werden.
    [au-nz] Standard 1.2.7 des Food Standards Code verlangt für Lebensmittel mit dieser Angabe, dass sie keinen Hafer, kein gemälztes glutenhaltiges Getreide und keine Erzeugnisse daraus enthalten.
   *[other] Die Regel des Programms fragt nach den Zutaten von Lebensmitteln mit dieser Angabe.
}

letter_ask_head = Worum wir Sie bitten

# What is asked of every maker. The statement is of up to 100 words, as the sheet has room for.
letter_ask = Bitte teilen Sie uns mit, wenn eine Tatsache nicht stimmt: die Charge, die Tage, die Zutaten, wie wir sie gelesen haben. Wenn Sie möchten, senden Sie uns eine Stellungnahme von höchstens 100 Wörtern. Wir drucken sie ungekürzt auf dem Blatt selbst. Sie müssen das Ergebnis nicht erklären.

# Where the list of ingredients names a source of gluten.
letter_ask_ingredient = Haben wir das Zutatenverzeichnis falsch gelesen, oder ist die Zutat so hergestellt, dass sie keine Glutenquelle ist? Dann teilen Sie uns bitte mit, wie und aus welchem Getreide.

# Where the list names oats and nothing is on record of them.
letter_ask_oats = Das Zutatenverzeichnis nennt Hafer: Bitte teilen Sie uns mit, ob und wie er bei Anbau, Transport und Vermahlung von anderem Getreide getrennt gehalten wird.

letter_offer_head = Was Sie von uns erhalten können

# What goes along of the lab's files, as publishing.attach has it. "some": the lab has not reported on every package.
letter_offer_files = { $attach ->
    [whole] { $reported ->
        [all] Die Dateien des Labors sind dem beigelegten Entwurf des Blattes angehängt.
       *[some] Was das Labor bisher gesandt hat, ist dem beigelegten Entwurf des Blattes angehängt.
    }
    [excerpt] Was wir aus den Dateien des Labors verwendet haben, ist dem beigelegten Entwurf angehängt.
   *[none] Auf Anfrage senden wir Ihnen Zelle für Zelle, was wir aus den Dateien des Labors verwendet haben.
}

# What is kept of the packages: $kept is the setting "retained".
letter_kept = Wir bewahren auf: { $kept }.

# After what is kept.
letter_offer_kept = Auf Anfrage senden wir einen Teil davon an ein Labor Ihrer Wahl.

# Where nothing is reported and nothing kept.
letter_offer_nothing = Noch gibt es nichts, was wir Ihnen senden könnten.

letter_next_head = Wie es weitergeht

# The steps of what happens next, each below its day.
letter_step_letter = dieses Schreiben
letter_step_reply = wir erbitten Ihre Antwort
letter_step_publish = wir veröffentlichen

# The days of the steps in a letter without a date.
letter_today = heute
letter_day = Tag { $day }

# What happens without an answer, by a day or within days.
letter_without_reply = { $dated ->
    [yes] Wenn wir bis zum { $day } keine Antwort haben, vermerkt das Blatt dies ohne weiteren Zusatz.
   *[no] { $days ->
        [one] Wenn wir binnen eines Tages keine Antwort haben, vermerkt das Blatt dies ohne weiteren Zusatz.
       *[other] Wenn wir binnen { $days } Tagen keine Antwort haben, vermerkt das Blatt dies ohne weiteren Zusatz.
    }
} Eine spätere Antwort wird als neue Fassung nachgetragen.

letter_says_not_head = Was dieses Schreiben nicht sagt

# What a notice or a correction does not say: $over, $label are what it says against the product.
letter_says_not = { $over ->
    [yes] Es sagt nicht, wie Gluten hineingelangt ist, dass andere Packungen ebenso sind oder dass jemand nachlässig war. Es ist keine rechtliche Feststellung: Es sagt, { $rule ->
        [detection] in welchen Packungen Gluten nachgewiesen wurde
        [passes] welche Packungen über dem Grenzwert lagen
       *[fails] welche Packungen nicht unter dem Grenzwert lagen
    }{ $label ->
        [yes] { " " }und was das Zutatenverzeichnis nennt, nicht mehr.
       *[no] , nicht mehr.
    }
   *[no] { $label ->
        [yes] Es sagt nicht, dass das Lebensmittel Gluten enthält, dass andere Packungen ebenso sind oder dass jemand nachlässig war. Es ist keine rechtliche Feststellung: Es sagt, was das Zutatenverzeichnis nennt, nicht mehr.
       *[no] Es sagt nicht, dass andere Packungen ebenso sind. Es ist keine rechtliche Feststellung und kein Siegel: Es sagt, was diese Packungen gezeigt haben, nicht mehr.
    }
}

## Beside the notice

# Above the largest item beside the letter: a day, or a number of days.
letter_reply_by = Bitte antworten Sie bis zum
letter_reply_within = Bitte antworten Sie binnen
letter_days = { $days ->
    [one] 1 Tag
   *[other] { $days } Tagen
}

letter_publish_label = Geplanter Tag der Veröffentlichung
letter_publish_after = { $days ->
    [one] 1 Tag nach diesem Schreiben
   *[other] { $days } Tage nach diesem Schreiben
}
letter_sheet_label = Blatt
letter_sheet = { $sheet }, Entwurf liegt bei
letter_limit_label = Grenzwert

# Taken in by the limit.
letter_law = { $law ->
    [us] 21 CFR 101.91
    [codex] Codex-Standard CXS 118
    [eu] Verordnung (EU) Nr. 828/2014
    [uk] Verordnung (EU) Nr. 828/2014, wie sie im Vereinigten Königreich fortgilt
    [canada] Standpunkt von Health Canada zu B.24.018 der Food and Drug Regulations
    [argentina] Resolución Conjunta 32/2023
    [chile] Reglamento Sanitario de los Alimentos, Artikel 518
    [au-nz] Food Standards Code, Standard 1.2.7
   *[custom] eigene Regel des Programms
}

# The limit that the claim on the package must keep.
letter_limit = { $rule ->
    [detection] Kein nachweisbares Gluten ({ letter_law }); das Verfahren weist es ab { $limit } nach (Nachweisgrenze)
    [passes] Höchstgehalt { $limit } ({ letter_law })
   *[fails] Weniger als { $limit } ({ letter_law })
}

letter_method_label = Verfahren
letter_lab_label = Labor
letter_reply_label = Antwort an
letter_enclosed_label = Anlage

# What goes along, as publishing.attach has it.
letter_enclosed = { $attach ->
    [whole] Entwurf des Blattes { $sheet } mit den angehängten Dateien des Labors; ein Antwortformular
    [excerpt] Entwurf des Blattes { $sheet } mit den angehängten Zellen des Labors; ein Antwortformular
   *[none] Entwurf des Blattes { $sheet }; ein Antwortformular
}

## The form for the reply

# The title of the form.
letter_form_head = Ihre Antwort

# Before the number of the sheet.
letter_form_sheet = Blatt

# Over what the maker can mend.
letter_form_facts_head = Die Angaben im Entwurf

# A box.
letter_form_right = Produkt, Chargen, Daten und Zutaten stimmen, wie sie dort stehen.

# A box, with lines to write on.
letter_form_wrong = Dies stimmt nicht, und so ist es richtig:

# Over the statement.
letter_form_statement_head = Ihre Stellungnahme

# A box.
letter_form_no_statement = Wir geben keine Stellungnahme ab.

# A box, with lines to write on.
letter_form_statement = Bitte drucken Sie dies unverändert auf das Blatt (höchstens 100 Wörter):

# Over the test that a maker may have made.
letter_form_rest_head = Eine eigene Untersuchung

# A box, where something is kept.
letter_form_rest = Bitte senden Sie einen Teil dessen, was von den Packungen aufbewahrt ist, an dieses Labor:

# A line to fill in.
letter_form_name = Name

# Likewise.
letter_form_position = Funktion

# Likewise.
letter_form_day = Datum

# Likewise.
letter_form_signature = Unterschrift

## The letter of correction

letter_correction_title = Berichtigung unserer Veröffentlichung zu Ihrem Produkt { $name }

# The title of the letter as a file.
letter_correction_document = { $title }. Blatt { $sheet }

# What the file is, for catalogues.
letter_correction_about = Berichtigung an den Hersteller

letter_said_head = Was wir gesagt haben
letter_says_head = Was wir jetzt sagen
letter_why_head = Warum
letter_does_head = Was wir tun

# What the earlier revision said against the product; "no", "no": nothing.
letter_said = In Fassung { $revision } unseres Blattes { $sheet } vom { $day } stand: { $over ->
    [yes] { $rule ->
        [detection] In mindestens einer Packung wurde Gluten nachgewiesen
        [passes] Mindestens eine Packung lag über dem Grenzwert
       *[fails] Mindestens eine Packung lag nicht unter dem Grenzwert
    }{ $label ->
        [yes] , und das Zutatenverzeichnis nennt eine Glutenquelle.
       *[no] .
    }
   *[no] { $label ->
        [yes] Das Zutatenverzeichnis nennt eine Glutenquelle.
       *[no] { $rule ->
            [detection] Von keiner Packung ist bekannt, dass Gluten darin nachgewiesen wurde
            [passes] Von keiner Packung ist bekannt, dass sie über dem Grenzwert liegt
           *[fails] Von keiner Packung ist bekannt, dass sie nicht unter dem Grenzwert liegt
        }, und das Zutatenverzeichnis nennt keine Glutenquelle.
    }
}

# The same of what is said now.
letter_says = { $over ->
    [yes] { $rule ->
        [detection] In mindestens einer Packung wurde Gluten nachgewiesen
        [passes] Mindestens eine Packung lag über dem Grenzwert
       *[fails] Mindestens eine Packung lag nicht unter dem Grenzwert
    }{ $label ->
        [yes] , und das Zutatenverzeichnis nennt eine Glutenquelle.
       *[no] .
    }
   *[no] { $label ->
        [yes] Das Zutatenverzeichnis nennt eine Glutenquelle.
       *[no] { $rule ->
            [detection] Von keiner Packung ist bekannt, dass Gluten darin nachgewiesen wurde
            [passes] Von keiner Packung ist bekannt, dass sie über dem Grenzwert liegt
           *[fails] Von keiner Packung ist bekannt, dass sie nicht unter dem Grenzwert liegt
        }, und das Zutatenverzeichnis nennt keine Glutenquelle.
    }
}

# The verdict of the new revision, issued or not yet.
letter_reads = { $issued ->
    [yes] Das Urteil auf dem Blatt lautet jetzt: „{ $verdict }“.
   *[no] Das Urteil auf dem Blatt wird lauten: „{ $verdict }“.
}

# Where the register of what was issued gives no reason (yet).
letter_why = Was wir jetzt wissen, ist nicht, was wir damals wussten. Das neue Blatt nennt den Grund und jede Zahl mit ihrer Quelle.

# What is done about the sheet.
letter_does = { $issued ->
    [yes] Das neue Blatt wurde am { $day } herausgegeben.
   *[no] Wir geben das neue Blatt sofort heraus; nichts hält es auf.
} Es nennt die Fassung, die es ersetzt. Unsere Seite mit Berichtigungen und unser nächster Rundbrief beginnen mit dieser Berichtigung. Das frühere Blatt bleibt in unserem Archiv, damit jeder sehen kann, was geändert wurde.

# Where the correction says something against the product for the first time.
letter_does_accuse = Wir warten nicht, weil sich Leserinnen und Leser auf das frühere Blatt verlassen. Bitte teilen Sie uns binnen { $days ->
    [one] eines Tages
   *[other] { $days } Tagen
} mit, wenn eine Tatsache nicht stimmt, und senden Sie, wenn Sie möchten, eine Stellungnahme von höchstens 100 Wörtern: Wir drucken sie ungekürzt in einer weiteren Fassung des Blattes.

# Where it takes something back.
letter_does_clear = Wenn jemand wiederholt hat, was wir gesagt haben, teilen Sie uns bitte mit, wer es war, und wir schreiben dorthin. Wenn unser Fehler Sie etwas gekostet hat, teilen Sie uns bitte auch das mit.

# Beside the letter.
letter_corrected_label = Berichtigt
letter_corrected = Blatt { $sheet }, Fassung { $revision } vom { $day }
letter_replaced_label = Ersetzt durch
letter_replaced = { $issued ->
    [yes] Fassung { $revision }, herausgegeben am { $day }
   *[no] Fassung { $revision }, Entwurf liegt bei
}

## The mails

# The subject of the mail to a maker.
mail_subject = { $about ->
    [both] Ergebnisse und Kennzeichnung:
    [label] Kennzeichnung:
   *[results] Ergebnisse:
} { $name }{ $has_brand ->
    [yes] { " " }({ $brand })
   *[no] { "" }
}, Blatt { $sheet }{ $dated ->
    [yes] , bitte antworten Sie bis zum { $day }
   *[no] { "" }
}

# The subject of a mail of correction.
mail_correction_subject = Berichtigung unseres Blattes { $sheet } zu { $name }

# How a mail to a maker begins.
mail_dear = Sehr geehrte Damen und Herren!

# The first paragraph.
mail_who = Wir sind { $programme } und lassen Lebensmittel mit der Angabe „{ $claim }“ auf Gluten untersuchen. Es geht um Ihr Produkt { $name }{ $has_brand ->
    [yes] { " " }({ $brand })
   *[no] { "" }
}, unser Blatt { $sheet }.

# A package over the limit, on a line of its own.
mail_package = Packung { $package }{ $has_lot ->
    [yes] , Charge { $lot }
   *[no] { "" }
}: { $result }

# After the packages: the rule is the programme's.
mail_enough = Nach der Regel des Programms genügt eine solche Packung für das Urteil, das wir veröffentlichen.

# What the list of ingredients names, besides a result over the limit ("yes") or alone.
mail_label = { $also ->
    [yes] Das Zutatenverzeichnis nennt außerdem
   *[no] Das Zutatenverzeichnis nennt
} { $terms }; das lesen wir als Glutenquelle in einem Lebensmittel mit dieser Angabe. Bitte teilen Sie uns mit, wenn wir es falsch gelesen haben.

# What is attached, and why we write.
mail_attached = Die Mitteilung und unser Ergebnisblatt sind angehängt. Sie zeigen jede Zahl, die Chargen, die Tage, das Verfahren und die Regel, nach der wir entscheiden. Wir schreiben Ihnen vor der Veröffentlichung, damit Sie die Tatsachen prüfen und antworten können.

# By when, and what happens then. Without a day, in days from the message on.
mail_reply = { $dated ->
    [yes] Bitte antworten Sie bis zum { $day }.
   *[no] { $days ->
        [one] Bitte antworten Sie binnen eines Tages nach dieser Nachricht.
       *[other] Bitte antworten Sie binnen { $days } Tagen nach dieser Nachricht.
    }
} Teilen Sie uns mit, wenn eine Tatsache nicht stimmt, und senden Sie, wenn Sie möchten, eine Stellungnahme: Wir drucken sie ungekürzt auf dem Blatt. Sie müssen das Ergebnis nicht erklären.{ $dated ->
    [yes] { " " }Wir wollen am { $publish } veröffentlichen.
   *[no] { "" }
} Ist bis zum Ablauf der Frist keine Antwort da, vermerkt das Blatt dies ohne weiteren Zusatz. Eine spätere Antwort wird nachgetragen.

# What the mail does not say.
mail_says_not = Diese Nachricht sagt nicht, wie Gluten hineingelangt ist, dass andere Packungen ebenso sind oder dass jemand nachlässig war. Sie ist keine rechtliche Feststellung{ $has_regulator ->
    [yes] : Ob ein Lebensmittel als glutenfrei verkauft werden darf, entscheidet die zuständige Behörde ({ $regulator }).
   *[no] .
}

# The first paragraph of a mail of correction.
mail_correction_who = Wir sind { $programme }. Dies ist eine Berichtigung dessen, was wir zu Ihrem Produkt { $name }{ $has_brand ->
    [yes] { " " }({ $brand })
   *[no] { "" }
} veröffentlicht haben, unser Blatt { $sheet }.

mail_correction_attached = Das Schreiben und das Blatt sind angehängt.

# Where the address would stand: "yes": the register has one that cannot be used. Plain letters without accents, which every
# mail program can show.
mail_no_maker = { $unusable ->
    [yes] Hier die Adresse des Herstellers eintragen: das Register hat keine brauchbare
   *[no] Hier die Adresse des Herstellers eintragen
}
