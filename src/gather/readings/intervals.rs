//! A cell and what is in force for it -> an interval in ppm gluten; and the wells of an extraction together.

use crate::gather::books::Content;
use crate::gather::numbers::Marks;
use crate::gather::readings::limits::Limits;
use crate::gather::readings::signs::{Sign, Written};
use crate::gather::readings::values::{self, Fault, Said, Value};
use crate::gather::tables::units::{self, Quantity, Scale, Unit};
use crate::gather::text;
use crate::model::extraction::{Interval, Outcome};
use crate::model::place::Place;
use crate::model::ppm::Ppm;
use crate::model::problem::{Code, Problems};
use crate::model::said::Said as Message;
use crate::words::say;
use std::cmp::Ordering;
use std::sync::Arc;

/// A cell, understood.
#[derive(Clone, Debug, PartialEq)]
pub struct Reading {
    /// What it leaves possible; none where there is no result.
    pub interval: Option<Interval>,
    /// The same without the rule that a number below the LLOQ is taken for "below": what a lab's mean is made of.
    pub raw: Option<Interval>,
    /// Whether it was doubled.
    pub from_gliadin: bool,
    /// The text to show for it, where it is not the cell's.
    pub reported: Option<String>,
    /// The uncertainty that stands with it, as written.
    pub uncertainty: Option<String>,
    /// The limit of detection that stands with it.
    pub lod: Option<Ppm>,
    /// Whether its unit is stated nowhere.
    pub assumed_unit: bool,
}

impl Reading {
    /// A cell that says that there is no result.
    pub fn not_reported() -> Reading {
        Reading {
            interval: None,
            raw: None,
            from_gliadin: false,
            reported: None,
            uncertainty: None,
            lod: None,
            assumed_unit: false,
        }
    }
}

/// What is in force for a cell.
pub struct InForce {
    /// The unit in the heading.
    pub heading: Option<Unit>,
    /// Whether the heading has a unit that cannot be converted.
    pub foreign: bool,
    /// Gluten or gliadin, by heading, analyte or title.
    pub quantity: Option<Quantity>,
    /// The unit that stands by the cell.
    pub unit_cell: Option<UnitCell>,
    /// The unit in the title lines.
    pub facts: Option<Unit>,
    /// A unit in the title lines that cannot be converted.
    pub facts_foreign: Option<Arc<str>>,
    /// The sign that stands in a column of its own.
    pub sign: Option<Written>,
    /// The limits of the assay.
    pub limits: Limits,
    /// Whether "not detected" is held against the LOD.
    pub lod_decides: bool,
}

/// A unit that stands by a cell, as written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum UnitCell {
    /// In a column of units.
    Headed(String),
    /// Under no heading, or right below that of the results.
    Bare(String),
}

impl UnitCell {
    /// As written.
    pub fn written(&self) -> &str {
        match self {
            UnitCell::Headed(written) | UnitCell::Bare(written) => written,
        }
    }
}

/// Where and how a cell's problems are told.
pub struct Report<'a> {
    /// The cell.
    pub place: Place,
    /// The cell of its unit.
    pub unit_place: Option<Place>,
    /// Where problems go.
    pub problems: &'a mut Problems,
}

impl Report<'_> {
    /// Tells of a unit that cannot be converted, or that contradicts another one.
    fn bad_unit<T>(&mut self, unit: &str, value: &Value) -> Result<T, ()> {
        let place = self
            .unit_place
            .clone()
            .unwrap_or_else(|| self.place.clone());
        self.problems.add(
            Code::BadUnit,
            place,
            say::found_bad_unit_cell(text::short(unit), text::short(&value.reported)),
            say::do_ask_for_ppm("one"),
        );
        Err(())
    }

    /// Tells of a cell that cannot be used.
    fn refuse(&mut self, fault: &Fault, shown: &str) -> Option<Reading> {
        let (code, message, hint) = refusal(fault, shown);
        self.problems.add(code, self.place.clone(), message, hint);
        None
    }
}

