//! The sentences of the programme summary and of the newsletter: every count comes from the data.

use crate::model::statistics::{Contrast, QuarterCounts, Share, Trend};
use crate::render::numbers::{self, NBSP, percent};
use crate::render::tally::Tally;
use crate::render::terms::Terms;
use crate::render::words::{counted, sentence_case};
use chrono::NaiveDate;

/// "one", "three", "14": a number in a sentence.
pub fn number(n: u64) -> String {
    const WORDS: [&str; 10] = [
        "none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine",
    ];
    WORDS
        .get(n as usize)
        .map_or_else(|| n.to_string(), |word| (*word).to_owned())
}

/// The same with a noun: "one product", "14 products".
pub fn number_of(n: u64, one: &str) -> String {
    let noun = if n == 1 {
        one.to_owned()
    } else {
        format!("{one}s")
    };
    if n == 0 {
        format!("no {noun}")
    } else {
        format!("{} {noun}", number(n))
    }
}

/// The cover's title.
pub fn title(products: u64, claim: Option<&str>) -> String {
    let what = match claim {
        Some(claim) => format!("labelled {claim}"),
        None => "with a claim about gluten".to_owned(),
    };
    match products {
        0 => "No food has been tested yet".to_owned(),
        1 => format!("What we found in 1 food {what}"),
        n => format!("What we found in {n} foods {what}"),
    }
}

/// What the cover says of the labels, whatever the tests found; nothing where no label is against the rule.
pub fn labels_against_rule(products: u64) -> Option<String> {
    let labels = match products {
        0 => return None,
        1 => "the label of one product names a gluten source".to_owned(),
        n => format!(
            "the labels of {} name a gluten source",
            number_of(n, "product")
        ),
    };
    Some(format!(
        "Whatever the tests found, {labels} that the rule does not allow in a food with this claim."
    ))
}

/// How products are counted, where a food was tested in more than one round.
pub fn rounds_note(foods: u64, products: u64) -> Option<String> {
    (products > foods).then(|| {
        format!(
            "The {} are {}: a food that is tested in a further round counts again.",
            number_of(products, "product"),
            number_of(foods, "food")
        )
    })
}

/// What is not counted, since the lab has reported nothing of it.
pub fn with_lab(products: usize) -> Option<String> {
    match products {
        0 => None,
        1 => Some("One more product is with the lab and counted nowhere here.".to_owned()),
        n => Some(format!(
            "{} more products are with the lab and counted nowhere here.",
            sentence_case(&number(n as u64))
        )),
    }
}

/// Under the cover's title: what this is and which time it is about.
pub fn subtitle(days: Option<(NaiveDate, NaiveDate)>) -> String {
    match days {
        Some((first, last)) => {
            format!("Summary of results, tested {}", numbers::dates(first, last))
        }
        None => "Summary of results".to_owned(),
    }
}

/// What stands beside the cover's block of products within the limit.
pub fn within_text(tally: &Tally, terms: &Terms) -> String {
    if tally.within == 0 {
        return format!("No product had every package {}.", terms.within_the_limit);
    }
    let all = format!("Every package tested {}.", terms.within_the_limit);
    match tally.within_below {
        0 => all,
        n if n == tally.within => format!("{all} None had enough gluten to measure."),
        n => format!("{all} In {n} of these products no package had enough gluten to measure."),
    }
}

/// What stands beside the cover's block of products over the limit.
pub fn over_text(tally: &Tally, terms: &Terms) -> String {
    match tally.over {
        0 => format!("No package tested {}.", terms.over_the_limit),
        _ => format!(
            "At least one package tested {}. This summary lists them all.",
            terms.over_the_limit
        ),
    }
}

/// What stands beside the cover's block of products without a verdict.
pub fn none_text(tally: &Tally, terms: &Terms) -> String {
    match tally.none {
        0 => "Every product has a verdict.".to_owned(),
        _ => format!(
            "The results do not show {}. This summary gives the reasons.",
            terms.unshown("every package")
        ),
    }
}

