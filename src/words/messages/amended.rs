//! What is not what it was: an amended sheet against the revision that it replaces.

use super::*;

messages! {
    "amended"
    /// One thing with what was printed and what is.
    amended_change(what: text, old: text, new: text);
    /// What of the product it is.
    amended_of_product(part: ["name" "verdict" "label" "claim" "brand" "net_content" "certifier" "barcode"]);
    /// What of a package it is.
    amended_of_package(package: text, part: ["result" "extractions" "lot" "best_by" "bought_on" "shop"]);
    /// A verdict.
    amended_verdict(verdict: ["over_limit" "within_limit" "no_verdict"]);
    /// What the label review found.
    amended_finding(finding: ["none" "gluten_source" "unverified_oats" "needs_review" "no_ingredients"]);
    /// The same with the terms it rests on.
    amended_finding_terms(finding: ["none" "gluten_source" "unverified_oats" "needs_review" "no_ingredients"], terms: text);
    /// A result without a lower end.
    amended_up_to(figure: text);
    /// A result that there is not, or a field that is empty.
    amended_no_value();
    /// A package that the sheet did not have.
    amended_not_listed();
    /// An extraction that is set aside.
    amended_set_aside(reported: text);
    /// Parts of the sheet that read otherwise.
    amended_part(part: ["ingredients" "correspondence" "method" "provenance" "earlier" "programme" "wording"]);
    /// Nothing that a reader would ask for.
    amended_no_figure();
    /// No figure and no verdict, but other things.
    amended_others(others: text);
    /// Figures or verdicts alone.
    amended_figures(changes: text);
    /// Figures or verdicts and other things.
    amended_both(changes: text, others: text);
}
