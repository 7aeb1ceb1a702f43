using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model.Transient;

/// <summary>What a run leaves: rows at even times, events, and where it ended. All room is taken before it begins.</summary>
internal sealed class DriveRecord
{
    /// <summary>Most events that are kept one by one; further ones are counted.</summary>
    internal const int MostEvents = 4096;

    private readonly double[][] columns;
    private readonly double interval;
    private readonly (double Time, DriveEventKind Kind)[] events;
    private int eventCount;

    internal DriveRecord(int rows, double interval)
    {
        this.interval = interval;
        columns = new double[DriveColumns.Count][];
        for (int i = 0; i < columns.Length; i++)
        {
            columns[i] = new double[rows];
        }

        events = GC.AllocateUninitializedArray<(double, DriveEventKind)>(MostEvents);
    }

    /// <summary>Rows filled.</summary>
    internal int Rows { get; private set; }

    /// <summary>Events that happened, also those not kept.</summary>
    internal int EventCount => eventCount;

    /// <summary>Events that were kept.</summary>
    internal ReadOnlySpan<(double Time, DriveEventKind Kind)> Events =>
        events.AsSpan(0, Math.Min(eventCount, MostEvents));

    /// <summary>Steps taken.</summary>
    internal int Steps { get; set; }

    /// <summary>Steps tried and taken back.</summary>
    internal int Rejected { get; set; }

    /// <summary>Why the run did not reach its end.</summary>
    internal FailureReason Failure { get; set; }

    /// <summary>Time reached [s].</summary>
    internal double ReachedTime { get; set; }

    /// <summary>States there.</summary>
    internal double[] ReachedState { get; } = new double[DriveStates.Count];

    internal ReadOnlySpan<double> Column(int index) => columns[index].AsSpan(0, Rows);

    /// <summary>Time of the next row [s]; endless once all rows are filled.</summary>
    internal double NextRow => Rows < columns[0].Length ? Rows * interval : double.PositiveInfinity;

    internal double TimeOf(int row) => row * interval;

    internal void Add(double time, DriveEventKind kind)
    {
        if (eventCount < MostEvents)
        {
            events[eventCount] = (time, kind);
        }

        eventCount++;
    }

    internal void AddRow(
        in DriveNumbers<Real> numbers,
        ReadOnlySpan<Real> state,
        in LoadNumbers<Real> loads,
        in DriveWork<Real> work
    )
    {
        int row = Rows;
        for (int i = 0; i < DriveStates.Count; i++)
        {
            columns[i][row] = state[i];
        }

        Real half = 0.5 * work.Pull;
        Real mean = work.MeanTension + work.CentrifugalTension;
        columns[DriveColumns.SetSpeed][row] = loads.SetSpeed;
        columns[DriveColumns.FaceSpeed][row] = work.FaceSpeed;
        columns[DriveColumns.Pull][row] = work.Pull;
        columns[DriveColumns.Load][row] = work.Load;
        columns[DriveColumns.Slack][row] = mean - half;
        columns[DriveColumns.Tight][row] = mean + half;
        columns[DriveColumns.LargestPull][row] = work.LargestPull;
        columns[DriveColumns.Sliding][row] = work.Sliding;
        columns[DriveColumns.DriveBeltForce][row] = work.DriveBeltForce;
        columns[DriveColumns.PulleySliding][row] = work.PulleySliding;
        columns[DriveColumns.Voltage][row] = work.Voltage;
        columns[DriveColumns.Normal][row] = loads.Normal;
        columns[DriveColumns.Stored][row] = Stored(in numbers, state);
        columns[DriveColumns.Slips][row] = Math.Abs(work.GrippingPull) > work.LargestPull ? 1 : 0;
        Rows++;
    }

    /// <summary>Energy stored in speeds, strands and field [J].</summary>
    internal static double Stored(in DriveNumbers<Real> numbers, ReadOnlySpan<Real> state) =>
        TransientLaws.MovingEnergy(numbers.Mass, state[DriveStates.Belt])
        + TransientLaws.TurningEnergy(numbers.RollerInertia, state[DriveStates.Roller])
        + TransientLaws.TurningEnergy(numbers.MotorInertia, state[DriveStates.Motor])
        + TransientLaws.StrandEnergy(numbers.StrandStiffness, state[DriveStates.Stretch])
        + TransientLaws.FieldEnergy(numbers.Inductance, state[DriveStates.Current]);
}
