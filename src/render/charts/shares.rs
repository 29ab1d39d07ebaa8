//! Shares of products over the limit, group by group, each with its 95 % interval.

use crate::model::statistics::{Group, GroupedBy, Share};
use crate::render::charts::Chart;
use crate::render::charts::scale::{NOTE, PLAIN, parts, wrap};
use crate::render::charts::style::{
    Align, Canvas, GRID, INK, PAPER, Pen, RULE, Type, WIDTH, at, draw,
};
use crate::render::numbers::{NBSP, percent};
use crate::render::terms::Terms;
use crate::words::{Catalogue, say, side};
use anyhow::Result;

const NAME_WIDTH: f64 = 112.0;
const LEFT: f64 = 124.0;
const RIGHT: f64 = 358.0;
const COUNT: f64 = 394.0;
const HEAD: f64 = 22.0;
const PITCH: f64 = 22.0;
const LINE: f64 = 10.2;
const FOOT: f64 = 20.0;
const STRONG: Type = Type::strong(8.6, INK);

/// Height of the rows in one chart: a page of them.
const ROWS_HEIGHT: f64 = 530.0;

/// The groups in as many charts as they need, in the order given, and all products under a rule at their end.
pub fn shares(
    by: GroupedBy,
    groups: &[Group],
    all: Option<&Share>,
    terms: &Terms,
) -> Result<Vec<Chart>> {
    let rows: Vec<Row> = groups.iter().map(Row::new).collect();
    let parts = parts(&rows, (ROWS_HEIGHT, ROWS_HEIGHT), |row| row.height);
    let last = parts.len();
    let numbered = parts.into_iter().zip(1..);
    numbered
        .map(|(part, number)| {
            let stem = match by {
                GroupedBy::Category => "shares-food-group",
                GroupedBy::Certification => "shares-certification",
                GroupedBy::Oats => "shares-oats",
            };
            let name = if number == 1 {
                stem.to_owned()
            } else {
                format!("{stem}-{number}")
            };
            one(name, by, part, all.filter(|_| number == last), terms)
        })
        .collect()
}

fn one(
    name: String,
    by: GroupedBy,
    rows: &[Row<'_>],
    all: Option<&Share>,
    terms: &Terms,
) -> Result<Chart> {
    let all_height = if all.is_some() { PITCH + 8.0 } else { 0.0 };
    let height = HEAD + rows.iter().map(|row| row.height).sum::<f64>() + all_height + FOOT;
    let shares = rows.iter().filter_map(|row| row.group.share.as_ref());
    let axis = Axis::holding(shares.chain(all));
    let svg = draw(WIDTH, height, |canvas| {
        heads(canvas, by, terms)?;
        axis.grid(canvas, HEAD - 6.0, height - FOOT)?;
        let mut top = HEAD;
        for row in rows {
            row.draw(canvas, &axis, terms, top)?;
            top += row.height;
        }
        if let Some(share) = all {
            canvas.line(
                &[at(0.0, top + 3.0), at(WIDTH, top + 3.0)],
                Pen::solid(0.8, RULE),
            )?;
            let middle = top + 8.0 + PITCH / 2.0;
            let name = terms.words.say(&say::chart_shares_all());
            canvas.text(&name, at(0.0, middle + 3.0), Align::Start, STRONG)?;
            interval(canvas, &axis, share, (middle, Emphasis::All), &terms.words)?;
        }
        axis.labels(canvas, height - FOOT + 11.0)
    })?;
    let alt = alt(by, rows, all, terms);
    Ok(Chart::new(name, svg, alt, height))
}

struct Row<'a> {
    group: &'a Group,
    lines: Vec<String>,
    height: f64,
}

