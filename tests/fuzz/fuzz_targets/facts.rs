//! Any bytes as registers, a lab file and templates of mails: what templates read, and what comes of it.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| galleyproof_fuzz::told::tell(bytes));
