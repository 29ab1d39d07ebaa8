//! The program as a new user meets it: commands, exit statuses, what is printed and what is written.

use crate::workspace::{Workspace, tree};
use sha2::Digest;

const LAB_FILE: &str =
    "Sample,Extraction,Gluten (ppm)\nA1,1,<5\nA1,2,<5\nA2,1,7.1\nA2,2,8.3\nA3,1,<5\nA3,2,<5\n";

#[test]
fn the_demo_is_made_whole_though_one_file_is_broken() {
    let demo = Workspace::demo();
    let run = demo.run(&["run"]);
    run.exits(1);
    assert!(
        run.stdout()
            .contains("31 products: 21 within the limit, 4 over it, 6 without a verdict."),
        "{}",
        run.stdout()
    );
    assert!(
        demo.text("out/inbox-report.txt")
            .contains("inbox/2031/FH-2031-126.xlsx")
    );
    assert_eq!(
        std::fs::read_dir(demo.path("out/sheets"))
            .expect("is there")
            .count(),
        31
    );
}

#[test]
fn two_runs_give_the_same_bytes_whatever_the_machine_says() {
    let demo = Workspace::demo();
    demo.run(&["-q", "run", "--out", "one"]).exits(1);
    let elsewhere = [
        ("TZ", "Pacific/Kiritimati"),
        ("LC_ALL", "tr_TR.UTF-8"),
        ("RAYON_NUM_THREADS", "1"),
    ];
    demo.run_with(&["-q", "run", "--out", "two"], &elsewhere)
        .exits(1);
    assert!(
        tree(&demo.path("one")) == tree(&demo.path("two")),
        "the trees differ"
    );
}

#[test]
fn an_incremental_run_gives_what_a_run_from_scratch_gives() {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", LAB_FILE);
    workspace.run(&["run"]).exits(0);
    workspace.with(
        "inbox/a.csv",
        LAB_FILE.replace("7.1", "27.1").replace("8.3", "28.3"),
    );
    workspace.run(&["run"]).exits(0);
    workspace.run(&["run", "--out", "fresh"]).exits(0);
    assert!(
        tree(&workspace.path("out")) == tree(&workspace.path("fresh")),
        "the trees differ"
    );
}

#[test]
fn a_day_is_printed_only_where_it_is_given() {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", LAB_FILE);
    workspace
        .run(&["run", "--out", "flag", "--date", "2031-05-06"])
        .exits(0);
    workspace
        .run_with(
            &["run", "--out", "variable"],
            &[("SOURCE_DATE_EPOCH", "1935792000")],
        )
        .exits(0);
    workspace.run(&["run", "--out", "none"]).exits(0);
    let sheet = |folder: &str| {
        std::fs::read(workspace.path(folder).join("sheets/P1--1.pdf")).expect("is there")
    };
    assert!(sheet("flag") == sheet("variable"));
    assert!(sheet("flag") != sheet("none"));
}

#[test]
fn init_starts_a_folder_that_check_accepts() {
    let workspace = Workspace::new();
    workspace.run(&["init", "mine"]).exits(0);
    workspace.run(&["check", "mine"]).exits(0);
    workspace.run(&["init", "mine"]).exits(2);
    workspace.run(&["init", "shown", "--demo"]).exits(0);
    workspace.run(&["check", "shown"]).exits(1);
}

#[test]
fn check_writes_nothing() {
    let demo = Workspace::demo();
    let before = tree(&demo.path("."));
    demo.run(&["check"]).exits(1);
    assert!(tree(&demo.path(".")) == before);
}

#[test]
fn what_cannot_be_done_is_said_and_ends_with_two() {
    let workspace = Workspace::new();
    workspace.run(&[]).exits(2);
    workspace.run(&["chekc"]).exits(2);
    workspace.run(&["check", "nowhere"]).exits(2);
    let run = workspace.run(&["run", "--only", "P9"]);
    assert!(
        run.exits(2).stderr().contains("there is no product P9"),
        "{}",
        run.stderr()
    );
    workspace.with(
        "programme.toml",
        "[programme]\nname = \"A\"\nshort_name = \"A\"\n[rule]\nregmie = \"us\"\n",
    );
    let run = workspace.run(&["check"]);
    assert!(
        run.exits(2).stderr().contains("line 5") && run.stderr().contains("`regime`"),
        "{}",
        run.stderr()
    );
}

#[test]
fn quiet_says_nothing_and_json_is_one_object() {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", LAB_FILE);
    let run = workspace.run(&["--quiet", "run"]);
    assert_eq!(
        (run.exits(0).stdout(), run.stderr()),
        (String::new(), String::new())
    );
    assert_eq!(
        workspace.results()["products"][0]["verdict"],
        "within_limit"
    );
    assert_eq!(
        workspace.results()["products"][0]["packages"][1]["result"]["ppm"],
        7.7
    );
}

