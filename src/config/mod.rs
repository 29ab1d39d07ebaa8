//! What a run may rely on: `programme.toml`, checked as a whole, with every fault named at once.

mod check;
mod keys;
mod layout;
pub use layout::LAYOUT_COLUMNS;
mod planning;
mod plate;
mod settings;
mod unknown;
mod words;

use crate::files;
use crate::model::extraction::AssayKind;
use crate::model::followup::NoticeDays;
use crate::model::language::Language;
use crate::model::ppm::Ppm;
use crate::model::registers::Followup;
use crate::model::rule::Rule;
use crate::words::{Catalogue, say};
use anyhow::{Result, bail};
use chrono::NaiveDate;
pub use planning::Planning;
pub use plate::PlateRules;
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// The name of the settings file in a programme folder.
pub const FILE_NAME: &str = "programme.toml";

/// Bytes of the settings: a hundred times what they have ever been.
const LARGEST: usize = 256 * 1024;

/// The folders of a programme folder that are read, or kept for good.
const FOLDERS: [&str; 5] = ["inbox", "registers", "archive", "report-templates", "fonts"];

/// What `init` writes for the programme's name.
pub const PLACEHOLDER_NAME: &str = "Name of your programme";

/// What `init` writes for the lab's name.
pub const PLACEHOLDER_LAB: &str = "Name of your laboratory";

/// Everything that `programme.toml` settles, and where the folder is.
#[derive(Clone, Debug, PartialEq)]
pub struct Config {
    /// The programme folder.
    pub root: PathBuf,
    /// Who we are.
    pub programme: Programme,
    /// When lab and makers are reminded, and what goes with a sheet.
    pub publishing: Publishing,
    /// Which limit, and how results are held against it.
    pub rule: Rule,
    /// How each product is tested.
    pub testing: Testing,
    /// What is true of a lab file that does not say.
    pub lab: Lab,
    /// What a round costs.
    pub planning: Planning,
    /// How the curve of a plate is fitted again, and what is held to be a good plate.
    pub plate: PlateRules,
    /// What the tables for other programs look like.
    pub data: Data,
    /// Where to find the columns of files whose headings are not recognised.
    pub layouts: Vec<Layout>,
    /// The words of the documents, in the programme's language and with its own messages.
    pub words: Arc<Catalogue>,
}

/// Who we are.
#[derive(Clone, Debug, PartialEq)]
pub struct Programme {
    /// In full.
    pub name: String,
    /// Leads each sheet number: letters, digits, '-'.
    pub short_name: String,
    /// Where we can be written to.
    pub email: Option<String>,
    /// Postal address, lines as written.
    pub address: Option<String>,
    /// As printed.
    pub website: Option<String>,
    /// The address at which the folder `web` stands, for links and QR codes: `https://example.org/results`.
    pub site: Option<String>,
    /// Who signs.
    pub director: Option<String>,
    /// Whose word goes before ours.
    pub regulator: Option<String>,
    /// Where mistakes are reported: an address.
    pub corrections: Option<String>,
    /// Days that a maker has for an answer.
    pub reply_days: u32,
    /// Days from a notice to publication; never fewer than `reply_days`.
    pub publish_days: u32,
    /// Printed on each sheet: who pays, what we are not.
    pub statement: Option<String>,
    /// What is kept of each package.
    pub retained: Option<String>,
    /// What the pages are printed on.
    pub paper: Paper,
    /// What the documents are written in.
    pub language: Language,
}

impl Programme {
    /// What is kept of each package, as a sentence: “We keep the ground rest of each package, for six months.” What the
    /// settings have as a sentence of their own, with a capital letter first, stays as it is.
    pub fn kept(&self) -> Option<String> {
        Some(match self.retains()? {
            Retained::Sentence(sentence) => sentence,
            Retained::Thing(kept) => format!("We keep {kept}."),
        })
    }

    /// What the settings say of what is kept.
    pub fn retains(&self) -> Option<Retained<'_>> {
        let kept = self.retained.as_deref()?.trim().trim_end_matches('.');
        Some(if kept.starts_with(char::is_uppercase) {
            Retained::Sentence(format!("{kept}."))
        } else {
            Retained::Thing(kept)
        })
    }

    /// The number of a sheet, `TKW-FH-01-1`: short name, product, round.
    pub fn sheet_number(&self, product_id: &str, round: &str) -> String {
        format!("{}-{product_id}-{round}", self.short_name)
    }

    /// The days that a notice to a maker and its mail name; none where neither the register of follow-ups nor `made_on`
    /// dates it.
    pub fn notice_days(
        &self,
        followups: &[Followup],
        made_on: Option<NaiveDate>,
    ) -> Option<NoticeDays> {
        NoticeDays::of(followups, self.reply_days, self.publish_days, made_on)
    }
}

