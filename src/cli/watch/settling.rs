//! Whether what has changed is whole: nothing runs on half a file.
//!
//! The folder is the truth. Events only add what it cannot show: that whoever wrote a file has closed it. Without them (a
//! network or synced folder) a file must have rested for longer.

use crate::cli::watch::folder::{Snapshot, Stamp};
use std::collections::BTreeMap;
use std::fmt;
use std::time::{Duration, Instant};

/// Rest after which a file counts as whole once its writer has closed it, or it was renamed or deleted.
const CLOSED: Duration = Duration::from_millis(500);

/// Rest for a file of which no event tells.
const UNTOLD: Duration = Duration::from_secs(2);

/// Rest for a file that somebody keeps open for writing.
const OPEN: Duration = Duration::from_secs(10);

/// Rest after which a file is read although a lock or a partial download says that somebody has it: such a sign stays
/// behind where a program or a machine has broken down, and must not hold up all else for ever.
pub const HELD: Duration = Duration::from_secs(600);

/// One change since the last run.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Change {
    /// Path below the programme folder.
    pub path: String,
    /// What happened to it.
    pub kind: ChangeKind,
}

/// What happened to a file.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ChangeKind {
    /// It was not there.
    New,
    /// It is another.
    Changed,
    /// It is gone.
    Gone,
}

impl fmt::Display for Change {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let what = match self.kind {
            ChangeKind::New => "new",
            ChangeKind::Changed => "changed",
            ChangeKind::Gone => "gone",
        };
        write!(f, "{} ({what})", self.path)
    }
}

/// What a look at the folder comes to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Look {
    /// Nothing has changed since the last run.
    Quiet,
    /// Something is still being written; look again after this long.
    Wait(Duration),
    /// A changed file is held by somebody; these files say so.
    Held(Vec<String>),
    /// Everything that has changed is whole.
    Ready(Vec<Change>),
}

/// What was last heard of a file's writer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Heard {
    /// Something was written.
    Writing,
    /// The writer has closed it, or it came whole by a rename.
    Whole,
}

/// The folder as the last run saw it, and what has moved since.
#[derive(Debug, Default)]
pub struct Settling {
    done: Snapshot,
    moving: BTreeMap<String, Moving>,
    heard: BTreeMap<String, Heard>,
}

/// A file that differs from what the last run saw.
#[derive(Debug)]
struct Moving {
    stamp: Option<Stamp>,
    since: Instant,
}

impl Settling {
    /// Starts from what a run has seen.
    pub fn after(&mut self, seen: Snapshot) {
        self.moving
            .retain(|path, moving| seen.files.get(path).copied() != moving.stamp);
        self.heard.retain(|path, _| self.moving.contains_key(path));
        self.done = seen;
    }

    /// What the last run saw.
    pub fn done(&self) -> &Snapshot {
        &self.done
    }

    /// An event told of this file.
    pub fn heard(&mut self, path: String, what: Heard) {
        self.heard.insert(path, what);
    }

    /// Looks at the folder as it stands at `now`.
    pub fn look(&mut self, now: Instant, there: &Snapshot) -> Look {
        let changes = changes(&self.done, there);
        self.moving
            .retain(|path, _| changes.iter().any(|change| &change.path == path));
        let mut longest = Duration::ZERO;
        for change in &changes {
            let stamp = there.files.get(&change.path).copied();
            let since = if self.done.files.is_empty() {
                rested_since(now, stamp)
            } else {
                now
            };
            let moving = self
                .moving
                .entry(change.path.clone())
                .or_insert(Moving { stamp, since });
            if moving.stamp != stamp {
                *moving = Moving { stamp, since: now };
            }
            let needed = match (change.kind, self.heard.get(&change.path)) {
                (ChangeKind::Gone, _) | (_, Some(Heard::Whole)) => CLOSED,
                (_, Some(Heard::Writing)) => OPEN,
                (_, None) => UNTOLD,
            };
            longest = longest.max(needed.saturating_sub(now.duration_since(moving.since)));
        }
        let is_fresh = |path: &String| {
            let moving = self.moving.get(path);
            moving.is_some_and(|moving| now.duration_since(moving.since) < HELD)
        };
        let holding: Vec<String> = changes
            .iter()
            .filter(|change| is_fresh(&change.path))
            .filter_map(|change| there.held.get(&change.path).cloned())
            .collect();
        if changes.is_empty() {
            Look::Quiet
        } else if !holding.is_empty() {
            Look::Held(holding)
        } else if longest > Duration::ZERO {
            Look::Wait(longest)
        } else {
            Look::Ready(changes)
        }
    }
}

/// Before the first run every file is new; one that was last written long ago need not rest again.
fn rested_since(now: Instant, stamp: Option<Stamp>) -> Instant {
    let age = stamp.and_then(|stamp| stamp.modified?.elapsed().ok());
    // A machine that has just been started cannot look back as far.
    age.and_then(|age| {
        let mut most = [HELD, OPEN].into_iter();
        most.find_map(|most| now.checked_sub(age.min(most)))
    })
    .unwrap_or(now)
}

