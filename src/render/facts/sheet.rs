//! A product's results sheet: what is published (`content`), and which revision of it this is (`edition`).

use crate::config::{Attach, Config, Programme};
use crate::files;
use crate::model::decided::JudgedProduct;
use crate::model::registers::Product;
use crate::model::sheet::{
    BlockState, LabelFacts, LabelJudged, Piece, ProductFacts, ProgrammeFacts, Sheet, SheetContent,
    StoryLine, VerdictFacts,
};
use crate::model::verdict::{ProductVerdict, Verdict};
use crate::render::charts::ruler::Ruler;
use crate::render::facts::carried;
use crate::render::facts::check::{CheckFacts, check};
use crate::render::facts::edition::{Edition, Status};
use crate::render::facts::packages;
use crate::render::facts::{Attachment, DocumentFacts, lines};
use crate::render::words::{self, breakable};
use crate::words::{Catalogue, say};
use chrono::NaiveDate;
use serde::Serialize;

/// Everything that the sheet's template may see.
#[derive(Clone, Debug, Serialize)]
pub struct SheetFacts<'a> {
    /// What the PDF says about itself.
    pub document: DocumentFacts,
    /// Which revision it is.
    pub edition: Edition,
    /// What it says.
    pub content: &'a SheetContent,
    /// Where in each file of the provenance the numbers stand, with the file's checksum. A file that is changed elsewhere
    /// changes this, and makes no revision.
    pub places: Vec<String>,
    /// The certificates and photographs in the inbox that bear on the product, a sentence each.
    pub exhibits: Vec<String>,
    /// That the product was tested again since, and what that came to.
    pub later: Option<String>,
    /// When it was issued and amended, and what comes next: it moves with the days, and makes no revision.
    pub story: Vec<StoryLine>,
    /// Where the figures of its sum stand, and its page on the web.
    pub check: CheckFacts,
    /// The files that the PDF carries.
    pub attachments: Vec<Attachment>,
    /// What the PDF carries of the lab's files; empty where it is nothing.
    pub carried_words: String,
    #[serde(skip)]
    pub(crate) latest_day: Option<NaiveDate>,
}

/// The facts of a product's sheet. `made_on` is printed on a proof, where it is known.
pub fn facts<'a>(
    product: &'a JudgedProduct,
    config: &Config,
    made_on: Option<NaiveDate>,
) -> SheetFacts<'a> {
    let Sheet { content, sha256 } = product.sheet();
    let (verdict, words) = (&product.verdict, &*config.words);
    let edition = Edition::of(
        sheet_number(verdict, config),
        sha256,
        &verdict.issued,
        made_on,
        words,
    );
    let document = DocumentFacts::new(
        config,
        &["sheet", "label", "method", "charts"],
        title(verdict, &edition.sheet_number, words),
        format!("{}. {}", content.verdict.words, content.verdict.count),
        vec![edition.sheet_number.clone(), edition.line.clone()],
    );
    let attachments = carried::attachments(verdict, config, &edition.sheet_number);
    let latest_day = edition.day.or_else(|| latest_day(verdict));
    SheetFacts {
        places: broken(words::source::places(verdict, words), 18),
        exhibits: exhibits(product, words),
        later: words::meaning::tested_again(product, config),
        story: story(product, &edition, config),
        check: check(verdict, edition.status == Status::Issued, config),
        carried_words: carried_words(content, &attachments, config),
        content,
        edition,
        document,
        attachments,
        latest_day,
    }
}

/// When a sheet was issued and amended, and what comes next. A proof is not issued; what it amends was.
fn story(product: &JudgedProduct, edition: &Edition, config: &Config) -> Vec<StoryLine> {
    let words = &config.words;
    let mut lines = words::story::issued(&product.verdict.issued, words);
    if edition.status == Status::Proof || product.verdict.verdict == Verdict::NoVerdict {
        let asked_for = config.testing.packages_per_product;
        lines.extend(words::story::next(product, asked_for, words));
    }
    lines
}

/// `TKW-FH-01-1`: short name, product, round.
pub fn sheet_number(verdict: &ProductVerdict, config: &Config) -> String {
    let product_id = &verdict.product.product_id;
    config.programme.sheet_number(product_id, &verdict.round)
}

