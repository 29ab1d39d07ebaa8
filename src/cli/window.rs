//! In a window of its own: what a person sees who has started the program from its icon, and typed nothing.
//!
//! Such a window closes when the program ends, so that whatever it says would be gone. Here it says what it is, makes the
//! demo or runs a folder, and then waits for a key. Nothing tells on every system whether a window belongs to the program
//! alone; so it is taken for one where a person is at a terminal and has typed no command.

use std::ffi::{OsStr, OsString};
use std::io::{BufRead, Result, Write};
use std::path::{Path, PathBuf};

/// The demo's folder, below the one in which the program was started.
const DEMO: &str = "galleyproof-demo";

/// What the program was started with, as far as a window is concerned.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Start {
    /// With a command, or for another program.
    Command,
    /// With nothing at all.
    Bare,
    /// With a folder alone: it was dropped on the icon.
    Dropped(PathBuf),
}

/// What a person asked for.
#[derive(Clone, Debug, PartialEq, Eq)]
enum Wish {
    Close,
    Help,
    Demo,
    Folder(PathBuf),
    Unknown(String),
}

/// Tells a window from a command. `at_terminal`: input and output are both a terminal.
pub fn start(
    arguments: &[OsString],
    at_terminal: bool,
    is_command: &dyn Fn(&OsStr) -> bool,
) -> Start {
    match arguments.get(1..).unwrap_or_default() {
        _ if !at_terminal => Start::Command,
        [] => Start::Bare,
        [one] if !is_command(one) && Path::new(one).is_dir() => Start::Dropped(one.into()),
        _ => Start::Command,
    }
}

/// Says what the program is and does what is asked for, once, then waits for a key. `act` does a command, as typed, and gives
/// its exit status, which is given on.
///
/// # Errors
/// Where the terminal cannot be read or written.
pub fn open(
    start: &Start,
    input: &mut dyn BufRead,
    output: &mut dyn Write,
    act: &mut dyn FnMut(&[&OsStr]) -> u8,
) -> Result<u8> {
    let status = match start {
        Start::Dropped(folder) => run(folder, output, act)?,
        Start::Bare | Start::Command => {
            write!(output, "{}", greeting())?;
            loop {
                write!(output, "> ")?;
                output.flush()?;
                match wish(&line(input)?) {
                    Wish::Close => return Ok(0),
                    Wish::Help => break act(&[OsStr::new("--help")]),
                    Wish::Demo => break demo(output, act)?,
                    Wish::Folder(folder) => break run(&folder, output, act)?,
                    Wish::Unknown(text) => writeln!(
                        output,
                        "There is no folder {text}. Type its whole path, d, h, or Enter alone."
                    )?,
                }
            }
        }
    };
    write!(output, "\nPress Enter to close this window. ")?;
    output.flush()?;
    line(input)?;
    Ok(status)
}

fn greeting() -> String {
    format!(
        "galleyproof {} turns a lab's gluten results into results sheets that can be published.\n\
         It reads a programme folder: programme.toml, registers/ and the lab's files in inbox/.\n\
         It sends nothing to anyone and uses no network.\n\n\
         \x20 d        make a demo of invented data in {DEMO}, and all its documents\n\
         \x20 FOLDER   make the documents of your programme folder: type its path, or drop it here\n\
         \x20 h        what can be typed after the program's name\n\
         \x20 Enter    close\n\n",
        env!("CARGO_PKG_VERSION")
    )
}

fn line(input: &mut dyn BufRead) -> Result<String> {
    let mut line = String::new();
    input.read_line(&mut line)?;
    Ok(line)
}

fn wish(typed: &str) -> Wish {
    let typed = typed.trim();
    match typed.to_lowercase().as_str() {
        "" | "q" => Wish::Close,
        "h" | "?" => Wish::Help,
        "d" => Wish::Demo,
        _ => match paths(typed).into_iter().find(|path| path.is_dir()) {
            Some(folder) => Wish::Folder(folder),
            None => Wish::Unknown(typed.to_owned()),
        },
    }
}

/// The paths that a line can mean: terminals put what is dropped on them in quotes, or a backslash before each space.
fn paths(typed: &str) -> Vec<PathBuf> {
    let unquoted = ['"', '\''].iter().find_map(|quote| {
        let inner = typed.strip_prefix(*quote)?.strip_suffix(*quote)?;
        Some(PathBuf::from(inner))
    });
    let unescaped = typed.replace("\\ ", " ");
    [Some(typed.into()), unquoted, Some(unescaped.into())]
        .into_iter()
        .flatten()
        .collect()
}

