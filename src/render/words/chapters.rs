//! The story of a package: what happened to its extractions, in the order of time.
//!
//! Most packages have one chapter, their pair. A repeat, a reading that was reported again and extractions that nobody asked
//! for are chapters of their own; where more than one of them counts, the last chapter is what they give together.

use crate::model::extraction::Extraction;
use crate::model::package::PackageResult;
use crate::model::pair::{PairedExtraction, Repeat, Usage};
use crate::render::words::packages::{Agreement, agreement, apart, is_beyond};
use crate::words::{Catalogue, Said, say};
use chrono::NaiveDate;
use std::collections::BTreeSet;

/// The most extractions of a package that a document lists one by one. The others are counted there, and stand in the data
/// files: a lab that measures a package so often has sent a record of its plate, not a result.
pub const MOST_LISTED: usize = 200;

/// But no chapter has fewer in its row than this, where it has so many.
const LEAST_LISTED: usize = 4;

/// The most decisions at the end of one row.
const MOST_DECISIONS: usize = 3;

/// Extractions that were reported at one time, or what all of them give.
#[derive(Clone, Debug, PartialEq)]
pub struct Chapter<'a> {
    /// What came about.
    pub event: Event<'a>,
    /// Its extractions, by number; none where it is what all of them give.
    pub extractions: Vec<&'a PairedExtraction>,
    /// How many of them are listed one by one: the first.
    listed: usize,
    /// Whether the package's result stands here.
    pub has_result: bool,
}

/// What came about.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Event<'a> {
    /// The lab reported what was asked for.
    First,
    /// It reported what had been set aside once more.
    Again,
    /// A person decided on a repeat.
    Repeat(&'a Repeat),
    /// It reported more than was asked for, in a file of its own, and no decision is on record.
    Further,
    /// All that counts, taken together.
    Together,
}

/// A decision to set extractions aside.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Exclusion<'a> {
    /// The person's reason.
    pub reason: &'a str,
    /// Who decided.
    pub by: &'a str,
    /// When.
    pub on: NaiveDate,
    /// The numbers of the extractions.
    pub numbers: Vec<u32>,
}

/// The chapters of a package's story: at least one, and the result stands in the last.
pub fn chapters(package: &PackageResult) -> Vec<Chapter<'_>> {
    let mut chapters: Vec<Chapter> = Vec::new();
    let before = Before::of(package);
    for paired in &package.pair.extractions {
        let event = before.event_of(paired);
        match chapters.iter_mut().find(|chapter| chapter.event == event) {
            Some(chapter) => chapter.extractions.push(paired),
            None => chapters.push(Chapter {
                event,
                extractions: vec![paired],
                listed: 0,
                has_result: false,
            }),
        }
    }
    chapters.sort_by_key(|chapter| chapter.event.place());
    let counts = |chapter: &&Chapter| {
        let mut extractions = chapter.extractions.iter();
        extractions.any(|paired| paired.usage == Usage::Used)
    };
    let counting = chapters.iter().filter(counts).count();
    match chapters.last_mut() {
        Some(last) if counting == 0 || (counting == 1 && counts(&&*last)) => last.has_result = true,
        _ => chapters.push(Chapter {
            event: if chapters.is_empty() {
                Event::First
            } else {
                Event::Together
            },
            extractions: Vec::new(),
            listed: 0,
            has_result: true,
        }),
    }
    let mut room = MOST_LISTED;
    for chapter in &mut chapters {
        chapter.listed = chapter.extractions.len().min(room.max(LEAST_LISTED));
        room = room.saturating_sub(chapter.listed);
    }
    chapters
}

/// What of a package was there before an extraction came, looked up once.
struct Before<'a> {
    /// What was set aside: the number, and the repeat that it is of.
    set_aside: BTreeSet<(u32, Option<&'a Repeat>)>,
    /// The largest number of those that were made first, where others came after them.
    upto: Option<u32>,
    /// The files that those stand in.
    first_files: BTreeSet<&'a str>,
}

