//! The ruler as a picture of a page: its three drawings in one file, and its words as wide in any font as in ours.

use crate::render::charts::ruler::DRAWINGS;
use crate::render::charts::style::{INK, Type, text_width};
use std::fmt::Write;

/// The drawings are made at this many units a point.
const UNITS: f64 = 10.0;

/// A file that any server sends: the drawings one below the other.
///
/// Whoever reads the page need not have the documents' font, and a picture can load none: each word is told how long it is,
/// so that another font is squeezed into its place. With it go its width and its height in points.
pub(super) fn stacked(drawings: &[String; DRAWINGS]) -> (String, u32, u32) {
    let (mut width, mut height) = (0.0, 0.0);
    let mut parts = String::new();
    for drawing in drawings {
        let (wide, high) = (attribute(drawing, "width"), attribute(drawing, "height"));
        let inside = drawing
            .split_once('>')
            .and_then(|(_, rest)| rest.rsplit_once("</svg>"))
            .map_or("", |(inside, _)| inside);
        writeln!(
            parts,
            "<svg y=\"{height}\" width=\"{wide}\" height=\"{high}\" viewBox=\"0 0 {wide} {high}\">{}</svg>",
            fitted(inside)
        )
        .expect("a string takes any text");
        width = f64::max(width, wide);
        height += high;
    }
    let points = |units: f64| (units / UNITS).round() as u32;
    let svg = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{}\" height=\"{}\" viewBox=\"0 0 {width} {height}\">\n{parts}</svg>\n",
        points(width),
        points(height)
    );
    (svg, points(width), points(height))
}

/// The number of an element's first attribute of this name.
fn attribute(element: &str, name: &str) -> f64 {
    text_attribute(element, name)
        .and_then(|value| value.parse().ok())
        .unwrap_or_default()
}

fn text_attribute<'a>(element: &'a str, name: &str) -> Option<&'a str> {
    let (_, after) = element.split_once(&format!(" {name}=\""))?;
    after.split_once('"').map(|(value, _)| value)
}

/// The same strokes, each text with its length and with fonts to fall back on.
fn fitted(strokes: &str) -> String {
    let mut fitted = String::with_capacity(strokes.len() * 2);
    for (index, part) in strokes.split("<text").enumerate() {
        if index == 0 {
            fitted.push_str(part);
            continue;
        }
        let (attributes, words) = part.split_once('>').unwrap_or((part, ""));
        let said = words.split_once("</text>").map_or(words, |(said, _)| said);
        let size = attribute(attributes, "font-size") / UNITS;
        let look = match text_attribute(attributes, "font-weight") {
            Some("bold") => Type::strong(size, INK),
            _ => Type::plain(size, INK),
        };
        let length = (text_width(&plain(said.trim()), look) * UNITS).round();
        let attributes = attributes.replace("&apos;", "'").replace(
            "'Source Sans 3'",
            "'Source Sans 3', 'Segoe UI', Roboto, 'Helvetica Neue', Arial, sans-serif",
        );
        write!(
            fitted,
            "<text textLength=\"{length}\" lengthAdjust=\"spacingAndGlyphs\"{attributes}>{words}"
        )
        .expect("a string takes any text");
    }
    fitted
}

/// A text as it was before it was escaped.
fn plain(escaped: &str) -> String {
    let mut text = escaped.to_owned();
    for (mark, letter) in [
        ("&lt;", "<"),
        ("&gt;", ">"),
        ("&quot;", "\""),
        ("&apos;", "'"),
        ("&#39;", "'"),
        ("&amp;", "&"),
    ] {
        text = text.replace(mark, letter);
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::render::charts::style::{Align, PAPER, at, draw};

    #[test]
    fn drawings_stand_below_one_another_and_their_words_have_their_length() {
        let part = |height, words: &str| {
            draw(100.0, height, |canvas| {
                canvas.fill(at(0.0, 0.0), at(5.0, 5.0), PAPER);
                canvas.text(words, at(0.0, 8.0), Align::Start, Type::plain(8.0, INK));
            })
            .expect("draws")
        };
        let (svg, width, height) = stacked(&[
            part(10.0, "a & b"),
            part(20.0, "0000000000"),
            part(5.0, "<5"),
        ]);
        assert_eq!((width, height), (100, 35));
        assert!(svg.contains("viewBox=\"0 0 1000 350\""), "{svg}");
        for top in ["y=\"0\"", "y=\"100\"", "y=\"300\""] {
            assert!(svg.contains(top), "{top} in {svg}");
        }
        // Ten digits, each 496 thousandths of 8 points wide.
        assert!(svg.contains("textLength=\"397\""), "{svg}");
        assert_eq!(svg.matches("textLength").count(), 3, "{svg}");
        assert!(
            svg.contains("a &amp; b") && svg.contains("sans-serif"),
            "{svg}"
        );
    }
}
