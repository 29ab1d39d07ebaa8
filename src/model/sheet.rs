//! What a results sheet says, as its template gets it: words, figures as they are printed, and the ink of its blocks.
//!
//! It is made once a run: its checksum tells whether the sheet still says what was published, and the PDF and the page for
//! a web site are made of it.

use serde::Serialize;

/// What a sheet says, with its checksum.
#[derive(Clone, Debug)]
pub struct Sheet {
    /// Without number, revision or date.
    pub content: SheetContent,
    /// SHA-256 of it: two equal ones are one revision.
    pub sha256: String,
}

/// What a sheet says: a change here makes a new revision.
#[derive(Clone, Debug, Serialize)]
pub struct SheetContent {
    /// Whose sheet it is.
    pub programme: ProgrammeFacts,
    /// What was tested.
    pub product: ProductFacts,
    /// The verdict.
    pub verdict: VerdictFacts,
    /// The pictures of the ruler, in words; each is made of three drawings: head, rows, scale.
    pub rulers: Vec<String>,
    /// What the marks of the ruler mean.
    pub key: String,
    /// The packages.
    pub table: PackageTable,
    /// What a reader of the table must know beyond its figures.
    pub notes: Vec<String>,
    /// What the result says.
    pub says: String,
    /// What it does not say.
    pub says_not: String,
    /// The label.
    pub label: LabelFacts,
    /// What passed between the programme and the maker.
    pub correspondence: Vec<String>,
    /// What happened on which day, from the shop to the maker's answer.
    pub story: Vec<StoryLine>,
    /// What so few packages can say of all of them, as a picture; none where they say nothing.
    pub shares: Option<SharesPicture>,
    /// What the result means in a portion; none where the register has no portion, or the result no figure.
    pub portion: Option<PortionPicture>,
    /// One package's result worked out, so that anybody can do so again.
    pub sum: Option<String>,
    /// How was tested and decided.
    pub method: Vec<String>,
    /// Which report and which file each of the numbers comes from.
    pub provenance: Vec<String>,
    /// What every sheet says last.
    pub caution: String,
    /// Who answers for the sheet, how mistakes are mended, and what it is not for.
    pub imprint: Vec<String>,
}

/// Who the programme is.
#[derive(Clone, Debug, Serialize)]
pub struct ProgrammeFacts {
    /// In full.
    pub name: String,
    /// Leads each sheet number.
    pub short_name: String,
    /// Where we can be written to.
    pub email: Option<String>,
    /// Postal address, a line each.
    pub address: Vec<String>,
    /// As printed.
    pub website: Option<String>,
    /// Who signs.
    pub director: Option<String>,
    /// Where mistakes are reported.
    pub corrections: Option<String>,
    /// Who pays, what we are not.
    pub statement: Option<String>,
    /// What is kept of each package.
    pub retained: Option<String>,
}

/// What was tested.
#[derive(Clone, Debug, Serialize)]
pub struct ProductFacts {
    /// The programme's own name for it.
    pub product_id: String,
    /// The round of testing.
    pub round: String,
    /// As on the package.
    pub name: String,
    /// Letters in the name, which decide its size.
    pub name_length: usize,
    /// As on the package.
    pub brand: Option<String>,
    /// As on the package.
    pub net_content: Option<String>,
    /// Sold as what, how many packages, when, barcode, certifier.
    pub claim_line: String,
}

/// The verdict.
#[derive(Clone, Debug, Serialize)]
pub struct VerdictFacts {
    /// The ink of its block.
    pub state: BlockState,
    /// `Below 20 ppm`.
    pub words: String,
    /// `All 3 packages tested below the limit.`
    pub count: String,
    /// The sentence beside it.
    pub sentence: String,
}

/// What a label comes to, in the few words that stand beside the verdict wherever that stands.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct LabelJudged {
    /// The ink of its block.
    pub state: LabelState,
    /// `Label names barley malt extract`.
    pub words: String,
    /// The line below it: `The rule doesn’t allow it, whatever the test found.`
    pub why: String,
}

/// The ink of a label's block: its frame is double, so that it is taken for no result of a test.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum LabelState {
    /// Heavy: an ingredient is against the rule.
    Against,
    /// Dashes: something is open, or nobody has read it.
    Open,
    /// Thin: it was read, and nothing was found.
    Clear,
}

/// A line of what happened on which day.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct StoryLine {
    /// `Bought`, `Sent to the lab`.
    pub what: String,
    /// The day, or that none is on record, and what belongs to it.
    pub when: String,
}

