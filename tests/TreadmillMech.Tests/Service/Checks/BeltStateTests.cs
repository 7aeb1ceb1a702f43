using TreadmillMech.Service.Checks;
using TreadmillMech.Tests.OperatingPoints;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Checks;

/// <summary>The belt after relaxation and when warm.</summary>
public sealed class BeltStateTests
{
    // By hand: a twentieth lost in each of two tenfolds of time.
    [Fact]
    public void TwoDecadesLoseATenth()
    {
        RelaxedBelt belt = Relaxed(5, 1, 100).Value;
        Assert.Equal(900, belt.Tension.Newtons, tolerance: 1e-9);
        Assert.Equal(10, belt.Lost.Percent, tolerance: 1e-9);
        Assert.True(belt.MarginAfter.Value < belt.MarginBefore.Value);
        Assert.Equal(
            (Level.Machine with { RestTension = Force.FromNewtons(900) }).At(Example.Runner).BeltMargin.Value,
            belt.MarginAfter.Value,
            tolerance: 1e-9
        );
    }

    [Fact]
    public void NothingIsLostAtTheFirstTimeAndMoreWithEachLater()
    {
        Assert.Equal(1000, Relaxed(5, 10, 10).Value.Tension.Newtons, tolerance: 1e-9);
        double[] left = [.. new double[] { 20, 200, 2000, 20000 }.Select(t => Relaxed(5, 10, t).Value.Tension.Newtons)];
        Assert.Equal(left.OrderDescending(), left);
        Assert.Equal(left[0] - left[1], left[2] - left[3], tolerance: 1e-9);
    }

    [Fact]
    public void ALineThatReachesNothingSaysSo() => Assert.Equal(Reason.SlackBelt, Relaxed(50, 1, 1e4).Missing.Why);

    [Fact]
    public void TimesInTheWrongOrderAreRefused()
    {
        Assert.Throws<OutOfRangeException>("time", () => Relaxed(5, 10, 9));
        Assert.Throws<OutOfRangeException>("lossPerDecade", () => Relaxed(60, 1, 10));
    }

    // By hand: 360 kN times 1e-5 times 20 K are 72 N; a tenth of the rest goes with the stiffness.
    [Fact]
    public void AWarmBeltIsLongerAndSofter()
    {
        WarmBelt belt = Warm(Level.Machine, 1e-5, 10).Value;
        Assert.Equal(928 * 0.9, belt.Tension.Newtons, tolerance: 1e-9);
        Assert.Equal((928 * 0.9) - 1000, belt.Change.Newtons, tolerance: 1e-9);
        Assert.True(belt.MarginWarm.Value < belt.MarginCold.Value);
    }

    [Fact]
    public void AFrameThatGrowsMoreThanTheBeltTightensIt() =>
        Assert.Equal(72, Warm(Level.Machine, -1e-5, 0).Value.Change.Newtons, tolerance: 1e-9);

    [Fact]
    public void WarmthThatTakesAllTensionSaysSo() =>
        Assert.Equal(Reason.SlackBelt, Warm(Level.Machine, 4e-4, 0).Missing.Why);

    [Fact]
    public void WhatIsUnknownIsNamed()
    {
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "BeltStiffness"),
            Warm(Level.WithoutStiffness, 1e-5, 0).Missing
        );
        Assert.Equal(new Shortfall(Reason.InputUnknown, "RestTension"), Warm(Level.WithoutTension, 1e-5, 0).Missing);
        Assert.Throws<OutOfRangeException>("stiffnessLost", () => Warm(Level.Machine, 1e-5, 95));
    }

    private static Answer<RelaxedBelt> Relaxed(double percent, double firstMinutes, double minutes) =>
        RelaxedBelt.Of(
            Level.Machine,
            Example.Runner,
            Ratio.FromPercent(percent),
            Duration.FromMinutes(firstMinutes),
            Duration.FromMinutes(minutes)
        );

    private static Answer<WarmBelt> Warm(Treadmill machine, double expansion, double lost) =>
        WarmBelt.Of(
            machine,
            Example.Runner,
            TemperatureDelta.FromKelvins(20),
            CoefficientOfThermalExpansion.FromPerKelvin(expansion),
            Ratio.FromPercent(lost)
        );
}
