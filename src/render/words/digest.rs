//! The sentences of the newsletter.

use crate::config::Config;
use crate::model::registers::{FollowupKind, IssuedRevision};
use crate::model::verdict::ProductVerdict;
use crate::render::numbers::plain;
use crate::render::tally::Tally;
use crate::render::terms::Terms;
use crate::render::words::method::percent;
use crate::render::words::summary::{perhaps_missed, upper_bound};
use crate::render::words::{breakable, full_stop, verdict_word};
use crate::words::{Catalogue, Said, say, side, yes_or_no};

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
    let rule = side(terms.rule);
    let parts = parts.into_iter().filter(|(n, _)| *n > 0);
    let parts = parts.map(|(n, verdict)| say::newsletter_part(n, number(n), verdict, rule));
    let parts = words.each(parts);
    let said = match new {
        0 => say::newsletter_nothing(yes_or_no(results)),
        n => say::newsletter_new(n, words.spelt_first(n as usize), words.list(&parts)),
    };
    // Where sheets were amended, something is new: no product.
    let said = (new > 0 || amended == 0).then_some(said);
    let amended = (amended > 0)
        .then(|| say::newsletter_amended_count(amended as u64, words.spelt_first(amended)));
    words.text(said.into_iter().chain(amended))
}

/// How it was done, and what the limit is.
pub fn how(config: &Config, terms: &Terms) -> String {
    let words = &config.words;
    let packages = config.testing.packages_per_product;
    let times = config.testing.extractions_per_package;
    let (known, amount) = lowest(terms);
    let said = [
        say::newsletter_how(
            packages as u64,
            words.spelt(packages),
            times as u64,
            words.spelt(times),
        ),
        say::newsletter_limit(
            yes_or_no(terms.mixed),
            side(terms.rule),
            words.limit(&config.rule),
        ),
        say::newsletter_measured(known, amount),
    ];
    words.text(said)
}

/// The one amount from which on all assays give a number, where there is one.
fn lowest(terms: &Terms) -> (&'static str, String) {
    let amount = |lloq| terms.words.quantity(&plain(lloq), terms.unit);
    let amount = terms.lloq.map(amount);
    (yes_or_no(amount.is_some()), amount.unwrap_or_default())
}

/// What a result is, and what it is not.
pub fn snapshot(config: &Config, terms: &Terms) -> String {
    let packages = config.testing.packages_per_product;
    config.words.say(&say::newsletter_snapshot(
        packages as u64,
        side(terms.rule),
        percent(upper_bound(packages), &config.words),
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
        verdict_word(later.verdict),
        side(later.rule.limit),
        words.limit(&later.rule),
        sheet_number,
    ))
}

/// What the greys of the bars mean.
pub fn bands(terms: &Terms) -> String {
    let (known, amount) = lowest(terms);
    terms.words.say(&say::newsletter_bands(
        side(terms.rule),
        yes_or_no(terms.mixed),
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
    type Message = fn(u64, String, &'static str, String) -> Said;
    let groups: [(&[String], Message); 2] = [
        (asked, say::newsletter_silent),
        (to_tell, say::newsletter_to_tell),
    ];
    let told = groups.into_iter().filter(|(makers, _)| !makers.is_empty());
    let said = words.text(told.map(|(makers, message)| {
        let n = makers.len();
        let named = yes_or_no(n <= NAMED_AT_MOST);
        message(n as u64, words.spelt(n), named, words.list(makers))
    }));
    (!said.is_empty()).then_some(said)
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
        yes_or_no(tally.products() > tally.foods),
        tally.within.to_string(),
        tally.over.to_string(),
        tally.none.to_string(),
        side(terms.rule),
    );
    let packages = tally.packages.all();
    let packages = (packages > 0).then(|| {
        let spelt = words.spelt_first(packages as usize);
        say::newsletter_packages_so_far(packages, spelt, tally.unmeasured.to_string())
    });
    let missed = perhaps_missed(tally);
    let with_lab = (with_lab > 0)
        .then(|| say::newsletter_with_lab(with_lab as u64, words.spelt_first(with_lab)));
    let counted = (!all_new).then_some(counted);
    words.text([counted, packages, missed, with_lab].into_iter().flatten())
}
