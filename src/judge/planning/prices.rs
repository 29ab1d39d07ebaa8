//! What a package is expected to cost, from what was paid before.

use crate::config::Planning;
use crate::model::planning::{Price, PriceOf, RoundCosts};
use crate::model::registers::{Package, Product};
use std::collections::BTreeMap;

/// What was paid for packages, by category and in all.
#[derive(Debug, Default)]
pub struct Prices {
    by_category: BTreeMap<String, Vec<f64>>,
    all: Vec<f64>,
    stand_in: Option<f64>,
}

impl Prices {
    /// From the registers. Prices with another mark of currency than most have are left out: they are other money.
    pub fn paid(
        packages: &[Package],
        products: &BTreeMap<String, Product>,
        planning: &Planning,
    ) -> Prices {
        let read: Vec<(&Package, Money)> = packages
            .iter()
            .filter_map(|package| Some((package, read(package.price.as_deref()?)?)))
            .collect();
        let mut marks: BTreeMap<&str, usize> = BTreeMap::new();
        for (_, money) in read.iter().filter(|(_, money)| !money.mark.is_empty()) {
            *marks.entry(&money.mark).or_default() += 1;
        }
        let usual = marks
            .iter()
            .max_by_key(|(_, count)| **count)
            .map(|(mark, _)| (*mark).to_owned());
        let mut prices = Prices {
            stand_in: planning.package_price,
            ..Prices::default()
        };
        for (package, money) in &read {
            if !money.mark.is_empty() && Some(&money.mark) != usual.as_ref() {
                continue;
            }
            prices.all.push(money.amount);
            let product = products.get(&package.product_id);
            if let Some(category) = product.and_then(|product| product.category.as_deref()) {
                let key = category.trim().to_lowercase();
                prices
                    .by_category
                    .entry(key)
                    .or_default()
                    .push(money.amount);
            }
        }
        prices.all.sort_by(f64::total_cmp);
        for paid in prices.by_category.values_mut() {
            paid.sort_by(f64::total_cmp);
        }
        prices
    }

    /// What a package of this product is expected to cost: the median of its category, else of everything, else the
    /// figure of the settings; none where nothing is known.
    pub fn of(&self, product: &Product) -> Option<Price> {
        let category = product.category.as_deref().unwrap_or_default();
        let own = self.by_category.get(&category.trim().to_lowercase());
        let own = own.and_then(|paid| price(paid, PriceOf::Category));
        own.or_else(|| price(&self.all, PriceOf::Everything))
            .or_else(|| {
                let median = self.stand_in?;
                Some(Price {
                    median,
                    lowest: median,
                    highest: median,
                    paid: 0,
                    of: PriceOf::Settings,
                })
            })
    }
}

impl Prices {
    /// What a package of these products costs on average; else the median of all that was paid; none where nothing is known.
    pub fn typical(&self, expected: &[Option<Price>]) -> Option<f64> {
        let known: Vec<f64> = expected
            .iter()
            .filter_map(|price| Some(price.as_ref()?.median))
            .collect();
        if known.is_empty() {
            let all = price(&self.all, PriceOf::Everything).map(|price| price.median);
            return all.or(self.stand_in);
        }
        Some(known.iter().sum::<f64>() / known.len() as f64)
    }
}

fn price(sorted: &[f64], of: PriceOf) -> Option<Price> {
    let (first, last) = (sorted.first()?, sorted.last()?);
    let middle = sorted.len() / 2;
    let median = match sorted.len() % 2 {
        0 => (sorted[middle - 1] + sorted[middle]) / 2.0,
        _ => sorted[middle],
    };
    Some(Price {
        median,
        lowest: *first,
        highest: *last,
        paid: sorted.len(),
        of,
    })
}

/// A sum of money as written.
#[derive(Clone, Debug, PartialEq)]
struct Money {
    amount: f64,
    /// What stands around the figure: "€", "eur".
    mark: String,
}

