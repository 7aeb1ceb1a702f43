using TreadmillMech.Service;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Tests.Service;

/// <summary>Each guard of tightening, by itself.</summary>
public sealed class TensionBudgetTests
{
    [Fact]
    public void ABoltThatTurnsHardEndsTheTurns()
    {
        VisitSheet sheet = Visits.Review([.. Visits.ReadyToTurn, new BoltReading { Feel = BoltFeel.Hard }]);
        Assert.Equal(0, sheet.Budget.TurnsLeft);
        Assert.Equal("a bolt that turns hard", sheet.Budget.LimitedBy);
        Assert.False(sheet.AdvisesATurnOfBoth());
        Visits.Says("against a take-up bolt that turns hard", sheet.About(Subject.RunningBelt).Next!.Action);
    }

    // 1 mm of thread over a lead of 1.25 mm.
    [Fact]
    public void ThreadMeasuredAtTheVisitCounts()
    {
        VisitSheet sheet = Visits.Review(new ThreadReading { Left = Length.FromMillimeters(1) });
        Assert.Equal(0.8, sheet.Budget.TurnsLeft, 1e-9);
        Assert.Equal("the thread left on the bolts", sheet.Budget.LimitedBy);
    }

    // EA = 100 * 8000 N/m * 0.45 m = 360 kN; 0.6 % is 2160 N. From 1080 N that is 1080 N more, and a turn of 1.25 mm adds
    // 360 kN * 2 * 1.25 mm / 2.8555 m = 315.2 N: 3.43 turns, beyond the two of a visit. From 2000 N it is 0.508 turns.
    [Theory]
    [InlineData(1080, 2, "most turns in a visit")]
    [InlineData(2000, 0.508, "elongation of the running belt")]
    public void TheStrainBandEndsTheTurns(double tension, double turns, string by)
    {
        VisitSheet sheet = Visits.Review(Machines.Known with { RestTension = Force.FromNewtons(tension) });
        Assert.Equal(turns, sheet.Budget.TurnsLeft, 0.0005);
        Assert.Equal(by, sheet.Budget.LimitedBy);
    }

    // 1.25 * 900 N = 1125 N; from 1080 N that is 45 N, at 315.2 N a turn 0.143 turns.
    [Fact]
    public void TheTensionOfTheEarlierVisitEndsTheTurns()
    {
        Visit visit = Visits.Make(Machines.Known) with
        {
            Earlier = [new() { Day = new(2026, 1, 5), RestTension = Force.FromNewtons(900) }],
        };
        TensionBudget budget = VisitReview.Of(visit).Budget;
        Assert.Equal(0.143, budget.TurnsLeft, 0.0005);
        Assert.Equal("tension over that of the earlier visit", budget.LimitedBy);
    }
}
