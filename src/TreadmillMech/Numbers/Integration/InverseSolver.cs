using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace TreadmillMech.Numbers.Integration;

/// <summary>
/// Solves the equations of a step of <see cref="Rodas"/>, <c>(d - J) x = b</c>, for any number type, with at most eight coupled
/// states.
/// </summary>
/// <typeparam name="T">Number type: eight cases side by side, or one.</typeparam>
/// <remarks>
/// The inverse is taken once by the method of Gauss and Jordan and used for all stages: products with it do not wait for
/// each other, as those of a substitution do. Rows are not exchanged, which eight cases side by side could not agree on: the
/// diagonal grows as the step shrinks, so a poor pivot is met by a smaller step. What a following state never feeds on is
/// passed over.
/// </remarks>
[SkipLocalsInit]
internal sealed class InverseSolver<T>
    where T : struct, IReal<T>
{
    /// <summary>Most coupled states.</summary>
    internal const int Most = 8;

    private const int Few = 6;

    private readonly int count;
    private readonly int coupled;
    private readonly AlignedRow<T> inverse;
    private readonly AlignedRow<T> divisors;

    // By following state, which places of the table it feeds on, and by which state.
    private readonly int[] feedEnd;
    private readonly (int Place, int State)[] feeds;
    private bool analysed;

    internal InverseSolver(int count, int coupled)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(coupled, Most);
        this.count = count;
        this.coupled = coupled;
        inverse = new(Most * Most);
        divisors = new(count);
        feedEnd = new int[count];
        feeds = new (int, int)[count * coupled];
    }

    /// <summary>Asks a system for its slopes; the first time also which places it sets.</summary>
    internal void Slopes<TSystem>(ref TSystem system, ReadOnlySpan<T> state, in SlopeTable<T> slopes)
        where TSystem : IRateSystem<T>
    {
        if (!analysed)
        {
            // What is still not a number afterwards is never set.
            slopes.Numbers.All.Fill(double.NaN);
            system.Slopes(state, in slopes);
            Analyse(in slopes);
            slopes.Numbers.All.Clear();
            analysed = true;
        }

        system.Slopes(state, in slopes);
    }

    private void Analyse(in SlopeTable<T> slopes)
    {
        int feed = 0;
        for (int row = coupled; row < count; row++)
        {
            for (int column = 0; column < coupled; column++)
            {
                if (!double.IsNaN(Cells.Of(ref slopes[row, column])[0]))
                {
                    feeds[feed++] = (slopes.Place(row, column), column);
                }
            }

            feedEnd[row] = feed;
        }
    }

    /// <summary>Inverts for a diagonal.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal void Factor(T diagonal, in SlopeTable<T> slopes)
    {
        ref T m = ref inverse.First;
        for (int column = 0; column < coupled; column++)
        {
            ref T from = ref slopes[0, column];
            for (int row = 0; row < coupled; row++)
            {
                T place = -Unsafe.Add(ref from, row);
                Unsafe.Add(ref m, (row * Most) + column) = row == column ? place + diagonal : place;
            }
        }

        for (int pivot = 0; pivot < coupled; pivot++)
        {
            Pivot(ref m, pivot);
        }

        for (int row = coupled; row < count; row++)
        {
            divisors[row] = 1 / (diagonal - slopes.Own[row]);
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void Pivot(ref T m, int pivot)
    {
        ref T top = ref Unsafe.Add(ref m, pivot * Most);
        T scale = 1 / Unsafe.Add(ref top, pivot);
        Unsafe.Add(ref top, pivot) = 1;
        T t0 = top * scale;
        T t1 = Unsafe.Add(ref top, 1) * scale;
        T t2 = Unsafe.Add(ref top, 2) * scale;
        T t3 = Unsafe.Add(ref top, 3) * scale;
        T t4 = Unsafe.Add(ref top, 4) * scale;
        T t5 = Unsafe.Add(ref top, 5) * scale;
        T t6 = Unsafe.Add(ref top, 6) * scale;
        T t7 = Unsafe.Add(ref top, 7) * scale;
        for (int row = 0; row < coupled; row++)
        {
            if (row == pivot)
            {
                continue;
            }

            ref T line = ref Unsafe.Add(ref m, row * Most);
            T factor = -Unsafe.Add(ref line, pivot);
            Unsafe.Add(ref line, pivot) = 0;
            line = T.MultiplyAdd(factor, t0, line);
            AddTo(ref Unsafe.Add(ref line, 1), factor, t1);
            AddTo(ref Unsafe.Add(ref line, 2), factor, t2);
            AddTo(ref Unsafe.Add(ref line, 3), factor, t3);
            AddTo(ref Unsafe.Add(ref line, 4), factor, t4);
            AddTo(ref Unsafe.Add(ref line, 5), factor, t5);
            if (coupled > Few)
            {
                AddTo(ref Unsafe.Add(ref line, 6), factor, t6);
                AddTo(ref Unsafe.Add(ref line, 7), factor, t7);
            }
        }

        top = t0;
        Unsafe.Add(ref top, 1) = t1;
        Unsafe.Add(ref top, 2) = t2;
        Unsafe.Add(ref top, 3) = t3;
        Unsafe.Add(ref top, 4) = t4;
        Unsafe.Add(ref top, 5) = t5;
        Unsafe.Add(ref top, 6) = t6;
        Unsafe.Add(ref top, 7) = t7;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void AddTo(ref T place, T factor, T number) => place = T.MultiplyAdd(factor, number, place);

    /// <summary>Solves in place.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal void Solve(Span<T> rightSide, in SlopeTable<T> slopes)
    {
        ref T x = ref MemoryMarshal.GetReference(rightSide[..count]);
        T b0 = x;
        T b1 = coupled > 1 ? Unsafe.Add(ref x, 1) : 0;
        T b2 = coupled > 2 ? Unsafe.Add(ref x, 2) : 0;
        T b3 = coupled > 3 ? Unsafe.Add(ref x, 3) : 0;
        T b4 = coupled > 4 ? Unsafe.Add(ref x, 4) : 0;
        T b5 = coupled > 5 ? Unsafe.Add(ref x, 5) : 0;
        T b6 = coupled > 6 ? Unsafe.Add(ref x, 6) : 0;
        T b7 = coupled > 7 ? Unsafe.Add(ref x, 7) : 0;
        ref T line = ref inverse.First;
        for (int row = 0; row < coupled; row++)
        {
            T sum = line * b0;
            AddTo(ref sum, Unsafe.Add(ref line, 1), b1);
            AddTo(ref sum, Unsafe.Add(ref line, 2), b2);
            AddTo(ref sum, Unsafe.Add(ref line, 3), b3);
            AddTo(ref sum, Unsafe.Add(ref line, 4), b4);
            AddTo(ref sum, Unsafe.Add(ref line, 5), b5);
            if (coupled > Few)
            {
                AddTo(ref sum, Unsafe.Add(ref line, 6), b6);
                AddTo(ref sum, Unsafe.Add(ref line, 7), b7);
            }

            Unsafe.Add(ref x, row) = sum;
            line = ref Unsafe.Add(ref line, Most);
        }

        ref T table = ref slopes.Numbers.First;
        int feed = 0;
        for (int row = coupled; row < count; row++)
        {
            T sum = Unsafe.Add(ref x, row);
            for (int end = feedEnd[row]; feed < end; feed++)
            {
                (int place, int state) = feeds[feed];
                AddTo(ref sum, Unsafe.Add(ref table, place), Unsafe.Add(ref x, state));
            }

            Unsafe.Add(ref x, row) = sum * divisors[row];
        }
    }
}
