//! The label: the statement with its terms marked, and why each bears on the claim.

use crate::model::decided::JudgedProduct;
use crate::model::label::TermClass;
use crate::render::explain::words::line;

/// The label's part.
pub fn explain_label(out: &mut String, judged: &JudgedProduct) {
    let label = &judged.verdict.label;
    line(out, 0, "The label");
    let marked: String = label
        .statement
        .iter()
        .map(|piece| match piece.marked {
            true => format!("[{}]", piece.text),
            false => piece.text.clone(),
        })
        .collect();
    if !marked.trim().is_empty() {
        line(out, 1, &format!("“{}”", marked.trim()));
    }
    line(
        out,
        1,
        &format!("Finding: {}", label.finding.word().replace('_', " ")),
    );
    for term in &label.terms {
        let class = match term.class {
            TermClass::Always => "always a gluten source",
            TermClass::NotForbidden(_) => "a gluten source, not forbidden",
            TermClass::Depends => "depends: ask",
            TermClass::Exempt => "exempt",
            TermClass::LookAlike => "no gluten source",
        };
        line(
            out,
            2,
            &format!(
                "“{}” ({}; {class}): {} [{}]",
                term.printed, term.grain, term.why, term.source
            ),
        );
    }
    for precaution in &label.precautionary {
        line(
            out,
            2,
            &format!("kept apart, no ingredient: “{precaution}”"),
        );
    }
    line(out, 0, "");
}
