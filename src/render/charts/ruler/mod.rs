//! The gluten ruler: every extraction of every package on one log scale, with the limit.
//!
//! Too little to measure has a cell of its own, in which position has no meaning. Solid marks are over the limit, open
//! ones within it; a dashed line joins extractions that disagree. Every mark is doubled by words at the end of its row.

mod marks;
mod scale;

use crate::model::package::PackageResult;
use crate::model::pair::{PairState, PairedExtraction, Usage};
use crate::model::ppm::Ppm;
use crate::model::rule::Rule;
use crate::render::charts::ruler::scale::{CELL, SCALE, Scale, WORDS, ZONE_END, readings};
use crate::render::charts::style::{
    self, ACCENT, Align, Canvas, GRID, HAIRLINE, INK, INK_2, PAPER, Pen, Type, WIDTH, ZONE, at,
};
use crate::render::numbers;
use crate::render::words::limit::LimitWords;
use crate::render::words::packages::agreement;
use crate::words::{Catalogue, say, side};
use anyhow::Result;

/// Packages on one picture: more would not fit on a page.
const PACKAGES_PER_PICTURE: usize = 22;

const HEAD: f64 = 24.0;
const FOOT: f64 = 23.0;

const ROW: Type = Type::strong(8.8, INK);
const NOTE: Type = Type::plain(7.8, INK_2);
const AXIS: Type = Type::plain(8.6, INK);

/// The drawings that make up a picture, one below the other.
pub const DRAWINGS: usize = 3;

/// Draws the ruler, on as many pictures as its packages need.
///
/// The words above the rows and the scale below them are drawings of their own: they are the same on nearly every sheet, so
/// that the typesetter, which remembers what it has just read, loads them once and not once a sheet.
pub fn draw(
    packages: &[PackageResult],
    rule: Rule,
    words: &Catalogue,
) -> Result<Vec<[String; DRAWINGS]>> {
    let scale = Scale::of(packages, rule);
    let dense = packages.len() > 3;
    let head = style::draw(WIDTH, HEAD, |canvas| flags(canvas, rule, &scale, words))?;
    let foot = style::draw(WIDTH, FOOT, |canvas| strip(canvas, rule, &scale, words))?;
    let pictures = packages.chunks(PACKAGES_PER_PICTURE);
    pictures
        .map(|part| {
            let rows = Rows {
                rule,
                scale: &scale,
                dense,
                words,
            };
            let rows = rows.draw(part)?;
            Ok([head.clone(), rows, foot.clone()])
        })
        .collect()
}

/// All that decides the pictures: the same text, the same bytes.
pub fn made_from(packages: &[PackageResult], rule: Rule, words: &Catalogue) -> String {
    let marks = |package: &PackageResult| {
        let extractions = package.pair.extractions.iter();
        let readings: Vec<_> = extractions
            .map(|one| (one.extraction.outcome, one.usage == Usage::Used))
            .collect();
        (package.pair.state, package.standing, readings)
    };
    let packages_marks: Vec<_> = packages.iter().map(marks).collect();
    let in_words = in_words(packages, rule, words);
    let limit = LimitWords::of(rule, words);
    let drawn = [
        say::ruler_lot(""),
        say::ruler_below(""),
        say::ruler_unit(unit_of(rule)),
    ];
    let drawn: Vec<String> = drawn.iter().map(|said| words.say(said)).collect();
    let (flag, fixed) = (limit.flag(), words.fixed(&["charts"]));
    let sides = [limit.over_the_limit(), limit.within_the_limit()];
    format!("{rule:?} {packages_marks:?} {flag} {sides:?} {drawn:?} {fixed:?} {in_words:?}")
}

/// What the marks mean; thin ones only where there are any.
pub fn key(packages: &[PackageResult], rule: Rule, words: &Catalogue) -> String {
    let is_thin = |paired: &PairedExtraction| {
        paired.usage != Usage::Used && paired.extraction.outcome.reading().is_some()
    };
    let mut all = packages
        .iter()
        .flat_map(|package| &package.pair.extractions);
    let thin = if all.any(is_thin) { "yes" } else { "no" };
    words.say(&say::ruler_key(thin, side(rule.limit)))
}

