//! The plan of a round, the labels, the contact sheet and the diary.

use super::*;

messages! {
    "plan"
    /// The first line, and the title of the file.
    plan_title(round: text);
    /// What the file is.
    plan_about(products: count);
    /// At the head of each page, before the round.
    plan_head();
    /// At the foot.
    plan_foot();
    /// That there is nothing to buy.
    plan_nothing();
    /// What the round is.
    plan_round(products: count, packages: count, blinds: count, extractions: count);
    /// What it costs.
    plan_costs(total: text, budget: text, has_budget: ["yes" "no"]);
    /// What is in no sum.
    plan_unpriced(what: text);
    /// One of the things that are in no sum.
    plan_unpriced_thing(thing: ["packages" "lab" "shipping"]);
    /// The head of the products to buy.
    plan_products();
    /// The column of ids.
    plan_id();
    /// The column of products.
    plan_product();
    /// The column of reasons.
    plan_why_head();
    /// The column of prices.
    plan_price_head();
    /// Why a product is worth testing.
    plan_why(why: ["new" "no_verdict" "answered" "tested" "undated" "asked_for"], round: text, day: text, competitive: ["yes" "no"]);
    /// What a package is expected to cost.
    plan_price(of: ["category" "everything" "settings"], median: text, lowest: text, highest: text, range: ["yes" "no"], paid: count);
    /// What the budget leaves for later.
    plan_later();
    /// Labels that decide by themselves.
    plan_write();
    /// What to do about them.
    plan_write_lead();
    /// What a label names.
    plan_label_names(terms: text);
    /// A word of a label.
    plan_quoted(printed: text);
    /// What is not bought now.
    plan_not_now();
    /// Why it is not.
    plan_why_not(why: ["under_way" "not_answered" "no_assay" "processing" "claim" "open" "in_round"], round: text);
    /// The head of the costs.
    plan_costs_head();
    /// The column of what is compared.
    plan_each_product();
    /// A design.
    plan_design(packages: count, extractions: count);
    /// Rows of the comparison.
    plan_row_packages();
    /// The lab's work.
    plan_row_lab();
    /// Sending.
    plan_row_shipping();
    /// The sum.
    plan_row_total();
    /// How far the budget goes.
    plan_row_budget();
    /// So many of so many.
    plan_of(part: text, whole: text);
    /// The chance of finding one over.
    plan_row_tenth();
    /// The chance of "over".
    plan_row_double();
    /// The chance of "within".
    plan_row_half();
    /// The standard error.
    plan_row_error();
    /// Where the next money is best spent.
    plan_next(best: ["package" "package_scatter" "extraction"]);
    /// What a further package is worth.
    plan_next_package(now: text, share: text, cost: text, priced: ["yes" "no"]);
    /// What a further extraction is worth.
    plan_next_extraction(share: text, cost: text, priced: ["yes" "no"]);
    /// What is compared.
    plan_next_basis(priced: ["yes" "no"]);
    /// The head of the first chart.
    plan_finding();
    /// What goes up in it.
    plan_finding_up();
    /// What goes along.
    plan_finding_along();
    /// What it shows.
    plan_finding_alt(packages: count, tenth: text, fifth: text, half: text);
    /// The head of the second chart.
    plan_verdicts();
    /// What goes up in it.
    plan_verdicts_up();
    /// What goes along.
    plan_verdicts_along(unit: text);
    /// The limit in it.
    plan_chart_limit(rule: ["fails" "passes" "detection"], limit: text);
    /// The verdict over the limit.
    plan_over(rule: ["fails" "passes" "detection"]);
    /// The verdict within it.
    plan_within(rule: ["fails" "passes" "detection"]);
    /// No verdict.
    plan_undecided();
    /// What it shows.
    plan_verdicts_alt(limit: text, within: text, over: text, undecided_half: text, undecided_double: text);
    /// The head of other designs.
    plan_designs();
    /// Their column of extractions.
    plan_designs_packages();
    /// Chances of the verdict over the limit.
    plan_grid_over(rule: ["fails" "passes" "detection"], mean: text);
    /// Chances of the verdict within it.
    plan_grid_within(rule: ["fails" "passes" "detection"], mean: text);
    /// A number of extractions.
    plan_extractions(extractions: count);
    /// The head of what statements need.
    plan_statements();
    /// What carries them.
    plan_statements_lead();
    /// The column of statements.
    plan_statement_head();
    /// The column of packages.
    plan_statement_packages();
    /// The column of costs.
    plan_statement_cost();
    /// A statement.
    plan_statement(share: text);
    /// The head of what the figures rest on.
    plan_assumptions();
    /// The scatter between packages.
    plan_between(share: text, own: ["yes" "no"], df: count);
    /// The scatter between extractions.
    plan_scatter_within(share: text, own: ["yes" "no"], df: count);
    /// How packages scatter.
    plan_model(lloq: text, limit: text);
    /// That packages are a random pick.
    plan_random();
    /// That a lab's bias is not seen.
    plan_bias();
    /// What a plan does not say.
    plan_average();
    /// The head of what is said of blinds.
    plan_blinds_head();
    /// What blinds are.
    plan_blinds(blinds: count);
    /// The head of the buying list.
    plan_buying();
    /// How it is used.
    plan_buying_lead();
    /// What packages should not be.
    plan_lots();
    /// Lots that were tested before.
    plan_lots_before(lots: text, more: ["yes" "no"]);
    /// The column of codes.
    plan_code();
    /// Of shops.
    plan_shop();
    /// Of lots.
    plan_lot();
    /// Of best-by dates.
    plan_best_by();
    /// Of days.
    plan_bought_on();
    /// Of prices.
    plan_paid();
    /// Of photographs.
    plan_photographs();

    /// The title of the labels.
    labels_title(round: text);
    /// What the file is.
    labels_about(labels: count);
    /// On each label.
    labels_keep_closed();
    /// What the square is, for who cannot see it.
    labels_square(code: text);
    /// In place of labels.
    labels_none();

    /// The title of the contact sheet.
    contact_title();
    /// What the file is.
    contact_about(packages: count);
    /// At the foot.
    contact_foot();
    /// Before the number of the page.
    contact_page();
    /// Between it and the number of pages.
    contact_page_of();
    /// What is told of a package.
    contact_label(of: ["lot" "best_by" "bought_on" "shop" "custody"]);
    /// What is not known.
    contact_unknown();
    /// A photograph, for who cannot see it.
    contact_photograph(package: text, name: text);
    /// A photograph that is not drawn.
    contact_not_drawn(path: text, why: ["unread" "broken" "kind" "large" "pixels"]);
    /// No photograph.
    contact_none();

    /// The day of an answer.
    diary_reply(name: text, id: text);
    /// When the maker was told.
    diary_told(day: text);
    /// The first day of publication.
    diary_publish(name: text, id: text);
    /// The day of a report.
    diary_report(day: text);
    /// What is not reported.
    diary_not_reported(codes: text);
    /// A further test.
    diary_retest(name: text, id: text);
    /// When it was tested last.
    diary_last(day: text);
}
