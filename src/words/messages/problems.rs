//! What was found in lab files, and what to do about it.

use super::*;

messages! {
    "problems"
    /// Where something stands, within a sentence. The name of a cell, the number of a row, the letter of a column.
    place(file: text, sheet_is: ["named" "none"], sheet: text, at: ["cell" "row" "column" "none"], cell: text);
    /// The same below the name of its file, before the colon of an entry.
    place_in_file(sheet_is: ["named" "none"], sheet: text, at: ["cell" "row" "column" "none"], cell: text);
    /// Words from a file, one of several.
    item(text: text);
    /// The same with where they stand: a column's letter, or a place.
    item_at(text: text, at: text);
    /// The margin of an entry; at most eight letters.
    problem_severity(severity: ["error" "warning" "note"]);
    /// The first line of an entry behind its margin: where, and what was found.
    problem_entry(at: ["somewhere" "whole"], place: text, found: text);
    /// The second line of an entry.
    problem_to_do(hint: text);
    /// The heading of the report.
    report_heading();
    /// Below it, where there is no problem.
    report_clean(files: text);
    /// Below it, where there are some.
    report_counts(errors: count, files: text, warnings: text, notes: text);
    /// The file passes a bound; $part is the bound of one part of a workbook.
    found_too_large(bound: ["file" "unpacked" "parts" "sheets" "cells" "rows" "row" "repeats" "text" "cell_text" "styles" "tables" "results"], most: text, part: text);
    /// What to do about it.
    do_results_alone();
    /// There are more problems of a kind in a file than are told one by one.
    found_more_of_a_kind(count: count);
    /// What to do about it.
    do_mend_those_first();
    /// The file holds nothing.
    found_empty_file(with: ["nothing" "zeros"]);
    /// What to do about it.
    do_send_or_copy_again();
    /// The file is of a kind that holds no table, by its first bytes.
    found_other_kind(kind: ["pdf" "web" "xml" "other"]);
    /// What to do about it.
    do_save_as_workbook();
    /// A workbook whose parts do not fit together.
    found_damaged_workbook();
    /// What to do about it.
    do_copy_or_send_again();
    /// A workbook that a password protects.
    found_password();
    /// What to do about it.
    do_take_off_password();
    /// An archive that holds something else.
    found_no_workbook();
    /// What to do about it.
    do_take_out_of_archive();
    /// A line of delimited text that no table has.
    found_long_line(line: text);
    /// What to do about it.
    do_ask_for_table();
    /// Quotation marks of delimited text that are not closed.
    found_open_quote(line: text);
    /// What to do about it.
    do_send_again_or_workbook();
    /// Damage that the reader does not know.
    found_damaged();
    /// What to do about it.
    do_send_again();
    /// The file's content was another one a moment before.
    found_changing();
    /// What to do about it.
    do_wait_until_whole();
    /// A file that was listed and is not there.
    found_gone();
    /// What to do about it.
    do_copy_again();
    /// The system refuses the reading.
    found_not_permitted();
    /// What to do about it.
    do_permit_or_copy();
    /// Any other reason of the system.
    found_cannot_open();
    /// What to do about it.
    do_close_programs();
    /// A register that is damaged in a way that the reader does not know.
    found_damaged_register();
    /// What to do about it.
    do_restore();
    /// A folder or file that cannot be looked into.
    found_unopened();
    /// What to do about what cannot be opened or read.
    do_permit();
    /// A link that is not followed.
    found_link(to: ["folder" "outward" "nothing"]);
    /// What to do about it.
    do_copy_itself(to: ["folder" "file" "nothing"]);
    /// A device, a pipe and the like.
    found_no_file();
    /// What to do about it.
    do_lab_files();
    /// A file whose name ends otherwise than a lab file's.
    found_other_ending(endings: text);
    /// What to do about it.
    do_ask_for_spreadsheet();
    /// The same bytes under two names.
    found_same_file(file: text);
    /// A certificate or photograph in the inbox that cannot be read.
    found_exhibit_unreadable();
    /// Text that is not in UTF-8.
    found_encoding();
    /// What to do about it.
    do_ask_for_utf8();
    /// What to do about it where it is a register.
    do_save_as_utf8();
    /// Control characters in cells of a lab's file; $more is how many further cells have some.
    found_control_characters(more: count);
    /// What to do about it.
    do_look_for_missing_text();
    /// Sheets of a workbook that hold no cells.
    found_sheets_passed_over(sheets: count, names: items);
    /// What to do about it.
    do_open_workbook();
    /// Stray quotation marks have drawn rows into one cell.
    found_swallowed_rows(code: text);
    /// What to do about it.
    do_ask_anew();
    /// A table without readings.
    found_no_results(has: ["means" "nothing"]);
    /// What to do about it.
    do_ask_for_extractions();
    /// What the spreadsheet program does not show.
    found_hidden(what: ["row" "column" "sheet"]);
    /// What to do about it.
    do_ask_whether_meant();
    /// A file of a plate reader's figures.
    found_absorbances();
    /// A file that holds controls alone.
    found_controls();
    /// What to do about it.
    do_want_results();
    /// No row could be headings.
    found_no_table();
    /// What to do about it.
    do_ask_for_columns();
    /// A row that is most like headings, and what it lacks; $more says that there are further ones.
    found_headings(headings: items, more: ["yes" "no"], lacking: ["result" "sample" "both"]);
    /// What to do about it; $block is a [[layout]] for programme.toml.
    do_describe_table(block: text);
    /// A registered code beside figures, outside of any table.
    found_lost_code(code: text);
    /// What to do about it.
    do_ask_for_headings();
    /// A column that may count extractions or wells.
    found_replicates(heading: text);
    /// What to do about it.
    do_ask_whether_wells();
    /// A heading of results with a unit that cannot be converted.
    found_foreign_heading(heading: text, unit: text);
    /// What to do about a unit.
    do_ask_for_ppm(results: ["one" "all"]);
    /// A code that no register has.
    found_unknown_code(code: text);
    /// What to do where a registered code is much like it.
    do_look_at_near_code(code: text);
    /// What to do where none is.
    do_register_or_ask();
    /// A result whose row and those above it name no package.
    found_no_code();
    /// What to do about it.
    do_ask_which_package();
    /// A result without a package code, beside a word that may say that it is none of the package above.
    found_unclear_row(word: text, code: text);
    /// What to do about it.
    do_ask_what_result_is_of();
    /// A registered code in a column that is not that of the codes.
    found_code_astray(code: text);
    /// What to do about it.
    do_ask_what_row_says();
    /// What a spreadsheet has made of a code.
    found_mangled_code(written: text, into: ["date" "scientific" "zeros"]);
    /// What to do about it; $code is the registered code that it may have been.
    do_format_as_text(registered: ["known" "unknown"], code: text);
    /// What stands where a day should. In a lab's file it is left out; in a register more may follow, which is told elsewhere.
    found_no_day(written: text, of: ["lab" "register"]);
    /// What to do about it.
    do_write_day(of: ["lab" "register"]);
    /// No unit is stated anywhere.
    found_no_unit();
    /// What to do about it.
    do_ask_for_unit();
    /// A second code on the row of a package.
    found_second_code(code: text, other: text);
    /// What to do about it.
    do_ask_for_headings_over_each();
    /// Whole results with bare figures beside them, in a column for words.
    found_parted_decimals(left: text, left_column: text, right: text, right_column: text);
    /// What to do about it; $block is a [[layout]] for programme.toml.
    do_ask_for_points(block: text);
    /// A figure without a package code that is the mean of those above it.
    found_like_a_mean(written: text, code: text);
    /// What to do about it.
    do_ask_whether_mean();
    /// Packages that a further sheet goes on with.
    found_counted_on(packages: items);
    /// What to do about it.
    do_ask_whether_further();
    /// Two columns between which nothing decides.
    found_two_columns(what: ["package" "gluten" "result"], left_is: ["headed" "bare"], left: text, left_column: text, right_is: ["headed" "bare"], right: text, right_column: text);
    /// What to do about it; $block is a [[layout]] for programme.toml.
    do_choose_column(takes: ["headed" "second"], block: text);
    /// What to do where both columns have one heading.
    do_tell_columns_apart();
    /// A row that may be the headings of another table.
    found_doubtful_row(cells: items);
    /// What to do about it.
    do_ask_what_stands_below();
    /// A footnote mark behind a figure.
    found_footnote(written: text);
    /// What to do about it.
    do_look_up_footnote();
    /// A figure a little below zero.
    found_below_zero(written: text);
    /// What to do about it.
    do_nothing_below_zero();
    /// A column of units with one that cannot be converted.
    found_bad_unit_cell(unit: text, written: text);
    /// Two units are stated for one result.
    found_two_units(written: text, unit: text, other: text);
    /// The same where none of them stands with the figure.
    found_units_contradict(written: text, unit: text, other: text);
    /// What to do about it.
    do_ask_which_unit();
    /// A result with a unit that cannot be converted.
    found_bad_unit(written: text, unit: text);
    /// A cell of results that cannot be read as one.
    found_bad_value(fault: ["no_result" "comma" "negative" "too_much" "scientific" "date" "cell_error" "uncalculated" "sign"], written: text);
    /// What to do about it.
    do_bad_value(fault: ["no_result" "comma" "negative" "too_much" "scientific" "date" "cell_error" "uncalculated" "sign"]);
    /// A sign such as < in a cell of its own that goes with no figure.
    found_loose_sign(sign: text);
    /// A sign or a word beside a result that contradicts it.
    found_sign_contradicts(sign: text, written: text);
    /// What to do about both.
    do_ask_for_sign_before();
    /// A number format that shows something else than a figure in place of one.
    found_figure_hidden(shown: text, written: text);
    /// An extraction that is numbered 0.
    found_zeroth();
    /// What to do about it.
    do_ask_for_numbers();
    /// A row that says of itself that it is no result of the package.
    found_withdrawn(why: ["spiked" "invalid"], written: text);
    /// What to do about it.
    do_ask_without_row();
    /// A row, or a table, of another substance than gluten, where nothing names gluten.
    found_other_analyte(what: ["row" "table"], written: text);
    /// What to do about it.
    do_ask_for_gluten(what: ["row" "table"]);
    /// A table of another substance beside one of gluten.
    found_table_of_other(written: text);
    /// A table whose results are gliadin or gluten; what leaves it open.
    found_gluten_or_gliadin(written: text);
    /// What to do about it.
    do_ask_gluten_or_gliadin();
    /// The lab's mean is not that of its readings.
    found_mean_differs(package: text, written: text, kind: ["number" "range" "above"], lower: figure, upper: figure);
    /// What to do about it.
    do_ask_about_mean();
    /// Two reports of one extraction differ.
    found_conflict(extraction: text, package: text, one: text, one_at: place, other: text, other_at: place);
    /// What to do about it.
    do_settle_conflict();
    /// One reading in each of two files, both the same.
    found_halves(package: text, other: place);
    /// What to do about it.
    do_number_extractions();
    /// Two files agree about an extraction.
    found_counted_once(extraction: text, package: text, other: place);
    /// A package that counts and of which the lab reported nothing.
    found_missing_package(package: text, product: text);
    /// What to do about it.
    do_wait_for_lab();
    /// A claim that the rule does not know.
    found_unknown_claim(claim: text, product: text, rule: text);
    /// What to do about it.
    do_look_at_package();
    /// Two days of a package that cannot both be right; the second is a best-by date as it is printed in "bought_best_by".
    found_package_days(package: text, order: ["sent_bought" "bought_best_by" "received_sent" "received_bought" "tested_sent" "tested_bought" "tested_received" "reported_tested"], day: text, other: text);
    /// What to do about it.
    do_mend_days(of: ["register" "report"]);
    /// All packages of a round are of one lot.
    found_one_lot(number: ["two" "more"], packages: text, product: text, round: text, lot: text);
    /// What to do about it.
    do_buy_other_lots();
    /// One lot with two best-by dates.
    found_two_dates(lot: text, product: text, first: text, first_package: text, other: text, other_package: text);
    /// What to do about it.
    do_mend_lot();
    /// A claim beside an ingredient that denies it.
    found_denied_claim(product: text, claim: text, terms: items);
    /// What to do about it.
    do_look_at_ingredients();
    /// A barcode that is none (GS1 General Specifications, 7.9.1).
    found_barcode(barcode: text, product: text, fault: ["letters" "length" "check"], digits: count, check: text, wanted: text);
    /// What to do about it.
    do_type_barcode();
    /// A price without a digit.
    found_price(price: text, package: text);
    /// What to do about it.
    do_write_price();
    /// Words for fermented or hydrolysed food in a row that says that the food is neither (J AOAC 98:1346, 2015).
    found_processing(product: text, foods: items);
    /// What to do about it.
    do_ask_about_processing();
    /// A published sheet whose product or packages are in no register any more.
    found_nothing_behind(sheet: text, what: ["product" "round"], product: text, round: text);
    /// What to do about it.
    do_put_rows_back();
    /// A lab file that published sheets rest on is gone.
    found_file_gone(how: ["gone" "unopened"], sheets: text, sha256: text);
    /// It is there, and not as it was.
    found_file_changed(sheets: text, sha256: text, now: text);
    /// What to do about both.
    do_copy_back(kept: text);
    /// The register of issues says otherwise than the archive.
    found_register_differs(how: ["lacks" "says"], sheets: text);
    /// What to do about it.
    do_let_run_mend();
    /// It has what no archive has.
    found_unarchived(sheets: text);
    /// What to do about it.
    do_copy_archive_back();
    /// A bag's copy of the register is not as it was archived.
    found_doubted_copy();
    /// What to do about it.
    do_verify_bag();
}
