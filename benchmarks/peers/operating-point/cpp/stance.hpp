// The load of one foot over its stance, its derivatives and its integrals.
#pragma once

constexpr double Pi = 3.141592653589793, Pi2 = Pi * Pi, Pi3 = Pi2 * Pi, Pi4 = Pi2 * Pi2;

template <class T> struct Turn {
  T sin, cos;
  static TM_INLINE Turn of(T halfTurns) {
    Turn t;
    sincospi(halfTurns, t.sin, t.cos);
    return t;
  }
  TM_INLINE Turn plus(const Turn &o) const {
    return {mul_add(sin, o.cos, cos * o.sin), mul_add(cos, o.cos, -(sin * o.sin))};
  }
};

template <class T> TM_INLINE T max(T a, T b) { return if_less(a, b, b, a); }
template <class T> TM_INLINE T min(T a, T b) { return if_less(a, b, a, b); }
template <class T> TM_INLINE T sin_pi(T x) { return Turn<T>::of(x).sin; }

template <class T>
TM_INLINE void foot(T normal, T third, T peak, T rate, const Turn<T> &wave, const Turn<T> &lobe, T &load, T &slope) {
  T twice = 2.0 * wave.sin;
  T square = twice * twice;
  load = mul_add(normal * wave.sin, mul_add(third, 3.0 - square, T(1)), peak * lobe.sin);
  T inner = normal * wave.cos * mul_add(3.0 * third, 1.0 - square, T(1));
  slope = Pi * mul_add(peak * rate, lobe.cos, inner);
}

template <class T> struct Jet {
  T f0, f1, f2, f3, f4;
};

template <class T> TM_INLINE Jet<T> jet_of(T normal, T third, T peak, T rate, const Turn<T> &wave, const Turn<T> &lobe) {
  T twice = 2.0 * wave.sin;
  T square = twice * twice;
  T sin = normal * wave.sin, cos = normal * wave.cos;
  T sinThird = sin * third * (3.0 - square), cosThird = cos * third * (1.0 - square);
  T lobeSin = peak * lobe.sin, lobeCos = peak * rate * lobe.cos;
  T rates = rate * rate;
  T lobeSinRates = lobeSin * rates;
  Jet<T> j;
  j.f0 = sin + sinThird + lobeSin;
  j.f1 = Pi * (mul_add(cosThird, T(3), cos) + lobeCos);
  j.f2 = -Pi2 * (mul_add(sinThird, T(9), sin) + lobeSinRates);
  j.f3 = -Pi3 * mul_add(lobeCos, rates, mul_add(cosThird, T(27), cos));
  j.f4 = Pi4 * mul_add(lobeSinRates, rates, mul_add(sinThird, T(81), sin));
  return j;
}

template <class T> TM_INLINE T sinc(T x) {
  T tiny = abs(x);
  return if_less(tiny, 1e-8, Pi, sin_pi(x) / if_less(tiny, 1e-8, 1, x));
}

template <class T> T square_sum(T normal, T third, T peak, T share) {
  T rest = 1.0 - share;
  T first = sin_pi(share) * (1.0 / (rest * (1.0 + share)) - 1.0 / (share * (1.0 + rest)));
  T x = 3.0 * share;
  T second = sinc(1.0 - x) / (1.0 + x) - sinc(x - 2.0) / (4.0 - x);
  T cross = share * (1.0 / Pi) * mul_add(third, second, first);
  return 0.5 * normal * normal * (1.0 + third * third) +
         peak * (2.0 * normal * cross + 0.5 * peak * share / rest);
}

template <class T> TM_INLINE T alone(T rate, const Turn<T> &at, T overlap) {
  return 0.5 * (at.sin / (Pi * rate) - overlap * at.cos);
}

template <class T> TM_INLINE T pair(T a, T c, const Turn<T> &atA, const Turn<T> &atC, T overlap) {
  T apart = (c - a) * (c + a);
  T alike = 0.5 * (alone(a, atA, overlap) + alone(c, atC, overlap));
  return if_less(abs(apart), 1e-5, alike,
                 (c * atA.sin - a * atC.sin) * (1.0 / Pi) / if_less(abs(apart), 1e-5, 1, apart));
}

template <class T>
__attribute__((noinline)) T product_sum(T normal, T third, T braking, T brakingRate, T push, T pushRate, T overlap) {
  Turn<T> first = Turn<T>::of(overlap), thirds = Turn<T>::of(3.0 * overlap);
  Turn<T> brakes = Turn<T>::of(brakingRate * overlap), pushes = Turn<T>::of(pushRate * overlap);
  T one(1), three(3);
  T waves = alone(one, first, overlap) +
            third * (0.25 / Pi * (3.0 * first.sin - thirds.sin) + third * alone(three, thirds, overlap));
  T withPush = pair(one, pushRate, first, pushes, overlap) + third * pair(three, pushRate, thirds, pushes, overlap);
  T withBraking =
      pair(one, brakingRate, first, brakes, overlap) + third * pair(three, brakingRate, thirds, brakes, overlap);
  T lobes = pair(brakingRate, pushRate, brakes, pushes, overlap);
  return normal * (normal * waves + push * withPush + braking * withBraking) + braking * push * lobes;
}
