//! What is said of files that are wrong: in a dietitian's words, each with what to do, all built alike.

use super::folder::Folder;
use crate::make_binary::{BinarySheet, xls};
use crate::make_compound::compound;
use crate::workspace::Workspace;
use galleyproof::model::language::Language;
use galleyproof::model::problem::Code;
use galleyproof::words::{Catalogue, english};
use std::collections::BTreeSet;

/// Words of programmers and of libraries.
const FOREIGN: [&str; 22] = [
    "EOCD",
    "pars",
    "null",
    "index",
    "Zip",
    "XML event",
    "UTF-16",
    "byte",
    "invalid",
    "Invalid",
    "error:",
    "Err(",
    "None",
    "stream",
    "record",
    "buffer",
    "overflow",
    "panick",
    "unwrap",
    "os error",
    "encod",
    "deserial",
];

/// A folder in which nearly everything is wrong.
fn mess() -> Folder {
    let cut = &xls(&[BinarySheet::of(
        "Results",
        &[vec!["Sample", "Gluten (ppm)"]],
    )])[..700];
    Folder::new()
        .with(
            "registers/products.csv",
            b"product_id,name,claim,oats\noat-bar,Oat bar,gluten-free,often\noat-bar,=Oat,gluten-free,\nCON,Cake,gluten-free,\n,Pie,gluten-free,\n",
        )
        .with(
            "registers/packages.csv",
            b"package_code,product_id,bought_on\nTKW-101,oat-bar,03/04/2031\nTKW-102,oat-bar,\ntkw\xe2\x80\x93102,oat-bar,\nTKW 1,oat-bar,\nTKW-104,rye,\n0077,oat-bar,\n",
        )
        .with(
            "registers/corrections.csv",
            b"file,package_code,action,reason,by,on\nz.csv,TKW-101,exclude,spilt,E. Quill,2031-03-07\na.csv,TKW-999,drop,,E. Quill,soon\n",
        )
        .with(
            "inbox/a.csv",
            "Sample,Replicate,Gluten (ppm),Mean,Date\nTKW-101,1,12.4,30,soon\nTKW-101,2,quux,,\nTKW-101,3,\"1,234\",,\nTKW-101,4,1.2E+05,,\nTKW-101,5,-3,,\nTKW-101,6,#N/A,,\nTKW-101,7,5 mmol,,\nTKW-101,8,3 Mar,,\nTKW-102,1,12.4*,,\nTKW-109,1,6,,\n77,1,6,,\n3-Jan,1,6,,\n"
                .as_bytes(),
        )
        .with("inbox/b.csv", b"Gluten\nTKW-101,6\n")
        .with("inbox/c.csv", b"Sample,Mean (ppm)\nTKW-101,6\n")
        .with("inbox/d.csv", b"Sample,Gluten (mmol/l)\nTKW-101,6\n")
        .with("inbox/e.csv", b"Sample,Gluten\nTKW-101,6\n,7\n")
        .with("inbox/f.csv", b"Sample,Gluten (\xb5g/g)\nTKW-101,\"6\nTKW-102,7\n")
        .with("inbox/g.csv", b"Sample,Gluten (\xb5g/g)\nTKW-102,7\n")
        .with("inbox/h.xlsx", b"PK\x03\x04 and nothing")
        .with("inbox/i.xls", cut)
        .with("inbox/j.xls", &compound("EncryptedPackage", b""))
        .with("inbox/k.csv", b"%PDF-1.7")
        .with("inbox/l.csv", b"  \n")
        .with("inbox/m.csv", b"Pot,Quux\nTKW-101,6\nTKW-102,7\n")
        .with("inbox/n.csv", &b",".repeat(1 << 21))
        .with("inbox/o.docx", b"x")
        .with("inbox/p.csv", b"\x00\x01\x02\x03")
        .with("inbox/q.txt", b"<html><table><tr><td>6</td></tr></table></html>")
        .with("inbox/r.csv", b"Sample,Gluten (ppm)\n,7\n")
        .with("inbox/s.csv", b"Sample,Gluten (\xb5g/g)\nTKW-102,7\n")
}

