using System.Globalization;
using TreadmillMech.Model.Transient;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech;

/// <summary>A run of a machine: its series, its events and what they amount to.</summary>
public sealed class DriveRun
{
    private readonly DriveKinds kinds;

    internal DriveRun(DriveRecord record, in DriveKinds kinds)
    {
        Record = record;
        this.kinds = kinds;
        DriveEvent[] all = new DriveEvent[record.Events.Length];
        for (int i = 0; i < all.Length; i++)
        {
            (double time, DriveEventKind kind) = record.Events[i];
            all[i] = new(Si.Duration.FromSi(time), kind);
        }

        // A step may hold two events, found in the order of their kinds.
        Events = [.. all.OrderBy(e => Si.Duration.ToSi(e.Time))];
    }

    /// <summary>The columns of the series, in the order of the export.</summary>
    public static IReadOnlyList<DriveColumn> Columns { get; } =
    [
        new("time", "s", "Time") { Index = -1 },
        new("belt speed", "m/s", "Belt speed") { Index = DriveStates.Belt },
        new("set speed", "m/s", "Set speed of the controller") { Index = DriveColumns.SetSpeed },
        new("roller speed", "rad/s", "Speed of the drive roller") { Index = DriveStates.Roller },
        new("motor speed", "rad/s", "Speed of the motor") { Index = DriveStates.Motor },
        new("stretch", "m", "Stretch of the strands") { Index = DriveStates.Stretch },
        new("pull", "N", "Pull of the drive roller on the belt") { Index = DriveColumns.Pull },
        new("load", "N", "Sum of the loads on the belt") { Index = DriveColumns.Load },
        new("largest pull", "N", "Largest pull by friction") { Index = DriveColumns.LargestPull },
        new("slack tension", "N", "Tension of the slack side") { Index = DriveColumns.Slack },
        new("tight tension", "N", "Tension of the tight side") { Index = DriveColumns.Tight },
        new("sliding", "m/s", "Speed of the roller's face above the belt, beyond creep")
        {
            Index = DriveColumns.Sliding,
        },
        new("slips", "1", "1 while the running belt slides, otherwise 0") { Index = DriveColumns.Slips },
        new("drive belt force", "N", "Force of the drive belt") { Index = DriveColumns.DriveBeltForce },
        new("pulley sliding", "m/s", "Speed of the motor's pulley above the roller's, creep included")
        {
            Index = DriveColumns.PulleySliding,
        },
        new("current", "A", "Armature current") { Index = DriveStates.Current },
        new("voltage", "V", "Voltage at the motor's terminals") { Index = DriveColumns.Voltage },
        new("normal force", "N", "Normal force of both feet") { Index = DriveColumns.Normal },
        new("travel", "m", "Distance the belt has run") { Index = DriveStates.Travel },
        new("slide", "m", "Distance the roller's face has slid") { Index = DriveStates.Slide },
        new("supplied", "J", "Energy taken from the controller") { Index = DriveStates.Supplied },
        new("lost", "J", "Energy turned into heat") { Index = DriveStates.Lost },
        new("given", "J", "Energy given to the user") { Index = DriveStates.Given },
        new("stored", "J", "Energy in speeds, strands and field") { Index = DriveColumns.Stored },
        new("winding", "deg C", "Temperature of the winding") { Index = DriveStates.Winding, OfMotorHeat = true },
        new("magnets", "deg C", "Temperature of magnets and housing")
        {
            Index = DriveStates.Magnet,
            OfMotorHeat = true,
        },
        new("belt", "deg C", "Temperature of the running belt") { Index = DriveStates.BeltHeat, OfDeckHeat = true },
        new("deck", "deg C", "Temperature of the deck") { Index = DriveStates.DeckHeat, OfDeckHeat = true },
    ];

    /// <summary>Number of rows.</summary>
    public int Count => Record.Rows;

    /// <summary>Whether the run reached its end.</summary>
    public bool Complete => Record.Failure == FailureReason.None;

