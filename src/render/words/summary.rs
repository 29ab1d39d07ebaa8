//! What the programme summary says of the counts: which message, and what it is given.

use crate::config::Testing;
use crate::model::label::{LabelFinding, LabelReview, TermClass};
use crate::model::statistics::{Contrast, QuarterCounts, Share, Trend};
use crate::render::charts::squares::SQUARES_AT_MOST;
use crate::render::listing;
use crate::render::numbers::percent;
use crate::render::tally::Tally;
use crate::render::terms::Terms;
use crate::render::words::label::{is_asked, is_not_forbidden};
use crate::render::words::sentence_case;
use crate::words::{Catalogue, NBSP, Said, say, side, yes_or_no};
use chrono::NaiveDate;
use std::iter::once;

/// The exact one-sided 95 % bound of the share over the limit where none of so many packages is.
pub fn upper_bound(packages: usize) -> f64 {
    1.0 - 0.05f64.powf(1.0 / packages as f64)
}

/// A food group as charts and lists print it: as the register has it, and by a word of ours where it has none.
pub fn group_name(name: &str, words: &Catalogue) -> String {
    if name.eq_ignore_ascii_case(listing::NO_CATEGORY) {
        words.say(&say::chart_no_group())
    } else if name == listing::OTHERS {
        words.say(&say::chart_other_groups())
    } else {
        name.to_owned()
    }
}

/// What the results do not show of a product without a verdict: by which word a message chooses it.
fn unshown(terms: &Terms) -> &'static str {
    if terms.rule.detection {
        "detection"
    } else if terms.mixed {
        "claims"
    } else {
        "limit"
    }
}

/// Whether some package is undecided, so that of none it can be said that it is within the limit.
fn open(tally: &Tally) -> &'static str {
    if tally.packages.undecided > 0 {
        "open"
    } else {
        "none"
    }
}

fn any(n: u64) -> &'static str {
    if n > 0 { "some" } else { "none" }
}

/// The cover's title.
pub fn title(foods: u64, claim: Option<&str>, words: &Catalogue) -> String {
    let (labelled, claim) = (yes_or_no(claim.is_some()), claim.unwrap_or_default());
    words.say(&say::summary_title(foods, labelled, claim))
}

/// Under the cover's title: what this is and which time it is about.
pub fn subtitle(days: Option<(NaiveDate, NaiveDate)>, words: &Catalogue) -> String {
    words.say(&match days {
        Some((first, last)) => say::summary_subtitle(words.days(first, last)),
        None => say::summary_subtitle_undated(),
    })
}

/// What stands beside the cover's block of products within the limit.
pub fn within_text(tally: &Tally, terms: &Terms) -> String {
    let measured = match tally.within_below {
        _ if tally.within == 0 => "nobody",
        0 => "all",
        n if n == tally.within => "none",
        _ => "some",
    };
    let below = tally.within_below.to_string();
    let said = say::summary_within(measured, below, side(terms.rule));
    terms.words.say(&said)
}

/// What stands beside the cover's block of products over the limit.
pub fn over_text(tally: &Tally, terms: &Terms) -> String {
    let packages = match tally.packages.over {
        0 => open(tally),
        _ => "some",
    };
    let said = say::summary_over(any(tally.over), packages, side(terms.rule));
    terms.words.say(&said)
}

/// What stands beside the cover's block of products without a verdict.
pub fn none_text(tally: &Tally, terms: &Terms) -> String {
    let said = say::summary_none(any(tally.none), unshown(terms), &terms.limit);
    terms.words.say(&said)
}

/// Below the cover's squares: what they mean, how products are counted, and what is not counted.
pub fn squares_note(tally: &Tally, with_lab: usize, terms: &Terms) -> String {
    let (products, foods) = (tally.products(), tally.foods);
    let many = products > SQUARES_AT_MOST;
    let spelt = |n: u64| terms.words.spelt(n as usize);
    let squares = say::summary_squares(
        if many { "bar" } else { "squares" },
        &terms.over_in_text,
        tally.over.to_string(),
        tally.none.to_string(),
        tally.within_measured.to_string(),
        tally.within_below.to_string(),
        side(terms.rule),
    );
    let rounds =
        (products > foods).then(|| say::summary_rounds(spelt(products), foods, spelt(foods)));
    let with_lab = (with_lab > 0).then(|| say::summary_with_lab(with_lab as u64));
    let said = once(squares).chain(rounds).chain(with_lab);
    terms.words.text(said)
}

