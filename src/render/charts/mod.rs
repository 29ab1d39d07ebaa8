//! Figures as SVG, in the documents' own font.

pub mod style;

pub mod ruler;

/// The scale of concentrations, names that wrap.
pub mod scale;

/// Rows with a head and a foot.
pub mod frame;

pub mod bands;

pub mod squares;

pub mod key;

pub mod marks;

pub mod strip;

pub mod products;

pub mod shares;

pub mod quarters;

pub mod agreement;

pub mod chances;

pub mod range;

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
            alt,
            width_mm: style::WIDTH * MM_PER_POINT,
            height_mm: height * MM_PER_POINT,
        }
    }
}
