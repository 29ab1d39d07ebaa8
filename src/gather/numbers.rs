//! Figures as written: what is a number, and what its comma is.

use crate::gather::text;

/// A figure and how far it was written out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Figure {
    /// As written; the unit is known elsewhere.
    pub value: f64,
    /// Digits behind the decimal mark: its own rounding.
    pub decimals: u32,
}

/// What is known of a file's decimal mark, from those of its figures that can be read in one way only.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Marks {
    /// No figure settles it.
    #[default]
    Unsettled,
    /// `12.4`, `1,234.5`
    Point,
    /// `12,4`, `1.234,5`
    Comma,
    /// The file has both.
    Mixed,
    /// No figure settles it, in a file whose cells a decimal comma would not part: a point may as well part thousands.
    Either,
}

impl Marks {
    /// With one more figure seen.
    pub fn and(self, other: Marks) -> Marks {
        match (self, other) {
            (Marks::Unsettled, seen) | (seen, Marks::Unsettled) => seen,
            (a, b) if a == b => a,
            _ => Marks::Mixed,
        }
    }
}

/// Why a text is no figure.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoFigure {
    /// It is not written as a number.
    NotANumber,
    /// `1,234`: the comma can be a decimal mark or part thousands.
    UnclearComma,
}

/// Reads a whole text as a figure: `12.4`, `12,4`, `1 234,5`, `1,234.5`, `1'234.5`. No sign, no exponent, nothing else.
pub fn read(written: &str, marks: Marks) -> Result<Figure, NoFigure> {
    let shape = Shape::of(written).ok_or(NoFigure::NotANumber)?;
    match (shape.with_fraction(), shape.whole()) {
        (Some(figure), None) | (None, Some(figure)) => Ok(figure),
        (Some(fraction), Some(whole)) => {
            // One mark with three digits behind it: only the rest of the file can tell.
            match (shape.last_mark(), marks) {
                (Some('.'), Marks::Point | Marks::Unsettled) | (Some(','), Marks::Comma) => {
                    Ok(fraction)
                }
                (Some('.'), Marks::Comma) | (Some(','), Marks::Point) => Ok(whole),
                (None, _) => Ok(whole),
                _ => Err(NoFigure::UnclearComma),
            }
        }
        (None, None) => Err(NoFigure::NotANumber),
    }
}

/// What a text settles about the decimal mark, where it is a figure at all.
pub fn marks(written: &str) -> Marks {
    let Some(shape) = Shape::of(written) else {
        return Marks::Unsettled;
    };
    let Some(last) = shape.last_mark() else {
        return Marks::Unsettled;
    };
    match (shape.with_fraction(), shape.whole(), last) {
        (Some(_), None, '.') | (None, Some(_), ',') => Marks::Point,
        (Some(_), None, ',') | (None, Some(_), '.') => Marks::Comma,
        _ => Marks::Unsettled,
    }
}

/// Groups of digits and the single marks between them.
struct Shape {
    groups: Vec<String>,
    marks: Vec<char>,
}

impl Shape {
    fn of(written: &str) -> Option<Shape> {
        const LONGEST: usize = 24;
        let written = text::plain(written);
        if written.is_empty() || written.len() > LONGEST {
            return None;
        }
        let mut groups = vec![String::new()];
        let mut marks = Vec::new();
        for c in written.chars() {
            match c {
                '0'..='9' => groups.last_mut().expect("starts with one").push(c),
                '.' | ',' | ' ' | '\'' => {
                    marks.push(c);
                    groups.push(String::new());
                }
                _ => return None,
            }
        }
        let inner_empty = groups.iter().skip(1).any(String::is_empty);
        // `.5` is a figure, `.` and `5.` are not.
        let leading = groups[0].is_empty() && !(marks.len() == 1 && matches!(marks[0], '.' | ','));
        (!inner_empty && !leading && groups.iter().any(|group| !group.is_empty()))
            .then_some(Shape { groups, marks })
    }

