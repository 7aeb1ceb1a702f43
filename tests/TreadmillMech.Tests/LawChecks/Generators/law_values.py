"""Outside values of laws from numpy and scipy, written to law_values.tsv beside this file.

Each value comes from the statement of the problem (forces in balance, an integral, a differential equation, complex
impedances), never from the closed formula under test. Columns: name, value rounded to the digits that are checked, and
the call behind it. Run again with

    python3 law_values.py

numpy 1.24 or later and scipy 1.10 or later give the same table.
"""

import pathlib

import numpy as np
from scipy.integrate import dblquad, quad, solve_bvp, solve_ivp
from scipy.linalg import eigh
from scipy.optimize import brentq, minimize_scalar

ROWS = []
TIGHT = {"epsabs": 0, "epsrel": 1e-12, "limit": 500}


def row(name, value, digits, call):
    ROWS.append(f"{name}\t{value:.{digits - 1}e}\t{call}")


# Screws -------------------------------------------------------------------------------------------------------------


def wedge(load, diameter, lead, friction, flank, direction):
    """Torque from the balance of axial and circumferential forces on the unrolled thread, normal force unknown."""
    lead_angle = np.arctan(lead / (np.pi * diameter))
    drag = friction / np.cos(flank)
    sine, cosine = np.sin(lead_angle), np.cos(lead_angle)
    # Unknowns: force on the flank (its part in the plane of the lead angle) and circumferential force.
    balance = [[cosine - direction * drag * sine, 0], [-direction * sine - drag * cosine, 1]]
    return np.linalg.solve(balance, [load, 0])[1] * diameter / 2


M8 = (0.0071881, 0.00125)
row(
    "screw.raise",
    wedge(5000, *M8, 0.15, np.pi / 6, 1),
    10,
    "numpy.linalg.solve, forces on the unrolled thread: 5 kN, 7.1881 mm, 1.25 mm, 0.15, 30 deg",
)
row(
    "screw.lower",
    wedge(5000, *M8, 0.15, np.pi / 6, -1),
    10,
    "numpy.linalg.solve, forces on the unrolled thread: 5 kN, 7.1881 mm, 1.25 mm, 0.15, 30 deg, with the load",
)
AREA = 36.6e-6
ROD = np.sqrt(4 * AREA / np.pi)


def plastic(load):
    """Von Mises stress, shear constant over the section: torque is shear times pi d3/12."""
    shear = wedge(load, *M8, 0.12, np.pi / 6, 1) / (np.pi * ROD**3 / 12)
    return np.hypot(load / AREA, np.sqrt(3) * shear)


row(
    "screw.force",
    brentq(lambda load: plastic(load) - 576e6, 1e3, 1e5, xtol=1e-9),
    10,
    "scipy.optimize.brentq, von Mises stress with constant shear is 576 MPa: M8, 36.6 mm2, 0.12",
)
polar = dblquad(lambda r, a: r**3, 0, 2 * np.pi, 0, ROD / 2, epsabs=0, epsrel=1e-12)[0]
row(
    "screw.stress",
    np.linalg.norm([4e8, np.sqrt(3) * 12 * (ROD / 2) / polar]),
    10,
    "scipy.integrate.dblquad, polar moment of the rod: 400 MPa and 12 N m on 36.6 mm2",
)

# Rollers ------------------------------------------------------------------------------------------------------------

second = 4 * quad(
    lambda y: y * y * (np.sqrt(0.025**2 - y * y) - np.sqrt(max(0, 0.022**2 - y * y))), 0, 0.025, points=[0.022], **TIGHT
)[0]
row("roller.second", second, 9, "scipy.integrate.quad, y2 over the section: tube of 50 mm, wall 3 mm")


def moment(x, load, width, span):
    """Bending moment at x of a simply supported beam with a load spread over its middle."""
    loaded = min(max(0, x - (span - width) / 2), width)
    return load / 2 * x - load / width * loaded * (x - (span - width) / 2 - loaded / 2)


def deflection(load, width, span, stiffness):
    """Virtual work: the moment of a unit load at the middle times curvature."""
    edge = (span - width) / 2
    return 2 * quad(lambda x: moment(x, load, width, span) * x / 2 / stiffness, 0, span / 2, points=[edge], **TIGHT)[0]


