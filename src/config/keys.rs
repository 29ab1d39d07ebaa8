//! Every key that `programme.toml` can have, by section.

/// The keys of each section.
pub const KEYS: &[(&str, &[&str])] = &[
    (
        "programme",
        &[
            "name",
            "short_name",
            "email",
            "address",
            "website",
            "site",
            "director",
            "regulator",
            "corrections",
            "reply_days",
            "publish_days",
            "statement",
            "retained",
            "paper",
            "language",
        ],
    ),
    (
        "publishing",
        &["reply_days", "publish_days", "report_days", "attach"],
    ),
    (
        "rule",
        &[
            "regime",
            "limit_ppm",
            "limit_passes",
            "decision",
            "relative_expanded_uncertainty",
        ],
    ),
    (
        "testing",
        &[
            "packages_per_product",
            "extractions_per_package",
            "lloq_ppm",
            "lod_ppm",
            "uloq_ppm",
            "relative_repeatability",
        ],
    ),
    ("lab", &["name", "email", "address", "assay", "assay_kind"]),
    ("data", &["csv", "licence"]),
    ("planning", super::planning::KEYS),
    ("plate", super::plate::KEYS),
    (
        "layout",
        &["files", "sheet", "header_row", "columns", "cells"],
    ),
];
