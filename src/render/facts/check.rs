//! How a sheet can be checked: where the figures of its sum stand, and its page on the web.

use crate::config::Config;
use crate::model::place::{Source, column_letter};
use crate::model::verdict::ProductVerdict;
use crate::render::addresses;
use crate::render::facts::qr;
use crate::render::words::{breakable, sum};
use crate::words::say;
use serde::Serialize;

/// How a sheet can be checked, beside the sum that it shows.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct CheckFacts {
    /// In which file, row and column the figures of the sum stand; none where there is no sum.
    pub place: Option<String>,
    /// The sheet's page, where the sheet is issued and the settings name the site.
    pub page: Option<PageLink>,
}

/// The address of a page, as a link and as a square.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct PageLink {
    /// The address.
    pub address: String,
    /// What is said of it.
    pub said: String,
    /// Its QR code, drawn.
    pub svg: String,
    /// What the drawing is, for who cannot see it.
    pub alt: String,
}

/// For this product's sheet; a proof has no page yet.
pub fn check(verdict: &ProductVerdict, is_issued: bool, config: &Config) -> CheckFacts {
    let words = &config.words;
    let source = sum::shown(verdict).and_then(|package| package.pair.usable().next());
    let place = source.map(|extraction| {
        let Source {
            file, row, column, ..
        } = &extraction.source;
        let name = file.path.rsplit('/').next().unwrap_or(&file.path);
        let column = column_letter(*column);
        breakable(
            &words.say(&say::check_place(name, row.to_string(), column)),
            24,
        )
    });
    let address = addresses::address_of(&verdict.stem(), &config.programme);
    let page = address.filter(|_| is_issued).map(|address| PageLink {
        said: words.say(&say::check_page()),
        svg: qr::svg(&address),
        alt: words.say(&say::check_square(&address)),
        address,
    });
    CheckFacts { place, page }
}
