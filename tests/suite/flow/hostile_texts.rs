//! Texts that mean harm, in every field and name that there is: none of them commands what shows it, and each is either
//! printed or refused in words.

use crate::flow::{OVER, WITHIN};
use crate::workspace::{Workspace, tree};
use std::fs;

const DAY: &str = "2031-05-06";

/// What commands a terminal, turns the direction of what follows, or stands for nothing.
pub const HOSTILE: [&str; 6] = [
    "\u{1b}[31mred\u{1b}]0;title\u{7}",
    "\u{9b}31m\u{90}q\u{9c}\u{85}",
    "a\u{202e}dna\u{202c}\u{2066}b\u{2069}",
    "x\u{0}\u{8}\u{c}\u{7f}\u{b}y",
    "\u{feff}\u{fffe}\u{ffff}z",
    "k\r\nBcc: someone@elsewhere.example\r\n\r\nX",
];

const PROGRAMME: &str = "[programme]\nname = \"Tidewater Kitchen Works\"\nshort_name = \"TKW\"\n";

/// Whether a letter may stand in an output as it is.
fn commands(letter: char) -> bool {
    match letter {
        '\n' | '\r' | '\t' => false,
        '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}' | '\u{fffe}' | '\u{ffff}' => true,
        letter => letter.is_control(),
    }
}

pub fn is_quiet(what: &str, text: &str) {
    if let Some(at) = text.find(commands) {
        let from = text[..at]
            .char_indices()
            .rev()
            .nth(40)
            .map_or(0, |(at, _)| at);
        let said: String = text[from..].chars().take(80).collect();
        panic!("{what}: {said:?}");
    }
}

pub fn quoted(text: &str) -> String {
    format!("\"{}\"", text.replace('"', "\"\""))
}

/// A programme with this text in each field of each register, in its settings, in a lab file and in that one's name.
pub fn programme(text: &str) -> Workspace {
    let workspace = Workspace::new();
    let cell = quoted(text);
    let settings: serde_json::Value = text.into();
    workspace.with(
        "programme.toml",
        format!(
            "[programme]\nname = \"Tidewater Kitchen Works\"\nshort_name = \"TKW\"\naddress = {settings}\ndirector = {settings}\nstatement = {settings}\nretained = {settings}\n[lab]\nname = {settings}\nassay = {settings}\n"
        )
        // JSON writes some letters as they are that TOML does not take.
        .replace('\u{7f}', "\\u007f"),
    );
    let columns = [
        "brand",
        "maker",
        "maker_email",
        "maker_address",
        "category",
        "certifier",
        "ingredients",
        "matrix",
        "barcode",
        "net_content",
    ];
    workspace.with(
        "registers/products.csv",
        format!(
            "product_id,name,claim,{}\nP1,{cell},gluten-free{}\nP2,{cell},{cell}{}\n",
            columns.join(","),
            format!(",{cell}").repeat(columns.len()),
            format!(",{cell}").repeat(columns.len()),
        ),
    );
    let packages =
        ["A1", "A2", "A3"].map(|code| format!("{code},P1,{cell},{cell},{cell},{cell}\n"));
    workspace.with(
        "registers/packages.csv",
        format!(
            "package_code,product_id,lot,best_by,shop,price\n{}{cell},P2,,,,\n",
            packages.concat()
        ),
    );
    workspace.with(
        "registers/corrections.csv",
        format!("file,package_code,extraction,action,reason,by,on\ninbox/a.csv,A1,1,exclude,{cell},{cell},2031-03-09\n{cell},A1,,exclude,x,y,2031-03-09\n"),
    );
    workspace.with(
        "registers/followups.csv",
        format!("product_id,on,kind,statement,note\nP1,2031-03-01,notice-sent,,{cell}\nP1,2031-03-02,reply,{cell},{cell}\n"),
    );
    workspace.with(
        "registers/reports.csv",
        format!("file,report,condition,uncertainty\ninbox/a.csv,{cell},{cell},{cell}\n"),
    );
    let results = WITHIN.replace('\n', &format!(",{cell}\n"));
    workspace.with(
        "inbox/a.csv",
        format!("{cell}\n\n{results}{cell},1,{cell},\n"),
    );
    let name: String = text.chars().filter(|c| !matches!(c, '\0' | '/')).collect();
    // A system that has no such names has none to show.
    let _ = fs::write(
        workspace.path(&format!("inbox/{name}.csv")),
        format!("{OVER}{cell},1,{cell}\n"),
    );
    let _ = fs::write(workspace.path(&format!("registers/{name}.csv")), "a\n");
    workspace
}

