//! The pages for a web site: whole, their own, of published products alone, and the same in every language and run.

mod feed;
mod html;

use crate::flow::{OVER, with_second_product};
use crate::workspace::{Workspace, tree};
use feed::{Feed, links, text};
use html::Page;
use std::collections::BTreeSet;

/// Names that a page could trip over.
const HOSTILE: [&str; 4] = [
    "</title><script src=//elsewhere.example/x.js></script>",
    "\u{202e}\"' onload=alert(1) x='",
    "{{ site.words }} {% raw %} &amp; ]]>",
    "Käse\u{7} <b>Ecken</b>",
];

fn issue(workspace: &Workspace, arguments: &[&str]) {
    workspace.run(&[&["issue"], arguments].concat()).exits(0);
}

/// P1 over the limit and published in two revisions, P2 published in two rounds.
fn published(language: &str) -> Workspace {
    let workspace = Workspace::new();
    workspace.with(
        "programme.toml",
        format!(
            "[programme]\nname = \"Tidewater Kitchen Works\"\nshort_name = \"TKW\"\nlanguage = \"{language}\"\n\
             email = \"desk@tidewater.example\"\n"
        ),
    );
    with_second_product(&workspace);
    workspace.with("inbox/a.csv", OVER);
    workspace.with(
        "registers/followups.csv",
        "product_id,round,on,kind,due_on,statement\nP1,1,2031-03-01,notice-sent,2031-03-16,\nP1,1,2031-03-09,reply,,\"We <sieve> & ask \"\"why\"\".\"\n",
    );
    issue(&workspace, &["--date", "2031-05-06"]);
    workspace.with(
        "registers/packages.csv",
        "package_code,product_id,round\nA1,P1,1\nA2,P1,1\nA3,P1,1\nB1,P2,1\nB2,P2,1\nB3,P2,1\nC1,P2,2\nC2,P2,2\nC3,P2,2\n",
    );
    workspace.with(
        "inbox/c.csv",
        "Sample,Extraction,Gluten (ppm)\nC1,1,6.1\nC1,2,6.3\nC2,1,<5\nC2,2,<5\nC3,1,<5\nC3,2,<5\n",
    );
    workspace.with("inbox/a.csv", OVER.replace("28.3", "28.4"));
    issue(
        &workspace,
        &[
            "--date",
            "2031-06-10",
            "--reason",
            "The lab mended a figure",
        ],
    );
    workspace
}

/// Every page of a site is whole, and all that it leads to or loads is there.
fn holds_together(workspace: &Workspace) -> Vec<(String, Page)> {
    let files = tree(&workspace.path("out/web"));
    let names: BTreeSet<&str> = files.iter().map(|(path, _)| path.as_str()).collect();
    let mut pages = Vec::new();
    for (path, bytes) in files.iter().filter(|(path, _)| path.ends_with(".html")) {
        let page = Page::read(path, std::str::from_utf8(bytes).expect("is UTF-8"));
        page.is_whole(path);
        for link in page.links().into_iter().filter(|link| *link != "#content") {
            let is_own = !link.contains(':') && !link.starts_with('/');
            let target = resolved(path, link);
            assert!(is_own && names.contains(target.as_str()), "{path}: {link}");
        }
        pages.push((path.clone(), page));
    }
    let mut linked: BTreeSet<String> = pages
        .iter()
        .flat_map(|(path, page)| page.links().into_iter().map(|link| resolved(path, link)))
        .collect();
    // Whoever reads the feed comes to a sheet that is under revision.
    if workspace.path("out/web/feed.xml").is_file() {
        let feed = Feed::read(&workspace.text("out/web/feed.xml"));
        let entries = feed.entries.iter();
        linked.extend(
            entries
                .flat_map(|entry| links(entry))
                .map(|(_, link)| link.to_owned()),
        );
    }
    for name in names {
        let is_led_to = linked.contains(name) || name == "index.html";
        assert!(is_led_to, "nothing leads to {name}");
    }
    pages
}

