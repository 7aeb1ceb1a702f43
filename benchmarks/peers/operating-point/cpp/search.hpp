// The phases of a step at which the grip is used most, the pull is largest, and the pull is least.
#pragma once

#include "stance.hpp"

template <class T> struct Stride {
  T step, overlap, brakingShare, window, normal, third, braking, push, brakingRate, pushRate, strikeShare, rideShare, drag,
      ratio;
};

constexpr int Intervals = 6, NodesAPiece = Intervals + 1, Pieces = 3;
constexpr double Interval = 1.0 / Intervals, Edge = 1e-12, Nowhere = -1e300;

template <class T> struct Node {
  T pull, pullSlope, shared, sharedSlope;
};

template <class T> struct Target {
  T onPull, onShared;
  TM_INLINE T height(const Node<T> &n) const { return mul_add(onShared, n.shared, onPull * n.pull); }
  TM_INLINE T rise(const Node<T> &n) const { return mul_add(onShared, n.sharedSlope, onPull * n.pullSlope); }
};

template <class T> struct Top {
  T piece, place, low, height, curvature;
  static TM_INLINE Top if_less_(T l, T r, const Top &yes, const Top &no) {
    return {if_less(l, r, yes.piece, no.piece), if_less(l, r, yes.place, no.place), if_less(l, r, yes.low, no.low),
            if_less(l, r, yes.height, no.height), if_less(l, r, yes.curvature, no.curvature)};
  }
  static TM_INLINE Top where(T chosen, const Top &yes, const Top &no) { return if_less_(0.5, chosen, yes, no); }
  static TM_INLINE Top higher(const Top &a, const Top &b) { return if_less_(a.height, b.height, b, a); }
  static TM_INLINE Top lower(const Top &a, const Top &b) { return if_less_(a.height, b.height, a, b); }
};

template <class T> TM_INLINE T share_at(const Stride<T> &s, T phase) { return mul_add(s.rideShare, phase, s.strikeShare); }

template <class T> struct Nodes {
  Node<T> nodes[Pieces * NodesAPiece];
  int firstPiece;

  const Node<T> &at(int piece, int node) const { return nodes[piece * NodesAPiece + node]; }

  __attribute__((noinline)) void fill(const Stride<T> &s) {
    Turn<T> wave{0, 1}, lobe{0, 1};
    firstPiece = 1;
    if (any_less(0, s.overlap)) {
      firstPiece = 0;
      T both = s.overlap * (1.0 / Intervals);
      ahead(s, 0, 0, both, s.braking, s.brakingRate, wave, lobe);
      behind(s, both);
    }
    ahead(s, 1, s.overlap, (s.brakingShare - s.overlap) * (1.0 / Intervals), s.braking, s.brakingRate, wave, lobe);
    lobe = {0, 1};
    ahead(s, 2, s.brakingShare, (s.window - s.brakingShare) * (1.0 / Intervals), s.push, s.pushRate, wave, lobe);
  }

  TM_INLINE void ahead(const Stride<T> &s, int piece, T from, T interval, T peak, T rate, Turn<T> &wave, Turn<T> &lobe) {
    Turn<T> waveStep = Turn<T>::of(interval), lobeStep = Turn<T>::of(rate * interval);
    T share = share_at(s, from), ride = s.rideShare * interval;
    for (int i = 0;; i++) {
      T load, slope;
      foot(s.normal, s.third, peak, rate, wave, lobe, load, slope);
      slope = slope * interval;
      nodes[piece * NodesAPiece + i] = {load + s.drag, slope, mul_add(load, share, 0.5 * s.drag),
                                        mul_add(slope, share, load * ride)};
      if (i == Intervals)
        break;
      wave = wave.plus(waveStep);
      lobe = lobe.plus(lobeStep);
      share = share + ride;
    }
  }

  TM_INLINE void behind(const Stride<T> &s, T interval) {
    Turn<T> waveStep = Turn<T>::of(interval), lobeStep = Turn<T>::of(s.pushRate * interval);
    Turn<T> wave{0, 1}, lobe{0, 1};
    T share = s.strikeShare + s.rideShare, ride = s.rideShare * interval;
    for (int i = Intervals;; i--) {
      T load, slope;
      foot(s.normal, s.third, s.push, s.pushRate, wave, lobe, load, slope);
      slope = slope * -interval;
      Node<T> &n = nodes[i];
      n = {n.pull + load, n.pullSlope + slope, mul_add(load, share, n.shared),
           n.sharedSlope + mul_add(slope, share, load * ride)};
      if (i == 0)
        break;
      wave = wave.plus(waveStep);
      lobe = lobe.plus(lobeStep);
      share = share - ride;
    }
  }
};

