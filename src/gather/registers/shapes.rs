//! The registers that there are: their columns, which of them are needed, and how far a fault in each reaches.

use crate::model::place::Place;
use crate::model::registers::{Bars, Doubt, DoubtKind};

/// What one register is made of.
#[derive(Debug)]
pub struct Shape {
    /// Its name, and its file's without the ending.
    pub name: &'static str,
    /// Columns without which it cannot be read.
    pub needed: &'static [&'static str],
    /// Columns that may be missing, and that bear on a verdict, a label finding or what is published.
    pub bearing: &'static [&'static str],
    /// All others.
    pub others: &'static [&'static str],
    /// What is not done while a bearing column is missing beside a heading that is nearly its name.
    pub heading_bars: Bars,
    /// What is not done while a file has nearly this register's name.
    pub name_bars: Bars,
}

impl Shape {
    /// Every column.
    pub fn columns(&self) -> impl Iterator<Item = &'static str> {
        [self.needed, self.bearing, self.others]
            .into_iter()
            .flatten()
            .copied()
    }

    /// The doubt that is left where something has nearly this register's name.
    pub fn misnamed(&self, place: Place) -> Doubt {
        Doubt {
            product_id: None,
            round: None,
            bars: self.name_bars,
            what: DoubtKind::Misnamed {
                meant: self.name.to_owned(),
            },
            place,
        }
    }

    /// Whether a column bears on a verdict, a label finding or what is published.
    pub fn bears(&self, column: &str) -> bool {
        self.needed.contains(&column) || self.bearing.contains(&column)
    }
}

/// What is not done, as the messages about registers say so.
pub fn bars_word(bars: Bars) -> &'static str {
    match bars {
        Bars::Verdict => "verdict",
        Bars::Issue => "issue",
    }
}

/// Every register.
pub static ALL: [&Shape; 8] = [
    &PRODUCTS,
    &PACKAGES,
    &CORRECTIONS,
    &FOLLOWUPS,
    &REPORTS,
    &TERMS,
    &BLINDS,
    &ISSUED,
];

/// One row a product.
pub static PRODUCTS: Shape = Shape {
    name: "products",
    needed: &["product_id", "name", "claim"],
    bearing: &["certifier", "ingredients", "oats", "processing"],
    others: &[
        "brand",
        "maker",
        "maker_email",
        "maker_address",
        "category",
        "matrix",
        "barcode",
        "net_content",
        "serving_g",
    ],
    heading_bars: Bars::Verdict,
    name_bars: Bars::Issue,
};

/// One row a package bought.
pub static PACKAGES: Shape = Shape {
    name: "packages",
    needed: &["package_code", "product_id"],
    bearing: &["round", "sent_on"],
    others: &[
        "lot",
        "best_by",
        "bought_on",
        "shop",
        "price",
        "photographs",
        "custody",
    ],
    heading_bars: Bars::Verdict,
    name_bars: Bars::Issue,
};

/// Readings set aside. A correction that is not read may leave in a reading that a person has taken out.
pub static CORRECTIONS: Shape = Shape {
    name: "corrections",
    needed: &["file", "package_code", "action", "reason", "by", "on"],
    bearing: &["extraction"],
    others: &[],
    heading_bars: Bars::Verdict,
    name_bars: Bars::Verdict,
};

/// What passed between the programme and the makers.
pub static FOLLOWUPS: Shape = Shape {
    name: "followups",
    needed: &["product_id", "on", "kind"],
    bearing: &["round", "due_on", "statement"],
    others: &["note"],
    heading_bars: Bars::Issue,
    name_bars: Bars::Issue,
};

/// What a lab's report says that its file does not.
pub static REPORTS: Shape = Shape {
    name: "reports",
    needed: &["file"],
    bearing: &[
        "report",
        "issued_on",
        "received_on",
        "condition",
        "tested_from",
        "tested_to",
        "lloq_ppm",
        "lod_ppm",
        "uncertainty",
        "accredited",
        "supersedes",
        "certificate",
    ],
    others: &[],
    heading_bars: Bars::Issue,
    name_bars: Bars::Issue,
};

