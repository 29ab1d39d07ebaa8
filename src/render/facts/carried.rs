//! The job of typesetting a sheet, and the files that its PDF carries: its words as data, its case, and what goes with it of
//! each lab file.

use crate::config::{Attach, Config};
use crate::files;
use crate::model::decided::JudgedProduct;
use crate::model::place::LabFile;
use crate::model::verdict::ProductVerdict;
use crate::render::charts::ruler::{DRAWINGS, Ruler};
use crate::render::facts::sheet::SheetFacts;
use crate::render::facts::{Attachment, case, mime_type};
use crate::render::job::Shared;
use crate::render::words;
use crate::render::{Job, JobFile, chart_name};
use crate::words::{Said, say};
use anyhow::{Result, bail};
use std::sync::Arc;

/// The name of a sheet's case, in the PDF and for its template.
pub const CASE: &str = "case.json";

/// Larger lab files are named on the sheet but not carried by it: a sheet is to be mailed.
const LARGEST_ATTACHMENT: u64 = 1024 * 1024;

/// The job of typesetting a sheet.
///
/// # Errors
/// Where a lab file that the sheet carries cannot be read, or is no longer what the results were read from.
pub fn job(product: &JudgedProduct, facts: &SheetFacts<'_>, config: &Config) -> Result<Job> {
    let mut job = outline(product, facts, config)?;
    complete(&mut job, product, config)?;
    Ok(job)
}

/// The job as far as its [`Job::content_key`] needs it: its files are named, with what they are made from, and empty.
///
/// # Errors
/// Where the facts cannot be written as JSON.
pub fn outline(product: &JudgedProduct, facts: &SheetFacts<'_>, config: &Config) -> Result<Job> {
    let verdict = &product.verdict;
    let file = |name: String, made_from: String| JobFile {
        name,
        made_from: Some(made_from),
        bytes: Shared::default(),
    };
    let drawings = 1..=facts.content.rulers.len() * DRAWINGS;
    let drawn = Ruler::of(product, &config.words).made_from();
    let mut files: Vec<JobFile> = drawings
        .map(|number| file(chart_name(number), drawn.clone()))
        .collect();
    let sources = facts
        .attachments
        .iter()
        .filter(|one| one.relationship == "source");
    let lab_files = words::source::lab_files(verdict);
    let mut carried_by_name = Vec::new();
    let mut carried_files = Vec::new();
    for (attachment, lab_file) in sources.zip(carried(&lab_files, config)) {
        let (sha256, carried) = match config.publishing.attach {
            Attach::Whole => {
                let carried = file(attachment.read.clone(), lab_file.sha256.clone());
                (lab_file.sha256.clone(), carried)
            }
            Attach::Excerpt | Attach::None => {
                let bytes = case::excerpt(product, lab_file);
                let sha256 = files::sha256_of(&bytes);
                (sha256, JobFile::made(&attachment.read, bytes))
            }
        };
        let name = &attachment.name;
        carried_by_name.push(case::Carried { name, sha256 });
        carried_files.push(carried);
    }
    let words = serde_json::to_vec(facts)?;
    let name = &facts.attachments[0].name;
    let sha256 = files::sha256_of(&words);
    carried_by_name.insert(0, case::Carried { name, sha256 });
    let number = &facts.edition.sheet_number;
    let case = case::case(product, config, number, &carried_by_name);
    files.extend(carried_files);
    files.push(JobFile::made(CASE, case));
    files.extend(page_square(facts));
    Ok(Job {
        path: format!("sheets/{}.pdf", verdict.stem()),
        template: "sheet.typ",
        one_page: may_fit_one_page(facts)?,
        ident: format!("{} {}", facts.edition.sheet_number, facts.edition.line),
        date: facts.latest_day.unwrap_or_default(),
        facts: words,
        files,
    })
}

/// More letters than this (its content as JSON) have never fitted one page, whatever the language and the paper; from some six
/// thousand on it takes two more often than not.
const MOST_LETTERS: usize = 6_800;

fn may_fit_one_page(facts: &SheetFacts<'_>) -> Result<bool> {
    let content = serde_json::to_string(&facts.content)?;
    Ok(content.chars().count() <= MOST_LETTERS)
}

