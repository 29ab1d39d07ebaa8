//! From what was typed to what a run may rely on: every fault is collected, none is replaced by a default.

use super::layout;
use super::planning;
use super::plate;
use super::settings::{Faults, Section};
use super::unknown;
use super::{Attach, Config, CsvKind, Data, Lab, Paper, Programme, Publishing, Testing};
use crate::model::extraction::AssayKind;
use crate::model::language::Language;
use crate::model::ppm::Ppm;
use crate::model::rule::{Decision, Limit, Regime, Rule};
use crate::words::{Catalogue, say};
use std::path::Path;
use toml::de::DeTable;

/// Checks the text of a `programme.toml`; all faults, or the settings.
pub fn check(text: &str, root: &Path) -> Result<Config, Vec<String>> {
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let (table, errors) = DeTable::parse_recoverable(text);
    let mut faults = Faults::new(text);
    if !errors.is_empty() {
        for error in errors {
            let span = error.span().unwrap_or_default();
            faults.at(&span, format!("this is no TOML: {}", error.message()));
        }
        unknown::find(table.get_ref(), &mut faults);
        return Err(faults.list());
    }
    let table = table.get_ref();
    unknown::find(table, &mut faults);
    let mut section = |name: &str| Section::of(table, name, &mut faults);
    let [by_programme, by_publishing] = ["programme", "publishing"].map(&mut section);
    let [by_rule, by_testing, by_lab] = ["rule", "testing", "lab"].map(&mut section);
    let [by_planning, by_plate, by_data] = ["planning", "plate", "data"].map(&mut section);
    let programme = programme(&by_programme, &by_publishing, &mut faults);
    let publishing = publishing(&by_publishing, &mut faults);
    let testing = testing(&by_testing, &mut faults);
    let rule = rule(&by_rule, testing.lod, &mut faults);
    let words = super::words::built_in(programme.language);
    let lab = lab(&by_lab, &words, &mut faults);
    let planning = planning::read(&by_planning, &mut faults);
    let plate = plate::read(&by_plate, &mut faults);
    let data = Data {
        csv: by_data
            .word("csv", CsvKind::ALL, &mut faults)
            .unwrap_or_default(),
        licence: by_data.text("licence", &mut faults),
    };
    let layouts = Section::all_of(table, "layout", &mut faults)
        .iter()
        .map(|section| layout::read(section, &mut faults))
        .collect();
    let faults = faults.list();
    if !faults.is_empty() {
        return Err(faults);
    }
    Ok(Config {
        root: root.to_owned(),
        programme,
        publishing,
        rule,
        testing,
        lab,
        planning,
        plate,
        data,
        layouts,
        words,
    })
}

fn programme(section: &Section, publishing: &Section, faults: &mut Faults) -> Programme {
    let required = |key: &str, faults: &mut Faults| {
        let given = section.text(key, faults);
        let is_blank = section.has(key) && section.is_blank(key);
        if given.is_none() && (is_blank || !section.has(key)) {
            faults.missing(format!("[programme] needs `{key}`"));
        }
        given.unwrap_or_default()
    };
    let short_name = required("short_name", faults);
    if !short_name
        .chars()
        .all(|c| c.is_ascii_alphanumeric() || c == '-')
    {
        let wanted = "only letters A to Z, digits and '-' can be used";
        section.fault("short_name", wanted, faults);
    }
    let reply = days("reply_days", &[section, publishing], 15, faults);
    let publish = days("publish_days", &[section, publishing], 22, faults);
    if publish < reply {
        let wanted = format!(
            "it must not be below reply_days ({reply}): a maker has that long to answer before anything is published"
        );
        let holder = [section, publishing]
            .into_iter()
            .find(|section| section.has("publish_days"));
        match holder {
            Some(holder) => holder.fault("publish_days", &wanted, faults),
            None => faults.missing(format!(
                "[publishing] publish_days is {publish} where it is left out: {wanted}"
            )),
        }
    }
    Programme {
        name: required("name", faults),
        short_name,
        email: section.mail_address("email", faults),
        address: section.text("address", faults),
        website: section.text("website", faults),
        site: site(section, faults),
        director: section.text("director", faults),
        regulator: section.text("regulator", faults),
        corrections: section.text("corrections", faults),
        reply_days: reply,
        publish_days: publish,
        statement: section.text("statement", faults),
        retained: section.text("retained", faults),
        paper: section
            .word("paper", Paper::ALL, faults)
            .unwrap_or(Paper::A4),
        language: section
            .word("language", Language::ALL, faults)
            .unwrap_or_default(),
    }
}

