// The operating point of a machine with a front drive and a drive belt on fixed centres, the gait by the speed: the
// library's stages in its order, written on any number type.
#pragma once

#include "fields.hpp"
#include "search.hpp"

constexpr double Gravity = 9.80665;

template <class T> struct Work {
  T driveRadius, strand, tailWrap, massPerLength, driveCompliant, tailCompliant, grip, meanNormal, meanShared, stepTime,
      speedRatio, beltGrip, overruns;
  Stride<T> s;
};

template <class T> TM_INLINE T sin_of(T x) {
  T s, c;
  sincos(x, s, c);
  return s;
}

template <class T> TM_INLINE T cos_of(T x) {
  T s, c;
  sincos(x, s, c);
  return c;
}

template <class T> TM_INLINE T slip_demand(T pull, T shared, T ratio) { return ratio * (pull - shared) + shared; }
template <class T> TM_INLINE T overrun_demand(T pull, T shared, T ratio) { return shared - pull - ratio * shared; }
template <class T> TM_INLINE T margin(T grip, T demand) { return grip / max(demand, T(1e-9)); }

template <class T> __attribute__((noinline)) void loop_stage(const Machine<T> &x, Work<T> &w, Point<T> &y) {
  T half = 0.5 * x.BeltThickness;
  w.driveRadius = 0.5 * x.DriveRollerDiameter + half;
  T tailRadius = 0.5 * x.TailRollerDiameter + half;
  T angle = asin((w.driveRadius - tailRadius) / x.CentreDistance);
  T cos = cos_of(angle);
  w.strand = x.CentreDistance * cos;
  y.DriveRollerWrap = Pi + 2.0 * angle;
  w.tailWrap = Pi - 2.0 * angle;
  y.LoopLength = 2.0 * w.strand + w.driveRadius * y.DriveRollerWrap + tailRadius * w.tailWrap;
  w.driveCompliant = 4.0 * x.BeltStiffness * x.DriveHubCompliance;
  w.tailCompliant = 4.0 * x.BeltStiffness * x.TailHubCompliance;
  T change = 0.5 * (x.ThreadLead * x.LeftTurns + x.ThreadLead * x.RightTurns) * cos_of(x.BoltAngle);
  y.TensionNow = x.RestTension +
                 x.BeltStiffness * (2.0 * cos * change) / (y.LoopLength + (w.driveCompliant + w.tailCompliant));
  w.massPerLength = x.BeltMassPerArea * x.BeltWidth;
  y.CentrifugalTension = w.massPerLength * x.BeltSpeed * x.BeltSpeed;
  w.s.ratio = exp(x.DriveRollerFriction * y.DriveRollerWrap);
  w.grip = (y.TensionNow - y.CentrifugalTension) * (w.s.ratio - 1.0);
}

template <class T> TM_INLINE T flag(T value, double from, double to, double bit) {
  return if_less(value, from, bit, if_less(to, value, bit, 0));
}

template <class T> __attribute__((noinline)) void gait_stage(const Machine<T> &x, Work<T> &w, Point<T> &y) {
  T scale = sqrt(0.92 / x.LegLength);
  T v = x.BeltSpeed * scale;
  T usual = scale * if_less(2.0, v, 3.024 * pow(0.25 * v, 0.308), 1.640 * pow(v, 0.479));
  y.StepFrequencyUsed = usual;
  y.DutyFactor = if_less(2.0, v, min(T(0.5), 0.2181 + 0.3604 / v), max(T(0.5), 0.655 - 0.035 * v));
  y.ContactTime = 2.0 * y.DutyFactor / y.StepFrequencyUsed;
  w.stepTime = 1.0 / y.StepFrequencyUsed;
  w.s.third = if_less(2.0, v, -0.1366 + 0.0261 * min(v, T(6)), min(T(1), 0.248 + 0.132 * v * v));
  w.s.brakingShare = if_less(2.0, v, min(T(0.62), 0.345 + 0.03 * v), 0.57);
  w.s.braking = 0.14 * pow(v, 0.65) * x.PersonMass * Gravity;
  y.NoticeBits = if_less(2.0, v, flag(v, 2.5, 6.0, 2), flag(v, 0.7, 2.0, 1)) + flag(x.Incline, 0, 0, 4) +
                 flag(abs(x.RailSupport) + abs(x.RailForce), 0, 0, 8) +
                 flag(y.StepFrequencyUsed / usual, 0.85, 1.15, 16);
}

