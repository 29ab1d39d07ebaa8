//! What is said on the screen: results on standard output, all else on standard error.

use crate::model::letters::commands;
use crate::pipeline::{self, Progress};
use anyhow::{Context, Result};
use indicatif::{ProgressBar, ProgressDrawTarget, ProgressStyle};
use std::borrow::Cow;
use std::fmt::Write as _;
use std::io::{self, IsTerminal, Write};
use std::path::Path;
use std::sync::Mutex;

/// Writes a result to standard output. A reader that has gone away (`| head`) is no error.
///
/// # Errors
/// Where standard output cannot be written for another reason.
pub fn result(text: &str) -> Result<()> {
    let mut stdout = anstream::stdout().lock();
    match stdout
        .write_all(shown(text).as_bytes())
        .and_then(|()| stdout.flush())
    {
        Err(error) if error.kind() == io::ErrorKind::BrokenPipe => Ok(()),
        other => other.context("cannot write to standard output"),
    }
}

/// `1 error`, `2 errors`, `0 errors`.
pub fn counted(count: usize, one: &str) -> String {
    let plural = if count == 1 { "" } else { "s" };
    format!("{count} {one}{plural}")
}

/// Says something on standard error.
pub fn say(text: &str) {
    // A standard error that is closed is nobody's to tell.
    let _ = writeln!(anstream::stderr().lock(), "{}", shown(text));
}

/// Says that an outputs folder is partly new, where it is.
pub fn tell_unfinished(out: &Path) {
    if let Some(told) = pipeline::unfinished(out) {
        say(&told);
    }
}

/// The same of what a sheet or a bag may lie in or beside: an outputs folder, an archive beside one.
pub fn tell_unfinished_above(looked_at: &Path) {
    let whole = looked_at.canonicalize().unwrap_or_default();
    for above in whole.ancestors().skip(1) {
        tell_unfinished(above);
        tell_unfinished(&above.join("out"));
    }
}

/// A text as a screen may have it: names, cells and paths come from strangers, and a control character or one that turns the
/// direction of writing could have the screen say something else. Each is shown as its code, `<U+001B>`; line ends and tabs
/// stay. Nothing of ours needs one: we print no colours of our own.
pub fn shown(text: &str) -> Cow<'_, str> {
    let harmless = |c: char| {
        matches!(c, '\n' | '\t') || !(c.is_control() || turns_direction(c) || commands(c))
    };
    if text.chars().all(harmless) {
        return Cow::Borrowed(text);
    }
    let mut out = String::with_capacity(text.len() + 16);
    for c in text.chars() {
        if harmless(c) {
            out.push(c);
        } else {
            write!(out, "<U+{:04X}>", u32::from(c)).expect("a string takes all");
        }
    }
    Cow::Owned(out)
}

/// A path or name as it stands on one line, byte for byte: an end of a line in it is shown as its code, too.
pub fn named(path: &str) -> String {
    let path = path.replace('\n', "<U+000A>");
    path.replace('\r', "<U+000D>").replace('\t', "<U+0009>")
}

/// The marks of Unicode's bidirectional algorithm that embed, override or isolate (UAX 9), and the invisible ones that part
/// lines.
fn turns_direction(c: char) -> bool {
    matches!(
        c,
        '\u{61c}' | '\u{200e}' | '\u{200f}' | '\u{2028}'..='\u{202e}' | '\u{2066}'..='\u{2069}'
    )
}

/// Shows how far a run has come: a bar on a terminal, a line a step elsewhere, nothing when quiet.
pub struct Meter {
    shown: Shown,
}

enum Shown {
    Bar(ProgressBar),
    Lines(Mutex<&'static str>),
    Nothing,
}

impl Meter {
    /// A meter for this run.
    pub fn new(quiet: bool) -> Meter {
        let shown = match (quiet, io::stderr().is_terminal()) {
            (true, _) => Shown::Nothing,
            (false, false) => Shown::Lines(Mutex::new("")),
            (false, true) => {
                let bar = ProgressBar::with_draw_target(None, ProgressDrawTarget::stderr());
                let style = ProgressStyle::with_template("{msg} {wide_bar} {pos} of {len}");
                bar.set_style(style.expect("the template is well formed"));
                Shown::Bar(bar)
            }
        };
        Meter { shown }
    }

    /// Takes note of a step.
    pub fn note(&self, progress: Progress) {
        let (what, done, total) = match progress {
            Progress::Reading { done, total } => ("Reading lab files", done, total),
            Progress::Typesetting { done, total } => ("Typesetting documents", done, total),
        };
        match &self.shown {
            Shown::Bar(bar) => {
                bar.set_message(what);
                bar.set_length(total as u64);
                bar.set_position(done as u64);
            }
            Shown::Lines(last) => {
                let mut last = last.lock().expect("no thread panics while it speaks");
                if *last != what && total > 0 {
                    *last = what;
                    say(&format!("{what}: {total}"));
                }
            }
            Shown::Nothing => {}
        }
    }
}

impl Drop for Meter {
    fn drop(&mut self) {
        if let Shown::Bar(bar) = &self.shown {
            bar.finish_and_clear();
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn a_strangers_escape_sequence_is_shown_and_not_obeyed() {
        assert_eq!(shown("march\u{1b}[2J.csv"), "march<U+001B>[2J.csv");
        assert_eq!(shown("a\u{202e}vsc"), "a<U+202E>vsc");
        assert!(matches!(shown("plain\ttext – “x”\n"), Cow::Borrowed(_)));
    }

    proptest! {
        #[test]
        fn nothing_that_a_screen_obeys_is_printed(text in "\\PC*|(?s).*") {
            let shown = shown(&text);
            prop_assert!(shown.chars().all(|c| matches!(c, '\n' | '\t') || !c.is_control()));
            let turned = shown.chars().any(turns_direction);
            prop_assert!(!turned);
        }
    }
}
