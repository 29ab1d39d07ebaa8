//! Registers: every fault is named at once, by row and column.

use super::folder::{Folder, Read};
use galleyproof::model::problem::{Code, Severity};
use galleyproof::model::registers::{Bars, Doubt, DoubtKind, Oats, Processing};
use galleyproof::words::english;
use proptest::prelude::*;

#[test]
fn faults_are_named_by_row_and_column_all_at_once() {
    let read = Folder::new()
        .with(
            "registers/products.csv",
            b"product_id,name,claim,oats\noat-bar,Oat bar,gluten-free,wild\nCON,Crisps,gluten-free,\nrice,,gluten-free,\nOat-Bar,Other,gluten-free,\n",
        )
        .with(
            "registers/packages.csv",
            b"package_code,product_id,sent_on\nTKW-101,oat-bar,03/07/2031\ntkw-101,oat-bar,\nTKW 102,oat-bar,\nTKW-103,nowhere,\n",
        )
        .with("registers/corrections.csv", b"file,package_code,action,reason,by,on\nmarch.csv,TKW-101,exclude,spilt,E. Quill,2031-03-07\n")
        .gather();
    assert_eq!(
        read.problems(),
        [
            "register_error registers/corrections.csv A2",
            "register_error registers/packages.csv C2",
            "register_error registers/packages.csv A3",
            "register_error registers/packages.csv A4",
            "register_error registers/packages.csv B5",
            "register_error registers/products.csv D2",
            "register_error registers/products.csv A3",
            "register_error registers/products.csv B4",
            "register_error registers/products.csv A5",
        ]
    );
    let codes: Vec<&str> = read
        .gathered
        .registers
        .packages
        .iter()
        .map(|package| package.package_code.as_str())
        .collect();
    assert_eq!(codes, ["TKW-101"]);
}

#[test]
fn two_files_of_one_register_are_refused() {
    let refused = Folder::new().with("registers/products.ods", b"").refused();
    assert!(refused.contains("two registers of products"), "{refused}");
}

/// The doubts as `verdict oat-bar/1` or `issue */*`, in their order.
fn doubts(read: &Read) -> Vec<String> {
    read.gathered.registers.doubts.iter().map(shown).collect()
}

fn shown(doubt: &Doubt) -> String {
    let bars = match doubt.bars {
        Bars::Issue => "issue",
        Bars::Verdict => "verdict",
    };
    let any = |id: &Option<String>| id.clone().unwrap_or_else(|| "*".to_owned());
    format!("{bars} {}/{}", any(&doubt.product_id), any(&doubt.round))
}

const PRODUCT: &str = "oat-bar,Oat bar,gluten-free,Lantern Mark,Oats,certified,none\n";
const PRODUCTS: &str = "product_id,name,claim,certifier,ingredients,oats,processing\n";
const PACKAGES: &str = "package_code,product_id,round,sent_on\nTKW-101,oat-bar,1,2031-03-01\n";

#[test]
fn a_heading_that_is_nearly_a_missing_one_bars_what_rests_on_it() {
    let corrections = "file,package_code,extracton,action,reason,by,on\n";
    for (file, text, problem, doubt) in [
        (
            "products",
            PRODUCTS.replace("processing", "processed"),
            "register_error registers/products.csv G1",
            Some("verdict */*"),
        ),
        (
            "products",
            PRODUCTS.replace("ingredients", "ingredient"),
            "register_error registers/products.csv E1",
            Some("verdict */*"),
        ),
        (
            "products",
            PRODUCTS.replace("certifier", "certified by"),
            "register_error registers/products.csv D1",
            Some("verdict */*"),
        ),
        (
            "packages",
            PACKAGES.replace("sent_on", "sent"),
            "register_error registers/packages.csv D1",
            Some("verdict */*"),
        ),
        (
            "packages",
            PACKAGES.replace("round", "rounds"),
            "register_error registers/packages.csv C1",
            Some("verdict */*"),
        ),
        (
            "products",
            PRODUCTS.replace("oats", "processing"),
            "register_error registers/products.csv G1",
            Some("verdict */*"),
        ),
        (
            "packages",
            PACKAGES.replace("round", "best before"),
            "suspicious registers/packages.csv C1",
            None,
        ),
        (
            "packages",
            PACKAGES.replace("round", "colour"),
            "unknown_column registers/packages.csv C1",
            None,
        ),
        (
            "corrections",
            corrections.to_owned(),
            "register_error registers/corrections.csv C1",
            Some("verdict */*"),
        ),
        (
            "followups",
            "product_id,on,kind,rond\n".to_owned(),
            "register_error registers/followups.csv D1",
            Some("issue */*"),
        ),
        (
            "followups",
            "product_id,on,kind,notes\n".to_owned(),
            "suspicious registers/followups.csv D1",
            None,
        ),
        (
            "reports",
            "file,lloq\n".to_owned(),
            "register_error registers/reports.csv B1",
            Some("issue */*"),
        ),
    ] {
        let read = Folder::new()
            .with(&format!("registers/{file}.csv"), text.as_bytes())
            .gather();
        let found = read.problems();
        assert!(found.contains(&problem.to_owned()), "{text}: {found:?}");
        let all = doubts(&read);
        let expected: Vec<String> = doubt.into_iter().map(str::to_owned).collect();
        assert_eq!(all, expected, "{text}");
    }
}

