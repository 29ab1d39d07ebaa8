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
use crate::words::say;
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
    let made = |name: String, bytes: Vec<u8>| JobFile {
        name,
        made_from: None,
        bytes: bytes.into(),
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
                (
                    files::sha256_of(&bytes),
                    made(attachment.read.clone(), bytes),
                )
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
    files.push(made(CASE.to_owned(), case));
    files.extend(page_square(facts));
    Ok(Job {
        path: format!("sheets/{}.pdf", verdict.stem()),
        template: "sheet.typ",
        ident: format!("{} {}", facts.edition.sheet_number, facts.edition.line),
        date: facts.latest_day.unwrap_or_default(),
        facts: words,
        files,
    })
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
    facts.check.page.as_ref().map(|page| JobFile {
        name: "page.svg".to_owned(),
        made_from: None,
        bytes: page.svg.clone().into_bytes().into(),
    })
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
    let mut attachments = vec![Attachment {
        read: "data.json".to_owned(),
        name: format!("{sheet_number}.json"),
        mime_type: "application/json",
        relationship: "data",
        description: config.words.say(&say::carried_data()),
    }];
    attachments.push(Attachment {
        read: CASE.to_owned(),
        name: CASE.to_owned(),
        mime_type: "application/json",
        relationship: "data",
        description: config.words.say(&say::carried_case()),
    });
    for (index, file) in carried(&lab_files, config).enumerate() {
        let name = file.path.rsplit('/').next().unwrap_or(&file.path);
        let is_whole = config.publishing.attach == Attach::Whole;
        attachments.push(Attachment {
            read: format!("source-{}", index + 1),
            // Numbered: two folders may hold files of one name.
            name: match is_whole {
                true => format!("{}-{name}", index + 1),
                false => format!("{}-{name}.excerpt.csv", index + 1),
            },
            mime_type: if is_whole {
                mime_type(name)
            } else {
                "text/csv"
            },
            relationship: "source",
            description: config.words.say(&match is_whole {
                true => say::carried_whole(&file.sha256),
                false => say::carried_excerpt(&file.sha256),
            }),
        });
    }
    attachments
}
