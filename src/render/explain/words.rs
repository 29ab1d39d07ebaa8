//! How lines and figures are written.

use crate::model::ppm::Ppm;
use crate::words::{Said, english};

/// Adds a message as a line.
pub fn say(out: &mut String, depth: usize, said: &Said) {
    line(out, depth, &english().say(said));
}

/// Adds a line. Control characters, which a lab file may hold, are left out: they could steer the terminal.
pub fn line(out: &mut String, depth: usize, text: &str) {
    out.extend(std::iter::repeat_n(' ', 2 * depth));
    out.extend(text.chars().filter(|c| !c.is_control()));
    out.push('\n');
}

/// A closed word of the data, with spaces.
pub fn plain(word: &str) -> String {
    word.replace('_', " ")
}

/// Six significant digits: what a person can check by hand. No decision rests on the text.
pub fn figure(x: Ppm) -> String {
    let rounded: f64 = format!("{:.5e}", x.0).parse().unwrap_or(x.0);
    rounded.to_string()
}

/// Four significant digits: for figures that decide nothing.
pub fn short(x: f64) -> String {
    let rounded: f64 = format!("{x:.3e}").parse().unwrap_or(x);
    rounded.to_string()
}

/// A share in per cent.
pub fn percent(share: f64) -> String {
    format!("{:.1}", 100.0 * share)
}
