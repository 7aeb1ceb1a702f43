using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using TreadmillMech.Numbers;
using TreadmillMech.Numbers.Integration;

namespace TreadmillMech.Model.Transient;

/// <summary>The drive as a system of equations, one machine or eight, with exact slopes.</summary>
/// <remarks>
/// Slopes are taken with derivatives on eight lanes. For one machine the lanes are eight directions, all at once; for eight
/// machines they are the machines, direction after direction. Stretch and integrator share a direction: no rate depends on
/// both.
/// </remarks>
internal struct DriveSystem<T> : IRateSystem<T>
    where T : struct, IReal<T>
{
    private const int TimeDirection = 7;

    // Direction of each coupled state; the integrator goes with the stretch.
    private static ReadOnlySpan<byte> Directions => [0, 1, 2, 3, 4, 3, 5, 6];

    internal DriveKinds Kinds;
    internal DriveNumbers<T> Numbers;
    internal FeetNumbers<T> Acting;
    private DriveNumbers<Gradient> rows;
    private DriveNumbers<Dual<Lanes>> lifted;
    private FeetNumbers<Dual<T>> liftedFeet;
    private readonly Dual<Lanes>[] states;
    private readonly Dual<Lanes>[] rates;
    private readonly Gradient[] rowStates;
    private readonly Gradient[] rowRates;

    internal DriveSystem(DriveKinds kinds)
    {
        Kinds = kinds;
        Numbers = default;
        Acting = default;
        rows = default;
        lifted = default;
        liftedFeet = default;
        states = new Dual<Lanes>[DriveStates.Count];
        rates = new Dual<Lanes>[DriveStates.Count];
        rowStates = new Gradient[DriveStates.Count];
        rowRates = new Gradient[DriveStates.Count];
    }

    public readonly int Count => DriveStates.Count;

    public readonly int Coupled => DriveStates.Coupled;

    /// <summary>To be called when <see cref="Numbers"/> have changed.</summary>
    internal void NumbersChanged()
    {
        Span<T> from = NumbersAccess.Fields<DriveNumbers<T>, T>(ref Numbers);
        if (T.Width == 1)
        {
            Span<Gradient> row = NumbersAccess.Fields<DriveNumbers<Gradient>, Gradient>(ref rows);
            for (int i = 0; i < from.Length; i++)
            {
                row[i] = Plain(from[i]);
            }

            return;
        }

        Span<Dual<Lanes>> to = NumbersAccess.Fields<DriveNumbers<Dual<Lanes>>, Dual<Lanes>>(ref lifted);
        for (int i = 0; i < from.Length; i++)
        {
            to[i] = new(Wide(from[i]), 0);
        }
    }

    /// <summary>To be called when <see cref="Acting"/> have changed.</summary>
    internal void ActingChanged()
    {
        Span<T> from = NumbersAccess.Fields<FeetNumbers<T>, T>(ref Acting);
        Span<Dual<T>> to = NumbersAccess.Fields<FeetNumbers<Dual<T>>, Dual<T>>(ref liftedFeet);
        for (int i = 0; i < from.Length; i++)
        {
            to[i] = new(from[i], 0);
        }
    }

    public readonly void Rates(T time, ReadOnlySpan<T> state, Span<T> rates)
    {
        LoadsAtTime.Run(in Acting, time, out LoadNumbers<T> loads);
        DriveRates.Run(in Numbers, in Kinds, in loads, state, rates, out _);
    }

    /// <summary>Rates, and what they are made of.</summary>
    internal readonly void Look(T time, ReadOnlySpan<T> state, Span<T> rates, out DriveWork<T> work)
    {
        LoadsAtTime.Run(in Acting, time, out LoadNumbers<T> loads);
        DriveRates.Run(in Numbers, in Kinds, in loads, state, rates, out work);
    }

    public readonly void Slopes(T time, ReadOnlySpan<T> state, Span<T> byState, Span<T> byOwn, Span<T> byTime)
    {
        LoadsAtTime.Run(in liftedFeet, Dual<T>.Variable(time), out LoadNumbers<Dual<T>> loads);
        byState.Clear();
        byTime.Clear();
        if (T.Width == 1)
        {
            OfOne(in loads, state, byState, byTime);
        }
        else
        {
            OfEight(in loads, state, byState, byTime);
        }

        byOwn.Clear();
        if (Kinds.DeckHeats)
        {
            // Linear cooling, the only feeding of a following state on itself.
            byOwn[DriveStates.BeltHeat] = -(Numbers.BeltConductance / Numbers.BeltCapacity);
            byOwn[DriveStates.DeckHeat] = -(Numbers.DeckConductance / Numbers.DeckCapacity);
        }
    }

    private readonly void OfOne(in LoadNumbers<Dual<T>> loads, ReadOnlySpan<T> state, Span<T> byState, Span<T> byTime)
    {
        for (int i = 0; i < rowStates.Length; i++)
        {
            rowStates[i] = new(
                Plain(state[i]),
                i < DriveStates.Coupled ? Seed(Directions[i], 1) : Vector512<double>.Zero
            );
        }

        Unsafe.SkipInit(out LoadNumbers<Gradient> row);
        Span<Gradient> to = NumbersAccess.Fields<LoadNumbers<Gradient>, Gradient>(ref row);
        ReadOnlySpan<Dual<T>> from = NumbersAccess.Fields<LoadNumbers<Dual<T>>, Dual<T>>(ref Unsafe.AsRef(in loads));
        for (int i = 0; i < to.Length; i++)
        {
            to[i] = new(Plain(from[i].Value), Seed(TimeDirection, Plain(from[i].Slope)));
        }

        DriveRates.Run(in rows, in Kinds, in row, rowStates, rowRates, out _);
        for (int rate = 0; rate < DriveStates.Count; rate++)
        {
            // Directions in the order of the coupled states, the shared one twice, the last for time.
            Vector512<double> slopes = rowRates[rate].Slopes;
            Span<double> line = Cells.Of(byState.Slice(rate * DriveStates.Coupled, DriveStates.Coupled));
            Vector512.Shuffle(slopes, Vector512.Create(0L, 1, 2, 3, 4, 3, 5, 6)).CopyTo(line);
            line[Electric(rate) ? DriveStates.Stretch : DriveStates.Integrator] = 0;
            byTime[rate] = slopes[TimeDirection];
        }
    }

    private readonly void OfEight(in LoadNumbers<Dual<T>> loads, ReadOnlySpan<T> state, Span<T> byState, Span<T> byTime)
    {
        Unsafe.SkipInit(out LoadNumbers<Dual<Lanes>> wide);
        Span<Dual<Lanes>> to = NumbersAccess.Fields<LoadNumbers<Dual<Lanes>>, Dual<Lanes>>(ref wide);
        ReadOnlySpan<Dual<T>> from = NumbersAccess.Fields<LoadNumbers<Dual<T>>, Dual<T>>(ref Unsafe.AsRef(in loads));
        int directions = TimeDirection + 1;
        for (int direction = 0; direction < directions; direction++)
        {
            if (!Kinds.MotorHeats && direction is 5 or 6)
            {
                continue;
            }

            for (int i = 0; i < states.Length; i++)
            {
                bool along = i < DriveStates.Coupled && Directions[i] == direction;
                states[i] = new(Wide(state[i]), along ? 1 : 0);
            }

            bool ofTime = direction == TimeDirection;
            for (int i = 0; i < to.Length; i++)
            {
                to[i] = new(Wide(from[i].Value), ofTime ? Wide(from[i].Slope) : 0);
            }

            DriveRates.Run(in lifted, in Kinds, in wide, states, rates, out _);
            for (int row = 0; row < DriveStates.Count; row++)
            {
                T slope = Narrow(rates[row].Slope);
                if (ofTime)
                {
                    byTime[row] = slope;
                    continue;
                }

                Span<T> line = byState.Slice(row * DriveStates.Coupled, DriveStates.Coupled);
                for (int column = 0; column < line.Length; column++)
                {
                    line[column] = Directions[column] == direction ? slope : line[column];
                }

                ClearShared(row, line);
            }
        }
    }

    /// <summary>Of two states that share a direction, the one that a rate does not depend on.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void ClearShared(int row, Span<T> line) =>
        line[Electric(row) ? DriveStates.Stretch : DriveStates.Integrator] = 0;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static bool Electric(int row) =>
        row is DriveStates.Current or DriveStates.Integrator or DriveStates.Supplied;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<double> Seed(int direction, double slope) =>
        Vector512.ConditionalSelect(
            Vector512.Equals(Vector512.Create(0d, 1, 2, 3, 4, 5, 6, 7), Vector512.Create((double)direction)),
            Vector512.Create(slope),
            Vector512<double>.Zero
        );

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Plain(T number) => Unsafe.As<T, double>(ref number);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Lanes Wide(T number) => Unsafe.As<T, Lanes>(ref number);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Narrow(Lanes lanes) => Unsafe.As<Lanes, T>(ref lanes);
}
