//! `plan`: which products next, under which codes, at what cost, and what it can show.

use crate::cli::Ending;
use crate::cli::args::PlanArguments;
use crate::cli::print::{self, Meter};
use crate::config::Config;
use crate::model::letters::in_line;
use crate::pipeline;
use crate::pipeline::planning::{self, LabelGrid, Request};
use anyhow::Result;
use std::fmt::Write;
use std::path::Path;

/// Plans a round and writes it to out/plan/.
pub fn plan(dir: &Path, what: &PlanArguments, quiet: bool) -> Result<Ending> {
    let config = Config::read(dir)?;
    let request = Request {
        round: what.round.clone(),
        only: what.only.clone(),
        packages: what.packages,
        extractions: what.extractions,
        budget: what.budget,
        seed: what.seed,
        blinds: what.blinds,
        labels: LabelGrid::parse(&what.labels)?,
        enter: what.enter,
    };
    let made_on = what.date.given()?;
    let out = what.out.clone().unwrap_or_else(|| config.root.join("out"));
    config.refuse_as_outputs(&out)?;
    // Before the registers are read: rows are entered into what stands in them now.
    let _lock = crate::cli::lock(&out, "plan")?;
    print::tell_unfinished(&out);
    let meter = Meter::new(quiet);
    let decided = pipeline::decide(&config, made_on, &|progress| meter.note(progress))?;
    drop(meter);
    let planned = planning::plan(&decided, &config, &request, made_on, &out)?;
    let mut text = format!("{}\n", planned.lede.replace('\u{a0}', " "));
    for line in planned.lines {
        let line = line.replace('\u{a0}', " ");
        writeln!(text, "{}", in_line(&line)).expect("a string takes all");
    }
    for path in planned.paths {
        writeln!(text, "{}", path.display()).expect("a string takes all");
    }
    print::result(&text)?;
    Ok(Ending::of(&decided))
}