template <class T> __attribute__((noinline)) void load_stage(const Machine<T> &x, Work<T> &w, Point<T> &y) {
  T sin, cos, q = w.s.third;
  sincos(x.Incline, sin, cos);
  T weight = (1.0 - x.RailSupport) * x.PersonMass * Gravity;
  w.meanNormal = weight * cos;
  T amplitude = Pi * w.meanNormal / (4.0 * y.DutyFactor * (1.0 + q * (1.0 / 3.0)));
  y.DeckFrictionPower = x.DeckFriction * w.meanNormal * x.BeltSpeed;
  T top = sqrt(if_less(1.0 / 9.0, q, (1.0 + 3.0 * q) / (12.0 * max(q, T(1.0 / 9.0))), 1));
  y.PeakFootForce = amplitude * (top * (1.0 + q * (3.0 - 4.0 * top * top)));
  T tangential = x.RailForce - weight * sin;
  T relative = tangential / max(w.meanNormal, T(5e-324));
  w.s.normal = x.DeckFriction * amplitude + amplitude * relative;
  w.s.drag = x.BeltDrag;
  w.s.push = -(w.s.braking * w.s.brakingShare / (1.0 - w.s.brakingShare));
  w.s.brakingRate = 1.0 / w.s.brakingShare;
  w.s.pushRate = 1.0 / (1.0 - w.s.brakingShare);
  y.MeanPull = x.DeckFriction * w.meanNormal + tangential + x.BeltDrag;

  T distance = 0.5 * w.driveRadius * y.DriveRollerWrap + x.StrikePosition;
  T ride = x.BeltSpeed * y.ContactTime;
  T whole = y.LoopLength + w.driveCompliant + w.tailCompliant;
  w.s.strikeShare = (distance + 0.5 * w.driveCompliant) / whole;
  w.s.rideShare = (distance + ride + 0.5 * w.driveCompliant) / whole - w.s.strikeShare;
  w.s.step = 0.5 / y.DutyFactor;
  w.s.overlap = max(T(0), 1.0 - w.s.step);
  w.s.window = min(T(1), w.s.step);
}

template <class T> __attribute__((noinline)) void mean_stage(const Machine<T> &x, Work<T> &w, Point<T> &y) {
  const Stride<T> &s = w.s;
  T third = 1.0 + 1.0 / 3.0 * s.third;
  T sum = 2.0 / Pi * s.normal * third;
  T moment = 1.0 / Pi * (s.normal * third - s.braking * s.brakingShare);
  T square = square_sum(s.normal, s.third, s.braking, s.brakingShare);
  if (any_less(0, s.overlap))
    square = square +
             if_less(0, s.overlap,
                     2.0 * product_sum(s.normal, s.third, s.braking, s.brakingRate, s.push, s.pushRate, s.overlap), 0);
  T perStep = 1.0 / s.step;
  square = mul_add(perStep, mul_add(2.0 * s.drag, sum, square), s.drag * s.drag);
  y.RmsPull = sqrt(square);
  w.meanShared = 0.5 * s.drag + perStep * (s.strikeShare * sum + s.rideShare * moment);
  y.PullPower = y.MeanPull * x.BeltSpeed;
}

template <class T> __attribute__((noinline)) void load_at(const Stride<T> &s, T phase, T &pull, T &shared) {
  auto one = [&s](T at) __attribute__((always_inline)) {
    T load, slope;
    T rate = if_less(at, s.brakingShare, s.brakingRate, s.pushRate);
    T since = if_less(at, s.brakingShare, at, at - s.brakingShare);
    T peak = if_less(at, s.brakingShare, s.braking, s.push);
    foot(s.normal, s.third, peak, rate, Turn<T>::of(at), Turn<T>::of(rate * since), load, slope);
    return if_less(at, 1, load, 0);
  };
  T first = one(phase);
  pull = s.drag + first;
  shared = mul_add(first, share_at(s, phase), 0.5 * s.drag);
  T before = phase + s.step;
  if (any_less(before, 1)) {
    T second = one(before);
    pull = pull + second;
    shared = mul_add(second, share_at(s, before), shared);
  }
}

