//! Documents, typeset from judged products made by hand.

mod sheets;
