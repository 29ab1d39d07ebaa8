//! Whole programme folders, made here, gathered, and held against what they say.

mod accounting;
mod beside;
mod binary;
pub mod bounds;
mod doubt;
mod folder;
mod hostile;
mod inbox;
mod longest;
mod messages;
mod mutations;
mod pasted;
mod referee;
mod registers;
mod round_trip;
mod shapes;
mod stacked;
mod stated;
mod together;
mod unusual;
mod workbooks;
