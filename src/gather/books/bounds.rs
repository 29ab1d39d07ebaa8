//! What one file may take, in one place. All bounds count work or bytes and never the time, so that the same file is read
//! or refused alike on any machine. Together they keep the reading of any file below 10 seconds and 512 MB.

/// Bytes of a file. Lab files are a thousand times smaller.
pub const LARGEST_FILE: u64 = 64 * 1024 * 1024;

/// Bytes that one part of a workbook may inflate to.
pub const LARGEST_PART: u64 = 128 * 1024 * 1024;

/// Bytes that the parts of one workbook may inflate to together, a part that is used twice counted twice.
pub const LARGEST_WORKBOOK: u64 = 256 * 1024 * 1024;

/// Parts of one archive. A large workbook has hundreds.
pub const MOST_PARTS: usize = 10_000;

/// Sheets of one file.
pub const MOST_SHEETS: usize = 1_000;

/// Filled cells of one file.
pub const MOST_CELLS: usize = 1 << 20;

/// Filled rows of one file: each may give a result or a problem, which keep some 2.3 kB each.
pub const MOST_ROWS: usize = 200_000;

/// Filled cells of one row: what finds tables looks at each of them beside each other.
pub const WIDEST_ROW: usize = 1 << 10;

/// Rows that one filled row may stand for. Spreadsheet programs write equal rows once, with their number.
pub const MOST_REPEATS: u32 = 1_000;

/// Bytes of text that the cells of one file may hold together: a text that many cells share counts for each of them.
pub const MOST_TEXT: usize = 96 * 1024 * 1024;

/// Bytes of text in one cell: spreadsheet programs have 32,767 letters.
pub const LONGEST_TEXT: usize = 1 << 20;

/// Letters of a number format: spreadsheet programs have 255. The cells of a longer one are read without it.
pub const LONGEST_FORMAT: usize = 255;

/// Styles of cells, and number formats, of one workbook: spreadsheet programs have 65,490.
pub const MOST_STYLES: usize = 1 << 17;

/// Hidden rows and joined cells of one sheet that are kept in mind; beyond that they are not told.
pub const MOST_KEPT: usize = 200_000;

/// Bytes and cells of one record of delimited text: more than any spreadsheet has columns.
pub const LONGEST_RECORD: usize = 1 << 20;
/// Cells of one record of delimited text, blank ones too.
pub const WIDEST_RECORD: usize = 1 << 14;

/// Tables of one file: reports that begin each page with the headings anew have some hundred.
pub const MOST_TABLES: usize = 1_000;

/// Cells that may be looked at to find the headings of one sheet: those of each row that can be headings, and the codes below
/// it. A row of the longest of files may be looked at like that.
pub const MOST_LOOKS: usize = 40_000_000;

/// Problems of one kind that are told of one file one by one; the others are counted.
pub const MOST_TOLD: usize = 1_000;

/// Results that one file may give: each keeps its source and its settings.
pub const MOST_RESULTS: usize = 204_000;

/// A bound that a file can pass.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Bound {
    /// [`LARGEST_FILE`].
    File,
    /// [`LARGEST_PART`] or [`LARGEST_WORKBOOK`].
    Unpacked,
    /// [`MOST_PARTS`].
    Parts,
    /// [`MOST_SHEETS`].
    Sheets,
    /// [`MOST_CELLS`].
    Cells,
    /// [`MOST_ROWS`].
    Rows,
    /// [`WIDEST_ROW`].
    Row,
    /// [`MOST_REPEATS`].
    Repeats,
    /// [`MOST_TEXT`].
    Text,
    /// [`LONGEST_TEXT`].
    CellText,
    /// [`MOST_STYLES`].
    Styles,
    /// [`MOST_TABLES`], or [`MOST_LOOKS`] to find them.
    Tables,
    /// [`MOST_RESULTS`].
    Results,
}

impl Bound {
    /// What is read at most: the word of the message that tells of it, the figure, and that of one part of a workbook.
    pub fn figures(self) -> (&'static str, u64, u64) {
        let mega = |bytes: u64| bytes / (1024 * 1024);
        let (word, most) = match self {
            Bound::File => ("file", mega(LARGEST_FILE)),
            Bound::Unpacked => ("unpacked", mega(LARGEST_WORKBOOK)),
            Bound::Parts => ("parts", MOST_PARTS as u64),
            Bound::Sheets => ("sheets", MOST_SHEETS as u64),
            Bound::Cells => ("cells", MOST_CELLS as u64),
            Bound::Rows => ("rows", MOST_ROWS as u64),
            Bound::Row => ("row", WIDEST_ROW as u64),
            Bound::Repeats => ("repeats", u64::from(MOST_REPEATS)),
            Bound::Text => ("text", mega(MOST_TEXT as u64)),
            Bound::CellText => ("cell_text", mega(LONGEST_TEXT as u64)),
            Bound::Styles => ("styles", MOST_STYLES as u64),
            Bound::Tables => ("tables", MOST_TABLES as u64),
            Bound::Results => ("results", MOST_RESULTS as u64),
        };
        (word, most, mega(LARGEST_PART))
    }
}
