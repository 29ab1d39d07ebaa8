//! Any bytes as registers and a lab file, read and decided.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| galleyproof_fuzz::kept::decide(bytes));