/// What is kept of each package, as the settings say it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Retained<'a> {
    /// A sentence of its own, with a capital letter first.
    Sentence(String),
    /// What a sentence is made about: “the ground rest of each package, for six months”.
    Thing(&'a str),
}

/// What the pages are printed on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Paper {
    /// 210 by 297 mm.
    A4,
    /// 215.9 by 279.4 mm.
    UsLetter,
}

impl Paper {
    /// Every paper with the word that names it in the settings.
    pub const ALL: &'static [(Paper, &'static str)] =
        &[(Paper::A4, "a4"), (Paper::UsLetter, "us-letter")];

    /// The name that both the settings and the typesetter use.
    pub fn word(self) -> &'static str {
        match self {
            Paper::A4 => "a4",
            Paper::UsLetter => "us-letter",
        }
    }
}

/// When lab and makers are reminded, and what goes with a sheet. The days of a notice stand in [`Programme`].
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Publishing {
    /// Days after which a package that was sent, and not reported, is asked after.
    pub report_days: u32,
    /// What of a lab's file goes with a sheet.
    pub attach: Attach,
}

/// What of a lab's file goes with a sheet.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Attach {
    /// The cells that are used for its product, each with its place.
    #[default]
    Excerpt,
    /// The file as it is.
    Whole,
    /// Nothing.
    None,
}

impl Attach {
    /// Every kind with the word that names it in the settings.
    pub const ALL: &'static [(Attach, &'static str)] = &[
        (Attach::Excerpt, "excerpt"),
        (Attach::Whole, "whole"),
        (Attach::None, "none"),
    ];
}

/// What the tables for other programs look like.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Data {
    /// How the cells of a CSV file stand.
    pub csv: CsvKind,
    /// Under which licence the programme gives its figures on: an SPDX identifier (`CC-BY-4.0`) or the address of its text. None
    /// where it has not said so: then nobody may conclude one.
    pub licence: Option<String>,
}

/// How the cells of a CSV file stand: spreadsheet programs open one as their country writes figures.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum CsvKind {
    /// Commas between cells, a point in figures.
    #[default]
    Comma,
    /// Semicolons between cells, a comma in figures.
    Semicolon,
}

impl CsvKind {
    /// Every kind with the word that names it in the settings.
    pub const ALL: &'static [(CsvKind, &'static str)] =
        &[(CsvKind::Comma, "comma"), (CsvKind::Semicolon, "semicolon")];

    /// What stands between two cells.
    pub fn delimiter(self) -> u8 {
        match self {
            CsvKind::Comma => b',',
            CsvKind::Semicolon => b';',
        }
    }

    /// What stands before the tenths of a figure.
    pub fn decimal_mark(self) -> &'static str {
        match self {
            CsvKind::Comma => ".",
            CsvKind::Semicolon => ",",
        }
    }
}

/// How each product is tested.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Testing {
    /// Packages bought of each product.
    pub packages_per_product: usize,
    /// Extractions of each package; at least 2.
    pub extractions_per_package: usize,
    /// Lowest quantity reported as a number, where the lab file states none.
    pub lloq: Ppm,
    /// Lowest quantity that the assay detects, likewise.
    pub lod: Ppm,
    /// Highest quantity reported as a number, likewise.
    pub uloq: Ppm,
    /// Within-lab relative standard deviation of one extraction, as a fraction.
    pub relative_repeatability: f64,
}

/// What is true of a lab file that does not say.
#[derive(Clone, Debug, PartialEq)]
pub struct Lab {
    /// The lab's name.
    pub name: String,
    /// Where it can be written to.
    pub email: Option<String>,
    /// Postal address, lines as written.
    pub address: Option<String>,
    /// The assay in words.
    pub assay: String,
    /// How it works.
    pub assay_kind: AssayKind,
}

/// Where to find the columns of files whose headings are not recognised.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Layout {
    /// Glob on the path below `inbox/`.
    pub files: String,
    /// The sheet; none means every sheet.
    pub sheet: Option<String>,
    /// Row of the headings as the spreadsheet shows it; none means the first row that holds them all.
    pub header_row: Option<u32>,
    /// What a column is taken for, and its heading as written; those that are not named are found as usual.
    pub columns: Vec<(LayoutColumn, String)>,
    /// Where the file says a thing once.
    pub cells: Vec<(LayoutCell, CellRef)>,
}

/// A cell of a sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct CellRef {
    /// From 1: 4 is `D`.
    pub column: u32,
    /// From 1, as the spreadsheet shows it.
    pub row: u32,
}

