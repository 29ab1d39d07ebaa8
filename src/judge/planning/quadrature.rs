//! Integrals of smooth pieces.

use std::sync::LazyLock;

/// Nodes of one panel.
const NODES: usize = 20;

/// Where the sum of the halves and the whole are the same.
const CLOSE: f64 = 1e-13;

/// How often a panel is halved at most: a corner then lies within a billionth of the whole.
const DEEPEST: u32 = 30;

/// Nodes and weights of Gauss and Legendre on [-1, 1]: the roots of the Legendre polynomial by Newton's iteration.
static RULE: LazyLock<Vec<(f64, f64)>> = LazyLock::new(|| {
    let n = NODES as f64;
    let root = |i: usize| {
        let mut x = (std::f64::consts::PI * (i as f64 + 0.75) / (n + 0.5)).cos();
        let mut slope = 1.0;
        for _ in 0..100 {
            let (mut before, mut here) = (1.0, x);
            for k in 2..=NODES {
                let k = k as f64;
                (before, here) = (here, ((2.0 * k - 1.0) * x * here - (k - 1.0) * before) / k);
            }
            slope = n * (x * here - before) / (x * x - 1.0);
            let step = here / slope;
            x -= step;
            if step.abs() < 1e-16 {
                break;
            }
        }
        (x, 2.0 / ((1.0 - x * x) * slope * slope))
    };
    (0..NODES).map(root).collect()
});

/// One panel.
fn panel(from: f64, to: f64, f: &dyn Fn(f64) -> f64) -> f64 {
    let (middle, half) = ((from + to) / 2.0, (to - from) / 2.0);
    let sum: f64 = RULE.iter().map(|(x, w)| w * f(middle + half * x)).sum();
    sum * half
}

/// The integral of a smooth function over a stretch of some standard deviations, in panels of equal width.
pub fn fixed(from: f64, to: f64, f: &dyn Fn(f64) -> f64) -> f64 {
    const PANELS: usize = 6;
    let width = (to - from) / PANELS as f64;
    let start = |i: usize| from + width * i as f64;
    (0..PANELS).map(|i| panel(start(i), start(i + 1), f)).sum()
}

/// A stretch cut where the function may jump.
pub struct Integral {
    cuts: Vec<f64>,
}

impl Integral {
    /// From one end to the other; jumps outside are left out.
    pub fn between(from: f64, to: f64, jumps: &[f64]) -> Integral {
        let inside = |jump: &f64| *jump > from && *jump < to;
        let mut cuts: Vec<f64> = jumps.iter().copied().filter(inside).collect();
        cuts.extend([from, to]);
        cuts.sort_by(f64::total_cmp);
        Integral { cuts }
    }

    /// The integral; panels are halved until they no longer differ from their halves, so that corners do no harm.
    pub fn of(&self, f: &dyn Fn(f64) -> f64) -> f64 {
        let pieces = self.cuts.windows(2);
        pieces
            .map(|ends| halved(ends[0], ends[1], panel(ends[0], ends[1], f), 0, f))
            .sum()
    }
}

fn halved(from: f64, to: f64, whole: f64, depth: u32, f: &dyn Fn(f64) -> f64) -> f64 {
    let middle = (from + to) / 2.0;
    let (left, right) = (panel(from, middle, f), panel(middle, to, f));
    if depth == DEEPEST || (left + right - whole).abs() < CLOSE {
        return left + right;
    }
    halved(from, middle, left, depth + 1, f) + halved(middle, to, right, depth + 1, f)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn integrals_known_in_closed_form() {
        let all = Integral::between(-9.0, 9.0, &[0.3]);
        let bell = all.of(&|z| (-z * z / 2.0).exp());
        assert!((bell - std::f64::consts::TAU.sqrt()).abs() < 1e-12);
        let corner = Integral::between(0.0, 1.0, &[]).of(&|x| (x - 1.0 / 3.0).abs());
        assert!((corner - 5.0 / 18.0).abs() < 1e-12, "{corner}");
        assert!((fixed(0.0, 2.0, &f64::exp) - (2f64.exp() - 1.0)).abs() < 1e-12);
    }
}