#[test]
fn a_near_heading_is_named_with_the_one_that_is_meant() {
    let products = PRODUCTS.replace("processing", "processed");
    let read = Folder::new()
        .with("registers/products.csv", (products + PRODUCT).as_bytes())
        .gather();
    let problem = read.problems.sorted()[0];
    let said = english().found(problem);
    assert!(
        said.contains("“processed”") && said.contains("“processing”"),
        "{said}"
    );
    let kind = &read.gathered.registers.doubts[0].what;
    let expected = DoubtKind::Heading {
        found: "processed".to_owned(),
        meant: "processing".to_owned(),
    };
    assert_eq!(*kind, expected);
}

#[test]
fn a_needed_column_that_is_missing_ends_the_run_and_names_what_is_nearly_it() {
    for (file, text, named) in [
        (
            "products",
            PRODUCTS.replace("claim", "claims"),
            "“claim” (“claims” is nearly that)",
        ),
        (
            "packages",
            PACKAGES.replace("product_id", "food"),
            "“product_id”",
        ),
        (
            "corrections",
            "file,package_code,action,reason,by\n".to_owned(),
            "“on”",
        ),
        ("reports", "report\n".to_owned(), "“file”"),
        ("products", String::new(), "is empty"),
    ] {
        let refused = Folder::new()
            .with(&format!("registers/{file}.csv"), text.as_bytes())
            .refused();
        assert!(refused.contains(named), "{text}: {refused}");
    }
}

#[test]
fn a_word_that_is_none_of_the_known_ones_is_unknown_and_never_the_default() {
    let product = |row: &str| {
        Folder::new()
            .with(
                "registers/products.csv",
                format!("{PRODUCTS}{row}").as_bytes(),
            )
            .gather()
    };
    let read = product("oat-bar,Oat bar,gluten-free,,Oats,wild,fermentd\n");
    let oat_bar = &read.gathered.registers.products["oat-bar"];
    assert_eq!(oat_bar.processing, Processing::Unknown);
    assert_eq!(oat_bar.oats, Oats::Unverified);
    assert_eq!(read.problems.count(Severity::Error), 2);
    let read = product("oat-bar,Oat bar,gluten-free,,Oats,certified,none\n");
    assert_eq!(
        read.gathered.registers.products["oat-bar"].oats,
        Oats::Unverified,
        "nobody certifies them"
    );
    assert_eq!(
        read.problems(),
        ["register_error registers/products.csv F2"]
    );
    let read = product("oat-bar,Oat bar,,,Oats,none,none\n");
    assert_eq!(read.gathered.registers.products["oat-bar"].claim, "");
    assert_eq!(
        read.problems(),
        ["register_error registers/products.csv C2"]
    );
    assert_eq!(read.gathered.registers.packages.len(), 6);
}

