//! Templates and fonts, loaded once a run and shared by all documents.
//!
//! Templates and fonts are compiled in. A file of the same name in the programme's `report-templates/` replaces a
//! built-in one; `fonts/` adds fonts. Both folders are read here, whole and at the start: while typesetting no file is
//! opened, so that no template can reach one.

use crate::config::Config;
use crate::files;
use crate::files::hex;
use anyhow::{Result, bail};
use sha2::{Digest, Sha256};
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;
use typst::foundations::Bytes;
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Feature, Library, LibraryExt};
use walkdir::WalkDir;

/// The folder of a programme that replaces built-in templates.
pub const TEMPLATE_FOLDER: &str = "report-templates";

/// The folder of a programme that adds fonts.
pub const FONT_FOLDER: &str = "fonts";

/// The largest file that is taken from either folder: a template is some kilobytes, a font one or two megabytes.
const LARGEST_FILE: u64 = 32 * 1024 * 1024;

macro_rules! built_in {
    ($folder:literal, $($name:literal),* $(,)?) => {
        [$(($name, include_bytes!(concat!("../../", $folder, "/", $name)) as &[u8])),*]
    };
}

const TEMPLATES: &[(&str, &[u8])] = &built_in!(
    "report-templates",
    "style.typ",
    "sheet.typ",
    "sheet-large.typ",
    "summary.typ",
    "digest.typ",
    "digest.html",
    "digest.txt",
    "picture.typ",
    "correction.typ",
    "notice.typ",
    "query.typ",
    "request.typ",
    "plan.typ",
    "plate.typ",
    "labels.typ",
    "contact-sheet.typ",
    "web-page.html",
    "web-index.html",
    "web-product.html",
    "web-withdrawn.html",
    "web-corrections.html",
    "web-how.html",
    "web-feed.xml",
    "web.css",
    "web.js",
    "web-icon.svg",
);

const FONTS: &[(&str, &[u8])] = &built_in!(
    "fonts",
    "source-sans-3/SourceSans3-Regular.otf",
    "source-sans-3/SourceSans3-Semibold.otf",
    "source-serif-4/SourceSerif4-Regular.otf",
    "source-serif-4/SourceSerif4-It.otf",
    "source-serif-4/SourceSerif4-Semibold.otf",
);

/// Everything that documents share.
pub struct Engine {
    pub(super) library: LazyHash<Library>,
    pub(super) book: LazyHash<FontBook>,
    pub(super) fonts: Vec<Font>,
    /// Templates, by path below the template folder.
    pub(super) sources: BTreeMap<String, Source>,
    /// Other files of the template folder (a picture), likewise.
    pub(super) assets: BTreeMap<String, Bytes>,
    fingerprint: String,
    /// The programme's own templates, by path below the template folder.
    own: BTreeSet<String>,
    /// Its own fonts, by path below their folder.
    own_fonts: BTreeSet<String>,
}

impl Engine {
    /// Loads the built-in templates and fonts, and those of the programme.
    ///
    /// # Errors
    /// Where a file of either folder cannot be read, is no font, or is no UTF-8 text.
    pub fn new(config: &Config) -> Result<Engine> {
        let mut templates = owned(TEMPLATES);
        let own_templates = own_files(&config.root.join(TEMPLATE_FOLDER), &[])?;
        let own = own_templates.keys().cloned().collect();
        templates.extend(own_templates);
        let mut font_files = owned(FONTS);
        let own_font_files = own_files(&config.root.join(FONT_FOLDER), &["otf", "ttf", "ttc"])?;
        let own_fonts = own_font_files.keys().cloned().collect();
        font_files.extend(own_font_files);
        let fingerprint = fingerprint(&templates, &font_files);

        let mut fonts = Vec::new();
        for (name, bytes) in font_files {
            let before = fonts.len();
            fonts.extend(Font::iter(Bytes::new(bytes)));
            if fonts.len() == before {
                bail!(
                    "{FONT_FOLDER}/{name} holds no font. Take it out of the folder, or replace it with an OTF or TTF file."
                );
            }
        }
        let mut sources = BTreeMap::new();
        let mut assets = BTreeMap::new();
        for (name, bytes) in templates {
            if name.ends_with(".typ") {
                let Ok(text) = String::from_utf8(bytes) else {
                    bail!("{TEMPLATE_FOLDER}/{name} is not UTF-8 text. Save it as UTF-8.");
                };
                let source = Source::new(file_id(&name), text);
                sources.insert(name, source);
            } else {
                assets.insert(name, Bytes::new(bytes));
            }
        }
        Ok(Engine {
            // Row headers in tables are still behind this flag.
            library: LazyHash::new(
                Library::builder()
                    .with_features([Feature::A11yExtras].into_iter().collect())
                    .build(),
            ),
            book: LazyHash::new(FontBook::from_fonts(&fonts)),
            fonts,
            sources,
            assets,
            fingerprint,
            own,
            own_fonts,
        })
    }

