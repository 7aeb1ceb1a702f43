"""Writes transient_values.tsv: runs of the invented machine by scipy's Radau at 1e-11, on equations coded in drive.py.

Call: /usr/bin/python3 transient_values.py
Columns: case, time, then the 17 states in the order of drive.py.
"""

import pathlib

import numpy as np

from drive import HEAT, Drive

TIGHT = dict(method="Radau", rtol=1e-11, atol=1e-13)
CASES = {
    "run": (dict(), dict(duration=1.0, speed=3.0)),
    "walk": (dict(), dict(duration=1.5, speed=1.0)),
    "slip": (dict(T0=600.0), dict(duration=1.0, speed=3.0)),
    "motor-sensor": (dict(sensor="motor", Td=120.0), dict(duration=1.0, speed=3.0)),
    "one-quadrant": (dict(brakes=False), dict(duration=1.5, speed=3.0, ramp=(0.3, 1.0, 4.0))),
    "ramp": (dict(), dict(duration=2.0, speed=1.0, ramp=(0.2, 3.0, 2.0))),
    "coast": (dict(), dict(duration=1.5, speed=2.5, key=0.4)),
    "empty-coast": (dict(mass=0.0), dict(duration=1.5, speed=3.0, key=0.2)),
    "warm": (dict(heat=HEAT), dict(duration=2.0, speed=3.0)),
}

rows = []
for name, (changes, plan) in CASES.items():
    times = np.round(np.linspace(0.1, 1.0, 10) * plan["duration"], 9)
    for t, y in zip(times, Drive(**changes).run(times=times, solver=TIGHT, **plan)):
        rows.append("\t".join([name, repr(float(t)), *(f"{float(x):.12g}" for x in y)]))
    print(name, rows[-1])

pathlib.Path(__file__).with_name("transient_values.tsv").write_text(
    "case\ttime\tv\tw1\twm\tz\ti\tx\ttw\ttm\ttb\ttd\ts\tsupplied\tlost\tgiven\tslide\tpulleyslide\ti2\n"
    + "\n".join(rows) + "\n",
    encoding="utf-8",
)
