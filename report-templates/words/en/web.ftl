# The pages for a web site and their feed.

## The index and the corrections

# Title of the index, and the link to it.
web_sheets = Results sheets

# Head of the index.
web_sheets_of = { $programme }: results sheets

# Instead of the table.
web_none = No results sheet is published at present.

# Title of the table.
web_published = Published results sheets

# Head of a column.
web_product = Product

# Head of a column.
web_verdict = Verdict

# Head of a column.
web_sheet = Sheet

# Heading: published sheets that do not stand any more.
web_under_revision = Under revision

# Title of the page of corrections, and the link to it.
web_corrections = Corrections

# Its head.
web_corrections_of = { $programme }: corrections

# Instead of the list.
web_no_corrections = No published sheet has been corrected.

# Heading: a product and its sheet.
web_correction_of = { $product }, sheet { $number }

# A revision; what was changed and why follows as it was written down.
web_replaces = Revision { $revision } of { $day } replaces revision { $replaced } of { $replaced_day }.

# The title of a page in the browser.
web_title = { $page }: { $programme }

# Where mistakes are reported.
web_mistake = Found a mistake? { $address }

## The frame of every page

# The first link of every page: it leads past the list of pages. Shown when it has the focus.
web_skip = Skip to the content

# What the list of pages is called by a screen reader.
web_pages = Pages

# Title of the page on how the programme tests, and the link to it.
web_how = How we test

# Its head.
web_how_of = { $programme }: how we test and decide

# The link to the Atom feed.
web_feed = Feed of new and amended sheets (Atom)

# What the index is, for a search engine; also the feed's subtitle.
web_about = What { $programme } found in foods with a claim about gluten: every published results sheet, with its corrections.

## The filter of the index

# Heading of the filter.
web_find = Find a sheet

# Label of the field for words: a sheet's number, a product's or a brand's name.
web_words = Words in the name, or the sheet’s number

# Label of the choice of brands.
web_brand = Brand

# Label of the choice of food groups, and head of a column.
web_group = Food group

# Label of the choice of years: of the sheet's last revision.
web_year = Year of issue

# The first choice of each: nothing is chosen. It stands for brand, group, verdict and year alike.
web_any = Any

# The button that puts the filter back.
web_all = Show all

# How many sheets are shown: two figures, put in by the page's script.
web_shown = Sheets shown: { $shown } of { $all }.

# A verdict to choose.
web_choice = { $verdict ->
    [over] { $rule ->
        [passes] Above the limit
        [detection] Gluten detected
       *[fails] At or above the limit
    }
    [within] { $rule ->
        [passes] At or below the limit
        [detection] No gluten detected
       *[fails] Below the limit
    }
   *[none] No verdict
}

## The page of a product

# The link to the PDF beside the page.
web_pdf = Sheet { $number } as a PDF, with the data that it rests on

# The same in the table of the index, before the number of the sheet.
web_pdf_short = PDF

# Above a product's name: the number of the sheet, and which revision it is.
web_number = Results sheet { $number } · { $edition }

# Heading of the ruler and the table.
web_ruler = The results, package by package

# Title of the table of packages.
web_packages = The packages and their extractions, in { $unit }

# Head of a column: the code that the lab was given.
web_package = Package

# Head of a column.
web_lot = Lot

# Head of a column.
web_best_by = Best by

# Head of a column: a day and a shop.
web_bought = Bought: date, shop

# Head of a column of extractions.
web_extraction = Extraction { $number }

# Head of a column: how far the extractions are apart.
web_found = Difference found

# Head of a column: how far they may be apart.
web_allowed = Difference allowed

# Head of a column.
web_result = Package result

# In the place of a figure: the lab reported the extraction without a readable result.
web_no_reading = none

# Read out in the place of a dash: nothing is known or nothing applies.
web_nothing = nothing

# Below the table.
web_unused = In parentheses: reported, not used.

# Heading.
web_says = What this result says

# Heading.
web_says_not = What it does not say

# Heading.
web_label = Label review

# Before the ingredient statement.
web_ingredients = Ingredients as printed:

# After it, where words of it are marked.
web_marked = Marked: the words that this review is about.

# Before the precautionary words.
web_precautionary = Precautionary words:

# Instead of them.
web_none_on_record = none on record.

# Heading: what passed between the programme and the maker.
web_correspondence = What passed with the maker

# Heading.
web_method = How we tested and decided

# Heading.
web_sources = Where the numbers come from

# Heading of the last words of every page.
web_note = Please note

# Heading.
web_revisions = Revisions of this sheet

# A revision in the list, where why it was made follows; in the table of the index with the day as 2031-06-30.
web_revision_of = Revision { $revision }, { $day }

# Heading: the same product in other rounds of testing.
web_rounds = Other rounds of this product

# One of them, as a link.
web_round = Round { $round }, sheet { $number }: { $verdict }

## The feed

# Title of an entry: the first issue of a sheet.
web_entry_new = { $product }: sheet { $number }

# Title of an entry: a further revision.
web_entry_amended = Amended: { $product }, sheet { $number }, revision { $revision }

# Title of an entry: a revision that takes back what was said against a product, or says it for the first time.
web_entry_corrected = Correction: { $product }, sheet { $number }, revision { $revision }

# Title of an entry: a published sheet does not stand any more, and the next one is not issued yet.
web_entry_under_revision = Under revision: { $product }, sheet { $number }

# An entry of a revision that does not stand any more; its verdict is not said again.
web_entry_replaced = Revision { $revision } of this sheet, issued on { $day }, has replaced this one.

# A product with its brand before it: in the feed.
web_named = { $brand }: { $product }
