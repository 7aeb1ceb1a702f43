"""The operating point on arrays: the library's stages and search, a row an element.

Written so that the same text runs on plain arrays and on arrays that carry units: every sum is of one dimension. Work that
only some rows need (a foot behind, a rival top, a belt that slips) is done on those rows alone.
"""

from types import SimpleNamespace as Bag

import numpy as np

where, sqrt, exp, sin, cos, pi = np.where, np.sqrt, np.exp, np.sin, np.cos, np.pi
GRAVITY = 9.80665
INTERVALS = 6
EDGE = 1e-12
PHASES = 64

# Units of the numbers written here, and how a quantity without dimension becomes a plain array. Replaced for arrays that
# carry units.
UNIT = Bag(m=1.0, s=1.0, N=1.0, number=lambda x: x)


def highest(a, b):
    return where(a < b, b, a)


def lowest(a, b):
    return where(a < b, a, b)


def turn(half_turns):
    angle = pi * half_turns
    return sin(angle), cos(angle)


def plus(a, b):
    return a[0] * b[1] + a[1] * b[0], a[1] * b[1] - a[0] * b[0]


def foot(normal, third, peak, rate, wave, lobe):
    square = 4 * wave[0] * wave[0]
    load = normal * wave[0] * (1 + third * (3 - square)) + peak * lobe[0]
    slope = pi * (peak * rate * lobe[1] + normal * wave[1] * (1 + 3 * third * (1 - square)))
    return load, slope


def jet_of(normal, third, peak, rate, wave, lobe):
    square = 4 * wave[0] * wave[0]
    s, c = normal * wave[0], normal * wave[1]
    s3, c3 = s * third * (3 - square), c * third * (1 - square)
    ls, lc, rates = peak * lobe[0], peak * rate * lobe[1], rate * rate
    return [
        s + s3 + ls,
        pi * (c + 3 * c3 + lc),
        -(pi**2) * (s + 9 * s3 + ls * rates),
        -(pi**3) * (c + 27 * c3 + lc * rates),
        pi**4 * (s + 81 * s3 + ls * rates * rates),
    ]


def weighed(jet, weight, slope):
    return [jet[0] * weight] + [jet[k] * weight + k * jet[k - 1] * slope for k in range(1, 5)]


def rows_of(stride, rows):
    return Bag(**{name: value[rows] for name, value in vars(stride).items()})


def share_at(s, phase):
    return s.strike_share + s.ride_share * phase


def nodes_of(s):
    """Loads and slopes at even places of the three pieces; the first piece only for the rows that have one."""
    one, none = np.ones(len(s.step)), np.zeros(len(s.step))
    walks = np.flatnonzero(s.overlap > 0)
    w = rows_of(s, walks)
    wave = (none[walks], one[walks])
    first, wave, lobe = ahead(w, 0 * w.overlap, w.overlap / INTERVALS, w.braking, w.braking_rate, wave, wave)
    behind(w, first)
    waves, lobes = [none.copy(), one.copy()], [none.copy(), one.copy()]
    for k in range(2):
        waves[k][walks] = UNIT.number(wave[k])
        lobes[k][walks] = UNIT.number(lobe[k])
    second, wave, _ = ahead(
        s, s.overlap, (s.braking_share - s.overlap) / INTERVALS, s.braking, s.braking_rate, waves, lobes
    )
    third, _, _ = ahead(
        s, s.braking_share, (s.window - s.braking_share) / INTERVALS, s.push, s.push_rate, wave, (none, one)
    )
    return [(walks, first), (None, second), (None, third)]


def ahead(s, start, interval, peak, rate, wave, lobe):
    wave_step, lobe_step = turn(interval), turn(rate * interval)
    share, ride = share_at(s, start), s.ride_share * interval
    nodes = []
    for i in range(INTERVALS + 1):
        load, slope = foot(s.normal, s.third, peak, rate, wave, lobe)
        slope = slope * interval
        nodes.append([load + s.drag, slope, load * share + 0.5 * s.drag, slope * share + load * ride])
        if i < INTERVALS:
            wave, lobe, share = plus(wave, wave_step), plus(lobe, lobe_step), share + ride
    return nodes, wave, lobe


