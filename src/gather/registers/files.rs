//! The files of registers/: which register each is, and what is to be said of those that are none.

use crate::config::Config;
use crate::files;
use crate::gather::registers::shapes::{self, Shape, nearly};
use crate::gather::text;
use crate::model::place::Place;
use crate::model::problem::{Code, Problems};
use crate::model::registers::{Bars, Doubt, DoubtKind};
use anyhow::{Result, bail};
use std::path::{Path, PathBuf};

/// The forms that a register may have.
const ENDINGS: [&str; 4] = ["csv", "xlsx", "xls", "ods"];

/// The files of registers/.
pub struct Files {
    /// Each register's, in order of name.
    found: Vec<(&'static Shape, PathBuf)>,
    /// Files whose name is nearly a register's.
    near: Vec<(&'static Shape, PathBuf)>,
}

impl Files {
    /// Lists them; tells of those that are no register.
    ///
    /// # Errors
    /// Where the folder cannot be listed.
    pub fn list(folder: &Path, doubts: &mut Vec<Doubt>, problems: &mut Problems) -> Result<Files> {
        let mut files = Files {
            found: Vec::new(),
            near: Vec::new(),
        };
        for path in files::entries(folder)? {
            let name = name_of(&path);
            if files::is_litter(&name) {
                continue;
            }
            let is_file = path.is_file();
            let (stem, ending) = name.rsplit_once('.').unwrap_or((&name, ""));
            let (stem, ending) = (stem.to_lowercase(), ending.to_lowercase());
            let exact = shapes::ALL.into_iter().find(|shape| shape.name == stem);
            if exact.is_some() && ENDINGS.contains(&ending.as_str()) && path.is_dir() {
                return Err(files::refused(
                    "read",
                    &path,
                    &std::io::ErrorKind::IsADirectory.into(),
                ));
            }
            match exact {
                Some(shape) if is_file && ENDINGS.contains(&ending.as_str()) => {
                    files.found.push((shape, path));
                }
                _ => {
                    let near = shapes::ALL
                        .into_iter()
                        .find(|shape| nearly(&stem, shape.name));
                    match exact.or(near) {
                        Some(shape) => {
                            doubts.push(misnamed(&path, shape, problems));
                            files.near.push((shape, path));
                        }
                        None => stranger(&path, is_file, problems),
                    }
                }
            }
        }
        Ok(files)
    }

    /// The file of a register, where there is one.
    ///
    /// # Errors
    /// Where there are two.
    pub fn of(&self, shape: &Shape) -> Result<Option<&Path>> {
        let mut of = self
            .found
            .iter()
            .filter(|(found, _)| found.name == shape.name);
        let first = of.next().map(|(_, path)| path.as_path());
        if let (Some(first), Some((_, second))) = (first, of.next()) {
            bail!(
                "there are two registers of {}, {} and {}: keep one of them and move the other away",
                shape.name,
                first.display(),
                second.display()
            );
        }
        Ok(first)
    }

    /// What to say where the register of products or of packages is missing.
    pub fn without(&self, config: &Config) -> String {
        let is_there = |name: &str| self.found.iter().any(|(shape, _)| shape.name == name);
        let name = if is_there("products") {
            "packages"
        } else {
            "products"
        };
        let near: String = self
            .near
            .iter()
            .filter(|(shape, _)| shape.name == name)
            .map(|(_, path)| format!(". If {} is meant, rename it", shown(path)))
            .collect();
        format!(
            "there is no register of {name}: {} needs a file {name}.csv (or .xlsx, .xls, .ods){near}",
            config.registers().display()
        )
    }
}

/// Tells of a file whose name is nearly a register's; the doubt that it leaves.
fn misnamed(path: &Path, shape: &'static Shape, problems: &mut Problems) -> Doubt {
    let place = Place::file(shown(path));
    let outcome = match shape.name_bars {
        Bars::Verdict => "until that is settled, no product gets a verdict",
        Bars::Issue => "until that is settled, nothing is issued",
    };
    problems.add(
        Code::RegisterError,
        place.clone(),
        format!(
            "this is nearly the name of the register of {0}, which is {0}.csv (or .xlsx, .xls, .ods); it is not read, and {outcome}",
            shape.name
        ),
        format!(
            "If it is the register of {0}, rename it to {0}.csv or save it as {0}.xlsx. If not, move it out of registers/.",
            shape.name
        ),
    );
    Doubt {
        product_id: None,
        round: None,
        bars: shape.name_bars,
        what: DoubtKind::Misnamed {
            meant: shape.name.to_owned(),
        },
        place,
    }
}

fn stranger(path: &Path, is_file: bool, problems: &mut Problems) {
    let names: Vec<&str> = shapes::ALL.iter().map(|shape| shape.name).collect();
    let what = if is_file {
        "this is no register, and nothing is read from it"
    } else {
        "a folder in registers/ is not looked into"
    };
    problems.add(
        Code::Suspicious,
        Place::file(shown(path)),
        what,
        format!(
            "Registers are named {}. Keep all else outside registers/.",
            names.join(", ")
        ),
    );
}

fn name_of(path: &Path) -> String {
    let name = path.file_name().unwrap_or_default();
    text::plain(&name.to_string_lossy()).into_owned()
}

/// A register's path below the programme folder.
pub fn shown(path: &Path) -> String {
    format!("registers/{}", name_of(path))
}
