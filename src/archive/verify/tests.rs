//! Bags as they were made, changed, and spelt otherwise.

use super::*;
use crate::archive::bag::Bag;
use chrono::NaiveDate;
use std::fs;
use std::path::PathBuf;

/// A sound bag in a folder of its own.
fn sample() -> (tempfile::TempDir, PathBuf) {
    let archive = tempfile::tempdir().expect("a folder");
    let mut bag = Bag::start(archive.path()).expect("starts");
    for path in [
        "out/sheets/FH-01--1.pdf",
        "inbox/märz.csv",
        "registers/products.csv",
    ] {
        bag.add(path, path.as_bytes()).expect("adds");
    }
    let day = NaiveDate::from_ymd_opt(2031, 4, 22).expect("a date");
    let bag = bag.publish(day, &[]).expect("publishes");
    (archive, bag)
}

fn faults(bag: &Path) -> Vec<(String, &'static str)> {
    let found = verify(bag).expect("verifies");
    found
        .faults
        .into_iter()
        .map(|fault| (fault.path, fault.kind.word()))
        .collect()
}

#[test]
fn each_change_is_named() {
    let (_archive, bag) = sample();
    assert_eq!(verify(&bag).expect("verifies").sound, 3);
    fs::write(bag.join("data/inbox/märz.csv"), "another").expect("writes");
    fs::remove_file(bag.join("data/registers/products.csv")).expect("removes");
    fs::write(bag.join("data/out/new.pdf"), "new").expect("writes");
    fs::write(bag.join("note.txt"), "hello").expect("writes");
    assert_eq!(
        faults(&bag),
        [
            ("data/inbox/märz.csv".to_owned(), "changed"),
            ("data/out/new.pdf".to_owned(), "added"),
            ("data/registers/products.csv".to_owned(), "missing"),
            ("note.txt".to_owned(), "added"),
        ]
    );
}

#[test]
fn a_change_of_the_tag_files_is_named_too() {
    let (_archive, bag) = sample();
    let manifest = fs::read_to_string(bag.join(MANIFEST)).expect("reads");
    let first = manifest.lines().next().expect("has lines").to_owned();
    fs::write(bag.join(MANIFEST), manifest.replace(&first, "")).expect("writes");
    fs::remove_file(bag.join("bag-info.txt")).expect("removes");
    let found = faults(&bag);
    assert!(
        found.contains(&(MANIFEST.to_owned(), "changed")),
        "{found:?}"
    );
    assert!(
        found.contains(&("data/inbox/märz.csv".to_owned(), "added")),
        "{found:?}"
    );
    assert!(
        found.contains(&("bag-info.txt".to_owned(), "missing")),
        "{found:?}"
    );
    fs::remove_file(bag.join(TAG_MANIFEST)).expect("removes");
    assert!(faults(&bag).contains(&(TAG_MANIFEST.to_owned(), "missing")));
}

#[test]
fn a_manifest_cannot_send_the_check_elsewhere() {
    let (archive, bag) = sample();
    fs::write(archive.path().join("secret"), "x").expect("writes");
    let sum = files::sha256_of(b"x");
    let mut manifest = fs::read_to_string(bag.join(MANIFEST)).expect("reads");
    manifest += &format!("{sum}  data/../../secret\n{sum}  /etc/hostname\nnonsense\n");
    fs::write(bag.join(MANIFEST), manifest).expect("writes");
    let unusable = faults(&bag)
        .into_iter()
        .filter(|(_, word)| *word == "unusable");
    assert_eq!(unusable.count(), 3);
}

#[cfg(unix)]
#[test]
fn a_link_in_the_place_of_a_file_is_found() {
    let (archive, bag) = sample();
    let file = bag.join("data/registers/products.csv");
    fs::rename(&file, archive.path().join("aside.csv")).expect("moves");
    std::os::unix::fs::symlink(archive.path().join("aside.csv"), &file).expect("links");
    assert_eq!(
        faults(&bag),
        [("data/registers/products.csv".to_owned(), "unusable")]
    );
}

