//! The pages for a web site and their feed.

use super::*;

messages! {
    "web"
    /// The index: its title.
    web_sheets();
    /// Its head.
    web_sheets_of(programme: text);
    /// That there is no sheet.
    web_none();
    /// The table's title.
    web_published();
    /// A column.
    web_product();
    /// A column.
    web_verdict();
    /// A column.
    web_sheet();
    /// Sheets that do not stand any more.
    web_under_revision();
    /// The page of corrections: its title.
    web_corrections();
    /// Its head.
    web_corrections_of(programme: text);
    /// That there is none.
    web_no_corrections();
    /// A product and its sheet.
    web_correction_of(product: text, number: text);
    /// A revision that replaces another.
    web_replaces(revision: text, day: text, replaced: text, replaced_day: text);
    /// The title of a page.
    web_title(page: text, programme: text);
    /// Where mistakes are reported.
    web_mistake(address: text);
    /// The first link of a page, for who goes by keyboard.
    web_skip();
    /// The list of pages, for a screen reader.
    web_pages();
    /// The page on how is tested: its title.
    web_how();
    /// Its head.
    web_how_of(programme: text);
    /// The link to the feed.
    web_feed();
    /// What the index is, for a search engine.
    web_about(programme: text);
    /// The filter's heading.
    web_find();
    /// Its field for words.
    web_words();
    /// Its choice of brands.
    web_brand();
    /// Its choice of food groups.
    web_group();
    /// Its choice of years.
    web_year();
    /// No choice made.
    web_any();
    /// Puts it back.
    web_all();
    /// How many sheets are shown.
    web_shown(shown: text, all: text);
    /// A verdict to choose.
    web_choice(verdict: ["over" "within" "none"], rule: ["fails" "passes" "detection"]);
    /// The product's page: that it holds what the PDF holds.
    web_pdf(number: text);
    /// A short link to it, in a table.
    web_pdf_short();
    /// The number of the sheet and its revision.
    web_number(number: text, edition: text);
    /// The ruler.
    web_ruler();
    /// The table of packages.
    web_packages(unit: text);
    /// A column.
    web_package();
    /// A column.
    web_lot();
    /// A column.
    web_best_by();
    /// A column.
    web_bought();
    /// A column.
    web_extraction(number: text);
    /// A column.
    web_found();
    /// A column.
    web_allowed();
    /// A column.
    web_result();
    /// An extraction without a reading.
    web_no_reading();
    /// A cell with nothing in it.
    web_nothing();
    /// What parentheses mean.
    web_unused();
    /// What the result says.
    web_says();
    /// What it does not say.
    web_says_not();
    /// The label.
    web_label();
    /// The statement follows.
    web_ingredients();
    /// What is marked in it.
    web_marked();
    /// Precautionary words follow.
    web_precautionary();
    /// That there are none.
    web_none_on_record();
    /// The correspondence.
    web_correspondence();
    /// The method.
    web_method();
    /// The provenance.
    web_sources();
    /// The last words.
    web_note();
    /// The revisions.
    web_revisions();
    /// One of them with its day; in a list why it was made follows.
    web_revision_of(revision: text, day: text);
    /// The product's other rounds.
    web_rounds();
    /// One of them.
    web_round(round: text, verdict: text, number: text);
    /// A feed entry of a first issue.
    web_entry_new(product: text, number: text);
    /// A feed entry of a further revision.
    web_entry_amended(product: text, number: text, revision: text);
    /// A feed entry of a revision that takes back or makes an accusation.
    web_entry_corrected(product: text, number: text, revision: text);
    /// A feed entry of a sheet that does not stand any more.
    web_entry_under_revision(product: text, number: text);
    /// A feed entry of a revision that was replaced.
    web_entry_replaced(revision: text, day: text);
    /// A product with its brand before it.
    web_named(brand: text, product: text);
}
