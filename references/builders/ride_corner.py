#!/usr/bin/env python3
"""A corner on a C road with stop contacts, integrated to tight tolerance: what the ride kernel is held to.

Prints the numbers of tests/Bellowsmith.Tests/Physics/RideReferenceTests.cs. Needs python3-numpy and python3-scipy.
Every law is a formula, so that nothing here shares code or tables with the product:
air in a cylinder, heat to the wall, a digressive damper, a progressive stop, a tyre that lifts, the weighting as an analog filter.
"""
import numpy as np
from scipy.integrate import solve_ivp

G, GAMMA, AMBIENT = 9.80665, 1.4, 101325.0
BODY, WHEEL, TYRE = 360.0, 38.0, 225e3                     # kg, kg, N/m
AREA, VOLUME, TAU = 6.5e-3, 1.1e-3, 0.6                    # m2, m3 at drive, s
RATIO = 0.95                                               # strut travel per wheel travel
CONTACT, TOP = 0.015, -0.055                               # wheel travel, m
STATIC = BODY * G / RATIO + 0.0
P0 = STATIC / AREA + AMBIENT

def damper(v):
    return 2600 * v / (1 + v / 0.9) if v >= 0 else 2600 * v / (1 - v / 0.45)

def stop(w):
    x = max(0.0, w - CONTACT)
    return 3e4 * x + 9e6 * x * x

def top(w):
    return 4e5 * min(0.0, w - TOP)

HARMONICS, SPEED, GD = 400, 80 / 3.6, 256e-6
edges = np.geomspace(0.01, 10, HARMONICS + 1)
wave = np.sqrt(edges[1:] * edges[:-1])
amplitude = np.sqrt(2 * GD * (wave / 0.1) ** -2.0 * np.diff(edges))
phase = 2 * np.pi * np.mod(np.arange(1, HARMONICS + 1) * 0.6180339887498949, 1)
omega = 2 * np.pi * wave * SPEED

def road(t):
    return float(np.sum(amplitude * np.sin(omega * t + phase)))

# Wk of ISO 2631-1 as four analog sections (numerator, denominator), powers of s ascending.
w1, w2, w3, w4, w5, w6 = (2 * np.pi * f for f in (0.4, 100, 12.5, 12.5, 2.37, 3.35))
q1 = q2 = 2 ** -0.5
q4, q5, q6 = 0.63, 0.91, 0.91
sections = [
    ((0, 0, 1), (w1 * w1, w1 / q1, 1)),
    ((w2 * w2, 0, 0), (w2 * w2, w2 / q2, 1)),
    ((w4 * w4, w4 * w4 / w3, 0), (w4 * w4, w4 / q4, 1)),
    ((w5 * w5, w5 / q5, 1), (w6 * w6, w6 / q6, 1)),
]

def rates(t, y):
    zs, vs, zu, vu, k = y[:5]
    w = zu - zs
    volume = VOLUME - AREA * RATIO * w
    pressure = P0 * np.exp(k) * (VOLUME / volume) ** GAMMA
    warmth = pressure * volume / (P0 * VOLUME)
    v = RATIO * (vs - vu)
    strut = AREA * (pressure - AMBIENT) - damper(v) + stop(w) + top(w)
    tyre = max(0.0, TYRE * (road(t) - zu) + (BODY + WHEEL) * G)
    acceleration = RATIO * strut / BODY - G
    d = np.empty_like(y)
    d[:5] = vs, acceleration, vu, (tyre - RATIO * strut) / WHEEL - G, (1 / warmth - 1) / TAU
    u = acceleration
    for i, (b, a) in enumerate(sections):                  # controllable form
        x1, x2 = y[5 + 2 * i], y[6 + 2 * i]
        d[5 + 2 * i] = x2
        d[6 + 2 * i] = u - a[0] * x1 - a[1] * x2
        u = b[0] * x1 + b[1] * x2 + b[2] * d[6 + 2 * i]
    weighted = u
    d[13:] = acceleration ** 2, weighted ** 2, weighted ** 4, w, w * w, tyre, tyre * tyre, float(tyre <= 0)
    return d

END, SETTLED, STEP = 30.0, 5.0, 1e-3
grid = np.arange(0, END + STEP / 2, STEP)
solved = solve_ivp(rates, (0, END), np.zeros(21), method="DOP853", t_eval=grid, rtol=1e-9, atol=1e-11, max_step=1e-3)
y = solved.y
first = int(round(SETTLED / STEP))
mean = (y[13:, -1] - y[13:, first]) / (END - SETTLED)
w = (y[2] - y[0])[first:]
force = np.array([stop(x) for x in w])
armed, contacts = False, 0
for i, x in enumerate(y[2] - y[0]):
    if x < CONTACT - 1e-3 / RATIO:
        armed = True
    if armed and x > CONTACT:
        armed = False
        contacts += i >= first
print("rms               ", repr(float(np.sqrt(mean[0]))))
print("weighted rms      ", repr(float(np.sqrt(mean[1]))))
print("vibration dose    ", repr(float((mean[2] * (END - SETTLED)) ** 0.25)))
print("travel rms        ", repr(float(np.sqrt(mean[4] - mean[3] ** 2))))
print("tyre load rms     ", repr(float(np.sqrt(mean[6] - mean[5] ** 2))))
print("lift-off share    ", repr(float(mean[7])))
print("stop contacts     ", contacts)
print("peak stop force   ", repr(float(force.max())))
print("travel            ", repr(float(w.min())), repr(float(w.max())))