row(
    "roller.deflection",
    deflection(2000, 0.45, 0.52, 206e9 * second),
    9,
    "scipy.integrate.quad, virtual work: 2 kN over 450 mm of 520 mm, 206 GPa, tube of 50 mm, wall 3 mm",
)
row(
    "roller.moment",
    quad(lambda x: 1000 - 2000 / 0.45 * max(0, x - 0.035), 0, 0.26, points=[0.035], **TIGHT)[0],
    10,
    "scipy.integrate.quad, shear force up to the middle: 2 kN over 450 mm of 520 mm",
)

# Bearings -----------------------------------------------------------------------------------------------------------

row(
    "bearing.spectrum",
    brentq(lambda p: 0.3 / (12000 / 900) ** 3 + 0.7 / (12000 / 1500) ** 3 - 1 / (12000 / p) ** 3, 1, 1e4, xtol=1e-10),
    10,
    "scipy.optimize.brentq, sum of damage is that of one load: 900 N for 0.3, 1500 N for 0.7, C 12 kN",
)
row(
    "bearing.roller",
    1e6 * np.exp(10 / 3 * np.log(12.5)),
    10,
    "numpy.exp and numpy.log: C/P = 12.5 to the power of ten thirds",
)

row(
    "bearing.rollers",
    brentq(
        lambda p: 0.3 * (900 / 12000) ** (10 / 3) + 0.7 * (1500 / 12000) ** (10 / 3) - (p / 12000) ** (10 / 3),
        1,
        1e4,
        xtol=1e-10,
    ),
    10,
    "scipy.optimize.brentq, sum of damage is that of one load: 900 N for 0.3, 1500 N for 0.7, C 12 kN, rollers",
)

# Belts --------------------------------------------------------------------------------------------------------------

row(
    "belt.bending",
    quad(lambda a: 0.023 + 0.002, 0, np.pi)[0] / quad(lambda a: 0.023 + 0.001, 0, np.pi)[0] - 1,
    10,
    "scipy.integrate.quad, outer arc over middle arc: 2 mm on a roller of 46 mm",
)
front, rear = 0.05, 0.03
kinks = [np.linalg.norm([np.cos(a) - 1, np.sin(a)]) for a in (front, rear)]
row(
    "belt.edge",
    800 * sum(kinks),
    10,
    "numpy.linalg.norm, sum of the two pulls at each edge: 800 N, 0.05 and 0.03 rad",
)

# Heat ---------------------------------------------------------------------------------------------------------------


def warmed(runaway):
    """Time at which a winding is 60 K warmer: 100 K without its own gain, 1200 s."""

    def reached(_, rise):
        return rise[0] - 60

    reached.terminal = True
    run = solve_ivp(
        lambda _, rise: [(100 + runaway * rise[0] - rise[0]) / 1200],
        (0, 1e4),
        [0],
        method="DOP853",
        events=reached,
        rtol=1e-12,
        atol=1e-12,
    )
    return run.t_events[0][0]


row(
    "thermal.time",
    warmed(0.4),
    9,
    "scipy.integrate.solve_ivp(DOP853), 60 K of 100 K, own gain 0.4, 1200 s",
)
row(
    "thermal.runaway",
    warmed(1.5),
    9,
    "scipy.integrate.solve_ivp(DOP853), 60 K of 100 K, own gain 1.5, 1200 s",
)

# Deck ---------------------------------------------------------------------------------------------------------------


def crossing(_, state):
    return state[1]


crossing.terminal = True
FALL = solve_ivp(
    lambda _, s: [s[1], 9.80665 - 50e3 / 80 * s[0]],
    (0, 1),
    [0, np.sqrt(2 * 9.80665 * 0.05)],
    method="DOP853",
    events=crossing,
    rtol=1e-12,
    atol=1e-14,
)
row(
    "deck.drop",
    50e3 * FALL.y_events[0][0][0],
    9,
    "scipy.integrate.solve_ivp(DOP853), spring force at the turning point: 80 kg from 50 mm on 50 kN/m",
)
STOP = solve_ivp(
    lambda _, s: [s[1], -20e3 / 75 * s[0]],
    (0, 1),
    [0, 3.2],
    method="DOP853",
    events=crossing,
    rtol=1e-12,
    atol=1e-14,
)
row(
    "deck.stop",
    20e3 * STOP.y_events[0][0][0],
    9,
    "scipy.integrate.solve_ivp(DOP853), spring force at the turning point: 75 kg at 3.2 m/s on 20 kN/m",
)
row(
    "deck.midspan",
    2 * quad(lambda x: 500 * x * x / 2 / 1215, 0, 0.3, **TIGHT)[0] + 500 / 150e3,
    10,
    "scipy.integrate.quad, virtual work, and each cushion under half of it: 1 kN, 0.6 m, EI 1215 N m2, 150 kN/m",
)

