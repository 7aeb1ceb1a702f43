using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace TreadmillMech.Numbers.Integration;

/// <summary>One step of <see cref="Rodas"/> on a system, with its own room: nothing is allocated in a step.</summary>
/// <typeparam name="T">Number type: one case, or eight side by side with a step size each.</typeparam>
/// <remarks>
/// Sums over states run on whole registers: one state of eight cases, or eight states of one case.
/// </remarks>
[SkipLocalsInit]
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
    private readonly AlignedRow<T> stages;
    private readonly AlignedRow<T> begin;
    private readonly AlignedRow<T> argument;
    private readonly AlignedRow<T> rates;
    private readonly AlignedRow<T> square;
    private readonly AlignedRow<T> cube;
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

        stages = new(Rodas.Stages * room);
        begin = new(room);
        argument = new(room);
        rates = new(room);
        square = new(room);
        cube = new(room);
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
    [MethodImpl(MethodImplOptions.NoInlining)]
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
        state[..count].CopyTo(begin.All);
        first[..count].CopyTo(rates.All);
        Solve<First>(size, perSize);
        Stage<TSystem, Second>(ref system, time, size, perSize);
        Stage<TSystem, Third>(ref system, time, size, perSize);
        Stage<TSystem, Fourth>(ref system, time, size, perSize);
        Stage<TSystem, Fifth>(ref system, time, size, perSize);
        Stage<TSystem, Sixth>(ref system, time, size, perSize);
        ReadOnlySpan<T> last = stages.All.Slice((Rodas.Stages - 1) * room, count);
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

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Stage<TSystem, TStage>(ref TSystem system, T time, T size, T perSize)
        where TSystem : IRateSystem<T>
        where TStage : IStage
    {
        Argument<TStage>();
        int stage = TStage.Number;
        system.StageRates(stage, time + (Rodas.Alpha[stage] * size), argument.All[..count], rates.All[..count]);
        Solve<TStage>(size, perSize);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Solve<TStage>(T size, T perSize)
        where TStage : IStage
    {
        RightSide<TStage>(size, perSize);
        if (ofOne is not null)
        {
            ofOne.Solve(
                ref At(stages, TStage.Number * registers),
                in Unsafe.As<SlopeTable<T>, SlopeTable<Real>>(ref Unsafe.AsRef(in slopes))
            );
        }
        else
        {
            ofMany!.Solve(stages.All.Slice(TStage.Number * room, count), in slopes);
        }
    }

    /// <summary>Argument of a stage from the stages before it.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private void Argument<TStage>()
        where TStage : IStage
    {
        ref Vector512<double> to = ref At(argument, 0);
        ref Vector512<double> from = ref At(begin, 0);
        ref Vector512<double> k = ref At(stages, 0);
        int width = registers;
        if (TStage.Number == Rodas.Stages - 1)
        {
            // The weights of the stage before, and that stage itself.
            ref Vector512<double> before = ref Unsafe.Add(ref k, (TStage.Number - 1) * width);
            for (int i = 0; i < width; i++)
            {
                Unsafe.Add(ref to, i) += Unsafe.Add(ref before, i);
            }

            return;
        }

        for (int i = 0; i < width; i++)
        {
            Unsafe.Add(ref to, i) = Sum<TStage>(Rodas.A, Unsafe.Add(ref from, i), ref Unsafe.Add(ref k, i), width);
        }
    }

    /// <summary>Right side of a stage from its rates and the stages before it.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private void RightSide<TStage>(T size, T perSize)
        where TStage : IStage
    {
        Vector512<double> ofTime = Wide(size) * Rodas.GammaSum[TStage.Number];
        Vector512<double> ofStages = Wide(perSize);
        ref Vector512<double> rate = ref At(rates, 0);
        ref Vector512<double> byTime = ref At(slopes.Time, 0);
        ref Vector512<double> k = ref At(stages, 0);
        int width = registers;
        ref Vector512<double> to = ref Unsafe.Add(ref k, TStage.Number * width);
        for (int i = 0; i < width; i++)
        {
            Vector512<double> sum = Sum<TStage>(Rodas.C, Vector512<double>.Zero, ref Unsafe.Add(ref k, i), width);
            Vector512<double> own = Unsafe.Add(ref rate, i);
            if (TStage.Number < Rodas.Stages - 2)
            {
                // The last two stages have no part by time.
                own = Vector512.FusedMultiplyAdd(ofTime, Unsafe.Add(ref byTime, i), own);
            }

            Unsafe.Add(ref to, i) = Vector512.FusedMultiplyAdd(ofStages, sum, own);
        }
    }

    /// <summary>A number and those of the stages before, by their weights, added up.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<double> Sum<TStage>(
        ReadOnlySpan<double> table,
        Vector512<double> sum,
        ref Vector512<double> k,
        int width
    )
        where TStage : IStage
    {
        int at = TStage.Number * (TStage.Number - 1) / 2;
        if (TStage.Number > 0)
        {
            sum = Vector512.FusedMultiplyAdd(k, Vector512.Create(table[at]), sum);
        }

        if (TStage.Number > 1)
        {
            sum = Vector512.FusedMultiplyAdd(Unsafe.Add(ref k, width), Vector512.Create(table[at + 1]), sum);
        }

        if (TStage.Number > 2)
        {
            sum = Vector512.FusedMultiplyAdd(Unsafe.Add(ref k, 2 * width), Vector512.Create(table[at + 2]), sum);
        }

        if (TStage.Number > 3)
        {
            sum = Vector512.FusedMultiplyAdd(Unsafe.Add(ref k, 3 * width), Vector512.Create(table[at + 3]), sum);
        }

        if (TStage.Number > 4)
        {
            sum = Vector512.FusedMultiplyAdd(Unsafe.Add(ref k, 4 * width), Vector512.Create(table[at + 4]), sum);
        }

        return sum;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static ref Vector512<double> At(AlignedRow<T> numbers, int register) =>
        ref Unsafe.Add(ref Unsafe.As<T, Vector512<double>>(ref numbers.First), register);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<double> Wide(T number) =>
        T.Width == 1 ? Vector512.Create(Unsafe.As<T, double>(ref number)) : Unsafe.As<T, Vector512<double>>(ref number);

    /// <summary>A stage that the compiler knows, so that its sums are written out.</summary>
    private interface IStage
    {
        static abstract int Number { get; }
    }

    private readonly struct First : IStage
    {
        public static int Number => 0;
    }

    private readonly struct Second : IStage
    {
        public static int Number => 1;
    }

    private readonly struct Third : IStage
    {
        public static int Number => 2;
    }

    private readonly struct Fourth : IStage
    {
        public static int Number => 3;
    }

    private readonly struct Fifth : IStage
    {
        public static int Number => 4;
    }

    private readonly struct Sixth : IStage
    {
        public static int Number => 5;
    }
}
