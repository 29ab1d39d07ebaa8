//! The reasoning of one verdict, step by step.

use super::*;

messages! {
    "explain"
}
