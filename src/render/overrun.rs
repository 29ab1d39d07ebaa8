//! A bound on what a programme's own template may take: one that never ends must not hold up a run for ever.
//!
//! The typesetter cannot be stopped from outside, so the run ends as a whole. Nothing is lost by that: documents wait in the
//! staging folder until all are made.

use crate::files;
use crate::render::Job;
use crate::render::engine::{Engine, TEMPLATE_FOLDER};
use std::sync::{Mutex, OnceLock, PoisonError};
use std::thread;
use std::time::{Duration, Instant};
use typst::syntax::{LinkedNode, Source, SyntaxKind};

/// The longest that a letter or a sheet may take, by a template of the programme's own: some thousand times what ours take.
const LONGEST: Duration = Duration::from_secs(60);

/// The most memory that the program may come to hold beyond what it held when the document was begun, in bytes.
const MOST_MEMORY: u64 = 2 << 30;

/// A summary of many thousand products takes its time, and its memory.
const LONG_DOCUMENT: u32 = 10;

/// Called with what to tell, once, when a template has passed a bound; it is to end the program.
static WHEN_PASSED: OnceLock<fn(&str)> = OnceLock::new();

/// Says what is to happen when a template passes a bound: to tell it, and to end the program.
pub fn when_passed(end: fn(&str)) {
    // The first word counts; there is one program.
    let _ = WHEN_PASSED.set(end);
}

/// The documents of the programme's own templates that are being set just now.
#[derive(Default)]
pub struct Watched(Mutex<Vec<Begun>>);

struct Begun {
    path: String,
    template: &'static str,
    since: Instant,
    memory: u64,
    is_long: bool,
}

impl Watched {
    /// Notes that a document is begun, where a template of the programme's own makes it; forgotten when dropped.
    pub fn begin(&self, engine: &Engine, job: &Job, is_long: bool) -> Option<InWork<'_>> {
        if !engine.has_own_templates() {
            return None;
        }
        let mut begun = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        begun.push(Begun {
            path: job.path.clone(),
            template: job.template,
            since: Instant::now(),
            memory: files::memory_held().unwrap_or(0),
            is_long,
        });
        Some(InWork {
            watched: self,
            path: job.path.clone(),
        })
    }

    /// Looks from time to time until `done`, and tells of the first document that has passed a bound.
    pub fn watch(&self, engine: &Engine, done: &dyn Fn() -> bool) {
        const LOOK: Duration = Duration::from_millis(50);
        let Some(end) = WHEN_PASSED.get() else { return };
        while !done() {
            thread::sleep(LOOK);
            let held = files::memory_held().unwrap_or(0);
            let begun = self.0.lock().unwrap_or_else(PoisonError::into_inner);
            if let Some(why) = begun
                .iter()
                .find_map(|one| one.passed(Instant::now(), held, engine))
            {
                end(&why);
                return;
            }
        }
    }
}

/// A document that is being set.
pub struct InWork<'a> {
    watched: &'a Watched,
    path: String,
}

impl Drop for InWork<'_> {
    fn drop(&mut self) {
        let mut begun = self
            .watched
            .0
            .lock()
            .unwrap_or_else(PoisonError::into_inner);
        begun.retain(|one| one.path != self.path);
    }
}

impl Begun {
    /// What to tell where it has passed a bound.
    fn passed(&self, now: Instant, held: u64, engine: &Engine) -> Option<String> {
        let times = if self.is_long { LONG_DOCUMENT } else { 1 };
        let too_long = now.duration_since(self.since) > LONGEST * times;
        let too_much = held.saturating_sub(self.memory) > MOST_MEMORY * u64::from(times);
        if !too_long && !too_much {
            return None;
        }
        let why = if too_long {
            format!(
                "had not ended after {} seconds",
                (LONGEST * times).as_secs()
            )
        } else {
            format!(
                "took more than {} GB of memory",
                (MOST_MEMORY * u64::from(times)) >> 30
            )
        };
        let loops: Vec<String> = engine
            .own_sources()
            .flat_map(|(name, source)| loops(name, source))
            .collect();
        let look = if loops.is_empty() {
            "Look for a function that calls itself without end".to_owned()
        } else {
            format!("Look at its loops: {}", loops.join("; "))
        };
        Some(format!(
            "{}: the programme’s own template {TEMPLATE_FOLDER}/{} {why}, so the run was ended and nothing was written. {look}; or take the file out of {TEMPLATE_FOLDER}/ to use the built-in one.",
            self.path, self.template
        ))
    }
}

/// Where the loops of a template begin: `report-templates/sheet.typ, line 12`.
fn loops(name: &str, source: &Source) -> Vec<String> {
    let mut lines = Vec::new();
    walk(&LinkedNode::new(source.root()), source, &mut lines);
    lines
        .into_iter()
        .map(|line| format!("{TEMPLATE_FOLDER}/{name}, line {line}"))
        .collect()
}

fn walk(node: &LinkedNode<'_>, source: &Source, lines: &mut Vec<usize>) {
    if matches!(node.kind(), SyntaxKind::ForLoop | SyntaxKind::WhileLoop)
        && let Some(line) = source.lines().byte_to_line(node.offset())
    {
        lines.push(line + 1);
    }
    for child in node.children() {
        walk(&child, source, lines);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_loop_is_told_by_its_line() {
        let source =
            Source::detached("= Title\n#let n = 3\n#for i in range(n) [x]\n\n#while true { }\n");
        assert_eq!(
            loops("sheet.typ", &source),
            [
                "report-templates/sheet.typ, line 3",
                "report-templates/sheet.typ, line 5"
            ]
        );
    }
}
