//! Shares of products over the limit, group by group, each with its 95 % interval; of few products only how many.

use crate::model::statistics::{Group, GroupedBy, Share};
use crate::render::charts::Chart;
use crate::render::charts::frame::{Frame, Place, in_parts, names};
use crate::render::charts::scale::{NOTE, PLAIN, wrapped};
use crate::render::charts::style::{
    Align, Canvas, GRID, INK, PAPER, Pen, RULE, Type, WIDTH, at, text_width,
};
use crate::render::numbers::{NBSP, percent};
use crate::render::terms::Terms;
use crate::words::{Catalogue, say, side};
use anyhow::Result;
use std::iter::once;

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

/// Of fewer products than this a share says next to nothing: its interval spans half of all there could be.
const ENOUGH: u64 = 10;

/// The groups in as many charts as they need, in the order given, and all products under a rule at their end. All charts have
/// one scale, from none to all of the products.
pub fn shares(
    by: GroupedBy,
    groups: &[Group],
    all: Option<&Share>,
    terms: &Terms,
) -> Result<Vec<Chart>> {
    let row = |group: &Group| Row::new(&group.name, group.share, PLAIN);
    let mut rows: Vec<Row> = groups.iter().map(row).collect();
    if let Some(all) = all {
        let name = terms.words.say(&say::chart_shares_all());
        rows.push(Row::new(&name, Some(*all), STRONG));
    }
    let stem = match by {
        GroupedBy::Category => "shares-food-group",
        GroupedBy::Certification => "shares-certification",
        GroupedBy::Oats => "shares-oats",
    };
    let height = |row: &Row| row.height;
    let one = |name, rows: &[Row]| {
        let frame = Frame {
            rows,
            height: &height,
            head: HEAD,
            foot: FOOT,
            between: None,
        };
        frame.draw(
            (name, alt(by, rows, terms)),
            |canvas, bottom| {
                heads(canvas, by, terms);
                grid(canvas, bottom);
            },
            |canvas, row, place| row.draw(canvas, terms, place),
            |canvas, bottom| {
                for step in STEPS {
                    let figure = format!("{:.0}{NBSP}%", step * 100.0);
                    canvas.text(&figure, at(x(step), bottom + 11.0), Align::Middle, NOTE);
                }
            },
        )
    };
    in_parts(stem, &rows, (ROWS_HEIGHT, ROWS_HEIGHT), height, one)
}

/// Where the scale has a line.
const STEPS: [f64; 6] = [0.0, 0.2, 0.4, 0.6, 0.8, 1.0];

fn x(share: f64) -> f64 {
    LEFT + (RIGHT - LEFT) * share
}

fn grid(canvas: &mut Canvas<'_>, bottom: f64) {
    for step in STEPS {
        let pen = match step {
            0.0 => Pen::solid(0.9, INK),
            _ => Pen::solid(0.5, GRID),
        };
        canvas.line(&[at(x(step), HEAD - 6.0), at(x(step), bottom)], pen);
    }
}

struct Row {
    name: String,
    share: Option<Share>,
    look: Type,
    lines: Vec<(String, Type)>,
    height: f64,
}

impl Row {
    fn new(name: &str, share: Option<Share>, look: Type) -> Row {
        let lines: Vec<_> = wrapped(name, NAME_WIDTH, look).collect();
        Row {
            height: PITCH.max(LINE * lines.len() as f64 + 6.0),
            name: name.to_owned(),
            share,
            look,
            lines,
        }
    }

    /// All products, under a rule.
    fn is_all(&self) -> bool {
        self.look.strong
    }

    fn draw(&self, canvas: &mut Canvas<'_>, terms: &Terms, place: Place) {
        if self.is_all() {
            let rule = [at(0.0, place.top), at(WIDTH, place.top)];
            canvas.line(&rule, Pen::solid(0.8, RULE));
        }
        names(canvas, &self.lines, LINE, place.middle);
        let (y, words) = (place.middle, &terms.words);
        let none = || "–".to_owned();
        let (count, said, note) = match &self.share {
            None => (none(), none(), Some(say::chart_shares_none())),
            Some(share) if is_few(share) => {
                let note = say::chart_shares_few();
                (counted(share, words), none(), Some(note))
            }
            Some(share) => {
                interval(canvas, share, y, self.is_all());
                (counted(share, words), in_words(share, words), None)
            }
        };
        if let Some(note) = note.map(|note| words.say(&note)) {
            let (place, width) = (at(LEFT + 6.0, y + 3.0), text_width(&note, NOTE));
            canvas.fill(place.by(-2.0, -8.0), place.by(width + 2.0, 3.0), PAPER);
            canvas.text(&note, place, Align::Start, NOTE);
        }
        canvas.text(&count, at(COUNT, y + 3.0), Align::Middle, self.look);
        canvas.text(&said, at(WIDTH, y + 3.0), Align::End, self.look);
    }
}

fn is_few(share: &Share) -> bool {
    share.n < ENOUGH
}

/// By which a message chooses what the groups are.
pub fn by_word(by: GroupedBy) -> &'static str {
    match by {
        GroupedBy::Category => "category",
        GroupedBy::Certification => "certification",
        GroupedBy::Oats => "oats",
    }
}

fn heads(canvas: &mut Canvas<'_>, by: GroupedBy, terms: &Terms) {
    for (said, x, align) in [
        (say::chart_shares_by(by_word(by)), 0.0, Align::Start),
        (say::chart_shares_axis(side(terms.rule)), LEFT, Align::Start),
        (say::chart_shares_products(), COUNT, Align::Middle),
        (say::chart_shares_interval(), WIDTH, Align::End),
    ] {
        canvas.text(&terms.words.say(&said), at(x, 8.0), align, NOTE);
    }
}

fn interval(canvas: &mut Canvas<'_>, share: &Share, y: f64, is_all: bool) {
    let (radius, line) = if is_all { (3.6, 1.8) } else { (3.1, 1.2) };
    let (low, high) = (at(x(share.exact.lower), y), at(x(share.exact.upper), y));
    canvas.line(&[low, high], Pen::solid(line, INK));
    for end in [low, high] {
        let stroke = [end.by(0.0, -2.5), end.by(0.0, 2.5)];
        canvas.line(&stroke, Pen::solid(line, INK));
    }
    let fill = if share.k == 0 { PAPER } else { INK };
    let centre = at(x(share.fraction()), y);
    canvas.circle(centre, radius, Some(fill), Pen::solid(1.4, INK));
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

fn alt(by: GroupedBy, rows: &[Row], terms: &Terms) -> String {
    let words = &terms.words;
    let told = |row: &Row| match &row.share {
        None => say::chart_shares_row_none(&row.name),
        Some(share) if is_few(share) => say::chart_shares_row_few(&row.name, counted(share, words)),
        Some(share) => {
            say::chart_shares_row(&row.name, counted(share, words), in_words(share, words))
        }
    };
    let all = say::chart_shares(by_word(by), side(terms.rule));
    words.text(once(all).chain(rows.iter().map(told)))
}
