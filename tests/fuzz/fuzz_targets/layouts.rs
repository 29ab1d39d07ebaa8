//! Any bytes as layouts and a lab file that is read by them.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| galleyproof_fuzz::lab::read_by_layout(bytes));
