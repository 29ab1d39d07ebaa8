//! Products, one row each: every package on the scale, and the verdict at the end.

use crate::config::Paper;
use crate::model::decided::JudgedProduct;
use crate::model::verdict::Verdict;
use crate::render::charts::Chart;
use crate::render::charts::frame::{Concentrations, Place, in_parts, names};
use crate::render::charts::marks::{Ink, Mark, Placed, Shape, draw, lanes_of, placed};
use crate::render::charts::scale::{LogScale, NOTE, ROW, Span, VALUE, span, wrapped};
use crate::render::charts::style::{Align, Canvas, INK, PAPER, Pen, Type, at, text_width};
use crate::render::listing::{line, name};
use crate::render::terms::Terms;
use crate::words::{Said, say, side};
use anyhow::Result;
use std::iter::once;

/// Height of the rows in one chart: the room that the newsletter's first page has, and that any later one has, each with
/// the key below.
fn rows_height(paper: Paper) -> (f64, f64) {
    match paper {
        Paper::A4 => (498.0, 526.0),
        Paper::UsLetter => (452.0, 496.0),
    }
}

const NAME_WIDTH: f64 = 144.0;
const CELL: Span = span(154.0, 206.0);
const SCALE: Span = span(222.0, 392.0);
const VERDICT: Span = span(416.0, 493.2);
const LINE: f64 = 10.2;

/// The products in as many charts as they need, all on one scale; `stem` begins the charts' names.
pub fn products(
    stem: &str,
    products: &[&JudgedProduct],
    paper: Paper,
    terms: &Terms,
) -> Result<Vec<Chart>> {
    let packages = products.iter().flat_map(|one| &one.verdict.packages);
    let plot = Concentrations::holding(packages, (CELL, SCALE), terms);
    let rows: Vec<Row> = products.iter().map(|one| Row::new(one, terms)).collect();
    let height = |row: &Row<'_>| row.height;
    let one = |name, rows: &[Row<'_>]| {
        plot.draw(
            (name, alt(rows, terms)),
            (rows, &height),
            |canvas, flag| {
                plot.head_of_cell(canvas, flag, CELL.middle());
                let verdict = terms.words.say(&say::chart_products_verdict());
                canvas.text(&verdict, at(VERDICT.middle(), 12.0), Align::Middle, NOTE);
            },
            |canvas, row, place| row.draw(canvas, &plot, place),
            (say::chart_products_foot(), 1.0),
        )
    };
    in_parts(stem, &rows, rows_height(paper), height, one)
}

struct Row<'a> {
    product: &'a JudgedProduct,
    names: Vec<(String, Type)>,
    height: f64,
}