/// Each picture in words, for those who cannot see it: the message, then every reading.
pub fn in_words(packages: &[PackageResult], rule: Rule, words: &Catalogue) -> Vec<String> {
    let scale = Scale::of(packages, rule);
    let limit = LimitWords::of(rule, words);
    let said = |part: &[PackageResult]| {
        let rows: Vec<String> = part
            .iter()
            .map(|package| row_in_words(package, rule, words))
            .collect();
        words.say(&say::ruler_alt(
            scale.words(words),
            limit.unit(),
            limit.side(),
            limit.figure(),
            rows.join(" "),
        ))
    };
    packages.chunks(PACKAGES_PER_PICTURE).map(said).collect()
}

fn row_in_words(package: &PackageResult, rule: Rule, words: &Catalogue) -> String {
    let figures: Vec<String> = readings(package)
        .map(|reading| spoken(&numbers::interval_said(reading, rule.limit, words), words))
        .collect();
    let said = agreement(package, words);
    let code = &package.pair.package.package_code;
    words.say(&if figures.is_empty() {
        say::ruler_row_empty(code, said.head, said.detail)
    } else {
        say::ruler_row(code, words.list(&figures), said.head, said.detail)
    })
}

fn spoken(figure: &str, words: &Catalogue) -> String {
    let bound = |side, bound: &str| words.say(&say::ruler_spoken(side, bound));
    match (figure.strip_prefix('<'), figure.strip_prefix('>')) {
        (Some(below), _) => bound("below", below),
        (_, Some(above)) => bound("above", above),
        _ => figure.to_owned(),
    }
}

/// What all rows of a picture share.
#[derive(Clone, Copy)]
struct Rows<'a> {
    rule: Rule,
    scale: &'a Scale,
    dense: bool,
    words: &'a Catalogue,
}

impl Rows<'_> {
    fn draw(self, packages: &[PackageResult]) -> Result<String> {
        let heights: Vec<f64> = packages
            .iter()
            .map(|package| row_height(package, self.dense))
            .collect();
        let bottom = heights.iter().sum::<f64>();
        style::draw(WIDTH, bottom, |canvas| {
            let limit = self.scale.x(self.rule.limit.ppm.0);
            canvas.fill(at(limit, 0.0), at(ZONE_END, bottom), ZONE)?;
            for figure in self.scale.numbered() {
                let x = self.scale.x(figure);
                canvas.line(&[at(x, 0.0), at(x, bottom)], Pen::solid(0.5, GRID))?;
            }
            let mut top = 0.0;
            for (index, (package, height)) in packages.iter().zip(&heights).enumerate() {
                if index > 0 {
                    canvas.line(&[at(0.0, top), at(WIDTH, top)], Pen::solid(0.4, HAIRLINE))?;
                }
                limit_line(canvas, self.rule, self.scale, top, top + height)?;
                self.row(canvas, package, top + height / 2.0)?;
                top += height;
            }
            Ok(())
        })
    }

    fn row(self, canvas: &mut Canvas<'_>, package: &PackageResult, middle: f64) -> Result<()> {
        let codes = code_lines(&package.pair.package.package_code);
        let lot = package.pair.package.lot.as_deref();
        let lot = lot
            .filter(|_| !self.dense)
            .map(|lot| self.words.say(&say::ruler_lot(lot)))
            .filter(|lot| style::text_width(lot, NOTE) <= 60.0);
        let lines = codes.len() as f64 + if lot.is_some() { 1.0 } else { 0.0 };
        let mut baseline = middle - lines * 9.8 / 2.0 + 7.6;
        for code in &codes {
            canvas.text(code, at(0.0, baseline), Align::Start, ROW)?;
            baseline += 9.8;
        }
        if let Some(lot) = lot {
            canvas.text(&lot, at(0.0, baseline), Align::Start, NOTE)?;
        }
        marks::draw(canvas, package, self.rule, self.scale, self.words, middle)?;
        self.agreement(canvas, package, middle)
    }

    /// How the extractions agree, at the end of their row: on one line where there is room.
    fn agreement(
        self,
        canvas: &mut Canvas<'_>,
        package: &PackageResult,
        middle: f64,
    ) -> Result<()> {
        let said = agreement(package, self.words);
        let head = match package.pair.state {
            PairState::Agree => Type::plain(8.8, INK),
            PairState::Disagree | PairState::Incomplete | PairState::Missing => ROW,
        };
        let head_width = style::text_width(&said.head, head);
        let width = style::text_width(&said.detail, NOTE);
        if self.dense && WORDS + head_width + 5.0 + width <= WIDTH {
            canvas.text(&said.head, at(WORDS, middle + 3.0), Align::Start, head)?;
            let beside = at(WORDS + head_width + 5.0, middle + 3.0);
            return canvas.text(&said.detail, beside, Align::Start, NOTE);
        }
        let gap = if self.dense { 4.4 } else { 5.2 };
        let above = at(WORDS, middle + 2.8 - gap);
        canvas.text(&said.head, above, Align::Start, fitted(&said.head, head))?;
        let below = at(WORDS, middle + 2.6 + gap);
        canvas.text(
            &said.detail,
            below,
            Align::Start,
            fitted(&said.detail, NOTE),
        )
    }
}

