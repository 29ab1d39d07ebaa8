//! What can be typed, with its help. The day and the environment enter what is made here and nowhere else.

use crate::model::guide;
use crate::pipeline::tables;
use anyhow::{Result, bail};
use chrono::{DateTime, Datelike, NaiveDate};
use clap::{Args, CommandFactory, Parser, Subcommand, ValueEnum};
use clap_complete::Shell;
use std::ffi::OsStr;
use std::path::{Path, PathBuf};

/// Turns a lab's gluten results into results sheets that can be published.
#[derive(Parser, Debug)]
#[command(version, long_version = tables::version(), about, long_about = None, max_term_width = 100, after_help = EXAMPLES, arg_required_else_help = true)]
pub struct Arguments {
    /// What to do.
    #[command(subcommand)]
    pub command: Command,
    /// Say nothing but the result and errors.
    #[arg(long, short, global = true)]
    pub quiet: bool,
    /// The programme folder, in place of naming it last.
    #[arg(short = 'C', global = true, value_name = "DIR")]
    pub at: Option<PathBuf>,
}

/// Whether a word is the name of a command.
pub fn is_command(word: &OsStr) -> bool {
    let commands = Arguments::command();
    word == "help" || commands.get_subcommands().any(|one| one.get_name() == word)
}

const EXAMPLES: &str = "\
Examples:
  galleyproof init my-programme --demo    a folder filled with invented data, to look around in
  galleyproof check my-programme          read and decide, print what would be published, write nothing
  galleyproof run my-programme            make every sheet, the summary and the data below my-programme/out

Exit status: 0 all well; 1 done, and there are errors a person must look at; 2 nothing done.";

