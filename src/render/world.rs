//! What one document may see while it is typeset: the engine's templates and fonts, and its own facts and files.
//!
//! There is no network, no package, no clock, and no file outside of what was loaded at the start.

use crate::render::engine::{Engine, file_id};
use crate::render::glyphs::{drawable_text, printable};
use crate::render::{Job, JobFile};
use std::collections::BTreeMap;
use typst::diag::{FileError, FileResult, PackageError};
use typst::foundations::{Bytes, Datetime, Duration};
use typst::syntax::{FileId, Source, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Library, World};

/// The facts, as a template reads them: letters that no font has are named by their code point.
const FACTS: &str = "facts.json";

/// The facts exactly as they are, to be attached.
pub const DATA: &str = "data.json";

/// How the document is to be set: `{"one_page": true}` where it is tried on a single page first.
const SETTING: &str = "setting.json";

/// The world of one document.
pub struct JobWorld<'a> {
    engine: &'a Engine,
    main: FileId,
    files: BTreeMap<&'a str, Bytes>,
}

impl<'a> JobWorld<'a> {
    /// The world in which a job's template is typeset. With `one_page` the template may leave out what only serves
    /// breaks between pages: then the result holds only where it has one.
    pub fn new(engine: &'a Engine, job: &'a Job, one_page: bool) -> JobWorld<'a> {
        let covered = |letter| engine.covers(letter);
        let shown = |file: &JobFile| match (
            file.name.ends_with(".svg"),
            std::str::from_utf8(file.bytes.as_ref()),
        ) {
            (true, Ok(svg)) => Bytes::from_string(drawable_text(svg, &covered)),
            _ => Bytes::new(file.bytes.clone()),
        };
        let files = job
            .files
            .iter()
            .map(|file| (file.name.as_str(), shown(file)));
        let mut files: BTreeMap<&str, Bytes> = files.collect();
        files.insert(
            FACTS,
            Bytes::new(printable(&job.facts, &covered).into_owned()),
        );
        let setting = format!("{{\"one_page\":{one_page}}}");
        files.insert(SETTING, Bytes::from_string(setting));
        files.insert(DATA, Bytes::new(job.facts.clone()));
        JobWorld {
            engine,
            main: file_id(job.template),
            files,
        }
    }

    /// The path of a file below the template folder, where it is one that a template may ask for.
    fn name_of(id: FileId) -> FileResult<&'static str> {
        let path = id.get();
        match path.root() {
            VirtualRoot::Project => Ok(path.vpath().get_without_slash()),
            VirtualRoot::Package(_) => Err(FileError::Package(PackageError::Other(Some(
                "packages cannot be used: nothing is downloaded. Copy what is needed into report-templates/".into(),
            )))),
        }
    }
}

impl World for JobWorld<'_> {
    fn library(&self) -> &LazyHash<Library> {
        &self.engine.library
    }

    fn book(&self) -> &LazyHash<FontBook> {
        &self.engine.book
    }

    fn main(&self) -> FileId {
        self.main
    }

    fn source(&self, id: FileId) -> FileResult<Source> {
        let name = JobWorld::name_of(id)?;
        let source = self.engine.sources.get(name);
        source
            .cloned()
            .ok_or_else(|| FileError::NotFound(name.into()))
    }

    fn file(&self, id: FileId) -> FileResult<Bytes> {
        let name = JobWorld::name_of(id)?;
        let own = self
            .files
            .get(name)
            .or_else(|| self.engine.assets.get(name));
        match (own, self.engine.sources.get(name)) {
            (Some(bytes), _) => Ok(bytes.clone()),
            (None, Some(source)) => Ok(Bytes::from_string(source.clone())),
            (None, None) => Err(FileError::NotFound(name.into())),
        }
    }

    fn font(&self, index: usize) -> Option<Font> {
        self.engine.fonts.get(index).cloned()
    }

    fn today(&self, _offset: Option<Duration>) -> Option<Datetime> {
        None
    }
}
