using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace TreadmillMech.Numbers;

/// <summary>One plain number with its exact derivatives in eight directions at once: a row of a matrix of derivatives.</summary>
/// <remarks>
/// The rules of <see cref="Dual{T}"/>, with the value as one double, so that roots, quotients and functions are paid once and
/// not for each direction.
/// </remarks>
internal readonly struct Gradient : IReal<Gradient>
{
    private readonly double value;
    private readonly Vector512<double> slopes;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal Gradient(double value, Vector512<double> slopes)
    {
        this.value = value;
        this.slopes = slopes;
    }

    static int IReal<Gradient>.Width => 1;

    /// <summary>The value.</summary>
    internal double Value
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => value;
    }

    /// <summary>The derivatives.</summary>
    internal Vector512<double> Slopes
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => slopes;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static implicit operator Gradient(double value) => new(value, Vector512<double>.Zero);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Gradient operator +(Gradient left, Gradient right) =>
        new(left.value + right.value, left.slopes + right.slopes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Gradient operator -(Gradient left, Gradient right) =>
        new(left.value - right.value, left.slopes - right.slopes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Gradient operator *(Gradient left, Gradient right) =>
        new(left.value * right.value, (left.slopes * right.value) + (right.slopes * left.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Gradient operator /(Gradient left, Gradient right)
    {
        double quotient = left.value / right.value;
        return new(quotient, (left.slopes - (right.slopes * quotient)) * (1 / right.value));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Gradient operator -(Gradient value) => new(-value.value, -value.slopes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Gradient Sqrt(Gradient value)
    {
        double root = Math.Sqrt(value.value);
        return Chain(root, 1 / (2 * root), value.slopes);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Gradient Exp(Gradient value)
    {
        double power = Math.Exp(value.value);
        return Chain(power, power, value.slopes);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Gradient Log(Gradient value) => Chain(Math.Log(value.value), 1 / value.value, value.slopes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (Gradient Sin, Gradient Cos) SinCos(Gradient angle)
    {
        (double sin, double cos) = Math.SinCos(angle.value);
        return (new(sin, angle.slopes * cos), new(cos, angle.slopes * -sin));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (Gradient Sin, Gradient Cos) SinCosPi(Gradient halfTurns)
    {
        (double sin, double cos) = HalfTurns.SinCos(halfTurns.value);
        Vector512<double> turns = halfTurns.slopes * Math.PI;
        return (new(sin, turns * cos), new(cos, turns * -sin));
    }

    public static Gradient Asin(Gradient value) =>
        Chain(Math.Asin(value.value), 1 / Math.Sqrt((1 - value.value) * (1 + value.value)), value.slopes);

    public static Gradient Atan2(Gradient y, Gradient x)
    {
        double square = (x.value * x.value) + (y.value * y.value);
        return new(Math.Atan2(y.value, x.value), ((y.slopes * x.value) - (x.slopes * y.value)) * (1 / square));
    }

    public static Gradient Tanh(Gradient value)
    {
        double tanh = Math.Tanh(value.value);
        return new(tanh, value.slopes * ((1 - tanh) * (1 + tanh)));
    }

    public static Gradient Pow(Gradient value, double exponent) =>
        exponent == 0
            ? 1
            : Chain(Math.Pow(value.value, exponent), exponent * Math.Pow(value.value, exponent - 1), value.slopes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Gradient Abs(Gradient value) => value.value < 0 ? -value : new(Math.Abs(value.value), value.slopes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Gradient Min(Gradient first, Gradient second) => first.value < second.value ? first : second;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Gradient Max(Gradient first, Gradient second) => first.value < second.value ? second : first;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Gradient IfLess(Gradient left, Gradient right, Gradient yes, Gradient no) =>
        left.value < right.value ? yes : no;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Gradient Hold(Gradient value) => value.value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static Gradient IReal<Gradient>.MultiplyAdd(Gradient first, Gradient second, Gradient third) =>
        new(
            double.MultiplyAddEstimate(first.value, second.value, third.value),
            Vector512.MultiplyAddEstimate(
                first.slopes,
                Vector512.Create(second.value),
                Vector512.MultiplyAddEstimate(second.slopes, Vector512.Create(first.value), third.slopes)
            )
        );

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static bool IReal<Gradient>.AnyLess(Gradient left, Gradient right) => left.value < right.value;

    static void IReal<Gradient>.OnPlain<TSearch>(ReadOnlySpan<Gradient> arguments, Span<Gradient> results) =>
        throw new NotSupportedException("No search runs on rows of derivatives.");

    /// <summary>Chain rule; where the outer derivative is infinite, slopes of exactly zero stay zero.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Gradient Chain(double value, double outer, Vector512<double> slopes) =>
        Math.Abs(outer) <= double.MaxValue
            ? new(value, slopes * outer)
            : new(
                value,
                Vector512.ConditionalSelect(
                    Vector512.Equals(slopes, Vector512<double>.Zero),
                    Vector512<double>.Zero,
                    slopes * outer
                )
            );
}
