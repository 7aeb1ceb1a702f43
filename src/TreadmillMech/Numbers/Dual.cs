using System.Globalization;
using System.Runtime.CompilerServices;

namespace TreadmillMech.Numbers;

/// <summary>
/// A number with its exact derivative by one variable. Nests on any number type: <c>Dual&lt;Dual&lt;Real&gt;&gt;</c>
/// carries second derivatives.
/// </summary>
/// <typeparam name="T">The number type of value and derivative.</typeparam>
/// <param name="Value">The value.</param>
/// <param name="Slope">The derivative; 1 for the variable itself, 0 for a constant.</param>
/// <remarks>
/// Forward-mode differentiation: every operation applies its own rule of differentiation, so slopes carry rounding
/// error only. See <see cref="IReal{T}"/> for the domain edges.
/// </remarks>
public readonly record struct Dual<T>(T Value, T Slope) : IReal<Dual<T>>
    where T : struct, IReal<T>
{
    /// <summary>Most arguments or results of a search on plain numbers.</summary>
    internal const int MostPlain = 48;

    static int IReal<Dual<T>>.Width => T.Width;

    /// <summary>The variable by which to differentiate: slope 1.</summary>
    /// <param name="value">Its value.</param>
    public static Dual<T> Variable(T value) => new(value, 1);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static implicit operator Dual<T>(double value) => new(value, 0);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual<T> operator +(Dual<T> left, Dual<T> right) =>
        new(left.Value + right.Value, left.Slope + right.Slope);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual<T> operator -(Dual<T> left, Dual<T> right) =>
        new(left.Value - right.Value, left.Slope - right.Slope);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual<T> operator *(Dual<T> left, Dual<T> right) =>
        new(left.Value * right.Value, (left.Slope * right.Value) + (left.Value * right.Slope));

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual<T> operator /(Dual<T> left, Dual<T> right)
    {
        T quotient = left.Value / right.Value;
        return new(quotient, (left.Slope - (quotient * right.Slope)) / right.Value);
    }

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual<T> operator -(Dual<T> value) => new(-value.Value, -value.Slope);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual<T> Sqrt(Dual<T> value)
    {
        T root = T.Sqrt(value.Value);
        return new(root, Chain(1 / (2 * root), value.Slope));
    }

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual<T> Exp(Dual<T> value)
    {
        T power = T.Exp(value.Value);
        return new(power, Chain(power, value.Slope));
    }

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual<T> Log(Dual<T> value) => new(T.Log(value.Value), Chain(1 / value.Value, value.Slope));

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (Dual<T> Sin, Dual<T> Cos) SinCos(Dual<T> angle)
    {
        (T sin, T cos) = T.SinCos(angle.Value);
        return (new(sin, cos * angle.Slope), new(cos, -(sin * angle.Slope)));
    }

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (Dual<T> Sin, Dual<T> Cos) SinCosPi(Dual<T> halfTurns)
    {
        (T sin, T cos) = T.SinCosPi(halfTurns.Value);
        T slope = Math.PI * halfTurns.Slope;
        return (new(sin, cos * slope), new(cos, -(sin * slope)));
    }

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual<T> Asin(Dual<T> value) =>
        new(T.Asin(value.Value), Chain(1 / T.Sqrt((1 - value.Value) * (1 + value.Value)), value.Slope));

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual<T> Atan2(Dual<T> y, Dual<T> x) =>
        new(
            T.Atan2(y.Value, x.Value),
            ((x.Value * y.Slope) - (y.Value * x.Slope)) / ((x.Value * x.Value) + (y.Value * y.Value))
        );

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual<T> Tanh(Dual<T> value)
    {
        T tanh = T.Tanh(value.Value);
        return new(tanh, (1 - tanh) * (1 + tanh) * value.Slope);
    }

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual<T> Pow(Dual<T> value, double exponent) =>
        exponent == 0
            ? 1
            : new Dual<T>(
                T.Pow(value.Value, exponent),
                Chain(exponent * T.Pow(value.Value, exponent - 1), value.Slope)
            );

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual<T> Abs(Dual<T> value) =>
        new(T.Abs(value.Value), T.IfLess(value.Value, 0, -value.Slope, value.Slope));

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual<T> Min(Dual<T> first, Dual<T> second) => IfLess(first, second, first, second);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual<T> Max(Dual<T> first, Dual<T> second) => IfLess(first, second, second, first);

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual<T> IfLess(Dual<T> left, Dual<T> right, Dual<T> yes, Dual<T> no) =>
        new(
            T.IfLess(left.Value, right.Value, yes.Value, no.Value),
            T.IfLess(left.Value, right.Value, yes.Slope, no.Slope)
        );

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual<T> Hold(Dual<T> value) => new(T.Hold(value.Value), 0);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static Dual<T> IReal<Dual<T>>.MultiplyAdd(Dual<T> first, Dual<T> second, Dual<T> third) =>
        new(
            T.MultiplyAdd(first.Value, second.Value, third.Value),
            T.MultiplyAdd(first.Slope, second.Value, T.MultiplyAdd(first.Value, second.Slope, third.Slope))
        );

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static bool IReal<Dual<T>>.AnyLess(Dual<T> left, Dual<T> right) => T.AnyLess(left.Value, right.Value);

    static void IReal<Dual<T>>.OnPlain<TSearch>(ReadOnlySpan<Dual<T>> arguments, Span<Dual<T>> results)
    {
        Plain below = default;
        Plain found = default;
        for (int i = 0; i < arguments.Length; i++)
        {
            below[i] = arguments[i].Value;
        }

        T.OnPlain<TSearch>(((ReadOnlySpan<T>)below)[..arguments.Length], ((Span<T>)found)[..results.Length]);
        for (int i = 0; i < results.Length; i++)
        {
            results[i] = new(found[i], 0);
        }
    }

    /// <summary>Value and slope in the invariant culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Value} (slope {Slope})");

    /// <summary>Chain rule; where the outer derivative is infinite, a slope of exactly zero stays zero.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Chain(T outer, T slope)
    {
        T product = outer * slope;
        return T.IfLess(double.MaxValue, T.Abs(outer), T.IfLess(T.Abs(slope), double.Epsilon, 0, product), product);
    }

    [InlineArray(MostPlain)]
    private struct Plain
    {
        private T first;
    }
}
