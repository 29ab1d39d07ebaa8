//! The doorbell: events that say that something may have happened, from the operating system where it has them.

use crate::cli::watch::folder;
use crate::cli::watch::settling::Heard;
use notify_debouncer_full::notify::event::{
    AccessKind, AccessMode, EventKind, ModifyKind, RenameMode,
};
use notify_debouncer_full::notify::{self, RecommendedWatcher, RecursiveMode, Watcher};
use std::path::{Path, PathBuf};
use std::sync::mpsc::{self, Receiver, Sender};
use std::time::{Duration, Instant};

/// A doorbell for one programme folder.
pub struct Bell {
    root: PathBuf,
    rings: Receiver<notify::Result<notify::Event>>,
    sender: Sender<notify::Result<notify::Event>>,
    watcher: Option<RecommendedWatcher>,
    armed: Vec<(PathBuf, u64)>,
}

impl Bell {
    /// A bell that listens once [`Bell::arm`] has been called.
    pub fn new(root: &Path) -> Bell {
        let (sender, rings) = mpsc::channel();
        Bell {
            root: root.to_owned(),
            rings,
            sender,
            watcher: None,
            armed: Vec::new(),
        }
    }

    /// Listens to the folders that are there now; to be called again when they may be others. Where a folder gives no
    /// events the bell stays silent, and looking from time to time has to do.
    pub fn arm(&mut self) {
        let folders = folder::folders(&self.root);
        if folders == self.armed && self.watcher.is_some() {
            return;
        }
        let sender = self.sender.clone();
        let ring = move |event| {
            // Nobody listens any more once the watch has ended.
            let _ = sender.send(event);
        };
        self.watcher = notify::recommended_watcher(ring).ok();
        if let Some(watcher) = &mut self.watcher {
            for (path, _) in &folders {
                let whole = if *path == self.root {
                    RecursiveMode::NonRecursive
                } else {
                    RecursiveMode::Recursive
                };
                let _ = watcher.watch(path, whole);
            }
        }
        self.armed = folders;
    }

    /// Waits for a ring, at most this long; then takes what rings within a moment, so that a burst is one look.
    pub fn wait(&mut self, at_most: Duration) -> Vec<(String, Heard)> {
        const BURST: Duration = Duration::from_millis(50);
        let mut heard = Vec::new();
        let until = Instant::now() + at_most;
        while let Ok(first) = self
            .rings
            .recv_timeout(until.saturating_duration_since(Instant::now()))
        {
            if is_only_a_look(&first) {
                continue;
            }
            self.take(first, &mut heard);
            std::thread::sleep(BURST);
            while let Ok(next) = self.rings.try_recv() {
                self.take(next, &mut heard);
            }
            break;
        }
        heard
    }

    fn take(&self, event: notify::Result<notify::Event>, heard: &mut Vec<(String, Heard)>) {
        let Ok(event) = event else { return };
        let Some(what) = what_it_says(event.kind) else {
            return;
        };
        for path in event.paths {
            if let Ok(below) = path.strip_prefix(&self.root) {
                let names: Vec<_> = below.iter().map(|name| name.to_string_lossy()).collect();
                heard.push((names.join("/"), what));
            }
        }
    }
}

/// Whether somebody has only opened or read something: we do so ourselves at each look, and a bell that rang for it would ring
/// for ever.
fn is_only_a_look(event: &notify::Result<notify::Event>) -> bool {
    matches!(
        event,
        Ok(event) if matches!(event.kind, EventKind::Access(kind) if kind != AccessKind::Close(AccessMode::Write))
    )
}

/// What an event says of the file's writer. Only Linux tells when a file that was written is closed; elsewhere nothing
/// is concluded, and the longer rest holds.
fn what_it_says(kind: EventKind) -> Option<Heard> {
    match kind {
        EventKind::Access(AccessKind::Close(AccessMode::Write))
        | EventKind::Modify(ModifyKind::Name(RenameMode::To)) => Some(Heard::Whole),
        EventKind::Modify(ModifyKind::Data(_)) if cfg!(target_os = "linux") => Some(Heard::Writing),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::fs;
    use std::io::Write;

    /// Waits for this to be heard, as long as a busy machine may need.
    fn hears(bell: &mut Bell, path: &str, what: Heard) -> bool {
        (0..100).any(|_| {
            let heard = bell.wait(Duration::from_millis(100));
            heard.contains(&(path.to_owned(), what))
        })
    }

    #[cfg(target_os = "linux")]
    #[test]
    fn the_end_of_writing_is_heard_even_in_a_folder_that_came_later() {
        let root = tempfile::tempdir().expect("a folder");
        let mut bell = Bell::new(root.path());
        bell.arm();
        fs::create_dir(root.path().join("inbox")).expect("makes");
        bell.arm();
        let mut file = fs::File::create(root.path().join("inbox/a.csv")).expect("makes");
        file.write_all(b"one").expect("writes");
        assert!(hears(&mut bell, "inbox/a.csv", Heard::Writing));
        drop(file);
        assert!(hears(&mut bell, "inbox/a.csv", Heard::Whole));
    }

    #[cfg(target_os = "linux")]
    #[test]
    fn looking_at_the_folder_does_not_ring() {
        let root = tempfile::tempdir().expect("a folder");
        fs::create_dir(root.path().join("inbox")).expect("makes");
        fs::write(root.path().join("programme.toml"), "").expect("writes");
        fs::write(root.path().join("inbox/a.csv"), "one").expect("writes");
        let mut bell = Bell::new(root.path());
        bell.arm();
        while bell.rings.recv_timeout(Duration::from_millis(50)).is_ok() {}
        folder::snapshot(root.path(), &folder::Snapshot::default()).expect("looks");
        fs::read(root.path().join("inbox/a.csv")).expect("reads");
        let looks: Vec<_> =
            std::iter::from_fn(|| bell.rings.recv_timeout(Duration::from_millis(50)).ok())
                .collect();
        assert!(!looks.is_empty(), "a look is heard, or nothing is");
        assert!(looks.iter().all(is_only_a_look), "{looks:?}");
        fs::read(root.path().join("inbox/a.csv")).expect("reads");
        let (began, second) = (Instant::now(), Duration::from_secs(1));
        assert_eq!(bell.wait(second), [], "it ends no wait");
        assert!(began.elapsed() >= second, "{:?}", began.elapsed());
    }
}
