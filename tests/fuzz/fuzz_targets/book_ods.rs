//! Any bytes as the parts of an .ods.
#![no_main]

use galleyproof_fuzz::{lab, pieces};

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| lab::read(&pieces::archived(bytes, &pieces::ODS)));
