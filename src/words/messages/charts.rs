//! What stands in and beside the charts: axes, keys, and what is read aloud in their place.

use super::*;

messages! {
    "charts"
    /// How extractions agree, at the end of their row: they do.
    ruler_agree();
    /// Nothing speaks against it.
    ruler_no_sign();
    /// They do not.
    ruler_disagree();
    /// There is no result.
    ruler_no_result();
    /// There are fewer than asked for.
    ruler_incomplete(usable: count);
    /// Under it: the lab has not reported.
    ruler_nothing_reported();
    /// The lab gave rows without results.
    ruler_none_reported();
    /// Two reports differ.
    ruler_reports_differ();
    /// Extractions were set aside.
    ruler_set_aside(usable: count);
    /// The lab gave no result for some.
    ruler_not_given(usable: count);
    /// What the lab gave cannot be read.
    ruler_unreadable(usable: count);
    /// The second one is missing.
    ruler_second_missing();
    /// More are asked for.
    ruler_more_asked();
    /// All are beyond the same end of what the assay measures.
    ruler_beyond(extractions: count, side: ["below" "above"], bound: text);
    /// How far apart they are.
    ruler_apart(extractions: count, how: ["exact" "least" "equal"], gap: text, allowed: text);
    /// Over the cell for what is too little to measure.
    ruler_below(bound: text);
    /// The lot, under a code.
    ruler_lot(lot: text);
    /// The unit, beside the scale.
    ruler_unit(unit: ["ppm" "mg"]);
    /// What a log scale is, under it.
    ruler_log();
    /// Two values beside their marks.
    ruler_both(first: text, last: text);
    /// What the marks mean.
    ruler_key(thin: ["yes" "no"], rule: ["fails" "passes" "detection"]);
    /// The picture in words.
    ruler_alt(scale: text, unit: text, rule: ["fails" "passes" "detection"], limit: text, rows: text);
    /// One row of it.
    ruler_row(package: text, figures: text, head: text, detail: text);
    /// A row without readings.
    ruler_row_empty(package: text, head: text, detail: text);
    /// A bound, read aloud.
    ruler_spoken(side: ["below" "above"], bound: text);
    /// The marks of the plots: an open arrow.
    ruler_mark_open_arrow();
    /// An open circle.
    ruler_mark_open_circle();
    /// A filled circle.
    ruler_mark_filled_circle();
    /// An arrow on the scale.
    ruler_mark_arrow();
    /// What it means.
    ruler_mark_arrow_means();
    /// A dashed circle.
    ruler_mark_dashed();
    /// What it means.
    ruler_mark_dashed_means();
    /// An upright line.
    ruler_mark_line();
    /// What it means.
    ruler_mark_line_means(line: text, limit: text);
    /// The marks in words.
    ruler_marks_alt(marks: text);
    /// One of them.
    ruler_mark_alt(mark: text, meaning: text);
}
