//! Ingredient statements: what each word bears on the claim, under every regime.

use crate::judge::bench::{codes, config, registers, run};
use galleyproof::judge::labels::{Terms, review};
use galleyproof::model::label::{LabelFinding, LabelLanguage, LabelReview, TermClass, TermRow};
use galleyproof::model::place::Place;
use galleyproof::model::problem::Code;
use galleyproof::model::registers::{Oats, Product};
use galleyproof::model::rule::Regime;

fn screen(ingredients: &str, regime: Regime, oats: Oats, claim: &str) -> LabelReview {
    let product = Product {
        ingredients: Some(ingredients.into()),
        claim: claim.into(),
        oats,
        ..Product::default()
    };
    review(&product, regime, Terms::built_in())
}

fn us(ingredients: &str) -> LabelReview {
    screen(ingredients, Regime::Us, Oats::None, "gluten-free")
}

#[track_caller]
fn finds(ingredients: &str, finding: LabelFinding) {
    let review = us(ingredients);
    assert_eq!(
        review.finding, finding,
        "{ingredients}: {:#?}",
        review.terms
    );
}

#[test]
fn words_that_only_look_like_gluten_sources() {
    for harmless in [
        "buckwheat flour, buckwheat groats",
        "maltodextrin, maltitol, maltol, isomalt, maltose",
        "goat milk, goat cheese",
        "coating (sugar, cocoa)",
        "kale",
        "brandy",
        "root beer, ginger ale",
        "corn gluten, corn gluten meal",
        "glutinous rice",
        "gluten-free flour",
        "contains no wheat",
        "rice flour, corn flour, potato flour",
        "corn semolina",
        "rice vermicelli",
        "mung bean vermicelli",
        "Job's tears, Chinese pearl barley",
        "ryegrass",
        "malic acid, xanthan gum, guar gum, lecithin, citric acid, baker's yeast, buttermilk",
        "millet, sorghum, teff, fonio, quinoa, amaranth, rice, maize, hominy, grits",
        "distilled vinegar",
        "pasta (corn, rice)",
        "batter (rice flour, corn starch, salt)",
        "modified corn starch, modified food starch",
        "gluten-free breadcrumbs (rice flour)",
        "Allergens: see ingredients in bold, including cereals containing gluten",
        "brown rice syrup",
        "Buchweizenmehl, Reismehl, Maisstärke",
        "farine de sarrasin, blé noir, farine de riz",
        "trigo sarraceno, harina de arroz",
        "grano saraceno, farina di riso",
        "oyster mushrooms, spelt-free",
    ] {
        finds(harmless, LabelFinding::None);
    }
}

#[test]
fn words_that_always_name_a_gluten_source() {
    for source in [
        "wheat",
        "Wheat*, sugar. *organic",
        "wheat¹ flour",
        "enriched flour (niacin, reduced iron, thiamine mononitrate)",
        "flour, sugar",
        "durum semolina",
        "spelt, kamut, farro",
        "couscous",
        "vital wheat gluten",
        "hydrolysed wheat protein",
        "breadcrumbs",
        "triticale",
        "rye",
        "pearl barley",
        "corn, sugar, malt extract",
        "barley malt syrup",
        "malt vinegar",
        "malted milk powder",
        "beer",
        "barley miso",
        "chocolate (sugar, crisp (rice, malt extract), cocoa butter)",
        "Contains: wheat",
        "rice, corn/wheat flour",
        "no added sugar, wheat flour, salt",
        "rice flour. May contain milk. Contains wheat.",
        "barley malt (may contain nuts)",
        "gluten",
        "wheat and gluten-free oats",
        "wheat-free, barley malt",
        "rice flour (wheat), salt",
        "cereals containing gluten",
        "Weizenmehl, Zucker",
        "Gerstenmalzextrakt",
        "Dinkelvollkornmehl",
        "Roggenmehl",
        "farine de blé",
        "malt d’orge",
        "seigle",
        "harina de trigo",
        "extracto de malta",
        "centeno, cebada",
        "farina di frumento",
        "semola di grano duro",
        "malto d'orzo",
        "segale",
    ] {
        finds(source, LabelFinding::GlutenSource);
    }
}

