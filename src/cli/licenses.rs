//! `licenses`: what the program is made of, and under which licence each part is passed on.

use crate::cli::Ending;
use crate::cli::args::Format;
use crate::cli::print;
use anyhow::Result;
use serde::Deserialize;
use std::fmt::Write;

/// The bill of materials in the form of CycloneDX 1.5. A test holds it against what is linked.
const BILL: &str = include_str!("bill.cdx.json");

#[derive(Deserialize)]
struct Bill {
    components: Vec<Component>,
}

#[derive(Deserialize)]
struct Component {
    name: String,
    #[serde(default)]
    version: String,
    licenses: Vec<Licence>,
}

#[derive(Deserialize)]
#[serde(rename_all = "lowercase")]
enum Licence {
    /// Alternatives and conditions, as SPDX writes them.
    Expression(String),
    /// One of SPDX's list.
    License {
        /// Its identifier.
        id: String,
    },
}

/// Prints the list, or the bill whole.
///
/// # Errors
/// Where standard output cannot be written.
pub fn licenses(format: Format) -> Result<Ending> {
    match format {
        Format::Json => print::result(BILL)?,
        Format::Text => print::result(&listed()?)?,
    }
    Ok(Ending::Well)
}

fn listed() -> Result<String> {
    let bill: Bill = serde_json::from_str(BILL)?;
    let mut text = format!(
        "galleyproof {}: {}\n\nIt is made with these libraries and fonts, each under its own licence:\n\n",
        env!("CARGO_PKG_VERSION"),
        env!("CARGO_PKG_LICENSE")
    );
    for component in &bill.components {
        let named = match component.version.as_str() {
            "" => component.name.clone(),
            version => format!("{} {version}", component.name),
        };
        let licences = component.licenses.iter().map(|licence| match licence {
            Licence::Expression(expression) => expression.as_str(),
            Licence::License { id } => id,
        });
        let licences: Vec<&str> = licences.collect();
        writeln!(text, "{named}: {}", licences.join(", ")).expect("a string takes all");
    }
    Ok(text)
}
