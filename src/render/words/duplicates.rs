//! The sentences on how well extractions agree: pairs, the programme's own repeatability, and what the settings assume.

use crate::model::statistics::{
    Assumption, AssumptionFinding, Drift, Horwitz, PairsOf, ProgrammeStatistics, RangeChart,
    RangePoint, Repeatability,
};
use crate::render::numbers::{self, NBSP, percent};
use crate::render::tally::Tally;
use crate::render::terms::Terms;
use crate::render::words::summary::{number, probability};
use crate::render::words::{counted, sentence_case};

/// The lede above the duplicate charts.
pub fn lede(tally: &Tally) -> String {
    let pairs = &tally.pairs;
    if pairs.reported() == 0 {
        return "No package has results yet.".to_owned();
    }
    let mut parts = vec![
        format!("{} agreed", pairs.agree),
        format!("{} disagreed", pairs.disagree),
    ];
    if pairs.incomplete > 0 {
        parts.push(format!(
            "{} had too few usable extractions",
            pairs.incomplete
        ));
    }
    let last = parts.pop().unwrap_or_default();
    format!(
        "The extractions of one package should give nearly the same figure. Of {} with results, {} and {last}.",
        counted(pairs.reported() as usize, "package", "packages"),
        parts.join(", ")
    )
}

/// Which pairs crossed the control line, and what became of them.
pub fn range_note(chart: &RangeChart) -> String {
    let beyond: Vec<_> = chart.points.iter().filter(|point| point.beyond).collect();
    let stood = beyond.iter().filter(|point| point.agrees).count() as u64;
    let crossed = match beyond.len() as u64 {
        0 => "No pair crossed it.".to_owned(),
        1 if stood == 1 => {
            "One pair crossed it; its difference is still within what is allowed between two."
                .to_owned()
        }
        1 => "One pair crossed it; it disagrees.".to_owned(),
        n if stood == 0 => format!(
            "{} pairs crossed it; all of them disagree.",
            sentence_case(&number(n))
        ),
        n if stood == n => format!(
            "{} pairs crossed it; all of them are still within what is allowed between two (larger circles).",
            sentence_case(&number(n))
        ),
        n => format!(
            "{} pairs crossed it; {} of them {} still within what is allowed between two (larger circle), {} {}.",
            sentence_case(&number(n)),
            number(stood),
            if stood == 1 { "is" } else { "are" },
            number(n - stood),
            if n - stood == 1 {
                "disagrees"
            } else {
                "disagree"
            }
        ),
    };
    format!(
        "The range is the larger figure less the smaller, in per cent of their mean. The control line is 3.267 times the mean range of the agreeing pairs. {crossed}"
    )
}

/// What became of a pair that is listed: each is held against what two readings may differ by, and where the lab repeated
/// the test, the package was decided on all of them.
pub fn became(point: &RangePoint) -> String {
    let pair = if point.agrees {
        "within what is allowed"
    } else {
        "disagrees"
    };
    match point.decided_on {
        None => pair.to_owned(),
        Some((n, true)) => format!("{pair}; all {} agree", number(n as u64)),
        Some((n, false)) => format!("{pair}; all {} disagree", number(n as u64)),
    }
}

/// Which pairs a repeatability is of.
pub fn pairs_of(of: &PairsOf, terms: &Terms) -> String {
    match of {
        PairsOf::All => "All".to_owned(),
        PairsOf::Lab(name) => sentence_case(name),
        PairsOf::BelowLimit => format!("Mean below {}", terms.limit),
        PairsOf::FromLimit => format!("Mean at or above {}", terms.limit),
    }
}

