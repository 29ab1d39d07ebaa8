//! Results sheets in German and Spanish: every sentence of their own is in their language, with the terms of the law there.

use crate::render::products;
use crate::sample::{self, Sample};
use galleyproof::config::Config;
use galleyproof::model::decided::JudgedProduct;
use galleyproof::model::package::Standing;
use galleyproof::model::pair::Repeat;
use galleyproof::model::ppm::Ppm;
use galleyproof::model::rule::{Limit, Regime, Rule};
use galleyproof::render::charts::ruler::Ruler;
use galleyproof::render::facts::sheet::{facts, sheet};
use galleyproof::render::words::limit::LimitWords;
use galleyproof::render::words::{meaning, near_limit, packages, verdict};
use galleyproof::words::Catalogue;
use std::sync::Arc;

fn config(language: &str, rest: &str) -> Config {
    let mut config = sample::config(std::path::Path::new("no/such/folder"), "a4", rest);
    let (language, _) = galleyproof::model::language::Language::ALL
        .iter()
        .find(|(_, tag)| *tag == language)
        .expect("a language that there is");
    config.programme.language = *language;
    config.words = Arc::new(Catalogue::built_in(*language));
    config
}

/// All that a sheet says in its own words, with plain spaces. What is quoted from packages and registers is left out, and so
/// are label, method and provenance.
fn own_words(product: &JudgedProduct, config: &Config) -> Vec<String> {
    let (of, words) = (&product.verdict, &*config.words);
    let product = &sample::with_sheet(product, config);
    let sheet = facts(product, config, None);
    let content = sheet.content.clone();
    let table = content.table;
    let mut all = vec![
        content.verdict.words,
        content.verdict.count,
        verdict::sentence(of, config),
        near_limit::beside_the_verdict(product, words).unwrap_or_default(),
        meaning::says(product, config),
        meaning::says_not(product, words),
        Ruler::of(product, words).key(),
        sheet.edition.line,
        sheet.carried_words,
        table.heads.extractions,
        table.heads.difference,
        table.heads.result,
        sheet.document.page,
    ];
    all.extend(Ruler::of(product, words).in_words());
    all.extend(words.fixed(&["sheet", "charts"]).into_values());
    let notes = packages::remarks(&of.packages, of.rule, config);
    let is_quoted = |note: &String| of.packages.iter().any(|one| quotes(one, note));
    all.extend(notes.into_iter().filter(|note| !is_quoted(note)));
    let plain = |text: String| text.replace(['\u{a0}', '\u{200b}'], " ");
    all.into_iter().map(plain).collect()
}

/// Whether a note holds the reason that a person gave in the register.
fn quotes(package: &galleyproof::model::package::PackageResult, note: &str) -> bool {
    use galleyproof::model::pair::Usage;
    let extractions = package.pair.extractions.iter();
    let mut reasons = extractions.filter_map(|paired| match &paired.usage {
        Usage::Excluded { reason, .. } => Some(reason.as_str()),
        _ => None,
    });
    let note = note.to_lowercase();
    reasons.any(|reason| note.contains(reason.trim_end_matches('.').to_lowercase().as_str()))
}

const RULES: [&str; 4] = [
    "",
    "[rule]\nregime = \"eu\"\n",
    "[rule]\nregime = \"au-nz\"\n",
    "[rule]\ndecision = \"guarded\"\nrelative_expanded_uncertainty = 0.30\n",
];

#[test]
fn no_sentence_of_a_sheet_is_left_in_english() {
    const ENGLISH: [&str; 15] = [
        " the ",
        " of ",
        " and ",
        " is ",
        " are ",
        " it ",
        "package",
        "below",
        "above",
        "limit ",
        "lab ",
        "extraction ",
        "result ",
        "gluten free",
        "page ",
    ];
    for language in ["de", "es"] {
        let mut said = 0;
        for rule in RULES {
            let config = config(language, rule);
            for product in products::all(&config) {
                for text in own_words(&product, &config) {
                    let lower = format!(" {} ", text.to_lowercase());
                    for word in ENGLISH {
                        assert!(!lower.contains(word), "{language}: “{word}” in “{text}”");
                    }
                    said += 1;
                }
            }
        }
        assert!(said > 500, "{said} texts were looked at");
    }
}

#[test]
fn figures_have_the_decimal_comma_and_dates_the_words_of_the_language() {
    let config = config("de", "");
    let product = products::fullest(&config);
    let content = sheet(&product, &config).content;
    let plain = |text: &str| text.replace('\u{a0}', " ");
    let told = &content.story[3];
    assert_eq!(told.what, "Hersteller unterrichtet");
    assert_eq!(
        plain(&told.when).replace('\u{200b}', ""),
        "25. März 2031; Antwort erbeten bis 15. April 2031"
    );
    let rows = &content.table.packages;
    assert_eq!(rows[2].result, "29,9");
    assert_eq!(
        rows[2].rows[0].cells[0]
            .as_ref()
            .map(|cell| cell.figure.as_str()),
        Some("31,5")
    );
    let sentence = plain(&content.verdict.sentence);
    assert!(
        sentence.starts_with("In einer Packung wurden 29,9 ppm gemessen."),
        "{sentence}"
    );
}

