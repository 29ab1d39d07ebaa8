//! The archive as far as it is read back: bags, their check, sheets, the register of issues.

#[path = "../../../src/archive/bag.rs"]
pub mod bag;

#[path = "../../../src/archive/verify/mod.rs"]
pub mod verify;

#[path = "../../../src/archive/sheet.rs"]
pub mod sheet;

#[path = "../../../src/archive/issued.rs"]
pub mod issued;
