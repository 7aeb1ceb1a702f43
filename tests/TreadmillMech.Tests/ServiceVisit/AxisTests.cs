using TreadmillMech.Samples.ServiceVisit.Charts;

namespace TreadmillMech.Tests.ServiceVisit;

/// <summary>Axes hold their values and carry round numbers.</summary>
public sealed class AxisTests
{
    [Theory]
    [InlineData(0, 1, "0.0 0.2 0.4 0.6 0.8 1.0")]
    [InlineData(0, 1.41, "0.0 0.5 1.0 1.5")]
    [InlineData(0, 967, "0 200 400 600 800 1000")]
    [InlineData(-2, 2, "-2 -1 0 1 2")]
    [InlineData(0.15, 0.33, "0.15 0.20 0.25 0.30 0.35")]
    [InlineData(0, 0, "0.0 0.2 0.4 0.6 0.8 1.0")]
    [InlineData(3, 3, "0 2 4 6")]
    public void NumbersAreRound(double from, double to, string labels)
    {
        Axis axis = Axis.OfNumbers([from, to]);
        Assert.Equal(labels, string.Join(' ', axis.Ticks.Select(static t => t.Label)));
        Assert.InRange(from, axis.From - 1e-12, axis.To);
        Assert.InRange(to, axis.From, axis.To + 1e-12);
    }

    [Fact]
    public void AnyRangeIsHeldByAFewMarks()
    {
        Random random = new(31);
        for (int i = 0; i < 2000; i++)
        {
            double from = (random.NextDouble() - 0.5) * Math.Pow(10, random.Next(-4, 7));
            double to = from + (random.NextDouble() * Math.Pow(10, random.Next(-4, 7)));
            Axis axis = Axis.OfNumbers([to, from, double.NaN, double.PositiveInfinity]);
            double slack = 1e-6 * (axis.To - axis.From);
            Assert.InRange(from, axis.From - slack, axis.To + slack);
            Assert.InRange(to, axis.From - slack, axis.To + slack);
            Assert.InRange(axis.Ticks.Count, 2, 9);
        }
    }

    [Fact]
    public void WithoutValuesThereIsStillAnAxis()
    {
        Axis axis = Axis.OfNumbers([]);
        Assert.Equal((0, 1), (axis.From, axis.To));
    }

    [Theory]
    [InlineData("2026-03-14", "2026-03-14", "2026-03 2026-04")]
    [InlineData("2026-01-01", "2026-04-20", "2026-01 2026-02 2026-03 2026-04 2026-05")]
    [InlineData("2024-04-20", "2026-03-14", "2024-07 2025-01 2025-07 2026-01")]
    [InlineData("1950-01-01", "2199-12-31", "2000-01 2100-01 2200-01")]
    public void DaysAreMarkedAtTheFirstOfAMonth(string from, string to, string labels)
    {
        DateOnly first = DateOnly.ParseExact(from, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
        DateOnly last = DateOnly.ParseExact(to, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
        Axis axis = DayAxis.Of([last, first]);
        Assert.Equal(labels, string.Join(' ', axis.Ticks.Select(static t => t.Label)));
        Assert.InRange(first.DayNumber, axis.From, axis.To);
        Assert.InRange(last.DayNumber, axis.From, axis.To);
        Assert.All(axis.Ticks, t => Assert.InRange(t.At, axis.From, axis.To));
    }
}
