//! A row of the gluten ruler: a package, or a chapter of its story.

use crate::model::package::{PackageResult, ResultKind};
use crate::model::pair::PairState;
use crate::render::charts::frame;
use crate::render::charts::ruler::marks::Marks;
use crate::render::charts::ruler::{Placed, Ruler, WORDS};
use crate::render::charts::scale::{NOTE, ROW, wrapped};
use crate::render::charts::style::{Align, Canvas, INK, Type, WIDTH, at, text_width};
use crate::render::numbers;
use crate::render::words::chapters::{Chapter, Event};
use crate::render::words::packages::{Agreement, figures};
use crate::words::{Catalogue, say};

/// From one line of words to the next.
const LINE: f64 = 9.8;

/// Between two pieces on one line.
const SPACE: f64 = 5.0;

/// A package, or a chapter of its story.
pub(super) struct Row<'a> {
    package: &'a PackageResult,
    chapter: Chapter<'a>,
    said: Agreement,
    marks: Marks,
    /// The code, and the lot below it; in a package's first row.
    names: Vec<(String, Type)>,
    /// The lines at the end, each in pieces beside one another.
    ends: Vec<Vec<(String, Type)>>,
    pub(super) height: f64,
}

impl<'a> Row<'a> {
    /// `is_first`: of its package; `is_small`: one of many rows; `is_dense`: of many packages.
    pub(super) fn new(
        ruler: Ruler<'a>,
        scale: &Placed,
        package: &'a PackageResult,
        chapter: Chapter<'a>,
        (is_first, is_small, is_dense): (bool, bool, bool),
    ) -> Row<'a> {
        let said = chapter.at_the_end(package, ruler.words);
        let marks = Marks::of(&chapter, package, ruler, scale);
        let names = if is_first {
            names(package, is_dense, ruler.words)
        } else {
            Vec::new()
        };
        let is_plain = chapter.has_result && package.pair.state == PairState::Agree;
        let head = if is_plain { Type::plain(8.8, INK) } else { ROW };
        let ends = ends(&said, head, is_small);
        let least = if is_small { 19.0 } else { 31.0 };
        let lines = names.len().max(ends.len()) as f64;
        let height = f64::max(least, lines * LINE + if is_small { 6.0 } else { 10.0 });
        Row {
            height: height.max(marks.height() + 4.0),
            package,
            chapter,
            said,
            marks,
            names,
            ends,
        }
    }

    pub(super) fn draw(&self, canvas: &mut Canvas<'_>, ruler: Ruler<'_>, scale: &Placed, top: f64) {
        let middle = top + self.height / 2.0;
        frame::names(canvas, &self.names, LINE, middle);
        let first = middle + 3.0 - LINE * (self.ends.len() as f64 - 1.0) / 2.0;
        for (number, pieces) in self.ends.iter().enumerate() {
            let baseline = first + LINE * number as f64;
            let mut left = WORDS;
            for (text, look) in pieces {
                canvas.text(text, at(left, baseline), Align::Start, *look);
                left += text_width(text, *look) + SPACE;
            }
        }
        self.marks.draw(canvas, ruler, scale, middle);
    }

    /// The row in words, for those who cannot see it.
    pub(super) fn in_words(&self, ruler: Ruler<'_>) -> String {
        let (words, limit) = (ruler.words, ruler.rule.limit);
        let code = &self.package.pair.package.package_code;
        let readings = self.chapter.extractions.iter();
        let readings = readings.filter_map(|paired| paired.extraction.outcome.reading());
        let said = |reading| spoken(&numbers::interval_said(reading, limit, words), words);
        let mut figures = figures(readings, &said, words);
        if self.chapter.event == Event::Together && self.package.result != ResultKind::None {
            let result = numbers::result_said(&self.package.result, limit, words);
            figures.push(spoken(&result, words));
        }
        let (head, detail) = (self.said.head.as_str(), self.said.detail.as_str());
        words.say(&match (figures.is_empty(), detail.is_empty()) {
            (true, _) => say::ruler_row_empty(code, head, detail),
            (false, true) => say::ruler_row_bare(code, words.list(&figures), head),
            (false, false) => say::ruler_row(code, words.list(&figures), head, detail),
        })
    }
}

fn names(package: &PackageResult, is_dense: bool, words: &Catalogue) -> Vec<(String, Type)> {
    let bought = &package.pair.package;
    let codes = code_lines(&bought.package_code).into_iter();
    let mut names: Vec<(String, Type)> = codes.map(|line| (line, ROW)).collect();
    let lot = bought.lot.as_deref().filter(|_| !is_dense);
    let lot = lot.map(|lot| words.say(&say::ruler_lot(lot)));
    let lot = lot.filter(|lot| text_width(lot, NOTE) <= 60.0);
    names.extend(lot.map(|lot| (lot, NOTE)));
    names
}

/// What stands at the end of a row: on one line where the row is small and there is room, else a line or more each.
fn ends(said: &Agreement, head: Type, is_small: bool) -> Vec<Vec<(String, Type)>> {
    let room = WIDTH - WORDS;
    let together = text_width(&said.head, head) + SPACE + text_width(&said.detail, NOTE);
    if is_small && together <= room {
        let pieces = [(said.head.clone(), head), (said.detail.clone(), NOTE)];
        return vec![pieces.to_vec()];
    }
    wrapped(&said.head, room, head)
        .chain(wrapped(&said.detail, room, NOTE))
        .map(|piece| vec![piece])
        .collect()
}

fn spoken(figure: &str, words: &Catalogue) -> String {
    let bound = |side, bound: &str| words.say(&say::ruler_spoken(side, bound));
    match (figure.strip_prefix('<'), figure.strip_prefix('>')) {
        (Some(below), _) => bound("below", below),
        (_, Some(above)) => bound("above", above),
        _ => figure.to_owned(),
    }
}

/// A code in pieces that fit beside the scale, broken after a dash or a dot where there is one.
fn code_lines(code: &str) -> Vec<String> {
    const ROOM: f64 = 54.0;
    let mut lines = vec![String::new()];
    let pieces = code.split_inclusive(['-', '.', '_']).flat_map(|piece| {
        if text_width(piece, ROW) <= ROOM {
            vec![piece.to_owned()]
        } else {
            piece.chars().map(String::from).collect()
        }
    });
    for piece in pieces {
        let last = lines.last_mut().expect("it starts with one line");
        if !last.is_empty() && text_width(&format!("{last}{piece}"), ROW) > ROOM {
            lines.push(piece);
        } else {
            last.push_str(&piece);
        }
    }
    lines
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
            lines.iter().all(|line| text_width(line, ROW) <= 54.0),
            "{lines:?}"
        );
    }
}
