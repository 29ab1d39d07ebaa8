//! Headings over one, two or three rows: which rows are headings, and what those above say of the columns below.
//!
//! The lowest row has a heading of its own for most columns. What stands above it may say more of a column (its unit, what
//! is measured, which of several), and never something else: a code stays a code, a number of the extraction a number.
//! A line of particulars ("LOQ | 5 ppm") that happens to stand right above is no heading, and a row of results right below
//! is none either.

use crate::gather::books::{Content, Row, Sheet};
use crate::gather::codes::Codes;
use crate::gather::numbers::Marks;
use crate::gather::readings::values;
use crate::gather::tables::blocks;
use crate::gather::tables::finding::{self, Column, Known};
use crate::gather::tables::headings::{self, Heading, Role};
use crate::gather::tables::roles;
use crate::gather::tables::units;
use crate::gather::tables::vocabulary;
use crate::gather::text;
use std::collections::BTreeMap;

/// A bare `1` or `2` under a heading such as "Extraction".
pub fn numbers_a_column(written: &str) -> bool {
    (1..=2).contains(&written.len()) && written.bytes().all(|b| b.is_ascii_digit())
}

/// The headings that start in this row, and over how many rows they stand: the fewest that make a table, and one more
/// where that one completes them.
pub fn headings_at(
    sheet: &Sheet,
    index: usize,
    (codes, taken): (&Codes, &[u32]),
    known: &mut Known<'_>,
) -> Option<(usize, Vec<Column>)> {
    const TALLEST: usize = 3;
    let mut best: Option<(usize, usize, Vec<Column>)> = None;
    for height in 1..=TALLEST.min(sheet.rows.len() - index) {
        let rows = &sheet.rows[index..index + height];
        if height > 1 {
            let together = rows[height - 1].number - rows[height - 2].number == 1;
            if !together || !may_be_headings(&rows[height - 1], codes, known) {
                break;
            }
        }
        let stack = Stack::of(rows, codes, known);
        if !stack.is_lowest_of_headings(rows, known)
            || stack.has_particulars(known)
            || has_data(rows, codes, known)
        {
            break;
        }
        let below = index + height;
        let mut columns = stack.columns(known);
        let data: Vec<u32> = rows.iter().flat_map(|row| data_in(row, codes)).collect();
        let coded = &mut known.coded;
        known.looks += blocks::name_samples(&mut columns, below, coded, (taken, &data));
        let Some(score) = finding::score(&columns) else {
            continue;
        };
        if best.as_ref().is_some_and(|(_, known, _)| score <= *known) {
            continue;
        }
        let adds = height == 1 || {
            let mut alone = Stack::of(&rows[height - 1..], codes, known).columns(known);
            let coded = &mut known.coded;
            known.looks += blocks::name_samples(&mut alone, below, coded, (taken, &data));
            says_more(&columns, &alone)
        };
        if adds {
            best = Some((height, score, columns));
        }
    }
    best.map(|(height, _, columns)| (height, columns))
}

/// Whether headings say more of their columns than the lowest row does alone. A title above headings that are complete
/// without it is none of them.
fn says_more(columns: &[Column], alone: &[Column]) -> bool {
    let Some(least) = finding::score(alone) else {
        return true;
    };
    let same: Vec<Column> = columns
        .iter()
        .filter(|column| finding::at(alone, column.column).is_some())
        .cloned()
        .collect();
    finding::score(&same).is_some_and(|score| score > least)
}

/// Whether a row can be a further row of headings by its cells alone: one at least is a heading, a unit or a number of a
/// column, and none is a code or a result. Where numbers stand, all else is known: "Z-9, 1, 20" is a row of results.
fn may_be_headings(row: &Row, codes: &Codes, known: &mut Known<'_>) -> bool {
    let (mut says, mut numbers, mut all_known) = (false, false, true);
    for cell in &row.cells {
        let shown = cell.content.shown();
        if numbers_a_column(&shown) && codes.find(&shown).is_none() {
            numbers = true;
            continue;
        }
        let is_known =
            known.read(&shown).is_some() || vocabulary::ordinal(&text::words(&shown)).is_some();
        says |= is_known;
        all_known &= is_known;
        if !(is_known || is_wording(&cell.content)) || codes.find(&shown).is_some() {
            return false;
        }
    }
    if numbers { all_known } else { says }
}

/// Whether a cell holds words, and no result.
fn is_wording(content: &Content) -> bool {
    let shown = content.shown();
    matches!(content, Content::Text(_))
        && headings::may_be_heading(&shown)
        && values::read_text(&shown, Marks::Unsettled).is_err()
}

/// Whether a text is a figure with its unit and nothing else, as beside a label: `5 ppm`, `< 5 mg/kg`, `5 - 80 ppm`.
fn is_value(written: &str) -> bool {
    if numbers_a_column(written) {
        return false;
    }
    let rest = units::part(written).rest;
    let is_bare =
        rest.contains(|c: char| c.is_ascii_digit()) && !rest.contains(char::is_alphabetic);
    is_bare || values::read_text(written, Marks::Unsettled).is_ok()
}

