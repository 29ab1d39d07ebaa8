//! Letters that mean harm, drawn at random, in one field at a time of a programme that issues: every output is opened, with
//! what is packed and attached in it, and none holds a letter that commands its reader.

use super::diary;
use super::hostile_texts::{is_quiet, quoted};
use super::public;
use crate::workspace::{Workspace, tree};
use lopdf::{Document, Object};
use proptest::prelude::*;
use proptest::test_runner::{Config as Cases, RngAlgorithm, TestRng, TestRunner};
use std::fmt::Write;

const DAY: &str = "2031-05-06";

/// How many programmes, each with a text a field; GALLEYPROOF_PROGRAMMES asks for more.
const PROGRAMMES: u32 = 2;

/// Where a text may be put: a register or a lab file, a column, and whether the product is published all the same.
const FIELDS: [(&str, &str, bool); 31] = [
    ("products", "name", true),
    ("products", "brand", true),
    ("products", "maker", true),
    ("products", "maker_email", true),
    ("products", "maker_address", true),
    ("products", "category", true),
    ("products", "certifier", true),
    ("products", "ingredients", true),
    ("products", "matrix", true),
    ("products", "barcode", true),
    ("products", "net_content", true),
    ("packages", "lot", true),
    ("packages", "best_by", true),
    ("packages", "shop", true),
    ("packages", "price", true),
    ("packages", "custody", true),
    ("corrections", "reason", true),
    ("corrections", "by", true),
    ("followups", "statement", true),
    ("followups", "note", true),
    ("reports", "report", true),
    ("reports", "condition", true),
    ("reports", "uncertainty", true),
    ("lab file", "Laboratory", true),
    ("lab file", "Assay", true),
    ("lab file", "heading", true),
    ("lab file", "comment", true),
    ("lab file", "sample", true),
    ("lab file", "result", false),
    ("inbox", "lab file's name", true),
    ("inbox", "certificate's name", true),
];

/// Letters that command, end lines or turn the direction, and what they would be needed for; no NUL, with which a register is
/// no text, and is refused as a whole.
fn letters() -> impl Strategy<Value = String> {
    prop_oneof![
        4 => prop::char::ranges(vec!['\u{1}'..='\u{1f}', '\u{7f}'..='\u{9f}'].into()).prop_map(String::from),
        2 => prop::char::ranges(vec!['\u{200e}'..='\u{200f}', '\u{2028}'..='\u{202e}', '\u{2066}'..='\u{2069}'].into())
            .prop_map(String::from),
        1 => prop::sample::select(vec!["\u{feff}", "\u{fffe}", "\u{ffff}", "\u{61c}"]).prop_map(String::from),
        2 => prop::sample::select(vec!["\n", "\r\n", "\r", "\u{b}", "\u{c}", "\t"]).prop_map(String::from),
        2 => prop::sample::select(vec![
            "\r\nBcc: someone@elsewhere.example",
            "\r\nEND:VEVENT\r\nBEGIN:VALARM",
            "\u{1b}]0;title\u{7}",
            "\u{9b}31m",
            "<script>",
            "]]>",
            "\\",
            "&#27;",
            "_x001B_",
        ])
        .prop_map(String::from),
        3 => "[a-zA-Zéß,;:=@ ]".prop_map(String::from),
    ]
}

/// A text of some of them, which is not blank whatever is left out of it.
fn text() -> impl Strategy<Value = String> {
    prop::collection::vec(letters(), 1..10).prop_map(|parts| format!("Kelp{}loaf", parts.concat()))
}

/// A product a field: over the limit, with its maker told and heard, so that there is something to say of it everywhere.
struct Programme {
    workspace: Workspace,
}

