//! The rules of the source, held by a test: who may import whom, how long a file may be, that each says what it is for.

use std::fs;
use std::path::{Path, PathBuf};

/// A part of the source and the parts that it may import.
const MAY_IMPORT: &[(&str, &[&str])] = &[
    ("model", &["model"]),
    ("files", &[]),
    ("guard", &[]),
    ("words", &["words", "model"]),
    ("config", &["config", "model", "files", "words"]),
    (
        "gather",
        &["gather", "model", "config", "files", "guard", "words"],
    ),
    ("measure", &["measure", "model", "config", "words"]),
    ("judge", &["judge", "model", "config", "words"]),
    (
        "render",
        &["render", "model", "config", "files", "guard", "words"],
    ),
    ("save", &["save", "model", "config", "files", "words"]),
    (
        "archive",
        &["archive", "model", "config", "files", "render", "words"],
    ),
    (
        "pipeline",
        &[
            "pipeline", "model", "config", "files", "guard", "words", "gather", "measure", "judge",
            "render", "save", "archive",
        ],
    ),
    (
        "cli",
        &[
            "cli", "model", "config", "files", "guard", "words", "pipeline",
        ],
    ),
    ("lib", &[]),
    ("main", &[]),
];

/// What `measure` and `judge` must not touch: they are pure functions of what they are given.
const IMPURE: &[&str] = &[
    "std::fs",
    "std::io",
    "std::env",
    "std::time",
    "std::net",
    "println!",
    "eprintln!",
    "SystemTime",
];

/// The longest that a file may be, tests and all.
const LONGEST: usize = 500;

