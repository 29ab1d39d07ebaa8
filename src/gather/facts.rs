//! What stands outside the tables and is true of all of them: lab, report, date, assay, LLOQ, unit.

use crate::gather::books::{Content, Row};
use crate::gather::dates;
use crate::gather::numbers::Marks;
use crate::gather::readings::subject::Named;
use crate::gather::readings::tails;
use crate::gather::readings::values::{self, Said};
use crate::gather::sentences;
use crate::gather::tables::headings::{self, Role};
use crate::gather::tables::units::{self, Quantity, Unit};
use crate::gather::text;
use chrono::NaiveDate;
use std::sync::Arc;

/// What a file or a sheet says of all its results.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Facts {
    /// The lab's name.
    pub lab: Option<Arc<str>>,
    /// The lab's report number.
    pub report: Option<Arc<str>>,
    /// First and last day of the test.
    pub tested: Option<(NaiveDate, NaiveDate)>,
    /// Day on which the report was issued.
    pub issued_on: Option<NaiveDate>,
    /// Day on which the lab received the packages.
    pub received_on: Option<NaiveDate>,
    /// The lab's postal address.
    pub address: Option<Arc<str>>,
    /// Whether the lab says that it is accredited for the test.
    pub accredited: Option<bool>,
    /// Remarks on the whole report, in order.
    pub remarks: Vec<Arc<str>>,
    /// Footnotes by their marks.
    pub footnotes: Vec<(String, Arc<str>)>,
    /// The assay.
    pub assay: Option<Arc<str>>,
    /// The lowest quantity reported as a number, with its unit where it has one.
    pub lloq: Option<(f64, Option<Unit>)>,
    /// The highest one.
    pub uloq: Option<(f64, Option<Unit>)>,
    /// The lowest quantity that the assay detects.
    pub lod: Option<(f64, Option<Unit>)>,
    /// The uncertainty of all results, as the lab words it.
    pub uncertainty: Option<Arc<str>>,
    /// The unit.
    pub unit: Option<Unit>,
    /// A unit that is stated and cannot be converted.
    pub foreign: Option<Arc<str>>,
    /// Gluten or gliadin.
    pub quantity: Option<Quantity>,
    /// Which substances are named.
    pub named: Named,
    /// The dilution.
    pub dilution: Option<Arc<str>>,
}

impl Facts {
    /// These, and the others where these say nothing.
    pub fn or(self, others: &Facts) -> Facts {
        Facts {
            lab: self.lab.or_else(|| others.lab.clone()),
            report: self.report.or_else(|| others.report.clone()),
            tested: self.tested.or(others.tested),
            issued_on: self.issued_on.or(others.issued_on),
            received_on: self.received_on.or(others.received_on),
            address: self.address.or_else(|| others.address.clone()),
            accredited: self.accredited.or(others.accredited),
            remarks: either(self.remarks, &others.remarks),
            footnotes: either(self.footnotes, &others.footnotes),
            assay: self.assay.or_else(|| others.assay.clone()),
            lloq: self.lloq.or(others.lloq),
            uloq: self.uloq.or(others.uloq),
            lod: self.lod.or(others.lod),
            uncertainty: self.uncertainty.or_else(|| others.uncertainty.clone()),
            unit: self.unit.or(others.unit.filter(|_| self.foreign.is_none())),
            foreign: match self.unit {
                Some(_) => self.foreign,
                None => self.foreign.or_else(|| others.foreign.clone()),
            },
            quantity: self.quantity.or(others.quantity),
            named: self.named.or(&others.named),
            dilution: self.dilution.or_else(|| others.dilution.clone()),
        }
    }
}

fn either<T: Clone>(ours: Vec<T>, theirs: &[T]) -> Vec<T> {
    if ours.is_empty() {
        theirs.to_vec()
    } else {
        ours
    }
}

