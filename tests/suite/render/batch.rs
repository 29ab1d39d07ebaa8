//! Many documents at once: the same bytes in any order, and one that fails does not stop the others.

use crate::render::{engine, products, sheet_job};
use crate::sample;
use galleyproof::render::documents::pdf;
use galleyproof::render::{Job, Typeset, typeset};
use std::collections::BTreeMap;
use std::sync::Mutex;

fn jobs() -> (tempfile::TempDir, galleyproof::config::Config, Vec<Job>) {
    let folder = tempfile::tempdir().expect("a folder");
    let config = sample::config(folder.path(), "a4", "");
    let jobs = products::all(&config)
        .iter()
        .map(|product| sheet_job(product, &config))
        .collect();
    (folder, config, jobs)
}

#[test]
fn a_batch_gives_the_bytes_that_each_document_gives_alone() {
    let (_folder, config, jobs) = jobs();
    let engine = engine(&config);
    let made = Mutex::new(BTreeMap::new());
    let sink = |document: Typeset| {
        made.lock()
            .expect("no panic")
            .insert(document.path, (document.pdf, document.content_key));
        Ok(())
    };
    let failures =
        typeset(&engine, &jobs, &|job| Ok(Some(job.clone())), &sink).expect("nothing stops it");
    assert_eq!(failures, []);
    let made = made.into_inner().expect("no panic");
    assert_eq!(made.len(), jobs.len());
    for job in &jobs {
        let (bytes, key) = &made[&job.path];
        assert!(
            pdf(&engine, job).expect("no mistake") == *bytes,
            "{}",
            job.path
        );
        assert_eq!(*key, job.content_key(engine.fingerprint()));
    }
}

#[test]
fn a_document_that_fails_is_named_and_the_others_are_made() {
    let (_folder, config, mut jobs) = jobs();
    jobs[1].facts = b"{}".to_vec();
    let engine = engine(&config);
    let made = Mutex::new(Vec::new());
    let sink = |document: Typeset| {
        made.lock().expect("no panic").push(document.path);
        Ok(())
    };
    let failures =
        typeset(&engine, &jobs, &|job| Ok(Some(job.clone())), &sink).expect("nothing stops it");
    assert_eq!(failures.len(), 1);
    assert_eq!(failures[0].path, jobs[1].path);
    assert!(
        failures[0].to_string().contains("report-templates/"),
        "{}",
        failures[0]
    );
    assert_eq!(made.into_inner().expect("no panic").len(), jobs.len() - 1);
}

#[test]
fn what_is_up_to_date_is_passed_over_and_an_error_stops_the_batch() {
    let (_folder, config, jobs) = jobs();
    let engine = engine(&config);
    let never = |_: Typeset| -> anyhow::Result<()> { panic!("there was nothing to do") };
    assert_eq!(
        typeset(&engine, &jobs, &|_| Ok(None), &never).expect("nothing stops it"),
        []
    );
    let full = |_: Typeset| -> anyhow::Result<()> { anyhow::bail!("the disk is full") };
    let error = typeset(&engine, &jobs, &|job| Ok(Some(job.clone())), &full)
        .expect_err("it cannot be written");
    assert!(error.to_string().contains("the disk is full"));
}

#[test]
fn the_content_key_follows_everything_that_decides_the_bytes() {
    let (folder, config, jobs) = jobs();
    let first = engine(&config);
    let key = jobs[0].content_key(first.fingerprint());
    assert_eq!(
        key,
        jobs[0].content_key(engine(&config).fingerprint()),
        "the same again"
    );
    let changed = |change: fn(&mut Job)| {
        let mut job = jobs[0].clone();
        change(&mut job);
        job.content_key(first.fingerprint())
    };
    assert_ne!(key, changed(|job| job.facts.push(b' ')));
    assert_ne!(key, changed(|job| job.ident.push('x')));
    assert_ne!(
        key,
        changed(|job| job.files[0].made_from = Some("other readings".to_owned()))
    );
    let drawn = |picture: &'static [u8]| {
        let mut job = jobs[0].clone();
        job.files[0].made_from = None;
        job.files[0].bytes = picture.to_vec().into();
        job.content_key(first.fingerprint())
    };
    assert_ne!(drawn(b"<svg/>"), drawn(b"<svg />"));
    galleyproof::files::write(
        &folder.path().join("report-templates/style.typ"),
        b"// other",
    )
    .expect("writes");
    assert_ne!(
        key,
        jobs[0].content_key(engine(&config).fingerprint()),
        "a template was replaced"
    );
}
