//! `results.json`: everything that was decided, each figure with the cell it came from. Its shape is `model::results`.

use crate::config::Config;
use crate::model::claim::ClaimClass;
use crate::model::decided::{Decided, JudgedProduct};
use crate::model::label::LabelFinding;
use crate::model::package::{PackageResult, ResultKind};
use crate::model::pair::{PairedExtraction, Usage};
use crate::model::ppm::Ppm;
use crate::model::problem;
use crate::model::publication::UnderRevision;
use crate::model::results::{
    Claim, Extraction, Figures, Label, Package, Problem, Product, Programme, Publication, Results,
    Rule, Series, Source, UNDER_REVISION,
};
use crate::model::verdict::Verdict;
use crate::save::plates::plates;
use crate::words::english;

/// The name of the shape; a change that a reader must know of changes the number.
pub const SCHEMA: &str = "galleyproof.results/1";

/// The JSON schema of the file, for those who read it with a program.
pub const JSON_SCHEMA: &str = include_str!("results.schema.json");

/// The view of all that was decided.
pub fn view<'a>(decided: &'a Decided, config: &'a Config) -> Results<'a> {
    Results {
        schema: SCHEMA.into(),
        programme: Programme {
            name: config.programme.name.as_str().into(),
            short_name: config.programme.short_name.as_str().into(),
        },
        rule: Rule {
            regime: config.rule.regime.word().into(),
            limit_ppm: config.rule.limit.ppm.0,
            limit_passes: config.rule.limit.passes,
            decision: config.rule.decision.word().into(),
        },
        products: products(decided, config),
        plates: plates(decided),
        counts: decided.statistics.counts,
        problems: decided.problems.sorted().into_iter().map(problem).collect(),
    }
}

/// What was decided, and what does not stand any more and of which nothing is said, by product and round.
fn products<'a>(decided: &'a Decided, config: &Config) -> Vec<Product<'a>> {
    let judged = decided
        .products
        .iter()
        .map(|judged| product(judged, config));
    let open = decided.under_revision.iter().map(under_revision);
    let mut products: Vec<Product<'_>> = judged.chain(open).collect();
    products.sort_by(|a, b| (&a.product_id, &a.round).cmp(&(&b.product_id, &b.round)));
    products
}

fn under_revision(one: &UnderRevision) -> Product<'_> {
    Product {
        product_id: one.product_id.as_str().into(),
        round: one.round.as_str().into(),
        name: one.name.as_str().into(),
        verdict: Verdict::NoVerdict.word().into(),
        grade: None,
        reasons: vec![one.said.clone()],
        claim: Claim {
            text: "".into(),
            class: ClaimClass::Unknown.word().into(),
            limit_ppm: None,
            limit_passes: None,
        },
        label: Label {
            finding: LabelFinding::NoIngredients.word().into(),
            terms: Vec::new(),
        },
        notify_maker: false,
        publication: Publication {
            state: UNDER_REVISION.into(),
            may_publish_on: None,
            revision: one.revision,
            why: one.said.as_str().into(),
        },
        packages: Vec::new(),
    }
}

/// The text of the file: two spaces deep, one line feed at its end.
pub fn json(decided: &Decided, config: &Config) -> String {
    let mut text = serde_json::to_string_pretty(&view(decided, config))
        .expect("the view has only JSON's own types");
    text.push('\n');
    text
}

fn product<'a>(judged: &'a JudgedProduct, config: &Config) -> Product<'a> {
    let verdict = &judged.verdict;
    Product {
        product_id: verdict.product.product_id.as_str().into(),
        round: verdict.round.as_str().into(),
        name: verdict.product.name.as_str().into(),
        verdict: verdict.verdict.word().into(),
        grade: verdict.verdict.grade().map(Into::into),
        reasons: crate::words::plain_reasons(&verdict.reasons, &verdict.rule, &config.words),
        claim: Claim {
            text: verdict.claim.text.as_str().into(),
            class: verdict.claim.class.word().into(),
            limit_ppm: verdict.claim.limit.map(|limit| limit.ppm.0),
            limit_passes: verdict.claim.limit.map(|limit| limit.passes),
        },
        label: Label {
            finding: verdict.label.finding.word().into(),
            terms: verdict
                .label
                .terms
                .iter()
                .map(|term| term.printed.as_str().into())
                .collect(),
        },
        notify_maker: verdict.notify_maker,
        publication: Publication {
            state: judged.publication.state.word().into(),
            may_publish_on: judged.publication.may_publish_on,
            revision: judged.publication.revision,
            why: judged.publication_said.as_str().into(),
        },
        packages: verdict.packages.iter().map(package).collect(),
    }
}

fn package(package: &PackageResult) -> Package<'_> {
    Package {
        package_code: package.pair.package.package_code.as_str().into(),
        series: series(package),
        other_series: package.other_series.as_deref().map(series),
    }
}

fn series(package: &PackageResult) -> Series<'_> {
    let comparison = package.pair.comparison;
    Series {
        assay_kind: package.pair.assay_kind.word().into(),
        state: package.pair.state.word().into(),
        standing: package.standing.word().into(),
        straddles_limit: package.straddles_limit,
        gap_ppm: comparison.map(|comparison| comparison.gap.0),
        allowed_ppm: comparison.map(|comparison| comparison.allowed.0),
        result: result(&package.result),
        extractions: package.pair.extractions.iter().map(extraction).collect(),
    }
}

/// The view of a package's result.
pub fn result(result: &ResultKind) -> Figures<'static> {
    let (ppm, lower, upper) = match *result {
        ResultKind::Value { mean } => (Some(mean), Some(mean), Some(mean)),
        ResultKind::Below { upper } => (None, Some(Ppm::ZERO), Some(upper)),
        ResultKind::Range(range) => (None, Some(range.lower), range.upper),
        ResultKind::None => (None, None, None),
    };
    let figure = |ppm: Option<Ppm>| ppm.map(|ppm| ppm.0);
    Figures {
        kind: result.word().into(),
        ppm: figure(ppm),
        lower_ppm: figure(lower),
        upper_ppm: figure(upper),
    }
}

fn extraction(paired: &PairedExtraction) -> Extraction<'_> {
    let extraction = &paired.extraction;
    let reading = extraction.outcome.reading();
    let source = &extraction.source;
    Extraction {
        number: extraction.number,
        reported: extraction.reported.as_str().into(),
        lower_ppm: reading.map(|interval| interval.lower.0),
        upper_ppm: reading
            .and_then(|interval| interval.upper)
            .map(|upper| upper.0),
        excluded: matches!(paired.usage, Usage::Excluded { .. }),
        source: Source {
            file: source.file.path.as_str().into(),
            sha256: source.file.sha256.as_str().into(),
            sheet: source.sheet.as_deref().map(Into::into),
            row: source.row,
            column: crate::model::place::column_letter(source.column),
        },
    }
}

fn problem(problem: &problem::Problem) -> Problem<'_> {
    let place = &problem.place;
    Problem {
        severity: problem.severity().word().into(),
        code: problem.code.word().into(),
        file: place.file.as_str().into(),
        sheet: place.sheet.as_deref().map(Into::into),
        row: place.row,
        column: place.column_letter(),
        message: english().found(problem).into(),
        hint: english().to_do(problem).into(),
    }
}
