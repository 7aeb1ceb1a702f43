using TreadmillMech.Model.Transient;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech;

/// <summary>What happens in a run: how long, at which speeds, and what comes in between.</summary>
/// <remarks>
/// The set speed is the demand's from the beginning, with the person in full gait, unless the run starts at rest.
/// </remarks>
public sealed record DrivePlan
{
    /// <summary>Length of the run, 10 ms to 1 h.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The time is outside the range.</exception>
    public required Duration Duration
    {
        get;
        init => field = Guard.Within(value, Si.Duration, 0.01, 3600);
    }

    /// <summary>Whether the machine begins at rest, with a set speed of nothing and the person standing on the belt.</summary>
    public bool StartsAtRest { get; init; }

    /// <summary>Whether nobody is on the belt.</summary>
    public bool Empty { get; init; }

    /// <summary>Changes of the set speed, in any order; a later one takes over where an earlier one has got to.</summary>
    /// <exception cref="ArgumentNullException">The list is null.</exception>
    public IReadOnlyList<SpeedChange> SpeedChanges
    {
        get;
        init => field = [.. Guard.Present(value)];
    } = [];

    /// <summary>When the safety key is pulled, 0 to 1 h; null where it stays in.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The time is outside the range.</exception>
    public Duration? KeyPulledAt
    {
        get;
        init => field = Guard.Within(value, Si.Duration, 0, 3600);
    }

    /// <summary>Steps that differ from the gait; one is taken by each foot that lands.</summary>
    /// <exception cref="ArgumentNullException">The list is null.</exception>
    public IReadOnlyList<UnusualStep> UnusualSteps
    {
        get;
        init => field = [.. Guard.Present(value)];
    } = [];

    /// <summary>Something that holds the belt; null where it runs free.</summary>
    public Jam? Jam { get; init; }

    /// <summary>Time between the rows of the series, 0.1 ms to 10 s; 5 ms where not given. It does not touch the solution.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The time is outside the range.</exception>
    public Duration Interval
    {
        get;
        init => field = Guard.Within(value, Si.Duration, 0.0001, 10);
    } = Si.Duration.FromSi(0.005);

    /// <summary>Largest error of a step over the size of each state, 1e-10 to 1e-2; 1e-5 where not given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is outside the range.</exception>
    public double Tolerance
    {
        get;
        init => field = Guard.Within(value, Si.One, 1e-10, 1e-2);
    } = 1e-5;

    /// <summary>A run at the demand's speed.</summary>
    /// <param name="duration">Its length.</param>
    public static DrivePlan Steady(Duration duration) => new() { Duration = duration };

    /// <summary>A run at the demand's speed with one change of it.</summary>
    /// <param name="duration">Its length.</param>
    /// <param name="at">When the change begins.</param>
    /// <param name="to">Where it leads.</param>
    /// <param name="rate">How fast.</param>
    public static DrivePlan Ramp(Duration duration, Duration at, Speed to, Acceleration rate) =>
        new()
        {
            Duration = duration,
            SpeedChanges =
            [
                new()
                {
                    At = at,
                    To = to,
                    Rate = rate,
                },
            ],
        };

    /// <summary>The safety key is pulled and the machine runs down.</summary>
    /// <param name="duration">Length of the run.</param>
    /// <param name="at">When the key is pulled.</param>
    public static DrivePlan CoastDown(Duration duration, Duration at) =>
        new() { Duration = duration, KeyPulledAt = at };

    /// <summary>One heavy braking step.</summary>
    /// <param name="duration">Length of the run.</param>
    /// <param name="at">The first foot that lands then or later takes it.</param>
    /// <param name="peak">Peak of its braking push in body weights.</param>
    public static DrivePlan BrakingStep(Duration duration, Duration at, double peak) =>
        new() { Duration = duration, UnusualSteps = [new() { At = at, BrakingPeak = peak }] };

