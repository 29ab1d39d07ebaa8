//! The letters to a maker: notice, correction, mail.

use super::*;

messages! {
    "letters"
    /// At the head of each page of a notice, before the number of the sheet.
    letter_notice_head();
    /// The same of a letter of correction.
    letter_correction_head();
    /// At the foot, before the address that answers questions.
    letter_questions();
    /// Whom a letter to a maker is to.
    letter_addressee();
    /// How a letter begins.
    letter_dear();
    /// How a letter ends, before who writes.
    letter_yours();
    /// The first line of a notice.
    letter_title(name: text, net: text, has_net: ["yes" "no"]);
    /// The title of a notice as a file.
    letter_notice_document(title: text, sheet: text);
    /// What was bought, and how much of it the lab has reported on.
    letter_bought(packages: count, tested: count, reported: ["all" "some" "none"], place: ["shops" "unknown"]);
    /// How many packages are over the limit.
    letter_found_over(over: count, share: ["one" "both" "all" "some"], first: text, counted: text, tested: text, rule: ["fails" "passes" "detection"], limit: text);
    /// That every package is within it.
    letter_found_within(packages: count, tested: text, rule: ["fails" "passes" "detection"], limit: text);
    /// That there is no verdict.
    letter_found_nothing();
    /// That the letter asks about the label.
    letter_label_too(over: ["yes" "no"]);
    /// Why the letter comes now.
    letter_before();
    /// The head of the column of codes.
    letter_package();
    /// The head of the column of lots.
    letter_lot();
    /// The head of the column of days of purchase.
    letter_bought_on();
    /// The head of a column of extractions, before its number.
    letter_extraction();
    /// The head of the column of results, before the unit.
    letter_result();
    /// That the extractions of each package agree.
    letter_agree(sure: ["yes" "no"]);
    /// The verdict as the sheet will word it.
    letter_verdict(verdict: text);
    /// A word of the label and its grain.
    letter_term(printed: text, grain: ["wheat" "barley" "rye" "oats" "triticale" "wheat_or_barley" "wheat_or_rye" "unknown"]);
    /// What the list of ingredients names.
    letter_label_names(terms: text, claim: text);
    /// The rule on ingredients, quoted.
    letter_label_rule(law: ["us" "codex" "canada" "argentina" "chile" "au-nz" "other"]);
    /// The head of what is asked.
    letter_ask_head();
    /// What is asked of every maker.
    letter_ask();
    /// What is asked about an ingredient.
    letter_ask_ingredient();
    /// What is asked about oats.
    letter_ask_oats();
    /// The head of what the maker can have.
    letter_offer_head();
    /// What goes along of the lab's files.
    letter_offer_files(attach: ["whole" "excerpt" "none"], reported: ["all" "some"]);
    /// What is kept of the packages, as the settings say it.
    letter_kept(kept: text);
    /// That a part of what is kept can be had.
    letter_offer_kept();
    /// That nothing can be had yet.
    letter_offer_nothing();
    /// The head of the steps.
    letter_next_head();
    /// The first step.
    letter_step_letter();
    /// The second.
    letter_step_reply();
    /// The third.
    letter_step_publish();
    /// The day of the first step in a letter without a date.
    letter_today();
    /// The day of a later one.
    letter_day(day: count);
    /// What happens without an answer.
    letter_without_reply(dated: ["yes" "no"], day: text, days: count);
    /// The head of the last part.
    letter_says_not_head();
    /// What the letter does not say.
    letter_says_not(over: ["yes" "no"], label: ["yes" "no"], rule: ["fails" "passes" "detection"]);
    /// Beside the letter: by when an answer is asked for, as a day.
    letter_reply_by();
    /// The same as a number of days.
    letter_reply_within();
    /// A number of days.
    letter_days(days: count);
    /// The label of the planned day.
    letter_publish_label();
    /// The planned day in a letter without a date.
    letter_publish_after(days: count);
    /// The label of the sheet's number.
    letter_sheet_label();
    /// The sheet's number.
    letter_sheet(sheet: text);
    /// The label of the limit.
    letter_limit_label();
    /// Where a limit is written.
    letter_law(law: ["us" "codex" "eu" "uk" "canada" "argentina" "chile" "au-nz" "custom"]);
    /// The limit and where it is written.
    letter_limit(rule: ["fails" "passes" "detection"], limit: text, law: ["us" "codex" "eu" "uk" "canada" "argentina" "chile" "au-nz" "custom"]);
    /// The label of the assay.
    letter_method_label();
    /// The label of the lab.
    letter_lab_label();
    /// The label of the address for the answer.
    letter_reply_label();
    /// The label of what goes along.
    letter_enclosed_label();
    /// The form for the reply.
    letter_form_head();
    /// Before the number of the sheet.
    letter_form_sheet();
    /// Over what the maker can mend.
    letter_form_facts_head();
    /// A box.
    letter_form_right();
    /// A box, with lines to write on.
    letter_form_wrong();
    /// Over the statement.
    letter_form_statement_head();
    /// A box.
    letter_form_no_statement();
    /// A box, with lines to write on.
    letter_form_statement();
    /// Over the test that a maker may have made.
    letter_form_rest_head();
    /// A box, where something is kept.
    letter_form_rest();
    /// A line to fill in.
    letter_form_name();
    /// Likewise.
    letter_form_position();
    /// Likewise.
    letter_form_day();
    /// Likewise.
    letter_form_signature();
    /// What goes along.
    letter_enclosed(attach: ["whole" "excerpt" "none"], sheet: text);

    /// The first line of a letter of correction.
    letter_correction_title(name: text);
    /// Its title as a file.
    letter_correction_document(title: text, sheet: text);
    /// What the file is.
    letter_correction_about();
    /// The heads of its parts.
    letter_said_head();
    /// What is said now.
    letter_says_head();
    /// Why.
    letter_why_head();
    /// What is done.
    letter_does_head();
    /// What an earlier revision said.
    letter_said(revision: text, sheet: text, day: text, over: ["yes" "no"], label: ["yes" "no"], rule: ["fails" "passes" "detection"]);
    /// What is said now.
    letter_says(over: ["yes" "no"], label: ["yes" "no"], rule: ["fails" "passes" "detection"]);
    /// The verdict of the new revision.
    letter_reads(issued: ["yes" "no"], verdict: text);
    /// Why, where the revision is not issued yet or has no reason of its own.
    letter_why();
    /// What is done about the sheet.
    letter_does(issued: ["yes" "no"], day: text);
    /// What a maker can do who is accused for the first time.
    letter_does_accuse(days: count);
    /// What a maker can do who was accused wrongly.
    letter_does_clear();
    /// The label of what is corrected.
    letter_corrected_label();
    /// The revision that is corrected.
    letter_corrected(sheet: text, revision: text, day: text);
    /// The label of what replaces it.
    letter_replaced_label();
    /// The revision that replaces it.
    letter_replaced(revision: text, issued: ["yes" "no"], day: text);

    /// What a mail to a maker is about.
    mail_subject(about: ["results" "label" "both"], name: text, brand: text, has_brand: ["yes" "no"], sheet: text, dated: ["yes" "no"], day: text);
    /// What a mail of correction is about.
    mail_correction_subject(name: text, sheet: text);
    /// How a mail to a maker begins.
    mail_dear(maker: text, has_maker: ["yes" "no"]);
    /// Who writes, and on which product.
    mail_who(programme: text, claim: text, name: text, brand: text, has_brand: ["yes" "no"], sheet: text);
    /// One package over the limit, on a line of its own.
    mail_package(package: text, lot: text, has_lot: ["yes" "no"], result: text);
    /// That one package decides.
    mail_enough();
    /// What the list of ingredients names.
    mail_label(also: ["yes" "no"], terms: text);
    /// What is attached.
    mail_attached();
    /// By when an answer is asked for, and what then.
    mail_reply(dated: ["yes" "no"], day: text, days: count, publish: text);
    /// What the mail does not say.
    mail_says_not(regulator: text, has_regulator: ["yes" "no"]);
    /// Who writes in a mail of correction, and on which product.
    mail_correction_who(programme: text, name: text, brand: text, has_brand: ["yes" "no"], sheet: text);
    /// What is attached to it.
    mail_correction_attached();
    /// In place of a maker's address; plain letters without accents.
    mail_no_maker(unusable: ["yes" "no"]);
}
