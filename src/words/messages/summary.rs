//! The programme summary.

use super::*;

messages! {
    "summary"
    /// What the document is called.
    summary_name();
    /// The PDF's description.
    summary_of(programme: text);
    /// A keyword of the PDF.
    summary_keyword_gluten();
    /// A keyword of the PDF.
    summary_keyword_results();
    /// That it is not for publication.
    summary_proof();
    /// Where to write.
    summary_mistakes(address: text);
    /// When it was made.
    summary_made_on(day: text);
    /// The mark before a quotation.
    summary_quote_open();
    /// The mark after a quotation.
    summary_quote_close();
    /// The title.
    summary_title(foods: count, claimed: ["yes" "no"], claim: text);
    /// Under the title.
    summary_subtitle(days: text);
    /// Under the title, where no day is known.
    summary_subtitle_undated();
    /// So many of all products.
    summary_count(of_them: text, products: count);
    /// How many products.
    summary_head(n: count);
    /// No verdict.
    summary_no_verdict();
    /// What the products within the limit are.
    summary_within(measured: ["nobody" "none" "some" "all"], below: text, rule: ["fails" "passes" "detection"]);
    /// What the products over the limit are.
    summary_over(products: ["none" "some"], packages: ["none" "some" "open"], rule: ["fails" "passes" "detection"]);
    /// What the products without a verdict are.
    summary_none(products: ["none" "some"], shown: ["limit" "claims" "detection"], limit: text);
    /// What the squares mean.
    summary_squares(form: ["squares" "bar"], over_band: text, over: text, undecided: text, measured: text, below: text, rule: ["fails" "passes" "detection"]);
    /// How products are counted.
    summary_rounds(products: text, foods: count, foods_spelt: text);
    /// What is not counted.
    summary_with_lab(n: count);
    /// What the labels come to.
    summary_labels_on_cover(n: count);
    /// How it was done.
    summary_how(packages: count, packages_spelt: text, extractions: count, extractions_spelt: text);
    /// Head of the list of chapters.
    summary_contents();
    /// Sheets that are not named.
    summary_revised_more(sheets: text);
    /// Title of the chapter.
    summary_bands_title();
    /// That there is nothing to count.
    summary_bands_empty();
    /// Packages with too little to measure.
    summary_bands_unmeasured(n: count, packages: text);
    /// How many of those the assay may have missed gluten in; at least one.
    summary_perhaps_missed(n: count);
    /// So many packages in a sentence.
    summary_packages_spelt(n: count);
    /// Products with a package over the limit.
    summary_bands_over(n: count, packages: ["none" "open"], rule: ["fails" "passes" "detection"]);
    /// Packages whose bound lies over the limit.
    summary_bands_loose(packages: count, shown: ["limit" "claims" "detection"], limit: text);
    /// Products without a verdict.
    summary_bands_undecided(n: count);
    /// Head of the first column.
    summary_bands_counted();
    /// Head of the last column.
    summary_bands_all();
    /// The inks of the bars.
    summary_bands_note(below: text, measured: text, over: text);
    /// Head of what the numbers say.
    summary_says_title();
    /// What the numbers say.
    summary_says(packages: count, verdict: ["none" "some"], products: count, left_out: count, left_out_spelt: text, over: count, lower: text, upper: text, rule: ["fails" "passes" "detection"]);
    /// Head of what they do not say.
    summary_says_not_title();
    /// What the numbers do not say.
    summary_says_not(packages: text, upper: text, rule: ["fails" "passes" "detection"]);
    /// Head of the key.
    summary_marks_title();
    /// Head of the glossary.
    summary_words_title();
    /// Head of its first column.
    summary_words_word();
    /// Head of its second column.
    summary_words_meaning();
    /// The unit.
    summary_word_unit(unit: ["ppm" "mg"]);
    /// Too little to measure.
    summary_word_below();
    /// An extraction.
    summary_word_extraction();
    /// What it is.
    summary_word_extraction_meaning();
    /// The verdict over the limit.
    summary_word_over(rule: ["fails" "passes" "detection"]);
    /// The verdict within it.
    summary_word_within(rule: ["fails" "passes" "detection"]);
    /// No verdict.
    summary_word_none(shown: ["limit" "claims" "detection"], limit: text);
    /// Title of the chapter.
    summary_strip_title();
    /// Head of the products, a row each.
    summary_products_title();
    /// What the rows show.
    summary_products_lede();
    /// That there is nothing to show.
    summary_strip_empty();
    /// What the plot shows.
    summary_strip_packages(packages: count);
    /// Packages with too little to measure.
    summary_strip_unmeasured(n: count);
    /// Where the packages over the limit come from.
    summary_strip_over(n: count, groups: count, groups_spelt: text, packages: ["none" "open"], rule: ["fails" "passes" "detection"]);
    /// What the marks mean.
    summary_strip_note(crowded: ["yes" "no"], below: text, measured: text, over: text);
    /// Head of the part on uneven products.
    summary_uneven_title();
    /// How many products had packages on both sides.
    summary_uneven(n: count, over: count, over_spelt: text, rule: ["fails" "passes" "detection"]);
    /// The same, where it is all of several products.
    summary_uneven_all(n: count, rule: ["fails" "passes" "detection"]);
    /// Title of the chapter.
    summary_groups_title();
    /// Why a difference may mean nothing.
    summary_groups_small();
    /// That no group stands out.
    summary_groups_alike();
    /// Groups that stand out.
    summary_groups_apart(groups: text);
    /// That there is no share yet.
    summary_groups_none();
    /// Head of a chart of shares.
    summary_shares_title(by: ["category" "certification" "oats"]);
    /// What the charts of shares show.
    summary_shares_note(rule: ["fails" "passes" "detection"]);
    /// Head of the table of means.
    summary_means_title();
    /// Head of its first column.
    summary_means_group();
    /// How many.
    summary_means_packages();
    /// With too little to measure.
    summary_means_censored();
    /// The mean.
    summary_means_mean(unit: text);
    /// Its estimate by ranks.
    summary_means_ranks();
    /// Its lognormal estimate.
    summary_means_lognormal();
    /// All packages.
    summary_means_all();
    /// The bounds of a mean.
    summary_means_between(lower: text, upper: text);
    /// A lognormal estimate.
    summary_means_fit(mean: text, median: text);
    /// What the means are.
    summary_means_note();
    /// Head of the chart of quarters.
    summary_quarters_title();
    /// What the quarters show.
    summary_quarters_note();
    /// Head of why there is no ranking.
    summary_ranking_title();
    /// Why there is no ranking.
    summary_ranking();
    /// Head of what the quarters say taken together.
    summary_trend_title();
    /// Too few quarters.
    summary_trend_short();
    /// Too few products.
    summary_trend_thin();
    /// What the quarters say.
    summary_trend(found: ["grew" "fell" "none"], quarters: text, p: text);
    /// Head of the table of packages that would say more.
    summary_needed_title();
    /// What so many packages show.
    summary_needed(n: count, shows: text, rule: ["fails" "passes" "detection"]);
    /// Head of its first column.
    summary_needed_share();
    /// Name of its row.
    summary_needed_packages();
    /// Title of the chapter.
    summary_pairs_title();
    /// That there is nothing to hold against another.
    summary_pairs_empty();
    /// How many packages agree.
    summary_pairs(packages: count, agree: text, disagree: count, incomplete: count);
    /// That there is nothing to plot.
    summary_pairs_nothing();
    /// Head of the plot of differences.
    summary_agreement_title();
    /// What the plot of differences shows.
    summary_agreement_note(pairs: count);
    /// Head of the control chart.
    summary_range_title();
    /// What the control chart shows.
    summary_range_note(n: count, stood: ["none" "one" "some" "all"], stood_spelt: text, apart: count, apart_spelt: text);
    /// Head of the table of repeatability.
    summary_repeatability_title();
    /// Which pairs.
    summary_repeatability_pairs();
    /// How many.
    summary_repeatability_agreeing();
    /// How many are left out.
    summary_repeatability_flagged();
    /// How large.
    summary_repeatability_size();
    /// The same by the median.
    summary_repeatability_median();
    /// All pairs.
    summary_pairs_all();
    /// Pairs below the limit.
    summary_pairs_below(limit: text);
    /// Pairs from the limit on.
    summary_pairs_from(limit: text);
    /// A repeatability and its interval.
    summary_repeatability(size: text, lower: text, upper: text);
    /// How flagged pairs are treated.
    summary_flagged(n: count, chance: text);
    /// What the settings assume, against what is found.
    summary_assumption(finding: ["fits" "below" "smaller" "larger"], assumed: text, proposal: text, setting: text);
    /// What chemical methods would scatter by.
    summary_horwitz(between: text, ratio: text);
    /// Whether a lab's pairs came to differ more or less.
    summary_drift(lab: text, early: text, late: text, apart: ["yes" "no"], p: text);
    /// Head of the table of pairs beyond a limit.
    summary_flagged_title();
    /// The package.
    summary_flagged_package();
    /// Its mean.
    summary_flagged_mean();
    /// Its range.
    summary_flagged_range();
    /// The difference that is allowed.
    summary_flagged_allowed();
    /// What became of it.
    summary_flagged_became();
    /// What became of a pair.
    summary_became(pair: ["agrees" "apart"], all: ["none" "agree" "disagree"], n: count);
    /// Title of the chapter.
    summary_over_title(rule: ["fails" "passes" "detection"]);
    /// That there is none.
    summary_over_empty(rule: ["fails" "passes" "detection"]);
    /// How the makers are heard.
    summary_over_lede();
    /// The product's number.
    summary_list_number();
    /// Brand and product.
    summary_list_product();
    /// The results of its packages.
    summary_list_results(unit: text);
    /// The day of the notice to the maker.
    summary_list_told();
    /// By when an answer is asked for.
    summary_list_due();
    /// The day of the answer.
    summary_list_replied();
    /// Why there is no verdict.
    summary_list_why();
    /// Head of the list of products without a verdict.
    summary_none_title();
    /// That there is none.
    summary_none_empty();
    /// Title of the chapter.
    summary_labels_title();
    /// What a finding is.
    summary_labels_lede();
    /// The finding.
    summary_labels_finding();
    /// An example.
    summary_labels_example();
    /// How many products.
    summary_labels_products();
    /// How many of them are over the limit.
    summary_labels_over(rule: ["fails" "passes" "detection"], shown: ["limit" "claims"], limit: text);
    /// The words on the package.
    summary_labels_printed();
    /// The verdict of the test.
    summary_labels_verdict();
    /// Head of the list of products.
    summary_labels_ask();
    /// A finding.
    summary_finding(kind: ["source" "allowed" "oats" "unclear" "unread" "nothing" "no_list" "precaution"]);
    /// Title of the chapter.
    summary_methods_title();
    /// Title of the chapter.
    summary_register_title();
    /// How to read it.
    summary_register_lede(over: text);
    /// Under a product's name: a test was repeated.
    summary_register_repeated();
    /// Head of the column of labels.
    summary_register_label();
    /// The product.
    summary_register_product();
    /// The verdict.
    summary_register_verdict();
    /// More packages of the same product.
    summary_register_further();
}
