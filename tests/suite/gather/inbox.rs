//! The inbox: what a file is called, what it is opened by, and what is passed over.

use super::folder::Folder;
use galleyproof::words::english;

const SHEET: &[u8] = b"Sample,Gluten ppm\nTKW-101,7\nTKW-101,8\n";

#[test]
fn a_decomposed_name_is_shown_composed_and_opened_as_it_is() {
    let folder = Folder::new().with("inbox/Ma\u{308}rz.csv", SHEET);
    let read = folder.gather();
    let file = &read.gathered.lab_files[0];
    assert_eq!(file.path, "inbox/M\u{e4}rz.csv");
    let root = folder.path("");
    assert_eq!(std::fs::read(file.real_path(&root)).expect("opens"), SHEET);
}

#[cfg(unix)]
#[test]
fn bytes_that_are_no_text_are_shown_as_figures() {
    use std::os::unix::ffi::OsStrExt;
    let folder = Folder::new();
    let name = std::ffi::OsStr::from_bytes(b"inbox/M\xe4rz.csv");
    let path = folder.path("").join(name);
    if std::fs::write(&path, SHEET).is_err() {
        // A file system that takes no such name holds none.
        return;
    }
    let read = folder.gather();
    let file = &read.gathered.lab_files[0];
    assert_eq!(file.path, "inbox/M%E4rz.csv");
    assert_eq!(file.real_path(&folder.path("")), path);
}

#[test]
fn two_names_that_differ_only_in_their_accents_are_two_files() {
    let other = b"Sample,Gluten ppm\nTKW-102,9\nTKW-102,10\n";
    let folder = Folder::new()
        .with("inbox/Ma\u{308}rz.csv", SHEET)
        .with("inbox/M\u{e4}rz.csv", other);
    let read = folder.gather();
    let paths: Vec<&str> = read
        .gathered
        .lab_files
        .iter()
        .map(|file| file.path.as_str())
        .collect();
    assert_eq!(paths, ["inbox/Ma%CC%88rz.csv", "inbox/M\u{e4}rz.csv"]);
    assert_eq!(
        read.readings(),
        ["TKW-101 1 7", "TKW-101 2 8", "TKW-102 1 9", "TKW-102 2 10"]
    );
    let opened: Vec<Vec<u8>> = read
        .gathered
        .lab_files
        .iter()
        .map(|file| std::fs::read(file.real_path(&folder.path(""))).expect("opens"))
        .collect();
    assert_eq!(opened, [SHEET, &other[..]]);
}

#[test]
fn every_empty_file_is_named_and_litter_is_not() {
    let read = Folder::new()
        .with("inbox/a.csv", b"")
        .with("inbox/b.xlsx", b"")
        .with("inbox/sub/c.ods", b"")
        .with("inbox/~$a.xlsx", b"x")
        .with("inbox/.~lock.a.ods#", b"x")
        .with("inbox/a.csv.part", b"x")
        .with("inbox/Thumbs.db", b"x")
        .with("inbox/a.pdf", b"x")
        .with("inbox/a.JPEG", b"x")
        .gather();
    assert_eq!(
        read.problems(),
        [
            "passed_over inbox/a.JPEG",
            "unreadable_file inbox/a.csv",
            "passed_over inbox/a.pdf",
            "unreadable_file inbox/b.xlsx",
            "unreadable_file inbox/sub/c.ods",
        ]
    );
    let others: Vec<&String> = read.gathered.others.keys().collect();
    assert_eq!(others, ["inbox/a.JPEG", "inbox/a.pdf"]);
}

#[cfg(unix)]
#[test]
fn a_link_is_called_what_it_is() {
    use std::os::unix::fs::symlink;
    let folder = Folder::new().with("inbox/sub/a.csv", SHEET);
    let pipe = folder.path("pipe");
    let made = std::process::Command::new("mkfifo").arg(&pipe).status();
    assert!(made.expect("is there").success());
    for (name, target) in [
        ("inbox/device.csv", "/dev/zero"),
        ("inbox/pipe.csv", "../pipe"),
        ("inbox/folder.csv", "sub"),
        ("inbox/nowhere.csv", "none"),
    ] {
        symlink(target, folder.path(name)).expect("links");
    }
    let read = folder.gather();
    let said: Vec<String> = read
        .problems
        .sorted()
        .into_iter()
        .map(|one| format!("{}: {}", one.place.file, english().found(one)))
        .collect();
    assert_eq!(
        said,
        [
            "inbox/device.csv: This is no ordinary file.",
            "inbox/folder.csv: This is a link to a folder, and such links are not followed.",
            "inbox/nowhere.csv: This is a link that leads nowhere, or in a circle.",
            "inbox/pipe.csv: This is no ordinary file.",
        ]
    );
    assert_eq!(read.readings(), ["TKW-101 1 7", "TKW-101 2 8"]);
}

#[test]
fn a_register_that_is_not_in_utf_8_is_read_and_named() {
    let products = b"product_id,name,claim\noat-bar,Har\xff\xfebour,gluten-free\n";
    let read = Folder::new()
        .with("registers/products.csv", products)
        .with("inbox/a.csv", SHEET)
        .gather();
    assert_eq!(read.problems(), ["encoding registers/products.csv"]);
    let problem = read.problems.sorted()[0];
    let to_do = english().to_do(problem);
    assert!(to_do.contains("save the register again as “CSV UTF-8”"));
    assert_eq!(
        read.gathered.registers.products["oat-bar"].name,
        "Har\u{ff}\u{fe}bour"
    );
}