def behind(s, nodes):
    interval = s.overlap / INTERVALS
    wave_step, lobe_step = turn(interval), turn(s.push_rate * interval)
    wave = lobe = (np.zeros(len(s.step)), np.ones(len(s.step)))
    share, ride = s.strike_share + s.ride_share, s.ride_share * interval
    for i in range(INTERVALS, -1, -1):
        load, slope = foot(s.normal, s.third, s.push, s.push_rate, wave, lobe)
        slope = -slope * interval
        n = nodes[i]
        nodes[i] = [n[0] + load, n[1] + slope, n[2] + load * share, n[3] + slope * share + load * ride]
        if i:
            wave, lobe, share = plus(wave, wave_step), plus(lobe, lobe_step), share - ride


class Doubts:
    def __init__(self, s):
        longest = highest(highest(s.overlap, s.braking_share - s.overlap), s.window - s.braking_share)
        b, p = s.braking_rate**2, s.push_rate**2
        b2, p2 = abs(s.braking) * b, abs(s.push) * p
        self.interval = longest / INTERVALS
        self.ride = abs(s.ride_share)
        self.second = 2 * (abs(s.normal) * (1 + 9 * abs(s.third)) + highest(b2, p2))
        self.fourth = 2 * (abs(s.normal) * (1 + 81 * abs(s.third)) + highest(b2 * b, p2 * p))

    def of_cubics(self, on_pull, on_shared):
        weight = highest(abs(on_pull), abs(on_pull + on_shared))
        weight = pi**2 * (pi**2 * weight + 4 * pi * self.ride * abs(on_shared))
        return 2 / 384 * self.interval**4 * weight * self.fourth

    def worth(self, nodes, on_pull, on_shared, floor):
        weight = highest(abs(on_pull), abs(on_pull + on_shared))
        weight = pi**2 * weight + 2 * pi * self.ride * abs(on_shared)
        top = on_pull * nodes[1][1][0][0] + on_shared * nodes[1][1][0][2]
        for rows, piece in nodes:
            for pull, _, shared, _ in piece:
                if rows is None:
                    top = highest(top, on_pull * pull + on_shared * shared)
                else:
                    top[rows] = highest(top[rows], on_pull[rows] * pull + on_shared[rows] * shared)
        return np.flatnonzero(floor < top + 0.125 * self.interval**2 * weight * self.second)


def scan(s, nodes, on_pull, on_shared):
    """Highest and second highest top: lists of piece, place, low end, height."""
    n = len(s.step)
    start = on_pull * nodes[1][1][0][0] + on_shared * nodes[1][1][0][2]
    best = [np.ones(n), np.full(n, EDGE), np.full(n, EDGE), start]
    second = [np.ones(n), np.full(n, EDGE), np.full(n, EDGE), np.full(n, -1e300) * UNIT.N]
    every = np.arange(n)

    def take(rows, here):
        beats = best[3][rows] < here[3]
        above = second[3][rows] < where(beats, best[3][rows], here[3])
        for k in range(4):
            beaten = where(beats, best[k][rows], here[k])
            second[k][rows] = where(above, beaten, second[k][rows])
            best[k][rows] = where(beats, here[k], best[k][rows])

    for number, (rows, piece) in enumerate(nodes):
        rows = every if rows is None else rows
        if not len(rows):
            continue
        a, b = on_pull[rows], on_shared[rows]
        heights = [a * node[0] + b * node[2] for node in piece]
        rises = [a * node[1] + b * node[3] for node in piece]
        for i in range(INTERVALS):
            at = np.flatnonzero((rises[i] > 0) & (rises[i + 1] <= 0))
            if not len(at):
                continue
            start, rise, there = heights[i][at], rises[i][at], rises[i + 1][at]
            chord = heights[i + 1][at] - start
            square, cube = 3 * chord - 2 * rise - there, rise + there - 2 * chord
            root = sqrt(square * square - 3 * cube * rise)
            way = UNIT.number(rise / (root - square))
            way = np.clip(way, 0, 1)
            low = np.full(len(at), i / INTERVALS)
            height = start + way * (rise + way * (square + way * cube))
            take(rows[at], [np.full(len(at), float(number)), low + way / INTERVALS, low, height])
        at = np.flatnonzero(rises[INTERVALS] > 0)
        if len(at):
            end = np.full(len(at), 1 - EDGE)
            take(rows[at], [np.full(len(at), float(number)), end, end, heights[INTERVALS][at]])
    return best, second


