//! `results.json`: everything that was decided, each figure with the cell it came from.
//!
//! The structs below are the file's shape: keys stand in this order, and what is absent is `null`.

use crate::config::Config;
use crate::model::claim::ClaimClass;
use crate::model::decided::{Decided, JudgedProduct};
use crate::model::label::LabelFinding;
use crate::model::package::{PackageResult, ResultKind};
use crate::model::pair::{PairedExtraction, Usage};
use crate::model::problem::Problem;
use crate::model::publication::UnderRevision;
use crate::model::statistics::Counts;
use crate::model::verdict::Verdict;
use chrono::NaiveDate;
use serde::Serialize;

/// The name of the shape; a change that a reader must know of changes the number.
pub const SCHEMA: &str = "galleyproof.results/1";

/// The JSON schema of the file, for those who read it with a program.
pub const JSON_SCHEMA: &str = include_str!("results.schema.json");

/// The whole file.
#[derive(Serialize, Debug)]
pub struct Results<'a> {
    schema: &'static str,
    programme: Programme<'a>,
    rule: Rule,
    products: Vec<Product<'a>>,
    counts: CountsView,
    problems: Vec<ProblemView<'a>>,
}

#[derive(Serialize, Debug)]
struct Programme<'a> {
    name: &'a str,
    short_name: &'a str,
}

#[derive(Serialize, Debug)]
struct Rule {
    regime: &'static str,
    limit_ppm: f64,
    limit_passes: bool,
    decision: &'static str,
}

#[derive(Serialize, Debug)]
struct Product<'a> {
    product_id: &'a str,
    round: &'a str,
    name: &'a str,
    verdict: &'static str,
    grade: Option<&'static str>,
    reasons: Vec<String>,
    claim: ClaimView<'a>,
    label: Label<'a>,
    notify_maker: bool,
    publication: PublicationView<'a>,
    packages: Vec<Package<'a>>,
}

#[derive(Serialize, Debug)]
struct ClaimView<'a> {
    text: &'a str,
    class: &'static str,
    limit_ppm: Option<f64>,
    limit_passes: Option<bool>,
}

#[derive(Serialize, Debug)]
struct PublicationView<'a> {
    state: &'static str,
    may_publish_on: Option<NaiveDate>,
    revision: u32,
    why: &'a str,
}

#[derive(Serialize, Debug)]
struct Label<'a> {
    finding: &'static str,
    terms: Vec<&'a str>,
}

#[derive(Serialize, Debug)]
struct Package<'a> {
    package_code: &'a str,
    #[serde(flatten)]
    series: Series<'a>,
    other_series: Option<Series<'a>>,
}

/// The readings by one kind of assay and what they come to.
#[derive(Serialize, Debug)]
struct Series<'a> {
    assay_kind: &'static str,
    state: &'static str,
    standing: &'static str,
    straddles_limit: bool,
    gap_ppm: Option<f64>,
    allowed_ppm: Option<f64>,
    result: ResultView,
    extractions: Vec<Extraction<'a>>,
}

/// A package's result as the data files show it: the bounds are always there where something is known, the single
/// figure only where there is one.
#[derive(Serialize, Debug, Clone, Copy)]
pub struct ResultView {
    /// "value", "below", "range" or "none".
    pub kind: &'static str,
    /// The mean, for a value.
    pub ppm: Option<f64>,
    /// The lowest that the reports allow.
    pub lower_ppm: Option<f64>,
    /// The highest that the reports allow; none where unbounded.
    pub upper_ppm: Option<f64>,
}

#[derive(Serialize, Debug)]
struct Extraction<'a> {
    number: u32,
    reported: &'a str,
    lower_ppm: Option<f64>,
    upper_ppm: Option<f64>,
    excluded: bool,
    source: SourceView<'a>,
}

#[derive(Serialize, Debug)]
struct SourceView<'a> {
    file: &'a str,
    sha256: &'a str,
    sheet: Option<&'a str>,
    row: u32,
    column: String,
}

#[derive(Serialize, Debug)]
struct CountsView {
    extractions: ExtractionCounts,
    packages: PackageCounts,
    products: ProductCounts,
}

#[derive(Serialize, Debug)]
struct ExtractionCounts {
    below_quantification: u64,
    within: u64,
    over: u64,
    unusable: u64,
}

#[derive(Serialize, Debug)]
struct PackageCounts {
    below_quantification: u64,
    within: u64,
    over: u64,
    unresolved: u64,
    inconclusive: u64,
}

#[derive(Serialize, Debug)]
struct ProductCounts {
    within_limit: u64,
    over_limit: u64,
    no_verdict: u64,
}

#[derive(Serialize, Debug)]
struct ProblemView<'a> {
    severity: &'static str,
    code: &'static str,
    file: &'a str,
    sheet: Option<&'a str>,
    row: Option<u32>,
    column: Option<String>,
    message: &'a str,
    hint: &'a str,
}