/// What the sheet of a product says; for everything after the states of publication it is [`JudgedProduct::sheet`].
pub fn sheet(product: &JudgedProduct, config: &Config) -> Sheet {
    let content = content(product, config);
    let json = serde_json::to_vec(&content).expect("facts are text, numbers and lists");
    Sheet {
        sha256: files::sha256_of(&json),
        content,
    }
}

/// The title of the PDF.
fn title(verdict: &ProductVerdict, sheet_number: &str, words: &Catalogue) -> String {
    let product = &verdict.product;
    let (brand, branded) = match product.brand.as_deref() {
        Some(brand) => (brand, "yes"),
        None => ("", "no"),
    };
    words.say(&say::sheet_title(
        &product.name,
        brand,
        sheet_number,
        branded,
    ))
}

/// What the PDF carries of the files that the numbers come from.
fn carried_words(content: &SheetContent, attached: &[Attachment], config: &Config) -> String {
    let sources = attached.iter().filter(|one| one.relationship == "source");
    let carried = match config.publishing.attach {
        Attach::Whole => "files",
        Attach::Excerpt | Attach::None => "cells",
    };
    config.words.say(&match sources.count() {
        _ if content.provenance.is_empty() => say::sources_nothing(),
        0 => return String::new(),
        all if all == content.provenance.len() => say::sources_carried(carried),
        some => say::sources_some(some as u64),
    })
}

/// The first exhibits, and how many more there are; all stand in the case.
fn exhibits(product: &JudgedProduct, words: &Catalogue) -> Vec<String> {
    const NAMED_AT_MOST: usize = 4;
    let all = &product.exhibits;
    let named = all
        .iter()
        .take(NAMED_AT_MOST)
        .map(|one| words::method::exhibit(one, words));
    let more = all.len().saturating_sub(NAMED_AT_MOST) as u64;
    let rest = (more > 0).then(|| words.say(&say::sources_more(more, carried::CASE)));
    broken(named.chain(rest).collect(), 18)
}

/// Sentences whose longest words may be broken after so many letters.
fn broken(said: Vec<String>, letters: usize) -> Vec<String> {
    said.iter().map(|said| breakable(said, letters)).collect()
}

fn content(product: &JudgedProduct, config: &Config) -> SheetContent {
    let (verdict, words) = (&product.verdict, &*config.words);
    let rule = verdict.rule;
    let ruler = Ruler::of(product, words);
    let rulers = ruler.in_words();
    SheetContent {
        programme: ProgrammeFacts::new(&config.programme),
        product: product_facts(verdict, words),
        verdict: verdict_facts(product, config),
        key: if rulers.is_empty() {
            String::new()
        } else {
            ruler.key()
        },
        rulers,
        table: packages::table(
            &verdict.packages,
            rule,
            config.testing.extractions_per_package,
            words,
        ),
        notes: words::packages::remarks(&verdict.packages, rule, config)
            .iter()
            .map(|note| breakable(note, 50))
            .collect(),
        says: words::meaning::says(product, config),
        says_not: words::meaning::says_not(product, words),
        label: label_facts(verdict, config),
        correspondence: words::correspondence::told(verdict, words)
            .iter()
            .map(|said| breakable(said, 30))
            .collect(),
        story: words::story::told(verdict, words),
        shares: words::pictures::shares(product, words),
        portion: words::pictures::portion(verdict, words),
        sum: words::sum::worked(verdict, words).map(|sum| breakable(&sum, 24)),
        method: words::method::method(product, config),
        provenance: broken(words::source::provenance(verdict, &config.words), 18),
        caution: words::method::caution(config),
        imprint: imprint(&config.programme, words),
    }
}

/// Who answers for the sheet, how mistakes are mended, and what it is not for.
fn imprint(programme: &Programme, words: &Catalogue) -> Vec<String> {
    let address = lines(programme.address.as_deref()).join(", ");
    let addressed = if address.is_empty() { "no" } else { "yes" };
    let (director, directed) = match programme.director.as_deref() {
        Some(director) => (director, "yes"),
        None => ("", "no"),
    };
    let name = &programme.name;
    let said = [
        say::imprint(name, director, directed, address, addressed),
        say::imprint_mistakes(),
    ];
    said.iter().map(|said| words.say(said)).collect()
}

