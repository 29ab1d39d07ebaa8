//! The sentences of the newsletter.

use crate::config::Config;
use crate::model::registers::{FollowupKind, IssuedRevision};
use crate::model::verdict::{ProductVerdict, Verdict};
use crate::render::numbers::plain;
use crate::render::tally::Tally;
use crate::render::terms::Terms;
use crate::render::words::method::{percent, yes_no};
use crate::render::words::{breakable, full_stop};
use crate::words::{Catalogue, say, side};

/// Products that a sentence can name; of more it says how many.
const NAMED_AT_MOST: usize = 8;

/// "Eight products are new: five below the limit, two at or above it, one without a verdict. One sheet is amended."
///
/// `tally` counts products that were never published; `results` says whether any product has a result.
pub fn headline(tally: &Tally, amended: usize, results: bool, terms: &Terms) -> String {
    let words = &terms.words;
    let new = tally.products();
    // Figures in one sentence are all words or all digits.
    let number = |n: u64| match new < 10 {
        true => words.spelt(n as usize),
        false => n.to_string(),
    };
    let parts = [
        (tally.within, "within"),
        (tally.over, "over"),
        (tally.none, "none"),
    ];
    let parts: Vec<String> = parts
        .iter()
        .filter(|(n, _)| *n > 0)
        .map(|(n, verdict)| {
            let part = say::newsletter_part(*n, number(*n), verdict, side(terms.rule));
            words.say(&part)
        })
        .collect();
    let said = match new {
        0 => say::newsletter_nothing(yes_no(results)),
        n => say::newsletter_new(n, words.spelt_first(n as usize), words.list(&parts)),
    };
    let said = words.say(&said);
    if amended == 0 {
        return said;
    }
    let number = words.spelt_first(amended);
    let amended = words.say(&say::newsletter_amended_count(amended as u64, number));
    // Where sheets were amended, something is new: no product.
    match new {
        0 => amended,
        _ => format!("{said} {amended}"),
    }
}

/// How it was done, and what the limit is.
pub fn how(config: &Config, terms: &Terms) -> String {
    let words = &config.words;
    let (packages, times) = (
        config.testing.packages_per_product,
        config.testing.extractions_per_package,
    );
    let (known, amount) = lowest(terms);
    let said = [
        say::newsletter_how(
            packages as u64,
            words.spelt(packages),
            times as u64,
            words.spelt(times),
        ),
        say::newsletter_limit(
            yes_no(terms.mixed),
            side(terms.rule),
            words.limit(&config.rule),
        ),
        say::newsletter_measured(known, amount),
    ];
    said.map(|said| words.say(&said)).join(" ")
}

/// The one amount from which on all assays give a number, where there is one.
fn lowest(terms: &Terms) -> (&'static str, String) {
    let amount = |lloq| terms.words.quantity(&plain(lloq), terms.unit);
    let amount = terms.lloq.map(amount);
    (yes_no(amount.is_some()), amount.unwrap_or_default())
}

/// What a result is, and what it is not.
pub fn snapshot(config: &Config, terms: &Terms) -> String {
    let packages = config.testing.packages_per_product;
    // The exact one-sided bound for none of n.
    let upper = 1.0 - 0.05f64.powf(1.0 / packages as f64);
    config.words.say(&say::newsletter_snapshot(
        packages as u64,
        side(terms.rule),
        percent(upper, &config.words),
    ))
}

/// What the marks of the chart mean.
pub fn note(terms: &Terms) -> String {
    let (known, amount) = lowest(terms);
    let marks = say::newsletter_marks(side(terms.rule), known, amount);
    terms.with_band(terms.words.say(&marks))
}

/// Which products the list names, where it does not name all.
pub fn listed(terms: &Terms) -> String {
    terms.words.say(&say::newsletter_listed(side(terms.rule)))
}

/// That a mail names the first of these alone.
pub fn first_of(rows: usize, words: &Catalogue) -> String {
    words.say(&say::newsletter_first_of(rows.to_string()))
}

/// That a food was tested again, and what came of it.
pub fn again(later: &ProductVerdict, sheet_number: &str, words: &Catalogue) -> String {
    words.say(&say::newsletter_again(
        later.round.as_str(),
        word(later.verdict),
        side(later.rule.limit),
        words.limit(&later.rule),
        sheet_number,
    ))
}

