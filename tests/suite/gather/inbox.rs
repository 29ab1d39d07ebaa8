//! The inbox: what a file is called, what it is opened by, and what is passed over.

use super::folder::Folder;

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
