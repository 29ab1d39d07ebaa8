//! When a folder counts as settled, and when a run is due.

use super::*;
use std::cell::{Cell, RefCell};
use std::fs;
use std::io::Write;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::time::SystemTime;

/// A programme folder and what its watch did, until `runs` runs have been made or a minute has passed.
struct Watched {
    root: tempfile::TempDir,
    changes: RefCell<Vec<Vec<String>>>,
    lines: RefCell<Vec<String>>,
}

impl Watched {
    fn new() -> Watched {
        let root = tempfile::tempdir().expect("a folder");
        for file in ["programme.toml", "inbox/a.csv", "registers/products.csv"] {
            let path = root.path().join(file);
            fs::create_dir_all(path.parent().expect("has one")).expect("makes");
            let mut made = fs::File::create(path).expect("makes");
            made.write_all(file.as_bytes()).expect("writes");
            // It has rested, so that the first run need not wait.
            made.set_modified(SystemTime::UNIX_EPOCH)
                .expect("sets the time");
        }
        Watched {
            root,
            changes: RefCell::default(),
            lines: RefCell::default(),
        }
    }

    /// Watches while `meanwhile` works in another thread, once the first run is made, and a little longer, so that a run
    /// too many would show.
    fn watch(&self, mut ending: impl FnMut() -> RunEnding, meanwhile: impl FnOnce(&Path) + Send) {
        let rest = Cell::new(None);
        let runs = AtomicUsize::new(0);
        let root = self.root.path().to_owned();
        std::thread::scope(|scope| {
            let work = scope.spawn(|| {
                while runs.load(Ordering::SeqCst) == 0 {
                    std::thread::sleep(Duration::from_millis(10));
                }
                meanwhile(&root);
            });
            let goes_on = || {
                if work.is_finished() && rest.get().is_none() {
                    rest.set(Some(Instant::now() + Duration::from_millis(3500)));
                }
                rest.get().is_none_or(|end| Instant::now() < end)
            };
            let mut run = |changes: &[Change]| {
                self.changes
                    .borrow_mut()
                    .push(changes.iter().map(Change::to_string).collect());
                runs.fetch_add(1, Ordering::SeqCst);
                ending()
            };
            let mut say = |line: &str| self.lines.borrow_mut().push(line.to_owned());
            keep_watch(
                &root,
                &mut Duties {
                    run: &mut run,
                    say: &mut say,
                    goes_on: &goes_on,
                },
            );
        });
    }
}

fn ran() -> RunEnding {
    RunEnding::Ran("2 files written".to_owned())
}

#[test]
fn a_slow_copy_is_one_run() {
    let watched = Watched::new();
    watched.watch(ran, |root| {
        let mut file = fs::File::create(root.join("inbox/slow.csv")).expect("makes");
        for _ in 0..8 {
            file.write_all(b"a line of a lab's file\n").expect("writes");
            std::thread::sleep(Duration::from_millis(150));
        }
    });
    let changes = watched.changes.borrow();
    assert_eq!(
        changes.len(),
        2,
        "one at the start, one for the copy: {changes:?}"
    );
    assert_eq!(changes[1], ["inbox/slow.csv (new)"]);
    let lines = watched.lines.borrow();
    assert_eq!(lines[0], "Run 1: 2 files written");
    assert_eq!(lines[1], "Run 2: inbox/slow.csv (new): 2 files written");
}

#[test]
fn a_failure_is_said_and_the_watch_goes_on() {
    let watched = Watched::new();
    let mut endings = [RunEnding::Failed("the disk is full".to_owned()), ran()].into_iter();
    watched.watch(
        move || endings.next().unwrap_or_else(ran),
        |root| {
            fs::write(root.join("inbox/b.csv"), "b").expect("writes");
        },
    );
    assert_eq!(
        *watched.lines.borrow(),
        ["the disk is full", "Run 1: 2 files written"]
    );
}

#[test]
fn a_folder_that_goes_away_and_comes_back_is_waited_for() {
    let watched = Watched::new();
    watched.watch(ran, |root| {
        fs::rename(root.join("inbox"), root.join("gone")).expect("moves");
        std::thread::sleep(Duration::from_millis(1500));
        fs::rename(root.join("gone"), root.join("inbox")).expect("moves");
        fs::write(root.join("inbox/new.csv"), "new").expect("writes");
    });
    let lines = watched.lines.borrow();
    assert!(
        lines[1].contains("waiting for it to come back"),
        "{lines:?}"
    );
    assert_eq!(
        watched.changes.borrow().last().expect("ran"),
        &["inbox/new.csv (new)"]
    );
}

#[test]
fn many_changes_are_named_in_part() {
    let change = |n: u32| Change {
        path: format!("inbox/{n}.csv"),
        kind: settling::ChangeKind::Gone,
    };
    let changes: Vec<Change> = (1..=5).map(change).collect();
    assert_eq!(
        why(&changes),
        "inbox/1.csv (gone), inbox/2.csv (gone), inbox/3.csv (gone) and 2 more: "
    );
}

#[test]
fn at_rest_it_looks_once_a_second() {
    const REST: Duration = Duration::from_secs(5);
    let watched = Watched::new();
    let (ran_at, looks) = (Cell::new(None::<Instant>), Cell::new(0));
    let goes_on = || {
        let goes_on = ran_at.get().is_none_or(|at| at.elapsed() < REST);
        looks.set(looks.get() + u32::from(ran_at.get().is_some() && goes_on));
        goes_on
    };
    let mut run = |_: &[Change]| {
        assert!(ran_at.replace(Some(Instant::now())).is_none(), "one run");
        ran()
    };
    keep_watch(
        watched.root.path(),
        &mut Duties {
            run: &mut run,
            say: &mut |_| {},
            goes_on: &goes_on,
        },
    );
    // One at once, for what changed meanwhile; on a machine that does much else there are fewer.
    assert!((2..=6).contains(&looks.get()), "{} looks", looks.get());
}