fn resolved(path: &str, link: &str) -> String {
    let mut folders: Vec<&str> = path.split('/').collect();
    folders.pop();
    for part in link.split('/') {
        match part {
            ".." => {
                folders.pop();
            }
            part => folders.push(part),
        }
    }
    folders.join("/")
}

fn page<'a>(pages: &'a [(String, Page)], path: &str) -> &'a Page {
    let mut all = pages.iter();
    let found = all.find(|(is, _)| is == path);
    &found.unwrap_or_else(|| panic!("there is no {path}")).1
}

#[test]
fn a_product_has_a_page_with_all_that_its_sheet_says() {
    let workspace = published("en");
    let pages = holds_together(&workspace);
    let over = page(&pages, "products/P1--1.html");
    for said in [
        "Results sheet TKW-P1-1 · revision 2 · 10 June 2031",
        "Harbour Loaf",
        "At or above 20 ppm 1 of 3 packages tested at or above the limit.",
        "A2 27.1 28.4",
        "What it does not say",
        "We <sieve> & ask \"why\".",
        "It replaces revision 1 of 6 May 2031. Revision 2, 10 June 2031 The lab mended a figure.",
        "Revision 1, 6 May 2031 First issue.",
        "File a.csv. Rows 2 to 7. SHA-256",
    ] {
        assert!(
            over.text.contains(said),
            "“{said}” is not in: {}",
            over.text
        );
    }
    let ruler = over.named("img").next().expect("the ruler");
    assert_eq!(ruler.attribute("src"), Some("../rulers/P1--1/1.svg"));
    let alt = ruler.attribute("alt").unwrap_or_default();
    assert!(alt.contains("Package A2: 27.1 and 28.4"), "{alt}");
    let svg = workspace.text("out/web/rulers/P1--1/1.svg");
    assert!(svg.contains("28.4") && !svg.contains("href"), "{svg}");

    // Each round leads to the other.
    for (own, other) in [("1", "2"), ("2", "1")] {
        let round = page(&pages, &format!("products/P2--{own}.html"));
        let link = format!("../products/P2--{other}.html");
        assert!(round.links().contains(&link.as_str()), "{own}");
        assert!(round.text.contains(&format!(
            "Round {other}, sheet TKW-P2-{other}: Below 20 ppm"
        )));
    }
    let how = page(&pages, "how-we-test.html");
    assert!(how.text.contains("Right of reply") && how.text.contains("15 days to answer"));
    let corrections = page(&pages, "corrections.html");
    let said =
        "Revision 2 of 10 June 2031 replaces revision 1 of 6 May 2031. The lab mended a figure.";
    assert!(corrections.text.contains(said), "{}", corrections.text);
}

#[test]
fn the_index_can_be_chosen_from_and_needs_no_script() {
    let workspace = published("en");
    let pages = holds_together(&workspace);
    let index = page(&pages, "index.html");
    let rows: Vec<_> = index
        .named("tr")
        .filter(|row| row.attribute("data-verdict").is_some())
        .map(|row| (row.attribute("data-verdict"), row.attribute("data-year")))
        .collect();
    let year = Some("2031");
    assert_eq!(
        rows,
        [
            (Some("over"), year),
            (Some("within"), year),
            (Some("within"), year)
        ]
    );
    let form = index.named("form").next().expect("the filter");
    assert!(
        form.attribute("hidden").is_some(),
        "it shows only where its script runs"
    );
    let scripts: Vec<_> = index
        .named("script")
        .map(|one| one.attribute("src"))
        .collect();
    assert_eq!(scripts, [Some("web.js")]);
    let count = index
        .elements
        .iter()
        .find_map(|one| one.attribute("data-count"));
    assert_eq!(count, Some("Sheets shown: {shown} of {all}."));
    assert!(
        index.text.contains("Lantern Rolls (round 2)"),
        "{}",
        index.text
    );
}

