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
    private readonly SlopeTable<T> slopes;
    private readonly T[] matrix;
    private readonly T[] inverse;
    private readonly T[] stages;
    private readonly T[] begin;
    private readonly T[] argument;
    private readonly T[] rates;
    private readonly T[] square;
    private readonly T[] cube;

    // Columns of the inverse, one register each.
    private readonly double[] inverted;
    private bool dense;

    internal RosenbrockStep(int count, int coupled)
    {
        this.count = count;
        this.coupled = coupled;
        room = T.Width == 1 ? (count + Register - 1) / Register * Register : count;
        inRegisters = T.Width == 1 && coupled <= Register && typeof(T) == typeof(Real);
        slopes = new(count, coupled);
        matrix = new T[coupled * coupled];
        inverse = new T[room];
        stages = new T[Rodas.Stages * room];
        begin = new T[room];
        argument = new T[room];
        rates = new T[room];
        square = new T[room];
        cube = new T[room];
        inverted = new double[Register * coupled];
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
        system.Prepare(time, size);
        if (!keepsSlopes)
        {
            system.Slopes(state, in slopes);
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
                system.StageRates(
                    stage,
                    time + (Rodas.Alpha[stage] * size),
                    argument.AsSpan(0, count),
                    rates.AsSpan(0, count)
                );
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
            inverse[i] = 1 / (diagonal - slopes.Own[i]);
        }
    }

    /// <summary>Inverse of the matrix by the method of Gauss and Jordan, columns in registers.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private void Invert(double diagonal)
    {
        ReadOnlySpan<double> columns = Cells.Of(slopes.Numbers);
        Span<double> left = stackalloc double[Register * Register];
        left = left[..(Register * coupled)];
        Span<double> right = inverted;
        right.Clear();
        for (int i = 0; i < coupled; i++)
        {
            (-Vector512.Create(columns.Slice(i * room, Register))).CopyTo(left[(i * Register)..]);
            left[(i * Register) + i] += diagonal;
            right[(i * Register) + i] = 1;
        }

        Span<Vector512<double>> lefts = MemoryMarshal.Cast<double, Vector512<double>>(left);
        Span<Vector512<double>> rights = MemoryMarshal.Cast<double, Vector512<double>>(right);
        for (int pivot = 0; pivot < lefts.Length; pivot++)
        {
            Vector512<double> scale = Vector512.Create(1 / left[(pivot * Register) + pivot]);
            Vector512<double> ofLeft = lefts[pivot] * scale;
            Vector512<double> ofRight = rights[pivot] * scale;
            for (int row = 0; row < lefts.Length; row++)
            {
                Vector512<double> factor = Vector512.Create(-left[(row * Register) + pivot]);
                lefts[row] = Vector512.FusedMultiplyAdd(ofLeft, factor, lefts[row]);
                rights[row] = Vector512.FusedMultiplyAdd(ofRight, factor, rights[row]);
            }

            lefts[pivot] = ofLeft;
            rights[pivot] = ofRight;
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void SolveInRegisters(int stage)
    {
        Span<Vector512<double>> x = Stage(stage);
        ReadOnlySpan<double> b = Cells.Of(stages).Slice(stage * room, coupled);
        ReadOnlySpan<Vector512<double>> inverses = MemoryMarshal.Cast<double, Vector512<double>>(inverted.AsSpan());
        Vector512<double> even = Vector512<double>.Zero;
        Vector512<double> odd = Vector512<double>.Zero;
        int column = 0;
        for (; column < b.Length - 1; column += 2)
        {
            even = Vector512.FusedMultiplyAdd(inverses[column], Vector512.Create(b[column]), even);
            odd = Vector512.FusedMultiplyAdd(inverses[column + 1], Vector512.Create(b[column + 1]), odd);
        }

        if (column < b.Length)
        {
            even = Vector512.FusedMultiplyAdd(inverses[column], Vector512.Create(b[column]), even);
        }

        // The following states of the first register come with the others below.
        Vector512<double> right = x[0];
        Vector512<double> isCoupled = Vector512.LessThan(
            Vector512.Create(0d, 1, 2, 3, 4, 5, 6, 7),
            Vector512.Create((double)coupled)
        );
        x[0] = Vector512.ConditionalSelect(isCoupled, even + odd, right);
        ReadOnlySpan<Vector512<double>> columns = Registers(slopes.Numbers);
        ReadOnlySpan<Vector512<double>> divisors = Registers(inverse);
        for (int i = coupled == Register ? 1 : 0; i < x.Length; i++)
        {
            Vector512<double> sum = x[i];
            for (column = 0; column < b.Length; column++)
            {
                sum = Vector512.FusedMultiplyAdd(columns[(column * x.Length) + i], Vector512.Create(b[column]), sum);
            }

            sum *= divisors[i];
            x[i] = i == 0 ? Vector512.ConditionalSelect(isCoupled, x[0], sum) : sum;
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void Eliminate(T diagonal)
    {
        Span<T> m = matrix;
        for (int row = 0; row < coupled; row++)
        {
            for (int column = 0; column < coupled; column++)
            {
                m[(row * coupled) + column] = -slopes[row, column];
            }
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
                T factor = -(line[pivot] * reciprocal);
                line[pivot] = factor;
                for (int column = pivot + 1; column < line.Length; column++)
                {
                    line[column] = T.MultiplyAdd(factor, top[column], line[column]);
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
                sum = Vector512.FusedMultiplyAdd(k[(earlier * to.Length) + i], Vector512.Create(weights[earlier]), sum);
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
        ReadOnlySpan<Vector512<double>> time = Registers(slopes.Time);
        Span<Vector512<double>> to = Stage(stage);
        for (int i = 0; i < to.Length; i++)
        {
            Vector512<double> sum = Vector512<double>.Zero;
            for (int earlier = 0; earlier < weights.Length; earlier++)
            {
                sum = Vector512.FusedMultiplyAdd(k[(earlier * to.Length) + i], Vector512.Create(weights[earlier]), sum);
            }

            to[i] = Vector512.FusedMultiplyAdd(ofStages, sum, Vector512.FusedMultiplyAdd(ofTime, time[i], rate[i]));
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
                sum = T.MultiplyAdd(line[column], x[column], sum);
            }

            x[row] = sum;
        }

        for (int row = coupled - 1; row >= 0; row--)
        {
            ReadOnlySpan<T> line = m.Slice(row * coupled, coupled);
            T sum = 0;
            for (int column = row + 1; column < line.Length; column++)
            {
                sum = T.MultiplyAdd(line[column], x[column], sum);
            }

            x[row] = (x[row] - sum) * inverse[row];
        }

        for (int row = coupled; row < count; row++)
        {
            T sum = x[row];
            for (int column = 0; column < coupled; column++)
            {
                sum = T.MultiplyAdd(slopes[row, column], x[column], sum);
            }

            x[row] = sum * inverse[row];
        }
    }
}
