//! The one place that opens or writes a file: every failure names its path, every write is whole or not at all.

mod links;
mod refusals;

pub use links::{leads_out, refuse_link_out};
pub use refusals::refused;

use anyhow::Result;
use refusals::{held_by_another, not_listed};
use sha2::{Digest, Sha256};
use std::fs;
use std::io::{self, Read, Write};
use std::path::{Path, PathBuf};
use std::time::Duration;

/// A file's bytes.
pub fn read(path: &Path) -> Result<Vec<u8>> {
    read_bounded(path).map_err(|error| refused("read", path, &error))
}

/// The largest file that is read: far beyond anything that people keep or labs send, and within what a machine holds.
const LARGEST: u64 = 1 << 30;

/// Reads a plain file. A pipe would hold the program up for as long as nobody writes to it, and a device has no end.
fn read_bounded(path: &Path) -> io::Result<Vec<u8>> {
    let about = fs::metadata(path)?;
    if about.is_dir() {
        return Err(io::ErrorKind::IsADirectory.into());
    }
    if !about.is_file() {
        return Err(io::Error::other(
            "it is no plain file but a pipe or a device. Put a copy in its place",
        ));
    }
    // A file that says that it has no bytes and has some is one of the system's own: some of those never end.
    if about.len() == 0 {
        return Ok(Vec::new());
    }
    let mut bytes = Vec::with_capacity(about.len().min(LARGEST) as usize);
    let read = fs::File::open(path)?
        .take(LARGEST + 1)
        .read_to_end(&mut bytes)?;
    if read as u64 > LARGEST {
        return Err(io::Error::other(
            "it is larger than 1 GiB, which nothing here can be",
        ));
    }
    Ok(bytes)
}

/// A file's bytes, or none where there is no such file.
pub fn read_if_there(path: &Path) -> Result<Option<Vec<u8>>> {
    match read_bounded(path) {
        Ok(bytes) => Ok(Some(bytes)),
        Err(error) if error.kind() == io::ErrorKind::NotFound => Ok(None),
        Err(error) => Err(refused("read", path, &error)),
    }
}

/// As [`read_if_there`], of a file that is no link: a link may lead anywhere on the machine, and what it leads to would stand
/// in what we make. None where a link stands there.
pub fn read_unlinked(path: &Path) -> Result<Option<Vec<u8>>> {
    match fs::symlink_metadata(path) {
        Ok(about) if about.is_symlink() => Ok(None),
        _ => read_if_there(path),
    }
}

/// Whether there is a folder, or a file, with something in it.
pub fn holds_something(path: &Path) -> Result<bool> {
    match fs::read_dir(path) {
        Ok(mut entries) => Ok(entries.next().is_some()),
        Err(error) if error.kind() == io::ErrorKind::NotFound => Ok(false),
        Err(error) => Err(refused("read the folder", path, &error)),
    }
}

/// How many bytes a file has; none where there is no such file.
pub fn length(path: &Path) -> Option<u64> {
    fs::metadata(path)
        .ok()
        .filter(|about| about.is_file())
        .map(|about| about.len())
}

/// Refuses a file that stands where a folder should be.
pub fn refuse_file_as_folder(path: &Path) -> Result<()> {
    match fs::metadata(path) {
        Ok(about) if !about.is_dir() => {
            Err(refused("read", path, &io::ErrorKind::NotADirectory.into()))
        }
        _ => Ok(()),
    }
}

/// A folder and those above it.
pub fn create_folder(path: &Path) -> Result<()> {
    fs::create_dir_all(path).map_err(|error| refused("make the folder", path, &error))
}

/// Writes a file whole or not at all: beside its target first, then renamed over it.
pub fn write(path: &Path, bytes: &[u8]) -> Result<()> {
    write_whole(path, bytes, Lasting::WhenTheSystemLikes)
        .map_err(|error| refused("write", path, &error))
}