#[test]
fn words_that_depend_on_how_it_was_made() {
    for question in [
        "wheat starch",
        "gluten-free wheat starch",
        "wheat germ oil",
        "brewer's yeast",
        "yeast extract",
        "soy sauce",
        "tamari",
        "miso",
        "hydrolysed vegetable protein",
        "natural flavor",
        "caramel colour",
        "seasoning",
        "rice malt",
        "wheatgrass powder",
        "barley grass",
        "soba noodles",
        "multigrain",
        "distilled malt vinegar",
        "barley beta-glucan",
        "Weizenstärke",
        "gluten-free malt extract",
    ] {
        finds(question, LabelFinding::NeedsReview);
    }
}

#[test]
fn precautions_are_kept_apart() {
    let review = us("Rice flour, salt. May contain wheat, rye and barley.");
    assert_eq!(review.finding, LabelFinding::None);
    assert_eq!(review.precautionary, ["May contain wheat, rye and barley"]);
    for precaution in [
        "rice (may contain traces of wheat)",
        "rice flour, may contain wheat",
        "Rice. Made in a facility that also processes wheat, milk and soy.",
        "Rice. Produced on shared equipment with wheat.",
        "Reis. Kann Spuren von Weizen enthalten.",
        "Riz. Peut contenir des traces de blé.",
        "Arroz. Puede contener trigo.",
        "Riso. Può contenere tracce di frumento.",
        "Rice. Not suitable for people with a wheat allergy.",
        "Rice. Wheat may be present.",
    ] {
        let review = us(precaution);
        let none = matches!(review.finding, LabelFinding::None);
        let kept = review.precautionary.len() == 1 || precaution.ends_with("present.");
        assert!(none && kept, "{precaution}: {review:#?}");
    }
}

#[test]
fn what_is_denied_is_no_ingredient() {
    for denial in [
        "Rice. Free from wheat, rye, and barley.",
        "Rice. Free from: wheat, gluten, milk",
        "Rice, contains no wheat or barley",
        "Rice. Does not contain wheat.",
        "Rice flour (no malt), salt",
        "wheat-free tamari-style rice",
        "Reis, weizenfrei, ohne Gerste",
        "riz sans blé",
        "arroz sin trigo",
        "riso senza frumento",
        "Made without wheat.",
    ] {
        let review = us(denial);
        let terms: Vec<_> = review.terms.iter().map(|term| &term.term).collect();
        let only_tamari = terms.iter().all(|term| term.contains("tamari"));
        assert!(only_tamari, "{denial}: {terms:?}");
    }
}

#[test]
fn oats_go_by_what_the_register_knows_and_the_regime_allows() {
    use LabelFinding::{GlutenSource, NeedsReview, None, UnverifiedOats};
    let oats = |regime, oats| screen("oats, sugar", regime, oats, "gluten-free").finding;
    for regime in [
        Regime::Us,
        Regime::Codex,
        Regime::Eu,
        Regime::Uk,
        Regime::Canada,
        Regime::Custom,
    ] {
        assert_eq!(oats(regime, Oats::None), UnverifiedOats);
        assert_eq!(oats(regime, Oats::Unverified), UnverifiedOats);
        assert_eq!(oats(regime, Oats::PurityProtocol), None);
        assert_eq!(oats(regime, Oats::Certified), None);
    }
    for regime in [Regime::AuNz, Regime::Argentina] {
        assert_eq!(
            oats(regime, Oats::Certified),
            GlutenSource,
            "no oats at all"
        );
    }
    assert_eq!(oats(Regime::Chile, Oats::Certified), NeedsReview);
    assert_eq!(us("gluten-free oats").finding, UnverifiedOats);
    let unnamed = screen("rice", Regime::Us, Oats::Unverified, "gluten-free");
    assert_eq!(unnamed.finding, UnverifiedOats, "the register says so");
}

