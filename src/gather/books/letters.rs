//! Letters that no cell should hold: left out of every text, and the place remembered.

use crate::gather::books::{Book, CellPlace, Content};
use crate::model::letters::commands;

/// White space, and what looks like it.
pub fn is_space(c: char) -> bool {
    c.is_whitespace() || c == '\u{200b}' || c == '\u{2060}' || c == '\u{180e}'
}

/// Leaves them out of all cells of a book. A cell that holds nothing else is left out with them.
pub fn clean(book: &mut Book) {
    let cleaned = &mut book.cleaned;
    for sheet in &mut book.sheets {
        if let Some(name) = sheet.name.as_deref().and_then(without) {
            sheet.name = Some(name.into());
        }
        for row in &mut sheet.rows {
            let mut emptied = false;
            for cell in &mut row.cells {
                let (Content::Text(shown)
                | Content::Number { shown, .. }
                | Content::Date { shown, .. }
                | Content::Fault(shown)) = &mut cell.content
                else {
                    continue;
                };
                if let Some(rest) = without(shown) {
                    cleaned.push(CellPlace {
                        sheet: sheet.name.clone(),
                        row: row.number,
                        column: cell.column,
                    });
                    *shown = rest.trim_matches(is_space).into();
                    emptied |= shown.is_empty();
                }
            }
            if emptied {
                row.cells.retain(
                    |cell| !matches!(&cell.content, Content::Text(text) if text.is_empty()),
                );
            }
        }
        sheet.rows.retain(|row| !row.cells.is_empty());
    }
}

/// A text without them; none where it has none.
fn without(text: &str) -> Option<String> {
    // Most texts are plain: a byte tells.
    let suspect = text
        .bytes()
        .any(|byte| byte >= 0x7f || (byte < 0x20 && !matches!(byte, b'\t' | b'\n' | b'\r')));
    (suspect && text.contains(commands)).then(|| text.chars().filter(|c| !commands(*c)).collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn commands_are_left_out_and_letters_are_not() {
        assert_eq!(
            without("12\u{b}.4\u{202e}\u{85}\u{ffff}\u{0}"),
            Some("12.4".into())
        );
        for kept in ["Größe, µg/g", "a\tb\nc\r\nd", "\u{200e}mark", "\u{feff}"] {
            assert_eq!(without(kept), None, "{kept:?}");
        }
    }
}
