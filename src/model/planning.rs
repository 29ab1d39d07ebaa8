//! A planned round: which products, under which codes, what it costs and what it can show.
//!
//! Shares and chances are fractions from 0 to 1, concentrations ppm gluten, money in the programme's currency.

use crate::model::registers::Product;
use chrono::NaiveDate;

/// What is asked of a plan.
#[derive(Clone, Debug, PartialEq)]
pub struct PlanWanted {
    /// The round; none for the next one.
    pub round: Option<String>,
    /// These products only; empty for all.
    pub only: Vec<String>,
    /// Packages of each product.
    pub packages: usize,
    /// Extractions of each package.
    pub extractions: usize,
    /// What the round may cost at most.
    pub budget: Option<f64>,
    /// Whether packages of known content go along.
    pub blinds: bool,
    /// What the codes are drawn from.
    pub seed: [u8; 32],
    /// Texts that no code may stand in, in lower case: the codes of the registers, and the registers themselves.
    pub taken: Vec<String>,
}

/// A planned round.
#[derive(Clone, Debug, PartialEq)]
pub struct RoundPlan {
    /// The round's name.
    pub round: String,
    /// Packages of each product.
    pub packages: usize,
    /// Extractions of each package.
    pub extractions: usize,
    /// The products to buy, in the order in which they are worth testing.
    pub chosen: Vec<PlannedProduct>,
    /// Products that the budget leaves for later, in the same order.
    pub later: Vec<Candidate>,
    /// Products whose label already decides: write, do not test.
    pub decided_by_label: Vec<LabelDecides>,
    /// Products that are not to be bought now, each with its reason.
    pub left_out: Vec<LeftOut>,
    /// Packages of known content, which the lab cannot tell from the others.
    pub blinds: Vec<Blind>,
    /// What it costs.
    pub costs: RoundCosts,
    /// What may be spent, where a budget was given.
    pub budget: Option<f64>,
    /// The same products tested more thoroughly, side by side; the plan itself first.
    pub variants: Vec<Variant>,
    /// What the round can show.
    pub shows: Shows,
}

/// A product that could be tested.
#[derive(Clone, Debug, PartialEq)]
pub struct Candidate {
    /// The product.
    pub product: Product,
    /// Why it is worth testing.
    pub why: Why,
    /// Its proteins may be in pieces: it needs an assay that sees them.
    pub needs_competitive: bool,
    /// Lots that were bought before.
    pub known_lots: Vec<String>,
}

/// Why a product is worth testing; in the order in which they come.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Why {
    /// No package of it was ever tested.
    NeverTested,
    /// Its last round gave no verdict.
    NoVerdict {
        /// That round.
        round: String,
    },
    /// It was over the limit, and the maker has answered.
    OverAndAnswered {
        /// That round.
        round: String,
    },
    /// It was tested, longest ago first.
    TestedBefore {
        /// The day, where one is known.
        on: Option<NaiveDate>,
    },
    /// It was asked for by name.
    AskedFor,
}

/// A product of the round.
#[derive(Clone, Debug, PartialEq)]
pub struct PlannedProduct {
    /// The product, and why.
    pub candidate: Candidate,
    /// A code for each package.
    pub codes: Vec<String>,
    /// What a package is expected to cost; none where no price is known.
    pub price: Option<Price>,
}

/// What a package is expected to cost.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Price {
    /// The median of what was paid.
    pub median: f64,
    /// The least that was paid.
    pub lowest: f64,
    /// The most that was paid.
    pub highest: f64,
    /// How many prices that is from; 0 for the figure of the settings.
    pub paid: usize,
    /// What they were paid for.
    pub of: PriceOf,
}

/// What a price was paid for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PriceOf {
    /// Packages of the same category.
    Category,
    /// Any packages, since none of the category has a price.
    Everything,
    /// Nothing yet: the figure of the settings.
    Settings,
}

/// A product whose label already decides.
#[derive(Clone, Debug, PartialEq)]
pub struct LabelDecides {
    /// The product.
    pub product: Product,
    /// The words on the label that name a gluten source, as printed.
    pub terms: Vec<String>,
}

/// A product that is not to be bought now.
#[derive(Clone, Debug, PartialEq)]
pub struct LeftOut {
    /// The product.
    pub product: Product,
    /// Why not.
    pub why: WhyNot,
}

