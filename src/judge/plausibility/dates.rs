//! Days in their order: bought, sent, received, tested, reported; and best-by after all of that began.

use crate::judge::plausibility::warn;
use crate::model::extraction::Extraction;
use crate::model::problem::Problems;
use crate::model::registers::{Package, Registers};
use crate::model::said::Said;
use crate::words::say;
use chrono::{Months, NaiveDate};
use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Display;

/// The days of one row of the register of packages.
pub fn of_package(package: &Package, problems: &mut Problems) {
    let code = &package.package_code;
    if let (Some(bought), Some(sent)) = (package.bought_on, package.sent_on)
        && sent < bought
    {
        let found = order(code, "sent_bought", sent, bought);
        warn(problems, &package.place, found, in_the_register());
    }
    if let (Some(best_by), Some(bought)) = (package.best_by.as_deref(), package.bought_on)
        && let Some(last) = last_day(best_by)
        && last < bought
    {
        let found = order(code, "bought_best_by", bought, best_by);
        warn(problems, &package.place, found, in_the_register());
    }
}

/// Two days of a package in an order that cannot be.
fn order(code: &str, order: &'static str, day: impl Display, other: impl Display) -> Said {
    say::found_package_days(code, order, day.to_string(), other.to_string())
}

fn in_the_register() -> Said {
    say::do_mend_days("register")
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
        for (kind, found) in faults(package, extraction) {
            if told.insert((file, extraction.package_code.as_str(), kind)) {
                let to_do = say::do_mend_days("report");
                warn(problems, &extraction.source.place(), found, to_do);
            }
        }
    }
}

/// What is out of order, by a word that tells it from the others.
fn faults(package: &Package, extraction: &Extraction) -> Vec<(&'static str, Said)> {
    let code = &package.package_code;
    let record = &extraction.record;
    let first_test = extraction.tested_from.or(extraction.tested_on);
    let mut faults = Vec::new();
    let mut hold = |kind, later: Option<NaiveDate>, earlier: Option<NaiveDate>| {
        if let (Some(later), Some(earlier)) = (later, earlier)
            && later < earlier
        {
            faults.push((kind, order(code, kind, later, earlier)));
        }
    };
    let started = package.sent_on.or(package.bought_on);
    let (received, tested) = match package.sent_on {
        Some(_) => ("received_sent", "tested_sent"),
        None => ("received_bought", "tested_bought"),
    };
    hold(received, record.received_on, started);
    hold(tested, first_test, started);
    hold("tested_received", first_test, record.received_on);
    hold("reported_tested", record.issued_on, extraction.tested_on);
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
