//! What must hold of any plate: a curve that rises or falls throughout, or none; and an end, whatever stands in the cells.

use galleyproof::config::Config;
use galleyproof::gather::books;
use galleyproof::gather::codes::Codes;
use galleyproof::gather::lab_file::{self, Taken};
use galleyproof::gather::record::Reports;
use galleyproof::measure::curve::{self, Level, Reading, rises, wrong_steps};
use galleyproof::measure::measure;
use galleyproof::model::place::LabFile;
use galleyproof::model::plate::{Absorbance, Concentration, CurveKind, Weights};
use galleyproof::model::problem::{Code, Problems};
use proptest::prelude::*;
use proptest::sample::select;
use std::path::Path;
use std::sync::Arc;

/// Standards that only rise or only fall: steps of concentration and of absorbance.
fn monotone() -> impl Strategy<Value = Vec<Level>> {
    let steps = prop::collection::vec((0.5..40.0_f64, 0.001..0.8_f64), 3..9);
    (0.0..0.3_f64, any::<bool>(), any::<bool>(), steps).prop_map(|(start, zero, falls, steps)| {
        let first = if zero { 0.0 } else { 1.0 };
        let mut levels = vec![(first, start)];
        for (wider, higher) in steps {
            let (x, y) = levels[levels.len() - 1];
            levels.push((x + wider, y + higher));
        }
        let top = levels[levels.len() - 1].1;
        let level = |(x, y): (f64, f64)| Level {
            concentration: Concentration(x),
            absorbance: Absorbance(if falls { top + 0.1 - y } else { y }),
        };
        levels.into_iter().map(level).collect()
    })
}

fn kinds() -> impl Strategy<Value = (CurveKind, Weights)> {
    select(vec![
        (CurveKind::FourParameters, Weights::None),
        (CurveKind::FourParameters, Weights::InverseSquare),
        (CurveKind::FiveParameters, Weights::None),
        (CurveKind::CubicSpline, Weights::None),
        (CurveKind::PointToPoint, Weights::None),
    ])
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 300, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn what_only_rises_gives_a_curve_that_does_or_none(levels in monotone(), kind in kinds()) {
        let Ok(curve) = curve::fit(kind.0, kind.1, &levels) else {
            prop_assert!(kind.0 != CurveKind::PointToPoint, "straight lines go through any such standards");
            return Ok(());
        };
        prop_assert_eq!(wrong_steps(&levels), 0);
        let drawn = curve.told().drawn;
        let along = |y: f64| if rises(&levels) { y } else { -y };
        for pair in drawn.windows(2) {
            prop_assert!(pair[0].0 < pair[1].0);
            prop_assert!(along(pair[1].1.0) >= along(pair[0].1.0) - 1e-9, "{:?}", pair);
        }
        // What is read back is what was drawn, and nothing is read beyond the standards.
        let above = levels.iter().map(|level| level.concentration.0).filter(|x| *x > 0.0);
        let (low, high) = above.fold((f64::INFINITY, 0.0_f64), |(low, high), x| (low.min(x), high.max(x)));
        for (x, y) in drawn.iter().filter(|(x, _)| x.0 > low && x.0 < high) {
            match curve.read(*y) {
                Reading::At(found) => {
                    let again = curve.value(found);
                    prop_assert!((again.0 - y.0).abs() < 1e-6, "{:?} {:?} {:?}", x, y, again);
                    prop_assert!(found.0 >= low * (1.0 - 1e-6) && found.0 <= high * (1.0 + 1e-6));
                }
                // At the very ends a flat curve says the same of many concentrations.
                other => prop_assert!((y.0 - curve.value(Concentration(low)).0).abs() < 1e-6
                    || (y.0 - curve.value(Concentration(high)).0).abs() < 1e-6, "{:?}", other),
            }
        }
    }

    #[test]
    fn any_cells_come_to_an_end(cells in prop::collection::vec(prop::collection::vec(cell(), 1..7), 2..30), grid in any::<bool>()) {
        let rows: Vec<String> = cells.iter().enumerate().map(|(index, cells)| {
            let label = if grid { char::from(b'A' + (index % 9) as u8).to_string() } else { format!("A{}", index % 13) };
            format!("{label},{}", cells.join(","))
        }).collect();
        let heading = if grid { ",1,2,3,4,5,6" } else { "Well,OD,Type,Sample,Conc,Extraction,Dilution" };
        let half = rows.len() / 2;
        let text = format!("{heading}\n{}\n{heading}\n{}\n", rows[..half].join("\n"), rows[half..].join("\n"));
        let (taken, config) = take(&text);
        for plate in &taken.plates {
            for sample in &plate.samples {
                prop_assert!(sample.package_code == "A1" || sample.package_code == "TK-01");
                prop_assert!(sample.dilution.is_finite() && sample.dilution > 0.0);
            }
        }
        for kind in [CurveKind::FiveParameters, CurveKind::CubicSpline, CurveKind::PointToPoint] {
            let mut config = config.clone();
            config.plate.curve = kind;
            let mut problems = Problems::default();
            for measured in measure(taken.plates.clone(), (&taken.extractions, &[]), &config, &mut problems) {
                prop_assert!(measured.checks.iter().all(|check| check.value.is_none_or(f64::is_finite)));
            }
            for problem in problems.sorted() {
                let known = [Code::PlateUnreadable, Code::PlateQuality, Code::PlateDiffers];
                prop_assert!(known.contains(&problem.code));
                prop_assert!(problem.place.row.is_some());
            }
        }
    }
}

fn cell() -> impl Strategy<Value = String> {
    let known = select(vec![
        "",
        "0.05",
        "0.3",
        "1.2",
        "2.0",
        "Std 0",
        "Std 5 ppm",
        "Standard",
        "20",
        "80",
        "Blank",
        "QC 18-26",
        "A1 E1",
        "TK-01",
        "A1",
        "1",
        "2",
        "1:10",
        "Sample",
        "Control",
        "n/a",
        "-",
        "OVRFLW",
        "1e400",
        "-0.5",
        "∞",
    ]);
    prop_oneof![6 => known.prop_map(str::to_owned), 1 => "[^,\"\n\r]{0,12}"]
}

/// A text as a lab file.
fn take(text: &str) -> (Taken, Config) {
    let least = "[programme]\nname = \"A\"\nshort_name = \"A\"\n";
    let config = Config::parse(least, Path::new(".")).expect("reads");
    let codes = Codes::new(["A1", "TK-01"].into_iter());
    let mut taken = Taken::default();
    let Ok(book) = books::read(text.as_bytes(), &|_| 0) else {
        return (taken, config);
    };
    let file = Arc::new(LabFile {
        path: "inbox/a.csv".to_owned(),
        ..LabFile::default()
    });
    lab_file::understand(
        &file,
        &book,
        &codes,
        (&config, &Reports::default()),
        &mut taken,
    );
    (taken, config)
}
