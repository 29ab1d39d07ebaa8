//! Templates that a programme replaces: a mistake is named with its place, and nothing outside of them can be reached.

use crate::render::{products, sheet_job};
use crate::sample;
use galleyproof::render::Engine;
use galleyproof::render::documents::{Fault, LineColumn, pdf};
use std::path::Path;

/// What comes of a sheet whose template is replaced by this one.
fn replaced(folder: &Path, template: &str) -> Result<Vec<u8>, Vec<Fault>> {
    let path = folder.join("report-templates/sheet.typ");
    galleyproof::files::write(&path, template.as_bytes()).expect("writes");
    let config = sample::config(folder, "a4", "");
    let engine = Engine::new(&config).expect("templates load, right or wrong");
    pdf(
        &engine,
        &sheet_job(&products::none_measured(&config), &config),
    )
}

fn fault(template: &str) -> Fault {
    let folder = tempfile::tempdir().expect("a folder");
    let faults = replaced(folder.path(), template).expect_err("a mistake");
    faults.into_iter().next().expect("a failure has a fault")
}

#[test]
fn a_replacement_sees_the_shared_style_and_the_facts() {
    let folder = tempfile::tempdir().expect("a folder");
    let own = "#import \"style.typ\": *\n#show: document.with(facts.document)\n= #facts.content.product.name\n";
    replaced(folder.path(), own).unwrap_or_else(|faults| panic!("{faults:#?}"));
}

#[test]
fn a_misspelt_fact_is_named_with_its_line() {
    let fault = fault("#import \"style.typ\": *\n\n#facts.content.prodct.name\n");
    assert_eq!(fault.file.as_deref(), Some("report-templates/sheet.typ"));
    assert_eq!(fault.at.map(|at| at.line), Some(3));
    assert!(fault.message.contains("prodct"), "{fault}");
    assert!(
        fault
            .to_string()
            .starts_with("report-templates/sheet.typ, line 3, character "),
        "{fault}"
    );
}

#[test]
fn an_open_bracket_is_named_with_its_place() {
    let fault = fault("#let a = (1, 2\n");
    assert_eq!(
        fault.at,
        Some(LineColumn {
            line: 1,
            column: 10
        }),
        "{fault}"
    );
}

#[test]
fn a_font_that_is_not_there_is_a_mistake() {
    let fault = fault("#set text(font: \"No Such Family\")\nHello\n");
    assert!(fault.message.contains("no such family"), "{fault}");
}

#[test]
fn nothing_outside_of_the_templates_can_be_read() {
    for reach in [
        "#read(\"/etc/passwd\")",
        "#read(\"../programme.toml\")",
        "#read(\"programme.toml\")",
    ] {
        let fault = fault(reach);
        let said = fault.to_string();
        assert!(
            said.contains("not found") || said.contains("escape"),
            "{reach}: {said}"
        );
        assert!(!said.contains("--root"), "{said}");
    }
}

#[test]
fn packages_are_not_downloaded() {
    let fault = fault("#import \"@preview/example:0.1.0\": *\n");
    assert!(fault.message.contains("nothing is downloaded"), "{fault}");
}

#[cfg(unix)]
#[test]
fn a_link_that_leads_out_of_the_folder_is_not_followed() {
    let folder = tempfile::tempdir().expect("a folder");
    std::fs::create_dir_all(folder.path().join("report-templates")).expect("a folder");
    std::os::unix::fs::symlink(
        "/etc/passwd",
        folder.path().join("report-templates/logo.svg"),
    )
    .expect("links");
    let faults =
        replaced(folder.path(), "#read(\"logo.svg\")\n").expect_err("the link is not there");
    assert!(faults[0].message.contains("not found"), "{faults:?}");
}

#[test]
fn a_font_file_that_is_none_is_named() {
    let folder = tempfile::tempdir().expect("a folder");
    galleyproof::files::write(&folder.path().join("fonts/broken.otf"), b"no font").expect("writes");
    let config = sample::config(folder.path(), "a4", "");
    let Err(error) = Engine::new(&config) else {
        panic!("no font is no font")
    };
    assert!(
        error.to_string().contains("fonts/broken.otf holds no font"),
        "{error}"
    );
}

/// The typesetter cannot be stopped from outside, so the run ends, with the template and the lines of its loops.
#[cfg(target_os = "linux")]
#[test]
fn a_template_that_takes_all_memory_ends_the_run_with_its_line() {
    use crate::workspace::Workspace;
    let workspace = Workspace::demo();
    workspace.with(
        "report-templates/sheet.typ",
        "#import \"style.typ\": *\n\n#for i in range(100000000) { i }\n",
    );
    let run = workspace.run(&["run", "."]);
    run.exits(2);
    let said = run.stderr();
    assert!(
        said.contains("report-templates/sheet.typ, line 3"),
        "{said}"
    );
    assert!(said.contains("nothing was written"), "{said}");
    assert!(!workspace.path("out/summary.pdf").exists());
}

#[test]
fn a_mail_template_that_never_ends_is_told() {
    use crate::workspace::Workspace;
    let workspace = Workspace::demo();
    let endless = "{% for a in range(9999) %}{% for b in range(9999) %}{% endfor %}{% endfor %}";
    workspace.with("report-templates/mail-maker.txt", endless);
    let run = workspace.run(&["run", "."]);
    run.exits(2);
    assert!(run.stderr().contains("mail-maker.txt"), "{}", run.stderr());
}

/// A template that is a link could lead anywhere, and a pipe would hold the run up for as long as nobody writes to it.
#[cfg(unix)]
#[test]
fn a_mail_template_that_is_a_link_or_a_pipe_is_not_followed() {
    use crate::workspace::{Workspace, tree};
    let workspace = Workspace::demo();
    workspace.with("elsewhere.txt", "Subject: Borrowed\n\nborrowed words\n");
    let template = workspace.path("report-templates/mail-maker.txt");
    std::fs::create_dir_all(workspace.path("report-templates")).expect("makes");
    std::os::unix::fs::symlink("../elsewhere.txt", &template).expect("links");
    workspace.run(&["run", "."]).exits(1);
    let drafts = tree(&workspace.path("out/drafts"));
    assert!(drafts.len() > 3, "{}", drafts.len());
    for (path, bytes) in drafts {
        let said = String::from_utf8_lossy(&bytes);
        assert!(!said.contains("orrowed"), "{path}");
    }
    std::fs::remove_file(&template).expect("removes");
    let made = std::process::Command::new("mkfifo").arg(&template).status();
    assert!(made.expect("is there").success());
    let run = workspace.run(&["-q", "run", "."]);
    run.exits(2);
    let said = run.stderr();
    assert!(
        said.contains("report-templates/mail-maker.txt") && said.contains("a pipe or a device"),
        "{said}"
    );
}
