//! The hand that draws every chart: inks, sizes and marks, in points.
//!
//! Ink is the verdict: solid is over the limit, an outline is within it, dashes are undecided. Hue never carries a result.

use anyhow::{Result, anyhow};
use plotters::prelude::{
    Color, DrawingBackend, FontDesc, FontFamily, RGBColor, SVGBackend, ShapeStyle, TextStyle,
};
use plotters::style::text_anchor::{HPos, Pos, VPos};
use plotters::style::{FontStyle, register_font};
use std::fmt::Display;
use std::sync::LazyLock;

/// Text, marks, solid blocks.
pub const INK: RGBColor = RGBColor(0x16, 0x16, 0x16);
/// Notes and axis labels.
pub const INK_2: RGBColor = RGBColor(0x4a, 0x4a, 0x4a);
/// What was set aside.
pub const INK_3: RGBColor = RGBColor(0x6b, 0x6b, 0x6b);
/// The programme's own voice, and the limit.
pub const ACCENT: RGBColor = RGBColor(0x1b, 0x4b, 0x7a);
/// Rules.
pub const RULE: RGBColor = RGBColor(0x8c, 0x8c, 0x8c);
/// Lines between rows.
pub const HAIRLINE: RGBColor = RGBColor(0xc4, 0xc4, 0xc4);
/// Grid lines.
pub const GRID: RGBColor = RGBColor(0xda, 0xda, 0xda);
/// Bars of measured results within the limit.
pub const FILL: RGBColor = RGBColor(0xd4, 0xd4, 0xd4);
/// The side of the limit that is over it.
pub const ZONE: RGBColor = RGBColor(0xf1, 0xf1, 0xf1);
/// The lines that hatch what is too close to call.
pub const HATCH: RGBColor = RGBColor(0xbd, 0xbd, 0xbd);
/// Paper.
pub const PAPER: RGBColor = RGBColor(0xff, 0xff, 0xff);

/// The width of every chart: the text block, 174 mm, in points.
pub const WIDTH: f64 = 493.2;

/// A chart is drawn at this scale in whole pixels, and shrunk by the typesetter.
pub const SCALE: f64 = 10.0;

/// Quoted, or else the digit in it makes SVG readers fall back to another face.
const FAMILY: &str = "'Source Sans 3'";

/// plotters writes a font size divided by this.
const FONT_SIZE_QUIRK: f64 = 1.24;

/// plotters takes a size for the height from descender to ascender, which Source Sans 3 has this many times its size.
const FONT_HEIGHT: f64 = 1.326;

/// The top of text lies this far above its baseline, in parts of the size, when plotters hangs text from its top.
const TOP_TO_BASELINE: f64 = 0.76;

static FONTS: LazyLock<()> = LazyLock::new(|| {
    let register = |style, bytes| {
        register_font(FAMILY, style, bytes)
            .unwrap_or_else(|_| panic!("the built-in fonts are fonts"));
    };
    register(
        FontStyle::Normal,
        include_bytes!("../../../fonts/source-sans-3/SourceSans3-Regular.otf") as &[u8],
    );
    register(
        FontStyle::Bold,
        include_bytes!("../../../fonts/source-sans-3/SourceSans3-Semibold.otf") as &[u8],
    );
});

/// Where text stands to its point.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Align {
    /// The point is at its start.
    Start,
    /// The point is in its middle.
    Middle,
    /// The point is at its end.
    End,
}

/// How text looks.
#[derive(Clone, Copy, Debug)]
pub struct Type {
    /// In points.
    pub size: f64,
    /// Semibold.
    pub strong: bool,
    /// Its colour.
    pub ink: RGBColor,
}

impl Type {
    /// Regular text.
    pub const fn plain(size: f64, ink: RGBColor) -> Type {
        Type {
            size,
            strong: false,
            ink,
        }
    }

    /// Semibold text.
    pub const fn strong(size: f64, ink: RGBColor) -> Type {
        Type {
            strong: true,
            ..Type::plain(size, ink)
        }
    }

    /// The same text in another colour.
    pub const fn inked(self, ink: RGBColor) -> Type {
        Type { ink, ..self }
    }
}

/// A line's width and colour; with dashes where `dash` is given.
#[derive(Clone, Copy, Debug)]
pub struct Pen {
    /// In points.
    pub width: f64,
    /// Its colour.
    pub ink: RGBColor,
    /// Length of a dash and of the gap after it, in points.
    pub dash: Option<(f64, f64)>,
}

impl Pen {
    /// A whole line.
    pub const fn solid(width: f64, ink: RGBColor) -> Pen {
        Pen {
            width,
            ink,
            dash: None,
        }
    }

