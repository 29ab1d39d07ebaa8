//! temp
mod agenda;
