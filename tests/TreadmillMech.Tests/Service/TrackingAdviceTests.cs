using TreadmillMech.Parts;
using TreadmillMech.Service;
using TreadmillMech.Tests.Laws;

namespace TreadmillMech.Tests.Service;

public sealed class TrackingAdviceTests
{
    /// <summary>Loop of rollers 50 and 45 mm on 1350 mm, belt 2 mm: 2849.230 mm (derived) and pi times the thickness.</summary>
    private const double Loop = 2.849230 + (Math.PI * 0.002);

    [Theory]
    [InlineData(5, Side.Right)]
    [InlineData(-5, Side.Left)]
    public void TheSideItRunsTowardsIsTightened(double millimeters, Side side)
    {
        TrackingAdvice advice = TrackingAdvice.Of(Machines.Plain, Happened.Drift(millimeters, 10)).Value;
        Assert.Equal(side, advice.Side);
        Assert.True(advice.Tighten);
        Assert.Equal(Math.Sign(millimeters), Math.Sign(advice.DriftPerMeter.DecimalFractions));
    }

    [Theory]
    [InlineData(5, Side.Left)]
    [InlineData(-5, Side.Right)]
    public void AtTheEndOfTheBudgetTheOtherSideIsLoosened(double millimeters, Side side)
    {
        TrackingAdvice advice = TrackingAdvice
            .Of(Machines.Plain, Happened.Drift(millimeters, 10), mayTighten: false)
            .Value;
        Assert.Equal(side, advice.Side);
        Assert.False(advice.Tighten);
    }

    // By hand: drift a metre d/(n L); a turn skews by P/w, drifts P C/(w L) a metre as a string. So d w/(n P C) turns,
    // whatever the loop: 10 mm in 10 passes, 500 mm, 1.25 mm, 1350 mm: 0.2963, in eighths 0.25; a third as much gain 0.875.
    [Theory]
    [InlineData(10, 10, 0.25, 0.875)]
    [InlineData(20, 10, 0.625, 1.75)]
    [InlineData(30, 10, 0.875, 2.625)]
    [InlineData(40, 20, 0.625, 1.75)]
    [InlineData(1, 50, 0.125, 0.125)]
    public void TurnsFollowFromDriftPassesAndLead(double millimeters, int passes, double first, double most)
    {
        TrackingAdvice advice = TrackingAdvice.Of(Machines.Plain, Happened.Drift(millimeters, passes)).Value;
        Assert.Equal(first, advice.FirstTurns);
        Assert.Equal(most, advice.MostTurns);
        Close.To(millimeters / 1000 / passes / Loop, advice.DriftPerMeter.DecimalFractions, 1e-6);
    }

    // 50 mm in 10 passes: 5 x 500 / (1 x 1350) = 1.85 turns of a 1 mm lead, 1.23 of 1.5 mm; in eighths.
    [Theory]
    [InlineData("M8x1", 1.875)]
    [InlineData("M10x1.5", 1.25)]
    public void AFinerThreadTakesMoreTurns(string thread, double turns)
    {
        Treadmill machine = Machines.Plain.WithTakeUp(t => t with { Thread = ScrewThread.Parse(thread) });
        Assert.Equal(turns, TrackingAdvice.Of(machine, Happened.Drift(50, 10)).Value.FirstTurns);
    }

    [Theory]
    [InlineData(3, 7)]
    [InlineData(-17, 3)]
    [InlineData(100, 40)]
    [InlineData(-0.4, 90)]
    public void TurnsAreEighthsAndTheFirstIsTheSmallerOne(double millimeters, int passes)
    {
        TrackingAdvice advice = TrackingAdvice.Of(Machines.Plain, Happened.Drift(millimeters, passes)).Value;
        Assert.Equal(0, advice.FirstTurns % 0.125);
        Assert.Equal(0, advice.MostTurns % 0.125);
        Assert.InRange(advice.FirstTurns, 0.125, advice.MostTurns);
    }

    [Fact]
    public void WithoutTheDistanceOfTheBoltsThereIsNoAdvice()
    {
        Treadmill machine = Machines.Plain.WithTakeUp(t => t with { BoltSpacing = null });
        Assert.Equal(
            new(Reason.InputUnknown, "BoltSpacing"),
            TrackingAdvice.Of(machine, Happened.Drift(5, 10)).Missing
        );
    }
}
