//! What a PDF is made of, read back: title, language, tags, attachments, fonts, words, metadata.

use crate::render::{engine, products, sheet_job, typeset};
use crate::sample::{self, Sample};
use crate::summary::invented;
use galleyproof::render::facts::{carried, sheet, summary};
use lopdf::{Dictionary, Document, Object};
use sha2::{Digest, Sha256};

fn over_sheet(paper: &str) -> Document {
    let folder = tempfile::tempdir().expect("a folder");
    let config = sample::config(folder.path(), paper, "");
    let product = products::fullest(&config);
    let pdf = typeset(&engine(&config), &config, &sheet_job(&product, &config));
    Document::load_mem(&pdf).expect("a PDF")
}

fn catalog(pdf: &Document) -> &Dictionary {
    pdf.catalog().expect("a PDF has a catalog")
}

/// Follows references.
fn get<'a>(pdf: &'a Document, of: &'a Dictionary, key: &str) -> &'a Object {
    let value = of
        .get(key.as_bytes())
        .unwrap_or_else(|_| panic!("there is a /{key}"));
    pdf.dereference(value).expect("references lead somewhere").1
}

fn text(object: &Object) -> String {
    lopdf::decode_text_string(object).expect("a text string")
}

/// The types of all structure elements, and their alternative texts.
fn structure(pdf: &Document) -> Vec<(String, Option<String>)> {
    let elements = pdf
        .objects
        .values()
        .filter_map(|object| object.as_dict().ok());
    let tagged = elements.filter(|dict| {
        dict.get(b"Type")
            .and_then(Object::as_name)
            .is_ok_and(|name| name == b"StructElem")
    });
    tagged
        .map(|dict| {
            let kind = dict
                .get(b"S")
                .and_then(Object::as_name)
                .expect("an element has a type");
            let alt = dict.get(b"Alt").ok().map(text);
            (String::from_utf8_lossy(kind).into_owned(), alt)
        })
        .collect()
}

#[test]
fn a_sheet_says_what_it_is() {
    let pdf = over_sheet("a4");
    let catalog = catalog(&pdf);
    assert_eq!(
        get(&pdf, catalog, "Lang").as_str().expect("a string"),
        b"en-GB"
    );
    let info = pdf
        .trailer
        .get(b"Info")
        .and_then(|info| pdf.dereference(info))
        .expect("an Info")
        .1;
    let info = info.as_dict().expect("a dictionary");
    assert_eq!(
        text(get(&pdf, info, "Title")),
        "Test results: Stone-Baked Buckwheat, Teff and Toasted Chestnut Sandwich Loaf, Sliced, Åsvindel Kværn. Sheet TKW-0612-1"
    );
    assert_eq!(text(get(&pdf, info, "Author")), "Tidewater Kitchen Works");
    let keywords = text(get(&pdf, info, "Keywords"));
    assert!(
        keywords.contains("TKW-0612-1") && keywords.contains("Proof of revision 3"),
        "{keywords}"
    );
    // The latest date in the facts, since a proof has no day of issue: revision 2 is of 29 April.
    assert!(text(get(&pdf, info, "CreationDate")).starts_with("D:20310429"));
}

#[test]
fn a_sheet_is_tagged_with_heads_tables_and_a_figure_that_says_its_message() {
    let pdf = over_sheet("a4");
    let tags = structure(&pdf);
    let count = |kind: &str| tags.iter().filter(|(found, _)| found == kind).count();
    assert_eq!(count("H1"), 1);
    assert!(count("H2") >= 7, "{}", count("H2"));
    assert_eq!(count("Table"), 1);
    assert!(
        count("TH") >= 9 + 3,
        "columns and package codes are heads: {}",
        count("TH")
    );
    let figures: Vec<&String> = tags.iter().filter_map(|(_, alt)| alt.as_ref()).collect();
    let [ruler, shares] = figures.as_slice() else {
        panic!("the ruler, then what so few packages can say: {figures:?}")
    };
    assert!(
        shares.starts_with("A strip of 100 packages: at least 1 is at or above the limit"),
        "{shares}"
    );
    assert!(
        ruler.contains("log scale from 5 to 100 ppm with the limit at 20\u{a0}ppm")
            && ruler.contains("Package 0612-C: 31.5 and 28.2. Agree: 3.3 apart, 12.6 allowed."),
        "{ruler}"
    );
}