/// Renames a file over its target, making the target's folder.
pub fn rename(from: &Path, to: &Path) -> Result<()> {
    let folder = to.parent().expect("a file has a folder");
    create_folder(folder)?;
    fs::rename(from, to).map_err(|error| refused("put in its place", to, &error))
}

/// Whether a path with `/` names something below the folder it is joined to and nothing else: no root, no drive, no step
/// upwards or on the spot.
pub fn stays_below(path: &str) -> bool {
    !path.is_empty()
        && path
            .split('/')
            .all(|name| !matches!(name, "" | "." | "..") && !name.contains('\0'))
        && Path::new(path)
            .components()
            .all(|part| matches!(part, std::path::Component::Normal(_)))
}

/// Gives a file a free name beside its own, `a (kept 1).pdf`, and returns it.
pub fn set_aside(path: &Path) -> Result<String> {
    let stem = path.file_stem().unwrap_or_default().to_string_lossy();
    let extension = path
        .extension()
        .map(|end| format!(".{}", end.to_string_lossy()))
        .unwrap_or_default();
    let free = (1..)
        .map(|n| format!("{stem} (kept {n}){extension}"))
        .find(|name| !path.with_file_name(name).exists());
    let name = free.expect("some number is free");
    rename(path, &path.with_file_name(&name))?;
    Ok(name)
}

/// Removes a file, if it is there.
pub fn remove_file(path: &Path) -> Result<()> {
    match fs::remove_file(path) {
        Err(error) if error.kind() != io::ErrorKind::NotFound => {
            Err(refused("remove", path, &error))
        }
        _ => Ok(()),
    }
}

/// Removes a folder of this program's own with all that is in it, if it is there.
pub fn remove_folder(path: &Path) -> Result<()> {
    match fs::remove_dir_all(path) {
        Err(error) if error.kind() != io::ErrorKind::NotFound => {
            Err(refused("remove", path, &error))
        }
        _ => Ok(()),
    }
}

/// Removes the folders above a removed file, up to `root`, that have nothing left in them.
pub fn remove_empty_folders(root: &Path, path: &Path) -> Result<()> {
    let mut folder = path.parent();
    while let Some(here) = folder.filter(|here| *here != root && here.starts_with(root)) {
        if fs::remove_dir(here).is_err() {
            // Not empty, or not ours to remove: then it stays.
            return Ok(());
        }
        folder = here.parent();
    }
    Ok(())
}

/// Bytes in lower-case hexadecimal.
pub fn hex(bytes: &[u8]) -> String {
    use std::fmt::Write;
    bytes
        .iter()
        .fold(String::with_capacity(bytes.len() * 2), |mut text, byte| {
            write!(text, "{byte:02x}").expect("a string takes all");
            text
        })
}

/// As [`write`], and the bytes are on the disk, not in its queue, before the new file takes the old one's place: for
/// what cannot be made again.
pub fn write_durably(path: &Path, bytes: &[u8]) -> Result<()> {
    write_whole(path, bytes, Lasting::BeforeItIsSeen)
        .and_then(|()| sync_folder(path.parent().expect("a file to write has a folder")))
        .map_err(|error| refused("write", path, &error))
}

/// Writes a file that is not there yet, with the folders above it.
pub fn write_new(path: &Path, bytes: &[u8]) -> Result<()> {
    let folder = path.parent().expect("a file to write has a folder");
    fs::create_dir_all(folder)
        .and_then(|()| fs::File::create_new(path))
        .and_then(|mut file| file.write_all(bytes))
        .map_err(|error| refused("write", path, &error))
}

/// Brings every file and folder below a folder to the disk, then moves the folder to a place where nothing stands.
pub fn publish_folder(from: &Path, to: &Path) -> Result<()> {
    for entry in walkdir::WalkDir::new(from).contents_first(true) {
        let entry = entry.map_err(|error| not_listed(from, &error))?;
        let synced = match entry.file_type().is_dir() {
            true => sync_folder(entry.path()),
            false => fs::File::open(entry.path()).and_then(|file| file.sync_all()),
        };
        synced.map_err(|error| refused("write", entry.path(), &error))?;
    }
    fs::rename(from, to)
        .and_then(|()| sync_folder(to.parent().expect("a folder to move has one above it")))
        .map_err(|error| refused("make the folder", to, &error))
}