/// What the cover says of the labels, whatever the tests found; nothing where no label is against the rule.
pub fn labels_against_rule(products: u64, words: &Catalogue) -> Option<String> {
    (products > 0).then(|| words.say(&say::summary_labels_on_cover(products)))
}

/// How it was done, at the foot of the cover.
pub fn how(testing: &Testing, words: &Catalogue) -> String {
    let packages = testing.packages_per_product;
    let times = testing.extractions_per_package;
    words.say(&say::summary_how(
        packages as u64,
        words.spelt(packages),
        times as u64,
        words.spelt(times),
    ))
}

/// That the assay may have missed gluten in some of the packages without enough of it to measure.
pub fn perhaps_missed(tally: &Tally) -> Option<Said> {
    (tally.perhaps_missed > 0).then(|| say::summary_perhaps_missed(tally.perhaps_missed))
}

/// The lede above the table of bands.
pub fn bands_lede(tally: &Tally, terms: &Terms) -> String {
    let words = &terms.words;
    if tally.products() == 0 {
        return words.say(&say::summary_bands_empty());
    }
    let packages = words.say(&say::summary_packages_spelt(tally.packages.all()));
    let loose = tally.unmeasured.saturating_sub(tally.packages.below);
    let unmeasured = say::summary_bands_unmeasured(tally.unmeasured, packages);
    let over = say::summary_bands_over(tally.over, open(tally), side(terms.rule));
    let loose = (loose > 0).then(|| say::summary_bands_loose(loose, unshown(terms), &terms.limit));
    let undecided = (tally.none > 0).then(|| say::summary_bands_undecided(tally.none));
    let missed = perhaps_missed(tally);
    words.text(
        [Some(unmeasured), missed, Some(over), loose, undecided]
            .into_iter()
            .flatten(),
    )
}

/// What the counts say. Rounds that a later round of the same product supersedes are `left_out` of the share.
pub fn says(tally: &Tally, over: Option<&Share>, left_out: u64, terms: &Terms) -> String {
    let percent = |of: Option<f64>| of.map_or(String::new(), percent);
    let said = say::summary_says(
        tally.packages.all(),
        over.map_or("none", |_| "some"),
        over.map_or(0, |share| share.n),
        left_out,
        terms.words.spelt(left_out as usize),
        over.map_or(0, |share| share.k),
        percent(over.map(|share| share.exact.lower)),
        percent(over.map(|share| share.exact.upper)),
        side(terms.rule),
    );
    terms.words.say(&said)
}

/// What the counts do not say. `packages` is how many are bought of each product.
pub fn does_not_say(packages: usize, terms: &Terms) -> String {
    let upper = percent(upper_bound(packages));
    let said = say::summary_says_not(packages.to_string(), upper, side(terms.rule));
    terms.words.say(&said)
}

/// The words that the summary uses, with their meanings.
pub fn glossary(terms: &Terms) -> Vec<[String; 2]> {
    let unit = if terms.unit == "ppm" { "ppm" } else { "mg" };
    let rule = side(terms.rule);
    let said = |said: Said| terms.words.say(&said);
    vec![
        [terms.unit.to_owned(), said(say::summary_word_unit(unit))],
        [sentence_case(&terms.below), said(say::summary_word_below())],
        [
            said(say::summary_word_extraction()),
            said(say::summary_word_extraction_meaning()),
        ],
        [terms.over.clone(), said(say::summary_word_over(rule))],
        [terms.within.clone(), said(say::summary_word_within(rule))],
        [
            said(say::summary_no_verdict()),
            said(say::summary_word_none(unshown(terms), &terms.limit)),
        ],
    ]
}

/// The lede above the strip plot. `groups_over` of `groups` food groups have a package over the limit.
pub fn strip_lede(tally: &Tally, groups: usize, groups_over: usize, terms: &Terms) -> String {
    let (words, packages) = (&terms.words, tally.packages.all());
    if packages == 0 {
        return words.say(&say::summary_strip_empty());
    }
    let over = say::summary_strip_over(
        groups_over as u64,
        groups as u64,
        words.spelt(groups),
        open(tally),
        side(terms.rule),
    );
    let packages = say::summary_strip_packages(packages);
    let unmeasured = say::summary_strip_unmeasured(tally.unmeasured);
    words.text(
        [
            Some(packages),
            Some(unmeasured),
            perhaps_missed(tally),
            Some(over),
        ]
        .into_iter()
        .flatten(),
    )
}

