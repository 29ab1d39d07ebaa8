//! What goes to a lab: the request form, the query and its mail.

use super::*;

messages! {
    "lab"
    /// At the head of each page of the query.
    lab_query_head();
    /// At its foot, before the address.
    lab_query_reply();
    /// Below the lab's name.
    lab_sample_desk();
    /// The first line of the query.
    lab_query_title(packages: count);
    /// Its title as a file.
    lab_query_document(title: text, lab: text);
    /// What the file is.
    lab_query_about();
    /// Why the query comes.
    lab_query_opening(packages: count, reported: ["yes" "no"]);
    /// The head of the column of codes.
    lab_package();
    /// The head of the column of reports.
    lab_report();
    /// The head of the column of what was found.
    lab_found();
    /// The head of the column of what is asked.
    lab_asked();
    /// What kind of question.
    lab_kind(kind: ["conflict" "unreadable" "disagreement" "set_aside" "missing_extraction" "missing_result"]);
    /// An extraction with its figure and its cell.
    lab_extraction(number: text, figure: text, file: text, sheet: text, has_sheet: ["yes" "no"], cell: text, read: ["yes" "no"]);
    /// Reports that differ.
    lab_conflict(extractions: text);
    /// What to do about them.
    lab_conflict_ask();
    /// A result that reads as none.
    lab_unreadable(extractions: text);
    /// What to do about it.
    lab_unreadable_ask();
    /// Extractions that disagree.
    lab_disagree(extractions: text, gap: text, allowed: text, least: ["yes" "no"]);
    /// What to do about the first pair.
    lab_disagree_repeat(first: text, second: text);
    /// What to do where repeats are there.
    lab_disagree_check();
    /// Fewer extractions than asked for, since some were set aside.
    lab_set_aside(usable: count, extractions: text);
    /// What to do about them.
    lab_set_aside_ask(number: text);
    /// Fewer extractions than asked for.
    lab_incomplete(usable: count, asked: count, extractions: text);
    /// What to do about it.
    lab_incomplete_ask();
    /// No result.
    lab_missing(dated: ["yes" "no"], day: text);
    /// What to do about it.
    lab_missing_ask();
    /// How an answer is wanted.
    lab_answer();
    /// What an extraction is.
    lab_answer_extraction();
    /// By when, and under which number.
    lab_answer_by(dated: ["yes" "no"], day: text, number: text);
    /// How the query ends.
    lab_yours();

    /// What the mail to a lab is about.
    lab_mail_subject(packages: text, number: text);
    /// How it begins.
    lab_mail_dear(lab: text, has_lab: ["yes" "no"]);
    /// Why it comes.
    lab_mail_opening(questions: count, reported: ["yes" "no"]);
    /// One question.
    lab_mail_question(package: text, asked: text);
    /// How an answer is wanted.
    lab_mail_answer();
    /// How the mail ends.
    lab_mail_regards();
    /// In place of a lab's address; plain letters without accents.
    lab_mail_no_address();

    /// The first line of the form.
    request_title();
    /// Its title as a file.
    request_document(round: text, has_round: ["yes" "no"]);
    /// What the file is.
    request_about(samples: count, lab: text);
    /// At the head of each page.
    request_head();
    /// After it, before the round.
    request_head_round();
    /// At its foot.
    request_foot();
    /// Whom the form is to.
    request_to(lab: text);
    /// The box for the lab.
    request_sticker();
    /// Who sends.
    request_sent_by();
    /// When.
    request_sent_on();
    /// In how many parcels.
    request_parcels();
    /// Where to answer.
    request_reply_to();
    /// The head of the samples.
    request_samples();
    /// The column of codes.
    request_code();
    /// The column of kinds of food.
    request_kind();
    /// A kind that is not known.
    request_kind_unknown();
    /// The column of contents.
    request_content();
    /// The column of tannins.
    request_tannin();
    /// The column of legumes.
    request_legume();
    /// The column of oats.
    request_oats();
    /// The column of fermented and hydrolysed foods.
    request_fermented();
    /// The column for the lab.
    request_condition();
    /// What the crosses are.
    request_crosses();
    /// The head of what is asked for.
    request_asked();
    /// A competitive assay as well.
    request_competitive();
    /// How many extractions.
    request_grind(extractions: count);
    /// What to report.
    request_report(lloq: text);
    /// In what form.
    request_table();
    /// What not to do.
    request_as_measured();
    /// When extractions disagree.
    request_pair_rule(lloq: text, share: text, allowed: text, mean: text);
    /// What to state.
    request_state();
    /// What to keep.
    request_keep(kept: text);
    /// The head of the custody.
    request_custody();
    /// The columns of the custody.
    request_name();
    /// Signature.
    request_signature();
    /// Date.
    request_date();
    /// Time.
    request_time();
    /// Seals.
    request_seals();
    /// Yes.
    request_yes();
    /// No.
    request_no();
    /// Who handed over.
    request_handed_over();
    /// Who carried.
    request_carried();
    /// Who received.
    request_received();
    /// A line for what is unusual.
    request_unusual();
    /// A line for what is not accepted.
    request_refused();
    /// The line above the empty table.
    form_title(programme: text, round: text, has_round: ["yes" "no"]);
    /// How the table is filled in.
    form_hint();
}
