//! `init`: a new programme folder, empty or filled with the invented demo.

use crate::cli::Ending;
use crate::cli::demo;
use crate::cli::print;
use crate::files;
use crate::model::guide::{self, GUIDES, Guide};
use crate::pipeline;
use anyhow::{Result, bail};
use std::path::Path;

/// The settings as they start out, with their explanations in them.
const SETTINGS: &str = include_str!("blank/programme.toml");

/// The widest line of a page of explanations.
const PAGE_WIDTH: usize = 100;

/// What a new folder is filled with.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Filling {
    /// Registers as CSV files with their headings.
    Blank,
    /// Registers as one workbook.
    Workbook,
    /// Invented data.
    Demo,
}

/// Makes the folder.
///
/// # Errors
/// Where the folder is there already and holds something, or cannot be written.
pub fn init(dir: &Path, filling: Filling) -> Result<Ending> {
    if files::holds_something(dir)? {
        bail!(
            "{} is not empty. Choose a folder that does not exist yet; nothing was written",
            dir.display()
        );
    }
    match filling {
        Filling::Demo => pipeline::lay_out(dir, demo::FILES)?,
        Filling::Blank => lay_out(dir, blank_tables())?,
        Filling::Workbook => lay_out(
            dir,
            vec![(
                "registers/registers.xlsx".to_owned(),
                pipeline::blank_registers(),
            )],
        )?,
    }
    print::result(&next_steps(dir, filling))?;
    Ok(Ending::Well)
}

/// A folder with these registers, the settings and the pages of explanations.
fn lay_out(dir: &Path, registers: Vec<(String, Vec<u8>)>) -> Result<()> {
    let mut files = registers;
    let page = format!("registers/{}", guide::PAGE);
    files.push((page, guide::page(PAGE_WIDTH).into_bytes()));
    files.push(("programme.toml".to_owned(), SETTINGS.into()));
    let first = include_str!("blank/read-me-first.txt");
    files.push((guide::PAGE.to_owned(), first.into()));
    let files: Vec<(&str, &[u8])> = files
        .iter()
        .map(|(path, bytes)| (path.as_str(), bytes.as_slice()))
        .collect();
    pipeline::lay_out(dir, &files)
}

fn blank_tables() -> Vec<(String, Vec<u8>)> {
    let laid_out = GUIDES.iter().filter(|guide| guide.is_laid_out);
    let table = |guide: &Guide| {
        let path = format!("registers/{}.csv", guide.name);
        (path, format!("{}\n", guide.headings()).into_bytes())
    };
    laid_out.map(table).collect()
}

fn next_steps(dir: &Path, filling: Filling) -> String {
    let dir = dir.display();
    if filling == Filling::Demo {
        return format!(
            "{dir} holds a demo programme. Every name and figure in it is invented.\n\
             Make its documents with:  galleyproof run {dir}\n"
        );
    }
    let workbook = match filling {
        Filling::Workbook => "registers.xlsx",
        Filling::Blank | Filling::Demo => "",
    };
    format!(
        "{dir} is ready. Next:\n\
         \x20 1. Open {dir}/programme.toml and put in your programme's name and rule.\n\
         \x20 2. List your products in {dir}/registers/{workbook}, then plan what to buy:  galleyproof plan {dir}\n\
         \x20 3. Copy each file that the lab sends into {dir}/inbox/, as it is.\n\
         \x20 4. Look at what would be published:  galleyproof check {dir}\n\
         \x20 5. Make the documents:               galleyproof run {dir}\n"
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::config::Config;

    #[test]
    fn the_blank_settings_are_valid_once_names_are_there() {
        let config = Config::parse(SETTINGS, Path::new(".")).expect("they are valid");
        assert_eq!(config.placeholders(), ["[programme] name", "[lab] name"]);
    }

    #[test]
    fn a_folder_that_holds_something_is_left_alone() {
        let folder = tempfile::tempdir().expect("a folder");
        std::fs::write(folder.path().join("letter.txt"), "mine").expect("writes");
        assert!(init(folder.path(), Filling::Blank).is_err());
        assert_eq!(std::fs::read_dir(folder.path()).expect("lists").count(), 1);
    }
}
