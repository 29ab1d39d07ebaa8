//! What a column of a table can be: the one list of it, from which headings, layouts and explanations are read.

use crate::config::LayoutColumn;
use crate::gather::tables::vocabulary::{self, Meaning};
use std::sync::LazyLock;

/// What a column holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Role {
    /// The package code.
    Sample,
    /// A number that the lab gave itself.
    LabSample,
    /// The number of the extraction.
    Extraction,
    /// A number that may count extractions or wells.
    Replicate,
    /// A well of the plate.
    Well,
    /// A result, or one of several side by side.
    Result(Part),
    /// A final result: a mean beside others, a reading where it stands alone.
    Final,
    /// A mean.
    Mean,
    /// The unit.
    Unit,
    /// The lowest quantity reported as a number.
    Lloq,
    /// The highest quantity reported as a number.
    Uloq,
    /// The lowest quantity that the assay detects.
    Lod,
    /// The uncertainty of a result.
    Uncertainty,
    /// Day on which the report was issued: no day of the test.
    IssuedOn,
    /// Day on which the lab received the packages.
    ReceivedOn,
    /// Day of the test.
    TestedOn,
    /// The lab's report number.
    Report,
    /// The assay.
    Assay,
    /// The dilution.
    Dilution,
    /// A remark.
    Remark,
    /// The lab's name.
    Lab,
    /// What was measured.
    Analyte,
    /// What was put into the sample before the test.
    Added,
    /// Known, and not used.
    Ignored,
}

impl Role {
    /// Whether it can name the package.
    pub fn names_sample(self) -> bool {
        matches!(self, Role::Sample | Role::LabSample)
    }

    /// Whether it holds what was found, or what limits it: figures with a unit.
    pub fn is_a_figure(self) -> bool {
        self.is_reported() || matches!(self, Role::Lloq | Role::Uloq | Role::Lod)
    }

    /// Whether it holds what was found: results, or their means.
    pub fn is_reported(self) -> bool {
        matches!(self, Role::Result(_) | Role::Final | Role::Mean)
    }
}

/// Which result of a row a column holds, where there are several.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub struct Part {
    /// Extraction n.
    pub extraction: Option<u32>,
    /// Replicate n, which may be an extraction or a well.
    pub replicate: Option<u32>,
    /// Well n.
    pub well: Option<u32>,
    /// Result n, where no word says of what.
    pub number: Option<u32>,
}

impl Part {
    /// Whether the heading numbers it at all.
    pub fn is_numbered(&self) -> bool {
        *self != Part::default()
    }
}

/// A kind of column.
#[derive(Clone, Copy, Debug)]
pub struct ColumnKind {
    /// What it holds.
    pub role: Role,
    /// The wordings of its headings in `vocabulary.txt`; none where a heading is made of several ("Extraction 2, mg/kg").
    pub wordings: Option<Meaning>,
    /// How a `[[layout]]` names it.
    pub layout: Option<LayoutColumn>,
    /// Whether our own reading adds it beside the columns that a layout names: never another sample, result or number.
    pub joins_layout: bool,
    /// What an explanation calls it.
    pub called: &'static str,
}