template <class T> TM_INLINE T pull_at(const Stride<T> &s, const Top<T> &top) {
  T from, to, pull, shared;
  piece_ends(s, top.piece, from, to);
  load_at(s, mul_add(to - from, top.place, from), pull, shared);
  return pull;
}

template <class T> __attribute__((noinline)) Node<T> with_slopes(const Stride<T> &s, T piece, T place) {
  T from, to, rate, peak, since, load, slope;
  piece_ends(s, piece, from, to);
  T length = to - from, phase = mul_add(length, place, from);
  lobe_of(s, piece, phase, rate, peak, since);
  foot(s.normal, s.third, peak, rate, Turn<T>::of(phase), Turn<T>::of(rate * since), load, slope);
  T share = share_at(s, phase);
  Node<T> n{load + s.drag, length * slope, mul_add(load, share, 0.5 * s.drag),
            length * mul_add(slope, share, load * s.rideShare)};
  if (any_less(if_less(0, s.overlap, piece, 1), 0.5)) {
    T left = s.overlap - phase;
    foot(s.normal, s.third, s.push, s.pushRate, Turn<T>::of(left), Turn<T>::of(s.pushRate * left), load, slope);
    share = share_at(s, phase + s.step);
    slope = if_less(piece, 0.5, -(s.overlap * slope), 0);
    load = if_less(piece, 0.5, load, 0);
    n = {n.pull + load, n.pullSlope + slope, mul_add(load, share, n.shared),
         n.sharedSlope + mul_add(slope, share, s.overlap * load * s.rideShare)};
  }
  return n;
}

template <class T> __attribute__((noinline)) void grip_stage(const Machine<T> &x, Work<T> &w, Point<T> &y) {
  const Stride<T> &s = w.s;
  Nodes<T> nodes;
  nodes.fill(s);
  Doubts<T> doubts = Doubts<T>::of(s);
  T ratio = s.ratio, one(1), zero(0);
  Top<T> belt = find(s, nodes, Target<T>{slip_demand(one, zero, ratio), slip_demand(zero, one, ratio)}, doubts);
  Target<T> backwards{overrun_demand(one, zero, ratio), overrun_demand(zero, one, ratio)};
  T worth = doubts.worth(nodes, backwards, belt.height);
  w.overruns = 0;
  if (any_less(0.5, worth)) {
    Top<T> other = find(s, nodes, backwards, doubts);
    worth = if_less(belt.height, other.height, worth, 0);
    belt = Top<T>::where(worth, other, belt);
    w.overruns = worth;
  }
  y.PeakPull = pull_at(s, find(s, nodes, Target<T>{1, 0}, doubts));
  T least = pull_at(s, find(s, nodes, Target<T>{-1, 0}, doubts));
  y.LeastPull = if_less(1, s.step, min(x.BeltDrag, least), least);

  Node<T> n = with_slopes(s, belt.piece, belt.place);
  T slope = if_less(w.overruns, 0.5, slip_demand(n.pullSlope, n.sharedSlope, ratio),
                    overrun_demand(n.pullSlope, n.sharedSlope, ratio));
  T inside = if_less(1e-9, belt.place, if_less(belt.place, 1 - 1e-9, 1, 0), 0);
  T step = -(slope / min(belt.curvature, T(-5e-324)));
  step = if_less(0.5, inside, if_less(belt.curvature, 0, step, 0), 0);
  T pull = mul_add(step, n.pullSlope, n.pull), shared = mul_add(step, n.sharedSlope, n.shared);
  T demand = if_less(w.overruns, 0.5, slip_demand(pull, shared, ratio), overrun_demand(pull, shared, ratio));
  y.BeltMargin = margin(w.grip, demand);
  y.SlackTension = y.TensionNow - pull + shared;
  y.TightTension = y.TensionNow + shared;
}

template <class T> TM_INLINE T hub_load(T first, T second, T wrap) {
  T difference = first - second, sin = sin_of(0.5 * wrap);
  return sqrt(difference * difference + 4.0 * first * second * sin * sin);
}