/// The columns of those runs of cells that hold a code or a result: only headings can stand over codes without saying so. The
/// column before a run is one of it, since the heading over it may be missing.
fn data_in(row: &Row, codes: &Codes) -> Vec<u32> {
    let is_data = |content: &Content| {
        let shown = content.shown();
        !matches!(content, Content::Text(_))
            || codes.find(&shown).is_some()
            || (!numbers_a_column(&shown) && values::read_text(&shown, Marks::Unsettled).is_ok())
    };
    let runs = row
        .cells
        .chunk_by(|a, b| b.column == a.column + 1)
        .filter(|run| run.iter().any(|cell| is_data(&cell.content)));
    runs.flat_map(|run| {
        let before = run[0].column.saturating_sub(1);
        run.iter().map(|cell| cell.column).chain([before])
    })
    .collect()
}

/// Looks that a cell costs which is read as a heading.
const READING: usize = 20;

/// Rows of headings, taken apart by column.
struct Stack {
    /// How many rows.
    height: usize,
    /// What stands in each column or reaches over it, from the top.
    wordings: BTreeMap<u32, Vec<Wording>>,
    /// How many cells each row has that are no data.
    filled: Vec<usize>,
}

/// A cell of a row of headings, as far as one column is concerned.
struct Wording {
    written: String,
    /// Its row, from the top.
    depth: usize,
    /// Whether it stands in the column itself, or in one beside and reaches over it.
    owned: bool,
}

impl Stack {
    /// Takes rows apart. A code or a figure is no heading: it belongs to a table beside.
    fn of(rows: &[Row], codes: &Codes, known: &mut Known<'_>) -> Stack {
        let width = rows
            .iter()
            .filter_map(|row| row.cells.last())
            .map(|cell| cell.column)
            .max()
            .unwrap_or(0);
        let mut stack = Stack {
            height: rows.len(),
            wordings: BTreeMap::new(),
            filled: vec![0; rows.len()],
        };
        for (depth, row) in rows.iter().enumerate() {
            let is_last = depth + 1 == rows.len();
            known.looks += READING * row.cells.len();
            for (at, cell) in row.cells.iter().enumerate() {
                let shown = cell.content.shown();
                let is_data = codes.find(&shown).is_some()
                    || (depth == 0 && !headings::may_be_heading(&shown));
                if is_data {
                    continue;
                }
                stack.filled[depth] += 1;
                let next = row.cells.get(at + 1).map_or(width + 1, |next| next.column);
                let end = match (is_last, known.spans_to(row.number, cell.column)) {
                    (_, Some(right)) => right.max(cell.column),
                    (true, None) => cell.column,
                    // A heading above others reaches to the next one beside it.
                    (false, None) => next - 1,
                };
                for column in cell.column..=end.min(width.max(cell.column)) {
                    stack.wordings.entry(column).or_default().push(Wording {
                        written: shown.clone().into_owned(),
                        depth,
                        owned: column == cell.column,
                    });
                }
            }
        }
        stack
    }

    /// What each column is.
    fn columns(&self, known: &mut Known<'_>) -> Vec<Column> {
        let columns = self.wordings.iter();
        columns
            .map(|(column, wordings)| {
                let written: Vec<&str> = wordings.iter().map(|one| one.written.as_str()).collect();
                Column {
                    column: *column,
                    meaning: self.meaning(wordings, &written, known),
                    heading: written.join(" "),
                    spread: !wordings.iter().any(|one| one.owned),
                }
            })
            .collect()
    }

    /// What a column is: what its own heading says, and more only of the same.
    fn meaning(
        &self,
        wordings: &[Wording],
        written: &[&str],
        known: &mut Known<'_>,
    ) -> Option<Heading> {
        let lowest = wordings
            .last()
            .filter(|one| one.owned && one.depth + 1 == self.height);
        let own = lowest
            .filter(|one| wordings.len() > 1 && !is_unit(&one.written))
            .and_then(|one| known.read(&one.written));
        if let Some(own) = own {
            let fuller = (0..written.len() - 1).find_map(|from| {
                let together = written[from..].join(" ");
                let read = known.read(&together)?;
                says_the_same(&read, &own, &together).then_some(read)
            });
            return fuller.or(Some(own));
        }
        let whole = known.read(&written.join(" "));
        // Where the two together say nothing, one of them may: the lower one first.
        whole.or_else(|| written.iter().rev().find_map(|part| known.read(part)))
    }