/// Pairs, flagged ones left out, "6.1 % (5.2 to 7.4)", and the same from the median of all pairs.
pub fn repeatability(found: &Repeatability) -> [String; 4] {
    let figure = |share: f64| format!("{:.1}", share * 100.0);
    [
        found.pairs.to_string(),
        found.flagged.to_string(),
        format!(
            "{}{NBSP}% ({} to {})",
            figure(found.relative_s),
            figure(found.interval.lower),
            figure(found.interval.upper)
        ),
        format!("{}{NBSP}%", figure(found.resistant_s)),
    ]
}

/// How flagged pairs are treated, how often sound ones are flagged, and what the settings assume. `packages` is how many
/// are bought of each product.
pub fn notes(statistics: &ProgrammeStatistics, packages: usize) -> Vec<String> {
    let mut notes = Vec::new();
    let Some(own) = statistics.repeatability.first() else {
        return notes;
    };
    notes.push(format!(
        "Pairs that disagree are flagged and left out: a crumb in one portion is not the assay’s scatter. That makes the figures a little small; the median, of all pairs, is hardly moved by a few wide ones. {}",
        false_alarm(statistics.false_alarm, packages)
    ));
    notes.extend(statistics.assumption.map(|found| assumption(found, own)));
    notes.extend(statistics.horwitz.map(horwitz));
    notes
}

/// How often sound packages are flagged.
pub fn false_alarm(chance: f64, packages: usize) -> String {
    let of = match packages {
        1 => "A sound package is found to disagree in".to_owned(),
        n => format!(
            "At least one of {} sound packages is found to disagree in",
            number(n as u64)
        ),
    };
    format!(
        "{of} about {}{NBSP}% of all cases, by chance alone.",
        percent(chance)
    )
}

/// The programme's own repeatability against the one that its settings assume.
fn assumption(of: Assumption, own: &Repeatability) -> String {
    let share = |share: f64| format!("{}{NBSP}%", numbers::short_percent(share));
    let assumed = share(of.assumed);
    let setting = |proposal: f64| {
        format!(
            "We propose {} (relative_repeatability = {proposal} in programme.toml) from the next round on; results that were decided before stay as they are.",
            share(proposal)
        )
    };
    match of.finding {
        AssumptionFinding::Fits if own.interval.upper < of.assumed => format!(
            "Pairs are held against an assumed repeatability of {assumed}. The interval lies below it, but by no more than leaving out flagged pairs can bring about, or the median of all pairs is no smaller: no cause to change it."
        ),
        AssumptionFinding::Fits => format!(
            "Pairs are held against an assumed repeatability of {assumed}. The pairs themselves give no cause to change it."
        ),
        AssumptionFinding::Smaller { proposal } => format!(
            "Pairs are held against an assumed repeatability of {assumed}. They scatter less than that: differences that this lab hardly ever has are allowed. {}",
            setting(proposal)
        ),
        AssumptionFinding::Larger { proposal } => format!(
            "Pairs are held against an assumed repeatability of {assumed}. They scatter more than that: more sound pairs are flagged than is said here, or the samples are uneven. {}",
            setting(proposal)
        ),
    }
}

/// What chemical methods would scatter by.
fn horwitz(of: Horwitz) -> String {
    format!(
        "For comparison: chemical methods scatter by about {}{NBSP}% between laboratories at the limit (Horwitz function). The scatter here, within a laboratory, is {:.1} times that; up to 1.3 times is usual for them, and more for gluten assays.",
        numbers::short_percent(of.between_labs),
        of.horrat_r
    )
}

/// Whether a lab's duplicates came to differ over time.
pub fn drift(drift: &Drift) -> String {
    let figure = |share: f64| format!("{:.1}{NBSP}%", share * 100.0);
    let finding = if drift.f_test.p < 0.05 {
        "more apart than chance would often bring about"
    } else {
        "no more apart than chance brings about"
    };
    format!(
        "{}, flagged pairs left out: {} in the earlier half, {} in the later half; {finding} (F test, p {}).",
        drift.lab,
        figure(drift.early_s),
        figure(drift.late_s),
        probability(drift.f_test.p)
    )
}
