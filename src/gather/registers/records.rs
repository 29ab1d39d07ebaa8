//! The registers of corrections, of correspondence, and of what has been issued.

use crate::gather::codes::{self, Codes};
use crate::gather::registers::fields::{Fields, Table};
use crate::gather::registers::ids;
use crate::gather::registers::packages::product_of;
use crate::gather::registers::paths::LabFiles;
use crate::gather::registers::products::KnownProducts;
use crate::gather::text;
use crate::model::problem::Problems;
use crate::model::registers::{
    Bars, Correction, CorrectionAction, Doubt, Followup, FollowupKind, IssuedRevision, Package,
    Registers,
};
use crate::words::say;

/// Reads the corrections; each must name a lab file and a registered package. A row that cannot be used may have set a
/// reading aside: its product gets no verdict until it is mended.
pub fn corrections(
    table: &Table,
    lab_files: &LabFiles<'_>,
    registers: &mut Registers,
    problems: &mut Problems,
) {
    let known = Codes::new(
        registers
            .packages
            .iter()
            .map(|package| package.package_code.as_str()),
    );
    for fields in table.rows() {
        let is_beyond = fields
            .beyond((None, None), Some(Bars::Verdict), problems)
            .is_some();
        let correction = correction(&fields, &known, lab_files, problems);
        if is_beyond || correction.is_none() {
            let doubts = about_correction(&fields, &registers.packages);
            registers.doubts.extend(doubts);
        }
        registers.corrections.extend(correction);
    }
}

fn correction(
    fields: &Fields<'_>,
    known: &Codes,
    lab_files: &LabFiles<'_>,
    problems: &mut Problems,
) -> Option<Correction> {
    const ACTIONS: [(CorrectionAction, &str); 2] = [
        (CorrectionAction::Exclude, "exclude"),
        (CorrectionAction::Repeat, "repeat"),
    ];
    let file = fields.needed("file", problems).and_then(|written| {
        let found = lab_files.find(&written).map(str::to_owned);
        if found.is_none() {
            fields.fault(
                "file",
                say::found_no_lab_file(text::short(&written), "correction"),
                say::do_write_path("one"),
                problems,
            );
        }
        found
    });
    let code = ids::needed(fields, "package_code", problems).and_then(|written| {
        let found = known.find(&written).map(str::to_owned);
        if found.is_none() {
            fields.fault(
                "package_code",
                say::found_unknown_package(text::short(&written)),
                say::do_add_package(),
                problems,
            );
        }
        found
    });
    let extraction = fields.count("extraction", problems);
    let action = fields.needed_word("action", &ACTIONS, problems);
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
        columns: ["file", "package_code", "extraction"].map(|column| fields.column(column)),
    })
}

/// What a correction that cannot be used leaves open: the product of its package, or, where no package has this code,
/// those of the packages whose code is nearly it.
fn about_correction(fields: &Fields<'_>, packages: &[Package]) -> Vec<Doubt> {
    let written = codes::key(&fields.written("package_code"));
    let distance = |package: &Package| {
        strsim::damerau_levenshtein(&written, &codes::key(&package.package_code))
    };
    let nearest = packages.iter().map(distance).min().unwrap_or(0);
    let most = if nearest == 0 { 0 } else { 2 };
    let mut doubts: Vec<Doubt> = packages
        .iter()
        .filter(|package| distance(package) <= most)
        .map(|package| {
            let (product, round) = (
                Some(package.product_id.as_str()),
                Some(package.round.as_str()),
            );
            Doubt {
                what: crate::model::registers::DoubtKind::Row,
                ..fields.doubt("package_code", product, round, Bars::Verdict)
            }
        })
        .collect();
    doubts.dedup_by(|a, b| (&a.product_id, &a.round) == (&b.product_id, &b.round));
    doubts
}

