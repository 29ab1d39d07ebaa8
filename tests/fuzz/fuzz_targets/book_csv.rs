//! Any bytes as delimited text: what looks like another kind of file is left to the target of that kind.
#![no_main]

use galleyproof_fuzz::gather::books::{Kind, csv, kind};
use galleyproof_fuzz::lab;

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| {
    if kind(bytes) == Kind::Text {
        let _ = csv::looks_like_text(bytes);
        lab::read(bytes);
    }
});
