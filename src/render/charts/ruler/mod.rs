//! The gluten ruler: every extraction of every package on one log scale, with the limit and what is too close to it to call.
//!
//! Too little to measure has a cell of its own, in which position has no meaning. Solid marks are over the limit, open
//! ones within it; a dashed line joins extractions that disagree. A package to which more happened than a pair has a row for
//! each chapter of its story. Every mark is doubled by words at the end of its row.

mod marks;
mod row;

use crate::files;
use crate::model::decided::JudgedProduct;
use crate::model::extraction::Interval;
use crate::model::package::{PackageResult, ResultKind};
use crate::model::pair::{PairState, PairedExtraction, Usage};
use crate::model::ppm::Ppm;
use crate::model::rule::Rule;
use crate::model::statistics::CloseBand;
use crate::render::charts;
use crate::render::charts::ruler::row::Row;
use crate::render::charts::scale::{LogScale, NOTE, Span, parts, span};
use crate::render::charts::style::{self, Align, Canvas, HAIRLINE, Pen, WIDTH, at, text_width};
use crate::render::numbers;
use crate::render::words::chapters::{MOST_LISTED, chapters};
use crate::render::words::limit::{CloseWords, LimitWords};
use crate::words::{Catalogue, say, side};
use anyhow::Result;
use std::iter::once;

/// Rows on one picture, in points: more would not fit on a page.
const ROWS_HEIGHT: f64 = 430.0;

const HEAD: f64 = 24.0;
const FOOT: f64 = 23.0;

/// The cell for what is too little to measure.
const CELL: Span = span(56.0, 99.0);
/// First and last figure of the scale.
const SCALE: Span = span(114.0, 344.0);
/// Where the words at a row's end begin.
const WORDS: f64 = 360.0;

/// The drawings that make up a picture, one below the other.
pub const DRAWINGS: usize = 3;

/// What a ruler shows.
#[derive(Clone, Copy, Debug)]
pub struct Ruler<'a> {
    /// The packages, a row or a story each.
    pub packages: &'a [PackageResult],
    /// What they are held against.
    pub rule: Rule,
    /// What is too close to the limit to call.
    pub close: Option<CloseBand>,
    /// The words of the documents.
    pub words: &'a Catalogue,
}

