//! A text as a QR code (ISO/IEC 18004), drawn: the codes on labels, and the address on a sheet.

use qrcodegen::{QrCode, QrCodeEcc, QrSegment, Version};
use std::fmt::Write;

/// A text as a drawing (SVG), with the four light modules around it that readers need. The most error correction that still
/// takes the smallest symbol: labels get wet, and sheets are copied.
///
/// # Panics
/// Where the text is longer than a symbol takes: some 1,600 bytes.
pub fn svg(text: &str) -> String {
    const QUIET: i32 = 4;
    let segments = QrSegment::make_segments(text);
    let symbol = QrCode::encode_segments_advanced(
        &segments,
        QrCodeEcc::Quartile,
        Version::MIN,
        Version::MAX,
        None,
        true,
    )
    .expect("codes and addresses are far shorter than what a symbol takes");
    let size = symbol.size() + 2 * QUIET;
    let mut path = String::new();
    for y in 0..symbol.size() {
        for x in (0..symbol.size()).filter(|x| symbol.get_module(*x, y)) {
            write!(path, "M{} {}h1v1h-1z", x + QUIET, y + QUIET).expect("a string takes all");
        }
    }
    format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {size} {size}\"><path fill=\"#fff\" d=\"M0 0h{size}v{size}h-{size}z\"/><path \
         fill=\"#000\" shape-rendering=\"crispEdges\" d=\"{path}\"/></svg>"
    )
}
