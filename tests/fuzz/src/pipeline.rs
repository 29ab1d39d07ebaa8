//! The states of publication, which the facts of a sheet rest on.

#[path = "../../../src/pipeline/states.rs"]
pub mod states;