#[test]
fn a_field_that_cannot_be_read_leaves_a_doubt_about_its_product() {
    for (row, doubt) in [
        ("TKW-101,oat-bar,2,31 Febr 2031", "verdict oat-bar/2"),
        ("TKW-101,oat-bar,2 b,2031-03-01", "verdict oat-bar/*"),
        ("TKW 101,oat-bar,2,2031-03-01", "verdict oat-bar/2"),
        (".TKW,oat-bar,,2031-03-01", "verdict oat-bar/1"),
        (",oat-bar,1,2031-03-01", "verdict oat-bar/1"),
        ("TKW-101,oat-bat,1,2031-03-01", "verdict oat-bar/*"),
    ] {
        let packages = format!("package_code,product_id,round,sent_on\n{row}\n");
        let read = Folder::new()
            .with("registers/packages.csv", packages.as_bytes())
            .gather();
        assert_eq!(doubts(&read), [doubt], "{row:?}");
        assert_eq!(read.problems.count(Severity::Error), 1, "{row:?}");
        let packages = &read.gathered.registers.packages;
        let is_kept = row.contains("Febr");
        assert_eq!(packages.len(), usize::from(is_kept), "{row:?}");
        assert!(packages.iter().all(|package| package.sent_on_unreadable));
    }
}

#[test]
fn a_product_or_package_that_is_there_twice_is_in_doubt() {
    let read = Folder::new()
        .with(
            "registers/products.csv",
            format!(
                "{PRODUCTS}{PRODUCT}{}",
                PRODUCT.replace("oat-bar", "OAT\u{2010}BAR")
            )
            .as_bytes(),
        )
        .gather();
    assert_eq!(doubts(&read), ["verdict oat-bar/*"]);
    let read = Folder::new()
        .with(
            "registers/packages.csv",
            b"package_code,product_id,round\nTKW-101,oat-bar,1\ntkw-101,oat-bar,2\n",
        )
        .gather();
    assert_eq!(doubts(&read), ["verdict oat-bar/1", "verdict oat-bar/2"]);
    assert!(read.gathered.registers.packages.is_empty());
}

#[test]
fn files_that_are_no_register_are_told() {
    for (name, problem, doubt) in [
        ("correction.csv", "register_error", Some("verdict */*")),
        ("corrections.xlsm", "register_error", Some("verdict */*")),
        ("corrections (1).csv", "register_error", Some("verdict */*")),
        (
            "Copy of corrections.csv",
            "register_error",
            Some("verdict */*"),
        ),
        ("followup.csv", "register_error", Some("issue */*")),
        ("report.xlsx", "register_error", Some("issue */*")),
        ("products.csv.bak", "register_error", Some("issue */*")),
        ("read me.txt", "suspicious", None),
        ("prices.csv", "suspicious", None),
        ("~$products.xlsx", "", None),
        (".~lock.products.csv#", "", None),
        ("Thumbs.db", "", None),
        ("packages.csv~", "", None),
    ] {
        let path = format!("registers/{name}");
        let read = Folder::new().with(&path, b"a,b\n").gather();
        let told: Vec<String> = match problem {
            "" => Vec::new(),
            problem => vec![format!("{problem} {path}")],
        };
        assert_eq!(read.problems(), told);
        let expected: Vec<String> = doubt.into_iter().map(str::to_owned).collect();
        assert_eq!(doubts(&read), expected, "{name}");
    }
}

#[test]
fn a_correction_or_follow_up_that_cannot_be_used_leaves_a_doubt() {
    const HEAD: &str = "file,package_code,extraction,action,reason,by,on\n";
    for (row, doubt) in [
        (
            "gone.csv,TKW-101,1,exclude,spilt,E. Quill,2031-03-07",
            "verdict oat-bar/1",
        ),
        (
            "a.csv,TKW-101,one,exclude,spilt,E. Quill,2031-03-07",
            "verdict oat-bar/1",
        ),
        (
            "a.csv,TKW-1O1,1,exclude,spilt,E. Quill,2031-03-07",
            "verdict oat-bar/1",
        ),
        (
            "a.csv,TKW-101,1,exclude,,E. Quill,2031-03-07",
            "verdict oat-bar/1",
        ),
    ] {
        let read = Folder::new()
            .with("inbox/a.csv", b"Sample,Gluten ppm\nTKW-101,7\n")
            .with(
                "registers/corrections.csv",
                format!("{HEAD}{row}\n").as_bytes(),
            )
            .gather();
        assert_eq!(doubts(&read), [doubt], "{row}");
        assert!(read.gathered.registers.corrections.is_empty());
    }
    for (file, is_found) in [
        ("a.csv", true),
        ("inbox/a.csv", true),
        ("INBOX/a.csv", false),
    ] {
        let row = format!("{file},TKW-101,1,exclude,spilt,E. Quill,2031-03-07\n");
        let read = Folder::new()
            .with("inbox/a.csv", b"Sample,Gluten ppm\nTKW-101,7\n")
            .with(
                "registers/corrections.csv",
                format!("{HEAD}{row}").as_bytes(),
            )
            .gather();
        assert_eq!(
            read.gathered.registers.corrections.len(),
            usize::from(is_found),
            "{file}"
        );
    }
    let read = Folder::new()
        .with(
            "registers/followups.csv",
            b"product_id,round,on,kind,statement,note\noat-bar,1,2031-03-07,replied,,\noat-bar,1,2031-03-08,reply,We have looked.,private\n",
        )
        .gather();
    assert_eq!(doubts(&read), ["issue oat-bar/*"]);
    let reply = &read.gathered.registers.followups[0];
    assert_eq!(reply.statement.as_deref(), Some("We have looked."));
    assert_eq!(reply.note.as_deref(), Some("private"));
}