fn changes(before: &Snapshot, after: &Snapshot) -> Vec<Change> {
    let paths: std::collections::BTreeSet<&String> =
        before.files.keys().chain(after.files.keys()).collect();
    let kind = |path: &String| match (before.files.get(path), after.files.get(path)) {
        (None, _) => Some(ChangeKind::New),
        (_, None) => Some(ChangeKind::Gone),
        (old, new) => (old != new).then_some(ChangeKind::Changed),
    };
    paths
        .into_iter()
        .filter_map(|path| {
            Some(Change {
                path: path.clone(),
                kind: kind(path)?,
            })
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn there(files: &[(&str, u64)]) -> Snapshot {
        let mut snapshot = Snapshot::default();
        for (path, length) in files {
            snapshot.files.insert(
                (*path).to_owned(),
                Stamp {
                    length: *length,
                    modified: None,
                    changed: None,
                },
            );
        }
        snapshot
    }

    fn ready(look: &Look) -> bool {
        matches!(look, Look::Ready(_))
    }

    /// Looks every tenth of a second at a file whose size the function gives; the moments at which it was ready.
    fn watch(size_at: impl Fn(u32) -> u64, heard_at: impl Fn(u32) -> Option<Heard>) -> Option<u32> {
        let start = Instant::now();
        let mut settling = Settling::default();
        (0..200).find(|tenth| {
            if let Some(heard) = heard_at(*tenth) {
                settling.heard("inbox/a.csv".to_owned(), heard);
            }
            let now = start + Duration::from_millis(100) * *tenth;
            ready(&settling.look(now, &there(&[("inbox/a.csv", size_at(*tenth))])))
        })
    }

    #[test]
    fn a_slow_copy_is_whole_once_its_writer_has_closed_it() {
        // Grows for 3 s, with a pause from 1 s to 2.6 s that is no end.
        let size = |tenth: u32| {
            u64::from(if tenth < 10 {
                tenth
            } else if tenth < 26 {
                9
            } else {
                tenth.min(30)
            })
        };
        let heard = |tenth: u32| {
            Some(if tenth < 30 {
                Heard::Writing
            } else {
                Heard::Whole
            })
        };
        let at = watch(size, heard).expect("becomes ready");
        assert!((34..=36).contains(&at), "{at}");
    }

    #[test]
    fn without_events_a_file_rests_longer() {
        let at = watch(|tenth| u64::from(tenth.min(10)), |_| None).expect("becomes ready");
        assert!((29..=31).contains(&at), "{at}");
    }

    #[test]
    fn a_file_that_is_kept_open_is_read_all_the_same_in_the_end() {
        let at = watch(|_| 1, |_| Some(Heard::Writing)).expect("becomes ready");
        assert!((99..=101).contains(&at), "{at}");
    }

    #[test]
    fn one_run_a_change_and_none_for_what_went_as_it_came() {
        let start = Instant::now();
        let at = |millis| start + Duration::from_millis(millis);
        let mut settling = Settling::default();
        let one = there(&[("inbox/a.csv", 1)]);
        settling.after(there(&[]));
        settling.look(at(0), &one);
        let Look::Ready(changes) = settling.look(at(2000), &one) else {
            panic!("has rested")
        };
        assert_eq!(
            changes,
            [Change {
                path: "inbox/a.csv".to_owned(),
                kind: ChangeKind::New
            }]
        );
        settling.after(one.clone());
        assert_eq!(settling.look(at(2001), &one), Look::Quiet);
        assert!(matches!(
            settling.look(at(3000), &there(&[])),
            Look::Wait(_)
        ));
        assert_eq!(
            settling.look(at(3100), &one),
            Look::Quiet,
            "it is back as it was"
        );
    }

    #[test]
    fn an_open_workbook_holds_the_run_up_until_it_is_closed() {
        let start = Instant::now();
        let mut settling = Settling::default();
        let mut open = there(&[("inbox/a.xlsx", 1)]);
        open.held
            .insert("inbox/a.xlsx".to_owned(), "inbox/~$a.xlsx".to_owned());
        settling.look(start, &open);
        let later = start + Duration::from_secs(60);
        assert_eq!(
            settling.look(later, &open),
            Look::Held(vec!["inbox/~$a.xlsx".to_owned()])
        );
        assert!(ready(&settling.look(later, &there(&[("inbox/a.xlsx", 1)]))));
    }

    #[test]
    fn a_lock_that_was_left_behind_holds_nothing_up_for_ever() {
        let start = Instant::now();
        let mut settling = Settling::default();
        settling.after(there(&[("programme.toml", 1)]));
        let mut stale = there(&[("programme.toml", 1), ("inbox/a.xlsx", 1)]);
        let lock = "inbox/~$a.xlsx".to_owned();
        stale.held.insert("inbox/a.xlsx".to_owned(), lock.clone());
        settling.look(start, &stale);
        stale.files.extend(there(&[("inbox/b.csv", 1)]).files);
        assert_eq!(
            settling.look(start + HELD / 2, &stale),
            Look::Held(vec![lock.clone()])
        );
        let Look::Ready(changes) = settling.look(start + HELD, &stale) else {
            panic!("both are read");
        };
        assert_eq!(changes.len(), 2);
        // Whoever goes on writing it has it still.
        stale.files.extend(there(&[("inbox/a.xlsx", 2)]).files);
        assert_eq!(
            settling.look(start + HELD * 2, &stale),
            Look::Held(vec![lock])
        );
    }
}
