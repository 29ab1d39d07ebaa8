//! Where the numbers come from: the lab's files, what each says of itself, and what it does not say.

use crate::model::extraction::{Extraction, LabRecord};
use crate::model::package::PackageResult;
use crate::model::place::LabFile;
use crate::model::ppm::Ppm;
use crate::model::rule::Rule;
use crate::model::verdict::ProductVerdict;
use crate::render::numbers;
use crate::render::words::method::short_hash;
use crate::render::words::sentence_case;
use crate::words::{Catalogue, Said, say, yes_or_no};
use chrono::NaiveDate;
use std::collections::BTreeSet;
use std::sync::Arc;

/// The readings of both series: those of the other assay are printed beside.
fn both_series(product: &ProductVerdict) -> impl Iterator<Item = &Extraction> {
    let packages = product.packages.iter();
    let series = packages.flat_map(PackageResult::both_series);
    series
        .flat_map(|package| &package.pair.extractions)
        .map(|paired| &paired.extraction)
}

/// The lab files that a product rests on, by path.
pub fn lab_files(product: &ProductVerdict) -> Vec<Arc<LabFile>> {
    let files: BTreeSet<Arc<LabFile>> = both_series(product)
        .map(|extraction| Arc::clone(&extraction.source.file))
        .collect();
    files.into_iter().collect()
}

/// Where the numbers come from: a paragraph a lab file, with what its report says of itself. Which rows of it these are, and
/// what else stands in it, is no part of what a sheet says: see [`places`].
pub fn provenance(product: &ProductVerdict, words: &Catalogue) -> Vec<String> {
    let files = lab_files(product);
    let told = files.iter().map(|file| source(product, file, words));
    told.collect()
}

/// Where in each of these files the numbers stand, and the file's checksum: "Rows 3 to 8. SHA-256 …".
pub fn places(product: &ProductVerdict, words: &Catalogue) -> Vec<String> {
    let files = lab_files(product);
    words.each(files.iter().map(|file| place(product, file)))
}

fn from_file<'a>(product: &'a ProductVerdict, file: &LabFile) -> Vec<&'a Extraction> {
    both_series(product)
        .filter(|extraction| extraction.source.file.as_ref() == file)
        .collect()
}

fn place(product: &ProductVerdict, file: &LabFile) -> Said {
    let readings = from_file(product, file);
    let rows = readings.iter().map(|extraction| extraction.source.row);
    let (first, last) = (rows.clone().min(), rows.max());
    let kind = match first {
        None => "none",
        _ if first == last => "one",
        _ => "more",
    };
    let row = |row: Option<u32>| row.map_or_else(String::new, |row| row.to_string());
    say::method_rows(kind, row(first), row(last), short_hash(&file.sha256))
}

/// Readings of one lab file.
struct Report<'a> {
    readings: Vec<&'a Extraction>,
    words: &'a Catalogue,
}

fn source(product: &ProductVerdict, file: &LabFile, words: &Catalogue) -> String {
    let report = Report {
        readings: from_file(product, file),
        words,
    };
    let name = file.path.rsplit('/').next().unwrap_or(&file.path);
    let mut said = vec![report.head()];
    said.extend(report.stated());
    said.push(report.lowest(product.rule));
    said.extend(report.remarks());
    said.extend(report.not_stated());
    said.push(words.say(&say::method_file(name)));
    said.join(" ")
}

