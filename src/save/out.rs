//! The outputs folder. Everything is staged inside it first and moved into place only when all is made, so that a run
//! that fails, or is killed, leaves the folder as it was.
//!
//! A record beside the outputs says what this program wrote, with the SHA-256 of each file. With it the next run tells
//! its own earlier work, which it may replace or clear away, from a file that a person has put there or changed, which
//! it never touches without keeping it: such a file is set aside under a new name.

use crate::files;
use anyhow::{Context, Result};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::sync::Mutex;

/// The record of what was written.
const RECORD: &str = ".galleyproof.json";

/// Written before the first move and taken away after the last: what a killed run was about to put in place.
const PLANNED: &str = ".galleyproof-planned.json";

/// Stands in the folder from the first move to the last, for a person who opens it meanwhile, or after a run was cut off.
const UNFINISHED: &str = "NOT FINISHED, run again.txt";

const UNFINISHED_TEXT: &str = "A run of galleyproof was putting new files into this folder and has not ended, or was cut off.\n\
    Each file is whole, but some are new and some are of the run before. Run galleyproof again:\n\
    it finishes, and this note goes.\n";

/// What to tell whoever looks at this folder, where some of its files are new and some of the run before: a run is putting
/// them there just now, or was cut off while it did.
pub fn unfinished(folder: &Path) -> Option<String> {
    let is_unfinished = folder.join(PLANNED).is_file() || folder.join(UNFINISHED).is_file();
    is_unfinished.then(|| {
        format!(
            "{} is not finished: some of its files are new and some are of the run before, each whole. Where no run is at \
             work, one was cut off; `galleyproof run` finishes it.",
            folder.display()
        )
    })
}

/// What runs before a killed one had planned and not finished.
const FORMER: &str = ".galleyproof-planned-before.json";

/// Where new files wait until all are made.
const STAGE: &str = ".galleyproof-stage";

/// One file that this program wrote.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Written {
    /// SHA-256 of its bytes.
    pub sha256: String,
    /// What it was made from: equal keys mean equal files.
    pub key: Option<String>,
}

/// What moving in came to.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Outcome {
    /// Files that are new or differ from what was there, in order.
    pub written: Vec<String>,
    /// Files that were there already, byte for byte.
    pub unchanged: usize,
    /// Files of an earlier run that nothing makes any more.
    pub cleared: Vec<String>,
    /// Files that a person had changed, and the names under which they were kept.
    pub set_aside: Vec<(String, String)>,
    /// Files of an earlier run that nothing makes any more and that a person had changed: they stand where they stood.
    pub left: Vec<String>,
}

/// An outputs folder that is being filled.
pub struct Staging {
    folder: PathBuf,
    stage: Stage,
    /// What an earlier run wrote, finished or killed.
    earlier: BTreeMap<String, Vec<Written>>,
    made: Mutex<BTreeMap<String, Made>>,
}

/// The folder in which new files wait; it goes with the run, however that ends, so that a disk that was full has room
/// again.
struct Stage(PathBuf);

impl Drop for Stage {
    fn drop(&mut self) {
        // What cannot be removed now the next run removes.
        let _ = files::remove_folder(&self.0);
    }
}

/// A file of this run.
struct Made {
    written: Written,
    /// It stands in its place already.
    in_place: bool,
}

impl Staging {
    /// Opens the folder, making it where it is missing.
    ///
    /// # Errors
    /// Where the folder cannot be made or its record cannot be read.
    pub fn open(folder: &Path) -> Result<Staging> {
        files::refuse_file_as_folder(folder)?;
        let stage = folder.join(STAGE);
        files::remove_folder(&stage)?;
        files::sweep_unfinished(folder)?;
        let mut earlier: BTreeMap<String, Vec<Written>> = BTreeMap::new();
        for name in [RECORD, FORMER, PLANNED] {
            for (path, written) in read_record(&folder.join(name))? {
                earlier.entry(path).or_default().push(written);
            }
        }
        files::create_folder(&stage)?;
        Ok(Staging {
            folder: folder.to_owned(),
            stage: Stage(stage),
            earlier,
            made: Mutex::default(),
        })
    }

