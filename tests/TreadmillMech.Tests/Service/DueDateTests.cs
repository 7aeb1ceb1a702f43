using TreadmillMech.Service;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Tests.Service;

public sealed class DueDateTests
{
    private static readonly DateOnly Today = new(2026, 7, 1);

    private static Visit Visit(params VisitEvent[] events) =>
        Visits.Make(Machines.Plain, events) with
        {
            Day = Today,
            Earlier =
            [
                new()
                {
                    Day = Today.AddDays(-200),
                    DeckFriction = 0.16,
                    FrictionUncertainty = 0.004,
                    Serviced = true,
                },
                new()
                {
                    Day = Today.AddDays(-100),
                    DeckFriction = 0.18,
                    FrictionUncertainty = 0.004,
                },
            ],
        };

    // By hand: 0.16, 0.18 and 0.20 at days -200, -100 and 0 lie on a line of 0.0002 a day, which reaches 0.25 on day 250.
    [Fact]
    public void TheTrendReachesItsLimitOnADay()
    {
        DueDate due = Due(Visit(Happened.Pull(0.2)));
        Assert.Equal(Today.AddDays(250), due.ByTrend.Value);
        Assert.True(due.GrowthInAYear.Is(out Figure? growth));
        Assert.Equal(0.0002 * 365.25, growth.Value, 1e-9);
        (DateOnly first, DateOnly last) = due.TrendBounds.Value;
        Assert.True(first < due.ByTrend.Value && due.ByTrend.Value < last);
        Assert.Equal((Today.AddDays(-200 + 182), Today.AddDays(-200 + 365)), due.CommonPractice);
    }

    [Fact]
    public void TheBoundsArePropagatedFromTheReadings()
    {
        DueDate due = Due(Visit(Happened.Pull(0.2)));
        (double day, double sigma) = ByHand([-200, -100, 0], [0.16, 0.18, 0.2], [0.004, 0.004, Uncertainty()], 0.25);
        (DateOnly first, DateOnly last) = due.TrendBounds.Value;
        Assert.Equal(day - (2 * sigma), first.DayNumber - Today.DayNumber, 1.0);
        Assert.Equal(day + (2 * sigma), last.DayNumber - Today.DayNumber, 1.0);
    }

    [Fact]
    public void AFrictionThatFallsIsNeverDueByTrend()
    {
        DueDate due = Due(Visit(Happened.Pull(0.12)));
        Assert.Equal(Reason.NotInRange, due.ByTrend.Missing.Why);
        Assert.Equal(due.CommonPractice.Last, due.First);
    }

    [Fact]
    public void WithoutADayThereIsNoDate() =>
        Assert.Equal("Day", VisitReview.Of(Visit(Happened.Pull(0.2)) with { Day = null }).Due.Missing.About);

    // Work each day 0.2 * 80 * 9.80665 * 2.5 * 1800 / (2.8555 * 0.45) = 0.5495 MJ/m2; 150 MJ/m2 last 272.98 days.
    [Fact]
    public void UseTellsADayToo()
    {
        DueDate due = Due(
            Visit(Happened.Pull(0.2)) with
            {
                Usage = new()
                {
                    EachDay = Duration.FromMinutes(30),
                    MeanMass = Mass.FromKilograms(80),
                    MeanSpeed = Speed.FromMetersPerSecond(2.5),
                },
            }
        );
        Assert.Equal(Today.AddDays(-200 + 272), due.ByUse.Value);

        // From 0.02 above 0.18 today, growing by 0.0002 a day for a year: above it by 0.02 + 0.0002 * 365.25/2 in the mean.
        double above = 0.02 + (0.5 * 0.0002 * 365.25);
        Assert.True(due.EnergyOfWaitingAYear.Is(out Energy energy));
        Assert.Equal(above * 80 * 9.80665 * 2.5 * 1800 * 365.25 / 0.65, energy.Joules, 1e-3 * energy.Joules);

        // Friction work goes with friction: 0.18 of it, and that with the mean excess, over the belt's area in MJ/m2.
        double work = 80 * 9.80665 * 2.5 * 1800 * 365.25 / (2.8555 * 0.45) / 1e6;
        Assert.Equal(0.18 * work, due.WorkOfAServedYear.Value.Value, 1e-3 * work);
        Assert.Equal((0.18 + above) * work, due.WorkOfWaitingAYear.Value.Value, 1e-3 * work);
    }

    [Fact]
    public void AServiceStartsTheLineAnew()
    {
        DueDate due = Due(
            Visit(Happened.Pull(0.2), Happened.Cleaned(CleanedPlace.Deck), Happened.Oiled(15), Happened.Pull(0.15))
        );

        // From 0.15 at 0.0002 a day: 500 days.
        Assert.Equal(Today.AddDays(500), due.ByTrend.Value);
        Assert.Equal(Today.AddDays(182), due.CommonPractice.First);
        Assert.Equal(due.CommonPractice.Last, due.First);
    }

    [Fact]
    public void VisitsOutOfOrderAreRefused()
    {
        ArgumentException error = Assert.Throws<ArgumentException>(() =>
            Visits.Make(Machines.Plain) with
            {
                Earlier = [new() { Day = Today }, new() { Day = Today.AddDays(-1) }],
            }
        );
        Assert.Contains("2026-06-30", error.Message, StringComparison.Ordinal);
    }

    private static DueDate Due(Visit visit)
    {
        Assert.True(VisitReview.Of(visit).Due.Is(out DueDate? due));
        return due;
    }

    private static double Uncertainty()
    {
        double loaded = 25 + (0.2 * 60 * 9.80665);
        return 0.02 * Math.Sqrt((loaded * loaded) + (25 * 25)) / (60 * 9.80665);
    }

    /// <summary>Weighted line through three points by the normal equations, and its crossing with a limit.</summary>
    private static (double Day, double Sigma) ByHand(double[] x, double[] y, double[] u, double limit)
    {
        double[] w = [.. u.Select(v => 1 / (v * v))];
        double s = w.Sum();
        double sx = w.Zip(x, (a, b) => a * b).Sum();
        double sy = w.Zip(y, (a, b) => a * b).Sum();
        double sxx = w.Zip(x, (a, b) => a * b * b).Sum();
        double sxy = w.Zip(x.Zip(y, (a, b) => a * b), (a, b) => a * b).Sum();
        double d = (s * sxx) - (sx * sx);
        double slope = ((s * sxy) - (sx * sy)) / d;
        double at = ((sxx * sy) - (sx * sxy)) / d;
        double day = (limit - at) / slope;
        double variance = ((sxx - (2 * day * sx) + (day * day * s)) / d) / (slope * slope);
        return (day, Math.Sqrt(variance));
    }
}
