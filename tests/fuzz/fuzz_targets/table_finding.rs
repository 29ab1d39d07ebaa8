//! Any bytes as a lab file.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| galleyproof_fuzz::lab::read(bytes));