/// Lab files go with their sheets as they came.
const WHOLE: &str = "[publishing]\nattach = \"whole\"\n";

#[test]
fn a_sheet_carries_the_lab_file_and_its_own_facts() {
    let folder = tempfile::tempdir().expect("a folder");
    let config = sample::config(folder.path(), "a4", WHOLE);
    let lab_file = b"sample;result\nP-1-A;<5\n";
    galleyproof::files::write(&folder.path().join("inbox/march/lab.csv"), lab_file)
        .expect("writes");
    let sha256: String = Sha256::digest(lab_file)
        .iter()
        .map(|byte| format!("{byte:02x}"))
        .collect();
    let product = Sample::new(&config, "P-1", "Rice Cakes")
        .file("inbox/march/lab.csv", &sha256)
        .package("A", &["<5", "<5"])
        .done();
    let pdf = typeset(&engine(&config), &config, &sheet_job(&product, &config));
    let pdf = Document::load_mem(&pdf).expect("a PDF");
    let associated = get(&pdf, catalog(&pdf), "AF")
        .as_array()
        .expect("associated files");
    let mut found = Vec::new();
    for file in associated {
        let file = pdf
            .dereference(file)
            .expect("a file")
            .1
            .as_dict()
            .expect("a dictionary");
        let stream = get(&pdf, file, "EF")
            .as_dict()
            .map(|files| get(&pdf, files, "F"))
            .expect("embedded");
        let content = stream.as_stream().expect("a stream");
        let relationship = get(&pdf, file, "AFRelationship").as_name().expect("a name");
        let bytes = content
            .decompressed_content()
            .unwrap_or_else(|_| content.content.clone());
        found.push((
            text(get(&pdf, file, "UF")),
            String::from_utf8_lossy(relationship).into_owned(),
            bytes,
        ));
    }
    found.sort();
    assert_eq!(
        (found[0].0.as_str(), found[0].1.as_str()),
        ("1-lab.csv", "Source")
    );
    assert_eq!(found[0].2, lab_file);
    assert_eq!(
        (found[1].0.as_str(), found[1].1.as_str()),
        ("TKW-P-1-1.json", "Data")
    );
    assert_eq!(
        (found[2].0.as_str(), found[2].1.as_str()),
        ("case.json", "Data")
    );
    let case: serde_json::Value = serde_json::from_slice(&found[2].2).expect("JSON");
    assert_eq!(case["carried"][1]["name"], "1-lab.csv");
    assert_eq!(case["packages"][0]["readings"][0]["reported"], "<5");
    let facts: serde_json::Value = serde_json::from_slice(&found[1].2).expect("JSON");
    assert_eq!(facts["content"]["table"]["packages"][0]["code"], "P-1-A");
}

#[test]
fn a_lab_file_that_changed_meanwhile_is_not_passed_off_as_the_source() {
    let folder = tempfile::tempdir().expect("a folder");
    let config = sample::config(folder.path(), "a4", WHOLE);
    galleyproof::files::write(&folder.path().join("inbox/lab.csv"), b"changed").expect("writes");
    let product = Sample::new(&config, "P-1", "Rice Cakes")
        .file("inbox/lab.csv", &"0".repeat(64))
        .package("A", &["<5", "<5"])
        .done();
    let product = sample::with_sheet(&product, &config);
    let facts = sheet::facts(&product, &config, None);
    let error = carried::job(&product, &facts, &config).expect_err("the file is another");
    assert!(
        error.to_string().contains("inbox/lab.csv was changed"),
        "{error}"
    );
}

#[test]
fn every_font_is_embedded_and_its_text_can_be_read() {
    let pdf = over_sheet("us-letter");
    let dicts = || {
        pdf.objects
            .values()
            .filter_map(|object| object.as_dict().ok())
    };
    let is = |dict: &Dictionary, kind: &[u8]| {
        dict.get(b"Type")
            .and_then(Object::as_name)
            .is_ok_and(|name| name == kind)
    };
    let descriptors: Vec<_> = dicts().filter(|dict| is(dict, b"FontDescriptor")).collect();
    assert_eq!(descriptors.len(), 5, "three serif faces, two sans faces");
    assert!(
        descriptors
            .iter()
            .all(|dict| dict.has(b"FontFile3") || dict.has(b"FontFile2"))
    );
    let composite = dicts().filter(|dict| is(dict, b"Font") && dict.has(b"DescendantFonts"));
    assert!(composite.into_iter().all(|dict| dict.has(b"ToUnicode")));
}

