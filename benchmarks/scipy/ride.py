"""One corner over one road by SciPy's LSODA, and many by RK4 in Numba on two threads: the file of numbers first, then the road.

Laws are formulas and tables as an engineer would write them: air in a cylinder, heat to its wall, a damper and a stop from
tables, a tyre that lifts. The road is straight between heights. Neither counts anything but the acceleration.
"""
import json
import math
import sys
import time
from bisect import bisect_right

import numpy as np
import scipy
from scipy.integrate import solve_ivp

g = json.load(open(sys.argv[1], encoding="utf-8"))
heights = np.concatenate([[0.0], np.fromfile(sys.argv[2], dtype="<f8")])
G, MIDDLE, SCIPY_TIME = 9.80665, len(g["scales"]) // 2, 15.0
STEP, SETTLED = g["step"], int(round(g["settling"] / g["step"]))
BODY, WHEEL, TYRE, RATIO, TAU = g["body"], g["wheel"], g["tyre"], g["ratio"], g["tau"]
AREA, VOLUME, EXPONENT, AMBIENT = g["area"], g["volume"], g["exponent"], g["ambient"]
ABSOLUTE, DROOP, TOP_RATE, STOP_RATE = g["gauge"] + AMBIENT, g["droop"], g["top_rate"], g["stop_rate"]
WEIGHT = (BODY + WHEEL) * G


def scipy_ride():
    """Scalar Python throughout: arrays of one number would only slow it down."""
    dx, dy, ds = g["damper"]["x"], g["damper"]["y"], g["damper"]["slope"]
    sx, sy, ss = g["stop"]["x"], g["stop"]["y"], g["stop"]["slope"]
    scale, road, inverse = g["scales"][MIDDLE], heights.tolist(), 1 / STEP

    def table(x, y, s, at, below, above):
        if at <= x[0]:
            return y[0] + below * (at - x[0])
        if at >= x[-1]:
            return y[-1] + above * (at - x[-1])
        i = bisect_right(x, at) - 1
        w = x[i + 1] - x[i]
        t, secant = (at - x[i]) / w, (y[i + 1] - y[i]) / w
        return y[i] + w * t * (s[i] + t * (3 * secant - 2 * s[i] - s[i + 1] + t * (s[i] + s[i + 1] - 2 * secant)))

    def rates(t, state):
        zs, vs, zu, vu, kappa = state.tolist()
        place = t * inverse
        k = min(int(place), len(road) - 2)
        height = road[k] + (place - k) * (road[k + 1] - road[k])
        w = zu - zs
        shrunk = VOLUME / (VOLUME - AREA * RATIO * w)
        pressure = ABSOLUTE * math.exp(kappa) * shrunk ** EXPONENT
        strut = AREA * (pressure - AMBIENT) - scale * table(dx, dy, ds, RATIO * (vs - vu), ds[0], ds[-1])
        strut += table(sx, sy, ss, w, 0.0, STOP_RATE) + TOP_RATE * min(0.0, w - DROOP)
        tyre = max(0.0, TYRE * (height - zu) + WEIGHT)
        warmth = pressure / (ABSOLUTE * shrunk)
        return [vs, RATIO * strut / BODY - G, vu, (tyre - RATIO * strut) / WHEEL - G, (1 / warmth - 1) / TAU]

    grid = np.arange(0, int(SCIPY_TIME / STEP) + 1) * STEP
    start = time.perf_counter()
    solved = solve_ivp(rates, (0, SCIPY_TIME), np.zeros(5), method="LSODA", rtol=1e-6, atol=1e-9, t_eval=grid)
    spent = time.perf_counter() - start
    acceleration = np.array([rates(t, y)[1] for t, y in zip(solved.t[1 + SETTLED:], solved.y.T[1 + SETTLED:])])
    return spent / SCIPY_TIME, float(np.sqrt(np.mean(acceleration ** 2)))