# Heat ---------------------------------------------------------------------------------------------------------------


def heat(power, conductance, capacity, first, time):
    return solve_ivp(
        lambda _, s: [(power(s[0]) - conductance * s[0]) / capacity],
        (0, time),
        [first],
        method="DOP853",
        rtol=1e-12,
        atol=1e-12,
    ).y[0, -1]


row(
    "heat.rise",
    heat(lambda _: 120, 1.5, 2700, 12, 1000),
    9,
    "scipy.integrate.solve_ivp(DOP853): 120 W, 1.5 W/K, 2700 J/K, from 12 K, 1000 s",
)
rise = 0.0
for _ in range(60):
    rise = heat(lambda _: 120, 1.5, 2700, heat(lambda _: 0, 0.9, 2700, rise, 900), 600)
row(
    "heat.cycle",
    rise,
    9,
    "scipy.integrate.solve_ivp(DOP853), 60 cycles: 600 s at 120 W and 1.5 W/K, 900 s at rest and 0.9 W/K, 2700 J/K",
)
row(
    "heat.copper",
    brentq(lambda t: 40 * (1 + 0.00393 * t) - 0.8 * t, 0, 1e3, xtol=1e-11),
    10,
    "scipy.optimize.brentq, heat made is heat carried off: 40 W cold, 0.00393 1/K, 0.8 W/K",
)
row(
    "heat.short",
    brentq(lambda k: heat(lambda _: k, 1, 3600, 0, 1800) - 1, 1, 10, xtol=1e-12),
    9,
    "scipy.optimize.brentq on solve_ivp(DOP853), final rise 1 reached after half of a time constant",
)

# Induction motor ----------------------------------------------------------------------------------------------------

# Mesh currents of stator, magnetising and rotor branches; 1.1, 0.9 ohm, 2.2, 2.0 and 48 ohm, slip 0.035, 133 V, 60 Hz.
MESH = np.array([[1.1 + 1j * (2.2 + 48), -48j], [-48j, 0.9 / 0.035 + 1j * (2.0 + 48)]])
stator, rotor = np.linalg.solve(MESH, [133, 0])
MOTOR = "numpy.linalg.solve, complex mesh currents: R 1.1 and 0.9, X 2.2 and 2.0, 48 ohm, slip 0.035, 133 V a phase"
row("motor.current", abs(stator), 10, MOTOR)
row("motor.factor", np.cos(np.angle(stator)), 10, MOTOR)
row("motor.gap", 3 * abs(rotor) ** 2 * 0.9 / 0.035, 10, MOTOR + "; heat and work of the rotor")
row("motor.torque", 3 * abs(rotor) ** 2 * 0.9 / 0.035 / (2 * np.pi * 30), 10, MOTOR + "; two pairs of poles at 60 Hz")
row("motor.resistance", (133 / stator - (1.1 + 2.2j)).real, 10, MOTOR + "; impedance less the stator's")
row("motor.reactance", (133 / stator - (1.1 + 2.2j)).imag, 10, MOTOR + "; impedance less the stator's")

# Spans --------------------------------------------------------------------------------------------------------------


def pressed(tension, stiffness, span, force):
    """Mid deflection of a beam in tension on simple supports: EI y'''' = T y'', shear F/2 at the middle."""
    half = span / 2

    def slope(_, s):
        return np.vstack([s[1], s[2], s[3], tension / stiffness * s[2]])

    def ends(a, b):
        # Middle at 0: no slope, half of the force; support at the end: no deflection, no moment.
        return np.array([a[1], a[3] - force / 2 / stiffness, b[0], b[2]])

    grid = np.linspace(0, half, 400)
    return abs(solve_bvp(slope, ends, grid, np.zeros((4, 400)), tol=1e-10, max_nodes=200000).y[0, 0])


row(
    "span.pressed",
    1e3 * pressed(300, 0.05, 0.3, 40),
    8,
    "scipy.integrate.solve_bvp, EI y'''' = T y'', mm: 300 N, 0.05 N m2, 0.3 m, 40 N in the middle",
)


