//! Work on what strangers sent, guarded: where it panics, nothing is printed and the caller is told.
//!
//! The hook that prints panics is one for the whole process. It is replaced once, by one that keeps silent while the
//! panicking thread is within a guarded call and hands over to the one before otherwise; so other threads, and what is not
//! guarded, tell of their panics as ever. Each thread has a counter of its own, and nothing waits for anything.

use std::cell::Cell;
use std::panic::{AssertUnwindSafe, catch_unwind, set_hook, take_hook};
use std::sync::Once;

thread_local! {
    /// Guarded calls that this thread is in, one inside another.
    static GUARDED: Cell<usize> = const { Cell::new(0) };
}

static QUIET: Once = Once::new();

/// What some work gives; none where it panicked. What the work had begun to change must not be used afterwards.
pub fn guarded<T>(work: impl FnOnce() -> T) -> Option<T> {
    QUIET.call_once(|| {
        let before = take_hook();
        set_hook(Box::new(move |panic| {
            // A thread that is coming to its end has no counter any more, and no guarded call either.
            if GUARDED.try_with(Cell::get).unwrap_or(0) == 0 {
                before(panic);
            }
        }));
    });
    GUARDED.set(GUARDED.get() + 1);
    let outcome = catch_unwind(AssertUnwindSafe(work));
    GUARDED.set(GUARDED.get() - 1);
    outcome.ok()
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
}