def piece_ends(s, piece):
    start = where(piece < 0.5, 0, where(piece < 1.5, s.overlap, s.braking_share))
    return start, where(piece < 0.5, s.overlap, where(piece < 1.5, s.braking_share, s.window))


def lobe_of(s, early, phase):
    rate = where(early, s.braking_rate, s.push_rate)
    since = where(early, phase, phase - s.braking_share)
    return where(early, s.braking, s.push), rate, turn(rate * since)


def derivatives(s, piece, place, on_pull, on_shared):
    start, end = piece_ends(s, piece)
    length = end - start
    phase = start + length * place
    peak, rate, lobe = lobe_of(s, piece < 1.5, phase)
    jet = jet_of(s.normal, s.third, peak, rate, turn(phase), lobe)
    jet = weighed(jet, on_pull + on_shared * share_at(s, phase), on_shared * s.ride_share)
    jet[0] = jet[0] + s.drag * (on_pull + 0.5 * on_shared)
    rows = np.flatnonzero((piece < 0.5) & (s.overlap > 0))
    if len(rows):
        w, a, b = rows_of(s, rows), on_pull[rows], on_shared[rows]
        left = w.overlap - phase[rows]
        other = jet_of(w.normal, w.third, w.push, w.push_rate, turn(left), turn(w.push_rate * left))
        other[1], other[3] = -other[1], -other[3]
        other = weighed(other, a + b * share_at(w, phase[rows] + w.step), b * w.ride_share)
        for k in range(5):
            jet[k][rows] = jet[k][rows] + other[k]
    return [jet[k] * length**k for k in range(5)]


def climb(s, on_pull, on_shared, top):
    """Climbs every row to its top; returns piece, place, height, curvature."""
    piece, place, low, height = top
    place, height, curvature = place.copy(), height.copy(), 0 * height
    rows, part = np.arange(len(piece)), s
    for _ in range(16):
        if not len(rows):
            break
        at, floor = place[rows], low[rows]
        jet = derivatives(part, piece[rows], at, on_pull[rows], on_shared[rows])
        inverse = 1 / jet[2]
        newton = -UNIT.number(jet[1] * inverse)
        p = UNIT.number(0.5 * jet[3] * inverse) * newton
        r = UNIT.number(1 / 6 * jet[4] * inverse) * newton * newton
        last = newton * (2 * p * p - r)
        step = where(abs(p) + abs(r) < 0.25, newton - newton * p + last, newton)
        step = where(jet[2] < 0, step, where(jet[1] > 0, 0.5 / INTERVALS, -0.5 / INTERVALS))
        high = np.minimum(floor + 1 / INTERVALS, 1 - EDGE)
        there = np.maximum(np.maximum(floor, EDGE), np.minimum(high, at + step))
        move = there - at
        slope = jet[1] + move * (0.5 * jet[2] + move * (1 / 6 * jet[3] + move / 24 * jet[4]))
        place[rows] = there
        height[rows] = jet[0] + move * slope
        curvature[rows] = jet[2] + move * (jet[3] + 0.5 * move * jet[4])
        settled = (abs(move) < 1e-14) | ((abs(newton) < 4e-4) & (abs(last) < 1e-9))
        rows = rows[~settled]
        part = rows_of(s, rows)
    return [piece, place, height, curvature]


def find(s, nodes, on_pull, on_shared, doubts):
    best, second = scan(s, nodes, on_pull, on_shared)
    rivals = np.flatnonzero(best[3] < second[3] + doubts.of_cubics(on_pull, on_shared))
    top = climb(s, on_pull, on_shared, best)
    if len(rivals):
        other = climb(rows_of(s, rivals), on_pull[rivals], on_shared[rivals], [part[rivals] for part in second])
        wins = top[2][rivals] < other[2]
        for k in range(4):
            top[k][rivals] = where(wins, other[k], top[k][rivals])
    return top


def load_at(s, phase):
    def one(s, at):
        peak, rate, lobe = lobe_of(s, at < s.braking_share, at)
        load, _ = foot(s.normal, s.third, peak, rate, turn(at), lobe)
        return where(at < 1, load, 0)

    load = one(s, phase)
    pull, shared = s.drag + load, 0.5 * s.drag + load * share_at(s, phase)
    rows = np.flatnonzero(phase + s.step < 1)
    if len(rows):
        w = rows_of(s, rows)
        before = (phase + s.step)[rows]
        load = one(w, before)
        pull[rows] = pull[rows] + load
        shared[rows] = shared[rows] + load * share_at(w, before)
    return pull, shared


