//! One package's result worked out in words and figures, so that anybody can do the sum again.

use crate::model::extraction::Extraction;
use crate::model::package::{PackageResult, ResultKind};
use crate::model::pair::{Comparison, PairState};
use crate::model::verdict::ProductVerdict;
use crate::render::numbers;
use crate::render::words::meaning::upper_end;
use crate::render::words::packages::figures;
use crate::words::{Catalogue, Said, say};

/// The package whose sum is shown: the highest of those with figures alone, else one with a figure and a bound, else one whose
/// extractions are all below what the test measures. None where no package has two readings that count.
pub fn shown(product: &ProductVerdict) -> Option<&PackageResult> {
    let rank = |package: &PackageResult| match package.result {
        ResultKind::Value { .. } => 2,
        ResultKind::Range(_) if package.pair.usable().all(Extraction::is_figure) => 2,
        ResultKind::Range(_) => 1,
        ResultKind::Below { .. } | ResultKind::None => 0,
    };
    let ranked = product.packages.iter().filter_map(|package| {
        package.pair.comparison.as_ref()?;
        Some(((rank(package), upper_end(package)?.0), package))
    });
    // Of equals the first.
    let highest = ranked.reduce(|best, next| if next.0 > best.0 { next } else { best });
    highest.map(|(_, package)| package)
}

/// Its sum in words.
pub fn worked(product: &ProductVerdict, words: &Catalogue) -> Option<String> {
    let package = shown(product)?;
    let comparison = package.pair.comparison.as_ref()?;
    Some(words.say(&said(package, comparison, product, words)))
}

fn said(
    package: &PackageResult,
    comparison: &Comparison,
    product: &ProductVerdict,
    words: &Catalogue,
) -> Said {
    let limit = product.rule.limit;
    let code = &package.pair.package.package_code;
    let readings = package.pair.usable();
    let readings = readings.filter_map(|one| one.outcome.reading());
    let said = |reading| numbers::interval_said(reading, limit, words);
    let readings = words.list(&figures(readings, &said, words));
    let apart = numbers::apart(comparison);
    let figure = |written: &str| words.locale().figure(written);
    let (gap, allowed) = (figure(&apart.gap), figure(&apart.allowed));
    let result = numbers::result_said(&package.result, limit, words);
    match package.result {
        _ if package.pair.state == PairState::Disagree => {
            say::sum_disagree(code, readings, gap, allowed)
        }
        ResultKind::Value { mean } => {
            let exact = figure(&numbers::plain(mean));
            let printed = if exact == result { "same" } else { "rounded" };
            say::sum_mean(code, readings, exact, printed, result, gap, allowed)
        }
        ResultKind::Below { .. } => say::sum_below(code, readings, result),
        ResultKind::Range(_) | ResultKind::None => say::sum_range(code, readings, result),
    }
}
