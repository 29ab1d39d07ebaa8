//! What the summary and the sheets say of the statistics, read back.

use crate::judge::bench;
use crate::summary::{US, facts, invented, pdf, words};
use galleyproof::model::decided::{Decided, JudgedProduct};
use galleyproof::model::extraction::Extraction;
use galleyproof::model::problem::Problems;
use galleyproof::model::registers::{Package, Product, Registers};
use galleyproof::model::statistics::AssumptionFinding;
use galleyproof::render::facts::{sheet, summary};
use lopdf::Document;

fn plain(text: &str) -> String {
    text.replace('\u{a0}', " ")
}

/// Products of one round each, as a whole run decides them.
fn decided(products: &[&[&[&str]]]) -> Decided {
    let mut registers = Registers::default();
    let mut rows: Vec<Extraction> = Vec::new();
    for (at, packages) in products.iter().enumerate() {
        let id = format!("FH-{at}");
        let product = Product {
            product_id: id.clone(),
            name: "Harbour Loaf".into(),
            claim: "gluten-free".into(),
            ..Product::default()
        };
        registers.products.insert(id.clone(), product);
        for (n, readings) in packages.iter().enumerate() {
            let code = format!("{id}{n}");
            registers.packages.push(Package {
                package_code: code.clone(),
                product_id: id.clone(),
                round: "1".into(),
                ..Package::default()
            });
            let numbered = readings.iter().zip(1..);
            rows.extend(numbered.map(|(text, n)| bench::extraction("a.csv", &code, n, text)));
        }
    }
    let (judged, _) = bench::run(&registers, rows, &bench::config("us", ""));
    Decided {
        products: judged.products,
        statistics: judged.statistics,
        registers,
        lab_files: Vec::new(),
        understandings: Vec::new(),
        plates: Vec::new(),
        problems: Problems::default(),
        audience: Default::default(),
        under_revision: Vec::new(),
        with_lab: 0,
    }
}

fn summary_of(decided: &Decided) -> summary::SummaryFacts {
    let config = bench::config("us", "");
    summary::summary(decided, &config, None).expect("its charts can be drawn")
}

#[test]
fn four_pairs_are_plotted_and_never_said_to_be_none() {
    let facts = summary_of(&decided(&[
        &[&["6", "7"], &["8", "9"]],
        &[&["6", "7"], &["8", "9"]],
    ]));
    assert_eq!(facts.duplicates.pairs, 4);
    assert!(facts.duplicates.agreement.is_some() && facts.duplicates.range.is_none());
    let config = invented::config(US, "a4");
    let printed = words(&Document::load_mem(&pdf(&facts, &config)).expect("a PDF"));
    assert!(!printed.contains("nothing to plot"), "{printed}");
    let none = summary_of(&decided(&[&[&["<5", "<5"]]]));
    let printed = words(&Document::load_mem(&pdf(&none, &config)).expect("a PDF"));
    assert!(printed.contains("nothing to plot"), "{printed}");
}

#[test]
fn flagged_pairs_and_false_alarms_and_the_assumption_are_explained() {
    let config = invented::config(US, "a4");
    let facts = facts(24, &config);
    let said = plain(&facts.duplicates.notes.join(" "));
    for part in [
        "Pairs that disagree are flagged and left out",
        "At least one of three sound packages is found to disagree in about 14 % of all cases",
        "We propose 6 % (relative_repeatability = 0.06 in programme.toml)",
        "Horwitz function",
    ] {
        assert!(said.contains(part), "{part}: {said}");
    }
    let [_, pairs, flagged, size, median] = &facts.duplicates.repeatability[0];
    let points = &invented::decided(24, &config)
        .statistics
        .range_chart
        .expect("pairs")
        .points;
    let apart = points.iter().filter(|point| !point.agrees).count();
    assert_eq!(
        (pairs, flagged),
        (&(points.len() - apart).to_string(), &apart.to_string())
    );
    assert_eq!(
        (plain(size).as_str(), plain(median).as_str()),
        ("6.1 % (5.2 to 7.4)", "6.3 %")
    );
}

#[test]
fn a_larger_scatter_is_not_called_a_smaller_one() {
    let config = invented::config(US, "a4");
    let mut decided = invented::decided(24, &config);
    let assumption = decided.statistics.assumption.as_mut().expect("assumed");
    assumption.finding = AssumptionFinding::Larger { proposal: 0.31 };
    let facts = summary::summary(&decided, &config, None).expect("its charts can be drawn");
    let said = plain(&facts.duplicates.notes.join(" "));
    assert!(
        said.contains("They scatter more than that") && said.contains("We propose 31 %"),
        "{said}"
    );
}

#[test]
fn rounds_left_out_are_told_and_random_picks_are_an_if() {
    let config = invented::config(US, "a4");
    let mut decided = invented::decided(24, &config);
    decided.statistics.superseded_rounds = 2;
    let facts = summary::summary(&decided, &config, None).expect("its charts can be drawn");
    let said = plain(&facts.bands.says);
    assert!(
        said.contains("each taken once by its latest round (two earlier rounds are left out"),
        "{said}"
    );
    assert!(
        said.contains("If we had picked products at random"),
        "{said}"
    );
    let needed = facts.groups.needed.expect("there are products").lede;
    assert!(
        needed.contains("only if they were a random pick"),
        "{needed}"
    );
}

