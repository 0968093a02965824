"""The same fit and the same solve as Bellowsmith, in NumPy and SciPy: how fast could the usual tools have done it?

Reads the rows and the strut from the JSON file named first; prints one JSON object. Inside, areas are cm2, volumes cm3 and
gauge pressures multiples of their mean, as in the fit it mirrors. What repeats (designs, bases, penalties) is built once, all
sweeps and all springs of the band are worked on as stacked arrays, and no step loops over rows.
"""

import json
import sys
import time

import numpy as np
import scipy
from scipy.interpolate import BSpline, PPoly
from scipy.linalg import cho_factor, cho_solve
from scipy.optimize import brentq

PLACES, FAR_OUT = 129, 5


def knots(least, greatest, segments):
    return least + (greatest - least) / segments * np.arange(-3, segments + 4)


class Basis:
    """Cubic B-splines on equal segments, with values and integrals from the least height at given places."""

    def __init__(self, least, greatest, segments):
        self.segments, self.count = segments, segments + 3
        self.breaks = np.linspace(least, greatest, segments + 1)
        spline = BSpline(knots(least, greatest, segments), np.eye(self.count), 3)
        self.values = spline
        self.pieces = np.stack([spline(self.breaks[:-1], 3) / 6, spline(self.breaks[:-1], 2) / 2,
                                spline(self.breaks[:-1], 1), spline(self.breaks[:-1])])
        self.integral_pieces = PPoly(self.pieces, self.breaks).antiderivative().c

    def at(self, x):
        return self.values(np.clip(x, self.breaks[0], self.breaks[-1]))

    def integral_at(self, x):
        return PPoly(self.integral_pieces, self.breaks)(x)


class Regression:
    """Penalised regression with random sweep effects; weights by the fixed point of restricted maximum likelihood."""

    def __init__(self, x, z, sweep_of, penalties):
        self.x, self.z, self.of = x, z, sweep_of
        sweeps, m = sweep_of.max() + 1, z.shape[1]
        member = (sweep_of[None, :] == np.arange(sweeps)[:, None]).astype(float)
        self.member, self.zs = member, (member[:, :, None] * z).transpose(0, 2, 1)
        self.xx = np.stack([x[sweep_of == s].T @ x[sweep_of == s] for s in range(sweeps)])
        self.zx, self.zz = self.zs @ x, self.zs @ z
        self.all_xx = self.xx.sum(0)
        n = x.shape[1]
        self.differences = []
        for start, count, order in penalties:
            d = np.zeros((count - order, n))
            d[:, start:start + count] = np.diff(np.eye(count), order, axis=0)
            self.differences.append(d)
        self.products = np.stack([d.T @ d for d in self.differences])
        self.ranks = np.array([len(d) for d in self.differences], float)
        self.weights, self.level_weights = np.ones(len(penalties)), np.ones(m)

    def inverse_factors(self):
        """For every sweep the inverse of the Cholesky factor of its own effects' system."""
        return np.linalg.inv(np.linalg.cholesky(self.zz + np.diag(self.level_weights)))

    def solve(self, y):
        xy_by_sweep, zy = (self.member * y) @ self.x, self.zs @ y
        xy, yy, n, rows = xy_by_sweep.sum(0), y @ y, self.x.shape[1], len(y)
        for _ in range(60):
            lower = self.inverse_factors()
            w, v = (lower @ self.zx).reshape(-1, n), (lower @ zy[:, :, None]).ravel()
            system = self.all_xx - w.T @ w + np.tensordot(self.weights, self.products, 1)
            factor = cho_factor(system, lower=True, check_finite=False)
            inverse = cho_solve(factor, np.eye(n), check_finite=False)
            c = cho_solve(factor, xy - w.T @ v, check_finite=False)
            m_inverse = lower.transpose(0, 2, 1) @ lower
            own = np.einsum("skl,sl->sk", m_inverse, zy - self.zx @ c)
            image = m_inverse @ self.zx
            covariance = np.einsum("skk->sk", m_inverse) + ((image @ inverse) * image).sum(2)
            freedom = np.concatenate([self.ranks - self.weights * (self.products * inverse).sum((1, 2)),
                                      (1 - self.level_weights * covariance).sum(0)])
            size = np.concatenate([[np.sum((d @ c) ** 2) for d in self.differences], (own ** 2).sum(0)])
            both = np.concatenate([self.weights, self.level_weights])
            residual = yy - c @ xy - both @ size - (own * zy).sum()
            spent = n - self.ranks.sum() + freedom.sum()
            variance = max(residual, 1e-15 * yy) / max(rows - spent, 1)
            after = np.clip(variance * np.maximum(freedom, 1e-9) / np.maximum(size, 1e-300), 1e-9, 1e8)
            idle = (freedom < 1e-3) | (after == 1e-9) | (after == 1e8)
            change = np.max(np.where(idle, 0, np.abs(np.log(after / both))))
            self.weights, self.level_weights = after[:len(self.weights)], after[len(self.weights):]
            if change < 0.02:
                break
        self.c, self.own, self.inverse, self.variance = c, own, inverse, variance
        return self

    def without(self, y):
        """Coefficients for every column of y at the settled weights: [all kept, first sweep left out, second ...]."""
        n, lower = self.x.shape[1], self.inverse_factors()
        w, penalty = lower @ self.zx, np.tensordot(self.weights, self.products, 1)
        reduced = self.xx - w.transpose(0, 2, 1) @ w
        systems = reduced.sum(0) + penalty - np.concatenate([np.zeros((1, n, n)), reduced])
        xy = np.stack([self.x[self.of == s].T @ y[self.of == s] for s in range(len(lower))])
        right = xy - w.transpose(0, 2, 1) @ (lower @ (self.zs @ y))
        return systems, right.sum(0) - np.concatenate([np.zeros((1,) + right.shape[1:]), right])

    def shares(self):
        return np.concatenate([np.sqrt(self.variance * weight) * (d @ self.inverse)
                               for d, weight in zip(self.differences, self.weights)])