fn row_height(package: &PackageResult, dense: bool) -> f64 {
    let lines = code_lines(&package.pair.package.package_code).len() as f64;
    let least = if dense { 19.0 } else { 31.0 };
    f64::max(least, lines * 9.6 + if dense { 8.0 } else { 18.0 })
}

/// A code in pieces that fit beside the scale, broken after a dash or a dot where there is one.
fn code_lines(code: &str) -> Vec<String> {
    const ROOM: f64 = 58.0;
    let mut lines = vec![String::new()];
    for piece in code.split_inclusive(['-', '.', '_']) {
        for letter in std::iter::once(piece.to_owned()).flat_map(|piece| {
            let fits = style::text_width(&piece, ROW) <= ROOM;
            if fits {
                vec![piece]
            } else {
                piece.chars().map(String::from).collect()
            }
        }) {
            let last = lines.last_mut().expect("it starts with one line");
            if !last.is_empty() && style::text_width(&format!("{last}{letter}"), ROW) > ROOM {
                lines.push(letter);
            } else {
                last.push_str(&letter);
            }
        }
    }
    lines
}

/// What is where on the scale, in words above the rows.
fn flags(canvas: &mut Canvas<'_>, rule: Rule, scale: &Scale, words: &Catalogue) -> Result<()> {
    let limit = scale.x(rule.limit.ppm.0);
    let said = LimitWords::of(rule, words);
    let flag = said.flag();
    let half = (style::text_width(&flag, Type::strong(8.8, PAPER)) / 2.0 + 6.0).max(30.0);
    canvas.fill(at(limit - half, 6.0), at(limit + half, 20.0), ACCENT)?;
    canvas.text(
        &flag,
        at(limit, 16.0),
        Align::Middle,
        Type::strong(8.8, PAPER),
    )?;
    canvas.line(&[at(limit, 20.0), at(limit, HEAD)], Pen::solid(1.6, ACCENT))?;

    let start = words.locale().figure(&numbers::plain(Ppm(scale.start)));
    let cell_words = words.say(&say::ruler_below(start));
    let over = format!("{} →", said.over_the_limit());
    if limit + half + 5.0 + style::text_width(&over, NOTE) < WIDTH {
        canvas.text(&over, at(limit + half + 5.0, 15.6), Align::Start, NOTE)?;
    }
    let taken = if scale.cell {
        canvas.text(&cell_words, at(CELL.middle(), 15.6), Align::Middle, NOTE)?;
        CELL.middle() + style::text_width(&cell_words, NOTE) / 2.0 + 8.0
    } else {
        0.0
    };
    let within = format!("← {}", said.within_the_limit());
    if limit - half - 5.0 - style::text_width(&within, NOTE) > taken {
        canvas.text(&within, at(limit - half - 5.0, 15.6), Align::End, NOTE)?;
    }
    Ok(())
}

