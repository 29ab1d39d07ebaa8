//! What the templates of the newsletter may see: what is new since the last issue, and the totals.

use crate::config::{Config, Paper};
use crate::model::decided::{Decided, JudgedProduct};
use crate::model::followup::FollowUpState;
use crate::model::publication::Audience;
use crate::model::sheet::ProgrammeFacts;
use crate::model::verdict::Verdict;
use crate::render::charts::Chart;
use crate::render::charts::bands::bands;
use crate::render::charts::{products, strip};
use crate::render::facts::DocumentFacts;
use crate::render::facts::bars::{Bar, KeyEntry, bars, figures_key};
use crate::render::facts::sheet::sheet_number;
use crate::render::facts::summary::latest_day;
use crate::render::listing::{self, Line};
use crate::render::tally::{self, Tally};
use crate::render::terms::{Terms, terms};
use crate::render::words::method::yes_no;
use crate::render::words::on_labels::{self, OnLabels};
use crate::render::words::{breakable, digest as words, method, publication};
use crate::render::{Job, JobFile, addresses, chart_name};
use crate::words::say;
use anyhow::Result;
use chrono::NaiveDate;
use serde::Serialize;

/// More new products than this are drawn by food group, and the list names those that a reader must know of.
const SHOWN_AT_MOST: usize = 42;

/// Products that a mail lists: with more, some mail programs cut it off.
const MAILED_AT_MOST: usize = 60;

/// Everything that the newsletter prints, charts apart.
#[derive(Clone, Debug, Serialize)]
pub struct DigestFacts {
    /// The document's own data.
    pub document: DocumentFacts,
    /// The programme.
    pub programme: ProgrammeFacts,
    /// Day of making, where the run was given one.
    pub made_on: Option<String>,
    /// The newsletter's name at the head of its paper.
    pub name: String,
    /// The first line of its plain text.
    pub first_line: String,
    /// The words of the limit.
    pub terms: Terms,
    /// What is new, in one sentence.
    pub headline: String,
    /// How it was done, and what the limit is.
    pub how: String,
    /// What a result is, and what it is not.
    pub snapshot: String,
    /// New products with their packages on the scale.
    pub pictures: Vec<Picture>,
    /// What the marks mean.
    pub note: String,
    /// What the list leaves out.
    pub listed: Option<String>,
    /// Whether the pictures have a row a food group, and the list names products instead.
    pub grouped: bool,
    /// The products that are listed.
    pub products: Vec<DigestLine>,
    /// So many of them stand in a mail.
    pub mail_rows: usize,
    /// That a mail lists the first of them alone, where it does.
    pub mail_listed: Option<String>,
    /// What the inks of the packages' figures mean in a mail.
    pub figures_key: Vec<KeyEntry>,
    /// What the makers say.
    pub makers: Vec<MakerLine>,
    /// Whose makers have said nothing so far, and whose are still to be told.
    pub silent: Option<String>,
    /// What the labels say; none where nothing is new.
    pub labels: Option<OnLabels>,
    /// Published sheets that are replaced.
    pub amended: Vec<String>,
    /// That it is not for publication, where it is not.
    pub proof: Option<String>,
    /// What a mail of it is about.
    pub subject: String,
    /// Accusations that were taken back or made since: these come first.
    pub corrections: Vec<String>,
    /// Published sheets that do not stand any more.
    pub under_revision: Vec<String>,
    /// The programme so far, in a sentence; none where there is nothing.
    pub totals: Option<String>,
    /// The programme so far, by band, in a mail.
    pub bars: Vec<Bar>,
    /// The same on paper.
    pub bands_picture: Picture,
    /// What the greys of the bars mean.
    pub bands_note: String,
    /// What every document says last.
    pub caution: String,
    /// The programme's address, where a browser could open it.
    pub site: Option<String>,
    /// The drawings, in the order of their numbers.
    #[serde(skip)]
    pub charts: Vec<Chart>,
    /// The PDF's own date.
    #[serde(skip)]
    pub date: NaiveDate,
}

/// A chart as a template places it.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Picture {
    /// The file that a page reads.
    pub file: String,
    /// The stem of its files beside the newsletter.
    pub name: String,
    /// Its message in words.
    pub alt: String,
}

/// A new product.
#[derive(Clone, Debug, Serialize)]
pub struct DigestLine {
    /// The number of its sheet.
    pub sheet: String,
    /// The same with its word, on a line of its own.
    pub sheet_line: String,
    /// The same below a name.
    pub sheet_within: String,
    /// Its results, its verdict and what its label comes to.
    pub line: Line,
    /// Why it has no verdict, where it has none.
    pub reasons: Vec<String>,
    /// That the food was tested again later, where it was.
    pub again: Option<String>,
    /// Where the page of its sheet lies on the programme's site, where it is published and the site's address is known.
    pub page: Option<String>,
}

/// What one maker says.
#[derive(Clone, Debug, Serialize)]
pub struct MakerLine {
    /// Brand, or the product's name where there is none.
    pub brand: String,
    /// The number of the product's sheet.
    pub sheet: String,
    /// The same with its word, in brackets.
    pub sheet_within: String,
    /// The reply as it was written, and when.
    pub text: String,
}

