//! Products with every state and with content that is hard to set.

use crate::sample::{self, Sample};
use chrono::NaiveDate;
use galleyproof::config::Config;
use galleyproof::model::decided::JudgedProduct;
use galleyproof::model::package::{ResultKind, Standing};
use galleyproof::model::pair::{PairState, Usage};
use galleyproof::model::place::Place;
use galleyproof::model::reason::Reason;
use galleyproof::model::registers::Processing;
use galleyproof::model::registers::{Followup, FollowupKind, IssuedRevision, Oats, Package};

/// A statement of some 900 characters.
const LONG_STATEMENT: &str = ", oat flour (18 %, grown and milled separately), buckwheat flour (14 %), potato starch, \
    teff flour (6 %), toasted chestnut pieces (5 %), rapeseed oil, ground flaxseed, rice flour, psyllium husk, bamboo fibre, \
    glycerol (humectant), egg white powder, sunflower seeds (2 %), pumpkin seeds (1.5 %), apple pulp, yeast, cane sugar, \
    thickeners (hydroxypropyl methyl cellulose, xanthan gum, guar gum), iodised salt, raising agents (sodium hydrogen \
    carbonate, monocalcium phosphate), emulsifiers (mono- and diglycerides of fatty acids, lecithin from sunflower), \
    preservative (calcium propionate), flavouring, antioxidant (ascorbic acid), caramelised sugar syrup, fermented rice flour, \
    pea protein, modified tapioca starch, acidity regulator (citric acid), vitamins and minerals (calcium carbonate, iron, \
    niacin, riboflavin, thiamin, folic acid).";

fn followup(kind: FollowupKind, on: NaiveDate, note: Option<&str>) -> Followup {
    Followup {
        product_id: "0612".to_owned(),
        round: None,
        on,
        kind,
        due_on: (kind == FollowupKind::NoticeSent).then(|| on + chrono::Days::new(21)),
        statement: note.map(str::to_owned),
        note: None,
        place: Place::default(),
    }
}

/// A published revision.
pub fn revision(number: u32, on: NaiveDate, reason: Option<&str>) -> IssuedRevision {
    IssuedRevision {
        sheet_number: "TKW-0612-1".to_owned(),
        product_id: "0612".to_owned(),
        round: "1".to_owned(),
        revision: number,
        issued_on: on,
        content_sha256: "0".repeat(64),
        reason: reason.map(str::to_owned),
        changed: None,
        ..IssuedRevision::default()
    }
}

/// Over the limit, with everything that a sheet can hold.
pub fn fullest(config: &Config) -> JudgedProduct {
    let name = "Stone-Baked Buckwheat, Teff and Toasted Chestnut Sandwich Loaf, Sliced";
    let mut product = Sample::new(config, "0612", name)
        .package("A", &["<5", "<5"])
        .package("B", &["<5", "6.2"])
        .package("C", &["31.5", "28.2"])
        .done();
    product.verdict.label = sample::malt_finding("Water, ", LONG_STATEMENT);
    product.verdict.followups = vec![
        followup(FollowupKind::NoticeSent, sample::day(3, 25), None),
        followup(
            FollowupKind::Reply,
            sample::day(4, 11),
            Some("We have stopped sales of lot L31-0802 and are checking our chestnut supplier."),
        ),
    ];
    product.verdict.issued = vec![
        revision(1, sample::day(4, 22), None),
        revision(
            2,
            sample::day(4, 29),
            Some("Shop of package A corrected. Results unchanged."),
        ),
    ];
    product
}

/// Nothing to measure in any package.
pub fn none_measured(config: &Config) -> JudgedProduct {
    let mut product = Sample::new(config, "0637", "Crunchy Rice Hoops")
        .package("A", &["<5", "<5"])
        .package("B", &["<5", "<5"])
        .package("C", &["<5", "<5"])
        .done();
    product.verdict.issued = vec![revision(1, sample::day(5, 6), None)];
    product
}

/// A pair that disagrees, and a lone extraction.
pub fn undecided(config: &Config) -> JudgedProduct {
    Sample::new(config, "0660", "Battered Onion Rings with Chickpea Crumb")
        .package("A", &["7.4", "8.0"])
        .package("B", &["12.1", "27.6"])
        .package("C", &["<5"])
        .done()
}

