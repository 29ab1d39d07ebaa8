//! An ingredient statement cut into words and the signs between them, each with its place.

use std::ops::Range;
use unicode_normalization::UnicodeNormalization;
use unicode_normalization::char::is_combining_mark;

/// A word or a sign of a statement.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Token {
    /// What it is.
    pub kind: Kind,
    /// Where it stands, in bytes.
    pub range: Range<usize>,
}

impl Token {
    /// Whether it is this word.
    pub fn is(&self, word: &str) -> bool {
        matches!(&self.kind, Kind::Word(text, _) if text == word)
    }

    /// Whether it is a word of a list (see [`is_in`]).
    pub fn is_any(&self, list: &str) -> bool {
        matches!(&self.kind, Kind::Word(text, _) if is_in(text, list))
    }
}

/// What a token is. Hyphens, slashes, footnote marks and single line breaks are no more than spaces.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Kind {
    /// A word, in lower case without accents; the second is its singular, by which words are compared.
    Word(String, String),
    /// An opening bracket of any kind.
    Open,
    /// A closing bracket.
    Close,
    /// A comma or a bullet: the next item begins.
    Item,
    /// A colon: what went before is a heading.
    Colon,
    /// A full stop, a semicolon, or a line that begins with a capital: the next sentence begins.
    Sentence,
}

/// Cuts a statement.
pub fn tokens(statement: &str) -> Vec<Token> {
    let mut tokens: Vec<Token> = Vec::new();
    let mut word: Option<(String, Range<usize>)> = None;
    for (at, c) in statement.char_indices() {
        let end = at + c.len_utf8();
        let rest = &statement[end..];
        if is_letter(c) {
            let (text, range) = word.get_or_insert_with(|| (String::new(), at..end));
            fold(c, text);
            range.end = end;
            continue;
        }
        if is_apostrophe(c) && word.is_some() && joins(rest) {
            continue;
        }
        finish(&mut word, &mut tokens);
        if let Some(kind) = sign(c, rest) {
            tokens.push(Token {
                kind,
                range: at..end,
            });
        }
    }
    finish(&mut word, &mut tokens);
    tokens
}

/// The words of a spelling in the table of terms.
pub fn spelling(text: &str) -> Vec<Kind> {
    tokens(text).into_iter().map(|token| token.kind).collect()
}

/// A text in lower case without accents, spaces and signs.
pub fn squeezed(text: &str) -> String {
    let mut squeezed = String::new();
    for c in text.chars() {
        fold(c, &mut squeezed);
    }
    squeezed.retain(char::is_alphanumeric);
    squeezed
}

/// Whether a word is in a list, whose words are divided by spaces; "*" stands for every word that begins so.
pub fn is_in(word: &str, list: &str) -> bool {
    let mut words = list.split_whitespace();
    words.any(|listed| match listed.strip_suffix('*') {
        Some(start) => word.starts_with(start),
        None => word == listed,
    })
}

fn finish(word: &mut Option<(String, Range<usize>)>, tokens: &mut Vec<Token>) {
    if let Some((text, range)) = word.take() {
        let text = respell(text);
        let singular = singular(&text);
        tokens.push(Token {
            kind: Kind::Word(text, singular),
            range,
        });
    }
}

/// Superscripts are footnote marks, not letters: "wheat¹".
fn is_letter(c: char) -> bool {
    let footnote = matches!(c, '¹' | '²' | '³' | '⁰' | '⁴'..='⁹' | 'ª' | 'º');
    (c.is_alphanumeric() || is_combining_mark(c)) && !footnote
}

fn is_apostrophe(c: char) -> bool {
    matches!(c, '\'' | '’' | '‘' | 'ʼ')
}

/// "brewer's" is one word, "d'orge" and "dell'orzo" are two.
fn joins(rest: &str) -> bool {
    let mut rest = rest.chars();
    matches!(rest.next(), Some('s' | 't' | 'S' | 'T')) && !rest.next().is_some_and(is_letter)
}

