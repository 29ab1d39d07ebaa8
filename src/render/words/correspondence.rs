//! What passed between the programme and the maker, as the sheet tells it: replies are quoted whole.

use crate::model::registers::{Followup, FollowupKind};
use crate::model::verdict::ProductVerdict;
use crate::render::numbers;

/// The correspondence about a product, one sentence an event; none where there is nothing to tell.
pub fn told(product: &ProductVerdict) -> Vec<String> {
    if product.followups.is_empty() {
        let said = "No notice to the maker is on record yet.";
        return if product.notify_maker {
            vec![said.to_owned()]
        } else {
            Vec::new()
        };
    }
    let mut said: Vec<String> = product.followups.iter().map(event).collect();
    let has = |kind| {
        product
            .followups
            .iter()
            .any(|followup| followup.kind == kind)
    };
    if has(FollowupKind::NoticeSent) && !has(FollowupKind::Reply) {
        said.push("No statement from the maker is on record.".to_owned());
    }
    said
}

fn event(followup: &Followup) -> String {
    let on = numbers::date(followup.on);
    let note = followup
        .note
        .as_deref()
        .map(str::trim)
        .filter(|note| !note.is_empty());
    match (followup.kind, note) {
        (FollowupKind::NoticeSent, _) => match followup.due_on {
            Some(due) => format!(
                "The maker was told on {on} and asked to answer by {}.",
                numbers::date(due)
            ),
            None => format!("The maker was told on {on}."),
        },
        (FollowupKind::Reply, Some(note)) => format!("The maker answered on {on}: “{note}”"),
        (FollowupKind::Reply, None) => format!("The maker answered on {on}."),
        (FollowupKind::Action, Some(note)) => format!("On {on} the maker reported: “{note}”"),
        (FollowupKind::Action, None) => format!("The maker took a step on {on}."),
        (FollowupKind::Closed, Some(note)) => format!("Closed on {on}: {note}"),
        (FollowupKind::Closed, None) => format!("Closed on {on}."),
    }
}
