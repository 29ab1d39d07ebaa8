//! The catalogues: whole in every language, refused with their line where they are faulty, and printed for a reader.

/// Letters, forms and plans.
mod letters;
/// Label, method, figures' sources and the newsletter, in each language.
mod texts;

use chrono::NaiveDate;
use galleyproof::model::language::Language;
use galleyproof::model::place::Place;
use galleyproof::words::{
    Catalogue, Item, Kind, Message, Said, Value, WordFault, english, messages, messages_in,
};
use std::collections::BTreeSet;
use std::fmt::Write;
use std::path::PathBuf;

#[test]
fn every_language_has_every_message() {
    for (language, tag) in Language::ALL {
        let catalogue = Catalogue::with(*language, &[]);
        let faults = catalogue.err().unwrap_or_default();
        let told: Vec<String> = faults.iter().map(WordFault::to_string).collect();
        assert!(told.is_empty(), "{tag}: {}", told.join("\n"));
    }
}

#[test]
fn no_message_stands_in_the_table_twice() {
    let ids: BTreeSet<&str> = messages().map(|message| message.id).collect();
    assert_eq!(ids.len(), messages().count());
}

#[test]
fn dates_read_as_one_would_say_them_and_no_line_breaks_in_one() {
    let day = |y, m, d| NaiveDate::from_ymd_opt(y, m, d).expect("a date");
    assert_eq!(english().day(day(2031, 5, 6)), "6\u{a0}May\u{a0}2031");
    let days = |first, last| english().days(first, last).replace('\u{a0}', " ");
    let (early, late) = (day(2031, 3, 28), day(2031, 12, 30));
    assert_eq!(days(day(2031, 3, 4), early), "4 to 28 March 2031");
    assert_eq!(days(early, day(2031, 4, 2)), "28 March to 2 April 2031");
    let over_the_year = "30 December 2031 to 2 January 2032";
    assert_eq!(days(late, day(2032, 1, 2)), over_the_year);
}

#[test]
fn a_programme_replaces_single_messages() {
    let own = "list_of_two = { $first } & { $last }\n";
    let catalogue =
        Catalogue::with(Language::English, &[("words/en/common.ftl", own)]).expect("is sound");
    assert_eq!(catalogue.list(&["rice", "salt"]), "rice & salt");
    assert_eq!(
        catalogue.list(&["rice", "salt", "oil"]),
        "rice, salt and oil"
    );
}

#[test]
fn a_faulty_file_is_refused_at_its_line() {
    let refused = |own: &str| -> Vec<String> {
        let own = [("words/en/common.ftl", own)];
        let faults = Catalogue::with(Language::English, &own)
            .err()
            .unwrap_or_default();
        faults.iter().map(WordFault::to_string).collect()
    };
    let cases = [
        (
            "# mine\nlist_of_too = { $first }\n",
            "line 2: there is no message “list_of_too”; the nearest is “list_of_two”",
        ),
        (
            "list_of_two = { $frst } and { $last }\n",
            "line 1: the message “list_of_two” is not given “$frst”; it is given $first, $last",
        ),
        (
            "\n\nday = { $day",
            "line 3: the catalogue cannot be read here",
        ),
        ("list_of_two = a\nlist_of_two = b\n", "twice"),
        (
            "list_of_two = { NUMBER($first) }\n",
            "functions and terms are not used here",
        ),
        (
            "list_of_two = { list_of_more }\n",
            "is not given its “$others”",
        ),
        (
            "day = { $month ->\n    [summer] June\n   *[other] May\n}\n",
            "“$month” is never “summer”",
        ),
    ];
    for (own, wanted) in cases {
        let told = refused(own).join("\n");
        assert!(told.contains(wanted), "{own:?} gave {told:?}");
    }
    assert!(refused("list_of_two = { $first } or { $last }\n").is_empty());
}

