using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace TreadmillMech.Numbers.Integration;

/// <summary>The plain numbers that plain number types consist of: one each, or eight.</summary>
internal static class Cells
{
    /// <summary>The plain numbers of a row of <see cref="Real"/> or <see cref="Lanes"/>: lanes of one number side by side.</summary>
    internal static Span<double> Of<T>(Span<T> numbers)
        where T : struct, IReal<T> => MemoryMarshal.Cast<T, double>(numbers);

    /// <summary>The plain numbers of an array.</summary>
    internal static Span<double> Of<T>(T[] numbers)
        where T : struct, IReal<T> => MemoryMarshal.Cast<T, double>(numbers.AsSpan());

    /// <summary>The plain numbers of one number.</summary>
    internal static Span<double> Of<T>(ref T number)
        where T : struct, IReal<T> => MemoryMarshal.CreateSpan(ref Unsafe.As<T, double>(ref number), T.Width);
}
