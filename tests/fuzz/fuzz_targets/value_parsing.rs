//! Any text as a result, a heading, a code, a day.
#![no_main]

use galleyproof_fuzz::gather::{
    codes, dates,
    numbers::Marks,
    readings::values,
    tables::{headings, units},
};

libfuzzer_sys::fuzz_target!(|text: &str| {
    for marks in [Marks::Unsettled, Marks::Point, Marks::Comma, Marks::Mixed] {
        if let Ok(value) = values::read_text(text, marks)
            && let values::Said::Number(figure) = value.said
        {
            // One below zero is told of where its limits are known.
            assert!(figure.value.is_finite());
        }
    }
    let _ = headings::read(text);
    let _ = units::read(text);
    let _ = dates::day(text);
    let _ = codes::Codes::new(["TKW-101"].into_iter()).mangled(text);
});
