//! What the messages of a file use and choose by, read from their trees.

use super::catalogue::by_id;
use super::faults::{WordFault, line_of_message};
use super::messages::{Kind, Message};
use fluent_bundle::FluentResource;
use fluent_syntax::ast::{
    Entry, Expression, InlineExpression, Pattern, PatternElement, VariantKey,
};
use std::collections::{BTreeMap, BTreeSet};

/// What a pattern uses.
#[derive(Debug, Default)]
struct Uses<'a> {
    /// The figures and words that it prints or chooses by.
    names: BTreeSet<&'a str>,
    /// The messages that it takes in.
    messages: BTreeSet<&'a str>,
    /// The words by which it chooses, for each name.
    choices: BTreeMap<&'a str, BTreeSet<&'a str>>,
    /// Functions and terms, which our catalogues do without.
    others: BTreeSet<&'a str>,
}

/// The names of the messages of a file.
pub fn ids(resource: &FluentResource) -> Vec<&str> {
    messages(resource).map(|(id, _)| id).collect()
}

fn messages(resource: &FluentResource) -> impl Iterator<Item = (&str, Option<&Pattern<&str>>)> {
    resource.entries().filter_map(|entry| match entry {
        Entry::Message(message) => Some((message.id.name, message.value.as_ref())),
        _ => None,
    })
}

/// Everything that is wrong with the messages of a file.
pub fn faults(path: &str, resource: &FluentResource) -> Vec<WordFault> {
    let known = by_id();
    let mut seen = BTreeSet::new();
    let mut faults = Vec::new();
    for (id, pattern) in messages(resource) {
        let mut tell = |message: String| {
            faults.push(WordFault {
                file: path.to_owned(),
                line: line_of_message(resource.source(), id),
                message,
            });
        };
        if !seen.insert(id) {
            tell(format!("the message “{id}” stands in this file twice"));
        }
        let Some(message) = known.get(id) else {
            let nearest = known
                .keys()
                .min_by_key(|name| strsim::levenshtein(name, id))
                .expect("there are messages");
            tell(format!(
                "there is no message “{id}”; the nearest is “{nearest}”"
            ));
            continue;
        };
        let Some(pattern) = pattern else {
            tell(format!("the message “{id}” has no text"));
            continue;
        };
        let mut uses = Uses::default();
        uses.pattern(pattern);
        for fault in uses.against(message) {
            tell(fault);
        }
    }
    faults
}

impl<'a> Uses<'a> {
    fn pattern(&mut self, pattern: &'a Pattern<&'a str>) {
        for element in &pattern.elements {
            if let PatternElement::Placeable { expression } = element {
                self.expression(expression);
            }
        }
    }

    fn expression(&mut self, expression: &'a Expression<&'a str>) {
        match expression {
            Expression::Inline(inline) => self.inline(inline),
            Expression::Select { selector, variants } => {
                self.inline(selector);
                for variant in variants {
                    if let (
                        InlineExpression::VariableReference { id },
                        VariantKey::Identifier { name },
                    ) = (selector, &variant.key)
                    {
                        self.choices.entry(id.name).or_default().insert(name);
                    }
                    self.pattern(&variant.value);
                }
            }
        }
    }

    fn inline(&mut self, inline: &'a InlineExpression<&'a str>) {
        match inline {
            InlineExpression::VariableReference { id } => {
                self.names.insert(id.name);
            }
            InlineExpression::MessageReference { id, .. } => {
                self.messages.insert(id.name);
            }
            InlineExpression::Placeable { expression } => self.expression(expression),
            InlineExpression::FunctionReference { id, .. }
            | InlineExpression::TermReference { id, .. } => {
                self.others.insert(id.name);
            }
            InlineExpression::StringLiteral { .. } | InlineExpression::NumberLiteral { .. } => {}
        }
    }

    /// What of it the message is not given.
    fn against(&self, message: &Message) -> Vec<String> {
        let id = message.id;
        let given: BTreeMap<&str, Kind> = message.given.iter().copied().collect();
        let known = by_id();
        let mut faults = Vec::new();
        for name in &self.names {
            if !given.contains_key(name) {
                let names: Vec<&str> = given.keys().copied().collect();
                faults.push(format!(
                    "the message “{id}” is not given “${name}”; it is given {}",
                    if names.is_empty() {
                        "nothing".to_owned()
                    } else {
                        format!("${}", names.join(", $"))
                    }
                ));
            }
        }
        for (name, words) in &self.choices {
            let allowed: &[&str] = match given.get(name) {
                Some(Kind::Choice(words)) => words,
                Some(Kind::Count) => &["zero", "one", "two", "few", "many", "other"],
                Some(Kind::Text | Kind::Figure | Kind::Place | Kind::Items) | None => &[],
            };
            // "other" is the field's word for whatever is not named.
            let is_known = |word: &&&str| allowed.contains(*word) || **word == "other";
            for word in words.iter().filter(|word| !is_known(word)) {
                faults.push(format!(
                    "in the message “{id}”, “${name}” is never “{word}”"
                ));
            }
        }
        for taken in &self.messages {
            match known.get(taken) {
                None => faults.push(format!(
                    "the message “{id}” takes in “{taken}”, which there is not"
                )),
                Some(other) => {
                    let lacking = other
                        .given
                        .iter()
                        .filter(|(name, _)| !given.contains_key(name));
                    for (name, _) in lacking {
                        faults.push(format!(
                            "the message “{id}” takes in “{taken}”, but is not given its “${name}”"
                        ));
                    }
                }
            }
        }
        for other in &self.others {
            faults.push(format!(
                "the message “{id}” calls “{other}”: functions and terms are not used here"
            ));
        }
        faults
    }
}