/// Where the sheet in large print lies, beside the other.
pub fn large_print_path(verdict: &ProductVerdict) -> String {
    format!("sheets/{}-large-print.pdf", verdict.stem())
}

/// The job of typesetting a sheet in large print: the same facts, without drawings of small type and without files, which the
/// other one carries.
///
/// # Errors
/// Where the facts cannot be written as JSON.
pub fn large_print(product: &JudgedProduct, facts: &SheetFacts<'_>) -> Result<Job> {
    Ok(Job {
        path: large_print_path(&product.verdict),
        template: "sheet-large.typ",
        one_page: false,
        ident: format!(
            "{} {} large print",
            facts.edition.sheet_number, facts.edition.line
        ),
        date: facts.latest_day.unwrap_or_default(),
        facts: serde_json::to_vec(facts)?,
        files: page_square(facts).into_iter().collect(),
    })
}

/// The square of the sheet's page, where it has one.
fn page_square(facts: &SheetFacts<'_>) -> Option<JobFile> {
    let page = facts.check.page.as_ref();
    page.map(|page| JobFile::made("page.svg", page.svg.as_str()))
}

/// Draws the ruler and reads the lab files of an [`outline`].
///
/// # Errors
/// As [`job`].
pub fn complete(job: &mut Job, product: &JudgedProduct, config: &Config) -> Result<()> {
    let drawings = Ruler::of(product, &config.words).draw()?.concat();
    let lab_files = words::source::lab_files(&product.verdict);
    let (charts, sources) = job.files.split_at_mut(drawings.len());
    for (file, svg) in charts.iter_mut().zip(drawings) {
        file.bytes = svg.into_bytes().into();
    }
    if config.publishing.attach != Attach::Whole {
        return Ok(());
    }
    for (file, lab_file) in sources.iter_mut().zip(carried(&lab_files, config)) {
        let bytes = files::read(&lab_file.real_path(&config.root))?;
        if files::sha256_of(&bytes) != lab_file.sha256 {
            bail!(
                "{} was changed while the results were made. Run again.",
                lab_file.path
            );
        }
        file.bytes = bytes.into();
    }
    Ok(())
}

/// The lab files of which something is carried: all of which an excerpt is, and those that are small enough to be carried
/// whole.
fn carried<'a>(
    lab_files: &'a [Arc<LabFile>],
    config: &'a Config,
) -> impl Iterator<Item = &'a LabFile> {
    let small = |file: &LabFile| match config.publishing.attach {
        Attach::Excerpt => true,
        Attach::Whole => files::length(&file.real_path(&config.root))
            .is_some_and(|length| length <= LARGEST_ATTACHMENT),
        Attach::None => false,
    };
    lab_files
        .iter()
        .map(AsRef::as_ref)
        .filter(move |file| small(file))
}

/// The files that a sheet carries, as its template attaches them.
pub fn attachments(
    verdict: &ProductVerdict,
    config: &Config,
    sheet_number: &str,
) -> Vec<Attachment> {
    let lab_files = words::source::lab_files(verdict);
    let data = |read: &str, name: String, said: Said| Attachment {
        read: read.to_owned(),
        name,
        mime_type: "application/json",
        relationship: "data",
        description: config.words.say(&said),
    };
    let mut attachments = vec![
        data(
            "data.json",
            format!("{sheet_number}.json"),
            say::carried_data(),
        ),
        data(CASE, CASE.to_owned(), say::carried_case()),
    ];
    for (file, number) in carried(&lab_files, config).zip(1..) {
        let name = file.path.rsplit('/').next().unwrap_or(&file.path);
        // Numbered: two folders may hold files of one name.
        let numbered = format!("{number}-{name}");
        let (name, mime_type, said) = match config.publishing.attach {
            Attach::Whole => (numbered, mime_type(name), say::carried_whole(&file.sha256)),
            Attach::Excerpt | Attach::None => (
                format!("{numbered}.excerpt.csv"),
                "text/csv",
                say::carried_excerpt(&file.sha256),
            ),
        };
        attachments.push(Attachment {
            read: format!("source-{number}"),
            name,
            mime_type,
            relationship: "source",
            description: config.words.say(&said),
        });
    }
    attachments
}
