"""The equations of docs/articles/transient.md, written down a second time in numpy, for scipy's solvers.

Nothing here is shared with the library: geometry, gait, grip, motor and controller are coded from the article. All SI.
Used by transient_values.py (the stored reference) and by the comparison of speeds under benchmarks/peers.
"""

import math

import numpy as np
from scipy.integrate import quad, solve_ivp
from scipy.optimize import brentq

G = 9.80665

# The invented machine of the tests, with a drive that is wholly known.
MACHINE = dict(
    b=0.45, h=0.002, m_area=2.4, k1=8000.0, d1=0.05, d2=0.045, C=1.35, T0=1000.0, mu_r=0.3, mu_d=0.2, mu_ds=0.3, F0=20.0,
    dm=0.03, dp=0.1, Cd=0.2, Td=250.0, mu_p=0.4, groove=math.radians(40), md=0.04, k=0.35, R=1.0, Vb=2.0, Mf=0.1,
    Vmax=180.0, Imax=20.0, Jm=0.01, L=0.002, Kp=40.0, Ti=0.3, tau=0.005, loss=0.1, vs=0.1, tube=0.003, rho=7850.0,
    brakes=True, sensor="roller", x0=0.35, mass=90.0, heat=None,
)

# Winding and housing of the invented motor; the fan's rated speed in rad/s.
HEAT = dict(
    Cw=200.0, Gw=3.0, Ch=1500.0, G0=0.8, G1=2.0, wr=400.0, air=20.0, beta=0.002, Cb=4000.0, Gb=8.0, Cd=6000.0, Gd=3.0,
    share=0.5,
)

V, W1, WM, Z, I, X, TW, TM, TB, TD, S, ESUP, ELOST, EGIVEN, SLIDE, PSLIDE, I2 = range(17)


def tube_inertia(rho, d, wall, length):
    ro, ri = d / 2, d / 2 - wall
    m = rho * math.pi * (ro**2 - ri**2) * length
    return m * (ro**2 + ri**2) / 2


