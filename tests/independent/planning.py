"""What a planned round can show, computed apart from the program: scipy's adaptive quadrature and its studentised range.

    python3 -m venv venv && venv/bin/pip install scipy==1.16.* python-stdnum
    venv/bin/python tests/independent/planning.py > tests/independent/planning.json

Exact cases carry full precision. Cases of the kind "simulated" play the rule itself, reading by reading, from a fixed seed,
and give the standard error: they show how near the model behind the exact figures is to the rule.
"""

import functools
import json
import math

import numpy as np
from scipy import integrate, stats
from stdnum.iso7064 import mod_37_36

def phi(z):
    return math.exp(-z * z / 2) / math.sqrt(2 * math.pi)


def between(a, b):
    """P(a < Z < b), without loss in either tail."""
    if a > 0:
        a, b = -b, -a
    return 0.5 * (math.erfc(-b / math.sqrt(2)) - math.erfc(-a / math.sqrt(2)))


F = [None, None, 2.8, 3.3, 3.6, 3.9, 4.0, 4.2, 4.3, 4.4, 4.5]


@functools.lru_cache(maxsize=None)
def range_cdf(w, k):
    """Range of k standard normal values: the studentised range on infinitely many degrees of freedom."""
    if w <= 0:
        return 0.0
    if k == 2:
        return math.erf(w / 2)
    inner = lambda z: k * phi(z) * between(z, z + w) ** (k - 1)
    return integrate.quad(inner, -9.5, 9.5, epsabs=1e-13, epsrel=1e-13, limit=400)[0]


def package(mu, e, sb, sw, limit, q, r, guard):
    t2 = sb**2 + math.log1p(math.expm1(sw**2) / e)
    t = math.sqrt(t2)
    centre = math.log(mu) - t2 / 2
    over_from = max(limit / (1 - guard), q)
    within_to = 0.0 if q * (1 + guard) > limit * (1 + 1e-9) else limit / (1 + guard)
    bare = max(limit, q)

    def agree(m):
        allowed = F[e] * math.hypot(q / 10, r * m)
        widest = max(2 * math.log((q + allowed) / m), 2 * math.asinh(allowed / (2 * m)))
        return range_cdf(widest / sw, e)

    def apart(m):
        if e > 2:
            return 1 - agree(m)
        return max(0.0, range_cdf(2 * math.log(m / bare) / sw, 2) - agree(m))

    # Corners of the integrand, so that quad is told of each: where the two branches of the widest range meet, and where
    # both readings are over as often as they agree.
    def crossing(f, low, high):
        a, b = f(low), f(high)
        if a * b > 0:
            return []
        for _ in range(200):
            middle = (low + high) / 2
            if f(middle) * a > 0:
                low = middle
            else:
                high = middle
        return [low]

    def branches(lm):
        m = math.exp(lm)
        allowed = F[e] * math.hypot(q / 10, r * m)
        return math.log((q + allowed) / m) - math.asinh(allowed / (2 * m))

    def meets(lm):
        m = math.exp(lm)
        allowed = F[e] * math.hypot(q / 10, r * m)
        return max(2 * math.log((q + allowed) / m), 2 * math.asinh(allowed / (2 * m))) - 2 * math.log(m / bare)

    marks = [math.log(x) for x in (over_from, within_to, bare, q) if x > 0]
    marks += crossing(branches, math.log(1e-3), math.log(1e5)) + crossing(meets, math.log(bare), math.log(1e6))
    low, high = centre - 10 * t, centre + 10 * t
    cuts = sorted({low, high, *[x for x in marks if low < x < high]})
    density = lambda lm: phi((lm - centre) / t) / t
    over = within = 0.0
    for a, b in zip(cuts, cuts[1:]):
        middle = (a + b) / 2

        def over_at(lm):
            m = math.exp(lm)
            value = agree(m) if middle > math.log(over_from) else 0.0
            return density(lm) * (value + (apart(m) if middle > math.log(bare) else 0.0))

        # The bell is narrow in a wide piece: halve it a few times for quad.
        steps = [a + (b - a) * i / 4 for i in range(5)]
        for c, d in zip(steps, steps[1:]):
            over += integrate.quad(over_at, c, d, epsabs=1e-12, epsrel=1e-10, limit=100)[0]
            if within_to > 0 and middle < math.log(within_to):
                within += integrate.quad(lambda lm: density(lm) * agree(math.exp(lm)), c, d, epsabs=1e-12, epsrel=1e-10, limit=100)[0]
    return over, within


def verdict(n, over, within):
    none_over = (1 - over) ** n
    return {"over": 1 - none_over, "within": within**n, "undecided": none_over - within**n}


