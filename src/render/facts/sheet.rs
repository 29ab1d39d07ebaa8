//! A product's results sheet: what is published (`content`), and which revision of it this is (`edition`).

use crate::config::{Attach, Config};
use crate::files;
use crate::model::decided::JudgedProduct;
use crate::model::place::LabFile;
use crate::model::registers::Product;
use crate::model::verdict::{ProductVerdict, Verdict};
use crate::render::charts::ruler;
use crate::render::facts::case;
use crate::render::facts::edition::Edition;
use crate::render::facts::packages::{self, BlockState, PackageTable};
use crate::render::facts::{Attachment, DocumentFacts, ProgrammeFacts, mime_type};
use crate::render::words::{self, breakable, counted};
use crate::render::{Job, JobFile, chart_name, numbers};
use anyhow::{Result, bail};
use chrono::NaiveDate;
use serde::Serialize;
use std::sync::Arc;

/// Everything that the sheet's template may see.
#[derive(Clone, Debug, Serialize)]
pub struct SheetFacts {
    /// What the PDF says about itself.
    pub document: DocumentFacts,
    /// Which revision it is.
    pub edition: Edition,
    /// What it says.
    pub content: SheetContent,
    /// The files that the PDF carries.
    pub attachments: Vec<Attachment>,
    /// What is carried of the lab's files, where something is of each.
    pub carried_words: &'static str,
    #[serde(skip)]
    latest_day: Option<NaiveDate>,
}

/// What a sheet says: a change here makes a new revision.
#[derive(Clone, Debug, Serialize)]
pub struct SheetContent {
    /// Whose sheet it is.
    pub programme: ProgrammeFacts,
    /// What was tested.
    pub product: ProductFacts,
    /// The verdict.
    pub verdict: VerdictFacts,
    /// The pictures of the ruler, in words; each is made of three drawings: head, rows, scale.
    pub rulers: Vec<String>,
    /// What the marks of the ruler mean.
    pub key: String,
    /// The packages.
    pub table: PackageTable,
    /// What a reader of the table must know beyond its figures.
    pub notes: Vec<String>,
    /// What the result says.
    pub says: String,
    /// What it does not say.
    pub says_not: String,
    /// The label.
    pub label: LabelFacts,
    /// What passed between the programme and the maker.
    pub correspondence: Vec<String>,
    /// How was tested and decided.
    pub method: Vec<String>,
    /// Where the numbers come from.
    pub provenance: Vec<String>,
    /// What every sheet says last.
    pub caution: String,
}

/// What was tested.
#[derive(Clone, Debug, Serialize)]
pub struct ProductFacts {
    /// The programme's own name for it.
    pub product_id: String,
    /// The round of testing.
    pub round: String,
    /// As on the package.
    pub name: String,
    /// Letters in the name, which decide its size.
    pub name_length: usize,
    /// As on the package.
    pub brand: Option<String>,
    /// As on the package.
    pub net_content: Option<String>,
    /// Sold as what, how many packages, when, barcode, certifier.
    pub claim_line: String,
}

/// The verdict.
#[derive(Clone, Debug, Serialize)]
pub struct VerdictFacts {
    /// The ink of its block.
    pub state: BlockState,
    /// `Below 20 ppm`.
    pub words: String,
    /// `All 3 packages tested below the limit.`
    pub count: String,
    /// The sentence beside it.
    pub sentence: String,
}

/// The label.
#[derive(Clone, Debug, Serialize)]
pub struct LabelFacts {
    /// The ingredient statement as printed, with the terms marked; empty where there is none.
    pub statement: Vec<Piece>,
    /// Its length, which decides how densely the page is set.
    pub length: usize,
    /// "May contain" and the like, quoted.
    pub precautionary: Vec<String>,
    /// What it comes to.
    pub sentences: Vec<String>,
}

/// A piece of the statement.
#[derive(Clone, Debug, Serialize)]
pub struct Piece {
    /// As printed.
    pub text: String,
    /// Whether it is one of the terms.
    pub marked: bool,
}

/// The name of a sheet's case, in the PDF and for its template.
const CASE: &str = "case.json";

/// Larger lab files are named on the sheet but not carried by it: a sheet is to be mailed.
const LARGEST_ATTACHMENT: u64 = 1024 * 1024;

