using TreadmillMech.Service.Checks;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Checks;

public sealed class UnequalTakeUpTests
{
    // In mm by hand: one turn on the left bolt of two 500 mm apart; at an edge 225 mm off the middle the loop is longer by
    // two strands of 225 mm times the skew.
    [Fact]
    public void OneTurnOnTheLeftTightensTheLeftEdge()
    {
        UnequalTakeUp state = Of(Level.Turned(1, 0)).Value;
        double edge = 2 * 225 * (1.25 / 500) / Level.Loop;
        double mean = (1000 / Level.Stiffness) + (1.25 / Level.Loop);
        Assert.Equal(1.25 / 500, state.Skew.Radians, tolerance: 1e-12);
        Assert.Equal(1.25 / Level.Loop, state.MeanStrainAdded.DecimalFractions, tolerance: 1e-12);
        Assert.Equal(edge, state.LeftEdgeStrain.DecimalFractions, tolerance: 1e-12);
        Assert.Equal(TreadmillMech.Service.Side.Left, state.TightEdge.Value);
        Assert.Equal(800 * (mean + edge), state.TightEdgeForce.Value.NewtonsPerMillimeter, tolerance: 1e-9);
        Assert.Equal(800 * (mean - edge), state.LooseEdgeForce.Value.NewtonsPerMillimeter, tolerance: 1e-9);
    }

    [Fact]
    public void TheOtherSideIsTheMirrorImage()
    {
        UnequalTakeUp left = Of(Level.Turned(0.5, 0.25)).Value;
        UnequalTakeUp right = Of(Level.Turned(0.25, 0.5)).Value;
        Assert.Equal(-left.Skew.Radians, right.Skew.Radians, tolerance: 1e-15);
        Assert.Equal(TreadmillMech.Service.Side.Right, right.TightEdge.Value);
        Assert.Equal(left.TightEdgeForce, right.TightEdgeForce);
    }

    [Fact]
    public void EqualTurnsLeaveNoTightEdge()
    {
        UnequalTakeUp state = Of(Level.Turned(1, 1)).Value;
        Assert.Equal(0, state.LeftEdgeStrain.DecimalFractions);
        Assert.Equal(Reason.NotObservable, state.TightEdge.Missing.Why);
        Assert.Equal(state.TightEdgeForce, state.LooseEdgeForce);
    }

    [Fact]
    public void TheLooseEdgeOfAWeakBeltHangs() =>
        Assert.Equal(
            Reason.SlackBelt,
            Of(Level.Turned(2, -2) with { RestTension = Force.FromNewtons(300) }).Value.LooseEdgeForce.Missing.Why
        );

    [Fact]
    public void WhatIsUnknownIsNamed()
    {
        Assert.Equal(new Shortfall(Reason.InputUnknown, "BoltSpacing"), UnequalTakeUp.Of(Level.Turned(1, 0)).Missing);
        UnequalTakeUp soft = Of(Level.Turned(1, 0) with { Belt = Level.WithoutStiffness.Belt }).Value;
        Assert.True(soft.TightEdge.Found);
        Assert.Equal(new Shortfall(Reason.InputUnknown, "BeltStiffness"), soft.TightEdgeForce.Missing);
        Treadmill one = Level.Turned(1, 0);
        one = one with { TakeUp = one.TakeUp with { Bolts = 1 } };
        Assert.Equal(Reason.NotOnThisMachine, Of(one).Missing.Why);
    }

    private static Answer<UnequalTakeUp> Of(Treadmill machine) =>
        UnequalTakeUp.Of(machine with { TakeUp = machine.TakeUp with { BoltSpacing = Length.FromMillimeters(500) } });
}
