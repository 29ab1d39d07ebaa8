//! The dated archive of what was issued, and the register of it: written by `issue`, read to see what was said before.

/// The bags themselves.
pub mod bag;

/// Whether a bag is still what it was.
pub mod verify;

/// Whether a sheet carries what it was made with.
pub mod sheet;

/// The register of what was issued.
pub mod issued;

/// What a bag told its readers, and how two differ for one sheet.
pub mod edition;

/// What a reader of one bag must know of another.
pub mod compare;

/// What an amended sheet says otherwise than before.
pub mod amended;

/// What amended sheets said in the revision that they replace.
pub mod published;

/// The lab files that published sheets rest on, held against the inbox.
pub mod sources;
