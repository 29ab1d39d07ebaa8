//! A message as data: which one, and what it is given. The catalogues word it, each in its language.

use crate::model::place::Place;

/// A message and what it is given: made by the functions of `words::say`, worded by a catalogue.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Said {
    /// The message's name.
    pub id: &'static str,
    /// What it is given, by name.
    pub values: Vec<(&'static str, Value)>,
}

impl Said {
    /// A text that the message is given, as it stands.
    pub fn text(&self, name: &str) -> Option<&str> {
        self.values.iter().find_map(|(known, value)| match value {
            Value::Text(text) if *known == name => Some(text.as_str()),
            _ => None,
        })
    }
}

/// What a message is given.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Value {
    /// Words from elsewhere, or a figure as it was written.
    Text(String),
    /// A number to be counted.
    Count(u64),
    /// A figure of ours, written with a point: printed with the decimal mark of the language.
    Figure(String),
    /// Where something stands.
    Place(Box<Place>),
    /// Words from elsewhere, several: each in quotation marks.
    Items(Vec<Item>),
}

/// One of several words from elsewhere.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Item {
    /// The words.
    pub text: String,
    /// Where they stand: a column's letter, or a place.
    pub at: Option<Value>,
}

impl Item {
    /// Words alone.
    pub fn new(text: impl Into<String>) -> Item {
        Item {
            text: text.into(),
            at: None,
        }
    }

    /// Words and the letter of the column in which they stand.
    pub fn in_column(text: impl Into<String>, letter: String) -> Item {
        Item {
            text: text.into(),
            at: Some(Value::Text(letter)),
        }
    }

    /// Words and where they stand.
    pub fn at(text: impl Into<String>, place: Place) -> Item {
        Item {
            text: text.into(),
            at: Some(Value::Place(Box::new(place))),
        }
    }
}
