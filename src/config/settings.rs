//! A section of `programme.toml`, key by key: each value of the kind that is wanted, or a fault in plain words.

use crate::model::letters::commands;
use crate::model::ppm::Ppm;
use std::ops::Range;
use toml::Spanned;
use toml::de::{DeTable, DeValue};

/// Characters of a text at most: titles of documents hold no more.
const LONGEST_TEXT: usize = 5_000;

/// The most faults that are told: more of them are one mistake, or another file.
const MOST_TOLD: usize = 20;

/// The faults of the settings, each with its line.
pub struct Faults<'t> {
    text: &'t str,
    /// Where each line ends, counted once.
    ends: Vec<usize>,
    found: Vec<(usize, String)>,
}

impl<'t> Faults<'t> {
    /// None yet, in this text.
    pub fn new(text: &'t str) -> Faults<'t> {
        let ends = text.match_indices('\n').map(|(at, _)| at);
        Faults {
            text,
            ends: ends.collect(),
            found: Vec::new(),
        }
    }

    /// Adds one that stands somewhere.
    pub fn at(&mut self, span: &Range<usize>, message: impl AsRef<str>) {
        let line = self.ends.partition_point(|end| *end < span.start) + 1;
        self.found
            .push((line, format!("line {line}: {}", message.as_ref())));
    }

    /// Adds one that stands nowhere, since something is missing.
    pub fn missing(&mut self, message: impl Into<String>) {
        self.found.push((usize::MAX, message.into()));
    }

    /// All of them, from the top; of very many the first, and how many more there are.
    pub fn list(mut self) -> Vec<String> {
        self.found.sort_by_key(|(line, _)| *line);
        // What is missing stands last, and is told in any case.
        let missing = self.found.partition_point(|(line, _)| *line < usize::MAX);
        let more = missing.saturating_sub(MOST_TOLD);
        if more > 0 {
            let counted = format!("{more} further lines have a fault: mend these first");
            self.found
                .splice(MOST_TOLD..missing, [(usize::MAX, counted)]);
        }
        self.found.into_iter().map(|(_, message)| message).collect()
    }

    /// What stands at a place, on one line and shortened.
    fn written(&self, span: &Range<usize>) -> String {
        const LONGEST: usize = 40;
        let raw = self.text.get(span.clone()).unwrap_or_default();
        let line = raw.split_whitespace().collect::<Vec<_>>().join(" ");
        match line.char_indices().nth(LONGEST) {
            Some((end, _)) => format!("{}…", &line[..end]),
            None => line,
        }
    }
}

/// A section, or nothing where it is left out.
#[derive(Clone)]
pub struct Section<'a, 'i> {
    name: String,
    table: Option<&'a DeTable<'i>>,
}

impl<'a, 'i> Section<'a, 'i> {
    /// The section of this name.
    pub fn of(root: &'a DeTable<'i>, name: &str, faults: &mut Faults<'_>) -> Section<'a, 'i> {
        let value = get(root, name);
        let table = value.and_then(|value| value.get_ref().as_table());
        if let (Some(value), None) = (value, table) {
            let written = faults.written(&value.span());
            faults.at(
                &value.span(),
                format!("[{name}] is {written}: a section is wanted, with [{name}] on a line of its own and its settings below"),
            );
        }
        Section {
            name: format!("[{name}]"),
            table,
        }
    }

    /// The sections of this name that may be there several times, `[[layout]]`.
    pub fn all_of(
        root: &'a DeTable<'i>,
        name: &str,
        faults: &mut Faults<'_>,
    ) -> Vec<Section<'a, 'i>> {
        let Some(value) = get(root, name) else {
            return Vec::new();
        };
        let items = value.get_ref().as_array();
        let tables: Option<Vec<_>> =
            items.and_then(|items| items.iter().map(|item| item.get_ref().as_table()).collect());
        let Some(tables) = tables else {
            let message = format!(
                "{name} is no list of sections: write [[{name}]], with two brackets on each side, on a line of its own"
            );
            faults.at(&value.span(), message);
            return Vec::new();
        };
        tables
            .into_iter()
            .enumerate()
            .map(|(index, table)| Section {
                name: format!("[[{name}]] number {}", index + 1),
                table: Some(table),
            })
            .collect()
    }

