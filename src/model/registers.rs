//! What people keep by hand: products, packages, corrections, correspondence, and what has been issued.

use crate::model::label::TermRow;
use crate::model::place::Place;
use crate::model::ppm::Ppm;
use chrono::NaiveDate;
use std::collections::BTreeMap;

/// All registers, as read and checked.
#[derive(Clone, Debug, Default)]
pub struct Registers {
    /// By `product_id`.
    pub products: BTreeMap<String, Product>,
    /// In the order of `package_code`.
    pub packages: Vec<Package>,
    /// In the order of the register.
    pub corrections: Vec<Correction>,
    /// In the order of the register.
    pub followups: Vec<Followup>,
    /// In the order of the register, oldest first.
    pub issued: Vec<IssuedRevision>,
    /// The programme's own rows for the table of label terms, in the order of the register.
    pub terms: Vec<TermRow>,
    /// What people add to what the lab's files say of themselves, in the order of the register.
    pub reports: Vec<ReportRow>,
    /// Packages of known content that go to the lab among the others, in the order of the register. Private.
    pub blinds: Vec<BlindPackage>,
    /// What the registers leave open, so that nothing is decided or published on a guess.
    pub doubts: Vec<Doubt>,
    /// Whether the register of packages has a `sent_on` column: without one, every package counts.
    pub knows_sent_on: bool,
}

/// What the programme bought packages of: one claim, one recipe, one maker.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Product {
    /// The programme's own name for it, also in file names.
    pub product_id: String,
    /// As on the front of the package.
    pub name: String,
    /// As on the front of the package.
    pub brand: Option<String>,
    /// Who answers for it.
    pub maker: Option<String>,
    /// Where a notice goes.
    pub maker_email: Option<String>,
    /// The maker's postal address, lines as written.
    pub maker_address: Option<String>,
    /// Food group in the programme's words.
    pub category: Option<String>,
    /// The words on the package: "gluten-free".
    pub claim: String,
    /// Who certifies the claim, where the package names one.
    pub certifier: Option<String>,
    /// The ingredient statement as printed.
    pub ingredients: Option<String>,
    /// What is known of its oats.
    pub oats: Oats,
    /// Whether gluten proteins may be in pieces.
    pub processing: Processing,
    /// The food as a lab needs to know it: "chocolate", "oat flakes".
    pub matrix: Option<String>,
    /// As printed, spaces included.
    pub barcode: Option<String>,
    /// As printed: "450 g".
    pub net_content: Option<String>,
    /// A portion as the package gives it, in grams.
    pub serving_g: Option<f64>,
    /// Where the register says so.
    pub place: Place,
}

/// What is known of a product's oats.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Oats {
    /// It has none, or the register does not say.
    #[default]
    None,
    /// Oats of which nothing is known.
    Unverified,
    /// Grown, harvested and milled apart from other grain.
    PurityProtocol,
    /// Covered by the product's certifier.
    Certified,
}

impl Oats {
    /// Every state with its word in the register.
    pub const ALL: &'static [(Oats, &'static str)] = &[
        (Oats::None, "none"),
        (Oats::Unverified, "unverified"),
        (Oats::PurityProtocol, "purity-protocol"),
        (Oats::Certified, "certified"),
    ];
}

/// Whether a food's proteins may have been cut into pieces that a sandwich assay cannot see.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Processing {
    /// Neither.
    #[default]
    None,
    /// The register has a word that is none of these: nothing below the limit can be decided.
    Unknown,
    /// Beer, sourdough, soy sauce, miso, vinegar.
    Fermented,
    /// Syrups, malt extract, hydrolysed proteins.
    Hydrolysed,
}

impl Processing {
    /// Whether the food is fermented or hydrolysed, so that its gluten may be in pieces.
    pub fn may_be_in_pieces(self) -> bool {
        matches!(self, Processing::Fermented | Processing::Hydrolysed)
    }

    /// Every state with its word in the register.
    pub const ALL: &'static [(Processing, &'static str)] = &[
        (Processing::None, "none"),
        (Processing::Fermented, "fermented"),
        (Processing::Hydrolysed, "hydrolysed"),
    ];
}