/// Label terms of the programme's own.
pub static TERMS: Shape = Shape {
    name: "terms",
    needed: &["term", "grain", "class"],
    bearing: &["exceptions"],
    others: &["why", "source"],
    heading_bars: Bars::Verdict,
    name_bars: Bars::Issue,
};

/// The key of the packages of known content: it bears on no verdict.
pub static BLINDS: Shape = Shape {
    name: "blinds",
    needed: &["package_code", "content"],
    bearing: &[],
    others: &["food", "added_ppm", "round"],
    heading_bars: Bars::Issue,
    name_bars: Bars::Issue,
};

/// What has been issued; the program writes it itself.
pub static ISSUED: Shape = Shape {
    name: "issued",
    needed: &[
        "sheet_number",
        "product_id",
        "round",
        "revision",
        "issued_on",
        "content_sha256",
    ],
    bearing: &["reason", "changed", "verdict", "label", "early"],
    others: &[],
    heading_bars: Bars::Issue,
    name_bars: Bars::Issue,
};

/// Whether a word that people wrote is nearly this one: a slip of the keys, another form of the word, or the word with
/// something added. `processed` is nearly `processing`, `sent` nearly `sent_on`, `corrections (1)` nearly `corrections`.
pub fn nearly(written: &str, meant: &str) -> bool {
    const LEAST: usize = 4;
    let written: String = written
        .chars()
        .map(|c| if c.is_alphanumeric() { c } else { '_' })
        .collect();
    let written = written.trim_matches('_');
    let length = |word: &str| word.chars().count();
    let slips = (length(meant) / 3).max(1);
    if strsim::damerau_levenshtein(written, meant) <= slips {
        return true;
    }
    let alike = written
        .chars()
        .zip(meant.chars())
        .take_while(|(a, b)| a == b)
        .count();
    let shorter = length(written).min(length(meant));
    if alike >= LEAST && alike * 3 >= shorter * 2 {
        return true;
    }
    // Several columns speak of the maker: the word alone tells none of them.
    let long = |part: &&str| part.len() >= LEAST && *part != "maker";
    written.split('_').filter(long).any(|part| {
        meant
            .split('_')
            .filter(long)
            .any(|wanted| strsim::damerau_levenshtein(part, wanted) <= 1)
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::guide::GUIDES;
    use std::collections::BTreeSet;

    #[test]
    fn the_guide_explains_every_column_of_every_register_that_people_keep() {
        let kept: BTreeSet<&str> = ALL.into_iter().map(|shape| shape.name).collect();
        let explained = GUIDES.iter().map(|guide| guide.name);
        assert_eq!(kept, explained.chain([ISSUED.name]).collect());
        for guide in GUIDES {
            let mut shapes = ALL.into_iter();
            let shape = shapes
                .find(|shape| shape.name == guide.name)
                .expect("is kept");
            let columns: BTreeSet<&str> = shape.columns().collect();
            let explained = guide.columns.iter().map(|column| column.name);
            assert_eq!(columns, explained.collect(), "{}", guide.name);
            let needed = guide.columns.iter().filter(|column| column.is_needed);
            let needed: BTreeSet<&str> = needed.map(|column| column.name).collect();
            assert_eq!(
                needed,
                shape.needed.iter().copied().collect(),
                "{}",
                guide.name
            );
            assert_eq!(shape.needed[0], guide.columns[0].name, "{}", guide.name);
        }
    }

    #[test]
    fn a_slip_and_another_form_are_near_and_another_word_is_not() {
        for (written, meant) in [
            ("processed", "processing"),
            ("ingredient", "ingredients"),
            ("ingredients_list", "ingredients"),
            ("sent", "sent_on"),
            ("date_sent", "sent_on"),
            ("oat", "oats"),
            ("claims", "claim"),
            ("rounds", "round"),
            ("certified_by", "certifier"),
            ("correction", "corrections"),
            ("corrections (1)", "corrections"),
            ("copy of followups", "followups"),
        ] {
            assert!(nearly(written, meant), "{written} {meant}");
        }
        for (written, meant) in [
            ("colour", "claim"),
            ("lot", "round"),
            ("notes", "oats"),
            ("shelf", "sent_on"),
            ("readme", "terms"),
            ("photos", "products"),
        ] {
            assert!(!nearly(written, meant), "{written} {meant}");
        }
    }
}
