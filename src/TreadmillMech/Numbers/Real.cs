using System.Globalization;
using System.Runtime.CompilerServices;

namespace TreadmillMech.Numbers;

/// <summary>One plain real number: a double on which laws can be evaluated.</summary>
/// <param name="Value">The number.</param>
/// <remarks>
/// Converts from and to <see cref="double"/> by itself, so that callers write plain numbers. The default is 0.
/// </remarks>
public readonly record struct Real(double Value) : IReal<Real>
{
    static int IReal<Real>.Width => 1;

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static implicit operator Real(double value) => new(value);

    /// <summary>The plain number.</summary>
    /// <param name="value">The number.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static implicit operator double(Real value) => value.Value;

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Real operator +(Real left, Real right) => new(left.Value + right.Value);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Real operator -(Real left, Real right) => new(left.Value - right.Value);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Real operator *(Real left, Real right) => new(left.Value * right.Value);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Real operator /(Real left, Real right) => new(left.Value / right.Value);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Real operator -(Real value) => new(-value.Value);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Real Sqrt(Real value) => new(Math.Sqrt(value.Value));

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Real Exp(Real value) => new(Math.Exp(value.Value));

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Real Log(Real value) => new(Math.Log(value.Value));

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (Real Sin, Real Cos) SinCos(Real angle)
    {
        (double sin, double cos) = Math.SinCos(angle.Value);
        return (new(sin), new(cos));
    }

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (Real Sin, Real Cos) SinCosPi(Real halfTurns)
    {
        (double sin, double cos) = HalfTurns.SinCos(halfTurns.Value);
        return (new(sin), new(cos));
    }

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Real Asin(Real value) => new(Math.Asin(value.Value));

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Real Atan2(Real y, Real x) => new(Math.Atan2(y.Value, x.Value));

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Real Tanh(Real value) => new(Math.Tanh(value.Value));

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Real Pow(Real value, double exponent) => new(Math.Pow(value.Value, exponent));

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Real Abs(Real value) => new(Math.Abs(value.Value));

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Real Min(Real first, Real second) => IfLess(first, second, first, second);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Real Max(Real first, Real second) => IfLess(first, second, second, first);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Real IfLess(Real left, Real right, Real yes, Real no) => left.Value < right.Value ? yes : no;

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Real Hold(Real value) => value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static Real IReal<Real>.MultiplyAdd(Real first, Real second, Real third) =>
        new(double.MultiplyAddEstimate(first.Value, second.Value, third.Value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static bool IReal<Real>.AnyLess(Real left, Real right) => left.Value < right.Value;

    static void IReal<Real>.OnPlain<TSearch>(ReadOnlySpan<Real> arguments, Span<Real> results) =>
        TSearch.Run(arguments, results);

    /// <summary>The number in the invariant culture, with all its digits.</summary>
    public override string ToString() => Value.ToString("R", CultureInfo.InvariantCulture);
}