/// How messages choose by a verdict.
fn word(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::OverLimit => "over",
        Verdict::WithinLimit(_) => "within",
        Verdict::NoVerdict => "none",
    }
}

/// What the greys of the bars mean.
pub fn bands(terms: &Terms) -> String {
    let (known, amount) = lowest(terms);
    terms.words.say(&say::newsletter_bands(
        side(terms.rule),
        yes_no(terms.mixed),
        known,
        amount,
        &terms.measured,
        &terms.limit,
    ))
}

/// What a maker says, as it was written, and when.
pub fn reply(verdict: &ProductVerdict, words: &Catalogue) -> Option<String> {
    let replies = verdict.followups.iter().rev();
    let mut replies = replies.filter(|one| one.kind == FollowupKind::Reply);
    let last = replies.next().filter(|_| verdict.notify_maker)?;
    let statement = breakable(last.statement.as_deref()?, 28);
    Some(words.say(&say::newsletter_reply(statement, words.day(last.on))))
}

/// Whose makers have said nothing so far, and whose are still to be told; both have products with their sheets.
pub fn silent(asked: &[String], to_tell: &[String], words: &Catalogue) -> Option<String> {
    let named = |of: &[String]| yes_no(of.len() <= NAMED_AT_MOST);
    let mut said = Vec::new();
    if !asked.is_empty() {
        said.push(words.say(&say::newsletter_silent(
            asked.len() as u64,
            words.spelt(asked.len()),
            named(asked),
            words.list(asked),
        )));
    }
    if !to_tell.is_empty() {
        said.push(words.say(&say::newsletter_to_tell(
            to_tell.len() as u64,
            words.spelt(to_tell.len()),
            named(to_tell),
            words.list(to_tell),
        )));
    }
    (!said.is_empty()).then(|| said.join(" "))
}

/// The revision that this product's sheet is, and the one that it replaces: of a proof the last one that was issued, of an
/// issued sheet the one before it. None where it replaces nothing.
pub fn replaced(verdict: &ProductVerdict, is_proof: bool) -> Option<(u32, &IssuedRevision)> {
    let mut latest_first = verdict.issued.iter().rev();
    let last = latest_first.next()?;
    match is_proof {
        true => Some((last.revision + 1, last)),
        false => Some((last.revision, latest_first.next()?)),
    }
}

/// Which published revision this product's sheet replaces, what was changed and why.
pub fn amended(
    verdict: &ProductVerdict,
    sheet_number: &str,
    is_proof: bool,
    words: &Catalogue,
) -> Option<String> {
    let (revision, replaced) = replaced(verdict, is_proof)?;
    let said = words.say(&say::newsletter_amended(
        breakable(&verdict.product.name, 28),
        sheet_number,
        revision.to_string(),
        replaced.revision.to_string(),
        words.day(replaced.issued_on),
    ));
    let last = verdict.issued.last().filter(|_| !is_proof);
    let why = last.map(why_revised).unwrap_or_default();
    Some(format!("{said}{why}"))
}

/// Why a revision was made and what it changed, as it was written down when it was issued, after what was said before.
pub fn why_revised(revision: &IssuedRevision) -> String {
    [revision.reason.as_deref(), revision.changed.as_deref()]
        .into_iter()
        .flatten()
        .map(|said| format!(" {}", full_stop(said.trim())))
        .collect()
}

/// The programme so far, and what is not counted. Where all of it is new, the headline has said how many of each there are.
pub fn totals(tally: &Tally, all_new: bool, with_lab: usize, terms: &Terms) -> String {
    let words = &terms.words;
    let counted = say::newsletter_totals(
        tally.products(),
        tally.foods,
        yes_no(tally.products() > tally.foods),
        tally.within.to_string(),
        tally.over.to_string(),
        tally.none.to_string(),
        side(terms.rule),
    );
    let mut said = Vec::new();
    if !all_new {
        said.push(words.say(&counted));
    }
    let packages = tally.packages.all();
    if packages > 0 {
        said.push(words.say(&say::newsletter_packages_so_far(
            packages,
            words.spelt_first(packages as usize),
            tally.unmeasured.to_string(),
        )));
    }
    if with_lab > 0 {
        said.push(words.say(&say::newsletter_with_lab(
            with_lab as u64,
            words.spelt_first(with_lab),
        )));
    }
    said.join(" ")
}
