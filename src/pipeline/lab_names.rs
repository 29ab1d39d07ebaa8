//! The names of files about a lab, made of its name: every lab has its own, on a disk that ignores case as well.

use crate::files;
use std::collections::BTreeMap;

/// The most letters that are taken of a lab's name: with what stands round it, a name that every disk takes.
const LONGEST: usize = 60;

/// A file's name, without folder and ending, for each lab. A lab whose letters give what another's give, or more than a
/// file's name may have, is told apart by the beginning of its name's SHA-256, so that no name hangs on their order.
pub fn file_names<'a>(labs: impl Iterator<Item = &'a str>) -> BTreeMap<&'a str, String> {
    let plain: BTreeMap<&str, String> = labs.map(|lab| (lab, plain(lab))).collect();
    let mut times: BTreeMap<&str, usize> = BTreeMap::new();
    for name in plain.values() {
        *times.entry(name).or_default() += 1;
    }
    plain
        .iter()
        .map(|(lab, name)| {
            let name = match times[name.as_str()] {
                1 if name.len() <= LONGEST => name.clone(),
                _ => format!(
                    "{}-{}",
                    name[..name.len().min(LONGEST)].trim_end_matches('-'),
                    &files::sha256_of(lab.as_bytes())[..8]
                ),
            };
            (*lab, name)
        })
        .collect()
}

/// Small letters and digits of a name, with '-' for all else; ASCII alone.
fn plain(lab: &str) -> String {
    let name = lab.to_ascii_lowercase();
    let words: Vec<&str> = name
        .split(|c: char| !c.is_ascii_alphanumeric())
        .filter(|word| !word.is_empty())
        .collect();
    match words.is_empty() {
        true => "laboratory".to_owned(),
        false => words.join("-"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::BTreeSet;

    #[test]
    fn no_two_labs_share_a_name_and_none_is_too_long() {
        let long = ["x".repeat(300), "x".repeat(301), "é ".repeat(300)];
        let labs = [
            "Lab 1",
            "LAB 1",
            "A b",
            "a-b",
            "日本",
            "中国",
            "Tidewater Assays",
            "",
            "lab-1",
        ];
        let labs = labs.into_iter().chain(long.iter().map(String::as_str));
        let names = file_names(labs.clone());
        let distinct: BTreeSet<&String> = names.values().collect();
        assert_eq!(distinct.len(), labs.clone().count(), "{names:?}");
        assert!(names.values().all(|name| name.len() <= 80), "{names:?}");
        assert_eq!(names["Tidewater Assays"], "tidewater-assays");
        let backwards: Vec<&str> = labs.rev().collect();
        assert_eq!(
            file_names(backwards.into_iter()),
            names,
            "whatever their order"
        );
    }

    #[test]
    fn a_lab_without_such_letters_has_a_name_too() {
        assert_eq!(file_names(["日本"].into_iter())["日本"], "laboratory");
    }
}