impl Programme {
    fn new(texts: &[String]) -> Programme {
        let workspace = Workspace::new();
        let columns = FIELDS.iter().filter(|(of, ..)| *of == "products");
        let columns: Vec<&str> = columns.map(|(_, column, _)| *column).skip(1).collect();
        let mut products = format!("product_id,name,claim,{}\n", columns.join(","));
        let mut packages = "package_code,product_id,lot,best_by,shop,price,custody\n".to_owned();
        let mut corrections = "file,package_code,extraction,action,reason,by,on\n".to_owned();
        let mut followups = "product_id,on,kind,statement,note\n".to_owned();
        let mut reports = "file,report,condition,uncertainty\n".to_owned();
        for (at, ((register, column, _), text)) in FIELDS.iter().zip(texts).enumerate() {
            let id = id(at);
            let cell = |of: &str, name: &str, plain: &str| match (of, name) == (*register, *column)
            {
                true => quoted(text),
                false => quoted(plain),
            };
            let own = columns.iter().map(|column| {
                cell(
                    "products",
                    column,
                    PLAIN
                        .iter()
                        .find(|(of, _)| of == column)
                        .map_or("", |(_, plain)| plain),
                )
            });
            let own: Vec<String> = own.collect();
            let name = cell("products", "name", "Harbour Loaf");
            writeln!(products, "{id},{name},gluten-free,{}", own.join(",")).expect("takes all");
            for package in 1..=3 {
                let own = ["lot", "best_by", "shop", "price", "custody"]
                    .map(|name| cell("packages", name, ""));
                writeln!(packages, "{id}-{package},{id},{}", own.join(",")).expect("takes all");
            }
            let file = match column.starts_with("lab file") {
                true => format!("{id} {}", named(text)),
                false => id.clone(),
            };
            let shown = shown(&file);
            if *register == "corrections" {
                let (reason, by) = (
                    cell("corrections", "reason", "Spilt."),
                    cell("corrections", "by", "An Example"),
                );
                writeln!(
                    corrections,
                    "inbox/{file}.csv,{id}-3,3,exclude,{reason},{by},2031-03-02"
                )
                .expect("takes all");
            }
            if *register == "reports" {
                let own =
                    ["report", "condition", "uncertainty"].map(|name| cell("reports", name, ""));
                writeln!(reports, "inbox/{file}.csv,{}", own.join(",")).expect("takes all");
            }
            let (statement, note) = (
                cell("followups", "statement", "We looked."),
                cell("followups", "note", ""),
            );
            writeln!(
                followups,
                "{id},2031-03-05,notice-sent,,\n{id},2031-03-12,reply,{statement},{note}"
            )
            .expect("takes all");
            workspace.with(&format!("inbox/{file}.csv"), lab_file(&id, &cell));
            let certificate = match column.starts_with("certificate") {
                true => format!("{shown}{}", named(text)),
                false => shown,
            };
            workspace.with(
                &format!("inbox/{certificate}.pdf"),
                "%PDF-1.4 a certificate",
            );
        }
        // One that is within the limit, and one whose maker is still to be told.
        writeln!(
            products,
            "W1,Lantern Rolls,gluten-free,{0}\nH1,Marsh Buns,gluten-free,{0}",
            ",".repeat(columns.len() - 1)
        )
        .expect("takes all");
        for id in ["W1", "H1"] {
            for package in 1..=3 {
                writeln!(packages, "{id}-{package},{id},,,,,").expect("takes all");
            }
        }
        let plain = |_: &str, _: &str, plain: &str| quoted(plain);
        workspace.with("inbox/H1.csv", lab_file("H1", &plain));
        workspace.with("inbox/W1.csv", lab_file("W1", &plain).replace("27.", "7."));
        for (name, rows) in [
            ("products", products),
            ("packages", packages),
            ("corrections", corrections),
            ("followups", followups),
            ("reports", reports),
        ] {
            workspace.with(&format!("registers/{name}.csv"), rows);
        }
        Programme { workspace }
    }
}

/// What stands in the fields of products that mean no harm.
const PLAIN: [(&str, &str); 5] = [
    ("brand", "Saltmarsh"),
    ("maker", "Saltmarsh Bakehouse"),
    ("maker_email", "quality@saltmarsh.example"),
    ("maker_address", "1 Quay, Elsewhere"),
    ("ingredients", "Water, rice flour, salt."),
];

fn id(at: usize) -> String {
    format!("F{at:02}")
}

/// What of a text can stand in the name of a file.
fn named(text: &str) -> String {
    text.chars()
        .filter(|c| !matches!(c, '/' | '\0'))
        .take(40)
        .chain("\u{202e}\u{fffe}".chars())
        .collect()
}

/// A lab file's name without its ending, as the certificate beside it has it.
fn shown(file: &str) -> String {
    file.to_owned()
}

fn lab_file(id: &str, cell: &dyn Fn(&str, &str, &str) -> String) -> String {
    let of = |name: &str, plain: &str| cell("lab file", name, plain);
    let mut text = format!(
        "Laboratory,{}\nAssay,{}\n\nSample,Extraction,Gluten (ppm),Comment,{}\n",
        of("Laboratory", "Tideline Assays"),
        of("Assay", "R-type sandwich ELISA"),
        of("heading", "Bench"),
    );
    for package in 1..=3 {
        for extraction in 1..=3 {
            let comment = of("comment", "");
            writeln!(
                text,
                "{id}-{package},{extraction},27.{extraction},{comment},"
            )
            .expect("takes all");
        }
    }
    writeln!(text, "{},1,8.1,,", of("sample", "blank")).expect("takes all");
    let result = of("result", "");
    if result != quoted("") {
        writeln!(text, "{id}-1,4,{result},,").expect("takes all");
    }
    text
}

