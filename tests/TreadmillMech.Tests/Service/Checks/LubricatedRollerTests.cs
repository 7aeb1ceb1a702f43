using TreadmillMech.Service.Checks;
using TreadmillMech.Tests.OperatingPoints;

namespace TreadmillMech.Tests.Service.Checks;

public sealed class LubricatedRollerTests
{
    [Fact]
    public void LubricantOnTheRollerTakesMarginAtTheSamePull()
    {
        LubricatedRoller state = LubricatedRoller.Of(Level.Machine, Example.Runner, 0.4).Value;
        Assert.Equal(0.12, state.RollerFriction, tolerance: 1e-12);
        Assert.Equal(state.PullBefore, state.PullAfter);

        // One load at one place: margins go with (R - 1)/(R (1 - s) + s), between the limits of s of 0 and 1.
        double clean = Math.Exp(0.3 * Math.PI);
        double oiled = Math.Exp(0.12 * Math.PI);
        Assert.InRange(
            state.MarginAfter.Value / state.MarginBefore.Value,
            (oiled - 1) / (clean - 1),
            (1 - (1 / oiled)) / (1 - (1 / clean))
        );
    }

    // On the level the mean pull is friction of the weight and 20 N of drag.
    [Fact]
    public void LubricantOnTheDeckGivesSomeOfTheMarginBack()
    {
        LubricatedRoller roller = LubricatedRoller.Of(Level.Machine, Example.Runner, 0.4).Value;
        LubricatedRoller both = LubricatedRoller.Of(Level.Machine, Example.Runner, 0.4, 0.5).Value;
        Assert.Equal((0.1 * 90 * 9.80665) + 20, both.PullAfter.Value.Newtons, tolerance: 1e-9);
        Assert.True(both.MarginAfter.Value > roller.MarginAfter.Value);
    }

    [Fact]
    public void ACleanRollerStaysAsItIs()
    {
        LubricatedRoller same = LubricatedRoller.Of(Level.Machine, Example.Runner, 1).Value;
        Assert.Equal(same.MarginBefore, same.MarginAfter);
    }

    [Fact]
    public void WhatIsUnknownIsNamed()
    {
        Treadmill unread = Level.Machine with { DriveRoller = Level.Machine.DriveRoller with { Friction = null } };
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "DriveRollerFriction"),
            LubricatedRoller.Of(unread, Example.Runner, 0.4).Missing
        );
        LubricatedRoller noDeck = LubricatedRoller.Of(Level.Machine with { Deck = new() }, Example.Runner, 0.4).Value;
        Assert.Equal(new Shortfall(Reason.InputUnknown, "DeckFriction"), noDeck.MarginAfter.Missing);
    }

    [Fact]
    public void FactorsThatCannotBeAreRefused()
    {
        Assert.Throws<OutOfRangeException>(
            "rollerFactor",
            () => LubricatedRoller.Of(Level.Machine, Example.Runner, 1.1)
        );
        Assert.Throws<OutOfRangeException>(
            "deckFactor",
            () => LubricatedRoller.Of(Level.Machine, Example.Runner, 1, 0)
        );
        Assert.Equal(Reason.NotInRange, LubricatedRoller.Of(Level.Machine, Example.Runner, 0.05).Missing.Why);
        Assert.Equal(Reason.NotInRange, LubricatedRoller.Of(Level.Machine, Example.Runner, 1, 0.05).Missing.Why);
    }
}