#[test]
fn the_register_of_reports_is_read_and_a_bad_row_holds_its_file() {
    let gathered = |rows: &str| {
        Folder::new()
            .with("inbox/a.csv", b"Sample,Gluten ppm\nTKW-101,7\nTKW-101,8\n")
            .with("inbox/old/b.csv", b"Sample,Gluten ppm\nTKW-102,7\nTKW-102,8\n")
            .with("inbox/a.pdf", b"%PDF")
            .with(
                "registers/reports.csv",
                format!("file,report,issued_on,tested_from,tested_to,lloq_ppm,lod_ppm,accredited,supersedes,certificate\n{rows}").as_bytes(),
            )
            .gather()
    };
    let read = gathered(
        "a.csv,R-7,2031-03-09,2031-03-07,2031-03-08,5,\"1,5\",yes,old/b.csv,inbox/a.pdf\n",
    );
    let report = &read.gathered.registers.reports[0];
    assert_eq!(report.file, "inbox/a.csv");
    assert_eq!(report.lod.map(|lod| lod.0), Some(1.5));
    assert_eq!(report.accredited, Some(true));
    assert_eq!(report.supersedes.as_deref(), Some("inbox/old/b.csv"));
    assert_eq!(report.certificate.as_deref(), Some("inbox/a.pdf"));
    assert_eq!(read.problems.count(Severity::Error), 0);
    for row in [
        "a.csv,R-7,9.3,,,,,,,",
        "a.csv,R-7,,2031-03-09,2031-03-08,,,,,",
        "a.csv,R-7,,,,five,,,,",
        "a.csv,R-7,,,,,,maybe,,",
        "a.csv,R-7,,,,,,,gone.csv,",
        "a.csv,R-7,,,,,,,a.csv,",
        "a.csv,R-7,,,,,,,,gone.pdf",
        "a.csv,,,,,,,,,\n*.csv,,,,,,,,,",
    ] {
        let read = gathered(&format!("{row}\n"));
        assert_eq!(
            read.problems.count(Severity::Error),
            1,
            "{row}: {:?}",
            read.problems()
        );
        let about = DoubtKind::Report {
            file: "inbox/a.csv".to_owned(),
        };
        let kinds: Vec<&DoubtKind> = read
            .gathered
            .registers
            .doubts
            .iter()
            .map(|doubt| &doubt.what)
            .collect();
        assert!(kinds.contains(&&about), "{row}: {kinds:?}");
    }
    let read = gathered("gone.csv,R-7,,,,,,,,\n");
    assert_eq!(read.problems.count(Severity::Error), 1);
}

#[test]
fn what_follows_from_a_register_is_one_line_a_file_below_its_cause() {
    let rows: String = (101..=106).map(|n| format!("TKW-{n},7,8\n")).collect();
    let read = Folder::new()
        .with(
            "registers/products.csv",
            b"product_id,name,claim\noat-bar,,gluten-free\n",
        )
        .with(
            "inbox/a.csv",
            format!("Sample,Extraction 1 ppm,Extraction 2 ppm\n{rows}").as_bytes(),
        )
        .gather();
    let problems = read.problems.sorted();
    assert_eq!(
        (problems[0].code, problems[0].place.file.as_str()),
        (Code::RegisterError, "registers/products.csv")
    );
    let unknown: Vec<_> = problems
        .iter()
        .filter(|problem| problem.code == Code::UnknownPackage)
        .collect();
    assert_eq!(unknown.len(), 1, "{:?}", read.problems());
    assert!(
        english().found(unknown[0]).contains("“TKW-101”"),
        "{unknown:?}"
    );
}

