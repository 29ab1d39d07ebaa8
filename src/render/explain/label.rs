//! The label: the statement with its terms marked, and why each bears on the claim.

use crate::model::decided::JudgedProduct;
use crate::model::label::TermClass;
use crate::render::explain::words::{line, plain, say};
use crate::render::words::label::why;
use crate::words::{english, say};

/// The label's part.
pub fn explain_label(out: &mut String, judged: &JudgedProduct) {
    let label = &judged.verdict.label;
    say(out, 0, &say::explain_label());
    let marked: String = label
        .statement
        .iter()
        .map(|piece| match piece.marked {
            true => format!("[{}]", piece.text),
            false => piece.text.clone(),
        })
        .collect();
    if !marked.trim().is_empty() {
        say(out, 1, &say::explain_statement(marked.trim()));
    }
    say(out, 1, &say::explain_finding(plain(label.finding.word())));
    for term in &label.terms {
        let class = match term.class {
            TermClass::Always => "always",
            TermClass::NotForbidden(_) => "not_forbidden",
            TermClass::Depends => "depends",
            TermClass::Exempt => "exempt",
            TermClass::LookAlike => "look_alike",
        };
        let class = english().say(&say::explain_class(class));
        let why = why(term, english());
        let said = say::explain_term(&term.printed, &term.grain, class, why, &term.source);
        say(out, 2, &said);
    }
    for precaution in &label.precautionary {
        say(out, 2, &say::explain_precaution(precaution));
    }
    line(out, 0, "");
}