/// What to do.
#[derive(Subcommand, Debug)]
pub enum Command {
    /// Start a programme folder.
    #[command(
        after_help = "Examples:\n  galleyproof init my-programme\n  galleyproof init my-programme --xlsx\n  galleyproof init demo --demo"
    )]
    Init {
        /// The folder to make; it must not exist yet, or be empty.
        dir: PathBuf,
        /// Fill it with invented data.
        #[arg(long)]
        demo: bool,
        /// Make the registers as one workbook, registers/registers.xlsx, a sheet a register.
        #[arg(long, conflicts_with = "demo")]
        xlsx: bool,
    },
    /// Say what the program is made of, and under which licence each part is.
    #[command(
        after_help = "Example:\n  galleyproof licenses --format json > galleyproof.cdx.json     the bill of materials (CycloneDX)"
    )]
    Licenses {
        /// A list for people, or the bill of materials for programs.
        #[arg(long, value_enum, default_value_t)]
        format: Format,
    },
    /// Say what each register is for, and what its columns hold.
    #[command(after_help = guide::page(98))]
    Registers,
    /// Read and decide, print, write nothing.
    #[command(
        after_help = "Examples:\n  galleyproof check my-programme\n  galleyproof check my-programme --explain 2031-03/results.xlsx\n  galleyproof check my-programme --format json > results.json"
    )]
    Check {
        #[command(flatten)]
        folder: Folder,
        /// How the result is printed.
        #[arg(long, value_enum, default_value_t)]
        format: Format,
        /// Show how a lab file was understood: its tables, columns and rows. FILE is its path below inbox/.
        #[arg(long, value_name = "FILE")]
        explain: Vec<String>,
        #[command(flatten)]
        date: Date,
    },
    /// Read, decide and make every document as a proof.
    #[command(
        after_help = "Examples:\n  galleyproof run my-programme\n  galleyproof run my-programme --only FH-031 --out look-at-this\n  galleyproof run my-programme --date 2031-05-06"
    )]
    Run {
        #[command(flatten)]
        folder: Folder,
        /// Where the outputs go, instead of out/ in the programme folder.
        #[arg(long, value_name = "DIR")]
        out: Option<PathBuf>,
        /// Make the documents of this product only; may be given several times.
        #[arg(long, value_name = "ID", value_parser = id)]
        only: Vec<String>,
        #[command(flatten)]
        date: Date,
        /// Make everything anew, even what has not changed.
        #[arg(long)]
        force: bool,
        /// Make each sheet in large print as well, beside the other: one column, 14 pt and more.
        #[arg(long)]
        large_print: bool,
        /// How the result is printed.
        #[arg(long, value_enum, default_value_t)]
        format: Format,
    },
    /// Run, and again whenever something lands or changes, until Ctrl-C.
    #[command(after_help = "Example:\n  galleyproof watch my-programme")]
    Watch {
        #[command(flatten)]
        folder: Folder,
        #[command(flatten)]
        date: Date,
    },
    /// Issue the sheets that may be published, archive what they rest on, and name what is held, with the day.
    #[command(
        after_help = "Examples:\n  galleyproof issue my-programme --date 2031-05-06\n  galleyproof issue my-programme --only FH-031 --reason \"The lab corrected its report\""
    )]
    Issue {
        #[command(flatten)]
        folder: Folder,
        #[command(flatten)]
        what: IssueArguments,
    },
    /// Print what a shell needs to complete commands, options and paths.
    #[command(
        after_help = "Examples:\n  galleyproof completions bash > ~/.local/share/bash-completion/completions/galleyproof\n  galleyproof completions fish > ~/.config/fish/completions/galleyproof.fish"
    )]
    Completions {
        /// Which shell.
        #[arg(value_enum)]
        shell: Shell,
    },
    /// Print the manual page of the program, or of one of its commands.
    #[command(
        after_help = "Examples:\n  galleyproof man > galleyproof.1\n  galleyproof man plan > galleyproof-plan.1"
    )]
    Man {
        /// A command; without one the page of the whole program.
        command: Option<String>,
    },
    /// Check that an archive, or what a sheet carries, is what it was: name what has changed, is missing or was added.
    #[command(
        after_help = "Examples:\n  galleyproof verify my-programme/archive/2031-05-06\n  galleyproof verify FH-031--1.pdf"
    )]
    Verify {
        /// A dated folder of archive/, or a sheet.
        bag: PathBuf,
        /// How the result is printed.
        #[arg(long, value_enum, default_value_t)]
        format: Format,
    },
    /// Tell what a reader of one archive must know of a later one.
    #[command(
        after_help = "Example:\n  galleyproof compare my-programme/archive/2031-05-06 my-programme/archive/2031-08-05"
    )]
    Compare {
        /// The archive that the reader knows.
        first: PathBuf,
        /// The later one.
        second: PathBuf,
        /// How the result is printed.
        #[arg(long, value_enum, default_value_t)]
        format: Format,
    },
    /// List what needs a person now, in the order in which it should be done.
    #[command(after_help = "Example:\n  galleyproof status my-programme --date 2031-05-06")]
    Status {
        #[command(flatten)]
        folder: Folder,
        #[command(flatten)]
        what: StatusArguments,
    },
    /// Show the reasoning for a product, step by step, as one would check it by hand.
    #[command(after_help = "Example:\n  galleyproof explain FH-031 my-programme")]
    Explain {
        /// The product's id.
        product: String,
        #[command(flatten)]
        folder: Folder,
        #[command(flatten)]
        date: Date,
    },
    /// Print the facts that a product's sheet is made of, as its template gets them.
    #[command(after_help = "Example:\n  galleyproof facts FH-031 my-programme > facts.json")]
    Facts {
        /// The product's id.
        product: String,
        #[command(flatten)]
        folder: Folder,
        #[command(flatten)]
        date: Date,
    },
    /// Enter what passed between the programme and a maker, and tell what follows.
    #[command(
        after_help = "Examples:\n  galleyproof log notice-sent FH-031 --due 2031-05-21 my-programme\n  galleyproof log reply FH-031 --date 2031-05-12 --statement \"We have withdrawn the lot.\""
    )]
    Log {
        /// notice-sent, reply, action or closed.
        kind: String,
        /// The product's id.
        product: String,
        #[command(flatten)]
        what: LogArguments,
        #[command(flatten)]
        folder: Folder,
    },
    /// Plan a round: what to buy and why, codes and labels, what it costs and what it can show.
    #[command(
        after_help = "Examples:\n  galleyproof plan my-programme\n  galleyproof plan --budget 2400 --enter my-programme\n  galleyproof plan --only FH-031 --packages 6 my-programme"
    )]
    Plan {
        #[command(flatten)]
        what: PlanArguments,
        #[command(flatten)]
        folder: Folder,
    },
    /// Make the contact sheet: each package with its lot, shop, custody and small pictures of its photographs.
    #[command(
        after_help = "Examples:\n  galleyproof contact-sheet my-programme\n  galleyproof contact-sheet --only FH-031 --round 2 my-programme"
    )]
    ContactSheet {
        /// Show packages of this product only; may be given several times.
        #[arg(long, value_name = "ID", value_parser = id)]
        only: Vec<String>,
        /// Show packages of this round only.
        #[arg(long, value_name = "ROUND")]
        round: Option<String>,
        #[command(flatten)]
        folder: Folder,
        #[command(flatten)]
        date: Date,
    },
    /// Make the form that goes to the lab with the packages: a PDF, a table, and an empty table for the results.
    #[command(
        after_help = "Examples:\n  galleyproof request\n  galleyproof request --round 2 my-programme"
    )]
    Request {
        /// The round of testing, whether it was sent or not; without one, every package that has not been sent yet.
        #[arg(long, value_name = "ROUND")]
        round: Option<String>,
        /// Put the packages of known content of this key on the form, in place of those of registers/blinds.csv.
        #[arg(long, value_name = "FILE")]
        blinds: Option<PathBuf>,
        #[command(flatten)]
        folder: Folder,
        #[command(flatten)]
        date: Date,
    },
}