impl<'a> Ruler<'a> {
    /// Of a product. Where no limit goes with its claim there is nothing to hold a mark against, and no row.
    pub fn of(product: &'a JudgedProduct, words: &'a Catalogue) -> Ruler<'a> {
        let verdict = &product.verdict;
        let has_limit = verdict.claim.limit.is_some();
        Ruler {
            packages: if has_limit { &verdict.packages } else { &[] },
            rule: verdict.rule,
            close: product.statistics.close,
            words,
        }
    }

    /// Draws the ruler, on as many pictures as its packages need.
    ///
    /// The words above the rows and the scale below them are drawings of their own: they are the same on nearly every sheet,
    /// so that the typesetter, which remembers what it has just read, loads them once and not once a sheet.
    pub fn draw(self) -> Result<Vec<[String; DRAWINGS]>> {
        let scale = Placed::of(self);
        let head = style::draw(WIDTH, HEAD, |canvas| self.head(canvas, &scale))?;
        let foot = style::draw(WIDTH, FOOT, |canvas| self.foot(canvas, &scale))?;
        let rows = self.rows(&scale);
        pictures(&rows)
            .map(|part| Ok([head.clone(), self.picture(part, &scale)?, foot.clone()]))
            .collect()
    }

    /// All that decides the pictures: the same text, the same bytes.
    pub fn made_from(self) -> String {
        let (rule, close, words) = (self.rule, self.close, self.words);
        // A package may have very many, and each drawing keeps this text: of the readings it has what they come to.
        let marks = |package: &PackageResult| {
            let extractions = package.pair.extractions.iter();
            let readings = extractions.map(|one| (one.extraction.outcome, &one.usage));
            let readings = format!("{:?}", readings.collect::<Vec<_>>());
            let (state, standing) = (package.pair.state, package.standing);
            let readings = files::sha256_of(readings.as_bytes());
            (state, standing, package.result, readings)
        };
        let packages_marks: Vec<_> = self.packages.iter().map(marks).collect();
        let in_words = self.in_words();
        let limit = LimitWords::of(rule, words);
        let drawn = words.each([
            say::ruler_lot(""),
            say::ruler_below(""),
            say::ruler_times(0_u64, ""),
            say::ruler_unit(unit_of(rule)),
        ]);
        let (flag, fixed) = (limit.flag(), words.fixed(&["charts"]));
        let sides = [limit.over_the_limit(), limit.within_the_limit()];
        format!(
            "{rule:?} {close:?} {packages_marks:?} {flag} {sides:?} {drawn:?} {fixed:?} {in_words:?}"
        )
    }

    /// What the marks mean: those that there are, and the band.
    pub fn key(self) -> String {
        let words = self.words;
        let any = |wanted: &dyn Fn(&PackageResult) -> bool| self.packages.iter().any(wanted);
        let is_crowded = |package: &PackageResult| package.pair.extractions.len() > MOST_LISTED;
        let any_extraction = |wanted: fn(&PairedExtraction) -> bool| {
            any(&|package| package.pair.extractions.iter().any(wanted))
        };
        let disagree = |package: &PackageResult| {
            let first = package.pair.first.and_then(|first| first.comparison);
            package.pair.state == PairState::Disagree || first.is_some_and(|first| !first.agrees())
        };
        let value = any(&|one| matches!(one.result, ResultKind::Value { .. }));
        let range = any(&|one| matches!(one.result, ResultKind::Range(_)));
        let aside = any_extraction(|one| {
            let has_reading = one.extraction.outcome.reading().is_some();
            has_reading && matches!(one.usage, Usage::Excluded { .. })
        });
        let conflict = any_extraction(|one| one.usage == Usage::InConflict);
        let there_are = [
            (value, "result"),
            (range, "range"),
            (any(&disagree), "disagree"),
            (any(&is_crowded), "many"),
            (aside, "aside"),
            (conflict, "conflict"),
        ];
        let more = there_are.into_iter().filter(|(there_is, _)| *there_is);
        let more = more.map(|(_, what)| say::ruler_key_more(what));
        let mut said = words.each(once(say::ruler_key(side(self.rule.limit))).chain(more));
        said.extend(self.band());
        said.join(" ")
    }

    /// Each picture in words, for those who cannot see it: the message, then every reading.
    pub fn in_words(self) -> Vec<String> {
        let (scale, words) = (Placed::of(self), self.words);
        let limit = LimitWords::of(self.rule, words);
        let figure = |x| words.locale().figure(&numbers::plain(Ppm(x)));
        let (low, high) = (scale.scale.low, scale.scale.high);
        let range = words.say(&say::range_in_text(figure(low), figure(high)));
        let rows = self.rows(&scale);
        let said = |part: &[Vec<Row<'_>>]| {
            let rows = part.iter().flatten();
            let mut rows: Vec<String> = rows.map(|row| row.in_words(self)).collect();
            rows.extend(self.band());
            charts::spoken_of(words.say(&say::ruler_alt(
                range.as_str(),
                limit.unit(),
                limit.side(),
                limit.figure(),
                rows.join(" "),
            )))
        };
        pictures(&rows).map(said).collect()
    }

    /// What is hatched, in words.
    fn band(self) -> Option<String> {
        let said = |close| CloseWords::of(close, self.rule, self.words).sentence;
        self.close.map(said)
    }

    /// The rows of each package.
    fn rows(self, scale: &Placed) -> Vec<Vec<Row<'a>>> {
        let is_dense = self.packages.len() > 3;
        let of = |package: &'a PackageResult| {
            let chapters = chapters(package);
            let is_small = is_dense || chapters.len() > 1;
            let rows = chapters.into_iter().enumerate();
            let row = |(number, chapter)| {
                let how = (number == 0, is_small, is_dense);
                Row::new(self, scale, package, chapter, how)
            };
            rows.map(row).collect()
        };
        self.packages.iter().map(of).collect()
    }

    /// The rows between the words above them and the scale.
    fn picture(self, packages: &[Vec<Row<'_>>], scale: &Placed) -> Result<String> {
        let bottom = packages.iter().map(|rows| height(rows)).sum();
        style::draw(WIDTH, bottom, |canvas| {
            scale.scale.ground(canvas, (0.0, bottom), self.close);
            scale.scale.limit_line(canvas, 0.0, bottom);
            let mut top = 0.0;
            for (index, rows) in packages.iter().enumerate() {
                if index > 0 {
                    canvas.line(&[at(0.0, top), at(WIDTH, top)], Pen::solid(0.4, HAIRLINE));
                }
                for row in rows {
                    row.draw(canvas, self, scale, top);
                    top += row.height;
                }
            }
        })
    }

    /// What is where on the scale, in words above the rows.
    fn head(self, canvas: &mut Canvas<'_>, scale: &Placed) {
        const BASELINE: f64 = 15.6;
        let said = LimitWords::of(self.rule, self.words);
        let limit = scale.scale.limit();
        let half = scale.scale.flag(canvas, &said.flag(), 6.0) + 5.0;
        scale.scale.limit_line(canvas, 20.0, HEAD);
        let over = format!("{} →", said.over_the_limit());
        if limit + half + text_width(&over, NOTE) < WIDTH {
            canvas.text(&over, at(limit + half, BASELINE), Align::Start, NOTE);
        }
        let mut taken = 0.0;
        if scale.has_cell {
            let below = self.words.say(&say::ruler_below(scale.start(self.words)));
            let centre = at(CELL.middle(), BASELINE);
            canvas.text(&below, centre, Align::Middle, NOTE);
            taken = CELL.middle() + text_width(&below, NOTE) / 2.0 + 8.0;
        }
        let within = format!("← {}", said.within_the_limit());
        if limit - half - text_width(&within, NOTE) > taken {
            canvas.text(&within, at(limit - half, BASELINE), Align::End, NOTE);
        }
    }

    /// The scale itself, drawn as a rule, and its unit.
    fn foot(self, canvas: &mut Canvas<'_>, scale: &Placed) {
        let below = format!("<{}", scale.start(self.words));
        let cell = scale.has_cell.then_some((CELL, below.as_str()));
        scale.scale.rule(canvas, 1.0, cell, self.words);
        let lines = [say::ruler_unit(unit_of(self.rule)), say::ruler_log()];
        for (said, baseline) in lines.iter().zip([8.6, 18.2]) {
            let said = self.words.say(said);
            canvas.text(&said, at(WORDS, baseline), Align::Start, NOTE);
        }
    }
}

