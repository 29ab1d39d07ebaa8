//! What was found in the registers, and what to do about it.

use super::*;

messages! {
    "registers"
    /// A file whose name is nearly that of a register.
    found_misnamed(register: text, bars: ["verdict" "issue"]);
    /// What to do about it.
    do_rename(register: text);
    /// What in registers/ is no register.
    found_no_register(what: ["file" "folder" "sheet"]);
    /// What to do about it.
    do_keep_elsewhere(names: text);
    /// What to do about a sheet.
    do_keep_sheet_elsewhere(names: text);
    /// A sheet of the workbook of registers whose name is nearly a register's.
    found_misnamed_sheet(register: text, bars: ["verdict" "issue"]);
    /// What to do about it.
    do_rename_sheet(register: text);
    /// A file whose name is nearly that of the workbook of registers.
    found_misnamed_workbook();
    /// What to do about it.
    do_rename_workbook();
    /// What to do where it is the register that the program keeps itself.
    do_take_issued_out();
    /// A register without headings.
    found_empty_register();
    /// What to do about it.
    do_put_headings();
    /// A second sheet of a register that holds something.
    found_further_sheet();
    /// What to do about it.
    do_one_sheet();
    /// A heading that is nearly the name of a missing column, and what that keeps from being done.
    found_near_heading(found: text, meant: text, costs: ["column" "verdict" "issue"]);
    /// What to do about it.
    do_write_heading(meant: text);
    /// Two columns of one name.
    found_heading_twice(heading: text, costs: ["column" "verdict" "issue"]);
    /// What to do about it.
    do_keep_one_column();
    /// A column of a register that nothing is read from.
    found_unknown_column(register: text, column: text);
    /// A field that a spreadsheet could not work out.
    found_cell_error(written: text);
    /// What to do about it.
    do_mend_cell();
    /// What to do about a formula of a register that was never worked out.
    do_calculate();
    /// A field with more letters than any document holds.
    found_too_long(column: text, length: text, most: text);
    /// What to do about it.
    do_shorten();
    /// Control characters in a field of a register.
    found_control_characters_in(written: text, costs: ["letters" "row"]);
    /// What to do about it.
    do_type_anew(when: ["always" "missing"]);
    /// A text that a spreadsheet program would take for a formula.
    found_formula(written: text);
    /// What to do about it.
    do_mend_formula();
    /// A field for mail addresses that holds something else.
    found_no_address(written: text);
    /// What to do about it.
    do_write_address();
    /// A needed field without anything in it.
    found_blank(column: text);
    /// What to do about it.
    do_fill_in();
    /// A field that may have one of several words, and has another one.
    found_unknown_word(written: text, column: text);
    /// What to do about it.
    do_write_one_of(words: text);
    /// A field that should hold a number.
    found_no_number(written: text, wanted: ["count" "figure"]);
    /// What to do about it.
    do_write_number(wanted: ["count" "figure"]);
    /// A spreadsheet program has made a day of an id.
    found_id_is_day(written: text, column: text);
    /// What to do about it.
    do_format_column();
    /// What no id can be.
    found_bad_id(written: text, column: text, since: ["letters" "file_name"]);
    /// What to do about it.
    do_mend_id(since: ["letters" "file_name"]);
    /// A second row of one product.
    found_product_twice(product: text);
    /// A second row whose id differs in case alone.
    found_product_alike(written: text, first: text);
    /// What to do about it.
    do_one_id_each();
    /// Oats that are called certified.
    found_no_certifier();
    /// What to do about it.
    do_name_certifier();
    /// A product without a claim.
    found_no_claim();
    /// What to do about it.
    do_write_claim();
    /// Two products and rounds whose sheets would have one number.
    found_sheets_alike(product: text, round: text, other_product: text, other_round: text);
    /// What to do about it.
    do_rename_round();
    /// A code that is there twice.
    found_package_twice(first: text, second: text, spelt: ["alike" "differently"], kept: ["first" "neither"]);
    /// What to do about it.
    do_one_code_each();
    /// A row about a product that there is not.
    found_unknown_product(written: text);
    /// What to do about it.
    do_add_product();
    /// Rows of a lab's file about packages whose row in the register is not used; $more is how many codes are not named.
    found_lost_rows(rows: count, packages: items, more: count);
    /// What to do about it.
    do_mend_registers();
    /// A path of photographs that is not opened.
    found_folder_outside(folder: text);
    /// What to do about it.
    do_copy_photographs();
    /// A path of photographs that leads nowhere.
    found_no_folder(folder: text);
    /// What to do about it.
    do_make_folder();
    /// A folder of photographs that the system does not list.
    found_folder_unlisted(folder: text);
    /// What to do about it.
    do_look_at_names();
    /// What stands in a folder of photographs and is not taken for one.
    found_photograph(path: text, fault: ["link" "ending" "unreadable"]);
    /// What to do about it.
    do_mend_photograph(fault: ["link" "ending" "unreadable"]);
    /// A path that leads to no lab file.
    found_no_lab_file(written: text, costs: ["correction" "nothing"]);
    /// What to do about it.
    do_write_path(of: ["one" "several" "replaced"]);
    /// A correction of a package that there is not.
    found_unknown_package(written: text);
    /// What to do about it.
    do_add_package();
    /// A correction that fits no reading.
    found_idle_correction(file: text, package: text, extraction_is: ["one" "any"], extraction: text);
    /// What to do about it; the files that report the package.
    do_mend_correction(reported: ["nowhere" "somewhere"], files: text);
    /// An exclusion of every reading that another row declares a repeat.
    found_corrections_clash(row: text);
    /// What to do about it.
    do_keep_one_correction();
    /// A cell of a register that stands under no heading.
    found_beyond_headings(written: text, costs: ["verdict" "issue" "nothing"]);
    /// What to do about it.
    do_mend_columns();
    /// A notice that is dated before there was anything to tell.
    found_early_notice(product: text, on: text, day: text);
    /// What to do about it.
    do_mend_notice();
    /// Two rows about one file.
    found_report_twice(file: text, row: text);
    /// What to do about it.
    do_one_row_each();
    /// The last day of the tests and the first.
    found_days_reversed();
    /// What to do about it.
    do_mend_day();
    /// A report that is said to replace another one.
    found_nothing_replaced(written: text, since: ["unclear" "itself" "circle"]);
    /// What to do about it.
    do_name_earlier_file();
    /// A certificate that is not there.
    found_no_certificate(written: text);
    /// What to do about it.
    do_copy_certificate();
    /// A code of the key that is another package's.
    found_blind_taken(code: text, by: ["package" "key"]);
    /// What to do about it.
    do_own_code();
    /// A row of the register of what was issued that the program cannot have written.
    found_no_checksum(written: text);
    /// What to do about it.
    do_restore_register();
    /// A row of label terms that cannot be used.
    found_bad_term(fault: ["term" "class" "exception" "condition"], term: text, written: text);
    /// What to do about it.
    do_mend_row();
    /// A package that is known to hold no gluten, and what the lab reports of it.
    found_blind_without(package: text, reported: items, outcome: ["no_result" "none_found" "found"], found: text, all: text);
    /// A package to which gluten was added, and what the lab reports of it, where no share of it can be worked out.
    found_blind_with(package: text, amount: ["known" "unknown"], added: figure, reported: items, outcome: ["no_result" "missed" "found"], missed: text, all: text);
    /// Likewise, with the share of it that was found. AOAC SMPR 2017.021 allows 50 to 200 % for oats, an uneven food.
    found_blind_share(package: text, added: figure, reported: items, share: figure, within: ["yes" "no"]);
    /// What to do where the lab has no result of it.
    do_ask_for_blind();
    /// What to do where the result is not what was expected.
    do_look_at_key();
}
