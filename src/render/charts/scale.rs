//! The logarithmic scale of concentrations, names that wrap, and plain counting words.

use crate::model::ppm::Ppm;
use crate::render::charts::style::{
    ACCENT, Align, Canvas, GRID, INK, INK_2, PAPER, Pen, Type, ZONE, at, text_width,
};
use crate::render::numbers;
use crate::render::terms::Terms;
use anyhow::Result;

/// Name of a row.
pub const ROW: Type = Type::strong(8.8, INK);
/// Plain words in a row.
pub const PLAIN: Type = Type::plain(8.6, INK);
/// A figure at a mark.
pub const VALUE: Type = Type::strong(8.4, INK);
/// Axis figures, notes and second lines.
pub const NOTE: Type = Type::plain(7.8, INK_2);

/// A logarithmic scale of concentrations between two places on a drawing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LogScale {
    low: f64,
    high: f64,
    limit: f64,
    left: f64,
    right: f64,
}

impl LogScale {
    /// A scale that holds the limit with room on both sides, the quantification limits and every value.
    ///
    /// It begins at 1, 2 or 5 (times a power of ten) and ends at such a figure, 100 at the least.
    pub fn holding(
        values: impl Iterator<Item = f64>,
        terms: &Terms,
        left: f64,
        right: f64,
    ) -> LogScale {
        let limit = terms.rule.ppm.0;
        let measurable = terms.lloqs.first().map_or(limit, |lloq| lloq.0);
        let (lowest, highest) = values
            .filter(|value| *value > 0.0)
            .fold((measurable, limit), |(low, high), value| {
                (low.min(value), high.max(value))
            });
        LogScale {
            low: round_figure_below(lowest.min(limit / 1.25)),
            high: round_figure_above((highest * 1.2).max(limit * 2.0).max(100.0)),
            limit,
            left,
            right,
        }
    }

    /// Where the limit stands.
    pub fn limit(&self) -> f64 {
        self.x(self.limit)
    }

    /// Where a concentration stands; at the ends where it is beyond them.
    pub fn x(&self, value: f64) -> f64 {
        let share = (value.max(self.low) / self.low).ln() / (self.high / self.low).ln();
        self.left + (self.right - self.left) * share.min(1.0)
    }

    /// The right end.
    pub fn right(&self) -> f64 {
        self.right
    }

    /// The left end.
    pub fn left(&self) -> f64 {
        self.left
    }

    /// The concentration at the left end.
    pub fn low(&self) -> f64 {
        self.low
    }

    /// Concentrations that carry a figure: 1, 2 and 5 times the powers of ten.
    pub fn figures(&self) -> Vec<f64> {
        let held = |figure: &f64| (self.low * 0.999..=self.high * 1.001).contains(figure);
        let powers = (-3..=6).map(|power| 10f64.powi(power));
        powers
            .flat_map(|ten| [ten, 2.0 * ten, 5.0 * ten])
            .filter(held)
            .collect()
    }

    /// Concentrations that carry a tick: 1 to 9 times the powers of ten.
    pub fn ticks(&self) -> Vec<f64> {
        let held = |tick: &f64| (self.low * 0.999..=self.high * 1.001).contains(tick);
        let powers = (-3..=6).map(|power| 10f64.powi(power));
        powers
            .flat_map(|ten| (1..10).map(move |n| f64::from(n) * ten))
            .filter(held)
            .collect()
    }

    /// Upright grid lines at the figures.
    pub fn grid(&self, canvas: &mut Canvas<'_>, top: f64, bottom: f64) -> Result<()> {
        self.figures().into_iter().try_for_each(|figure| {
            let x = self.x(figure);
            canvas.line(&[at(x, top), at(x, bottom)], Pen::solid(0.5, GRID))
        })
    }

    /// The ground of a plot with rows down to `bottom`: the zone over the limit, and upright grid lines.
    pub fn ground(&self, canvas: &mut Canvas<'_>, bottom: f64) -> Result<()> {
        let (from, to) = (at(self.limit(), 18.0), at(self.right + 8.0, bottom));
        canvas.fill(from, to, ZONE)?;
        self.grid(canvas, 18.0, bottom)
    }