#[test]
fn the_feed_is_one_and_its_names_stay() {
    let workspace = published("en");
    let feed = Feed::read(&workspace.text("out/web/feed.xml"));
    feed.is_whole();
    let told: Vec<(&str, &str, &str)> = feed
        .entries
        .iter()
        .map(|entry| {
            (
                text(entry, "id"),
                text(entry, "title"),
                text(entry, "updated"),
            )
        })
        .collect();
    assert_eq!(
        told,
        [
            (
                "tag:tkw,2031-06-10:TKW-P2-2/1",
                "Lantern Rolls: sheet TKW-P2-2",
                "2031-06-10T00:00:00Z"
            ),
            (
                "tag:tkw,2031-06-10:TKW-P1-1/2",
                "Amended: Harbour Loaf, sheet TKW-P1-1, revision 2",
                "2031-06-10T00:00:00Z"
            ),
            // It changed on the day on which it was replaced.
            (
                "tag:tkw,2031-05-06:TKW-P1-1/1",
                "Harbour Loaf: sheet TKW-P1-1",
                "2031-06-10T00:00:00Z"
            ),
            (
                "tag:tkw,2031-05-06:TKW-P2-1/1",
                "Lantern Rolls: sheet TKW-P2-1",
                "2031-05-06T00:00:00Z"
            ),
        ]
    );
    let replaced = text(&feed.entries[2], "summary");
    assert!(
        replaced.contains("Revision 2 of this sheet") && !replaced.contains("ppm"),
        "{replaced}"
    );
    for entry in &feed.entries {
        for (_, link) in links(entry) {
            assert!(
                workspace.path(&format!("out/web/{link}")).is_file(),
                "{link}"
            );
        }
    }

    // What takes an accusation back is a correction; while it is not issued, the sheet is under revision.
    workspace.with(
        "inbox/a.csv",
        OVER.replace("28.3", "8.4").replace("27.1", "7.1"),
    );
    workspace.run(&["run"]).exits(0);
    let feed = Feed::read(&workspace.text("out/web/feed.xml"));
    feed.is_whole();
    let withdrawn = &feed.entries[1];
    assert_eq!(
        text(withdrawn, "id"),
        "tag:tkw,2031-06-10:TKW-P1-1/2/under-revision"
    );
    let pages = holds_together(&workspace);
    let page = page(&pages, "products/P1--1.html");
    assert!(
        page.text.contains("is not to be relied on any more"),
        "{}",
        page.text
    );
    assert!(!page.text.contains("ppm"), "{}", page.text);
    issue(
        &workspace,
        &[
            "--date",
            "2031-07-01",
            "--reason",
            "The lab mixed samples up",
        ],
    );
    let feed = Feed::read(&workspace.text("out/web/feed.xml"));
    feed.is_whole();
    let first = &feed.entries[0];
    assert_eq!(
        text(first, "title"),
        "Correction: Harbour Loaf, sheet TKW-P1-1, revision 3"
    );
    assert!(
        text(first, "summary").starts_with("Below 20\u{a0}ppm. "),
        "{first:?}"
    );
}

#[test]
fn where_nothing_is_published_the_index_says_so_and_nothing_else_stands_there() {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", OVER);
    workspace.run(&["run"]).exits(0);
    let files = tree(&workspace.path("out/web"));
    let names: Vec<&str> = files.iter().map(|(path, _)| path.as_str()).collect();
    let expected = [
        "corrections.html",
        "how-we-test.html",
        "icon.svg",
        "index.html",
        "web.css",
        "web.js",
    ];
    assert_eq!(names, expected);
    for (path, bytes) in &files {
        let text = String::from_utf8_lossy(bytes);
        for secret in ["Harbour", "TKW-P1", "A2", "27.1"] {
            assert!(!text.contains(secret), "{path} has {secret}");
        }
    }
    let index = Page::read("index.html", &workspace.text("out/web/index.html"));
    index.is_whole("index.html");
    assert!(
        index
            .text
            .contains("No results sheet is published at present.")
    );
    assert_eq!(
        index.named("script").count() + index.named("form").count(),
        0
    );
}

