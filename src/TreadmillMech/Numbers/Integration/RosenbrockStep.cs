using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace TreadmillMech.Numbers.Integration;

/// <summary>One step of <see cref="Rodas"/> on a system, with its own room: nothing is allocated in a step.</summary>
/// <typeparam name="T">Number type: one case, or eight side by side with a step size each.</typeparam>
/// <remarks>
/// The matrix is factored without exchange of rows, which eight cases side by side could not agree on: the diagonal grows
/// as the step shrinks, so a poor factor is met by a smaller step. Sums over states run on whole registers: one state of
/// eight cases, or eight states of one case. One case with eight coupled states has its matrix in eight registers.
/// </remarks>
internal sealed class RosenbrockStep<T>
    where T : struct, IReal<T>
{
    private const int Register = 8;

    private readonly int count;
    private readonly int coupled;
    private readonly int room;
    private readonly bool inRegisters;
    private readonly T[] slopes;
    private readonly T[] own;
    private readonly T[] byTime;
    private readonly T[] matrix;
    private readonly T[] inverse;
    private readonly T[] stages;
    private readonly T[] begin;
    private readonly T[] argument;
    private readonly T[] rates;
    private readonly T[] square;
    private readonly T[] cube;

    // By coupled state: its slopes of all rates, and its row of the transposed inverse.
    private readonly double[] transposed;
    private readonly double[] inverted;
    private bool dense;

    internal RosenbrockStep(int count, int coupled)
    {
        this.count = count;
        this.coupled = coupled;
        room = T.Width == 1 ? (count + Register - 1) / Register * Register : count;
        inRegisters = T.Width == 1 && coupled == Register && typeof(T) == typeof(Real);
        slopes = new T[count * coupled];
        own = new T[room];
        byTime = new T[room];
        matrix = new T[coupled * coupled];
        inverse = new T[room];
        stages = new T[Rodas.Stages * room];
        begin = new T[room];
        argument = new T[room];
        rates = new T[room];
        square = new T[room];
        cube = new T[room];
        transposed = new double[Register * room];
        inverted = new double[Register * Register];
    }

    /// <summary>Takes a step.</summary>
    /// <param name="system">The system.</param>
    /// <param name="time">Time at its beginning.</param>
    /// <param name="size">Size, above 0.</param>
    /// <param name="state">States at its beginning.</param>
    /// <param name="first">Rates at its beginning.</param>
    /// <param name="next">States at its end.</param>
    /// <param name="error">Difference to the embedded solution of order 3.</param>
    /// <param name="keepsSlopes">Whether time and states are those of the last step tried, whose slopes then hold.</param>
    internal void Take<TSystem>(
        ref TSystem system,
        T time,
        T size,
        ReadOnlySpan<T> state,
        ReadOnlySpan<T> first,
        Span<T> next,
        Span<T> error,
        bool keepsSlopes = false
    )
        where TSystem : IRateSystem<T>
    {
        dense = false;
        if (!keepsSlopes)
        {
            system.Slopes(time, state, slopes, own.AsSpan(0, count), byTime.AsSpan(0, count));
            if (inRegisters)
            {
                Transpose();
            }
        }

        Factor(size);
        T perSize = 1 / size;
        state[..count].CopyTo(begin);
        first[..count].CopyTo(rates);
        for (int stage = 0; stage < Rodas.Stages; stage++)
        {
            if (stage > 0)
            {
                Argument(stage);
                system.Rates(time + (Rodas.Alpha[stage] * size), argument.AsSpan(0, count), rates.AsSpan(0, count));
            }

            RightSide(stage, size, perSize);
            if (inRegisters)
            {
                SolveInRegisters(stage);
            }
            else
            {
                Solve(stages.AsSpan(stage * room, count));
            }
        }

        ReadOnlySpan<T> last = stages.AsSpan((Rodas.Stages - 1) * room, count);
        for (int i = 0; i < last.Length; i++)
        {
            next[i] = argument[i] + last[i];
            error[i] = last[i];
        }
    }

    /// <summary>One state inside the step just taken.</summary>
    /// <param name="lane">The case.</param>
    /// <param name="index">The state.</param>
    /// <param name="place">Place in the step, 0 to 1.</param>
    /// <param name="from">The state at the beginning.</param>
    /// <param name="to">The state at the end.</param>
    internal double Within(int lane, int index, double place, double from, double to)
    {
        if (!dense)
        {
            Densify();
        }

        int at = (index * T.Width) + lane;
        double rest = 1 - place;
        return (rest * from) + (place * (to + (rest * (Cells.Of(square)[at] + (place * Cells.Of(cube)[at])))));
    }

    private void Densify()
    {
        dense = true;
        Span<Vector512<double>> squares = Registers(square);
        Span<Vector512<double>> cubes = Registers(cube);
        squares.Clear();
        cubes.Clear();
        for (int stage = 0; stage < Rodas.Stages - 1; stage++)
        {
            ReadOnlySpan<Vector512<double>> k = Stage(stage);
            for (int i = 0; i < k.Length; i++)
            {
                squares[i] += Rodas.DenseSquare[stage] * k[i];
                cubes[i] += Rodas.DenseCube[stage] * k[i];
            }
        }
    }

    private static Span<Vector512<double>> Registers(T[] numbers) =>
        MemoryMarshal.Cast<T, Vector512<double>>(numbers.AsSpan());

    private Span<Vector512<double>> Stage(int stage) =>
        MemoryMarshal.Cast<T, Vector512<double>>(stages.AsSpan(stage * room, room));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<double> Wide(T number) =>
        T.Width == 1 ? Vector512.Create(Unsafe.As<T, double>(ref number)) : Unsafe.As<T, Vector512<double>>(ref number);

    private void Factor(T size)
    {
        T diagonal = 1 / (Rodas.Gamma * size);
        if (inRegisters)
        {
            Invert(Unsafe.As<T, double>(ref diagonal));
        }
        else
        {
            Eliminate(diagonal);
        }

        for (int i = coupled; i < count; i++)
        {
            inverse[i] = 1 / (diagonal - own[i]);
        }
    }

    /// <summary>Slopes of all rates by each coupled state, side by side.</summary>
    private void Transpose()
    {
        ref double from = ref MemoryMarshal.GetReference(Cells.Of(slopes));
        ref double to = ref MemoryMarshal.GetArrayDataReference(transposed);
        for (int row = 0; row < count; row++)
        {
            ref double line = ref Unsafe.Add(ref from, row * Register);
            ref double place = ref Unsafe.Add(ref to, row);
            for (int column = 0; column < Register; column++)
            {
                Unsafe.Add(ref place, column * room) = Unsafe.Add(ref line, column);
            }
        }
    }

    /// <summary>Inverse of the matrix by the method of Gauss and Jordan, transposed, rows in registers.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private void Invert(double diagonal)
    {
        ReadOnlySpan<double> columns = transposed;
        Span<double> left = stackalloc double[Register * Register];
        Span<double> right = inverted;
        right.Clear();
        for (int i = 0; i < Register; i++)
        {
            (-Vector512.Create<double>(columns.Slice(i * room, Register))).CopyTo(left[(i * Register)..]);
            left[(i * Register) + i] += diagonal;
            right[(i * Register) + i] = 1;
        }

        Span<Vector512<double>> lefts = MemoryMarshal.Cast<double, Vector512<double>>(left);
        Span<Vector512<double>> rights = MemoryMarshal.Cast<double, Vector512<double>>(right);
        for (int pivot = 0; pivot < Register; pivot++)
        {
            double scale = 1 / left[(pivot * Register) + pivot];
            Vector512<double> ofLeft = lefts[pivot] * scale;
            Vector512<double> ofRight = rights[pivot] * scale;
            for (int row = 0; row < Register; row++)
            {
                double factor = left[(row * Register) + pivot];
                lefts[row] -= ofLeft * factor;
                rights[row] -= ofRight * factor;
            }

            lefts[pivot] = ofLeft;
            rights[pivot] = ofRight;
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void SolveInRegisters(int stage)
    {
        Span<Vector512<double>> x = Stage(stage);
        ReadOnlySpan<double> b = Cells.Of(stages).Slice(stage * room, Register);
        ReadOnlySpan<Vector512<double>> rows = MemoryMarshal.Cast<double, Vector512<double>>(inverted.AsSpan());
        Vector512<double> even = rows[0] * b[0];
        Vector512<double> odd = rows[1] * b[1];
        for (int i = 2; i < rows.Length; i += 2)
        {
            even += rows[i] * b[i];
            odd += rows[i + 1] * b[i + 1];
        }

        x[0] = even + odd;
        ReadOnlySpan<Vector512<double>> columns = MemoryMarshal.Cast<double, Vector512<double>>(transposed.AsSpan());
        ReadOnlySpan<Vector512<double>> divisors = Registers(inverse);
        for (int i = 1; i < x.Length; i++)
        {
            Vector512<double> sum = x[i];
            for (int column = 0; column < b.Length; column++)
            {
                sum += columns[(column * x.Length) + i] * b[column];
            }

            x[i] = sum * divisors[i];
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void Eliminate(T diagonal)
    {
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
            T reciprocal = 1 / top[pivot];
            inverse[pivot] = reciprocal;
            for (int row = pivot + 1; row < coupled; row++)
            {
                Span<T> line = m.Slice(row * coupled, coupled);
                T factor = line[pivot] * reciprocal;
                line[pivot] = factor;
                for (int column = pivot + 1; column < line.Length; column++)
                {
                    line[column] -= factor * top[column];
                }
            }
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void Argument(int stage)
    {
        ReadOnlySpan<double> weights = Rodas.A.Slice(stage * (stage - 1) / 2, stage);
        ReadOnlySpan<Vector512<double>> from = Registers(begin);
        ReadOnlySpan<Vector512<double>> k = Registers(stages);
        Span<Vector512<double>> to = Registers(argument);
        for (int i = 0; i < to.Length; i++)
        {
            Vector512<double> sum = from[i];
            for (int earlier = 0; earlier < weights.Length; earlier++)
            {
                sum += weights[earlier] * k[(earlier * to.Length) + i];
            }

            to[i] = sum;
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void RightSide(int stage, T size, T perSize)
    {
        ReadOnlySpan<double> weights = Rodas.C.Slice(stage * (stage - 1) / 2, stage);
        Vector512<double> ofTime = Wide(size) * Rodas.GammaSum[stage];
        Vector512<double> ofStages = Wide(perSize);
        ReadOnlySpan<Vector512<double>> k = Registers(stages);
        ReadOnlySpan<Vector512<double>> rate = Registers(rates);
        ReadOnlySpan<Vector512<double>> time = Registers(byTime);
        Span<Vector512<double>> to = Stage(stage);
        for (int i = 0; i < to.Length; i++)
        {
            Vector512<double> sum = Vector512<double>.Zero;
            for (int earlier = 0; earlier < weights.Length; earlier++)
            {
                sum += weights[earlier] * k[(earlier * to.Length) + i];
            }

            to[i] = rate[i] + (ofTime * time[i]) + (ofStages * sum);
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