/// One retail unit, bought off the shelf and sent to the lab unopened.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Package {
    /// What the lab is given and reports back.
    pub package_code: String,
    /// Which product it is of.
    pub product_id: String,
    /// Which round of testing it belongs to.
    pub round: String,
    /// The maker's lot, as printed.
    pub lot: Option<String>,
    /// As printed, since makers write it in many ways.
    pub best_by: Option<String>,
    /// Day of purchase.
    pub bought_on: Option<NaiveDate>,
    /// Where it was bought.
    pub shop: Option<String>,
    /// As on the receipt.
    pub price: Option<String>,
    /// Who had it, from when, under which seal, as written. Private.
    pub custody: Option<String>,
    /// Its photographs, in the order of their paths. Private.
    pub photographs: Vec<Photograph>,
    /// Day on which it went to the lab.
    pub sent_on: Option<NaiveDate>,
    /// Something stands in `sent_on` that reads as no day: the package counts as sent.
    pub sent_on_unreadable: bool,
    /// Where the register says so.
    pub place: Place,
}

/// A photograph of a package, by its path and content.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Photograph {
    /// Path below the programme folder, with `/`.
    pub path: String,
    /// SHA-256 of the bytes, lower-case hexadecimal.
    pub sha256: String,
}

/// A package of known content that goes to the lab under a code like the others: a row of the key.
#[derive(Clone, Debug, PartialEq)]
pub struct BlindPackage {
    /// What the lab is given and reports back.
    pub package_code: String,
    /// What is known of it.
    pub content: BlindContent,
    /// The food that it looks like.
    pub food: Option<String>,
    /// Which round it goes along with.
    pub round: Option<String>,
    /// Where the key says so.
    pub place: Place,
}

/// What is known of a package of known content.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum BlindContent {
    /// It holds no gluten.
    NoGluten,
    /// Gluten was added to it: so much, where the key says.
    Added(Option<Ppm>),
}

/// A person's decision about readings, with its reason.
#[derive(Clone, Debug, PartialEq)]
pub struct Correction {
    /// Path of the lab file below the programme folder (`inbox/…`).
    pub file: String,
    /// The package it is about.
    pub package_code: String,
    /// Which extraction; none means all of that file's.
    pub extraction: Option<u32>,
    /// What to do with the readings.
    pub action: CorrectionAction,
    /// Why.
    pub reason: String,
    /// Who decided.
    pub by: String,
    /// When.
    pub on: NaiveDate,
    /// Where the register says so.
    pub place: Place,
    /// The columns of the file, the package and the extraction, from 1.
    pub columns: [Option<u32>; 3],
}

/// What a correction does.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CorrectionAction {
    /// The readings are set aside; they stay in the record.
    Exclude,
    /// The readings are further extractions, numbered on from those already there.
    Repeat,
}

/// Something that passed between the programme and a maker.
#[derive(Clone, Debug, PartialEq)]
pub struct Followup {
    /// Which product it is about.
    pub product_id: String,
    /// Which round; none means any.
    pub round: Option<String>,
    /// Day on which it happened.
    pub on: NaiveDate,
    /// What happened.
    pub kind: FollowupKind,
    /// By when an answer is asked for.
    pub due_on: Option<NaiveDate>,
    /// What may be printed: with a reply the maker's own words, quoted; else the programme's, not quoted.
    pub statement: Option<String>,
    /// Private: in no document, no data file and no public part of an archive.
    pub note: Option<String>,
    /// Where the register says so.
    pub place: Place,
}

/// What passed between the programme and a maker.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FollowupKind {
    /// The programme wrote.
    NoticeSent,
    /// The maker answered.
    Reply,
    /// The maker did something: withdrew a lot, changed the recipe.
    Action,
    /// Nothing further is expected.
    Closed,
}