#[test]
fn the_law_has_its_own_name_in_each_language() {
    let rule = |regime: Regime| Rule {
        regime,
        limit: regime.limit().unwrap_or(Limit::amount(Ppm(20.0), false)),
        decision: galleyproof::model::rule::Decision::Simple,
    };
    let said = |language, regime| {
        let config = config(language, "");
        let source = LimitWords::of(rule(regime), &config.words).source();
        source.replace('\u{a0}', " ")
    };
    assert_eq!(
        said("de", Regime::Eu),
        "Grenzwert: höchstens 20 mg/kg (Durchführungsverordnung (EU) Nr. 828/2014)."
    );
    assert_eq!(
        said("es", Regime::Eu),
        "Límite: no más de 20 mg/kg (Reglamento de Ejecución (UE) n.º 828/2014)."
    );
    for language in ["en", "de", "es"] {
        for (regime, word) in Regime::ALL {
            let said = said(language, *regime);
            let figure = rule(*regime).limit.ppm.0.to_string();
            assert!(said.contains(&figure), "{language}, {word}: {said}");
        }
    }
}

#[test]
fn packages_beside_those_over_the_limit_are_named() {
    let config = config("en", RULES[3]);
    let mut product = Sample::new(&config, "0710", "Rye-free Crisps")
        .package("A", &["40.0", "42.0"])
        .package("B", &["24.0", "24.6"])
        .package("C", &["<5", "<5"])
        .done();
    product.verdict.packages[1].standing = Standing::Inconclusive;
    let said = sheet(&product, &config).content.verdict;
    assert_eq!(
        said.count,
        "1 of 3 packages tested at or above the limit even with the test’s uncertainty taken off."
    );
    let last = "Too close to the limit to call: package 0710-B.";
    assert!(
        said.sentence.replace('\u{200b}', "").ends_with(last),
        "{}",
        said.sentence
    );
}

#[test]
fn a_mean_that_is_too_close_to_the_limit_is_not_said_to_decide() {
    let config = config("en", RULES[3]);
    let mut product = Sample::new(&config, "0711", "Puffs")
        .package("A", &["18.0", "21.0"])
        .done();
    let note = |product: &JudgedProduct| {
        packages::remarks(&product.verdict.packages, product.verdict.rule, &config)[0].clone()
    };
    product.verdict.packages[0].standing = Standing::Within;
    assert!(note(&product).ends_with("Their mean decides: 19.5."));
    product.verdict.packages[0].standing = Standing::Inconclusive;
    assert!(note(&product).ends_with("Their mean, 19.5, is too close to it to decide."));
}

#[test]
fn a_bound_above_the_assays_own_is_not_its_lowest_answer() {
    let config = config("en", "");
    let says = |readings: &[&str]| {
        let mut product = Sample::new(&config, "0712", "Puffs")
            .package("A", readings)
            .package("B", readings)
            .package("C", readings)
            .done();
        for package in &mut product.verdict.packages {
            for paired in &mut package.pair.extractions {
                paired.extraction.lloq = Ppm(5.0);
            }
        }
        meaning::says(&product, &config).replace('\u{a0}', " ")
    };
    let lowest = "That is the lowest answer this test gives.";
    assert!(says(&["<5", "<5"]).contains(lowest));
    let loose = says(&["<19", "<19"]);
    assert!(!loose.contains(lowest), "{loose}");
}

#[test]
fn a_repeat_is_told_with_its_reason_and_who_decided_it() {
    let config = config("en", "");
    let mut product = products::six_with_repeat(&config);
    let rule = product.verdict.rule;
    let notes = |product: &JudgedProduct| {
        packages::remarks(&product.verdict.packages, rule, &config)
            .join(" ")
            .replace('\u{a0}', " ")
    };
    assert!(
        notes(&product).contains("The reason is not on record."),
        "{}",
        notes(&product)
    );
    let repeat = Repeat {
        reason: "the first pair differs too much".to_owned(),
        by: "I. Marsh".to_owned(),
        on: sample::day(3, 20),
    };
    for package in &mut product.verdict.packages {
        for paired in &mut package.pair.extractions {
            paired.repeat = (paired.extraction.number > 2).then(|| repeat.clone());
        }
    }
    let table = facts(&sample::with_sheet(&product, &config), &config, None)
        .content
        .table
        .clone();
    let rows = table.packages.iter().flat_map(|package| &package.rows);
    let told: Vec<&str> = rows.filter_map(|row| row.told.as_deref()).collect();
    let told = told.join(" ").replace('\u{a0}', " ");
    let wanted = "extractions 3 and 4 are a repeat, decided by I. Marsh on 20 March 2031. The first pair differs too much.";
    assert!(told.contains(wanted), "{told}");
    assert!(!notes(&product).contains("not on record"), "{told}");
}