    /// <summary>Why it did not; null where it did. What was computed up to there is in the series.</summary>
    public DriveFailure? Failure =>
        Complete
            ? null
            : new(
                Record.Failure,
                Si.Duration.FromSi(Record.ReachedTime),
                Si.Speed.FromSi(Finite(DriveStates.Belt)),
                Si.RotationalSpeed.FromSi(Finite(DriveStates.Roller)),
                Si.RotationalSpeed.FromSi(Finite(DriveStates.Motor)),
                Si.Current.FromSi(Finite(DriveStates.Current))
            );

    /// <summary>Events in the order of time; the first 4096 of them.</summary>
    public IReadOnlyList<DriveEvent> Events { get; }

    /// <summary>Events that happened, also those beyond the first 4096.</summary>
    public int EventCount => Record.EventCount;

    /// <summary>Steps the integration took.</summary>
    public int Steps => Record.Steps;

    /// <summary>Steps it tried and took back.</summary>
    public int RejectedSteps => Record.Rejected;

    internal DriveRecord Record { get; }

    /// <summary>A row of the series.</summary>
    /// <param name="row">The row, from 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such row.</exception>
    public DriveSample this[int row]
    {
        get
        {
            ArgumentOutOfRangeException.ThrowIfNegative(row);
            ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(row, Count);
            return new(this, row);
        }
    }

    /// <summary>The numbers of a column in its SI unit; NaN where a temperature is not known.</summary>
    /// <param name="column">One of <see cref="Columns"/>.</param>
    /// <exception cref="ArgumentNullException">The column is null.</exception>
    public double[] Values(DriveColumn column)
    {
        ArgumentNullException.ThrowIfNull(column);
        double[] values = new double[Count];
        for (int row = 0; row < values.Length; row++)
        {
            values[row] = Known(column) ? Value(column, row) : double.NaN;
        }

        return values;
    }

    /// <summary>What the whole run amounts to.</summary>
    public DriveSummary Summary() => Summed(0, Count - 1);

    /// <summary>What a stretch of the run amounts to.</summary>
    /// <param name="from">Its beginning; the row at or after it counts.</param>
    /// <param name="to">Its end; the row at or before it counts.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than two rows lie between.</exception>
    public DriveSummary Summary(Duration from, Duration to)
    {
        double interval = Record.TimeOf(1);
        int first = (int)Math.Ceiling(Math.Clamp((Si.Duration.ToSi(from) / interval) - 1e-9, 0, Count));
        int last = (int)Math.Floor(Math.Clamp((Si.Duration.ToSi(to) / interval) + 1e-9, 0, Count - 1));
        return last > first
            ? Summed(first, last)
            : throw new ArgumentOutOfRangeException(
                nameof(to),
                $"to: fewer than two rows lie between {Si.Duration.Text(Si.Duration.ToSi(from))} and {Si.Duration.Text(Si.Duration.ToSi(to))}."
            );
    }

    /// <summary>Writes the series as comma-separated text, invariant, SI units in the heading, all digits.</summary>
    /// <param name="writer">Where to.</param>
    /// <exception cref="ArgumentNullException">The writer is null.</exception>
    public void WriteCsv(TextWriter writer)
    {
        ArgumentNullException.ThrowIfNull(writer);
        DriveColumn[] known = [.. Columns.Where(Known)];
        writer.Write(string.Join(',', known.Select(column => $"{column.Name} [{column.Unit}]")));
        writer.Write('\n');
        for (int row = 0; row < Count; row++)
        {
            for (int i = 0; i < known.Length; i++)
            {
                if (i > 0)
                {
                    writer.Write(',');
                }

                writer.Write(Value(known[i], row).ToString("R", CultureInfo.InvariantCulture));
            }

            writer.Write('\n');
        }
    }

    internal Answer<Temperature> OfMotor(double temperature) =>
        kinds.MotorHeats
            ? Si.Celsius.FromSi(temperature)
            : new Shortfall(Reason.InputUnknown, nameof(DriveDynamics.MotorThermal));

    internal Answer<Temperature> OfDeck(double temperature) =>
        kinds.DeckHeats
            ? Si.Celsius.FromSi(temperature)
            : new Shortfall(Reason.InputUnknown, nameof(DriveDynamics.DeckThermal));