impl<'a> Row<'a> {
    fn new(product: &'a JudgedProduct, terms: &Terms) -> Row<'a> {
        let brand = product.verdict.product.brand.as_deref();
        let names: Vec<_> = wrapped(brand.unwrap_or_default(), NAME_WIDTH, ROW)
            .chain(wrapped(&name(product, &terms.words), NAME_WIDTH, NOTE))
            .collect();
        Row {
            product,
            height: (LINE * names.len() as f64 + 6.6).max(27.0),
            names,
        }
    }

    fn draw(&self, canvas: &mut Canvas<'_>, plot: &Concentrations<'_>, place: Place) {
        names(canvas, &self.names, LINE, place.middle);
        self.marks(canvas, plot, place.middle);
        self.verdict(canvas, plot.terms, place.middle);
    }

    fn marks(&self, canvas: &mut Canvas<'_>, plot: &Concentrations<'_>, middle: f64) {
        let packages = &self.product.verdict.packages;
        let count = |wanted| {
            let marks = packages.iter().map(Mark::of);
            marks.filter(|mark| *mark == wanted).count()
        };
        let (below, undecided) = (count(Mark::Below), count(Mark::Undecided));
        let step = (44.0 / below.max(1) as f64).min(13.0);
        if below <= 8 {
            for number in 0..below {
                let x = CELL.middle() + step * (number as f64 - (below as f64 - 1.0) / 2.0);
                let radius = (step / 3.2).min(3.6);
                draw(canvas, Shape::Left, Ink::Outline, at(x, middle), radius);
            }
        } else {
            let centre = at(CELL.middle(), middle + 3.0);
            canvas.text(&below.to_string(), centre, Align::Middle, VALUE);
        }
        let placed = placed(packages, &plot.scale);
        // A row is as high as three lanes; more packages than that in one place lie on one another.
        let lanes = lanes_of(&placed).unwrap_or_else(|| vec![0.0; placed.len()]);
        let most = self.height / 2.0 - 4.0;
        for (mark, lane) in placed.iter().zip(lanes) {
            mark.draw(canvas, middle + lane.clamp(-most, most));
        }
        if undecided > 0 {
            let said = say::chart_products_undecided(undecided as u64);
            let words = plot.terms.words.say(&said);
            self.note(canvas, &words, &placed, &plot.scale, middle);
        }
    }

    /// A note on the scale, before the limit; at the foot of the row where a mark is in the way. It never stands in the
    /// zone over the limit, where it would read as a result there.
    fn note(
        &self,
        canvas: &mut Canvas<'_>,
        words: &str,
        placed: &[Placed],
        scale: &LogScale,
        middle: f64,
    ) {
        let (width, limit, from) = (text_width(words, NOTE), scale.limit(), scale.place.from);
        let start = limit - width - 6.0;
        let beside = |mark: &Placed| mark.x < start - 6.0 || mark.x > limit + 2.0;
        let place = if start > from - 8.0 && placed.iter().all(beside) {
            at(start, middle + 3.0)
        } else {
            at(from, middle + self.height / 2.0 - 3.0)
        };
        canvas.fill(place.by(-2.0, -7.5), place.by(width + 2.0, 2.5), PAPER);
        canvas.text(words, place, Align::Start, NOTE);
    }

    fn verdict(&self, canvas: &mut Canvas<'_>, terms: &Terms, middle: f64) {
        let (from, to) = (at(VERDICT.from, middle - 7.5), at(VERDICT.to, middle + 7.5));
        let (outline, ink) = match self.product.verdict.verdict {
            Verdict::OverLimit => (None, PAPER),
            Verdict::WithinLimit(_) => (Some(Pen::solid(0.9, INK)), INK),
            Verdict::NoVerdict => (Some(Pen::dashed(0.9, INK, 2.4, 1.8)), INK),
        };
        match outline {
            None => canvas.fill(from, to, INK),
            Some(pen) => canvas.frame(from.by(0.5, 0.5), to.by(-0.5, -0.5), pen),
        }
        let (words, centre) = (line(self.product, terms).verdict, VERDICT.middle());
        canvas.text(
            &words,
            at(centre, middle + 3.0),
            Align::Middle,
            VALUE.inked(ink),
        );
    }
}

fn alt(rows: &[Row<'_>], terms: &Terms) -> String {
    let count = rows.len() as u64;
    let plot = say::chart_products(count, terms.unit, &terms.the_line, &terms.limit);
    let rows = rows.iter().map(|row| told(row.product, terms));
    terms.words.text(once(plot).chain(rows))
}

fn told(product: &JudgedProduct, terms: &Terms) -> Said {
    let (line, rule) = (line(product, terms), product.verdict.rule);
    let results: Vec<&str> = line.results.iter().map(|cell| cell.text.as_str()).collect();
    let name = name(product, &terms.words);
    let named = match product.verdict.product.brand.as_deref() {
        Some(brand) => terms.words.say(&say::chart_brand_and_product(brand, name)),
        None => name,
    };
    say::chart_products_row(
        named,
        results.join(", "),
        line.state,
        side(rule.limit),
        terms.words.limit(&rule),
    )
}
