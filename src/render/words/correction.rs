//! The letter of correction: plain about the mistake, whoever made it.

use crate::config::Config;
use crate::model::decided::JudgedProduct;
use crate::model::publication::Correction;
use crate::render::numbers;
use crate::render::words::limit::LimitWords;
use crate::render::words::{self, publication, sentence_case};

/// What we said.
pub fn said(product: &JudgedProduct, correction: Correction, sheet_number: &str) -> String {
    let over = LimitWords::of(product.verdict.rule).over_the_limit();
    format!(
        "Revision {} of our sheet {sheet_number}, of {}, said that {}.",
        correction.of_revision,
        numbers::date(correction.of_day),
        publication::accusation(correction.said, &over)
    )
}

/// What we say now.
pub fn says(product: &JudgedProduct, correction: Correction, config: &Config) -> Vec<String> {
    let verdict = &product.verdict;
    let over = LimitWords::of(verdict.rule).over_the_limit();
    vec![
        format!(
            "{}. The verdict on the sheet {} “{}”.",
            sentence_case(&publication::accusation(correction.says, &over)),
            match correction.issued_on {
                Some(_) => "now reads",
                None => "will read",
            },
            words::verdict::words(verdict.verdict, verdict.rule)
        ),
        words::verdict::sentence(verdict, config),
    ]
}

/// Why, in the programme's words where the revision is issued.
pub fn why(product: &JudgedProduct, correction: Correction) -> String {
    let last = product
        .verdict
        .issued
        .last()
        .filter(|_| correction.issued_on.is_some());
    let said: Vec<String> = last
        .into_iter()
        .flat_map(|row| [row.reason.as_deref(), row.changed.as_deref()])
        .flatten()
        .map(|said| format!("{}.", said.trim().trim_end_matches('.')))
        .collect();
    if said.is_empty() {
        return "What we know now is not what we knew then. The revised sheet gives the reason, and every figure with its source."
            .to_owned();
    }
    said.join(" ")
}

/// What we do about it.
pub fn does(correction: Correction, config: &Config) -> Vec<String> {
    let sheet = match correction.issued_on {
        Some(day) => format!("The revised sheet was issued on {}.", numbers::date(day)),
        None => "We issue the revised sheet at once; nothing holds it up.".to_owned(),
    };
    let mut does = vec![format!(
        "{sheet} It names the revision that it replaces. Our page of corrections and our next newsletter lead with this \
         correction. The earlier sheet stays in our archive, so that anyone can see what was changed."
    )];
    if correction.says.accuses() {
        does.push(format!(
            "We do not wait, since readers rely on the earlier sheet. Please tell us if a fact is wrong, and send a statement of \
             up to 100 words if you wish, within {}: we print it unedited, as a further revision of the sheet.",
            words::counted(config.programme.reply_days as usize, "day", "days")
        ));
    } else {
        does.push(
            "If somebody has repeated what we said, tell us who, and we write to them. If our mistake has cost you something, \
             please tell us that, too."
                .to_owned(),
        );
    }
    does
}
