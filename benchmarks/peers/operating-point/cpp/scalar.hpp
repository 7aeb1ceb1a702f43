// One double with the functions of the C library: the number type of the scalar peer.
#pragma once

#include <cmath>

struct Scalar {
  static constexpr int width = 1;
  double v;
  Scalar() = default;
  Scalar(double value) : v(value) {}
  static Scalar load(const double *from) { return *from; }
  void store(double *to) const { *to = v; }
  void stream(double *to) const { *to = v; }
};

#define TM_INLINE inline __attribute__((always_inline))

TM_INLINE Scalar operator+(Scalar a, Scalar b) { return a.v + b.v; }
TM_INLINE Scalar operator-(Scalar a, Scalar b) { return a.v - b.v; }
TM_INLINE Scalar operator*(Scalar a, Scalar b) { return a.v * b.v; }
TM_INLINE Scalar operator/(Scalar a, Scalar b) { return a.v / b.v; }
TM_INLINE Scalar operator-(Scalar a) { return -a.v; }
TM_INLINE Scalar mul_add(Scalar a, Scalar b, Scalar c) { return std::fma(a.v, b.v, c.v); }
TM_INLINE Scalar if_less(Scalar l, Scalar r, Scalar yes, Scalar no) { return l.v < r.v ? yes : no; }
TM_INLINE bool any_less(Scalar l, Scalar r) { return l.v < r.v; }
TM_INLINE Scalar abs(Scalar a) { return std::fabs(a.v); }
TM_INLINE Scalar sqrt(Scalar a) { return std::sqrt(a.v); }
TM_INLINE Scalar exp(Scalar a) { return std::exp(a.v); }
TM_INLINE Scalar pow(Scalar a, double exponent) { return std::pow(a.v, exponent); }
TM_INLINE Scalar asin(Scalar a) { return std::asin(a.v); }
TM_INLINE void sincos(Scalar x, Scalar &sin, Scalar &cos) {
  sin = std::sin(x.v);
  cos = std::cos(x.v);
}

// The C library of this age has no sine of half turns; this one is the library's own, on one number.
TM_INLINE void sincospi(Scalar x, Scalar &sin, Scalar &cos) {
  double turned = x.v + x.v;
  double quarters = std::nearbyint(turned);
  double r = x.v - 0.5 * quarters, z = r * r;
  double s = std::fma(z, 0.00046221110224187623, -0.0073701436435937495);
  s = std::fma(z, s, 0.08214587730641625);
  s = std::fma(z, s, -0.5992645291845385);
  s = std::fma(z, s, 2.5501640398766154);
  s = std::fma(z, s, -5.167712780049969);
  s = std::fma(z, s, 1.2246467991473532e-16);
  s = std::fma(r, 3.141592653589793, r * s);
  double c = std::fma(z, -0.00010370082971594627, 0.001929493874894941);
  c = std::fma(z, c, -0.025806887964701878);
  c = std::fma(z, c, 0.23533063028399223);
  c = std::fma(z, c, -1.3352627688538095);
  c = std::fma(z, c, 4.058712126416765);
  c = std::fma(z, c, -4.934802200544679);
  c = std::fma(z, c, 1.0);
  long q = (long)quarters;
  double a = (q & 1) ? c : s, b = (q & 1) ? s : c;
  sin = (q & 2) ? -a : a;
  cos = ((q + 1) & 2) ? -b : b;
}
