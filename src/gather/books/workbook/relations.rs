//! Which parts of a workbook belong to it and what each is ([ECMA-376] part 2, 6.5): by its relations, never by the names
//! of its parts.

use crate::gather::books::workbook::archive::{Archive, Fault};
use crate::gather::books::workbook::markup::{self, Piece};
use std::collections::BTreeMap;

/// A part that a relation names.
pub struct Target {
    /// Its place in the archive.
    pub path: String,
    /// The last word of the relation's kind, such as `worksheet`.
    pub kind: String,
}

/// A part of an archive and what it is related to.
pub struct Related {
    /// The part itself.
    pub path: String,
    targets: BTreeMap<String, Target>,
}

impl Related {
    /// A part and what it is related to; nothing where its relations are missing.
    pub fn of(archive: &mut Archive<'_>, path: String) -> Result<Related, Fault> {
        let (folder, name) = parted(&path);
        let relations = archive.content(&format!("{folder}_rels/{name}.rels"))?;
        let mut targets = BTreeMap::new();
        markup::walk(&relations.unwrap_or_default(), |piece| {
            if let Piece::Open(tag) = piece
                && tag.name() == "Relationship"
                && let (Some(id), Some(target)) = (tag.attribute("Id"), tag.attribute("Target"))
            {
                let kind = tag.attribute("Type").unwrap_or_default();
                let kind = kind.rsplit('/').next().unwrap_or_default().to_owned();
                let path = joined(folder, &target);
                targets.insert(id, Target { path, kind });
            }
            Ok(())
        })?;
        Ok(Related { path, targets })
    }

    /// What the relation of this name leads to.
    pub fn target(&self, id: &str) -> Option<&Target> {
        self.targets.get(id)
    }

    /// The first part of this kind; where none is related, the one of this name beside the part.
    pub fn of_kind(&self, kind: &str, name: &str) -> String {
        let related = self.targets.values().find(|target| target.kind == kind);
        related.map_or_else(
            || joined(parted(&self.path).0, name),
            |target| target.path.clone(),
        )
    }
}

/// The part that lists the sheets: where the archive's relations do not tell, the place where all programs put it.
pub fn workbook(archive: &mut Archive<'_>, usual: &str) -> Result<Related, Fault> {
    let root = Related::of(archive, String::new())?;
    let path = root.of_kind("officeDocument", usual);
    let path = if archive.has(&path) {
        path
    } else {
        usual.to_owned()
    };
    if archive.has(&path) {
        Related::of(archive, path)
    } else {
        Err(Fault::Damaged)
    }
}

/// A path as its folder, with the stroke, and its name.
fn parted(path: &str) -> (&str, &str) {
    path.split_at(path.rfind('/').map_or(0, |at| at + 1))
}

/// A target as seen from a folder; one that starts with a stroke is seen from the root.
fn joined(folder: &str, target: &str) -> String {
    let target = target.replace('\\', "/");
    let whole = match target.strip_prefix('/') {
        Some(absolute) => absolute.to_owned(),
        None => format!("{folder}{target}"),
    };
    let mut parts = Vec::new();
    for part in whole.split('/') {
        match part {
            "" | "." => {}
            ".." => {
                parts.pop();
            }
            part => parts.push(part),
        }
    }
    parts.join("/")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn targets_are_seen_from_the_folder_of_their_part() {
        assert_eq!(joined("xl/", "worksheets/a.xml"), "xl/worksheets/a.xml");
        assert_eq!(joined("xl/", "/a.xml"), "a.xml");
        assert_eq!(joined("xl/", "../b/./a.xml"), "b/a.xml");
        assert_eq!(joined("", "../../a.xml"), "a.xml");
        assert_eq!(parted("xl/workbook.xml"), ("xl/", "workbook.xml"));
        assert_eq!(parted("workbook.xml"), ("", "workbook.xml"));
    }
}
