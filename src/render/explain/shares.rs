//! What so few packages can say of all packages.

use crate::model::decided::JudgedProduct;
use crate::model::statistics::VarianceComponents;
use crate::render::explain::words::{line, percent, short};

/// The statistics' part.
pub fn explain_statistics(out: &mut String, judged: &JudgedProduct) {
    let statistics = &judged.statistics;
    line(out, 0, "What so few packages can say");
    let Some(share) = &statistics.over else {
        line(out, 1, "Nothing: no package has a sound result.");
        return;
    };
    line(
        out,
        1,
        &format!(
            "{} of {} packages over the limit. Were they drawn at random, the share of all packages over it would be {} to {} % \
             (Clopper-Pearson, 95 %) or {} to {} % (Wilson, 95 %).",
            share.k,
            share.n,
            percent(share.exact.lower),
            percent(share.exact.upper),
            percent(share.wilson.lower),
            percent(share.wilson.upper)
        ),
    );
    if statistics.undecided > 0 {
        line(
            out,
            1,
            &format!(
                "{} of them undecided: lower ends take these for within the limit, upper ends for over it.",
                statistics.undecided
            ),
        );
    }
    if let Some(upper) = statistics.one_sided_upper {
        line(
            out,
            1,
            &format!(
                "One-sided: with {} of {} over the limit, up to {} % of all packages could be (95 %).",
                share.k + statistics.undecided,
                share.n,
                percent(upper)
            ),
        );
    }
    if let Some(components) = &statistics.components {
        explain_components(out, components);
    }
    for side in &statistics.other_side {
        line(
            out,
            1,
            &format!(
                "{}: at {} ppm with a standard uncertainty of {} ppm, the true content is on the other side of the limit with \
                 a chance of {} %.",
                side.package_code,
                short(side.figure.0),
                short(side.u.0),
                percent(side.chance)
            ),
        );
    }
}

fn explain_components(out: &mut String, components: &VarianceComponents) {
    line(
        out,
        1,
        &format!(
            "Between packages s = {} ppm, within packages s = {} ppm (mean squares {} and {}).",
            short(components.s_between.0),
            short(components.s_within.0),
            short(components.ms_between),
            short(components.ms_within)
        ),
    );
    if let Some(test) = &components.f_test {
        let (f, p) = (short(test.f), short(test.p));
        line(
            out,
            1,
            &format!("F({}, {}) = {f}, p = {p}.", test.df1, test.df2),
        );
    }
}
