//! What is not what it was: an amended sheet against the revision that it replaces.

use super::*;

messages! {
    "amended"
    /// One thing with what is printed and what was.
    amended_change(what: text, new: text, old: text);
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
    /// A part of the sheet that reads otherwise.
    amended_part(part: ["ingredients" "correspondence" "method" "provenance" "earlier" "programme" "wording"]);
    /// No figure and no verdict.
    amended_no_figure();
    /// All parts that read otherwise.
    amended_parts(parts: text);
    /// What the revision before said is not known.
    amended_unknown(revision: text);
}