/// The facts of the newsletter, with its charts.
///
/// New is every product whose sheet says something else than its last published revision.
///
/// # Errors
/// Where a chart cannot be drawn.
pub fn digest(
    decided: &Decided,
    config: &Config,
    made_on: Option<NaiveDate>,
) -> Result<DigestFacts> {
    let terms = terms(&decided.products, config);
    let in_words = &config.words;
    let new = new_products(&decided.products, made_on);
    let shown = shown(&new);
    // What replaces a published sheet is an amendment, and no new product.
    let is_amended = |product: &&JudgedProduct| {
        words::replaced(&product.verdict, !product.publication.is_public()).is_some()
    };
    let (amended, first): (Vec<&JudgedProduct>, Vec<&JudgedProduct>) =
        new.iter().copied().partition(is_amended);
    let (new_tally, all_tally) = (tally::tally(first), tally::tally(&decided.products));
    let rows = tally::bands(decided, &all_tally, &config.words);
    let mut charts = new_charts(&new, config.programme.paper, &terms)?;
    charts.push(bands(&rows, &terms)?);
    let mut pictures: Vec<Picture> = charts.iter().enumerate().map(picture).collect();
    let bands_picture = pictures.pop().expect("the bars were drawn last");
    let number = |product: &JudgedProduct| number_in_text(product, config);
    let (makers, silent) = makers(&new, config);
    let products: Vec<DigestLine> = shown
        .iter()
        .map(|product| digest_line(product, decided, config, &terms))
        .collect();
    let mail_rows = products.len().min(MAILED_AT_MOST);
    let all_new = first_are_all(&new_tally, &all_tally);
    let any_result = !decided.products.is_empty();
    let is_proof = decided.audience == Audience::Programme;
    let headline = words::headline(&new_tally, amended.len(), any_result, &terms);
    let programme = ProgrammeFacts::new(&config.programme);
    let programme_name = programme.name.clone();
    Ok(DigestFacts {
        document: document(config, &headline),
        name: in_words.say(&say::newsletter_name(&programme.short_name)),
        first_line: in_words.say(&say::newsletter_first_line(&programme.name)),
        programme,
        made_on: made_on.map(|day| in_words.day(day)),
        how: words::how(config, &terms),
        snapshot: words::snapshot(config, &terms),
        pictures,
        note: words::note(&terms),
        listed: (shown.len() < new.len()).then(|| words::listed(&terms)),
        grouped: new.len() > SHOWN_AT_MOST,
        mail_listed: (mail_rows < products.len()).then(|| words::first_of(mail_rows, in_words)),
        mail_rows,
        figures_key: figures_key(&terms),
        products,
        makers,
        silent,
        labels: (!new.is_empty()).then(|| on_labels::of_all(&new, in_words)),
        amended: amended
            .iter()
            .filter_map(|product| {
                let is_proof = !product.publication.is_public();
                words::amended(&product.verdict, &number(product), is_proof, in_words)
            })
            .collect(),
        proof: is_proof.then(|| in_words.say(&say::newsletter_proof())),
        subject: in_words.say(&say::newsletter_subject(
            yes_no(is_proof),
            &programme_name,
            &headline,
        )),
        corrections: new
            .iter()
            .filter_map(|product| publication::corrected(product, &number(product), in_words))
            .collect(),
        under_revision: decided
            .under_revision
            .iter()
            .map(|one| one.said.clone())
            .collect(),
        totals: Some(words::totals(&all_tally, all_new, decided.with_lab, &terms))
            .filter(|said| !said.is_empty()),
        bars: bars(&rows, &terms),
        bands_picture,
        bands_note: words::bands(&terms),
        caution: method::caution(config),
        site: addresses::home(&config.programme),
        charts,
        date: made_on.unwrap_or_else(|| latest_day(decided)),
        headline,
        terms,
    })
}

/// A product of the list.
fn digest_line(
    product: &JudgedProduct,
    decided: &Decided,
    config: &Config,
    terms: &Terms,
) -> DigestLine {
    let words = &config.words;
    let number = |product: &JudgedProduct| number_in_text(product, config);
    let line = listing::line(product, terms);
    let is_public = product.publication.is_public();
    DigestLine {
        sheet: breakable(&sheet_number(&product.verdict, config), 14),
        sheet_line: words.say(&say::newsletter_sheet(number(product))),
        sheet_within: words.say(&say::newsletter_sheet_within(number(product))),
        reasons: match product.verdict.verdict {
            Verdict::NoVerdict => line.reasons.clone(),
            Verdict::OverLimit | Verdict::WithinLimit(_) => Vec::new(),
        },
        again: later_round(product, decided)
            .map(|later| words::again(&later.verdict, &number(later), words)),
        page: addresses::address_of(&product.verdict.stem(), &config.programme)
            .filter(|_| is_public),
        line,
    }
}

/// The number of its sheet, as it stands in a sentence.
fn number_in_text(product: &JudgedProduct, config: &Config) -> String {
    breakable(&sheet_number(&product.verdict, config), 24)
}

