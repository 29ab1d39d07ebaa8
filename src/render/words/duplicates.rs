//! What is said of how well extractions agree: pairs, the programme's own repeatability, and what the settings assume.

use crate::model::statistics::{
    Assumption, AssumptionFinding, Drift, Horwitz, PairsOf, ProgrammeStatistics, RangeChart,
    RangePoint, Repeatability,
};
use crate::render::numbers::{self, percent};
use crate::render::tally::Tally;
use crate::render::terms::Terms;
use crate::render::words::sentence_case;
use crate::render::words::summary::probability;
use crate::words::{Catalogue, Said, say, yes_or_no};
use std::iter::once;

/// The lede above the duplicate charts.
pub fn lede(tally: &Tally, words: &Catalogue) -> String {
    let pairs = &tally.pairs;
    words.say(&match pairs.reported() {
        0 => say::summary_pairs_empty(),
        reported => say::summary_pairs(
            reported,
            pairs.agree.to_string(),
            pairs.disagree,
            pairs.incomplete,
        ),
    })
}

/// Which pairs crossed the control line, and what became of them.
pub fn range_note(chart: &RangeChart, words: &Catalogue) -> String {
    let beyond = chart.points.iter().filter(|point| point.beyond);
    let (stood, apart): (Vec<&RangePoint>, Vec<&RangePoint>) =
        beyond.partition(|point| point.agrees);
    let (stood, apart) = (stood.len(), apart.len());
    let how_many = match stood {
        0 => "none",
        _ if apart == 0 => "all",
        1 => "one",
        _ => "some",
    };
    words.say(&say::summary_range_note(
        (stood + apart) as u64,
        how_many,
        words.spelt(stood),
        apart as u64,
        words.spelt(apart),
    ))
}

/// What became of a pair that is listed: each is held against what two readings may differ by, and where the lab repeated
/// the test, the package was decided on all of them.
pub fn became(point: &RangePoint, words: &Catalogue) -> String {
    let pair = if point.agrees { "agrees" } else { "apart" };
    let (all, n) = match point.decided_on {
        None => ("none", 0),
        Some((n, true)) => ("agree", n),
        Some((n, false)) => ("disagree", n),
    };
    words.say(&say::summary_became(pair, all, n as u64))
}

/// A pair's range and what is allowed, in per cent, so that the larger of the two is printed as the larger.
pub fn range_and_allowed(point: &RangePoint, words: &Catalogue) -> [String; 2] {
    let (range, allowed) = (point.signed_percent.abs(), point.allowed_percent);
    let printed = |places: usize| [range, allowed].map(|x| format!("{x:.places$}"));
    let apart = (0..=3)
        .map(printed)
        .find(|figures| figures[0] != figures[1]);
    let figures = apart.unwrap_or_else(|| printed(0));
    figures.map(|figure| words.quantity(&figure, "%"))
}

/// Which pairs a repeatability is of.
pub fn pairs_of(of: &PairsOf, terms: &Terms) -> String {
    match of {
        PairsOf::All => terms.words.say(&say::summary_pairs_all()),
        PairsOf::Lab(name) => sentence_case(name),
        PairsOf::BelowLimit => terms.words.say(&say::summary_pairs_below(&terms.limit)),
        PairsOf::FromLimit => terms.words.say(&say::summary_pairs_from(&terms.limit)),
    }
}

/// Pairs, flagged ones left out, "6.1 % (5.2 to 7.4)", and the same from the median of all pairs.
pub fn repeatability(found: &Repeatability, words: &Catalogue) -> [String; 4] {
    let figure = |share: f64| tenths(share, words);
    [
        found.pairs.to_string(),
        found.flagged.to_string(),
        words.say(&say::summary_repeatability(
            figure(found.relative_s),
            figure(found.interval.lower),
            figure(found.interval.upper),
        )),
        words.quantity(&figure(found.resistant_s), "%"),
    ]
}

/// A share in per cent, with its tenths.
fn tenths(share: f64, words: &Catalogue) -> String {
    words.locale().figure(&format!("{:.1}", share * 100.0))
}

/// The same without a tenth that is none.
fn short(share: f64, words: &Catalogue) -> String {
    words.locale().figure(&numbers::short_percent(share))
}

/// How flagged pairs are treated, how often sound ones are flagged, and what the settings assume. `packages` is how many
/// are bought of each product.
pub fn notes(statistics: &ProgrammeStatistics, packages: usize, words: &Catalogue) -> Vec<String> {
    let Some(own) = statistics.repeatability.first() else {
        return Vec::new();
    };
    let flagged = say::summary_flagged(packages as u64, percent(statistics.false_alarm));
    let assumption = statistics
        .assumption
        .map(|found| assumption(found, own, words));
    let horwitz = statistics.horwitz.map(|of| horwitz(of, words));
    words.each(once(flagged).chain(assumption).chain(horwitz))
}

/// The programme's own repeatability against the one that its settings assume.
fn assumption(of: Assumption, own: &Repeatability, words: &Catalogue) -> Said {
    let (finding, proposal) = match of.finding {
        AssumptionFinding::Fits if own.interval.upper < of.assumed => ("below", None),
        AssumptionFinding::Fits => ("fits", None),
        AssumptionFinding::Smaller { proposal } => ("smaller", Some(proposal)),
        AssumptionFinding::Larger { proposal } => ("larger", Some(proposal)),
    };
    say::summary_assumption(
        finding,
        short(of.assumed, words),
        proposal.map_or(String::new(), |share| short(share, words)),
        // As the settings are written, whatever the language.
        proposal.map_or(String::new(), |share| share.to_string()),
    )
}

/// What chemical methods would scatter by.
fn horwitz(of: Horwitz, words: &Catalogue) -> Said {
    let ratio = words.locale().figure(&format!("{:.1}", of.horrat_r));
    say::summary_horwitz(short(of.between_labs, words), ratio)
}

/// Whether a lab's duplicates came to differ over time.
pub fn drift(drift: &Drift, words: &Catalogue) -> String {
    words.say(&say::summary_drift(
        &drift.lab,
        tenths(drift.early_s, words),
        tenths(drift.late_s, words),
        yes_or_no(drift.f_test.p < 0.05),
        probability(drift.f_test.p, words),
    ))
}