def numba_ride():
    try:
        import numba
        from numba import njit, prange
    except ImportError:
        return None
    dx, dy, ds = (np.array(g["damper"][part]) for part in ("x", "y", "slope"))
    sx, sy, ss = (np.array(g["stop"][part]) for part in ("x", "y", "slope"))

    @njit(fastmath=True, inline="always")
    def table(x, y, s, at, below, above):
        if at <= x[0]:
            return y[0] + below * (at - x[0])
        if at >= x[-1]:
            return y[-1] + above * (at - x[-1])
        i = 0
        while at >= x[i + 1]:
            i += 1
        w = x[i + 1] - x[i]
        t, secant = (at - x[i]) / w, (y[i + 1] - y[i]) / w
        return y[i] + w * t * (s[i] + t * (3 * secant - 2 * s[i] - s[i + 1] + t * (s[i] + s[i + 1] - 2 * secant)))

    @njit(fastmath=True, inline="always")
    def rates(height, zs, vs, zu, vu, kappa, scale):
        w = zu - zs
        shrunk = VOLUME / (VOLUME - AREA * RATIO * w)
        pressure = ABSOLUTE * math.exp(kappa) * shrunk ** EXPONENT
        strut = AREA * (pressure - AMBIENT) - scale * table(dx, dy, ds, RATIO * (vs - vu), ds[0], ds[-1])
        strut += table(sx, sy, ss, w, 0.0, STOP_RATE) + TOP_RATE * min(0.0, w - DROOP)
        tyre = max(0.0, TYRE * (height - zu) + WEIGHT)
        warmth = pressure / (ABSOLUTE * shrunk)
        return vs, RATIO * strut / BODY - G, vu, (tyre - RATIO * strut) / WHEEL - G, (1 / warmth - 1) / TAU

    @njit(fastmath=True, parallel=True)
    def drive(scales, road, h, settled):
        rms = np.zeros(len(scales))
        for corner in prange(len(scales)):
            scale, a, b, c, d, e, total = scales[corner], 0.0, 0.0, 0.0, 0.0, 0.0, 0.0
            for k in range(len(road) - 1):
                start, end = road[k], road[k + 1]
                half = (start + end) / 2
                a1, b1, c1, d1, e1 = rates(start, a, b, c, d, e, scale)
                if k > settled:
                    total += b1 * b1
                f = h / 2
                a2, b2, c2, d2, e2 = rates(half, a + f * a1, b + f * b1, c + f * c1, d + f * d1, e + f * e1, scale)
                a3, b3, c3, d3, e3 = rates(half, a + f * a2, b + f * b2, c + f * c2, d + f * d2, e + f * e2, scale)
                a4, b4, c4, d4, e4 = rates(end, a + h * a3, b + h * b3, c + h * c3, d + h * d3, e + h * e3, scale)
                f = h / 6
                a += f * (a1 + 2 * a2 + 2 * a3 + a4)
                b += f * (b1 + 2 * b2 + 2 * b3 + b4)
                c += f * (c1 + 2 * c2 + 2 * c3 + c4)
                d += f * (d1 + 2 * d2 + 2 * d3 + d4)
                e += f * (e1 + 2 * e2 + 2 * e3 + e4)
            rms[corner] = math.sqrt(total / (len(road) - 2 - settled))
        return rms

    scales = np.array(g["scales"])
    rms = drive(scales, heights, STEP, SETTLED)
    spent = []
    for _ in range(5):
        start = time.perf_counter()
        drive(scales, heights, STEP, SETTLED)
        spent.append(time.perf_counter() - start)
    return float(np.median(spent)) / (len(scales) * (len(heights) - 1) * STEP), rms.tolist(), numba.__version__


scipy_second, scipy_rms = scipy_ride()
compiled = numba_ride()
second = {"SciPy ride": scipy_second}
if compiled:
    second["Numba ride"] = compiled[0]
print(json.dumps({
    "second_s": second, "scipy_rms": scipy_rms, "scipy_time_s": SCIPY_TIME, "numba_rms": compiled[1] if compiled else None,
    "versions": f"SciPy {scipy.__version__} (LSODA, rtol 1e-6), " + (f"Numba {compiled[2]} (RK4, 1 ms, two threads)" if compiled else "Numba: not compared"),
}))
