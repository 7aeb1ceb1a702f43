using System.Runtime.CompilerServices;

namespace TreadmillMech.Numbers.Integration;

/// <summary>One step of <see cref="Rodas"/> on a system, with its own room: nothing is allocated in a step.</summary>
/// <typeparam name="T">Number type: one case, or eight side by side with a step size each.</typeparam>
/// <remarks>
/// The matrix is factored without exchange of rows, which eight cases side by side could not agree on: the diagonal grows
/// as the step shrinks, so a poor factor is met by a smaller step. A step that is not finite has an infinite error.
/// </remarks>
internal sealed class RosenbrockStep<T>
    where T : struct, IReal<T>
{
    private readonly int count;
    private readonly int coupled;
    private readonly T[] slopes;
    private readonly T[] own;
    private readonly T[] byTime;
    private readonly T[] matrix;
    private readonly T[] inverse;
    private readonly T[] stages;
    private readonly T[] argument;
    private readonly T[] rates;
    private readonly T[] square;
    private readonly T[] cube;

    internal RosenbrockStep(int count, int coupled)
    {
        this.count = count;
        this.coupled = coupled;
        slopes = new T[count * coupled];
        own = new T[count];
        byTime = new T[count];
        matrix = new T[coupled * coupled];
        inverse = new T[count];
        stages = new T[Rodas.Stages * count];
        argument = new T[count];
        rates = new T[count];
        square = new T[count];
        cube = new T[count];
    }

    /// <summary>Takes a step.</summary>
    /// <param name="system">The system.</param>
    /// <param name="time">Time at its beginning.</param>
    /// <param name="size">Size, above 0.</param>
    /// <param name="state">States at its beginning.</param>
    /// <param name="next">States at its end.</param>
    /// <param name="error">Difference to the embedded solution of order 3.</param>
    internal void Take<TSystem>(
        ref TSystem system,
        T time,
        T size,
        ReadOnlySpan<T> state,
        Span<T> next,
        Span<T> error
    )
        where TSystem : IRateSystem<T>
    {
        system.Slopes(time, state, slopes, own, byTime);
        Factor(size);
        T perSize = 1 / size;
        state[..count].CopyTo(argument);
        for (int stage = 0; stage < Rodas.Stages; stage++)
        {
            if (stage > 0)
            {
                Argument(stage, state);
            }

            system.Rates(time + (Rodas.Alpha[stage] * size), argument, rates);
            RightSide(stage, size, perSize);
            Solve(stages.AsSpan(stage * count, count));
        }

        Span<T> last = stages.AsSpan((Rodas.Stages - 1) * count, count);
        for (int i = 0; i < count; i++)
        {
            next[i] = argument[i] + last[i];
            error[i] = last[i];
        }
    }

    /// <summary>Prepares dense output of the step just taken.</summary>
    internal void Densify()
    {
        square.AsSpan().Clear();
        cube.AsSpan().Clear();
        for (int stage = 0; stage < Rodas.Stages - 1; stage++)
        {
            T ofSquare = Rodas.DenseSquare[stage];
            T ofCube = Rodas.DenseCube[stage];
            ReadOnlySpan<T> k = stages.AsSpan(stage * count, count);
            for (int i = 0; i < k.Length; i++)
            {
                square[i] += ofSquare * k[i];
                cube[i] += ofCube * k[i];
            }
        }
    }

    /// <summary>One state inside the step just taken and densified.</summary>
    /// <param name="lane">The case.</param>
    /// <param name="index">The state.</param>
    /// <param name="place">Place in the step, 0 to 1.</param>
    /// <param name="from">The state at the beginning.</param>
    /// <param name="to">The state at the end.</param>
    internal double Within(int lane, int index, double place, double from, double to)
    {
        int at = (index * T.Width) + lane;
        double rest = 1 - place;
        return (rest * from)
            + (place * (to + (rest * (Cells.Of(square)[at] + (place * Cells.Of(cube)[at])))));
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void Factor(T size)
    {
        T diagonal = 1 / (Rodas.Gamma * size);
        Span<T> m = matrix;
        ReadOnlySpan<T> j = slopes;
        for (int i = 0; i < m.Length; i++)
        {
            m[i] = -j[i];
        }

        for (int i = 0; i < coupled; i++)
        {
            m[(i * coupled) + i] += diagonal;
        }

        for (int pivot = 0; pivot < coupled; pivot++)
        {
            ReadOnlySpan<T> top = m.Slice(pivot * coupled, coupled);
            T inverted = 1 / top[pivot];
            inverse[pivot] = inverted;
            for (int row = pivot + 1; row < coupled; row++)
            {
                Span<T> line = m.Slice(row * coupled, coupled);
                T factor = line[pivot] * inverted;
                line[pivot] = factor;
                for (int column = pivot + 1; column < line.Length; column++)
                {
                    line[column] -= factor * top[column];
                }
            }
        }

        for (int i = coupled; i < count; i++)
        {
            inverse[i] = 1 / (diagonal - own[i]);
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void Argument(int stage, ReadOnlySpan<T> state)
    {
        int row = stage * (stage - 1) / 2;
        state[..count].CopyTo(argument);
        Span<T> sum = argument;
        for (int earlier = 0; earlier < stage; earlier++)
        {
            T weight = Rodas.A[row + earlier];
            ReadOnlySpan<T> k = stages.AsSpan(earlier * count, count);
            for (int i = 0; i < k.Length; i++)
            {
                sum[i] += weight * k[i];
            }
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void RightSide(int stage, T size, T perSize)
    {
        Span<T> right = stages.AsSpan(stage * count, count);
        T ofTime = Rodas.GammaSum[stage] * size;
        for (int i = 0; i < right.Length; i++)
        {
            right[i] = rates[i] + (ofTime * byTime[i]);
        }

        int row = stage * (stage - 1) / 2;
        for (int earlier = 0; earlier < stage; earlier++)
        {
            T weight = Rodas.C[row + earlier] * perSize;
            ReadOnlySpan<T> k = stages.AsSpan(earlier * count, count);
            for (int i = 0; i < k.Length; i++)
            {
                right[i] += weight * k[i];
            }
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void Solve(Span<T> x)
    {
        ReadOnlySpan<T> m = matrix;
        for (int row = 1; row < coupled; row++)
        {
            ReadOnlySpan<T> line = m.Slice(row * coupled, row);
            T sum = x[row];
            for (int column = 0; column < line.Length; column++)
            {
                sum -= line[column] * x[column];
            }

            x[row] = sum;
        }

        for (int row = coupled - 1; row >= 0; row--)
        {
            ReadOnlySpan<T> line = m.Slice(row * coupled, coupled);
            T sum = x[row];
            for (int column = row + 1; column < line.Length; column++)
            {
                sum -= line[column] * x[column];
            }

            x[row] = sum * inverse[row];
        }

        for (int row = coupled; row < count; row++)
        {
            ReadOnlySpan<T> line = slopes.AsSpan(row * coupled, coupled);
            T sum = x[row];
            for (int column = 0; column < line.Length; column++)
            {
                sum += line[column] * x[column];
            }

            x[row] = sum * inverse[row];
        }
    }
}