def pull_at(s, top):
    start, end = piece_ends(s, top[0])
    return load_at(s, start + (end - start) * top[1])[0]


def with_slopes(s, piece, place):
    start, end = piece_ends(s, piece)
    length = end - start
    phase = start + length * place
    peak, rate, lobe = lobe_of(s, piece < 1.5, phase)
    load, slope = foot(s.normal, s.third, peak, rate, turn(phase), lobe)
    share = share_at(s, phase)
    node = [
        load + s.drag,
        length * slope,
        load * share + 0.5 * s.drag,
        length * (slope * share + load * s.ride_share),
    ]
    rows = np.flatnonzero((piece < 0.5) & (s.overlap > 0))
    if len(rows):
        w = rows_of(s, rows)
        left = w.overlap - phase[rows]
        load, slope = foot(w.normal, w.third, w.push, w.push_rate, turn(left), turn(w.push_rate * left))
        share = share_at(w, phase[rows] + w.step)
        slope = -w.overlap * slope
        added = [load, slope, load * share, slope * share + w.overlap * load * w.ride_share]
        for k in range(4):
            node[k][rows] = node[k][rows] + added[k]
    return node


def slip_demand(pull, shared, ratio):
    return ratio * (pull - shared) + shared


def overrun_demand(pull, shared, ratio):
    return shared - pull - ratio * shared


def sinc(x):
    near = abs(x) < 1e-8
    return where(near, pi, sin(pi * x) / where(near, 1, x))


def square_sum(normal, third, peak, share):
    rest = 1 - share
    first = sin(pi * share) * (1 / (rest * (1 + share)) - 1 / (share * (1 + rest)))
    x = 3 * share
    second = sinc(1 - x) / (1 + x) - sinc(x - 2) / (4 - x)
    cross = share / pi * (first + third * second)
    return 0.5 * normal * normal * (1 + third * third) + peak * (2 * normal * cross + 0.5 * peak * share / rest)


def product_sum(s):
    o, b, p = s.overlap, s.braking_rate, s.push_rate
    first, thirds, brakes, pushes = turn(o), turn(3 * o), turn(b * o), turn(p * o)

    def alone(rate, at):
        return 0.5 * (at[0] / (pi * rate) - o * at[1])

    def pair(a, c, at_a, at_c):
        apart = (c - a) * (c + a)
        near = abs(apart) < 1e-5
        alike = 0.5 * (alone(a, at_a) + alone(c, at_c))
        return where(near, alike, (c * at_a[0] - a * at_c[0]) / pi / where(near, 1, apart))

    q = s.third
    waves = alone(1, first) + q * (0.25 / pi * (3 * first[0] - thirds[0]) + q * alone(3, thirds))
    with_push = pair(1, p, first, pushes) + q * pair(3, p, thirds, pushes)
    with_braking = pair(1, b, first, brakes) + q * pair(3, b, thirds, brakes)
    lobes = pair(b, p, brakes, pushes)
    return s.normal * (s.normal * waves + s.push * with_push + s.braking * with_braking) + s.braking * s.push * lobes


def hub_load(first, second, wrap):
    difference, half = first - second, sin(0.5 * wrap)
    return sqrt(difference * difference + 4 * first * second * half * half)


def flag(value, start, end, bit):
    return where((value < start) | (end < value), float(bit), 0.0)