/// What the squares of the cover mean.
pub fn squares_note(tally: &Tally, terms: &Terms) -> String {
    let unit = if tally.products() > crate::render::charts::squares::SQUARES_AT_MOST {
        "The bar holds every product. Black"
    } else {
        "One square for each product. Filled"
    };
    format!(
        "{unit}: {} ({}). Dashed: no verdict ({}). {}: {}, gluten measured in at least one package ({}). Empty: too little to measure in every package ({}).",
        terms.over.to_lowercase(),
        tally.over,
        tally.none,
        if tally.products() > crate::render::charts::squares::SQUARES_AT_MOST {
            "Grey"
        } else {
            "With a dot"
        },
        terms.within_short,
        tally.within_measured,
        tally.within_below
    )
}

/// The lede above the table of bands.
pub fn bands_lede(tally: &Tally, terms: &Terms) -> String {
    if tally.products() == 0 {
        return "No package counts yet: none has been sent to the lab, and no lab file has a result.".to_owned();
    }
    let packages = tally.packages.all();
    let mut sentences = vec![format!(
        "{} of {} had too little gluten to measure.",
        sentence_case(&number(tally.unmeasured)),
        number_of(packages, "package")
    )];
    sentences.push(match tally.over {
        0 => format!("No product had a package {}.", terms.over_the_limit),
        n => format!(
            "{} had at least one package {}.",
            sentence_case(&number_of(n, "product")),
            terms.over_the_limit
        ),
    });
    if tally.unmeasured > tally.packages.below {
        sentences.push(format!(
            "Too little to measure does not show {}; this leaves {} undecided.",
            terms.unshown("a package"),
            tally.unmeasured - tally.packages.below
        ));
    }
    if tally.none > 0 {
        sentences.push(format!(
            "{} got no verdict.",
            sentence_case(&number_of(tally.none, "product"))
        ));
    }
    sentences.join(" ")
}

/// What the counts say. Rounds that a later round of the same product supersedes are `left_out` of the share.
pub fn says(tally: &Tally, over: Option<&Share>, left_out: u64, terms: &Terms) -> String {
    let packages = format!(
        "They describe the {} that we bought.",
        counted(tally.packages.all() as usize, "package", "packages")
    );
    let Some(share) = over else {
        return format!("{packages} No product has a verdict yet.");
    };
    let once = match left_out {
        0 => String::new(),
        1 => ", each taken once by its latest round (one earlier round is left out, since rounds of one product are not independent)".to_owned(),
        n => format!(
            ", each taken once by its latest round ({} earlier rounds are left out, since rounds of one product are not independent)",
            number(n)
        ),
    };
    format!(
        "{packages} Of the {} with a verdict{once}, {} had a package {}. If we had picked products at random, the share among all such products would lie between {} and {}{NBSP}% (95{NBSP}% confidence).",
        counted(share.n as usize, "product", "products"),
        share.k,
        terms.over_the_limit,
        percent(share.exact.lower),
        percent(share.exact.upper)
    )
}

/// What the counts do not say. `packages` is how many are bought of each product.
pub fn does_not_say(packages: usize, terms: &Terms) -> String {
    let upper = upper_bound(packages);
    format!(
        "They do not say how common gluten is in foods that we did not buy, and a few packages can miss a problem. With 0 of {packages} {}, up to {}{NBSP}% of all packages of a product could still be (95{NBSP}% confidence, if the packages were a random pick).",
        terms.over_the_limit,
        percent(upper)
    )
}

/// The lede above the strip plot. `groups_over` of `groups` food groups have a package over the limit.
pub fn strip_lede(tally: &Tally, groups: usize, groups_over: usize, terms: &Terms) -> String {
    let packages = tally.packages.all();
    if packages == 0 {
        return "There is no package to show yet.".to_owned();
    }
    let marks = format!(
        "Each of the {} is shown where its result lies.",
        counted(packages as usize, "package", "packages")
    );
    let below = format!(
        "{} of them had too little gluten to measure.",
        sentence_case(&number(tally.unmeasured))
    );
    let over = match groups_over {
        0 => format!("None is {}.", terms.over_the_limit),
        n => format!(
            "Those {} come from {} of {}.",
            terms.over_the_limit,
            number(n as u64),
            number_of(groups as u64, "food group")
        ),
    };
    format!("{marks} {below} {over}")
}

