# What is not what it was: printed among the revisions of an amended sheet, in the digest, on the page of corrections and in
# the register of issues.

## One change

# What it is, what is printed now, and what was.
amended_change = { $what }: jetzt { $new }; vorher { $old }.

# What of the product it is.
amended_of_product = { $part ->
    [name] Name des Produkts
    [verdict] Urteil
    [label] Kennzeichnung
    [claim] Angabe zu Gluten
    [brand] Marke
    [net_content] Füllmenge
    [certifier] Zertifizierungsstelle
   *[barcode] Strichcode
}

# What of a package it is.
amended_of_package = { $part ->
    [result] Packung { $package }, Ergebnis
    [extractions] Packung { $package }, Extraktionen
    [lot] Packung { $package }, Charge
    [best_by] Packung { $package }, mindestens haltbar bis
    [bought_on] Packung { $package }, Kaufdatum
   *[shop] Packung { $package }, Geschäft
}

# A verdict, before or after.
amended_verdict = { $verdict ->
    [over_limit] über dem Grenzwert
    [within_limit] innerhalb des Grenzwerts
   *[no_verdict] kein Urteil
}

# What the label review found, before or after.
amended_finding = { $finding ->
    [none] ohne Befund
    [gluten_source] glutenhaltige Zutat
    [unverified_oats] Hafer ohne Nachweis
    [needs_review] zu klären
   *[no_ingredients] keine Zutaten erfasst
}

# The same with the terms that it rests on.
amended_finding_terms = { amended_finding } ({ $terms })

# A result of which only the upper end is known.
amended_up_to = bis { $figure }

# Where there was, or is, nothing.
amended_no_value = keine Angabe

# A package that the sheet did not have, or has no more.
amended_not_listed = nicht aufgeführt

# A reading that a correction takes out.
amended_set_aside = { $reported } (nicht gewertet)

## All of them

# A part of the sheet that reads otherwise. "wording": the same files give other words than were published.
amended_part = { $part ->
    [ingredients] die erfassten Zutaten
    [correspondence] der Schriftwechsel mit dem Hersteller
    [method] wie geprüft und entschieden wurde
    [provenance] woher die Zahlen stammen
    [earlier] was frühere Runden ergaben
    [programme] was das Programm über sich selbst sagt
   *[wording] der Wortlaut, durch eine andere Version der Software
}

# Before the other changes, where none is of a figure, the verdict or the finding on the label.
amended_no_figure = Weder Zahlen noch Urteil haben sich geändert.

# After them; $parts is a list of parts of the sheet.
amended_parts = Diese Teile lauten anders: { $parts }.

# In their place, where no archive has the revision before.
amended_unknown = Was Revision { $revision } sagte, ist in keinem Archiv mehr; deshalb lässt sich hier nicht Zahl für Zahl sagen, was sich geändert hat.
