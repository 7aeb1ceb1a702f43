using TreadmillMech.Parts;
using TreadmillMech.Service.Checks;
using TreadmillMech.Tests.OperatingPoints;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Checks;

public sealed class OffCentreUserTests
{
    private static readonly Treadmill Machine = Example.Machine with
    {
        TakeUp = new() { Thread = ScrewThread.Parse("M8x1.25"), BoltSpacing = Length.FromMillimeters(560) },
    };

    [Fact]
    public void TheMomentOnTheDeckIsTheWeightTimesTheOffset() =>
        Assert.Equal(90 * 9.80665 * 0.1, Of(100).DeckMoment.NewtonMeters, tolerance: 1e-9);

    // Statics: the two bolts carry the roller's load together, and its added part balances about the middle.
    [Theory]
    [InlineData(100)]
    [InlineData(-60)]
    public void TheBoltsBalanceTheRollersLoad(double millimetres)
    {
        OffCentreUser user = Of(millimetres);
        double left = user.LeftBolt.Value.Newtons;
        double right = user.RightBolt.Value.Newtons;
        double loaded = Machine.At(Example.Walker).TailRollerHubLoad.Value.Newtons;
        Assert.Equal(loaded, left + right, tolerance: 1e-9 * loaded);

        // Nearly two strands of 1000 N at rest less what the moving belt's inertia takes off; half a metre wide or so.
        double atRest = 2 * (1000 - (2.4 * 0.45 * 1.2 * 1.2));
        Assert.Equal((loaded - atRest) * millimetres / 1000, (right - left) * 0.28, tolerance: 0.02);
    }

    [Fact]
    public void InTheMiddleBothSidesAreEvenAndNothingDrifts()
    {
        OffCentreUser user = Of(0);
        Assert.Equal(user.LeftBolt.Value.Newtons, user.RightBolt.Value.Newtons, tolerance: 1e-9);
        Assert.Equal(0, user.DriftPerMeter.Value.DecimalFractions, tolerance: 1e-15);
    }

    [Fact]
    public void SidesChangeWithTheOffset()
    {
        OffCentreUser right = Of(80);
        OffCentreUser left = Of(-80);
        Assert.Equal(right.RightBolt.Value.Newtons, left.LeftBolt.Value.Newtons, tolerance: 1e-9);
        Assert.Equal(
            right.DriftPerMeter.Value.DecimalFractions,
            -left.DriftPerMeter.Value.DecimalFractions,
            tolerance: 1e-15
        );
    }

    // By hand over the stance, without the library's laws: friction with the normal force, two lobes along the belt.
    [Fact]
    public void TheDriftIsTheMeanOverTheStance()
    {
        GaitWave wave = GaitWave.Of(Example.Walker, samples: 40001);
        double ei = 8000 * 100 * 0.45 * 0.45 * 0.45 / 12;
        double loop = Machine.At(Example.Walker).LoopLength.Meters;
        double sum = 0;
        for (int i = 0; i < 40000; i++)
        {
            double load = wave.Left.AlongBelt[i].Newtons + (0.2 * wave.Left.Normal[i].Newtons);
            double a = 0.35 + (1.2 * wave.Time[i].Seconds);
            sum += load * 0.1 * a * (2.7 - (3 * a)) / (6 * ei * loop);
        }

        OffCentreUser user = Of(100);
        double expected = 2 * sum / 40000;
        Assert.Equal(expected, user.DriftPerMeter.Value.DecimalFractions, tolerance: 1e-3 * Math.Abs(expected));
        Assert.Equal(
            user.DriftPerMeter.Value.DecimalFractions * loop,
            user.DriftPerPass.Value.Meters,
            tolerance: 1e-12
        );
    }

    [Fact]
    public void WhatIsNotKnownIsNamed()
    {
        OffCentreUser bare = OffCentreUser.Of(Example.Bare, Example.Walker, Length.FromMillimeters(50)).Value;
        Assert.Equal(new Shortfall(Reason.InputUnknown, "BoltSpacing"), bare.LeftBolt.Missing);
        Assert.Equal(new Shortfall(Reason.InputUnknown, "BeltStiffness"), bare.DriftPerMeter.Missing);
        Treadmill oneBolt = Machine with { TakeUp = Machine.TakeUp with { Bolts = 1 } };
        Assert.Equal(
            Reason.NotOnThisMachine,
            OffCentreUser.Of(oneBolt, Example.Walker, Length.FromMillimeters(50)).Value.LeftBolt.Missing.Why
        );
        Treadmill unknownDeck = Machine with { Deck = new() };
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "DeckFriction"),
            OffCentreUser.Of(unknownDeck, Example.Walker, Length.FromMillimeters(50)).Value.DriftPerPass.Missing
        );
        Assert.Equal(
            Reason.NotInRange,
            OffCentreUser
                .Of(
                    Machine,
                    Example.Walker with
                    {
                        StrikePosition = Length.FromMeters(0.9),
                    },
                    Length.FromMillimeters(50)
                )
                .Value.DriftPerMeter.Missing.Why
        );
    }

    [Fact]
    public void FeetBesideTheBeltAreNoAnswer()
    {
        Answer<OffCentreUser> answer = OffCentreUser.Of(Machine, Example.Walker, Length.FromMillimeters(300));
        Assert.Equal(new Shortfall(Reason.NotInRange, "offset", 0.3, 0.225, "m"), answer.Missing);
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() =>
            OffCentreUser.Of(Machine, Example.Walker, Length.FromMeters(0.5))
        );
    }

    private static OffCentreUser Of(double millimetres) =>
        OffCentreUser.Of(Machine, Example.Walker, Length.FromMillimeters(millimetres)).Value;
}
