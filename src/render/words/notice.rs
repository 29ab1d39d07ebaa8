//! The letter to a maker: facts, a question, a day. It accuses nobody.

use crate::config::{Attach, Config};
use crate::model::decided::JudgedProduct;
use crate::model::followup::NoticeDays;
use crate::model::label::LabelFinding;
use crate::model::pair::PairState;
use crate::model::rule::Rule;
use crate::model::verdict::{ProductVerdict, Verdict};
use crate::render::numbers;
use crate::render::words::limit::LimitWords;
use crate::render::words::{self, counted};

/// Why we write.
pub fn opening(verdict: &ProductVerdict, config: &Config) -> String {
    let n = counted(verdict.packages.len(), "package", "packages");
    let count = words::verdict::count(verdict, verdict.rule, config.testing.packages_per_product);
    let found = match (verdict.verdict, verdict.label.finding) {
        (Verdict::OverLimit, LabelFinding::GlutenSource) => {
            format!("{count} We also have a question about the list of ingredients.")
        }
        (_, LabelFinding::GlutenSource) => {
            format!("{count} We write because of the list of ingredients.")
        }
        _ => count,
    };
    format!(
        "We bought {n} of this product in shops and had them tested for gluten. {found} We are writing before we publish, so \
         that you can check the facts and answer."
    )
}

/// What the results and the label come to.
pub fn findings(product: &JudgedProduct, config: &Config) -> Vec<String> {
    let verdict = &product.verdict;
    let sentence = words::verdict::sentence(verdict, config);
    let mut findings = vec![format!(
        "{sentence} {}The verdict on the sheet will read “{}”.",
        agreement(verdict),
        words::verdict::words(verdict.verdict, verdict.rule)
    )];
    if verdict.label.finding == LabelFinding::GlutenSource {
        findings.push(
            words::label::sentences(
                &verdict.label,
                &verdict.product,
                config.rule.regime,
                &config.words,
            )
            .join(" "),
        );
    }
    findings
}

/// That the extractions agree, where a package is over the limit and those of every package do.
fn agreement(verdict: &ProductVerdict) -> &'static str {
    let mut packages = verdict.packages.iter();
    let agree = packages.all(|package| package.pair.state == PairState::Agree);
    if verdict.verdict == Verdict::OverLimit && agree {
        "The extractions of each package agree, by the rule that the sheet states. "
    } else {
        ""
    }
}

/// What we ask.
pub fn ask(verdict: &ProductVerdict) -> Vec<String> {
    let mut ask = vec![
        "Please tell us if a fact is wrong: the lot, the dates, the ingredients as we read them. If you wish, send a statement \
         of up to 100 words. We print it unedited, on the sheet itself. You need not explain the result."
            .to_owned(),
    ];
    if verdict.label.finding == LabelFinding::GlutenSource {
        ask.push(
            "If the ingredient is made so that it is not a gluten source, please tell us how, and from which grain.".to_owned(),
        );
    }
    if verdict.label.finding == LabelFinding::UnverifiedOats {
        ask.push(
            "The list names oats: please tell us how they are grown, moved and milled apart from other grain.".to_owned(),
        );
    }
    ask
}

/// What the maker can have.
pub fn offer(config: &Config) -> String {
    let kept = config.programme.kept().map_or_else(String::new, |kept| {
        format!(" {kept} Ask, and we send a part of it to a laboratory that you choose.")
    });
    let carried = match config.publishing.attach {
        Attach::Whole => "The laboratory’s files are attached to the enclosed draft of the sheet.",
        Attach::Excerpt => {
            "What we used of the laboratory’s files is attached to the enclosed draft."
        }
        Attach::None => {
            "Ask, and we send you what we used of the laboratory’s files, cell by cell."
        }
    };
    format!("{carried}{kept}")
}

/// What happens without an answer.
pub fn without_reply(days: Option<NoticeDays>, config: &Config) -> String {
    let by = match days {
        Some(days) => format!("by {}", numbers::date(days.reply_by)),
        None => format!("within {} days", config.programme.reply_days),
    };
    format!(
        "If we have no reply {by}, the sheet will say so and nothing more. A later reply is added as a revision."
    )
}

/// What the letter does not say.
pub fn says_not(rule: Rule) -> String {
    let limit = LimitWords::of(rule).over_the_limit();
    format!(
        "It does not say how any gluten got in, that other packages are like these, or that anyone was careless. It is not a \
         legal finding: it says which packages tested {limit} and what the list of ingredients names, no more."
    )
}