impl FollowupKind {
    /// Every kind with its word in the register.
    pub const ALL: &'static [(FollowupKind, &'static str)] = &[
        (FollowupKind::NoticeSent, "notice-sent"),
        (FollowupKind::Reply, "reply"),
        (FollowupKind::Action, "action"),
        (FollowupKind::Closed, "closed"),
    ];
}

/// One published revision of a results sheet.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct IssuedRevision {
    /// `short_name-product_id-round`.
    pub sheet_number: String,
    /// Which product.
    pub product_id: String,
    /// Which round.
    pub round: String,
    /// From 1.
    pub revision: u32,
    /// Day of issue.
    pub issued_on: NaiveDate,
    /// SHA-256 of the sheet's content (not of the PDF), lower-case hexadecimal.
    pub content_sha256: String,
    /// Why it was issued; needed from revision 2 on.
    pub reason: Option<String>,
    /// What it says that the revision before did not: each figure's old and new value, in words.
    pub changed: Option<String>,
    /// The verdict's word; none in a register of an earlier version.
    pub verdict: Option<String>,
    /// The label finding's word; none in a register of an earlier version.
    pub label: Option<String>,
    /// What it did not wait for, in words, where it was issued before its time.
    pub early: Option<String>,
}

/// What a lab's report says and its file does not: one row of the register of reports.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct ReportRow {
    /// Path of a lab file below the programme folder (`inbox/…`), or a glob on it.
    pub file: String,
    /// The lab's report number.
    pub report: Option<String>,
    /// Day on which the lab issued its report.
    pub issued_on: Option<NaiveDate>,
    /// Day on which the lab received the packages.
    pub received_on: Option<NaiveDate>,
    /// In what condition they came, in the lab's words.
    pub condition: Option<String>,
    /// First day of the tests.
    pub tested_from: Option<NaiveDate>,
    /// Last day of the tests.
    pub tested_to: Option<NaiveDate>,
    /// Lowest quantity reported as a number.
    pub lloq: Option<Ppm>,
    /// Lowest quantity that the assay detects.
    pub lod: Option<Ppm>,
    /// The measurement uncertainty as the lab words it.
    pub uncertainty: Option<String>,
    /// Whether the lab is accredited for this test.
    pub accredited: Option<bool>,
    /// A lab file that this one replaces, as written: none of its readings is used, and nothing is said of it any more.
    pub supersedes: Option<String>,
    /// Path of the lab's certificate below the programme folder (`inbox/…`).
    pub certificate: Option<String>,
    /// Where the register says so.
    pub place: Place,
}

/// Something that a register leaves open about a product.
#[derive(Clone, Debug, PartialEq)]
pub struct Doubt {
    /// The product that it bears on; none means every product of the programme.
    pub product_id: Option<String>,
    /// The round that it bears on; none means every round of the product.
    pub round: Option<String>,
    /// How far it reaches.
    pub bars: Bars,
    /// What it is.
    pub what: DoubtKind,
    /// Where it stands.
    pub place: Place,
}

/// What a doubt keeps from being done.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Bars {
    /// The verdict stands; nothing is published on it until the register is mended.
    Issue,
    /// There is no verdict, and so nothing to publish.
    Verdict,
}

/// What a register leaves open.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum DoubtKind {
    /// A heading that is nearly the name of a column, which is missing.
    Heading {
        /// As written.
        found: String,
        /// The column that is missing.
        meant: String,
    },
    /// A column that is there twice.
    HeadingTwice {
        /// Its heading.
        heading: String,
    },
    /// A field that cannot be read.
    Field {
        /// Its column.
        column: String,
        /// As written.
        written: String,
    },
    /// A row that cannot be used.
    Row,
    /// A row about a lab's report with something in it that cannot be read: it bears on every product with a reading of
    /// that file, which the register alone cannot tell.
    Report {
        /// Path of the lab file below the programme folder (`inbox/…`), or a glob on it.
        file: String,
    },
    /// A file whose name is nearly that of the workbook of registers: it could hold any of them.
    MisnamedWorkbook,
    /// A file whose name is nearly a register's.
    Misnamed {
        /// The register that it seems to be.
        meant: String,
    },
}