/// Changes one of the bag's own texts and vouches for it anew, as whoever forges one would.
fn rewritten(bag: &Path, name: &str, change: &dyn Fn(&str) -> String) {
    let old = fs::read_to_string(bag.join(name)).expect("reads");
    let new = change(&old);
    assert_ne!(old, new, "{name}");
    fs::write(bag.join(name), &new).expect("writes");
    let tags = fs::read_to_string(bag.join(TAG_MANIFEST)).expect("reads");
    let sum = |text: &str| files::sha256_of(text.as_bytes());
    fs::write(bag.join(TAG_MANIFEST), tags.replace(&sum(&old), &sum(&new))).expect("writes");
}

/// A file, its change, and whether the bag is one by RFC 8493 and other checkers all the same.
type Rewriting<'a> = (&'a str, &'a dyn Fn(&str) -> String, bool);

#[test]
fn other_spellings_of_a_bag_are_read_and_what_other_checkers_refuse_is_refused() {
    let with_bom = |text: &str| format!("\u{feff}{text}");
    let cases: [Rewriting<'_>; 21] = [
        (MANIFEST, &|text| text.replace('\n', "\r\n"), true),
        (MANIFEST, &|text| text.replace('\n', "\r"), true),
        (MANIFEST, &with_bom, true),
        (MANIFEST, &|text| text.replace("  data/", "  ./data/"), true),
        (MANIFEST, &|text| text.replace("  data/", " *data/"), true),
        (MANIFEST, &|text| format!("\n{text}\n\n"), true),
        (MANIFEST, &|text| format!("g{}", &text[1..]), false),
        (DECLARATION, &with_bom, false),
        (DECLARATION, &|text| text.replace("UTF-8", "utf-8"), true),
        (DECLARATION, &|text| text.replace("1.0", "0.97"), true),
        // These four, and a name in another form of Unicode, some checkers take; README says that we do not.
        (DECLARATION, &|text| text.replace("1.0", "0.96"), false),
        (DECLARATION, &|text| text.replace("UTF-8", "UTF8"), false),
        (
            DECLARATION,
            &|text| text.replace("UTF-8", "ISO-8859-1"),
            false,
        ),
        (
            DECLARATION,
            &|text| text.lines().rev().map(|line| format!("{line}\n")).collect(),
            false,
        ),
        (MANIFEST, &|text| text.replace('ä', "a\u{308}"), false),
        (DECLARATION, &|text| text.replace("1.0", "2.0"), false),
        (DECLARATION, &|text| text.replace("1.0", "one"), false),
        (
            INFO,
            &|text| text.replace("Payload-Oxum: ", "Payload-Oxum: 1"),
            false,
        ),
        (
            INFO,
            &|text| text.replace("Payload-Oxum: ", "Payload-Oxum: many "),
            false,
        ),
        (INFO, &|text| format!("{text}Note: more\n  of it\n"), true),
        (INFO, &|text| format!("{text}no label\n"), false),
    ];
    for (at, (name, change, is_valid)) in cases.into_iter().enumerate() {
        let (_archive, bag) = sample();
        rewritten(&bag, name, change);
        let found = verify(&bag).expect("verifies");
        assert_eq!(
            found.faults.is_empty(),
            is_valid,
            "case {at} of {name}: {found:?}"
        );
    }
}

#[test]
fn a_bag_to_which_something_was_added_is_a_bag_and_not_as_it_was() {
    let (_archive, bag) = sample();
    fs::write(bag.join("note.txt"), "hello").expect("writes");
    let found = verify(&bag).expect("verifies");
    assert!(found.is_valid_bag() && found.faults.len() == 1, "{found:?}");
    fs::create_dir(bag.join("meta")).expect("makes");
    fs::write(bag.join("meta/note.txt"), "hello").expect("writes");
    let found = verify(&bag).expect("verifies");
    assert!(found.is_valid_bag() && found.faults.len() == 2, "{found:?}");
    // Without what vouches for its own texts they were added, and it is a bag all the same.
    let tags = fs::read(bag.join(TAG_MANIFEST)).expect("reads");
    fs::write(bag.join(TAG_MANIFEST), "").expect("writes");
    let found = verify(&bag).expect("verifies");
    assert!(found.is_valid_bag() && found.faults.len() == 5, "{found:?}");
    fs::remove_file(bag.join(TAG_MANIFEST)).expect("removes");
    let found = verify(&bag).expect("verifies");
    assert!(found.is_valid_bag(), "{found:?}");
    assert!(found.faults.iter().any(|fault| fault.path == TAG_MANIFEST));
    fs::write(bag.join(TAG_MANIFEST), tags).expect("writes");
    fs::write(bag.join("data/note.txt"), "hello").expect("writes");
    assert!(!verify(&bag).expect("verifies").is_valid_bag());
}

