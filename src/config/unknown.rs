//! Keys that `programme.toml` cannot have, each with its line and the nearest key that it can.

use super::raw::KEYS;
use toml::Spanned;
use toml::de::{DeTable, DeValue};

/// Names every unknown section and key.
pub fn faults(text: &str, table: &DeTable<'_>) -> Vec<String> {
    let sections: Vec<&str> = KEYS.iter().map(|(section, _)| *section).collect();
    let mut faults = Vec::new();
    for (name, value) in table {
        match KEYS
            .iter()
            .find(|(section, _)| *section == name.get_ref().as_ref())
        {
            Some((section, keys)) => {
                for inner in tables(value.get_ref()) {
                    faults.extend(unknown_keys(text, inner, section, keys));
                }
            }
            None => faults.push(unknown(text, name, &sections, "section or key")),
        }
    }
    faults
}

fn tables<'a, 'i>(value: &'a DeValue<'i>) -> Vec<&'a DeTable<'i>> {
    match value {
        DeValue::Table(table) => vec![table],
        DeValue::Array(items) => items
            .iter()
            .flat_map(|item| tables(item.get_ref()))
            .collect(),
        _ => Vec::new(),
    }
}

fn unknown_keys(text: &str, table: &DeTable<'_>, section: &str, keys: &[&str]) -> Vec<String> {
    table
        .keys()
        .filter(|key| !keys.contains(&key.get_ref().as_ref()))
        .map(|key| unknown(text, key, keys, &format!("key in [{section}]")))
        .collect()
}

fn unknown(
    text: &str,
    key: &Spanned<std::borrow::Cow<'_, str>>,
    known: &[&str],
    what: &str,
) -> String {
    let found = key.get_ref();
    let line = line_of(text, key.span().start);
    let nearest = nearest(found, known);
    format!("line {line}: unknown {what}: `{found}`; the nearest known one is `{nearest}`")
}

/// The line, from 1, on which a byte stands.
pub fn line_of(text: &str, byte: usize) -> usize {
    text.as_bytes()[..byte.min(text.len())]
        .iter()
        .filter(|b| **b == b'\n')
        .count()
        + 1
}

/// The known word that is nearest to what was written.
pub fn nearest<'a>(found: &str, known: &[&'a str]) -> &'a str {
    let likeness = |word: &&&str| strsim::damerau_levenshtein(found, word);
    known
        .iter()
        .min_by_key(likeness)
        .expect("some words are known")
}