/// Six packages, one with a repeat, one reported as gliadin, and a brand that is markup.
pub fn six_with_repeat(config: &Config) -> JudgedProduct {
    Sample::new(config, "0688", "Jumbo Rolled Oats")
        .product(|product| {
            product.brand = Some("Señora Zumbería #*_$@<>\\ [Ñandú] `x` =1+1".to_owned());
            product.oats = Oats::PurityProtocol;
        })
        .package("A", &["<5", "<5"])
        .package("B", &["9.8", "16.9", "11.2", "12.0"])
        .package("C", &["5.9", "<5"])
        .package("D", &["<5", "<5"])
        .package("E", &["18.4", "19.1"])
        .last(|package| package.pair.extractions[1].extraction.from_gliadin = true)
        .package("F", &["<5", "<5"])
        .done()
}

/// Bounds, very high figures, ten extractions, a reading set aside and one that is none.
pub fn extremes(config: &Config) -> JudgedProduct {
    let long_name = "Grandmother’s Slow-Fermented Three-Grain Crispbread with Sunflower, Pumpkin, Poppy and Sesame Seeds, \
                     Sea Salt Flakes and a Hint of Rosemary";
    let sound = |code: &str| {
        Package {
        package_code: code.to_owned(),
        lot: Some("LOTNUMBERWITHOUTANYBREAK0123456789".to_owned()),
        best_by: Some("best before end: see the lid".to_owned()),
        bought_on: Some(sample::day(3, 4)),
        shop: Some("The Exceedingly Long-Named Provisions, Dry Goods and Whole Foods Emporium of Upper Saltmere (online)".to_owned()),
        ..Package::default()
    }
    };
    Sample::new(config, "X-1", long_name)
        .bought(sound("X-1-A"), &["150.25", ">200"])
        .bought(sound("HARROW-2031-000123-REPEAT-A"), &[">80", ">80"])
        .bought(
            sound("X-1-C"),
            &[
                "6.1", "7.0", "5.2", "<5", "6.6", "8.8", "9.1", "7.7", "6.0", "5.5",
            ],
        )
        .bought(sound("X-1-D"), &["19.96", "19.90"])
        .bought(sound("X-1-E"), &["17.2", "22.6"])
        .bought(sound("X-1-F"), &["insufficient sample", "12.0"])
        .bought(sound("X-1-G"), &["40.0", "9.0", "8.0"])
        .last(|package| {
            package.pair.extractions[0].usage = Usage::Excluded {
                reason: "the extract was spilled".to_owned(),
                by: "O. Fennimore".to_owned(),
                on: sample::day(3, 21),
            };
        })
        .bought(sound("X-1-H"), &[])
        .done()
}

/// One of each.
pub fn all(config: &Config) -> Vec<JudgedProduct> {
    vec![
        fullest(config),
        none_measured(config),
        undecided(config),
        six_with_repeat(config),
        extremes(config),
        conflicting(config),
    ]
}

/// Two reports of one extraction that differ, one package with no result, and a food that the assay under-reports.
pub fn conflicting(config: &Config) -> JudgedProduct {
    let mut product = Sample::new(config, "0701", "Barley-Free Miso Paste")
        .package("A", &["8.0", "9.0"])
        .last(|package| {
            package.pair.extractions[1].extraction.number = 1;
            package.pair.state = PairState::Incomplete;
            package.pair.comparison = None;
            package.result = ResultKind::None;
            package.standing = Standing::Unresolved;
            for paired in &mut package.pair.extractions {
                paired.usage = Usage::InConflict;
            }
        })
        .package("B", &[])
        .package("C", &["<5", "<5"])
        .done();
    product.verdict.method_unfit = Some(Reason::SandwichUnfit(Processing::Fermented));
    product
}

/// Too near the limit for the assay's uncertainty.
pub fn too_close(config: &Config) -> JudgedProduct {
    Sample::new(config, "0702", "Corn Cakes")
        .package("A", &["17.0", "18.0"])
        .last(|package| package.standing = Standing::Inconclusive)
        .package("B", &["<5", "<5"])
        .package("C", &["6.0", "5.5"])
        .done()
}

/// Three packages with readings on both sides of most limits.
pub fn mixed(config: &Config, product_id: &str) -> JudgedProduct {
    Sample::new(config, product_id, "Chickpea Puffs")
        .package("A", &["<5", "<5"])
        .package("B", &["4.0", "3.1"])
        .package("C", &["9.8", "10.4"])
        .done()
}
