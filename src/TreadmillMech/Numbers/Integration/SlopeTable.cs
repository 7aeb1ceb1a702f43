using System.Runtime.CompilerServices;

namespace TreadmillMech.Numbers.Integration;

/// <summary>Derivatives of rates, column after column: what each of the coupled states does to every rate.</summary>
/// <typeparam name="T">Number type.</typeparam>
/// <remarks>
/// A new table is zero everywhere. A system sets the same places every time, so what it never sets stays zero. Columns lie
/// at even distances with room at their end for whole registers.
/// </remarks>
internal readonly struct SlopeTable<T>
    where T : struct, IReal<T>
{
    private readonly AlignedRow<T> numbers;
    private readonly int room;

    internal SlopeTable(int count, int coupled)
    {
        // Registers of one case are read for eight columns, whether there are as many or not.
        room = T.Width == 1 ? (count + 7) / 8 * 8 : count;
        numbers = new(room * (T.Width == 1 ? Math.Max(coupled, 8) : coupled));
        Own = new(room);
        Time = new(room);
    }

    /// <summary>Derivative of each following state's rate by itself; ignored for coupled states.</summary>
    internal AlignedRow<T> Own { get; }

    /// <summary>Derivatives by time.</summary>
    internal AlignedRow<T> Time { get; }

    /// <summary>All numbers, column after column.</summary>
    internal AlignedRow<T> Numbers => numbers;

    /// <summary>Derivative of a rate by a coupled state.</summary>
    internal ref T this[int rate, int state]
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => ref numbers[(state * room) + rate];
    }

    /// <summary>Where a derivative lies in <see cref="Numbers"/>.</summary>
    internal int Place(int rate, int state) => (state * room) + rate;
}
