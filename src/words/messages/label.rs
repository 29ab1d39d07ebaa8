//! What is said of a label.

use super::*;

messages! {
    "label"
}
