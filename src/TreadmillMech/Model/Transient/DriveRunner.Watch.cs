using System.Numerics;
using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;
using TreadmillMech.Numbers.Integration;

namespace TreadmillMech.Model.Transient;

// What lies inside a step: rows of the series, events, a person who begins to walk.
internal sealed partial class DriveRunner<T>
    where T : struct, IReal<T>
{
    /// <summary>What lies inside the step just tried: rows, events, a person who begins to walk.</summary>
    private void Watch(ref T time, ref T size, ref T end, in DriveSigns after, ref uint accepted)
    {
        uint told = accepted & (~Cells.Less(end + 1e-12, rows) | standing | signs.Changed(in after));
        for (; told != 0; told &= told - 1)
        {
            int lane = BitOperations.TrailingZeroCount(told);
            double now = Cells.Of(ref time)[lane];
            double h = Cells.Of(ref size)[lane];
            if ((standing >> lane & 1) != 0 && StartsInside(lane, h))
            {
                accepted &= ~(1u << lane);
                continue;
            }

            Rows(lane, now, h, Cells.Of(ref end)[lane]);
            Events(lane, now, h, in after);
        }
    }

    /// <summary>Whether the belt reaches walking speed inside this step; then a shorter one is to end there.</summary>
    private bool StartsInside(int lane, double size)
    {
        int at = (DriveStates.Belt * T.Width) + lane;
        double from = Cells.Of(state)[at];
        double to = Cells.Of(next)[at];
        if (to <= DriveCase.StandingBelow || from >= DriveCase.StandingBelow || (starting >> lane & 1) != 0)
        {
            return false;
        }

        double low = 0;
        double high = 1;
        for (int i = 0; i < 50; i++)
        {
            double middle = 0.5 * (low + high);
            bool reached = step.Within(lane, DriveStates.Belt, middle, from, to) > DriveCase.StandingBelow;
            (low, high) = reached ? (low, middle) : (middle, high);
        }

        starting |= 1u << lane;
        Cells.Of(ref wanted)[lane] = size * high;
        return true;
    }

    private void Rows(int lane, double now, double size, double end)
    {
        DriveRecord record = cases[lane].Record;
        while (record.NextRow <= end + 1e-12)
        {
            Inside(lane, now, size, size > 0 ? Math.Clamp((record.NextRow - now) / size, 0, 1) : 0);
        }
    }

    /// <summary>Adds the row at a place in the step.</summary>
    private void Inside(int lane, double now, double size, double place)
    {
        DriveCase of = cases[lane];
        DriveKinds kinds = of.Kinds;
        for (int i = 0; i < inside.Length; i++)
        {
            inside[i] = Inside(lane, i, place);
        }

        LoadsAtTime.Run(in of.Acting, now + (place * size), out LoadNumbers<Real> loads);
        DriveRates.Run(in of.Numbers, in kinds, in loads, inside, insideRates, out DriveWork<Real> work);
        of.Record.AddRow(in of.Numbers, inside, in loads, in work);
        Cells.Of(ref rows)[lane] = of.Record.NextRow;
    }

    /// <summary>A state of a case at a place in the step.</summary>
    private double Inside(int lane, int index, double place)
    {
        int at = (index * T.Width) + lane;
        double from = Cells.Of(state)[at];
        return place <= 0 ? from : step.Within(lane, index, place, from, Cells.Of(next)[at]);
    }

    private void Events(int lane, double now, double size, in DriveSigns after)
    {
        Event(lane, now, size, 0, signs.Belt, after.Belt, DriveEventKind.BeltSlipStarts, DriveEventKind.BeltSlipEnds);
        Event(
            lane,
            now,
            size,
            1,
            signs.Pulley,
            after.Pulley,
            DriveEventKind.DriveBeltSlipStarts,
            DriveEventKind.DriveBeltSlipEnds
        );
        Event(
            lane,
            now,
            size,
            2,
            signs.Limited,
            after.Limited,
            DriveEventKind.CurrentLimitReached,
            DriveEventKind.CurrentLimitLeft
        );
        Event(lane, now, size, 3, signs.Rests, after.Rests, DriveEventKind.BeltStops, null);
    }

    private void Event(
        int lane,
        double now,
        double size,
        int function,
        uint bitsBefore,
        uint bitsAfter,
        DriveEventKind begins,
        DriveEventKind? ends
    )
    {
        bool before = (bitsBefore >> lane & 1) != 0;
        bool after = (bitsAfter >> lane & 1) != 0;
        if (before == after || (before && ends is null))
        {
            return;
        }

        // The sign changes inside: the Illinois form of false position, on the dense output.
        double low = 0;
        double high = 1;
        double atLow = Function(lane, now, size, 0, function);
        double atHigh = Function(lane, now, size, 1, function);
        for (int i = 0; i < 30 && high - low > 1e-6; i++)
        {
            double place = atHigh == atLow ? 0.5 * (low + high) : low - (atLow * (high - low) / (atHigh - atLow));
            place = Math.Clamp(place, low + (0.01 * (high - low)), high - (0.01 * (high - low)));
            double value = Function(lane, now, size, place, function);
            if (value > 0 == after)
            {
                high = place;
                atHigh = value;
                atLow *= 0.5;
            }
            else
            {
                low = place;
                atLow = value;
                atHigh *= 0.5;
            }
        }

        cases[lane].Record.Add(now + (high * size), after ? begins : ends!.Value);
    }

    private double Function(int lane, double now, double size, double place, int function)
    {
        DriveCase of = cases[lane];
        switch (function)
        {
            case 2:
                return Math.Abs(Inside(lane, DriveStates.Current, place)) - (Limited * of.Numbers.CurrentLimit);
            case 3:
                return DriveCase.AtRest - Math.Abs(Inside(lane, DriveStates.Belt, place));
            default:
                return SlipFunction(of, lane, now + (place * size), place, function == 0);
        }
    }

    private double SlipFunction(DriveCase of, int lane, double time, double place, bool belt)
    {
        for (int i = 0; i < StatesOfForces; i++)
        {
            inside[i] = Inside(lane, i, place);
        }

        DriveKinds kinds = of.Kinds;
        Unsafe.SkipInit(out DriveWork<Real> work);
        LoadsAtTime.Run(in of.Acting, time, out LoadNumbers<Real> loads);
        DriveRates.Forces(in of.Numbers, in kinds, in loads, inside, ref work);
        return belt ? Math.Abs(work.GrippingPull) - work.LargestPull : Math.Abs(work.PulleySliding) - PulleySlips;
    }

    // Belt, roller, motor and stretch: all that forces are made of.
    private const int StatesOfForces = DriveStates.Stretch + 1;

    // At five widths of its creep the drive belt carries 98 % of what it can.
    private const double PulleySlips = 5 * DriveRates.PulleyWidth;
    private const double Limited = 0.995;

    // A belt at rest that only swings on its strands has not started again.
    private const double StirsAgain = 10;

    private DriveSigns SignsOf(in DriveWork<T> work, ReadOnlySpan<T> of)
    {
        T rest = Cells.Pick<T>(signs.Rests, StirsAgain * DriveCase.AtRest, DriveCase.AtRest);
        return new(
            Cells.Less(work.LargestPull, T.Abs(work.GrippingPull)),
            Cells.Less<T>(PulleySlips, T.Abs(work.PulleySliding)),
            Cells.Less(Limited * currentLimits, T.Abs(of[DriveStates.Current])),
            Cells.Less(T.Abs(of[DriveStates.Belt]), rest)
        );
    }
}