#[test]
fn a_programme_adds_terms_of_its_own() {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", LAB_FILE);
    workspace.with(
        "registers/products.csv",
        "product_id,name,claim,ingredients\nP1,Harbour Loaf,gluten-free,\"Water, marsh crumb, salt.\"\n",
    );
    assert_eq!(
        workspace.results()["products"][0]["label"]["finding"],
        "none"
    );
    workspace.with(
        "registers/terms.csv",
        "term,grain,class,why\nmarsh crumb,wheat,always,Made of wheat flour.\n",
    );
    let label = &workspace.results()["products"][0]["label"];
    assert_eq!(label["finding"], "gluten_source");
    assert_eq!(label["terms"], serde_json::json!(["marsh crumb"]));
}

#[test]
fn a_product_is_explained_and_its_facts_are_shown() {
    let demo = Workspace::demo();
    let explained = demo.run(&["explain", "TW-002"]);
    assert!(
        explained.exits(0).stdout().contains("19.75"),
        "{}",
        explained.stdout()
    );
    let facts = demo.run(&["facts", "TW-002"]);
    let facts: serde_json::Value = serde_json::from_str(&facts.stdout()).expect("is JSON");
    assert_eq!(facts["edition"]["status"], "proof");
    let nearest = demo.run(&["explain", "TW-02"]);
    assert!(
        nearest.exits(2).stderr().contains("TW-002"),
        "{}",
        nearest.stderr()
    );
    demo.run(&["request"]).exits(0);
    assert!(demo.text("out/requests/samples.csv").lines().count() > 1);
}

#[test]
fn one_error_is_one_and_two_are_two() {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", LAB_FILE);
    workspace.with("inbox/b.csv", "");
    let run = workspace.run(&["check"]);
    assert!(
        run.exits(1)
            .stdout()
            .contains("1 error, 0 warnings, 0 notes.")
    );
    assert!(run.stdout().contains("\n1 product: "), "{}", run.stdout());
    workspace.with("inbox/c.csv", "");
    let run = workspace.run(&["check"]);
    assert!(
        run.exits(1)
            .stdout()
            .contains("2 errors, 0 warnings, 0 notes.")
    );
}

#[test]
fn a_shell_completes_commands_and_options() {
    let workspace = Workspace::new();
    for shell in ["bash", "elvish", "fish", "powershell", "zsh"] {
        let script = workspace.run(&["completions", shell]).exits(0).stdout();
        assert!(
            script.contains("contact-sheet") && script.contains("budget"),
            "{shell}"
        );
    }
    assert!(
        workspace
            .run(&["completions", "tcsh"])
            .exits(2)
            .stderr()
            .contains("bash")
    );
    // What bash itself makes of it, where there is one.
    let script = workspace.run(&["completions", "bash"]).stdout();
    let asked = "\nCOMP_WORDS=(galleyproof plan --bu)\nCOMP_CWORD=2\n_galleyproof galleyproof --bu plan\necho \"${COMPREPLY[@]}\"\n";
    let bash = std::process::Command::new("bash")
        .args(["--norc", "-c", &format!("{script}{asked}")])
        .output();
    match bash {
        Ok(output) => assert_eq!(
            String::from_utf8_lossy(&output.stdout).trim(),
            "--budget",
            "{}",
            String::from_utf8_lossy(&output.stderr)
        ),
        Err(_) => println!("there is no bash: its completions were not tried"),
    }
}

#[test]
fn there_is_a_manual_page_of_the_program_and_of_each_command() {
    let workspace = Workspace::new();
    let whole = workspace.run(&["man"]).exits(0).stdout();
    assert!(whole.contains(".TH galleyproof 1"), "{whole}");
    assert!(whole.contains("Exit status"), "{whole}");
    let plan = workspace.run(&["man", "plan"]).exits(0).stdout();
    assert!(
        plan.contains(".TH galleyproof-plan 1") && plan.contains("budget"),
        "{plan}"
    );
    let refused = workspace.run(&["man", "plans"]);
    assert!(refused.exits(2).stderr().contains("contact-sheet"));
}

#[test]
fn the_version_names_the_tables_that_a_verdict_rests_on() {
    let workspace = Workspace::new();
    let short = workspace.run(&["-V"]).exits(0).stdout();
    assert_eq!(short.lines().count(), 1, "{short}");
    let long = workspace.run(&["--version"]).exits(0).stdout();
    let lines: Vec<&str> = long.lines().collect();
    assert_eq!(lines[0], short.trim_end());
    // The name of a table is what anyone finds with a tool of their own.
    let terms = include_bytes!("../../src/judge/labels/terms.csv");
    let digest: String = sha2::Sha256::digest(terms)
        .iter()
        .map(|byte| format!("{byte:02x}"))
        .collect();
    assert_eq!(lines[2], format!("label table {}", &digest[..12]));
    let rules = galleyproof::judge::claims::table();
    for line in [
        "us, gluten-free: 20 false false",
        "codex, gluten-free: 20 true false",
        "codex, reduced gluten: 100 true false",
        "eu, very low gluten: 100 true false",
        "argentina, gluten-free: 10 true false",
        "chile, gluten-free: 5 true false",
        "au-nz, gluten-free: 3 false true",
        "au-nz, low gluten: 200 true false",
    ] {
        assert!(rules.lines().any(|known| known == line), "{line}: {rules}");
    }
    let digest: String = sha2::Sha256::digest(rules.as_bytes())
        .iter()
        .map(|byte| format!("{byte:02x}"))
        .collect();
    assert_eq!(lines[1], format!("rule table  {}", &digest[..12]));
}

