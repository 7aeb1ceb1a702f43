// Eight doubles in one 512-bit register, with polynomials of our own: the number type of the hand-written peer.
// Coefficients: Taylor series economised over the reduced range with exact fractions; what they leave out is below
// 2e-17 of the value. Ranges are those of the model: angles and exponents of moderate size.
#pragma once

#include <cstdint>
#include <immintrin.h>

struct Lanes {
  static constexpr int width = 8;
  typedef double V __attribute__((vector_size(64)));
  typedef int64_t I __attribute__((vector_size(64)));
  V v;
  Lanes() = default;
  Lanes(V values) : v(values) {}
  Lanes(double value) : v(V{} + value) {}
  static Lanes load(const double *from) { return Lanes((V)_mm512_loadu_pd(from)); }
  void store(double *to) const { _mm512_storeu_pd(to, (__m512d)v); }
  void stream(double *to) const { _mm512_stream_pd(to, (__m512d)v); }
};

#define TM_INLINE inline __attribute__((always_inline))

// How many instructions of each kind the model takes; only in the build that counts.
struct Counts {
  long sums, products, fused, divisions, roots, choices, others;
};
#ifdef TM_COUNT
inline Counts counts;
#define TM_COUNTED(kind) counts.kind++,
#else
#define TM_COUNTED(kind)
#endif

TM_INLINE Lanes operator+(Lanes a, Lanes b) { return TM_COUNTED(sums) Lanes(a.v + b.v); }
TM_INLINE Lanes operator-(Lanes a, Lanes b) { return TM_COUNTED(sums) Lanes(a.v - b.v); }
TM_INLINE Lanes operator*(Lanes a, Lanes b) { return TM_COUNTED(products) Lanes(a.v * b.v); }
TM_INLINE Lanes operator/(Lanes a, Lanes b) { return TM_COUNTED(divisions) Lanes(a.v / b.v); }
TM_INLINE Lanes operator-(Lanes a) { return TM_COUNTED(others) Lanes(-a.v); }

TM_INLINE Lanes mul_add(Lanes a, Lanes b, Lanes c) {
  return TM_COUNTED(fused) Lanes((Lanes::V)_mm512_fmadd_pd((__m512d)a.v, (__m512d)b.v, (__m512d)c.v));
}
TM_INLINE __mmask8 less(Lanes a, Lanes b) { return TM_COUNTED(choices) _mm512_cmp_pd_mask((__m512d)a.v, (__m512d)b.v, _CMP_LT_OQ); }
TM_INLINE Lanes choose(__mmask8 m, Lanes yes, Lanes no) {
  return TM_COUNTED(choices) Lanes((Lanes::V)_mm512_mask_blend_pd(m, (__m512d)no.v, (__m512d)yes.v));
}
TM_INLINE Lanes if_less(Lanes l, Lanes r, Lanes yes, Lanes no) { return choose(less(l, r), yes, no); }
TM_INLINE bool any_less(Lanes l, Lanes r) { return less(l, r) != 0; }
TM_INLINE Lanes abs(Lanes a) { return TM_COUNTED(others) Lanes((Lanes::V)_mm512_abs_pd((__m512d)a.v)); }
TM_INLINE Lanes sqrt(Lanes a) { return TM_COUNTED(roots) Lanes((Lanes::V)_mm512_sqrt_pd((__m512d)a.v)); }

template <int N> TM_INLINE Lanes polynomial(Lanes x, const double (&c)[N]) {
  Lanes sum(c[N - 1]);
  for (int i = N - 2; i >= 0; i--)
    sum = mul_add(x, sum, c[i]);
  return sum;
}

// Sine and cosine from a rest of at most a quarter of pi and the number of quarters taken off.
TM_INLINE void by_quarters(Lanes s, Lanes c, Lanes shifted, Lanes &sin, Lanes &cos) {
  __m512i q = (__m512i)shifted.v;
#ifdef TM_COUNT
  counts.others += 8;
#endif
  __mmask8 odd = _mm512_test_epi64_mask(q, _mm512_set1_epi64(1));
  __m512i sinSign = _mm512_slli_epi64(_mm512_and_epi64(q, _mm512_set1_epi64(2)), 62);
  __m512i cosSign = _mm512_slli_epi64(
      _mm512_and_epi64(_mm512_add_epi64(q, _mm512_set1_epi64(1)), _mm512_set1_epi64(2)), 62);
  sin = Lanes((Lanes::V)_mm512_xor_epi64((__m512i)choose(odd, c, s).v, sinSign));
  cos = Lanes((Lanes::V)_mm512_xor_epi64((__m512i)choose(odd, s, c).v, cosSign));
}

constexpr double Shift = 6755399441055744.0; // leaves an integer in the lowest bits of a sum

