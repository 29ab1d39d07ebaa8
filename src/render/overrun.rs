//! A bound on what a programme's own template or font may take: one that never ends must not hold up a run for ever.
//!
//! Neither the typesetter nor what fills in pages and mails can be stopped from outside, so the run ends as a whole. Nothing
//! is lost by that: documents wait in the staging folder, or in memory, until all are made.

use crate::files;
use crate::render::engine::{Engine, FONT_FOLDER, TEMPLATE_FOLDER};
use std::sync::OnceLock;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::mpsc::{self, Receiver, RecvTimeoutError};
use std::thread;
use std::time::{Duration, Instant};
use typst::syntax::{LinkedNode, Source, SyntaxKind};

/// The longest that a letter or a sheet may take, by a template of the programme's own: some thousand times what ours take.
const LONGEST: Duration = Duration::from_secs(60);

/// The most memory that the program may come to hold beyond what it held when the document was begun, in bytes.
const MOST_MEMORY: u64 = 2 << 30;

/// So many times as long may a summary take, which has many thousand products.
const LONG_TIMES: u32 = 10;

/// And so many times as much memory.
const LONG_MEMORY: u64 = 2;

/// Called with what to tell, once, when a template has passed a bound; it is to end the program.
static WHEN_PASSED: OnceLock<fn(&str)> = OnceLock::new();

/// Whether it was called: several documents may be in work, and one line is enough.
static IS_PASSED: AtomicBool = AtomicBool::new(false);

/// Says what is to happen when a template passes a bound: to tell it, and to end the program.
pub fn when_passed(end: fn(&str)) {
    // The first word counts; there is one program.
    let _ = WHEN_PASSED.set(end);
}

/// A document to be made.
#[derive(Clone, Copy, Debug)]
pub struct ToMake<'a> {
    /// Its path below the folder of outputs.
    pub path: &'a str,
    /// Its template.
    pub template: &'a str,
    /// Whether it may be as long as a summary.
    pub is_long: bool,
}

/// Makes a document. Where a template or font of the programme's own may have a part in it, this is watched, and the program
/// ends where it takes too long or too much memory. Whoever makes a document with such files comes this way.
pub fn watched<T>(engine: &Engine, to_make: ToMake<'_>, make: impl FnOnce() -> T) -> T {
    let Some(end) = WHEN_PASSED.get().filter(|_| engine.has_own_files()) else {
        return make();
    };
    let begun = Begun::now(to_make);
    thread::scope(|scope| {
        // Dropped however this ends, so that the watch ends with it.
        let (_working, ended) = mpsc::channel::<()>();
        scope.spawn(move || begun.watch(engine, &ended, *end));
        make()
    })
}

/// A document that is being made.
struct Begun<'a> {
    to_make: ToMake<'a>,
    since: Instant,
    /// What the program held then, in bytes.
    memory: u64,
}

impl<'a> Begun<'a> {
    fn now(to_make: ToMake<'a>) -> Begun<'a> {
        Begun {
            to_make,
            since: Instant::now(),
            memory: files::memory_held().unwrap_or(0),
        }
    }

    /// Looks from time to time until nobody works on it any more, and tells where it has passed a bound.
    fn watch(&self, engine: &Engine, ended: &Receiver<()>, end: fn(&str)) {
        const LOOK: Duration = Duration::from_millis(50);
        while ended.recv_timeout(LOOK) == Err(RecvTimeoutError::Timeout) {
            let held = files::memory_held().unwrap_or(0);
            let Some(why) = self.passed(Instant::now(), held) else {
                continue;
            };
            if !IS_PASSED.swap(true, Ordering::Relaxed) {
                end(&self.told(&why, engine));
            }
            return;
        }
    }

    /// Which bound it has passed, if any.
    fn passed(&self, now: Instant, held: u64) -> Option<String> {
        let (longest, most) = match self.to_make.is_long {
            true => (LONGEST * LONG_TIMES, MOST_MEMORY * LONG_MEMORY),
            false => (LONGEST, MOST_MEMORY),
        };
        if now.duration_since(self.since) > longest {
            return Some(format!("had not ended after {} seconds", longest.as_secs()));
        }
        let is_too_much = held.saturating_sub(self.memory) > most;
        is_too_much.then(|| format!("took more than {} GB of memory", most >> 30))
    }

    /// What to tell: whose file it is, and where to look.
    fn told(&self, why: &str, engine: &Engine) -> String {
        let ToMake { path, template, .. } = self.to_make;
        let own = engine.own_behind(template);
        if own.is_empty() {
            let fonts: Vec<&str> = engine.own_fonts().collect();
            return format!(
                "{path}: what sets it {why} with the programme’s own fonts, so the run was ended and nothing was written. Take the files out of {FONT_FOLDER}/ one by one, or load them again from where they came: {}",
                fonts.join(", ")
            );
        }
        let loops: Vec<String> = engine
            .own_sources()
            .flat_map(|(name, source)| loops(name, source))
            .collect();
        let look = match template.ends_with(".typ") {
            true if loops.is_empty() => {
                "Look for a function that calls itself without end".to_owned()
            }
            true => format!("Look at its loops: {}", loops.join("; ")),
            false => "Look for a text that is put together in a loop".to_owned(),
        };
        let own = own.join(&format!(", {TEMPLATE_FOLDER}/"));
        format!(
            "{path}: the programme’s own template {TEMPLATE_FOLDER}/{own} {why}, so the run was ended and nothing was written. {look}; or take the file out of {TEMPLATE_FOLDER}/ to use the built-in one."
        )
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
    fn a_document_passes_a_bound_one_step_beyond_it() {
        let begun = |is_long| Begun {
            to_make: ToMake {
                path: "sheets/P1--1.pdf",
                template: "sheet.typ",
                is_long,
            },
            since: Instant::now(),
            memory: 7 << 20,
        };
        for (is_long, seconds, most) in [(false, 60, 2), (true, 600, 4)] {
            let one = begun(is_long);
            let at = one.since + Duration::from_secs(seconds);
            let held = one.memory + (most << 30);
            assert_eq!(one.passed(at, held), None);
            let late = one.passed(at + Duration::from_secs(1), held);
            assert_eq!(late, Some(format!("had not ended after {seconds} seconds")));
            let large = one.passed(at, held + 1);
            assert_eq!(large, Some(format!("took more than {most} GB of memory")));
        }
    }

    #[test]
    fn fonts_of_the_programme_are_watched_and_told_like_its_templates() {
        let folder = tempfile::tempdir().expect("a folder");
        let settings = "[programme]\nname = \"Tidewater Kitchen Works\"\nshort_name = \"TKW\"\n";
        let config = crate::config::Config::parse(settings, folder.path()).expect("settings");
        let told = |engine: &Engine| {
            let to_make = ToMake {
                path: "sheets/P1--1.pdf",
                template: "sheet.typ",
                is_long: false,
            };
            Begun::now(to_make).told("had not ended", engine)
        };
        assert!(!Engine::new(&config).expect("ours").has_own_files());
        let font = include_bytes!("../../fonts/source-sans-3/SourceSans3-Regular.otf");
        files::write(&folder.path().join("fonts/own.otf"), font).expect("writes");
        let engine = Engine::new(&config).expect("a font");
        assert!(engine.has_own_files());
        assert!(told(&engine).ends_with("own.otf"), "{}", told(&engine));
        let style = folder.path().join("report-templates/style.typ");
        files::write(&style, b"#let a = 1").expect("writes");
        let engine = Engine::new(&config).expect("a template");
        assert!(told(&engine).contains("own template report-templates/style.typ had not ended"));
    }

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
