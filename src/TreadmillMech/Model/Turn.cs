using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>An angle as its sine and cosine.</summary>
internal readonly record struct Turn<T>(T Sin, T Cos)
    where T : struct, IReal<T>
{
    internal (T Sin, T Cos) Pair
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => (Sin, Cos);
    }

    /// <summary>An angle given in half turns.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Turn<T> Of(T halfTurns)
    {
        (T sin, T cos) = T.SinCosPi(halfTurns);
        return new(sin, cos);
    }

    /// <summary>Sum of two angles.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal Turn<T> Plus(in Turn<T> other) =>
        new(T.MultiplyAdd(Sin, other.Cos, Cos * other.Sin), T.MultiplyAdd(Cos, other.Cos, -(Sin * other.Sin)));
}
