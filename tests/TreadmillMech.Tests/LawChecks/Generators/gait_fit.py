"""Fit of the relations between gait and speed, and their residuals, written to gait_fit.tsv beside this file.

Run again with

    python3 gait_fit.py

numpy 1.24 or later and scipy 1.10 or later give the same table. The coefficients are rounded as they stand in GaitLaws;
the residuals are those of the rounded coefficients. Columns: gait, speed [m/s], people (0: a regression or a textbook
value), quantity, measured value, mark (read: seen in the source or a copy of it; memory: not seen), whether the fit used
the row, value of the relations before this fit, value now, source.

The fit is one least-squares problem for each gait, in the logarithms of all quantities at once: duty factor, contact time,
step frequency and peak hang together by t = 2 beta/f and by the stride mean of the force, which is the weight. A row of n
people has the variance s^2/n + 0.05^2: people of one study differ by s (7 % in peak, 5 % otherwise), studies by about 5 %.
Least squares alone give way to the rows that are many and let a single study lie far off. So every row of the fit is held
within its band as a condition: 10 % for nine people and more and for regressions, 18 % for fewer. A runner's peak must
not fall with speed up to the end of the fit; above it the third harmonic stays.

Nothing in here is computed by the library under test: force peaks are found on a sampled waveform.
"""

import pathlib

import numpy as np
from scipy.optimize import minimize

BETWEEN_STUDIES = 0.05
SPREAD = {"peak": 0.07}
PHASE = np.linspace(0, 1, 4001)

ALCANTARA_21 = "Alcantara et al. 2021, open data"
ALCANTARA_22 = "Alcantara et al. 2022, open data"
HAMNER = "Hamner, Seth and Delp 2010, open data"
ZEE = "van der Zee et al. 2022, open data"
KARAMANIDIS = "treadmill groups by age and activity, J. Exp. Biol., Karamanidis and Arampatzis 2005 (authors from memory)"
WEYAND = "Weyand and Davis 2005, regression for men"
NILSSON = "Nilsson and Thorstensson 1989"
MUNRO = "Munro, Miller and Fuglevand 1987"
KELLER = "Keller et al. 1996"
KIRTLEY = "Kirtley, Whittle and Jefferson 1985, regression: stance 64.2 % - 3.5 % a m/s"
STUDENTS = "students on a walkway, discussion of normal stance durations, clinicalgaitanalysis.com"

KIRTLEY_SLOPE = 0.035
END_OF_RUNNING = 6.0
# The bands, less what rounding the coefficients moves.
HELD = 0.995

# gait, speed, people, quantity, value, mark, used in the fit, source
ROWS = []


def rows(gait, speed, people, source, mark="read", used=True, **values):
    for quantity, value in values.items():
        ROWS.append((gait, speed, people, quantity, value, mark, used, source))


rows("run", 2.5, 2, ALCANTARA_22 + "; Fukuchi et al. 2017", peak=2.19, contact=0.265, frequency=2.85, duty=0.376)
rows("run", 3.33, 1, ALCANTARA_22, peak=2.26, contact=0.222, frequency=3.17, duty=0.352)
rows("run", 3.8, 37, ALCANTARA_21, peak=2.72, contact=0.202, frequency=3.07, duty=0.310)
rows("run", 3.96, 1, HAMNER, peak=2.43, contact=0.240, frequency=2.80, duty=0.336)
rows("run", 4.17, 1, ALCANTARA_22, peak=2.34, contact=0.193, frequency=3.42, duty=0.330)
rows("run", 4.9, 24, ALCANTARA_21, peak=2.82, contact=0.175, frequency=3.30, duty=0.288)
# Speed from step length and stride frequency of the same row.
rows("run", 2.65, 20, KARAMANIDIS + ", older runners", contact=0.276, frequency=2.82, duty=0.389)
rows("run", 2.74, 10, KARAMANIDIS + ", older, not active", contact=0.284, frequency=2.76, duty=0.388)
rows("run", 2.61, 9, KARAMANIDIS + ", young runners", contact=0.271, frequency=2.62, duty=0.355)
rows("run", 2.65, 10, KARAMANIDIS + ", young, not active", contact=0.282, frequency=2.56, duty=0.367)
rows("walk", 0.7, 9, ZEE, peak=1.04, frequency=1.34)
rows("walk", 1.1, 9, ZEE, peak=1.11, frequency=1.70)
rows("walk", 1.25, 9, ZEE, peak=1.19, frequency=1.84)
rows("walk", 1.6, 9, ZEE, peak=1.32, frequency=1.99)
rows("walk", 2.0, 9, ZEE, peak=1.54, frequency=2.24)
# The duty factor of walking: a regression, and people that do not agree with it; the fit goes between, with its slope.
for speed in (0.7, 1.0, 1.5):
    rows("walk", speed, 0, KIRTLEY, duty=0.642 - KIRTLEY_SLOPE * speed)
rows("walk", 1.26, 21, STUDENTS + ", men", duty=0.615)
rows("walk", 1.16, 7, STUDENTS + ", women", duty=0.609)
rows("walk", 1.37, 0, "Perry, Gait Analysis 1992, usual walk", "memory", duty=0.62)

rows("walk", 1.26, 21, STUDENTS + ", men, from stride length", frequency=2 * 1.26 / 1.36)
rows("walk", 1.16, 7, STUDENTS + ", women, from stride length", frequency=2 * 1.16 / 1.23)
rows("walk", 1.5, 23, KELLER, peak=1.2)
rows("walk", 2.03, 12, "J. Exp. Biol. 2003, walking with straight legs, previously unpublished means", peak=1.30)
rows("walk", 2.11, 0, "Hansen et al. 2017, stride frequency at the change to running", frequency=2 * 70.8 / 60)
for speed in (2.5, 3.0, 4.0, 5.0, 6.0):
    rows("run", speed, 0, WEYAND, stance=1.27 + 0.105 * speed)
