//! `init`: a new programme folder, empty or filled with the invented demo.

use crate::cli::Ending;
use crate::cli::demo;
use crate::cli::print;
use crate::files;
use crate::pipeline;
use anyhow::{Result, bail};
use std::path::Path;

/// A programme folder's files as they start out, with their explanations in them.
const BLANK: &[(&str, &str)] = &[
    ("programme.toml", include_str!("blank/programme.toml")),
    (
        "registers/products.csv",
        "product_id,name,brand,maker,maker_email,maker_address,category,claim,certifier,ingredients,oats,processing,matrix,barcode,net_content\n",
    ),
    (
        "registers/packages.csv",
        "package_code,product_id,round,lot,best_by,bought_on,shop,price,sent_on,photographs,custody\n",
    ),
    (
        "registers/corrections.csv",
        "file,package_code,extraction,action,reason,by,on\n",
    ),
    (
        "registers/reports.csv",
        "file,report,issued_on,received_on,condition,tested_from,tested_to,lloq_ppm,lod_ppm,uncertainty,accredited,supersedes,certificate\n",
    ),
    (
        "registers/followups.csv",
        "product_id,round,on,kind,due_on,statement,note\n",
    ),
    ("READ ME FIRST.txt", include_str!("blank/read-me-first.txt")),
];

/// Makes the folder.
///
/// # Errors
/// Where the folder is there already and holds something, or cannot be written.
pub fn init(dir: &Path, with_demo: bool) -> Result<Ending> {
    if files::holds_something(dir)? {
        bail!(
            "{} is not empty. Choose a folder that does not exist yet; nothing was written",
            dir.display()
        );
    }
    let laid_out: Vec<(&str, &[u8])> = match with_demo {
        true => demo::FILES.to_vec(),
        false => {
            let blank = BLANK.iter();
            blank.map(|(path, text)| (*path, text.as_bytes())).collect()
        }
    };
    pipeline::lay_out(dir, &laid_out)?;
    print::result(&next_steps(dir, with_demo))?;
    Ok(Ending::Well)
}

fn next_steps(dir: &Path, with_demo: bool) -> String {
    let dir = dir.display();
    if with_demo {
        return format!(
            "{dir} holds a demo programme. Every name and figure in it is invented.\n\
             Make its documents with:  galleyproof run {dir}\n"
        );
    }
    format!(
        "{dir} is ready. Next:\n\
         \x20 1. Open {dir}/programme.toml and put in your programme's name and rule.\n\
         \x20 2. List your products in {dir}/registers/, then plan what to buy:  galleyproof plan {dir}\n\
         \x20 3. Copy each file that the lab sends into {dir}/inbox/, as it is.\n\
         \x20 4. Look at what would be published:  galleyproof check {dir}\n\
         \x20 5. Make the documents:               galleyproof run {dir}\n"
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::config::Config;

    #[test]
    fn the_blank_settings_are_valid_once_names_are_there() {
        let text = BLANK[0].1;
        let config = Config::parse(text, Path::new(".")).expect("they are valid");
        assert_eq!(config.placeholders(), ["[programme] name", "[lab] name"]);
    }

    #[test]
    fn a_folder_that_holds_something_is_left_alone() {
        let folder = tempfile::tempdir().expect("a folder");
        std::fs::write(folder.path().join("letter.txt"), "mine").expect("writes");
        assert!(init(folder.path(), false).is_err());
        assert_eq!(std::fs::read_dir(folder.path()).expect("lists").count(), 1);
    }
}
