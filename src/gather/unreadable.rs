//! Files that cannot be read, told by their names.

use crate::gather::books::Unreadable;
use crate::model::place::Place;
use crate::model::problem::{Code, Problems};
use std::io::ErrorKind;

/// Tells that a file cannot be read.
pub fn tell(name: &str, why: &Unreadable, problems: &mut Problems) {
    problems.add(
        Code::UnreadableFile,
        Place::file(name),
        why.message.clone(),
        why.hint.clone(),
    );
}

/// Why a file cannot be opened, without the words of the operating system.
pub fn cannot_open(error: &anyhow::Error) -> Unreadable {
    let kind = error
        .root_cause()
        .downcast_ref::<std::io::Error>()
        .map(std::io::Error::kind);
    match kind {
        Some(ErrorKind::NotFound) => Unreadable::new(
            "the file is no longer there",
            "Run again. If it should be there, copy it into the inbox again.",
        ),
        Some(ErrorKind::PermissionDenied) => Unreadable::new(
            "the file cannot be opened: you are not permitted to read it",
            "Change its permissions, or copy it anew, then run again.",
        ),
        _ => Unreadable::new(
            "the file cannot be opened",
            "Close it in other programs and wait until it is copied whole, then run again.",
        ),
    }
}
