//! Letters that no font has: named by their code point, since a page cannot show them.
//!
//! Names come from shops all over the world, and from spreadsheets with stray control characters. Without this a single
//! emoji would keep a whole sheet from being made. A font with the letter, put into the programme's `fonts/`, shows it.

use serde_json::Value;
use std::borrow::Cow;
use unicode_normalization::UnicodeNormalization;
use unicode_normalization::char::is_combining_mark;

/// JSON whose texts a page can show: every other letter is written as `[U+65E5]`.
pub fn printable<'a>(json: &'a [u8], covered: &dyn Fn(char) -> bool) -> Cow<'a, [u8]> {
    let Ok(text) = std::str::from_utf8(json) else {
        return Cow::Borrowed(json);
    };
    // JSON writes control characters as escapes; `\\u00` in a path reads like one, which costs a look and no more.
    let escapes = ["\\u00", "\\b", "\\f", "\\r", "\\t"];
    let suspicious = !text.chars().all(|letter| can_stand(letter, covered))
        || escapes.iter().any(|escape| text.contains(escape));
    if !suspicious {
        return Cow::Borrowed(json);
    }
    match serde_json::from_str::<Value>(text) {
        Ok(mut value) => {
            rewrite(&mut value, covered);
            Cow::Owned(serde_json::to_vec(&value).expect("a JSON value can be written"))
        }
        Err(_) => Cow::Borrowed(json),
    }
}

/// The most letters of one text that are named: more of them nobody reads, and a page takes gigabytes for some ten thousand.
const MOST_NAMED: usize = 500;

/// In the place of what stands beyond them.
const AND_MORE: &str = "[…]";

/// Text that a page can show, likewise.
pub fn printable_text(text: &str, covered: &dyn Fn(char) -> bool) -> String {
    let mut shown = String::with_capacity(text.len());
    let mut named = 0;
    for letter in text.chars() {
        match letter {
            '\t' | '\r' | '\u{8}' | '\u{c}' => shown.push(' '),
            // It shows nothing, and PDF/A has no place for it.
            '\u{feff}' => {}
            letter if can_stand(letter, covered) => shown.push(letter),
            _ if named >= MOST_NAMED && shown.ends_with(AND_MORE) => {}
            _ if named >= MOST_NAMED => shown.push_str(AND_MORE),
            letter => {
                named += 1;
                shown.push_str(&format!("[U+{:04X}]", u32::from(letter)));
            }
        }
    }
    shown
}

/// Text of a drawing that a page can show, likewise. Its letters are set one by one, and each must be found again as text: a
/// mark goes with its letter where there is a letter for both, and is named otherwise; what joins letters is left out.
pub fn drawable_text(text: &str, covered: &dyn Fn(char) -> bool) -> String {
    if text.is_ascii() {
        return printable_text(text, covered);
    }
    let joins = |letter: &char| matches!(letter, '\u{200c}' | '\u{200d}' | '\u{2060}' | '\u{34f}');
    let composed: String = text.nfc().filter(|letter| !joins(letter)).collect();
    printable_text(&composed, &|letter| {
        covered(letter) && !is_combining_mark(letter)
    })
}

fn can_stand(letter: char, covered: &dyn Fn(char) -> bool) -> bool {
    match letter {
        // A tab is none: no font has a glyph for it.
        ' '..='~' | '\n' => true,
        // Spaces, joiners and marks of direction have no glyph of their own.
        '\u{a0}' | '\u{ad}' | '\u{2000}'..='\u{200f}' | '\u{2028}'..='\u{202f}' | '\u{2060}' => {
            true
        }
        // Some fonts have it, and PDF/A has no place for it.
        '\u{feff}' => false,
        letter => !letter.is_control() && covered(letter),
    }
}

fn rewrite(value: &mut Value, covered: &dyn Fn(char) -> bool) {
    match value {
        Value::String(text) => *text = printable_text(text, covered),
        Value::Array(items) => items.iter_mut().for_each(|item| rewrite(item, covered)),
        Value::Object(fields) => fields
            .values_mut()
            .for_each(|field| rewrite(field, covered)),
        Value::Null | Value::Bool(_) | Value::Number(_) => {}
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn latin(letter: char) -> bool {
        u32::from(letter) < 0x250
    }

    #[test]
    fn what_can_be_shown_is_left_as_it_is() {
        let json = r#"{"name":"Åsvindel, 20 °C"}"#.as_bytes();
        assert!(matches!(printable(json, &latin), Cow::Borrowed(_)));
    }

    #[test]
    fn what_cannot_be_shown_is_named() {
        let json = "{\"name\":\"日 rice\\u0007\",\"n\":1}".as_bytes();
        let shown = printable(json, &latin);
        assert_eq!(&*shown, br#"{"name":"[U+65E5] rice[U+0007]","n":1}"#);
    }

    #[test]
    fn a_tab_is_a_blank() {
        let json = br#"{"report":"A\t7"}"#;
        assert_eq!(&*printable(json, &latin), br#"{"report":"A 7"}"#);
        assert_eq!(drawable_text("A\t7", &latin), "A 7");
    }

    #[test]
    fn of_very_many_letters_the_first_are_named() {
        let text = "日".repeat(20_000) + " rice " + &"本".repeat(7);
        let shown = printable_text(&text, &latin);
        assert_eq!(shown, "[U+65E5]".repeat(MOST_NAMED) + "[…] rice […]");
    }

    #[test]
    fn a_mark_of_byte_order_is_left_out() {
        let json = "{\"name\":\"Flat\u{feff}bread\"}".as_bytes();
        assert_eq!(&*printable(json, &latin), br#"{"name":"Flatbread"}"#);
    }

    #[test]
    fn in_a_drawing_marks_are_part_of_their_letter_or_named() {
        let any = |_: char| true;
        assert_eq!(drawable_text("Jose\u{301}", &any), "José");
        assert_eq!(drawable_text("m\u{302}x", &any), "m[U+0302]x");
        assert_eq!(drawable_text("x\u{200d}y", &any), "xy");
    }
}