fn sign(c: char, rest: &str) -> Option<Kind> {
    match c {
        '(' | '[' | '{' | '（' => Some(Kind::Open),
        ')' | ']' | '}' | '）' => Some(Kind::Close),
        ',' | '，' | '、' | '•' | '·' | '|' => {
            // "1,5 %" is a number.
            let digit = rest.starts_with(|next: char| next.is_ascii_digit());
            (!(c == ',' && digit)).then_some(Kind::Item)
        }
        ':' | '：' => Some(Kind::Colon),
        ';' | '!' | '?' | '。' => Some(Kind::Sentence),
        '.' => {
            let ends = rest.is_empty() || rest.starts_with(char::is_whitespace);
            ends.then_some(Kind::Sentence)
        }
        '\n' => {
            let next = rest.trim_start().chars().next();
            next.is_some_and(char::is_uppercase)
                .then_some(Kind::Sentence)
        }
        _ => None,
    }
}

/// Lower case, no accents, compatibility forms undone.
fn fold(c: char, into: &mut String) {
    if c.is_ascii() {
        into.push(c.to_ascii_lowercase());
        return;
    }
    for c in c.nfkd().filter(|c| !is_combining_mark(*c)) {
        match c {
            'ß' | 'ẞ' => into.push_str("ss"),
            'æ' | 'Æ' => into.push_str("ae"),
            'œ' | 'Œ' => into.push_str("oe"),
            'ø' | 'Ø' => into.push('o'),
            _ => into.extend(c.to_lowercase()),
        }
    }
}

/// One spelling where British and American ones differ.
fn respell(word: String) -> String {
    const SPELLINGS: &[(&str, &str)] = &[
        ("flavour", "flavor"),
        ("colour", "color"),
        ("fibre", "fiber"),
        ("hydrolys", "hydrolyz"),
        ("autolys", "autolyz"),
        ("deglutenis", "degluteniz"),
    ];
    match SPELLINGS
        .iter()
        .find(|(british, _)| word.starts_with(british))
    {
        Some((british, american)) => word.replacen(british, american, 1),
        None => word,
    }
}

/// Cuts the ending of a plural; both sides of a comparison are cut alike, so it need not be grammar.
fn singular(word: &str) -> String {
    let stem = |cut: usize, ending: &str| format!("{}{ending}", &word[..word.len() - cut]);
    match word {
        _ if word.len() <= 3 || !word.is_ascii() => word.to_owned(),
        _ if word.ends_with("ies") => stem(3, "y"),
        _ if word.ends_with("ie") => stem(2, "y"),
        _ if word.ends_with("ss") || word.ends_with("us") || word.ends_with("is") => {
            word.to_owned()
        }
        _ if word.ends_with("oes") => stem(2, ""),
        _ if word.ends_with('s') => stem(1, ""),
        _ => word.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn words(text: &str) -> Vec<String> {
        tokens(text)
            .into_iter()
            .map(|token| match token.kind {
                Kind::Word(_, singular) => singular,
                Kind::Open => "(".into(),
                Kind::Close => ")".into(),
                Kind::Item => ",".into(),
                Kind::Colon => ":".into(),
                Kind::Sentence => ".".into(),
            })
            .collect()
    }

    #[test]
    fn accents_footnotes_and_hyphens_do_not_matter() {
        assert_eq!(
            words("Wheat* Flours¹, Blé-dur"),
            ["wheat", "flour", ",", "ble", "dur"]
        );
        assert_eq!(words("Weizenstärke Grieß"), ["weizenstarke", "griess"]);
    }

    #[test]
    fn apostrophes_join_or_divide() {
        assert_eq!(words("Brewer's yeast"), ["brewer", "yeast"]);
        assert_eq!(words("malt d’orge"), ["malt", "d", "orge"]);
    }

    #[test]
    fn numbers_keep_their_commas_and_points() {
        assert_eq!(
            words("salt 1,5%. Sugar 2.5 %"),
            ["salt", "1", "5", ".", "sugar", "2", "5"]
        );
    }

    #[test]
    fn each_token_knows_its_place() {
        let text = "Malz, Blé";
        let places: Vec<&str> = tokens(text).into_iter().map(|t| &text[t.range]).collect();
        assert_eq!(places, ["Malz", ",", "Blé"]);
    }
}
