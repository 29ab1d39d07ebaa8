//! Words that every document shares.

use super::*;

messages! {
    "common"
    /// The name of a month, from 1.
    month_name(month: count);
    /// A day in full.
    day(day: count, month: count, year: text);
    /// From one day to another of the same month; the last in full.
    days_of_month(first: count, last: text);
    /// Of the same year.
    days_of_year(day: count, month: count, last: text);
    /// Of different years, both in full.
    days_of_years(first: text, last: text);
    /// A count in words, up to nine.
    spelt(n: count);
    /// The same where a sentence begins with it.
    spelt_first(n: count);
    /// Two things in one.
    list_of_two(first: text, last: text, sound: ["i" "other"]);
    /// Several, the last one after "and".
    list_of_more(others: text, last: text, sound: ["i" "other"]);
    /// The last item of a list that names the first ones alone.
    list_rest(items: count);
    /// The same of figures.
    list_more_figures(figures: count, lowest: text, highest: text);
    /// A range whose lower end is nothing.
    up_to(figure: text);
    /// A range in a sentence.
    range_in_text(lower: text, upper: text);
    /// A lab without a name.
    lab_unnamed();
    /// In the place of a figure.
    no_figure();
    /// In the place of an extraction.
    no_reading();
    /// On which side of the limit something is, with the limit's figure: "at or above 20 ppm".
    limit_over(rule: ["fails" "passes" "detection"], limit: text);
    /// The other side: "below 20 ppm".
    limit_within(rule: ["fails" "passes" "detection"], limit: text);
    /// The same without the figure: "at or above the limit".
    over_the_limit(rule: ["fails" "passes" "detection"]);
    /// The other side: "below the limit".
    within_the_limit(rule: ["fails" "passes" "detection"]);
    /// The same where a word or two must do: "at or above".
    limit_over_short(rule: ["fails" "passes" "detection"]);
    /// The other side: "below".
    limit_within_short(rule: ["fails" "passes" "detection"]);
    /// The limit written out: "20 parts per million (ppm)".
    limit_in_full(unit: ["ppm" "mg"], figure: text);
    /// What a line at the limit is called.
    limit_flag(rule: ["fails" "passes" "detection"], limit: text);
    /// The same in a sentence.
    the_line(rule: ["fails" "passes" "detection"]);
    /// Where the limit is written.
    limit_source(regime: ["us" "codex" "eu" "uk" "canada" "argentina" "chile" "au" "custom"], rule: ["fails" "passes" "detection"], limit: text);
    /// Products whose claims have limits of their own: over them.
    over_its_own_limit();
    /// Within them.
    within_its_own_limit();
    /// Packages that hold less than the assay puts a number on.
    band_below(lloq: ["one" "several"], below: text);
    /// The same where a word or two must do, without the unit.
    band_below_short(lloq: ["one" "several"], below: text);
    /// Packages with a figure, within the limit.
    band_measured(from: ["lloq" "unsaid"], rule: ["fails" "passes" "detection"], below: text, limit: text);
    /// The same where each claim has a limit of its own.
    band_measured_mixed();
    /// What a line at the limit is called where claims have limits of their own.
    mixed_flag(limit: text);
    /// The same in a sentence.
    mixed_line();
    /// The number of a page and of all pages.
    page_of(page: text, pages: text);
    /// Words as somebody else has them.
    quoted(said: text);
}
