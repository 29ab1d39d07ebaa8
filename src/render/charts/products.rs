//! Products, one row each: every package on the scale, and the verdict at the end.

use crate::config::Paper;
use crate::model::decided::JudgedProduct;
use crate::model::verdict::Verdict;
use crate::render::charts::Chart;
use crate::render::charts::frame::{Concentrations, Frame, Place, in_parts, lines};
use crate::render::charts::marks::{Ink, Mark, Shape, draw, draw_mark, lanes_of, placed};
use crate::render::charts::scale::{LogScale, NOTE, ROW, Span, VALUE, wrap};
use crate::render::charts::style::{Align, Canvas, GRID, INK, PAPER, Pen, Type, at, text_width};
use crate::render::listing::{line, name};
use crate::render::terms::Terms;
use crate::words::{say, side};
use anyhow::Result;

/// Height of the rows in one chart: the room that a first page with a head and a few sentences has, and any later one, each
/// with a key below.
fn rows_height(paper: Paper) -> (f64, f64) {
    match paper {
        Paper::A4 => (498.0, 526.0),
        Paper::UsLetter => (452.0, 496.0),
    }
}

const NAME_WIDTH: f64 = 144.0;
const CELL: Span = Span {
    from: 154.0,
    to: 206.0,
};
const SCALE: Span = Span {
    from: 222.0,
    to: 392.0,
};
const VERDICT: Span = Span {
    from: 416.0,
    to: 493.2,
};
const LINE: f64 = 10.2;

/// The products in as many charts as they need, all on one scale; `stem` begins the charts' names.
pub fn products(
    stem: &str,
    products: &[&JudgedProduct],
    paper: Paper,
    terms: &Terms,
) -> Result<Vec<Chart>> {
    let packages = products
        .iter()
        .flat_map(|product| &product.verdict.packages);
    let values = packages.filter_map(|package| Mark::of(package).x());
    let plot = Concentrations {
        scale: LogScale::holding(values, terms.rule.ppm, terms.measurable(), SCALE),
        cell: CELL,
        terms,
    };
    let rows: Vec<Row> = products
        .iter()
        .map(|product| Row::new(product, terms))
        .collect();
    let most = rows_height(paper);
    in_parts(
        stem,
        &rows,
        most,
        |row| row.height,
        |name, part, _| one(name, part, &plot),
    )
}

struct Row<'a> {
    product: &'a JudgedProduct,
    names: Vec<(String, Type)>,
    height: f64,
}

impl<'a> Row<'a> {
    fn new(product: &'a JudgedProduct, terms: &Terms) -> Row<'a> {
        let brand = product.verdict.product.brand.as_deref();
        let lines = |text: &str, look| {
            let lines = wrap(text, NAME_WIDTH, look).into_iter();
            lines.map(move |line| (line, look))
        };
        let names: Vec<(String, Type)> = lines(brand.unwrap_or_default(), ROW)
            .chain(lines(&name(product, &terms.words), NOTE))
            .collect();
        Row {
            product,
            height: (LINE * names.len() as f64 + 6.6).max(27.0),
            names,
        }
    }

    fn draw(&self, canvas: &mut Canvas<'_>, plot: &Concentrations<'_>, place: Place) -> Result<()> {
        lines(canvas, &self.names, LINE, place.middle)?;
        self.marks(canvas, plot, place.middle)?;
        self.verdict(canvas, plot.terms, place.middle)
    }

    fn marks(&self, canvas: &mut Canvas<'_>, plot: &Concentrations<'_>, middle: f64) -> Result<()> {
        let packages = &self.product.verdict.packages;
        let of = |wanted: Mark| {
            packages
                .iter()
                .filter(|one| Mark::of(one) == wanted)
                .count()
        };
        let (below, undecided) = (of(Mark::Below), of(Mark::Undecided));
        let step = (44.0 / below.max(1) as f64).min(13.0);
        if below <= 8 {
            for number in 0..below {
                let x = CELL.middle() + step * (number as f64 - (below as f64 - 1.0) / 2.0);
                let radius = (step / 3.2).min(3.6);
                draw(canvas, Shape::Left, Ink::Outline, at(x, middle), radius)?;
            }
        } else {
            let centre = at(CELL.middle(), middle + 3.0);
            canvas.text(&below.to_string(), centre, Align::Middle, VALUE)?;
        }
        let packages: Vec<_> = packages.iter().collect();
        let placed = placed(&packages, &plot.scale);
        // A row is as high as three lanes; more packages than that in one place lie on one another.
        let lanes = lanes_of(&placed).unwrap_or_else(|| vec![0.0; placed.len()]);
        let most = self.height / 2.0 - 4.0;
        for ((x, mark), lane) in placed.iter().zip(lanes) {
            draw_mark(canvas, *mark, *x, middle + lane.clamp(-most, most))?;
        }
        if undecided > 0 {
            let said = say::chart_products_undecided(undecided as u64);
            let words = plot.terms.words.say(&said);
            self.note(canvas, &words, &placed, &plot.scale, middle)?;
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
        let is_free = start > scale.place().from - 8.0
            && placed
                .iter()
                .all(|(x, _)| *x < start - 6.0 || *x > scale.limit() + 2.0);
        let place = if is_free {
            at(start, middle + 3.0)
        } else {
            at(scale.place().from, middle + self.height / 2.0 - 3.0)
        };
        canvas.fill(
            at(place.x - 2.0, place.y - 7.5),
            at(place.x + width + 2.0, place.y + 2.5),
            PAPER,
        )?;
        canvas.text(words, place, Align::Start, NOTE)
    }

    fn verdict(&self, canvas: &mut Canvas<'_>, terms: &Terms, middle: f64) -> Result<()> {
        let (from, to) = (at(VERDICT.from, middle - 7.5), at(VERDICT.to, middle + 7.5));
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

fn one(name: String, rows: &[Row<'_>], plot: &Concentrations<'_>) -> Result<Chart> {
    let frame = Frame {
        head: Concentrations::HEAD,
        foot: Concentrations::FOOT,
        between: Some(Pen::solid(0.5, GRID)),
        height: &|number| rows[number].height,
    };
    let words = &plot.terms.words;
    let said = [
        say::chart_products_foot(),
        say::chart_scale(plot.terms.unit),
    ];
    let foot = said.map(|said| words.say(&said));
    frame.draw(
        (name, alt(rows, plot.terms)),
        rows.len(),
        |canvas, bottom| {
            let flag = plot.ground(canvas, bottom)?;
            plot.head_of_cell(canvas, flag, CELL.middle())?;
            let verdict = words.say(&say::chart_products_verdict());
            canvas.text(&verdict, at(VERDICT.middle(), 12.0), Align::Middle, NOTE)
        },
        |canvas, number, place| rows[number].draw(canvas, plot, place),
        |canvas, bottom| plot.foot(canvas, &foot, bottom + 1.0),
    )
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
