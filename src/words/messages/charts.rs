//! What stands in and beside the charts: axes, keys, and what is read aloud in their place.

use super::*;

messages! {
    "charts"
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
