//! Photographs of packages, drawn small for the contact sheet. A damaged file, or one too large, is a word and no picture.

use crate::guard;
use typst::foundations::Bytes;
use typst::visualize::{ExchangeFormat, RasterImage};

/// The longer side of a small picture, in pixels: 42 mm at 220 pixels an inch.
const PIXELS: u32 = 360;

/// The largest file that is drawn, in bytes.
const LARGEST: usize = 64 << 20;

/// The largest picture that is drawn, in pixels, each of which takes some bytes of memory.
const MOST_PIXELS: u64 = 100_000_000;

/// A JPEG or PNG made small: width, height and the bytes of its pixels; or the word for why it is not drawn. A damaged file must not end
/// the document, whatever it does to the decoder.
pub fn small(bytes: Vec<u8>) -> Result<(u32, u32, Vec<u8>), &'static str> {
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
