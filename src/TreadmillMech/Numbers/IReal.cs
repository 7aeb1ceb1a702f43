namespace TreadmillMech.Numbers;

/// <summary>
/// A real number that a law can be evaluated on: one value (<see cref="Real"/>), or a value with its exact derivative
/// (<see cref="Dual{T}"/>).
/// </summary>
/// <typeparam name="T">The number type itself.</typeparam>
/// <remarks>
/// <para>Closed: only this library implements it, so members may be added in a minor version.</para>
/// <para>
/// Domain edges follow IEEE 754 in the value: a square root or arcsine outside its domain is NaN, a division by zero is
/// infinite, or NaN for zero by zero. A comparison with NaN is false, so <see cref="IfLess"/> then answers with its last
/// argument. Where a derivative is infinite (square root at 0, arcsine at 1) a number whose own slope is exactly zero
/// keeps slope zero: a constant stays a constant. A quotient by zero and the angle of the origin have no slope, not even
/// of constants: NaN. Below zero the logarithm's value is NaN, whatever its slope.
/// </para>
/// </remarks>
public interface IReal<T>
    where T : struct, IReal<T>
{
    /// <summary>How many cases one number carries; closes the interface to outside implementations.</summary>
    internal static abstract int Width { get; }

    /// <summary>A constant, with derivative zero.</summary>
    /// <param name="value">The constant.</param>
    static abstract implicit operator T(double value);

    /// <summary>Sum.</summary>
    /// <param name="left">First term.</param>
    /// <param name="right">Second term.</param>
    static abstract T operator +(T left, T right);

    /// <summary>Difference.</summary>
    /// <param name="left">Minuend.</param>
    /// <param name="right">Subtrahend.</param>
    static abstract T operator -(T left, T right);

    /// <summary>Product.</summary>
    /// <param name="left">First factor.</param>
    /// <param name="right">Second factor.</param>
    static abstract T operator *(T left, T right);

    /// <summary>Quotient.</summary>
    /// <param name="left">Dividend.</param>
    /// <param name="right">Divisor.</param>
    static abstract T operator /(T left, T right);

    /// <summary>Negation.</summary>
    /// <param name="value">The number.</param>
    static abstract T operator -(T value);

    /// <summary>Square root; NaN below zero.</summary>
    /// <param name="value">The number, 0 or more.</param>
    static abstract T Sqrt(T value);

    /// <summary>e raised to the number.</summary>
    /// <param name="value">The exponent.</param>
    static abstract T Exp(T value);

    /// <summary>Natural logarithm; minus infinity at zero, NaN below.</summary>
    /// <param name="value">The number, above 0.</param>
    static abstract T Log(T value);

    /// <summary>Sine and cosine.</summary>
    /// <param name="angle">The angle [rad].</param>
    static abstract (T Sin, T Cos) SinCos(T angle);

    /// <summary>Sine and cosine of pi times a number: no digit is lost to pi, however many turns there are.</summary>
    /// <param name="halfTurns">The angle in half turns [1].</param>
    static abstract (T Sin, T Cos) SinCosPi(T halfTurns);

    /// <summary>Arcsine [rad]; NaN outside -1 to 1.</summary>
    /// <param name="value">The sine, -1 to 1.</param>
    static abstract T Asin(T value);

    /// <summary>Angle of the point (x, y) from the x axis [rad], -pi to pi.</summary>
    /// <param name="y">Ordinate.</param>
    /// <param name="x">Abscissa.</param>
    static abstract T Atan2(T y, T x);

    /// <summary>Hyperbolic tangent.</summary>
    /// <param name="value">The number.</param>
    static abstract T Tanh(T value);

    /// <summary>The number raised to a constant power; NaN for a negative number and a fractional power.</summary>
    /// <param name="value">The base.</param>
    /// <param name="exponent">The exponent, a constant.</param>
    static abstract T Pow(T value, double exponent);

    /// <summary>Absolute value; its slope at zero is that from the right.</summary>
    /// <param name="value">The number.</param>
    static abstract T Abs(T value);

    /// <summary>Smaller of two; the second where they are equal or one is NaN.</summary>
    /// <param name="first">First number.</param>
    /// <param name="second">Second number.</param>
    static abstract T Min(T first, T second);

    /// <summary>Larger of two; the first where they are equal or one is NaN.</summary>
    /// <param name="first">First number.</param>
    /// <param name="second">Second number.</param>
    static abstract T Max(T first, T second);

    /// <summary>
    /// <paramref name="yes"/> where <paramref name="left"/> is less than <paramref name="right"/>, otherwise
    /// <paramref name="no"/>, also where either is NaN. Both are evaluated; only the chosen one is passed on, so an
    /// infinite or NaN branch that is not chosen does no harm.
    /// </summary>
    /// <param name="left">Left side of the comparison.</param>
    /// <param name="right">Right side of the comparison.</param>
    /// <param name="yes">Answer where the comparison is true.</param>
    /// <param name="no">Answer where it is false.</param>
    static abstract T IfLess(T left, T right, T yes, T no);

    /// <summary>The value with its derivative dropped.</summary>
    /// <param name="value">The number.</param>
    static abstract T Hold(T value);

    /// <summary>first * second + third, rounded once where the processor can.</summary>
    internal static abstract T MultiplyAdd(T first, T second, T third);

    /// <summary>Whether any case has left less than right; lets a stage skip work that no case needs.</summary>
    internal static abstract bool AnyLess(T left, T right);

    /// <summary>
    /// Runs a search on the plain numbers below this type and gives its results back without derivative: a search is
    /// done on values only, whatever the number type.
    /// </summary>
    internal static abstract void OnPlain<TSearch>(ReadOnlySpan<T> arguments, Span<T> results)
        where TSearch : IPlainSearch;
}
