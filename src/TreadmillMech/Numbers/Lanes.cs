using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace TreadmillMech.Numbers;

/// <summary>Eight plain real numbers, evaluated side by side on vector hardware.</summary>
/// <remarks>
/// The same bits with 512-bit and with 256-bit registers; they may differ from <see cref="Real"/> in the last digits,
/// because the vector forms of the exponential, logarithm, sine, cosine, arcsine and powers are other algorithms than the
/// scalar ones. Arctangent and hyperbolic tangent are taken lane by lane and agree with the scalar ones exactly. Without
/// 512-bit registers it goes through memory: <see cref="FourLanes"/> is faster then.
/// </remarks>
internal readonly struct Lanes : ILanes<Lanes>, IEquatable<Lanes>
{
    /// <summary>Cases carried side by side.</summary>
    internal const int Count = 8;

    private readonly Vector512<double> v;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal Lanes(Vector512<double> values) => v = values;

    internal Lanes(ReadOnlySpan<double> values) => v = Vector512.Create(values);

    static int IReal<Lanes>.Width => Count;

    public double this[int lane] => v[lane];

    /// <summary>The eight as a register.</summary>
    internal Vector512<double> Vector
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => v;
    }

    ulong ILanes<Lanes>.Signs
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => v.ExtractMostSignificantBits();
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
    public static Lanes operator &(Lanes left, Lanes right) => new(left.v & right.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes operator |(Lanes left, Lanes right) => new(left.v | right.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes operator ^(Lanes left, Lanes right) => new(left.v ^ right.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes operator ~(Lanes value) => new(~value.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes Sqrt(Lanes value) => new(Vector512.Sqrt(value.v));

    public static Lanes Exp(Lanes value) => LaneFunctions.Exp(value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes Log(Lanes value) => new(Vector512.Log(value.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (Lanes Sin, Lanes Cos) SinCos(Lanes angle) => Angles.SinCos(angle);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (Lanes Sin, Lanes Cos) SinCosPi(Lanes halfTurns) => HalfTurns.SinCos(halfTurns);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes Asin(Lanes value) => Arcsine.Of(value);

    public static Lanes Atan2(Lanes y, Lanes x) => LaneFunctions.Atan2(y, x);

    public static Lanes Tanh(Lanes value) => LaneFunctions.Tanh(value);

    public static Lanes Pow(Lanes value, double exponent) => LaneFunctions.Pow(value, exponent);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes Abs(Lanes value) => new(Vector512.Abs(value.v));

    // The processor's own minimum and maximum give the second operand where both are equal or one is NaN.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes Min(Lanes first, Lanes second) =>
        Avx512F.IsSupported ? new(Avx512F.Min(first.v, second.v)) : IfLess(first, second, first, second);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes Max(Lanes first, Lanes second) =>
        Avx512F.IsSupported ? new(Avx512F.Max(second.v, first.v)) : IfLess(first, second, second, first);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes IfLess(Lanes left, Lanes right, Lanes yes, Lanes no) =>
        new(Vector512.ConditionalSelect(Vector512.LessThan(left.v, right.v), yes.v, no.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes Hold(Lanes value) => value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static Lanes IReal<Lanes>.MultiplyAdd(Lanes first, Lanes second, Lanes third) =>
        new(Vector512.FusedMultiplyAdd(first.v, second.v, third.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static bool IReal<Lanes>.AnyLess(Lanes left, Lanes right) => Vector512.LessThanAny(left.v, right.v);

    static void IReal<Lanes>.OnPlain<TSearch>(ReadOnlySpan<Lanes> arguments, Span<Lanes> results) =>
        TSearch.Run(arguments, results);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static unsafe Lanes ILanes<Lanes>.Load(double* from) => new(Vector512.Load(from));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    unsafe void ILanes<Lanes>.Store(double* to) => v.Store(to);

    Lanes ILanes<Lanes>.With(int lane, double value) => new(v.WithElement(lane, value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static Lanes ILanes<Lanes>.Below(Lanes left, Lanes right) => new(Vector512.LessThan(left.v, right.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static Lanes ILanes<Lanes>.NotAbove(Lanes left, Lanes right) => new(Vector512.LessThanOrEqual(left.v, right.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static Lanes ILanes<Lanes>.Finite(Lanes value) =>
        new(Vector512.LessThanOrEqual(Vector512.Abs(value.v), Vector512.Create(double.MaxValue)));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static bool ILanes<Lanes>.AllBelow(Lanes left, Lanes right) => Vector512.LessThanAll(left.v, right.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static Lanes ILanes<Lanes>.Choose(Lanes mask, Lanes yes, Lanes no) =>
        new(Vector512.ConditionalSelect(mask.v, yes.v, no.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static Lanes ILanes<Lanes>.Pattern(ulong bits) => new(Vector512.Create(bits).AsDouble());

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static Lanes ILanes<Lanes>.AddBits(Lanes left, Lanes right) =>
        new((left.v.AsUInt64() + right.v.AsUInt64()).AsDouble());

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static Lanes ILanes<Lanes>.ShiftLeft(Lanes value, int by) => new((value.v.AsUInt64() << by).AsDouble());

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static Lanes ILanes<Lanes>.Clear(Lanes value) =>
        new(Vector512.Equals(value.v.AsUInt64(), Vector512<ulong>.Zero).AsDouble());

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static Lanes ILanes<Lanes>.BaseExp(Lanes value) => new(Vector512.Exp(value.v));

    public bool Equals(Lanes other) => v.Equals(other.v);

    public override bool Equals(object? obj) => obj is Lanes other && Equals(other);

    public override int GetHashCode() => v.GetHashCode();

    public override string ToString() => LaneFunctions.Text(this);
}
