//! What was found in the inbox.

use super::*;

messages! {
    "report"
}