#[test]
fn messages_are_built_alike_and_hold_no_foreign_words() {
    let read = mess().gather();
    let codes: BTreeSet<&str> = read
        .problems
        .sorted()
        .iter()
        .map(|one| one.code.word())
        .collect();
    assert!(codes.len() >= 13, "{codes:?}");
    let unreadable = "fhijklnpq".chars().map(|name| format!("inbox/{name}."));
    for name in unreadable {
        let told = read.problems.sorted();
        let told = told.iter().filter(|one| one.place.file.starts_with(&name));
        let codes: Vec<Code> = told.map(|one| one.code).collect();
        assert_eq!(codes, [Code::UnreadableFile], "{name}");
    }
    for problem in read.problems.sorted() {
        let (found, hint) = (english().found(problem), english().to_do(problem));
        let said = format!(
            "{} {}: {found} | {hint}",
            problem.code.word(),
            problem.place
        );
        let first = found.chars().next().expect("something is said");
        assert!(
            first.is_uppercase() || first == '“',
            "starts otherwise: {said}"
        );
        assert!(found.ends_with('.'), "ends otherwise: {said}");
        let is_layout = hint.contains("[[layout]]");
        assert!(
            hint.ends_with(['.', '…']) || is_layout || problem.code == Code::SameFile,
            "no advice: {said}"
        );
        for word in FOREIGN {
            assert!(!found.contains(word), "{word}: {said}");
        }
        assert!(!problem.place.file.is_empty(), "no place: {said}");
    }
}

/// Words that stand in nearly every English sentence, and in no German or Spanish one.
const ENGLISH: [&str; 15] = [
    "the", "of", "not", "is", "and", "or", "which", "used", "this", "that", "are", "for", "with",
    "it", "read",
];

#[test]
fn every_language_says_them_in_words_of_its_own() {
    let read = mess().gather();
    for language in [Language::German, Language::Spanish] {
        let catalogue = Catalogue::built_in(language);
        for problem in read.problems.sorted() {
            let said = format!("{} {}", catalogue.found(problem), catalogue.to_do(problem));
            // What stands in quotation marks is the file's.
            let own: Vec<&str> = said
                .split(['„', '«'])
                .enumerate()
                .map(|(at, part)| match at {
                    0 => part,
                    _ => part.split_once(['“', '»']).map_or("", |(_, own)| own),
                })
                .collect();
            let own = own.concat();
            let words: BTreeSet<&str> = own.split(|c: char| !c.is_alphanumeric()).collect();
            let english: Vec<&str> = ENGLISH
                .into_iter()
                .filter(|word| words.contains(word))
                .collect();
            assert!(english.is_empty(), "{english:?}: {said}");
        }
    }
}

#[test]
fn the_report_is_in_the_programmes_language_and_data_and_screen_in_english() {
    let workspace = Workspace::new();
    workspace.with(
        "programme.toml",
        "[programme]\nname = \"Tidewater Kitchen Works\"\nshort_name = \"TKW\"\nlanguage = \"de\"\n",
    );
    workspace.with(
        "inbox/a.csv",
        "Sample,Extraction,Gluten (ppm)\nA1,1,quux\nA1,2,6\n",
    );
    workspace.run(&["run"]).exits(1);
    let report = workspace.text("out/inbox-report.txt");
    let told = "Fehler   Zelle C2: „quux“ ist kein lesbares Ergebnis; es wird nicht verwendet.";
    assert!(report.contains(told), "{report}");
    assert!(report.contains("Fehler: 1, Warnungen: 0"), "{report}");
    let told = "“quux” is not a result that can be read; it is not used.";
    let results = workspace.results();
    let message = results["problems"]
        .as_array()
        .and_then(|all| all.iter().find(|one| one["code"] == "bad_value"))
        .map(|one| one["message"].clone());
    assert_eq!(message, Some(told.into()));
    let screen = workspace.run(&["check"]).stdout();
    assert!(screen.contains(told), "{screen}");
}