/// Files without a text.
const PICTURES: [&str; 6] = [".png", ".jpg", ".woff2", ".ttf", ".otf", ".ico"];

/// Opens an output, whatever is packed or attached in it, and looks for letters that command.
fn look_into(what: &str, path: &str, bytes: &[u8]) {
    let what = format!("{what}: {path}");
    is_quiet(&what, path);
    if bytes.starts_with(b"%PDF-") {
        return look_into_pdf(&what, bytes);
    }
    if bytes.starts_with(b"PK\x03\x04") {
        let parts = public::zipped(bytes);
        // A spreadsheet program takes _x001B_ for the letter, unless its first sign is written so itself.
        let by_number = parts.replace("_x005F_", "").replace("_x000D_", "\r");
        if let Some(at) = by_number.find("_x00") {
            let near: String = by_number[at..].chars().take(40).collect();
            panic!("{what}: a letter by its number: {near}");
        }
        return is_quiet(&what, &parts);
    }
    let Ok(said) = std::str::from_utf8(bytes) else {
        assert!(
            PICTURES.iter().any(|ending| path.ends_with(ending)),
            "{what} is no text"
        );
        return;
    };
    is_quiet(&what, said);
    if path.ends_with(".json") {
        let value: serde_json::Value = serde_json::from_str(said).expect("is JSON");
        let mut strings = Vec::new();
        strings_of(&value, &mut strings);
        strings.iter().for_each(|said| is_quiet(&what, said));
    }
    if path.ends_with(".eml") {
        look_into_mail(&what, said);
    }
    if path.ends_with(".ics") {
        diary::events(said);
    }
    if path.ends_with(".xml") {
        let mut reader = quick_xml::Reader::from_str(said);
        loop {
            match reader.read_event() {
                Ok(quick_xml::events::Event::Eof) => break,
                event => drop(event.unwrap_or_else(|error| panic!("{what}: {error}"))),
            }
        }
    }
}

fn strings_of(value: &serde_json::Value, found: &mut Vec<String>) {
    match value {
        serde_json::Value::String(text) => found.push(text.clone()),
        serde_json::Value::Array(items) => items.iter().for_each(|item| strings_of(item, found)),
        serde_json::Value::Object(fields) => fields.iter().for_each(|(key, field)| {
            found.push(key.clone());
            strings_of(field, found);
        }),
        _ => {}
    }
}

/// The heads of a draft, no more and no fewer.
const HEADS: [&str; 8] = [
    "From",
    "To",
    "Subject",
    "Date",
    "Message-ID",
    "X-Unsent",
    "MIME-Version",
    "Content-Type",
];

fn look_into_mail(what: &str, said: &str) {
    let (heads, body) = said.split_once("\r\n\r\n").expect("has a body");
    let heads = heads.replace("\r\n ", " ").replace("\r\n\t", " ");
    let names: Vec<&str> = heads
        .split("\r\n")
        .map(|line| line.split(':').next().unwrap_or_default())
        .collect();
    assert_eq!(names, HEADS, "{what}");
    // A letter that is written by its number is one all the same.
    for part in body
        .split("\r\n--")
        .filter(|part| part.contains("quoted-printable"))
    {
        let (_, text) = part.split_once("\r\n\r\n").expect("has a text");
        let text = text.replace("=\r\n", "");
        let mut bytes = Vec::new();
        let mut rest = text.as_bytes();
        while let Some((first, more)) = rest.split_first() {
            let digits = more
                .get(..2)
                .and_then(|digits| std::str::from_utf8(digits).ok());
            let code = digits.and_then(|digits| u8::from_str_radix(digits, 16).ok());
            match (first, code) {
                (b'=', Some(code)) => {
                    bytes.push(code);
                    rest = &more[2..];
                }
                _ => {
                    bytes.push(*first);
                    rest = more;
                }
            }
        }
        is_quiet(what, &String::from_utf8(bytes).expect("is UTF-8"));
    }
}

/// Titles, outlines, alternative texts and all other strings of a document, its data about itself, what its glyphs stand for,
/// and the files that it carries.
fn look_into_pdf(what: &str, bytes: &[u8]) {
    for said in super::hostile_texts::texts_of(bytes) {
        is_quiet(what, &said);
    }
    let pdf = Document::load_mem(bytes).expect("a PDF");
    for object in pdf.objects.values() {
        look_into_object(what, object);
    }
}