/// Why a product is not to be bought now.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum WhyNot {
    /// Packages of it are bought or with the lab.
    UnderWay {
        /// Their round.
        round: String,
    },
    /// It was over the limit, and the maker has not answered.
    NotAnswered {
        /// That round.
        round: String,
    },
    /// It is fermented or hydrolysed, and the rule lets no assay decide.
    NoAssayDecides,
    /// The register does not say whether it is fermented or hydrolysed.
    ProcessingUnknown,
    /// Its claim is none that the rule knows: there would be no limit to hold a result against.
    ClaimUnknown,
    /// The register leaves something open without which there is no verdict.
    RegisterLeavesOpen,
    /// It has packages in this round already.
    InThisRound,
}

/// A package of known content.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Blind {
    /// Its code.
    pub code: String,
    /// Whether gluten is added; else it is known to hold none.
    pub spiked: bool,
}

/// What a round costs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RoundCosts {
    /// All packages; none where no price of any is known.
    pub packages: Option<f64>,
    /// All extractions; none where the settings have no price.
    pub lab: Option<f64>,
    /// Sending them; none where the settings have no price.
    pub shipping: Option<f64>,
    /// All that is known, together; none where nothing is.
    pub total: Option<f64>,
}

/// Another way to test the same products.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Variant {
    /// Packages of each product.
    pub packages: usize,
    /// Extractions of each package.
    pub extractions: usize,
    /// What it costs.
    pub costs: RoundCosts,
    /// How many of the products the budget carries, where there is one.
    pub products_in_budget: Option<usize>,
    /// The chance of at least one package over, where a tenth of all packages are.
    pub finds_a_tenth: f64,
    /// Standard deviation of a product's mean, relative.
    pub standard_error: f64,
    /// The chance of each verdict where the true mean is half the limit.
    pub at_half: VerdictChances,
    /// The same at twice the limit.
    pub at_double: VerdictChances,
}

/// The chance of each verdict. Together they are 1.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct VerdictChances {
    /// Over the limit.
    pub over: f64,
    /// Within it.
    pub within: f64,
    /// No verdict.
    pub undecided: f64,
}

/// A relative standard deviation and where it is from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scatter {
    /// The standard deviation of natural logarithms.
    pub log_sd: f64,
    /// Degrees of freedom behind it; 0 for a stand-in.
    pub df: usize,
}

/// What a round can show.
#[derive(Clone, Debug, PartialEq)]
pub struct Shows {
    /// Between the packages of a product.
    pub between: Scatter,
    /// Between the extractions of a package.
    pub within: Scatter,
    /// The chance of at least one package over, against the share that is: a line a number of packages, the plan's own
    /// among them.
    pub finds: Vec<FindingLine>,
    /// The chance of each verdict against the true mean, for the plan itself.
    pub curve: Vec<CurvePoint>,
    /// The chance that a product at twice the limit is found over it, and one at half of it within: by packages and
    /// extractions.
    pub grid: Vec<GridCell>,
    /// Packages without one over that a statement needs.
    pub statements: Vec<Statement>,
    /// What a further package of each product, or a further extraction of each package, is worth.
    pub next: NextMoney,
}

/// The chance of at least one package over.
#[derive(Clone, Debug, PartialEq)]
pub struct FindingLine {
    /// So many packages.
    pub packages: usize,
    /// By share, from 0 on.
    pub points: Vec<FindingPoint>,
}

/// The chance at one share.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FindingPoint {
    /// The share of all packages that is over.
    pub share: f64,
    /// The chance that at least one of those bought is.
    pub chance: f64,
}

/// The chances at one true mean.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CurvePoint {
    /// The true mean of the product, ppm.
    pub mean: f64,
    /// The chance of each verdict.
    pub chances: VerdictChances,
}

/// One cell of the grid of designs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GridCell {
    /// Packages of a product.
    pub packages: usize,
    /// Extractions of a package.
    pub extractions: usize,
    /// The chance of "over" at twice the limit.
    pub over_at_double: f64,
    /// The chance of "within" at half the limit.
    pub within_at_half: f64,
}

/// How many packages, none of them over, a statement needs at 95 % confidence.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Statement {
    /// At most this share of all packages is over.
    pub share: f64,
    /// Packages.
    pub packages: u64,
    /// What they cost, where prices are known.
    pub cost: Option<f64>,
}

/// What one step more is worth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NextMoney {
    /// A package more of each product.
    pub package: Step,
    /// An extraction more of each package.
    pub extraction: Step,
    /// Which of the two does more for its money; by itself where no price is known.
    pub package_first: bool,
}

/// One step more.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Step {
    /// Relative standard error of a product's mean afterwards.
    pub standard_error: f64,
    /// What it costs for one product, where prices are known.
    pub cost: Option<f64>,
}
