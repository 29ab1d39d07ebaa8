//! Whole programme folders, made here, gathered, and held against what they say.

mod folder;
mod registers;
mod shapes;
mod unusual;
mod workbooks;