def simulate(mu, e, sb, sw, limit, q, r, n, seed, trials=400_000):
    """The rule itself under the simple decision, the limit not passing: intervals, gaps, means, medians."""
    rng = np.random.default_rng(seed)
    content = mu * np.exp(rng.normal(0, sb, (trials, n, 1)) - sb**2 / 2)
    y = content * np.exp(rng.normal(0, sw, (trials, n, e)) - sw**2 / 2)
    lower, upper = np.where(y < q, 0, y), np.where(y < q, q, y)
    gap = np.maximum(0, lower.max(2) - upper.min(2))
    # m: where there is a gap the mean of the points nearest to the middle of the two bounds, else of all bounds.
    middle = (lower.max(2) + upper.min(2)) / 2
    nearest = np.clip(middle[..., None], lower, upper)
    m = np.where(gap > 0, nearest.mean(2), (lower.mean(2) + upper.mean(2)) / 2)
    agree = gap <= F[e] * np.hypot(q / 10, r * m)
    below = (y < q).all(2)
    over = agree & ~below & (lower.mean(2) >= limit)
    within = agree & (below | (upper.mean(2) < limit))
    apart_over = (lower >= limit).all(2)
    if e > 2:
        apart_over |= np.median(lower, axis=2) >= limit
    over |= ~agree & apart_over
    product_over, product_within = over.any(1), within.all(1)
    shares = {"over": product_over.mean(), "within": product_within.mean()}
    shares["undecided"] = 1 - shares["over"] - shares["within"]
    return {k: float(v) for k, v in shares.items()}, float(0.5 / math.sqrt(trials))


def main():
    cases = {"at_least_one": [], "range": [], "verdicts": [], "simulated": [], "needed": [], "scatter": [], "codes": []}
    for share in (0.001, 0.01, 0.05, 0.1, 0.2, 0.5, 0.99, 1.0):
        for n in (1, 2, 3, 6, 29, 299):
            cases["at_least_one"].append({"share": share, "packages": n, "chance": float(stats.binom.sf(0, n, share))})
    for share, n in ((0.1, 29), (0.05, 59), (0.02, 149), (0.01, 299), (0.2, 14), (0.5, 5)):
        # The least n with P(none | share) <= 5 %.
        found = next(k for k in range(1, 1000) if stats.binom.pmf(0, k, share) <= 0.05)
        assert found == n
        cases["needed"].append({"share": share, "packages": found})
    for k in (2, 3, 4):
        for w in (0.1, 0.5, 1.0, 2.0, 2.772, 3.314, 3.633, 5.0, 8.0):
            value = range_cdf(w, k)
            assert abs(value - stats.studentized_range.cdf(w, k, np.inf)) < 1e-7
            cases["range"].append({"width": w, "count": k, "chance": value})
    settings = [
        dict(e=2, sb=0.385, sw=0.149, limit=20.0, q=5.0, r=0.15, guard=0.0),
        dict(e=3, sb=0.385, sw=0.149, limit=20.0, q=5.0, r=0.15, guard=0.0),
        dict(e=4, sb=0.1, sw=0.3, limit=20.0, q=5.0, r=0.15, guard=0.0),
        dict(e=2, sb=0.9, sw=0.27, limit=20.0, q=5.0, r=0.15, guard=0.3),
        dict(e=2, sb=0.2, sw=0.2, limit=5.0, q=5.0, r=0.2, guard=0.0),
        dict(e=3, sb=0.05, sw=0.1, limit=10.0, q=4.0, r=0.1, guard=0.2),
        dict(e=2, sb=0.4, sw=0.15, limit=3.5, q=5.0, r=0.15, guard=0.0),
    ]
    for one in settings:
        for factor in (0.1, 0.5, 0.9, 1.0, 1.3, 2.0, 6.0):
            mu = one["limit"] * factor
            over, within = package(mu=mu, **one)
            for n in (1, 3, 6):
                cases["verdicts"].append({**one, "mean": mu, "packages": n, "chances": verdict(n, over, within)})
    for seed, one in enumerate(settings[:3]):
        plain = {k: v for k, v in one.items() if k != "guard"}
        for factor in (0.2, 0.5, 0.8, 1.0, 1.5, 2.0):
            chances, error = simulate(mu=20 * factor, n=3, seed=20 + seed, **plain)
            cases["simulated"].append({**one, "mean": 20 * factor, "packages": 3, "chances": chances, "standard_error": error})
    # Figures of unequal numbers of packages and extractions, and the two standard deviations by numpy's variances.
    rng = np.random.default_rng(7)
    for count, spread in ((12, 0.5), (12, 0.0), (3, 0.5)):
        products = []
        for _ in range(count):
            packages = rng.normal(2.0, spread, rng.integers(1, 5))
            products.append([list(np.round(p + rng.normal(0, 0.2, rng.integers(2, 4)), 6)) for p in packages])
        flat = [p for product in products for p in product]
        df = sum(len(p) - 1 for p in flat)
        within = sum(np.var(p) * len(p) for p in flat) / df
        several = [product for product in products if len(product) > 1]
        df_b = sum(len(product) - 1 for product in several)
        means = sum(np.var([np.mean(p) for p in product], ddof=1) * (len(product) - 1) for product in several) / df_b
        share = np.mean([1 / len(p) for product in several for p in product])
        own = {"within": float(np.sqrt(within)), "between": float(np.sqrt(max(0.0, means - within * share)))}
        own |= {"df_within": df, "df_between": df_b}
        cases["scatter"].append({"products": products, "own": own})
    # The published example of a Global Release Identifier: A1-2425G-ABC1234002-M. The others by python-stdnum.
    for body in ("A12425GABC1234002", "0", "Z", "07H9GK", "QWERTY", "CC2346", "XY7MKP", "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789"):
        cases["codes"].append({"body": body, "check": mod_37_36.calc_check_digit(body)})
    assert cases["codes"][0]["check"] == "M"
    print(json.dumps(cases, indent=1))


main()
