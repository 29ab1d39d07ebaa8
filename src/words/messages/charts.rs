//! What stands in and beside the charts: axes, keys, and what is read aloud in their place.

use super::*;

messages! {
    "charts"
    /// How extractions agree, at the end of their row: they do.
    ruler_agree();
    /// Nothing speaks against it.
    ruler_no_sign();
    /// They do not.
    ruler_disagree();
    /// There is no result.
    ruler_no_result();
    /// There are fewer than asked for.
    ruler_incomplete(usable: count);
    /// Under it: the lab has not reported.
    ruler_nothing_reported();
    /// The lab gave rows without results.
    ruler_none_reported();
    /// Two reports differ.
    ruler_reports_differ();
    /// Extractions were set aside.
    ruler_set_aside(usable: count);
    /// The lab gave no result for some.
    ruler_not_given(usable: count);
    /// What the lab gave cannot be read.
    ruler_unreadable(usable: count);
    /// The second one is missing.
    ruler_second_missing();
    /// More are asked for.
    ruler_more_asked();
    /// All are beyond the same end of what the assay measures.
    ruler_beyond(extractions: count, side: ["below" "above"], bound: text);
    /// How far apart they are.
    ruler_apart(extractions: count, how: ["exact" "least" "equal"], gap: text, allowed: text);
    /// The first extractions of a package that has more: whether they agree.
    ruler_first(extractions: count, outcome: ["agree" "disagree" "open"]);
    /// A repeat.
    ruler_repeat();
    /// What was reported again.
    ruler_again();
    /// More than was asked for.
    ruler_further();
    /// No decision is on record.
    ruler_no_reason();
    /// Who decided, and when.
    ruler_decided(by: text, day: text);
    /// Extractions that were set aside, by whom and when.
    ruler_set_aside_by(extractions: count, by: text, day: text);
    /// Its report took the place of another.
    ruler_replaces();
    /// So many marks in one.
    ruler_times(marks: count, figure: text);
    /// Over the cell for what is too little to measure.
    ruler_below(bound: text);
    /// The lot, under a code.
    ruler_lot(lot: text);
    /// The unit, beside the scale.
    ruler_unit(unit: ["ppm" "mg"]);
    /// What a log scale is, under it.
    ruler_log();
    /// Two values beside their marks.
    ruler_both(first: text, last: text);
    /// What the marks mean.
    ruler_key(rule: ["fails" "passes" "detection"]);
    /// What marks that only some rulers have mean.
    ruler_key_more(what: ["result" "range" "disagree" "aside" "conflict" "many"]);
    /// What the hatched band round the limit is.
    chart_close_means(decision: ["simple" "guarded"], from: text, to: text);
    /// The same in a sentence.
    chart_close(decision: ["simple" "guarded"], from: text, to: text);
    /// The picture in words.
    ruler_alt(scale: text, unit: text, rule: ["fails" "passes" "detection"], limit: text, rows: text);
    /// One row of it.
    ruler_row(package: text, figures: text, head: text, detail: text);
    /// A row of which nothing more is said.
    ruler_row_bare(package: text, figures: text, head: text);
    /// A row without readings.
    ruler_row_empty(package: text, head: text, detail: text);
    /// A bound, read aloud.
    ruler_spoken(side: ["below" "above"], bound: text);
    /// The marks of the plots: an open arrow.
    ruler_mark_open_arrow();
    /// An open circle.
    ruler_mark_open_circle();
    /// A filled circle.
    ruler_mark_filled_circle();
    /// An arrow on the scale.
    ruler_mark_arrow();
    /// What it means.
    ruler_mark_arrow_means();
    /// A dashed circle.
    ruler_mark_dashed();
    /// A hatched band.
    ruler_mark_hatched();
    /// An arrow to the right.
    ruler_mark_arrow_right();
    /// What it means.
    ruler_mark_arrow_right_means();
    /// What it means.
    ruler_mark_dashed_means();
    /// An upright line.
    ruler_mark_line();
    /// What it means.
    ruler_mark_line_means(line: text, limit: text);
    /// The marks in words.
    ruler_marks_alt(marks: text);
    /// One of them.
    ruler_mark_alt(mark: text, meaning: text);
    /// How many packages.
    chart_packages(packages: count);
    /// What a scale of concentrations is.
    chart_scale(unit: text);
    /// Packages that are on neither side.
    chart_undecided();
    /// Products that are on neither side.
    chart_no_verdict();
    /// The name of the products of no food group.
    chart_no_group();
    /// The name of the small food groups together.
    chart_other_groups();
    /// Codes, and how many more there are.
    chart_codes_more(codes: text, more: count);
    /// What a row counts.
    chart_bands_kind(kind: ["extractions" "packages" "products"]);
    /// How many a row counts.
    chart_bands_all(all: count);
    /// What the bars are, read aloud.
    chart_bands();
    /// A row, read aloud.
    chart_bands_row(kind: ["extractions" "packages" "products"], all: count, below: text, below_band: text, measured: text, measured_band: text, over: text, over_band: text, undecided: text);
    /// The squares of the cover, read aloud.
    chart_squares(products: count, over: text, undecided: text, measured: text, below: text, rule: ["fails" "passes" "detection"]);
    /// Where the lower figures are.
    chart_strip_left(rule: ["fails" "passes" "detection"]);
    /// Where the higher figures are.
    chart_strip_right(rule: ["fails" "passes" "detection"]);
    /// What the marks are.
    chart_strip_foot();
    /// The plot, read aloud.
    chart_strip(unit: text, line: text, limit: text);
    /// A food group, read aloud.
    chart_strip_group(group: text, packages: count, below: text, below_band: text, measured: text, measured_band: text, over: text, undecided: text, measured_any: ["yes" "no"], highest: text, rule: ["fails" "passes" "detection"]);
    /// Packages that have no place on the scale.
    chart_products_undecided(packages: count);
    /// Head of the last column.
    chart_products_verdict();
    /// What the marks are.
    chart_products_foot();
    /// The plot, read aloud.
    chart_products(products: count, unit: text, line: text, limit: text);
    /// A product, read aloud.
    chart_products_row(product: text, results: text, verdict: ["over" "within" "none"], rule: ["fails" "passes" "detection"], limit: text);
    /// A product with its brand.
    chart_brand_and_product(brand: text, product: text);
    /// What the groups are.
    chart_shares_by(by: ["category" "certification" "oats"]);
    /// What the scale is.
    chart_shares_axis(rule: ["fails" "passes" "detection"]);
    /// Head of the column of counts.
    chart_shares_products();
    /// Head of the column of intervals.
    chart_shares_interval();
    /// All products together.
    chart_shares_all();
    /// A group without a share.
    chart_shares_none();
    /// In the place of an interval: too few products.
    chart_shares_few();
    /// So many of so many.
    chart_share_count(k: text, n: text);
    /// A share and its interval.
    chart_share_interval(share: text, lower: text, upper: text);
    /// The plot, read aloud.
    chart_shares(by: ["category" "certification" "oats"], rule: ["fails" "passes" "detection"]);
    /// A group, read aloud.
    chart_shares_row(group: text, count: text, interval: text);
    /// A group without a share, read aloud.
    chart_shares_row_none(group: text);
    /// A group of few products.
    chart_shares_row_few(group: text, count: text);
    /// Products by whether a third party certifies them.
    chart_certification(kind: ["certified" "not"]);
    /// Products by what is known of their oats.
    chart_oats(kind: ["none" "certified" "purity" "unverified"]);
    /// A quarter.
    chart_quarter(quarter: ["first" "second" "third" "fourth"], year: text);
    /// A quarter at an axis.
    chart_quarter_short(quarter: text, year: text);
    /// A quarter without a product.
    chart_quarter_none();
    /// What a quarter came to.
    chart_quarter_outcome(over: count, undecided: count, rule: ["fails" "passes" "detection"]);
    /// Products over the limit, in the key.
    chart_quarters_over(rule: ["fails" "passes" "detection"]);
    /// Products within the limit, gluten measured, in the key.
    chart_quarters_measured(rule: ["fails" "passes" "detection"]);
    /// Products within the limit, too little to measure, in the key.
    chart_quarters_below(rule: ["fails" "passes" "detection"]);
    /// The quarters, read aloud.
    chart_quarters();
    /// A quarter, read aloud.
    chart_quarters_row(quarter: text, products: count, over: text, undecided: text, measured: text, below: text, rule: ["fails" "passes" "detection"]);
    /// What goes up.
    chart_agreement_up();
    /// What goes along.
    chart_agreement_along(unit: text);
    /// What two readings may differ by.
    chart_agreement_allowed();
    /// The plot, read aloud.
    chart_agreement(packages: count, outside: count, codes: text);
    /// What goes up.
    chart_range_up();
    /// What goes along.
    chart_range_along();
    /// The control line.
    chart_range_control(percent: text);
    /// The line of the mean.
    chart_range_mean(percent: text);
    /// The chart, read aloud.
    chart_range(pairs: count, centre: text, upper: text, beyond: count, codes: text);
}
