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
            alt,
            width_mm: style::WIDTH * MM_PER_POINT,
            height_mm: height * MM_PER_POINT,
        }
    }
}
