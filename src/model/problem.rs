//! What is wrong with the data: named, placed, and with what to do about it.

use crate::model::place::Place;
use crate::model::said::Said;
use std::collections::BTreeMap;

/// How much a problem matters.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Severity {
    /// A person must look: something was left out.
    Error,
    /// Used, but doubtful.
    Warning,
    /// Good to know.
    Note,
}

impl Severity {
    /// The word in the data files and on the screen.
    pub fn word(self) -> &'static str {
        match self {
            Severity::Error => "error",
            Severity::Warning => "warning",
            Severity::Note => "note",
        }
    }
}

/// Declares the codes once: name, word in the data files, severity.
macro_rules! codes {
    ($($(#[$doc:meta])* $name:ident, $word:literal, $severity:ident;)*) => {
        /// The kind of problem. A code never changes its word: people filter on it.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum Code { $($(#[$doc])* $name,)* }

        impl Code {
            /// Every code, in the order of this file.
            pub const ALL: &'static [Code] = &[$(Code::$name,)*];

            /// The word in the data files.
            pub fn word(self) -> &'static str {
                match self { $(Code::$name => $word,)* }
            }

            /// How much a problem of this kind matters.
            pub fn severity(self) -> Severity {
                match self { $(Code::$name => Severity::$severity,)* }
            }
        }
    };
}

codes! {
    /// The file cannot be opened or is not what its name says.
    UnreadableFile, "unreadable_file", Error;
    /// No table of results was recognised in the file.
    NoTable, "no_table", Error;
    /// A table was recognised, but none of its columns holds results.
    NoResultColumn, "no_result_column", Error;
    /// A table that can be understood in two ways: none of its rows is used.
    AmbiguousTable, "ambiguous_table", Error;
    /// A result that reads as no result.
    BadValue, "bad_value", Error;
    /// A unit that is none of the known ones.
    BadUnit, "bad_unit", Error;
    /// A package code that a spreadsheet has mangled, or none at all.
    BadCode, "bad_code", Error;
    /// A code that is not in the register of packages.
    UnknownPackage, "unknown_package", Error;
    /// Two reports of one extraction differ.
    Conflict, "conflict", Error;
    /// Something in a register cannot be used.
    RegisterError, "register_error", Error;
    /// The lab's mean is not the mean of its extractions.
    MeanDiffers, "mean_differs", Warning;
    /// Used, but it looks wrong.
    Suspicious, "suspicious", Warning;
    /// What the absorbances of a plate come to is not what was reported.
    PlateDiffers, "plate_differs", Warning;
    /// A check of a plate failed.
    PlateQuality, "plate_quality", Warning;
    /// A plate, or something on it, cannot be understood, or no curve can be fitted.
    PlateUnreadable, "plate_unreadable", Warning;
    /// What a lab reports of a package of known content is not what was expected.
    BlindDiffers, "blind_differs", Warning;
    /// What a lab reports of a package of known content.
    BlindResult, "blind_result", Note;
    /// The same bytes under two names.
    SameFile, "same_file", Note;
    /// A hidden row or sheet was read.
    Hidden, "hidden", Note;
    /// A column that may hold wells or extractions.
    AmbiguousReplicate, "ambiguous_replicate", Note;
    /// A package was sent and the lab has reported nothing.
    MissingPackage, "missing_package", Note;
    /// No unit is stated anywhere: read as ppm.
    AssumedUnit, "assumed_unit", Note;
    /// A figure a little below zero.
    BelowZero, "below_zero", Note;
    /// A footnote mark stands after a number.
    FootnoteMark, "footnote_mark", Note;
    /// Text that is not in UTF-8 was read in another encoding.
    Encoding, "encoding", Note;
    /// A file of a kind that holds no table was passed over.
    PassedOver, "passed_over", Note;
    /// Characters that steer a device were left out of a text.
    ControlCharacter, "control_character", Note;
    /// A column of a register that nothing is read from.
    UnknownColumn, "unknown_column", Note;
    /// The rows of a package on a further sheet are counted on from those before.
    CountedOn, "counted_on", Note;
    /// Two files agree about an extraction: it counts once.
    CountedOnce, "counted_once", Note;
}

/// One problem.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Problem {
    /// Where it stands; the file may be a register or `programme.toml`.
    pub place: Place,
    /// What kind it is.
    pub code: Code,
    /// What was found.
    pub message: Said,
    /// What to do, where there is anything to do.
    pub hint: Option<Said>,
}

impl Problem {
    /// How much it matters.
    pub fn severity(&self) -> Severity {
        self.code.severity()
    }
}

/// The list that every stage may add to.
#[derive(Clone, Debug, Default)]
pub struct Problems(Vec<Problem>);

impl Problems {
    /// Adds one.
    pub fn add(&mut self, code: Code, place: Place, message: Said, hint: impl Into<Option<Said>>) {
        self.0.push(Problem {
            place,
            code,
            message,
            hint: hint.into(),
        });
    }

    /// Each as it was added.
    pub fn each(self) -> impl Iterator<Item = Problem> {
        self.0.into_iter()
    }

    /// Adds another list.
    pub fn append(&mut self, other: Problems) {
        self.0.extend(other.0);
    }

    /// All of them, each once: the errors of registers first, since others follow from them; then by file, row, column and
    /// code.
    pub fn sorted(&self) -> Vec<&Problem> {
        let mut all: Vec<&Problem> = self.0.iter().collect();
        all.sort_by(|a, b| {
            let is_later = |problem: &Problem| problem.code != Code::RegisterError;
            (is_later(a), a).cmp(&(is_later(b), b))
        });
        all.dedup();
        all
    }

    /// Leaves the first of each kind, so many, and says of how many others were left out, by kind.
    pub fn keep_first(&mut self, most: usize) -> Vec<(Code, usize)> {
        let mut counts: BTreeMap<Code, usize> = BTreeMap::new();
        self.0.retain(|problem| {
            let count = counts.entry(problem.code).or_default();
            *count += 1;
            *count <= most
        });
        self.0.shrink_to_fit();
        let more = counts.into_iter().filter(|(_, count)| *count > most);
        more.map(|(code, count)| (code, count - most)).collect()
    }

    /// Takes out those that `is_wanted` picks.
    pub fn take(&mut self, is_wanted: impl Fn(&Problem) -> bool) -> Vec<Problem> {
        self.0
            .extract_if(.., |problem| is_wanted(problem))
            .collect()
    }

    /// How many are of this severity.
    pub fn count(&self, severity: Severity) -> usize {
        self.sorted()
            .into_iter()
            .filter(|problem| problem.severity() == severity)
            .count()
    }
}
