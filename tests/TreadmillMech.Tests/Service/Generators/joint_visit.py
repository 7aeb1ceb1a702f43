"""Outside solution of one whole visit by scipy, written to joint_visit.tsv beside this file.

The visit is that of JointScipyTests. Its equations are written out here once more, from statics and the circuit of the
motor; the most probable point is found by scipy.optimize.least_squares on residuals and priors, pass and fail as the
root of twice the negative logarithm of its probability (scipy.special.log_ndtr); the covariance is the inverse of the
information from central differences. For pass and fail, mean and covariance are then those of the linearised problem
by expectation propagation, one outcome at a time, its moments by scipy.integrate.quad on the tilted density. Priors and uncertainties are the defaults of VisitOptions.

Columns: name, value. Rows beginning with "probit" are functions of the normal distribution by scipy.special.

    python3 joint_visit.py

numpy 1.24 or later and scipy 1.10 or later give the same table.
"""

import pathlib

import numpy as np
from scipy.integrate import quad
from scipy.optimize import least_squares
from scipy.special import log_ndtr, ndtr, ndtri

G = 9.80665

# The machine -----------------------------------------------------------------------------------------------------------
WIDTH, THICK, MASS_AREA = 0.45, 0.002, 2.4
R1, R2, CENTRES = 0.026, 0.0235, 1.35
LEAD = 0.00125
PM, PR, PC = 0.014, 0.042, 0.19
DB_MASS = 0.05
RATIO = PR / PM

# Nobody tests for slip in this visit: half of the variance that a load read while a belt slips has besides the meter's.
LOADED = np.sqrt(0.02**2 + 0.5 * 0.1**2)

LEAN = np.arcsin((R1 - R2) / CENTRES)
SPAN = CENTRES * np.cos(LEAN)
WRAP = np.pi + 2 * LEAN
LOOP = 2 * SPAN + R1 * WRAP + R2 * (np.pi - 2 * LEAN)
SHARE = (0.5 * R1 * WRAP + 0.5 * SPAN) / LOOP
WEIGHT = MASS_AREA * WIDTH * G
DB_LEAN = np.arcsin((PM - PR) / PC)
DB_WRAP = np.pi + 2 * DB_LEAN
DB_SPAN = PC * np.cos(DB_LEAN)

# The unknowns: name, logarithm or not, centre, spread, tied to --------------------------------------------------------
UNKNOWNS = [
    ("tension", True, 2400 * WIDTH, 0.6, None),
    ("stiffness", True, 100 * 8000 * WIDTH, 0.4, None),
    ("deck0", True, 0.22, 0.45, None),
    ("drag0", True, 25, 0.6, None),
    ("roller0", True, 0.3, 0.4, None),
    ("constant", True, 0.28, 0.1, None),
    ("friction", True, 0.1, 0.7, None),
    ("ohms", True, 1.0, 0.05, None),
    ("brushes", False, 2, 0.5, None),
    ("drive0", True, 200, 0.6, None),
    ("rib", True, 0.35, 0.45, None),
    ("drive1", True, 250, 0.4, None),
    ("roller1", True, 0.35, 0.3, None),
    ("deck1", True, 0.18, 0.3, None),
    ("serviced", True, 0, 0.3, "drag0"),
    # Half a turn of both bolts changes the drag by 0.2 a turn.
    ("drag1", True, 0, 0.2 * 0.5, "serviced"),
]
NAMES = [u[0] for u in UNKNOWNS]
START = np.array([np.log(c) if log and c > 0 else c for _, log, c, _, _ in UNKNOWNS])
START[NAMES.index("serviced")] = START[NAMES.index("drag1")] = np.log(25)


def natural(x):
    return {n: np.exp(v) if u[1] else v for n, v, u in zip(NAMES, x, UNKNOWNS)}


def gain(p, turns):
    return p["stiffness"] * 2 * np.cos(LEAN) * turns * LEAD / LOOP


def lift(p, height, turns):
    half = np.hypot(SPAN / 2, height)
    raised = p["tension"] + gain(p, turns) + p["stiffness"] * (2 * half - SPAN) / LOOP
    return 2 * raised * height / half + WEIGHT * SPAN / 2


def holds_roller(p, state, turns):
    ratio = np.exp(p["roller" + state] * WRAP)
    return (p["tension"] + gain(p, turns)) * (ratio - 1) / (ratio * (1 - SHARE) + SHARE)


def holds_drive(p, state):
    ratio = np.exp(p["rib"] / np.sin(np.radians(20)) * DB_WRAP)
    return 2 * p["drive" + state] * (ratio - 1) / (ratio + 1) * PR / R1


def current(p, state, mass):
    return ((p["deck" + state] * mass * G + p["drag" + state]) * R1 / RATIO + p["friction"]) / p["constant"]


