//! Any bytes as the records of an .xls.
#![no_main]

use galleyproof_fuzz::{lab, pieces};

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| lab::read(&pieces::compounded(bytes)));
