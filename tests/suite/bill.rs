//! The bill of materials: what is linked into the program, by the build tool's own account. Where something has come in or
//! moved on, `GALLEYPROOF_WRITE_BILL=1 cargo test bill` writes it anew, and the change shows in the diff.

use galleyproof::files::sha256_of;
use serde_json::{Value, json};
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

/// The target of the release; on another one a few system crates differ.
const TARGET: &str = "x86_64-unknown-linux-gnu";

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

/// Name, version, licence and repository of every crate that is linked.
fn linked() -> BTreeSet<(String, String, String, String)> {
    let output = Command::new(std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into()))
        .args([
            "tree",
            "--locked",
            "--edges",
            "normal,no-proc-macro",
            "--target",
            TARGET,
        ])
        .args(["--prefix", "none", "--format", "{p}|{l}|{r}"])
        .current_dir(root())
        .output()
        .expect("the build tool starts");
    assert!(
        output.status.success(),
        "{}",
        String::from_utf8_lossy(&output.stderr)
    );
    let text = String::from_utf8(output.stdout).expect("is text");
    let mut linked = BTreeSet::new();
    for line in text.lines() {
        let [package, licence, repository] = line
            .trim_end_matches(" (*)")
            .splitn(3, '|')
            .collect::<Vec<_>>()
            .try_into()
            .expect("has three parts");
        let mut words = package.split_whitespace();
        let (name, version) = (words.next(), words.next());
        let name = name.expect("has a name").to_owned();
        let version = version
            .expect("has a version")
            .trim_start_matches('v')
            .to_owned();
        if name != env!("CARGO_PKG_NAME") {
            linked.insert((name, version, expression(licence), repository.to_owned()));
        }
    }
    linked
}

/// The licence as an SPDX expression: older crates part alternatives by a stroke.
fn expression(written: &str) -> String {
    let parts: Vec<&str> = written.split('/').map(str::trim).collect();
    parts.join(" OR ")
}

/// The checksum of each crate that the lock file names.
fn checksums() -> BTreeMap<(String, String), String> {
    let lock = fs::read_to_string(root().join("Cargo.lock")).expect("is there");
    let lock: toml::Table = lock.parse().expect("is TOML");
    let packages = lock["package"].as_array().expect("are listed");
    let text = |package: &toml::Value, key: &str| {
        package
            .get(key)
            .and_then(toml::Value::as_str)
            .map(str::to_owned)
    };
    let sum = |package: &toml::Value| {
        Some((
            (text(package, "name")?, text(package, "version")?),
            text(package, "checksum")?,
        ))
    };
    packages.iter().filter_map(sum).collect()
}

/// The fonts, with their licence.
fn fonts() -> Vec<Value> {
    let mut paths: Vec<PathBuf> = walkdir::WalkDir::new(root().join("fonts"))
        .into_iter()
        .map(|entry| entry.expect("can be listed").into_path())
        .filter(|path| path.extension().is_some_and(|ending| ending == "otf"))
        .collect();
    paths.sort();
    let font = |path: &PathBuf| {
        let bytes = fs::read(path).expect("can be read");
        json!({
            "type": "file",
            "name": path.file_name().expect("has a name").to_string_lossy(),
            "hashes": [{"alg": "SHA-256", "content": sha256_of(&bytes)}],
            "licenses": [{"license": {"id": "OFL-1.1"}}],
        })
    };
    paths.iter().map(font).collect()
}

/// The bill in the form of CycloneDX 1.5 (ECMA-424 has its later versions).
fn bill() -> String {
    let sums = checksums();
    let crates = linked()
        .into_iter()
        .map(|(name, version, licence, repository)| {
            let purl = format!("pkg:cargo/{name}@{version}");
            let mut component = json!({
                "type": "library",
                "bom-ref": purl,
                "name": name,
                "version": version,
                "hashes": [{"alg": "SHA-256", "content": sums[&(name.clone(), version.clone())]}],
                "licenses": [{"expression": licence}],
                "purl": purl,
            });
            if !repository.is_empty() {
                component["externalReferences"] = json!([{"type": "vcs", "url": repository}]);
            }
            component
        });
    let bill = json!({
        "bomFormat": "CycloneDX",
        "specVersion": "1.5",
        "version": 1,
        "metadata": {"component": {
            "type": "application",
            "name": env!("CARGO_PKG_NAME"),
            "version": env!("CARGO_PKG_VERSION"),
            "licenses": [{"expression": env!("CARGO_PKG_LICENSE")}],
        }},
        "components": crates.chain(fonts()).collect::<Vec<_>>(),
    });
    let mut text = serde_json::to_string_pretty(&bill).expect("is data");
    text.push('\n');
    text
}

#[test]
fn the_bill_of_materials_is_what_is_linked() {
    let path = root().join("src/cli/bill.cdx.json");
    let now = bill();
    if std::env::var_os("GALLEYPROOF_WRITE_BILL").is_some() {
        fs::write(&path, &now).expect("can be written");
    }
    let kept = fs::read_to_string(&path).unwrap_or_default();
    let differs = kept
        .lines()
        .zip(now.lines())
        .find(|(kept, now)| kept != now);
    assert!(
        kept == now,
        "src/cli/bill.cdx.json is not what is linked now: {differs:?}"
    );
}

#[test]
fn every_component_has_a_licence_that_lets_us_pass_it_on() {
    // Permissive licences, by their SPDX identifiers; of alternatives one is enough.
    const FREE: &[&str] = &[
        "0BSD",
        "Apache-2.0",
        "Apache-2.0 WITH LLVM-exception",
        "BSD-2-Clause",
        "BSD-3-Clause",
        "BSL-1.0",
        "CC0-1.0",
        "ISC",
        "MIT",
        "MIT-0",
        "OFL-1.1",
        "Unicode-3.0",
        "Unlicense",
        "Zlib",
    ];
    for (name, _, licence, _) in linked() {
        let all_of = licence
            .split(" AND ")
            .map(|part| part.trim_matches(['(', ')']));
        for part in all_of {
            let is_free = part.split(" OR ").any(|one| FREE.contains(&one.trim()));
            assert!(is_free, "{name}: {licence}");
        }
    }
}

#[test]
fn the_program_tells_what_it_is_made_of() {
    let run = crate::workspace::Workspace::new();
    let listed = run.run(&["licenses"]).exits(0).stdout();
    for (name, version, licence, _) in linked() {
        assert!(
            listed.contains(&format!("{name} {version}: {licence}\n")),
            "{name}"
        );
    }
    assert!(
        listed.contains("SourceSerif4-Regular.otf: OFL-1.1\n"),
        "{listed}"
    );
    let bill = run.run(&["licenses", "--format", "json"]).exits(0).stdout();
    let bill: Value = serde_json::from_str(&bill).expect("is JSON");
    assert_eq!(bill["bomFormat"], "CycloneDX");
}