#[test]
fn what_is_missing_doubled_or_not_looked_at_is_told() {
    let (_archive, bag) = sample();
    let sum = "0".repeat(32);
    fs::write(bag.join("manifest-md5.txt"), format!("{sum}  data/a\n")).expect("writes");
    fs::remove_file(bag.join(DECLARATION)).expect("removes");
    let manifest = fs::read_to_string(bag.join(MANIFEST)).expect("reads");
    let first = manifest.lines().next().expect("has lines");
    rewritten(&bag, MANIFEST, &|text| format!("{text}{first}\n"));
    let found = faults(&bag);
    for fault in [
        (DECLARATION.to_owned(), "missing"),
        (MANIFEST.to_owned(), "unusable"),
        ("manifest-md5.txt".to_owned(), "unusable"),
    ] {
        assert!(found.contains(&fault), "{found:?}");
    }
    assert!(
        !found.iter().any(|(path, _)| path.starts_with("data/")),
        "{found:?}"
    );
}

#[cfg(unix)]
#[test]
fn neither_a_pipe_nor_a_device_in_the_place_of_a_manifest_is_opened() {
    for target in ["/dev/zero", "/dev/tty"] {
        let (_archive, bag) = sample();
        fs::remove_file(bag.join(MANIFEST)).expect("removes");
        std::os::unix::fs::symlink(target, bag.join(MANIFEST)).expect("links");
        let found = faults(&bag);
        assert!(
            found.contains(&(MANIFEST.to_owned(), "missing")),
            "{found:?}"
        );
    }
    // A pipe itself, which would hold whoever opens it for as long as nobody writes to it.
    for name in [
        MANIFEST,
        TAG_MANIFEST,
        DECLARATION,
        "data/registers/products.csv",
    ] {
        let (_archive, bag) = sample();
        fs::remove_file(bag.join(name)).expect("removes");
        let mut mkfifo = std::process::Command::new("mkfifo");
        let made = mkfifo.arg(bag.join(name)).status();
        assert!(made.expect("is there").success());
        let found = faults(&bag);
        assert!(found.iter().any(|(path, _)| path == name), "{found:?}");
    }
}

#[cfg(unix)]
#[test]
fn a_name_that_is_no_text_does_not_end_the_check() {
    use std::os::unix::ffi::OsStrExt;
    let (_archive, bag) = sample();
    let name = std::ffi::OsStr::from_bytes(b"data/\xff.txt");
    fs::write(bag.join(name), "x").expect("writes");
    assert_eq!(faults(&bag), [("data/\u{fffd}.txt".to_owned(), "added")]);
}

#[test]
fn a_bag_without_its_payload_or_with_files_to_fetch_is_none() {
    let (_archive, bag) = sample();
    fs::write(bag.join("fetch.txt"), "https://nobody.example/a 3 data/a\n").expect("writes");
    assert!(faults(&bag).contains(&("fetch.txt".to_owned(), "unusable")));
    assert!(!verify(&bag).expect("verifies").is_valid_bag());
    fs::remove_file(bag.join("fetch.txt")).expect("removes");
    fs::remove_dir_all(bag.join("data")).expect("removes");
    fs::write(bag.join(MANIFEST), "").expect("writes");
    assert!(faults(&bag).contains(&("data".to_owned(), "missing")));
    assert!(!verify(&bag).expect("verifies").is_valid_bag());
}

#[test]
fn a_folder_that_is_no_bag_is_refused() {
    let folder = tempfile::tempdir().expect("a folder");
    assert!(verify(folder.path()).is_err());
    assert!(verify(&folder.path().join("none")).is_err());
}
