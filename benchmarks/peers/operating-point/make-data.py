"""Writes the columns that every peer reads: invented machines and people, the same for the same seed.

usage: make-data.py FOLDER ROWS

One file of raw doubles a column, and a manifest: which inputs are columns and which are one number for all rows, and which
outputs are wanted. Written once; a folder whose manifest says the same is left alone.
"""

import pathlib
import sys

import numpy as np

SEED = 20240229
OUTPUTS = (
    "TensionNow SlackTension TightTension BeltMargin BeltSlide MeanPull PeakPull DriveRollerHubLoad DriveBeltMargin "
    "MotorHubLoad PeakCurrent MainsPower"
).split()

# Kinds of numbers: even between two ends, or normal with mean and deviation cut at three deviations.
COLUMNS = {
    "BeltStiffness": ("even", 3.0e5, 6.0e5),
    "RestTension": ("normal", 1000, 130),
    "DriveRollerDiameter": ("even", 0.055, 0.075),
    "TailRollerDiameter": ("even", 0.045, 0.060),
    "CentreDistance": ("even", 1.30, 1.60),
    "LeftTurns": ("even", -0.25, 0.25),
    "RightTurns": ("even", -0.25, 0.25),
    "DriveRollerFriction": ("normal", 0.36, 0.025),
    "DeckFriction": ("normal", 0.17, 0.02),
    "BeltDrag": ("even", 15, 40),
    "DriveBeltTension": ("normal", 330, 35),
    "DriveBeltFriction": ("normal", 0.38, 0.02),
    "RollerPulleyDiameter": ("even", 0.085, 0.100),
    "MotorConstant": ("even", 0.25, 0.40),
    "ArmatureResistance": ("even", 0.5, 1.2),
    "PersonMass": ("normal", 76, 11),
    "LegLength": ("normal", 0.91, 0.05),
    "BeltSpeed": ("even", 0.8, 4.5),
    "Incline": ("even", 0, 0.05),
    "StrikePosition": ("even", 0.30, 0.50),
}
CONSTANTS = {
    "BeltWidth": 0.5,
    "BeltThickness": 0.0018,
    "BeltMassPerArea": 2.2,
    "DriveRollerInertia": 0.004,
    "TailRollerInertia": 0.001,
    "DriveHubCompliance": 0,
    "TailHubCompliance": 2e-7,
    "ThreadLead": 0.00125,
    "BoltAngle": 0,
    "GrooveHalfAngle": 0.3490658503988659,
    "DriveBeltMassPerLength": 0.06,
    "MotorPulleyDiameter": 0.030,
    "PulleyCentreDistance": 0.2,
    "BrushDrop": 1.5,
    "MotorFrictionTorque": 0.1,
    "ControllerEfficiency": 0.9,
    "StandbyPower": 8,
    "PowerFactor": 0.65,
    "MainsVoltage": 230,
    "MotorVoltageLimit": 300,
    "MotorCurrentLimit": 50,
    "StepFrequency": 0,
    "BrakingPeak": 0,
    "RailSupport": 0,
    "RailForce": 0,
}


def manifest(rows):
    lines = [f"rows {rows}"]
    lines += [f"input {name} column" for name in COLUMNS]
    lines += [f"input {name} {value!r}" for name, value in CONSTANTS.items()]
    lines += [f"output {name}" for name in OUTPUTS]
    return "\n".join(lines) + f"\n# seed {SEED} {sorted(COLUMNS.items())}\n"


def main():
    folder, rows = pathlib.Path(sys.argv[1]), int(sys.argv[2])
    folder.mkdir(parents=True, exist_ok=True)
    text = manifest(rows)
    done = folder / "manifest.txt"
    if done.exists() and done.read_text() == text:
        return
    done.unlink(missing_ok=True)
    for number, (name, (kind, low, high)) in enumerate(COLUMNS.items()):
        random = np.random.default_rng([SEED, number])
        if kind == "even":
            values = random.uniform(low, high, rows)
        else:
            values = low + high * np.clip(random.standard_normal(rows), -3, 3)
        values.tofile(folder / f"{name}.f64")
    done.write_text(text)


main()
