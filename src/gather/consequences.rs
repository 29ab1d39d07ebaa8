//! What follows from faults of the registers, folded into one line a file: sixty rows of unknown codes have one cause, and
//! the cause is what a person must mend.

use crate::gather::codes;
use crate::gather::registers::LostCodes;
use crate::model::place::Place;
use crate::model::problem::{Code, Problem, Problems};
use crate::model::said::Item;
use crate::words::say;
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
        let mut named: Vec<Item> = Vec::new();
        for (code, place) in &causes {
            let item = Item::at(*code, (*place).clone());
            if !named.contains(&item) {
                named.push(item);
            }
        }
        let more = named.len().saturating_sub(NAMED);
        named.truncate(NAMED);
        problems.add(
            Code::UnknownPackage,
            Place::file(file),
            say::found_lost_rows(folded.len() as u64, named, more as u64),
            say::do_mend_registers(),
        );
    }
}

/// The code that a problem is about, and the place of its row in the register, where that row is not used.
fn cause<'a>(problem: &'a Problem, lost: &'a LostCodes) -> Option<(&'a str, &'a Place)> {
    let code = problem.message.text("code")?;
    Some((code, lost.get(&codes::key(code))?))
}