/// The facts of a product's sheet. `made_on` is printed on a proof, where it is known.
pub fn facts(product: &JudgedProduct, config: &Config, made_on: Option<NaiveDate>) -> SheetFacts {
    let content = content(product, config);
    let verdict = &product.verdict;
    let edition = Edition::of(
        sheet_number(verdict, config),
        &sha256(&content),
        &verdict.issued,
        made_on,
    );
    let brand = verdict
        .product
        .brand
        .as_deref()
        .map(|brand| format!(", {brand}"))
        .unwrap_or_default();
    let document = DocumentFacts::new(
        config,
        &["sheet", "label", "method"],
        format!(
            "Test results: {}{brand}. Sheet {}",
            verdict.product.name, edition.sheet_number
        ),
        format!("{}. {}", content.verdict.words, content.verdict.count),
        vec![edition.sheet_number.clone(), edition.line.clone()],
    );
    let attachments = attachments(verdict, config, &edition.sheet_number);
    let latest_day = edition.day.or_else(|| latest_day(verdict));
    SheetFacts {
        document,
        edition,
        content,
        attachments,
        carried_words: match config.publishing.attach {
            Attach::Whole => "The lab’s files are attached to this PDF.",
            Attach::Excerpt | Attach::None => "The cells used here are attached to this PDF.",
        },
        latest_day,
    }
}

/// `TKW-FH-01-1`: short name, product, round.
pub fn sheet_number(verdict: &ProductVerdict, config: &Config) -> String {
    let product_id = &verdict.product.product_id;
    config.programme.sheet_number(product_id, &verdict.round)
}

/// SHA-256 over what the sheet says, without its number, revision or date: two equal ones are one revision.
pub fn content_sha256(facts: &SheetFacts) -> String {
    sha256(&facts.content)
}

fn sha256(content: &SheetContent) -> String {
    let json = serde_json::to_vec(content).expect("facts are text, numbers and lists");
    files::sha256_of(&json)
}

/// The job of typesetting a sheet.
///
/// # Errors
/// Where a lab file that the sheet carries cannot be read, or is no longer what the results were read from.
pub fn job(product: &JudgedProduct, facts: &SheetFacts, config: &Config) -> Result<Job> {
    let mut job = outline(product, facts, config)?;
    complete(&mut job, product, config)?;
    Ok(job)
}

/// The job as far as its [`Job::content_key`] needs it: its files are named, with what they are made from, and empty.
///
/// # Errors
/// Where the facts cannot be written as JSON.
pub fn outline(product: &JudgedProduct, facts: &SheetFacts, config: &Config) -> Result<Job> {
    let verdict = &product.verdict;
    let file = |name: String, made_from: String| JobFile {
        name,
        made_from: Some(made_from),
        bytes: Vec::new(),
    };
    let made = |name: String, bytes: Vec<u8>| JobFile {
        name,
        made_from: None,
        bytes,
    };
    let drawings = 1..=facts.content.rulers.len() * ruler::DRAWINGS;
    let drawn = ruler::made_from(&verdict.packages, verdict.rule);
    let mut files: Vec<JobFile> = drawings
        .map(|number| file(chart_name(number), drawn.clone()))
        .collect();
    let sources = facts
        .attachments
        .iter()
        .filter(|one| one.relationship == "source");
    let lab_files = words::method::lab_files(verdict);
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
    Ok(Job {
        path: format!("sheets/{}.pdf", verdict.stem()),
        template: "sheet.typ",
        ident: format!("{} {}", facts.edition.sheet_number, facts.edition.line),
        date: facts.latest_day.unwrap_or_default(),
        facts: words,
        files,
    })
}

