//! What a results sheet says: verdict, ruler, packages, what the result says and does not say.

use super::*;

messages! {
    "sheet"
    // The head, the foot and the headings.
    /// What the document is, in its head.
    sheet_kind();
    /// Before the address for mistakes, in its foot.
    sheet_mistake();
    /// The title of the PDF.
    sheet_title(product: text, brand: text, number: text, branded: ["yes" "no"]);
    /// As what the product is sold.
    claim_sold(claim: text, known: ["yes" "no"]);
    /// How many packages were bought, when, and in which round.
    claim_bought(packages: count, round: text, later: ["yes" "no"], when: text, dated: ["day" "days" "no"]);
    /// The barcode.
    claim_barcode(barcode: text);
    /// The certifier that the package names.
    claim_certifier(certifier: text);
    /// That little pictures in the name are left out.
    claim_pictures();
    /// Heading of ruler and table.
    results_heading();
    /// Heading of what the result says.
    says_heading();
    /// Heading of what it does not say.
    says_not_heading();
    /// Heading of the label review.
    label_heading();
    /// Heading of the correspondence.
    reply_heading();
    /// Heading of the method.
    method_heading();
    /// Heading of the provenance.
    sources_heading();
    /// Heading of the caution.
    note_heading();
    /// Heading of the revisions.
    revisions_heading();
    /// Before the ingredients.
    label_ingredients();
    /// Before the precautionary words.
    label_precautionary();
    /// Where there are none.
    label_none_on_record();

    // The verdict.
    /// The verdict over the limit.
    verdict_over(rule: ["fails" "passes" "detection"], limit: text);
    /// The verdict within it.
    verdict_within(rule: ["fails" "passes" "detection"], limit: text);
    /// No verdict.
    verdict_none();
    /// How many packages are over the limit.
    count_over(over: count, packages: count, guarded: ["yes" "no"], rule: ["fails" "passes" "detection"]);
    /// That all are within it.
    count_within(packages: count, guarded: ["yes" "no"], rule: ["fails" "passes" "detection"]);
    /// How many have no result that decides.
    count_unresolved(undecided: count, packages: count);
    /// How many are too close to the limit.
    count_close(undecided: count, packages: count);
    /// Fewer packages than are asked for.
    count_short(tested: count, asked: count);
    /// The assay is not fit for the food.
    count_unfit();
    /// Something has to be settled before anything can be decided.
    count_open();
    /// One package over the limit.
    over_one(kind: ["mean" "range" "above" "disagree"], package: text, figure: text, rule: ["fails" "passes" "detection"]);
    /// Several of them.
    over_several(packages: text, highest: ["known" "unknown"], figure: text, rule: ["fails" "passes" "detection"]);
    /// That one is enough.
    over_enough(limit: text, rule: ["fails" "passes" "detection"]);
    /// Packages beside them that are too close to call.
    over_too_close(packages: count, by: ["name" "count"], named: text);
    /// Packages beside them that have no result that decides.
    over_unresolved(packages: count, by: ["name" "count"], named: text);
    /// No package could be measured.
    none_measured(packages: count, below: text, limit: text, rule: ["fails" "passes" "detection"]);
    /// Gluten was measured, within the limit.
    measured_within(part: ["the_one" "all" "some"], measured: count, packages: count, limit: text, rule: ["fails" "passes" "detection"]);
    /// Packages beside them in which it was not.
    measured_others(others: count, below: text);
    /// No verdict, with the causes to follow.
    cannot_tell(limit: text, rule: ["fails" "passes" "detection"]);
    /// The same where the food or the claim is the cause.
    cannot_show(limit: text, rule: ["fails" "passes" "detection"]);
    /// The lab's reports differ.
    cause_conflict(packages: count, by: ["name" "count"], named: text);
    /// Extractions disagree.
    cause_disagree(packages: count, by: ["name" "count"], named: text);
    /// Too few usable extractions.
    cause_incomplete(packages: count, by: ["name" "count"], named: text);
    /// No result.
    cause_missing(packages: count, by: ["name" "count"], named: text);
    /// The result may lie on either side.
    cause_either_side(packages: count, by: ["name" "count"], named: text);
    /// Nearer to the limit than the uncertainty.
    cause_too_close(packages: count, by: ["name" "count"], named: text, uncertainty: text);
    /// Single extractions over the limit.
    single_over(extractions: count, spelt: text, kind: ["figure" "above"], figure: text, rule: ["fails" "passes" "detection"], limit: text);
    /// A package near the limit, as the sentence beside the verdict lists it.
    near_limit_package(package: text, figure: text, chance: text);
    /// The packages near the limit beyond those that are named.
    near_limit_more(packages: count, chance: text);
    /// How likely the truth is on the other side of the limit.
    near_limit(packages: text, basis: ["lab" "lab_k2" "assumed"], side: ["over" "within"], rule: ["fails" "passes" "detection"], limit: text);

    // The table.
    /// Head of the codes.
    head_package();
    /// Head of the lots.
    head_lot();
    /// Head of the dates of best before.
    head_best_by();
    /// Head of day and shop.
    head_bought();
    /// Head of the extractions.
    head_extractions(unit: text);
    /// Head of the differences.
    head_difference(unit: text);
    /// Head of the difference found.
    head_found();
    /// Head of the difference allowed.
    head_allowed();
    /// Head of the packages' results, in two lines.
    head_result(unit: text);
    /// Extractions that are all beyond the same end of what the assay measures.
    cell_beyond(extractions: count, bound: text);
    /// The name of a package's further row.
    row_chapter(package: text, event: ["first" "again" "further" "repeat" "together"], extractions: count, numbers: text);
    /// What parentheses mean.
    table_unused();
    /// Extractions on both sides of the limit.
    note_straddles(package: text, standing: ["decides" "close" "open"], kind: ["mean" "range"], figure: text);
    /// Extractions that were repeated.
    note_repeat(package: text, extractions: count, numbers: text, by: text, day: text, reason: text);
    /// Extractions beyond those asked for.
    note_beyond(packages: count, by: ["name" "count"], named: text, asked: count);
    /// Reports that differ.
    note_conflict(package: text, unit: text, reports: text);
    /// One of them.
    note_conflict_report(extraction: text, figure: text, file: text, cell: text);
    /// Extractions that were set aside.
    note_set_aside(package: text, extractions: count, numbers: text, by: text, day: text, reason: text);
    /// Extractions that are not listed one by one.
    note_left_out(package: text, extractions: count, figures: ["yes" "no"], lowest: text, highest: text, unit: text);
    /// Extractions without a result, of which the first are named above.
    note_more_unused(package: text, extractions: count);
    /// A report that the lab replaced.
    note_replaced(packages: count, by: ["name" "count"], named: text);
    /// A row without a result.
    note_not_reported(package: text, extraction: text, written: text, empty: ["yes" "no"]);
    /// A text that is no result.
    note_unreadable(package: text, extraction: text, written: text, empty: ["yes" "no"]);
    /// Results that are ranges.
    note_range(packages: count, by: ["name" "count"], named: text);
    /// Results without an upper end.
    note_open_end(packages: count, by: ["name" "count"], named: text);
    /// Gliadin, taken twice.
    note_gliadin(all: ["yes" "no"], packages: count, by: ["name" "count"], named: text, unit: text);
    /// Means of wells.
    note_wells();

    // What the result says, and what it does not.
    /// Packages over the limit.
    says_over(over: count, packages: count, guarded: ["yes" "no"], rule: ["fails" "passes" "detection"], limit: text);
    /// What share of all packages that allows.
    says_share(lower: text, upper: text, undecided: count);
    /// All below quantification.
    says_none_measured(packages: count, below: text, lowest: ["yes" "no"]);
    /// All within the limit.
    says_within(packages: count, rule: ["fails" "passes" "detection"], limit: text);
    /// The highest result.
    says_highest(figure: text);
    /// None decides.
    says_none_decides(packages: count);
    /// Figures of an assay that can miss gluten.
    says_unfit(packages: count, rule: ["fails" "passes" "detection"], limit: text);
    /// Some decide.
    says_some_decide(decided: count, packages: count, open: count, rule: ["fails" "passes" "detection"], limit: text);
    /// Another round.
    other_round(round: text, number: text, verdict: ["over" "within" "none"], over: count, packages: count, rule: ["fails" "passes" "detection"]);
    /// Published rounds since.
    tested_again(rounds: text);
    /// What a verdict over the limit does not say.
    says_not_over();
    /// What a verdict within it does not say.
    says_not_within(packages: count, upper: text, rule: ["fails" "passes" "detection"]);
    /// The same where no share can be given.
    says_not_proven(rule: ["fails" "passes" "detection"]);
    /// What no verdict does not say.
    says_not_none(rule: ["fails" "passes" "detection"]);

    // Correspondence.
    /// The maker answered.
    told_reply(day: text, said: text);
    /// Something was done.
    told_action(day: text, said: text);
    /// Nothing further is expected.
    told_closed(day: text, said: text);

    // The story in days.
    /// Heading of the story.
    story_heading();
    /// What happened.
    story_what(what: ["bought" "sent" "tested" "told" "answered" "closed" "issued" "amended" "next"]);
    /// A day of a notice, and by when an answer was asked for.
    story_told(day: text, due: text, asked: ["yes" "no"]);
    /// A day that is not on record.
    story_no_day();
    /// No notice is on record.
    story_no_notice();
    /// No answer is on record.
    story_no_answer();
    /// Not issued yet.
    story_not_yet();
    /// Next: the maker is to be told.
    story_next_tell();
    /// Next: an answer of the maker's.
    story_next_answer(due: text);
    /// Next: the day from which it may be issued.
    story_next_issue(day: text);
    /// Next: what has to be settled first.
    story_next_settle();
    /// Next: which of two reports holds.
    story_next_conflict(packages: count, by: ["name" "count"], named: text);
    /// Next: a result of the lab.
    story_next_lab(packages: count, by: ["name" "count"], named: text);
    /// Next: a repeat.
    story_next_repeat(packages: count, by: ["name" "count"], named: text);
    /// Next: what narrows a result down.
    story_next_finer(packages: count, by: ["name" "count"], named: text);
    /// Next: packages to be bought.
    story_next_buy(packages: count);
    /// Next: where no test decides.
    story_next_unfit();
    /// Next: a further round.
    story_next_round(round: text);

    // Pictures.
    /// Under a strip of a hundred packages.
    shares_strip(over: text, packages: count, most: count);
    /// Under a smaller one beside it.
    shares_more(packages: count, most: count);
    /// What the marks of the strips mean.
    shares_key(rule: ["fails" "passes" "detection"]);
    /// The same where some packages were over.
    shares_key_over(rule: ["fails" "passes" "detection"]);
    /// The strips in words.
    shares_alt(strips: text, rule: ["fails" "passes" "detection"]);
    /// The same where some packages were over.
    shares_alt_over(least: count, most: count, rule: ["fails" "passes" "detection"]);
    /// Heading of the portion.
    portion_heading();
    /// What the result means in a portion.
    portion_said(kind: ["measured" "below"], portion: text, package: text, figure: text, own: text, limit: text);
    /// Beside the squares of the food.
    portion_own(kind: ["measured" "below"], own: text);
    /// Beside the squares at the limit.
    portion_limit(limit: text);
    /// The squares in words.
    portion_alt(kind: ["measured" "below"], own: text, limit: text, square: text);

    // How to check the sheet.
    /// Heading.
    check_heading();
    /// A result that is a mean.
    sum_mean(package: text, readings: text, mean: text, printed: ["same" "rounded"], result: text, gap: text, allowed: text);
    /// Readings that disagree.
    sum_disagree(package: text, readings: text, gap: text, allowed: text);
    /// Readings all below what the test measures.
    sum_below(package: text, readings: text, result: text);
    /// A result that is a range.
    sum_range(package: text, readings: text, result: text);
    /// Where the first figure stands.
    check_place(file: text, row: text, column: text);
    /// Before the address of the page.
    check_page();
    /// What the square is.
    check_square(address: text);

    // Who answers for the sheet.
    /// The programme.
    imprint(programme: text, director: text, directed: ["yes" "no"], address: text, addressed: ["yes" "no"]);
    /// How mistakes are mended.
    imprint_mistakes();

    // Files and revisions.
    /// Nothing has been reported.
    sources_nothing();
    /// What the PDF carries of the lab's files.
    sources_carried(carried: ["files" "cells"]);
    /// Where it carries some of them only.
    sources_some(files: count);
    /// Exhibits that are not named.
    sources_more(exhibits: count, file: text);
    /// The head's last words on an issued sheet.
    edition_line(revision: text, day: text);
    /// The same on a proof.
    edition_proof(revision: text, day: text, dated: ["yes" "no"]);
    /// What it replaces.
    edition_replaces(revision: text, day: text);
    /// The note of a first revision.
    edition_first();
    /// The note of a later one of which the register says nothing.
    edition_unexplained();
    /// Where the rest of the revisions is.
    edition_more();

    // Where a product stands with its maker, in lists.
    /// Nothing to tell.
    maker_not_needed();
    /// Not told yet.
    maker_to_send();
    /// A reply is awaited.
    maker_waiting();
    /// It did not come in time.
    maker_overdue();
    /// It came.
    maker_replied(late: ["yes" "no"]);
    /// Nothing further is expected, since a day.
    maker_closed(day: text);
    /// A reply that is too long for a list.
    maker_long_text();

    // Whether a sheet may be published.
    /// With the lab.
    state_with_lab();
    /// Waiting for the lab.
    state_waiting();
    /// Held.
    state_held();
    /// Ready.
    state_ready();
    /// Published.
    state_published();
    /// State and reason; a day where it is held until one.
    publication_standing(state: text, why: text, until: text, dated: ["yes" "no"]);
    /// Nothing has been reported.
    why_nothing_reported();
    /// Packages have not been reported.
    why_not_reported(packages: count, codes: text);
    /// The registers leave something open.
    why_register(places: text);
    /// A reading cannot be used.
    why_reading(places: text);
    /// The maker has not been told.
    why_no_notice();
    /// The maker has not answered yet.
    why_no_reply(told: text, until: text);
    /// Nothing is to be told.
    why_nothing_to_tell();
    /// The maker answered.
    why_answered(day: text);
    /// The time to answer is over.
    why_time_is_over(told: text, since: text);
    /// It corrects what was published.
    why_corrects();
    /// It is issued.
    why_issued(revision: text, day: text);
    /// A letter of correction is due.
    why_letter_due(revision: text);
    /// The first of many.
    some_and_more(some: text, more: count);
    /// Issued early: packages were missing.
    early_not_reported(packages: count);
    /// The maker had not been told.
    early_no_notice();
    /// The maker's time was not over.
    early_no_reply(day: text);
    /// Something else was open.
    early_other();
    /// A sheet that does not stand any more.
    under_revision(product: text, brand: text, branded: ["yes" "no"], number: text, revision: text, day: text);
    /// What the programme got wrong, or has found out since.
    corrected(product: text, brand: text, branded: ["yes" "no"], number: text, revision: text, day: text, said: text);
    /// What is said now.
    corrected_now(issued: ["yes" "no"], day: text, says: text);
    /// Why.
    corrected_why(reason: text);
    /// What a sheet says against a product.
    accused(amount: ["yes" "no"], label: ["yes" "no"], rule: ["fails" "passes" "detection"]);
}
