//! One run at a time: a lock that the operating system gives back when its holder ends, however it ends.
//!
//! The lock file stands beside the outputs folder, so that runs into two folders do not wait for each other and a
//! read-only programme folder can still be read. It names its holder for whoever has to wait.

use crate::files;
use anyhow::{Result, bail};
use chrono::DateTime;
use std::fs::{self, File, OpenOptions, TryLockError};
use std::io::{Read, Seek, Write};
use std::path::{Path, PathBuf};
use std::time::{Duration, Instant, SystemTime, UNIX_EPOCH};

/// Held for the length of a run; given back when dropped, or by the system when the process ends.
pub struct Lock {
    file: File,
    path: PathBuf,
}

/// Takes the lock for an outputs folder, waiting for another run as long as `patience`; `on_wait` hears once who holds
/// it, before any waiting.
///
/// # Errors
/// Where another run still holds it then, or the lock file cannot be written.
pub fn take(
    outputs: &Path,
    task: &str,
    patience: Duration,
    on_wait: &mut dyn FnMut(&str),
) -> Result<Lock> {
    let path = lock_file(outputs);
    let since = Instant::now();
    let mut told = false;
    loop {
        let mut file = open(&path).map_err(|error| files::refused("write", &path, &error))?;
        match file.try_lock() {
            Ok(()) if is_still_there(&file, &path) => {
                // Who holds it is a courtesy: the lock holds without.
                let _ = note_holder(&mut file, task);
                return Ok(Lock { file, path });
            }
            // Its last holder removed the file between our opening and locking it: there is a new one, or none.
            Ok(()) => continue,
            Err(TryLockError::Error(error)) if error.kind() == std::io::ErrorKind::Unsupported => {
                // A network folder that knows no locks: better to run than never to.
                return Ok(Lock { file, path });
            }
            Err(TryLockError::Error(error)) => {
                return Err(files::refused("lock", &path, &error));
            }
            Err(TryLockError::WouldBlock) => {
                let holder = read_holder(&mut file);
                if since.elapsed() >= patience {
                    bail!(
                        "another galleyproof is at work in this folder: {holder}. Wait until it has ended, then try again"
                    );
                }
                if !std::mem::replace(&mut told, true) {
                    on_wait(&holder);
                }
                std::thread::sleep(Duration::from_millis(50));
            }
        }
    }
}

impl Drop for Lock {
    fn drop(&mut self) {
        // Removed while still held, so that whoever opened it meanwhile sees that it is gone (`is_still_there`).
        let _ = fs::remove_file(&self.path);
        let _ = self.file.unlock();
    }
}

/// `out` is locked by `.galleyproof-out.lock` beside it.
fn lock_file(outputs: &Path) -> PathBuf {
    let name = outputs.file_name().unwrap_or_default().to_string_lossy();
    outputs.with_file_name(format!(".galleyproof-{name}.lock"))
}

fn open(path: &Path) -> std::io::Result<File> {
    if let Some(folder) = path.parent() {
        fs::create_dir_all(folder)?;
    }
    // The holder is written into it: what a link leads to would be lost.
    if fs::symlink_metadata(path).is_ok_and(|about| about.is_symlink()) {
        return Err(std::io::Error::other(
            "a link stands there, and what it leads to is left alone. Remove it and try again",
        ));
    }
    OpenOptions::new()
        .read(true)
        .write(true)
        .create(true)
        .truncate(false)
        .open(path)
}

#[cfg(unix)]
fn is_still_there(file: &File, path: &Path) -> bool {
    use std::os::unix::fs::MetadataExt;
    match (file.metadata(), fs::metadata(path)) {
        (Ok(ours), Ok(theirs)) => (ours.dev(), ours.ino()) == (theirs.dev(), theirs.ino()),
        _ => false,
    }
}

#[cfg(not(unix))]
fn is_still_there(_file: &File, path: &Path) -> bool {
    path.exists()
}

fn note_holder(file: &mut File, task: &str) -> std::io::Result<()> {
    let since = SystemTime::now()
        .duration_since(UNIX_EPOCH)
        .ok()
        .and_then(|since| DateTime::from_timestamp(i64::try_from(since.as_secs()).ok()?, 0))
        .map(|since| since.format("%Y-%m-%d %H:%M:%S UTC").to_string())
        .unwrap_or_default();
    let (process, host) = (std::process::id(), host());
    file.set_len(0)?;
    file.rewind()?;
    write!(
        file,
        "`galleyproof {task}`, process {process} on {host}, since {since}"
    )
}

fn read_holder(file: &mut File) -> String {
    let mut text = String::new();
    match file.read_to_string(&mut text) {
        Ok(read) if read > 0 => text,
        _ => "it has not said which".to_owned(),
    }
}

/// The machine's name, where the system tells it without being asked in its own language.
fn host() -> String {
    ["/proc/sys/kernel/hostname", "/etc/hostname"]
        .iter()
        .find_map(|path| fs::read_to_string(path).ok())
        .or_else(|| std::env::var("COMPUTERNAME").ok())
        .or_else(|| std::env::var("HOSTNAME").ok())
        .map(|name| name.trim().to_owned())
        .filter(|name| !name.is_empty())
        .unwrap_or_else(|| "this machine".to_owned())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn try_take(outputs: &Path) -> Result<Lock> {
        take(outputs, "run", Duration::ZERO, &mut |_| {})
    }

    #[test]
    fn the_second_is_told_who_is_first() {
        let folder = tempfile::tempdir().expect("a folder");
        let out = folder.path().join("out");
        let first = take(&out, "issue", Duration::ZERO, &mut |_| {}).expect("free");
        let told = try_take(&out).err().expect("held").to_string();
        let process = format!("process {} on ", std::process::id());
        assert!(
            told.contains("`galleyproof issue`") && told.contains(&process),
            "{told}"
        );
        drop(first);
        drop(try_take(&out).expect("free again"));
        assert!(
            fs::read_dir(folder.path()).expect("lists").next().is_none(),
            "nothing is left"
        );
    }

    #[test]
    fn another_folder_is_another_lock() {
        let folder = tempfile::tempdir().expect("a folder");
        let _first = try_take(&folder.path().join("out")).expect("free");
        assert!(try_take(&folder.path().join("elsewhere")).is_ok());
    }

    #[test]
    fn what_a_crash_left_holds_nobody_up() {
        let folder = tempfile::tempdir().expect("a folder");
        let out = folder.path().join("out");
        fs::write(lock_file(&out), "`galleyproof run`, process 1 on ghost").expect("writes");
        assert!(try_take(&out).is_ok());
    }

    #[test]
    fn only_one_of_many_holds_it_at_a_time() {
        use std::sync::atomic::{AtomicUsize, Ordering};
        let folder = tempfile::tempdir().expect("a folder");
        let out = folder.path().join("out");
        let inside = AtomicUsize::new(0);
        std::thread::scope(|scope| {
            for _ in 0..4 {
                scope.spawn(|| {
                    for _ in 0..5 {
                        let patience = Duration::from_secs(60);
                        let lock = take(&out, "run", patience, &mut |_| {}).expect("waits");
                        assert_eq!(inside.fetch_add(1, Ordering::SeqCst), 0);
                        std::thread::yield_now();
                        inside.fetch_sub(1, Ordering::SeqCst);
                        drop(lock);
                    }
                });
            }
        });
    }
}
