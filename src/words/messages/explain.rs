//! The reasoning of one verdict, step by step: a command's words, which are English whatever the documents are written in.

use super::*;

messages! {
    "explain"
    /// The product and its round.
    explain_product(name: text, id: text, round: text);
    /// The claim.
    explain_claim(claim: text, class: text);
    /// The other assay's series.
    explain_beside(assay: ["sandwich" "competitive"]);
    /// Heading: the rule.
    explain_rule();
    /// The regime and what is over its limit.
    explain_over(regime: text, rule: ["fails" "passes" "detection"], limit: text);
    /// A simple decision.
    explain_simple();
    /// A guarded decision.
    explain_guarded(uncertainty: text);
    /// What the programme asks for.
    explain_asked(packages: count, extractions: count, repeatability: text);
    /// Heading: the verdict.
    explain_verdict();
    /// The packages that count.
    explain_count(packages: count, asked: count);
    /// To bear in mind.
    explain_bear(caution: text);
    /// Whether the maker is told.
    explain_told(told: ["yes" "no"]);
    /// A package.
    explain_package(package: text);
    /// No row of a package.
    explain_no_row();
    /// How its readings agree.
    explain_state(state: ["agree" "disagree" "incomplete" "missing"]);
    /// Its custody.
    explain_custody(custody: text);
    /// Its photograph.
    explain_photograph(file: text, sha256: text);
    /// A reading.
    explain_reading(number: text, reported: text, place: text, readable: ["yes" "no"], interval: text, lloq: text);
    /// An interval without an upper end.
    explain_no_end();
    /// Gliadin.
    explain_gliadin();
    /// The same elsewhere.
    explain_again(place: text);
    /// Why a reading is not used.
    explain_unused(cause: ["unread" "conflict"]);
    /// Set aside.
    explain_set_aside(by: text, reason: text);
    /// The comparison.
    explain_comparison(n: count);
    /// The gap.
    explain_gap(lower: text, bounded: ["yes" "no"], upper: text, gap: text);
    /// The mean of the comparison.
    explain_mean(apart: ["yes" "no"], mean: text);
    /// The scatter.
    explain_scatter(q: text, repeatability: text, s: text);
    /// What is allowed.
    explain_allowed(n: count, factor: text, s: text, allowed: text);
    /// The result.
    explain_result(kind: ["none" "below" "mean" "outer" "means"], lower: text, bounded: ["yes" "no"], upper: text, readings: text, n: count);
    /// The guard band at its lower end.
    explain_guard_lower(x: text, uncertainty: text, scaled: text);
    /// At its upper end.
    explain_guard_upper(x: text, uncertainty: text, scaled: text);
    /// The guard band.
    explain_guard(ends: text);
    /// Readings on both sides.
    explain_straddles();
    /// The standing of a package.
    explain_standing(standing: text);
    /// Of one whose readings disagree.
    explain_standing_apart(standing: text, over: count, n: count);
    /// Heading: the label.
    explain_label();
    /// The statement.
    explain_statement(statement: text);
    /// The finding.
    explain_finding(finding: text);
    /// A class of terms.
    explain_class(class: ["always" "not_forbidden" "depends" "exempt" "look_alike"]);
    /// A term.
    explain_term(term: text, grain: text, class: text, why: text, source: text);
    /// Precautionary words.
    explain_precaution(statement: text);
    /// Heading: statistics.
    explain_statistics();
    /// Nothing to say.
    explain_no_statistics();
    /// The share over the limit.
    explain_share(k: text, n: count, lower: text, upper: text, wilson_lower: text, wilson_upper: text);
    /// The undecided.
    explain_undecided(n: count);
    /// The one-sided bound.
    explain_one_sided(k: text, n: count, upper: text);
    /// The other side of the limit.
    explain_other_side(package: text, figure: text, u: text, chance: text);
    /// Components of the variance.
    explain_components(between: text, within: text, ms_between: text, ms_within: text);
    /// Their test.
    explain_test(df1: text, df2: text, f: text, p: text);
}
