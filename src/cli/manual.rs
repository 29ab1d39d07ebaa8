//! `completions` and `man`: what a shell and a manual reader need, made from what can be typed.

use crate::cli::Ending;
use crate::cli::args::Arguments;
use crate::cli::print;
use anyhow::{Result, bail};
use clap::CommandFactory;
use clap_complete::Shell;
use clap_mangen::Man;

/// The name that the program is called by.
const NAME: &str = "galleyproof";

/// Prints the completions for a shell.
///
/// # Errors
/// Where standard output cannot be written.
pub fn completions(shell: Shell) -> Result<Ending> {
    let mut script = Vec::new();
    clap_complete::generate(shell, &mut Arguments::command(), NAME, &mut script);
    print::result(&String::from_utf8(script)?)?;
    Ok(Ending::Well)
}

/// Prints the manual page of the program, or of a command of it.
///
/// # Errors
/// Where there is no such command, or standard output cannot be written.
pub fn page(command: Option<&str>) -> Result<Ending> {
    let mut program = Arguments::command();
    program.build();
    let of = match command {
        None => program,
        Some(name) => {
            let Some(found) = program.find_subcommand(name) else {
                let known: Vec<&str> = program
                    .get_subcommands()
                    .map(|one| one.get_name())
                    .collect();
                bail!(
                    "there is no command {name}. The commands are {}",
                    known.join(", ")
                );
            };
            found.clone()
        }
    };
    let mut page = Vec::new();
    Man::new(of).render(&mut page)?;
    print::result(&String::from_utf8(page)?)?;
    Ok(Ending::Well)
}