impl<'a> Before<'a> {
    fn of(package: &'a PackageResult) -> Before<'a> {
        let extractions = &package.pair.extractions;
        let upto = package.pair.first.map(|first| first.upto);
        let is_first = |one: &&PairedExtraction| upto.is_some_and(|n| one.extraction.number <= n);
        let file = |one: &'a PairedExtraction| one.extraction.source.file.path.as_str();
        let aside = extractions.iter().filter(|one| is_set_aside(one));
        Before {
            set_aside: aside.map(key).collect(),
            upto,
            first_files: extractions.iter().filter(is_first).map(file).collect(),
        }
    }

    fn event_of(&self, paired: &'a PairedExtraction) -> Event<'a> {
        // What came in one file is not known to have been made later.
        let is_later = |upto: u32| {
            let file = paired.extraction.source.file.path.as_str();
            paired.extraction.number > upto && !self.first_files.contains(file)
        };
        match &paired.repeat {
            _ if !is_set_aside(paired) && self.set_aside.contains(&key(paired)) => Event::Again,
            Some(repeat) => Event::Repeat(repeat),
            None if self.upto.is_some_and(is_later) => Event::Further,
            None => Event::First,
        }
    }
}

/// By which a reading that was reported again is known.
fn key(paired: &PairedExtraction) -> (u32, Option<&Repeat>) {
    (paired.extraction.number, paired.repeat.as_ref())
}

impl Event<'_> {
    /// In the order of time, as far as it is known.
    fn place(self) -> (u8, Option<NaiveDate>) {
        match self {
            Event::First => (0, None),
            Event::Again => (1, None),
            Event::Further => (2, None),
            Event::Repeat(repeat) => (3, Some(repeat.on)),
            Event::Together => (4, None),
        }
    }

    /// The word by which a message chooses what a row is.
    pub fn word(self) -> &'static str {
        match self {
            Event::First => "first",
            Event::Again => "again",
            Event::Further => "further",
            Event::Repeat(_) => "repeat",
            Event::Together => "together",
        }
    }
}

fn is_set_aside(paired: &PairedExtraction) -> bool {
    matches!(paired.usage, Usage::Excluded { .. })
}

impl Chapter<'_> {
    /// Those that are listed one by one.
    pub fn listed(&self) -> &[&PairedExtraction] {
        &self.extractions[..self.listed]
    }

    /// The others.
    pub fn left_out(&self) -> &[&PairedExtraction] {
        &self.extractions[self.listed..]
    }

    /// What was set aside of it, a decision each.
    pub fn exclusions(&self) -> Vec<Exclusion<'_>> {
        let mut exclusions: Vec<Exclusion> = Vec::new();
        for paired in &self.extractions {
            let Usage::Excluded { reason, by, on } = &paired.usage else {
                continue;
            };
            let number = paired.extraction.number;
            let same = |known: &&mut Exclusion| {
                (known.reason, known.by, known.on) == (reason.as_str(), by.as_str(), *on)
            };
            match exclusions.iter_mut().find(same) {
                Some(known) => known.numbers.push(number),
                None => exclusions.push(Exclusion {
                    reason,
                    by,
                    on: *on,
                    numbers: vec![number],
                }),
            }
        }
        exclusions
    }

    /// What stands at the end of its row: how its extractions agree, or what came about, and who decided it when.
    pub fn at_the_end(&self, package: &PackageResult, words: &Catalogue) -> Agreement {
        let decided = |repeat: &Repeat| say::ruler_decided(&repeat.by, repeat.on.to_string());
        let exclusions = self.exclusions();
        let mut aside: Vec<Said> = exclusions
            .iter()
            .take(MOST_DECISIONS)
            .map(|one| {
                say::ruler_set_aside_by(one.numbers.len() as u64, one.by, one.on.to_string())
            })
            .collect();
        if exclusions.len() > MOST_DECISIONS {
            aside.push(say::list_rest((exclusions.len() - MOST_DECISIONS) as u64));
        }
        let (head, mut details) = if self.has_result {
            let said = agreement(package, words);
            let decision = match self.event {
                Event::Repeat(repeat) => Some(decided(repeat)),
                _ => None,
            };
            let details = [vec![said.detail], words.each(decision)];
            (said.head, details.concat())
        } else {
            let first = package.pair.first.and_then(|first| first.comparison);
            let (head, detail) = match (self.event, first) {
                (Event::First, Some(first)) => {
                    let outcome = if first.agrees() { "agree" } else { "disagree" };
                    let used: Vec<_> = self.usable().collect();
                    let head = match is_beyond(&used) {
                        true => say::ruler_no_sign(),
                        false => say::ruler_first(first.n as u64, outcome),
                    };
                    (head, Some(apart(&used, &first, words)))
                }
                (Event::Repeat(repeat), _) => (say::ruler_repeat(), Some(decided(repeat))),
                (Event::Further, _) => (say::ruler_further(), Some(say::ruler_no_reason())),
                (Event::Again, _) => (say::ruler_again(), None),
                _ => (say::ruler_first(0_u64, "open"), None),
            };
            (words.say(&head), words.each(detail))
        };
        let aside = self.exclusions().into_iter().map(|one| {
            say::ruler_set_aside_by(one.numbers.len() as u64, one.by, one.on.to_string())
        });
        let mut usable = self.usable();
        let replaces = usable.any(|extraction| extraction.record.replaces);
        details.extend(words.each(aside.chain(replaces.then(say::ruler_replaces))));
        details.retain(|detail| !detail.is_empty());
        Agreement {
            head,
            detail: details.join("; "),
        }
    }

    /// Those that count.
    pub fn usable(&self) -> impl Iterator<Item = &Extraction> {
        let used = self.extractions.iter();
        used.filter(|paired| paired.usage == Usage::Used)
            .map(|paired| &paired.extraction)
    }
}