    private bool Known(DriveColumn column) =>
        (!column.OfMotorHeat || kinds.MotorHeats) && (!column.OfDeckHeat || kinds.DeckHeats);

    private double Value(DriveColumn column, int row) =>
        column.Index < 0 ? Record.TimeOf(row) : Record.Column(column.Index)[row];

    private double Finite(int state) => double.IsFinite(Record.ReachedState[state]) ? Record.ReachedState[state] : 0;

    private DriveSummary Summed(int first, int last)
    {
        double time = Math.Max(Record.TimeOf(last) - Record.TimeOf(first), double.Epsilon);
        double mean = Gain(DriveStates.Travel, first, last) / time;
        (double least, double most) = Extremes(DriveStates.Belt, first, last);
        (double leastCurrent, double mostCurrent) = Extremes(DriveStates.Current, first, last);
        bool runs = Math.Abs(mean) > DriveCase.AtRest;
        Shortfall stands = new(Reason.NotInRange, nameof(DriveSummary.MeanSpeed), DriveCase.AtRest, mean, "m/s");
        double supplied = Gain(DriveStates.Supplied, first, last);
        double lost = Gain(DriveStates.Lost, first, last);
        double given = Gain(DriveStates.Given, first, last);
        double stored = Gain(DriveColumns.Stored, first, last);
        double passed = Math.Abs(supplied) + lost + Math.Abs(given) + Math.Abs(stored);
        return new()
        {
            MeanSpeed = Si.Speed.FromSi(mean),
            Dip = runs ? Si.Ratio.FromSi((mean - least) / mean) : stands,
            Ripple = runs ? Si.Ratio.FromSi((most - least) / mean) : stands,
            SlipShare = Si.Ratio.FromSi(Mean(DriveColumns.Slips, first, last)),
            Slide = Si.Length.FromSi(Gain(DriveStates.Slide, first, last)),
            PulleySlide = Si.Length.FromSi(Gain(DriveStates.PulleySlide, first, last)),
            PeakPull = Si.Force.FromSi(Extremes(DriveColumns.Pull, first, last).Most),
            MeanPull = Si.Force.FromSi(Mean(DriveColumns.Pull, first, last)),
            PeakCurrent = Si.Current.FromSi(Math.Max(mostCurrent, -leastCurrent)),
            MeanCurrent = Si.Current.FromSi(Mean(DriveStates.Current, first, last)),
            RmsCurrent = Si.Current.FromSi(Math.Sqrt(Gain(DriveStates.SquareCurrent, first, last) / time)),
            Supplied = Si.Energy.FromSi(supplied),
            Lost = Si.Energy.FromSi(lost),
            GivenToUser = Si.Energy.FromSi(given),
            Stored = Si.Energy.FromSi(stored),
            Imbalance = Si.Ratio.FromSi(Math.Abs(supplied - lost - given - stored) / Math.Max(passed, 1e-3)),
            WindingTemperature = OfMotor(Record.Column(DriveStates.Winding)[last]),
            MagnetTemperature = OfMotor(Record.Column(DriveStates.Magnet)[last]),
            BeltTemperature = OfDeck(Record.Column(DriveStates.BeltHeat)[last]),
            DeckTemperature = OfDeck(Record.Column(DriveStates.DeckHeat)[last]),
        };
    }

    private double Gain(int column, int first, int last) => Record.Column(column)[last] - Record.Column(column)[first];

    /// <summary>Mean over the rows by the trapezoidal rule.</summary>
    private double Mean(int column, int first, int last)
    {
        ReadOnlySpan<double> values = Record.Column(column);
        double sum = 0;
        for (int row = first; row < last; row++)
        {
            sum += 0.5 * (values[row] + values[row + 1]);
        }

        return sum / Math.Max(1, last - first);
    }

    private (double Least, double Most) Extremes(int column, int first, int last)
    {
        double least = double.PositiveInfinity;
        double most = double.NegativeInfinity;
        foreach (double value in Record.Column(column)[first..(last + 1)])
        {
            least = Math.Min(least, value);
            most = Math.Max(most, value);
        }

        return (least, most);
    }
}