#[test]
fn names_that_are_code_are_read_as_names() {
    let workspace = Workspace::new();
    let mut products = "product_id,name,brand,category,claim,ingredients\n".to_owned();
    let mut packages = "package_code,product_id\n".to_owned();
    let mut results = "Sample,Extraction,Gluten (ppm)\n".to_owned();
    for (number, name) in HOSTILE.iter().enumerate() {
        let cell = format!("\"{}\"", name.replace('"', "\"\""));
        products += &format!("H{number},{cell},{cell},{cell},gluten-free,{cell}\n");
        for code in ["A", "B", "C"] {
            packages += &format!("{code}{number},H{number}\n");
            results += &format!("{code}{number},1,<5\n{code}{number},2,<5\n");
        }
    }
    workspace.with("registers/products.csv", products);
    workspace.with("registers/packages.csv", packages);
    workspace.with("inbox/h.csv", results);
    issue(&workspace, &["--date", "2031-05-06"]);
    let pages = holds_together(&workspace);
    let index = page(&pages, "index.html");
    assert_eq!(index.named("script").count(), 1);
    assert_eq!(index.named("b").count(), 0);
    for name in [
        HOSTILE[0],
        HOSTILE[2],
        "\"' onload=alert(1) x='",
        "Käse <b>Ecken</b>",
    ] {
        let plain = |text: &str| text.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(index.text.contains(&plain(name)), "{name}: {}", index.text);
        assert!(
            pages.iter().any(
                |(path, page)| path.starts_with("products") && page.text.contains(&plain(name))
            ),
            "{name}"
        );
    }
    Feed::read(&workspace.text("out/web/feed.xml")).is_whole();
    let loads = |page: &Page| page.named("script").count() > 0;
    assert!(
        pages
            .iter()
            .all(|(path, page)| path == "index.html" || !loads(page))
    );
}

#[test]
fn each_language_has_its_pages_and_the_same_run_gives_the_same_bytes() {
    for (language, tag, words) in [
        (
            "de",
            "de-",
            [
                "Ergebnisblatt TKW-P1-1",
                "So prüfen wir",
                "Gezeigte Blätter",
                "Geändert: Harbour Loaf",
            ],
        ),
        (
            "es",
            "es-",
            [
                "Hoja de resultados TKW-P1-1",
                "Cómo analizamos",
                "Hojas mostradas",
                "Modificada: Harbour Loaf",
            ],
        ),
    ] {
        let workspace = published(language);
        let pages = holds_together(&workspace);
        for (path, page) in &pages {
            let html = page.named("html").next().expect("the root");
            let is = html
                .attribute("lang")
                .is_some_and(|lang| lang.starts_with(tag));
            assert!(is, "{path}: {html:?}");
        }
        let count = page(&pages, "index.html")
            .elements
            .iter()
            .find_map(|one| one.attribute("data-count"));
        assert!(
            count.is_some_and(|count| count.starts_with(words[2])),
            "{count:?}"
        );
        let product = page(&pages, "products/P1--1.html");
        assert!(
            product.text.contains(words[0]) && product.text.contains(words[1]),
            "{}",
            product.text
        );
        let feed = Feed::read(&workspace.text("out/web/feed.xml"));
        feed.is_whole();
        assert!(
            feed.entries
                .iter()
                .any(|entry| text(entry, "title").starts_with(words[3]))
        );

        let before = tree(&workspace.path("out/web"));
        std::fs::remove_dir_all(workspace.path("out")).expect("removes");
        workspace.run(&["run"]).exits(0);
        assert!(before == tree(&workspace.path("out/web")), "{language}");
        let archived = tree(&workspace.path("archive/2031-06-10/data/public/web"));
        assert!(before == archived, "{language}: the bag has the same site");
    }
}

#[test]
fn a_mistake_in_a_template_of_the_pages_is_told_once_at_its_line() {
    let workspace = published("en");
    workspace.with(
        "report-templates/web-product.html",
        "{% extends \"web-page.html\" %}\n{% block content %}\n<h1>{{ facts.sheet.contents.product }}</h1>\n{% endblock %}\n",
    );
    let run = workspace.run(&["run"]);
    run.exits(1);
    let told = run.stderr() + &run.stdout();
    let place = "report-templates/web-product.html, line 3";
    assert_eq!(told.matches(place).count(), 1, "{told}");
}