/// Every kind of column but the results themselves, whose headings are made of several words. Where a wording has two
/// meanings, the earlier row counts.
#[rustfmt::skip]
pub const COLUMN_KINDS: &[ColumnKind] = &[
    ColumnKind { role: Role::Sample, wordings: Some(Meaning::Sample), layout: Some(LayoutColumn::Sample), joins_layout: false, called: "package code" },
    ColumnKind { role: Role::Unit, wordings: Some(Meaning::Unit), layout: Some(LayoutColumn::Unit), joins_layout: true, called: "unit" },
    ColumnKind { role: Role::Lloq, wordings: Some(Meaning::Lloq), layout: Some(LayoutColumn::Lloq), joins_layout: true, called: "lowest quantity reported as a number" },
    ColumnKind { role: Role::Uloq, wordings: Some(Meaning::Uloq), layout: None, joins_layout: true, called: "highest quantity reported as a number" },
    ColumnKind { role: Role::Lod, wordings: Some(Meaning::Lod), layout: Some(LayoutColumn::Lod), joins_layout: true, called: "lowest quantity that the assay detects" },
    ColumnKind { role: Role::Uncertainty, wordings: Some(Meaning::Uncertainty), layout: Some(LayoutColumn::Uncertainty), joins_layout: true, called: "uncertainty: printed, no part of a decision" },
    ColumnKind { role: Role::IssuedOn, wordings: Some(Meaning::IssuedOn), layout: None, joins_layout: false, called: "day on which the report was issued: no day of the test" },
    ColumnKind { role: Role::ReceivedOn, wordings: Some(Meaning::ReceivedOn), layout: None, joins_layout: false, called: "day on which the packages were received: no day of the test" },
    ColumnKind { role: Role::TestedOn, wordings: Some(Meaning::TestedOn), layout: Some(LayoutColumn::TestedOn), joins_layout: true, called: "day of the test" },
    ColumnKind { role: Role::Report, wordings: Some(Meaning::Report), layout: Some(LayoutColumn::Report), joins_layout: true, called: "report number" },
    ColumnKind { role: Role::Assay, wordings: Some(Meaning::Assay), layout: Some(LayoutColumn::Assay), joins_layout: true, called: "assay" },
    ColumnKind { role: Role::Dilution, wordings: Some(Meaning::Dilution), layout: Some(LayoutColumn::Dilution), joins_layout: true, called: "dilution" },
    ColumnKind { role: Role::Analyte, wordings: Some(Meaning::Analyte), layout: None, joins_layout: false, called: "what was measured" },
    ColumnKind { role: Role::LabSample, wordings: Some(Meaning::LabSample), layout: None, joins_layout: false, called: "the lab's own number, which is not used" },
    ColumnKind { role: Role::Lab, wordings: Some(Meaning::Lab), layout: None, joins_layout: true, called: "laboratory" },
    ColumnKind { role: Role::Remark, wordings: Some(Meaning::Remark), layout: Some(LayoutColumn::Remark), joins_layout: true, called: "remark" },
    ColumnKind { role: Role::Added, wordings: Some(Meaning::Added), layout: None, joins_layout: false, called: "what was added before the test: no result" },
    ColumnKind { role: Role::Ignored, wordings: Some(Meaning::Ignored), layout: None, joins_layout: false, called: "nothing, since it is no part of a result" },
    ColumnKind { role: Role::Extraction, wordings: None, layout: Some(LayoutColumn::Extraction), joins_layout: false, called: "number of the extraction" },
    ColumnKind { role: Role::Replicate, wordings: None, layout: None, joins_layout: false, called: "well" },
    ColumnKind { role: Role::Well, wordings: None, layout: None, joins_layout: false, called: "well" },
    ColumnKind { role: Role::Final, wordings: None, layout: None, joins_layout: false, called: "final result" },
    ColumnKind { role: Role::Mean, wordings: None, layout: None, joins_layout: false, called: "mean: checked, not a reading" },
];

/// The kind of column that has this role; none for results.
pub fn kind(role: Role) -> Option<&'static ColumnKind> {
    COLUMN_KINDS.iter().find(|kind| kind.role == role)
}

/// What a heading names that is one of the known wordings as a whole.
pub fn named(words: &str) -> Option<Role> {
    static MEANINGS: LazyLock<Vec<Meaning>> = LazyLock::new(|| {
        COLUMN_KINDS
            .iter()
            .filter_map(|kind| kind.wordings)
            .collect()
    });
    let found = vocabulary::first(words, &MEANINGS)?;
    COLUMN_KINDS
        .iter()
        .find(|kind| kind.wordings == Some(found))
        .map(|kind| kind.role)
}

/// What a column holds that a `[[layout]]` names.
pub fn of_layout(column: LayoutColumn) -> Role {
    if let LayoutColumn::ResultOf(number) = column {
        return Role::Result(Part {
            extraction: Some(number),
            ..Part::default()
        });
    }
    COLUMN_KINDS
        .iter()
        .find(|kind| kind.layout == Some(column))
        .map_or(Role::Result(Part::default()), |kind| kind.role)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::config::LAYOUT_COLUMNS;

    #[test]
    fn every_column_that_a_layout_may_name_has_its_kind() {
        for (column, name) in LAYOUT_COLUMNS {
            let is_result = column == LayoutColumn::Result;
            let role = of_layout(column);
            assert_eq!(matches!(role, Role::Result(_)), is_result, "{name}");
        }
    }
}