#[test]
fn the_regime_and_the_claim_decide() {
    use LabelFinding::{GlutenSource, NeedsReview, None};
    let find = |text, regime| screen(text, regime, Oats::None, "gluten-free").finding;
    for regime in [
        Regime::Us,
        Regime::Codex,
        Regime::Canada,
        Regime::AuNz,
        Regime::Argentina,
        Regime::Chile,
    ] {
        assert_eq!(find("rice, barley malt", regime), GlutenSource);
    }
    assert_eq!(
        find("rice, barley malt", Regime::Eu),
        NeedsReview,
        "no ingredient limb"
    );
    assert_eq!(find("rice, barley malt", Regime::Uk), NeedsReview);
    assert_eq!(
        find("glucose syrup (wheat)", Regime::Eu),
        None,
        "exempt there"
    );
    assert_eq!(
        find(
            "glucose syrup (from wheat), dextrose from wheat",
            Regime::Uk
        ),
        None
    );
    assert_eq!(find("glucose syrup from wheat", Regime::Us), NeedsReview);
    assert_eq!(find("modified starch", Regime::Eu), NeedsReview);
    assert_eq!(find("modified starch", Regime::Us), None);
    let claims = |claim| screen("wheat flour", Regime::Codex, Oats::None, claim).finding;
    assert_eq!(claims("reduced gluten"), NeedsReview);
    assert_eq!(claims("wheat-free"), NeedsReview);
    assert_eq!(
        claims("free of gluten"),
        NeedsReview,
        "words of another rule"
    );
    assert_eq!(claims("Gluten - FREE"), GlutenSource);
    let custom = screen("barley malt", Regime::Custom, Oats::None, "gluten-free").finding;
    assert_eq!(
        custom, NeedsReview,
        "the programme’s rule says nothing of it"
    );
}

#[test]
fn nothing_to_screen() {
    assert_eq!(us(" ").finding, LabelFinding::NoIngredients);
    let product = Product {
        claim: "gluten-free".into(),
        ..Product::default()
    };
    let review = review(&product, Regime::Us, Terms::built_in());
    assert_eq!(review.finding, LabelFinding::NoIngredients);
}

#[test]
fn the_statement_is_kept_whole_with_its_terms_marked() {
    let statement = "Rice flour*, Malt Extract (Barley), sel; may contain wheat.";
    let review = us(statement);
    let joined: String = review
        .statement
        .iter()
        .map(|piece| piece.text.as_str())
        .collect();
    assert_eq!(joined, statement);
    let marked = review.statement.iter().filter(|piece| piece.marked);
    let marked: Vec<_> = marked.map(|piece| piece.text.as_str()).collect();
    assert_eq!(marked, ["Malt Extract", "Barley"]);
    let terms: Vec<_> = review.terms.iter().map(|term| term.term.as_str()).collect();
    assert_eq!(terms, ["malt extract", "barley"]);
}

#[test]
fn a_programme_adds_its_own_terms_and_hears_of_bad_ones() {
    let row = |term: &str, class: &str| TermRow {
        term: term.into(),
        grain: "barley".into(),
        class: class.into(),
        exceptions: String::new(),
        why: "We asked the maker.".into(),
        source: "letter of 4 March 2031".into(),
        place: Place::file("registers/terms.csv"),
    };
    let product = Product {
        ingredients: Some("rice, Harbour Crumbs".into()),
        ..Product::default()
    };
    let mut registers = registers(product, 1);
    registers.terms = vec![row("harbour crumb", "always"), row("pier dust", "perhaps")];
    let (judged, problems) = run(&registers, vec![], &config("us", ""));
    let label = &judged.products[0].verdict.label;
    assert_eq!(label.finding, LabelFinding::GlutenSource);
    assert_eq!(label.terms[0].printed, "Harbour Crumbs");
    assert!(judged.products[0].verdict.notify_maker);
    assert_eq!(
        codes(&problems),
        [Code::RegisterError, Code::Suspicious, Code::MissingPackage],
        "errors of registers stand first"
    );
}

/// Statements, a line each: finding | regimes | oats | statement | terms as printed, divided by "+". A line with "#" is a heading.
const CASES: &str = include_str!("label_cases.txt");

#[test]
fn every_case_of_the_list() {
    let mut wrong = Vec::new();
    let mut count = 0;
    for case in cases() {
        count += 1;
        let review = case.review(&case.statement);
        let found: Vec<_> = review
            .terms
            .iter()
            .map(|term| term.printed.as_str())
            .collect();
        let found = found.join(" + ");
        if review.finding.word() != case.finding || found != case.terms {
            wrong.push(format!(
                "{} ({:?}): {} [{found}] for {} [{}]",
                case.statement,
                case.regime,
                review.finding.word(),
                case.finding,
                case.terms
            ));
        }
    }
    assert!(count > 250, "{count}");
    assert!(
        wrong.is_empty(),
        "{} of {count}:\n{}",
        wrong.len(),
        wrong.join("\n")
    );
}