    /// Whether the file in place was made from the same things by an earlier run, and is still as it was written: then
    /// it counts as made and need not be made again.
    pub fn keep(&self, path: &str, key: &str) -> Result<bool> {
        let Some(earlier) = self.earlier.get(path) else {
            return Ok(false);
        };
        let Some(written) = earlier
            .iter()
            .find(|written| written.key.as_deref() == Some(key))
        else {
            return Ok(false);
        };
        let Some(bytes) = files::read_if_there(&self.folder.join(path))? else {
            return Ok(false);
        };
        if files::sha256_of(&bytes) != written.sha256 {
            return Ok(false);
        }
        self.note(
            path,
            Made {
                written: written.clone(),
                in_place: true,
            },
        );
        Ok(true)
    }

    /// Stages one file.
    ///
    /// # Errors
    /// Where it cannot be written: a full disk, say. The outputs are then still as they were.
    pub fn put(&self, path: &str, bytes: &[u8], key: Option<String>) -> Result<()> {
        let written = Written {
            sha256: files::sha256_of(bytes),
            key,
        };
        let there = files::read_if_there(&self.folder.join(path))?;
        let in_place = there.as_deref() == Some(bytes);
        if !in_place {
            files::write(&self.folder.join(STAGE).join(path), bytes)?;
        }
        self.note(path, Made { written, in_place });
        Ok(())
    }

    /// The bytes of a file that this run has staged or found in place already.
    ///
    /// # Errors
    /// Where it cannot be read, or was never made.
    pub fn read(&self, path: &str) -> Result<Vec<u8>> {
        let staged = files::read_if_there(&self.folder.join(STAGE).join(path))?;
        staged.map_or_else(|| files::read(&self.folder.join(path)), Ok)
    }

    /// Every file that this run has staged or found in place already, in order.
    pub fn paths(&self) -> Vec<String> {
        let made = self.made.lock();
        let made = made.expect("no thread panics with the list in hand");
        made.keys().cloned().collect()
    }

    fn note(&self, path: &str, made: Made) {
        self.made
            .lock()
            .expect("no thread panics with the list in hand")
            .insert(path.to_owned(), made);
    }

    /// Moves everything into place. With `partial`, what earlier runs made besides stays.
    ///
    /// # Errors
    /// Where a file cannot be moved; the next run finishes what this one planned.
    pub fn finish(self, partial: bool) -> Result<Outcome> {
        let made = self
            .made
            .into_inner()
            .expect("no thread panics with the list in hand");
        let mut record: BTreeMap<&str, &Written> = made
            .iter()
            .map(|(path, made)| (path.as_str(), &made.written))
            .collect();
        if partial {
            for (path, earlier) in &self.earlier {
                if let (false, Some(written)) = (record.contains_key(path.as_str()), earlier.last())
                {
                    record.insert(path, written);
                }
            }
        }
        let mut outcome = Outcome::default();
        let mut recorded = serde_json::to_vec_pretty(&record).context("the record is JSON")?;
        recorded.push(b'\n');
        let before = files::read_if_there(&self.folder.join(RECORD))?;
        if before.as_deref() != Some(&recorded) || made.values().any(|made| !made.in_place) {
            // What an earlier run planned stays known until the last move: were this one cut off too, the files that the
            // earlier one has put in place are still ours.
            let planned = files::read_if_there(&self.folder.join(PLANNED))?;
            files::write(&self.folder.join(PLANNED), &recorded)?;
            if let Some(planned) = planned.filter(|planned| *planned != recorded) {
                keep_former_plan(&self.folder, &planned)?;
            }
            files::write(&self.folder.join(UNFINISHED), UNFINISHED_TEXT.as_bytes())?;
            for (path, made) in &made {
                place(&self.folder, path, made, &self.earlier, &mut outcome)?;
            }
            clear(&self.folder, &record, &self.earlier, &mut outcome)?;
            files::write(&self.folder.join(RECORD), &recorded)?;
        } else {
            outcome.unchanged = made.len();
        }
        files::remove_file(&self.folder.join(PLANNED))?;
        files::remove_file(&self.folder.join(FORMER))?;
        files::remove_file(&self.folder.join(UNFINISHED))?;
        drop(self.stage);
        Ok(outcome)
    }
}

