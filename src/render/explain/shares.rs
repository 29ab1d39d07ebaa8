//! What so few packages can say of all packages.

use crate::model::decided::JudgedProduct;
use crate::model::statistics::VarianceComponents;
use crate::render::explain::words::{percent, say, short};
use crate::words::say;

/// The statistics' part.
pub fn explain_statistics(out: &mut String, judged: &JudgedProduct) {
    let statistics = &judged.statistics;
    say(out, 0, &say::explain_statistics());
    let Some(share) = &statistics.over else {
        say(out, 1, &say::explain_no_statistics());
        return;
    };
    let over = say::explain_share(
        share.k.to_string(),
        share.n,
        percent(share.exact.lower),
        percent(share.exact.upper),
        percent(share.wilson.lower),
        percent(share.wilson.upper),
    );
    say(out, 1, &over);
    if statistics.undecided > 0 {
        say(out, 1, &say::explain_undecided(statistics.undecided));
    }
    if let Some(upper) = statistics.one_sided_upper {
        let k = share.k + statistics.undecided;
        let said = say::explain_one_sided(k.to_string(), share.n, percent(upper));
        say(out, 1, &said);
    }
    if let Some(components) = &statistics.components {
        explain_components(out, components);
    }
    for side in &statistics.other_side {
        let said = say::explain_other_side(
            &side.package_code,
            short(side.figure.0),
            short(side.u.0),
            percent(side.chance),
        );
        say(out, 1, &said);
    }
}

fn explain_components(out: &mut String, components: &VarianceComponents) {
    let said = say::explain_components(
        short(components.s_between.0),
        short(components.s_within.0),
        short(components.ms_between),
        short(components.ms_within),
    );
    say(out, 1, &said);
    if let Some(test) = &components.f_test {
        let freedom = [test.df1, test.df2].map(|df| df.to_string());
        let [df1, df2] = freedom;
        say(
            out,
            1,
            &say::explain_test(df1, df2, short(test.f), short(test.p)),
        );
    }
}
