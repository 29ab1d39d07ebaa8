//! The newsletter, on paper, on a screen and as text.

use super::*;

messages! {
    "newsletter"
    /// What stands on every page that is not for publication.
    newsletter_proof();
    /// The newsletter's name on paper.
    newsletter_name(short_name: text);
    /// Its title in a PDF's data.
    newsletter_title(programme: text, headline: text);
    /// What it is, in a PDF's data.
    newsletter_of(programme: text);
    /// What a mail of it is about.
    newsletter_subject(proof: ["yes" "no"], programme: text, headline: text);
    /// What stands in place of its readers' addresses.
    newsletter_no_readers();
    /// The first line of its plain text.
    newsletter_first_line(programme: text);
    /// A number of new products, taken in by the headline.
    newsletter_part(n: count, number: text, verdict: ["within" "over" "none"], rule: ["fails" "passes" "detection"]);
    /// What is new.
    newsletter_new(n: count, number: text, parts: text);
    /// That nothing is new.
    newsletter_nothing(results: ["yes" "no"]);
    /// How many sheets were amended.
    newsletter_amended_count(n: count, number: text);
    /// How the programme tests.
    newsletter_how(packages: count, spelt_packages: text, times: count, spelt_times: text);
    /// The limit.
    newsletter_limit(mixed: ["yes" "no"], rule: ["fails" "passes" "detection"], limit: text);
    /// What too little to measure means.
    newsletter_measured(known: ["yes" "no"], amount: text);
    /// What so few packages can say.
    newsletter_snapshot(packages: count, rule: ["fails" "passes" "detection"], share: text);
    /// What the marks of the chart mean.
    newsletter_marks(rule: ["fails" "passes" "detection"], known: ["yes" "no"], amount: text);
    /// Which products the list names, where it does not name all.
    newsletter_listed(rule: ["fails" "passes" "detection"]);
    /// That a mail lists the first of these alone.
    newsletter_first_of(n: text);
    /// What follows is a key: how figures of packages are drawn.
    newsletter_each_package();
    /// What an ink means.
    newsletter_figure(state: ["over" "within" "none"], rule: ["fails" "passes" "detection"]);
    /// A part of a bar: how many, and of what.
    newsletter_bar(band: ["below" "measured" "over" "undecided"], n: text, of: text);
    /// That a food was tested again.
    newsletter_again(round: text, verdict: ["over" "within" "none"], rule: ["fails" "passes" "detection"], limit: text, number: text);
    /// What the greys of the bars mean.
    newsletter_bands(rule: ["fails" "passes" "detection"], mixed: ["yes" "no"], known: ["yes" "no"], amount: text, measured: text, limit: text);
    /// The number of a sheet, on a line of its own.
    newsletter_sheet(number: text);
    /// The same in a sentence or in brackets.
    newsletter_sheet_within(number: text);
    /// What a maker says, and when.
    newsletter_reply(statement: text, day: text);
    /// Whose makers have said nothing.
    newsletter_silent(n: count, number: text, named: ["yes" "no"], products: text);
    /// Whose makers are still to be told.
    newsletter_to_tell(n: count, number: text, named: ["yes" "no"], products: text);
    /// What labels say; their words follow, a line each.
    newsletter_labels(n: count, number: text, finding: ["gluten_source" "not_forbidden" "unverified_oats" "needs_review"]);
    /// A product with its brand.
    newsletter_label_product(brand: text, product: text);
    /// A word of labels with the products that have it.
    newsletter_label_word(n: count, word: text, named: ["yes" "no"], products: text);
    /// That there are more words.
    newsletter_label_words_more();
    /// That such words are no result.
    newsletter_labels_ask();
    /// That no label says anything.
    newsletter_labels_none();
    /// A sheet that replaces another.
    newsletter_amended(product: text, number: text, revision: text, replaced: text, day: text);
    /// Counts by verdict, taken in by the programme so far.
    newsletter_totals_of(within: text, over: text, none: text, rule: ["fails" "passes" "detection"]);
    /// The programme so far.
    newsletter_totals(products: count, foods: count, again: ["yes" "no"], within: text, over: text, none: text, rule: ["fails" "passes" "detection"]);
    /// Its packages.
    newsletter_packages_so_far(packages: count, number: text, unmeasured: text);
    /// What is with the lab.
    newsletter_with_lab(n: count, number: text);
    /// Headings and fixed words of the newsletter.
    newsletter_corrections();
    /// Results.
    newsletter_new_results();
    /// The makers.
    newsletter_makers();
    /// The labels.
    newsletter_on_labels();
    /// Amended sheets.
    newsletter_amended_sheets();
    /// The programme so far.
    newsletter_so_far();
    /// The last words.
    newsletter_note();
    /// Where mistakes are reported.
    newsletter_mistake();
    /// A column.
    newsletter_head_sheet();
    /// A column.
    newsletter_head_product();
    /// A column.
    newsletter_head_brand_and_product();
    /// A column; the unit follows.
    newsletter_head_packages();
    /// A column; the unit follows.
    newsletter_head_results();
    /// A column.
    newsletter_head_verdict();
    /// A column.
    newsletter_head_label();
    /// A column.
    newsletter_head_verdict_and_label();
    /// Words for a catalogue.
    newsletter_keywords();
    /// A verdict in a list, with the limit.
    list_verdict_of(verdict: ["over" "within" "none"], rule: ["fails" "passes" "detection"], limit: text);
    /// What parts results in a row.
    list_between();
    /// A package whose extractions disagree.
    list_disagree();
    /// A product's name with its round.
    list_round(product: text, round: text);
}