/// Reads what passed between the programme and the makers. A row that cannot be used may have been a notice or an answer:
/// nothing is published of its product until it is mended.
pub fn followups(
    table: &Table,
    products: &KnownProducts,
    registers: &mut Registers,
    problems: &mut Problems,
) {
    for fields in table.rows() {
        let read = followup(&fields, products, &mut registers.doubts, problems);
        if let Some(notice) = read
            .as_ref()
            .filter(|read| read.kind == FollowupKind::NoticeSent)
        {
            registers
                .doubts
                .extend(early_notice(&fields, notice, &registers.packages, problems));
        }
        registers.followups.extend(read);
    }
}

/// A notice that is dated before its first package was bought or sent told the maker of nothing that was found: its days are
/// not counted from it.
fn early_notice(
    fields: &Fields<'_>,
    notice: &Followup,
    packages: &[Package],
    problems: &mut Problems,
) -> Option<Doubt> {
    let is_of = |package: &&Package| {
        let round = notice.round.as_ref();
        package.product_id == notice.product_id && round.is_none_or(|round| *round == package.round)
    };
    let days = packages
        .iter()
        .filter(is_of)
        .filter_map(|package| package.sent_on.or(package.bought_on));
    let first = days.min().filter(|first| notice.on < *first)?;
    fields.fault(
        "on",
        say::found_early_notice(
            notice.product_id.as_str(),
            notice.on.to_string(),
            first.to_string(),
        ),
        say::do_mend_notice(),
        problems,
    );
    let round = notice.round.as_deref();
    Some(fields.doubt("on", Some(&notice.product_id), round, Bars::Issue))
}

fn followup(
    fields: &Fields<'_>,
    products: &KnownProducts,
    doubts: &mut Vec<Doubt>,
    problems: &mut Problems,
) -> Option<Followup> {
    let product = product_of(fields, products, Bars::Issue, doubts, problems);
    let round = ids::read(fields, "round", problems);
    let on = fields.needed_day("on", problems);
    let kind = fields.needed_word("kind", FollowupKind::ALL, problems);
    let due_on = fields.day("due_on", problems);
    let statement = fields.field("statement", problems);
    let product = product?;
    doubts.extend(fields.beyond((Some(&product), None), Some(Bars::Issue), problems));
    let mut doubt = |column: &str| {
        doubts.push(fields.doubt(column, Some(&product), None, Bars::Issue));
    };
    for (column, is_faulty) in [
        ("round", round.is_err()),
        ("on", on.is_none()),
        ("kind", kind.is_none()),
        ("due_on", due_on.is_err()),
        ("statement", statement.is_err()),
    ] {
        if is_faulty {
            doubt(column);
        }
    }
    Some(Followup {
        product_id: product,
        round: round.ok()?,
        on: on?,
        kind: kind?,
        due_on: due_on.ok().flatten(),
        statement: statement.ok().flatten(),
        note: fields.text("note", problems),
        place: fields.place(),
    })
}

/// Reads what has been issued. The program writes this register itself; a row that it could not have written is a fault.
pub fn issued(table: &Table, registers: &mut Registers, problems: &mut Problems) {
    for fields in table.rows() {
        registers.issued.extend(revision(&fields, problems));
    }
}

fn revision(fields: &Fields<'_>, problems: &mut Problems) -> Option<IssuedRevision> {
    let sheet_number = fields.needed("sheet_number", problems);
    let product_id = fields.needed("product_id", problems);
    let round = fields.needed("round", problems);
    let revision = fields.count("revision", problems);
    if revision == Ok(None) {
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
            say::found_no_checksum(text::short(written)),
            say::do_restore_register(),
            problems,
        );
        return None;
    }
    Some(IssuedRevision {
        sheet_number: sheet_number?,
        product_id: product_id?,
        round: round?,
        revision: revision.ok()??,
        issued_on: issued_on?,
        content_sha256: hash?,
        reason: fields.text("reason", problems),
        changed: fields.text("changed", problems),
        verdict: fields.text("verdict", problems),
        label: fields.text("label", problems),
        early: fields.text("early", problems),
    })
}
