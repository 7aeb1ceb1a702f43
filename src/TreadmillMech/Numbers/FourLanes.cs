using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace TreadmillMech.Numbers;

/// <summary>Four plain real numbers side by side, for processors without 512-bit registers.</summary>
/// <remarks>A lane has the same bits as one of <see cref="Lanes"/>.</remarks>
internal readonly struct FourLanes : ILanes<FourLanes>, IEquatable<FourLanes>
{
    /// <summary>Cases carried side by side.</summary>
    internal const int Count = 4;

    private readonly Vector256<double> v;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal FourLanes(Vector256<double> values) => v = values;

    internal FourLanes(ReadOnlySpan<double> values) => v = Vector256.Create(values);

    static int IReal<FourLanes>.Width => Count;

    public double this[int lane] => v[lane];

    /// <summary>The four as a register.</summary>
    internal Vector256<double> Vector
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => v;
    }

    ulong ILanes<FourLanes>.Signs
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => v.ExtractMostSignificantBits();
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static implicit operator FourLanes(double value) => new(Vector256.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes operator +(FourLanes left, FourLanes right) => new(left.v + right.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes operator -(FourLanes left, FourLanes right) => new(left.v - right.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes operator *(FourLanes left, FourLanes right) => new(left.v * right.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes operator /(FourLanes left, FourLanes right) => new(left.v / right.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes operator -(FourLanes value) => new(-value.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes operator &(FourLanes left, FourLanes right) => new(left.v & right.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes operator |(FourLanes left, FourLanes right) => new(left.v | right.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes operator ^(FourLanes left, FourLanes right) => new(left.v ^ right.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes operator ~(FourLanes value) => new(~value.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes Sqrt(FourLanes value) => new(Vector256.Sqrt(value.v));

    public static FourLanes Exp(FourLanes value) => LaneFunctions.Exp(value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes Log(FourLanes value) => new(Vector256.Log(value.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (FourLanes Sin, FourLanes Cos) SinCos(FourLanes angle) => Angles.SinCos(angle);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (FourLanes Sin, FourLanes Cos) SinCosPi(FourLanes halfTurns) => HalfTurns.SinCos(halfTurns);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes Asin(FourLanes value) => Arcsine.Of(value);

    public static FourLanes Atan2(FourLanes y, FourLanes x) => LaneFunctions.Atan2(y, x);

    public static FourLanes Tanh(FourLanes value) => LaneFunctions.Tanh(value);

    public static FourLanes Pow(FourLanes value, double exponent) => LaneFunctions.Pow(value, exponent);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes Abs(FourLanes value) => new(Vector256.Abs(value.v));

    // The processor's own minimum and maximum give the second operand where both are equal or one is NaN.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes Min(FourLanes first, FourLanes second) =>
        Avx.IsSupported ? new(Avx.Min(first.v, second.v)) : IfLess(first, second, first, second);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes Max(FourLanes first, FourLanes second) =>
        Avx.IsSupported ? new(Avx.Max(second.v, first.v)) : IfLess(first, second, second, first);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes IfLess(FourLanes left, FourLanes right, FourLanes yes, FourLanes no) =>
        new(Vector256.ConditionalSelect(Vector256.LessThan(left.v, right.v), yes.v, no.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes Hold(FourLanes value) => value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static FourLanes IReal<FourLanes>.MultiplyAdd(FourLanes first, FourLanes second, FourLanes third) =>
        new(Vector256.FusedMultiplyAdd(first.v, second.v, third.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static bool IReal<FourLanes>.AnyLess(FourLanes left, FourLanes right) => Vector256.LessThanAny(left.v, right.v);

    static void IReal<FourLanes>.OnPlain<TSearch>(ReadOnlySpan<FourLanes> arguments, Span<FourLanes> results) =>
        TSearch.Run(arguments, results);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static unsafe FourLanes ILanes<FourLanes>.Load(double* from) => new(Vector256.Load(from));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    unsafe void ILanes<FourLanes>.Store(double* to) => v.Store(to);

    FourLanes ILanes<FourLanes>.With(int lane, double value) => new(v.WithElement(lane, value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static FourLanes ILanes<FourLanes>.Below(FourLanes left, FourLanes right) =>
        new(Vector256.LessThan(left.v, right.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static FourLanes ILanes<FourLanes>.NotAbove(FourLanes left, FourLanes right) =>
        new(Vector256.LessThanOrEqual(left.v, right.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static FourLanes ILanes<FourLanes>.Finite(FourLanes value) =>
        new(Vector256.LessThanOrEqual(Vector256.Abs(value.v), Vector256.Create(double.MaxValue)));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static bool ILanes<FourLanes>.AllBelow(FourLanes left, FourLanes right) => Vector256.LessThanAll(left.v, right.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static FourLanes ILanes<FourLanes>.Choose(FourLanes mask, FourLanes yes, FourLanes no) =>
        new(Vector256.ConditionalSelect(mask.v, yes.v, no.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static FourLanes ILanes<FourLanes>.Pattern(ulong bits) => new(Vector256.Create(bits).AsDouble());

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static FourLanes ILanes<FourLanes>.AddBits(FourLanes left, FourLanes right) =>
        new((left.v.AsUInt64() + right.v.AsUInt64()).AsDouble());

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static FourLanes ILanes<FourLanes>.ShiftLeft(FourLanes value, int by) => new((value.v.AsUInt64() << by).AsDouble());

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static FourLanes ILanes<FourLanes>.Clear(FourLanes value) =>
        new(Vector256.Equals(value.v.AsUInt64(), Vector256<ulong>.Zero).AsDouble());

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static FourLanes ILanes<FourLanes>.BaseExp(FourLanes value) => new(Vector256.Exp(value.v));

    public bool Equals(FourLanes other) => v.Equals(other.v);

    public override bool Equals(object? obj) => obj is FourLanes other && Equals(other);

    public override int GetHashCode() => v.GetHashCode();

    public override string ToString() => LaneFunctions.Text(this);
}
