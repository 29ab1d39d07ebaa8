//! The contact sheet: each package with its purchase, its custody and small pictures of its photographs.

use crate::config::Config;
use crate::model::registers::{Package, Product};
use crate::render::facts::DocumentFacts;
use crate::render::photographs::small;
use crate::render::words::breakable;
use crate::render::{Job, JobFile};
use crate::words::{Catalogue, say};
use anyhow::Result;
use chrono::NaiveDate;
use serde::Serialize;

/// A package with its product and the bytes of its photographs, in their order; none where a file cannot be read.
pub struct Shown<'a> {
    /// The package.
    pub package: &'a Package,
    /// Its product.
    pub product: &'a Product,
    /// The bytes of each photograph.
    pub bytes: Vec<Option<Vec<u8>>>,
}

#[derive(Serialize)]
struct SheetFacts {
    document: DocumentFacts,
    programme: String,
    packages: Vec<PackageFacts>,
}

#[derive(Serialize)]
struct PackageFacts {
    code: String,
    product: String,
    lines: Vec<Line>,
    pictures: Vec<Picture>,
    named: Vec<String>,
}

#[derive(Serialize)]
struct Line {
    label: String,
    text: String,
}

/// A small picture: rows of red, green and blue bytes.
#[derive(Serialize)]
struct Picture {
    read: String,
    width: u32,
    height: u32,
    alt: String,
    name: String,
}

/// The contact sheet of these packages. A photograph that cannot be drawn is named with the reason.
///
/// # Errors
/// None that data can cause: facts are text.
pub fn job(shown: Vec<Shown<'_>>, config: &Config, made_on: Option<NaiveDate>) -> Result<Job> {
    let mut files = Vec::new();
    let days = shown.iter().filter_map(|one| one.package.bought_on);
    let date = made_on.or_else(|| days.max()).unwrap_or_default();
    let words = &config.words;
    let count = shown.len() as u64;
    let packages = shown
        .into_iter()
        .map(|one| package(one, &mut files, words))
        .collect();
    let facts = SheetFacts {
        document: DocumentFacts::new(
            config,
            &["plan"],
            words.say(&say::contact_title()),
            words.say(&say::contact_about(count)),
            vec![config.programme.short_name.clone()],
        ),
        programme: config.programme.name.clone(),
        packages,
    };
    Ok(Job {
        path: "contact-sheet.pdf".to_owned(),
        template: "contact-sheet.typ",
        ident: format!("contact sheet {}", config.programme.short_name),
        date,
        facts: serde_json::to_vec(&facts)?,
        files,
    })
}

fn package(shown: Shown<'_>, files: &mut Vec<JobFile>, words: &Catalogue) -> PackageFacts {
    let (package, product) = (shown.package, shown.product);
    let bought = package.bought_on.map(|day| words.day(day));
    let lines = [
        ("lot", package.lot.as_ref()),
        ("best_by", package.best_by.as_ref()),
        ("bought_on", bought.as_ref()),
        ("shop", package.shop.as_ref()),
        ("custody", package.custody.as_ref()),
    ];
    let lines = lines.into_iter().map(|(of, text)| Line {
        label: words.say(&say::contact_label(of)),
        text: match text {
            Some(text) => breakable(text, 60),
            None => words.say(&say::contact_unknown()),
        },
    });
    let (mut pictures, mut named) = (Vec::new(), Vec::new());
    for (photograph, bytes) in package.photographs.iter().zip(shown.bytes) {
        let name = photograph.path.rsplit('/').next().unwrap_or_default();
        match bytes.ok_or("unread").and_then(small) {
            Ok((width, height, pixels)) => {
                let read = format!("picture-{}", files.len() + 1);
                files.push(JobFile {
                    name: read.clone(),
                    made_from: None,
                    bytes: pixels.into(),
                });
                pictures.push(Picture {
                    read,
                    width,
                    height,
                    alt: words.say(&say::contact_photograph(&package.package_code, name)),
                    name: breakable(name, 20),
                });
            }
            Err(why) => {
                let path = breakable(&photograph.path, 60);
                named.push(words.say(&say::contact_not_drawn(path, why)));
            }
        }
    }
    PackageFacts {
        code: breakable(&package.package_code, 40),
        product: breakable(&product.name, 40),
        lines: lines.collect(),
        pictures,
        named,
    }
}