def frequency(mass, span, tension, stiffness, parts=60):
    """Lowest frequency by beam elements with cubic shapes."""
    h = span / parts
    bend = stiffness / h**3 * np.array([[12, 6 * h, -12, 6 * h], [6 * h, 4 * h * h, -6 * h, 2 * h * h],
                                        [-12, -6 * h, 12, -6 * h], [6 * h, 2 * h * h, -6 * h, 4 * h * h]])
    pull = tension / (30 * h) * np.array([[36, 3 * h, -36, 3 * h], [3 * h, 4 * h * h, -3 * h, -h * h],
                                          [-36, -3 * h, 36, -3 * h], [3 * h, -h * h, -3 * h, 4 * h * h]])
    inertia = mass * h / 420 * np.array([[156, 22 * h, 54, -13 * h], [22 * h, 4 * h * h, 13 * h, -3 * h * h],
                                         [54, 13 * h, 156, -22 * h], [-13 * h, -3 * h * h, -22 * h, 4 * h * h]])
    size = 2 * (parts + 1)
    k, m = np.zeros((size, size)), np.zeros((size, size))
    for i in range(parts):
        at = slice(2 * i, 2 * i + 4)
        k[at, at] += bend + pull
        m[at, at] += inertia
    free = [i for i in range(size) if i not in (0, size - 2)]
    return np.sqrt(eigh(k[np.ix_(free, free)], m[np.ix_(free, free)], eigvals_only=True)[0]) / (2 * np.pi)


row(
    "span.frequency",
    frequency(0.1, 0.3, 300, 0.05),
    7,
    "scipy.linalg.eigh on 60 cubic beam elements: 0.1 kg/m, 0.3 m, 300 N, 0.05 N m2",
)

# Supply, tracking, measurement, gait --------------------------------------------------------------------------------

row(
    "supply.ramp",
    np.sqrt(quad(lambda t: (2 + 7 * t) ** 2, 0, 1, **TIGHT)[0]),
    10,
    "scipy.integrate.quad, square of a line from 2 to 9",
)
row(
    "supply.two",
    np.sqrt(quad(lambda t: 9.0 if t < 0.35 else 4.0, 0, 1, points=[0.35], **TIGHT)[0]),
    10,
    "scipy.integrate.quad, square of 3 for 0.35 of the time and of 2 for the rest",
)
DRIFT = solve_ivp(lambda _, y: [0.0008 - y[0] / 12], (0, 20), [-0.004], method="DOP853", rtol=1e-12, atol=1e-16)
row(
    "track.offset",
    1e3 * DRIFT.y[0, -1],
    9,
    "scipy.integrate.solve_ivp(DOP853), y' = 0.0008 - y/12, mm: from -4 mm, 20 m",
)
LONG = solve_ivp(lambda _, y: [0.0008 - y[0] / 12], (0, 600), [-0.004], method="DOP853", rtol=1e-12, atol=1e-16)
row("track.settled", 1e3 * LONG.y[0, -1], 9, "scipy.integrate.solve_ivp(DOP853), y' = 0.0008 - y/12, mm: after 600 m")


def off_centre(moment, place, centres, loop, stiffness, tension=0.0):
    """Drift of a loop whose top strand carries a couple: two pieces of beam, clamped at 0, no moment at the end.

    Unknowns: four constants of each piece (cubics, or with tension 1, x, cosh, sinh) and the drift d. The slope is -d at
    both rollers, the rest of the loop is straight, and after one loop the belt is where it was.
    """
    k = np.sqrt(tension / stiffness)

    def basis(x, order):
        if tension == 0:
            return [np.polynomial.polynomial.polyval(x, np.polynomial.polynomial.polyder([0] * i + [1], order)) for i in range(4)]
        waves = [np.cosh(k * x), np.sinh(k * x)]
        return [[1, x], [0, 1], [0, 0], [0, 0]][order] + [k**order * w for w in (waves if order % 2 == 0 else waves[::-1])]

    none = [0] * 4
    start = [basis(0, i) for i in range(4)]
    at = [basis(place, i) for i in range(4)]
    end = [basis(centres, i) for i in range(4)]
    minus = [[-x for x in b] for b in at]
    balance = [
        (start[0] + none + [0], 0),
        (start[1] + none + [1], 0),
        (at[0] + minus[0] + [0], 0),
        (at[1] + minus[1] + [0], 0),
        (at[2] + minus[2] + [0], moment / stiffness),
        (at[3] + minus[3] + [0], 0),
        (none + end[1] + [1], 0),
        (none + end[2] + [0], 0),
        (none + end[0] + [centres - loop], 0),
    ]
    return np.linalg.solve([b[0] for b in balance], [b[1] for b in balance])[-1]


