//! The messages of letters, forms and plans in German and Spanish: none that was left in English, and the right law's terms.

use super::states;
use galleyproof::model::language::Language;
use galleyproof::words::{Catalogue, messages, say};

/// Words that stand in nearly every English sentence of these documents, and in no German or Spanish one.
const ENGLISH: &[&str] = &[
    " the ",
    " we ",
    " which ",
    " your ",
    " with ",
    " is ",
    " package",
    "sheet ",
    "please",
    "result of",
];

#[test]
fn no_message_to_makers_and_labs_was_left_in_english() {
    for language in [Language::German, Language::Spanish] {
        let catalogue = Catalogue::built_in(language);
        let groups = ["letters", "lab", "plan"];
        for message in messages().filter(|message| groups.contains(&message.group)) {
            for said in states(&catalogue, message) {
                let folded = format!(" {} ", said.to_lowercase());
                for word in ENGLISH {
                    assert!(!folded.contains(word), "{}: {said}", message.id);
                }
            }
        }
    }
}

#[test]
fn a_letters_limit_is_worded_as_the_law_words_it_in_that_language() {
    let limit = |language| {
        let catalogue = Catalogue::built_in(language);
        catalogue.say(&say::letter_limit("passes", "20 mg/kg", "eu"))
    };
    assert_eq!(
        limit(Language::German),
        "Höchstgehalt 20 mg/kg (Verordnung (EU) Nr. 828/2014)"
    );
    assert_eq!(
        limit(Language::Spanish),
        "Contenido de gluten que no sobrepase 20 mg/kg (Reglamento (UE) n.º 828/2014)"
    );
}

/// What stands where an address would is read by old mail programs, too.
#[test]
fn what_stands_in_place_of_an_address_is_plain() {
    for (language, tag) in Language::ALL {
        let catalogue = Catalogue::built_in(*language);
        let gaps = ["yes", "no"].map(say::mail_no_maker);
        for said in gaps.iter().chain([&say::lab_mail_no_address()]) {
            let gap = catalogue.say(said);
            assert!(
                gap.is_ascii() && !gap.contains([',', ';', '<']),
                "{tag}: {gap}"
            );
        }
    }
}