template <class T> __attribute__((noinline)) void hub_stage(const Machine<T> &x, Work<T> &w, Point<T> &y) {
  T pressing = y.TensionNow - y.CentrifugalTension;
  T slack = pressing - y.MeanPull + w.meanShared, tight = pressing + w.meanShared;
  y.DriveRollerHubLoad = hub_load(tight, slack, y.DriveRollerWrap);
  T before = tight - x.BeltDrag;
  y.TailRollerHubLoad = hub_load(before, before + x.BeltDrag, w.tailWrap);
}

template <class T> __attribute__((noinline)) void drive_belt_stage(const Machine<T> &x, Work<T> &w, Point<T> &y) {
  T pulley = 0.5 * x.RollerPulleyDiameter;
  T wrap = Pi + 2.0 * asin((0.5 * x.MotorPulleyDiameter - pulley) / x.PulleyCentreDistance);
  w.speedRatio = x.RollerPulleyDiameter / x.MotorPulleyDiameter;
  T ratio = exp(x.DriveBeltFriction / sin_of(x.GrooveHalfAngle) * wrap);
  T speed = x.BeltSpeed * pulley / w.driveRadius;
  T kept = x.DriveBeltTension - x.DriveBeltMassPerLength * speed * speed;
  w.beltGrip = 2.0 * kept * (ratio - 1.0) / (ratio + 1.0);
  T forwards = y.PeakPull * w.driveRadius / pulley, backwards = -y.LeastPull * w.driveRadius / pulley;
  y.DriveBeltMargin = min(margin(w.beltGrip, forwards), margin(w.beltGrip, backwards));
  T force = y.MeanPull * w.driveRadius / pulley;
  y.MotorHubLoad = hub_load(kept + 0.5 * force, kept - 0.5 * force, wrap);
}

template <class T> __attribute__((noinline)) void motor_stage(const Machine<T> &x, Work<T> &w, Point<T> &y) {
  y.MotorSpeed = x.BeltSpeed / w.driveRadius * w.speedRatio;
  T perPull = w.driveRadius / w.speedRatio;
  y.MotorTorque = y.MeanPull * perPull;
  y.MeanCurrent = (y.MotorTorque + x.MotorFrictionTorque) / x.MotorConstant;
  y.PeakCurrent = (y.PeakPull * perPull + x.MotorFrictionTorque) / x.MotorConstant;
  T currentPerPull = perPull / x.MotorConstant;
  y.RmsCurrent = sqrt(y.MeanCurrent * y.MeanCurrent +
                      currentPerPull * currentPerPull * max(T(0), y.RmsPull * y.RmsPull - y.MeanPull * y.MeanPull));
  y.MotorVoltage = x.MotorConstant * y.MotorSpeed + y.MeanCurrent * x.ArmatureResistance +
                   if_less(y.MeanCurrent, 0, -x.BrushDrop, x.BrushDrop);
  T ripple = y.RmsCurrent * y.RmsCurrent - y.MeanCurrent * y.MeanCurrent;
  T electrical = y.MotorVoltage * y.MeanCurrent + x.ArmatureResistance * ripple;
  y.MainsPower = x.StandbyPower + max(T(0), electrical) / x.ControllerEfficiency;
  y.MainsCurrent = y.MainsPower / (x.MainsVoltage * x.PowerFactor);
}

constexpr int Phases = 64;

template <class T> TM_INLINE T load_of(T normal, T third, T waveSin, T lobe) {
  T twice = 2.0 * waveSin;
  return mul_add(normal * waveSin, mul_add(third, 3.0 - twice * twice, T(1)), lobe);
}