/// Reads "4.50", "€ 3,99", "1.234,50 EUR"; none where it is no sum, or could be two.
fn read(written: &str) -> Option<Money> {
    let first = written.find(|c: char| c.is_ascii_digit())?;
    let last = written.rfind(|c: char| c.is_ascii_digit())?;
    let figure = &written[first..=last];
    if written[..first].ends_with('-')
        || !figure
            .chars()
            .all(|c| c.is_ascii_digit() || ",. ’'".contains(c))
    {
        return None;
    }
    // The last mark with one or two digits behind it divides off the cents; all others divide thousands.
    let (whole, cents) = match figure.rfind([',', '.']) {
        Some(at) if figure.len() - at <= 3 => (&figure[..at], &figure[at + 1..]),
        _ => (figure, ""),
    };
    let thousands = whole.split([',', '.', ' ', '’', '\'']).collect::<Vec<_>>();
    let grouped = thousands.len() == 1 || thousands[1..].iter().all(|group| group.len() == 3);
    if !grouped || !cents.bytes().all(|byte| byte.is_ascii_digit()) {
        return None;
    }
    let around = format!("{}{}", &written[..first], &written[last + 1..]);
    Some(Money {
        amount: format!("{}.{cents}0", thousands.concat()).parse().ok()?,
        mark: around
            .chars()
            .filter(|c| !c.is_whitespace() && !",.-–".contains(*c))
            .flat_map(char::to_lowercase)
            .collect(),
    })
}

/// What it costs to test these packages: each price is that of one package of a product.
pub fn costs(
    prices: &[Option<Price>],
    packages: usize,
    extractions: usize,
    blinds: usize,
    planning: &Planning,
) -> RoundCosts {
    let known: Vec<f64> = prices
        .iter()
        .filter_map(|price| Some(price.as_ref()?.median))
        .collect();
    let count = prices.len() * packages + blinds;
    let bought = (!known.is_empty()).then(|| known.iter().sum::<f64>() * packages as f64);
    let lab = planning
        .extraction_price
        .map(|price| price * (count * extractions) as f64);
    let shipping = planning.shipping_price.filter(|_| count > 0);
    let shipping = shipping.or(planning.shipping_price.map(|_| 0.0));
    let parts = [bought, lab, shipping].into_iter().flatten();
    RoundCosts {
        packages: bought,
        lab,
        shipping,
        total: parts.reduce(|sum, part| sum + part),
    }
}

/// Whether a sum is within a budget, as on paper: a part in a thousand million is no money.
pub fn fits(total: f64, budget: f64) -> bool {
    total <= budget * (1.0 + 1e-9) + 1e-9
}

#[cfg(test)]
mod tests {
    use super::*;

    fn amount(text: &str) -> Option<f64> {
        read(text).map(|money| money.amount)
    }

    #[test]
    fn prices_are_read_as_on_receipts() {
        assert_eq!(amount("4.50"), Some(4.5));
        assert_eq!(amount("€ 3,99"), Some(3.99));
        assert_eq!(amount("1.234,50 EUR"), Some(1234.5));
        assert_eq!(amount("1,234"), Some(1234.0));
        assert_eq!(amount("12"), Some(12.0));
        assert_eq!(amount("$7.5"), Some(7.5));
        for none in ["", "free", "-3.00", "2 for 5,00", "3/4", "12.34.5"] {
            assert_eq!(amount(none), None, "{none}");
        }
    }

    #[test]
    fn a_median_is_by_category_and_other_money_is_left_out() {
        let product = |id: &str, category: &str| Product {
            product_id: id.to_owned(),
            category: Some(category.to_owned()),
            ..Product::default()
        };
        let products: BTreeMap<String, Product> = [("A", "Bread"), ("B", "Pasta")]
            .map(|(id, category)| (id.to_owned(), product(id, category)))
            .into();
        let package = |id: &str, price: &str| Package {
            product_id: id.to_owned(),
            price: Some(price.to_owned()),
            ..Package::default()
        };
        let packages = [
            package("A", "€3.00"),
            package("A", "€5.00"),
            package("A", "€4.50"),
            package("A", "$90"),
        ];
        let prices = Prices::paid(&packages, &products, &Planning::default());
        let bread = prices.of(&products["A"]).expect("was paid");
        assert_eq!((bread.median, bread.lowest, bread.highest), (4.5, 3.0, 5.0));
        assert_eq!((bread.paid, bread.of), (3, PriceOf::Category));
        let pasta = prices.of(&products["B"]).expect("something was paid");
        assert_eq!((pasta.median, pasta.of), (4.5, PriceOf::Everything));
        let nothing = Prices::paid(&[], &products, &Planning::default());
        assert_eq!(nothing.of(&products["A"]), None);
    }

    #[test]
    fn nothing_known_is_no_sum() {
        let planning = Planning::default();
        assert_eq!(costs(&[], 3, 2, 0, &planning).total, None);
        let priced = Planning {
            extraction_price: Some(40.0),
            ..planning
        };
        assert_eq!(costs(&[None], 3, 2, 0, &priced).total, Some(240.0));
        let none = costs(&[], 3, 2, 0, &priced).total.expect("is known");
        assert!(none.is_sign_positive(), "no round costs -0.00");
    }
}
