using System.Globalization;
using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace TreadmillMech.Numbers;

/// <summary>Eight plain real numbers, evaluated side by side on vector hardware.</summary>
/// <remarks>
/// The same bits with 512-bit and with 256-bit registers; they may differ from <see cref="Real"/> in the last digits,
/// because the vector forms of the exponential, logarithm, sine, cosine, arcsine and powers are other algorithms than the
/// scalar ones. Arctangent and hyperbolic tangent are taken lane by lane and agree with the scalar ones exactly.
/// </remarks>
internal readonly struct Lanes : IReal<Lanes>, IEquatable<Lanes>
{
    /// <summary>Cases carried side by side.</summary>
    internal const int Count = 8;

    private const double LeastNormal = 2.2250738585072014e-308;
    private const double LargestPower = 1.5;

    private readonly Vector512<double> v;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal Lanes(Vector512<double> values) => v = values;

    internal Lanes(ReadOnlySpan<double> values) => v = Vector512.Create(values);

    static int IReal<Lanes>.Width => Count;

    internal double this[int lane] => v[lane];

    /// <summary>The eight as a register.</summary>
    internal Vector512<double> Vector
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => v;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static implicit operator Lanes(double value) => new(Vector512.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes operator +(Lanes left, Lanes right) => new(left.v + right.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes operator -(Lanes left, Lanes right) => new(left.v - right.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes operator *(Lanes left, Lanes right) => new(left.v * right.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes operator /(Lanes left, Lanes right) => new(left.v / right.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes operator -(Lanes value) => new(-value.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes Sqrt(Lanes value) => new(Vector512.Sqrt(value.v));

    public static Lanes Exp(Lanes value)
    {
        // Beyond this size of one argument the runtime answers all lanes of a register by the scalar form.
        Vector512<double> within = Vector512.LessThanOrEqual(Vector512.Abs(value.v), Vector512.Create(708.0));
        Vector512<double> power = Vector512.Exp(value.v & within);
        for (ulong rest = ~within.ExtractMostSignificantBits() & 0xFF; rest != 0; rest &= rest - 1)
        {
            int lane = BitOperations.TrailingZeroCount(rest);
            power = power.WithElement(lane, Math.Exp(value.v[lane]));
        }

        return new(power);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes Log(Lanes value) => new(Vector512.Log(value.v));

    public static (Lanes Sin, Lanes Cos) SinCos(Lanes angle)
    {
        // The runtime takes one of four paths for all lanes of a register, by the largest angle among them; each lane
        // is given the path of its own size here, so that its result depends on nothing but itself.
        Vector512<double> size = Vector512.Abs(angle.v);
        Vector512<double> notTiny = Vector512.GreaterThanOrEqual(size, Vector512.Create(1.0 / 8192));
        Vector512<double> large = Vector512.GreaterThan(size, Vector512.Create(Math.PI / 4));
        Vector512<double> known = Vector512.LessThan(size, Vector512.Create(5e6));
        Vector512<double> sin = default;
        Vector512<double> cos = default;
        SinCosWhere(known & ~notTiny, 0, angle.v, ref sin, ref cos);
        SinCosWhere(notTiny & ~large, 0.5, angle.v, ref sin, ref cos);
        SinCosWhere(known & large, 1, angle.v, ref sin, ref cos);
        for (ulong rest = ~known.ExtractMostSignificantBits() & 0xFF; rest != 0; rest &= rest - 1)
        {
            int lane = BitOperations.TrailingZeroCount(rest);
            (double s, double c) = Math.SinCos(angle.v[lane]);
            sin = sin.WithElement(lane, s);
            cos = cos.WithElement(lane, c);
        }

        return (new(sin), new(cos));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (Lanes Sin, Lanes Cos) SinCosPi(Lanes halfTurns)
    {
        (Vector512<double> sin, Vector512<double> cos) = HalfTurns.SinCos(halfTurns.v);
        return (new(sin), new(cos));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes Asin(Lanes value) => new(Arcsine.Of(value.v));

    public static Lanes Atan2(Lanes y, Lanes x)
    {
        Buffer filled = default;
        for (int i = 0; i < Count; i++)
        {
            filled[i] = Math.Atan2(y.v[i], x.v[i]);
        }

        return new(filled);
    }

    public static Lanes Tanh(Lanes value) => EachLane(value, Math.Tanh);

    public static Lanes Pow(Lanes value, double exponent)
    {
        // Near one the logarithm's error is not yet magnified; elsewhere, and where there is none, the scalar form answers.
        Vector512<double> positive = Vector512.GreaterThanOrEqual(value.v, Vector512.Create(LeastNormal));
        Lanes power = exponent * Log(new(Vector512.ConditionalSelect(positive, value.v, Vector512<double>.One)));
        Vector512<double> within =
            positive & Vector512.LessThanOrEqual(Vector512.Abs(power.v), Vector512.Create(LargestPower));
        Vector512<double> result = Vector512.Exp(power.v & within);
        for (ulong rest = ~within.ExtractMostSignificantBits() & 0xFF; rest != 0; rest &= rest - 1)
        {
            int lane = BitOperations.TrailingZeroCount(rest);
            result = result.WithElement(lane, Math.Pow(value.v[lane], exponent));
        }

        return new(result);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes Abs(Lanes value) => new(Vector512.Abs(value.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes Min(Lanes first, Lanes second) => IfLess(first, second, first, second);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes Max(Lanes first, Lanes second) => IfLess(first, second, second, first);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes IfLess(Lanes left, Lanes right, Lanes yes, Lanes no) =>
        new(Vector512.ConditionalSelect(Vector512.LessThan(left.v, right.v), yes.v, no.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes Hold(Lanes value) => value;

    /// <summary>All bits set where left is less than right.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Vector512<double> Less(Lanes left, Lanes right) => Vector512.LessThan(left.v, right.v);

    /// <summary>All bits set where left is not less than right, nor either NaN.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Vector512<double> NotLess(Lanes left, Lanes right) => Vector512.GreaterThanOrEqual(left.v, right.v);

    /// <summary>All bits set where the number is finite.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Vector512<double> Finite(Lanes value) =>
        Vector512.LessThanOrEqual(Vector512.Abs(value.v), Vector512.Create(double.MaxValue));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static bool AllLess(Lanes left, Lanes right) => Vector512.LessThanAll(left.v, right.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static Lanes IReal<Lanes>.MultiplyAdd(Lanes first, Lanes second, Lanes third) => MultiplyAdd(first, second, third);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Lanes MultiplyAdd(Lanes first, Lanes second, Lanes third) =>
        new(Vector512.MultiplyAddEstimate(first.v, second.v, third.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static bool IReal<Lanes>.AnyLess(Lanes left, Lanes right) => Vector512.LessThanAny(left.v, right.v);

    static void IReal<Lanes>.OnPlain<TSearch>(ReadOnlySpan<Lanes> arguments, Span<Lanes> results) =>
        TSearch.Run(arguments, results);

    public bool Equals(Lanes other) => v.Equals(other.v);

    public override bool Equals(object? obj) => obj is Lanes other && Equals(other);

    public override int GetHashCode() => v.GetHashCode();

    public override string ToString()
    {
        Span<double> values = stackalloc double[Count];
        v.CopyTo(values);
        return string.Join(' ', values.ToArray().Select(x => x.ToString("R", CultureInfo.InvariantCulture)));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void SinCosWhere(
        Vector512<double> chosen,
        double otherwise,
        Vector512<double> angle,
        ref Vector512<double> sin,
        ref Vector512<double> cos
    )
    {
        if (chosen.ExtractMostSignificantBits() != 0)
        {
            (Vector512<double> s, Vector512<double> c) = Vector512.SinCos(
                Vector512.ConditionalSelect(chosen, angle, Vector512.Create(otherwise))
            );
            sin = Vector512.ConditionalSelect(chosen, s, sin);
            cos = Vector512.ConditionalSelect(chosen, c, cos);
        }
    }

    private static Lanes EachLane(Lanes value, Func<double, double> function)
    {
        Buffer filled = default;
        for (int i = 0; i < Count; i++)
        {
            filled[i] = function(value.v[i]);
        }

        return new(filled);
    }

    [InlineArray(Count)]
    private struct Buffer
    {
        private double first;
    }
}