/// What to issue.
#[derive(Args, Debug)]
pub struct IssueArguments {
    /// Issue the sheets of this product only; may be given several times.
    #[arg(long, value_name = "ID", value_parser = id)]
    pub only: Vec<String>,
    /// Day of issue [default: SOURCE_DATE_EPOCH, else today in UTC].
    #[arg(long, value_name = "YYYY-MM-DD", value_parser = day)]
    pub date: Option<NaiveDate>,
    /// Issue what is named with --only although it is held, or waits for the lab; wants --reason.
    #[arg(long)]
    pub early: bool,
    /// Why a sheet is issued again, or before its time; printed on it. For one product: ID=TEXT; may be given several times.
    #[arg(long, value_name = "TEXT")]
    pub reason: Vec<String>,
    /// Make and archive each sheet in large print as well, beside the other: one column, 14 pt and more.
    #[arg(long)]
    pub large_print: bool,
    /// How the result is printed.
    #[arg(long, value_enum, default_value_t)]
    pub format: Format,
}

/// How long is too long.
#[derive(Args, Debug)]
pub struct StatusArguments {
    /// The day to look from [default: SOURCE_DATE_EPOCH, else today in UTC].
    #[arg(long, value_name = "YYYY-MM-DD", value_parser = day)]
    pub date: Option<NaiveDate>,
    /// Days after which a package that was sent and not reported is listed [default: report_days of programme.toml].
    #[arg(long, value_name = "DAYS")]
    pub report_days: Option<u32>,
    /// Days after which a product that was tested is due again.
    #[arg(long, value_name = "DAYS", default_value_t = 365)]
    pub retest_days: u32,
    /// How the result is printed.
    #[arg(long, value_enum, default_value_t)]
    pub format: Format,
}

/// What to plan.
#[derive(Args, Debug)]
pub struct PlanArguments {
    /// The round's name [default: the number after the last one].
    #[arg(long, value_name = "R")]
    pub round: Option<String>,
    /// Plan this product only; may be given several times.
    #[arg(long, value_name = "ID", value_parser = id)]
    pub only: Vec<String>,
    /// Packages of each product [default: packages_per_product of programme.toml].
    #[arg(long, value_name = "N")]
    pub packages: Option<usize>,
    /// Extractions of each package [default: extractions_per_package of programme.toml].
    #[arg(long, value_name = "N")]
    pub extractions: Option<usize>,
    /// What the round may cost at most, in the currency of programme.toml.
    #[arg(long, value_name = "X")]
    pub budget: Option<f64>,
    /// Draw the codes from this number [default: from the registers' content].
    #[arg(long, value_name = "N")]
    pub seed: Option<u64>,
    /// Plan packages of known content as well, about one in twenty; their key goes to out/plan/blinds.csv, with --enter to registers/blinds.csv too.
    #[arg(long)]
    pub blinds: bool,
    /// How the labels stand on their sheet: columns x rows.
    #[arg(long, value_name = "CxR", default_value = "3x8")]
    pub labels: String,
    /// Add the packages to registers/packages.csv at once.
    #[arg(long)]
    pub enter: bool,
    /// Where the outputs go, instead of out/ in the programme folder: the plan is made in plan/ below it.
    #[arg(long, value_name = "DIR")]
    pub out: Option<PathBuf>,
    #[command(flatten)]
    pub date: Date,
}

