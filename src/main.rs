//! Hands the arguments over, gives the exit status back.

fn main() {}