def fit(height, gauge, force, volume, direction, sweep_of):
    """The spring and those of its band, as coefficients in columns: the fit first, one for every sweep left out, smoothing."""
    while True:
        least, greatest, centre = height.min(), height.max(), gauge.mean()
        scale, distinct = gauge.max() - gauge.min(), len(np.unique(np.round(height, 5)))
        area = Basis(least, greatest, min(max(distinct - 3, 1), 16))
        stretch = Basis(least, greatest, min(max(distinct - 3, 1), 6))
        w, q, place = gauge / centre, (gauge - centre) / scale, 2 * (height - least) / (greatest - least) - 1
        b, d = area.at(height), stretch.at(height)
        x = np.hstack([w[:, None] * b, (w * q)[:, None] * d, direction[:, None] * np.stack([np.ones_like(w), place, w - 1], 1)])
        z = np.stack([np.ones_like(w), place, place ** 2 - 1 / 3], 1)
        y = force / (centre * 1e-4)
        regression = Regression(x, z, sweep_of, [(0, area.count, 3), (area.count, stretch.count, 2)]).solve(y)
        miss = (y - x @ regression.c - (z * regression.own[sweep_of]).sum(1)) * centre * 1e-4
        far = np.abs(miss) > max(FAR_OUT * 1.4826 * np.median(np.abs(miss)), 1e-3 * np.abs(force).mean())
        if not far.any() or far.sum() > 0.05 * len(far):
            break
        height, gauge, force, volume, direction, sweep_of = (
            a[~far] for a in (height, gauge, force, volume, direction, sweep_of))

    systems, right = regression.without(y[:, None])
    left_out = np.linalg.solve(systems, right)[:, :, 0]
    every = np.vstack([regression.c, left_out[1:], regression.c + regression.shares()]).T
    c0, c1 = every[:area.count], every[area.count:area.count + stretch.count]

    # Volume: the elastic-wall identity, and a smooth departure from it, for every spring at once.
    p = gauge / scale
    identity = area.integral_at(height) @ c0 + (q + p)[:, None] * (stretch.integral_at(height) @ c1)
    left = volume[:, None] * 1e6 - identity * 100
    volumes = Regression(np.hstack([b, q[:, None]]), np.ones((len(q), 1)), sweep_of, [(0, area.count, 1)]).solve(left[:, 0])
    systems, right = volumes.without(left)
    sweeps = len(systems) - 1
    departure = cho_solve(cho_factor(systems[0], lower=True), right[0])
    one_out = np.linalg.solve(systems[1:], np.stack([right[s + 1][:, s + 1] for s in range(sweeps)])[:, :, None])[:, :, 0]
    departure[:, 1:sweeps + 1] = one_out.T
    return Springs(area, stretch, c0 * 1e-4, c1 * 1e-4, departure * 1e-6, centre, scale, sweeps)


class Springs:
    def __init__(self, area, stretch, c0, c1, departure, centre, scale, sweeps):
        self.centre, self.scale, self.sweeps = centre, scale, sweeps
        self.least, self.greatest, self.by_pressure = area.breaks[0], area.breaks[-1], departure[-1]
        a0 = np.concatenate([np.zeros((1, area.segments, c0.shape[1])), area.pieces @ c0])
        v0 = area.integral_pieces @ c0
        v0[1:] += area.pieces @ departure[:-1]
        powers = np.array([4, 3, 2, 1, 0.0])[:, None, None]
        slope = lambda c: np.concatenate([c[:1] * 0, (powers * c)[:-1]])
        self.curves = np.stack([a0, slope(a0), v0, slope(v0)], 2)
        a1 = np.concatenate([np.zeros((1, stretch.segments, c1.shape[1])), stretch.pieces @ c1])
        self.stretches = np.stack([a1, slope(a1), stretch.integral_pieces @ c1], 2)
        self.breaks, self.stretch_breaks = area.breaks, stretch.breaks
        self.one = self.of(slice(0, 1))
        self.all = self.of(slice(None))

    def of(self, which):
        return (PPoly(np.ascontiguousarray(self.curves[..., which]), self.breaks),
                PPoly(np.ascontiguousarray(self.stretches[..., which]), self.stretch_breaks), self.by_pressure[which])