#[test]
fn nothing_on_a_page_is_made_of_pixels() {
    let config = invented::config("regime = \"us\"", "a4");
    let decided = invented::decided(24, &config);
    let facts = summary::summary(&decided, &config, None).expect("its charts can be drawn");
    let job = summary::job(&facts).expect("the facts are JSON");
    let summary = Document::load_mem(&typeset(&engine(&config), &config, &job)).expect("a PDF");
    for pdf in [over_sheet("a4"), summary] {
        let streams = pdf
            .objects
            .values()
            .filter_map(|object| object.as_stream().ok());
        let is_image = |stream: &&lopdf::Stream| {
            let subtype = stream.dict.get(b"Subtype").and_then(Object::as_name);
            subtype.is_ok_and(|name| name == b"Image")
        };
        assert_eq!(streams.filter(is_image).count(), 0);
    }
}

#[test]
fn the_words_and_figures_are_on_the_page_in_their_order() {
    // The fullest sheet that there is: what was found on the first page, how it came about on the second.
    let pdf = over_sheet("a4");
    assert_eq!(pdf.get_pages().len(), 2);
    let words = pdf.extract_text(&[1, 2]).expect("text");
    let words = words.split_whitespace().collect::<Vec<_>>().join(" ");
    let expected = [
        "Stone-Baked Buckwheat",
        "At or above 20 ppm",
        "1 of 3 packages tested at or above the limit.",
        "One package measured 29.9 ppm.",
        "0612-A",
        "0612-B",
        "≥1.2",
        "3.1–5.6",
        "0612-C",
        "31.5",
        "28.2",
        "3.3",
        "12.6",
        "29.9",
        "anywhere from 1 to 91 %",
    ];
    let mut rest = words.replace('\u{a0}', " ");
    for wanted in expected {
        let Some(at) = rest.find(wanted) else {
            panic!("no “{wanted}” after what came before it in: {rest}")
        };
        rest = rest.split_off(at + wanted.len());
    }
}

#[test]
fn a_sheet_that_equals_its_last_revision_says_so_on_the_page() {
    let folder = tempfile::tempdir().expect("a folder");
    let config = sample::config(folder.path(), "a4", "");
    let mut product = products::none_measured(&config);
    product.verdict.issued[0].content_sha256 = sheet::sheet(&product, &config).sha256;
    let product = sample::with_sheet(&product, &config);
    let again = sheet::facts(&product, &config, Some(sample::day(6, 1)));
    assert_eq!(again.edition.line, "revision 1 · 6\u{a0}May\u{a0}2031");
    let pdf = typeset(&engine(&config), &config, &sheet_job(&product, &config));
    let words = Document::load_mem(&pdf)
        .expect("a PDF")
        .extract_text(&[1])
        .expect("text");
    let words = words.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(
        words.contains("6 May 2031") && !words.contains("not for publication"),
        "{words}"
    );
}

#[test]
fn a_letter_that_no_font_has_is_named_instead_of_keeping_the_sheet_from_being_made() {
    let folder = tempfile::tempdir().expect("a folder");
    let config = sample::config(folder.path(), "a4", "");
    let product = Sample::new(&config, "P-1", "Bread 🍞 日本 \u{7} עברית العربية")
        .package("A", &["<5", "<5"])
        .last(|package| package.pair.package.lot = Some("日1".to_owned()))
        .done();
    let pdf = typeset(&engine(&config), &config, &sheet_job(&product, &config));
    let words = Document::load_mem(&pdf)
        .expect("a PDF")
        .extract_text(&[1])
        .expect("text");
    assert!(words.contains("Bread [U+65E5][U+672C]"), "{words}");
    assert!(words.contains("The pictures in its name are left out here."));
    assert!(words.contains("[U+65E5]1"), "{words}");
}