    /// How a message names it.
    pub fn name(&self) -> &str {
        &self.name
    }

    /// Whether a key is there.
    pub fn has(&self, key: &str) -> bool {
        self.value(key).is_some()
    }

    /// Whether a text is there that says nothing.
    pub fn is_blank(&self, key: &str) -> bool {
        let text = self.value(key).and_then(|value| value.get_ref().as_str());
        text.is_some_and(|text| text.trim().is_empty())
    }

    fn value(&self, key: &str) -> Option<&'a Spanned<DeValue<'i>>> {
        get(self.table?, key)
    }

    /// Adds a fault of a key that is there: what stands there, and what is wanted.
    pub fn fault(&self, key: &str, wanted: &str, faults: &mut Faults<'_>) {
        if let Some(value) = self.value(key) {
            let written = faults.written(&value.span());
            faults.at(
                &value.span(),
                format!("{} {key} is {written}: {wanted}", self.name),
            );
        }
    }

    fn read<T>(
        &self,
        key: &str,
        wanted: &str,
        take: impl Fn(&DeValue<'i>) -> Option<T>,
        faults: &mut Faults<'_>,
    ) -> Option<T> {
        let found = take(self.value(key)?.get_ref());
        if found.is_none() {
            self.fault(key, wanted, faults);
        }
        found
    }

    /// A text that says something; none where it is blank.
    pub fn text(&self, key: &str, faults: &mut Faults<'_>) -> Option<String> {
        let wanted = "a text is wanted, between quotation marks";
        let take = |value: &DeValue<'i>| value.as_str().map(|text| text.trim().to_owned());
        let text = self.read(key, wanted, take, faults)?;
        if text.contains(commands) {
            let wanted = "it holds a control character, or a mark that turns the direction of writing: type it anew";
            self.fault(key, wanted, faults);
            return None;
        }
        if text.chars().count() > LONGEST_TEXT {
            let wanted = format!("it may have {LONGEST_TEXT} characters at most");
            self.fault(key, &wanted, faults);
            return None;
        }
        (!text.is_empty()).then_some(text)
    }

    /// A mail address; that it leads to somebody is not known.
    pub fn mail_address(&self, key: &str, faults: &mut Faults<'_>) -> Option<String> {
        let text = self.text(key, faults)?;
        let parts = text.split_once('@');
        let is_one = parts.is_some_and(|(name, domain)| {
            !name.is_empty() && domain.contains('.') && !domain.contains('@')
        });
        if !is_one || text.contains(char::is_whitespace) {
            let wanted = "a mail address is wanted, such as \"results@programme.example\"";
            self.fault(key, wanted, faults);
            return None;
        }
        Some(text)
    }

    /// An amount in ppm: above 0, and no more than there can be.
    pub fn amount(&self, key: &str, faults: &mut Faults<'_>) -> Option<f64> {
        let wanted = "a number above 0 is wanted, without quotation marks and without a unit, such as 20 or 2.5";
        let take = |value: &DeValue<'i>| number(value).filter(|number| *number > 0.0);
        let amount = self.read(key, wanted, take, faults)?;
        if amount > Ppm::WHOLE.0 {
            let wanted = "it cannot be more than 1000000, which is the whole of a food";
            self.fault(key, wanted, faults);
            return None;
        }
        Some(amount)
    }

    /// A number from 0 on.
    pub fn not_negative(&self, key: &str, faults: &mut Faults<'_>) -> Option<f64> {
        let wanted = "a number from 0 on is wanted, without quotation marks, such as 45 or 45.50";
        let take =
            |value: &DeValue<'i>| number(value).filter(|number| (0.0..=1e9).contains(number));
        self.read(key, wanted, take, faults)
    }

    /// A fraction above 0 and below 1.
    pub fn fraction(&self, key: &str, faults: &mut Faults<'_>) -> Option<f64> {
        let wanted =
            "a fraction above 0 and below 1 is wanted, without quotation marks: 0.30 is 30 %";
        let take =
            |value: &DeValue<'i>| number(value).filter(|number| *number > 0.0 && *number < 1.0);
        self.read(key, wanted, take, faults)
    }

    /// Two fractions, `[0.80, 1.20]`: from above 0 to 1, and from 1 on.
    pub fn fractions_around_one(&self, key: &str, faults: &mut Faults<'_>) -> Option<(f64, f64)> {
        let wanted = "two fractions are wanted, the first above 0 and up to 1, the second from 1 to 10: [0.80, 1.20] is 80 to 120 %";
        let take = |value: &DeValue<'i>| {
            let items = value.as_array()?;
            let mut numbers = items.iter().map(|item| number(item.get_ref()));
            let (low, high) = (numbers.next()??, numbers.next()??);
            let is_around = low > 0.0 && low <= 1.0 && (1.0..=10.0).contains(&high);
            (is_around && numbers.next().is_none()).then_some((low, high))
        };
        self.read(key, wanted, take, faults)
    }

