//! Products by quarter: a square each, or stacked bars in the same inks where a quarter has more than a line of them.

use crate::model::statistics::QuarterCounts;
use crate::render::charts::Chart;
use crate::render::charts::scale::{NOTE, PLAIN, VALUE};
use crate::render::charts::squares::{Unit, part_of_bar, square};
use crate::render::charts::style::{Align, Canvas, INK, PAPER, Type, WIDTH, at, draw, text_width};
use crate::render::terms::Terms;
use crate::words::{Catalogue, say, side};
use anyhow::Result;

/// A quarter with more products than this is drawn as a bar.
const SQUARES_AT_MOST: u64 = 30;

const SQUARE: f64 = 8.9;
const STEP: f64 = 8.9 + 2.7;
const LEFT: f64 = 92.0;
const PITCH: f64 = 21.0;
const KEY: f64 = 24.0;

/// Between two entries of the key.
const GAP: f64 = 14.0;

/// The quarters in one chart, from the earliest to the latest. `part` numbers the charts where there are several.
pub fn quarters(rows: &[QuarterCounts], terms: &Terms, part: usize) -> Result<Chart> {
    let form = Form::of(rows, terms);
    let height = PITCH * rows.len() as f64 + KEY;
    let svg = draw(WIDTH, height, |canvas| {
        for (number, row) in rows.iter().enumerate() {
            let top = PITCH * number as f64 + 2.0;
            let quarter = name(row, &terms.words);
            canvas.text(&quarter, at(0.0, top + 7.8), Align::Start, PLAIN)?;
            match form {
                Form::Squares { .. } => squares(canvas, row, top)?,
                Form::Bars { end, largest } => bar(canvas, row, top - 2.0, end, largest)?,
            }
            let place = at(form.end() + 8.0, top + 7.8);
            canvas.text(&outcome(row, terms), place, Align::Start, NOTE)?;
        }
        key(canvas, height - 13.0, terms, form)
    })?;
    let name = if part == 1 {
        "quarters".to_owned()
    } else {
        format!("quarters-{part}")
    };
    Ok(Chart::new(name, svg, alt(rows, terms), height))
}

/// Squares, where a line has room for them all and for the words behind them; else bars.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Form {
    Squares { end: f64 },
    Bars { end: f64, largest: u64 },
}

impl Form {
    fn of(rows: &[QuarterCounts], terms: &Terms) -> Form {
        let largest = rows.iter().map(all).max().unwrap_or(0);
        let words = |row| text_width(&outcome(row, terms), NOTE);
        let room = WIDTH - 8.0 - rows.iter().map(words).fold(0.0, f64::max);
        let end = LEFT + STEP * largest as f64;
        if largest <= SQUARES_AT_MOST && end <= room {
            Form::Squares { end }
        } else {
            Form::Bars {
                end: room.min(400.0),
                largest,
            }
        }
    }

    fn end(self) -> f64 {
        match self {
            Form::Squares { end } | Form::Bars { end, .. } => end,
        }
    }
}

fn all(row: &QuarterCounts) -> u64 {
    row.over + row.no_verdict + row.within_quantified + row.within_below
}

fn units(row: &QuarterCounts) -> [(Unit, u64); 4] {
    [
        (Unit::Over, row.over),
        (Unit::NoVerdict, row.no_verdict),
        (Unit::Measured, row.within_quantified),
        (Unit::Below, row.within_below),
    ]
}

fn name(row: &QuarterCounts, words: &Catalogue) -> String {
    let quarter = match row.quarter {
        1 => "first",
        2 => "second",
        3 => "third",
        _ => "fourth",
    };
    words.say(&say::chart_quarter(quarter, row.year.to_string()))
}

fn squares(canvas: &mut Canvas<'_>, row: &QuarterCounts, top: f64) -> Result<()> {
    let units = units(row)
        .into_iter()
        .flat_map(|(unit, n)| (0..n).map(move |_| unit));
    for (number, unit) in units.enumerate() {
        square(canvas, at(LEFT + STEP * number as f64, top), SQUARE, unit)?;
    }
    Ok(())
}

fn bar(
    canvas: &mut Canvas<'_>,
    row: &QuarterCounts,
    top: f64,
    end: f64,
    largest: u64,
) -> Result<()> {
    let mut left = LEFT;
    for (unit, n) in units(row) {
        if n == 0 {
            continue;
        }
        let right = left + (end - LEFT) * n as f64 / largest as f64;
        part_of_bar(canvas, at(left, top), at(right, top + 14.0), unit)?;
        let word = n.to_string();
        if text_width(&word, VALUE) + 6.0 <= right - left {
            let ink = if unit == Unit::Over { PAPER } else { INK };
            canvas.text(
                &word,
                at(left + 3.0, top + 10.0),
                Align::Start,
                Type { ink, ..VALUE },
            )?;
        }
        left = right;
    }
    Ok(())
}

fn key(canvas: &mut Canvas<'_>, top: f64, terms: &Terms, form: Form) -> Result<()> {
    let with_squares = matches!(form, Form::Squares { .. });
    let rule = side(terms.rule);
    let entries = [
        (Unit::Over, say::chart_quarters_over(rule)),
        (Unit::NoVerdict, say::chart_no_verdict()),
        (Unit::Measured, say::chart_quarters_measured(rule)),
        (Unit::Below, say::chart_quarters_below(rule)),
    ]
    .map(|(unit, said)| (unit, terms.words.say(&said)));
    let mark = if with_squares { 13.0 } else { 18.0 };
    let widths = entries.iter().map(|(_, words)| text_width(words, NOTE));
    let whole: f64 = widths.map(|width| mark + width + GAP).sum();
    // Below the rows where it has room there, else from the edge on.
    let mut left = if LEFT + whole - GAP <= WIDTH {
        LEFT
    } else {
        0.0
    };
    for (unit, words) in entries {
        if with_squares {
            square(canvas, at(left, top), SQUARE, unit)?;
        } else {
            part_of_bar(
                canvas,
                at(left, top - 2.5),
                at(left + 14.0, top + 11.5),
                unit,
            )?;
        }
        let text_left = left + mark;
        canvas.text(&words, at(text_left, top + 7.5), Align::Start, NOTE)?;
        left = text_left + text_width(&words, NOTE) + GAP;
    }
    Ok(())
}

/// "4 at or above, 1 no verdict".
fn outcome(row: &QuarterCounts, terms: &Terms) -> String {
    terms.words.say(&match all(row) {
        0 => say::chart_quarter_none(),
        _ => say::chart_quarter_outcome(row.over, row.no_verdict, side(terms.rule)),
    })
}

fn alt(rows: &[QuarterCounts], terms: &Terms) -> String {
    let told = rows.iter().map(|row| {
        say::chart_quarters_row(
            name(row, &terms.words),
            all(row),
            row.over.to_string(),
            row.no_verdict.to_string(),
            row.within_quantified.to_string(),
            row.within_below.to_string(),
            side(terms.rule),
        )
    });
    let sentences: Vec<String> = std::iter::once(say::chart_quarters())
        .chain(told)
        .map(|said| terms.words.say(&said))
        .collect();
    sentences.join(" ")
}
