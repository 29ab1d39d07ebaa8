//! Products by quarter: a square each, or stacked bars in the same inks where a quarter has more than a line of them.

use crate::model::statistics::QuarterCounts;
use crate::render::charts::Chart;
use crate::render::charts::frame::{Frame, names, numbered_stem};
use crate::render::charts::scale::{NOTE, PLAIN};
use crate::render::charts::squares::{Unit, each, part_of_bar, square, stacked};
use crate::render::charts::style::{Align, Canvas, WIDTH, at, text_width};
use crate::render::terms::Terms;
use crate::words::{Catalogue, say, side};
use anyhow::Result;
use std::iter::once;

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
        rows,
        height: &|_| PITCH,
        head: 0.0,
        foot: KEY,
        between: None,
    };
    frame.draw(
        (numbered_stem("quarters", part), alt(rows, terms)),
        |_, _| (),
        |canvas, row, place| {
            let (middle, name) = (place.middle, name(row, &terms.words));
            names(canvas, &[(name, PLAIN)], PITCH, middle);
            match form.longest_bar {
                None => {
                    for (number, unit) in each(units(row)).enumerate() {
                        let corner = at(LEFT + STEP * number as f64, middle - SQUARE / 2.0);
                        square(canvas, corner, SQUARE, unit);
                    }
                }
                Some(longest) => {
                    let bar = (at(LEFT, middle - 7.0), at(form.end, middle + 7.0));
                    stacked(canvas, &units(row), longest, bar);
                }
            }
            let behind = at(form.end + 8.0, middle + 3.0);
            canvas.text(&outcome(row, terms), behind, Align::Start, NOTE);
        },
        |canvas, bottom| key(canvas, bottom + 11.0, terms, form),
    )
}

/// Squares, where a line has room for them all and for the words behind them; else bars.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Form {
    /// Where the longest row ends.
    end: f64,
    /// How many products the longest bar stands for; none where there are squares.
    longest_bar: Option<u64>,
}

impl Form {
    fn of(rows: &[QuarterCounts], terms: &Terms) -> Form {
        let largest = rows.iter().map(all).max().unwrap_or(0);
        let words = |row| text_width(&outcome(row, terms), NOTE);
        let room = WIDTH - 8.0 - rows.iter().map(words).fold(0.0, f64::max);
        let end = LEFT + STEP * largest as f64;
        let fit = largest <= SQUARES_AT_MOST && end <= room;
        Form {
            end: if fit { end } else { room.min(400.0) },
            longest_bar: (!fit).then_some(largest),
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

fn key(canvas: &mut Canvas<'_>, top: f64, terms: &Terms, form: Form) {
    let with_squares = form.longest_bar.is_none();
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
    let fits = LEFT + whole - GAP <= WIDTH;
    let mut left = if fits { LEFT } else { 0.0 };
    for (unit, words) in entries {
        if with_squares {
            square(canvas, at(left, top), SQUARE, unit);
        } else {
            let from = at(left, top - 2.5);
            part_of_bar(canvas, from, from.by(14.0, 14.0), unit);
        }
        let text_left = left + mark;
        canvas.text(&words, at(text_left, top + 7.5), Align::Start, NOTE);
        left = text_left + text_width(&words, NOTE) + GAP;
    }
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
    terms.words.text(once(say::chart_quarters()).chain(told))
}