/// Every text of a PDF's own: its data about itself, and the letters that its glyphs stand for.
pub fn texts_of(pdf: &[u8]) -> Vec<String> {
    let document = lopdf::Document::load_mem(pdf).expect("a PDF");
    let mut texts = Vec::new();
    for object in document.objects.values() {
        match object {
            lopdf::Object::Stream(stream) => {
                let content = stream.decompressed_content().unwrap_or_default();
                let Ok(text) = String::from_utf8(content) else {
                    continue;
                };
                if text.starts_with("<?xpacket") {
                    texts.push(text);
                } else if text.contains("begincmap") {
                    // <0003> <202E>
                    let codes = text.split(['<', '>']).filter_map(|hex| {
                        let code = u32::from_str_radix(hex, 16)
                            .ok()
                            .filter(|_| hex.len() == 4)?;
                        // The bounds of a range of codes stand between the same brackets.
                        char::from_u32(code)
                            .filter(|letter| ('\u{7f}'..'\u{fffe}').contains(letter))
                    });
                    texts.push(codes.collect());
                }
            }
            lopdf::Object::Dictionary(fields) => {
                for key in [
                    &b"Title"[..],
                    b"Author",
                    b"Subject",
                    b"Keywords",
                    b"Alt",
                    b"Desc",
                ] {
                    let found = fields
                        .get(key)
                        .ok()
                        .and_then(|text| lopdf::decode_text_string(text).ok());
                    texts.extend(found);
                }
            }
            _ => {}
        }
    }
    texts
}

#[test]
fn no_output_holds_what_commands_its_reader() {
    for text in HOSTILE {
        let workspace = programme(text);
        if text.contains(commands) {
            let run = workspace.run(&["check"]);
            run.exits(2);
            is_quiet(&format!("settings of {text:?}"), &run.stderr());
            assert!(
                run.stderr().contains("it holds a control character"),
                "{}",
                run.stderr()
            );
            workspace.with("programme.toml", PROGRAMME);
        }
        let commands: [&[&str]; 8] = [
            &["check"],
            &["run", "--date", DAY],
            &["status", "--date", DAY],
            &["explain", "P1"],
            &["explain", text.split('\0').next().unwrap_or_default()],
            &[
                "log",
                "action",
                "P1",
                "--date",
                DAY,
                "--statement",
                "We withdrew it.",
            ],
            &["issue", "--date", DAY],
            &["plan"],
        ];
        for command in commands {
            let run = workspace.run(command);
            is_quiet(&format!("{command:?} of {text:?}"), &run.stdout());
            is_quiet(&format!("{command:?} of {text:?}"), &run.stderr());
        }
        let json = workspace.run(&["check", "--format", "json"]).stdout();
        is_quiet("check --format json", &json);
        if !workspace.path("out/data/results.json").is_file() {
            // A register with so many of them is no text, and named.
            let refused = workspace.run(&["-q", "run"]);
            refused.exits(2);
            assert!(
                refused.stderr().contains("registers/"),
                "{}",
                refused.stderr()
            );
        }
        if !workspace.path("out").exists() {
            assert!(text.contains('\0'), "{text:?} has outputs");
            continue;
        }
        for (path, bytes) in tree(&workspace.path("out")) {
            if path.ends_with(".pdf") {
                for said in texts_of(&bytes) {
                    is_quiet(&format!("{path} of {text:?}"), &said);
                }
            } else if let Ok(said) = String::from_utf8(bytes) {
                is_quiet(&format!("{path} of {text:?}"), &said);
                let heads = said.split("\r\n\r\n").next().unwrap_or_default();
                assert!(
                    !path.ends_with(".eml") || !heads.contains("\nBcc:"),
                    "{path}"
                );
            }
        }
    }
}

