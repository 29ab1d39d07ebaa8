//! The photographs of packages: a folder a package, each file by its path and content. Nothing is decided on them.

use crate::files;
use crate::gather::registers::fields::Table;
use crate::model::problem::{Code, Problems};
use crate::model::registers::{Photograph, Registers};
use crate::model::said::Said;
use crate::words::say;
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
        let mut warn = |found: Said, to_do: Said| {
            problems.add(Code::Suspicious, fields.place_of(COLUMN), found, to_do);
        };
        let folder = written
            .trim()
            .trim_end_matches(['/', '\\'])
            .replace('\\', "/");
        if !files::stays_below(&folder) || has_link(root, &folder) {
            warn(
                say::found_folder_outside(folder),
                say::do_copy_photographs(),
            );
            continue;
        }
        let path = root.join(&folder);
        if !path.is_dir() {
            warn(say::found_no_folder(folder), say::do_make_folder());
            continue;
        }
        let listed = match files::list(&path) {
            Ok(listed) => listed,
            Err(_) => {
                warn(say::found_folder_unlisted(folder), say::do_look_at_names());
                continue;
            }
        };
        for entry in listed {
            let mut refuse = |path: &str, fault: &'static str| {
                warn(
                    say::found_photograph(path, fault),
                    say::do_mend_photograph(fault),
                );
            };
            let name = entry.path.rsplit('/').next().unwrap_or_default();
            if files::is_litter(name) {
                continue;
            }
            let shown = format!("{folder}/{}", entry.path);
            if !entry.is_plain_file {
                refuse(&shown, "link");
                continue;
            }
            let ending = name
                .rsplit_once('.')
                .map(|(_, ending)| ending.to_lowercase());
            if !ending.is_some_and(|ending| ENDINGS.contains(&ending.as_str())) {
                refuse(&shown, "ending");
                continue;
            }
            match files::sha256(&path.join(&entry.path)) {
                Ok((sha256, _)) => package.photographs.push(Photograph {
                    path: shown,
                    sha256,
                }),
                Err(_) => refuse(&shown, "unreadable"),
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