class Drive:
    def __init__(self, **changes):
        p = dict(MACHINE, **changes)
        self.p = p
        self.r1, r2 = (p["d1"] + p["h"]) / 2, (p["d2"] + p["h"]) / 2
        a = math.asin((self.r1 - r2) / p["C"])
        self.wrap = math.pi + 2 * a
        self.strand = p["C"] * math.cos(a)
        self.loop = 2 * self.strand + self.r1 * self.wrap + r2 * (math.pi - 2 * a)
        self.EA = 100 * p["k1"] * p["b"]
        self.mu = p["m_area"] * p["b"]
        self.m = self.mu * self.loop + tube_inertia(p["rho"], p["d2"], p["tube"], p["b"]) / r2**2
        self.J1 = tube_inertia(p["rho"], p["d1"], p["tube"], p["b"])
        self.ks = 4 * self.EA / self.loop
        self.cs = p["loss"] * math.sqrt(self.ks * self.m)
        self.Rb = math.exp(p["mu_r"] * self.wrap)
        self.rm, self.rp = p["dm"] / 2, p["dp"] / 2
        wrap = math.pi + 2 * math.asin((self.rm - self.rp) / p["Cd"])
        self.Rd = math.exp(p["mu_p"] / math.sin(p["groove"] / 2) * wrap)
        self.feet = []
        self.stand = 0.0
        self.on = True
        self.set0, self.rise, self.from_ = 0.0, 0.0, 0.0
        self.N = p["mass"] * G

    # --- the person -------------------------------------------------------------------------------------------------
    def land(self, t, v):
        v = max(0.3, v)
        if v > 2.0:
            f = 3.024 * (v / 4) ** 0.308
            beta = min(0.5, 0.2181 + 0.3604 / v)
            q, phi, r, impulse = -0.1366 + 0.0261 * min(v, 6), min(0.62, 0.345 + 0.03 * v), 0.0, 0.016 + 0.001 * v
        else:
            f = 1.640 * v**0.479
            beta = max(0.5, 0.655 - 0.035 * v)
            q, phi, r, impulse = min(1, 0.248 + 0.132 * v * v), 0.6, 0.45, 0.027
        tc = 2 * beta / f
        s0 = (self.r1 * self.wrap / 2 + self.p["x0"]) / self.loop
        # Change of sign at phi, mean zero, braking impulse as measured: each by solving and integrating, not by the formulas.
        part = lambda u, w: math.sin(2 * u) + r * math.sin(4 * u) + w * (math.sin(3 * u) - math.sin(u) / 3)
        w = brentq(lambda w: part(math.pi * phi, w), -2, 4, xtol=1e-14)
        a2 = impulse * self.N / (tc * quad(lambda u: part(math.pi * u, w), 0, phi, epsabs=1e-13)[0])
        return dict(
            t=t, tc=tc, A=math.pi * self.N / (4 * beta * (1 + q / 3)), q=q, along=lambda u: a2 * part(math.pi * u, w), s=s0,
            ride=v * tc / self.loop,
        ), 1 / f

    def loads(self, t):
        n = sn = a = sa = 0.0
        for foot in self.feet:
            u = (t - foot["t"]) / foot["tc"]
            if u < -1e-12 or u > 1 + 1e-12:
                continue
            q = foot["q"]
            N = foot["A"] * (math.sin(math.pi * u) + q * math.sin(3 * math.pi * u))
            F = foot["along"](u)
            s = foot["s"] + foot["ride"] * u
            n, sn, a, sa = n + N, sn + N * s, a + F, sa + F * s
        return n, sn, a, sa

    # --- rates ------------------------------------------------------------------------------------------------------
    def rates(self, t, y):
        p = self.p
        v, w1, wm, z, i, x = y[V], y[W1], y[WM], y[Z], y[I], y[X]
        n, sn, along, salong = self.loads(t)
        if self.stand:
            n, sn = self.N, self.N * (self.r1 * self.wrap / 2 + p["x0"]) / self.loop
        sign = v / math.sqrt(v * v + 0.005**2)
        mu = (p["mu_d"] + (p["mu_ds"] - p["mu_d"]) * math.exp(-((v / p["vs"]) ** 2))) * sign
        drag = p["F0"] * sign
        load = mu * n + drag + along
        shared = mu * sn + drag / 2 + salong
        mean = p["T0"] - self.mu * v * v + shared - load / 2
        u = w1 * self.r1
        most = max(0.0, 2 * mean * (self.Rb - 1) / (self.Rb + 1))
        grip = (self.ks * z + self.cs * (u - v)) / (1 + self.cs * abs(u) / self.EA)
        pull = max(-most, min(most, grip))
        zdot = (pull - self.ks * z) / self.cs
        slide = u - v - abs(u) * pull / self.EA - zdot
        w = wm * self.rm - w1 * self.rp
        most_d = 2 * max(0.0, p["Td"] - p["md"] * (w1 * self.rp) ** 2) * (self.Rd - 1) / (self.Rd + 1)
        fd = most_d * w / math.sqrt(w * w + 0.02**2)
        k, R = p["k"], p["R"]
        if p["heat"]:
            k *= 1 - p["heat"]["beta"] * (y[TM] - 20)
            R *= (y[TW] + 234.5) / (20 + 234.5)
        measured = u if p["sensor"] == "roller" else wm * self.rm / self.rp * self.r1 if p["sensor"] == "motor" else v
        brush = p["Vb"] * i / math.sqrt(i * i + 0.01)
        low = -1.0 if p["brakes"] else 0.0
        if self.on:
            e = self.set0 + self.rise * (t - self.from_) - measured
            ask = p["Kp"] * e + x
            target = max(low * p["Imax"], min(p["Imax"], ask))
            xdot = (p["Kp"] * e - (ask - target)) / p["Ti"]
            volt = k * wm + R * target + brush + p["L"] * (target - i) / p["tau"]
            volt = max(low * p["Vmax"], min(p["Vmax"], volt))
        else:
            xdot = 0.0
            volt = k * wm + brush - p["L"] * i / p["tau"]
        idot = (volt - k * wm - R * i - brush) / p["L"]
        if not p["brakes"]:
            idot = max(idot, -i / 1e-3)
            volt = k * wm + R * i + brush + p["L"] * idot
        fric = p["Mf"] * wm / math.sqrt(wm * wm + 0.25)
        heat_a = R * i * i + brush * i
        tw = tm = tb = td = 0.0
        if p["heat"]:
            h = p["heat"]
            G_air = h["G0"] + h["G1"] * math.sqrt(math.sqrt(wm * wm + 1) / h["wr"])
            tw = (heat_a - h["Gw"] * (y[TW] - y[TM])) / h["Cw"]
            tm = (h["Gw"] * (y[TW] - y[TM]) + fric * wm - G_air * (y[TM] - h["air"])) / h["Ch"]
            deck = mu * n * v
            tb = (h["share"] * deck - h["Gb"] * (y[TB] - h["air"])) / h["Cb"]
            td = ((1 - h["share"]) * deck - h["Gd"] * (y[TD] - h["air"])) / h["Cd"]
        lost = (
            heat_a + fric * wm + fd * w + pull * (u - v - zdot) + self.cs * zdot**2 + mu * n * v + drag * v
        )
        return np.array([
            (pull - load) / self.m, (fd * self.rp - pull * self.r1) / self.J1, (k * i - fric - fd * self.rm) / p["Jm"],
            zdot, idot, xdot, tw, tm, tb, td, v, volt * i, lost, along * v, abs(slide), abs(w), i * i,
        ])

    # --- a run, from contact edge to contact edge -----------------------------------------------------------------------
    def run(self, duration, speed, times, solver, key=math.inf, ramp=None, stats=None):
        """States at the times. ramp = (at, to, rate) of the set speed; key: when the safety key is pulled."""
        p = self.p
        y = np.zeros(17)
        y[TW] = y[TM] = y[TB] = y[TD] = 20.0
        mean = p["mu_d"] * self.N + p["F0"]
        current = (mean * self.r1 * self.rm / self.rp + p["Mf"]) / p["k"]
        y[V], y[W1] = speed, speed * (1 + mean / self.EA) / self.r1
        y[WM], y[Z], y[I], y[X] = y[W1] * self.rp / self.rm, mean / self.ks, current, current
        self.set0, self.rise, self.from_, self.on = speed, 0.0, 0.0, True
        t, next_strike = 0.0, math.inf
        if self.N > 0:
            foot, step = self.land(0.0, speed)
            self.feet = [dict(foot, t=-step), foot] if foot["tc"] > step else [foot]
            next_strike = step
        knots = [duration] + ([key] if key < duration else [])
        if ramp:
            at, to, rate = ramp
            done = at + abs(to - speed) / rate
            knots += [k for k in (at, done) if k < duration]
        out, asked = [], list(times)
        while t < duration - 1e-12:
            edges = [k for k in knots if k > t + 1e-9] + [next_strike]
            for foot in self.feet:
                edges += [e for e in (foot["t"] + foot["tc"],) if e > t + 1e-9]
            end = min(edges)
            inside = [a for a in asked if a <= end + 1e-12]
            asked = asked[len(inside):]
            got = solve_ivp(self.rates, (t, end), y, t_eval=sorted(set([*inside, end])) if inside else [end], **solver)
            if stats is not None:
                stats["evaluations"] = stats.get("evaluations", 0) + got.nfev
            for a in inside:
                out.append(got.y[:, np.argmin(np.abs(got.t - a))])
            t, y = end, got.y[:, -1]
            self.feet = [f for f in self.feet if f["t"] + f["tc"] > t + 1e-9]
            if abs(next_strike - t) < 1e-9:
                if y[V] < 0.1:
                    self.feet, self.stand, next_strike = [], 1.0, math.inf
                else:
                    foot, step = self.land(t, y[V])
                    self.feet.append(foot)
                    next_strike = t + step
            if ramp and at - 1e-9 <= t < done - 1e-9:
                self.set0, self.rise, self.from_ = speed, math.copysign(rate, to - speed), at
            elif ramp and t >= done - 1e-9:
                self.set0, self.rise, self.from_ = to, 0.0, done
            if t >= key - 1e-9:
                self.on = False
        return np.array(out)
