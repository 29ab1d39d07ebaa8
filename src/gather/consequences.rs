//! What follows from faults of the registers, folded into one line a file: sixty rows of unknown codes have one cause, and
//! the cause is what a person must mend.

use crate::gather::codes;
use crate::gather::registers::LostCodes;
use crate::model::place::Place;
use crate::model::problem::{Code, Problem, Problems};
use std::collections::BTreeMap;

/// The codes that a line names before it says how many more there are.
const NAMED: usize = 3;

/// Folds the unknown packages whose row in the register of packages is not used.
pub fn fold(lost: &LostCodes, problems: &mut Problems) {
    if lost.is_empty() {
        return;
    }
    let follows =
        |problem: &Problem| problem.code == Code::UnknownPackage && cause(problem, lost).is_some();
    let mut by_file: BTreeMap<String, Vec<Problem>> = BTreeMap::new();
    for problem in problems.take(follows) {
        let file = problem.place.file.clone();
        by_file.entry(file).or_default().push(problem);
    }
    for (file, mut folded) in by_file {
        folded.sort();
        folded.dedup();
        let causes: Vec<(&str, &Place)> = folded
            .iter()
            .filter_map(|problem| cause(problem, lost))
            .collect();
        let mut named: Vec<String> = Vec::new();
        for (code, place) in &causes {
            let line = format!("“{code}” ({place})");
            if !named.contains(&line) {
                named.push(line);
            }
        }
        let more = named.len().saturating_sub(NAMED);
        named.truncate(NAMED);
        let rest = match more {
            0 => String::new(),
            more => format!(" and {more} more"),
        };
        let (rows, have) = match folded.len() {
            1 => ("1 row".to_owned(), "has"),
            n => (format!("{n} rows"), "have"),
        };
        problems.add(
            Code::UnknownPackage,
            Place::file(file),
            format!(
                "{rows} of this file {have} the code of a package whose row in the register is not used: {}{rest}",
                named.join(", ")
            ),
            "Mend the registers first: their errors stand at the top of this list. Then run again.",
        );
    }
}

/// The code that a problem is about, and the place of its row in the register, where that row is not used.
fn cause<'a>(problem: &'a Problem, lost: &'a LostCodes) -> Option<(&'a str, &'a Place)> {
    let quoted = problem.message.split('“').skip(1);
    let mut codes = quoted.filter_map(|rest| rest.split('”').next());
    codes.find_map(|code| Some((code, lost.get(&codes::key(code))?)))
}
