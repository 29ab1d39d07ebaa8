//! Whole programme folders, made here, gathered, and held against what they say.

mod accounting;
mod binary;
pub mod bounds;
mod doubt;
mod folder;
mod hostile;
mod inbox;
mod longest;
mod messages;
mod mutations;
mod referee;
mod registers;
mod round_trip;
mod shapes;
mod together;
mod unusual;
mod workbooks;