    /// <summary>A stumble: one foot that brakes from strike to toe-off.</summary>
    /// <param name="duration">Length of the run.</param>
    /// <param name="at">The first foot that lands then or later.</param>
    /// <param name="peak">Peak of its braking push in body weights.</param>
    /// <param name="normalForce">Its normal force over the gait's.</param>
    public static DrivePlan Stumble(Duration duration, Duration at, double peak, double normalForce) =>
        new()
        {
            Duration = duration,
            UnusualSteps =
            [
                new()
                {
                    At = at,
                    BrakingPeak = peak,
                    NormalForce = normalForce,
                    BrakesAllAlong = true,
                },
            ],
        };

    /// <summary>The belt is held until it stalls or the holding friction is overcome.</summary>
    /// <param name="duration">Length of the run.</param>
    /// <param name="from">When it begins.</param>
    /// <param name="friction">Friction that holds it.</param>
    public static DrivePlan Stall(Duration duration, Duration from, Force friction) =>
        new()
        {
            Duration = duration,
            Jam = new() { From = from, Friction = friction },
        };

    /// <summary>A start from rest with the person standing on the belt.</summary>
    /// <param name="duration">Length of the run.</param>
    /// <param name="to">Set speed it leads to.</param>
    /// <param name="rate">How fast the set speed rises.</param>
    public static DrivePlan StandingStart(Duration duration, Speed to, Acceleration rate) =>
        Ramp(duration, Si.Duration.FromSi(0), to, rate) with
        {
            StartsAtRest = true,
        };

    /// <summary>The plan as plain numbers.</summary>
    internal PlanNumbers Numbers(double speed)
    {
        (double[] times, double[] speeds) = Knots(StartsAtRest ? 0 : speed);
        return new()
        {
            Duration = Si.Duration.ToSi(Duration),
            SetTimes = times,
            SetSpeeds = speeds,
            FromRest = StartsAtRest,
            KeyAt = KeyPulledAt is { } key ? Si.Duration.ToSi(key) : double.PositiveInfinity,
            JamFrom = Jam is null ? double.PositiveInfinity : Si.Duration.ToSi(Jam.From),
            JamUntil = Jam?.Until is { } until ? Si.Duration.ToSi(until) : double.PositiveInfinity,
            JamForce = Jam is null ? 0 : Si.Force.ToSi(Jam.Friction),
            Steps =
            [
                .. UnusualSteps
                    .Select(step => new SpecialStep(
                        Si.Duration.ToSi(step.At),
                        step.BrakingPeak ?? double.NaN,
                        step.NormalForce,
                        step.BrakesAllAlong
                    ))
                    .OrderBy(step => step.At),
            ],
            Interval = Si.Duration.ToSi(Interval),
            Tolerance = Tolerance,
        };
    }

    private (double[] Times, double[] Speeds) Knots(double start)
    {
        List<(double Time, double Speed)> knots = [(0, start)];
        foreach (SpeedChange change in SpeedChanges.OrderBy(c => Si.Duration.ToSi(c.At)))
        {
            double at = Si.Duration.ToSi(change.At);
            double speed = SpeedAt(knots, at);
            knots.RemoveAll(knot => knot.Time >= at);
            knots.Add((at, speed));
            double to = Si.Speed.ToSi(change.To);
            if (Math.Abs(to - speed) > 1e-9)
            {
                knots.Add((at + (Math.Abs(to - speed) / Si.Acceleration.ToSi(change.Rate)), to));
            }
        }

        return ([.. knots.Select(k => k.Time)], [.. knots.Select(k => k.Speed)]);
    }

    private static double SpeedAt(List<(double Time, double Speed)> knots, double time)
    {
        for (int i = knots.Count - 1; i >= 0; i--)
        {
            if (knots[i].Time <= time)
            {
                return i == knots.Count - 1
                    ? knots[i].Speed
                    : knots[i].Speed
                        + (
                            (time - knots[i].Time)
                            / (knots[i + 1].Time - knots[i].Time)
                            * (knots[i + 1].Speed - knots[i].Speed)
                        );
            }
        }

        return knots[0].Speed;
    }
}