def pull(p, state, mass):
    return p["drag" + state] + p["friction"] * RATIO / R1 + p["deck" + state] * mass * G


def volts(p, amperes, speed):
    return p["constant"] * speed + p["ohms"] * amperes + p["brushes"]


def sigma_lift(p, height, turns, force):
    slope = (lift(p, height + 1e-6, turns) - lift(p, height - 1e-6, turns)) / 2e-6
    return np.hypot(0.02 * force, 5e-4 * slope)


def sigma_volts(p, amperes, speed, reading):
    return np.sqrt((0.005 * reading) ** 2 + (p["constant"] * 0.005 * speed) ** 2 + (p["ohms"] * max(0.05, 0.02 * amperes)) ** 2)


def rows(p):
    """Every row: measured (True, expected, measured, sigma) or pass and fail (False, distance)."""

    def plain(value, measured, relative, least=0.0):
        return (True, value, measured, max(least, relative * measured))

    def held(value, at):
        return (False, np.log(value / at) / 0.02)

    def point(amperes, speed, reading):
        return (True, volts(p, amperes, speed), reading, sigma_volts(p, amperes, speed, reading))

    return [
        (True, lift(p, 0.03, 0), 110, sigma_lift(p, 0.03, 0, 110)),
        (True, lift(p, 0.05, 0), 222, sigma_lift(p, 0.05, 0, 222)),
        plain(pull(p, "0", 0), 31, 0.02, 0.2),
        plain(pull(p, "0", 60), 150, 0.02, 0.2),
        plain(current(p, "0", 0), 1.13, 0.02, 0.05),
        point(1.13, 173, 50.8),
        plain(current(p, "0", 0), 1.18, 0.02, 0.05),
        point(1.18, 346, 98.9),
        plain(current(p, "0", 118), 8.3, LOADED, 0.05),
        plain(np.sqrt(p["drive0"] / DB_MASS) / (2 * DB_SPAN), 165, 0.02),
        held(holds_roller(p, "0", 0), 560),
        plain(holds_drive(p, "0"), 560, 0.02),
        plain(holds_roller(p, "0", 0), 700, 0.02),
        held(holds_drive(p, "1"), 700),
        held(holds_roller(p, "1", 0.5), 930),
        held(holds_drive(p, "1"), 930),
        (True, lift(p, 0.03, 0.5), 131, sigma_lift(p, 0.03, 0.5, 131)),
        plain(pull(p, "1", 0), 29, 0.02, 0.2),
        plain(pull(p, "1", 60), 122, 0.02, 0.2),
        plain(current(p, "1", 0), 1.07, 0.02, 0.05),
        plain(current(p, "1", 118), 6.9, LOADED, 0.05),
    ]


def off_prior(x):
    p = dict(zip(NAMES, x))
    return [
        (p[n] - (p[tied] if tied else (np.log(c) if log else c))) / s
        for n, log, c, s, tied in UNKNOWNS
    ]


def residuals(x, sigmas):
    out = []
    for row, sigma in zip(rows(natural(x)), sigmas):
        out.append((row[1] - row[2]) / sigma if row[0] else np.sqrt(-2 * log_ndtr(row[1])))
    return np.array(out + off_prior(x))


def sigmas_at(x):
    return [row[3] if row[0] else 1.0 for row in rows(natural(x))]


def gradient(function, x, step=1e-5):
    return np.array([(function(x + step * e) - function(x - step * e)) / (2 * step) for e in np.eye(len(x))])


x = START
for _ in range(60):
    sigmas = sigmas_at(x)
    fit = least_squares(residuals, x, args=(sigmas,), jac="3-point", xtol=1e-15, ftol=1e-15, gtol=1e-15, max_nfev=2000)
    moved = np.max(np.abs(fit.x - x))
    x = fit.x
    if moved < 1e-10:
        break

sigmas = sigmas_at(x)
information = np.zeros((len(x), len(x)))
chi = 0.0
for i, row in enumerate(rows(natural(x))):
    slope = gradient(lambda y, i=i: rows(natural(y))[i][1], x)
    if row[0]:
        weight = 1 / sigmas[i] ** 2
        chi += ((row[1] - row[2]) / sigmas[i]) ** 2
    else:
        ratio = np.exp(-0.5 * row[1] ** 2 - 0.5 * np.log(2 * np.pi) - log_ndtr(row[1]))
        weight = ratio * (ratio + row[1])
    information += weight * np.outer(slope, slope)
jacobian = gradient(lambda y: np.array(off_prior(y)), x)
information += jacobian @ jacobian.T
chi += float(np.sum(np.square(off_prior(x))))

