//! What amended sheets said in the revision that they replace.

use crate::archive::amended::{self, Decide, Former};
use crate::archive::edition::{self, Print, SheetKey};
use crate::archive::{bag, issued};
use crate::config::Config;
use crate::files;
use crate::model::decided::JudgedProduct;
use crate::model::ppm::Ppm;
use crate::model::results::Product;
use crate::render::numbers;
use crate::words::say;
use anyhow::Result;
use std::collections::BTreeMap;
use std::path::Path;

/// What amended sheets said in the revision that they replace.
pub struct Published {
    products: BTreeMap<SheetKey, Product<'static>>,
    sheets: BTreeMap<SheetKey, Former>,
}

/// Revisions that are looked for: sheet number and revision, and whose sheet it is.
pub type Sought = BTreeMap<(String, u32), SheetKey>;

impl Published {
    /// Looks for each revision in the bag that first held it: a later bag may have been made while the sheet was a proof
    /// again.
    ///
    /// # Errors
    /// Where the archive cannot be listed. A bag that cannot be read is left to `verify` to name.
    pub fn read(archive: &Path, mut sought: Sought, decide: Decide<'_>) -> Result<Published> {
        let mut published = Published {
            products: BTreeMap::new(),
            sheets: BTreeMap::new(),
        };
        for bag in bag::list(archive)? {
            if sought.is_empty() {
                break;
            }
            let register = bag::programme(&bag).join(issued::FILE_NAME);
            let bytes = files::read_if_there(&register);
            let Ok(rows) = bytes.and_then(|bytes| issued::rows(&bytes.unwrap_or_default())) else {
                continue;
            };
            let here = rows
                .iter()
                .filter_map(|row| sought.remove(&(row.sheet_number.clone(), row.revision)));
            let here: Vec<SheetKey> = here.collect();
            if let (false, Ok(mut edition)) = (here.is_empty(), edition::read(&bag)) {
                let mut former = amended::former(&bag, decide);
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
        now: Option<&Product<'_>>,
        judged: &JudgedProduct,
        config: &Config,
    ) -> Option<String> {
        let figure = |x| numbers::figure(Ppm(x), config.rule.limit);
        let words = &config.words;
        let print = Print {
            figure: &figure,
            unit: config.rule.regime.unit(),
            words,
        };
        let changes = edition::changes(self.products.get(key)?, now?, &print);
        let mut told: Vec<String> = changes.iter().map(|change| change.said(words)).collect();
        if told.is_empty() {
            told.push(words.say(&say::amended_no_figure()));
        }
        let former = self.sheets.get(key);
        told.extend(
            former
                .into_iter()
                .flat_map(|former| former.against(judged, config)),
        );
        Some(told.join(" "))
    }
}
