//! The register of reports: what a lab's report says that its file does not.

use crate::gather::registers::fields::{Field, Fields, Table};
use crate::gather::registers::paths::{self, LabFiles};
use crate::gather::text;
use crate::model::place::Place;
use crate::model::ppm::Ppm;
use crate::model::problem::{Code, Problems};
use crate::model::registers::{Bars, Doubt, DoubtKind, Registers, ReportRow};
use crate::model::said::Said;
use crate::words::say;
use std::collections::BTreeMap;

/// Reads the reports. A row with something in it that cannot be read leaves a doubt about its file: what it says goes
/// before what the file says, so that nothing is published on the file alone.
pub fn read(
    table: &Table,
    lab_files: LabFiles<'_>,
    registers: &mut Registers,
    problems: &mut Problems,
) {
    let mut row_of: BTreeMap<String, u32> = BTreeMap::new();
    let first = registers.reports.len();
    let mut places = Vec::new();
    for fields in table.rows() {
        let Some(written) = fields.needed("file", problems) else {
            registers
                .doubts
                .push(fields.doubt("file", None, None, Bars::Issue));
            continue;
        };
        let matching = lab_files.matching(&written);
        let file = match matching[..] {
            [only] => only.to_owned(),
            _ => paths::full(&written),
        };
        let mut reading = Reading {
            fields: &fields,
            lab_files,
            is_sound: true,
        };
        if matching.is_empty() {
            reading.fault(
                "file",
                say::found_no_lab_file(text::short(&written), "nothing"),
                say::do_write_path("several"),
                problems,
            );
        }
        let before = matching
            .iter()
            .find_map(|path| Some((*path, *row_of.get(*path)?)));
        if let Some((path, row)) = before {
            reading.fault(
                "file",
                say::found_report_twice(path, row.to_string()),
                say::do_one_row_each(),
                problems,
            );
            for path in &matching {
                registers.doubts.push(about(&fields, (*path).to_owned()));
            }
            continue;
        }
        let row = fields.place().row.unwrap_or_default();
        row_of.extend(matching.iter().map(|path| ((*path).to_owned(), row)));
        let report = reading.row(file.clone(), problems);
        reading.is_sound &= fields
            .beyond((None, None), Some(Bars::Issue), problems)
            .is_none();
        if !reading.is_sound {
            registers.doubts.push(about(&fields, file));
        }
        registers.reports.push(report);
        places.push(fields.place_of("supersedes"));
    }
    break_circles(
        &mut registers.reports[first..],
        &places,
        lab_files,
        (&mut registers.doubts, problems),
    );
}

/// Reports that replace one another in a circle would all fall silent: none of them replaces anything, and nothing is
/// published on any of them until a person says which came last.
fn break_circles(
    reports: &mut [ReportRow],
    places: &[Place],
    lab_files: LabFiles<'_>,
    (doubts, problems): (&mut Vec<Doubt>, &mut Problems),
) {
    let mut replaces: BTreeMap<&str, &str> = BTreeMap::new();
    let matching: Vec<Vec<&str>> = reports
        .iter()
        .map(|report| lab_files.matching(&report.file))
        .collect();
    let replaced: Vec<Option<String>> = reports
        .iter()
        .map(|report| report.supersedes.clone())
        .collect();
    for (files, replaced) in matching.iter().zip(&replaced) {
        if let Some(replaced) = replaced {
            replaces.extend(files.iter().map(|file| (*file, replaced.as_str())));
        }
    }
    // Each file replaces one at most, so that a walk either ends or comes back.
    let comes_back = |file: &str| {
        let mut at = file;
        (0..replaces.len()).any(|_| match replaces.get(at) {
            Some(next) => {
                at = next;
                at == file
            }
            None => false,
        })
    };
    for (index, report) in reports.iter_mut().enumerate() {
        let Some(replaced) = &replaced[index] else {
            continue;
        };
        if !matching[index].iter().any(|file| comes_back(file)) {
            continue;
        }
        report.supersedes = None;
        problems.add(
            Code::RegisterError,
            places[index].clone(),
            say::found_nothing_replaced(replaced, "circle"),
            say::do_name_earlier_file(),
        );
        doubts.push(Doubt {
            product_id: None,
            round: None,
            bars: Bars::Issue,
            what: DoubtKind::Report {
                file: report.file.clone(),
            },
            place: places[index].clone(),
        });
    }
}

fn about(fields: &Fields<'_>, file: String) -> Doubt {
    Doubt {
        what: DoubtKind::Report { file },
        ..fields.doubt("file", None, None, Bars::Issue)
    }
}

/// One row, and whether all of it can be used.
struct Reading<'a, 'f> {
    fields: &'a Fields<'f>,
    lab_files: LabFiles<'a>,
    is_sound: bool,
}

impl Reading<'_, '_> {
    fn fault(&mut self, column: &str, message: Said, hint: Said, problems: &mut Problems) {
        self.fields.fault(column, message, hint, problems);
        self.is_sound = false;
    }

    fn take<T>(&mut self, field: Field<T>) -> Option<T> {
        self.is_sound &= field.is_ok();
        field.ok().flatten()
    }

    fn row(&mut self, file: String, problems: &mut Problems) -> ReportRow {
        let fields = self.fields;
        let mut text = |column: &str| self.take(fields.field(column, problems));
        let (report, condition) = (text("report"), text("condition"));
        let uncertainty = text("uncertainty");
        let mut day = |column: &str| self.take(fields.day(column, problems));
        let (issued_on, received_on) = (day("issued_on"), day("received_on"));
        let (tested_from, tested_to) = (day("tested_from"), day("tested_to"));
        if tested_from
            .zip(tested_to)
            .is_some_and(|(from, to)| from > to)
        {
            let found = say::found_days_reversed();
            self.fault("tested_to", found, say::do_mend_day(), problems);
        }
        let mut figure = |column: &str| self.take(fields.figure(column, problems)).map(Ppm);
        let (lloq, lod) = (figure("lloq_ppm"), figure("lod_ppm"));
        let answers = [(true, "yes"), (false, "no")];
        let accredited = self.take(fields.word("accredited", &answers, problems));
        ReportRow {
            supersedes: self.supersedes(&file, problems),
            certificate: self.certificate(problems),
            file,
            report,
            issued_on,
            received_on,
            condition,
            tested_from,
            tested_to,
            lloq,
            lod,
            uncertainty,
            accredited,
            place: fields.place(),
        }
    }

    fn supersedes(&mut self, file: &str, problems: &mut Problems) -> Option<String> {
        let written = self.take(self.fields.field("supersedes", problems))?;
        let [found] = self.lab_files.matching(&written)[..] else {
            let found = say::found_nothing_replaced(text::short(&written), "unclear");
            self.fault(
                "supersedes",
                found,
                say::do_write_path("replaced"),
                problems,
            );
            return None;
        };
        if self.lab_files.matching(file).contains(&found) {
            let itself = say::found_nothing_replaced(found, "itself");
            self.fault("supersedes", itself, say::do_name_earlier_file(), problems);
            return None;
        }
        Some(found.to_owned())
    }

    fn certificate(&mut self, problems: &mut Problems) -> Option<String> {
        let written = self.take(self.fields.field("certificate", problems))?;
        let found = self.lab_files.any(&written);
        if found.is_none() {
            let found = say::found_no_certificate(text::short(&written));
            self.fault("certificate", found, say::do_copy_certificate(), problems);
        }
        found
    }
}