/// Moves one staged file into its place; a file of a person's that stands there is kept under another name.
fn place(
    folder: &Path,
    path: &str,
    made: &Made,
    earlier: &BTreeMap<String, Vec<Written>>,
    outcome: &mut Outcome,
) -> Result<()> {
    if made.in_place {
        outcome.unchanged += 1;
        return Ok(());
    }
    let target = folder.join(path);
    if let Some(bytes) = files::read_if_there(&target)?
        && !is_ours(path, &bytes, earlier)
    {
        let kept = files::set_aside(&target)?;
        outcome.set_aside.push((path.to_owned(), kept));
    }
    files::rename(&folder.join(STAGE).join(path), &target)?;
    outcome.written.push(path.to_owned());
    Ok(())
}

/// Takes away what earlier runs wrote, nothing makes any more, and nobody has changed.
fn clear(
    folder: &Path,
    record: &BTreeMap<&str, &Written>,
    earlier: &BTreeMap<String, Vec<Written>>,
    outcome: &mut Outcome,
) -> Result<()> {
    for path in earlier
        .keys()
        .filter(|path| !record.contains_key(path.as_str()))
    {
        let target = folder.join(path);
        let Some(bytes) = files::read_if_there(&target)? else {
            continue;
        };
        if !is_ours(path, &bytes, earlier) {
            outcome.left.push(path.clone());
            continue;
        }
        files::remove_file(&target)?;
        outcome.cleared.push(path.clone());
        files::remove_empty_folders(folder, &target)?;
    }
    Ok(())
}

fn is_ours(path: &str, bytes: &[u8], earlier: &BTreeMap<String, Vec<Written>>) -> bool {
    let hash = files::sha256_of(bytes);
    earlier
        .get(path)
        .is_some_and(|versions| versions.iter().any(|written| written.sha256 == hash))
}

/// Joins a plan that was not carried out to those before it.
fn keep_former_plan(folder: &Path, planned: &[u8]) -> Result<()> {
    let mut former = read_record(&folder.join(FORMER))?;
    former.extend(parse_record(planned));
    let bytes = serde_json::to_vec_pretty(&former).context("the record is JSON")?;
    files::write(&folder.join(FORMER), &bytes)
}

fn read_record(path: &Path) -> Result<BTreeMap<String, Written>> {
    let bytes = files::read_if_there(path)?;
    Ok(bytes.map_or_else(BTreeMap::new, |bytes| parse_record(&bytes)))
}

