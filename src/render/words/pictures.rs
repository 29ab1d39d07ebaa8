//! What is drawn on a sheet beside its words: a hundred packages, and gluten in a portion.

use crate::model::decided::JudgedProduct;
use crate::model::package::{PackageResult, ResultKind};
use crate::model::pair::PairState;
use crate::model::ppm::Ppm;
use crate::model::sheet::{PortionPicture, SharesPicture, Strip};
use crate::model::verdict::{ProductVerdict, Verdict};
use crate::render::numbers;
use crate::render::words::limit::LimitWords;
use crate::render::words::meaning::upper_end;
use crate::words::{Catalogue, say};
use std::iter::once;

/// A hundred packages for those that were tested, and for more of them where none was over the limit; none where there is no
/// verdict, since the picture would speak of what nobody knows.
pub fn shares(judged: &JudgedProduct, words: &Catalogue) -> Option<SharesPicture> {
    let limit = LimitWords::of(judged.verdict.rule, words);
    let statistics = &judged.statistics;
    let tested = judged.verdict.packages.len() as u64;
    let strip = |over: u64, packages: u64, at_least: u64, at_most: u64| Strip {
        said: words.say(&say::shares_strip(over.to_string(), packages, at_most)),
        at_least,
        at_most,
    };
    match judged.verdict.verdict {
        Verdict::NoVerdict => None,
        Verdict::OverLimit => {
            let share = statistics.over?;
            // What rounds to none is not drawn as one: the least is a lower end.
            let at_least = (share.exact.lower * 100.0).round() as u64;
            let at_most = numbers::of_a_hundred(share.exact.upper);
            let alt = say::shares_alt_over(at_least, at_most, limit.side());
            Some(SharesPicture {
                strips: vec![strip(share.k, share.n, at_least, at_most)],
                key: words.say(&say::shares_key_over(limit.side())),
                alt: words.say(&alt),
            })
        }
        Verdict::WithinLimit(_) => {
            let upper = numbers::of_a_hundred(statistics.one_sided_upper?);
            let more = statistics.if_none_of_more.iter().map(|one| {
                let at_most = numbers::of_a_hundred(one.upper);
                Strip {
                    said: words.say(&say::shares_more(one.packages, at_most)),
                    at_least: 0,
                    at_most,
                }
            });
            let strips: Vec<Strip> = once(strip(0, tested, 0, upper)).chain(more).collect();
            let said: Vec<&str> = strips.iter().map(|strip| strip.said.as_str()).collect();
            Some(SharesPicture {
                key: words.say(&say::shares_key(limit.side())),
                alt: words.say(&say::shares_alt(said.join("; "), limit.side())),
                strips,
            })
        }
    }
}

/// More squares than these are no picture any more.
const MOST_SQUARES: f64 = 60.0;

/// What the highest package result means in a portion; none where the register has no portion, the rule no amount, or some
/// package has no figure that it could be above.
pub fn portion(product: &ProductVerdict, words: &Catalogue) -> Option<PortionPicture> {
    let grams = product.product.serving_g?;
    let rule = product.rule;
    if rule.limit.detection || product.claim.limit.is_none() {
        return None;
    }
    let ends = product.packages.iter().map(|package| {
        let agrees = package.pair.state != PairState::Disagree;
        Some((upper_end(package).filter(|_| agrees)?, package))
    });
    let ends: Option<Vec<(Ppm, &PackageResult)>> = ends.collect();
    let (ppm, package) = ends?.into_iter().max_by(|a, b| a.0.0.total_cmp(&b.0.0))?;
    let at_most = !matches!(package.result, ResultKind::Value { .. });
    // 1 ppm is 1 mg in a kilogram.
    let (own, limit) = (ppm.0 * grams / 1000.0, rule.limit.ppm.0 * grams / 1000.0);
    let square = square_mg(limit);
    if own / square > MOST_SQUARES {
        return None;
    }
    let of_limit = LimitWords::of(rule, words);
    let (own_mg, limit_mg) = numbers::portions(own, limit);
    let mg = |figure: &str| words.quantity(figure, "mg");
    let plain = ppm.same(rule.limit.ppm) || ppm.0.fract() == 0.0;
    let figure = of_limit.quantity(&match plain {
        true => numbers::plain(ppm),
        false => numbers::figure(ppm, rule.limit),
    });
    let portion = words.quantity(&numbers::plain(Ppm(grams)), "g");
    let kind = if at_most { "below" } else { "measured" };
    let said = say::portion_said(
        kind,
        portion.as_str(),
        &package.pair.package.package_code,
        figure,
        mg(&own_mg),
        mg(&limit_mg),
    );
    let one = mg(&numbers::plain(Ppm(square)));
    Some(PortionPicture {
        said: words.say(&said),
        squares: own / square,
        at_most,
        at_limit: limit / square,
        own: words.say(&say::portion_own(kind, mg(&own_mg))),
        limit: words.say(&say::portion_limit(mg(&limit_mg))),
        alt: words.say(&say::portion_alt(kind, mg(&own_mg), mg(&limit_mg), one)),
    })
}

/// What a square stands for: 1, 2 or 5 of a decimal place, so that the portion at the limit has 8 to 20 of them.
fn square_mg(limit: f64) -> f64 {
    let mut decade = 1.0;
    while limit / decade < 2.0 {
        decade /= 10.0;
    }
    while limit / decade >= 20.0 {
        decade *= 10.0;
    }
    // From 2 to 20 squares of a decade: parted further where they are few.
    match limit / decade {
        few if few < 4.0 => decade / 5.0,
        some if some < 8.0 => decade / 2.0,
        _ => decade,
    }
}

#[cfg(test)]
mod tests {
    use super::square_mg;

    #[test]
    fn a_portion_at_the_limit_has_a_handful_of_squares() {
        for grams in 1..=1000 {
            for limit in [5.0, 10.0, 20.0, 100.0, 200.0] {
                let mg = limit * f64::from(grams) / 1000.0;
                let squares = mg / square_mg(mg);
                assert!((8.0..=20.0).contains(&squares), "{mg} mg: {squares}");
            }
        }
    }
}
