//! What is said on the screen: results on standard output, all else on standard error.

use crate::pipeline::Progress;
use anyhow::{Context, Result};
use indicatif::{ProgressBar, ProgressDrawTarget, ProgressStyle};
use std::io::{self, IsTerminal, Write};
use std::sync::Mutex;

/// Writes a result to standard output. A reader that has gone away (`| head`) is no error.
///
/// # Errors
/// Where standard output cannot be written for another reason.
pub fn result(text: &str) -> Result<()> {
    let mut stdout = anstream::stdout().lock();
    match stdout
        .write_all(text.as_bytes())
        .and_then(|()| stdout.flush())
    {
        Err(error) if error.kind() == io::ErrorKind::BrokenPipe => Ok(()),
        other => other.context("cannot write to standard output"),
    }
}

/// Says something on standard error.
pub fn say(text: &str) {
    // A standard error that is closed is nobody's to tell.
    let _ = writeln!(anstream::stderr().lock(), "{text}");
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
