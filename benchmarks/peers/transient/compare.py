"""Speeds of transient solvers at equal error, side by side: the library's, MathNet's RK4 and scipy's LSODA.

Call, from this folder, after `dotnet build -c Release`:  /usr/bin/python3 compare.py [ROUNDS]

A simulated second of the invented machine (cases of drive.py). Rounds take turns, so that a busy machine is busy for
all; the least time of all rounds counts. Error: largest deviation of the belt's speed at ten times from the stored
reference (Radau at 1e-11), over the speed. For each solver the settings are a ladder; times are read off at the error
wanted by interpolation of their logarithms. LSODA runs on the same equations written in Python, as a user of scipy would; the
time of its rates is stated, so that the share of Python can be told. Runs of more than a few milliseconds (LSODA, RK4) are told
in time of the processor, as a busy machine interrupts them; the short ones by the clock, their least of many.
"""

import math
import pathlib
import subprocess
import sys
import time

import numpy as np

HERE = pathlib.Path(__file__).resolve().parent
TABLES = HERE.parents[2] / "tests" / "TreadmillMech.Tests" / "Transient" / "Generators"
sys.path.insert(0, str(TABLES))
from drive import Drive  # noqa: E402

ROUNDS = int(sys.argv[1]) if len(sys.argv) > 1 else 5
CASES = {"run": (dict(), 3.0, 1.0), "walk": (dict(), 1.0, 1.5), "slip": (dict(T0=600.0), 3.0, 1.0)}
REFERENCE = {}
for line in (TABLES / "transient_values.tsv").read_text().splitlines()[1:]:
    cells = line.split("\t")
    REFERENCE.setdefault(cells[0], []).append(float(cells[2]))

ours = subprocess.Popen(
    [str(HERE / "bin/Release/net10.0/TreadmillMech.Benchmarks")], stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True
)


def ask(solver, case, setting, repeats):
    ours.stdin.write(f"{solver} {case} {setting!r} {repeats}\n")
    ours.stdin.flush()
    words = ours.stdout.readline().split()
    return float(words[0]), np.array([float(w) for w in words[3:]])


def lsoda(case, rtol):
    changes, speed, seconds = CASES[case]
    drive = Drive(**changes)
    start = time.process_time()
    times = seconds * np.linspace(0.1, 1.0, 10)
    y = drive.run(seconds, speed, times, dict(method="LSODA", rtol=rtol, atol=rtol * 1e-2))
    return 1e3 * (time.process_time() - start) / seconds, y[:, 0]


def error(case, speeds):
    return float(np.max(np.abs(speeds / np.array(REFERENCE[case]) - 1)))


LADDERS = {
    "rosenbrock": (lambda c, s: ask("rosenbrock", c, s, 20), [3e-3, 1e-3, 1e-4, 1e-5, 1e-6]),
    "lanes": (lambda c, s: ask("lanes", c, s, 10), [3e-3, 1e-3, 1e-4, 1e-5, 1e-6]),
    "rk4": (lambda c, s: ask("rk4", c, s, 1), [25000, 40000, 80000]),
    "mathnet": (lambda c, s: ask("mathnet", c, s, 1), [25000, 40000]),
    "lsoda": (lsoda, [1e-4, 1e-5, 1e-6, 1e-7]),
}


def at(points, wanted):
    """Time at an error, from the points of a ladder; the cheapest point where all of them are better."""
    points = sorted((e, t) for e, t in points.values())
    if wanted <= points[0][0]:
        return None
    for (e0, t0), (e1, t1) in zip(points, points[1:]):
        if e0 <= wanted <= e1:
            share = math.log(wanted / e0) / math.log(e1 / e0)
            return math.exp(math.log(t0) + share * (math.log(t1) - math.log(t0)))
    return min(t for _, t in points)


for case in CASES:
    found = {name: {} for name in LADDERS}
    ask("rosenbrock", case, 1e-5, 300)
    ask("lanes", case, 1e-5, 60)
    for _ in range(ROUNDS):
        for name, (solve, settings) in LADDERS.items():
            for setting in settings:
                ms, speeds = solve(case, setting)
                least = min(ms, found[name].get(setting, (0, math.inf))[1])
                found[name][setting] = (error(case, speeds), least)
    print(f"\n{case}: one simulated second; error, ms")
    for name, points in found.items():
        print(f"  {name:11s}", "  ".join(f"{s:g}: {e:.1e} {t:.3f}" for s, (e, t) in points.items()))
    for wanted in (1e-3, 1e-4, 1e-5):
        times = {name: at(points, wanted) for name, points in found.items()}
        one = times["rosenbrock"]
        if one is None:
            continue
        shown = "  ".join(f"{n} {t / one:.2f}" for n, t in times.items() if t is not None)
        print(f"  at {wanted:g}: {one:.3f} ms, {1000 / one:.0f} times real time; over it: {shown}")

drive = Drive()
y = np.zeros(17)
y[0], y[1], y[2] = 3.0, 115.0, 384.0
start = time.process_time()
for _ in range(2000):
    drive.rates(0.05, y)
print(f"\none call of the rates in Python: {(time.process_time() - start) / 2000 * 1e6:.1f} us")
ours.stdin.close()
