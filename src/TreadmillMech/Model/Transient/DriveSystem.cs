using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using TreadmillMech.Numbers;
using TreadmillMech.Numbers.Integration;

namespace TreadmillMech.Model.Transient;

/// <summary>The drive as a system of equations, one machine or eight, with exact slopes.</summary>
/// <remarks>
/// What the feet do depends on time alone. For one machine it is taken for all stages of a step at once, a stage in each
/// lane of a register; for eight, at the end of the step once for the three places that ask for it.
/// </remarks>
[SkipLocalsInit]
internal struct DriveSystem<T> : IRateSystem<T>
    where T : struct, IReal<T>
{
    // From this stage on the time is that of the step's end.
    private const int AtEnd = 4;

    internal DriveKinds Kinds;
    internal DriveNumbers<T> Numbers;
    internal FeetNumbers<T> Acting;
    private FeetNumbers<Lanes> actingInLanes;
    private LoadNumbers<Dual<Lanes>> ofStages;
    private LoadNumbers<T> ofEnd;
    private T begin;

    internal DriveSystem(DriveKinds kinds)
    {
        Kinds = kinds;
        Numbers = default;
        Acting = default;
        actingInLanes = default;
        ofStages = default;
        ofEnd = default;
        begin = default;
    }

    public readonly int Count => DriveStates.Count;

    public readonly int Coupled => Kinds.MotorHeats ? DriveStates.Coupled : DriveStates.CoupledCold;

    /// <summary>To be called when <see cref="Acting"/> have changed.</summary>
    internal void ActingChanged()
    {
        if (T.Width == 1)
        {
            Span<T> from = NumbersAccess.Fields<FeetNumbers<T>, T>(ref Acting);
            Span<Lanes> to = NumbersAccess.Fields<FeetNumbers<Lanes>, Lanes>(ref actingInLanes);
            for (int i = 0; i < from.Length; i++)
            {
                to[i] = Unsafe.As<T, double>(ref from[i]);
            }
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

    /// <summary>The same at the end of the step made ready.</summary>
    internal readonly void LookAtEnd(ReadOnlySpan<T> state, Span<T> rates, out DriveWork<T> work) =>
        DriveRates.Run(in Numbers, in Kinds, in ofEnd, state, rates, out work);

    public void Prepare(T time, T size)
    {
        begin = time;
        if (T.Width == 1)
        {
            // In the order of the stages; the lanes behind them repeat the last.
            Vector512<double> places = Vector512.Create(
                Rodas.Alpha[0],
                Rodas.Alpha[1],
                Rodas.Alpha[2],
                Rodas.Alpha[3],
                Rodas.Alpha[AtEnd],
                Rodas.Alpha[AtEnd],
                Rodas.Alpha[AtEnd],
                Rodas.Alpha[AtEnd]
            );
            Lanes times = new(
                Vector512.Create(Unsafe.As<T, double>(ref time)) + (places * Unsafe.As<T, double>(ref size))
            );
            LoadsAtTime.RunWithSlopes(in actingInLanes, times, out ofStages);
            OfStage(AtEnd, out ofEnd);
        }
        else
        {
            LoadsAtTime.Run(in Acting, time + size, out ofEnd);
        }
    }

    public readonly void StageRates(int stage, T time, ReadOnlySpan<T> state, Span<T> rates)
    {
        if (stage >= AtEnd)
        {
            DriveRates.Run(in Numbers, in Kinds, in ofEnd, state, rates, out _);
            return;
        }

        LoadNumbers<T> loads;
        if (T.Width == 1)
        {
            OfStage(stage, out loads);
        }
        else
        {
            LoadsAtTime.Run(in Acting, time, out loads);
        }

        DriveRates.Run(in Numbers, in Kinds, in loads, state, rates, out _);
    }

    public readonly void Slopes(ReadOnlySpan<T> state, in SlopeTable<T> slopes)
    {
        LoadNumbers<Dual<T>> loads;
        if (T.Width == 1)
        {
            loads.Normal = Begin(in ofStages.Normal);
            loads.SharedNormal = Begin(in ofStages.SharedNormal);
            loads.Along = Begin(in ofStages.Along);
            loads.SharedAlong = Begin(in ofStages.SharedAlong);
            loads.Jam = Begin(in ofStages.Jam);
            loads.SharedJam = Begin(in ofStages.SharedJam);
            loads.SetSpeed = Begin(in ofStages.SetSpeed);
            loads.On = Begin(in ofStages.On);
        }
        else
        {
            LoadsAtTime.RunWithSlopes(in Acting, begin, out loads);
        }

        DriveSlopes.Run(in Numbers, in Kinds, in loads, state, in slopes);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private readonly void OfStage(int stage, out LoadNumbers<T> loads)
    {
        loads.Normal = Of(in ofStages.Normal, stage);
        loads.SharedNormal = Of(in ofStages.SharedNormal, stage);
        loads.Along = Of(in ofStages.Along, stage);
        loads.SharedAlong = Of(in ofStages.SharedAlong, stage);
        loads.Jam = Of(in ofStages.Jam, stage);
        loads.SharedJam = Of(in ofStages.SharedJam, stage);
        loads.SetSpeed = Of(in ofStages.SetSpeed, stage);
        loads.On = Of(in ofStages.On, stage);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Of(in Dual<Lanes> number, int stage) =>
        Unsafe.Add(ref Unsafe.As<Dual<Lanes>, double>(ref Unsafe.AsRef(in number)), stage);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Dual<T> Begin(in Dual<Lanes> number) => new(Of(in number, 0), Of(in number, Lanes.Count));
}
