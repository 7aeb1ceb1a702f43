using TreadmillMech.Parts;
using TreadmillMech.Service.Checks;
using TreadmillMech.Tests.OperatingPoints;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Checks;

public sealed class TurnPriceTests
{
    [Fact]
    public void TurnsBuyMarginAndCostLife()
    {
        TurnPrice price = TurnPrice.Of(Example.Machine, Example.Runner, 1).Value;
        Assert.True(price.MarginAfter.Value > price.MarginBefore.Value);
        Assert.True(price.HubLoadAfter > price.HubLoadBefore);

        // ISO 281: the life of a ball bearing goes with the inverse cube of its load.
        double ratio = price.HubLoadBefore.Newtons / price.HubLoadAfter.Newtons;
        Assert.Equal(ratio * ratio * ratio, price.LifeRatio, tolerance: 1e-12);
    }

    [Fact]
    public void TurnsBackGiveLifeBack()
    {
        double there = TurnPrice.Of(Example.Machine, Example.Runner, 0.5).Value.LifeRatio;
        Treadmill turned = Example.Machine with
        {
            TakeUp = Example.Machine.TakeUp with { LeftTurns = 0.5, RightTurns = 0.5 },
        };
        Assert.Equal(1, there * TurnPrice.Of(turned, Example.Runner, -0.5).Value.LifeRatio, tolerance: 1e-12);
    }

    [Fact]
    public void LifeNeedsTheRatingAndFollowsIso281()
    {
        TurnPrice unrated = TurnPrice.Of(Example.Machine, Example.Runner, 0).Value;
        Assert.Equal(new Shortfall(Reason.InputUnknown, "DynamicRating"), unrated.LifeAfter.Missing);
        Bearing bearing = new() { DynamicRating = Force.FromNewtons(10000) };
        TurnPrice rated = TurnPrice.Of(Example.Machine, Example.Runner, 0, bearing).Value;

        // 10^6 (C/P)^3 revolutions at v/(pi d) revolutions a second, d to the belt's neutral line: 45 mm and 2 mm.
        double load = 0.5 * rated.HubLoadAfter.Newtons;
        double perSecond = Example.Runner.Speed.MetersPerSecond / (Math.PI * 0.047);
        double seconds = 1e6 * Math.Pow(10000 / load, 3) / perSecond;
        Assert.Equal(seconds, rated.LifeAfter.Value.Seconds, tolerance: 1e-9 * seconds);
    }

    [Fact]
    public void WithoutAStiffnessAPriceIsNotTold()
    {
        Treadmill unknown = Example.Machine with { Belt = Example.Machine.Belt with { RelaxedForcePerWidth = null } };
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "BeltStiffness"),
            TurnPrice.Of(unknown, Example.Runner, 0.25).Missing
        );
    }
}