/// Collects what rows outside of tables say.
pub fn collect<'a>(rows: impl Iterator<Item = &'a Row>, marks: Marks) -> Facts {
    /// Cells of a row that are looked at: a form has labels and values side by side, and not a hundred of them.
    const CELLS_TRIED: usize = 100;
    let mut facts = Facts::default();
    let rows: Vec<&Row> = rows.collect();
    for (at, row) in rows.iter().enumerate() {
        for (index, cell) in row.cells.iter().enumerate().take(CELLS_TRIED) {
            let Content::Text(written) = &cell.content else {
                continue;
            };
            let is_label = |content: &Content| matches!(content, Content::Text(text) if parted(text).is_some());
            // The value stands beside its label, else below it.
            let below = rows
                .get(at + 1)
                .filter(|below| below.number == row.number + 1)
                .and_then(|below| below.at(cell.column));
            let beside = row
                .cells
                .get(index + 1)
                .map(|next| &next.content)
                .filter(|content| !is_label(content))
                .or(below.filter(|content| !is_label(content)));
            take(&mut facts, written, (beside, index == 0), marks);
        }
    }
    facts
}

/// A cell "Report no.: 77", or a cell "Report no." with its value in the next one, or a sentence that names the unit.
fn take(facts: &mut Facts, written: &str, (beside, leads): (Option<&Content>, bool), marks: Marks) {
    const LONGEST: usize = 400;
    if written.len() > LONGEST {
        return;
    }
    for line in written.lines() {
        record_line(facts, line, beside);
        // "Gluten analysis" is a title, and no label of what stands below it.
        let is_title = |role: Role, inner: &str| {
            role == Role::Analyte && inner.is_empty() && units::quantity(line).is_some()
        };
        let parted = parted(line).filter(|(role, inner)| !is_title(*role, inner));
        let value = match &parted {
            Some((role, inner)) if !inner.is_empty() => Some((*role, inner.clone())),
            Some((role, _)) => {
                let value = beside.map(|content| content.shown().into_owned());
                Some((*role, value.unwrap_or_default()))
            }
            None => None,
        };
        let labelled = value.as_ref().map(|(role, value)| (*role, value.as_str()));
        facts.named.take(line, labelled, leads);
        match parted {
            Some((role, inner)) if !inner.is_empty() => {
                set(facts, role, line, &Content::Text(inner.into()), marks);
            }
            Some((role, _)) => {
                if let Some(beside) = beside {
                    set(facts, role, line, beside, marks);
                }
            }
            None => {
                sentences::unit(facts, line);
                if facts.lab.is_none() && sentences::names_a_lab(line) {
                    facts.lab = Some(text::plain(line).into());
                }
            }
        }
    }
}

/// A line as a known label and what follows it: after a colon, an equals sign, or the words of the label.
fn parted(line: &str) -> Option<(Role, String)> {
    let line = text::plain(line);
    for mark in [':', '='] {
        if let Some((label, rest)) = line.split_once(mark)
            && let Some(role) = label_role(label)
        {
            return Some((role, rest.trim().to_owned()));
        }
    }
    if let Some(role) = label_role(&line) {
        return Some((role, String::new()));
    }
    // "Report no. 77", "LOQ 5 mg/kg": the longest beginning that is a label.
    let ends: Vec<usize> = line.match_indices(' ').map(|(at, _)| at).take(6).collect();
    ends.into_iter().rev().find_map(|at| {
        let role = label_role(&line[..at])?;
        let rest = line[at..].trim();
        let figure = rest.contains(|c: char| c.is_ascii_digit());
        let fits = match role {
            Role::Report => figure && line[..at].contains(' ') && !rest.contains(' '),
            Role::Lloq | Role::Uloq | Role::Lod | Role::TestedOn => figure,
            _ => false,
        };
        fits.then(|| (role, rest.to_owned()))
    })
}

