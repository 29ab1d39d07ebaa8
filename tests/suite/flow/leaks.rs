//! Of what is not published nothing stands in what may be given to anyone: random programmes, issued again and again.

use crate::flow::public::{squeezed, texts};
use crate::workspace::Workspace;
use serde_json::Value;
use std::fmt::Write;

/// How many programmes; GALLEYPROOF_PROGRAMMES asks for more.
const PROGRAMMES: u64 = 4;

/// Numbers that look random and are the same on every machine (splitmix64).
struct Dice(u64);

impl Dice {
    fn roll(&mut self, sides: u64) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        (z ^ (z >> 31)) % sides
    }

    /// A word that stands nowhere by chance.
    fn word(&mut self) -> String {
        let letters: Vec<char> = "bcdfghjklmnpqrstvwxz".chars().collect();
        let word: String = (0..7)
            .map(|_| letters[self.roll(letters.len() as u64) as usize])
            .collect();
        word[..1].to_uppercase() + &word[1..]
    }
}

/// A product with everything that would give it away.
struct Made {
    id: String,
    name: String,
    brand: String,
    maker: String,
    email: String,
    ingredient: String,
    note: String,
    codes: Vec<String>,
    figures: Vec<String>,
}

/// A figure that stands nowhere by chance: five digits behind the point.
fn figure(whole: u64, dice: &mut Dice) -> String {
    format!("{whole}.{}{:04}", 1 + dice.roll(9), 1000 + dice.roll(9000))
}

fn made(dice: &mut Dice) -> Made {
    // Most are within the limit, some are over it.
    let level = if dice.roll(3) == 0 { 27 } else { 9 };
    Made {
        id: dice.word().to_uppercase(),
        name: format!("{} Loaf", dice.word()),
        brand: dice.word(),
        maker: dice.word(),
        email: format!("{}@maker.example", dice.word().to_lowercase()),
        ingredient: dice.word(),
        note: dice.word(),
        codes: (0..3).map(|_| dice.word().to_uppercase()).collect(),
        figures: (0..6).map(|_| figure(level, dice)).collect(),
    }
}

/// How far a product has come.
fn reported(dice: &mut Dice) -> usize {
    match dice.roll(5) {
        0 => 0,
        1 => 2 * (1 + dice.roll(2) as usize),
        _ => 6,
    }
}

fn write(workspace: &Workspace, products: &[Made], rows: &[usize], told: &str) {
    let mut register = "product_id,name,brand,maker,maker_email,claim,ingredients\n".to_owned();
    let mut packages = "package_code,product_id,sent_on\n".to_owned();
    let mut files = vec!["Tested by Zzanalystname\nSample,Extraction,Gluten (ppm)\n".to_owned(); 2];
    for (number, (made, rows)) in products.iter().zip(rows).enumerate() {
        let Made {
            id,
            name,
            brand,
            maker,
            email,
            ingredient,
            ..
        } = made;
        writeln!(
            register,
            "{id},{name},{brand},{maker},{email},gluten-free,\"Water, {ingredient}, salt.\""
        )
        .expect("text");
        for code in &made.codes {
            writeln!(packages, "{code},{id},2031-02-01").expect("text");
        }
        for row in 0..*rows {
            let (code, figure) = (&made.codes[row / 2], &made.figures[row]);
            writeln!(files[number % 2], "{code},{},{figure}", row % 2 + 1).expect("text");
        }
    }
    workspace.with("registers/products.csv", register);
    workspace.with("registers/packages.csv", packages);
    workspace.with("registers/followups.csv", told);
    workspace.with("inbox/one.csv", &files[0]);
    workspace.with("inbox/two.csv", &files[1]);
}

/// What gives a product away; what is under revision is named, and no more.
fn secrets(made: &Made, is_named: bool) -> Vec<String> {
    let mut secrets = vec![
        made.maker.clone(),
        made.email.clone(),
        made.ingredient.clone(),
    ];
    if !is_named {
        secrets.extend([made.id.clone(), made.name.clone(), made.brand.clone()]);
    }
    secrets.extend(made.codes.iter().cloned());
    secrets.extend(made.figures.iter().cloned());
    secrets
}

#[test]
fn of_what_is_held_nothing_stands_in_what_is_public() {
    let asked = std::env::var("GALLEYPROOF_PROGRAMMES").ok();
    let programmes = asked.and_then(|n| n.parse().ok()).unwrap_or(PROGRAMMES);
    let (mut held, mut published, mut revised) = (0, 0, 0);
    for seed in 1..=programmes {
        let dice = &mut Dice(seed);
        let workspace = Workspace::new();
        let mut products: Vec<Made> = (0..5).map(|_| made(dice)).collect();
        let mut rows: Vec<usize> = products.iter().map(|_| reported(dice)).collect();
        (rows[0], rows[1]) = (6, 6);
        let mut told = "product_id,round,on,kind,due_on,statement,note\n".to_owned();
        for made in products.iter().filter(|_| dice.roll(2) == 0) {
            writeln!(told, "{},1,2031-03-01,notice-sent,,,{}", made.id, made.note).expect("text");
        }
        for (day, bag) in [("2031-03-10", "2031-03-10"), ("2031-04-20", "2031-04-20")] {
            write(&workspace, &products, &rows, &told);
            let issue = ["issue", "--date", day, "--reason", "Reported anew"];
            let run = workspace.run(&issue);
            let public = workspace.path(&format!("archive/{bag}/data/public"));
            if !public.exists() {
                assert!(
                    run.stdout().contains("Nothing to issue"),
                    "{}",
                    run.stderr()
                );
                continue;
            }
            let check = workspace.run(&["check", "--date", day, "--format", "json"]);
            let results: Value = serde_json::from_str(&check.stdout()).expect("is JSON");
            // What stands in the outputs for a web server is public as well.
            let site = texts(&workspace.path("out/web"));
            assert!(site.iter().any(|(path, _)| path == "index.html"));
            let texts = [texts(&public), site].concat();
            let issued = workspace.text("registers/issued.csv");
            for made in &products {
                let of = |product: &&Value| product["product_id"] == made.id.as_str();
                let product = results["products"].as_array().expect("a list");
                let product = product.iter().find(of);
                let is_public =
                    product.is_some_and(|product| product["publication"]["state"] == "published");
                let was_issued = issued.contains(&format!(",{},", made.id));
                let secrets = match (is_public, was_issued) {
                    (true, _) => {
                        published += 1;
                        vec![made.note.clone(), made.email.clone()]
                    }
                    (false, was_issued) => {
                        held += 1;
                        revised += u32::from(was_issued);
                        [secrets(made, was_issued), vec![made.note.clone()]].concat()
                    }
                };
                for (path, text) in &texts {
                    for secret in secrets.iter().chain(&["Zzanalystname".to_owned()]) {
                        assert!(
                            !text.contains(&squeezed(secret)),
                            "programme {seed}, {day}: {path} has {secret} of {}, which is {:?}",
                            made.id,
                            product.map(|product| &product["publication"])
                        );
                    }
                }
            }
            workspace
                .run(&["verify", &format!("archive/{bag}")])
                .exits(0);
            // A month later more is reported, and one product reads otherwise, and one cannot be read.
            for rows in &mut rows {
                *rows = (*rows + 2).min(6);
            }
            products[1].figures[0] = format!("about {}", figure(9, dice));
            products[0].figures[0] = figure(31, dice);
            products[0].figures[1] = figure(31, dice);
            rows[0] = 4;
        }
    }
    assert!(
        held > 0 && published > 0 && revised > 0,
        "{held}, {published}, {revised}"
    );
}