/// Draws the ruler and reads the lab files of an [`outline`].
///
/// # Errors
/// As [`job`].
pub fn complete(job: &mut Job, product: &JudgedProduct, config: &Config) -> Result<()> {
    let drawings = ruler::draw(&product.verdict.packages, product.verdict.rule)?.concat();
    let lab_files = words::method::lab_files(&product.verdict);
    let (charts, sources) = job.files.split_at_mut(drawings.len());
    for (file, svg) in charts.iter_mut().zip(drawings) {
        file.bytes = svg.into_bytes();
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
        file.bytes = bytes;
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

fn attachments(verdict: &ProductVerdict, config: &Config, sheet_number: &str) -> Vec<Attachment> {
    let lab_files = words::method::lab_files(verdict);
    let mut attachments = vec![Attachment {
        read: "data.json".to_owned(),
        name: format!("{sheet_number}.json"),
        mime_type: "application/json",
        relationship: "data",
        description: "Everything that this sheet says, as data".to_owned(),
    }];
    attachments.push(Attachment {
        read: CASE.to_owned(),
        name: CASE.to_owned(),
        mime_type: "application/json",
        relationship: "data",
        description: "What this sheet rests on: the registers’ rows, the rule, the readings with their places, the verdict".to_owned(),
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
            description: match is_whole {
                true => format!("The lab’s file, as it came. SHA-256 {}", file.sha256),
                false => format!(
                    "The cells of the lab’s file that are used here. SHA-256 of the whole file {}",
                    file.sha256
                ),
            },
        });
    }
    attachments
}

fn content(product: &JudgedProduct, config: &Config) -> SheetContent {
    let verdict = &product.verdict;
    let rule = verdict.rule;
    SheetContent {
        programme: ProgrammeFacts::new(&config.programme),
        product: product_facts(verdict),
        verdict: verdict_facts(product, config),
        rulers: ruler::in_words(&verdict.packages, rule),
        key: ruler::key(rule),
        table: packages::table(
            &verdict.packages,
            rule,
            config.testing.extractions_per_package,
        ),
        notes: words::packages::notes(&verdict.packages, rule)
            .iter()
            .map(|note| breakable(note, 50))
            .collect(),
        says: words::meaning::says(product, config),
        says_not: words::meaning::says_not(product, rule),
        label: label_facts(verdict, config),
        correspondence: words::correspondence::told(verdict)
            .iter()
            .map(|said| breakable(said, 30))
            .collect(),
        method: words::method::method(product, config),
        provenance: words::method::provenance(verdict)
            .iter()
            .map(|said| breakable(said, 18))
            .collect(),
        caution: words::method::caution(config),
    }
}

fn product_facts(verdict: &ProductVerdict) -> ProductFacts {
    let Product {
        product_id,
        name,
        brand,
        net_content,
        ..
    } = &verdict.product;
    ProductFacts {
        product_id: product_id.clone(),
        round: verdict.round.clone(),
        name: breakable(name, 20),
        name_length: name.chars().count(),
        brand: brand.as_deref().map(|brand| breakable(brand, 45)),
        net_content: net_content.as_deref().map(|net| breakable(net, 40)),
        claim_line: breakable(&claim_line(verdict), 50),
    }
}

/// Sold as what, how many packages, when, barcode, certifier.
fn claim_line(verdict: &ProductVerdict) -> String {
    let product = &verdict.product;
    let mut said = vec![format!("Sold as “{}”.", product.claim.trim())];
    let n = counted(verdict.packages.len(), "package", "packages");
    let round = match verdict.round.as_str() {
        "1" => String::new(),
        round => format!("Round {round}: "),
    };
    said.push(match verdict.bought() {
        Some((first, last)) => format!("{round}{n} bought {}.", numbers::dates(first, last)),
        None => format!("{round}{n} bought."),
    });
    if let Some(barcode) = &product.barcode {
        said.push(format!("Barcode {barcode}."));
    }
    if let Some(certifier) = &product.certifier {
        said.push(format!(
            "The package names {} as certifier.",
            certifier.trim_end_matches('.')
        ));
    }
    said.join(" ")
}

fn verdict_facts(product: &JudgedProduct, config: &Config) -> VerdictFacts {
    let verdict = &product.verdict;
    let asked_for = config.testing.packages_per_product;
    VerdictFacts {
        state: match verdict.verdict {
            Verdict::OverLimit => BlockState::Over,
            Verdict::WithinLimit(_) => BlockState::Within,
            Verdict::NoVerdict => BlockState::None,
        },
        words: words::verdict::words(verdict.verdict, verdict.rule),
        count: words::verdict::count(verdict, verdict.rule, asked_for),
        sentence: breakable(
            &format!(
                "{}{}{}",
                words::verdict::sentence(verdict, config),
                words::near_limit::beside_the_verdict(product, &config.words)
                    .map(|said| format!(" {said}"))
                    .unwrap_or_default(),
                words::label::beside_the_verdict(verdict)
            ),
            22,
        ),
    }
}

fn label_facts(verdict: &ProductVerdict, config: &Config) -> LabelFacts {
    let review = &verdict.label;
    let statement = review.statement.iter().map(|piece| Piece {
        text: breakable(&piece.text, 30),
        marked: piece.marked,
    });
    let sentences = words::label::sentences(review, &verdict.product, config.rule.regime);
    LabelFacts {
        statement: statement.collect(),
        length: review
            .statement
            .iter()
            .map(|piece| piece.text.chars().count())
            .sum(),
        precautionary: review
            .precautionary
            .iter()
            .map(|words| breakable(words, 30))
            .collect(),
        sentences: sentences.iter().map(|said| breakable(said, 30)).collect(),
    }
}

/// The latest date that a sheet's facts hold.
pub fn latest_day(verdict: &ProductVerdict) -> Option<NaiveDate> {
    let sent = verdict
        .packages
        .iter()
        .filter_map(|package| package.pair.package.sent_on)
        .max();
    let told = verdict.followups.iter().map(|followup| followup.on).max();
    let issued = verdict
        .issued
        .iter()
        .map(|revision| revision.issued_on)
        .max();
    let bought = verdict.bought().map(|(_, last)| last);
    [sent, told, issued, bought, verdict.tested_on()]
        .into_iter()
        .flatten()
        .max()
}