def loads_of(s):
    """Loads at even phases of a step; the sines of a phase follow from those of the one before."""
    interval = s.step / PHASES
    phase = 0.5 * interval
    wave, wave_step = turn(phase), turn(interval)
    brakes, brakes_step = turn(s.braking_rate * phase), turn(s.braking_rate * interval)
    pushes, pushes_step = turn(s.push_rate * (phase - s.braking_share)), turn(s.push_rate * interval)
    pulls, shares = [], []
    for _ in range(PHASES):
        lobe = where(phase < s.braking_share, s.braking * brakes[0], s.push * pushes[0])
        shape = wave[0] * (1 + s.third * (3 - 4 * wave[0] * wave[0]))
        load = where(phase < 1, s.normal * shape + lobe, 0)
        pulls.append(load + s.drag)
        shares.append(load * share_at(s, phase) + 0.5 * s.drag)
        wave, brakes, pushes = plus(wave, wave_step), plus(brakes, brakes_step), plus(pushes, pushes_step)
        phase = phase + interval
    left = s.overlap - 0.5 * interval
    wave, wave_step = turn(left), turn(-interval)
    pushes, pushes_step = turn(s.push_rate * left), turn(-s.push_rate * interval)
    for i in range(PHASES):
        if not np.any(left > 0):
            break
        shape = wave[0] * (1 + s.third * (3 - 4 * wave[0] * wave[0]))
        load = where(left > 0, s.normal * shape + s.push * pushes[0], 0)
        pulls[i] = pulls[i] + load
        shares[i] = shares[i] + load * (s.strike_share + s.ride_share - s.ride_share * left)
        wave, pushes, left = plus(wave, wave_step), plus(pushes, pushes_step), left - interval
    return pulls, shares


def slide_of(pulls, shares, speed, step_time, on_pull, on_shared, grip, ratio, mass):
    """Slide in one step; a step that begins at rest is its own successor, the others are gone through once more."""
    time = step_time / PHASES
    gain = time / mass * (2 / (ratio + 1))
    a, b, c = gain * on_pull, gain * on_shared, gain * grip
    slipping = 0 * speed
    for _ in range(2):
        total = 0 * speed
        for pull, shared in zip(pulls, shares):
            slipping = highest(0 * speed, lowest(speed, slipping + (a * pull + b * shared - c)))
            total = total + slipping
        if not np.any(slipping > 0 * speed):
            break
    return total * time