/// Reads a cell; none where a problem says why it cannot be read.
pub fn read(
    content: &Content,
    marks: Marks,
    in_force: &InForce,
    report: &mut Report<'_>,
) -> Option<Reading> {
    let value = match values::read(content, marks) {
        Ok(value) => value,
        Err(fault) => return report.refuse(&fault, &content.shown()),
    };
    let value = signed(value, in_force, report)?;
    if value.said == Said::NotReported {
        return Some(Reading::not_reported());
    }
    if let Some(shown) = &value.hidden_by {
        report.problems.add(
            Code::Hidden,
            report.place.clone(),
            say::found_figure_hidden(text::short(shown), text::short(&value.reported)),
            say::do_ask_whether_meant(),
        );
    }
    if value.footnote {
        report.problems.add(
            Code::FootnoteMark,
            report.place.clone(),
            say::found_footnote(text::short(&value.reported)),
            say::do_look_up_footnote(),
        );
    }
    let bare = matches!(
        value.said,
        Said::Below(None) | Said::Above(None) | Said::NotDetected(None)
    );
    let (unit, assumed_unit) = match unit(&value, in_force, report) {
        Ok(found) => found,
        // Without a figure there is nothing to convert.
        Err(()) if bare => (
            Unit {
                ppm: Scale::One,
                quantity: None,
            },
            false,
        ),
        Err(()) => return None,
    };
    let quantity = unit.quantity.or(in_force.quantity);
    let ppm = |figure: f64| gluten(unit.ppm.to_ppm(figure), quantity);
    let raw = match value.said {
        Said::Number(figure) => Interval::number(ppm(figure.value)),
        Said::Below(n) => Interval::below(n.map_or(in_force.limits.lloq, ppm)),
        Said::NotDetected(n) if in_force.lod_decides => {
            Interval::below(n.map_or(in_force.limits.lod, ppm))
        }
        Said::NotDetected(_) => Interval::below(in_force.limits.lloq),
        Said::Above(n) => Interval::above(n.map_or(in_force.limits.uloq, ppm)),
        Said::NotReported => return Some(Reading::not_reported()),
    };
    let highest = raw.upper.unwrap_or(raw.lower);
    // An infinity is equal to all on paper, hence the plain comparison.
    if highest.0 > Ppm::WHOLE.0 {
        return report.refuse(&Fault::MoreThanAll, &value.reported);
    }
    if let Some(number) = raw.as_number()
        && number.0 < 0.0
    {
        if Ppm(-number.0).compare(in_force.limits.lloq) == Ordering::Greater {
            return report.refuse(&Fault::Negative, &value.reported);
        }
        report.problems.add(
            Code::BelowZero,
            report.place.clone(),
            say::found_below_zero(text::short(&value.reported)),
            say::do_nothing_below_zero(),
        );
    }
    let interval = match raw.as_number() {
        Some(number) if number.compare(in_force.limits.lloq) == Ordering::Less => {
            Interval::below(in_force.limits.lloq)
        }
        _ => raw,
    };
    Some(Reading {
        interval: Some(interval),
        raw: Some(raw),
        from_gliadin: quantity == Some(Quantity::Gliadin) && !bare,
        reported: Some(value.reported),
        uncertainty: value.uncertainty,
        lod: match value.said {
            Said::NotDetected(Some(n)) => Some(ppm(n)),
            _ => None,
        },
        assumed_unit: assumed_unit && !bare,
    })
}

/// A value with the sign that stands in a column of its own; none, with a problem, where the two contradict one another.
fn signed(value: Value, in_force: &InForce, report: &mut Report<'_>) -> Option<Value> {
    let Some(written) = &in_force.sign else {
        return Some(value);
    };
    let said = match value.uncertainty {
        Some(_) if written.sign != Sign::Equal => None,
        _ => written.sign.before(value.said),
    };
    let Some(said) = said else {
        let message = say::found_sign_contradicts(&written.text, text::short(&value.reported));
        let to_do = say::do_ask_for_sign_before();
        let place = report.place.clone();
        report.problems.add(Code::BadValue, place, message, to_do);
        return None;
    };
    let reported = match said == value.said {
        true => value.reported,
        false => format!("{}{}", written.text, value.reported),
    };
    Some(Value {
        said,
        reported,
        ..value
    })
}

/// A figure in ppm of what was measured, as ppm gluten: twice the gliadin, by the convention of Codex and the assays.
pub fn gluten(figure: f64, quantity: Option<Quantity>) -> Ppm {
    let factor = if quantity == Some(Quantity::Gliadin) {
        2.0
    } else {
        1.0
    };
    Ppm(values::fifteen_digits(figure * factor))
}