/// The memory that this program holds just now, in bytes; none where the system does not tell.
pub fn memory_held() -> Option<u64> {
    const PAGE: u64 = 4096;
    let pages = fs::read_to_string("/proc/self/statm").ok()?;
    let resident: u64 = pages.split_ascii_whitespace().nth(1)?.parse().ok()?;
    Some(resident * PAGE)
}

/// SHA-256 of a file, lower-case hexadecimal, and its length; the file is never held whole.
pub fn sha256(path: &Path) -> Result<(String, u64)> {
    hash(path).map_err(|error| refused("read", path, &error))
}

fn hash(path: &Path) -> io::Result<(String, u64)> {
    let mut file = fs::File::open(path)?;
    let mut hasher = Sha256::new();
    let mut length = 0;
    let mut piece = vec![0; 1 << 16];
    loop {
        let read = file.read(&mut piece)?;
        if read == 0 {
            return Ok((hex(&hasher.finalize()), length));
        }
        hasher.update(&piece[..read]);
        length += read as u64;
    }
}

/// SHA-256 of bytes, lower-case hexadecimal.
pub fn sha256_of(bytes: &[u8]) -> String {
    hex(&Sha256::digest(bytes))
}

/// What stands below a folder, plain files and all else (links, sockets): paths below it with `/`, in order.
///
/// # Errors
/// Where a folder cannot be listed.
pub fn list(folder: &Path) -> Result<Vec<Listed>> {
    let mut listed = Vec::new();
    for entry in walkdir::WalkDir::new(folder).min_depth(1) {
        let entry = entry.map_err(|error| not_listed(folder, &error))?;
        if entry.file_type().is_dir() {
            continue;
        }
        let below = entry
            .path()
            .strip_prefix(folder)
            .expect("a walk stays below its root");
        listed.push(Listed {
            path: slashed(below),
            is_plain_file: entry.file_type().is_file() && below.to_str().is_some(),
        });
    }
    listed.sort();
    Ok(listed)
}

/// One entry of a [`list`].
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Listed {
    /// Path below the folder, with `/`; what is no text in it is shown as U+FFFD.
    pub path: String,
    /// Neither a link nor anything stranger, and its path is text, so that it can be opened by it.
    pub is_plain_file: bool,
}

fn slashed(path: &Path) -> String {
    let names: Vec<_> = path.iter().map(|name| name.to_string_lossy()).collect();
    names.join("/")
}

/// Whether a name is one that nobody gave: a lock of an office program, a download that is not whole yet, a backup of an
/// editor, or what an operating system leaves behind. Such files are passed over in silence everywhere.
pub fn is_litter(name: &str) -> bool {
    let lower = name.to_lowercase();
    name.starts_with("~$")
        || name.starts_with('.')
        || name.ends_with('~')
        || PARTIAL.iter().any(|ending| lower.ends_with(ending))
        || matches!(
            lower.as_str(),
            "thumbs.db" | "desktop.ini" | "ehthumbs.db" | "icon\r" | "__macosx"
        )
}

/// The endings that browsers and copying programs give to a file that is not whole yet.
pub const PARTIAL: [&str; 7] = [
    ".part",
    ".partial",
    ".filepart",
    ".crdownload",
    ".download",
    ".tmp",
    ".icloud",
];

