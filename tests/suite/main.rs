//! Everything that is tested from outside, in one binary: typst is linked once.

mod bill;
mod checks;
mod cli;
mod demo;
mod flow;
mod gather;
mod independent;
mod judge;
mod make_binary;
mod make_compound;
mod make_ods;
mod planning;
mod plates;
mod render;
mod sample;
mod schema;
mod summary;
mod tables;
mod tidy;
mod web;
mod words;
mod workspace;
