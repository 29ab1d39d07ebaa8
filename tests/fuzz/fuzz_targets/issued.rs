//! Any bytes as the register of issues and a copy of it in the archive.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| galleyproof_fuzz::issues::register(bytes));