def run(x):
    """All outputs of the rows in x, a bag of arrays by the library's names of its inputs."""
    y = Bag()
    speed = x.BeltSpeed

    # The loop at rest.
    half = 0.5 * x.BeltThickness
    drive, tail = 0.5 * x.DriveRollerDiameter + half, 0.5 * x.TailRollerDiameter + half
    angle = np.arcsin((drive - tail) / x.CentreDistance)
    strand = x.CentreDistance * cos(angle)
    y.DriveRollerWrap, tail_wrap = pi + 2 * angle, pi - 2 * angle
    y.LoopLength = 2 * strand + drive * y.DriveRollerWrap + tail * tail_wrap
    drive_compliant = 4 * x.BeltStiffness * x.DriveHubCompliance
    tail_compliant = 4 * x.BeltStiffness * x.TailHubCompliance
    whole = y.LoopLength + drive_compliant + tail_compliant
    change = 0.5 * (x.ThreadLead * x.LeftTurns + x.ThreadLead * x.RightTurns) * cos(x.BoltAngle)
    y.TensionNow = x.RestTension + x.BeltStiffness * (2 * cos(angle) * change) / whole
    mass_per_length = x.BeltMassPerArea * x.BeltWidth
    y.CentrifugalTension = mass_per_length * speed * speed
    ratio = exp(x.DriveRollerFriction * y.DriveRollerWrap)
    grip = (y.TensionNow - y.CentrifugalTension) * (ratio - 1)

    # The person.
    scale = sqrt(0.92 * UNIT.m / x.LegLength)
    v = UNIT.number(speed * scale / (UNIT.m / UNIT.s))
    runs = v > 2
    usual = scale * where(runs, 3.024 * (0.25 * v) ** 0.308, 1.640 * v**0.479) / UNIT.s
    y.StepFrequencyUsed = usual
    y.DutyFactor = duty = where(
        runs, np.minimum(0.5, 0.2181 + 0.3604 / v), np.maximum(0.5, 0.655 - 0.035 * v)
    )
    y.ContactTime = 2 * duty / usual
    step_time = 1 / usual
    third = where(runs, -0.1366 + 0.0261 * np.minimum(v, 6), np.minimum(1, 0.248 + 0.132 * v * v))
    braking_share = where(runs, np.minimum(0.62, 0.345 + 0.03 * v), 0.57)
    gravity = GRAVITY * UNIT.m / UNIT.s**2
    braking = 0.14 * v**0.65 * x.PersonMass * gravity
    y.NoticeBits = (
        where(runs, flag(v, 2.5, 6.0, 2), flag(v, 0.7, 2.0, 1))
        + flag(x.Incline, 0, 0, 4)
        + flag(abs(x.RailSupport), 0, 0, 8)
    )

    # Its loads on the belt.
    weight = (1 - x.RailSupport) * x.PersonMass * gravity
    mean_normal = weight * cos(x.Incline)
    amplitude = pi * mean_normal / (4 * duty * (1 + third / 3))
    y.DeckFrictionPower = x.DeckFriction * mean_normal * speed
    top = sqrt(where(third > 1 / 9, (1 + 3 * third) / (12 * np.maximum(third, 1 / 9)), 1))
    y.PeakFootForce = amplitude * (top * (1 + third * (3 - 4 * top * top)))
    tangential = x.RailForce - weight * sin(x.Incline)
    y.MeanPull = x.DeckFriction * mean_normal + tangential + x.BeltDrag
    distance = 0.5 * drive * y.DriveRollerWrap + x.StrikePosition
    ride = speed * y.ContactTime
    step = 0.5 / duty
    strike_share = UNIT.number((distance + 0.5 * drive_compliant) / whole)
    s = Bag(
        normal=x.DeckFriction * amplitude + amplitude * (tangential / mean_normal),
        third=third,
        braking=braking,
        push=-(braking * braking_share / (1 - braking_share)),
        braking_share=braking_share,
        braking_rate=1 / braking_share,
        push_rate=1 / (1 - braking_share),
        strike_share=strike_share,
        ride_share=UNIT.number((distance + ride + 0.5 * drive_compliant) / whole) - strike_share,
        step=step,
        overlap=np.maximum(0, 1 - step),
        window=np.minimum(1, step),
        drag=x.BeltDrag,
    )

    # Means over a step.
    total = 2 / pi * s.normal * (1 + third / 3)
    moment = 1 / pi * (s.normal * (1 + third / 3) - braking * braking_share)
    square = square_sum(s.normal, third, braking, braking_share)
    walks = np.flatnonzero(s.overlap > 0)
    if len(walks):
        square[walks] = square[walks] + 2 * product_sum(rows_of(s, walks))
    square = s.drag * s.drag + (square + 2 * s.drag * total) / step
    y.RmsPull = sqrt(square)
    mean_shared = 0.5 * s.drag + (s.strike_share * total + s.ride_share * moment) / step
    y.PullPower = y.MeanPull * speed

    # The worst phases.
    nodes = nodes_of(s)
    doubts = Doubts(s)
    ratio = UNIT.number(ratio)
    one = np.ones(len(step))
    belt = find(s, nodes, ratio, 1 - ratio, doubts)
    overruns = np.zeros(len(step), bool)
    rows = doubts.worth(nodes, -one, 1 - ratio, belt[2])
    if len(rows):
        part = rows_of(s, rows)
        other = find(part, nodes_of(part), -one[rows], (1 - ratio)[rows], Doubts(part))
        wins = belt[2][rows] < other[2]
        overruns[rows] = wins
        for k in range(4):
            belt[k][rows] = where(wins, other[k], belt[k][rows])
    y.PeakPull = pull_at(s, find(s, nodes, one, 0 * one, doubts))
    least = pull_at(s, find(s, nodes, -one, 0 * one, doubts))
    y.LeastPull = where(step > 1, lowest(x.BeltDrag, least), least)
    pull, pull_slope, shared, shared_slope = with_slopes(s, belt[0], belt[1])
    slope = where(
        overruns, overrun_demand(pull_slope, shared_slope, ratio), slip_demand(pull_slope, shared_slope, ratio)
    )
    bends = (belt[1] > 1e-9) & (belt[1] < 1 - 1e-9) & (belt[3] < 0)
    move = where(bends, -UNIT.number(slope / where(bends, belt[3], -1 * UNIT.N)), 0)
    pull, shared = pull + move * pull_slope, shared + move * shared_slope
    demand = where(overruns, overrun_demand(pull, shared, ratio), slip_demand(pull, shared, ratio))
    tiny = 1e-9 * UNIT.N
    y.BeltMargin = UNIT.number(grip / highest(demand, tiny))
    y.SlackTension, y.TightTension = y.TensionNow - pull + shared, y.TensionNow + shared

    # Hubs.
    pressing = y.TensionNow - y.CentrifugalTension
    slack, tight = pressing - y.MeanPull + mean_shared, pressing + mean_shared
    y.DriveRollerHubLoad = hub_load(tight, slack, y.DriveRollerWrap)
    y.TailRollerHubLoad = hub_load(tight - x.BeltDrag, tight, tail_wrap)

    # The drive belt.
    pulley = 0.5 * x.RollerPulleyDiameter
    wrap = pi + 2 * np.arcsin((0.5 * x.MotorPulleyDiameter - pulley) / x.PulleyCentreDistance)
    speed_ratio = x.RollerPulleyDiameter / x.MotorPulleyDiameter
    drive_ratio = exp(x.DriveBeltFriction / sin(x.GrooveHalfAngle) * wrap)
    belt_speed = speed * pulley / drive
    kept = x.DriveBeltTension - x.DriveBeltMassPerLength * belt_speed * belt_speed
    drive_grip = 2 * kept * (drive_ratio - 1) / (drive_ratio + 1)
    per_pull = drive / pulley
    y.DriveBeltMargin = UNIT.number(
        lowest(
            drive_grip / highest(y.PeakPull * per_pull, tiny), drive_grip / highest(-y.LeastPull * per_pull, tiny)
        )
    )
    force = y.MeanPull * per_pull
    y.MotorHubLoad = hub_load(kept + 0.5 * force, kept - 0.5 * force, wrap)

    # Motor and mains.
    y.MotorSpeed = speed / drive * speed_ratio
    lever = drive / speed_ratio
    y.MotorTorque = y.MeanPull * lever
    y.MeanCurrent = (y.MotorTorque + x.MotorFrictionTorque) / x.MotorConstant
    y.PeakCurrent = (y.PeakPull * lever + x.MotorFrictionTorque) / x.MotorConstant
    per = lever / x.MotorConstant
    spread = y.RmsPull * y.RmsPull - y.MeanPull * y.MeanPull
    y.RmsCurrent = sqrt(y.MeanCurrent * y.MeanCurrent + per * per * highest(0 * spread, spread))
    drop = where(y.MeanCurrent < 0, -x.BrushDrop, x.BrushDrop)
    y.MotorVoltage = x.MotorConstant * y.MotorSpeed + y.MeanCurrent * x.ArmatureResistance + drop
    ripple = y.RmsCurrent * y.RmsCurrent - y.MeanCurrent * y.MeanCurrent
    electrical = y.MotorVoltage * y.MeanCurrent + x.ArmatureResistance * ripple
    y.MainsPower = x.StandbyPower + highest(0 * electrical, electrical) / x.ControllerEfficiency
    y.MainsCurrent = y.MainsPower / (x.MainsVoltage * x.PowerFactor)

    # How far a belt slides, for the rows where one does.
    y.BeltSlide, y.DriveBeltSlide = 0 * ride, 0 * ride
    slips = np.flatnonzero((y.BeltMargin < 1) | (y.DriveBeltMargin < 1))
    if len(slips):
        part = rows_of(s, slips)
        pulls, shares = loads_of(part)
        size = x.TailRollerDiameter + x.BeltThickness
        mass = mass_per_length * y.LoopLength + x.TailRollerInertia / (0.25 * size * size)

        def of(rows, on_pull, on_shared, grip, ratio, mass):
            at = np.searchsorted(slips, rows)
            return slide_of(
                [p[at] for p in pulls], [p[at] for p in shares], of_row(speed, rows), step_time[rows],
                on_pull, on_shared, grip, ratio, mass,
            )  # fmt: skip

        def of_row(value, rows):
            return value[rows] if np.ndim(value) else value

        rows = np.flatnonzero(y.BeltMargin < 1)
        if len(rows):
            on_pull = where(overruns[rows], -1, ratio[rows])
            y.BeltSlide[rows] = of(rows, on_pull, 1 - ratio[rows], grip[rows], ratio[rows], mass[rows])
        rows = np.flatnonzero(y.DriveBeltMargin < 1)
        if len(rows):
            backwards = (y.PeakPull * per_pull)[rows] <= drive_grip[rows]
            driven = mass[rows] + (x.DriveRollerInertia / (drive * drive))[rows]
            grips = (drive_grip / per_pull)[rows]
            y.DriveBeltSlide[rows] = of(rows, where(backwards, -1.0, 1.0), 0.0, grips, 1.0, driven)
    return y
