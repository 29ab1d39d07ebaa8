//! Any bytes as a sheet, or as the files that one carries.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| galleyproof_fuzz::issues::attachments(bytes));
