//! The schema that goes out with `results.json` names what stands there: no key more, no key fewer, no other word.

use crate::workspace::Workspace;
use galleyproof::model::results::Results;
use serde_json::Value;
use std::collections::BTreeSet;

const SCHEMA: &str = include_str!("../../src/save/results.schema.json");

/// What a part of the schema says of the parts of a value; `faults` names each difference by its path.
fn compare(value: &Value, schema: &Value, root: &Value, path: &str, faults: &mut Vec<String>) {
    if let Some(pointer) = schema["$ref"].as_str() {
        let part = pointer.trim_start_matches('#');
        let found = root.pointer(part);
        let found = found.unwrap_or_else(|| panic!("{path}: nothing at {pointer}"));
        return compare(value, found, root, path, faults);
    }
    if let Some(choices) = schema["anyOf"].as_array() {
        let is_null = |choice: &&Value| choice["type"] == "null";
        if value.is_null() && choices.iter().any(|choice| is_null(&choice)) {
            return;
        }
        let choice = choices.iter().find(|choice| !is_null(choice));
        return compare(
            value,
            choice.expect("one that is not null"),
            root,
            path,
            faults,
        );
    }
    if let Some(words) = schema["enum"].as_array() {
        if !words.contains(value) {
            faults.push(format!("{path}: the schema has no {value}"));
        }
        return;
    }
    if !of_a_type(value, &schema["type"]) {
        faults.push(format!("{path}: {value} is no {}", schema["type"]));
    }
    match value {
        Value::Object(fields) => {
            let Some(properties) = schema["properties"].as_object() else {
                return;
            };
            let there: BTreeSet<&str> = fields.keys().map(String::as_str).collect();
            let known: BTreeSet<&str> = properties.keys().map(String::as_str).collect();
            let needed = schema["required"].as_array().into_iter().flatten();
            let needed: BTreeSet<&str> = needed.filter_map(Value::as_str).collect();
            if there != known || there != needed {
                faults.push(format!(
                    "{path}: keys {there:?}, in the schema {known:?}, required {needed:?}"
                ));
            }
            for (key, field) in fields {
                if let Some(part) = properties.get(key) {
                    compare(field, part, root, &format!("{path}.{key}"), faults);
                }
            }
        }
        Value::Array(items) => {
            for (at, item) in items.iter().enumerate() {
                compare(
                    item,
                    &schema["items"],
                    root,
                    &format!("{path}[{at}]"),
                    faults,
                );
            }
        }
        _ => {}
    }
}

fn of_a_type(value: &Value, types: &Value) -> bool {
    let is = |name: &str| match name {
        "null" => value.is_null(),
        "boolean" => value.is_boolean(),
        "integer" => value.is_u64() || value.is_i64(),
        "number" => value.is_number(),
        "string" => value.is_string(),
        "array" => value.is_array(),
        "object" => value.is_object(),
        other => panic!("{other}"),
    };
    match types {
        Value::String(name) => is(name),
        Value::Array(names) => names.iter().filter_map(Value::as_str).any(is),
        Value::Null => true,
        other => panic!("{other}"),
    }
}

fn faults(results: &Value) -> Vec<String> {
    let schema: Value = serde_json::from_str(SCHEMA).expect("is JSON");
    let mut faults = Vec::new();
    compare(results, &schema, &schema, "", &mut faults);
    faults
}

/// A fermented food by both kinds of assay, and a product whose claim no rule knows.
fn two_series() -> Value {
    let workspace = Workspace::new();
    workspace.with(
        "registers/products.csv",
        "product_id,name,claim,processing\nP1,Harbour Miso,gluten-free,fermented\nP2,Lantern Rolls,wheat-free,none\n",
    );
    workspace.with(
        "registers/packages.csv",
        "package_code,product_id\nA1,P1\nB1,P2\n",
    );
    workspace.with(
        "inbox/a.csv",
        "Sample,Extraction,Assay,Gluten (ppm)\nA1,1,sandwich,<5\nA1,2,sandwich,<5\n\
         A1,1,competitive,34\nA1,2,competitive,35\nB1,1,sandwich,90\nB1,2,sandwich,95\n",
    );
    workspace.results()
}

#[test]
fn the_schema_names_all_that_the_results_hold() {
    let both = two_series();
    assert!(both["products"][0]["packages"][0]["other_series"].is_object());
    for results in [both, Workspace::demo().results()] {
        let faults = faults(&results);
        assert!(faults.is_empty(), "{}", faults.join("\n"));
    }
}

#[test]
fn what_the_schema_does_not_know_is_noticed() {
    let mut results = two_series();
    results["products"][0]["packages"][0]["other_series"]["state"] = "perhaps".into();
    results["products"][1]["claim"]["more"] = 1.into();
    results["products"][1]["verdict"] = Value::Null;
    assert_eq!(faults(&results).len(), 3);
}

/// The file is written and read back by one set of types, so that nothing of it can be lost on the way.
#[test]
fn what_is_written_is_read_back_whole() {
    let demo = Workspace::demo();
    demo.run(&["-q", "run"]).exits(1);
    let written = demo.text("out/data/results.json");
    let read: Results<'static> = serde_json::from_str(&written).expect("reads");
    assert_eq!(read.products.len(), 31);
    let again = serde_json::to_string_pretty(&read).expect("writes");
    assert!(written == format!("{again}\n"), "they differ");
}
