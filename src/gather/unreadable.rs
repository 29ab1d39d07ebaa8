//! Files that cannot be read, told by their names.

use crate::gather::books::Unreadable;
use crate::model::place::Place;
use crate::model::problem::{Code, Problems};
use crate::words::say;
use std::io::ErrorKind;

/// Tells that a file cannot be read.
pub fn tell(name: &str, why: &Unreadable, problems: &mut Problems) {
    let (found, to_do) = (why.message.clone(), why.hint.clone());
    problems.add(Code::UnreadableFile, Place::file(name), found, to_do);
}

/// Why a file cannot be opened, without the words of the operating system.
pub fn cannot_open(error: &anyhow::Error) -> Unreadable {
    let kind = error
        .root_cause()
        .downcast_ref::<std::io::Error>()
        .map(std::io::Error::kind);
    match kind {
        Some(ErrorKind::NotFound) => Unreadable::new(say::found_gone(), say::do_copy_again()),
        Some(ErrorKind::PermissionDenied) => {
            Unreadable::new(say::found_not_permitted(), say::do_permit_or_copy())
        }
        _ => Unreadable::new(say::found_cannot_open(), say::do_close_programs()),
    }
}
