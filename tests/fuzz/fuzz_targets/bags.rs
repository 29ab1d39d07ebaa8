//! Any bytes as a bag.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| galleyproof_fuzz::issues::bag(bytes));
