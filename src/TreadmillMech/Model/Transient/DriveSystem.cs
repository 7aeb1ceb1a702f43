using System.Runtime.CompilerServices;
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
    private DriveNumbers<Dual<Lanes>> lifted;
    private FeetNumbers<Dual<T>> liftedFeet;
    private readonly Dual<Lanes>[] states;
    private readonly Dual<Lanes>[] rates;

    internal DriveSystem(DriveKinds kinds)
    {
        Kinds = kinds;
        Numbers = default;
        Acting = default;
        lifted = default;
        liftedFeet = default;
        states = new Dual<Lanes>[DriveStates.Count];
        rates = new Dual<Lanes>[DriveStates.Count];
    }

    public readonly int Count => DriveStates.Count;

    public readonly int Coupled => DriveStates.Coupled;

    /// <summary>To be called when <see cref="Numbers"/> have changed.</summary>
    internal void NumbersChanged()
    {
        Span<T> from = NumbersAccess.Fields<DriveNumbers<T>, T>(ref Numbers);
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
        for (int i = 0; i < states.Length; i++)
        {
            states[i] = new(Wide(state[i]), i < DriveStates.Coupled ? Seed(Directions[i]) : 0);
        }

        Unsafe.SkipInit(out LoadNumbers<Dual<Lanes>> wide);
        Span<Dual<Lanes>> to = NumbersAccess.Fields<LoadNumbers<Dual<Lanes>>, Dual<Lanes>>(ref wide);
        ReadOnlySpan<Dual<T>> from = NumbersAccess.Fields<LoadNumbers<Dual<T>>, Dual<T>>(ref Unsafe.AsRef(in loads));
        Lanes seed = Seed(TimeDirection);
        for (int i = 0; i < to.Length; i++)
        {
            to[i] = new(Wide(from[i].Value), Wide(from[i].Slope) * seed);
        }

        DriveRates.Run(in lifted, in Kinds, in wide, states, rates, out _);
        for (int row = 0; row < DriveStates.Count; row++)
        {
            ref Dual<Lanes> rate = ref rates[row];
            ref double slopes = ref Unsafe.As<Lanes, double>(ref Unsafe.AsRef(in Slope(ref rate)));
            Span<T> line = byState.Slice(row * DriveStates.Coupled, DriveStates.Coupled);
            for (int column = 0; column < line.Length; column++)
            {
                line[column] = Unsafe.Add(ref slopes, Directions[column]);
            }

            ClearShared(row, line);
            byTime[row] = Unsafe.Add(ref slopes, TimeDirection);
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
    private static void ClearShared(int row, Span<T> line)
    {
        bool electric = row is DriveStates.Current or DriveStates.Integrator or DriveStates.Supplied;
        line[electric ? DriveStates.Stretch : DriveStates.Integrator] = 0;
    }

    private static ref readonly Lanes Slope(ref Dual<Lanes> number) =>
        ref Unsafe.Add(ref Unsafe.As<Dual<Lanes>, Lanes>(ref number), 1);

    private static Lanes Seed(int direction)
    {
        Lanes seed = 0;
        Cells.Of(ref seed)[direction] = 1;
        return seed;
    }

    /// <summary>The number on eight lanes: itself, or the same eight times.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Lanes Wide(T number) =>
        typeof(T) == typeof(Real) ? (Lanes)Unsafe.As<T, Real>(ref number).Value : Unsafe.As<T, Lanes>(ref number);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Narrow(Lanes lanes) => Unsafe.As<Lanes, T>(ref lanes);
}
