using TreadmillMech.Numbers;
using TreadmillMech.Numbers.Integration;

namespace TreadmillMech.Model.Transient;

/// <summary>Takes one machine through its run, or up to eight side by side, each with its own time and its own steps.</summary>
/// <typeparam name="T"><see cref="Real"/> for one, <see cref="Lanes"/> for eight.</typeparam>
/// <remarks>All room is taken before the first step; the steps allocate nothing.</remarks>
internal sealed class DriveRunner<T>
    where T : struct, IReal<T>
{
    /// <summary>Most steps of a run.</summary>
    internal const int MostSteps = 50_000_000;

    private const int StepsAReport = 512;
    private const double FirstStep = 1e-4;
    private const double AfterEdge = 4e-3;

    // Relative to the time reached; below it the time no longer moves on.
    private const double LeastStep = 1e-13;

    private readonly DriveCase[] cases;
    private readonly RosenbrockStep<T> step;
    private DriveSystem<T> system;
    private readonly T[] state = new T[DriveStates.Count];
    private readonly T[] next = new T[DriveStates.Count];
    private readonly T[] error = new T[DriveStates.Count];
    private readonly T[] first = new T[DriveStates.Count];
    private readonly T[] atNext = new T[DriveStates.Count];
    private readonly Real[] inside = new Real[DriveStates.Count];
    private readonly Real[] insideRates = new Real[DriveStates.Count];
    private readonly double[] absolute = new double[DriveStates.Count];
    private readonly double[] wanted;
    private readonly bool[] running;
    private readonly bool[] starting;
    private readonly Signs[] signs;
    private bool moved = true;

    internal DriveRunner(ReadOnlySpan<DriveCase> cases)
    {
        this.cases = cases.ToArray();
        system = new(cases[0].Kinds);
        step = new(system.Count, system.Coupled);
        wanted = new double[cases.Length];
        running = new bool[cases.Length];
        starting = new bool[cases.Length];
        signs = new Signs[cases.Length];
        double relative = cases[0].Plan.Tolerance;
        for (int i = 0; i < absolute.Length; i++)
        {
            absolute[i] = relative * DriveStates.Scales[i];
        }

        Span<double> plain = stackalloc double[DriveStates.Count];
        for (int lane = 0; lane < T.Width; lane++)
        {
            // Lanes without a case follow the first one and are not looked at.
            DriveCase of = cases[Math.Min(lane, cases.Length - 1)];
            if (lane < cases.Length)
            {
                of.Begin(plain);
                running[lane] = true;
                wanted[lane] = FirstStep;
            }

            Put(lane, plain);
            PutNumbers(lane, of.Numbers);
            PutFeet(lane, in of.Acting);
        }

        system.ActingChanged();
    }

    /// <summary>Runs to the end of every case, or to where it fails.</summary>
    /// <param name="progress">Told the least time reached, now and then.</param>
    /// <param name="cancellation">Asked now and then.</param>
    internal void Run(IProgress<double>? progress, CancellationToken cancellation)
    {
        T time = 0;
        First(time);
        int left = cases.Length;
        int sinceReport = 0;
        while (left > 0)
        {
            left -= Advance(ref time);
            if (++sinceReport == StepsAReport)
            {
                sinceReport = 0;
                cancellation.ThrowIfCancellationRequested();
                progress?.Report(Least(ref time));
            }
        }

        progress?.Report(Least(ref time));
    }

    /// <summary>Tries one step of every case; answers how many cases ended in it.</summary>
    internal int Advance(ref T time)
    {
        T size = Sizes(ref time);

        // Where no case has moved since the last step its slopes still hold.
        step.Take(ref system, time, size, state, first, next, error, !moved);
        moved = false;
        T errors = StepControl.Size<T>(error, state, next, absolute, cases[0].Plan.Tolerance);
        T factors = StepControl.Factor(errors);
        system.Look(time + size, next, atNext, out DriveWork<T> atEnd);
        int ended = 0;
        bool feetChanged = false;
        for (int lane = 0; lane < cases.Length; lane++)
        {
            if (running[lane])
            {
                ended += Judge(
                    lane,
                    ref time,
                    Cells.Of(ref size)[lane],
                    Cells.Of(ref errors)[lane],
                    Cells.Of(ref factors)[lane],
                    ref atEnd,
                    ref feetChanged
                )
                    ? 1
                    : 0;
            }
        }

        if (feetChanged)
        {
            system.ActingChanged();
            system.Rates(time, state, first);
        }

        return ended;
    }

    private T Sizes(ref T time)
    {
        T size = FirstStep;
        for (int lane = 0; lane < cases.Length; lane++)
        {
            if (running[lane])
            {
                double room = cases[lane].Edge - Cells.Of(ref time)[lane];
                double h = wanted[lane];

                // Two even steps to the edge rather than a long one and a stub.
                Cells.Of(ref size)[lane] = h >= room ? room : Math.Min(h, Math.Max(0.5 * room, 0.5 * h));
            }
        }

        return size;
    }

    private bool Judge(
        int lane,
        ref T time,
        double size,
        double error,
        double factor,
        ref DriveWork<T> atEnd,
        ref bool feetChanged
    )
    {
        DriveCase of = cases[lane];
        ref double now = ref Cells.Of(ref time)[lane];
        if (!(error <= 1))
        {
            of.Record.Rejected++;
            wanted[lane] = size * Math.Min(factor, 0.9);
            return wanted[lane] < LeastStep * Math.Max(1, now) && End(lane, now, Failed(lane));
        }

        if (of.Stands && StartsInside(lane, size))
        {
            return false;
        }

        bool lands = size >= of.Edge - now;
        double end = lands ? of.Edge : now + size;
        Rows(lane, now, size, end);
        Events(lane, now, size, ref atEnd);
        now = end;
        moved = true;
        Take(lane);
        wanted[lane] = Math.Max(size * factor, lands ? wanted[lane] : 0);
        of.Record.Steps++;
        double speed = Cells.Of(state)[(DriveStates.Belt * T.Width) + lane];
        if (starting[lane] && of.Stands && speed >= DriveCase.StandingBelow * (1 - 1e-4))
        {
            starting[lane] = false;
            of.StartStepping(now, speed);
            Changed(lane, ref feetChanged);
        }

        if (lands)
        {
            if (end >= of.Plan.Duration)
            {
                return End(lane, now, FailureReason.None);
            }

            of.Cross(now, speed);
            Changed(lane, ref feetChanged);
        }

        return of.Record.Steps + of.Record.Rejected > MostSteps && End(lane, now, FailureReason.TooManySteps);
    }

    private void Changed(int lane, ref bool feetChanged)
    {
        PutFeet(lane, in cases[lane].Acting);
        feetChanged = true;

        // Forces bend at an edge: begin carefully.
        wanted[lane] = Math.Min(wanted[lane], AfterEdge);
    }

    /// <summary>Whether the belt reaches walking speed inside this step; then a shorter one is to end there.</summary>
    private bool StartsInside(int lane, double size)
    {
        int at = (DriveStates.Belt * T.Width) + lane;
        double from = Cells.Of(state)[at];
        double to = Cells.Of(next)[at];
        if (to <= DriveCase.StandingBelow || from >= DriveCase.StandingBelow || starting[lane])
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

        starting[lane] = true;
        wanted[lane] = size * high;
        return true;
    }

    private void First(T time)
    {
        system.Look(time, state, first, out DriveWork<T> work);
        for (int lane = 0; lane < cases.Length; lane++)
        {
            signs[lane] = SignsOf(lane, ref work, Cells.Of(state));
            Inside(lane, 0, 0, 0);
        }
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
        Look(lane, now, size, place, out LoadNumbers<Real> loads, out DriveWork<Real> work);
        of.Record.AddRow(in of.Numbers, inside, in loads, in work);
    }

    private void Look(
        int lane,
        double now,
        double size,
        double place,
        out LoadNumbers<Real> loads,
        out DriveWork<Real> work
    )
    {
        DriveCase of = cases[lane];
        ReadOnlySpan<double> from = Cells.Of(state);
        ReadOnlySpan<double> to = Cells.Of(next);
        for (int i = 0; i < inside.Length; i++)
        {
            int at = (i * T.Width) + lane;
            inside[i] = place <= 0 ? from[at] : step.Within(lane, i, place, from[at], to[at]);
        }

        LoadsAtTime.Run(in of.Acting, now + (place * size), out loads);
        DriveKinds kinds = of.Kinds;
        DriveRates.Run(in of.Numbers, in kinds, in loads, inside, insideRates, out work);
    }

    private void Events(int lane, double now, double size, ref DriveWork<T> atEnd)
    {
        Signs after = SignsOf(lane, ref atEnd, Cells.Of(next));
        Signs before = signs[lane];
        signs[lane] = after;
        if (after == before)
        {
            return;
        }

        Event(lane, now, size, 0, before.Belt, after.Belt, DriveEventKind.BeltSlipStarts, DriveEventKind.BeltSlipEnds);
        Event(
            lane,
            now,
            size,
            1,
            before.Pulley,
            after.Pulley,
            DriveEventKind.DriveBeltSlipStarts,
            DriveEventKind.DriveBeltSlipEnds
        );
        Event(
            lane,
            now,
            size,
            2,
            before.Limited,
            after.Limited,
            DriveEventKind.CurrentLimitReached,
            DriveEventKind.CurrentLimitLeft
        );
        Event(lane, now, size, 3, before.Rests, after.Rests, DriveEventKind.BeltStops, null);
    }

    private void Event(
        int lane,
        double now,
        double size,
        int function,
        bool before,
        bool after,
        DriveEventKind begins,
        DriveEventKind? ends
    )
    {
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
        Look(lane, now, size, place, out _, out DriveWork<Real> work);
        return function switch
        {
            0 => Math.Abs(work.GrippingPull) - work.LargestPull,
            1 => Math.Abs(work.PulleySliding) - PulleySlips,
            2 => Math.Abs(inside[DriveStates.Current]) - (Limited * cases[lane].Numbers.CurrentLimit),
            _ => DriveCase.AtRest - Math.Abs(inside[DriveStates.Belt]),
        };
    }

    // At five widths of its creep the drive belt carries 98 % of what it can.
    private const double PulleySlips = 5 * DriveRates.PulleyWidth;
    private const double Limited = 0.995;

    // A belt at rest that only swings on its strands has not started again.
    private const double StirsAgain = 10;

    private Signs SignsOf(int lane, ref DriveWork<T> work, ReadOnlySpan<double> of) =>
        new(
            Math.Abs(Cells.Of(ref work.GrippingPull)[lane]) > Cells.Of(ref work.LargestPull)[lane],
            Math.Abs(Cells.Of(ref work.PulleySliding)[lane]) > PulleySlips,
            Math.Abs(of[(DriveStates.Current * T.Width) + lane]) > Limited * cases[lane].Numbers.CurrentLimit,
            Math.Abs(of[(DriveStates.Belt * T.Width) + lane]) < (signs[lane].Rests ? StirsAgain : 1) * DriveCase.AtRest
        );

    private bool End(int lane, double time, FailureReason reason)
    {
        running[lane] = false;
        DriveRecord record = cases[lane].Record;
        record.Failure = reason;
        record.ReachedTime = time;
        for (int i = 0; i < DriveStates.Count; i++)
        {
            record.ReachedState[i] = Cells.Of(state)[(i * T.Width) + lane];
        }

        return true;
    }

    private FailureReason Failed(int lane)
    {
        for (int i = 0; i < DriveStates.Count; i++)
        {
            if (!double.IsFinite(Cells.Of(next)[(i * T.Width) + lane]))
            {
                return FailureReason.NotFinite;
            }
        }

        return FailureReason.StepTooSmall;
    }

    private double Least(ref T time)
    {
        double least = double.PositiveInfinity;
        for (int lane = 0; lane < cases.Length; lane++)
        {
            least = Math.Min(least, Cells.Of(ref time)[lane]);
        }

        return least;
    }

    /// <summary>The end of the step, with its rates, is the beginning of the next one.</summary>
    private void Take(int lane)
    {
        Span<double> to = Cells.Of(state);
        Span<double> toRates = Cells.Of(first);
        ReadOnlySpan<double> from = Cells.Of(next);
        ReadOnlySpan<double> fromRates = Cells.Of(atNext);
        for (int at = lane; at < to.Length; at += T.Width)
        {
            to[at] = from[at];
            toRates[at] = fromRates[at];
        }
    }

    private void Put(int lane, ReadOnlySpan<double> plain)
    {
        Span<double> to = Cells.Of(state);
        for (int i = 0; i < plain.Length; i++)
        {
            to[(i * T.Width) + lane] = plain[i];
        }
    }

    private void PutNumbers(int lane, DriveNumbers<Real> numbers)
    {
        Span<double> to = Cells.Of(NumbersAccess.Fields<DriveNumbers<T>, T>(ref system.Numbers));
        Span<Real> from = NumbersAccess.Fields<DriveNumbers<Real>, Real>(ref numbers);
        for (int i = 0; i < from.Length; i++)
        {
            to[(i * T.Width) + lane] = from[i];
        }
    }

    private void PutFeet(int lane, in FeetNumbers<Real> feet)
    {
        FeetNumbers<Real> copy = feet;
        Span<double> to = Cells.Of(NumbersAccess.Fields<FeetNumbers<T>, T>(ref system.Acting));
        Span<Real> from = NumbersAccess.Fields<FeetNumbers<Real>, Real>(ref copy);
        for (int i = 0; i < from.Length; i++)
        {
            to[(i * T.Width) + lane] = from[i];
        }
    }

    /// <summary>What has its event when it changes.</summary>
    private readonly record struct Signs(bool Belt, bool Pulley, bool Limited, bool Rests);
}