# Pass and fail by their moments -----------------------------------------------------------------------------------------
sites = []
base = information.copy()
shift = np.zeros(len(x))
for i, row in enumerate(rows(natural(x))):
    if not row[0]:
        slope = gradient(lambda y, i=i: rows(natural(y))[i][1], x)
        ratio = np.exp(-0.5 * row[1] ** 2 - 0.5 * np.log(2 * np.pi) - log_ndtr(row[1]))
        weight = ratio * (ratio + row[1])
        base -= weight * np.outer(slope, slope)
        shift -= ratio * slope
        sites.append([slope, row[1], weight, ratio])


def tilted(w, middle, variance):
    """Mean and variance of a normal distance times the probability of the outcome, by quadrature."""
    sd = np.sqrt(variance)

    def moment(power):
        def density(t):
            return t**power * np.exp(-0.5 * t * t + log_ndtr(w + middle + sd * t))

        return quad(density, -12, 12, points=[-(w + middle) / sd] if abs((w + middle) / sd) < 12 else None,
                    epsabs=0, epsrel=1e-12, limit=800)[0]

    zero, one, two = moment(0), moment(1), moment(2)
    mean = one / zero
    return middle + sd * mean, variance * (two / zero - mean**2)


for sweep in range(400):
    change = 0.0
    for site in sites:
        precision = base + sum(s[2] * np.outer(s[0], s[0]) for s in sites)
        covariance = np.linalg.inv(precision)
        mean = covariance @ (shift + sum(s[3] * s[0] for s in sites))
        slope, w, weight, pulls = site
        variance, middle = slope @ covariance @ slope, slope @ mean
        without = 1 / (1 / variance - weight)
        before = without * (middle / variance - pulls)
        new_mean, new_variance = tilted(w, before, without)
        new_weight, new_pull = 1 / new_variance - 1 / without, new_mean / new_variance - before / without
        change = max(change, abs(new_weight - weight) * variance, abs(new_pull - pulls) * np.sqrt(variance))
        site[2], site[3] = new_weight, new_pull
    if change < 1e-9:
        break

covariance = np.linalg.inv(base + sum(s[2] * np.outer(s[0], s[0]) for s in sites))
x = x + covariance @ (shift + sum(s[3] * s[0] for s in sites))

QUANTITIES = {
    "RestTensionAsFound": lambda p: p["tension"],
    "RestTensionNow": lambda p: p["tension"] + gain(p, 0.5),
    "RelaxedForcePerWidth": lambda p: p["stiffness"] / (100 * WIDTH),
    "DeckFrictionAsFound": lambda p: p["deck0"],
    "DeckFrictionNow": lambda p: p["deck1"],
    "DriveRollerFrictionAsFound": lambda p: p["roller0"],
    "DriveRollerFrictionNow": lambda p: p["roller1"],
    "DriveBeltTensionAsFound": lambda p: p["drive0"],
    "DriveBeltTensionNow": lambda p: p["drive1"],
    "BeltDragAsFound": lambda p: p["drag0"],
    "BeltDragNow": lambda p: p["drag1"],
    "MotorFrictionTorque": lambda p: p["friction"],
    "NoLoadPull": lambda p: p["drag1"] + p["friction"] * RATIO / R1,
    "MotorConstant": lambda p: p["constant"],
    "ArmatureResistance": lambda p: p["ohms"],
}

ROWS = []
gradients = {}
for name, law in QUANTITIES.items():
    gradients[name] = gradient(lambda y, law=law: law(natural(y)), x)
    ROWS.append((name, law(natural(x))))
    ROWS.append((name + ".uncertainty", np.sqrt(gradients[name] @ covariance @ gradients[name])))


def correlation(one, two):
    a, b = gradients[one], gradients[two]
    return a @ covariance @ b / np.sqrt((a @ covariance @ a) * (b @ covariance @ b))


ROWS.append(("correlation RestTensionAsFound RelaxedForcePerWidth", correlation("RestTensionAsFound", "RelaxedForcePerWidth")))
ROWS.append(("correlation BeltDragAsFound MotorFrictionTorque", correlation("BeltDragAsFound", "MotorFrictionTorque")))
ROWS.append(("chi square", chi))

for w in (-40.0, -24.0, -8.0, -1.5, 0.0, 0.7, 3.0, 9.0):
    ROWS.append((f"probit log {w:g}", log_ndtr(w)))
    slope = np.exp(-0.5 * w * w - 0.5 * np.log(2 * np.pi) - log_ndtr(w))
    ROWS.append((f"probit slope {w:g}", slope))
for a, b in ((0.3, -1.2), (2.0, 2.5), (-3.0, -2.0), (5.0, 0.1), (-6.0, 4.0)):
    both = ndtr(a) * ndtr(b)
    ROWS.append((f"probit both {a:g} {b:g}", ndtri(both)))

path = pathlib.Path(__file__).with_suffix(".tsv")
path.write_text("".join(f"{name}\t{value:.9e}\n" for name, value in ROWS))