impl Report<'_> {
    fn distinct<T: Ord>(&self, value: impl Fn(&Extraction) -> Option<T>) -> Vec<T> {
        let values: BTreeSet<T> = self.readings.iter().filter_map(|one| value(one)).collect();
        values.into_iter().collect()
    }

    fn of_record<T: Ord>(&self, value: impl Fn(&LabRecord) -> Option<T>) -> Vec<T> {
        self.distinct(|one| value(&one.record))
    }

    fn reports(&self) -> Vec<String> {
        self.distinct(|one| one.report.as_deref().map(str::to_owned))
    }

    /// The first and the last day of testing.
    fn tested(&self) -> Option<(NaiveDate, NaiveDate)> {
        let first = self.distinct(|one| one.tested_from.or(one.tested_on));
        let last = self.distinct(|one| one.tested_on);
        Some((*first.first()?, *last.last()?))
    }

    fn head(&self) -> String {
        let unnamed = self.words.say(&say::lab_unnamed());
        // A name is written as its owner writes it.
        let at_the_head = |lab: &str| match lab == unnamed {
            true => sentence_case(lab),
            false => lab.to_owned(),
        };
        let labs = self.distinct(|one| Some(at_the_head(&one.lab)));
        let labs = self.words.list(&labs);
        let reports = self.reports();
        let (tested, first, last) = match self.tested() {
            None => ("no", String::new(), String::new()),
            Some((first, last)) if first == last => ("day", first.to_string(), String::new()),
            Some((first, last)) => ("days", first.to_string(), last.to_string()),
        };
        let reported = yes_or_no(!reports.is_empty());
        let reports = self.words.list(&reports);
        let head = say::method_source(labs, reported, reports, tested, first, last);
        self.words.say(&head)
    }

    /// What the report says of itself.
    fn stated(&self) -> Vec<String> {
        let mut said = Vec::new();
        let one_line = |text: &str| text.split_whitespace().collect::<Vec<_>>().join(" ");
        for address in self.of_record(|record| record.lab_address.as_deref().map(one_line)) {
            said.push(say::method_address(address.trim_end_matches('.')));
        }
        let received = |record: &LabRecord| Some((record.received_on?, record.condition.clone()));
        for (day, condition) in self.of_record(received) {
            let described = yes_or_no(condition.is_some());
            let condition = condition.unwrap_or_default();
            let condition = condition.trim().trim_end_matches('.');
            said.push(say::method_received(day.to_string(), described, condition));
        }
        for day in self.of_record(|record| record.issued_on) {
            said.push(say::method_issued(day.to_string()));
        }
        let uncertainty = self.uncertainty();
        if !uncertainty.is_empty() {
            let stated = self.words.list(&uncertainty);
            said.push(say::method_uncertainty(stated.trim_end_matches('.')));
        }
        for accredited in self.of_record(|record| record.accredited) {
            said.push(say::method_accredited(yes_or_no(accredited)));
        }
        self.words.each(said)
    }

    /// The uncertainty in the lab's words: of the whole report, else of each result.
    fn uncertainty(&self) -> Vec<String> {
        let whole = self.of_record(|record| record.uncertainty.clone());
        if !whole.is_empty() {
            return whole;
        }
        self.distinct(|one| {
            let stated = one.uncertainty.as_deref()?;
            Some(format!("{} {stated}", one.package_code))
        })
    }

    /// From what amount on the assay gives a number, and from what amount on it detects.
    fn lowest(&self, rule: Rule) -> String {
        let amounts = |of: fn(&Extraction) -> Ppm| {
            let mut amounts: Vec<Ppm> = self.readings.iter().map(|one| of(one)).collect();
            amounts.sort_by(|a, b| a.compare(*b));
            amounts.dedup_by(|a, b| a.same(*b));
            let unit = rule.regime.unit();
            let written = |amount: &Ppm| self.words.quantity(&numbers::plain(*amount), unit);
            let written: Vec<String> = amounts.iter().map(written).collect();
            self.words.list(&written)
        };
        let said = say::method_lowest(amounts(|one| one.lloq), amounts(|one| one.lod));
        self.words.say(&said)
    }

    /// What the lab remarks, on the report or beside a result; the first of many, and none of them at any length.
    fn remarks(&self) -> Option<String> {
        const SHOWN: usize = 3;
        const LETTERS: usize = 160;
        let mut remarks: Vec<String> = Vec::new();
        for one in &self.readings {
            let all = one.record.remarks.iter().map(String::as_str);
            for remark in all.chain(one.remark.as_deref()) {
                let remark = shortened(remark.trim().trim_end_matches('.'), LETTERS);
                if !remark.is_empty() && !remarks.contains(&remark) {
                    remarks.push(remark);
                }
            }
        }
        let quoted = remarks.iter().take(SHOWN).map(say::method_quoted);
        let quoted = self.words.each(quoted);
        let said = say::method_remarks(self.words.list(&quoted));
        (!quoted.is_empty()).then(|| self.words.say(&said))
    }

    /// What a reader would look for and the lab does not say.
    fn not_stated(&self) -> Option<String> {
        let is_unsaid =
            |said: fn(&LabRecord) -> bool| !self.readings.iter().any(|one| said(&one.record));
        let things = [
            (is_unsaid(|record| record.lab_address.is_some()), "address"),
            (self.reports().is_empty(), "report"),
            (is_unsaid(|record| record.received_on.is_some()), "received"),
            (self.tested().is_none(), "tested"),
            (self.uncertainty().is_empty(), "uncertainty"),
            (
                is_unsaid(|record| record.accredited.is_some()),
                "accreditation",
            ),
        ];
        let missing = things.into_iter().filter(|(missing, _)| *missing);
        let missing = missing.map(|(_, thing)| say::method_thing(thing));
        let missing = self.words.each(missing);
        let said = say::method_not_stated(self.words.list(&missing));
        (!missing.is_empty()).then(|| self.words.say(&said))
    }
}

/// A text of at most so many letters.
fn shortened(text: &str, letters: usize) -> String {
    match text.char_indices().nth(letters) {
        Some((end, _)) => format!("{}…", text[..end].trim_end()),
        None => text.to_owned(),
    }
}
