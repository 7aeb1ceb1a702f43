using System.Xml.Linq;
using TreadmillMech.Samples.ServiceVisit;
using TreadmillMech.Samples.ServiceVisit.Charts;
using TreadmillMech.Samples.ServiceVisit.Html;
using TreadmillMech.Service;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Tests.ServiceVisit;

/// <summary>What the charts hold, against the visits that they are drawn from.</summary>
public sealed class ChartTests
{
    private static readonly Visit DryDeck = VisitReaderTests.Read(Sample.Text(Bundled.DryDeck)).Visit;
    private static readonly VisitSheet Sheet = VisitReview.Of(DryDeck);

    [Fact]
    public void FrictionHoldsTheEarlierVisitsAndThisOneTwice()
    {
        LineChart chart = FrictionChart.Of(DryDeck, Sheet, null)!;
        Spot[] spots = [.. Assert.Single(chart.Series).Spots];
        int now = new DateOnly(2026, 3, 14).DayNumber;
        Assert.Equal(
            [
                new DateOnly(2024, 4, 20).DayNumber,
                new DateOnly(2025, 1, 11).DayNumber,
                new DateOnly(2025, 8, 23).DayNumber,
                now,
                now,
            ],
            spots.Select(static spot => (int)spot.X)
        );
        Assert.Equal([0.16, 0.22, 0.28], spots[..3].Select(static spot => spot.Y));
        Assert.Equal([0.008, 0.01, 0.012], spots[..3].Select(static spot => spot.Told!.StandardUncertainty!.Value));
        Assert.True(spots[3].Y > spots[4].Y);
        Assert.Empty(chart.Upright);
    }

    [Fact]
    public void ADueDayIsDrawnAndHeldByTheAxis()
    {
        DateOnly due = new(2026, 12, 20);
        LineChart chart = FrictionChart.Of(DryDeck, Sheet, due)!;
        Limit day = Assert.Single(chart.Upright);
        Assert.Equal(("due 2026-12-20", (double)due.DayNumber), (day.Name, day.At));
        Assert.InRange(day.At, chart.RightAxis().From, chart.RightAxis().To);
        Assert.EndsWith("due 2026-12-20.", chart.Description, StringComparison.Ordinal);
        Markup page = new();
        LinePlot.Write(page, chart);
        XElement figure = XElement.Parse(page.ToString());
        Assert.Contains(figure.Descendants("text"), static text => text.Value == "due 2026-12-20");
    }

    [Fact]
    public void OneVisitAloneIsNoHistory() => Assert.Null(FrictionChart.Of(DryDeck with { Earlier = [] }, Sheet, null));

    [Fact]
    public void WithoutADayThisVisitIsNotPlacedInTime()
    {
        LineChart chart = FrictionChart.Of(DryDeck with { Day = null }, Sheet, null)!;
        Assert.Equal(3, Assert.Single(chart.Series).Spots.Length);
    }

    [Fact]
    public void MarginsAreThoseOfTheLadderAndOfTheDriveBelt()
    {
        LineChart chart = MarginChart.Of(Sheet)!;
        Assert.Equal(["running belt", "drive belt"], chart.Series.Select(static s => s.Name));
        Assert.Equal(
            Sheet.Ladder.Select(static r => r.Margin.Value.Value),
            chart.Series[0].Spots.Select(static s => s.Y)
        );

        // The state that was chosen, 300 N and friction 0.36 of the drive belt, holds 1.83 times the pull as left.
        Assert.All(chart.Series[1].Spots, static spot => Assert.InRange(spot.Y, 0.93 * 1.83, 1.07 * 1.83));
        Assert.Equal(1, Assert.Single(chart.Across).At);
    }

    [Fact]
    public void ThePitchOfTheSpanGivesTheDriveBeltsTension()
    {
        // T = 4 m' l^2 f^2 with 80 g/m, 188 mm and the pitch in the file.
        double pitch = DryDeck.Events.OfType<SpanFrequencyReading>().Single().Frequency.Hertz;
        double span = DryDeck.Events.OfType<SpanFrequencyReading>().Single().Span!.Value.Meters;
        double tension = 4 * 0.08 * span * span * pitch * pitch;

        // Read to 2 % in the pitch, 4 % in the tension; locked pull and slip tests move it a little.
        Assert.Equal(tension, Sheet.MachineAsLeft.DriveBelt!.Tension!.Value.Newtons, 0.04 * tension);
    }

    [Fact]
    public void CurrentsAreApartBeforeAndAfterTheWork()
    {
        LineChart chart = LoadChart.OfCurrent(DryDeck, Sheet)!;
        Series before = chart.Series.Single(static s => s.Name == "loaded, as found");
        Series after = chart.Series.Single(static s => s.Name == "loaded, after the first work");
        Assert.Equal((2, 2), (before.Spots.Length, after.Spots.Length));
        Assert.All(before.Spots, spot => Assert.True(spot.Y > after.Spots.Max(static s => s.Y)));

        // 6 mph and 4 mph.
        Assert.Equal([6.437376, 9.656064], before.Spots.Select(static s => Math.Round(s.X, 6)));
        Series model = chart.Series.Single(static s => s.Sign == Sign.None);
        Assert.InRange(model.Spots[^1].Y, 0.95 * after.Spots[^1].Y, 1.05 * after.Spots[^1].Y);
    }

    [Fact]
    public void TheOwnersPairsAreSharesAndWatts()
    {
        Pair[] pairs = [.. BeforeAfter.ForOwner(Sheet)];
        Assert.Equal(2, pairs.Length);

        // 0.33 and 0.175 of the limit of 0.25.
        Assert.InRange(pairs[0].Before, 125, 139);
        Assert.InRange(pairs[0].After, 66, 74);
        Assert.Equal("service above 100 %", pairs[0].LimitText);
        Assert.EndsWith(" W", pairs[1].BeforeText, StringComparison.Ordinal);
    }

    [Fact]
    public void TurnsOfSomebodyBeforeAreNoWorkOfThisVisit()
    {
        Visit visit = VisitReaderTests.Read(Sample.Text(Bundled.Oil)).Visit;
        LineChart chart = LoadChart.OfCurrent(visit, VisitReview.Of(visit))!;
        Assert.Equal(
            ["loaded, as found", "loaded, after the first work", "empty, as found"],
            chart.Series.Select(static s => s.Name)
        );
    }

    [Fact]
    public void ChangesWithinTheNoiseAreNotDrawn()
    {
        // The drive belt's slip fell from 8 %; that of the running belt moved by a tenth of its uncertainty.
        Visit visit = VisitReaderTests.Read(Sample.Text(Bundled.Glazed)).Visit;
        Assert.Equal(
            [
                "Slip of the drive belt",
                "Slip of both together",
                "Strand tension of the drive belt",
                "Motor current under load",
            ],
            BeforeAfter.ForTechnician(VisitReview.Of(visit)).Select(static pair => pair.Name)
        );
    }
}
