using System.Numerics;
using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;
using TreadmillMech.Numbers.Integration;

namespace TreadmillMech.Model.Transient;

/// <summary>Takes one machine through its run, or up to eight side by side, each with its own time and its own steps.</summary>
/// <typeparam name="T"><see cref="Real"/> for one, <see cref="Lanes"/> for eight.</typeparam>
/// <remarks>All room is taken before the first step; the steps allocate nothing.</remarks>
[SkipLocalsInit]
internal sealed partial class DriveRunner<T>
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
    private readonly AlignedRow<DriveSystem<T>> drive = new(1);
    private AlignedRow<T> state = new(DriveStates.Count);
    private AlignedRow<T> next = new(DriveStates.Count);
    private readonly AlignedRow<T> error = new(DriveStates.Count);
    private AlignedRow<T> first = new(DriveStates.Count);
    private AlignedRow<T> atNext = new(DriveStates.Count);
    private readonly Real[] inside = new Real[DriveStates.Count];
    private readonly Real[] insideRates = new Real[DriveStates.Count];
    private readonly double[] absolute = new double[DriveStates.Count];
    private T wanted;
    private T edges = double.PositiveInfinity;
    private T rows = double.PositiveInfinity;
    private T errorBefore = 0;
    private T sizeBefore = 0;
    private T taken = 0;
    private T takenBack = 0;
    private T currentLimits = double.PositiveInfinity;

    // A bit for each case.
    private uint running;
    private uint standing;
    private uint starting;
    private uint retried;
    private DriveSigns signs;
    private bool moved = true;

    internal DriveRunner(ReadOnlySpan<DriveCase> cases)
    {
        this.cases = cases.ToArray();
        ref DriveSystem<T> system = ref drive.First;
        system = new(cases[0].Kinds);
        step = new(system.Count, system.Coupled);
        running = (1u << cases.Length) - 1;
        wanted = FirstStep;
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
                Cells.Of(ref currentLimits)[lane] = of.Numbers.CurrentLimit;
                Cells.Of(ref rows)[lane] = of.Record.NextRow;
                ReadEdge(lane);
            }

            Put(lane, plain, Cells.Of(state));
            PutNumbers(lane, of.Numbers);
            PutFeet(lane, of.Acting);
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
                left -= Endless(ref time);
                cancellation.ThrowIfCancellationRequested();
                progress?.Report(Least(ref time));
            }
        }

        progress?.Report(Least(ref time));
    }

    private int Endless(ref T time)
    {
        uint endless = running & Cells.Less(MostSteps, taken + takenBack);
        int ended = BitOperations.PopCount(endless);
        for (; endless != 0; endless &= endless - 1)
        {
            int lane = BitOperations.TrailingZeroCount(endless);
            End(lane, Cells.Of(ref time)[lane], FailureReason.TooManySteps);
        }

        return ended;
    }

    /// <summary>Tries one step of every case; answers how many cases ended in it.</summary>
    internal int Advance(ref T time)
    {
        T room = edges - time;

        // Two even steps to the edge rather than a long one and a stub.
        T size = T.IfLess(wanted, room, T.Min(wanted, 0.5 * T.Max(room, wanted)), room);

        // Where no case has moved since the last step its slopes still hold.
        ref DriveSystem<T> system = ref drive.First;
        step.Take(ref system, time, size, state.All, first.All, next.All, error.All, !moved);
        system.LookAtEnd(next.All, atNext.All, out DriveWork<T> atEnd);
        T errors = StepControl.Size<T>(error.All, state.All, next.All, absolute, cases[0].Plan.Tolerance);
        uint rejected = running & Cells.Less<T>(1, errors);
        uint accepted = running & ~rejected;
        T end = Cells.Pick(~Cells.Less(size, room), edges, time + size);
        DriveSigns after = SignsOf(in atEnd, next.All);
        Watch(ref time, ref size, ref end, in after, ref accepted);
        uint landed = accepted & ~Cells.Less(size, room);
        signs = signs.With(accepted, in after);
        time = Cells.Pick(accepted, end, time);
        Take(accepted);
        Choose(size, errors, accepted, rejected, landed);
        moved = accepted != 0;
        int ended = Failures(ref time, rejected);
        return landed == 0 && (starting & accepted) == 0 ? ended : ended + Pass(ref time, accepted, landed);
    }

    /// <summary>Sizes of the next steps.</summary>
    private void Choose(T size, T errors, uint accepted, uint rejected, uint landed)
    {
        T factor = StepControl.Next(errors, errorBefore, size, sizeBefore);
        factor = Cells.Pick(retried, T.Min(factor, 1), factor);
        T onwards = size * factor;

        // A step cut short by its edge says little about the next.
        onwards = Cells.Pick(landed, T.Max(onwards, wanted), onwards);
        wanted = Cells.Pick(rejected, size * StepControl.Again(errors), Cells.Pick(accepted, onwards, wanted));
        errorBefore = Cells.Pick(accepted, errors, errorBefore);
        sizeBefore = Cells.Pick(accepted, size, sizeBefore);
        retried = (retried & ~accepted) | rejected;
        taken += Cells.Pick<T>(accepted, 1, 0);
        takenBack += Cells.Pick<T>(rejected, 1, 0);
    }

    private int Failures(ref T time, uint rejected)
    {
        uint stuck = rejected & Cells.Less(wanted, LeastStep * T.Max(1, time));
        int ended = BitOperations.PopCount(stuck);
        for (; stuck != 0; stuck &= stuck - 1)
        {
            int lane = BitOperations.TrailingZeroCount(stuck);
            End(lane, Cells.Of(ref time)[lane], Failed(lane));
        }

        return ended;
    }

    /// <summary>Passes the edges that were reached.</summary>
    private int Pass(ref T time, uint accepted, uint landed)
    {
        int ended = 0;
        for (uint reached = landed | (starting & accepted); reached != 0; reached &= reached - 1)
        {
            int lane = BitOperations.TrailingZeroCount(reached);
            uint bit = 1u << lane;
            DriveCase of = cases[lane];
            double now = Cells.Of(ref time)[lane];
            double speed = Cells.Of(state)[(DriveStates.Belt * T.Width) + lane];
            if ((starting & bit) != 0 && of.Stands && speed >= DriveCase.StandingBelow * (1 - 1e-4))
            {
                starting &= ~bit;
                of.StartStepping(now, speed);
                Changed(lane);
            }

            if ((landed & bit) == 0)
            {
                continue;
            }

            if (now >= of.Plan.Duration)
            {
                End(lane, now, FailureReason.None);
                ended++;
                continue;
            }

            of.Cross(now, speed);
            Changed(lane);
        }

        drive.First.ActingChanged();
        drive.First.Rates(time, state.All, first.All);
        return ended;
    }

    private void Changed(int lane)
    {
        PutFeet(lane, cases[lane].Acting);
        ReadEdge(lane);

        // Forces bend at an edge: begin carefully, without looking back.
        Cells.Of(ref wanted)[lane] = Math.Min(Cells.Of(ref wanted)[lane], AfterEdge);
        Cells.Of(ref sizeBefore)[lane] = 0;
    }

    private void ReadEdge(int lane)
    {
        Cells.Of(ref edges)[lane] = cases[lane].Edge;
        uint bit = 1u << lane;
        standing = cases[lane].Stands ? standing | bit : standing & ~bit;
    }

    private void First(T time)
    {
        drive.First.Look(time, state.All, first.All, out DriveWork<T> work);
        signs = SignsOf(in work, state.All);
        for (int lane = 0; lane < cases.Length; lane++)
        {
            Inside(lane, 0, 0, 0);
        }
    }

    private void End(int lane, double time, FailureReason reason)
    {
        running &= ~(1u << lane);
        Cells.Of(ref edges)[lane] = double.PositiveInfinity;
        DriveRecord record = cases[lane].Record;
        record.Failure = reason;
        record.ReachedTime = time;
        record.Steps = (int)Cells.Of(ref taken)[lane];
        record.Rejected = (int)Cells.Of(ref takenBack)[lane];
        for (int i = 0; i < DriveStates.Count; i++)
        {
            record.ReachedState[i] = Cells.Of(state)[(i * T.Width) + lane];
        }
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
    private void Take(uint accepted)
    {
        if (accepted == (1u << T.Width) - 1)
        {
            (state, next) = (next, state);
            (first, atNext) = (atNext, first);
            return;
        }

        for (int i = 0; i < DriveStates.Count; i++)
        {
            state[i] = Cells.Pick(accepted, next[i], state[i]);
            first[i] = Cells.Pick(accepted, atNext[i], first[i]);
        }
    }

    private void PutNumbers(int lane, DriveNumbers<Real> numbers) =>
        Put(
            lane,
            Cells.Of(NumbersAccess.Fields<DriveNumbers<Real>, Real>(ref numbers)),
            Cells.Of(NumbersAccess.Fields<DriveNumbers<T>, T>(ref drive.First.Numbers))
        );

    private void PutFeet(int lane, FeetNumbers<Real> feet) =>
        Put(
            lane,
            Cells.Of(NumbersAccess.Fields<FeetNumbers<Real>, Real>(ref feet)),
            Cells.Of(NumbersAccess.Fields<FeetNumbers<T>, T>(ref drive.First.Acting))
        );

    private static void Put(int lane, ReadOnlySpan<double> from, Span<double> to)
    {
        for (int i = 0; i < from.Length; i++)
        {
            to[(i * T.Width) + lane] = from[i];
        }
    }
}
