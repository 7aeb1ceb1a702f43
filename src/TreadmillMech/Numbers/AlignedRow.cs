using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace TreadmillMech.Numbers;

/// <summary>
/// Values side by side that begin where a line of the cache does: a register's worth of them then never lies on two.
/// </summary>
/// <typeparam name="TValue">Numbers, or a structure of nothing but numbers.</typeparam>
/// <remarks>A collector that moves the row may lose its place: it is then slower to read, not wrong.</remarks>
internal readonly unsafe struct AlignedRow<TValue>
    where TValue : struct
{
    private const int Line = 64;

    private readonly double[] space;
    private readonly int start;
    private readonly int count;

    /// <summary>A row of zeros.</summary>
    /// <param name="count">Values in it.</param>
    internal AlignedRow(int count)
    {
        this.count = count;
        space = new double[((count * Unsafe.SizeOf<TValue>()) + Line) / sizeof(double)];
        nint address = (nint)Unsafe.AsPointer(ref MemoryMarshal.GetArrayDataReference(space));
        start = (int)(-address & (Line - 1)) / sizeof(double);
    }

    /// <summary>The first value.</summary>
    internal ref TValue First
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => ref Unsafe.As<double, TValue>(ref Unsafe.Add(ref MemoryMarshal.GetArrayDataReference(space), start));
    }

    /// <summary>All values.</summary>
    internal Span<TValue> All
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => MemoryMarshal.CreateSpan(ref First, count);
    }

    /// <summary>One value.</summary>
    internal ref TValue this[int index]
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get
        {
            ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)index, (uint)count, nameof(index));
            return ref Unsafe.Add(ref First, index);
        }
    }
}
