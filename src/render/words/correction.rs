//! The letter of correction: plain about the mistake, whoever made it.

use crate::config::Config;
use crate::model::decided::JudgedProduct;
use crate::model::publication::Correction;
use crate::render::words;
use crate::words::{say, side, yes_or_no};

/// What we said.
pub fn said(
    product: &JudgedProduct,
    correction: Correction,
    sheet_number: &str,
    config: &Config,
) -> String {
    let said = correction.said;
    config.words.say(&say::letter_said(
        correction.of_revision.to_string(),
        sheet_number,
        config.words.day(correction.of_day),
        yes_or_no(said.over_limit),
        yes_or_no(said.gluten_source),
        side(product.verdict.rule.limit),
    ))
}

/// What we say now.
pub fn says(product: &JudgedProduct, correction: Correction, config: &Config) -> Vec<String> {
    let (verdict, says) = (&product.verdict, correction.says);
    let now = say::letter_says(
        yes_or_no(says.over_limit),
        yes_or_no(says.gluten_source),
        side(verdict.rule.limit),
    );
    let reads = say::letter_reads(
        yes_or_no(correction.issued_on.is_some()),
        words::verdict::headline(verdict.verdict, verdict.rule, &config.words),
    );
    vec![
        config.words.text([now, reads]),
        words::verdict::sentence(verdict, config),
    ]
}

/// Why, in the programme's words where the revision is issued.
pub fn why(product: &JudgedProduct, correction: Correction, config: &Config) -> String {
    let is_issued = correction.issued_on.is_some();
    let last = product.verdict.issued.last().filter(|_| is_issued);
    let said: Vec<String> = last
        .into_iter()
        .flat_map(|row| [row.reason.as_deref(), row.changed.as_deref()])
        .flatten()
        .map(|said| format!("{}.", said.trim().trim_end_matches('.')))
        .collect();
    if said.is_empty() {
        return config.words.say(&say::letter_why());
    }
    said.join(" ")
}

/// What we do about it.
pub fn does(correction: Correction, config: &Config) -> Vec<String> {
    let day = correction.issued_on.map(|day| config.words.day(day));
    let sheet = say::letter_does(yes_or_no(day.is_some()), day.unwrap_or_default());
    let maker = if correction.says.accuses() {
        say::letter_does_accuse(u64::from(config.programme.reply_days))
    } else {
        say::letter_does_clear()
    };
    config.words.each([sheet, maker])
}
