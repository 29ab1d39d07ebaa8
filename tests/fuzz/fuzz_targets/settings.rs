//! Any text as programme.toml.
#![no_main]

libfuzzer_sys::fuzz_target!(|text: &str| galleyproof_fuzz::lab::settings(text));