#[test]
fn marks_and_joined_pictures_in_a_name_hold_up_no_document() {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", OVER);
    for name in [
        "e\u{301}\u{302}\u{303} Loaf",
        "m\u{302}x\u{200d}y",
        "\u{1f468}\u{200d}\u{1f469}\u{200d}\u{1f467} Loaf",
        "Flat\u{feff}bread",
        "1\u{fe0f}\u{20e3} a\u{34f}b",
    ] {
        workspace.with(
            "registers/products.csv",
            format!("product_id,name,brand,maker,claim\nP1,{name},{name},{name},gluten-free\n"),
        );
        let run = workspace.run(&["-q", "run"]);
        run.exits(0);
        assert!(
            !run.stderr().contains("could not be made"),
            "{}",
            run.stderr()
        );
        for made in [
            "sheets/P1--1.pdf",
            "notices/P1--1.pdf",
            "newsletter/digest.pdf",
            "summary.pdf",
        ] {
            assert!(workspace.path("out").join(made).is_file(), "{name}: {made}");
        }
    }
}

#[test]
fn what_is_typed_into_a_register_is_never_a_formula() {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", WITHIN);
    workspace.run(&["-q", "issue", "--date", DAY]).exits(0);
    workspace.with("inbox/a.csv", WITHIN.replace("7.1", "7.4"));
    for formula in [
        "=HYPERLINK(\"x\")",
        "@SUM(A1)",
        "+cmd|' /C calc'!A0",
        "-new lot",
        "＝HYPERLINK(\"x\")",
        "＋cmd|' /C calc'!A0",
        "－new lot",
        "＠SUM(A1)",
    ] {
        for reason in [formula.to_owned(), format!("P1={formula}")] {
            let reason = format!("--reason={reason}");
            let run = workspace.run(&["-q", "issue", "--date", "2031-05-07", &reason]);
            run.exits(2);
            assert!(
                run.stderr().contains("begins as a formula does"),
                "{}",
                run.stderr()
            );
        }
        for field in ["--statement", "--note"] {
            let field = format!("{field}={formula}");
            let run = workspace.run(&["log", "notice-sent", "P1", "--date", DAY, &field]);
            run.exits(2);
            assert!(
                run.stderr().contains("begins as a formula does"),
                "{}",
                run.stderr()
            );
        }
    }
    assert_eq!(workspace.text("registers/issued.csv").lines().count(), 2);
    assert!(!workspace.path("registers/followups.csv").exists());
}

#[test]
fn a_makers_address_that_is_none_is_told() {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", WITHIN);
    for (address, is_told) in [
        ("nobody at nowhere", true),
        ("a@b", true),
        ("a@b.example; c@d.example", false),
    ] {
        workspace.with(
            "registers/products.csv",
            format!("product_id,name,maker_email,claim\nP1,Harbour Loaf,{address},gluten-free\n"),
        );
        let problems = workspace.results()["problems"].clone();
        let told = problems.as_array().expect("a list").iter().find(|problem| {
            problem["message"]
                .to_string()
                .contains("is no mail address")
        });
        assert_eq!(told.is_some(), is_told, "{address}: {problems}");
        if let Some(problem) = told {
            assert_eq!(problem["file"], "registers/products.csv");
            assert_eq!(
                (&problem["row"], &problem["column"]),
                (&2.into(), &"C".into())
            );
            assert!(
                problem["hint"]
                    .to_string()
                    .contains("quality@maker.example")
            );
        }
    }
}
