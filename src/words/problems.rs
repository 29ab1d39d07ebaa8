//! The words of problems: what was found, what to do, and where it stands.

use super::catalogue::Catalogue;
use super::messages::say;
use crate::model::letters::in_line;
use crate::model::place::Place;
use crate::model::problem::{Problem, Severity};
use crate::model::said::Item;

impl Catalogue {
    /// What was found, in words: one line, whatever is quoted in it.
    pub fn found(&self, problem: &Problem) -> String {
        in_line(&self.say(&problem.message)).into_owned()
    }

    /// What to do, in words, in one line but for a block to be pasted; empty where there is nothing to do.
    pub fn to_do(&self, problem: &Problem) -> String {
        let Some(hint) = &problem.hint else {
            return String::new();
        };
        let worded = self.say(hint);
        // A block to be pasted has lines of its own, and quotes what it names.
        match hint.text("block") {
            Some(_) => worded,
            None => in_line(&worded).into_owned(),
        }
    }

    /// How much a problem matters, as the report's margin has it.
    pub fn severity(&self, severity: Severity) -> String {
        self.say(&say::problem_severity(severity.word()))
    }

    /// Where something stands: "inbox/a.xlsx, sheet “Results”, cell C7".
    pub fn place(&self, place: &Place) -> String {
        let (sheet_is, sheet) = sheet(place);
        let (at, cell) = cell(place);
        self.say(&say::place(place.file.as_str(), sheet_is, sheet, at, cell))
    }

    /// The same below a file's name; empty where the whole file is meant: "sheet “Results”, cell C7".
    pub fn place_in_file(&self, place: &Place) -> String {
        let (sheet_is, sheet) = sheet(place);
        let (at, cell) = cell(place);
        if (sheet_is, at) == ("none", "none") {
            return String::new();
        }
        self.say(&say::place_in_file(sheet_is, sheet, at, cell))
    }

    /// Words from elsewhere in the quotation marks of the language, parted by commas.
    pub(super) fn items(&self, items: &[Item]) -> String {
        let worded: Vec<String> = items.iter().map(|item| self.item(item)).collect();
        worded.join(", ")
    }

    fn item(&self, item: &Item) -> String {
        let text = item.text.as_str();
        match &item.at {
            None => self.say(&say::item(text)),
            Some(at) => self.say(&say::item_at(text, self.plain(at))),
        }
    }
}

fn sheet(place: &Place) -> (&'static str, &str) {
    match &place.sheet {
        Some(name) => ("named", name),
        None => ("none", ""),
    }
}

/// What of a sheet is meant, and how a spreadsheet program names it.
fn cell(place: &Place) -> (&'static str, String) {
    match (place.row, place.column_letter()) {
        (Some(row), Some(letter)) => ("cell", format!("{letter}{row}")),
        (Some(row), None) => ("row", row.to_string()),
        (None, Some(letter)) => ("column", letter),
        (None, None) => ("none", String::new()),
    }
}
