using TreadmillMech.Parts;
using TreadmillMech.Service.Checks;
using TreadmillMech.Tests.OperatingPoints;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Checks;

public sealed class StandingStartTests
{
    private const double Weight = 90 * 9.80665;

    private static readonly StaticFriction Friction = new()
    {
        AtRest = 0.35,
        StribeckSpeed = Speed.FromMetersPerSecond(1.2),
    };

    // By hand: 0.35 times the weight and 20 N of drag, against 0.2 times it.
    [Fact]
    public void AStartPullsAgainstTheFrictionAtRest()
    {
        StandingStart start = StandingStart.Of(Level.Machine, Example.Walker, Friction).Value;
        Assert.Equal((0.35 * Weight) + 20, start.StartPull.Value.Newtons, tolerance: 1e-9);
        Assert.Equal(((0.35 * Weight) + 20) / ((0.2 * Weight) + 20), start.StartPullRatio.Value, tolerance: 1e-12);
    }

    // Uphill the person's weight helps the belt to start: m g (0.35 cos - sin) of atan 0.1.
    [Fact]
    public void UphillTheWeightHelps()
    {
        Demand uphill = Example.Walker with { Grade = Ratio.FromPercent(10) };
        double angle = Math.Atan(0.1);
        Assert.Equal(
            (Weight * ((0.35 * Math.Cos(angle)) - Math.Sin(angle))) + 20,
            StandingStart.Of(Level.Machine, uphill, Friction).Value.StartPull.Value.Newtons,
            tolerance: 1e-9
        );
    }

    // At the Stribeck speed 1/e of the excess is left.
    [Fact]
    public void ASlowStepSeesPartOfTheFrictionAtRest()
    {
        StandingStart slow = StandingStart.Of(Level.Machine, Example.Walker, Friction).Value;
        Assert.Equal(0.2 + (0.15 / Math.E), slow.FrictionAtSpeed.Value, tolerance: 1e-12);
        OperatingPoint plain = Level.Machine.At(Example.Walker);
        Assert.True(slow.PeakPullAtSpeed.Value > plain.PeakPull.Value);
        Assert.True(slow.MarginAtSpeed.Value < plain.BeltMargin.Value);
        StandingStart fast = StandingStart.Of(Level.Machine, Example.Runner, Friction).Value;
        Assert.True(fast.FrictionAtSpeed.Value < slow.FrictionAtSpeed.Value);
    }

    [Fact]
    public void WhatIsUnknownIsNamed()
    {
        StandingStart bare = StandingStart.Of(Level.Machine, Example.Walker, new() { AtRest = 0.35 }).Value;
        Assert.Equal(new Shortfall(Reason.InputUnknown, "StribeckSpeed"), bare.FrictionAtSpeed.Missing);
        Assert.Equal(bare.FrictionAtSpeed.Missing, bare.MarginAtSpeed.Missing);
        StandingStart unread = StandingStart.Of(Level.Machine with { Deck = new() }, Example.Walker, Friction).Value;
        Assert.True(unread.StartPull.Found);
        Assert.Equal(new Shortfall(Reason.InputUnknown, "DeckFriction"), unread.StartPullRatio.Missing);
        Assert.Equal(new Shortfall(Reason.InputUnknown, "DeckFriction"), unread.FrictionAtSpeed.Missing);
    }

    [Fact]
    public void AFrictionAtRestBelowTheKineticOneContradicts() =>
        Assert.Equal(
            Reason.ReadingsContradict,
            StandingStart.Of(Level.Machine, Example.Walker, new() { AtRest = 0.15 }).Missing.Why
        );
}