/// The address of the web pages, without a stroke at its end.
fn site(section: &Section, faults: &mut Faults) -> Option<String> {
    let written = section.text("site", faults)?;
    let is_address = ["https://", "http://"].iter().any(|scheme| {
        let rest = written.strip_prefix(scheme);
        rest.is_some_and(|rest| !rest.is_empty() && !rest.contains(char::is_whitespace))
    });
    if !is_address {
        section.fault("site", "an address that begins with https://", faults);
        return None;
    }
    Some(written.trim_end_matches('/').to_owned())
}

/// A number of days, in whichever of the sections it stands.
fn days(key: &str, sections: &[&Section], default: u32, faults: &mut Faults) -> u32 {
    let read: Vec<(&Section, u32)> = sections
        .iter()
        .filter_map(|section| Some((*section, section.whole(key, (1, 3650), "", faults)?)))
        .collect();
    if let [(first, one), (second, other)] = read.as_slice()
        && one != other
    {
        let wanted = format!("{} says {one}: keep one of the two", first.name());
        second.fault(key, &wanted, faults);
    }
    read.last().map_or(default, |(_, days)| *days)
}

fn publishing(section: &Section, faults: &mut Faults) -> Publishing {
    Publishing {
        report_days: section
            .whole("report_days", (1, 3650), "", faults)
            .unwrap_or(30),
        attach: section
            .word("attach", Attach::ALL, faults)
            .unwrap_or_default(),
    }
}

fn lab(section: &Section, words: &Catalogue, faults: &mut Faults) -> Lab {
    let kinds = [
        (AssayKind::Sandwich, "sandwich"),
        (AssayKind::Competitive, "competitive"),
    ];
    Lab {
        name: section
            .text("name", faults)
            .unwrap_or_else(|| words.say(&say::lab_unnamed())),
        email: section.mail_address("email", faults),
        address: section.text("address", faults),
        assay: section
            .text("assay", faults)
            .unwrap_or_else(|| "sandwich R5 ELISA, cocktail extraction".to_owned()),
        assay_kind: section
            .word("assay_kind", &kinds, faults)
            .unwrap_or(AssayKind::Sandwich),
    }
}

/// The rule. Where the law knows no figure but "not detected", the figure is the lowest quantity that the assay detects.
fn rule(section: &Section, lod: Ppm, faults: &mut Faults) -> Rule {
    let regime = section
        .word("regime", Regime::ALL, faults)
        .unwrap_or(Regime::Us);
    let ppm = section.amount("limit_ppm", faults).map(Ppm);
    let passes = section.flag("limit_passes", faults);
    let limit = match (regime.limit(), ppm) {
        (Some(own), _) if regime == Regime::AuNz => {
            if section.has("limit_ppm") {
                let wanted = "`au-nz` has no limit: what counts is whether gluten is detected. Leave limit_ppm out, and give lod_ppm in [testing]";
                section.fault("limit_ppm", wanted, faults);
            }
            Limit { ppm: lod, ..own }
        }
        (Some(own), ppm) => Limit::amount(ppm.unwrap_or(own.ppm), own.passes),
        (None, ppm) => {
            if !section.has("limit_ppm") {
                faults.missing("[rule] regime is `custom`: then `limit_ppm` is needed");
            }
            Limit::amount(ppm.unwrap_or(Ppm(20.0)), passes.unwrap_or(false))
        }
    };
    if regime != Regime::Custom {
        let wanted = format!(
            "it can be given with regime `custom` only: `{}` settles it itself",
            regime.word()
        );
        section.fault("limit_passes", &wanted, faults);
    }
    Rule {
        regime,
        limit,
        decision: decision(section, faults),
    }
}

fn decision(section: &Section, faults: &mut Faults) -> Decision {
    const KEY: &str = "relative_expanded_uncertainty";
    let uncertainty = section.fraction(KEY, faults);
    let words = [(false, "simple"), (true, "guarded")];
    let guarded = section.word("decision", &words, faults).unwrap_or(false);
    if guarded && !section.has(KEY) {
        faults.missing(format!(
            "[rule] decision is `guarded`: then `{KEY}` is needed, as a fraction (0.30 is 30 %, k = 2)"
        ));
    }
    match uncertainty {
        Some(relative_expanded_uncertainty) if guarded => Decision::Guarded {
            relative_expanded_uncertainty,
        },
        _ => Decision::Simple,
    }
}