    /// A whole number between two bounds; `why` ends the fault, and may be empty.
    pub fn whole(
        &self,
        key: &str,
        (least, most): (u32, u32),
        why: &str,
        faults: &mut Faults<'_>,
    ) -> Option<u32> {
        let wanted = format!(
            "a whole number from {least} to {most} is wanted, without quotation marks{why}"
        );
        let take = |value: &DeValue<'i>| {
            let number = value.as_integer()?;
            i64::from_str_radix(number.as_str(), number.radix())
                .ok()
                .and_then(|number| u32::try_from(number).ok())
                .filter(|number| (least..=most).contains(number))
        };
        self.read(key, &wanted, take, faults)
    }

    /// Yes or no.
    pub fn flag(&self, key: &str, faults: &mut Faults<'_>) -> Option<bool> {
        let wanted = "true or false is wanted, without quotation marks";
        self.read(key, wanted, |value: &DeValue<'i>| value.as_bool(), faults)
    }

    /// One of several words.
    pub fn word<T: Copy>(
        &self,
        key: &str,
        words: &[(T, &str)],
        faults: &mut Faults<'_>,
    ) -> Option<T> {
        let known: Vec<String> = words
            .iter()
            .map(|(_, word)| format!("\"{word}\""))
            .collect();
        let wanted = format!("it can be {}", known.join(", "));
        let take = |value: &DeValue<'i>| {
            let written = value.as_str()?;
            let found = words.iter().find(|(_, word)| *word == written)?;
            Some(found.0)
        };
        self.read(key, &wanted, take, faults)
    }

    /// Texts by name, `{ sample = "Client ref." }`, each with the place of its name.
    pub fn texts(&self, key: &str, faults: &mut Faults<'_>) -> Vec<(String, Range<usize>, String)> {
        let Some(value) = self.value(key) else {
            return Vec::new();
        };
        let Some(table) = value.get_ref().as_table() else {
            self.fault(
                key,
                "names and texts are wanted, such as { sample = \"Client ref.\" }",
                faults,
            );
            return Vec::new();
        };
        let inner = Section {
            name: format!("{} {key}", self.name),
            table: Some(table),
        };
        table
            .keys()
            .filter_map(|name| {
                let text = inner.text(name.get_ref(), faults)?;
                Some((name.get_ref().to_string(), name.span(), text))
            })
            .collect()
    }
}

fn get<'a, 'i>(table: &'a DeTable<'i>, key: &str) -> Option<&'a Spanned<DeValue<'i>>> {
    table
        .iter()
        .find(|(name, _)| name.get_ref() == key)
        .map(|(_, value)| value)
}

fn number(value: &DeValue<'_>) -> Option<f64> {
    match value {
        DeValue::Float(number) => number.as_str().parse().ok(),
        DeValue::Integer(number) => i64::from_str_radix(number.as_str(), number.radix())
            .ok()
            .map(|number| number as f64),
        _ => None,
    }
}
