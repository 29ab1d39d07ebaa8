//! What goes to a lab: the request form, the query and its mail.

use super::*;

messages! {
    "lab"
}