/// What a lone cell of a layout can say of the whole file.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum LayoutCell {
    /// The lab's report number.
    Report,
    /// The lab's name.
    Lab,
    /// The assay.
    Assay,
    /// The unit of the results.
    Unit,
    /// Lowest quantity reported as a number.
    Lloq,
    /// Lowest quantity that the assay detects.
    Lod,
    /// Highest quantity reported as a number.
    Uloq,
    /// Day of the test.
    TestedOn,
    /// Day on which the lab received the packages.
    ReceivedOn,
    /// Day on which the lab issued its report.
    IssuedOn,
}

/// What a layout can name.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum LayoutColumn {
    /// The package code.
    Sample,
    /// The number of the extraction.
    Extraction,
    /// The result of a row.
    Result,
    /// The result of extraction n in a wide table.
    ResultOf(u32),
    /// The unit.
    Unit,
    /// The lowest quantity reported as a number.
    Lloq,
    /// The lowest quantity that the assay detects.
    Lod,
    /// The measurement uncertainty of a result.
    Uncertainty,
    /// Day of the test.
    TestedOn,
    /// The lab's report number.
    Report,
    /// The assay.
    Assay,
    /// The dilution.
    Dilution,
    /// A remark.
    Remark,
}

impl Config {
    /// What is kept of each package, as a sentence in the language of the documents.
    pub fn kept(&self) -> Option<String> {
        Some(match self.programme.retains()? {
            Retained::Sentence(sentence) => sentence,
            Retained::Thing(kept) => self.words.say(&say::letter_kept(kept)),
        })
    }

    /// Reads and checks the settings of a programme folder.
    ///
    /// # Errors
    /// Where there is no `programme.toml`, where it is not TOML, or where anything in it cannot be used: then all faults
    /// are listed, each with its line.
    pub fn read(root: &Path) -> Result<Config> {
        if root.is_file() {
            bail!(
                "{} is a file: name the programme folder that it is in",
                root.display()
            );
        }
        for folder in FOLDERS {
            files::refuse_file_as_folder(&root.join(folder))?;
        }
        let path = root.join(FILE_NAME);
        files::refuse_link_out(root, &path)?;
        let Some(bytes) = files::read_if_there(&path)? else {
            bail!(
                "{} is not a programme folder: it has no {FILE_NAME}. Start one with `galleyproof init {}`",
                root.display(),
                root.display()
            );
        };
        let text = String::from_utf8(bytes).map_err(|error| {
            let sound = &error.as_bytes()[..error.utf8_error().valid_up_to()];
            let line = 1 + sound.iter().filter(|byte| **byte == b'\n').count();
            anyhow::anyhow!(
                "{}: line {line} is not UTF-8 text. Save the file as UTF-8 in a text editor",
                path.display()
            )
        })?;
        let config = Config::parse(&text, root)
            .map_err(|faults| anyhow::anyhow!("{}:\n  {}", path.display(), faults.join("\n  ")))?;
        words::with_own(config)
    }

    /// Checks the text of a `programme.toml`; all faults, or the settings.
    pub fn parse(text: &str, root: &Path) -> Result<Config, Vec<String>> {
        if text.len() > LARGEST {
            return Err(vec![format!(
                "it has {} bytes, and {LARGEST} are the most: something else was pasted into it",
                text.len()
            )]);
        }
        check::check(text, root)
    }

    /// The names that `init` wrote and nobody has replaced, each as its section and key; what is issued under them would
    /// be nobody's.
    pub fn placeholders(&self) -> Vec<&'static str> {
        let names = [
            ("[programme] name", &self.programme.name, PLACEHOLDER_NAME),
            ("[lab] name", &self.lab.name, PLACEHOLDER_LAB),
        ];
        names
            .into_iter()
            .filter(|(_, name, placeholder)| name.eq_ignore_ascii_case(placeholder))
            .map(|(key, ..)| key)
            .collect()
    }

    /// Refuses an outputs folder in one of the folders that are read, or kept for good: what is made would be read again.
    ///
    /// # Errors
    /// Where it is there.
    pub fn refuse_as_outputs(&self, out: &Path) -> Result<()> {
        // What is not there yet stands where the nearest folder above it does.
        let there = out.ancestors().find_map(|above| above.canonicalize().ok());
        for folder in FOLDERS {
            let kept = self.root.join(folder).canonicalize().ok();
            if let (Some(there), Some(kept)) = (&there, kept)
                && there.starts_with(kept)
            {
                bail!(
                    "nothing can be written to {}: {folder}/ is read, or kept as it is. Name another folder with --out",
                    out.display()
                );
            }
        }
        Ok(())
    }

    /// Where the lab's files arrive.
    pub fn inbox(&self) -> PathBuf {
        self.root.join("inbox")
    }

    /// Where people keep their registers.
    pub fn registers(&self) -> PathBuf {
        self.root.join("registers")
    }
}
