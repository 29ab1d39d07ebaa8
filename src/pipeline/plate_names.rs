//! The names of the files of plates: that of the lab file and that of the plate.

use crate::files;
use crate::model::plate::MeasuredPlate;
use std::collections::BTreeMap;

/// The most letters that are taken of either name.
const LONGEST: usize = 60;

/// A file's name, without folder and ending, for each plate: `HV-31-0640--P-17`. Plates whose names come out alike are told
/// apart by the beginning of the SHA-256 of file, sheet, row and name, so that no name hangs on their order.
pub fn file_names(plates: &[MeasuredPlate]) -> Vec<String> {
    let plain: Vec<String> = plates.iter().map(plain).collect();
    let mut times: BTreeMap<String, usize> = BTreeMap::new();
    for name in &plain {
        *times.entry(name.to_ascii_lowercase()).or_default() += 1;
    }
    let named = plates.iter().zip(plain);
    named
        .map(|(measured, name)| {
            if times[&name.to_ascii_lowercase()] == 1 {
                return name;
            }
            let plate = &measured.plate;
            let sheet = plate.sheet.as_deref().unwrap_or_default();
            let whole = format!(
                "{}\n{sheet}\n{}\n{}",
                plate.file.path, plate.row, plate.name
            );
            format!("{name}-{}", &files::sha256_of(whole.as_bytes())[..8])
        })
        .collect()
}

fn plain(measured: &MeasuredPlate) -> String {
    let path = measured.plate.file.path.as_str();
    let file = path.rsplit('/').next().unwrap_or(path);
    let stem = file.rsplit_once('.').map_or(file, |(stem, _)| stem);
    format!("{}--{}", letters(stem), letters(&measured.plate.name))
}

/// Letters and digits of a name, with '-' for all else; ASCII alone.
fn letters(name: &str) -> String {
    let words: Vec<&str> = name
        .split(|c: char| !(c.is_ascii_alphanumeric() || c == '_'))
        .filter(|word| !word.is_empty())
        .collect();
    let mut name = words.join("-");
    name.truncate(LONGEST);
    match name.trim_end_matches('-') {
        "" => "plate".to_owned(),
        name => name.to_owned(),
    }
}