/// What the marks of the strip plot mean; `crowded` where some rows have columns in their place.
pub fn strip_note(crowded: bool, terms: &Terms) -> String {
    let columns = if crowded {
        " Where they still would, columns of equal steps take their place, with the highest number on top."
    } else {
        ""
    };
    format!(
        "Arrows at the left: {}, with their number in front. Arrow on the scale: below the figure at its tip, or above it. Open circle: {}. Filled: {}. Dashed, at the right: the results do not decide. Marks are moved up or down only so that they do not touch.{columns}",
        terms.below,
        terms.measured,
        terms.over.to_lowercase()
    )
}

/// How many of the products over the limit had packages within it, too.
pub fn uneven(over: u64, mixed: u64, terms: &Terms) -> String {
    let of = match (mixed, over) {
        (1, 1) => format!("In the one product {}", terms.over_the_limit),
        (n, over) if n == over => {
            format!(
                "In all {} {}",
                number_of(n, "product"),
                terms.over_the_limit
            )
        }
        (n, over) => format!(
            "In {} of the {} {}",
            number(n),
            number_of(over, "product"),
            terms.over_the_limit
        ),
    };
    format!(
        "{of}, some packages were {} and some were not. That is why more than one package is bought, and why one package alone cannot speak for a product.",
        terms.within_the_limit
    )
}

/// What the table of packages that would say more is about. `packages` is how many are bought of each product.
pub fn needed(packages: usize, terms: &Terms) -> String {
    let shows = percent(upper_bound(packages));
    format!(
        "Of each product we test {}. Where none of them is {}, and only if they were a random pick, that shows with 95{NBSP}% confidence that fewer than {shows}{NBSP}% of all its packages are. To show that it is still fewer, more packages would have to be picked at random and tested, and none of them be {}:",
        number_of(packages as u64, "package"),
        terms.over_the_limit,
        terms.over_the_limit
    )
}

/// The exact one-sided 95 % bound of the share over the limit where none of so many packages is.
pub fn upper_bound(packages: usize) -> f64 {
    1.0 - 0.05f64.powf(1.0 / packages as f64)
}

/// Why groups of products are not ranked, from the tests between them.
pub fn groups_lede(contrasts: &[Contrast]) -> String {
    let apart: Vec<&str> = contrasts
        .iter()
        .filter(|contrast| contrast.p_holm < 0.05)
        .map(|contrast| contrast.category.as_str())
        .collect();
    match (contrasts.is_empty(), apart.as_slice()) {
        (true, _) => "The groups are small. Their intervals are wide, and a difference between two shares can come about by chance.".to_owned(),
        (false, []) => "No food group differs from all others by more than chance can bring about, once it is counted that we looked at each of them.".to_owned(),
        (false, apart) => format!(
            "{} differed from all others by more than chance would bring about (Fisher’s exact test, adjusted by Holm).",
            sentence_case(&apart.join(", "))
        ),
    }
}

/// What the quarters say taken together.
pub fn trend(trend: Option<&Trend>, quarters: &[QuarterCounts]) -> String {
    match trend {
        None if quarters.len() < 2 => {
            "With results from fewer than two quarters there is no trend to look for.".to_owned()
        }
        None => "There are too few products in each quarter to look for a trend.".to_owned(),
        Some(trend) if trend.p < 0.05 => format!(
            "Over {} quarters the share {}: more than chance would often bring about (Cochran-Armitage test, p {}).",
            trend.quarters,
            if trend.z > 0.0 { "grew" } else { "fell" },
            probability(trend.p)
        ),
        Some(trend) => format!(
            "Over {} quarters the share shows no trend that stands out from chance (Cochran-Armitage test, p {}).",
            trend.quarters,
            probability(trend.p)
        ),
    }
}

/// "= 0.32", "< 0.001".
pub fn probability(p: f64) -> String {
    if p < 0.001 {
        "< 0.001".to_owned()
    } else if p < 0.1 {
        format!("= {p:.3}")
    } else {
        format!("= {p:.2}")
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn counts_agree_with_their_nouns() {
        assert_eq!(number_of(2, "package"), "two packages");
        assert_eq!(number_of(0, "package"), "no packages");
        assert_eq!(title(0, None), "No food has been tested yet");
        assert_eq!(
            title(1, Some("gluten-free")),
            "What we found in 1 food labelled gluten-free"
        );
    }

    #[test]
    fn a_probability_is_never_printed_as_none() {
        assert_eq!(probability(0.000_01), "< 0.001");
        assert_eq!(probability(0.0321), "= 0.032");
        assert_eq!(probability(0.5), "= 0.50");
    }
}
