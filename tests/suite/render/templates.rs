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

/// The typesetter cannot be stopped from outside, so the program ends, with the template and the lines of its loops.
#[cfg(target_os = "linux")]
#[test]
fn a_template_that_takes_all_memory_ends_every_command_with_its_line() {
    use crate::workspace::{Workspace, tree};
    let within = "Sample,Extraction,Gluten (ppm)\nA1,1,<5\nA1,2,<5\nA2,1,7\nA2,2,8\n";
    for (template, command) in [
        ("sheet.typ", "run"),
        ("summary.typ", "run"),
        ("request.typ", "request"),
        ("plan.typ", "plan"),
        ("labels.typ", "plan"),
        ("contact-sheet.typ", "contact-sheet"),
    ] {
        let workspace = Workspace::new();
        workspace.with("inbox/a.csv", within);
        let endless = "#import \"style.typ\": *\n\n#for i in range(200000000) { i }\n";
        workspace.with(&format!("report-templates/{template}"), endless);
        std::fs::create_dir_all(workspace.path("out")).expect("a folder");
        let run = workspace.run(&["-q", command]);
        run.exits(2);
        let said = run.stderr();
        assert!(
            said.contains(&format!("report-templates/{template}, line 3")),
            "{said}"
        );
        assert!(said.contains("nothing was written"), "{said}");
        let written = tree(&workspace.path("out"));
        let staged = |path: &str| path.starts_with(".galleyproof");
        assert!(
            written.iter().all(|(path, _)| staged(path)),
            "{command}: {:?}",
            written.iter().map(|(path, _)| path).collect::<Vec<_>>()
        );
    }
}

#[test]
fn a_mail_template_that_never_ends_is_told() {
    use crate::workspace::Workspace;
    let workspace = Workspace::demo();
    let endless = "{% for a in range(9999) %}{% for b in range(9999) %}{% endfor %}{% endfor %}";
    let much = format!(
        "{{% for a in range(9999) %}}{}{{% endfor %}}",
        "word ".repeat(400)
    );
    for (template, said) in [(endless, "mail-maker.txt"), (&much, "more than 16 MB")] {
        workspace.with("report-templates/mail-maker.txt", template);
        let run = workspace.run(&["run", "."]);
        run.exits(2);
        assert!(run.stderr().contains("mail-maker.txt"), "{}", run.stderr());
        assert!(run.stderr().contains(said), "{}", run.stderr());
    }
}

#[test]
fn a_page_that_writes_without_measure_is_told() {
    use crate::workspace::Workspace;
    let much = format!(
        "{{% for a in range(99999) %}}{}{{% endfor %}}",
        "word ".repeat(400)
    );
    for (template, page) in [
        ("web-index.html", "web/index.html"),
        ("digest.html", "newsletter/digest.html"),
    ] {
        let workspace = Workspace::demo();
        workspace.with(&format!("report-templates/{template}"), &much);
        let run = workspace.run(&["run", "."]);
        let told = format!("report-templates/{template}");
        assert!(run.stderr().contains(&told), "{}", run.stderr());
        assert!(
            run.stderr().contains("it writes more than 16 MB"),
            "{}",
            run.stderr()
        );
        assert!(!workspace.path("out").join(page).exists());
    }
}

/// Nothing is written of it, so that only memory tells.
#[cfg(target_os = "linux")]
#[test]
fn a_page_whose_text_doubles_without_end_ends_the_run() {
    use crate::workspace::Workspace;
    let workspace = Workspace::demo();
    workspace.with(
        "report-templates/web-index.html",
        "{% set all = namespace(text=\"words \" * 999) %}{% for a in range(64) %}{% set all.text = all.text ~ all.text %}{% endfor %}",
    );
    let run = workspace.run(&["run", "."]);
    run.exits(2);
    let said = run.stderr();
    assert!(
        said.contains("report-templates/web-index.html took"),
        "{said}"
    );
    assert!(!workspace.path("out/summary.pdf").exists());
}

/// Whatever stands in a font: documents are made with it or without it, or it is told which font it was.
#[test]
fn a_damaged_font_is_told_or_harmless() {
    use crate::workspace::Workspace;
    let font = std::fs::read("fonts/source-sans-3/SourceSans3-Regular.otf").expect("is there");
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", "Sample,Gluten (ppm)\nA1,<5\nA2,7\n");
    // A plain generator: the same damage each time.
    let mut state = 7_u64;
    let mut random = |below: usize| {
        state = state
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1);
        (state >> 33) as usize % below
    };
    for round in 0..6 {
        let mut damaged = font.clone();
        for _ in 0..40 << round {
            // The tables at the start say where all else is: half of the damage is done there.
            let within = if random(2) == 0 { 4_000 } else { font.len() };
            damaged[12 + random(within - 12)] = random(256) as u8;
        }
        workspace.with("fonts/source-sans-3/SourceSans3-Regular.otf", damaged);
        let run = workspace.run(&["-q", "run"]);
        let said = run.stderr();
        assert!(!said.contains("fault of the program"), "{said}");
        let is_made = workspace.path("out/sheets/P1--1.pdf").is_file();
        assert!(
            is_made || said.contains("fonts/") || said.contains("could not be made"),
            "{said}"
        );
        let _ = std::fs::remove_dir_all(workspace.path("out"));
    }
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