// Loads at even phases of a step. The sines of a phase follow from those of the one before.
template <class T> __attribute__((noinline)) void loads_of(const Stride<T> &s, T *pull, T *shared) {
  T interval = s.step * (1.0 / Phases), first = 0.5 * interval, phase = first;
  Turn<T> wave = Turn<T>::of(first), waveStep = Turn<T>::of(interval);
  Turn<T> brakes = Turn<T>::of(s.brakingRate * first), brakesStep = Turn<T>::of(s.brakingRate * interval);
  Turn<T> pushes = Turn<T>::of(s.pushRate * (first - s.brakingShare)), pushesStep = Turn<T>::of(s.pushRate * interval);
  for (int i = 0; i < Phases; i++) {
    T lobe = if_less(phase, s.brakingShare, s.braking * brakes.sin, s.push * pushes.sin);
    T load = if_less(phase, 1, load_of(s.normal, s.third, wave.sin, lobe), 0);
    pull[i] = load + s.drag;
    shared[i] = mul_add(load, share_at(s, phase), 0.5 * s.drag);
    wave = wave.plus(waveStep);
    brakes = brakes.plus(brakesStep);
    pushes = pushes.plus(pushesStep);
    phase = phase + interval;
  }
  if (!any_less(first, s.overlap))
    return;
  T left = s.overlap - first, atToeOff = s.strikeShare + s.rideShare;
  wave = Turn<T>::of(left);
  pushes = Turn<T>::of(s.pushRate * left);
  waveStep = Turn<T>::of(-interval);
  pushesStep = Turn<T>::of(-(s.pushRate * interval));
  for (int i = 0; i < Phases && any_less(0, left); i++) {
    T load = if_less(0, left, load_of(s.normal, s.third, wave.sin, s.push * pushes.sin), 0);
    pull[i] = pull[i] + load;
    shared[i] = mul_add(load, mul_add(-s.rideShare, left, atToeOff), shared[i]);
    wave = wave.plus(waveStep);
    pushes = pushes.plus(pushesStep);
    left = left - interval;
  }
}

template <class T>
__attribute__((noinline)) T once(const T *pull, const T *shared, T speed, T onPull, T onShared, T grip, T &slipping) {
  T now = slipping, sum(0);
  for (int i = 0; i < Phases; i++) {
    T beyond = mul_add(onPull, pull[i], mul_add(onShared, shared[i], -grip));
    now = max(T(0), min(speed, now + beyond));
    sum = sum + now;
  }
  slipping = now;
  return sum;
}

// A step that begins at rest is its own successor; the others are gone through once more.
template <class T>
T follow(const T *pull, const T *shared, T speed, T stepTime, T onPull, T onShared, T grip, T ratio, T mass) {
  T time = stepTime * (1.0 / Phases);
  T gain = time / mass * (2.0 / (ratio + 1.0)), slipping(0);
  T slide = once(pull, shared, speed, gain * onPull, gain * onShared, gain * grip, slipping);
  if (any_less(0, slipping))
    slide = once(pull, shared, speed, gain * onPull, gain * onShared, gain * grip, slipping);
  return slide * time;
}

template <class T> __attribute__((noinline)) void slide_stage(const Machine<T> &x, Work<T> &w, Point<T> &y) {
  y.BeltSlide = 0;
  y.DriveBeltSlide = 0;
  if (!any_less(min(y.BeltMargin, y.DriveBeltMargin), 1))
    return;
  T pull[Phases], shared[Phases];
  loads_of(w.s, pull, shared);
  T ratio = w.s.ratio;
  T tailRadius = 0.5 * (x.TailRollerDiameter + x.BeltThickness);
  T mass = w.massPerLength * y.LoopLength + x.TailRollerInertia / (tailRadius * tailRadius);
  if (any_less(y.BeltMargin, 1)) {
    T onPull = if_less(w.overruns, 0.5, ratio, -1);
    T slide = follow(pull, shared, x.BeltSpeed, w.stepTime, onPull, 1.0 - ratio, w.grip, ratio, mass);
    y.BeltSlide = if_less(y.BeltMargin, 1, slide, 0);
  }
  if (any_less(y.DriveBeltMargin, 1)) {
    T perPull = w.driveRadius / (0.5 * x.RollerPulleyDiameter);
    T backwards = if_less(w.beltGrip, perPull * y.PeakPull, 0, 1);
    T driven = mass + x.DriveRollerInertia / (w.driveRadius * w.driveRadius);
    T slide = follow(pull, shared, x.BeltSpeed, w.stepTime, 1.0 - 2.0 * backwards, T(0), w.beltGrip / perPull, T(1), driven);
    y.DriveBeltSlide = if_less(y.DriveBeltMargin, 1, slide, 0);
  }
}

template <class T> __attribute__((noinline)) void operating_point(const Machine<T> &x, Point<T> &y) {
  Work<T> w;
  loop_stage(x, w, y);
  gait_stage(x, w, y);
  load_stage(x, w, y);
  mean_stage(x, w, y);
  grip_stage(x, w, y);
  hub_stage(x, w, y);
  drive_belt_stage(x, w, y);
  motor_stage(x, w, y);
  slide_stage(x, w, y);
}
