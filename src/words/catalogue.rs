//! A catalogue: the messages of one language, ours and those that a programme replaces.

use super::faults::{WordFault, line_of};
use super::locale::Locale;
use super::messages::{BUILT_IN, Message, messages, messages_in, say};
use super::trees;
use crate::model::language::Language;
use crate::model::rule::Rule;
use crate::model::said::{Said, Value};
use chrono::NaiveDate;
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use std::collections::{BTreeMap, BTreeSet};
use std::fmt;
use std::sync::LazyLock;

/// The folder of the catalogues, below the template folder.
pub const CATALOGUE_FOLDER: &str = "words";

/// A file of a catalogue: its path below the template folder, and its text.
pub type CatalogueFile<'a> = (&'a str, &'a str);

/// The messages of one language.
pub struct Catalogue {
    language: Language,
    /// The programme's own files, path and text: two catalogues with the same say the same.
    own: Vec<(String, String)>,
    bundle: FluentBundle<FluentResource>,
}

impl Catalogue {
    /// The built-in messages of a language.
    ///
    /// # Panics
    /// Where a built-in catalogue is faulty, which the tests would have found.
    pub fn built_in(language: Language) -> Catalogue {
        Catalogue::with(language, &[]).unwrap_or_else(|faults| {
            let faults: Vec<String> = faults.iter().map(WordFault::to_string).collect();
            panic!("a built-in catalogue is faulty: {}", faults.join("; "))
        })
    }

    /// The built-in messages, and those of a programme's own files in their place.
    ///
    /// # Errors
    /// Every fault of every file, with its line: text that is no catalogue, a message that there is not, one that is given
    /// twice, and one that uses what it is not given.
    pub fn with(
        language: Language,
        own: &[CatalogueFile<'_>],
    ) -> Result<Catalogue, Vec<WordFault>> {
        let tag = language
            .tag()
            .parse()
            .expect("the tags are those of languages");
        let mut bundle = FluentBundle::new_concurrent(vec![tag]);
        // Marks that keep right-to-left names apart: our languages have none, and a search in a PDF would stumble on them.
        bundle.set_use_isolating(false);
        let mut faults = Vec::new();
        let mut found = BTreeSet::new();
        for (path, text) in built_in(language) {
            let resource = parse(path, text, &mut faults);
            found.extend(trees::ids(&resource).into_iter().map(str::to_owned));
            faults.extend(trees::faults(path, &resource));
            bundle.add_resource_overriding(resource);
        }
        faults.extend(missing(language, &found));
        for (path, text) in own {
            let resource = parse(path, text, &mut faults);
            faults.extend(trees::faults(path, &resource));
            bundle.add_resource_overriding(resource);
        }
        if faults.is_empty() {
            let own = own
                .iter()
                .map(|(path, text)| ((*path).to_owned(), (*text).to_owned()));
            Ok(Catalogue {
                language,
                own: own.collect(),
                bundle,
            })
        } else {
            faults.sort();
            Err(faults)
        }
    }

    /// Its language.
    pub fn language(&self) -> Language {
        self.language
    }

    /// How its language writes figures.
    pub fn locale(&self) -> Locale {
        Locale(self.language)
    }

    /// A message in words.
    pub fn say(&self, said: &Said) -> String {
        let message = self
            .bundle
            .get_message(said.id)
            .expect("every catalogue has every message");
        let pattern = message.value().expect("a message has a text");
        let mut given = FluentArgs::with_capacity(said.values.len());
        for (name, value) in &said.values {
            given.set(*name, self.value(value));
        }
        let mut errors = Vec::new();
        let worded = self
            .bundle
            .format_pattern(pattern, Some(&given), &mut errors);
        debug_assert!(errors.is_empty(), "{}: {errors:?}", said.id);
        worded.into_owned()
    }

    /// Several messages in words, each by itself.
    pub fn each(&self, said: impl IntoIterator<Item = Said>) -> Vec<String> {
        said.into_iter().map(|said| self.say(&said)).collect()
    }

    /// Several messages in words, one sentence after the other.
    pub fn text(&self, said: impl IntoIterator<Item = Said>) -> String {
        self.each(said).join(" ")
    }

    /// A value as its message prints it.
    fn value<'a>(&self, value: &'a Value) -> FluentValue<'a> {
        match value {
            Value::Text(text) => FluentValue::from(text.as_str()),
            Value::Count(count) => FluentValue::from(*count),
            Value::Figure(_) | Value::Place(_) | Value::Items(_) => {
                FluentValue::from(self.plain(value))
            }
        }
    }

    /// A value in words, as it stands in a sentence.
    pub(super) fn plain(&self, value: &Value) -> String {
        match value {
            Value::Text(text) => text.clone(),
            Value::Count(count) => count.to_string(),
            Value::Figure(figure) => self.locale().figure(figure),
            Value::Place(place) => self.place(place),
            Value::Items(items) => self.items(items),
        }
    }

    /// The messages of these groups that are given nothing, by name: headings and the like, which a template prints as they are.
    pub fn fixed(&self, groups: &[&str]) -> BTreeMap<&'static str, String> {
        messages_in(self.language)
            .filter(|message| message.given.is_empty() && groups.contains(&message.group))
            .map(|message| {
                let said = Said {
                    id: message.id,
                    values: Vec::new(),
                };
                (message.id, self.say(&said))
            })
            .collect()
    }

    /// A day in full.
    pub fn day(&self, day: NaiveDate) -> String {
        let (day, month, year) = Locale::day(day);
        self.say(&say::day(day, month, year.to_string()))
    }

    /// From one day to another.
    pub fn days(&self, first: NaiveDate, last: NaiveDate) -> String {
        let (day, month, year) = Locale::day(first);
        if first == last {
            return self.day(last);
        }
        let (_, last_month, last_year) = Locale::day(last);
        let until = self.day(last);
        self.say(&if (year, month) == (last_year, last_month) {
            say::days_of_month(day, until)
        } else if year == last_year {
            say::days_of_year(day, month, until)
        } else {
            say::days_of_years(self.day(first), until)
        })
    }

    /// A count in words, up to nine: "three", "14".
    pub fn spelt(&self, n: usize) -> String {
        self.say(&say::spelt(n as u64))
    }

    /// The same where a sentence begins with it.
    pub fn spelt_first(&self, n: usize) -> String {
        self.say(&say::spelt_first(n as u64))
    }

    /// A figure and its unit, kept together, with the language's decimal mark: "12,4 ppm", "63 %".
    pub fn quantity(&self, figure: &str, unit: &str) -> String {
        self.locale().with_unit(figure, unit)
    }

    /// The limit of a rule in its unit: "20 ppm".
    pub fn limit(&self, rule: &Rule) -> String {
        self.quantity(&rule.limit.ppm.0.to_string(), rule.regime.unit())
    }

    /// `A`, `A and B`, `A, B and C`.
    pub fn list<T: AsRef<str>>(&self, items: &[T]) -> String {
        let items: Vec<&str> = items.iter().map(AsRef::as_ref).collect();
        match items.as_slice() {
            [] => String::new(),
            [one] => (*one).to_owned(),
            [first, last] => self.say(&say::list_of_two(*first, *last, sound(last))),
            [others @ .., last] => {
                self.say(&say::list_of_more(others.join(", "), *last, sound(last)))
            }
        }
    }
}

