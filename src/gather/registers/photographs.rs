//! The photographs of packages: a folder a package, each file by its path and content. Nothing is decided on them.

use crate::files;
use crate::gather::registers::fields::Table;
use crate::model::problem::{Code, Problems};
use crate::model::registers::{Photograph, Registers};
use std::path::Path;

/// The endings of photographs, small letters.
const ENDINGS: [&str; 6] = ["jpg", "jpeg", "png", "webp", "heic", "pdf"];

/// Lists the photographs of every package whose row names a folder. What cannot be listed is a warning and costs no more
/// than the photograph.
pub fn add(table: &Table, root: &Path, registers: &mut Registers, problems: &mut Problems) {
    const COLUMN: &str = "photographs";
    for fields in table.rows() {
        let place = fields.place();
        let of_row = registers
            .packages
            .iter_mut()
            .find(|package| package.place == place);
        let Some(package) = of_row else { continue };
        let Some(written) = fields.text(COLUMN, problems) else {
            continue;
        };
        let mut warn = |message: String, hint: &str| {
            problems.add(Code::Suspicious, fields.place_of(COLUMN), message, hint);
        };
        let folder = written
            .trim()
            .trim_end_matches(['/', '\\'])
            .replace('\\', "/");
        if !files::stays_below(&folder) || has_link(root, &folder) {
            warn(
                format!(
                    "the folder of photographs “{folder}” leads out of the programme folder, or is a link; it is not opened"
                ),
                "Copy the photographs into a folder of the programme folder, and write its path here.",
            );
            continue;
        }
        let path = root.join(&folder);
        if !path.is_dir() {
            warn(
                format!("there is no folder of photographs “{folder}”"),
                "Make the folder in the programme folder and copy the photographs into it, or empty this cell.",
            );
            continue;
        }
        let listed = match files::list(&path) {
            Ok(listed) => listed,
            Err(error) => {
                warn(
                    format!("the folder of photographs cannot be listed: {error}"),
                    "Look at its permissions and at the names in it.",
                );
                continue;
            }
        };
        for entry in listed {
            let name = entry.path.rsplit('/').next().unwrap_or_default();
            if files::is_litter(name) {
                continue;
            }
            let shown = format!("{folder}/{}", entry.path);
            if !entry.is_plain_file {
                warn(
                    format!(
                        "“{shown}” is a link, no ordinary file, or has a name that is no text; it is not taken as a photograph"
                    ),
                    "Copy the photograph itself into the folder.",
                );
                continue;
            }
            let ending = name
                .rsplit_once('.')
                .map(|(_, ending)| ending.to_lowercase());
            if !ending.is_some_and(|ending| ENDINGS.contains(&ending.as_str())) {
                warn(
                    format!(
                        "“{shown}” is no photograph by its name (.jpg, .jpeg, .png, .webp, .heic or .pdf); it is passed over"
                    ),
                    "Save it as one of these kinds, or keep it elsewhere.",
                );
                continue;
            }
            match files::sha256(&path.join(&entry.path)) {
                Ok((sha256, _)) => package.photographs.push(Photograph {
                    path: shown,
                    sha256,
                }),
                Err(error) => warn(
                    format!("a photograph cannot be read: {error}"),
                    "Look at its permissions, then run again.",
                ),
            }
        }
    }
}

/// Whether any part of a path below `root` is a link.
fn has_link(root: &Path, below: &str) -> bool {
    let mut path = root.to_owned();
    below.split('/').any(|part| {
        path.push(part);
        std::fs::symlink_metadata(&path).is_ok_and(|about| about.is_symlink())
    })
}
