using TreadmillMech.Parts;
using TreadmillMech.Service.Checks;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Checks;

public sealed class TurnEffortTests
{
    private static readonly Length Key = Length.FromMillimeters(100);

    [Fact]
    public void TheHandPushesWithTheTorqueOverTheKey()
    {
        TurnEffort effort = TurnEffort.Of(Level.Machine, Key).Value;
        double torque = BoltCheck.Of(Level.Machine).Value.Screw.TighteningTorque.Value.NewtonMeters;
        Assert.Equal(torque, effort.TorqueAtStart.Value.NewtonMeters, tolerance: 1e-12);
        Assert.Equal(torque / 0.1, effort.HandForceAtStart.Value.Newtons, tolerance: 1e-9);
    }

    // A quarter turn adds EA times 0.625 mm over the loop; the torque goes with the tension.
    [Fact]
    public void TheTorqueGrowsWithTheTensionOfTheTurn()
    {
        TurnEffort effort = TurnEffort.Of(Level.Machine, Key).Value;
        double growth = 1 + (Level.Stiffness * 0.625 / Level.Loop / 1000);
        Assert.Equal(growth, effort.TorqueAtEnd.Value / effort.TorqueAtStart.Value, tolerance: 1e-9);
        Assert.Equal(growth, effort.HandForceAtEnd.Value / effort.HandForceAtStart.Value, tolerance: 1e-9);
    }

    [Fact]
    public void WithoutAStiffnessOnlyTheStartIsTold()
    {
        TurnEffort effort = TurnEffort.Of(Level.WithoutStiffness, Key).Value;
        Assert.True(effort.TorqueAtStart.Found);
        Assert.Equal(new Shortfall(Reason.InputUnknown, "BeltStiffness"), effort.TorqueAtEnd.Missing);
        Assert.Equal(effort.TorqueAtEnd.Missing, effort.HandForceAtEnd.Missing);
    }

    [Fact]
    public void ACollarMakesTheTurnHarder()
    {
        Collar collar = new() { MeanDiameter = Length.FromMillimeters(12), Friction = 0.2 };
        double bare = TurnEffort.Of(Level.Machine, Key).Value.TorqueAtStart.Value.NewtonMeters;
        double rubbed = TurnEffort.Of(Level.Machine, Key, collar: collar).Value.TorqueAtStart.Value.NewtonMeters;
        Assert.Equal(1000 * 0.2 * 0.012 / 2, rubbed - bare, tolerance: 1e-12);
    }

    [Fact]
    public void BadInputIsRefusedByName()
    {
        Assert.Throws<OutOfRangeException>("keyLength", () => TurnEffort.Of(Level.Machine, Length.Zero));
        Assert.Throws<OutOfRangeException>("turns", () => TurnEffort.Of(Level.Machine, Key, 0));
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "RestTension"),
            TurnEffort.Of(Level.WithoutTension, Key).Missing
        );
    }
}