#[test]
fn means_by_food_group_are_bounds_first() {
    let config = invented::config(US, "a4");
    let facts = facts(24, &config);
    let all = &facts.groups.means[0];
    assert_eq!(all[..4], ["All", "72", "36", "5.6 to 7.3"]);
    assert_eq!(all[4..], ["6.8", "–"]);
    assert!(facts.groups.means.len() > 2);
}

fn sentence(packages: &[&[&str]]) -> String {
    let config = bench::config("us", "");
    let product: JudgedProduct = bench::judged(packages, &config);
    plain(&sheet::sheet(&product, &config).content.verdict.sentence)
}

#[test]
fn a_pass_near_the_limit_is_never_a_plain_one() {
    let near = sentence(&[&["18.9", "20.4"], &["6", "6"], &["7", "7"]]);
    assert!(
        near.contains("Close to the limit: the chance that the true content is at or above the limit of 20 ppm is at least about 43 % for P-1 (19.7 ppm), by the scatter that this programme assumes within a lab alone."),
        "{near}"
    );
    let far = sentence(&[&["12", "12"], &["6", "6"], &["7", "7"]]);
    assert!(!far.contains("Close to the limit"), "{far}");
    let over = sentence(&[&["20.5", "20.5"], &["6", "6"], &["7", "7"]]);
    assert!(
        over.contains("the true content is below the limit of 20 ppm is at least about"),
        "{over}"
    );
    // One package far over decides, whatever another one is near.
    let both = sentence(&[&["20.5", "20.5"], &["60", "61"], &["7", "7"]]);
    assert!(!both.contains("Close to the limit"), "{both}");
}

#[test]
fn disagree_is_explained_with_its_false_alarms() {
    let config = bench::config("us", "");
    let method = |packages: &[&[&str]]| {
        let product = bench::judged(packages, &config);
        plain(&sheet::sheet(&product, &config).content.method.join(" "))
    };
    let apart = method(&[&["6", "160"], &["6", "6"], &["7", "7"]]);
    assert!(
        apart.contains("found to disagree in about 14 % of all cases, by chance alone"),
        "{apart}"
    );
    let calm = method(&[&["6", "6"], &["6", "6"], &["7", "7"]]);
    assert!(!calm.contains("by chance alone"), "{calm}");
    assert!(
        calm.contains("on the wrong side in up to half of all cases"),
        "{calm}"
    );
}

#[test]
fn a_band_holds_only_what_its_name_says() {
    let below = |packages: &[&[&str]]| {
        let facts = summary_of(&decided(&[packages]));
        let heads = facts.bands.heads.iter().map(|head| plain(head));
        heads.take(2).collect::<Vec<_>>()
    };
    assert_eq!(
        below(&[&["<5", "<5"], &["6", "7"]]),
        ["below 5 ppm", "5 to below 20 ppm"]
    );
    assert_eq!(
        below(&[&["<19", "<19"], &["6", "7"]])[0],
        "too little to measure"
    );
    // 2.7 to 5.2 begins below 5.
    let range = below(&[&["<5", "5.4"], &["6", "7"]]);
    assert_eq!(range, ["below 5 ppm", "measured, below 20 ppm"]);
}

/// A loaf of "very low gluten" at 57 mg/kg is within its limit of 100, and nobody may read that it is at or below 20.
#[test]
fn what_is_said_of_products_with_different_limits_names_no_figure_that_is_not_theirs() {
    use crate::workspace::Workspace;
    let workspace = Workspace::new();
    let settings = "[programme]\nname = \"Brambleford Table Watch\"\nshort_name = \"BTW\"\n[rule]\nregime = \"eu\"\n\
        [testing]\npackages_per_product = 1\n";
    workspace.with("programme.toml", settings);
    workspace.with(
        "registers/products.csv",
        "product_id,name,claim,ingredients\np1,Loaf,very low gluten,Rice flour\np2,Rolls,gluten-free,Rice flour\n",
    );
    workspace.with(
        "registers/packages.csv",
        "package_code,product_id,sent_on\nA-1,p1,2031-03-01\nA-2,p2,2031-03-01\n",
    );
    workspace.with(
        "inbox/a.csv",
        "Sample,Extraction,Gluten (mg/kg)\nA-1,1,56\nA-1,2,58\nA-2,1,7\nA-2,2,8\n",
    );
    workspace.run(&["run", "--date", "2031-05-01"]).exits(0);
    let pdf = lopdf::Document::load(workspace.path("out/summary.pdf")).expect("is a PDF");
    let pages: Vec<u32> = pdf.get_pages().into_keys().collect();
    let mut text = pdf.extract_text(&pages).expect("has text");
    text += &workspace.text("out/newsletter/digest.txt");
    text += &workspace.text("out/newsletter/digest.html");
    let text = text.split_whitespace().collect::<Vec<_>>().join(" ");
    for said in [
        "Within the limit of its claim 2 of 2 products",
        "At or below 100 mg/kg. Label: nothing found. Packages: 57.0",
        "At or below 20 mg/kg. Label: nothing found. Packages: 7.5",
        "for gluten-free it is 20 mg/kg",
    ] {
        assert!(text.contains(said), "{said} is not in: {text}");
    }
    let of_all = "At or below 20 mg/kg 2 of 2 products";
    assert!(!text.contains(of_all), "{text}");
}