fn label_role(label: &str) -> Option<Role> {
    const LONGEST: usize = 60;
    if label.len() > LONGEST || !headings::may_be_heading(label) {
        return None;
    }
    // A day without a word for what was done on it is more likely that of the letter.
    const LETTER: [&str; 4] = ["date", "datum", "fecha", "data"];
    if LETTER.contains(&text::words(label).as_str()) {
        return None;
    }
    headings::read(label)
        .map(|heading| heading.role)
        .filter(|role| {
            matches!(
                role,
                Role::Lab
                    | Role::Report
                    | Role::TestedOn
                    | Role::IssuedOn
                    | Role::ReceivedOn
                    | Role::Remark
                    | Role::Assay
                    | Role::Lloq
                    | Role::Uloq
                    | Role::Lod
                    | Role::Uncertainty
                    | Role::Unit
                    | Role::Analyte
                    | Role::Dilution
            )
        })
}

/// The first that is said counts: what stands higher up is the report's own heading.
fn set(facts: &mut Facts, role: Role, label: &str, content: &Content, marks: Marks) {
    let shown = content.shown();
    let words =
        || Some(Arc::from(text::plain(&shown))).filter(|words: &Arc<str>| !words.is_empty());
    match role {
        Role::Lab if facts.lab.is_none() => facts.lab = words(),
        Role::Report if facts.report.is_none() => facts.report = words(),
        Role::Assay if facts.assay.is_none() => facts.assay = words(),
        Role::Dilution if facts.dilution.is_none() => facts.dilution = words(),
        Role::TestedOn if facts.tested.is_none() => facts.tested = days(content),
        Role::IssuedOn if facts.issued_on.is_none() => facts.issued_on = day(content),
        Role::ReceivedOn if facts.received_on.is_none() => facts.received_on = day(content),
        Role::Remark => facts.remarks.extend(words()),
        Role::Unit if facts.unit.is_none() => {
            facts.unit = units::read(&shown);
            if facts.unit.is_none()
                && (units::looks_like_unit(&shown) || units::part(&shown).unit.is_some())
            {
                facts.foreign = Some(text::short(&shown).into());
            }
            facts.quantity = facts.quantity.or(units::quantity(&shown));
        }
        Role::Analyte => facts.quantity = facts.quantity.or(units::quantity(&shown)),
        Role::Lloq if facts.lloq.is_none() => {
            facts.lloq = limit(units::part(label).unit, content, marks)
        }
        Role::Lod if facts.lod.is_none() => {
            facts.lod = limit(units::part(label).unit, content, marks)
        }
        Role::Uncertainty
            if facts.uncertainty.is_none() && shown.contains(|c: char| c.is_ascii_digit()) =>
        {
            facts.uncertainty = words();
        }
        Role::Uloq if facts.uloq.is_none() => {
            facts.uloq = limit(units::part(label).unit, content, marks)
        }
        _ => {}
    }
}

/// What a line says of the lab and its report, besides labels: an address, an accreditation, a footnote.
fn record_line(facts: &mut Facts, line: &str, beside: Option<&Content>) {
    let plain = text::plain(line);
    const ADDRESS: [&str; 6] = [
        "address",
        "lab address",
        "laboratory address",
        "anschrift",
        "adresse",
        "indirizzo",
    ];
    let (label, value) = plain.split_once(':').unwrap_or((&plain, ""));
    if facts.address.is_none() && ADDRESS.contains(&text::words(label).as_str()) {
        let value = match value.trim() {
            "" => beside.map(|content| content.shown().into_owned()),
            value => Some(value.to_owned()),
        };
        facts.address = value.map(|value| Arc::from(text::plain(&value)));
    }
    let words = text::words(&plain);
    let accredits = |word: &str| {
        ["accredit", "akkredit", "acredit"]
            .iter()
            .any(|stem| word.contains(stem))
    };
    if facts.accredited.is_none() && words.split(' ').any(accredits) {
        const NOT: [&str; 10] = [
            "not", "nicht", "non", "no", "outside", "without", "ohne", "hors", "fuera", "fuori",
        ];
        // "Accreditation no. 12" is a number, and no denial.
        let numbered = words.contains("accreditation no") || words.contains("certificate no");
        let denied = words
            .split(' ')
            .any(|word| NOT.contains(&word) || word == "nonaccredited");
        facts.accredited = Some(!denied || numbered);
    }
    if let Some(found) = footnote(&plain) {
        facts.footnotes.push(found);
    }
}

