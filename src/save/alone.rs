//! Files that are written by themselves, each whole or not at all: a document that is asked for alone, a register with a row
//! more, a new programme folder.

use crate::files;
use anyhow::{Result, bail};
use std::path::{Path, PathBuf};
use tempfile::TempDir;

/// Writes a document; what stood in its place is replaced.
///
/// # Errors
/// Where it cannot be written: then what stood there still does.
pub fn document(path: &Path, bytes: &[u8]) -> Result<()> {
    files::write(path, bytes)
}

/// Takes a document away that a former run has left and this one has not.
///
/// # Errors
/// Where it is there and cannot be removed.
pub fn clear(path: &Path) -> Result<()> {
    files::remove_file(path)
}

/// Refuses to write a register that a spreadsheet program has open: what is saved there later would write over it.
///
/// # Errors
/// Where it is open.
pub fn refuse_open(path: &Path) -> Result<()> {
    if let Some(lock) = lock_of_spreadsheet(path) {
        bail!(
            "{} is open in a spreadsheet program, which would write over what is entered now. Close it there and try again; \
             if it is open nowhere, remove {}",
            path.display(),
            lock.display()
        );
    }
    Ok(())
}

/// The file by which a spreadsheet program tells others that it has this one open; none where there is no such file.
fn lock_of_spreadsheet(path: &Path) -> Option<PathBuf> {
    let name = path.file_name()?.to_str()?;
    let locks = [format!("~${name}"), format!(".~lock.{name}#")];
    let mut locks = locks.iter().map(|lock| path.with_file_name(lock));
    locks.find(|lock| lock.exists())
}

/// Writes a register, and returns once it is on the disk.
///
/// # Errors
/// Where it cannot be written: then it is as it was.
pub fn register(path: &Path, bytes: &[u8]) -> Result<()> {
    files::write_durably(path, bytes)
}

/// Clears away what a run that was cut off left beside the registers.
///
/// # Errors
/// Where the folder cannot be listed, or something of it cannot be removed.
pub fn sweep(registers: &Path) -> Result<()> {
    files::sweep_unfinished(registers)
}

/// Lays out a new programme folder: these files, and an empty inbox where none of them is in it.
///
/// # Errors
/// Where one cannot be written.
pub fn programme(dir: &Path, laid_out: &[(&str, &[u8])]) -> Result<()> {
    for (path, bytes) in laid_out {
        files::write(&dir.join(path), bytes)?;
    }
    files::create_folder(&dir.join("inbox"))
}

/// A folder for what is made on the way and goes again with the run.
///
/// # Errors
/// Where there is no room for one.
pub fn scratch() -> Result<TempDir> {
    tempfile::tempdir().map_err(|error| files::refused("write in", &std::env::temp_dir(), &error))
}
