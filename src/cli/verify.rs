//! `verify`: check that an archive, or what a sheet carries, is what it was.

use crate::cli::Ending;
use crate::cli::args::Format;
use crate::cli::print;
use crate::pipeline::archive::{self, FaultKind, Verification};
use anyhow::Result;
use serde_json::json;
use std::fmt::Write;
use std::path::Path;

/// Checks every file of a bag against its manifests, or every file that a sheet carries against its case.
pub fn verify(bag: &Path, format: Format) -> Result<Ending> {
    print::tell_unfinished_above(bag);
    let is_sheet = bag.is_file() && bag.extension().is_some_and(|end| end == "pdf");
    let (found, sheet) = match is_sheet {
        true => {
            let sheet = archive::verify_sheet(bag)?;
            let found = Verification {
                sound: sheet.sound,
                faults: sheet.faults.clone(),
            };
            (found, Some(sheet))
        }
        false => (archive::verify(bag)?, None),
    };
    if let (Some(sheet), Format::Text) = (&sheet, format) {
        print::result(&format!(
            "Sheet {}. What it says has the SHA-256 {}: the programme’s registers/issued.csv names it.\n",
            sheet.sheet_number, sheet.content_sha256
        ))?;
    }
    print::result(&match format {
        Format::Text => as_text(bag, &found, sheet.is_some()),
        Format::Json => as_json(bag, &found),
    })?;
    Ok(match found.faults.is_empty() {
        true => Ending::Well,
        false => Ending::LookAtErrors,
    })
}

fn as_text(bag: &Path, found: &Verification, is_sheet: bool) -> String {
    let bag = bag.display().to_string();
    let bag = print::named(&bag);
    if found.faults.is_empty() && is_sheet {
        return format!(
            "{bag}: the {} files that it carries are those that it was made with. What its pages show is not compared: the PDF as it was issued lies in the archive, and `verify` of that bag tells whether it is unchanged.\n",
            found.sound
        );
    }
    if found.faults.is_empty() {
        return format!("{bag} is as it was made: {} files.\n", found.sound);
    }
    let mut text = String::new();
    for fault in &found.faults {
        let path = print::named(&fault.path);
        write!(text, "  {:<9} {path}", fault.kind.word()).expect("a string takes all");
        if let FaultKind::Unusable(why) = &fault.kind {
            write!(text, ": {}", print::named(why)).expect("a string takes all");
        }
        text.push('\n');
    }
    let still = match found.is_valid_bag() {
        true => " It is a valid bag still: what it was made of is all there.",
        false => "",
    };
    writeln!(
        text,
        "{bag} is not as it was made: {} of its files are.{still}",
        found.sound
    )
    .expect("a string takes all");
    text
}

fn as_json(bag: &Path, found: &Verification) -> String {
    let faults: Vec<_> = found
        .faults
        .iter()
        .map(|fault| {
            let why = match &fault.kind {
                FaultKind::Unusable(why) => Some(why),
                _ => None,
            };
            json!({ "kind": fault.kind.word(), "path": fault.path, "why": why })
        })
        .collect();
    let whole = faults.is_empty();
    let bag = bag.display().to_string();
    format!(
        "{:#}\n",
        json!({ "bag": bag, "whole": whole, "sound": found.sound, "faults": faults })
    )
}
