//! Sentences outside the tables: what the results are in, and a laboratory's name.

use crate::gather::facts::Facts;
use crate::gather::tables::factors;
use crate::gather::tables::units;
use crate::gather::text;

/// A sentence outside tables that says what the results are in: "All results in mg/kg".
pub fn unit(facts: &mut Facts, line: &str) {
    let words = text::words(line);
    const SAYS: [&str; 32] = [
        "results in",
        "results are in",
        "results expressed",
        "result in",
        "results as",
        "results are expressed",
        "results reported",
        "results are reported",
        "values in",
        "values are in",
        "all values",
        "all results",
        "concentrations in",
        "reported in",
        "reported as",
        "expressed in",
        "expressed as",
        "calculated as",
        "ergebnisse in",
        "ergebnisse als",
        "angaben in",
        "angegeben als",
        "berechnet als",
        "werte in",
        "resultats en",
        "resultats exprimes",
        "exprimes en",
        "resultados en",
        "expresados como",
        "expresados en",
        "risultati in",
        "espressi come",
    ];
    if !SAYS.iter().any(|phrase| words.contains(phrase)) {
        return;
    }
    facts.named.express(line);
    if facts.unit.is_none() {
        let parted = units::part(line);
        match factors::worked_on(line) {
            Some(worked_on) => facts.foreign = Some(worked_on.into()),
            None => facts.unit = parted.unit,
        }
        facts.quantity = facts
            .quantity
            .or(parted.unit.and_then(|unit| unit.quantity));
    }
}

/// A title line that is a laboratory's name and nothing else: "Fenwick Hollow Laboratory".
pub fn names_a_lab(line: &str) -> bool {
    const SAYS: [&str; 9] = [
        "laboratory",
        "laboratories",
        "labs",
        "labor",
        "laboratorium",
        "laboratoire",
        "laboratorio",
        "analytical",
        "analytics",
    ];
    const OTHERWISE: [&str; 22] = [
        "report",
        "reports",
        "certificate",
        "result",
        "results",
        "test",
        "tested",
        "method",
        "methods",
        "sample",
        "samples",
        "data",
        "of",
        "by",
        "the",
        "no",
        "code",
        "manager",
        "director",
        "id",
        "bericht",
        "rapport",
    ];
    const MOST_WORDS: usize = 7;
    let words = text::words(line);
    let words: Vec<&str> = words.split(' ').collect();
    (2..=MOST_WORDS).contains(&words.len())
        && words.iter().any(|word| SAYS.contains(word))
        && !words
            .iter()
            .any(|word| OTHERWISE.contains(word) || word.contains(|c: char| c.is_ascii_digit()))
        && !line.contains([':', ';', '='])
}
