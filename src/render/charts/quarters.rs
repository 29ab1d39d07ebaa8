//! Products by quarter: a square each, or stacked bars in the same inks where a quarter has more than a line of them.

use crate::model::statistics::QuarterCounts;
use crate::render::charts::Chart;
use crate::render::charts::frame::{Frame, lines, numbered_stem};
use crate::render::charts::scale::{NOTE, PLAIN};
use crate::render::charts::squares::{Unit, part_of_bar, square, stacked};
use crate::render::charts::style::{Align, Canvas, WIDTH, at, text_width};
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
    let frame = Frame {
        head: 0.0,
        foot: KEY,
        between: None,
        height: &|_| PITCH,
    };
    frame.draw(
        (numbered_stem("quarters", part), alt(rows, terms)),
        rows.len(),
        |_, _| Ok(()),
        |canvas, number, place| {
            let row = &rows[number];
            lines(
                canvas,
                &[(name(row, &terms.words), PLAIN)],
                PITCH,
                place.middle,
            )?;
            match form {
                Form::Squares { .. } => squares(canvas, row, place.middle - SQUARE / 2.0)?,
                Form::Bars { end, largest } => {
                    let (from, to) = (place.middle - 7.0, place.middle + 7.0);
                    let bar = (at(LEFT, from), at(end, to));
                    stacked(canvas, &units(row), largest, bar)?;
                }
            }
            let behind = at(form.end() + 8.0, place.middle + 3.0);
            canvas.text(&outcome(row, terms), behind, Align::Start, NOTE)
        },
        |canvas, bottom| key(canvas, bottom + 11.0, terms, form),
    )
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
