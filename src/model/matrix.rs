//! What a food holds that bears on how it is tested, by the words of its register row.

use crate::model::registers::Product;
use std::collections::HashMap;
use std::sync::LazyLock;
use unicode_normalization::UnicodeNormalization;
use unicode_normalization::char::is_combining_mark;

/// What matrix, category and ingredients name, each in the words found, once; empty where they name none.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Matrix {
    /// Cocoa, coffee, tea, buckwheat, chestnut and the like: their tannins bind gluten.
    pub tannin: Vec<String>,
    /// Soy and other legumes.
    pub legume: Vec<String>,
    /// Oats.
    pub oats: Vec<String>,
    /// Fermented or hydrolysed foods and ingredients, in which gluten may be in pieces.
    pub in_pieces: Vec<String>,
}

/// Foods whose tannins bind gluten, so that milk powder goes into the extraction (J AOAC 95:1118, 2012; coffee, tea, carob and wine are
/// common practice). "*" stands for every word that begins so.
static TANNIN: LazyLock<Phrases> = LazyLock::new(|| {
    Phrases::of(
        "chocolate; cocoa; cacao; coffee; tea; buckwheat; chestnut; carob; sorghum; wine; tannin; \
    schokolade*; kakao*; kaffee*; tee; schwarztee; gruntee; buchweizen*; kastanie*; esskastanie*; marone; maronen; \
    johannisbrot*; wein; rotwein; tannine; \
    chocolat; cafe; the vert; the noir; sarrasin; ble noir; chataigne; marron; caroube; sorgho; vin; tanin; \
    te verde; te negro; trigo sarraceno; alforfon; castana; algarroba; sorgo; vino; tanino; \
    cioccolato; caffe; te nero; grano saraceno; castagna; castagne; carruba; carrube; tannini",
    )
});

/// Foods that are spices: as a kind of food only, since a pinch of them is in nearly every list.
static SPICE: LazyLock<Phrases> =
    LazyLock::new(|| Phrases::of("spice; gewurz*; epice; especia; spezia; spezie"));

/// Legumes, which older assays met badly.
static LEGUME: LazyLock<Phrases> = LazyLock::new(|| {
    Phrases::of(
        "soy; soya; soybean; soyabean; chickpea; garbanzo; lentil; pea; bean; lupin; faba; fava; legume; tofu; tempeh; \
    soja*; kichererbse*; linse; linsen*; erbse*; bohne*; lupine*; hulsenfrucht*; \
    pois; pois chiche; lentille; haricot; feve; \
    lenteja; guisante; judia; frijol; frijoles; altramuz; \
    soia; ceci; lenticchia; lenticchie; pisello; piselli; fagiolo; fagioli; lupini",
    )
});

/// Oats.
static OATS: LazyLock<Phrases> =
    LazyLock::new(|| Phrases::of("oat; oatmeal; oatcake; hafer*; avoine; avena"));

/// Foods in which gluten may be in pieces (J AOAC 98:1346, 2015).
static IN_PIECES: LazyLock<Phrases> = LazyLock::new(|| {
    Phrases::of(
        "soy sauce; soya sauce; shoyu; tamari; teriyaki; hoisin; miso; koji; gochujang; doenjang; fermented; \
    fermentation; sourdough; beer; ale; lager; stout; malt; malted; hydrolyzed; hydrolysed; hydrolysate; hydrolyzate; \
    yeast extract; brewer yeast; brewers yeast; \
    sojasauce*; sojasosse*; fermentiert*; sauerteig*; bier; malz*; gerstenmalz*; hydrolysiert*; hydrolysat*; hefeextrakt*; \
    bierhefe*; \
    sauce soja; sauce de soja; fermente; fermentee; levain; biere; malte; maltee; hydrolyse; hydrolysee; hydrolysat; \
    extrait de levure; levure de biere; \
    salsa de soja; salsa de soya; fermentado; fermentada; masa madre; cerveza; malta; malteado; malteada; hidrolizado; \
    hidrolizada; hidrolizado; extracto de levadura; levadura de cerveza; \
    salsa di soia; fermentato; fermentata; lievito madre; pasta madre; birra; malto; maltato; idrolizzato; idrolizzata; \
    idrolizzate; estratto di lievito; lievito di birra",
    )
});

/// Words that look as if they named one of these: "cocoa beans" are no legume, ginger beer is not brewed of barley.
static NONE_OF_THESE: LazyLock<Phrases> = LazyLock::new(|| {
    Phrases::of(
        "cocoa bean; cacao bean; coffee bean; vanilla bean; tonka bean; locust bean; jelly bean; \
    kakaobohne*; kaffeebohne*; root beer; ginger beer; ginger ale; rice malt; malted rice; reismalz*; malzzucker; \
    tea tree; haricot de cacao; butternut",
    )
});

/// Words that deny what follows them.
const DENIALS: &[&str] = &[
    "no", "without", "non", "ohne", "keine", "kein", "sans", "sin", "senza",
];

/// Words after which what went before is denied.
const DENIED: &[&str] = &["free", "frei"];