/// The last round in which a food was tested after this one.
fn later_round<'a>(product: &JudgedProduct, decided: &'a Decided) -> Option<&'a JudgedProduct> {
    let own = product.verdict.day()?;
    let same_food = decided.products.iter().filter(|other| {
        other.verdict.product.product_id == product.verdict.product.product_id
            && other.publication.is_reported()
            && other.verdict.day().is_some_and(|day| day > own)
    });
    same_food.max_by_key(|other| other.verdict.day())
}

/// Whether nothing was published before: then the totals are those of what is new.
fn first_are_all(new: &Tally, all: &Tally) -> bool {
    new.products() == all.products()
}

/// The newsletter as a job for the typesetter.
///
/// # Errors
/// Where the facts cannot be written as JSON.
pub fn job(facts: &DigestFacts) -> Result<Job> {
    Ok(Job {
        path: "newsletter/digest.pdf".to_owned(),
        template: "digest.typ",
        one_page: false,
        ident: format!("{} digest {}", facts.programme.name, facts.date),
        date: facts.date,
        facts: serde_json::to_vec(facts)?,
        files: JobFile::charts(facts.charts.iter().map(|chart| chart.svg.as_str())),
    })
}

fn document(config: &Config, headline: &str) -> DocumentFacts {
    let words = &config.words;
    let programme = config.programme.name.as_str();
    let keywords = words.say(&say::newsletter_keywords());
    DocumentFacts::new(
        config,
        &["newsletter"],
        words.say(&say::newsletter_title(programme, headline)),
        words.say(&say::newsletter_of(programme)),
        keywords.split("; ").map(str::to_owned).collect(),
    )
}

/// What a reader of the last newsletter has not seen: the sheets that are issued on the day of the run; before an issue
/// those that are not yet published as they now stand; and where there are none, what the last issue brought.
///
/// Over the limit first, then undecided, then within it, and among these by brand and name.
fn new_products(all: &[JudgedProduct], made_on: Option<NaiveDate>) -> Vec<&JudgedProduct> {
    let issued_on =
        |product: &JudgedProduct| product.verdict.issued.last().map(|last| last.issued_on);
    let last_issue = all.iter().filter_map(issued_on).max();
    let of_last_issue =
        |product: &&JudgedProduct| last_issue.is_some() && issued_on(product) == last_issue;
    let mut new: Vec<&JudgedProduct> = all
        .iter()
        .filter(|product| product.publication.is_reported() && !product.publication.is_public())
        .collect();
    if new.is_empty() || (last_issue.is_some() && last_issue == made_on) {
        new = all.iter().filter(of_last_issue).collect();
    }
    new.sort_by_key(|product| {
        let verdict = match product.verdict.verdict {
            Verdict::OverLimit => 0,
            Verdict::NoVerdict => 1,
            Verdict::WithinLimit(_) => 2,
        };
        (verdict, listing::by_brand(product))
    });
    new
}

fn shown<'a>(new: &[&'a JudgedProduct]) -> Vec<&'a JudgedProduct> {
    let all = new.len() <= SHOWN_AT_MOST;
    let is_shown = |product: &&JudgedProduct| {
        let is_within = matches!(product.verdict.verdict, Verdict::WithinLimit(_));
        all || !is_within || product.verdict.notify_maker
    };
    new.iter().copied().filter(is_shown).collect()
}

fn picture((number, chart): (usize, &Chart)) -> Picture {
    Picture {
        file: chart_name(number + 1),
        name: chart.name.clone(),
        alt: chart.alt.clone(),
    }
}

/// What the makers who were to be told have said, and what is to be said of the others.
fn makers(products: &[&JudgedProduct], config: &Config) -> (Vec<MakerLine>, Option<String>) {
    let (mut makers, mut asked, mut to_tell) = (Vec::new(), Vec::new(), Vec::new());
    for product in products
        .iter()
        .filter(|product| product.verdict.notify_maker)
    {
        let of = &product.verdict.product;
        let brand = of.brand.clone().unwrap_or_else(|| of.name.clone());
        let sheet = number_in_text(product, config);
        let named = || breakable(&of.name, 28);
        let sheet_within = config.words.say(&say::newsletter_sheet_within(&sheet));
        match words::reply(&product.verdict, &config.words) {
            Some(text) => makers.push(MakerLine {
                brand,
                sheet,
                sheet_within,
                text,
            }),
            None if product.follow_up == FollowUpState::ToSend => to_tell.push(named()),
            None => asked.push(named()),
        }
    }
    (makers, words::silent(&asked, &to_tell, &config.words))
}

/// A row a product; of many products a row a food group.
fn new_charts(new: &[&JudgedProduct], paper: Paper, terms: &Terms) -> Result<Vec<Chart>> {
    if new.len() <= SHOWN_AT_MOST {
        return products::products("new-products", new, paper, terms);
    }
    let new: Vec<JudgedProduct> = new.iter().map(|product| (*product).clone()).collect();
    let groups = listing::ChartedGroups::of(&new);
    let rows = strip::rows(&new, groups.names(), |product| groups.name_of(product));
    Ok(strip::strip(&rows, terms)?.charts)
}
