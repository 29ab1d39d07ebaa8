//! The logarithmic scale of concentrations, which every chart of them has, and names that wrap.

use crate::model::ppm::Ppm;
use crate::model::statistics::CloseBand;
use crate::render::charts::style::{
    ACCENT, Align, Canvas, GRID, INK, INK_2, PAPER, Pen, SCALE, Type, ZONE, at, text_width,
};
use crate::render::numbers;
use crate::words::Catalogue;
use plotters::coord::combinators::{IntoLogRange, LogCoord};
use plotters::coord::ranged1d::Ranged;

/// Name of a row.
pub const ROW: Type = Type::strong(8.8, INK);
/// Plain words in a row.
pub const PLAIN: Type = Type::plain(8.6, INK);
/// A figure at a mark.
pub const VALUE: Type = Type::strong(8.4, INK);
/// Axis figures, notes and second lines: nothing in a chart is smaller.
pub const NOTE: Type = Type::plain(8.0, INK_2);

/// How high a scale is that is drawn as a rule.
const RULE_HEIGHT: f64 = 21.0;

/// From here to there, in points from the left.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Span {
    /// Its left end.
    pub from: f64,
    /// Its right end.
    pub to: f64,
}

/// From here to there.
pub const fn span(from: f64, to: f64) -> Span {
    Span { from, to }
}

impl Span {
    /// Its middle.
    pub fn middle(self) -> f64 {
        (self.from + self.to) / 2.0
    }
}

/// A logarithmic scale of concentrations between two places on a drawing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LogScale {
    /// The concentration at the left end.
    pub low: f64,
    /// The concentration at the right end.
    pub high: f64,
    /// Where it lies, from its first figure to its last.
    pub place: Span,
    limit: Ppm,
}

impl LogScale {
    /// A scale that holds the limit with room on both sides, the figure from which on gluten is measured, and every value.
    ///
    /// It begins at 1, 2 or 5 (times a power of ten) and ends at such a figure, 100 at the least.
    pub fn holding(
        values: impl Iterator<Item = f64>,
        limit: Ppm,
        measurable: Ppm,
        place: Span,
    ) -> LogScale {
        let (lowest, highest) = values
            .filter(|value| *value > 0.0)
            .fold((measurable.0, limit.0), |(low, high), value| {
                (low.min(value), high.max(value))
            });
        LogScale {
            low: round_figure_below(lowest.min(limit.0 / 1.25)),
            high: round_figure_above((highest * 1.2).max(limit.0 * 2.0).max(100.0)),
            limit,
            place,
        }
    }

    /// Where the limit stands.
    pub fn limit(&self) -> f64 {
        self.x(self.limit.0)
    }

    /// Where a concentration stands; at the ends where it is beyond them.
    pub fn x(&self, value: f64) -> f64 {
        let scale: LogCoord<f64> = (self.low..self.high).log_scale().into();
        let pixel = |x: f64| (x * SCALE).round() as i32;
        let ends = (pixel(self.place.from), pixel(self.place.to));
        f64::from(scale.map(&value.clamp(self.low, self.high), ends)) / SCALE
    }

    /// Where the side that is over the limit ends.
    pub fn edge(&self) -> f64 {
        self.place.to + 8.0
    }

    /// Concentrations that carry a tick: 1 to 9 times the powers of ten; and whether it carries a figure, as 1, 2 and 5 do.
    pub fn ticks(&self) -> impl Iterator<Item = (f64, bool)> {
        let ends = self.low * 0.999..=self.high * 1.001;
        let powers = (-3..=6).map(|power| 10f64.powi(power));
        powers
            .flat_map(|ten| (1..10).map(move |n| (f64::from(n) * ten, matches!(n, 1 | 2 | 5))))
            .filter(move |(tick, _)| ends.contains(tick))
    }