/// Capitals, brackets around the whole, an item before and one behind do not change what a list names.
#[test]
fn what_stands_around_a_list_does_not_change_its_finding() {
    let mut wrong = Vec::new();
    for case in cases() {
        let said = &case.statement;
        for other in [
            said.to_uppercase(),
            format!("Ingredients: {said}"),
            format!("({said})"),
            format!("Filling [{said}], salt"),
            format!("sugar, {said}"),
            format!("Salt. {said}"),
            said.replace(", ", " , "),
        ] {
            let review = case.review(&other);
            if review.finding.word() != case.finding {
                wrong.push(format!(
                    "{other} ({:?}): {} for {}",
                    case.regime,
                    review.finding.word(),
                    case.finding
                ));
            }
        }
    }
    assert!(wrong.is_empty(), "{}:\n{}", wrong.len(), wrong.join("\n"));
}

/// A line of the list under one of its regimes.
struct Case {
    finding: String,
    regime: Regime,
    oats: Oats,
    statement: String,
    terms: String,
}

impl Case {
    fn review(&self, statement: &str) -> LabelReview {
        screen(statement, self.regime, self.oats, "gluten-free")
    }
}

fn cases() -> Vec<Case> {
    let mut cases = Vec::new();
    for line in CASES
        .lines()
        .filter(|line| !line.trim().is_empty() && !line.starts_with('#'))
    {
        let cells: Vec<&str> = line.split('|').map(str::trim).collect();
        let [finding, regimes, oats, statement, terms] = cells[..] else {
            panic!("five cells: {line}");
        };
        let oats = match oats {
            "certified" => Oats::Certified,
            "" => Oats::None,
            other => panic!("{other}"),
        };
        for regime in regimes.split(' ') {
            let (regime, _) = Regime::ALL
                .iter()
                .find(|(_, word)| *word == regime)
                .unwrap_or_else(|| panic!("{regime}: {line}"));
            cases.push(Case {
                finding: finding.to_owned(),
                regime: *regime,
                oats,
                statement: statement.to_owned(),
                terms: terms.to_owned(),
            });
        }
    }
    cases
}

#[test]
fn an_unknown_claim_accuses_nobody() {
    for regime in Regime::ALL
        .iter()
        .map(|(regime, _)| *regime)
        .filter(|regime| *regime != Regime::Custom)
    {
        for claim in ["", "wheat-free", "natural", "very low gluten-ish"] {
            for (text, finding) in [
                ("wheat flour", LabelFinding::NeedsReview),
                ("oats", LabelFinding::NeedsReview),
                ("soy sauce", LabelFinding::NeedsReview),
                ("rice, salt", LabelFinding::None),
                ("", LabelFinding::None),
            ] {
                let review = screen(text, regime, Oats::None, claim);
                assert_eq!(review.finding, finding, "{text} {claim} {regime:?}");
                let always = review
                    .terms
                    .iter()
                    .any(|term| term.class == TermClass::Always);
                assert!(!always, "{text} {claim} {regime:?}");
            }
        }
    }
}

#[test]
fn a_statement_says_in_which_languages_it_was_read() {
    use LabelLanguage::{English, French, German, Italian, Spanish};
    for (text, languages) in [
        ("Rice flour, water, salt", vec![English]),
        ("Reismehl, Wasser, Salz", vec![German]),
        ("Farine de riz, eau, sel", vec![French]),
        ("Harina de arroz, agua, sal", vec![Spanish]),
        ("Farina di riso, acqua, sale", vec![Italian]),
        (
            "Rice flour, water, salt / Reismehl, Wasser, Salz",
            vec![English, German],
        ),
    ] {
        let review = us(text);
        assert_eq!(
            (review.languages, review.unread),
            (languages, false),
            "{text}"
        );
    }
    for strange in [
        "Mąka kukurydziana, cukier, sól, skrobia pszenna",
        "Maïszetmeel, suiker, zout, tarwebloem",
        "Majsstärkelse, socker, vetemjöl",
        "水、砂糖、小麦粉",
        "мука пшеничная, соль",
        "Kukuřičná mouka, cukr, sůl, pšeničná mouka",
    ] {
        let review = us(strange);
        assert!(
            review.unread && review.languages.is_empty(),
            "{strange}: {review:#?}"
        );
        assert_eq!(review.finding, LabelFinding::NeedsReview, "{strange}");
    }
}