fn look_into_object(what: &str, object: &Object) {
    match object {
        Object::String(..) => {
            let said = lopdf::decode_text_string(object).unwrap_or_default();
            is_quiet(what, &said);
        }
        Object::Array(items) => items.iter().for_each(|item| look_into_object(what, item)),
        Object::Dictionary(fields) => {
            fields
                .iter()
                .for_each(|(_, field)| look_into_object(what, field));
        }
        Object::Stream(stream) => {
            let kind = stream.dict.get(b"Type").and_then(Object::as_name);
            if kind.is_ok_and(|kind| kind == b"EmbeddedFile") {
                let content = stream.decompressed_content();
                let content = content.unwrap_or_else(|_| stream.content.clone());
                let path = match content.starts_with(b"{") {
                    true => "attached.json",
                    false => "attached",
                };
                look_into(what, path, &content);
            }
        }
        _ => {}
    }
}

/// What people and labs wrote is kept as it was, and shown by nothing.
fn is_kept_as_it_was(path: &str) -> bool {
    let private = "/data/private/";
    [format!("{private}inbox/"), format!("{private}registers/")]
        .iter()
        .any(|folder| path.contains(folder.as_str()) && !path.ends_with("/issued.csv"))
}

fn holds(texts: Vec<String>) {
    let programme = Programme::new(&texts);
    let workspace = &programme.workspace;
    let told = "a text a field";
    let commands: [&[&str]; 5] = [
        &["check"],
        &["run", "--date", DAY],
        &["status", "--date", DAY],
        &["issue", "--date", DAY],
        &["plan", "--date", DAY],
    ];
    for command in commands {
        let run = workspace.run(command);
        is_quiet(&format!("{command:?} of {told}"), &run.stdout());
        is_quiet(&format!("{command:?} of {told}"), &run.stderr());
        assert!(
            !run.stderr().contains("fault of the program"),
            "{command:?} of {told}: {}",
            run.stderr()
        );
        assert!(
            !run.stderr().contains("could not be made"),
            "{command:?} of {told}: {}",
            run.stderr()
        );
    }
    let made = tree(&workspace.path(""));
    let outputs = made.iter().filter(|(path, _)| {
        (path.starts_with("out/") || path.starts_with("archive/") || path.ends_with("/issued.csv"))
            && !is_kept_as_it_was(path)
    });
    let mut opened = 0;
    for (path, bytes) in outputs {
        look_into(told, path, bytes);
        opened += 1;
    }
    assert!(opened > 5 * FIELDS.len(), "{opened} outputs were opened");
    let is_there = |path: String| {
        assert!(workspace.path(&path).is_file(), "{path} of {told}");
    };
    for (at, (register, column, is_published)) in FIELDS.iter().enumerate() {
        let id = id(at);
        let of = format!("{register}, {column}: {:?}", texts[at]);
        is_there(format!("out/sheets/{id}--1.pdf"));
        is_there(format!("out/notices/{id}--1.pdf"));
        is_there(format!("out/drafts/{id}--1.eml"));
        let bag = workspace.path(&format!("archive/{DAY}/data/public/sheets/{id}--1.pdf"));
        assert_eq!(bag.is_file(), *is_published, "{of}");
        if *is_published {
            is_there(format!("out/web/products/{id}--1.html"));
        }
    }
    for path in [
        "out/web/feed.xml",
        "out/data/results.xlsx",
        "registers/issued.csv",
        "out/newsletter/digest.eml",
    ] {
        is_there(path.to_owned());
    }
    assert!(made.iter().any(|(path, _)| path.ends_with(".ics")));
    assert!(
        workspace
            .path("archive")
            .join(DAY)
            .join("bagit.txt")
            .is_file()
    );
    workspace
        .run(&["verify", &format!("archive/{DAY}")])
        .exits(0);
}

#[test]
fn no_letter_of_any_field_commands_who_opens_an_output() {
    let asked = std::env::var("GALLEYPROOF_PROGRAMMES").ok();
    let cases = asked
        .and_then(|cases| cases.parse().ok())
        .unwrap_or(PROGRAMMES);
    let mut runner = TestRunner::new_with_rng(
        Cases {
            cases,
            max_shrink_iters: 0,
            failure_persistence: None,
            ..Cases::default()
        },
        TestRng::deterministic_rng(RngAlgorithm::ChaCha),
    );
    let texts = prop::collection::vec(text(), FIELDS.len());
    runner
        .run(&texts, |texts| {
            holds(texts);
            Ok(())
        })
        .unwrap_or_else(|error| panic!("{error}"));
}
