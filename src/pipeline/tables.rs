//! Which tables a verdict rests on: two programs that name the same ones judge by the same limits and label terms.

use crate::files::hex;
use crate::judge::{claims, labels};
use sha2::{Digest, Sha256};
use std::sync::LazyLock;

/// So many hexadecimal digits of a table's SHA-256 name it.
const DIGITS: usize = 12;

/// The program's version, and that of its two tables: the beginning of the SHA-256 of what stands in each.
pub fn version() -> &'static str {
    static VERSION: LazyLock<String> = LazyLock::new(|| {
        format!(
            "{}\nrule table  {}\nlabel table {}",
            env!("CARGO_PKG_VERSION"),
            name(&claims::table()),
            name(labels::built_in_text())
        )
    });
    &VERSION
}

fn name(table: &str) -> String {
    // The same table has the same name, however its lines were brought to this machine.
    let table = table.replace("\r\n", "\n");
    let mut digits = hex(&Sha256::digest(table));
    digits.truncate(DIGITS);
    digits
}
