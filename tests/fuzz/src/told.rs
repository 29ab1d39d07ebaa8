//! What every template gets to read, and mails by a template of the programme's own.

use crate::gather::gather;
use crate::judge::judge;
use crate::kept::{Programme, REGISTERS};
use crate::measure::measure;
use crate::model::decided::Decided;
use crate::model::problem::Problems;
use crate::model::publication::Audience;
use crate::pieces;
use crate::pipeline::states;
use crate::render::facts::{carried, correction, digest, notice, plate, query, sheet, summary};
use crate::render::{Job, explain};
use crate::save::drafts::{self, Question, Wording};
use chrono::NaiveDate;
use std::fs;

/// The templates of mails that a programme can replace, in the order of their pieces behind registers and lab file.
pub const MAILS: [&str; 2] = ["mail-maker.txt", "mail-lab.txt"];

/// Registers, a lab file and templates of mails: what is decided of them is told to every template there is. The facts
/// must be whole JSON, of products that are there; a template must end, in a mail or with what is wrong with it.
pub fn tell(bytes: &[u8]) {
    let pieces = pieces::of(bytes);
    let programme = Programme::of(&pieces);
    let config = &programme.config;
    for (name, piece) in MAILS
        .iter()
        .zip(pieces.iter().skip(REGISTERS.len() + 1))
        .filter(|(_, piece)| !piece.is_empty())
    {
        let path = programme.root.path().join("report-templates").join(name);
        fs::write(path, piece).expect("writes");
    }
    let mut problems = Problems::default();
    let Ok(gathered) = gather(config, &mut problems, &|_, _| {}) else {
        return;
    };
    let day = NaiveDate::from_ymd_opt(2031, 5, 1);
    let reported = (&*gathered.extractions, &*gathered.registers.corrections);
    let plates = measure(gathered.plates, reported, config, &mut problems);
    let judged = judge(
        &gathered.registers,
        gathered.extractions,
        config,
        day,
        &mut problems,
    );
    let mut decided = Decided {
        products: judged.products,
        statistics: judged.statistics,
        registers: gathered.registers,
        lab_files: gathered.lab_files,
        understandings: gathered.understandings,
        plates,
        problems,
        audience: Audience::Programme,
        under_revision: Vec::new(),
        with_lab: 0,
    };
    states::note(&mut decided, config, day);
    let anyone = states::for_anyone(&decided, config);
    for view in [&*states::reported(&decided, config), &anyone] {
        let told = summary::summary(view, config, day).expect("charts can be drawn");
        whole(&summary::job(&told).expect("facts are text"));
        let told = digest::digest(view, config, day).expect("charts can be drawn");
        whole(&digest::job(&told).expect("facts are text"));
    }
    for measured in &decided.plates {
        let told = plate::job(measured, "plate", config, day).expect("a chart can be drawn");
        whole(&told);
    }
    let wording = Wording::read(config);
    for judged in &decided.products {
        let told = sheet::facts(judged, config, day);
        let mut job = carried::outline(judged, &told, config).expect("facts are text");
        carried::complete(&mut job, judged, config).expect("facts are text");
        whole(&job);
        let told = notice::facts(judged, config, day);
        whole(&notice::job(&judged.verdict, &told).expect("facts are text"));
        if let Some(owed) = judged.publication.correction {
            let told = correction::facts(judged, owed, config, day);
            whole(&correction::job(judged, &told).expect("facts are text"));
        }
        assert!(!explain::explain(judged, config).is_empty());
        if let Ok(wording) = &wording
            && let Ok(mail) = drafts::to_maker(judged, config, day, &[], wording, Vec::new())
        {
            mailed(&mail.bytes);
        }
    }
    for (lab, rows) in query::open(&decided.products, config, day) {
        let questions = rows.iter().map(|row| Question {
            package: row.code.clone(),
            asked: row.ask.clone(),
            reported: row.reported,
        });
        let questions: Vec<Question> = questions.collect();
        whole(
            &query::job(&query::facts(&lab, rows.clone(), config, day), day)
                .expect("facts are text"),
        );
        let asked = drafts::Query {
            stem: "lab",
            number: &query::number(&rows, config),
            lab: &lab,
            email: query::email(&lab, &config.lab),
            questions: &questions,
        };
        if let Ok(wording) = &wording
            && let Ok(mail) = drafts::to_lab(&asked, config, day, wording, Vec::new())
        {
            mailed(&mail.bytes);
        }
    }
}

/// The facts are one JSON object, with a title, and every drawing is one of XML.
fn whole(job: &Job) {
    let facts: serde_json::Value = serde_json::from_slice(&job.facts).expect("facts are JSON");
    assert!(facts["document"]["title"].is_string(), "{}", job.path);
    for file in job.files.iter().filter(|file| file.name.ends_with(".svg")) {
        let text = std::str::from_utf8(file.bytes.as_ref()).expect("a drawing is text");
        let mut drawing = quick_xml::Reader::from_str(text);
        loop {
            match drawing.read_event() {
                Ok(quick_xml::events::Event::Eof) => break,
                Ok(_) => {}
                Err(error) => panic!("{} in {}: {error}", file.name, job.path),
            }
        }
    }
}

/// The heads of a mail are lines of plain letters, and none of them came from a register or a template.
fn mailed(bytes: &[u8]) {
    let text = std::str::from_utf8(bytes).expect("a mail is of plain letters");
    let (heads, _) = text.split_once("\r\n\r\n").expect("heads end");
    for line in heads.split("\r\n") {
        assert!(
            line.bytes().all(|byte| matches!(byte, b' '..=b'~' | b'\t')),
            "{line:?}"
        );
        let known = [
            "From",
            "To",
            "Subject",
            "Date",
            "Message-ID",
            "MIME-Version",
            "Content-",
            "X-",
        ];
        assert!(
            line.starts_with([' ', '\t']) || known.iter().any(|name| line.starts_with(name)),
            "{line:?}"
        );
    }
}
