//! Links that lead out of a programme folder: what they lead to is anyone's on the machine, and would stand in what is made.

use anyhow::{Result, bail};
use std::fs;
use std::path::Path;

/// Whether a link leads out of the programme folder, or out of an inbox that stands elsewhere itself: what it leads to would
/// be copied into every archive.
pub fn leads_out(root: &Path, link: &Path) -> bool {
    let Ok(target) = link.canonicalize() else {
        return false;
    };
    [root.to_owned(), root.join("inbox")]
        .iter()
        .filter_map(|folder| folder.canonicalize().ok())
        .all(|folder| !target.starts_with(folder))
}

/// Refuses a file that a programme is made of where it is a link out of the folder.
///
/// # Errors
/// Where it is one.
pub fn refuse_link_out(root: &Path, path: &Path) -> Result<()> {
    let is_link = fs::symlink_metadata(path).is_ok_and(|about| about.is_symlink());
    if is_link && leads_out(root, path) {
        bail!(
            "{} is a link that leads out of the programme folder. Put a copy of the file in its place",
            path.display()
        );
    }
    Ok(())
}
