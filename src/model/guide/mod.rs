//! What each register is for and what its columns hold: said once, for the workbook of registers, the page that lies beside
//! them, and `galleyproof help registers`.

mod tables;

pub use tables::GUIDES;

use std::fmt::Write;

/// What a column holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// Words.
    Text,
    /// A code or a number that is a name: never to be taken for a figure, a day or a formula.
    Code,
    /// A day: 2031-05-06.
    Day,
    /// A figure.
    Figure,
    /// One of these words.
    Word(&'static [&'static str]),
}

/// A column of a register.
#[derive(Clone, Copy, Debug)]
pub struct Column {
    /// Its heading.
    pub name: &'static str,
    /// Whether every row must have it.
    pub is_needed: bool,
    /// What it holds.
    pub kind: Kind,
    /// What it is for, in a sentence or two.
    pub about: &'static str,
    /// What it holds in the example row; empty where nothing.
    pub example: &'static str,
}

/// A register that people keep.
#[derive(Clone, Copy, Debug)]
pub struct Guide {
    /// Its name: of its file, and of its sheet in a workbook of registers.
    pub name: &'static str,
    /// What a row of it is, in a sentence.
    pub about: &'static str,
    /// Whether a new programme folder begins with it.
    pub is_laid_out: bool,
    /// Its columns in order; the first is the one that marks an example row.
    pub columns: &'static [Column],
}

/// What stands in the first column of an example row: such a row is not read while all its words are the example's.
pub const EXAMPLE: &str = "(example)";

/// The page of explanations in registers/, which is no register.
pub const PAGE: &str = "READ ME FIRST.txt";

impl Guide {
    /// The first line of its file: the headings, parted by commas.
    pub fn headings(&self) -> String {
        let names: Vec<&str> = self.columns.iter().map(|column| column.name).collect();
        names.join(",")
    }
}

impl Column {
    /// What it is for, with the words that it knows and whether it must be there.
    pub fn explained(&self) -> String {
        let mut said = String::new();
        if self.is_needed {
            said.push_str("Must be filled in. ");
        }
        said.push_str(self.about);
        match self.kind {
            Kind::Word(words) => {
                write!(said, " One of: {}.", words.join(", ")).expect("a string takes all");
            }
            Kind::Day => said.push_str(" Written like 2031-05-06."),
            Kind::Text | Kind::Code | Kind::Figure => {}
        }
        said
    }
}

/// All of it as a page of text, no line wider than `width` letters.
pub fn page(width: usize) -> String {
    let mut text = String::new();
    let lede = format!(
        "The registers are the tables that you keep. Each is a file of its own name in registers/ (.csv, .xlsx, .xls or .ods), \
         or a sheet of that name in one workbook, registers/registers.xlsx; it must not be in both. The first row has the \
         headings; their order does not matter, and a column that need not be filled in may be left out. The row that \
         begins with {EXAMPLE} is an example, and is not read until something of your own stands in it."
    );
    push(&mut text, &lede, "", width);
    for guide in GUIDES {
        write!(text, "\n{}\n", guide.name.to_uppercase()).expect("a string takes all");
        push(&mut text, guide.about, "  ", width);
        for column in guide.columns {
            writeln!(text, "  {}", column.name).expect("a string takes all");
            push(&mut text, &column.explained(), "      ", width);
        }
    }
    text
}

/// Words in lines that begin with this.
fn push(text: &mut String, said: &str, indent: &str, width: usize) {
    let mut line = String::from(indent);
    for word in said.split(' ') {
        if line.trim() != "" && line.chars().count() + 1 + word.chars().count() > width {
            writeln!(text, "{line}").expect("a string takes all");
            line = String::from(indent);
        }
        if line.trim() != "" {
            line.push(' ');
        }
        line.push_str(word);
    }
    writeln!(text, "{line}").expect("a string takes all");
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_register_is_explained_whole_and_no_line_is_too_wide() {
        let page = page(100);
        for guide in GUIDES {
            assert_eq!(guide.columns[0].example, EXAMPLE, "{}", guide.name);
            for column in guide.columns {
                assert!(
                    page.contains(&format!("\n  {}\n", column.name)),
                    "{}",
                    column.name
                );
                assert!(column.about.ends_with(['.', ')']), "{}", column.name);
            }
        }
        for line in page.lines() {
            assert!(line.chars().count() <= 100, "{line}");
        }
    }

    #[test]
    fn an_example_holds_what_its_column_takes() {
        for column in GUIDES.iter().flat_map(|guide| guide.columns) {
            let example = column.example;
            let fits = match column.kind {
                Kind::Text | Kind::Code => true,
                Kind::Word(words) => words.contains(&example),
                Kind::Day => example.parse::<chrono::NaiveDate>().is_ok(),
                Kind::Figure => example.parse::<f64>().is_ok(),
            };
            assert!(example.is_empty() || fits, "{}: {example}", column.name);
        }
    }
}