template <class T> TM_INLINE void piece_ends(const Stride<T> &s, T piece, T &from, T &to) {
  from = if_less(piece, 0.5, 0, if_less(piece, 1.5, s.overlap, s.brakingShare));
  to = if_less(piece, 0.5, s.overlap, if_less(piece, 1.5, s.brakingShare, s.window));
}

template <class T> TM_INLINE T bound(T normal, T third, double thirdPower, T lobes) {
  return mul_add(abs(normal), mul_add(T(thirdPower), abs(third), T(1)), lobes);
}

template <class T> struct Doubts {
  T interval, ride, second, fourth;

  static TM_INLINE Doubts of(const Stride<T> &s) {
    T longest = max(max(s.overlap, s.brakingShare - s.overlap), s.window - s.brakingShare);
    T b = s.brakingRate * s.brakingRate, p = s.pushRate * s.pushRate;
    T b2 = abs(s.braking) * b, p2 = abs(s.push) * p;
    return {longest * (1.0 / Intervals), abs(s.rideShare), 2.0 * bound(s.normal, s.third, 9, max(b2, p2)),
            2.0 * bound(s.normal, s.third, 81, max(b2 * b, p2 * p))};
  }

  static TM_INLINE T weight_of(const Target<T> &t) { return max(abs(t.onPull), abs(t.onPull + t.onShared)); }

  TM_INLINE T of_cubics(const Target<T> &t) const {
    T weight = Pi2 * (Pi2 * weight_of(t) + 4.0 * Pi * ride * abs(t.onShared));
    T square = interval * interval;
    return 2.0 / 384.0 * square * square * weight * fourth;
  }

  __attribute__((noinline)) T worth(const Nodes<T> &nodes, const Target<T> &t, T floor) const {
    T highest = t.height(nodes.at(1, 0));
    for (int i = nodes.firstPiece * NodesAPiece; i < Pieces * NodesAPiece; i++)
      highest = max(highest, t.height(nodes.nodes[i]));
    T weight = Pi2 * weight_of(t) + 2.0 * Pi * ride * abs(t.onShared);
    return if_less(floor, mul_add(0.125 * interval * interval * weight, second, highest), 1, 0);
  }
};

template <class T>
TM_INLINE Top<T> between(int piece, int interval, T from, T rise, T to, T riseThere, T turns) {
  T chord = to - from;
  T square = 3.0 * chord - 2.0 * rise - riseThere;
  T cube = rise + riseThere - 2.0 * chord;
  T root = sqrt(mul_add(square, square, -3.0 * cube * rise));
  T way = max(T(0), min(T(1), rise / (root - square)));
  T height = mul_add(way, mul_add(way, mul_add(way, cube, square), rise), from);
  T low(interval * Interval);
  return {T(piece), mul_add(way, T(Interval), low), low, if_less(turns, 5e-324, height, Nowhere), T(0)};
}

template <class T> TM_INLINE void take(const Top<T> &here, Top<T> &best, Top<T> &second) {
  Top<T> beaten = Top<T>::lower(best, here);
  best = Top<T>::higher(best, here);
  second = Top<T>::higher(second, beaten);
}

template <class T>
__attribute__((noinline)) void scan(const Nodes<T> &nodes, const Target<T> &target, Top<T> &best, Top<T> &second) {
  best = {1, Edge, Edge, target.height(nodes.at(1, 0)), 0};
  second = {1, Edge, Edge, Nowhere, 0};
  for (int piece = nodes.firstPiece; piece < Pieces; piece++) {
    T from = target.height(nodes.at(piece, 0)), rise = target.rise(nodes.at(piece, 0));
    for (int i = 0; i < Intervals; i++) {
      T to = target.height(nodes.at(piece, i + 1)), riseThere = target.rise(nodes.at(piece, i + 1));
      T turns = if_less(0, rise, riseThere, 1);
      if (any_less(turns, 5e-324))
        take(between(piece, i, from, rise, to, riseThere, turns), best, second);
      from = to;
      rise = riseThere;
    }
    if (any_less(0, rise))
      take(Top<T>{T(piece), T(1 - Edge), T(1 - Edge), if_less(0, rise, from, Nowhere), T(0)}, best, second);
  }
}

template <class T> TM_INLINE Jet<T> weighed(const Jet<T> &j, T weight, T slope) {
  return {j.f0 * weight, mul_add(j.f1, weight, j.f0 * slope), mul_add(j.f2, weight, 2.0 * j.f1 * slope),
          mul_add(j.f3, weight, 3.0 * j.f2 * slope), mul_add(j.f4, weight, 4.0 * j.f3 * slope)};
}