    /// Whether the lowest row is one of headings, seen under those above it. What stands under the heading of the samples
    /// names them too: else it is a sample, registered or not. Numbers tell apart the columns that one heading covers, or
    /// several of the same words, and count on from one to the next.
    fn is_lowest_of_headings(&self, rows: &[Row], known: &mut Known<'_>) -> bool {
        let lowest = self.height - 1;
        if lowest == 0 {
            return true;
        }
        let mut numbers: Vec<(u32, String, u32)> = Vec::new();
        let mut under_sample: Vec<String> = Vec::new();
        for cell in &rows[lowest].cells {
            let Some(wordings) = self.wordings.get(&cell.column) else {
                continue;
            };
            let above: Vec<&str> = wordings
                .iter()
                .filter(|one| one.depth < lowest)
                .map(|one| one.written.as_str())
                .collect();
            let above = above.join(" ");
            let shown = cell.content.shown();
            if numbers_a_column(&shown) {
                numbers.push((cell.column, above, shown.parse().unwrap_or(0)));
                continue;
            }
            let names = |known: &mut Known<'_>, written: &str| {
                known
                    .read(written)
                    .is_some_and(|heading| heading.role.names_sample())
            };
            // Only what stands in the column itself names its samples.
            let is_sample =
                wordings.iter().any(|one| one.owned && one.depth < lowest) && names(known, &above);
            if is_sample && !is_unit(&shown) && !names(known, &format!("{above} {shown}")) {
                under_sample.push(shown.into_owned());
            }
        }
        // A code may look like a heading: `E1`. Where numbers stand beside it, it is one.
        let is_sample = under_sample.iter().any(|written| {
            known
                .read(written)
                .is_none_or(|heading| match heading.role {
                    Role::Sample | Role::LabSample => false,
                    Role::Result(part) => part.is_numbered() || !numbers.is_empty(),
                    _ => !numbers.is_empty(),
                })
        });
        if is_sample {
            return false;
        }
        let groups = numbers.chunk_by(|a, b| a.0 + 1 == b.0 && a.1 == b.1);
        groups
            .into_iter()
            .all(|group| group.len() > 1 && group.windows(2).all(|two| two[0].2 + 1 == two[1].2))
    }

    /// Whether any row but the lowest is a line of particulars, labels and their values, and no headings: a figure stands
    /// in it with its unit, or what it says is of something else than the heading right below.
    fn has_particulars(&self, known: &mut Known<'_>) -> bool {
        for wordings in self.wordings.values() {
            for (at, upper) in wordings.iter().enumerate() {
                let lower = wordings[at + 1..].iter().find(|lower| lower.owned);
                let Some(lower) = lower.filter(|_| upper.owned) else {
                    continue;
                };
                if is_value(&upper.written) && !is_value(&lower.written) {
                    return true;
                }
                let is_title = self.filled[upper.depth] == 1;
                if !goes_with(upper, lower, is_title, known) {
                    return true;
                }
            }
        }
        false
    }
}

/// Whether any row but the lowest holds data over headings that are known: a code, a figure, or bare numbers that do not
/// count the columns from the left.
fn has_data(rows: &[Row], codes: &Codes, known: &mut Known<'_>) -> bool {
    let Some((lowest, above)) = rows.split_last() else {
        return false;
    };
    for row in above {
        let mut numbers: Vec<u32> = Vec::new();
        for cell in &row.cells {
            let shown = cell.content.shown();
            let is_code = codes.find(&shown).is_some();
            if !is_code && headings::may_be_heading(&shown) {
                continue;
            }
            let own = lowest.at(cell.column).map(|content| content.shown());
            if !own.is_some_and(|own| known.read(&own).is_some() && !numbers_a_column(&own)) {
                continue;
            }
            if is_code || !numbers_a_column(&shown) {
                return true;
            }
            numbers.extend(shown.parse::<u32>());
        }
        let counts = numbers.windows(2).all(|two| two[0] + 1 == two[1]);
        if numbers.len() == 1 || !counts {
            return true;
        }
    }
    false
}

/// Whether a heading may stand over another: both together are known for what the lower one is; or it heads a group, of
/// which the columns are of several kinds: one about the sample, or one about the result. A title alone in its row may
/// stand over the samples.
fn goes_with(upper: &Wording, lower: &Wording, is_title: bool, known: &mut Known<'_>) -> bool {
    if is_unit(&lower.written) {
        return true;
    }
    let (Some(over), Some(own)) = (known.read(&upper.written), known.read(&lower.written)) else {
        return true;
    };
    let together = format!("{} {}", upper.written, lower.written);
    if let Some(whole) = known.read(&together)
        && says_the_same(&whole, &own, &together)
    {
        return true;
    }
    if over.role.names_sample() {
        return !own.role.is_reported();
    }
    over.role.is_reported() && (is_title || !own.role.names_sample())
}

/// Whether a heading over several rows is of the kind that its lowest row is, or is a known wording as a whole, as "Number
/// of" above "extractions".
fn says_the_same(whole: &Heading, own: &Heading, written: &str) -> bool {
    kind(whole.role) == kind(own.role) || roles::named(&text::words(written)).is_some()
}

/// What may not become another by a heading above it.
fn kind(role: Role) -> u8 {
    match role {
        Role::Sample | Role::LabSample => 0,
        Role::Extraction | Role::Replicate | Role::Well => 1,
        Role::Result(_) | Role::Final | Role::Mean => 2,
        _ => 3,
    }
}

/// Whether a text is a unit and nothing else: it says nothing of its own about the column.
fn is_unit(written: &str) -> bool {
    units::read(written).is_some() || units::looks_like_unit(written)
}
