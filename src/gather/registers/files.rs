//! The files of registers/: which register each is, and what is to be said of those that are none.

use crate::config::Config;
use crate::files;
use crate::gather::inbox;
use crate::gather::registers::shapes::{self, Shape, bars_word, nearly};
use crate::gather::registers::together::Together;
use crate::gather::text;
use crate::model::guide;
use crate::model::place::Place;
use crate::model::problem::{Code, Problems};
use crate::model::registers::{Bars, Doubt, DoubtKind};
use crate::words::say;
use anyhow::{Result, bail};
use std::path::{Path, PathBuf};

/// The forms that a register may have.
const ENDINGS: [&str; 4] = ["csv", "xlsx", "xls", "ods"];

/// The forms that a workbook of registers may have.
pub const WORKBOOKS: [&str; 3] = ["xlsx", "xls", "ods"];

/// The name of the workbook in which registers are kept together.
const TOGETHER: &str = "registers";

/// The files of registers/.
pub struct Files {
    /// Each register's, in order of name.
    found: Vec<(&'static Shape, PathBuf)>,
    /// Files whose name is nearly a register's.
    near: Vec<(&'static Shape, PathBuf)>,
    /// The workbook in which registers are kept together.
    pub together: Option<Together>,
}

impl Files {
    /// Lists them; tells of those that are no register.
    ///
    /// # Errors
    /// Where the folder cannot be listed, a register is a link out of the programme folder, or there are two workbooks of
    /// registers, or one that cannot be read.
    pub fn list(folder: &Path, doubts: &mut Vec<Doubt>, problems: &mut Problems) -> Result<Files> {
        let mut files = Files {
            found: Vec::new(),
            near: Vec::new(),
            together: None,
        };
        for path in files::entries(folder)? {
            let name = name_of(&path);
            if files::is_litter(&name) || name == guide::PAGE {
                continue;
            }
            let is_file = path.is_file();
            let root = folder.parent().unwrap_or(folder);
            let (stem, ending) = name.rsplit_once('.').unwrap_or((&name, ""));
            let (stem, ending) = (stem.to_lowercase(), ending.to_lowercase());
            if is_file && stem == TOGETHER && WORKBOOKS.contains(&ending.as_str()) {
                if files.together.is_some() {
                    bail!(
                        "there are two workbooks of registers in registers/, and {} is the second: keep one of them and move the other away",
                        shown(&path)
                    );
                }
                files::refuse_link_out(root, &path)?;
                files.together = Some(Together::read(&path, doubts, problems)?);
                continue;
            }
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
                    files::refuse_link_out(root, &path)?;
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
                        None if nearly(&stem, TOGETHER) => {
                            doubts.push(misnamed_workbook(&path, problems));
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
        if let (Some(first), Some(together)) = (first, &self.together)
            && !together.is_blank(shape)
        {
            bail!(
                "there are two registers of {}, {} and a sheet of the workbook of registers: keep one of them and empty or move away the other",
                shape.name,
                first.display()
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
            "there is no register of {name}: {} needs a file {name}.csv (or .xlsx, .xls, .ods), or a sheet {name} in registers.xlsx{near}",
            config.registers().display()
        )
    }
}

/// Tells of a file whose name is nearly a register's; the doubt that it leaves.
fn misnamed(path: &Path, shape: &'static Shape, problems: &mut Problems) -> Doubt {
    let place = Place::file(shown(path));
    problems.add(
        Code::RegisterError,
        place.clone(),
        say::found_misnamed(shape.name, bars_word(shape.name_bars)),
        say::do_rename(shape.name),
    );
    shape.misnamed(place)
}

/// Tells of a file whose name is nearly that of the workbook of registers: what it holds could be any of them.
fn misnamed_workbook(path: &Path, problems: &mut Problems) -> Doubt {
    let place = Place::file(shown(path));
    problems.add(
        Code::RegisterError,
        place.clone(),
        say::found_misnamed_workbook(),
        say::do_rename_workbook(),
    );
    Doubt {
        product_id: None,
        round: None,
        bars: Bars::Verdict,
        what: DoubtKind::MisnamedWorkbook,
        place,
    }
}

fn stranger(path: &Path, is_file: bool, problems: &mut Problems) {
    let names: Vec<&str> = shapes::ALL.iter().map(|shape| shape.name).collect();
    problems.add(
        Code::Suspicious,
        Place::file(shown(path)),
        say::found_no_register(if is_file { "file" } else { "folder" }),
        say::do_keep_elsewhere(names.join(", ")),
    );
}

fn name_of(path: &Path) -> String {
    let name = path.file_name().unwrap_or_default();
    text::plain(&name.to_string_lossy()).into_owned()
}

/// A register's path below the programme folder.
pub fn shown(path: &Path) -> String {
    let name = inbox::shown_name(path.file_name().unwrap_or_default());
    format!("registers/{name}")
}