fn product_facts(verdict: &ProductVerdict, words: &Catalogue) -> ProductFacts {
    let Product {
        product_id,
        name,
        brand,
        net_content,
        ..
    } = &verdict.product;
    ProductFacts {
        product_id: product_id.clone(),
        round: verdict.round.clone(),
        name: breakable(name, 20),
        name_length: name.chars().count(),
        brand: brand.as_deref().map(|brand| breakable(brand, 45)),
        net_content: net_content.as_deref().map(|net| breakable(net, 40)),
        claim_line: breakable(&claim_line(verdict, words), 50),
    }
}

/// Sold as what, how many packages, when, barcode, certifier.
fn claim_line(verdict: &ProductVerdict, words: &Catalogue) -> String {
    let product = &verdict.product;
    let claim = product.claim.trim();
    let known = if claim.is_empty() { "no" } else { "yes" };
    let (when, dated) = match verdict.bought() {
        Some((first, last)) if first == last => (words.day(first), "day"),
        Some((first, last)) => (words.days(first, last), "days"),
        None => (String::new(), "no"),
    };
    let later = if verdict.round == "1" { "no" } else { "yes" };
    let packages = verdict.packages.len() as u64;
    let mut said = vec![
        say::claim_sold(claim, known),
        say::claim_bought(packages, &verdict.round, later, when, dated),
    ];
    said.extend(product.barcode.as_deref().map(say::claim_barcode));
    let certifier = product.certifier.as_deref();
    said.extend(certifier.map(|name| say::claim_certifier(name.trim_end_matches('.'))));
    let said: Vec<String> = said.iter().map(|said| words.say(said)).collect();
    said.join(" ")
}

fn verdict_facts(product: &JudgedProduct, config: &Config) -> VerdictFacts {
    let verdict = &product.verdict;
    let asked_for = config.testing.packages_per_product;
    let words = &*config.words;
    let beside: Vec<String> = [
        Some(words::verdict::sentence(verdict, config)),
        words::near_limit::beside_the_verdict(product, words),
    ]
    .into_iter()
    .flatten()
    .filter(|said| !said.is_empty())
    .collect();
    VerdictFacts {
        state: match verdict.verdict {
            Verdict::OverLimit => BlockState::Over,
            Verdict::WithinLimit(_) => BlockState::Within,
            Verdict::NoVerdict => BlockState::None,
        },
        words: words::verdict::headline(verdict.verdict, verdict.rule, words),
        count: words::verdict::rests_on(verdict, asked_for, words),
        sentence: breakable(&beside.join(" "), 22),
    }
}

fn label_facts(verdict: &ProductVerdict, config: &Config) -> LabelFacts {
    let review = &verdict.label;
    let statement = review.statement.iter().map(|piece| Piece {
        text: breakable(&piece.text, 30),
        marked: piece.marked,
    });
    let sentences =
        words::label::sentences(review, &verdict.product, config.rule.regime, &config.words);
    let judged = words::label::judged(verdict, &config.words);
    LabelFacts {
        judged: LabelJudged {
            words: breakable(&judged.words, 30),
            ..judged
        },
        statement: statement.collect(),
        length: review
            .statement
            .iter()
            .map(|piece| piece.text.chars().count())
            .sum(),
        precautionary: review
            .precautionary
            .iter()
            .map(|said| breakable(&config.words.say(&say::quoted(said)), 30))
            .collect(),
        sentences: sentences.iter().map(|said| breakable(said, 30)).collect(),
    }
}

/// The latest date that a sheet's facts hold.
pub fn latest_day(verdict: &ProductVerdict) -> Option<NaiveDate> {
    let sent = verdict
        .packages
        .iter()
        .filter_map(|package| package.pair.package.sent_on)
        .max();
    let told = verdict.followups.iter().map(|followup| followup.on).max();
    let issued = verdict
        .issued
        .iter()
        .map(|revision| revision.issued_on)
        .max();
    let bought = verdict.bought().map(|(_, last)| last);
    [sent, told, issued, bought, verdict.tested_on()]
        .into_iter()
        .flatten()
        .max()
}