fn testing(section: &Section, faults: &mut Faults) -> Testing {
    let lloq = section.amount("lloq_ppm", faults).unwrap_or(5.0);
    let uloq = section
        .amount("uloq_ppm", faults)
        .unwrap_or(f64::max(80.0, lloq * 2.0));
    if uloq <= lloq {
        let wanted = format!("it must be above lloq_ppm ({lloq})");
        section.fault("uloq_ppm", &wanted, faults);
    }
    let lod = section.amount("lod_ppm", faults);
    let packages = section.whole("packages_per_product", (1, 1000), "", faults);
    let why = ": nothing is decided on one extraction";
    let extractions = section.whole("extractions_per_package", (2, 1000), why, faults);
    Testing {
        packages_per_product: packages.unwrap_or(3) as usize,
        extractions_per_package: extractions.unwrap_or(2) as usize,
        lloq: Ppm(lloq),
        lod: Ppm(lod.unwrap_or(3.0)),
        uloq: Ppm(uloq),
        relative_repeatability: section
            .fraction("relative_repeatability", faults)
            .unwrap_or(0.15),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const LEAST: &str = "[programme]\nname = \"Tidewater Kitchen Works\"\nshort_name = \"TKW\"\n";

    fn parse(rest: &str) -> Result<Config, Vec<String>> {
        check(&format!("{LEAST}{rest}"), Path::new("."))
    }

    #[test]
    fn the_least_that_is_needed_gives_the_defaults() {
        let config = parse("").expect("is enough");
        assert_eq!(config.rule.regime, Regime::Us);
        assert_eq!(config.testing.packages_per_product, 3);
        assert_eq!(config.testing.lloq, Ppm(5.0));
        assert_eq!(config.programme.reply_days, 15);
    }

    #[test]
    fn an_unknown_key_is_named_with_its_line_and_the_nearest() {
        let faults = parse("[rule]\nlimit_pmm = 20.0\n[tests]\n").expect_err("two unknown words");
        assert_eq!(
            faults,
            [
                "line 5: unknown key in [rule]: `limit_pmm`; the nearest known one is `limit_ppm`",
                "line 6: unknown section or key: `tests`; the nearest known one is `testing`",
            ]
        );
    }

    #[test]
    fn all_faults_are_named_at_once() {
        let faults = parse("[rule]\nregime = \"custom\"\ndecision = \"guarded\"\n[testing]\nextractions_per_package = 1\n")
            .expect_err("three faults");
        assert_eq!(faults.len(), 3, "{faults:#?}");
    }

    #[test]
    fn a_wrong_kind_or_word_is_told_with_key_line_find_and_wish() {
        for (written, expected) in [
            (
                "[testing]\nlloq_ppm = \"5 ppm\"",
                "line 5: [testing] lloq_ppm is \"5 ppm\": a number above 0 is wanted, without quotation marks and without a unit, such as 20 or 2.5",
            ),
            (
                "reply_days = \"15\"",
                "line 4: [programme] reply_days is \"15\": a whole number from 1 to 3650 is wanted, without quotation marks",
            ),
            (
                "email = \"nobody\"",
                "line 4: [programme] email is \"nobody\": a mail address is wanted, such as \"results@programme.example\"",
            ),
            (
                "email = 5",
                "line 4: [programme] email is 5: a text is wanted, between quotation marks",
            ),
            (
                "language = \"fr\"",
                "line 4: [programme] language is \"fr\": it can be \"en\", \"de\", \"es\"",
            ),
            (
                "[publishing]\nattach = true",
                "line 5: [publishing] attach is true: it can be \"excerpt\", \"whole\", \"none\"",
            ),
            (
                "rule = 3",
                "line 4: unknown key in [programme]: `rule`; the nearest known one is `name`",
            ),
            (
                "[rule]\nlimit_passes = \"yes\"\nregime = \"custom\"\nlimit_ppm = 3",
                "line 5: [rule] limit_passes is \"yes\": true or false is wanted, without quotation marks",
            ),
            (
                "[rule]\nregime = \"au-nz\"\nlimit_ppm = 3.0",
                "line 6: [rule] limit_ppm is 3.0: `au-nz` has no limit: what counts is whether gluten is detected. Leave limit_ppm out, and give lod_ppm in [testing]",
            ),
            (
                "[testing]\nextractions_per_package = 1",
                "line 5: [testing] extractions_per_package is 1: a whole number from 2 to 1000 is wanted, without quotation marks: nothing is decided on one extraction",
            ),
            (
                "[publishing]\npublish_days = 14",
                "line 5: [publishing] publish_days is 14: it must not be below reply_days (15): a maker has that long to answer before anything is published",
            ),
            (
                "reply_days = 10\n[publishing]\nreply_days = 12",
                "line 6: [publishing] reply_days is 12: [programme] says 10: keep one of the two",
            ),
            (
                "[layout]\nfiles = \"*\"",
                "line 4: layout is no list of sections: write [[layout]], with two brackets on each side, on a line of its own",
            ),
            (
                "[[layout]]\nfiles = \"*\"\ncells = { report = \"4D\" }",
                "line 6: [[layout]] number 1 cells report is \"4D\": a cell is wanted as the spreadsheet shows it, such as \"D4\"",
            ),
        ] {
            assert_eq!(parse(written).expect_err(written), [expected], "{written}");
        }
    }

    #[test]
    fn faults_of_every_kind_are_told_together_from_the_top() {
        let faults = parse("publish_days = \"22\"\nreply_days = \"15\"\n[rule]\nregime = \"usa\"\n[testing]\nlloq_ppm = \"5 ppm\"\nlod = 3\n")
            .expect_err("five faults");
        let lines: Vec<&str> = faults.iter().map(|fault| &fault[..7]).collect();
        assert_eq!(
            lines,
            ["line 4:", "line 5:", "line 7:", "line 9:", "line 10"]
        );
        assert!(!faults.concat().contains("f64"), "{faults:#?}");
    }

    #[test]
    fn what_is_published_when_may_stand_in_either_section() {
        for text in [
            "reply_days = 20\npublish_days = 30\n",
            "[publishing]\nreply_days = 20\npublish_days = 30\n",
        ] {
            let config = parse(text).expect("reads");
            assert_eq!(
                (config.programme.reply_days, config.programme.publish_days),
                (20, 30)
            );
            assert_eq!(config.publishing.report_days, 30);
            assert_eq!(config.publishing.attach, Attach::Excerpt);
        }
    }

    #[test]
    fn what_is_detected_is_the_limit_where_the_law_has_none() {
        let config =
            parse("[rule]\nregime = \"au-nz\"\n[testing]\nlod_ppm = 1.5\n").expect("reads");
        assert_eq!(config.rule.limit.ppm, Ppm(1.5));
    }

    #[test]
    fn names_that_nobody_has_replaced_are_known() {
        let config = parse("").expect("reads");
        assert!(config.placeholders().is_empty());
        let text = "[programme]\nname = \"Name of your programme\"\nshort_name = \"A\"\n";
        let config = check(text, Path::new(".")).expect("reads");
        assert_eq!(config.placeholders(), ["[programme] name"]);
    }

    #[test]
    fn a_regime_brings_its_limit_and_custom_its_own() {
        let eu = parse("[rule]\nregime = \"eu\"\n").expect("reads");
        assert!(eu.rule.limit.passes);
        let own = parse("[rule]\nregime = \"custom\"\nlimit_ppm = 10\nlimit_passes = true\n")
            .expect("reads");
        assert_eq!(own.rule.limit, Limit::amount(Ppm(10.0), true));
    }

    #[test]
    fn layout_columns_are_checked() {
        let layout = "[[layout]]\nfiles = \"*.xlsx\"\ncolumns = { sample = \"Ref\", result_1 = \"A\", result_2 = \"B\" }\n";
        let config = parse(layout).expect("reads");
        assert_eq!(config.layouts[0].columns.len(), 3);
        let found_as_usual = parse("[[layout]]\nfiles = \"*\"\ncolumns = { sample = \"Ref\" }\ncells = { report = \"$D$4\", lloq = \"aa12\" }\n")
            .expect("a result need not be named");
        let cells = &found_as_usual.layouts[0].cells;
        assert_eq!(cells.len(), 2);
        assert!(cells.contains(&(
            super::super::LayoutCell::Lloq,
            super::super::CellRef {
                column: 27,
                row: 12
            }
        )));
        let faults = parse("[[layout]]\nfiles = \"*\"\ncolumns = { sampel = \"Ref\" }\n")
            .expect_err("faults");
        assert!(
            faults[0].contains("nearest known one is `sample`"),
            "{faults:#?}"
        );
    }
}
