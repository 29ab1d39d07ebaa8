# The pages for a web site and their feed.

## The index and the corrections

# Title of the index, and the link to it.
web_sheets = Ergebnisblätter

# Head of the index.
web_sheets_of = { $programme }: Ergebnisblätter

# Instead of the table.
web_none = Zurzeit ist kein Ergebnisblatt veröffentlicht.

# Title of the table.
web_published = Veröffentlichte Ergebnisblätter

# Head of a column.
web_product = Produkt

# Head of a column.
web_verdict = Urteil

# Head of a column.
web_sheet = Blatt

# Heading: published sheets that do not stand any more.
web_under_revision = In Überarbeitung

# Title of the page of corrections, and the link to it.
web_corrections = Berichtigungen

# Its head.
web_corrections_of = { $programme }: Berichtigungen

# Instead of the list.
web_no_corrections = Kein veröffentlichtes Blatt wurde berichtigt.

# Heading: a product and its sheet.
web_correction_of = { $product }, Blatt { $number }

# A revision; what was changed and why follows as it was written down.
web_replaces = Fassung { $revision } vom { $day } ersetzt Fassung { $replaced } vom { $replaced_day }.

# The title of a page in the browser.
web_title = { $page }: { $programme }

# Where mistakes are reported.
web_mistake = Fehler gefunden? { $address }

## The frame of every page

# The first link of every page: it leads past the list of pages. Shown when it has the focus.
web_skip = Zum Inhalt springen

# What the list of pages is called by a screen reader.
web_pages = Seiten

# Title of the page on how the programme tests, and the link to it.
web_how = So prüfen wir

# Its head.
web_how_of = { $programme }: So prüfen und entscheiden wir

# The link to the Atom feed.
web_feed = Feed der neuen und geänderten Blätter (Atom)

# What the index is, for a search engine; also the feed's subtitle.
web_about = Was { $programme } in Lebensmitteln gefunden hat, die als glutenfrei verkauft werden: alle veröffentlichten Ergebnisblätter und ihre Berichtigungen.

## The filter of the index

# Heading of the filter.
web_find = Ein Blatt finden

# Label of the field for words: a sheet's number, a product's or a brand's name.
web_words = Wörter des Namens oder Nummer des Blatts

# Label of the choice of brands.
web_brand = Marke

# Label of the choice of food groups, and head of a column.
web_group = Warengruppe

# Label of the choice of years: of the sheet's last revision.
web_year = Jahr der Herausgabe

# The first choice of each: nothing is chosen. It stands for brand, group, verdict and year alike.
web_any = Alle

# The button that puts the filter back.
web_all = Alle zeigen

# How many sheets are shown: two figures, put in by the page's script.
web_shown = Gezeigte Blätter: { $shown } von { $all }.

# A verdict to choose.
web_choice = { $verdict ->
    [over] { $rule ->
        [passes] Über dem Grenzwert
        [detection] Gluten nachgewiesen
       *[fails] Nicht unter dem Grenzwert
    }
    [within] { $rule ->
        [passes] Nicht über dem Grenzwert
        [detection] Kein Gluten nachgewiesen
       *[fails] Unter dem Grenzwert
    }
   *[none] Kein Urteil
}

## The page of a product

# The link to the PDF beside the page.
web_pdf = Blatt { $number } als PDF, mit den Daten, auf denen es beruht

# The same in the table of the index, before the number of the sheet.
web_pdf_short = PDF

# Above a product's name: the number of the sheet, and which revision it is.
web_number = Ergebnisblatt { $number } · { $edition }

# Heading of the ruler and the table.
web_ruler = Die Ergebnisse, Packung für Packung

# Title of the table of packages.
web_packages = Die Packungen und ihre Extraktionen, in { $unit }

# Head of a column: the code that the lab was given.
web_package = Packung

# Head of a column.
web_lot = Charge

# Head of a column.
web_best_by = Mindestens haltbar bis

# Head of a column: a day and a shop.
web_bought = Gekauft: Tag, Geschäft

# Head of a column of extractions.
web_extraction = Extraktion { $number }

# Head of a column: how far the extractions are apart.
web_found = Gefundener Abstand

# Head of a column: how far they may be apart.
web_allowed = Erlaubter Abstand

# Head of a column.
web_result = Ergebnis der Packung

# In the place of a figure: the lab reported the extraction without a readable result.
web_no_reading = keines

# Read out in the place of a dash: nothing is known or nothing applies.
web_nothing = keine Angabe

# Below the table.
web_unused = In Klammern: berichtet, nicht verwendet.

# Heading.
web_says = Was dieses Ergebnis sagt

# Heading.
web_says_not = Was es nicht sagt

# Heading.
web_label = Prüfung der Kennzeichnung

# Before the ingredient statement.
web_ingredients = Zutaten wie gedruckt:

# After it, where words of it are marked.
web_marked = Markiert: die Wörter, um die es hier geht.

# Before the precautionary words.
web_precautionary = Vorsorgliche Hinweise:

# Instead of them.
web_none_on_record = keine verzeichnet.

# Heading: what passed between the programme and the maker.
web_correspondence = Schriftwechsel mit dem Hersteller

# Heading.
web_method = So haben wir geprüft und entschieden

# Heading.
web_sources = Woher die Zahlen stammen

# Heading of the last words of every page.
web_note = Bitte beachten

# Heading.
web_revisions = Fassungen dieses Blatts

# A revision in the list, where why it was made follows; in the table of the index with the day as 2031-06-30.
web_revision_of = Fassung { $revision }, { $day }

# Heading: the same product in other rounds of testing.
web_rounds = Andere Runden dieses Produkts

# One of them, as a link.
web_round = Runde { $round }, Blatt { $number }: { $verdict }

## The feed

# Title of an entry: the first issue of a sheet.
web_entry_new = { $product }: Blatt { $number }

# Title of an entry: a further revision.
web_entry_amended = Geändert: { $product }, Blatt { $number }, Fassung { $revision }

# Title of an entry: a revision that takes back what was said against a product, or says it for the first time.
web_entry_corrected = Berichtigung: { $product }, Blatt { $number }, Fassung { $revision }

# Title of an entry: a published sheet does not stand any more, and the next one is not issued yet.
web_entry_under_revision = In Überarbeitung: { $product }, Blatt { $number }

# An entry of a revision that does not stand any more; its verdict is not said again.
web_entry_replaced = Fassung { $revision } dieses Blatts vom { $day } hat diese ersetzt.

# A product with its brand before it: in the feed.
web_named = { $brand }: { $product }