impl<'a> Row<'a> {
    fn new(group: &'a Group) -> Row<'a> {
        let lines = wrap(&group.name, NAME_WIDTH, PLAIN);
        let height = PITCH.max(LINE * lines.len() as f64 + 6.0);
        Row {
            group,
            lines,
            height,
        }
    }

    fn draw(&self, canvas: &mut Canvas<'_>, axis: &Axis, terms: &Terms, top: f64) -> Result<()> {
        let middle = top + self.height / 2.0;
        let first = middle - LINE * (self.lines.len() as f64 - 1.0) / 2.0 + 3.0;
        for (number, line) in self.lines.iter().enumerate() {
            canvas.text(
                line,
                at(0.0, first + LINE * number as f64),
                Align::Start,
                PLAIN,
            )?;
        }
        match &self.group.share {
            Some(share) => {
                let row = (middle, Emphasis::Group);
                interval(canvas, axis, share, row, &terms.words)
            }
            None => {
                let none = terms.words.say(&say::chart_shares_none());
                let place = at(LEFT + 6.0, middle + 3.0);
                canvas.text(&none, place, Align::Start, NOTE)?;
                canvas.text("–", at(COUNT, middle + 3.0), Align::Middle, PLAIN)?;
                canvas.text("–", at(WIDTH, middle + 3.0), Align::End, PLAIN)
            }
        }
    }
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum Emphasis {
    Group,
    All,
}

/// By which a message chooses what the groups are.
pub fn by_word(by: GroupedBy) -> &'static str {
    match by {
        GroupedBy::Category => "category",
        GroupedBy::Certification => "certification",
        GroupedBy::Oats => "oats",
    }
}

fn heads(canvas: &mut Canvas<'_>, by: GroupedBy, terms: &Terms) -> Result<()> {
    [
        (say::chart_shares_by(by_word(by)), 0.0, Align::Start),
        (say::chart_shares_axis(side(terms.rule)), LEFT, Align::Start),
        (say::chart_shares_products(), COUNT, Align::Middle),
        (say::chart_shares_interval(), WIDTH, Align::End),
    ]
    .into_iter()
    .try_for_each(|(said, x, align)| canvas.text(&terms.words.say(&said), at(x, 8.0), align, NOTE))
}

fn interval(
    canvas: &mut Canvas<'_>,
    axis: &Axis,
    share: &Share,
    (y, emphasis): (f64, Emphasis),
    words: &Catalogue,
) -> Result<()> {
    let (radius, line, look) = match emphasis {
        Emphasis::Group => (3.1, 1.2, PLAIN),
        Emphasis::All => (3.6, 1.8, STRONG),
    };
    let (low, high) = (axis.x(share.exact.lower), axis.x(share.exact.upper));
    canvas.line(&[at(low, y), at(high, y)], Pen::solid(line, INK))?;
    for end in [low, high] {
        canvas.line(&[at(end, y - 2.5), at(end, y + 2.5)], Pen::solid(line, INK))?;
    }
    let fill = if share.k == 0 { PAPER } else { INK };
    canvas.circle(
        at(axis.x(share.fraction()), y),
        radius,
        Some(fill),
        Pen::solid(1.4, INK),
    )?;
    canvas.text(
        &counted(share, words),
        at(COUNT, y + 3.0),
        Align::Middle,
        look,
    )?;
    canvas.text(
        &in_words(share, words),
        at(WIDTH, y + 3.0),
        Align::End,
        look,
    )
}

/// "3 of 24".
fn counted(share: &Share, words: &Catalogue) -> String {
    words.say(&say::chart_share_count(
        share.k.to_string(),
        share.n.to_string(),
    ))
}

/// "11 % (5 to 19)".
fn in_words(share: &Share, words: &Catalogue) -> String {
    words.say(&say::chart_share_interval(
        percent(share.fraction()),
        percent(share.exact.lower),
        percent(share.exact.upper),
    ))
}

struct Axis {
    end: f64,
    step: f64,
}

impl Axis {
    fn holding<'a>(shares: impl Iterator<Item = &'a Share>) -> Axis {
        let highest = shares.map(|share| share.exact.upper).fold(0.1, f64::max);
        let step = if highest > 0.6 {
            0.2
        } else if highest > 0.25 {
            0.1
        } else {
            0.05
        };
        Axis {
            end: ((highest / step - 1e-9).ceil() * step).min(1.0),
            step,
        }
    }

    fn x(&self, share: f64) -> f64 {
        LEFT + (RIGHT - LEFT) * (share / self.end).min(1.0)
    }

    fn steps(&self) -> impl Iterator<Item = f64> {
        let (end, step) = (self.end, self.step);
        (0..=20)
            .map(move |n| f64::from(n) * step)
            .filter(move |at| *at <= end + 1e-9)
    }

    fn grid(&self, canvas: &mut Canvas<'_>, top: f64, bottom: f64) -> Result<()> {
        for step in self.steps() {
            let pen = if step == 0.0 {
                Pen::solid(0.9, INK)
            } else {
                Pen::solid(0.5, GRID)
            };
            canvas.line(&[at(self.x(step), top), at(self.x(step), bottom)], pen)?;
        }
        Ok(())
    }

    fn labels(&self, canvas: &mut Canvas<'_>, y: f64) -> Result<()> {
        let last = self.steps().last().unwrap_or(0.0);
        for step in self.steps() {
            let sign = if step == 0.0 || step == last {
                format!("{NBSP}%")
            } else {
                String::new()
            };
            canvas.text(
                &format!("{:.0}{sign}", step * 100.0),
                at(self.x(step), y),
                Align::Middle,
                NOTE,
            )?;
        }
        Ok(())
    }
}

fn alt(by: GroupedBy, rows: &[Row<'_>], all: Option<&Share>, terms: &Terms) -> String {
    let words = &terms.words;
    let told = |name: &str, share: &Share| {
        say::chart_shares_row(name, counted(share, words), in_words(share, words))
    };
    let groups = rows.iter().map(|row| match &row.group.share {
        Some(share) => told(&row.group.name, share),
        None => say::chart_shares_row_none(&row.group.name),
    });
    let last = all.map(|share| told(&words.say(&say::chart_shares_all()), share));
    let sentences: Vec<String> = std::iter::once(say::chart_shares(by_word(by), side(terms.rule)))
        .chain(groups)
        .chain(last)
        .map(|said| words.say(&said))
        .collect();
    sentences.join(" ")
}