// The lobe that the foot ahead is in: its rate, its peak and the phases since it began.
template <class T> TM_INLINE void lobe_of(const Stride<T> &s, T piece, T phase, T &rate, T &peak, T &since) {
  rate = if_less(piece, 1.5, s.brakingRate, s.pushRate);
  since = if_less(piece, 1.5, phase, phase - s.brakingShare);
  peak = if_less(piece, 1.5, s.braking, s.push);
}

template <class T>
__attribute__((noinline)) Jet<T> derivatives(const Stride<T> &s, T piece, T place, const Target<T> &t) {
  T from, to, rate, peak, since;
  piece_ends(s, piece, from, to);
  T length = to - from, phase = mul_add(length, place, from), rides = t.onShared * s.rideShare;
  lobe_of(s, piece, phase, rate, peak, since);
  Jet<T> jet = weighed(jet_of(s.normal, s.third, peak, rate, Turn<T>::of(phase), Turn<T>::of(rate * since)),
                       mul_add(t.onShared, share_at(s, phase), t.onPull), rides);
  if (any_less(if_less(0, s.overlap, piece, 1), 0.5)) {
    T left = s.overlap - phase;
    Jet<T> b = jet_of(s.normal, s.third, s.push, s.pushRate, Turn<T>::of(left), Turn<T>::of(s.pushRate * left));
    b.f1 = -b.f1;
    b.f3 = -b.f3;
    b = weighed(b, mul_add(t.onShared, share_at(s, phase + s.step), t.onPull), rides);
    jet.f0 = jet.f0 + if_less(piece, 0.5, b.f0, 0);
    jet.f1 = jet.f1 + if_less(piece, 0.5, b.f1, 0);
    jet.f2 = jet.f2 + if_less(piece, 0.5, b.f2, 0);
    jet.f3 = jet.f3 + if_less(piece, 0.5, b.f3, 0);
    jet.f4 = jet.f4 + if_less(piece, 0.5, b.f4, 0);
  }
  T square = length * length;
  return {jet.f0 + s.drag * mul_add(t.onShared, T(0.5), t.onPull), jet.f1 * length, jet.f2 * square,
          jet.f3 * (square * length), jet.f4 * (square * square)};
}

template <class T> TM_INLINE Top<T> ascend(const Jet<T> &jet, const Top<T> &top, T &settled) {
  T inverse = 1.0 / jet.f2;
  T newton = -(jet.f1 * inverse);
  T perCurvature = newton * inverse;
  T p = 0.5 * jet.f3 * perCurvature;
  T r = 1.0 / 6.0 * jet.f4 * newton * perCurvature;
  T last = newton * (2.0 * p * p - r);
  T series = newton - newton * p + last;
  T far = if_less(abs(p) + abs(r), 0.25, series, newton);
  T step = if_less(jet.f2, 0, far, if_less(0, jet.f1, 0.5 * Interval, -0.5 * Interval));
  T high = min(top.low + Interval, T(1 - Edge));
  T place = max(max(top.low, T(Edge)), min(high, top.place + step));
  T move = place - top.place;
  T slope = mul_add(move, mul_add(move, mul_add(move, jet.f4 * (1.0 / 24), jet.f3 * (1.0 / 6)), 0.5 * jet.f2), jet.f1);
  T curvature = mul_add(move, mul_add(0.5 * move, jet.f4, jet.f3), jet.f2);
  T close = if_less(abs(newton), 4e-4, if_less(abs(last), 1e-9, 1, 0), 0);
  settled = if_less(abs(move), 1e-14, 1, close);
  return {top.piece, place, top.low, mul_add(move, slope, jet.f0), curvature};
}

template <class T>
__attribute__((noinline)) void climb(const Stride<T> &s, const Target<T> &target, T climbing, Top<T> &top) {
  for (int i = 0; i < 16 && any_less(0.5, climbing); i++) {
    T settled;
    Top<T> next = ascend(derivatives(s, top.piece, top.place, target), top, settled);
    top = Top<T>::where(climbing, next, top);
    climbing = if_less(0.5, settled, 0, climbing);
  }
}

template <class T>
__attribute__((noinline)) Top<T> find(const Stride<T> &s, const Nodes<T> &nodes, const Target<T> &target,
                                      const Doubts<T> &doubts) {
  Top<T> best, second;
  scan(nodes, target, best, second);
  T rivals = if_less(best.height, second.height + doubts.of_cubics(target), 1, 0);
  climb(s, target, T(1), best);
  if (any_less(0.5, rivals)) {
    climb(s, target, rivals, second);
    best = Top<T>::where(rivals, Top<T>::higher(best, second), best);
  }
  return best;
}
