//! A few products, one row each: every package on the scale, and the verdict at the end.

use crate::config::Paper;
use crate::model::decided::JudgedProduct;
use crate::model::verdict::Verdict;
use crate::render::charts::Chart;
use crate::render::charts::marks::{Mark, draw_mark, lanes};
use crate::render::charts::scale::{LogScale, NOTE, ROW, VALUE, parts, wrap};
use crate::render::charts::style::{
    Align, Canvas, GRID, INK, PAPER, Pen, Points, Type, WIDTH, at, draw, text_width,
};
use crate::render::listing::{line, name};
use crate::render::terms::Terms;
use crate::words::{say, side};
use anyhow::Result;

/// Height of the rows in one chart: the room that the newsletter's first page has, and that any later one has, each with
/// the key below.
fn rows_height(paper: Paper) -> (f64, f64) {
    match paper {
        Paper::A4 => (498.0, 526.0),
        Paper::UsLetter => (452.0, 496.0),
    }
}

const NAME_WIDTH: f64 = 144.0;
const BELOW: (f64, f64) = (154.0, 206.0);
const SCALE: (f64, f64) = (222.0, 392.0);
const VERDICT: (f64, f64) = (416.0, 493.2);
const HEAD: f64 = 24.0;
const LINE: f64 = 10.2;
const FOOT: f64 = 24.0;

/// The products in as many charts as they need, all on one scale.
pub fn products(products: &[&JudgedProduct], paper: Paper, terms: &Terms) -> Result<Vec<Chart>> {
    let packages = products
        .iter()
        .flat_map(|product| &product.verdict.packages);
    let values = packages.filter_map(|package| Mark::of(package).x());
    let scale = LogScale::holding(values, terms, SCALE.0, SCALE.1);
    let rows: Vec<Row> = products
        .iter()
        .map(|product| Row::new(product, terms))
        .collect();
    let parts = parts(&rows, rows_height(paper), |row| row.height);
    let numbered = parts.into_iter().enumerate();
    numbered
        .map(|(number, part)| one(part, &scale, terms, number + 1))
        .collect()
}

struct Row<'a> {
    product: &'a JudgedProduct,
    brand: Vec<String>,
    name: Vec<String>,
    height: f64,
}

