//! Figures as SVG, in the documents' own font.

pub mod style;

pub mod ruler;
