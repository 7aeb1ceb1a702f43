namespace TreadmillMech.Numbers;

/// <summary>Plain real numbers side by side in one register: eight or four. Functions are written once, on this.</summary>
/// <remarks>
/// A mask is a number whose bits are all set where a comparison holds, and all clear elsewhere. A lane's answer depends on
/// that lane alone, and is the same bits at every width.
/// </remarks>
internal unsafe interface ILanes<T> : IReal<T>
    where T : struct, ILanes<T>
{
    double this[int lane] { get; }

    /// <summary>Consecutive numbers in memory.</summary>
    static abstract T Load(double* from);

    void Store(double* to);

    /// <summary>The same with one lane replaced.</summary>
    T With(int lane, double value);

    /// <summary>One bit a lane where the sign bit is set.</summary>
    ulong Signs { get; }

    /// <summary>Mask of left below right.</summary>
    static abstract T Below(T left, T right);

    /// <summary>Mask of left below right or equal to it.</summary>
    static abstract T NotAbove(T left, T right);

    /// <summary>Mask of finite numbers.</summary>
    static abstract T Finite(T value);

    /// <summary>Whether left is below right in all lanes.</summary>
    static abstract bool AllBelow(T left, T right);

    /// <summary>One or the other by a mask.</summary>
    static abstract T Choose(T mask, T yes, T no);

    static abstract T operator &(T left, T right);

    static abstract T operator |(T left, T right);

    static abstract T operator ^(T left, T right);

    static abstract T operator ~(T value);

    /// <summary>A pattern of bits in every lane.</summary>
    static abstract T Pattern(ulong bits);

    /// <summary>Sum of the bits as integers.</summary>
    static abstract T AddBits(T left, T right);

    /// <summary>Bits moved up, as integers.</summary>
    static abstract T ShiftLeft(T value, int by);

    /// <summary>Mask of lanes without any bit set.</summary>
    static abstract T Clear(T value);

    /// <summary>The base library's exponential, for sizes up to 708.</summary>
    static abstract T BaseExp(T value);
}