/// A record that cannot be read is no record: then every file counts as a person's, and is kept. So does a file that the
/// record says stands outside the folder, which we never wrote.
fn parse_record(bytes: &[u8]) -> BTreeMap<String, Written> {
    let record: BTreeMap<String, Written> = serde_json::from_slice(bytes).unwrap_or_default();
    record
        .into_iter()
        .filter(|(path, _)| files::stays_below(path))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::fs;

    fn run(folder: &Path, made: &[(&str, &str)]) -> Outcome {
        let staging = Staging::open(folder).expect("opens");
        for (path, text) in made {
            staging
                .put(path, text.as_bytes(), Some(format!("key of {text}")))
                .expect("stages");
        }
        staging.finish(false).expect("finishes")
    }

    #[test]
    fn what_nothing_makes_any_more_is_cleared() {
        let folder = tempfile::tempdir().expect("a folder");
        run(
            folder.path(),
            &[("sheets/a.pdf", "a"), ("sheets/b.pdf", "b")],
        );
        let outcome = run(folder.path(), &[("sheets/a.pdf", "a")]);
        assert_eq!(outcome.cleared, ["sheets/b.pdf"]);
        assert_eq!(outcome.unchanged, 1);
        assert!(!folder.path().join("sheets/b.pdf").exists());
    }

    #[test]
    fn a_file_of_a_persons_is_never_lost() {
        let folder = tempfile::tempdir().expect("a folder");
        run(
            folder.path(),
            &[("drafts/a.eml", "ours"), ("drafts/b.eml", "ours too")],
        );
        fs::write(folder.path().join("drafts/a.eml"), "edited").expect("edits");
        fs::write(folder.path().join("drafts/b.eml"), "edited too").expect("edits");
        fs::write(folder.path().join("notes.txt"), "a person's").expect("writes");
        let outcome = run(folder.path(), &[("drafts/a.eml", "ours again")]);
        assert_eq!(
            outcome.set_aside,
            [("drafts/a.eml".to_owned(), "a (kept 1).eml".to_owned())]
        );
        let text = |path: &str| fs::read_to_string(folder.path().join(path)).expect("is there");
        assert_eq!(text("drafts/a.eml"), "ours again");
        assert_eq!(text("drafts/a (kept 1).eml"), "edited");
        assert_eq!(text("drafts/b.eml"), "edited too");
        assert_eq!(outcome.left, ["drafts/b.eml"], "it is named");
        assert_eq!(text("notes.txt"), "a person's");
    }

    #[test]
    fn a_run_that_stops_before_the_end_changes_nothing() {
        let folder = tempfile::tempdir().expect("a folder");
        run(folder.path(), &[("summary.pdf", "one")]);
        let staging = Staging::open(folder.path()).expect("opens");
        staging.put("summary.pdf", b"two", None).expect("stages");
        drop(staging);
        assert_eq!(
            fs::read_to_string(folder.path().join("summary.pdf")).expect("is there"),
            "one"
        );
        assert_eq!(run(folder.path(), &[("summary.pdf", "two")]).set_aside, []);
        assert!(!folder.path().join(STAGE).exists());
    }

    #[test]
    fn a_forged_record_reaches_nothing_outside_the_folder() {
        let folder = tempfile::tempdir().expect("a folder");
        let out = folder.path().join("out");
        let outside = folder.path().join("inbox.csv");
        fs::write(&outside, "theirs").expect("writes");
        let sha256 = files::sha256_of(b"theirs");
        for path in [
            "../inbox.csv",
            outside.to_str().expect("is text"),
            "a/../../inbox.csv",
        ] {
            let forged = format!("{{{path:?}: {{\"sha256\": \"{sha256}\", \"key\": null}}}}");
            files::write(&out.join(RECORD), forged.as_bytes()).expect("writes");
            assert_eq!(run(&out, &[("a.txt", "a")]).cleared, Vec::<String>::new());
            assert!(outside.exists(), "{path}");
        }
    }

    #[test]
    fn what_was_cut_off_is_known_and_no_file_of_ours_counts_as_a_persons() {
        let folder = tempfile::tempdir().expect("a folder");
        run(folder.path(), &[("a.txt", "1"), ("b.txt", "1")]);
        // A run that put one of two files into place, and the next one that was cut off before its first move.
        let plan = |text: &str| {
            let written = Written {
                sha256: files::sha256_of(text.as_bytes()),
                key: None,
            };
            serde_json::to_vec(&BTreeMap::from([("a.txt", &written), ("b.txt", &written)]))
                .expect("is JSON")
        };
        fs::write(folder.path().join(FORMER), plan("2")).expect("writes");
        fs::write(folder.path().join(PLANNED), plan("3")).expect("writes");
        fs::write(folder.path().join("a.txt"), "2").expect("writes");
        assert!(unfinished(folder.path()).is_some());
        let outcome = run(folder.path(), &[("a.txt", "4"), ("b.txt", "4")]);
        assert_eq!(outcome.set_aside, []);
        assert!(unfinished(folder.path()).is_none());
        let left: Vec<_> = fs::read_dir(folder.path())
            .expect("lists")
            .flatten()
            .map(|entry| entry.file_name())
            .collect();
        assert_eq!(left.len(), 3, "{left:?}");
    }

    #[test]
    fn the_same_key_keeps_a_file_only_while_nobody_has_changed_it() {
        let folder = tempfile::tempdir().expect("a folder");
        run(folder.path(), &[("a.pdf", "a")]);
        assert!(
            Staging::open(folder.path())
                .expect("opens")
                .keep("a.pdf", "key of a")
                .expect("reads")
        );
        fs::write(folder.path().join("a.pdf"), "changed").expect("edits");
        assert!(
            !Staging::open(folder.path())
                .expect("opens")
                .keep("a.pdf", "key of a")
                .expect("reads")
        );
    }
}
