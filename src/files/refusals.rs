//! What the system refuses, in words for people.

use std::io;
use std::path::Path;

/// What the system refused, in words that say what to do about the usual reasons.
pub fn refused(what: &str, path: &Path, error: &io::Error) -> anyhow::Error {
    let why = match error.kind() {
        io::ErrorKind::StorageFull => "the disk is full. Make room and try again".to_owned(),
        io::ErrorKind::QuotaExceeded => {
            "your share of the disk is used up. Make room and try again".to_owned()
        }
        io::ErrorKind::ReadOnlyFilesystem => "the disk can only be read, not written to. Copy the folder to another disk and work there".to_owned(),
        io::ErrorKind::PermissionDenied => {
            "permission was denied: it may be write-protected, or open in another program"
                .to_owned()
        }
        io::ErrorKind::NotFound => "it is not there".to_owned(),
        io::ErrorKind::NotADirectory => {
            "a file stands where a folder should be. Move it away and try again".to_owned()
        }
        io::ErrorKind::IsADirectory => {
            "a folder stands where a file should be. Move it away and try again".to_owned()
        }
        io::ErrorKind::DirectoryNotEmpty | io::ErrorKind::AlreadyExists => {
            "something stands there already. Move it away and try again".to_owned()
        }
        io::ErrorKind::InvalidFilename => {
            "the name is too long or has a character that this disk does not take".to_owned()
        }
        io::ErrorKind::FileTooLarge => "this disk takes no file of that size".to_owned(),
        io::ErrorKind::StaleNetworkFileHandle
        | io::ErrorKind::NetworkDown
        | io::ErrorKind::NetworkUnreachable
        | io::ErrorKind::HostUnreachable
        | io::ErrorKind::TimedOut
        | io::ErrorKind::NotConnected => {
            "the network drive does not answer. Connect it again, then try again".to_owned()
        }
        _ if held_by_another(error) => {
            "another program has it open. Close it there, then try again".to_owned()
        }
        _ if is_out_of_order(error) => {
            "the disk could not be read or written. Copy the folder to another disk and work there"
                .to_owned()
        }
        _ => in_words(error),
    };
    anyhow::anyhow!("cannot {what} {}: {why}", path.display())
}

/// What could not be listed on a walk through a folder.
pub fn not_listed(folder: &Path, error: &walkdir::Error) -> anyhow::Error {
    let path = error.path().unwrap_or(folder);
    match error.io_error() {
        Some(refusal) => refused("list", path, refusal),
        None => anyhow::anyhow!(
            "cannot list {}: a link leads back to a folder above it. Remove the link and try again",
            path.display()
        ),
    }
}

/// The system's own sentence, without the number that it goes by there.
fn in_words(error: &io::Error) -> String {
    let said = error.to_string();
    let words = said.split(" (os error ").next().unwrap_or_default();
    words.to_owned()
}

/// A disk that fails, or a stick that was pulled out: Unix has a number for it, and no kind.
fn is_out_of_order(error: &io::Error) -> bool {
    cfg!(unix) && error.raw_os_error() == Some(5)
}

pub fn held_by_another(error: &io::Error) -> bool {
    // Windows: 5 is access denied, 32 is in use by another process.
    cfg!(windows) && matches!(error.raw_os_error(), Some(5 | 32))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The refusals that a full, write-protected, vanished or foreign disk gives, by their numbers.
    #[cfg(target_os = "linux")]
    #[test]
    fn each_refusal_is_a_sentence_with_the_way_out() {
        for (number, name, way_out) in [
            (28, "ENOSPC", "the disk is full. Make room"),
            (
                122,
                "EDQUOT",
                "your share of the disk is used up. Make room",
            ),
            (30, "EROFS", "Copy the folder to another disk"),
            (13, "EACCES", "write-protected, or open in another program"),
            (1, "EPERM", "write-protected, or open in another program"),
            (
                116,
                "ESTALE",
                "the network drive does not answer. Connect it again",
            ),
            (
                110,
                "ETIMEDOUT",
                "the network drive does not answer. Connect it again",
            ),
            (
                100,
                "ENETDOWN",
                "the network drive does not answer. Connect it again",
            ),
            (
                101,
                "ENETUNREACH",
                "the network drive does not answer. Connect it again",
            ),
            (
                107,
                "ENOTCONN",
                "the network drive does not answer. Connect it again",
            ),
            (
                113,
                "EHOSTUNREACH",
                "the network drive does not answer. Connect it again",
            ),
            (36, "ENAMETOOLONG", "the name is too long"),
            (27, "EFBIG", "this disk takes no file of that size"),
            (
                5,
                "EIO",
                "the disk could not be read or written. Copy the folder to another disk",
            ),
        ] {
            let error = io::Error::from_raw_os_error(number);
            let said = refused("write", Path::new("out/summary.pdf"), &error).to_string();
            assert!(
                said.starts_with("cannot write out/summary.pdf: "),
                "{name}: {said}"
            );
            assert!(said.contains(way_out), "{name}: {said}");
            assert!(!said.contains("os error"), "{name}: {said}");
        }
    }

    #[test]
    fn a_number_of_the_systems_is_never_told() {
        for number in 1..140 {
            let error = io::Error::from_raw_os_error(number);
            let said = refused("read", Path::new("a"), &error).to_string();
            assert!(!said.contains("os error"), "{said}");
        }
    }
}
