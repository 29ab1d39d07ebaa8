//! The plan of a round, the labels and the contact sheet.

use super::*;

messages! {
    "plan"
}
