//! The catalogue of the programme's language, with the messages that it replaces.

use super::Config;
use crate::files;
use crate::model::language::Language;
use crate::words::{CATALOGUE_FOLDER, Catalogue};
use anyhow::{Context, Result, bail};
use std::sync::{Arc, OnceLock};
use walkdir::WalkDir;

/// The folder of a programme's own templates and words.
const TEMPLATE_FOLDER: &str = "report-templates";

/// The built-in catalogue of a language: read once a program, and only where it is wanted.
pub fn built_in(language: Language) -> Arc<Catalogue> {
    static ENGLISH: OnceLock<Arc<Catalogue>> = OnceLock::new();
    static GERMAN: OnceLock<Arc<Catalogue>> = OnceLock::new();
    static SPANISH: OnceLock<Arc<Catalogue>> = OnceLock::new();
    let read = match language {
        Language::English => &ENGLISH,
        Language::German => &GERMAN,
        Language::Spanish => &SPANISH,
    };
    Arc::clone(read.get_or_init(|| Arc::new(Catalogue::built_in(language))))
}

/// The settings with the programme's own messages: `report-templates/words/<language>/*.ftl`. Links are not followed.
///
/// # Errors
/// Where a file cannot be read, or anything in it is no message of ours: all faults, each with its line.
pub fn with_own(config: Config) -> Result<Config> {
    let language = config.programme.language;
    let below = format!("{CATALOGUE_FOLDER}/{}", language.tag());
    let folder = config.root.join(TEMPLATE_FOLDER).join(&below);
    let mut own: Vec<(String, String)> = Vec::new();
    for entry in WalkDir::new(&folder).max_depth(1).sort_by_file_name() {
        // A programme without own words has no such folder.
        let Ok(entry) = entry else { continue };
        let name = entry.file_name().to_string_lossy().into_owned();
        if !entry.file_type().is_file() || !name.ends_with(".ftl") {
            continue;
        }
        let bytes = files::read(entry.path())?;
        let text = String::from_utf8(bytes).ok().with_context(|| {
            format!("{TEMPLATE_FOLDER}/{below}/{name} is not UTF-8 text. Save it as UTF-8")
        })?;
        own.push((format!("{TEMPLATE_FOLDER}/{below}/{name}"), text));
    }
    if own.is_empty() {
        return Ok(config);
    }
    let files: Vec<(&str, &str)> = own
        .iter()
        .map(|(path, text)| (path.as_str(), text.as_str()))
        .collect();
    match Catalogue::with(language, &files) {
        Ok(catalogue) => Ok(Config {
            words: Arc::new(catalogue),
            ..config
        }),
        Err(faults) => {
            let faults: Vec<String> = faults.iter().map(ToString::to_string).collect();
            bail!(
                "the programme’s own words cannot be used:\n  {}",
                faults.join("\n  ")
            )
        }
    }
}
