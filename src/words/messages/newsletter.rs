//! The newsletter, on paper, on a screen and as text, and the pages of the web site.

use super::*;

messages! {
    "newsletter"
}
