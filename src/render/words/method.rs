//! How was tested and decided, where the numbers come from, and the caution that every sheet carries.

use crate::config::Config;
use crate::model::caution::Caution;
use crate::model::decided::JudgedProduct;
use crate::model::exhibit::{Exhibit, ExhibitKind};
use crate::model::package::PackageResult;
use crate::model::pair::PairState;
use crate::model::rule::{Decision, Regime, Rule};
use crate::model::verdict::{ProductVerdict, Verdict};
use crate::render::numbers;
use crate::render::words::{label, once};
use crate::words::{Catalogue, reason_in_words, say, side};

/// How was tested and decided: sentences for one paragraph.
pub fn method(judged: &JudgedProduct, config: &Config) -> Vec<String> {
    let product = &judged.verdict;
    let words = &config.words;
    let rule = product.rule;
    let times = config.testing.extractions_per_package;
    let spelt = words.spelt(times);
    let assays = assays(product, config);
    let assays = assays.trim_end_matches('.');
    let mut said = vec![
        words.say(&say::method_assay(assays, times as u64, spelt)),
        agreement(judged, config),
        words.say(&say::method_result()),
        words.say(&say::method_one_decides(side(rule.limit))),
        decision(rule, words),
    ];
    let limit = || say::method_limit(side(rule.limit), law(rule.regime), words.limit(&rule));
    let limit = product.claim.limit.is_some().then(limit);
    said.extend(limit.map(|limit| words.say(&limit)));
    said.push(words.say(&say::method_own()));
    // Where there is no verdict, the sentence beside it has said this already.
    let unfit = product.method_unfit.as_ref();
    if let Some(unfit) = unfit.filter(|_| product.verdict != Verdict::NoVerdict) {
        said.push(reason_in_words(unfit, &rule, words));
    }
    let cautions = judged.cautions.iter();
    said.extend(cautions.map(|caution| bear_in_mind(caution, words)));
    said
}

/// A caution as a sentence.
pub fn bear_in_mind(caution: &Caution, words: &Catalogue) -> String {
    words.say(&match caution {
        Caution::BarleyReadHigh => say::caution_barley(),
        Caution::OatsUnseen => say::caution_oats(),
        Caution::Tannins => say::caution_tannins(),
        Caution::NoCocktail => say::caution_no_cocktail(),
        Caution::CompetitiveOnWhole => say::caution_competitive(),
        Caution::MayBeInPieces(named) => {
            let quoted = |term: &String| words.say(&say::quoted(term));
            let shown: Vec<String> = named.iter().take(3).map(quoted).collect();
            say::caution_pieces(words.list(&shown))
        }
    })
}

/// The word by which the messages know where a limit is written.
pub fn law(regime: Regime) -> &'static str {
    match regime {
        Regime::Uk => "uk",
        other => label::law(other),
    }
}

/// The assays of the readings, in the lab’s words; the programme’s where there is no reading.
pub fn assays(product: &ProductVerdict, config: &Config) -> String {
    let packages = product.packages.iter();
    let extractions = packages.flat_map(|package| &package.pair.extractions);
    let assays = extractions.map(|paired| paired.extraction.assay.as_ref());
    let assays = once(assays.filter(|assay: &&str| !assay.is_empty()).collect());
    if assays.is_empty() {
        config.lab.assay.clone()
    } else {
        config.words.list(&assays)
    }
}

/// The rule of agreement, in words: its formula stands in the summary, and a sum worked out beside it.
///
/// Where a package disagrees, it is said how often a sound one does.
fn agreement(judged: &JudgedProduct, config: &Config) -> String {
    let words = &config.words;
    let packages = &judged.verdict.packages;
    let said = words.say(&say::method_agreement());
    let disagree = |package: &PackageResult| package.pair.state == PairState::Disagree;
    if packages.iter().any(disagree) {
        let chance = judged.statistics.false_alarm;
        format!("{said} {}", false_alarm(chance, packages.len(), words))
    } else {
        said
    }
}

/// How often sound packages are flagged.
pub fn false_alarm(chance: f64, packages: usize, words: &Catalogue) -> String {
    words.say(&say::method_false_alarm(
        packages as u64,
        words.spelt(packages),
        percent(chance, words),
    ))
}

fn decision(rule: Rule, words: &Catalogue) -> String {
    words.say(&match rule.decision {
        _ if rule.limit.detection => say::method_detection(),
        Decision::Simple => say::method_simple(),
        Decision::Guarded {
            relative_expanded_uncertainty,
        } => say::method_guarded(percent(relative_expanded_uncertainty, words)),
    })
}

pub use crate::words::yes_or_no as yes_no;

/// A share as a whole percentage with its sign.
pub fn percent(share: f64, words: &Catalogue) -> String {
    words.quantity(&numbers::percent(share), "%")
}

/// A certificate or a photograph, as the sheet names it.
pub fn exhibit(exhibit: &Exhibit, words: &Catalogue) -> String {
    let path = &exhibit.path;
    let name = path.rsplit('/').next().unwrap_or(path);
    let kind = match exhibit.kind {
        ExhibitKind::Certificate => "certificate",
        ExhibitKind::Photograph => "photograph",
    };
    let sha256 = short_hash(&exhibit.sha256);
    words.say(&say::method_exhibit(kind, name, sha256))
}

/// A hash that can be compared by eye: its first eight and last four digits.
pub fn short_hash(sha256: &str) -> String {
    let end = sha256.len().saturating_sub(4);
    let parts = (sha256.get(..4), sha256.get(4..8), sha256.get(end..));
    match parts {
        (Some(first), Some(second), Some(last)) if sha256.len() > 12 => {
            format!("{first} {second} … {last}")
        }
        _ => sha256.to_owned(),
    }
}

/// What every sheet says last.
pub fn caution(config: &Config) -> String {
    let regulator = config.programme.regulator.as_deref();
    let name = regulator.unwrap_or_default();
    let name = name.trim_start_matches("the ").trim_start_matches("The ");
    let known = if regulator.is_some() { "named" } else { "none" };
    config.words.say(&say::method_caution(known, name))
}