#[test]
fn nobody_imports_what_comes_later() {
    let mut faults = Vec::new();
    for (path, text) in sources() {
        let part = part_of(&path);
        let (_, allowed) = MAY_IMPORT
            .iter()
            .find(|(name, _)| *name == part)
            .unwrap_or_else(|| {
                panic!(
                    "{} belongs to `{part}`, which this test does not know",
                    path.display()
                )
            });
        for (number, line) in text.lines().enumerate() {
            for imported in imports(line) {
                if !allowed.contains(&imported) {
                    faults.push(format!(
                        "{}:{}: {part} imports {imported}",
                        path.display(),
                        number + 1
                    ));
                }
            }
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
}

/// The map for engineers says the same of who may import whom.
#[test]
fn the_map_has_the_table_of_imports() {
    let map = fs::read_to_string(root().join("DEVELOPERS.md")).expect("can be read");
    let mut told: Vec<(String, Vec<String>)> = Vec::new();
    let table = map
        .lines()
        .skip_while(|line| *line != "| part | may import |")
        .skip(2);
    for line in table.take_while(|line| line.starts_with('|')) {
        let cells: Vec<&str> = line.split('|').map(str::trim).collect();
        let names = |cell: &str| -> Vec<String> {
            let names = cell.split(',').map(|name| name.trim().replace('`', ""));
            names.filter(|name| !name.is_empty()).collect()
        };
        for part in names(cells[1]) {
            let mut allowed = names(cells[2]);
            allowed.push(part.clone());
            allowed.sort();
            told.push((part, allowed));
        }
    }
    told.sort();
    let mut held: Vec<(String, Vec<String>)> = MAY_IMPORT
        .iter()
        .filter(|(part, _)| !["lib", "main"].contains(part))
        .map(|(part, allowed)| {
            let mut allowed: Vec<String> = allowed.iter().map(|name| (*name).to_owned()).collect();
            allowed.push((*part).to_owned());
            allowed.sort();
            allowed.dedup();
            ((*part).to_owned(), allowed)
        })
        .collect();
    held.sort();
    assert_eq!(told, held);
}

/// Charts and sentences are what facts are made of.
#[test]
fn charts_and_sentences_know_nothing_of_facts() {
    let below = |path: &Path, folder: &str| {
        let wanted: PathBuf = ["render", folder].iter().collect();
        path.starts_with(wanted)
    };
    let of_render: Vec<_> = sources()
        .into_iter()
        .filter(|(path, _)| below(path, "charts") || below(path, "words"))
        .collect();
    assert!(of_render.len() > 20, "{} files", of_render.len());
    for (path, text) in of_render {
        assert!(!text.contains("render::facts"), "{}", path.display());
    }
}

/// What leaves a trace on the disk; `files` has the means, and only `save` and `archive` use them.
const WRITING: &[&str] = &[
    "files::write",
    "files::create_",
    "files::rename",
    "files::remove_",
    "files::publish_",
    "files::sweep_",
    "files::set_aside",
    "files::{",
    "files::*",
    "use crate::files as",
    "fs::write",
    "fs::create_",
    "fs::rename",
    "fs::remove_",
    "fs::copy",
    "fs::hard_link",
    "fs::set_permissions",
    "File::create",
    "File::options",
    "OpenOptions",
    "tempfile",
];

#[test]
fn only_saving_and_archiving_write_files() {
    let writes = |text: &str| -> Vec<&str> {
        let code = code(text);
        let all = WRITING.iter();
        all.filter(|word| code.contains(**word)).copied().collect()
    };
    let (mut faults, mut writers) = (Vec::new(), Vec::new());
    for (path, text) in sources() {
        let found = writes(&text);
        match part_of(&path).as_str() {
            _ if found.is_empty() || is_test(&path) => {}
            "save" | "archive" => writers.push(path),
            "files" => {}
            _ => faults.push(format!("{}: {}", path.display(), found.join(", "))),
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
    assert!(writers.len() > 3, "the words are those in use: {writers:?}");
}

/// Whether a file is of a stage that measures or decides.
fn is_pure(path: &Path) -> bool {
    ["measure", "judge"].contains(&part_of(path).as_str())
}

/// Whether a file is the tests of its module.
fn is_test(path: &Path) -> bool {
    path.ends_with("tests.rs")
}

#[test]
fn judging_touches_nothing_outside() {
    let mut faults = Vec::new();
    for (path, text) in sources().into_iter().filter(|(path, _)| is_pure(path)) {
        for word in IMPURE.iter().filter(|word| code(&text).contains(**word)) {
            faults.push(format!("{}: {word}", path.display()));
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
}

/// What a reader reads is worded in the catalogues and in render: judging gives reasons and problems as data.
#[test]
fn judging_holds_no_sentence() {
    let mut faults = Vec::new();
    let judging = sources().into_iter().filter(|(path, _)| is_pure(path));
    // What labels say is read, not said.
    let read = ["languages.rs", "phrases.rs", "talk.rs", "terms.rs"];
    let is_said = |path: &Path| !read.iter().any(|name| path.ends_with(name));
    for (path, text) in judging.filter(|(path, _)| is_said(path)) {
        for (number, line) in code(&text).lines().enumerate() {
            let is_belief = ["expect(", "assert", "panic!"]
                .iter()
                .any(|word| line.contains(word));
            let longest = line
                .split('"')
                .skip(1)
                .step_by(2)
                .map(|literal| literal.split(' ').count())
                .max();
            if !is_belief && longest.unwrap_or(0) >= 4 {
                faults.push(format!(
                    "{}, line {} of its code: {}",
                    path.display(),
                    number + 1,
                    line.trim()
                ));
            }
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
}

/// Judging chooses messages of problems and gives them figures; it words none, and knows no language.
#[test]
fn judging_takes_nothing_of_the_words_but_their_messages() {
    let mut faults = Vec::new();
    for (path, text) in sources().into_iter().filter(|(path, _)| is_pure(path)) {
        let code = code(&text);
        let taken = code.lines().filter(|line| {
            line.contains("crate::words") && line.trim() != "use crate::words::say;"
        });
        faults.extend(taken.map(|line| format!("{}: {line}", path.display())));
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
}

/// Files that hold sentences which are for nobody who reads a document: what commands say of the archive, the outputs folder
/// and the lock, the data dictionary and the case, which are data, and what is said to those who write templates.
const NOT_FOR_READERS: &[&str] = &[
    "archive/verify/",
    "save/lock.rs",
    "save/out.rs",
    "save/tables/workbook.rs",
    "save/tables/columns.rs",
    "render/facts/case.rs",
    "save/tables/registers.rs",
    "save/tables/mod.rs",
    "render/overrun.rs",
    "render/engine.rs",
    "render/world.rs",
    "render/glyphs.rs",
    "render/documents.rs",
];

/// What a sentence may stand in: an error, or what we hold to be so.
const ERRORS: &[&str] = &[
    "bail!",
    "anyhow!",
    "ensure!",
    "context",
    "with_context",
    "expect",
    "panic!",
    "unreachable!",
    "assert!",
    "assert_eq!",
    "debug_assert!",
    "debug_assert_eq!",
];

/// What a reader reads is worded in the catalogues: render, save and archive choose a message and give it figures.
#[test]
fn no_sentence_for_readers_stands_in_the_source() {
    let mut faults = Vec::new();
    let speaking = sources().into_iter().filter(|(path, _)| {
        let shown = path.to_string_lossy().replace('\\', "/");
        ["render", "save", "archive"].contains(&part_of(path).as_str())
            && !NOT_FOR_READERS.iter().any(|one| shown.contains(one))
            && !shown.ends_with("/tests.rs")
    });
    for (path, text) in speaking {
        for (literal, within) in literals(&code(&text)) {
            let is_error = within.iter().any(|name| ERRORS.contains(&name.as_str()));
            if !is_error && is_sentence(&literal) {
                faults.push(format!("{}: {literal}", path.display()));
            }
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
}

/// Four words in a row, the last three in small letters.
fn is_sentence(literal: &str) -> bool {
    let words: Vec<&str> = literal.split(' ').collect();
    let is_small = |word: &&str| !word.is_empty() && word.chars().all(|c| c.is_ascii_lowercase());
    words.windows(4).any(|run| {
        run[0].ends_with(|c: char| c.is_ascii_lowercase())
            && run[1..3].iter().all(is_small)
            && run[3].starts_with(|c: char| c.is_ascii_lowercase())
    })
}

/// Every string literal, with the names of the calls and macros that it stands in, innermost first.
fn literals(code: &str) -> Vec<(String, Vec<String>)> {
    let mut found = Vec::new();
    let mut open: Vec<String> = Vec::new();
    let mut word = String::new();
    let mut letters = code.chars().peekable();
    while let Some(letter) = letters.next() {
        match letter {
            '"' => {
                let mut literal = String::new();
                while let Some(inner) = letters.next() {
                    match inner {
                        '"' => break,
                        '\\' => match letters.next() {
                            // A line that goes on in the next one.
                            Some('\n') => while letters.next_if(|c| c.is_whitespace()).is_some() {},
                            Some(escaped) => literal.push(escaped),
                            None => {}
                        },
                        other => literal.push(other),
                    }
                }
                found.push((literal, open.iter().rev().cloned().collect()));
                word.clear();
            }
            // A letter in quotes could be a quotation mark.
            '\'' if letters.peek() == Some(&'"') => {
                letters.next();
            }
            '\'' if letters.peek() == Some(&'\\') => {
                letters.next();
                letters.next();
            }
            '(' | '[' | '{' => open.push(std::mem::take(&mut word)),
            ')' | ']' | '}' => {
                open.pop();
                word.clear();
            }
            letter if letter.is_alphanumeric() || "_!".contains(letter) => word.push(letter),
            _ => word.clear(),
        }
    }
    found
}

#[test]
fn literals_are_found_with_what_they_stand_in() {
    let found = literals("fn f() { bail!(\"a {}\", g(\"b\")); let c = '\"'; x.expect(\"d\") }");
    let shown: Vec<(&str, &str)> = found
        .iter()
        .map(|(literal, within)| (literal.as_str(), within[0].as_str()))
        .collect();
    assert_eq!(shown, [("a {}", "bail!"), ("b", "g"), ("d", "expect")]);
    assert!(is_sentence("No package was found over it"));
    assert!(!is_sentence("a-b c"));
}

#[test]
fn every_file_says_what_it_is_for_and_stays_short() {
    let mut faults = Vec::new();
    for (path, text) in sources() {
        if !text.starts_with("//!") {
            faults.push(format!(
                "{}: does not open with what it is for",
                path.display()
            ));
        }
        let lines = text.lines().count();
        if lines > LONGEST {
            faults.push(format!("{}: {lines} lines", path.display()));
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
}

#[test]
fn the_code_map_of_the_developers_page_is_the_source() {
    let page = fs::read_to_string(root().join("DEVELOPERS.md")).expect("is there");
    for entry in fs::read_dir(root().join("src")).expect("can be listed") {
        let name = entry
            .expect("can be listed")
            .file_name()
            .to_string_lossy()
            .into_owned();
        assert!(
            page.contains(&format!("src/{name}")),
            "DEVELOPERS.md does not name src/{name}"
        );
    }
}

fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
}

/// Every source file below `src`, with its path below that folder.
fn sources() -> Vec<(PathBuf, String)> {
    let src = root().join("src");
    walkdir::WalkDir::new(&src)
        .sort_by_file_name()
        .into_iter()
        .map(|entry| entry.expect("can be listed").into_path())
        .filter(|path| path.extension().is_some_and(|end| end == "rs"))
        .map(|path| {
            let text = fs::read_to_string(&path).expect("is text");
            (path.strip_prefix(&src).expect("is below").to_owned(), text)
        })
        .collect()
}

/// The part that a file belongs to: its folder, or its name.
fn part_of(path: &Path) -> String {
    let first = path
        .components()
        .next()
        .expect("a path has parts")
        .as_os_str()
        .to_string_lossy();
    first.trim_end_matches(".rs").to_owned()
}

/// The parts named after `crate::` in a line.
fn imports(line: &str) -> Vec<&str> {
    let line = line.trim_start();
    if line.starts_with("//") {
        return Vec::new();
    }
    let after = line.split("crate::").skip(1);
    after
        .map(|rest| {
            rest.split(|c: char| !(c.is_alphanumeric() || c == '_'))
                .next()
                .unwrap_or_default()
        })
        .collect()
}

/// A file without its comments and tests.
fn code(text: &str) -> String {
    let body = text.split("#[cfg(test)]").next().unwrap_or_default();
    body.lines()
        .filter(|line| !line.trim_start().starts_with("//"))
        .collect::<Vec<_>>()
        .join("\n")
}