/// The demo's folder is made where it is not there yet; one that is there keeps what was changed in it.
fn demo(output: &mut dyn Write, act: &mut dyn FnMut(&[&OsStr]) -> u8) -> Result<u8> {
    let folder = Path::new(DEMO);
    if !folder.exists() {
        let status = act(&["init", DEMO, "--demo"].map(OsStr::new));
        if status != 0 {
            return Ok(status);
        }
    }
    run(folder, output, act)
}

fn run(folder: &Path, output: &mut dyn Write, act: &mut dyn FnMut(&[&OsStr]) -> u8) -> Result<u8> {
    let status = act(&[OsStr::new("run"), OsStr::new("-C"), folder.as_os_str()]);
    if status < 2 {
        let place = std::path::absolute(folder).unwrap_or_else(|_| folder.to_owned());
        writeln!(
            output,
            "\nThe documents are in {}. Begin with summary.pdf there.",
            place.join("out").display()
        )?;
    }
    Ok(status)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// What was written and done, and the exit status, where this was typed.
    fn opened(start: &Start, typed: &str, status: u8) -> (String, Vec<String>, u8) {
        let (mut output, mut done) = (Vec::new(), Vec::new());
        let mut act = |arguments: &[&OsStr]| {
            let words: Vec<_> = arguments.iter().map(|one| one.to_string_lossy()).collect();
            done.push(words.join(" "));
            status
        };
        let ended = open(start, &mut typed.as_bytes(), &mut output, &mut act);
        let ended = ended.expect("memory takes all");
        (String::from_utf8(output).expect("text"), done, ended)
    }

    fn begun(arguments: &[&str], at_terminal: bool) -> Start {
        let arguments: Vec<OsString> = arguments.iter().map(OsString::from).collect();
        start(&arguments, at_terminal, &|word| word == "run")
    }

    #[test]
    fn a_window_is_a_terminal_where_no_command_was_typed() {
        let folder = tempfile::tempdir().expect("a folder");
        let path = folder.path().to_str().expect("is text");
        assert_eq!(begun(&["galleyproof"], true), Start::Bare);
        assert_eq!(begun(&["galleyproof"], false), Start::Command);
        assert_eq!(
            begun(&["galleyproof", path], true),
            Start::Dropped(folder.path().to_owned())
        );
        assert_eq!(begun(&["galleyproof", path], false), Start::Command);
        assert_eq!(begun(&["galleyproof", "run"], true), Start::Command);
        assert_eq!(begun(&["galleyproof", "no such"], true), Start::Command);
        assert_eq!(begun(&["galleyproof", path, path], true), Start::Command);
    }

    #[test]
    fn it_says_what_it_is_and_closes_when_nothing_is_wanted() {
        for typed in ["\n", "", "q\n"] {
            let (said, done, status) = opened(&Start::Bare, typed, 0);
            assert!(said.starts_with("galleyproof "), "{said}");
            assert!(done.is_empty() && status == 0, "{done:?}");
        }
    }

    #[test]
    fn a_folder_that_is_dropped_is_run_and_the_window_stays() {
        let folder = tempfile::tempdir().expect("a folder");
        let (said, done, status) = opened(&Start::Dropped(folder.path().to_owned()), "\n", 1);
        assert_eq!(done, [format!("run -C {}", folder.path().display())]);
        assert!(said.contains("summary.pdf"), "{said}");
        assert!(said.ends_with("Press Enter to close this window. "));
        assert_eq!(status, 1);
        let (said, _, status) = opened(&Start::Dropped(folder.path().to_owned()), "", 2);
        assert!(!said.contains("summary.pdf"), "nothing was made: {said}");
        assert_eq!(status, 2);
    }

    #[test]
    fn a_path_is_taken_as_a_terminal_puts_it() {
        let folder = tempfile::tempdir().expect("a folder");
        let spaced = folder.path().join("our programme");
        std::fs::create_dir(&spaced).expect("makes it");
        let path = spaced.to_str().expect("is text");
        for typed in [
            path.to_owned(),
            format!("'{path}'"),
            format!("\"{path}\" "),
            path.replace(' ', "\\ "),
        ] {
            let (_, done, _) = opened(&Start::Bare, &format!("{typed}\n\n"), 0);
            assert_eq!(done, [format!("run -C {path}")], "{typed}");
        }
        let (said, done, _) = opened(&Start::Bare, "nowhere\n\n", 0);
        assert!(said.contains("There is no folder nowhere."), "{said}");
        assert!(done.is_empty(), "{done:?}");
    }

    #[test]
    fn the_demo_is_made_and_run() {
        let (said, done, status) = opened(&Start::Bare, "d\n\n", 0);
        let init = format!("init {DEMO} --demo");
        assert_eq!(done, [init, format!("run -C {DEMO}")]);
        assert!(said.contains(DEMO) && status == 0, "{said}");
        let (_, done, status) = opened(&Start::Bare, "d\n\n", 2);
        assert_eq!((done.len(), status), (1, 2), "it could not be made");
    }
}
