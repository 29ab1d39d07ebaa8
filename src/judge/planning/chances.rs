//! What a number of packages and extractions can show: exact sums, and integrals over one variable.
//!
//! The model of a verdict. A product's packages scatter about its true mean, a package's extractions about the package's
//! content, both lognormally, with standard deviations `between` and `within` of natural logarithms; all are independent.
//! - A package's mean M of E extractions is taken as lognormal about the true mean, with the variance of its logarithm
//!   t^2 = between^2 + ln(1 + (exp(within^2) - 1) / E): the mean and the variance of a mean of lognormal values.
//! - The range R of the logarithms of a package's extractions does not depend on M (it does not for normal values); its
//!   highest and lowest reading are M exp(R/2) and M exp(-R/2), and for three or more their median is M.
//! - From there on the rule holds as it stands: the allowed difference at M, readings below quantification, the limit, the
//!   guard band, packages that disagree. One package over decides the product; within it is where all are.

use crate::config::Config;
use crate::judge::pairs::{characteristic, range_factor};
use crate::judge::paper::twelve_digits;
use crate::judge::planning::bounds::{Bounds, bounds};
use crate::judge::planning::quadrature::{Integral, fixed};
use crate::judge::statistics::distributions::{normal_above, normal_density};
use crate::model::planning::VerdictChances;
use crate::model::ppm::Ppm;

/// How a product is tested, and how its readings scatter.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Design {
    /// Packages.
    pub packages: usize,
    /// Extractions of each; at least 2.
    pub extractions: usize,
    /// Standard deviation of the logarithms of packages.
    pub between: f64,
    /// Standard deviation of the logarithms of extractions of a package.
    pub within: f64,
}

/// All of the rule that a chance depends on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ruling {
    /// From which mean on, and up to which, a package is over or within.
    pub bounds: Bounds,
    /// The lowest figure that is reported as one.
    pub lloq: f64,
    /// What the pair rule takes for the relative standard deviation of an extraction.
    pub relative_repeatability: f64,
}

impl Ruling {
    /// As the settings have it.
    pub fn of(config: &Config) -> Ruling {
        Ruling {
            bounds: bounds(&config.rule, config.testing.lloq),
            lloq: config.testing.lloq.0,
            relative_repeatability: config.testing.relative_repeatability,
        }
    }
}

/// The chance that `packages` random ones hold at least one that is over, where a share of all is: 1 - (1 - share)^n.
pub fn at_least_one(share: f64, packages: usize) -> f64 {
    if share >= 1.0 {
        return if packages == 0 { 0.0 } else { 1.0 };
    }
    twelve_digits(-((-share).ln_1p() * packages as f64).exp_m1())
}

/// Probability that the range of `count` standard normal values is at most `width`: n ∫ phi(z) (Phi(z + w) - Phi(z))^(n-1)
/// dz (Biometrika 18:173, 1926); in closed form 2 Phi(w / sqrt 2) - 1 for two.
pub fn range_at_most(width: f64, count: usize) -> f64 {
    if width <= 0.0 {
        return 0.0;
    }
    if count == 2 {
        return 1.0 - 2.0 * normal_above(width / std::f64::consts::SQRT_2);
    }
    // The integrand is smooth, and below 1e-17 outside.
    fixed(-9.0, 9.0, &|z| {
        let inside = normal_above(z) - normal_above(z + width);
        normal_density(z) * inside.powi(count as i32 - 1)
    }) * count as f64
}

/// The chance of each verdict for a product whose true mean is this, in ppm.
pub fn verdict(true_mean: f64, design: &Design, ruling: &Ruling) -> VerdictChances {
    let (over, within) = package(true_mean, design, ruling);
    let n = design.packages as i32;
    let none_over = (1.0 - over).max(0.0).powi(n);
    let all_within = within.powi(n).min(none_over);
    VerdictChances {
        over: twelve_digits(1.0 - none_over),
        within: twelve_digits(all_within),
        undecided: twelve_digits((none_over - all_within).max(0.0)),
    }
}

/// The relative standard error of a product's mean over its packages: sqrt((exp(t^2) - 1) / packages), t^2 the variance of
/// the logarithm of a package's mean.
pub fn standard_error(design: &Design) -> f64 {
    let relative = design.log_variance().exp_m1() / design.packages as f64;
    twelve_digits(relative.sqrt())
}

impl Design {
    /// The variance of the logarithm of a package's mean.
    fn log_variance(&self) -> f64 {
        let mean = (self.within.powi(2).exp_m1() / self.extractions as f64).ln_1p();
        self.between.powi(2) + mean
    }
}

/// The chances that a package is over and that it is within.
fn package(true_mean: f64, design: &Design, ruling: &Ruling) -> (f64, f64) {
    let t = design.log_variance().sqrt().max(1e-9);
    let middle = true_mean.ln() - t * t / 2.0;
    let place = |ppm: f64| (ppm.ln() - middle) / t;
    let of = |z: f64| (middle + t * z).exp();
    let pair = Pairs { design, ruling };
    let bounds = ruling.bounds;
    let over_from = place(bounds.over_from.0);
    let within_to = place(bounds.within_below.0);
    let limit = place(bounds.limit.0);
    let integral = Integral::between(
        -9.0,
        9.0,
        &[over_from, within_to, limit, place(ruling.lloq)],
    );
    let over = integral.of(&|z| {
        let mean = of(z);
        let agree = if z > over_from { pair.agree(mean) } else { 0.0 };
        let apart = if z > limit {
            pair.apart_and_over(mean)
        } else {
            0.0
        };
        normal_density(z) * (agree + apart)
    });
    let within = integral.of(&|z| {
        if z < within_to {
            normal_density(z) * pair.agree(of(z))
        } else {
            0.0
        }
    });
    (over.clamp(0.0, 1.0), within.clamp(0.0, 1.0))
}

/// How the extractions of a package with a given mean lie to each other.
struct Pairs<'a> {
    design: &'a Design,
    ruling: &'a Ruling,
}

impl Pairs<'_> {
    /// Probability that a range of logarithms is at most this.
    fn at_most(&self, range: f64) -> f64 {
        range_at_most(
            range / self.design.within.max(1e-9),
            self.design.extractions,
        )
    }

    /// The widest range of logarithms that still agrees. With the allowed difference A at the mean m and the quantification
    /// limit q, the gap is min(m e^(R/2) - q, m e^(R/2) - m e^(-R/2)) where the lowest reading is below q, or above it.
    fn widest(&self, mean: f64) -> f64 {
        let factor = range_factor(self.design.extractions).expect("there are two at least");
        let q = self.ruling.lloq;
        let s = characteristic(Ppm(mean), Ppm(q), self.ruling.relative_repeatability);
        let allowed = factor * s.0;
        let with_one_below = 2.0 * ((q + allowed) / mean).ln();
        let with_figures = 2.0 * (allowed / (2.0 * mean)).asinh();
        with_one_below.max(with_figures)
    }

    /// The chance that they agree.
    fn agree(&self, mean: f64) -> f64 {
        self.at_most(self.widest(mean))
    }

    /// The chance that they disagree and the package is over all the same; the mean is over the limit. Two are so where both
    /// are over, three and more where their median is.
    fn apart_and_over(&self, mean: f64) -> f64 {
        if self.design.extractions > 2 {
            return 1.0 - self.agree(mean);
        }
        let both_over = self.at_most(2.0 * (mean / self.ruling.bounds.limit.0).ln());
        (both_over - self.agree(mean)).max(0.0)
    }
}
