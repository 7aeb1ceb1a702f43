"""Serves the peers on arrays: reads the columns, then runs rounds as standard input asks for them.

usage: serve.py FOLDER numpy CHUNK | FOLDER pint CHUNK

A chunk of 0 takes all rows of a round as whole arrays.
"""

import pathlib
import sys
import time

import numpy as np

sys.dont_write_bytecode = True
import model  # noqa: E402

UNITS = {
    "BeltWidth": "m", "BeltThickness": "m", "BeltMassPerArea": "kg/m**2", "BeltStiffness": "N", "RestTension": "N",
    "DriveRollerDiameter": "m", "TailRollerDiameter": "m", "DriveRollerInertia": "kg*m**2",
    "TailRollerInertia": "kg*m**2", "CentreDistance": "m", "DriveHubCompliance": "m/N", "TailHubCompliance": "m/N",
    "ThreadLead": "m", "BoltAngle": "rad", "BeltDrag": "N", "DriveBeltTension": "N", "GrooveHalfAngle": "rad",
    "DriveBeltMassPerLength": "kg/m", "MotorPulleyDiameter": "m", "RollerPulleyDiameter": "m",
    "PulleyCentreDistance": "m", "MotorConstant": "V*s", "ArmatureResistance": "ohm", "BrushDrop": "V",
    "MotorFrictionTorque": "N*m", "StandbyPower": "W", "MainsVoltage": "V", "PersonMass": "kg", "LegLength": "m",
    "BeltSpeed": "m/s", "Incline": "rad", "StrikePosition": "m", "RailForce": "N",
}  # fmt: skip
RESULTS = {
    "TensionNow": "N", "SlackTension": "N", "TightTension": "N", "BeltMargin": "", "BeltSlide": "m", "MeanPull": "N",
    "PeakPull": "N", "DriveRollerHubLoad": "N", "DriveBeltMargin": "", "MotorHubLoad": "N", "PeakCurrent": "A",
    "MainsPower": "W",
}  # fmt: skip

# What is uncertain in the draws, with its relative standard uncertainty; the program in C# has the same list.
UNCERTAIN = {
    "RestTension": (1000, 0.05), "BeltStiffness": (450000, 0.1), "DriveRollerFriction": (0.36, 0.05),
    "DeckFriction": (0.17, 0.08), "BeltDrag": (28, 0.1), "DriveBeltTension": (330, 0.05),
    "DriveBeltFriction": (0.38, 0.05), "MotorConstant": (0.3, 0.02), "PersonMass": (80, 0.02),
    "LegLength": (0.91, 0.02), "BeltSpeed": (3.2, 0.01), "StrikePosition": (0.4, 0.05),
}  # fmt: skip


class Peer:
    def __init__(self, folder, kind, chunk):
        self.kind, self.chunk = kind, chunk
        self.columns, self.constants, self.outputs = {}, {}, {}
        for line in (folder / "manifest.txt").read_text().splitlines():
            word, name, *value = line.split()
            if word == "rows":
                rows = int(name)
            elif word == "input" and value[0] == "column":
                self.columns[name] = np.memmap(folder / f"{name}.f64", float, "r")
            elif word == "input":
                self.constants[name] = float(value[0])
            elif word == "output":
                self.outputs[name] = np.zeros(rows)
        if kind == "pint":
            import pint

            self.units = pint.UnitRegistry()
            q = self.units
            model.UNIT = model.Bag(m=1.0 * q.m, s=1.0 * q.s, N=1.0 * q.N, number=self.number)

    def number(self, value):
        return value.m_as("dimensionless") if hasattr(value, "m_as") else value

    def monte_carlo(self, draws):
        """Nanoseconds a draw, then the 2.5th, 50th and 97.5th percentile of the belt's margin."""
        fixed = {name: float(values[0]) for name, values in self.columns.items()} | self.constants
        start = time.perf_counter()
        random = np.random.default_rng(1)
        margins = np.empty(draws)
        for first in range(0, draws, self.chunk):
            count = min(draws - first, self.chunk)
            drawn = {
                name: value * (1 + relative * random.standard_normal(count))
                for name, (value, relative) in UNCERTAIN.items()
            }
            margins[first : first + count] = model.run(model.Bag(**(fixed | drawn))).BeltMargin
        found = np.percentile(margins, [2.5, 50, 97.5])
        nanoseconds = (time.perf_counter() - start) * 1e9 / draws
        return " ".join([f"{nanoseconds:.6g}", *(repr(float(one)) for one in found)])

    def run(self, rows):
        chunk = self.chunk or rows
        for start in range(0, rows, chunk):
            part = slice(start, min(rows, start + chunk))
            inputs = {name: np.asarray(values[part]) for name, values in self.columns.items()} | self.constants
            if self.kind == "pint":
                inputs = {name: self.units.Quantity(value, UNITS.get(name, "")) for name, value in inputs.items()}
            result = model.run(model.Bag(**inputs))
            for name, to in self.outputs.items():
                value = getattr(result, name)
                to[part] = value.m_as(RESULTS[name]) if hasattr(value, "m_as") else value


def about(peer):
    extra = f", pint {sys.modules['pint'].__version__}" if peer.kind == "pint" else ""
    return f"Python {sys.version.split()[0]}, numpy {np.__version__}{extra}, chunks of {peer.chunk or 'all'} rows"


def main():
    folder = pathlib.Path(sys.argv[1])
    np.seterr(all="ignore")
    peer = Peer(folder, sys.argv[2], int(sys.argv[3]))
    for line in sys.stdin:
        command, *words = line.split()
        if command == "quit":
            return
        if command == "about":
            print(about(peer), flush=True)
            continue
        if command == "montecarlo":
            print(peer.monte_carlo(int(words[0])), flush=True)
            continue
        rows = int(words[0])
        times = int(words[1]) if command == "cache" else 1
        start = time.perf_counter()
        for _ in range(times):
            peer.run(rows)
        if command == "write":
            for name, values in peer.outputs.items():
                values[:rows].tofile(pathlib.Path(words[1]) / f"{name}.f64")
        print(f"{(time.perf_counter() - start) * 1e9 / (rows * times):.6g}", flush=True)


main()
