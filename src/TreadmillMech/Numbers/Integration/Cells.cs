using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace TreadmillMech.Numbers.Integration;

/// <summary>The plain numbers that plain number types consist of: one each, or eight.</summary>
internal static class Cells
{
    /// <summary>The plain numbers of a row of <see cref="Real"/> or <see cref="Lanes"/>: lanes of one number side by side.</summary>
    internal static Span<double> Of<T>(Span<T> numbers)
        where T : struct, IReal<T> => MemoryMarshal.Cast<T, double>(numbers);

    /// <summary>The plain numbers of a row.</summary>
    internal static Span<double> Of<T>(AlignedRow<T> numbers)
        where T : struct, IReal<T> => MemoryMarshal.Cast<T, double>(numbers.All);

    /// <summary>The plain numbers of one number.</summary>
    internal static Span<double> Of<T>(ref T number)
        where T : struct, IReal<T> => MemoryMarshal.CreateSpan(ref Unsafe.As<T, double>(ref number), T.Width);

    /// <summary>A bit for each case where left is less than right.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static uint Less<T>(T left, T right)
        where T : struct, IReal<T> =>
        T.Width == 1
            ? (Unsafe.As<T, double>(ref left) < Unsafe.As<T, double>(ref right) ? 1u : 0u)
            : (uint)
                Vector512
                    .LessThan(Unsafe.As<T, Vector512<double>>(ref left), Unsafe.As<T, Vector512<double>>(ref right))
                    .ExtractMostSignificantBits();

    /// <summary>One number where the bit of a case is set, the other elsewhere.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T Pick<T>(uint bits, T yes, T no)
        where T : struct, IReal<T>
    {
        if (T.Width == 1)
        {
            return (bits & 1) != 0 ? yes : no;
        }

        Vector512<ulong> each = Vector512.Create(1UL, 2, 4, 8, 16, 32, 64, 128);
        Vector512<double> picked = Vector512.ConditionalSelect(
            Vector512.Equals(Vector512.Create((ulong)bits) & each, each).AsDouble(),
            Unsafe.As<T, Vector512<double>>(ref yes),
            Unsafe.As<T, Vector512<double>>(ref no)
        );
        return Unsafe.As<Vector512<double>, T>(ref picked);
    }
}