/// What the marks of the strip plot mean; `crowded` where some rows have columns in their place.
pub fn strip_note(crowded: bool, terms: &Terms) -> String {
    let crowded = yes_or_no(crowded);
    let marks =
        say::summary_strip_note(crowded, &terms.below, &terms.measured, &terms.over_in_text);
    terms.with_band(terms.words.say(&marks))
}

/// How many of the products over the limit had packages within it, too; nothing where none had.
pub fn uneven(over: u64, mixed: u64, terms: &Terms) -> Option<String> {
    let rule = side(terms.rule);
    let said = match (mixed, over) {
        (0, _) | (_, 0) => return None,
        (n, over) if n == over && n > 1 => say::summary_uneven_all(n, rule),
        (n, over) => say::summary_uneven(n, over, terms.words.spelt(over as usize), rule),
    };
    Some(terms.words.say(&said))
}

/// What the table of packages that would say more is about. `packages` is how many are bought of each product.
pub fn needed(packages: usize, terms: &Terms) -> String {
    let shows = percent(upper_bound(packages));
    let said = say::summary_needed(packages as u64, shows, side(terms.rule));
    terms.words.say(&said)
}

/// Why groups of products are not ranked, from the tests between them.
pub fn groups_lede(contrasts: &[Contrast], words: &Catalogue) -> String {
    let apart = contrasts.iter().filter(|contrast| contrast.p_holm < 0.05);
    let apart: Vec<String> = apart
        .map(|contrast| group_name(&contrast.category, words))
        .collect();
    words.say(&match apart.as_slice() {
        _ if contrasts.is_empty() => say::summary_groups_small(),
        [] => say::summary_groups_alike(),
        apart => say::summary_groups_apart(words.list(apart)),
    })
}

/// What the quarters say taken together.
pub fn trend(trend: Option<&Trend>, quarters: &[QuarterCounts], words: &Catalogue) -> String {
    words.say(&match trend {
        None if quarters.len() < 2 => say::summary_trend_short(),
        None => say::summary_trend_thin(),
        Some(trend) => {
            let found = match trend.p < 0.05 {
                true if trend.z > 0.0 => "grew",
                true => "fell",
                false => "none",
            };
            let quarters = trend.quarters.to_string();
            say::summary_trend(found, quarters, probability(trend.p, words))
        }
    })
}

/// What label reviews can come to, in the order of the summary's table.
pub const FINDINGS: [&str; 7] = [
    "source", "allowed", "oats", "unclear", "unread", "nothing", "no_list",
];

/// Which of [`FINDINGS`] a review comes to. A source that is not forbidden is one, and nothing unclear; a list that nobody
/// could read is told as that.
pub fn finding(review: &LabelReview) -> &'static str {
    let any = |of: fn(TermClass) -> bool| review.terms.iter().any(|term| of(term.class));
    match review.finding {
        _ if review.unread => "unread",
        LabelFinding::GlutenSource => "source",
        LabelFinding::UnverifiedOats => "oats",
        LabelFinding::NeedsReview if any(is_not_forbidden) && !any(is_asked) => "allowed",
        LabelFinding::NeedsReview => "unclear",
        LabelFinding::None => "nothing",
        LabelFinding::NoIngredients => "no_list",
    }
}

/// "= 0.32", "< 0.001".
pub fn probability(p: f64, words: &Catalogue) -> String {
    let written = match p {
        p if p < 0.001 => format!("<{NBSP}0.001"),
        p if p < 0.1 => format!("={NBSP}{p:.3}"),
        p => format!("={NBSP}{p:.2}"),
    };
    words.locale().figure(&written)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::english;

    #[test]
    fn counts_agree_with_their_nouns() {
        let plain = |text: String| text.replace(NBSP, " ");
        assert_eq!(
            plain(title(0, None, english())),
            "No food has been tested yet"
        );
        assert_eq!(
            plain(title(1, Some("gluten-free"), english())),
            "What we found in 1 food labelled gluten-free"
        );
    }

    #[test]
    fn a_probability_is_never_printed_as_none() {
        let plain = |p| probability(p, english()).replace(NBSP, " ");
        assert_eq!(plain(0.000_01), "< 0.001");
        assert_eq!(plain(0.0321), "= 0.032");
        assert_eq!(plain(0.5), "= 0.50");
    }
}
