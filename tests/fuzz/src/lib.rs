//! The stages that read what others wrote, by path, and each kind of file taken in as the program would.

#[path = "../../../src/model/mod.rs"]
pub mod model;

#[path = "../../../src/config/mod.rs"]
pub mod config;

#[path = "../../../src/files/mod.rs"]
pub mod files;

#[path = "../../../src/guard.rs"]
pub mod guard;

#[path = "../../../src/gather/mod.rs"]
pub mod gather;

#[path = "../../../src/measure/mod.rs"]
pub mod measure;

#[path = "../../../src/judge/mod.rs"]
pub mod judge;

#[path = "../../../src/words/mod.rs"]
pub mod words;

#[path = "../../suite/make_compound.rs"]
pub mod make_compound;

#[path = "../../suite/make_ods.rs"]
pub mod make_ods;

#[path = "../../suite/make_binary.rs"]
pub mod make_binary;

/// What is read back of what was issued.
pub mod archive;

/// What templates read.
pub mod render;

/// Mails by templates.
pub mod save;

/// The states of publication.
pub mod pipeline;

/// An input as pieces of a file, and what is made of them.
pub mod pieces;

/// Lab files and tables.
pub mod lab;

/// What people keep.
pub mod kept;

/// What was issued.
pub mod issues;

/// What templates get to read, and templates of the programme's own.
pub mod told;