    /// The ground of rows: the zone over the limit, what is too close to call, and upright grid lines.
    pub fn ground(
        &self,
        canvas: &mut Canvas<'_>,
        (top, bottom): (f64, f64),
        close: Option<CloseBand>,
    ) {
        canvas.fill(at(self.limit(), top), at(self.edge(), bottom), ZONE);
        if let Some(band) = close {
            let (from, to) = (self.x(band.from.0), self.x(band.to.0));
            canvas.hatch(at(from, top), at(to, bottom));
        }
        for (figure, _) in self.ticks().filter(|(_, numbered)| *numbered) {
            let x = self.x(figure);
            canvas.line(&[at(x, top), at(x, bottom)], Pen::solid(0.5, GRID));
        }
    }

    /// The limit from here to there.
    pub fn limit_line(&self, canvas: &mut Canvas<'_>, top: f64, bottom: f64) {
        let x = self.limit();
        canvas.line(&[at(x, top), at(x, bottom)], Pen::solid(1.6, ACCENT));
    }

    /// The flag of the limit, 14 points high; gives how far it reaches to either side.
    pub fn flag(&self, canvas: &mut Canvas<'_>, words: &str, top: f64) -> f64 {
        let look = ROW.inked(PAPER);
        let (limit, half) = (self.limit(), text_width(words, look) / 2.0 + 6.0);
        canvas.fill(at(limit - half, top), at(limit + half, top + 14.0), ACCENT);
        canvas.text(words, at(limit, top + 10.0), Align::Middle, look);
        half
    }

    /// The scale drawn as a rule, and beside it the cell of what is too little to measure, where there is one.
    pub fn rule(
        &self,
        canvas: &mut Canvas<'_>,
        top: f64,
        cell: Option<(Span, &str)>,
        words: &Catalogue,
    ) {
        let (bottom, outline) = (top + RULE_HEIGHT, Pen::solid(0.9, INK));
        if let Some((cell, below)) = cell {
            canvas.frame(at(cell.from, top), at(cell.to, bottom), outline);
            let middle = at(cell.middle(), top + 14.0);
            canvas.text(below, middle, Align::Middle, VALUE);
        }
        let (from, to) = (at(self.place.from - 10.0, top), at(self.edge(), bottom));
        canvas.fill(from, to, PAPER);
        canvas.frame(from, to, outline);
        let written = |figure| words.locale().figure(&numbers::plain(figure));
        let limit_word = written(self.limit);
        let limit_half = text_width(&limit_word, VALUE) / 2.0 + 3.0;
        let look = NOTE.inked(INK);
        let mut free_from = f64::MIN;
        for (tick, numbered) in self.ticks() {
            let x = self.x(tick);
            let length = if numbered { 6.0 } else { 3.5 };
            canvas.line(&[at(x, top), at(x, top + length)], Pen::solid(0.7, INK));
            let word = written(Ppm(tick));
            let half = text_width(&word, look) / 2.0;
            let is_free = x - half > free_from && x + half < self.edge() - 1.0;
            if numbered && is_free && (x - self.limit()).abs() > limit_half + half {
                canvas.text(&word, at(x, bottom - 4.0), Align::Middle, look);
                free_from = x + half + 3.0;
            }
        }
        self.limit_line(canvas, top - 1.0, top + 7.0);
        let place = at(self.limit(), bottom - 4.0);
        canvas.text(&limit_word, place, Align::Middle, VALUE.inked(ACCENT));
    }
}

fn round_figure_below(value: f64) -> f64 {
    round_figures()
        .filter(|figure| *figure <= value * 1.000_001)
        .last()
        .unwrap_or(0.001)
}

fn round_figure_above(value: f64) -> f64 {
    round_figures()
        .find(|figure| *figure >= value * 0.999_999)
        .unwrap_or(1e7)
}

fn round_figures() -> impl Iterator<Item = f64> {
    (-3..=6).flat_map(|power| [1.0, 2.0, 5.0].map(|n| n * 10f64.powi(power)))
}

/// The smallest of 5, 10, 20, 25, 40, 50 … per cent that is not smaller than `least`: steps that are easily counted on.
pub fn round_step(least: f64) -> f64 {
    const STEPS: [f64; 10] = [5.0, 10.0, 20.0, 25.0, 40.0, 50.0, 60.0, 80.0, 100.0, 200.0];
    STEPS
        .into_iter()
        .find(|step| *step >= least)
        .unwrap_or_else(|| (least / 100.0).ceil() * 100.0)
}

