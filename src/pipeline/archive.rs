//! What the archive says: a bag against its manifests, two bags against each other, a sheet against its last revision.

use crate::config::Config;
use crate::files;
use crate::model::decided::JudgedProduct;
use crate::model::ppm::Ppm;
use crate::model::rule::{Limit, Regime};
use crate::pipeline::amended::{self, Former};
use crate::pipeline::issue::Pending;
use crate::render::numbers;
pub use crate::save::compare::{Amended, Comparison, Sheet, VerdictChange};
use crate::save::edition::{self, Change, Print, Product, SheetKey};
pub use crate::save::verify::{Fault, FaultKind, Verification, verify};
use crate::save::{bag, compare as comparing, issued};
use anyhow::Result;
use std::collections::BTreeMap;
use std::path::Path;

/// What a reader of the first bag must know of the second.
///
/// # Errors
/// Where one of them is no bag that `issue` wrote.
pub fn compare(first: &Path, second: &Path) -> Result<Comparison> {
    let (first, second) = (edition::read(first)?, edition::read(second)?);
    let rule = second
        .rule
        .as_ref()
        .expect("a bag that was read has a rule");
    let limit = Limit::amount(Ppm(rule.limit_ppm), rule.limit_passes);
    let regime = Regime::ALL.iter().find(|(_, word)| *word == rule.regime);
    let regime = regime.map_or(Regime::Custom, |(regime, _)| *regime);
    let figure = |x| numbers::figure(Ppm(x), limit);
    let print = Print {
        figure: &figure,
        unit: regime.unit(),
    };
    Ok(comparing::compare(&first, &second, &print))
}

/// What amended sheets said in the revision that they replace.
pub struct Published {
    products: BTreeMap<SheetKey, Product>,
    sheets: BTreeMap<SheetKey, Former>,
}

impl Published {
    /// Looks for the last revision of each sheet in the bag that first held it: a later bag may have been made while the
    /// sheet was a proof again.
    ///
    /// # Errors
    /// Where the archive cannot be listed. A bag that cannot be read is left to `verify` to name.
    pub fn read(archive: &Path, pending: &[Pending<'_>]) -> Result<Published> {
        let amended = pending.iter().filter(|one| one.revision > 1);
        let mut sought: BTreeMap<(String, u32), SheetKey> = amended
            .map(|one| {
                let verdict = &one.judged.verdict;
                let key = SheetKey {
                    product_id: verdict.product.product_id.clone(),
                    round: verdict.round.clone(),
                };
                ((one.sheet_number.clone(), one.revision - 1), key)
            })
            .collect();
        let mut published = Published {
            products: BTreeMap::new(),
            sheets: BTreeMap::new(),
        };
        for bag in bag::list(archive)? {
            if sought.is_empty() {
                break;
            }
            let register = bag.join("data").join(issued::FILE_NAME);
            let rows = issued::rows(&files::read_if_there(&register)?.unwrap_or_default())?;
            let here = rows
                .iter()
                .filter_map(|row| sought.remove(&(row.sheet_number.clone(), row.revision)));
            let here: Vec<SheetKey> = here.collect();
            if let (false, Ok(mut edition)) = (here.is_empty(), edition::read(&bag)) {
                let mut former = amended::former(&bag);
                for key in here {
                    let sheet = former.remove_entry(&key);
                    published.sheets.extend(sheet);
                    let product = edition.products.remove_entry(&key);
                    published.products.extend(product);
                }
            }
        }
        Ok(published)
    }

    /// What changed of a sheet, in words; none where what it said is not known.
    pub fn changed(
        &self,
        key: &SheetKey,
        now: Option<&Product>,
        judged: &JudgedProduct,
        config: &Config,
    ) -> Option<String> {
        let figure = |x| numbers::figure(Ppm(x), config.rule.limit);
        let print = Print {
            figure: &figure,
            unit: config.rule.regime.unit(),
        };
        let changes = edition::changes(self.products.get(key)?, now?, &print);
        let told: Vec<String> = changes.iter().map(Change::to_string).collect();
        let former = self.sheets.get(key);
        let other = former.map_or(Vec::new(), |former| former.against(judged, config));
        Some(match (told.is_empty(), other.is_empty()) {
            (true, true) => "No figure and no verdict changed".to_owned(),
            (true, false) => format!(
                "No figure and no verdict changed. Changed: {}",
                other.join("; ")
            ),
            (false, true) => told.join("; "),
            (false, false) => format!("{}. Also changed: {}", told.join("; "), other.join("; ")),
        })
    }
}
