//! The programme summary.

use super::*;

messages! {
    "summary"
}
