using System.Globalization;
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace TreadmillMech.Numbers;

/// <summary>Eight plain real numbers, evaluated side by side on vector hardware.</summary>
/// <remarks>
/// The same bits with 512-bit and with 256-bit registers; they may differ from <see cref="Real"/> in the last digits,
/// because the vector forms of the exponential, logarithm, sine and cosine are other algorithms than the scalar ones.
/// Arcsine, arctangent, hyperbolic tangent and powers are taken lane by lane and agree with the scalar ones exactly.
/// </remarks>
internal readonly struct Lanes : IReal<Lanes>, IEquatable<Lanes>
{
    /// <summary>Cases carried side by side.</summary>
    internal const int Count = 8;

    private readonly Vector512<double> v;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal Lanes(Vector512<double> values) => v = values;

    internal Lanes(ReadOnlySpan<double> values) => v = Vector512.Create(values);

    static int IReal<Lanes>.Width => Count;

    internal double this[int lane] => v[lane];

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

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes Exp(Lanes value) => new(Vector512.Exp(value.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes Log(Lanes value) => new(Vector512.Log(value.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (Lanes Sin, Lanes Cos) SinCos(Lanes angle)
    {
        (Vector512<double> sin, Vector512<double> cos) = Vector512.SinCos(angle.v);
        return (new(sin), new(cos));
    }

    public static Lanes Asin(Lanes value) => EachLane(value, Math.Asin);

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
        Buffer filled = default;
        for (int i = 0; i < Count; i++)
        {
            filled[i] = Math.Pow(value.v[i], exponent);
        }

        return new(filled);
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
