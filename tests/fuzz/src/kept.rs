//! What people keep: every register at once, read and decided on.

use crate::config::Config;
use crate::gather::gather;
use crate::judge::judge;
use crate::model::problem::Problems;
use crate::pieces;
use crate::words::english;
use chrono::NaiveDate;
use std::fs;

/// The registers in the order of their pieces; after them comes a lab file.
pub const REGISTERS: [&str; 8] = [
    "products",
    "packages",
    "corrections",
    "followups",
    "reports",
    "terms",
    "blinds",
    "issued",
];

/// A programme folder of these pieces: registers and one lab file. It goes away when dropped.
pub struct Programme {
    /// Its folder.
    pub root: tempfile::TempDir,
    /// Its settings.
    pub config: Config,
}

impl Programme {
    /// Writes the pieces to where they belong.
    pub fn of(pieces: &[&[u8]]) -> Programme {
        let root = tempfile::tempdir().expect("makes a folder");
        let settings = "[programme]\nname = \"Tidewater Kitchen Works\"\nshort_name = \"TKW\"\n";
        let config = Config::parse(settings, root.path()).expect("the settings are right");
        for folder in ["registers", "inbox", "report-templates"] {
            fs::create_dir(root.path().join(folder)).expect("makes a folder");
        }
        for (name, piece) in REGISTERS.iter().zip(pieces) {
            // An empty one is told as a fault of its own.
            if !piece.is_empty() {
                let path = root.path().join(format!("registers/{name}.csv"));
                fs::write(path, piece).expect("writes");
            }
        }
        if let Some(piece) = pieces.get(REGISTERS.len()) {
            fs::write(root.path().join("inbox/a.csv"), piece).expect("writes");
        }
        Programme { root, config }
    }
}

/// The pieces as registers and one lab file: read, and decided as a run would. Whatever they are, it must end; what is
/// decided is decided of registered packages of registered products.
pub fn decide(bytes: &[u8]) {
    let programme = Programme::of(&pieces::of(bytes));
    let config = &programme.config;
    let mut problems = Problems::default();
    let Ok(gathered) = gather(config, &mut problems, &|_, _| {}) else {
        return;
    };
    let day = NaiveDate::from_ymd_opt(2031, 5, 1);
    let (registers, extractions) = (gathered.registers, gathered.extractions);
    let judged = judge(&registers, extractions, config, day, &mut problems);
    for product in judged.products {
        assert!(
            registers
                .products
                .contains_key(&product.verdict.product.product_id)
        );
    }
    for problem in problems.sorted() {
        assert!(!english().found(problem).is_empty() && !problem.place.file.is_empty());
    }
}
