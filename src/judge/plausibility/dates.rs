//! Days in their order: bought, sent, received, tested, reported; and best-by after all of that began.

use crate::judge::plausibility::warn;
use crate::model::extraction::Extraction;
use crate::model::problem::Problems;
use crate::model::registers::{Package, Registers};
use chrono::{Months, NaiveDate};
use std::collections::{BTreeMap, BTreeSet};

/// What a person does about a register's day.
const IN_THE_REGISTER: &str =
    "Look at the receipt, the package and the register: one of the two days is mistyped.";

/// What a person does about a day of the lab's.
const AT_THE_LAB: &str = "Look at the lab's report, and ask the lab where it says the same. A day that its file has wrong can be put right in registers/reports.csv.";

/// The days of one row of the register of packages.
pub fn of_package(package: &Package, problems: &mut Problems) {
    let code = &package.package_code;
    if let (Some(bought), Some(sent)) = (package.bought_on, package.sent_on)
        && sent < bought
    {
        let message =
            format!("package “{code}” was sent on {sent}, before it was bought on {bought}");
        warn(problems, &package.place, message, IN_THE_REGISTER);
    }
    if let (Some(best_by), Some(bought)) = (package.best_by.as_deref(), package.bought_on)
        && let Some(last) = last_day(best_by)
        && last < bought
    {
        let message =
            format!("package “{code}” was bought on {bought}, after its best-by date “{best_by}”");
        warn(problems, &package.place, message, IN_THE_REGISTER);
    }
}

/// The last day that a best-by date can mean: makers write it in many ways, and often without the day.
///
/// None where it cannot be read; of a day and a month that could be either, the later reading.
pub fn last_day(best_by: &str) -> Option<NaiveDate> {
    let parts: Vec<&str> = best_by
        .trim()
        .split(['-', '.', '/', ' '])
        .filter(|part| !part.is_empty())
        .collect();
    let number = |part: &str| part.parse::<u32>().ok();
    let is_year = |part: &str| part.len() == 4 && number(part).is_some();
    match parts.as_slice() {
        [year, month, day] if is_year(year) => {
            NaiveDate::from_ymd_opt(number(year)? as i32, number(month)?, number(day)?)
        }
        [a, b, year] if is_year(year) => {
            let (year, a, b) = (number(year)? as i32, number(a)?, number(b)?);
            let either =
                [(a, b), (b, a)].map(|(day, month)| NaiveDate::from_ymd_opt(year, month, day));
            either.into_iter().flatten().max()
        }
        [year, month] if is_year(year) => month_end(number(year)? as i32, number(month)?),
        [month, year] if is_year(year) => month_end(number(year)? as i32, number(month)?),
        _ => None,
    }
}

fn month_end(year: i32, month: u32) -> Option<NaiveDate> {
    let first = NaiveDate::from_ymd_opt(year, month, 1)?;
    first.checked_add_months(Months::new(1))?.pred_opt()
}

/// The days that the lab's files state against one another and against the day of sending: each fault once a package and
/// file, at its first cell.
pub fn of_lab(registers: &Registers, extractions: &[Extraction], problems: &mut Problems) {
    let packages: BTreeMap<&str, &Package> = registers
        .packages
        .iter()
        .map(|package| (package.package_code.as_str(), package))
        .collect();
    let mut told = BTreeSet::new();
    for extraction in extractions {
        let Some(package) = packages.get(extraction.package_code.as_str()) else {
            continue;
        };
        let file = extraction.source.file.path.as_str();
        for (kind, message) in faults(package, extraction) {
            if told.insert((file, extraction.package_code.as_str(), kind)) {
                warn(problems, &extraction.source.place(), message, AT_THE_LAB);
            }
        }
    }
}

/// What is out of order, by a word that tells it from the others.
fn faults(package: &Package, extraction: &Extraction) -> Vec<(&'static str, String)> {
    let code = &package.package_code;
    let record = &extraction.record;
    let first_test = extraction.tested_from.or(extraction.tested_on);
    let mut faults = Vec::new();
    let mut hold =
        |kind, later: Option<NaiveDate>, earlier: Option<NaiveDate>, words: [&str; 2]| {
            if let (Some(later), Some(earlier)) = (later, earlier)
                && later < earlier
            {
                let [did, before] = words;
                faults.push((
                    kind,
                    format!("package “{code}” {did} on {later}, before {before} on {earlier}"),
                ));
            }
        };
    let started = package.sent_on.or(package.bought_on);
    let start = if package.sent_on.is_some() {
        "it was sent"
    } else {
        "it was bought"
    };
    hold(
        "received",
        record.received_on,
        started,
        ["was received by the lab", start],
    );
    hold("tested", first_test, started, ["was tested", start]);
    hold(
        "tested-received",
        first_test,
        record.received_on,
        ["was tested", "the lab received it"],
    );
    hold(
        "issued",
        record.issued_on,
        extraction.tested_on,
        ["was reported", "its test ended"],
    );
    faults
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_best_by_date_is_read_as_late_as_it_can_mean() {
        let read = |text| last_day(text).map(|day| day.to_string());
        assert_eq!(read("2031-05-06").as_deref(), Some("2031-05-06"));
        assert_eq!(read("06.05.2031").as_deref(), Some("2031-06-05"));
        assert_eq!(read("25/12/2031").as_deref(), Some("2031-12-25"));
        assert_eq!(read("02/2032").as_deref(), Some("2032-02-29"));
        assert_eq!(read("2032-12").as_deref(), Some("2032-12-31"));
        assert_eq!(read("end of May"), None);
        assert_eq!(read("31.02.2031"), None);
        assert_eq!(read(""), None);
    }
}
