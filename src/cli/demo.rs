//! The demo programme, built into the program: the files of `examples/`, which a test holds against this list.

/// Path below the programme folder, and bytes.
pub const FILES: &[(&str, &[u8])] = &[
    demo(
        "programme.toml",
        include_bytes!("../../examples/programme.toml"),
    ),
    demo(
        "registers/corrections.csv",
        include_bytes!("../../examples/registers/corrections.csv"),
    ),
    demo(
        "registers/followups.csv",
        include_bytes!("../../examples/registers/followups.csv"),
    ),
    demo(
        "registers/packages.csv",
        include_bytes!("../../examples/registers/packages.csv"),
    ),
    demo(
        "registers/products.csv",
        include_bytes!("../../examples/registers/products.csv"),
    ),
    demo(
        "registers/reports.csv",
        include_bytes!("../../examples/registers/reports.csv"),
    ),
    demo(
        "inbox/2030/FH-2030-058.xlsx",
        include_bytes!("../../examples/inbox/2030/FH-2030-058.xlsx"),
    ),
    demo(
        "inbox/2030/FH-2030-131.xlsx",
        include_bytes!("../../examples/inbox/2030/FH-2030-131.xlsx"),
    ),
    demo(
        "inbox/2030/HV-30-0117.csv",
        include_bytes!("../../examples/inbox/2030/HV-30-0117.csv"),
    ),
    demo(
        "inbox/2030/HV-30-0466.csv",
        include_bytes!("../../examples/inbox/2030/HV-30-0466.csv"),
    ),
    demo(
        "photographs/LZ-382/front.jpg",
        include_bytes!("../../examples/photographs/LZ-382/front.jpg"),
    ),
    demo(
        "photographs/LZ-382/lot-and-date.jpg",
        include_bytes!("../../examples/photographs/LZ-382/lot-and-date.jpg"),
    ),
    demo(
        "inbox/2031/FH-2031-017.ods",
        include_bytes!("../../examples/inbox/2031/FH-2031-017.ods"),
    ),
    demo(
        "inbox/2031/FH-2031-102.ods",
        include_bytes!("../../examples/inbox/2031/FH-2031-102.ods"),
    ),
    demo(
        "inbox/2031/FH-2031-126.xlsx",
        include_bytes!("../../examples/inbox/2031/FH-2031-126.xlsx"),
    ),
    demo(
        "inbox/2031/HV-31-0088.csv",
        include_bytes!("../../examples/inbox/2031/HV-31-0088.csv"),
    ),
    demo(
        "inbox/2031/HV-31-0197.csv",
        include_bytes!("../../examples/inbox/2031/HV-31-0197.csv"),
    ),
    demo(
        "inbox/2031/HV-31-0203.csv",
        include_bytes!("../../examples/inbox/2031/HV-31-0203.csv"),
    ),
    demo(
        "inbox/2031/HV-31-0588-plate.csv",
        include_bytes!("../../examples/inbox/2031/HV-31-0588-plate.csv"),
    ),
    demo(
        "inbox/2031/HV-31-0588.csv",
        include_bytes!("../../examples/inbox/2031/HV-31-0588.csv"),
    ),
    demo(
        "inbox/2031/HV-31-0601-competitive.csv",
        include_bytes!("../../examples/inbox/2031/HV-31-0601-competitive.csv"),
    ),
    demo(
        "inbox/2031/HV-31-0612-repeat.csv",
        include_bytes!("../../examples/inbox/2031/HV-31-0612-repeat.csv"),
    ),
    demo(
        "inbox/2031/HV-31-0623.csv",
        include_bytes!("../../examples/inbox/2031/HV-31-0623.csv"),
    ),
];

/// An entry of the list: arrays of every length as one kind of slice.
const fn demo(path: &'static str, bytes: &'static [u8]) -> (&'static str, &'static [u8]) {
    (path, bytes)
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::path::Path;

    #[test]
    fn the_list_is_the_folder() {
        let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("examples");
        let ours = |entry: &walkdir::DirEntry| {
            entry.path() != root.join("out") && entry.path() != root.join("archive")
        };
        let mut there: Vec<String> = walkdir::WalkDir::new(&root)
            .into_iter()
            .filter_entry(ours)
            .map(|entry| entry.expect("can be listed"))
            .filter(|entry| entry.file_type().is_file())
            .map(|entry| {
                entry
                    .path()
                    .strip_prefix(&root)
                    .expect("is below")
                    .to_string_lossy()
                    .replace('\\', "/")
            })
            .filter(|path| !path.starts_with('.'))
            .collect();
        let mut listed: Vec<&str> = FILES.iter().map(|(path, _)| *path).collect();
        there.sort_unstable();
        listed.sort_unstable();
        assert_eq!(there, listed);
    }
}