/// What stands in a folder itself, in order of name; nothing where there is no such folder.
///
/// # Errors
/// Where it cannot be listed.
pub fn entries(folder: &Path) -> Result<Vec<PathBuf>> {
    let refused = |error: io::Error| refused("list", folder, &error);
    if !folder.is_dir() {
        return Ok(Vec::new());
    }
    let mut paths = fs::read_dir(folder)
        .map_err(refused)?
        .map(|entry| Ok(entry.map_err(refused)?.path()))
        .collect::<Result<Vec<PathBuf>>>()?;
    paths.sort();
    Ok(paths)
}

/// The names of the folders in a folder, in order; none where there is no such folder.
pub fn folders_in(folder: &Path) -> Result<Vec<PathBuf>> {
    let refused = |error: io::Error| refused("list", folder, &error);
    let entries = match fs::read_dir(folder) {
        Err(error) if error.kind() == io::ErrorKind::NotFound => return Ok(Vec::new()),
        entries => entries.map_err(refused)?,
    };
    let mut folders = Vec::new();
    for entry in entries {
        let entry = entry.map_err(refused)?;
        if entry.file_type().is_ok_and(|kind| kind.is_dir()) {
            folders.push(entry.path());
        }
    }
    folders.sort();
    Ok(folders)
}

/// The prefix of everything that is still being made; nobody else's file is called so.
pub const UNFINISHED: &str = ".galleyproof-";

/// Removes the files that a write which was cut off left in a folder. To be called only by the one run that may write.
pub fn sweep_unfinished(folder: &Path) -> Result<()> {
    let Ok(entries) = fs::read_dir(folder) else {
        return Ok(());
    };
    for entry in entries.flatten() {
        let name = entry.file_name();
        let rest = name.to_str().and_then(|name| name.strip_prefix(UNFINISHED));
        // Ours that are meant to stay have an ending: a record, a lock.
        let is_remains = rest.is_some_and(|rest| !rest.contains('.'));
        if is_remains && entry.file_type().is_ok_and(|kind| kind.is_file()) {
            remove_file(&entry.path())?;
        }
    }
    Ok(())
}

/// When bytes must have reached the disk.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Lasting {
    WhenTheSystemLikes,
    BeforeItIsSeen,
}

/// A rename is on the disk once its folder is; Windows has no such call and needs none.
fn sync_folder(folder: &Path) -> io::Result<()> {
    #[cfg(unix)]
    fs::File::open(folder)?.sync_all()?;
    #[cfg(not(unix))]
    let _ = folder;
    Ok(())
}

fn write_whole(path: &Path, bytes: &[u8], lasting: Lasting) -> io::Result<()> {
    let folder = path.parent().expect("a file to write has a folder");
    fs::create_dir_all(folder)?;
    let mut builder = tempfile::Builder::new();
    builder.prefix(UNFINISHED);
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        // A temporary file is private to its maker; the finished one is for whom the user's umask lets see it.
        builder.permissions(fs::Permissions::from_mode(0o666));
    }
    let mut file = builder.tempfile_in(folder)?;
    file.write_all(bytes)?;
    if lasting == Lasting::BeforeItIsSeen {
        file.as_file().sync_all()?;
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_failure_names_the_path() {
        let error = read(Path::new("no/such/file.csv")).expect_err("there is none");
        assert!(error.to_string().contains("no/such/file.csv"), "{error}");
    }

    #[cfg(target_os = "linux")]
    #[test]
    fn a_file_of_the_systems_that_never_ends_is_not_begun() {
        let read = read(Path::new("/proc/self/pagemap"));
        assert!(read.is_ok_and(|bytes| bytes.is_empty()));
    }

    #[test]
    fn only_the_remains_of_our_own_writes_are_swept() {
        let folder = tempfile::tempdir().expect("a folder");
        let names = [
            ".galleyproof-a1B2c3",
            ".galleyproof-planned.json",
            "mine.txt",
        ];
        for name in names {
            fs::write(folder.path().join(name), name).expect("writes");
        }
        sweep_unfinished(folder.path()).expect("sweeps");
        let left = names.map(|name| folder.path().join(name).exists());
        assert_eq!(left, [false, true, true]);
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