/// The view of all that was decided.
pub fn view<'a>(decided: &'a Decided, config: &'a Config) -> Results<'a> {
    Results {
        schema: SCHEMA,
        programme: Programme {
            name: &config.programme.name,
            short_name: &config.programme.short_name,
        },
        rule: Rule {
            regime: config.rule.regime.word(),
            limit_ppm: config.rule.limit.ppm.0,
            limit_passes: config.rule.limit.passes,
            decision: config.rule.decision.word(),
        },
        products: products(decided, config),
        counts: counts(&decided.statistics.counts),
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
    products.sort_by_key(|product| (product.product_id, product.round));
    products
}

fn under_revision(one: &UnderRevision) -> Product<'_> {
    Product {
        product_id: &one.product_id,
        round: &one.round,
        name: &one.name,
        verdict: Verdict::NoVerdict.word(),
        grade: None,
        reasons: vec![one.said.clone()],
        claim: ClaimView {
            text: "",
            class: ClaimClass::Unknown.word(),
            limit_ppm: None,
            limit_passes: None,
        },
        label: Label {
            finding: LabelFinding::NoIngredients.word(),
            terms: Vec::new(),
        },
        notify_maker: false,
        publication: PublicationView {
            state: "under_revision",
            may_publish_on: None,
            revision: one.revision,
            why: &one.said,
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
        product_id: &verdict.product.product_id,
        round: &verdict.round,
        name: &verdict.product.name,
        verdict: verdict.verdict.word(),
        grade: verdict.verdict.grade(),
        reasons: crate::words::plain_reasons(&verdict.reasons, &verdict.rule, &config.words),
        claim: ClaimView {
            text: &verdict.claim.text,
            class: verdict.claim.class.word(),
            limit_ppm: verdict.claim.limit.map(|limit| limit.ppm.0),
            limit_passes: verdict.claim.limit.map(|limit| limit.passes),
        },
        label: Label {
            finding: verdict.label.finding.word(),
            terms: verdict
                .label
                .terms
                .iter()
                .map(|term| term.printed.as_str())
                .collect(),
        },
        notify_maker: verdict.notify_maker,
        publication: PublicationView {
            state: judged.publication.state.word(),
            may_publish_on: judged.publication.may_publish_on,
            revision: judged.publication.revision,
            why: &judged.publication_said,
        },
        packages: verdict.packages.iter().map(package).collect(),
    }
}

fn package(package: &PackageResult) -> Package<'_> {
    Package {
        package_code: &package.pair.package.package_code,
        series: series(package),
        other_series: package.other_series.as_deref().map(series),
    }
}

fn series(package: &PackageResult) -> Series<'_> {
    let comparison = package.pair.comparison;
    Series {
        assay_kind: package.pair.assay_kind.word(),
        state: package.pair.state.word(),
        standing: package.standing.word(),
        straddles_limit: package.straddles_limit,
        gap_ppm: comparison.map(|comparison| comparison.gap.0),
        allowed_ppm: comparison.map(|comparison| comparison.allowed.0),
        result: result(&package.result),
        extractions: package.pair.extractions.iter().map(extraction).collect(),
    }
}

/// The view of a package's result.
pub fn result(result: &ResultKind) -> ResultView {
    let (ppm, lower, upper) = match *result {
        ResultKind::Value { mean } => (Some(mean), Some(mean), Some(mean)),
        ResultKind::Below { upper } => (None, Some(crate::model::ppm::Ppm::ZERO), Some(upper)),
        ResultKind::Range(range) => (None, Some(range.lower), range.upper),
        ResultKind::None => (None, None, None),
    };
    let figure = |ppm: Option<crate::model::ppm::Ppm>| ppm.map(|ppm| ppm.0);
    ResultView {
        kind: result.word(),
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
        reported: &extraction.reported,
        lower_ppm: reading.map(|interval| interval.lower.0),
        upper_ppm: reading
            .and_then(|interval| interval.upper)
            .map(|upper| upper.0),
        excluded: matches!(paired.usage, Usage::Excluded { .. }),
        source: SourceView {
            file: &source.file.path,
            sha256: &source.file.sha256,
            sheet: source.sheet.as_deref(),
            row: source.row,
            column: crate::model::place::column_letter(source.column),
        },
    }
}

fn counts(counts: &Counts) -> CountsView {
    let Counts {
        extractions,
        packages,
        products,
    } = counts;
    CountsView {
        extractions: ExtractionCounts {
            below_quantification: extractions.below_quantification,
            within: extractions.within,
            over: extractions.over,
            unusable: extractions.unusable,
        },
        packages: PackageCounts {
            below_quantification: packages.below_quantification,
            within: packages.within,
            over: packages.over,
            unresolved: packages.unresolved,
            inconclusive: packages.inconclusive,
        },
        products: ProductCounts {
            within_limit: products.within_limit,
            over_limit: products.over_limit,
            no_verdict: products.no_verdict,
        },
    }
}

fn problem(problem: &Problem) -> ProblemView<'_> {
    ProblemView {
        severity: problem.severity().word(),
        code: problem.code.word(),
        file: &problem.place.file,
        sheet: problem.place.sheet.as_deref(),
        row: problem.place.row,
        column: problem.place.column_letter(),
        message: &problem.message,
        hint: &problem.hint,
    }
}