class Strut:
    def __init__(self, springs, given):
        self.s, self.g = springs, given

    def gas(self, h):
        """Absolute pressure and volume of the damper's gas."""
        g = self.g
        volume = g["gasVolume_m3"] - g["rodArea_m2"] * (g["longest_m"] - h - g["springToDamper_m"])
        return g["gasStated_Pa"] * g["gasVolume_m3"] / volume, volume

    def force(self, h):
        return self.g["wheelLoad_N"] / self.g["ratio"] - self.g["rodArea_m2"] * (self.gas(h)[0] - self.g["ambient_Pa"])

    def target(self, h):
        absolute, volume = self.gas(h)
        return self.g["wheelRate_N_per_m"] / self.g["ratio"] ** 2 - 1.38 * absolute * self.g["rodArea_m2"] ** 2 / volume

    def rate(self, h, force, which):
        """Sealed rate at the load; the gauge pressure is the root of a quadratic."""
        s, g = self.s, self.g
        curves, stretches, by_pressure = which
        a0, slope0, v0, dv0 = np.moveaxis(curves(h), -2, 0)
        a1, slope1, w1 = np.moveaxis(stretches(h), -2, 0)
        a, b = a1 / s.scale, a0 - g["sealArea_m2"] - s.centre / s.scale * a1
        pg = 2 * force / (b + np.sqrt(b * b + 4 * a * force))
        q, p = (pg - s.centre) / s.scale, pg / s.scale
        gas = g["exponent"] * (pg + g["ambient_Pa"])
        by_gauge = a0 + q * a1 - g["sealArea_m2"] + p * a1
        volume = v0 + by_pressure * q + (q + p) * w1 - g["displaced_m3"] + g["line_m3"]
        volume_slope = dv0 + (q + p) * a1 - g["sealArea_m2"]
        return gas * volume_slope * by_gauge / (volume + gas * (by_pressure + 2 * w1) / s.scale) - pg * (slope0 + q * slope1)

    def scan(self):
        h = np.linspace(max(self.s.least, self.g["least_m"]), min(self.s.greatest, self.g["greatest_m"]), PLACES)
        return h, self.rate(h, self.force(h)[:, None], self.s.one)[:, 0]

    def solve(self):
        h, rates = self.scan()
        excess = rates - self.target(h)
        one = lambda x: float(self.rate(x, self.force(x), self.s.one)[0]) - self.target(x)
        found = []
        for k in np.flatnonzero(excess[:-1] * excess[1:] < 0):
            x = brentq(one, h[k], h[k + 1], xtol=1e-10)
            every = self.rate(x, self.force(x), self.s.all)
            departure, n = every[1:] - every[0], self.s.sweeps
            out, hidden = departure[:n], departure[n:]
            half = 2 * np.sqrt(((out - out.mean()) ** 2).sum() * (n - 1) / n + hidden @ hidden)
            found.append({"height_m": x, "rate_N_per_m": every[0], "half_N_per_m": half})
        return found


def median_s(work, repeats):
    for _ in range(max(repeats // 5, 2)):
        work()
    times = []
    for _ in range(repeats):
        start = time.perf_counter()
        work()
        times.append(time.perf_counter() - start)
    return float(np.median(times))


def blas():
    """The linear algebra that is really loaded."""
    try:
        loaded = {line.split("/")[-1].strip() for line in open("/proc/self/maps", encoding="utf-8")}
        return min((name for name in loaded if "blas" in name and name.startswith("lib")), key=lambda n: "openblas" not in n)
    except (OSError, ValueError):
        return "unknown BLAS"


def main():
    given = json.load(open(sys.argv[1], encoding="utf-8"))
    columns = [np.array(given[name], float) for name in ("height_m", "gauge_Pa", "force_N", "volume_m3", "direction")]
    sweep_of = np.unique(given["sweep"], return_inverse=True)[1]
    strut = Strut(fit(*columns, sweep_of), given)
    print(json.dumps({
        "blas": blas(), "scipy": scipy.__version__, "numpy": np.__version__, "python": sys.version.split()[0],
        "median_s": {
            "fit": median_s(lambda: fit(*columns, sweep_of), 60),
            "solve": median_s(strut.solve, 300),
            "scan": median_s(strut.scan, 1000),
        },
        "solutions": strut.solve(),
    }))


if __name__ == "__main__":
    main()