#[test]
fn a_day_that_no_document_can_write_is_refused_by_name() {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", crate::flow::OVER);
    let commands: [&[&str]; 7] = [
        &["check"],
        &["run"],
        &["issue"],
        &["status"],
        &["plan"],
        &["log", "notice-sent", "P1"],
        &["facts", "P1"],
    ];
    let years = "in the years 0001 to 9999";
    for command in commands {
        // The first second of the year 10000, the last that is known, and the last before the year 1.
        for epoch in ["253402300800", "8210266876799", "-62135596801"] {
            let run = workspace.run_with(command, &[("SOURCE_DATE_EPOCH", epoch)]);
            run.exits(2);
            let said = run.stderr();
            assert_eq!(
                said.trim().lines().count(),
                1,
                "{command:?} {epoch}: {said}"
            );
            assert!(said.contains("SOURCE_DATE_EPOCH"), "{said}");
            assert!(said.contains(years), "{said}");
        }
        for day in ["+12345-01-01", "0000-01-01", "-0001-12-31"] {
            let day = format!("--date={day}");
            let mut command = command.to_vec();
            command.push(&day);
            let run = workspace.run(&command);
            run.exits(2);
            let said = run.stderr();
            assert!(said.contains("--date") && said.contains(years), "{said}");
        }
    }
    for made in [
        "out",
        "archive",
        "registers/issued.csv",
        "registers/followups.csv",
    ] {
        assert!(!workspace.path(made).exists(), "{made}");
    }
    for epoch in ["-62135596800", "253402300799"] {
        let run = workspace.run_with(&["-q", "run"], &[("SOURCE_DATE_EPOCH", epoch)]);
        run.exits(0);
    }
}

#[test]
fn what_is_named_and_is_not_there_is_one_sentence() {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", crate::flow::WITHIN);
    workspace.with("elsewhere/note.txt", "mine");
    let empty = "for '--only <ID>': the id of a product is needed";
    let no_programme = "elsewhere is not a programme folder: it has no programme.toml";
    let no_bag = "elsewhere is not an archive that `issue` wrote";
    let cases: [(&[&str], &str); 8] = [
        (&["run", "--only", ""], empty),
        (&["issue", "--only", " "], empty),
        (&["plan", "--only", ""], empty),
        (&["contact-sheet", "--only", ""], empty),
        (&["request", "elsewhere"], no_programme),
        (&["compare", "elsewhere", "elsewhere"], no_bag),
        (&["verify", "elsewhere"], no_bag),
        (&["verify", "none"], "there is no folder none"),
    ];
    for (command, told) in cases {
        let run = workspace.run(command);
        run.exits(2);
        let said = run
            .stderr()
            .replace("\n\nFor more information, try '--help'.", "");
        assert_eq!(said.trim().lines().count(), 1, "{command:?}: {said}");
        assert!(said.contains(told), "{command:?}: {said}");
        assert_eq!(run.stdout(), "", "{command:?}");
    }
    std::fs::remove_dir_all(workspace.path("inbox")).expect("removes");
    for command in [&["check"][..], &["run"], &["issue"], &["status"], &["plan"]] {
        let run = workspace.run(command);
        run.exits(2);
        let said = run.stderr();
        assert!(
            said.contains("has no folder “inbox”: make one and put the lab's files into it"),
            "{command:?}: {said}"
        );
    }
    assert!(!workspace.path("out/summary.pdf").exists());
}

/// Something else was pasted into the settings: the first lines of it are told.
#[test]
fn of_very_many_faults_of_the_settings_the_first_are_told_and_the_others_counted() {
    let workspace = Workspace::new();
    let mut settings = "[programme]\nshort_name = \"TKW\"\n".to_owned();
    for at in 0.. {
        let line = format!("k{at} = 1\n");
        if settings.len() + line.len() > 256 * 1024 {
            break;
        }
        settings += &line;
    }
    workspace.with("programme.toml", &settings);
    let run = workspace.run(&["check"]);
    run.exits(2);
    let said = run.stderr();
    let lines: Vec<&str> = said.lines().map(str::trim).collect();
    assert_eq!(lines.len(), 1 + 20 + 1 + 1, "{}", said.len());
    for (at, line) in lines[1..21].iter().enumerate() {
        let told = format!("line {}: unknown key in [programme]: `k{at}`", at + 3);
        assert!(line.starts_with(&told), "{line}");
    }
    let more = settings.lines().count() - 2 - 20;
    assert_eq!(
        lines[21],
        format!("{more} further lines have a fault: mend these first")
    );
    assert!(lines[22].contains("name"), "{}", lines[22]);
    #[cfg(target_os = "linux")]
    assert!(workspace.measured(&["check"]).cpu_seconds < 5);
}