/// The rows of each package on each picture.
fn pictures<'r, 'a>(rows: &'r [Vec<Row<'a>>]) -> impl Iterator<Item = &'r [Vec<Row<'a>>]> {
    parts(rows, (ROWS_HEIGHT, ROWS_HEIGHT), |rows| height(rows)).into_iter()
}

fn height(rows: &[Row<'_>]) -> f64 {
    rows.iter().map(|row| row.height).sum()
}

/// By which the unit beside the scale is worded.
fn unit_of(rule: Rule) -> &'static str {
    match rule.regime.unit() {
        "ppm" => "ppm",
        _ => "mg",
    }
}

/// The scale, and whether there is a cell beside it.
struct Placed {
    scale: LogScale,
    /// Whether every reading below quantification is below the start of the scale, and so has its place in the cell.
    has_cell: bool,
}

impl Placed {
    fn of(ruler: Ruler<'_>) -> Placed {
        let packages = ruler.packages.iter();
        let extractions = packages.flat_map(|package| &package.pair.extractions);
        let readings: Vec<Interval> = extractions
            .filter_map(|paired| paired.extraction.outcome.reading())
            .collect();
        let ends = readings
            .iter()
            .flat_map(|reading| [Some(reading.lower.0), reading.upper.map(|upper| upper.0)]);
        let limit = ruler.rule.limit.ppm;
        let scale = LogScale::holding(ends.flatten(), limit, Ppm(5.0), SCALE);
        let mut below = readings.iter().filter_map(Interval::as_below);
        Placed {
            has_cell: below.all(|n| n.same(Ppm(scale.low))) && limit.0 > scale.low,
            scale,
        }
    }

    /// The first figure of the scale, in words.
    fn start(&self, words: &Catalogue) -> String {
        let figure = numbers::plain(Ppm(self.scale.low));
        words.locale().figure(&figure)
    }
}
