//! Why a verdict is what it is.

use super::*;

messages! {
    "reasons"
    /// On which side of the limit a result is, taken in by the reasons.
    side_over(rule: ["fails" "passes" "detection"], limit: text);
    /// The other side.
    side_within(rule: ["fails" "passes" "detection"], limit: text);
    /// What a package holds.
    held(kind: ["mean" "below" "range" "above" "detected" "nothing"], figure: text, upper: text);
    /// The claim is none that the rule knows.
    reason_unknown_claim(claim: text);
    /// The register has no claim.
    reason_no_claim();
    /// The word for processing is none of the known ones.
    reason_unknown_processing();
    /// A heading is nearly one that is missing.
    reason_heading(found: text, meant: text);
    /// A heading is there twice.
    reason_heading_twice(heading: text);
    /// A field cannot be read.
    reason_field(column: text, written: text);
    /// A row cannot be used.
    reason_row();
    /// A row about a lab's report cannot be used.
    reason_report(file: text);
    /// A file is nearly named as a register.
    reason_misnamed(meant: text);
    /// A file is nearly named as the workbook of registers.
    reason_misnamed_workbook();
    /// Every package had too little to measure.
    reason_none_measured(packages: count, below: text, rule: ["fails" "passes" "detection"], limit: text);
    /// Every package is within the limit.
    reason_all_within(packages: count, guarded: ["yes" "no"], rule: ["fails" "passes" "detection"], limit: text);
    /// A package is over the limit.
    reason_over(package: text, kind: ["mean" "below" "range" "above" "detected" "nothing"], figure: text, upper: text, rule: ["fails" "passes" "detection"], limit: text);
    /// Extractions that disagree are all over.
    reason_each_over(package: text, rule: ["fails" "passes" "detection"], limit: text);
    /// Their median is over.
    reason_median_over(package: text, rule: ["fails" "passes" "detection"], limit: text);
    /// The sandwich assay alone finds a fermented food over.
    reason_over_by_sandwich(package: text, kind: ["mean" "below" "range" "above" "detected" "nothing"], figure: text, upper: text, rule: ["fails" "passes" "detection"], limit: text);
    /// Nothing reported of a package.
    reason_missing(package: text);
    /// Too few usable extractions.
    reason_too_few_extractions(package: text, usable: count, asked: count);
    /// The lab's reports differ.
    reason_conflict(package: text, usable: count, asked: count);
    /// Extractions disagree.
    reason_disagree(package: text, how: ["exact" "least"], gap: text, allowed: text);
    /// Too near the limit for the assay's uncertainty.
    reason_too_close(package: text, kind: ["mean" "below" "range" "above" "detected" "nothing"], figure: text, upper: text, limit: text);
    /// The result may lie on either side.
    reason_either_side(package: text, kind: ["mean" "below" "range" "above" "detected" "nothing"], figure: text, upper: text, rule: ["fails" "passes" "detection"], limit: text);
    /// Too few packages.
    reason_too_few_packages(tested: count, asked: count);
    /// A sandwich assay is not fit for the food.
    reason_sandwich_unfit(food: ["fermented" "hydrolysed"]);
    /// No assay decides for the food.
    reason_records_decide(food: ["fermented" "hydrolysed"]);
}