rows("run", 4.5, 17, "Cavanagh and Lafortune 1980, printed to one digit", peak=3)
rows("run", 6.0, 23, KELLER, peak=2.5)

# Not used in the fit.
rows("walk", 1.0, 12, NILSSON, "memory", False, peak=1.0)
rows("walk", 3.0, 12, NILSSON, "memory", False, peak=1.5)
rows("run", 3.0, 20, MUNRO, "memory", False, peak=2.51, contact=0.270, stance=1.40)
rows("run", 5.0, 20, MUNRO, "memory", False, peak=2.83, contact=0.199, stance=1.70)
rows("run", 1.5, 12, NILSSON, "memory", False, peak=2.0)
rows("run", 6.0, 12, NILSSON, "memory", False, peak=2.9)


def peak_over_mean(duty, third):
    """Largest force of one foot over the weight: both feet's impulse over a stride is the weight's."""
    wave = np.sin(np.pi * PHASE) + third * np.sin(3 * np.pi * PHASE)
    return wave.max() / (2 * duty * (wave.sum() / (len(wave) - 1)))


def at(relations, quantity, speed):
    duty, frequency, third = relations(speed)
    return {
        "duty": duty,
        "frequency": frequency,
        "contact": 2 * duty / frequency,
        "stance": 0.5 / duty,
        "peak": peak_over_mean(duty, third),
    }[quantity]


def run_with(far, near, c, d, q, growth):
    return lambda v: (min(0.5, far + near / v), c * (v / 4) ** d, q + growth * min(v, END_OF_RUNNING))


def walk_with(a, c, d, q, growth):
    """The dip at mid-stance grows with the square of the speed, as the pull of a body that vaults over a stiff leg."""
    return lambda v: (max(0.5, a - KIRTLEY_SLOPE * v), c * v**d, max(-1 / 3, min(1, q + growth * v * v)))


def run_before(v):
    return min(0.5, 0.318 * (v / 4) ** -0.384), 3.062 * (v / 4) ** 0.259, -0.05


def walk_before(v):
    return max(0.5, 0.649 - 0.035 * v), 1.611 * v**0.482, min(1, 0.17 + 0.19 * v * v)


def band(people):
    return 0.18 if 0 < people < 9 else 0.10


def fit(gait, family, start, steps):
    used = [row for row in ROWS if row[0] == gait]
    # A regression or a textbook value stands for nine people; values from memory weigh nothing, and are held like the rest.
    weights = np.array(
        [row[6] * (SPREAD.get(row[3], 0.05) ** 2 / (row[2] or 9) + BETWEEN_STUDIES**2) ** -0.5 for row in used]
    )
    bands = np.array([band(row[2]) for row in used])
    steps = np.array(steps)

    def over(x):
        relations = family(*(x * steps))
        return np.array([at(relations, row[3], row[1]) / row[4] for row in used])

    def room(x):
        relations = family(*(x * steps))
        off = (over(x) - 1) / bands
        speeds = np.linspace(1.5, END_OF_RUNNING, 10) if gait == "run" else np.linspace(0.3, 2.0, 10)
        peaks = [at(relations, "peak", v) for v in speeds]
        return np.concatenate([HELD - off, HELD + off, np.diff(peaks)])

    found = minimize(
        lambda x: np.sum((weights * np.log(over(x))) ** 2),
        np.array(start) / steps,
        constraints={"type": "ineq", "fun": room},
        method="SLSQP",
        options={"maxiter": 500, "ftol": 1e-10},
    )
    print(gait, found.message, "sum of squares", round(found.fun, 2), "at the start", round(np.sum((weights * np.log(over(np.array(start) / steps))) ** 2), 2))
    return found.x * steps


if __name__ == "__main__":
    run_x = np.array([round(x, d) for x, d in zip(fit("run", run_with, [0.240, 0.302, 3.01, 0.34, -0.143, 0.022], [0.1, 0.1, 1, 0.1, 0.1, 0.01]), (4, 4, 3, 3, 4, 4))])
    walk_x = np.round(fit("walk", walk_with, [0.66, 1.62, 0.48, 0.2, 0.16], [0.1, 1, 0.1, 0.1, 0.1]), 3)
    print("run: duty far and near, frequency, exponent, third harmonic, its growth", run_x)
    print("walk: duty, frequency, exponent, third harmonic, its growth", walk_x)

    relations = {"run": (run_before, run_with(*run_x)), "walk": (walk_before, walk_with(*walk_x))}
    lines = ["gait\tspeed\tpeople\tquantity\tmeasured\tmark\tfit\tbefore\tnow\tsource"]
    for gait, speed, people, quantity, value, mark, used, source in ROWS:
        values = [at(r, quantity, speed) for r in relations[gait]]
        cells = [gait, f"{speed:g}", f"{people}", quantity, f"{value:.4g}", mark, "yes" if used else "no"]
        lines.append("\t".join([*cells, *(f"{v:.5g}" for v in values), source]))
        off = values[-1] / value - 1
        print("!" if abs(off) > band(people) else " ", *(c.ljust(10) for c in cells), *(f"{100 * (v / value - 1):6.1f}" for v in values), source[:40])
    pathlib.Path(__file__).with_suffix(".tsv").write_text("\n".join(lines) + "\n", encoding="utf-8")
