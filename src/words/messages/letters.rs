//! The letters to a maker: notice, correction, mail.

use super::*;

messages! {
    "letters"
}