for name, place in (("near", 0.45), ("far", 1.1)):
    row(
        f"track.{name}",
        1e3 * off_centre(16, place, 1.35, 2.85, 6075),
        9,
        f"numpy.linalg.solve, two pieces of beam with a couple between and a closed loop, mm/m: 16 N m at {place} m of 1.35 m, "
        "loop 2.85 m, 6075 N m2",
    )
row(
    "hub.side",
    np.linalg.solve([[1, 1], [-0.28, 0.28]], [2000 + 300, 300 * 0.1])[1],
    10,
    "numpy.linalg.solve, forces and moments of a shaft on hubs 0.56 m apart: 2 kN in the middle, 300 N at 0.1 m",
)
row(
    "belt.plane",
    360e3 / 0.45 * quad(lambda x: x * x, -0.225, 0.225, **TIGHT)[0],
    10,
    "scipy.integrate.quad, x2 over the width of 0.45 m times 360 kN over that width",
)
row(
    "measure.grade",
    np.tan(np.arctan2(0.16, 1.12) + np.arctan(0.011)),
    10,
    "numpy.arctan2 and numpy.arctan: 160 mm on 1.12 m, floor 0.011",
)
row(
    "gait.stance",
    brentq(lambda f: 2 * quad(lambda t: f if t < 0.34 else 0, 0, 1, points=[0.34], **TIGHT)[0] - 1, 0.1, 10, xtol=1e-13),
    10,
    "scipy.optimize.brentq on quad, both feet's impulse over a stride is the weight's: duty factor 0.34",
)

# Breakdown of the same induction motor, overrun, crown ------------------------------------------------------------------

OPEN = 133 * 48j / (1.1 + 50.2j)
SEEN = 48j * (1.1 + 2.2j) / (1.1 + 50.2j)
GRID = "numpy, complex: 133 V, 1.1 + 2.2j, 48j ohm"
row("motor.open", abs(OPEN), 10, GRID + ", rotor open")
row("motor.seenresistance", SEEN.real, 10, GRID + ", seen from the rotor")
row("motor.seenreactance", SEEN.imag, 10, GRID + ", seen from the rotor")


def gap_torque(slip):
    """Heat and work of the rotor over the synchronous speed, from the whole circuit's mesh equations."""
    mesh = np.array([[1.1 + 50.2j, -48j], [-48j, 0.9 / slip + 50.0j]])
    loops = np.linalg.solve(mesh, np.array([133.0, 0.0]))
    return 3 * abs(loops[1]) ** 2 * 0.9 / slip / (60 * np.pi)


BREAK = minimize_scalar(lambda s: -gap_torque(s), bounds=(0.01, 1), method="bounded", options={"xatol": 1e-12})
PEAK = "numpy.linalg.solve, both meshes, 0.9 + 2.0j ohm at 60 Hz; scipy.optimize.minimize_scalar over the slip"
row("motor.breakdown", -BREAK.fun, 10, PEAK + ": largest torque")
row("motor.breakdownslip", BREAK.x, 6, PEAK + ": its place")
row(
    "overrun.incline",
    brentq(lambda a: 882.6 * np.sin(a) - 0.08 * 882.6 * np.cos(a) - 45, 0, 1, xtol=1e-14),
    10,
    "scipy.optimize.brentq, 882.6 N on an incline against a friction of 0.08 and 45 N",
)
row(
    "overrun.friction",
    brentq(lambda m: 882.6 * np.sin(0.16) - m * 882.6 * np.cos(0.16) - 45, 0, 1, xtol=1e-14),
    10,
    "scipy.optimize.brentq, 882.6 N on 0.16 rad against 45 N",
)
CROWN = solve_ivp(
    lambda _, y: [0.0008 - y[0] / 12],
    (0, 60),
    [-0.004],
    method="DOP853",
    rtol=1e-13,
    atol=1e-17,
    events=lambda _, y: y[0] - 0.006,
)
row("track.length", CROWN.t_events[0][0], 8, "scipy.integrate.solve_ivp(DOP853, events), y' = 0.0008 - y/12: to 6 mm")

pathlib.Path(__file__).with_name("law_values.tsv").write_text(
    "name\tvalue\tcall\n" + "\n".join(ROWS) + "\n", encoding="utf-8"
)
