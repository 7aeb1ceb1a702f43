using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace TreadmillMech.Numbers;

/// <summary>Working space that starts where a line of the cache does: a register's worth of it then never lies on two.</summary>
internal static unsafe class Aligned
{
    private const int Line = 64;

    /// <summary>Bytes of space that hold a value wherever they begin.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static int Size<TValue>()
        where TValue : struct => Unsafe.SizeOf<TValue>() + Line;

    /// <summary>A value in space on the stack, not cleared.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static ref TValue In<TValue>(Span<byte> space)
        where TValue : struct
    {
        nint start = (nint)Unsafe.AsPointer(ref MemoryMarshal.GetReference(space));
        return ref Unsafe.AsRef<TValue>((void*)((start + Line - 1) & -Line));
    }
}
