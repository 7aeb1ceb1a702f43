using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace TreadmillMech.Numbers.Integration;

/// <summary>One step of <see cref="Rodas"/> on a system, with its own room: nothing is allocated in a step.</summary>
/// <typeparam name="T">Number type: one case, or eight side by side with a step size each.</typeparam>
/// <remarks>
/// Sums over states run on whole registers: one state of eight cases, or eight states of one case.
/// </remarks>
internal sealed class RosenbrockStep<T>
    where T : struct, IReal<T>
{
    private const int Register = 8;

    private readonly int count;
    private readonly int room;
    private readonly int registers;
    private readonly SlopeTable<T> slopes;
    private readonly RegisterSolver? ofOne;
    private readonly InverseSolver<T>? ofMany;
    private readonly T[] stages;
    private readonly T[] begin;
    private readonly T[] argument;
    private readonly T[] rates;
    private readonly T[] square;
    private readonly T[] cube;
    private bool dense;

    internal RosenbrockStep(int count, int coupled)
    {
        this.count = count;
        room = T.Width == 1 ? (count + Register - 1) / Register * Register : count;
        registers = room * T.Width / Register;
        slopes = new(count, coupled);
        if (typeof(T) == typeof(Real) && coupled <= Register)
        {
            ofOne = new(count, coupled);
        }
        else
        {
            ofMany = new(count, coupled);
        }

        stages = new T[Rodas.Stages * room];
        begin = new T[room];
        argument = new T[room];
        rates = new T[room];
        square = new T[room];
        cube = new T[room];
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
            Slopes(ref system, state);
        }

        Factor(1 / (Rodas.Gamma * size));
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
            if (ofOne is not null)
            {
                ofOne.Solve(
                    ref At(stages, stage * registers),
                    in Unsafe.As<SlopeTable<T>, SlopeTable<Real>>(ref Unsafe.AsRef(in slopes))
                );
            }
            else
            {
                ofMany!.Solve(stages.AsSpan(stage * room, count), in slopes);
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

    private void Slopes<TSystem>(ref TSystem system, ReadOnlySpan<T> state)
        where TSystem : IRateSystem<T>
    {
        if (ofMany is null)
        {
            system.Slopes(state, in slopes);
        }
        else
        {
            ofMany.Slopes(ref system, state, in slopes);
        }
    }

    private void Factor(T diagonal)
    {
        if (ofOne is not null)
        {
            ofOne.Factor(
                Unsafe.As<T, double>(ref diagonal),
                in Unsafe.As<SlopeTable<T>, SlopeTable<Real>>(ref Unsafe.AsRef(in slopes))
            );
        }
        else
        {
            ofMany!.Factor(diagonal, in slopes);
        }
    }

    private void Densify()
    {
        dense = true;
        for (int i = 0; i < registers; i++)
        {
            Vector512<double> ofSquare = Vector512<double>.Zero;
            Vector512<double> ofCube = Vector512<double>.Zero;
            for (int stage = 0; stage < Rodas.Stages - 1; stage++)
            {
                Vector512<double> k = At(stages, (stage * registers) + i);
                ofSquare += Rodas.DenseSquare[stage] * k;
                ofCube += Rodas.DenseCube[stage] * k;
            }

            At(square, i) = ofSquare;
            At(cube, i) = ofCube;
        }
    }

    /// <summary>Argument of a stage from the stages before it.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private void Argument(int stage)
    {
        ref Vector512<double> to = ref At(argument, 0);
        if (stage == Rodas.Stages - 1)
        {
            // The weights of the stage before, and that stage itself.
            ref Vector512<double> before = ref At(stages, (stage - 1) * registers);
            for (int i = 0; i < registers; i++)
            {
                Unsafe.Add(ref to, i) += Unsafe.Add(ref before, i);
            }

            return;
        }

        Weights weights = new(Rodas.A, stage);
        ref Vector512<double> from = ref At(begin, 0);
        ref Vector512<double> k = ref At(stages, 0);
        int width = registers;
        for (int i = 0; i < width; i++)
        {
            Unsafe.Add(ref to, i) = weights.Sum(Unsafe.Add(ref from, i), ref Unsafe.Add(ref k, i), width, stage);
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void RightSide(int stage, T size, T perSize)
    {
        Weights weights = new(Rodas.C, stage);
        Vector512<double> ofTime = Wide(size) * Rodas.GammaSum[stage];
        Vector512<double> ofStages = Wide(perSize);
        ref Vector512<double> rate = ref At(rates, 0);
        ref Vector512<double> byTime = ref At(slopes.Time, 0);
        ref Vector512<double> k = ref At(stages, 0);
        ref Vector512<double> to = ref At(stages, stage * registers);
        int width = registers;
        for (int i = 0; i < width; i++)
        {
            Vector512<double> sum = weights.Sum(Vector512<double>.Zero, ref Unsafe.Add(ref k, i), width, stage);
            Vector512<double> own = Vector512.FusedMultiplyAdd(
                ofTime,
                Unsafe.Add(ref byTime, i),
                Unsafe.Add(ref rate, i)
            );
            Unsafe.Add(ref to, i) = Vector512.FusedMultiplyAdd(ofStages, sum, own);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static ref Vector512<double> At(T[] numbers, int register) =>
        ref Unsafe.Add(ref Unsafe.As<T, Vector512<double>>(ref MemoryMarshal.GetArrayDataReference(numbers)), register);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<double> Wide(T number) =>
        T.Width == 1 ? Vector512.Create(Unsafe.As<T, double>(ref number)) : Unsafe.As<T, Vector512<double>>(ref number);

    /// <summary>Weights of the stages before one, spread over registers.</summary>
    private readonly struct Weights
    {
        private readonly Vector512<double> first;
        private readonly Vector512<double> second;
        private readonly Vector512<double> third;
        private readonly Vector512<double> fourth;
        private readonly Vector512<double> fifth;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        internal Weights(ReadOnlySpan<double> table, int stage)
        {
            ReadOnlySpan<double> row = table.Slice(stage * (stage - 1) / 2, stage);
            first = stage > 0 ? Vector512.Create(row[0]) : default;
            second = stage > 1 ? Vector512.Create(row[1]) : default;
            third = stage > 2 ? Vector512.Create(row[2]) : default;
            fourth = stage > 3 ? Vector512.Create(row[3]) : default;
            fifth = stage > 4 ? Vector512.Create(row[4]) : default;
        }

        /// <summary>A number and those of the stages before, by their weights, added up.</summary>
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        internal Vector512<double> Sum(Vector512<double> sum, ref Vector512<double> k, int width, int stage)
        {
            if (stage > 0)
            {
                sum = Vector512.FusedMultiplyAdd(k, first, sum);
            }

            if (stage > 1)
            {
                sum = Vector512.FusedMultiplyAdd(Unsafe.Add(ref k, width), second, sum);
            }

            if (stage > 2)
            {
                sum = Vector512.FusedMultiplyAdd(Unsafe.Add(ref k, 2 * width), third, sum);
            }

            if (stage > 3)
            {
                sum = Vector512.FusedMultiplyAdd(Unsafe.Add(ref k, 3 * width), fourth, sum);
            }

            if (stage > 4)
            {
                sum = Vector512.FusedMultiplyAdd(Unsafe.Add(ref k, 4 * width), fifth, sum);
            }

            return sum;
        }
    }
}
