using TreadmillMech.Numbers;
using TreadmillMech.Numbers.Integration;

namespace TreadmillMech.Model.Transient;

/// <summary>The drive as a system of equations, one machine or eight, with exact slopes.</summary>
internal struct DriveSystem<T> : IRateSystem<T>
    where T : struct, IReal<T>
{
    internal DriveKinds Kinds;
    internal DriveNumbers<T> Numbers;
    internal FeetNumbers<T> Acting;
    private FeetNumbers<Dual<T>> liftedFeet;

    internal DriveSystem(DriveKinds kinds)
    {
        Kinds = kinds;
        Numbers = default;
        Acting = default;
        liftedFeet = default;
    }

    public readonly int Count => DriveStates.Count;

    public readonly int Coupled => Kinds.MotorHeats ? DriveStates.Coupled : DriveStates.CoupledCold;

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

    public readonly void Slopes(T time, ReadOnlySpan<T> state, in SlopeTable<T> slopes)
    {
        LoadsAtTime.Run(in liftedFeet, Dual<T>.Variable(time), out LoadNumbers<Dual<T>> loads);
        DriveSlopes.Run(in Numbers, in Kinds, in loads, state, in slopes);
    }
}
