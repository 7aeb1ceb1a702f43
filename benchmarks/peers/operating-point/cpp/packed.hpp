// Eight doubles as a plain array, every operation a loop: what the compiler makes of it is its own affair. The functions
// are those of the C library; with -ffast-math GCC calls their vector forms in libmvec. A loop over rows around the whole
// model is not vectorised by GCC, because the search inside ends early: so the loop lies inside each operation.
#pragma once

#include <cmath>

struct Packed {
  static constexpr int width = 8;
  alignas(64) double v[8];
  Packed() = default;
  Packed(double value) {
#pragma omp simd
    for (int i = 0; i < 8; i++)
      v[i] = value;
  }
  static Packed load(const double *from) {
    Packed r;
#pragma omp simd
    for (int i = 0; i < 8; i++)
      r.v[i] = from[i];
    return r;
  }
  void store(double *to) const {
#pragma omp simd
    for (int i = 0; i < 8; i++)
      to[i] = v[i];
  }
  void stream(double *to) const { store(to); }
};

#define TM_INLINE inline __attribute__((always_inline))
#define TM_EACH(expression)                                                                                            \
  Packed r;                                                                                                            \
  _Pragma("omp simd") for (int i = 0; i < 8; i++) r.v[i] = (expression);                                               \
  return r;

TM_INLINE Packed operator+(const Packed &a, const Packed &b) { TM_EACH(a.v[i] + b.v[i]) }
TM_INLINE Packed operator-(const Packed &a, const Packed &b) { TM_EACH(a.v[i] - b.v[i]) }
TM_INLINE Packed operator*(const Packed &a, const Packed &b) { TM_EACH(a.v[i] * b.v[i]) }
TM_INLINE Packed operator/(const Packed &a, const Packed &b) { TM_EACH(a.v[i] / b.v[i]) }
TM_INLINE Packed operator-(const Packed &a) { TM_EACH(-a.v[i]) }
TM_INLINE Packed mul_add(const Packed &a, const Packed &b, const Packed &c) { TM_EACH(a.v[i] * b.v[i] + c.v[i]) }
TM_INLINE Packed if_less(const Packed &l, const Packed &r_, const Packed &yes, const Packed &no) {
  TM_EACH(l.v[i] < r_.v[i] ? yes.v[i] : no.v[i])
}
TM_INLINE bool any_less(const Packed &l, const Packed &r) {
  int any = 0;
#pragma omp simd reduction(| : any)
  for (int i = 0; i < 8; i++)
    any |= l.v[i] < r.v[i];
  return any;
}
TM_INLINE Packed abs(const Packed &a) { TM_EACH(std::fabs(a.v[i])) }
TM_INLINE Packed sqrt(const Packed &a) { TM_EACH(std::sqrt(a.v[i])) }
TM_INLINE Packed exp(const Packed &a) { TM_EACH(std::exp(a.v[i])) }
TM_INLINE Packed pow(const Packed &a, double exponent) { TM_EACH(std::pow(a.v[i], exponent)) }
TM_INLINE Packed asin(const Packed &a) { TM_EACH(std::asin(a.v[i])) }

// In two loops: in one the compiler joins both to a call that has no vector form.
TM_INLINE Packed sin(const Packed &a) { TM_EACH(std::sin(a.v[i])) }
TM_INLINE Packed cos(const Packed &a) { TM_EACH(std::cos(a.v[i])) }
TM_INLINE void sincos(const Packed &x, Packed &s, Packed &c) {
  s = sin(x);
  c = cos(x);
}
TM_INLINE void sincospi(const Packed &x, Packed &s, Packed &c) { sincos(3.141592653589793 * x, s, c); }
