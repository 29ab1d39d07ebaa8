//! The key of the packages of known content, which go to the lab among the others.

use crate::gather::codes::Codes;
use crate::gather::registers::fields::{Fields, Table};
use crate::gather::registers::ids;
use crate::gather::text;
use crate::model::ppm::Ppm;
use crate::model::problem::Problems;
use crate::model::registers::{BlindContent, BlindPackage, Registers};
use crate::words::say;

/// What a package of the key may hold, as the key says it.
const CONTENTS: [(bool, &str); 2] = [(false, "no-gluten"), (true, "gluten-added")];

/// Reads the key. A row that cannot be used is named: its code stays unknown, and so does what it holds.
pub fn read(table: &Table, registers: &mut Registers, problems: &mut Problems) {
    let packages = registers.packages.iter();
    let packages = Codes::new(packages.map(|package| package.package_code.as_str()));
    for fields in table.rows() {
        fields.beyond((None, None), None, problems);
        let Some(blind) = row(&fields, problems) else {
            continue;
        };
        let before = Codes::new(registers.blinds.iter().map(|one| one.package_code.as_str()));
        let code = &blind.package_code;
        let taken = match (packages.find(code), before.find(code)) {
            (Some(_), _) => "package",
            (None, Some(_)) => "key",
            (None, None) => {
                registers.blinds.push(blind);
                continue;
            }
        };
        fields.fault(
            "package_code",
            say::found_blind_taken(text::short(code), taken),
            say::do_own_code(),
            problems,
        );
    }
}

fn row(fields: &Fields<'_>, problems: &mut Problems) -> Option<BlindPackage> {
    let code = ids::needed(fields, "package_code", problems);
    let was_added = fields.needed_word("content", &CONTENTS, problems);
    let added = fields.figure("added_ppm", problems);
    Some(BlindPackage {
        package_code: code?,
        content: match was_added? {
            false => BlindContent::NoGluten,
            true => BlindContent::Added(added.ok()?.map(Ppm)),
        },
        food: fields.text("food", problems),
        round: ids::read(fields, "round", problems).ok()?,
        place: fields.place(),
    })
}