    /// The limit of such a plot, below its flag; gives how far the flag reaches to either side.
    pub fn flagged_limit(
        &self,
        canvas: &mut Canvas<'_>,
        terms: &Terms,
        bottom: f64,
    ) -> Result<f64> {
        let limit = self.limit();
        canvas.line(
            &[at(limit, 16.0), at(limit, bottom + 2.0)],
            Pen::solid(1.6, ACCENT),
        )?;
        let strong = Type::strong(8.2, PAPER);
        let flag = terms.flag.clone();
        let half = text_width(&flag, strong) / 2.0 + 5.0;
        canvas.fill(at(limit - half, 2.0), at(limit + half, 16.0), ACCENT)?;
        canvas.text(&flag, at(limit, 12.0), Align::Middle, strong)?;
        Ok(half)
    }

    /// What stands below the rows of such a plot: two lines of words, the cell of those that could not be measured, and the
    /// scale drawn as a rule.
    pub fn foot(
        &self,
        canvas: &mut Canvas<'_>,
        words: &[String; 2],
        (from, to): (f64, f64),
        terms: &Terms,
        top: f64,
    ) -> Result<()> {
        canvas.text(&words[0], at(0.0, top + 9.0), Align::Start, NOTE)?;
        canvas.text(&words[1], at(0.0, top + 19.0), Align::Start, NOTE)?;
        canvas.frame(at(from, top), at(to, top + 21.0), Pen::solid(0.9, INK))?;
        let middle = at((from + to) / 2.0, top + 14.0);
        canvas.text(&terms.below_short, middle, Align::Middle, VALUE)?;
        self.rule(canvas, top, terms)
    }

    /// The scale drawn as a rule, 21 points high, with the limit in the accent.
    pub fn rule(&self, canvas: &mut Canvas<'_>, top: f64, terms: &Terms) -> Result<()> {
        let written = |figure| terms.words.locale().figure(&numbers::plain(figure));
        let bottom = top + 21.0;
        canvas.fill(
            at(self.left - 10.0, top),
            at(self.right + 8.0, bottom),
            PAPER,
        )?;
        canvas.frame(
            at(self.left - 10.0, top),
            at(self.right + 8.0, bottom),
            Pen::solid(0.9, INK),
        )?;
        let figures = self.figures();
        for tick in self.ticks() {
            let long = figures.iter().any(|figure| (figure - tick).abs() < 1e-9);
            let x = self.x(tick);
            canvas.line(
                &[at(x, top), at(x, top + if long { 6.0 } else { 3.5 })],
                Pen::solid(0.7, INK),
            )?;
        }
        let limit_x = self.limit();
        let limit_word = written(terms.rule.ppm);
        let limit_half = text_width(&limit_word, VALUE) / 2.0 + 3.0;
        canvas.line(
            &[at(limit_x, top), at(limit_x, top + 7.0)],
            Pen::solid(1.6, ACCENT),
        )?;
        canvas.text(
            &limit_word,
            at(limit_x, bottom - 4.0),
            Align::Middle,
            Type {
                ink: ACCENT,
                ..VALUE
            },
        )?;
        for figure in figures {
            let word = written(Ppm(figure));
            let (x, half) = (self.x(figure), text_width(&word, NOTE) / 2.0);
            if (x - limit_x).abs() > limit_half + half {
                canvas.text(
                    &word,
                    at(x, bottom - 4.0),
                    Align::Middle,
                    Type { ink: INK, ..NOTE },
                )?;
            }
        }
        Ok(())
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
    fn a_scale_begins_and_ends_at_round_figures() {
        assert_eq!(round_figure_below(5.0), 5.0);
        assert_eq!(round_figure_below(4.0), 2.0);
        assert_eq!(round_figure_above(120.0), 200.0);
        assert_eq!(round_figure_above(100.0), 100.0);
    }
}