/// A hundred packages for each of several numbers that might be tested.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct SharesPicture {
    /// Those that were tested come first, larger than the others.
    pub strips: Vec<Strip>,
    /// What the marks mean.
    pub key: String,
    /// The picture in words.
    pub alt: String,
}

/// A hundred packages.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Strip {
    /// How many were tested, and what that leaves open.
    pub said: String,
    /// Of the hundred, so many at least are over the limit.
    pub at_least: u64,
    /// Of the hundred, so many at most can be.
    pub at_most: u64,
}

/// Gluten in a portion as equal squares, beside the same portion of a food at the limit.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct PortionPicture {
    /// What it comes to, in words.
    pub said: String,
    /// Squares of this food; the last may be a part of one.
    pub squares: f64,
    /// Whether that is only an upper end: then they are drawn open.
    pub at_most: bool,
    /// Squares of the same portion at the limit.
    pub at_limit: f64,
    /// What stands beside the squares of the food.
    pub own: String,
    /// What stands beside those at the limit.
    pub limit: String,
    /// The picture in words.
    pub alt: String,
}

/// The label.
#[derive(Clone, Debug, Serialize)]
pub struct LabelFacts {
    /// What it comes to, beside the verdict.
    pub judged: LabelJudged,
    /// The ingredient statement as printed, with the terms marked; empty where there is none.
    pub statement: Vec<Piece>,
    /// Its length, which decides how densely the page is set.
    pub length: usize,
    /// "May contain" and the like, quoted.
    pub precautionary: Vec<String>,
    /// What it comes to.
    pub sentences: Vec<String>,
}

/// A piece of the statement.
#[derive(Clone, Debug, Serialize)]
pub struct Piece {
    /// As printed.
    pub text: String,
    /// Whether it is one of the terms.
    pub marked: bool,
}

/// A table of packages.
#[derive(Clone, Debug, Serialize)]
pub struct PackageTable {
    /// `ppm` or `mg/kg`.
    pub unit: &'static str,
    /// Columns of extractions; further ones stand in rows below.
    pub columns: usize,
    /// Width of the column of codes, in points.
    pub code_width: f64,
    /// Whether any figure stands in parentheses, because it is not used.
    pub has_unused: bool,
    /// The heads of the columns that name the unit.
    pub heads: Heads,
    /// The packages, by code.
    pub packages: Vec<PackageRow>,
}

/// Heads of columns, with the unit.
#[derive(Clone, Debug, Serialize)]
pub struct Heads {
    /// `Extractions, ppm`.
    pub extractions: String,
    /// `Difference, ppm`.
    pub difference: String,
    /// `Package result, ppm`.
    pub result: String,
}

/// One package.
#[derive(Clone, Debug, Serialize)]
pub struct PackageRow {
    /// What the lab was given.
    pub code: String,
    /// The maker's lot.
    pub lot: Option<String>,
    /// As printed.
    pub best_by: Option<String>,
    /// Day of purchase, `2031-03-04`.
    pub bought_on: Option<String>,
    /// `2031-03-04, Market Hall`.
    pub bought: Option<String>,
    /// What happened to its extractions, in the order of time; the first is never a sentence.
    pub rows: Vec<ExtractionRow>,
    /// What they give together.
    pub result: String,
    /// `over`, `within` or `none`: the ink of the result's block.
    pub state: BlockState,
}

/// Extractions side by side, or a sentence about those above or below it.
#[derive(Clone, Debug, Default, Serialize)]
pub struct ExtractionRow {
    /// Why, who and when: then it is all that the row has.
    pub told: Option<String>,
    /// In the rows after the first: `JF-787, repeat: extractions 3, 4`.
    pub label: Option<String>,
    /// The figures; none where there is no such extraction.
    pub cells: Vec<Option<ExtractionCell>>,
    /// How far they are apart; none where that is not the question, or fewer than two are usable.
    pub found: Option<String>,
    /// Whether that is a figure; else it says that all are beyond what the assay measures.
    pub found_is_figure: bool,
    /// How far they may be.
    pub allowed: Option<String>,
    /// Whether the extractions are compared in this row.
    pub compared: bool,
}

/// One extraction.
#[derive(Clone, Debug, Serialize)]
pub struct ExtractionCell {
    /// `12.4`, `<5`, `none`.
    pub figure: String,
    /// Whether there is a reading; else the figure is a word.
    pub is_reading: bool,
    /// Whether it counts.
    pub used: bool,
}

/// The ink of a block.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum BlockState {
    /// Solid: over the limit.
    Over,
    /// Outline: within it.
    Within,
    /// Dashes: undecided.
    None,
}