/// Parts of a list, each no higher than `most` points together, where its items are so high each.
pub fn parts<T>(items: &[T], (first, later): (f64, f64), height: impl Fn(&T) -> f64) -> Vec<&[T]> {
    let mut parts = Vec::new();
    let (mut from, mut filled) = (0, 0.0);
    for (number, item) in items.iter().enumerate() {
        let most = if from == 0 { first } else { later };
        if number > from && filled + height(item) > most {
            parts.push(&items[from..number]);
            (from, filled) = (number, 0.0);
        }
        filled += height(item);
    }
    if from < items.len() {
        parts.push(&items[from..]);
    }
    parts
}

/// Cuts a text into lines no wider than `width`: between words where it can, inside a word where it must.
pub fn wrap(text: &str, width: f64, look: Type) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in text.split_whitespace() {
        let joined = lines.last().map(|line| format!("{line} {word}"));
        match joined {
            Some(joined) if text_width(&joined, look) <= width => {
                lines.pop();
                lines.push(joined);
            }
            _ => lines.extend(break_word(word, width, look)),
        }
    }
    lines
}

/// The same with each line in its type.
pub fn wrapped(text: &str, width: f64, look: Type) -> impl Iterator<Item = (String, Type)> {
    let lines = wrap(text, width, look).into_iter();
    lines.map(move |line| (line, look))
}

fn break_word(word: &str, width: f64, look: Type) -> Vec<String> {
    let mut pieces = Vec::new();
    let mut piece = String::new();
    for letter in word.chars() {
        piece.push(letter);
        if text_width(&piece, look) > width && piece.chars().count() > 1 {
            piece.pop();
            pieces.push(std::mem::replace(&mut piece, letter.to_string()));
        }
    }
    pieces.push(piece);
    pieces
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn long_names_wrap_and_lose_nothing() {
        let name =
            "Gebäck, Kekse und Knabberzeug Donaudampfschifffahrtsgesellschaftskapitänsmützen";
        let lines = wrap(name, 90.0, ROW);
        assert!(
            lines.iter().all(|line| text_width(line, ROW) <= 90.0),
            "{lines:?}"
        );
        let letters = |text: &str| text.replace(' ', "");
        assert_eq!(letters(&lines.concat()), letters(name));
        assert!(wrap("  ", 90.0, ROW).is_empty());
    }

    #[test]
    fn parts_hold_everything_once_and_are_as_high_as_they_may_be() {
        let heights = [3.0, 4.0, 2.0, 9.0, 1.0, 1.0];
        let cut = parts(&heights, (8.0, 8.0), |height| *height);
        assert_eq!(cut, [&[3.0, 4.0][..], &[2.0], &[9.0], &[1.0, 1.0]]);
        let cut = parts(&heights, (3.0, 9.0), |height| *height);
        assert_eq!(cut, [&[3.0][..], &[4.0, 2.0], &[9.0], &[1.0, 1.0]]);
        assert!(parts::<f64>(&[], (8.0, 8.0), |height| *height).is_empty());
    }

    #[test]
    fn equal_steps_on_the_scale_multiply() {
        let place = span(100.0, 300.0);
        let scale = LogScale::holding([4.0].into_iter(), Ppm(20.0), Ppm(5.0), place);
        assert_eq!((scale.low, scale.high), (2.0, 100.0));
        assert_eq!((scale.x(2.0), scale.x(100.0)), (100.0, 300.0));
        assert_eq!((scale.x(0.0), scale.x(1e6)), (100.0, 300.0), "at the ends");
        let step = |from: f64, to: f64| scale.x(to) - scale.x(from);
        assert!((step(5.0, 10.0) - step(20.0, 40.0)).abs() <= 0.11);
    }

    #[test]
    fn a_scale_begins_and_ends_at_round_figures() {
        assert_eq!(round_figure_below(5.0), 5.0);
        assert_eq!(round_figure_below(4.0), 2.0);
        assert_eq!(round_figure_above(120.0), 200.0);
        assert_eq!(round_figure_above(100.0), 100.0);
    }
}