impl<'a> Row<'a> {
    fn new(product: &'a JudgedProduct, terms: &Terms) -> Row<'a> {
        let of = &product.verdict.product;
        let brand = wrap(of.brand.as_deref().unwrap_or_default(), NAME_WIDTH, ROW);
        let name = wrap(&name(product, &terms.words), NAME_WIDTH, NOTE);
        let height = (LINE * (brand.len() + name.len()) as f64 + 6.6).max(27.0);
        Row {
            product,
            brand,
            name,
            height,
        }
    }

    fn draw(
        &self,
        canvas: &mut Canvas<'_>,
        scale: &LogScale,
        terms: &Terms,
        top: f64,
    ) -> Result<()> {
        let middle = top + self.height / 2.0;
        let lines = self
            .brand
            .iter()
            .map(|line| (line, ROW))
            .chain(self.name.iter().map(|line| (line, NOTE)));
        let count = (self.brand.len() + self.name.len()) as f64;
        for (number, (text, look)) in lines.enumerate() {
            let y = middle + 3.2 + LINE * (number as f64 - (count - 1.0) / 2.0);
            canvas.text(text, at(0.0, y), Align::Start, look)?;
        }
        self.marks(canvas, scale, terms, middle)?;
        self.verdict(canvas, terms, middle)
    }

    fn marks(
        &self,
        canvas: &mut Canvas<'_>,
        scale: &LogScale,
        terms: &Terms,
        middle: f64,
    ) -> Result<()> {
        let marks: Vec<Mark> = self.product.verdict.packages.iter().map(Mark::of).collect();
        let of = |wanted: Mark| marks.iter().filter(|mark| **mark == wanted).count();
        let (below, undecided) = (of(Mark::Below), of(Mark::Undecided));
        let centre = (BELOW.0 + BELOW.1) / 2.0;
        let step = (44.0 / below.max(1) as f64).min(13.0);
        if below <= 8 {
            for number in 0..below {
                let x = centre + step * (number as f64 - (below as f64 - 1.0) / 2.0);
                canvas.arrow(
                    at(x, middle),
                    (step / 3.2).min(3.6),
                    Points::Left,
                    false,
                    Pen::solid(1.0, INK),
                )?;
            }
        } else {
            canvas.text(
                &below.to_string(),
                at(centre, middle + 3.0),
                Align::Middle,
                VALUE,
            )?;
        }
        let mut placed: Vec<(f64, Mark)> = marks
            .iter()
            .filter_map(|mark| Some((scale.x(mark.x()?), *mark)))
            .collect();
        placed.sort_by(|a, b| a.0.total_cmp(&b.0));
        // A row is as high as three lanes; more packages than that in one place lie on one another.
        let lanes = lanes(&placed).unwrap_or_else(|| vec![0.0; placed.len()]);
        for ((x, mark), lane) in placed.iter().zip(lanes) {
            draw_mark(
                canvas,
                *mark,
                *x,
                middle + lane.clamp(-self.height / 2.0 + 4.0, self.height / 2.0 - 4.0),
            )?;
        }
        if undecided > 0 {
            let said = say::chart_products_undecided(undecided as u64);
            let words = terms.words.say(&said);
            self.note(canvas, &words, &placed, scale, middle)?;
        }
        Ok(())
    }

    /// A note on the scale, before the limit; at the foot of the row where a mark is in the way. It never stands in the
    /// zone over the limit, where it would read as a result there.
    fn note(
        &self,
        canvas: &mut Canvas<'_>,
        words: &str,
        placed: &[(f64, Mark)],
        scale: &LogScale,
        middle: f64,
    ) -> Result<()> {
        let width = text_width(words, NOTE);
        let start = scale.limit() - width - 6.0;
        let is_free = start > scale.left() - 8.0
            && placed
                .iter()
                .all(|(x, _)| *x < start - 6.0 || *x > scale.limit() + 2.0);
        let place = if is_free {
            at(start, middle + 3.0)
        } else {
            at(scale.left(), middle + self.height / 2.0 - 3.0)
        };
        canvas.fill(
            at(place.x - 2.0, place.y - 7.5),
            at(place.x + width + 2.0, place.y + 2.5),
            PAPER,
        )?;
        canvas.text(words, place, Align::Start, NOTE)
    }

    fn verdict(&self, canvas: &mut Canvas<'_>, terms: &Terms, middle: f64) -> Result<()> {
        let (from, to) = (at(VERDICT.0, middle - 7.5), at(VERDICT.1, middle + 7.5));
        let (inner_from, inner_to) = (at(from.x + 0.5, from.y + 0.5), at(to.x - 0.5, to.y - 0.5));
        let ink = match self.product.verdict.verdict {
            Verdict::OverLimit => {
                canvas.fill(from, to, INK)?;
                PAPER
            }
            Verdict::WithinLimit(_) => {
                canvas.frame(inner_from, inner_to, Pen::solid(0.9, INK))?;
                INK
            }
            Verdict::NoVerdict => {
                canvas.frame(inner_from, inner_to, Pen::dashed(0.9, INK, 2.4, 1.8))?;
                INK
            }
        };
        let words = line(self.product, terms).verdict;
        let centre = at((from.x + to.x) / 2.0, middle + 3.0);
        canvas.text(&words, centre, Align::Middle, Type { ink, ..VALUE })
    }
}

fn one(rows: &[Row<'_>], scale: &LogScale, terms: &Terms, number: usize) -> Result<Chart> {
    let bottom = HEAD + rows.iter().map(|row| row.height).sum::<f64>();
    let height = bottom + FOOT;
    let svg = draw(WIDTH, height, |canvas| {
        scale.ground(canvas, bottom)?;
        let tops = rows.iter().scan(HEAD, |next, row| {
            let top = *next;
            *next += row.height;
            Some(top)
        });
        let tops: Vec<f64> = tops.collect();
        for top in tops.iter().skip(1) {
            canvas.line(&[at(0.0, *top), at(WIDTH, *top)], Pen::solid(0.5, GRID))?;
        }
        heads(canvas, scale, terms, bottom)?;
        for (row, top) in rows.iter().zip(&tops) {
            row.draw(canvas, scale, terms, *top)?;
        }
        feet(canvas, scale, terms, bottom + 1.0)
    })?;
    let name = if number == 1 {
        "new-products".to_owned()
    } else {
        format!("new-products-{number}")
    };
    Ok(Chart::new(name, svg, alt(rows, terms), height))
}

fn heads(canvas: &mut Canvas<'_>, scale: &LogScale, terms: &Terms, bottom: f64) -> Result<()> {
    let half = scale.flagged_limit(canvas, terms, bottom)?;
    let below = terms.below_head();
    let centre = (BELOW.0 + BELOW.1) / 2.0;
    if scale.limit() - half > centre + text_width(&below, NOTE) / 2.0 + 4.0 {
        canvas.text(&below, at(centre, 12.0), Align::Middle, NOTE)?;
    }
    canvas.text(
        &terms.words.say(&say::chart_products_verdict()),
        at((VERDICT.0 + VERDICT.1) / 2.0, 12.0),
        Align::Middle,
        NOTE,
    )
}

fn feet(canvas: &mut Canvas<'_>, scale: &LogScale, terms: &Terms, top: f64) -> Result<()> {
    let (foot, unit) = (say::chart_products_foot(), say::chart_scale(terms.unit));
    let words = [foot, unit].map(|said| terms.words.say(&said));
    scale.foot(canvas, &words, BELOW, terms, top)
}

fn alt(rows: &[Row<'_>], terms: &Terms) -> String {
    let count = rows.len() as u64;
    let plot = say::chart_products(count, terms.unit, &terms.the_line, &terms.limit);
    let mut sentences = vec![terms.words.say(&plot)];
    sentences.extend(rows.iter().map(|row| told(row.product, terms)));
    sentences.join(" ")
}

fn told(product: &JudgedProduct, terms: &Terms) -> String {
    let (line, rule) = (line(product, terms), product.verdict.rule);
    let results: Vec<&str> = line.results.iter().map(|cell| cell.text.as_str()).collect();
    let name = name(product, &terms.words);
    let named = match product.verdict.product.brand.as_deref() {
        Some(brand) => terms.words.say(&say::chart_brand_and_product(brand, name)),
        None => name,
    };
    terms.words.say(&say::chart_products_row(
        named,
        results.join(", "),
        line.state,
        side(rule.limit),
        terms.words.limit(&rule),
    ))
}