/// What a verdict or a label finding rests on, of every product that is not in doubt.
fn settled(read: &Read) -> Vec<(String, String)> {
    let registers = &read.gathered.registers;
    let barred = |id: &str| {
        let mut doubts = registers.doubts.iter();
        doubts.any(|doubt| {
            doubt.bars == Bars::Verdict
                && doubt
                    .product_id
                    .as_deref()
                    .is_none_or(|product| product == id)
        })
    };
    let products = registers
        .products
        .values()
        .filter(|product| !barred(&product.product_id));
    products
        .filter(|product| product.processing != Processing::Unknown && !product.claim.is_empty())
        .map(|product| {
            let packages: Vec<_> = registers
                .packages
                .iter()
                .filter(|package| package.product_id == product.product_id)
                .map(|package| (&package.package_code, &package.round, package.sent_on))
                .collect();
            let rests_on = (
                &product.claim,
                &product.ingredients,
                product.processing,
                packages,
                registers.knows_sent_on,
            );
            (product.product_id.clone(), format!("{rests_on:?}"))
        })
        .collect()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    /// One slip in a heading, in a word or in a date never leaves a product settled on something else than before.
    #[test]
    fn one_slip_in_a_heading_or_a_word_settles_nothing_anew(
        register in 0usize..2,
        at in 0usize..200,
        kind in 0u8..4,
        letter in proptest::sample::select(vec!['a', 'e', 'n', 's', 'x', '_', ' ', '1', '\u{e9}', '\u{1}']),
    ) {
        let texts = [
            format!("{PRODUCTS}oat-bar,Oat bar,gluten-free,Lantern Mark,Oats,none,fermented\n"),
            PACKAGES.to_owned(),
        ];
        let folder = |texts: &[String; 2]| {
            Folder::new()
                .with("registers/products.csv", texts[0].as_bytes())
                .with("registers/packages.csv", texts[1].as_bytes())
        };
        let before = settled(&folder(&texts).gather());
        prop_assert_eq!(before.len(), 1);
        let mut letters: Vec<char> = texts[register].chars().collect();
        // The headings, and the last two fields of the row: words, or the round and the day.
        let headings = texts[register].lines().next().expect("has headings").chars().count();
        let tail: usize = texts[register].trim_end().rsplit(',').next().map(|field| field.chars().count()).expect("has fields");
        let places: Vec<usize> = (0..headings).chain(letters.len() - 1 - tail..letters.len() - 1).collect();
        let place = places[at % places.len()];
        prop_assume!(letters[place] != ',');
        match kind {
            0 => { letters.remove(place); }
            1 => letters.insert(place, letter),
            2 => letters[place] = letter,
            _ if letters[place + 1] != ',' && letters[place + 1] != '\n' => letters.swap(place, place + 1),
            _ => {}
        }
        let mut mutated = texts.clone();
        mutated[register] = letters.into_iter().collect();
        let slip = mutated[register].clone();
        let Ok(after) = folder(&mutated).try_gather() else { return Ok(()) };
        let is_other_day = register == 1 && place >= headings;
        for settled in settled(&after) {
            prop_assert!(before.contains(&settled) || is_other_day, "{slip}: {settled:?}");
        }
    }
}

#[test]
fn two_sheets_that_would_share_their_number_or_their_file_are_refused() {
    let products = b"product_id,name,claim\na,One,gluten-free\na-1,Two,gluten-free\na--1,Three,gluten-free\nb,Four,gluten-free\n";
    // Number; file; file where a file system ignores case.
    for (first, second) in [
        ("a,1-1", "a-1,1"),
        ("a,1--1", "a--1,1"),
        ("b,Spring", "b,spring"),
    ] {
        let packages = format!("package_code,product_id,round\nX1,{first}\nX2,{second}\nX3,a,2\n");
        let read = Folder::new()
            .with("registers/products.csv", products)
            .with("registers/packages.csv", packages.as_bytes())
            .gather();
        assert_eq!(
            read.problems(),
            [
                "register_error registers/packages.csv C2",
                "register_error registers/packages.csv C3"
            ],
            "{first} and {second}"
        );
        let registers = &read.gathered.registers;
        let kept: Vec<&str> = registers
            .packages
            .iter()
            .map(|one| one.package_code.as_str())
            .collect();
        assert_eq!(kept, ["X3"]);
        assert_eq!(registers.doubts.len(), 2, "{:?}", registers.doubts);
    }
}