/// A line that starts with a footnote's mark: `* re-homogenised before the second extraction`, `a) …`, `¹ …`.
fn footnote(line: &str) -> Option<(String, Arc<str>)> {
    const SHORTEST: usize = 6;
    let mark = tails::footnote_mark_before(line)?;
    let rest = line[mark.len()..]
        .trim_start_matches([')', ']', ':', ' '])
        .trim();
    (rest.chars().count() >= SHORTEST && rest.contains(char::is_alphabetic))
        .then(|| (mark.to_owned(), Arc::from(rest)))
}

/// The first and the last day in a cell.
pub fn days(content: &Content) -> Option<(NaiveDate, NaiveDate)> {
    match content {
        Content::Text(written) => dates::span(written),
        other => day(other).map(|day| (day, day)),
    }
}

/// What a `[[layout]]` says to be in a cell.
pub fn of_cell(facts: &mut Facts, role: Role, content: &Content, marks: Marks) {
    set(facts, role, "", content, marks);
}

/// The day in a cell.
pub fn day(content: &Content) -> Option<NaiveDate> {
    match content {
        Content::Date { day, .. } => *day,
        Content::Text(written) => dates::day(written),
        _ => None,
    }
}

/// A limit of the assay, with the unit that stands with it or in its label.
pub fn limit(
    labelled: Option<Unit>,
    content: &Content,
    marks: Marks,
) -> Option<(f64, Option<Unit>)> {
    let value = values::read(content, marks).ok()?;
    let figure = match value.said {
        Said::Number(figure) => figure.value,
        Said::Below(Some(n)) | Said::Above(Some(n)) | Said::NotDetected(Some(n)) => n,
        _ => return None,
    };
    (figure > 0.0).then(|| (figure, value.unit.or(labelled)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::gather::books::csv;
    use crate::gather::tables::units::Scale;

    fn facts(text: &str) -> Facts {
        let book = csv::read(
            text.as_bytes(),
            &crate::gather::tables::headings::likeness_of,
        )
        .expect("reads");
        collect(book.sheets[0].rows.iter(), Marks::Unsettled)
    }

    #[test]
    fn title_lines_are_read() {
        let found = facts(
            "Laboratory: Harrow & Vane Analytical\nReport no.,HV-2031-7\nDate of analysis: 7 March 2031\nMethod: sandwich R5 ELISA\nLOQ: 5 mg/kg\nAll results in mg/kg\n",
        );
        assert_eq!(found.lab.as_deref(), Some("Harrow & Vane Analytical"));
        assert_eq!(found.report.as_deref(), Some("HV-2031-7"));
        assert_eq!(
            found.tested.map(|(_, to)| to),
            NaiveDate::from_ymd_opt(2031, 3, 7)
        );
        assert_eq!(found.assay.as_deref(), Some("sandwich R5 ELISA"));
        assert_eq!(found.lloq.map(|(figure, _)| figure), Some(5.0));
        assert_eq!(found.unit.map(|unit| unit.ppm), Some(Scale::One));
    }

    #[test]
    fn labels_without_a_colon() {
        assert_eq!(facts("Report no. 77-1\n").report.as_deref(), Some("77-1"));
        assert_eq!(
            facts("LOQ 5 mg/kg\n").lloq.map(|(figure, _)| figure),
            Some(5.0)
        );
        assert_eq!(
            facts("LOQ (ppm): 10\n")
                .lloq
                .and_then(|(_, unit)| unit)
                .map(|unit| unit.ppm),
            Some(Scale::One)
        );
        assert_eq!(
            facts("Fenwick Hollow Laboratory\n").lab.as_deref(),
            Some("Fenwick Hollow Laboratory")
        );
        assert_eq!(facts("Laboratory test report\n").lab, None);
        assert_eq!(facts("We report 3 samples in mg/kg\n"), Facts::default());
    }
}