/// What passed between the programme and a maker.
#[derive(Args, Debug)]
pub struct LogArguments {
    /// The round of testing; needed where the product has several.
    #[arg(long, value_name = "ROUND")]
    pub round: Option<String>,
    /// Day on which it happened [default: SOURCE_DATE_EPOCH, else today in UTC].
    #[arg(long, value_name = "YYYY-MM-DD", value_parser = day)]
    pub date: Option<NaiveDate>,
    /// With notice-sent: by when an answer is asked for.
    #[arg(long, value_name = "YYYY-MM-DD", value_parser = day)]
    pub due: Option<NaiveDate>,
    /// What may be printed: with reply the maker's own words, else the programme's.
    #[arg(long, value_name = "TEXT")]
    pub statement: Option<String>,
    /// What is for the programme alone: it is printed nowhere.
    #[arg(long, value_name = "TEXT")]
    pub note: Option<String>,
}

/// Which programme folder.
#[derive(Args, Debug)]
pub struct Folder {
    /// The programme folder [default: the current one].
    pub dir: Option<PathBuf>,
}

impl Folder {
    /// The folder that was named last, or with `-C`; else the current one.
    ///
    /// # Errors
    /// Where it was named twice.
    pub fn named(&self, at: Option<&Path>) -> Result<PathBuf> {
        match (&self.dir, at) {
            (Some(dir), Some(at)) => bail!(
                "two folders are named: {} and, with -C, {}. Name one",
                dir.display(),
                at.display()
            ),
            (Some(dir), None) => Ok(dir.clone()),
            (None, Some(at)) => Ok(at.to_owned()),
            (None, None) => Ok(PathBuf::from(".")),
        }
    }
}

/// The one date that is not in the data.
#[derive(Args, Debug)]
pub struct Date {
    /// The day to print as “made on”, and on which replies count as overdue [default: SOURCE_DATE_EPOCH, else none].
    #[arg(long, value_name = "YYYY-MM-DD", value_parser = day)]
    pub date: Option<NaiveDate>,
}

impl Date {
    /// The day that was typed, else that of SOURCE_DATE_EPOCH (UTC), else none.
    ///
    /// # Errors
    /// Where SOURCE_DATE_EPOCH is set to something that is no time.
    pub fn given(&self) -> Result<Option<NaiveDate>> {
        if self.date.is_some() {
            return Ok(self.date);
        }
        let Some(epoch) = std::env::var_os("SOURCE_DATE_EPOCH").filter(|value| !value.is_empty())
        else {
            return Ok(None);
        };
        let day = epoch
            .to_str()
            .and_then(|text| text.parse().ok())
            .and_then(|secs| DateTime::from_timestamp(secs, 0))
            .map(|time| time.date_naive());
        match day.filter(has_written_year) {
            Some(day) => Ok(Some(day)),
            None => bail!(
                "SOURCE_DATE_EPOCH is {epoch:?}: a number of seconds since 1970 is needed, of a day in the years 0001 to 9999"
            ),
        }
    }
}

impl Date {
    /// The same, and where nothing is given today (UTC) by the machine's clock.
    ///
    /// # Errors
    /// As [`Date::given`], and where the clock is set to a day that nobody writes.
    pub fn or_today(&self) -> Result<NaiveDate> {
        if let Some(day) = self.given()? {
            return Ok(day);
        }
        let now = DateTime::<chrono::Utc>::from(std::time::SystemTime::now()).date_naive();
        if !has_written_year(&now) {
            bail!(
                "the clock of this machine says {now}: set it right, or give the day with --date"
            );
        }
        Ok(now)
    }
}

fn day(text: &str) -> Result<NaiveDate, String> {
    let day = NaiveDate::parse_from_str(text, "%Y-%m-%d").ok();
    day.filter(has_written_year)
        .ok_or_else(|| "a day such as 2031-05-06 is needed, in the years 0001 to 9999".to_owned())
}

/// What a shell makes of a variable that is not set is no product.
fn id(text: &str) -> Result<String, String> {
    match text.trim().is_empty() {
        true => Err("the id of a product is needed".to_owned()),
        false => Ok(text.to_owned()),
    }
}

/// Whether the day is of a year that documents, registers and the names of archives can write: four digits, and not 0000.
fn has_written_year(day: &NaiveDate) -> bool {
    (1..=9999).contains(&day.year())
}

/// How a result is printed.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, ValueEnum)]
pub enum Format {
    /// For people.
    #[default]
    Text,
    /// One JSON object, for programs.
    Json,
}
