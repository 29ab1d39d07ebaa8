//! Plates: what was found of them, and the page of one.

use super::*;

messages! {
    "plate"
    /// Something of a plate that is not understood; `other` is the nearest code, the other column, the unit or the bound.
    found_plate_fault(fault: ["absorbance" "content" "concentration" "stated" "dilution" "extraction" "twice" "well" "unit" "columns" "no_contents" "grids" "numbers" "no_standards" "unnumbered" "code" "many"], well: text, written: text, other: text, lost: ["plate" "sample" "nothing"]);
    /// What to do about it.
    do_plate_fault(fault: ["absorbance" "content" "concentration" "stated" "dilution" "extraction" "twice" "well" "unit" "columns" "no_contents" "grids" "numbers" "no_standards" "unnumbered" "code" "many"]);
    /// Too few standards for the curve of the settings.
    found_plate_standards(plate: text, standards: count, curve: text, needed: count);
    /// No curve can be laid through the standards.
    found_plate_no_curve(plate: text, why: ["monotone" "fitted" "weights"], curve: text);
    /// What to do about either.
    do_plate_curve();
    /// Standards that do not go the way of the others.
    found_plate_monotone(plate: text, steps: count);
    /// A blank that shows too much.
    found_plate_blank(plate: text, wells: text, found: figure, allowed: figure);
    /// The strongest standard shows too little.
    found_plate_top(plate: text, wells: text, found: figure, allowed: figure);
    /// Wells that differ too much, in per cent.
    found_plate_wells(plate: text, wells: text, found: figure, allowed: figure);
    /// A standard that is read back too far from what it is, in per cent.
    found_plate_standard(plate: text, standard: figure, read: ["yes" "no"], found: figure, allowed: figure);
    /// A control that is not what it is said to be: in per cent of its value, or in the unit of the law.
    found_plate_control(plate: text, control: text, read: ["yes" "no"], stated: ["value" "range"], found: figure, low: figure, high: figure, amount: text);
    /// What to do about any of these.
    do_plate_quality();
    /// A sample whose absorbances come to something else than what was reported.
    found_plate_differs(package: text, extraction: text, is: ["figure" "below" "above"], recomputed: figure, amount: text, reported: text, reported_at: place);
    /// What to do about it.
    do_plate_differs();
    /// The first line, and the title of the file.
    plate_title(plate: text);
    /// What the file is, for catalogues.
    plate_about(file: text);
    /// At the head of each page; the plate's name follows.
    plate_head();
    /// At the foot of each page.
    plate_foot();
    /// Below the first line: where the plate stands.
    plate_source(file: text, sheet_is: ["named" "none"], sheet: text, row: text);
    /// What the page is worth.
    plate_stands();
    /// The heading of curve and chart.
    plate_curve_head();
    /// Which curve it is.
    plate_curve(curve: ["four" "five" "spline" "straight"], weights: ["none" "square"]);
    /// In the place of the curve.
    plate_no_curve();
    /// What concentrations are in.
    plate_unit(unit: ["food" "extract"], amount: text, factor: figure);
    /// The parameters of a logistic curve; `g` is none of four.
    plate_parameters(a: figure, b: figure, c: figure, d: figure, has_g: ["yes" "no"], g: figure);
    /// The scatter about the curve.
    plate_residual(sd: figure);
    /// The heading of the standards.
    plate_standards_head();
    /// The heading of the controls.
    plate_controls_head();
    /// The heading of the samples.
    plate_samples_head();
    /// The heading of the checks.
    plate_checks_head();
    /// The head of a column.
    plate_concentration();
    /// The head of a column.
    plate_wells();
    /// The head of a column.
    plate_absorbances();
    /// The head of a column.
    plate_mean();
    /// The head of a column.
    plate_read_back();
    /// The head of a column.
    plate_near();
    /// The head of a column.
    plate_control();
    /// The head of a column.
    plate_stated(amount: text);
    /// The head of a column.
    plate_package();
    /// The head of a column.
    plate_extraction();
    /// The head of a column.
    plate_dilution();
    /// The head of a column.
    plate_recomputed(amount: text);
    /// The head of a column.
    plate_reported();
    /// The head of a column.
    plate_agree();
    /// The head of a column.
    plate_check();
    /// The head of a column.
    plate_found();
    /// The head of a column.
    plate_allowed();
    /// The row of the blanks.
    plate_blanks();
    /// A check by its name.
    plate_check_name(check: ["monotone" "blank" "top" "well_cv" "back_calculated" "recovery"]);
    /// What is allowed at most.
    plate_at_most(figure: text);
    /// What is allowed at least.
    plate_at_least(figure: text);
    /// Whether a check or a standard is as it should be.
    plate_ok(ok: ["yes" "no"]);
    /// Whether a sample comes to what was reported.
    plate_agrees(agrees: ["yes" "no" "unsaid"]);
    /// Wells of others, below the samples.
    plate_others(wells: count);
    /// Where none of the samples is of the programme.
    plate_no_samples();
    /// What of the chart is where, for who sees it.
    plate_key(controls: ["yes" "no"], samples: ["yes" "no"], reported: ["yes" "no"]);
    /// Along the chart.
    plate_along(unit: ["food" "extract"], amount: text);
    /// Up the chart.
    plate_up();
    /// The chart, for who cannot see it.
    plate_chart(standards: count, lowest: text, highest: text, samples: count, differing: count);
}
