//! Keys that `programme.toml` cannot have, each with its line and the nearest key that it can.

use super::keys::KEYS;
use super::settings::Faults;
use toml::Spanned;
use toml::de::{DeTable, DeValue};

/// Names every unknown section and key.
pub fn find(table: &DeTable<'_>, faults: &mut Faults<'_>) {
    let sections: Vec<&str> = KEYS.iter().map(|(section, _)| *section).collect();
    for (name, value) in table {
        match KEYS
            .iter()
            .find(|(section, _)| *section == name.get_ref().as_ref())
        {
            Some((section, keys)) => {
                for inner in tables(value.get_ref()) {
                    unknown_keys(inner, section, keys, faults);
                }
            }
            None => unknown(name, &sections, "section or key", faults),
        }
    }
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

fn unknown_keys(table: &DeTable<'_>, section: &str, keys: &[&str], faults: &mut Faults<'_>) {
    for key in table.keys() {
        if !keys.contains(&key.get_ref().as_ref()) {
            unknown(key, keys, &format!("key in [{section}]"), faults);
        }
    }
}

fn unknown(
    key: &Spanned<std::borrow::Cow<'_, str>>,
    known: &[&str],
    what: &str,
    faults: &mut Faults<'_>,
) {
    let found = key.get_ref();
    let nearest = nearest(found, known);
    let message = format!("unknown {what}: `{found}`; the nearest known one is `{nearest}`");
    faults.at(&key.span(), message);
}

/// The known word that is nearest to what was written.
pub fn nearest<'a>(found: &str, known: &[&'a str]) -> &'a str {
    let likeness = |word: &&&str| strsim::damerau_levenshtein(found, word);
    known
        .iter()
        .min_by_key(likeness)
        .expect("some words are known")
}
