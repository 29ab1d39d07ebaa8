//! The contact sheet: each package with its purchase, its custody and small pictures of its photographs.

use crate::config::Config;
use crate::guard;
use crate::model::registers::{Package, Product};
use crate::render::facts::DocumentFacts;
use crate::render::words::breakable;
use crate::render::{Job, JobFile};
use crate::words::{Catalogue, say};
use anyhow::Result;
use chrono::NaiveDate;
use serde::Serialize;
use typst::foundations::Bytes;
use typst::visualize::{ExchangeFormat, RasterImage};

/// The longer side of a small picture, in pixels: 42 mm at 220 pixels an inch.
const PIXELS: u32 = 360;

/// The largest file that is drawn, in bytes.
const LARGEST: usize = 64 << 20;

/// The largest picture that is drawn, in pixels, each of which takes some bytes of memory.
const MOST_PIXELS: u64 = 100_000_000;

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
                    bytes: pixels,
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

/// A JPEG or PNG made small: width, height and the bytes of its pixels; or the word for why it is not drawn. A damaged file must not end
/// the document, whatever it does to the decoder.
fn small(bytes: Vec<u8>) -> Result<(u32, u32, Vec<u8>), &'static str> {
    const BROKEN: &str = "broken";
    let format = if bytes.starts_with(&[0xff, 0xd8, 0xff]) {
        ExchangeFormat::Jpg
    } else if bytes.starts_with(b"\x89PNG\r\n\x1a\n") {
        ExchangeFormat::Png
    } else {
        return Err("kind");
    };
    if bytes.len() > LARGEST {
        return Err("large");
    }
    if area(&bytes, format).ok_or(BROKEN)? > MOST_PIXELS {
        return Err("pixels");
    }
    let drawn = guard::guarded(|| {
        let image = RasterImage::plain(Bytes::new(bytes), format).ok()?;
        let small = image.dynamic().thumbnail(PIXELS, PIXELS).to_rgb8();
        Some((small.width(), small.height(), small.into_raw()))
    });
    drawn.flatten().ok_or(BROKEN)
}

/// Width times height, as the head of a picture states them; nothing is decoded for it.
fn area(bytes: &[u8], format: ExchangeFormat) -> Option<u64> {
    let (width, height) = match format {
        ExchangeFormat::Png => (
            big_endian(bytes.get(16..20)?),
            big_endian(bytes.get(20..24)?),
        ),
        _ => jpeg_size(bytes)?,
    };
    Some(width * height)
}

/// From the first frame header of a JPEG (ITU-T T.81, B.2.2): its segments each state their length.
fn jpeg_size(bytes: &[u8]) -> Option<(u64, u64)> {
    const FRAMES: std::ops::RangeInclusive<u8> = 0xc0..=0xcf;
    const NO_FRAMES: [u8; 3] = [0xc4, 0xc8, 0xcc];
    let mut at = 2;
    loop {
        let segment = bytes.get(at..)?;
        let [0xff, kind, rest @ ..] = segment else {
            return None;
        };
        match kind {
            // A fill byte; markers without a length.
            0xff => at += 1,
            0x01 | 0xd0..=0xd8 => at += 2,
            kind if FRAMES.contains(kind) && !NO_FRAMES.contains(kind) => {
                return Some((big_endian(rest.get(5..7)?), big_endian(rest.get(3..5)?)));
            }
            _ => at += 2 + usize::try_from(big_endian(rest.get(..2)?)).ok()?,
        }
    }
}

fn big_endian(bytes: &[u8]) -> u64 {
    bytes
        .iter()
        .fold(0, |number, byte| number << 8 | u64::from(*byte))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_size_is_read_from_the_head_alone() {
        let mut png = b"\x89PNG\r\n\x1a\n\0\0\0\x0dIHDR".to_vec();
        png.extend([0, 0, 0xc3, 0x50, 0, 0, 0xc3, 0x50]);
        assert_eq!(area(&png, ExchangeFormat::Png), Some(2_500_000_000));
        assert_eq!(area(&png[..20], ExchangeFormat::Png), None);
        let jpeg = [
            0xff, 0xd8, 0xff, 0xe0, 0, 4, 1, 2, 0xff, 0xff, 0xc4, 0, 2, 0xff, 0xc2, 0, 11, 8, 0xff,
            0xff, 0xff, 0xfe,
        ];
        assert_eq!(area(&jpeg, ExchangeFormat::Jpg), Some(65_535 * 65_534));
        for end in 2..jpeg.len() {
            assert_eq!(area(&jpeg[..end], ExchangeFormat::Jpg), None, "{end}");
        }
        assert_eq!(
            area(&[0xff, 0xd8, 0xff, 0xe0, 0, 0], ExchangeFormat::Jpg),
            None
        );
    }
}
