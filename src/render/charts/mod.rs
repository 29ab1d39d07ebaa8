//! Figures as SVG, in the documents' own font.

pub mod agreement;
pub mod bands;
pub mod chances;
pub mod frame;
pub mod key;
pub mod marks;
pub mod products;
pub mod quarters;
pub mod range;
pub mod ruler;
pub mod scale;
pub mod shares;
pub mod squares;
pub mod strip;
pub mod style;

/// The most letters of what is read aloud in place of a picture. A text of a PDF has 32,767 bytes at most, and a letter up to
/// four of them; nobody listens so long.
const MOST_SPOKEN: usize = 7_500;

/// What is read aloud in place of a picture, cut off after a word where it is longer than a PDF takes.
pub fn spoken_of(mut text: String) -> String {
    if let Some((end, _)) = text.char_indices().nth(MOST_SPOKEN) {
        let word = text[..end]
            .trim_end_matches(|c: char| !c.is_whitespace())
            .trim_end();
        let end = if word.is_empty() { end } else { word.len() };
        text.truncate(end);
        text.push_str(" …");
    }
    text
}

pub mod plate;

/// A figure with what it says in words.
#[derive(Clone, Debug, PartialEq)]
pub struct Chart {
    /// File stem: `strip-plot`, `strip-plot-2`.
    pub name: String,
    /// The drawing.
    pub svg: String,
    /// Its message, for who cannot see it.
    pub alt: String,
    /// Width on the page.
    pub width_mm: f64,
    /// Height on the page.
    pub height_mm: f64,
}

impl Chart {
    /// A drawing as wide as the text block and `height` points high.
    pub fn new(name: impl Into<String>, svg: String, alt: String, height: f64) -> Chart {
        const MM_PER_POINT: f64 = 25.4 / 72.0;
        Chart {
            name: name.into(),
            svg,
            alt: spoken_of(alt),
            width_mm: style::WIDTH * MM_PER_POINT,
            height_mm: height * MM_PER_POINT,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_read_aloud_is_no_longer_than_a_pdf_takes() {
        assert_eq!(spoken_of("A1: 7.5.".to_owned()), "A1: 7.5.");
        let rows = spoken_of("Package A1: 7.5. ".repeat(1_000));
        assert!(
            rows.ends_with(" 7.5. …") || rows.ends_with(" A1: …") || rows.ends_with("Package …")
        );
        assert!(rows.chars().count() <= MOST_SPOKEN + 2);
        let one_word = spoken_of("\u{1f35e}".repeat(20_000));
        let bytes = 2 * one_word.encode_utf16().count();
        assert!((20_000..32_767).contains(&bytes), "{bytes}");
    }
}
