//! From a dropped file to a mailed sheet and a dated archive.

mod behind;
mod cut_off;
mod diary;
mod drafts;
mod extremes;
mod harm;
mod held;
mod history;
mod hostile_texts;
mod issue;
mod leaks;
mod life;
mod lines;
#[cfg(unix)]
mod links;
mod many_readings;
mod own_faults;
#[cfg(unix)]
mod permits;
mod public;
mod refused;
mod registers;
mod shared;
mod sheets;
mod states;
mod status;
mod watch;

use crate::workspace::Workspace;

/// A product that is within the limit.
pub const WITHIN: &str =
    "Sample,Extraction,Gluten (ppm)\nA1,1,<5\nA1,2,<5\nA2,1,7.1\nA2,2,8.3\nA3,1,<5\nA3,2,<5\n";

/// The same product with a package over the limit.
pub const OVER: &str =
    "Sample,Extraction,Gluten (ppm)\nA1,1,<5\nA1,2,<5\nA2,1,27.1\nA2,2,28.3\nA3,1,<5\nA3,2,<5\n";

/// A second product, P2, with three packages.
pub fn with_second_product(workspace: &Workspace) {
    workspace.with(
        "registers/products.csv",
        "product_id,name,claim,maker,maker_email\nP1,Harbour Loaf,gluten-free,Saltmarsh Bakehouse,quality@saltmarsh.example\n\
         P2,Lantern Rolls,gluten-free,Lantern Mill,hello@lantern.example\n",
    );
    workspace.with(
        "registers/packages.csv",
        "package_code,product_id\nA1,P1\nA2,P1\nA3,P1\nB1,P2\nB2,P2\nB3,P2\n",
    );
    workspace.with(
        "inbox/b.csv",
        "Sample,Extraction,Gluten (ppm)\nB1,1,<5\nB1,2,<5\nB2,1,<5\nB2,2,<5\nB3,1,<5\nB3,2,<5\n",
    );
}