    /// Whether anything that documents are made with is the programme's own.
    pub fn has_own_files(&self) -> bool {
        !self.own.is_empty() || !self.own_fonts.is_empty()
    }

    /// The programme's own files that may have a part in what this template makes: itself, else those that it may use.
    pub fn own_behind<'a>(&'a self, template: &'a str) -> Vec<&'a str> {
        if self.own.contains(template) {
            return vec![template];
        }
        let is_source = |name: &str| name.ends_with(".typ");
        let own = self.own.iter().map(String::as_str);
        own.filter(|name| is_source(name) == is_source(template))
            .collect()
    }

    /// The programme's own fonts, by path below their folder.
    pub fn own_fonts(&self) -> impl Iterator<Item = &str> {
        self.own_fonts.iter().map(String::as_str)
    }

    /// The programme's own templates for the typesetter, by path below the template folder.
    pub fn own_sources(&self) -> impl Iterator<Item = (&str, &Source)> {
        let sources = self.sources.iter();
        sources
            .filter(|(name, _)| self.own.contains(*name))
            .map(|(name, source)| (name.as_str(), source))
    }

    /// Whether any font has this letter.
    pub fn covers(&self, letter: char) -> bool {
        self.fonts
            .iter()
            .any(|font| font.info().coverage.contains(u32::from(letter)))
    }

    /// SHA-256 of all templates and fonts and the program's version.
    pub fn fingerprint(&self) -> &str {
        &self.fingerprint
    }
}

/// The typesetter's name for a path below the template folder. It never forgets one: only a fixed set may be asked for.
pub(super) fn file_id(path: &str) -> FileId {
    let path =
        VirtualPath::new(path).expect("names come from a walk below one folder, so none leaves it");
    RootedPath::new(VirtualRoot::Project, path).intern()
}

fn owned(files: &[(&str, &[u8])]) -> BTreeMap<String, Vec<u8>> {
    let owned = |(name, bytes): &(&str, &[u8])| ((*name).to_owned(), bytes.to_vec());
    files.iter().map(owned).collect()
}

/// The files below a folder, by path with `/`; links are not followed, since they may lead out of it.
fn own_files(folder: &Path, extensions: &[&str]) -> Result<BTreeMap<String, Vec<u8>>> {
    let mut found = BTreeMap::new();
    if !folder.is_dir() {
        return Ok(found);
    }
    for entry in WalkDir::new(folder).follow_links(false).sort_by_file_name() {
        let entry = entry?;
        let (name, wanted) = name_below(folder, entry.path(), extensions);
        if !entry.file_type().is_file() || !wanted {
            continue;
        }
        if entry.metadata()?.len() > LARGEST_FILE {
            bail!(
                "{} is larger than 32 MB: too large for a template or a font.",
                entry.path().display()
            );
        }
        found.insert(name, files::read(entry.path())?);
    }
    Ok(found)
}

/// A path below a folder, with `/`, and whether it is one of the wanted: nothing hidden, and one of the extensions.
fn name_below(folder: &Path, path: &Path, extensions: &[&str]) -> (String, bool) {
    let below = path.strip_prefix(folder).unwrap_or(Path::new(""));
    let parts: Vec<_> = below.iter().map(|part| part.to_string_lossy()).collect();
    let extension = below.extension().unwrap_or_default().to_string_lossy();
    let known =
        extensions.is_empty() || extensions.contains(&extension.to_ascii_lowercase().as_str());
    let hidden = parts.iter().any(|part| part.starts_with(['.', '~']));
    (parts.join("/"), known && !hidden)
}

fn fingerprint(templates: &BTreeMap<String, Vec<u8>>, fonts: &BTreeMap<String, Vec<u8>>) -> String {
    let mut hash = Sha256::new();
    hash.update(env!("CARGO_PKG_VERSION"));
    for (name, bytes) in templates.iter().chain(fonts) {
        for part in [name.as_bytes(), bytes] {
            hash.update((part.len() as u64).to_le_bytes());
            hash.update(part);
        }
    }
    hex(&hash.finalize())
}