/// The unit in force: the cell's own, the row's, the heading's, the title's; ppm where none is stated.
fn unit(value: &Value, in_force: &InForce, report: &mut Report<'_>) -> Result<(Unit, bool), ()> {
    let of_row = match &in_force.unit_cell {
        None => None,
        Some(cell) => match units::read(cell.written()) {
            Some(unit) => Some(unit),
            None if value.unit.is_some() => None,
            None => return report.bad_unit(cell.written(), value),
        },
    };
    if let (Some(UnitCell::Bare(written)), Some(unit)) = (&in_force.unit_cell, of_row) {
        // Where it goes with the results, it cannot be another one than theirs.
        let theirs = value.unit.or(in_force.heading);
        if in_force.foreign || theirs.is_some_and(|theirs| theirs.ppm != unit.ppm) {
            return report.bad_unit(written, value);
        }
    }
    let stated = [value.unit, of_row, in_force.heading];
    let Some(unit) = stated
        .into_iter()
        .flatten()
        .next()
        .or(in_force.facts.filter(|_| !in_force.foreign))
    else {
        if in_force.foreign {
            return Err(());
        }
        if let Some(foreign) = &in_force.facts_foreign {
            return report.bad_unit(foreign, value);
        }
        return Ok((
            Unit {
                ppm: Scale::One,
                quantity: None,
            },
            true,
        ));
    };
    // A factor of a thousand is not settled by which of two units stands nearer.
    let of_file = in_force.facts.filter(|_| !in_force.foreign);
    if let Some(other) = stated
        .into_iter()
        .chain([of_file])
        .flatten()
        .find(|other| other.ppm != unit.ppm)
    {
        let written = text::short(&value.reported);
        let (place, to_do) = (report.place.clone(), say::do_ask_which_unit());
        let (read, other) = (unit.ppm.word(), other.ppm.word());
        // What stands in the cell with its figure is said of it alone.
        if value.unit.is_some() {
            let found = say::found_two_units(written, read, other);
            report.problems.add(Code::Suspicious, place, found, to_do);
        } else {
            let found = say::found_units_contradict(written, read, other);
            report.problems.add(Code::BadUnit, place, found, to_do);
            return Err(());
        }
    }
    let quantity = stated.into_iter().flatten().find_map(|unit| unit.quantity);
    Ok((
        Unit {
            ppm: unit.ppm,
            quantity: quantity.or(unit.quantity),
        },
        false,
    ))
}

/// What is told of a cell that cannot be used: code, what was found, what to do.
fn refusal(fault: &Fault, shown: &str) -> (Code, Message, Message) {
    let shown = text::short(shown);
    let word = match fault {
        Fault::Unit(unit) => {
            return (
                Code::BadUnit,
                say::found_bad_unit(shown, unit),
                say::do_ask_for_ppm("one"),
            );
        }
        Fault::NoResult => "no_result",
        Fault::UnclearComma => "comma",
        Fault::Negative => "negative",
        Fault::MoreThanAll => "too_much",
        Fault::Scientific => "scientific",
        Fault::Date => "date",
        Fault::CellError => "cell_error",
        Fault::Uncalculated => "uncalculated",
        Fault::Sign => "sign",
    };
    (
        Code::BadValue,
        say::found_bad_value(word, shown),
        say::do_bad_value(word),
    )
}

/// The cells of one extraction together: the mean of their bounds. One that cannot be read makes the whole unreadable.
pub fn together<'a>(cells: impl Iterator<Item = Option<&'a Reading>>) -> Outcome {
    let mut intervals = Vec::new();
    for cell in cells {
        match cell {
            None => return Outcome::Unreadable,
            Some(reading) => intervals.extend(reading.interval),
        }
    }
    match intervals.as_slice() {
        [] => Outcome::NotReported,
        [one] => Outcome::Reading(*one),
        many => Outcome::Reading(mean(many)),
    }
}

/// The mean of intervals, bound by bound; open where one of the bounds is.
pub fn mean(intervals: &[Interval]) -> Interval {
    let n = intervals.len() as f64;
    let average = |sum: f64| Ppm(values::fifteen_digits(sum / n));
    let uppers: Option<Vec<f64>> = intervals
        .iter()
        .map(|interval| interval.upper.map(|upper| upper.0))
        .collect();
    Interval {
        lower: average(intervals.iter().map(|interval| interval.lower.0).sum()),
        lower_open: intervals.iter().any(|interval| interval.lower_open),
        upper_open: intervals.iter().any(|interval| interval.upper_open),
        upper: uppers.map(|uppers| average(uppers.iter().sum())),
    }
}

/// What became of a cell, for a person who wants to follow the reading.
pub fn in_words(number: u32, reading: Option<&Reading>, reported: &str, well: bool) -> String {
    let what = if well {
        format!("a well of extraction {number}")
    } else {
        format!("extraction {number}")
    };
    let reported = text::short(reported);
    match reading {
        None => format!("{what}: “{reported}” cannot be read"),
        Some(reading) => match reading.interval {
            None if reported.is_empty() => format!("{what}: blank, not reported"),
            None => format!("{what}: “{reported}”, not reported"),
            Some(interval) => {
                let twice = if reading.from_gliadin {
                    ", twice the gliadin"
                } else {
                    ""
                };
                format!("{what}: {}{twice}", interval_in_words(&interval))
            }
        },
    }
}

fn interval_in_words(interval: &Interval) -> String {
    if let Some(number) = interval.as_number() {
        format!("{} ppm", number.0)
    } else if let Some(n) = interval.as_above() {
        format!("above {} ppm", n.0)
    } else if let Some(n) = interval.as_below() {
        format!("below {} ppm", n.0)
    } else {
        format!(
            "{} to {} ppm",
            interval.lower.0,
            interval.upper.map_or(0.0, |upper| upper.0)
        )
    }
}
