"""A chart with four rules, a crossed gauge trial and bipartite pairing in NumPy and SciPy, on the data of the file named first."""

import json
import sys
import time

import numpy as np
from scipy.optimize import linear_sum_assignment
from scipy.stats import f as fisher

POINTS, PARTS, APPRAISERS, TRIALS, UNITS = 1_000_000, 10, 3, 3, 200
data = np.fromfile(sys.argv[1], dtype="<f8")
series, rest = data[:POINTS], data[POINTS:]
trial = rest[:PARTS * APPRAISERS * TRIALS].reshape(PARTS, APPRAISERS, TRIALS)
batch = rest[PARTS * APPRAISERS * TRIALS:].reshape(UNITS, 2)


def among(hits, window, count):
    """Points that count themselves and complete so many of so many."""
    total = np.cumsum(hits, dtype=np.int32)
    total[window:] = total[window:] - total[:-window]
    return hits & (total >= count)


def chart():
    sigma = np.abs(np.diff(series)).mean() / 1.1283791670955126
    z = (series - series.mean()) / sigma
    signals = int((np.abs(z) > 3).sum())
    for distance, window, count in ((2, 3, 2), (1, 5, 4), (0, 8, 8)):
        signals += int(among(z > distance, window, count).sum()) + int(among(z < -distance, window, count).sum())
    return signals


def gauge():
    p, a, r = trial.shape
    cells, parts, appraisers, grand = trial.mean(2), trial.mean((1, 2)), trial.mean((0, 2)), trial.mean()
    within = ((trial - cells[..., None]) ** 2).sum()
    between = r * ((cells - parts[:, None] - appraisers[None, :] + grand) ** 2).sum()
    ms_a = p * r * ((appraisers - grand) ** 2).sum() / (a - 1)
    ms_i, ms_e = between / ((p - 1) * (a - 1)), within / (p * a * (r - 1))
    if fisher.sf(ms_i / ms_e, (p - 1) * (a - 1), p * a * (r - 1)) > 0.25:
        ms_e = (between + within) / ((p - 1) * (a - 1) + p * a * (r - 1))
        return float(np.sqrt(ms_e + max(0, (ms_a - ms_e) / (p * r))))
    return float(np.sqrt(ms_e + max(0, (ms_a - ms_i) / (p * r)) + max(0, (ms_i - ms_e) / r)))


def pairs():
    """The smallest worst difference by bisection over all differences, then the smallest sum below it."""
    left, right = batch[:UNITS // 2], batch[UNITS // 2:]
    cost = np.abs(left[:, None, :] - right[None, :, :]).max(2)
    steps = np.unique(cost)
    low, high = -1, len(steps) - 1
    while high - low > 1:
        middle = (low + high) // 2
        over = (cost > steps[middle]).astype(float)
        rows, columns = linear_sum_assignment(over)
        low, high = (low, middle) if over[rows, columns].sum() == 0 else (middle, high)
    worst = steps[high]
    linear_sum_assignment(np.where(cost > worst, 1e9, cost))
    return float(worst)


def median(function, least=0.5):
    answer, times, spent = function(), [], 0.0
    while spent < least or len(times) < 5:
        start = time.perf_counter()
        answer = function()
        times.append(time.perf_counter() - start)
        spent += times[-1]
    return answer, float(np.median(times))


answers, medians = {}, {}
for name, function in (("chart", chart), ("gauge", gauge), ("pairs", pairs)):
    answers[name], medians[name] = median(function)
print(json.dumps({"answers": answers, "median_s": medians}))
