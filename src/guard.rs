//! Where the program itself may fail: a panic is kept off the screen, and told to whoever can say what to do.
//!
//! The hook that tells of panics is one for the whole process, set once. It keeps silent within a guarded call. Within a
//! command it prints nothing either: it notes where the first panic came about, and what the thread had in hand. All else it
//! hands over to the hook before.

use std::cell::{Cell, RefCell};
use std::panic::{AssertUnwindSafe, PanicHookInfo, catch_unwind, set_hook, take_hook};
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Mutex, Once, PoisonError};

thread_local! {
    /// Guarded calls that this thread is in, one inside another.
    static GUARDED: Cell<usize> = const { Cell::new(0) };
    /// What this thread is at work on, for the message of a fault.
    static IN_HAND: RefCell<String> = const { RefCell::new(String::new()) };
}

static HOOK: Once = Once::new();
/// Whether a command is at work, which tells of its faults in its own words.
static COMMAND: AtomicBool = AtomicBool::new(false);
static FIRST: Mutex<Option<Fault>> = Mutex::new(None);

/// A fault of the program itself.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fault {
    /// The file or the step that was in hand; empty where it is not known.
    pub in_hand: String,
    /// Source file and line.
    pub at: String,
}

/// What some work gives; none where it panicked. What the work had begun to change must not be used afterwards.
pub fn guarded<T>(work: impl FnOnce() -> T) -> Option<T> {
    set_the_hook();
    GUARDED.set(GUARDED.get() + 1);
    let outcome = catch_unwind(AssertUnwindSafe(work));
    GUARDED.set(GUARDED.get() - 1);
    outcome.ok()
}

/// What a whole command gives, or the fault that ended it.
pub fn unless_faulty<T>(command: impl FnOnce() -> T) -> Result<T, Fault> {
    set_the_hook();
    COMMAND.store(true, Ordering::Relaxed);
    catch_unwind(AssertUnwindSafe(command)).map_err(|_| {
        let first = FIRST.lock().unwrap_or_else(PoisonError::into_inner).take();
        first.unwrap_or(Fault {
            in_hand: String::new(),
            at: "an unknown place".to_owned(),
        })
    })
}

/// Does some work that a fault in it is told with.
pub fn naming<T>(what: &str, work: impl FnOnce() -> T) -> T {
    let before = IN_HAND.replace(what.to_owned());
    #[cfg(debug_assertions)]
    fail_on_request(what);
    let outcome = work();
    // After a panic the name stays: it is the answer to what was in hand.
    IN_HAND.set(before);
    outcome
}

/// Lets a test see what a fault comes to, in builds for tests alone.
#[cfg(debug_assertions)]
fn fail_on_request(what: &str) {
    let asked = std::env::var("GALLEYPROOF_FAIL_AT");
    assert!(asked.ok().as_deref() != Some(what), "a fault on request");
}

fn set_the_hook() {
    HOOK.call_once(|| {
        let before = take_hook();
        set_hook(Box::new(move |panic| {
            // A thread that is coming to its end has no counter any more, and no guarded call either.
            let is_guarded = GUARDED.try_with(Cell::get).unwrap_or(0) > 0;
            match COMMAND.load(Ordering::Relaxed) {
                _ if is_guarded => {}
                true => note(panic),
                false => before(panic),
            }
        }));
    });
}

fn note(panic: &PanicHookInfo<'_>) {
    let at = panic.location().map_or_else(String::new, |location| {
        format!("{}:{}", below_source(location.file()), location.line())
    });
    let in_hand = IN_HAND.try_with(|name| name.borrow().clone());
    FIRST
        .lock()
        .unwrap_or_else(PoisonError::into_inner)
        .get_or_insert(Fault {
            in_hand: in_hand.unwrap_or_default(),
            at,
        });
}

/// A path of the source without the folders of the machine that it was built on.
fn below_source(path: &str) -> &str {
    const FOLDERS_KEPT: usize = 4;
    let slashes = path.rmatch_indices(['/', '\\']);
    slashes
        .map(|(at, _)| at + 1)
        .nth(FOLDERS_KEPT - 1)
        .map_or(path, |at| &path[at..])
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_panic_within_is_told_and_the_counter_comes_back() {
        assert_eq!(
            guarded(|| guarded(|| panic!("within")).is_none()),
            Some(true)
        );
        assert_eq!(guarded(|| -> u8 { panic!("within") }), None);
        assert_eq!(GUARDED.get(), 0);
        assert_eq!(guarded(|| 5), Some(5));
    }

    #[test]
    fn the_folders_of_the_builders_machine_are_not_told() {
        let path = "/home/someone/.cargo/registry/src/index/beta-1.0.0/src/distribution/beta.rs";
        assert_eq!(below_source(path), "beta-1.0.0/src/distribution/beta.rs");
        assert_eq!(below_source("src/judge/mod.rs"), "src/judge/mod.rs");
    }
}