fn limit_line(
    canvas: &mut Canvas<'_>,
    rule: Rule,
    scale: &Scale,
    top: f64,
    bottom: f64,
) -> Result<()> {
    let limit = scale.x(rule.limit.ppm.0);
    canvas.line(
        &[at(limit, top), at(limit, bottom)],
        Pen::solid(1.6, ACCENT),
    )
}

/// The scale itself, drawn as a rule.
fn strip(canvas: &mut Canvas<'_>, rule: Rule, scale: &Scale, words: &Catalogue) -> Result<()> {
    let (from, to) = (1.0, 22.0);
    let figure = |x| words.locale().figure(&numbers::plain(Ppm(x)));
    let outline = Pen::solid(0.9, INK);
    if scale.cell {
        canvas.frame(at(CELL.from, from), at(CELL.to, to), outline)?;
        let middle = CELL.middle();
        let label = format!("<{}", figure(scale.start));
        canvas.line(&[at(middle, from), at(middle, from + 4.0)], outline)?;
        canvas.text(
            &label,
            at(middle, to - 6.0),
            Align::Middle,
            Type::strong(8.6, INK),
        )?;
    }
    canvas.frame(at(SCALE.from - 10.0, from), at(ZONE_END, to), outline)?;
    let limit = scale.x(rule.limit.ppm.0);
    let mut free_from = f64::MIN;
    let own = figure(rule.limit.ppm.0);
    let own_half = style::text_width(&own, Type::strong(8.6, ACCENT)) / 2.0 + 3.0;
    for tick in scale.ticks() {
        let x = scale.x(tick);
        let numbered = scale
            .numbered()
            .iter()
            .any(|figure| Ppm(*figure).same(Ppm(tick)));
        let length = if numbered { 7.0 } else { 4.0 };
        canvas.line(&[at(x, from), at(x, from + length)], Pen::solid(0.7, INK))?;
        let label = figure(tick);
        let half = style::text_width(&label, AXIS) / 2.0;
        let hits_limit = (x - limit).abs() < half + own_half;
        if numbered && x - half > free_from && !hits_limit && x + half < ZONE_END - 1.0 {
            canvas.text(&label, at(x, to - 4.6), Align::Middle, AXIS)?;
            free_from = x + half + 3.0;
        }
    }
    canvas.line(
        &[at(limit, from - 1.0), at(limit, from + 7.0)],
        Pen::solid(1.6, ACCENT),
    )?;
    canvas.text(
        &own,
        at(limit, to - 4.6),
        Align::Middle,
        Type::strong(8.6, ACCENT),
    )?;
    let lines = [
        (say::ruler_unit(unit_of(rule)), 7.6),
        (say::ruler_log(), 17.2),
    ];
    for (said, down) in lines {
        let said = words.say(&said);
        let place = at(WORDS, from + down);
        canvas.text(&said, place, Align::Start, fitted(&said, NOTE))?;
    }
    Ok(())
}

/// By which the unit beside the scale is worded.
fn unit_of(rule: Rule) -> &'static str {
    match rule.regime.unit() {
        "ppm" => "ppm",
        _ => "mg",
    }
}

/// Type in which a text fits between the scale and the edge: as it is for nearly all.
fn fitted(text: &str, look: Type) -> Type {
    let width = style::text_width(text, look).max(1.0);
    Type {
        size: look.size * f64::min(1.0, (WIDTH - WORDS) / width),
        ..look
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn long_codes_are_cut_where_they_have_a_dash() {
        assert_eq!(code_lines("FH-01-A"), ["FH-01-A"]);
        let lines = code_lines("HARROW-2031-000123-REPEAT-A");
        assert_eq!(lines.concat(), "HARROW-2031-000123-REPEAT-A");
        assert!(
            lines
                .iter()
                .all(|line| style::text_width(line, ROW) <= 58.0),
            "{lines:?}"
        );
        assert!(lines[0].ends_with('-'), "{lines:?}");
    }
}