    fn last_mark(&self) -> Option<char> {
        self.marks
            .last()
            .copied()
            .filter(|mark| matches!(mark, '.' | ','))
    }

    /// As a figure whose last mark is the decimal mark.
    fn with_fraction(&self) -> Option<Figure> {
        let decimal = self.last_mark()?;
        let (fraction, whole) = self.groups.split_last()?;
        let thousands = &self.marks[..self.marks.len() - 1];
        let even = thousands.iter().all(|mark| *mark != decimal) && in_thousands(whole, thousands);
        if !even {
            return None;
        }
        figure(&whole.concat(), fraction)
    }

    /// As a whole number, its marks parting thousands.
    fn whole(&self) -> Option<Figure> {
        if !in_thousands(&self.groups, &self.marks) {
            return None;
        }
        figure(&self.groups.concat(), "")
    }
}

/// Whether groups are those of a number parted in thousands: `1`, `1 234`, `12 345 678`.
fn in_thousands(groups: &[String], marks: &[char]) -> bool {
    let Some((first, rest)) = groups.split_first() else {
        return false;
    };
    let one_kind = marks.windows(2).all(|pair| pair[0] == pair[1]);
    let parted = rest.is_empty() || ((1..=3).contains(&first.len()) && !first.starts_with('0'));
    one_kind && parted && rest.iter().all(|group| group.len() == 3)
}

fn figure(whole: &str, fraction: &str) -> Option<Figure> {
    let digits = format!(
        "{}{}.{fraction}0",
        if whole.is_empty() { "0" } else { "" },
        whole
    );
    Some(Figure {
        value: digits.parse().ok()?,
        decimals: u32::try_from(fraction.len()).ok()?,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn value(written: &str) -> Result<f64, NoFigure> {
        read(written, Marks::Unsettled).map(|figure| figure.value)
    }

    #[test]
    fn figures_are_read_as_people_write_them() {
        for (written, expected) in [
            ("12.4", 12.4),
            ("12,4", 12.4),
            ("1 234,5", 1234.5),
            ("1\u{202f}234,5", 1234.5),
            ("1,234.5", 1234.5),
            ("1.234,5", 1234.5),
            ("1'234.5", 1234.5),
            ("1,234,567", 1_234_567.0),
            ("0,123", 0.123),
            ("20", 20.0),
            ("1.234", 1.234),
            ("12,3456", 12.3456),
            (".5", 0.5),
            ("１２．４", 12.4),
            ("1234", 1234.0),
        ] {
            assert_eq!(value(written), Ok(expected), "{written}");
        }
    }

    #[test]
    fn what_other_programs_take_for_a_number_is_none() {
        for written in [
            "1e3", "inf", "nan", "1_000", "0x10", "-5", "+5", "5.", ".", "", "1..2", "1,23,4",
            "12.4.5", "1 23", "12 4",
        ] {
            assert_eq!(value(written), Err(NoFigure::NotANumber), "{written}");
        }
    }

    #[test]
    fn a_comma_before_three_digits_is_settled_by_the_file_or_not_at_all() {
        let by = |marks| read("1,234", marks).map(|figure| figure.value);
        assert_eq!(by(Marks::Unsettled), Err(NoFigure::UnclearComma));
        assert_eq!(by(Marks::Mixed), Err(NoFigure::UnclearComma));
        assert_eq!(by(Marks::Comma), Ok(1.234));
        assert_eq!(by(Marks::Point), Ok(1234.0));
        assert_eq!(
            read("1.234", Marks::Comma).map(|figure| figure.value),
            Ok(1234.0)
        );
    }

    #[test]
    fn figures_settle_what_the_comma_is() {
        assert_eq!(marks("12,4"), Marks::Comma);
        assert_eq!(marks("12.4"), Marks::Point);
        assert_eq!(marks("1,234,567"), Marks::Point);
        assert_eq!(marks("1,234"), Marks::Unsettled);
        assert_eq!(marks("12.4").and(marks("12,4")), Marks::Mixed);
    }
}