    /// A dashed line.
    pub const fn dashed(width: f64, ink: RGBColor, on: f64, off: f64) -> Pen {
        Pen {
            dash: Some((on, off)),
            ..Pen::solid(width, ink)
        }
    }

    fn style(self) -> ShapeStyle {
        self.ink.stroke_width(pixels(self.width) as u32)
    }
}

/// A point on the drawing, in points from its upper left corner.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct At {
    /// To the right.
    pub x: f64,
    /// Downwards.
    pub y: f64,
}

/// A point on the drawing.
pub const fn at(x: f64, y: f64) -> At {
    At { x, y }
}

impl At {
    /// The point so far to the right of this one, and below it.
    pub const fn by(self, right: f64, down: f64) -> At {
        at(self.x + right, self.y + down)
    }

    fn pixel(self) -> (i32, i32) {
        (pixels(self.x), pixels(self.y))
    }
}

fn pixels(points: f64) -> i32 {
    (points * SCALE).round() as i32
}

/// A drawing in points. A stroke that fails is told of at the end, by [`draw`].
pub struct Canvas<'a> {
    backend: SVGBackend<'a>,
    fault: Option<String>,
}

/// Draws on a new canvas and gives its SVG. The same strokes give the same bytes.
///
/// # Errors
/// The first stroke that cannot be drawn.
pub fn draw(width: f64, height: f64, paint: impl FnOnce(&mut Canvas<'_>)) -> Result<String> {
    LazyLock::force(&FONTS);
    let mut svg = String::new();
    let (width, height) = (pixels(width) as u32, pixels(height) as u32);
    let fault = {
        let mut canvas = Canvas {
            backend: SVGBackend::with_string(&mut svg, (width, height)),
            fault: None,
        };
        paint(&mut canvas);
        canvas.stroke(|backend| backend.present());
        canvas.fault.take()
    };
    fault.map_or(Ok(svg), |fault| {
        Err(anyhow!("cannot draw a chart: {fault}"))
    })
}

/// How wide text is, in points.
pub fn text_width(text: &str, look: Type) -> f64 {
    LazyLock::force(&FONTS);
    let size = font(look).box_size(text).unwrap_or_default();
    f64::from(size.0) * FONT_HEIGHT / FONT_SIZE_QUIRK / SCALE
}

impl<'a> Canvas<'a> {
    fn stroke<E: Display>(&mut self, stroke: impl FnOnce(&mut SVGBackend<'a>) -> Result<(), E>) {
        if let Err(fault) = stroke(&mut self.backend) {
            self.fault.get_or_insert(fault.to_string());
        }
    }

    /// A line through points.
    pub fn line(&mut self, points: &[At], pen: Pen) {
        let Some(dash) = pen.dash else {
            let path = points.iter().map(|point| point.pixel());
            return self.stroke(|backend| backend.draw_path(path, &pen.style()));
        };
        for ends in points.windows(2) {
            self.dashes(ends[0], ends[1], dash, pen);
        }
    }

    fn dashes(&mut self, from: At, to: At, (on, off): (f64, f64), pen: Pen) {
        let length = (to.x - from.x).hypot(to.y - from.y);
        let along = |share: f64| from.by((to.x - from.x) * share, (to.y - from.y) * share);
        let pen = Pen { dash: None, ..pen };
        let mut start = 0.0;
        while start < length {
            let end = (start + on).min(length);
            self.line(&[along(start / length), along(end / length)], pen);
            start += on + off;
        }
    }

    /// A filled rectangle.
    pub fn fill(&mut self, from: At, to: At, ink: RGBColor) {
        let (from, to) = (from.pixel(), to.pixel());
        self.stroke(|backend| backend.draw_rect(from, to, &ink.filled(), true));
    }

    /// The outline of a rectangle.
    pub fn frame(&mut self, from: At, to: At, pen: Pen) {
        let corners = [from, at(to.x, from.y), to, at(from.x, to.y), from];
        match pen.dash {
            Some(_) => self.line(&corners, pen),
            // Half a side more, so that the last corner is as square as the others.
            None => self.line(&[&corners[..], &[at(to.x, from.y)]].concat(), pen),
        }
    }

    /// A circle: paper inside where `fill` is none.
    pub fn circle(&mut self, centre: At, radius: f64, fill: Option<RGBColor>, pen: Pen) {
        let (middle, reach) = (centre.pixel(), pixels(radius) as u32);
        let inside = fill.unwrap_or(PAPER).filled();
        self.stroke(|backend| backend.draw_circle(middle, reach, &inside, true));
        if pen.dash.is_none() {
            return self.stroke(|backend| backend.draw_circle(middle, reach, &pen.style(), false));
        }
        let pen = Pen { dash: None, ..pen };
        let on = |step: i32| {
            let angle = std::f64::consts::TAU / 48.0 * f64::from(step);
            centre.by(radius * angle.cos(), radius * angle.sin())
        };
        for step in (0..48).step_by(4) {
            self.line(&[on(step), on(step + 1), on(step + 2)], pen);
        }
    }

    /// A rectangle hatched with lines that rise to the right.
    pub fn hatch(&mut self, from: At, to: At) {
        const STEP: f64 = 4.2;
        let (width, height) = (to.x - from.x, to.y - from.y);
        let strokes = ((width + height) / STEP).floor() as usize;
        for stroke in 1..=strokes {
            // A stroke runs where x + y is so much, counted from the upper left corner.
            let along = STEP * stroke as f64;
            let (left, right) = ((along - height).max(0.0), along.min(width));
            let ends = [left, right].map(|x| from.by(x, along - x));
            self.line(&ends, Pen::solid(0.5, HATCH));
        }
    }

    /// A figure with these corners.
    fn polygon(&mut self, corners: &[At], inside: RGBColor, pen: Pen) {
        let pixels = corners.iter().map(|corner| corner.pixel());
        self.stroke(|backend| backend.fill_polygon(pixels, &inside.filled()));
        // A side more, so that every corner is a join.
        self.line(&[corners, &corners[..2]].concat(), pen);
    }

    /// A diamond around a point, with paper inside.
    pub fn diamond(&mut self, centre: At, radius: f64, pen: Pen) {
        let corners = [
            centre.by(-radius, 0.0),
            centre.by(0.0, -radius),
            centre.by(radius, 0.0),
            centre.by(0.0, radius),
        ];
        self.polygon(&corners, PAPER, pen);
    }

    /// A cross over a point.
    pub fn cross(&mut self, centre: At, radius: f64, pen: Pen) {
        for rise in [-radius, radius] {
            self.line(&[centre.by(-radius, -rise), centre.by(radius, rise)], pen);
        }
    }

    /// An arrow head around a point, to the left where `way` is -1 and to the right where it is 1: open where `filled` is not.
    pub fn arrow(&mut self, centre: At, radius: f64, way: f64, filled: bool, pen: Pen) {
        let base = -way * 0.75 * radius;
        let corners = [
            centre.by(way * radius, 0.0),
            centre.by(base, -0.95 * radius),
            centre.by(base, 0.95 * radius),
        ];
        self.polygon(&corners, if filled { pen.ink } else { PAPER }, pen);
    }

    /// One line of text; `place.y` is its baseline.
    pub fn text(&mut self, text: &str, place: At, align: Align, look: Type) {
        let anchor = match align {
            Align::Start => HPos::Left,
            Align::Middle => HPos::Center,
            Align::End => HPos::Right,
        };
        let style = TextStyle::from(font(look))
            .color(&look.ink)
            .pos(Pos::new(anchor, VPos::Top));
        let top = place.by(0.0, -TOP_TO_BASELINE * look.size).pixel();
        self.stroke(|backend| backend.draw_text(text, &style, top));
    }
}

fn font(look: Type) -> FontDesc<'static> {
    let style = if look.strong {
        FontStyle::Bold
    } else {
        FontStyle::Normal
    };
    FontDesc::new(
        FontFamily::Name(FAMILY),
        look.size * SCALE * FONT_SIZE_QUIRK,
        style,
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn text_is_as_wide_as_the_font_says() {
        // Digits of Source Sans 3 are 497 thousandths of the size wide in Regular, 513 in Semibold.
        let regular = text_width("0000000000", Type::plain(10.0, INK));
        let semibold = text_width("0000000000", Type::strong(10.0, INK));
        assert!((regular - 49.7).abs() < 0.3, "{regular}");
        assert!((semibold - 51.3).abs() < 0.3, "{semibold}");
    }

    #[test]
    fn the_same_strokes_give_the_same_bytes() {
        let paint = |canvas: &mut Canvas<'_>| {
            canvas.circle(at(5.0, 5.0), 3.9, None, Pen::solid(1.4, INK));
            let look = Type::plain(8.0, INK);
            canvas.text("<5 & more", at(10.0, 5.0), Align::Start, look);
        };
        let first = draw(WIDTH, 20.0, paint).expect("draws");
        assert_eq!(first, draw(WIDTH, 20.0, paint).expect("draws"));
        assert!(first.contains("&lt;5 &amp; more"), "{first}");
    }
}
