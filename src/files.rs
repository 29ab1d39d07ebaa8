//! The one place that opens or writes a file: every failure names its path, every write is whole or not at all.

use anyhow::{Context, Result};
use std::fs;
use std::io::{self, Write};
use std::path::Path;
use std::time::Duration;

/// A file's bytes.
pub fn read(path: &Path) -> Result<Vec<u8>> {
    fs::read(path).with_context(|| format!("cannot read {}", path.display()))
}

/// A file's bytes, or none where there is no such file.
pub fn read_if_there(path: &Path) -> Result<Option<Vec<u8>>> {
    match fs::read(path) {
        Ok(bytes) => Ok(Some(bytes)),
        Err(error) if error.kind() == io::ErrorKind::NotFound => Ok(None),
        Err(error) => Err(error).with_context(|| format!("cannot read {}", path.display())),
    }
}

/// A folder and those above it.
pub fn create_folder(path: &Path) -> Result<()> {
    fs::create_dir_all(path).with_context(|| format!("cannot make the folder {}", path.display()))
}

/// Writes a file whole or not at all: beside its target first, then renamed over it.
pub fn write(path: &Path, bytes: &[u8]) -> Result<()> {
    write_whole(path, bytes).with_context(|| format!("cannot write {}", path.display()))
}

fn write_whole(path: &Path, bytes: &[u8]) -> io::Result<()> {
    let folder = path.parent().expect("a file to write has a folder");
    fs::create_dir_all(folder)?;
    let mut file = tempfile::Builder::new()
        .prefix(".galleyproof-")
        .tempfile_in(folder)?;
    file.write_all(bytes)?;
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        // A temporary file is private to its maker; the finished one is for everyone who may see the folder.
        file.as_file()
            .set_permissions(fs::Permissions::from_mode(0o644))?;
    }
    persist(file, path)
}

/// Renames over the target, and tries again for a moment where another program (a viewer, a virus scanner) holds it.
fn persist(mut file: tempfile::NamedTempFile, path: &Path) -> io::Result<()> {
    const WAITS: [u64; 5] = [10, 25, 50, 100, 200];
    let mut waits = WAITS.iter();
    loop {
        match file.persist(path) {
            Ok(_) => return Ok(()),
            Err(failed) => match waits.next() {
                Some(ms) if held_by_another(&failed.error) => {
                    file = failed.file;
                    std::thread::sleep(Duration::from_millis(*ms));
                }
                _ => return Err(failed.error),
            },
        }
    }
}

fn held_by_another(error: &io::Error) -> bool {
    // Windows: 5 is access denied, 32 is in use by another process.
    cfg!(windows) && matches!(error.raw_os_error(), Some(5 | 32))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_failure_names_the_path() {
        let error = read(Path::new("no/such/file.csv")).expect_err("there is none");
        assert!(error.to_string().contains("no/such/file.csv"), "{error}");
    }

    #[test]
    fn a_write_replaces_and_leaves_nothing_beside() {
        let folder = tempfile::tempdir().expect("a folder");
        let path = folder.path().join("deep/a.txt");
        write(&path, b"one").expect("writes");
        write(&path, b"two").expect("writes again");
        assert_eq!(read(&path).expect("reads"), b"two");
        assert_eq!(
            fs::read_dir(folder.path().join("deep"))
                .expect("lists")
                .count(),
            1
        );
    }
}
