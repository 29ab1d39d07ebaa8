//! One extraction's reading: an interval, the text that reported it, and its cell.

use crate::model::place::Source;
use crate::model::ppm::Ppm;
use chrono::NaiveDate;
use std::sync::Arc;

/// The values that a report leaves possible. A number is `[v, v]`; "below n" is `[0, n)`; "above n" is `(n, infinity)`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Interval {
    /// The lowest value that the report allows.
    pub lower: Ppm,
    /// Whether the lowest value itself is left out.
    pub lower_open: bool,
    /// The highest value that the report allows; none where it knows no end.
    pub upper: Option<Ppm>,
    /// Whether the highest value itself is left out.
    pub upper_open: bool,
}

impl Interval {
    /// A measured number.
    pub fn number(v: Ppm) -> Interval {
        Interval {
            lower: v,
            lower_open: false,
            upper: Some(v),
            upper_open: false,
        }
    }

    /// Below `n`: too little to put a number on.
    pub fn below(n: Ppm) -> Interval {
        Interval {
            lower: Ppm::ZERO,
            lower_open: false,
            upper: Some(n),
            upper_open: true,
        }
    }

    /// Above `n`: more than the assay could put a number on.
    pub fn above(n: Ppm) -> Interval {
        Interval {
            lower: n,
            lower_open: true,
            upper: None,
            upper_open: true,
        }
    }

    /// The number, where it is one.
    pub fn as_number(&self) -> Option<Ppm> {
        (self.upper == Some(self.lower) && !self.upper_open && !self.lower_open)
            .then_some(self.lower)
    }

    /// The `n` of "below n", where it is that.
    pub fn as_below(&self) -> Option<Ppm> {
        if self.lower == Ppm::ZERO && self.upper_open {
            self.upper
        } else {
            None
        }
    }

    /// The `n` of "above n", where it is that.
    pub fn as_above(&self) -> Option<Ppm> {
        self.upper.is_none().then_some(self.lower)
    }
}

/// What the lab said of an extraction.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Outcome {
    /// A result.
    Reading(Interval),
    /// The lab gave a row and says that there is no result.
    NotReported,
    /// Something stands there that reads as no result; a problem names it.
    Unreadable,
}

impl Outcome {
    /// The reading, where there is one.
    pub fn reading(&self) -> Option<Interval> {
        match self {
            Outcome::Reading(interval) => Some(*interval),
            Outcome::NotReported | Outcome::Unreadable => None,
        }
    }
}

/// How the assay works, which decides what it can see.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum AssayKind {
    /// Two antibodies on one molecule: needs proteins that are largely whole.
    Sandwich,
    /// The sample competes for one antibody: sees fragments too.
    Competitive,
}

/// What a lab's report says of itself, beside its results; what is not known is none.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct LabRecord {
    /// The lab's postal address, lines as written.
    pub lab_address: Option<String>,
    /// Day on which the report was issued.
    pub issued_on: Option<NaiveDate>,
    /// Day on which the lab received the packages.
    pub received_on: Option<NaiveDate>,
    /// In what condition they came, in the lab's words.
    pub condition: Option<String>,
    /// The measurement uncertainty of all results as the lab words it.
    pub uncertainty: Option<String>,
    /// Whether the lab says that it is accredited for this test.
    pub accredited: Option<bool>,
    /// Remarks on the report as a whole, in order; deviations from the method among them.
    pub remarks: Vec<String>,
    /// Path of the lab's certificate below the programme folder (`inbox/…`).
    pub certificate: Option<String>,
    /// Whether this report replaces another one, of which nothing is used.
    pub replaces: bool,
}

impl AssayKind {
    /// Every kind with its word in the settings and the data.
    pub const ALL: &'static [(AssayKind, &'static str)] = &[
        (AssayKind::Sandwich, "sandwich"),
        (AssayKind::Competitive, "competitive"),
    ];

    /// The word in the settings and the data.
    pub fn word(self) -> &'static str {
        match self {
            AssayKind::Sandwich => "sandwich",
            AssayKind::Competitive => "competitive",
        }
    }

    /// The other kind.
    pub fn other(self) -> AssayKind {
        match self {
            AssayKind::Sandwich => AssayKind::Competitive,
            AssayKind::Competitive => AssayKind::Sandwich,
        }
    }
}

/// One extraction of one package, as one row (or cell) of a lab file reports it.
#[derive(Clone, Debug, PartialEq)]
pub struct Extraction {
    /// The package's code as the register spells it, or as the lab does where the register has none.
    pub package_code: String,
    /// 1, 2, …: as the lab numbers it, else in the order of its rows.
    pub number: u32,
    /// Whether the lab gave the number itself.
    pub numbered_by_lab: bool,
    /// What the lab said, in ppm gluten.
    pub outcome: Outcome,
    /// The text of the cell, as it stands there; wells are joined with " | ".
    pub reported: String,
    /// Whether the lab reported gliadin, so that the figure here is twice the reported one.
    pub from_gliadin: bool,
    /// The lowest quantity that this result could have been reported as a number.
    pub lloq: Ppm,
    /// The lowest quantity that the assay detects.
    pub lod: Ppm,
    /// How the assay works.
    pub assay_kind: AssayKind,
    /// The assay in the lab's words, else the programme's.
    pub assay: Arc<str>,
    /// The lab's name, as the file says, else the programme's.
    pub lab: Arc<str>,
    /// The lab's report number.
    pub report: Option<Arc<str>>,
    /// What the lab's report says of itself.
    pub record: Arc<LabRecord>,
    /// Day of the test; the last one of a span.
    pub tested_on: Option<NaiveDate>,
    /// First day of the test, where it took a span of days.
    pub tested_from: Option<NaiveDate>,
    /// The measurement uncertainty of this result as the lab words it ("± 3.7"): kept and printed, no part of a decision.
    pub uncertainty: Option<Arc<str>>,
    /// As the lab wrote it.
    pub dilution: Option<Arc<str>>,
    /// What the lab remarked: in a column, or in a footnote to this row.
    pub remark: Option<Arc<str>>,
    /// The cell of the result (the first well's, where wells were averaged).
    pub source: Source,
}

impl Extraction {
    /// Whether its reading is a figure: no bound, and there is one.
    pub fn is_figure(&self) -> bool {
        let reading = self.outcome.reading();
        reading.is_some_and(|reading| reading.as_number().is_some())
    }
}