/// With what sound a word begins, where a language words “and” by it.
fn sound(word: &str) -> &'static str {
    let word = word.to_lowercase();
    let is_i = word.starts_with(['i', 'í']) || (word.starts_with("hi") && !word.starts_with("hie"));
    if is_i { "i" } else { "other" }
}

impl PartialEq for Catalogue {
    fn eq(&self, other: &Catalogue) -> bool {
        (self.language, &self.own) == (other.language, &other.own)
    }
}

impl fmt::Debug for Catalogue {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(
            f,
            "Catalogue({}, {} own files)",
            self.language.tag(),
            self.own.len()
        )
    }
}

/// The built-in English, in which the program's own messages are: read once.
pub fn english() -> &'static Catalogue {
    static ENGLISH: LazyLock<Catalogue> = LazyLock::new(|| Catalogue::built_in(Language::English));
    &ENGLISH
}

/// The files of a language.
pub fn built_in(language: Language) -> &'static [CatalogueFile<'static>] {
    let (_, files) = BUILT_IN
        .iter()
        .find(|(of, _)| *of == language)
        .expect("every language has its catalogue");
    files
}

fn parse(path: &str, text: &str, faults: &mut Vec<WordFault>) -> FluentResource {
    match FluentResource::try_new(text.to_owned()) {
        Ok(resource) => resource,
        Err((resource, errors)) => {
            for error in errors {
                faults.push(WordFault {
                    file: path.to_owned(),
                    line: line_of(text, error.pos.start),
                    message: format!("the catalogue cannot be read here ({})", error.kind),
                });
            }
            resource
        }
    }
}

/// Messages that no file of a language has.
fn missing(language: Language, found: &BTreeSet<String>) -> Vec<WordFault> {
    let lacking = messages_in(language).filter(|message| !found.contains(message.id));
    lacking
        .map(|message| WordFault {
            file: format!("words/{}/{}.ftl", language.tag(), message.group),
            line: 1,
            message: format!("the message “{}” is missing", message.id),
        })
        .collect()
}

/// The table of messages by name.
pub fn by_id() -> &'static BTreeMap<&'static str, &'static Message> {
    static BY_ID: LazyLock<BTreeMap<&'static str, &'static Message>> =
        LazyLock::new(|| messages().map(|message| (message.id, message)).collect());
    &BY_ID
}