/// Every message in every state, in a file a language that a person can read through in an hour. Where wording has changed,
/// `GALLEYPROOF_WRITE_WORDS=1 cargo test words` writes the files anew, and the change shows in the diff.
#[test]
fn every_message_is_printed_for_a_reader() {
    let write = std::env::var_os("GALLEYPROOF_WRITE_WORDS").is_some();
    for (language, tag) in Language::ALL {
        let printed = printed(&Catalogue::built_in(*language));
        let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join(format!("tests/words/{tag}.txt"));
        if write {
            std::fs::write(&path, &printed).expect("can be written");
        }
        let kept = std::fs::read_to_string(&path).unwrap_or_default();
        let differs = kept
            .lines()
            .zip(printed.lines())
            .find(|(kept, now)| kept != now);
        assert!(
            kept == printed,
            "tests/words/{tag}.txt is not what the catalogue says now ({differs:?}): read the change, then write it anew"
        );
    }
}

fn printed(catalogue: &Catalogue) -> String {
    let mut out = String::new();
    let mut group = "";
    for message in messages_in(catalogue.language()) {
        if message.group != group {
            group = message.group;
            writeln!(out, "==== {group} ====\n").expect("a string takes all");
        }
        writeln!(out, "{}", message.id).expect("a string takes all");
        for worded in states(catalogue, message) {
            writeln!(out, "    {}", worded.replace('\n', "\n    ")).expect("a string takes all");
        }
        out.push('\n');
    }
    out
}

/// A message in every state: each number that a plural may treat apart, each word that it chooses by.
fn states(catalogue: &Catalogue, message: &Message) -> Vec<String> {
    const MOST: usize = 5_000;
    let mut given: Vec<Vec<(&'static str, Value)>> = vec![Vec::new()];
    for (name, kind) in message.given {
        let values: Vec<Value> = match kind {
            Kind::Text => vec![Value::Text(sample(name))],
            Kind::Figure => vec![Value::Figure("12.4".to_owned())],
            Kind::Place => vec![Value::Place(Box::new(place()))],
            Kind::Items => vec![Value::Items(vec![
                Item::in_column("‹first›", "B".to_owned()),
                Item::at("‹second›", place()),
                Item::new("‹third›"),
            ])],
            Kind::Count if *name == "month" => (1..=12).map(Value::Count).collect(),
            Kind::Count if *name == "day" => vec![Value::Count(7)],
            Kind::Count => [0, 1, 2, 3].map(Value::Count).to_vec(),
            Kind::Choice(words) => words
                .iter()
                .map(|word| Value::Text((*word).to_owned()))
                .collect(),
        };
        given = given
            .iter()
            .flat_map(|before| {
                values.iter().map(|value| {
                    let mut with = before.clone();
                    with.push((*name, value.clone()));
                    with
                })
            })
            .collect();
        assert!(given.len() <= MOST, "{}: too many states", message.id);
    }
    let mut seen = BTreeSet::new();
    given
        .into_iter()
        .map(|values| {
            catalogue.say(&Said {
                id: message.id,
                values,
            })
        })
        .filter(|worded| seen.insert(worded.clone()))
        .collect()
}

fn place() -> Place {
    Place {
        file: "inbox/a.xlsx".to_owned(),
        sheet: Some("Gluten".to_owned()),
        row: Some(7),
        column: Some(3),
    }
}

/// What stands for words from elsewhere in the printed file.
fn sample(name: &str) -> String {
    match name {
        "limit" => "20\u{a0}ppm".to_owned(),
        "year" => "2031".to_owned(),
        "package" => "QX-937".to_owned(),
        other => format!("‹{}›", other.replace('_', " ")),
    }
}

#[test]
fn a_programmes_own_words_are_read_and_a_mistake_in_them_is_told_at_its_line() {
    use crate::workspace::Workspace;
    let workspace = Workspace::demo();
    workspace.with(
        "report-templates/words/en/mine.ftl",
        "list_of_two = { $first } plus { $last }\n",
    );
    workspace.run(&["check", "."]).exits(1);
    workspace.with(
        "report-templates/words/en/mine.ftl",
        "\nlist_of_tow = { $first }\n",
    );
    let run = workspace.run(&["check", "."]);
    run.exits(2);
    let told = "report-templates/words/en/mine.ftl, line 2: there is no message “list_of_tow”; the nearest is “list_of_two”";
    assert!(run.stderr().contains(told), "{}", run.stderr());
}
