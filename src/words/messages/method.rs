//! How was tested and decided, and where the figures come from.

use super::*;

messages! {
    "method"
    /// The assay, and how often each package is extracted.
    method_assay(assays: text, times: count, spelt: text);
    /// When extractions agree.
    method_agreement();
    /// How often sound packages are found to disagree.
    method_false_alarm(packages: count, spelt: text, chance: text);
    /// What a package's result is.
    method_result();
    /// That one package decides.
    method_one_decides(rule: ["fails" "passes" "detection"]);
    /// Decisions without uncertainty, and their risk.
    method_simple();
    /// Decisions with a guard band.
    method_guarded(share: text);
    /// Decisions where there is no limit.
    method_detection();
    /// Where the limit is written, taken in by the limit.
    method_limit_source(law: ["us" "codex" "eu" "uk" "canada" "argentina" "chile" "au_nz" "custom"]);
    /// The limit.
    method_limit(rule: ["fails" "passes" "detection"], law: ["us" "codex" "eu" "uk" "canada" "argentina" "chile" "au_nz" "custom"], limit: text);
    /// Whose the verdict is.
    method_own();
    /// To bear in mind: a sandwich assay reads barley too high.
    caution_barley();
    /// Oats are not seen.
    caution_oats();
    /// Tannins bind gluten.
    caution_tannins();
    /// No cocktail extraction is named.
    caution_no_cocktail();
    /// A competitive assay on whole proteins.
    caution_competitive();
    /// Gluten may be in pieces.
    caution_pieces(terms: text);
    /// A lab file: lab, report, days.
    method_source(lab: text, reported: ["yes" "no"], report: text, tested: ["day" "days" "no"], first: text, last: text);
    /// The lab's address.
    method_address(address: text);
    /// When the lab received the packages, and how.
    method_received(day: text, described: ["yes" "no"], condition: text);
    /// When the report was issued.
    method_issued(day: text);
    /// The lowest figures of the assay.
    method_lowest(lloq: text, lod: text);
    /// The uncertainty in the lab's words.
    method_uncertainty(stated: text);
    /// Whether the lab says that it is accredited.
    method_accredited(accredited: ["yes" "no"]);
    /// What the lab remarks.
    method_remarks(remarks: text);
    /// Words of the lab's.
    method_quoted(words: text);
    /// A thing that the lab does not state.
    method_thing(thing: ["address" "report" "received" "tested" "uncertainty" "accreditation"]);
    /// What the lab does not state.
    method_not_stated(things: text);
    /// The file.
    method_file(file: text);
    /// Where in it the figures stand.
    method_rows(rows: ["none" "one" "more"], first: text, last: text, sha256: text);
    /// A certificate or a photograph.
    method_exhibit(kind: ["certificate" "photograph"], file: text, sha256: text);
    /// What every document says last.
    method_caution(regulator: ["named" "none"], name: text);
    /// What a PDF carries: its words as data.
    carried_data();
    /// What the sheet rests on.
    carried_case();
    /// The lab's file.
    carried_whole(sha256: text);
    /// Cells of it.
    carried_excerpt(sha256: text);
    /// The heads of the summary's part on methods.
    practice_head(passage: ["buying" "testing" "agreement" "result" "misses" "rule" "deciding" "intervals" "reply" "about" "change"]);
    /// How packages are bought.
    practice_buying(packages: count, spelt: text);
    /// What is kept of them.
    practice_kept(kept: text);
    /// How often each is extracted.
    practice_extractions(times: count, spelt: text);
    /// The labs.
    practice_labs(n: count, labs: text);
    /// The assays.
    practice_assays(n: count, assays: text);
    /// The smallest amounts that are given as a number.
    practice_lowest(n: count, amounts: text);
    /// When extractions agree.
    practice_agreement(share: text);
    /// What a package's result is.
    practice_result(rule: ["fails" "passes" "detection"], limit: text);
    /// What the test can miss.
    practice_misses();
    /// The rule.
    practice_rule(law: ["us" "codex" "eu" "uk" "canada" "argentina" "chile" "au_nz" "custom"], rule: ["fails" "passes" "detection"], limit: text);
    /// How a package is decided.
    practice_package(rule: ["fails" "passes" "detection"], decision: ["simple" "guarded"], share: text);
    /// How a product is decided.
    practice_product(rule: ["fails" "passes" "detection"]);
    /// The intervals of the shares.
    practice_intervals();
    /// Taken in by the right of reply.
    reply_time(reply_days: count);
    /// Likewise.
    publish_time(publish_days: count);
    /// The maker's right of reply.
    practice_reply(rule: ["fails" "passes" "detection"], reply_days: count, publish_days: count);
    /// What would change a verdict.
    practice_change();
}
