//! The sentences of the newsletter.

use crate::config::Config;
use crate::model::decided::JudgedProduct;
use crate::model::label::{LabelFinding, LabelTerm, TermClass};
use crate::model::registers::FollowupKind;
use crate::model::verdict::ProductVerdict;
use crate::render::numbers::{self, NBSP, percent, plain};
use crate::render::tally::Tally;
use crate::render::terms::Terms;
use crate::render::words::summary::{number, number_of, upper_bound};
use crate::render::words::{breakable, counted, listed, sentence_case};

/// Products that a sentence can name; of more it says how many.
const NAMED_AT_MOST: usize = 8;

/// "Eight products are new: five below the limit, two at or above it, one without a verdict."
pub fn headline(tally: &Tally, terms: &Terms) -> String {
    let new = tally.products();
    if new == 0 {
        return "Nothing is new since the last issue.".to_owned();
    }
    let verb = if new == 1 { "is" } else { "are" };
    // Figures in one sentence are all words or all digits.
    let say = |n: u64| if new < 10 { number(n) } else { n.to_string() };
    let parts = [
        (tally.within, terms.within_the_limit.as_str()),
        (tally.over, terms.over_the_limit.as_str()),
        (tally.none, "without a verdict"),
    ];
    let parts: Vec<String> = parts
        .iter()
        .filter(|(n, _)| *n > 0)
        .map(|(n, what)| format!("{} {what}", say(*n)))
        .collect();
    format!(
        "{} {verb} new: {}.",
        sentence_case(&number_of(new, "product")),
        listed(&parts)
    )
}

/// How it was done, and what the limit is.
pub fn how(config: &Config, terms: &Terms) -> String {
    let measured = terms.lloq.map_or(
        "Too little to measure does not mean zero.".to_owned(),
        |lloq| {
            format!(
                "Too little to measure means below {}{NBSP}{}. It does not mean zero.",
                plain(lloq),
                terms.unit
            )
        },
    );
    let limit = if terms.mixed {
        format!(
            "The limit goes with the claim; for gluten-free it is {}.",
            terms.limit
        )
    } else {
        format!("The limit for the claim is {}.", terms.limit)
    };
    format!(
        "We buy {} of each product and have each package tested {}. {limit} {measured}",
        number_of(config.testing.packages_per_product as u64, "package"),
        match config.testing.extractions_per_package {
            2 => "twice".to_owned(),
            n => format!("{} times", number(n as u64)),
        }
    )
}

/// What a result is, and what it is not.
pub fn snapshot(config: &Config, terms: &Terms) -> String {
    let packages = config.testing.packages_per_product;
    let upper = upper_bound(packages);
    format!(
        "These are snapshots of the packages that we bought. With 0 of {packages} packages {}, up to {}{NBSP}% of all packages of a product could still be (95{NBSP}% confidence, if ours were a random pick).",
        terms.over_the_limit,
        percent(upper)
    )
}

/// What a maker says, as it was written, and when.
pub fn reply(verdict: &ProductVerdict) -> Option<String> {
    let replies = verdict.followups.iter().rev();
    let mut replies = replies.filter(|one| one.kind == FollowupKind::Reply);
    let last = replies.next().filter(|_| verdict.notify_maker)?;
    Some(format!(
        "“{}” ({})",
        breakable(last.statement.as_deref()?, 28),
        numbers::date(last.on)
    ))
}

/// Whose makers have said nothing so far, and whose are still to be told; both have products with their sheets.
pub fn silent(asked: &[String], to_tell: &[String]) -> Option<String> {
    let makers = |of: &[String]| {
        let makers = if of.len() == 1 { "maker" } else { "makers" };
        match of.len() {
            n if n > NAMED_AT_MOST => format!("the {makers} of {}", number_of(n as u64, "product")),
            _ => format!("the {makers} of {}", listed(of)),
        }
    };
    let mut said = Vec::new();
    if !asked.is_empty() {
        said.push(format!(
            "No statement from {} is on record. We print each one that comes.",
            makers(asked)
        ));
    }
    if !to_tell.is_empty() {
        let have = if to_tell.len() == 1 { "has" } else { "have" };
        said.push(format!(
            "{} {have} still to be told.",
            sentence_case(&makers(to_tell))
        ));
    }
    (!said.is_empty()).then(|| said.join(" "))
}

/// What the labels of these products say, with their names where they are few.
pub fn labels(products: &[&JudgedProduct]) -> String {
    let findings = [
        (
            LabelFinding::GlutenSource,
            "names a gluten source, which the rule does not allow",
            "name a gluten source, which the rule does not allow",
        ),
        (
            LabelFinding::UnverifiedOats,
            "has oats with no word on how they are kept apart",
            "have oats with no word on how they are kept apart",
        ),
        (
            LabelFinding::NeedsReview,
            "has a term of unclear source",
            "have a term of unclear source",
        ),
    ];
    let mut said: Vec<String> = Vec::new();
    for (finding, one, many) in findings {
        let with: Vec<String> = products
            .iter()
            .filter(|product| product.verdict.label.finding == finding)
            .map(|product| with_terms(product))
            .collect();
        if with.is_empty() {
            continue;
        }
        let verb = if with.len() == 1 { one } else { many };
        let named = match with.len() {
            n if n > NAMED_AT_MOST => String::new(),
            _ => format!(": {}", listed(&with)),
        };
        let n = sentence_case(&number(with.len() as u64));
        said.push(format!("{n} {verb}{named}."));
    }
    if said.is_empty() {
        return "No ingredient statement of the new products names a gluten source.".to_owned();
    }
    said.push("Such words are a reason to ask, not a test result.".to_owned());
    said.join(" ")
}

/// `Windmill Crackers (“barley malt extract”)`: a product with the terms that its label names, as printed.
fn with_terms(product: &JudgedProduct) -> String {
    let label = &product.verdict.label;
    let asked = |term: &&LabelTerm| !matches!(term.class, TermClass::Exempt | TermClass::LookAlike);
    let mut terms: Vec<String> = Vec::new();
    for term in label.terms.iter().filter(asked) {
        let quoted = format!("“{}”", breakable(&term.printed, 28));
        if !terms.contains(&quoted) {
            terms.push(quoted);
        }
    }
    let name = breakable(&product.verdict.product.name, 28);
    if terms.is_empty() || terms.len() > NAMED_AT_MOST {
        name
    } else {
        format!("{name} ({})", terms.join(", "))
    }
}

/// Which published revision this product's sheet replaces: a proof the last one, an issued sheet the one before it.
pub fn amended(verdict: &ProductVerdict, sheet_number: &str, is_proof: bool) -> Option<String> {
    let mut latest_first = verdict.issued.iter().rev();
    let last = latest_first.next()?;
    let (revision, replaced) = if is_proof {
        (last.revision + 1, last)
    } else {
        (last.revision, latest_first.next()?)
    };
    Some(format!(
        "{sheet_number}: revision {revision} replaces revision {} of {}.",
        replaced.revision,
        numbers::date(replaced.issued_on)
    ))
}

/// The programme so far.
pub fn totals(tally: &Tally, terms: &Terms) -> String {
    format!(
        "So far {}: {} {}, {} {}, {} without a verdict. {} in all, {} of them with too little gluten to measure.",
        counted(tally.products() as usize, "product", "products"),
        tally.within,
        terms.within_the_limit,
        tally.over,
        terms.over_the_limit,
        tally.none,
        sentence_case(&counted(
            tally.packages.all() as usize,
            "package",
            "packages"
        )),
        tally.unmeasured
    )
}