impl Matrix {
    /// Reads the words of a product's row, one by one: a pear is no pea.
    pub fn of(product: &Product) -> Matrix {
        let kind = [&product.matrix, &product.category];
        let kind: Vec<String> = kind
            .into_iter()
            .flatten()
            .flat_map(|text| words(text))
            .collect();
        let mut all = kind.clone();
        all.push(String::new());
        all.extend(product.ingredients.iter().flat_map(|text| words(text)));
        let mut tannin = found(&all, &TANNIN);
        tannin.extend(found(&kind, &SPICE));
        Matrix {
            tannin,
            legume: found(&all, &LEGUME),
            oats: found(&all, &OATS),
            in_pieces: found(&all, &IN_PIECES),
        }
    }
}

/// The phrases of a list that stand in the words and are neither denied nor part of a look-alike.
fn found(words: &[String], list: &Phrases) -> Vec<String> {
    let mut found: Vec<String> = Vec::new();
    let mut at = 0;
    while at < words.len() {
        let rest = &words[at..];
        if let Some(length) = NONE_OF_THESE.longest(rest) {
            at += length;
            continue;
        }
        let Some(length) = list.longest(rest) else {
            at += 1;
            continue;
        };
        let denied = at > 0 && DENIALS.contains(&words[at - 1].as_str())
            || rest
                .get(length)
                .is_some_and(|next| DENIED.contains(&next.as_str()));
        let phrase = rest[..length].join(" ");
        if !denied && !found.contains(&phrase) {
            found.push(phrase);
        }
        at += length;
    }
    found
}

/// Phrases by the first letter of their first word.
struct Phrases(HashMap<char, Vec<Vec<&'static str>>>);

impl Phrases {
    fn of(list: &'static str) -> Phrases {
        let mut phrases: HashMap<char, Vec<Vec<&str>>> = HashMap::new();
        for phrase in list.split(';') {
            if let Some(first) = phrase.trim().chars().next() {
                let words = phrase.split_whitespace().collect();
                phrases.entry(first).or_default().push(words);
            }
        }
        Phrases(phrases)
    }

    /// How many words the longest phrase takes that begins here.
    fn longest(&self, words: &[String]) -> Option<usize> {
        let first = words.first()?.chars().next()?;
        self.0
            .get(&first)?
            .iter()
            .filter(|phrase| phrase.len() <= words.len())
            .filter(|phrase| {
                phrase
                    .iter()
                    .zip(words)
                    .all(|(part, word)| fits(part, word))
            })
            .map(Vec::len)
            .max()
    }
}

fn fits(part: &str, word: &str) -> bool {
    match part.strip_suffix('*') {
        Some(start) => word.starts_with(start),
        None => word == part || word.strip_suffix('s') == Some(part),
    }
}

/// The words of a text in lower case, without accents; "brewer's" is one.
fn words(text: &str) -> Vec<String> {
    let folded: String = text
        .nfkd()
        .filter(|c| !is_combining_mark(*c) && !matches!(c, '\'' | '’'))
        .flat_map(char::to_lowercase)
        .collect();
    folded
        .replace('ß', "ss")
        .split(|c: char| !c.is_alphanumeric())
        .filter(|word| !word.is_empty())
        .map(str::to_owned)
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn of(ingredients: &str) -> Matrix {
        Matrix::of(&Product {
            ingredients: Some(ingredients.into()),
            ..Product::default()
        })
    }

    #[test]
    fn words_are_compared_whole() {
        for neither in [
            "pear, peach, steak",
            "cocoa beans",
            "goat milk",
            "coating",
            "peanut",
            "kale, maltodextrin",
        ] {
            let matrix = of(neither);
            assert_eq!(matrix.legume, [""; 0], "{neither}");
            assert_eq!(matrix.oats, [""; 0], "{neither}");
            assert_eq!(matrix.in_pieces, [""; 0], "{neither}");
        }
        assert_eq!(of("soy-free, without oats").legume, [""; 0]);
        assert_eq!(of("without oats").oats, [""; 0]);
    }

    #[test]
    fn five_languages_and_all_three_columns() {
        for tannin in [
            "Cocoa",
            "Kakaopulver",
            "farine de sarrasin",
            "trigo sarraceno",
            "farina di castagne",
        ] {
            assert_eq!(of(tannin).tannin.len(), 1, "{tannin}");
            let category = Product {
                category: Some(tannin.into()),
                ..Product::default()
            };
            assert_eq!(Matrix::of(&category).tannin.len(), 1, "{tannin}");
        }
        for legume in [
            "Peas",
            "Kichererbsenmehl",
            "pois chiches",
            "lentejas",
            "farina di ceci",
        ] {
            assert_eq!(of(legume).legume.len(), 1, "{legume}");
        }
        for in_pieces in [
            "Soy sauce",
            "Sojasoße",
            "sauce soja",
            "salsa de soja",
            "salsa di soia",
            "Brewer’s yeast",
        ] {
            assert_eq!(of(in_pieces).in_pieces.len(), 1, "{in_pieces}");
        }
    }
}
