using System.Reflection;
using System.Text.RegularExpressions;
using TreadmillMech.Service;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Tests.Service;

/// <summary>
/// Every limit that decides stands beside the finding that it decided: each is moved in turn, and a finding that comes,
/// goes or changes by it must name it, with its source.
/// </summary>
public sealed partial class LimitsOnTheSheetTests
{
    /// <summary>Uncertainties, priors and habits of reading: they move numbers, they decide nothing by themselves.</summary>
    [GeneratedRegex(
        "^(Prior|Meter|Scale|Lift|Given|Oily|CleanRoller|Serviced|BeltDrag|Standby|BrushDrop|LoadWhile|SpanPitch|SlipMargin"
            + "|Observed|CoastDown|Earlier|DriveEfficiency|WatchTime|Plate|LeastForce|LeastCurrent|LeastPower|FineEnough"
            + "|WorthReading|WindingOver|ShortestInterval|LongestInterval|FrictionWork)|Spread$"
    )]
    private static partial Regex NotALimit();

    private static readonly Visit[] Seen =
    [
        Visits.Make(Machines.Plain, Visits.ReadyToTurn),
        Visits.Make(Machines.Plain, [.. Visits.ReadyToTurn, Happened.Turned(0.25), Happened.Holds]),
        Visits.Make(Machines.Plain, [Happened.RollerDry, Happened.Slips, Happened.Turned(2), Happened.Slips]),
        Visits.Make(Machines.Plain, [Happened.SpeedsEmpty(), Happened.SpeedsUnder(0.03, 0)]),
        Visits.Make(Machines.Plain, [Happened.SpeedsEmpty(), Happened.SpeedsUnder(0.03, 0), Happened.Slips]),
        Visits.Make(Machines.Plain, [Happened.Pull(0.35)]),
        Visits.Make(Machines.Plain, [Happened.Pull(0.2)]),
        Visits.Make(
            Machines.Plain,
            [Happened.Pull(0.35), Happened.Cleaned(CleanedPlace.Deck), Happened.Oiled(15), Happened.Pull(0.28)]
        ),
        Visits.Make(Machines.Plain, [Happened.Mains(LoadState.Loaded, 13)]),
        Visits.Make(Machines.Plain, [Happened.Drift(4, 20)]),
        Visits.Make(
            Machines.Plain,
            [
                new SpeedReading
                {
                    State = LoadState.Unloaded,
                    Belt = Speed.FromMetersPerSecond(2.8),
                    Motor = RotationalSpeed.FromRadiansPerSecond(345),
                    DriveRoller = RotationalSpeed.FromRadiansPerSecond(107),
                    Display = Speed.FromMetersPerSecond(3),
                },
            ]
        ),
        Visits.Make(
            Machines.Plain,
            [new InclineReading { Measured = Ratio.FromPercent(5), Display = Ratio.FromPercent(6.5) }]
        ),
        Visits.Make(Machines.Plain, [Warm(WarmPlace.TailRollerBearing, 45), Warm(WarmPlace.MainsPlug, 40)]),
        Visits.Make(Machines.Plain, [Warm(WarmPlace.MotorCase, 80)]),
        Visits.Make(Machines.Known, [Happened.RollerDry]),
        Visits.Make(
            Machines.Plain,
            [Happened.Motor(LoadState.Unloaded, 5, 2), Happened.Motor(LoadState.Loaded, 3, 2.04)]
        ),
        Visits.Make(Machines.Plain, [Happened.Lift(30, 60), Happened.Lift(30, 190)]),
    ];

    public static TheoryData<string> Limits =>
        [
            .. typeof(VisitOptions)
                .GetProperties(BindingFlags.Public | BindingFlags.Instance)
                .Where(static p => p.PropertyType == typeof(Threshold) && !NotALimit().IsMatch(p.Name))
                .Select(static p => p.Name),
        ];

    [Theory]
    [MemberData(nameof(Limits))]
    public void AFindingNamesWhatDecidedIt(string name)
    {
        PropertyInfo property = typeof(VisitOptions).GetProperty(name)!;
        Threshold usual = (Threshold)property.GetValue(VisitOptions.Default)!;
        Assert.False(string.IsNullOrWhiteSpace(usual.Source));
        foreach (double factor in (double[])[0.4, 0.7, 1.5, 3])
        {
            if (Changed(property, usual, factor * usual.Value) is not { } options)
            {
                continue;
            }

            foreach (Visit visit in Seen)
            {
                Finding[] before = [.. Judged(visit, VisitOptions.Default)];
                Finding[] after = [.. Judged(visit, options)];
                Finding[] moved =
                [
                    .. before.Where(f => !after.Any(o => Same(f, o))),
                    .. after.Where(f => !before.Any(o => Same(f, o))),
                ];
                Assert.True(
                    moved.Length == 0
                        || moved.Any(f => f.Limits.Any(l => l.Name == usual.Name && l.Source == usual.Source)),
                    $"{name} x {factor}: {string.Join(" | ", moved.Select(f => f.Statement))}"
                );
            }
        }
    }

    /// <summary>What readings together say of each other goes by priors too; it names its own limit.</summary>
    private static IEnumerable<Finding> Judged(Visit visit, VisitOptions options) =>
        VisitReview
            .Of(visit, options)
            .Findings.Where(static f =>
                !f.Statement.StartsWith("Readings contradict", StringComparison.Ordinal)
                && !f.Statement.StartsWith("The readings together", StringComparison.Ordinal)
            );

    private static bool Same(Finding one, Finding other) =>
        one.Statement == other.Statement && one.Severity == other.Severity && one.Next?.Action == other.Next?.Action;

    private static VisitOptions? Changed(PropertyInfo property, Threshold usual, double value)
    {
        VisitOptions options = VisitOptions.Default with { };
        try
        {
            property.SetValue(options, usual with { Value = value });
        }
        catch (TargetInvocationException e) when (e.InnerException is ArgumentException)
        {
            return null;
        }

        return options;
    }

    private static TemperatureReading Warm(WarmPlace place, double rise) =>
        new()
        {
            Place = place,
            Temperature = Temperature.FromDegreesCelsius(20 + rise),
            Air = Temperature.FromDegreesCelsius(20),
        };
}
