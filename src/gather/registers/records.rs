//! The registers of corrections, of correspondence, and of what has been issued.

use crate::gather::codes::Codes;
use crate::gather::registers::fields::{Fields, Table};
use crate::gather::registers::ids;
use crate::gather::registers::packages::known_product;
use crate::gather::registers::products::KnownProducts;
use crate::gather::text;
use crate::model::problem::Problems;
use crate::model::registers::{
    Correction, CorrectionAction, Followup, FollowupKind, IssuedRevision, Registers,
};
use std::collections::BTreeMap;
use unicode_normalization::UnicodeNormalization;

/// Reads the corrections; each must name a lab file and a registered package.
pub fn corrections(
    table: &mut Table,
    lab_files: &BTreeMap<String, String>,
    registers: &mut Registers,
    problems: &mut Problems,
) {
    if !table.needs(
        &["file", "package_code", "action", "reason", "by", "on"],
        problems,
    ) {
        return;
    }
    let codes = Codes::new(
        registers
            .packages
            .iter()
            .map(|package| package.package_code.as_str()),
    );
    for fields in table.rows() {
        registers
            .corrections
            .extend(correction(&fields, &codes, lab_files, problems));
    }
}

fn correction(
    fields: &Fields<'_>,
    codes: &Codes,
    lab_files: &BTreeMap<String, String>,
    problems: &mut Problems,
) -> Option<Correction> {
    const ACTIONS: [(CorrectionAction, &str); 2] = [
        (CorrectionAction::Exclude, "exclude"),
        (CorrectionAction::Repeat, "repeat"),
    ];
    let file = fields.needed("file", problems);
    let file = file.and_then(|written| lab_file(fields, &written, lab_files, problems));
    let code = fields.needed("package_code", problems).and_then(|written| {
        let found = codes.find(&written).map(str::to_owned);
        if found.is_none() {
            fields.fault(
                "package_code",
                format!(
                    "“{}” is not in the register of packages; the correction is not used",
                    text::short(&written)
                ),
                "Mend the code here, or add the package to registers/packages.",
                problems,
            );
        }
        found
    });
    let extraction = fields.count("extraction", problems);
    if fields.text("action", problems).is_none() {
        fields.needed("action", problems);
    }
    let action = fields.word("action", &ACTIONS, problems);
    let reason = fields.needed("reason", problems);
    let by = fields.needed("by", problems);
    let on = fields.needed_day("on", problems);
    Some(Correction {
        file: file?,
        package_code: code?,
        extraction: extraction.ok()?,
        action: action?,
        reason: reason?,
        by: by?,
        on: on?,
        place: fields.place(),
    })
}

/// The lab file that a correction names, with or without `inbox/`, with either kind of slash.
fn lab_file(
    fields: &Fields<'_>,
    written: &str,
    lab_files: &BTreeMap<String, String>,
    problems: &mut Problems,
) -> Option<String> {
    let path: String = written.trim().replace('\\', "/").nfc().collect();
    let path = path.trim_start_matches("./").trim_start_matches('/');
    let full = if path.starts_with("inbox/") {
        path.to_owned()
    } else {
        format!("inbox/{path}")
    };
    let found = lab_files
        .get(&full)
        .or_else(|| lab_files.get(&format!("inbox/{path}")));
    if found.is_none() {
        fields.fault(
            "file",
            format!(
                "there is no lab file “{}” in the inbox; the correction is not used",
                text::short(written)
            ),
            "Write the path below inbox/, as inbox-report.txt shows it.",
            problems,
        );
    }
    found.cloned()
}

/// Reads what passed between the programme and the makers.
pub fn followups(
    table: &mut Table,
    products: &KnownProducts,
    registers: &mut Registers,
    problems: &mut Problems,
) {
    if !table.needs(&["product_id", "on", "kind"], problems) {
        return;
    }
    for fields in table.rows() {
        registers
            .followups
            .extend(followup(&fields, products, problems));
    }
}

fn followup(
    fields: &Fields<'_>,
    products: &KnownProducts,
    problems: &mut Problems,
) -> Option<Followup> {
    let product = fields.needed("product_id", problems);
    let product = product.and_then(|written| known_product(fields, &written, products, problems));
    let round = match fields.text("round", problems) {
        None => Some(None),
        Some(written) => ids::check(fields, "round", &written, problems).map(Some),
    };
    let on = fields.needed_day("on", problems);
    if fields.text("kind", problems).is_none() {
        fields.needed("kind", problems);
    }
    let kind = fields.word("kind", FollowupKind::ALL, problems);
    let due_on = fields.day("due_on", problems);
    Some(Followup {
        product_id: product?,
        round: round?,
        on: on?,
        kind: kind?,
        due_on,
        statement: fields.text("statement", problems),
        note: fields.text("note", problems),
        place: fields.place(),
    })
}

/// Reads what has been issued. The program writes this register itself; a row that it could not have written is a fault.
pub fn issued(table: &mut Table, registers: &mut Registers, problems: &mut Problems) {
    let needed = [
        "sheet_number",
        "product_id",
        "round",
        "revision",
        "issued_on",
        "content_sha256",
    ];
    if !table.needs(&needed, problems) {
        return;
    }
    for fields in table.rows() {
        registers.issued.extend(revision(&fields, problems));
    }
}

fn revision(fields: &Fields<'_>, problems: &mut Problems) -> Option<IssuedRevision> {
    let sheet_number = fields.needed("sheet_number", problems);
    let product_id = fields.needed("product_id", problems);
    let round = fields.needed("round", problems);
    let revision = fields.count("revision", problems).ok();
    if revision == Some(None) {
        fields.needed("revision", problems);
    }
    let issued_on = fields.needed_day("issued_on", problems);
    let hash = fields
        .needed("content_sha256", problems)
        .map(|hash| hash.to_lowercase());
    if let Some(written) = &hash
        && !(written.len() == 64 && written.bytes().all(|b| b.is_ascii_hexdigit()))
    {
        fields.fault(
            "content_sha256",
            format!(
                "“{}” is no checksum as `issue` writes it; the row is not used",
                text::short(written)
            ),
            "Restore the register from the last dated archive.",
            problems,
        );
        return None;
    }
    Some(IssuedRevision {
        sheet_number: sheet_number?,
        product_id: product_id?,
        round: round?,
        revision: revision??,
        issued_on: issued_on?,
        content_sha256: hash?,
        reason: fields.text("reason", problems),
        changed: fields.text("changed", problems),
    })
}
