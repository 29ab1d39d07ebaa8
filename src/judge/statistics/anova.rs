//! One-way random-effects analysis of variance: how far packages differ beyond their extractions.

use crate::judge::paper::twelve_digits;
use crate::judge::statistics::distributions::f_above;
use crate::model::ppm::Ppm;
use crate::model::statistics::{FTest, VarianceComponents};

/// Sums of squares of groups of measurements, from which everything else follows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SumsOfSquares {
    /// Mean of all measurements.
    pub mean: f64,
    /// Between the groups.
    pub between: f64,
    /// Within the groups.
    pub within: f64,
    /// Groups less one.
    pub df_between: f64,
    /// Measurements less groups.
    pub df_within: f64,
    /// Measurements in a group: (N - sum n^2 / N) / (groups - 1), their number where all are alike.
    pub n0: f64,
}

impl SumsOfSquares {
    /// Mean square between the groups.
    pub fn ms_between(&self) -> f64 {
        self.between / self.df_between
    }

    /// Mean square within the groups.
    pub fn ms_within(&self) -> f64 {
        self.within / self.df_within
    }

    /// Variance between the groups by the method of moments, 0 where the mean squares would make it negative.
    pub fn variance_between(&self) -> f64 {
        ((self.ms_between() - self.ms_within()) / self.n0).max(0.0)
    }

    /// F = mean square between / within, and its p value; none where nothing varies within the groups.
    pub fn f_test(&self) -> Option<FTest> {
        if self.within <= 0.0 {
            return None;
        }
        let f = self.ms_between() / self.ms_within();
        Some(FTest {
            f: twelve_digits(f),
            df1: self.df_between,
            df2: self.df_within,
            p: twelve_digits(f_above(f, self.df_between, self.df_within)?),
        })
    }
}

/// The sums of squares of groups of any size; none below two groups, or where no group has two measurements.
///
/// Measurements are taken from their mean first, so that a high level does not drown small differences.
pub fn sums_of_squares(groups: &[Vec<f64>]) -> Option<SumsOfSquares> {
    let groups: Vec<&Vec<f64>> = groups.iter().filter(|group| !group.is_empty()).collect();
    let n: usize = groups.iter().map(|group| group.len()).sum();
    if groups.len() < 2 || n <= groups.len() {
        return None;
    }
    let origin = groups[0][0];
    let shift = groups
        .iter()
        .flat_map(|group| group.iter())
        .map(|x| x - origin)
        .sum::<f64>()
        / n as f64;
    let (mut between, mut within, mut squares) = (0.0, 0.0, 0.0);
    for group in &groups {
        let size = group.len() as f64;
        let centre = group.iter().map(|x| x - origin - shift).sum::<f64>() / size;
        between += size * centre * centre;
        within += group
            .iter()
            .map(|x| (x - origin - shift - centre).powi(2))
            .sum::<f64>();
        squares += size * size;
    }
    let (k, n) = (groups.len() as f64, n as f64);
    Some(SumsOfSquares {
        mean: origin + shift,
        between,
        within,
        df_between: k - 1.0,
        df_within: n - k,
        n0: (n - squares / n) / (k - 1.0),
    })
}

/// Components between packages and within them; none where packages have different numbers of measurements, or one each.
///
/// ms_within = sum of squares within / (packages (extractions - 1)); ms_between = extractions times the variance of the
/// means; s_between = sqrt(max(0, (ms_between - ms_within) / extractions)). Few packages show only gross differences: with
/// three pairs s_between must be twice s_within before F is beyond chance.
pub fn components(packages: &[Vec<f64>]) -> Option<VarianceComponents> {
    let extractions = packages.first()?.len();
    if packages.iter().any(|package| package.len() != extractions) {
        return None;
    }
    let sums = sums_of_squares(packages)?;
    Some(VarianceComponents {
        packages: packages.len(),
        extractions,
        mean: Ppm(twelve_digits(sums.mean)),
        ms_between: twelve_digits(sums.ms_between()),
        ms_within: twelve_digits(sums.ms_within()),
        s_within: Ppm(twelve_digits(sums.ms_within().sqrt())),
        s_between: Ppm(twelve_digits(sums.variance_between().sqrt())),
        f_test: sums.f_test(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_odd_package_shows_and_scatter_does_not() {
        let odd = [vec![6.0, 7.0], vec![31.0, 27.0], vec![8.0, 9.0]];
        let odd = components(&odd).expect("three pairs");
        let f = odd.f_test.expect("they vary");
        assert_eq!(format!("{:.2} {:.4}", f.f, f.p), "103.39 0.0017");
        assert_eq!(
            format!("{:.4} {:.4}", odd.s_within.0, odd.s_between.0),
            "1.7321 12.3929"
        );
        let alike = [vec![18.2, 23.9], vec![16.4, 19.5], vec![21.0, 17.7]];
        let alike = components(&alike).expect("three pairs");
        assert_eq!(alike.s_between, Ppm(0.0));
        assert_eq!(
            format!("{:.3}", alike.f_test.expect("they vary").p),
            "0.628"
        );
    }

    #[test]
    fn nothing_is_said_of_too_little() {
        assert_eq!(components(&[vec![1.0, 2.0]]), None);
        assert_eq!(components(&[vec![1.0], vec![2.0]]), None);
        assert_eq!(components(&[vec![1.0, 2.0], vec![2.0]]), None);
        let equal = components(&[vec![1.0, 1.0], vec![1.0, 1.0]]).expect("two pairs");
        assert_eq!(equal.f_test, None, "nothing varies");
    }
}