TM_INLINE void sincospi(Lanes x, Lanes &sin, Lanes &cos) {
  static constexpr double S[] = {1.2246467991473532e-16, -5.167712780049969,   2.5501640398766154,   -0.5992645291845385,
                                 0.08214587730641625,    -0.0073701436435937495, 0.00046221110224187623};
  static constexpr double C[] = {-4.934802200544679,  4.058712126416765,    -1.3352627688538095,   0.23533063028399223,
                                 -0.025806887964701878, 0.001929493874894941, -0.00010370082971594627};
  Lanes shifted = x + x + Shift;
  Lanes rest = x - (shifted - Shift) * 0.5;
  Lanes square = rest * rest;
  Lanes s = mul_add(rest, 3.141592653589793, rest * polynomial(square, S));
  Lanes c = mul_add(square, polynomial(square, C), 1.0);
  by_quarters(s, c, shifted, sin, cos);
}

TM_INLINE void sincos(Lanes x, Lanes &sin, Lanes &cos) {
  static constexpr double S[] = {-0.16666666666666666,    0.008333333333333331,  -0.00019841269841265065, 2.755731921933988e-06,
                                 -2.5052106232666854e-08, 1.605853165014853e-10, -7.586698778125349e-13};
  static constexpr double C[] = {0.041666666666666664,   -0.0013888888888887398, 2.4801587298766313e-05,
                                 -2.7557317272009663e-07, 2.0876146319619315e-09, -1.1382635705459988e-11};
  Lanes shifted = mul_add(x, 0.6366197723675814, Shift);
  Lanes quarters = shifted - Shift;
  Lanes rest = mul_add(quarters, -1.5707963267948966, x);
  rest = mul_add(quarters, -6.123233995736766e-17, rest);
  Lanes square = rest * rest;
  Lanes s = mul_add(rest * square, polynomial(square, S), rest);
  Lanes c = mul_add(square * square, polynomial(square, C), mul_add(square, -0.5, 1.0));
  by_quarters(s, c, shifted, sin, cos);
}

TM_INLINE Lanes exp(Lanes x) {
  static constexpr double E[] = {0.5,
                                 0.1666666666666667,
                                 0.04166666666666668,
                                 0.00833333333332614,
                                 0.001388888888887908,
                                 0.00019841269874805898,
                                 2.4801587336426553e-05,
                                 2.7557255419156705e-06,
                                 2.7557263296038744e-07,
                                 2.5105209030726063e-08,
                                 2.09181314184218e-09};
  Lanes n((Lanes::V)_mm512_roundscale_pd((__m512d)(x * 1.4426950408889634).v, 0));
  Lanes r = mul_add(n, -0.6931471805599453, x);
  r = mul_add(n, -2.3190468138462996e-17, r);
  Lanes e = mul_add(r * r, polynomial(r, E), r + 1.0);
  return Lanes((Lanes::V)_mm512_scalef_pd((__m512d)e.v, (__m512d)n.v));
}

TM_INLINE Lanes log(Lanes x) {
  static constexpr double L[] = {0.6666666666666666,  0.4000000000000787,  0.28571428567310503, 0.22222223042220374,
                                 0.18181738131700032, 0.15388846806061426, 0.13210134832369147, 0.13605664073045623};
  // Mantissa from 0.75 to 1.5, so that numbers near one keep their exponent of zero.
  Lanes m((Lanes::V)_mm512_getmant_pd((__m512d)x.v, _MM_MANT_NORM_1_2, _MM_MANT_SIGN_src));
  Lanes n((Lanes::V)_mm512_getexp_pd((__m512d)x.v));
  __mmask8 upper = less(1.5, m);
  m = choose(upper, 0.5 * m, m);
  n = choose(upper, n + 1.0, n);
  Lanes s = (m - 1.0) / (m + 1.0);
  Lanes z = s * s;
  Lanes small = mul_add(s * z, polynomial(z, L), s + s);
  return mul_add(n, 0.6931471805599453, mul_add(n, 2.3190468138462996e-17, small));
}

TM_INLINE Lanes pow(Lanes x, double exponent) { return exp(exponent * log(x)); }

TM_INLINE Lanes asin(Lanes x) {
  static constexpr double A[] = {0.16666666666666669, 0.0749999999999834,   0.04464285714653523,  0.03038194412500875,  0.022372173467043486,
                                 0.017352380709839098, 0.01397138708310213, 0.011477517005507167, 0.01033337215296726,  0.005413184483715509,
                                 0.01751883397953867,  -0.015032162599250314, 0.028878362746452394};
  Lanes size = abs(x);
  if (!any_less(0.5, size)) {
    Lanes z = x * x;
    return mul_add(x * z, polynomial(z, A), x);
  }
  __mmask8 large = less(0.5, size);
  Lanes z = choose(large, 0.5 * (1.0 - size), size * size);
  Lanes y = choose(large, sqrt(z), size);
  Lanes a = mul_add(y * z, polynomial(z, A), y);
  a = choose(large, 1.5707963267948966 - 2.0 * a, a);
  return choose(less(x, 0.0), -a, a);
}
