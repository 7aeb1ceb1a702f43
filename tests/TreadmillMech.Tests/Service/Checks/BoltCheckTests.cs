using TreadmillMech.Parts;
using TreadmillMech.Service.Checks;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Checks;

public sealed class BoltCheckTests
{
    [Fact]
    public void EachOfTwoBoltsCarriesOneStrand() =>
        Assert.Equal(1000, BoltCheck.Of(Level.Machine).Value.Screw.AxialForce.Newtons, tolerance: 1e-9);

    [Fact]
    public void OneBoltCarriesBothStrands() =>
        Assert.Equal(2000, Axial(take => take with { Bolts = 1 }), tolerance: 1e-9);

    // The work of both bolts over a short travel s is that of the roller over s cos 60.
    [Fact]
    public void BoltsAtAnAngleShareTheLoadWithTheirGuide() =>
        Assert.Equal(500, Axial(take => take with { BoltAngle = Angle.FromDegrees(60) }), tolerance: 1e-9);

    // By hand, law of cosines: the bolts move the drive roller of 70 mm, which is wrapped further than half a turn.
    [Fact]
    public void TheBoltsCarryTheRollerThatTheyMove()
    {
        Treadmill front = Level.Machine with
        {
            DriveRoller = Level.Machine.DriveRoller with { Diameter = Length.FromMillimeters(70) },
            TakeUp = Level.Machine.TakeUp with { AdjustedEnd = DriveEnd.Front },
        };
        double wrap = Math.PI + (2 * Math.Asin(10 / 1350.0));
        double hub = Math.Sqrt(2e6 * (1 - Math.Cos(wrap)));
        Assert.Equal(hub / 2, BoltCheck.Of(front).Value.Screw.AxialForce.Newtons, tolerance: 1e-9);
    }

    // By hand, Shigley 8-2: 1 kN on M8x1.25, sec 30 deg, f = 0.15.
    [Fact]
    public void TheTorqueIsThatOfThePowerScrew()
    {
        double mean = 8 - (3 * Math.Sqrt(3) / 8 * 1.25);
        double sec = 2 / Math.Sqrt(3);
        double turning = Math.PI * mean * 0.15 * sec;
        double up = 0.5 * mean * (1.25 + turning) / ((Math.PI * mean) - (0.15 * 1.25 * sec));
        double down = 0.5 * mean * (turning - 1.25) / ((Math.PI * mean) + (0.15 * 1.25 * sec));
        ScrewCheck check = BoltCheck.Of(Level.Machine).Value.Screw;
        Assert.Equal(up, check.TighteningTorque.Value.NewtonMeters, tolerance: 1e-9);
        Assert.Equal(down, check.LooseningTorque.Value.NewtonMeters, tolerance: 1e-9);
        Assert.Equal(turning / 1.25, check.LockingRatio.Value, tolerance: 1e-9);
    }

    [Fact]
    public void TurnsWithAStiffnessRaiseTheBoltsForce() =>
        Assert.Equal(
            1000 + (Level.Stiffness * 2.5 / Level.Loop),
            BoltCheck.Of(Level.Turned(1, 1)).Value.Screw.AxialForce.Newtons,
            tolerance: 1e-6
        );

    // 30 mm of a thread of 1.25 mm are 24 turns; each lengthens the loop by 2.5 mm.
    [Fact]
    public void TheThreadLeftTellsTurnsAndTheTensionAtItsEnd()
    {
        Treadmill measured = Level.Machine with
        {
            TakeUp = Level.Machine.TakeUp with { ThreadLeft = Length.FromMillimeters(30) },
        };
        BoltCheck check = BoltCheck.Of(measured).Value;
        Assert.Equal(24, check.TurnsLeft.Value, tolerance: 1e-9);
        Assert.Equal(
            1000 + (Level.Stiffness * 60 / Level.Loop),
            check.TensionAtThreadEnd.Value.Newtons,
            tolerance: 1e-6
        );
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "ThreadLeft"),
            BoltCheck.Of(Level.Machine).Value.TurnsLeft.Missing
        );
        BoltCheck soft = BoltCheck.Of(measured with { Belt = Level.WithoutStiffness.Belt }).Value;
        Assert.Equal(new Shortfall(Reason.InputUnknown, "BeltStiffness"), soft.TensionAtThreadEnd.Missing);
    }

    [Fact]
    public void AnUnknownTensionIsNamed() =>
        Assert.Equal(new Shortfall(Reason.InputUnknown, "RestTension"), BoltCheck.Of(Level.WithoutTension).Missing);

    [Fact]
    public void ALooseBeltLoadsNoBolt() =>
        Assert.Equal(Reason.SlackBelt, BoltCheck.Of(Level.Turned(-5, -5)).Missing.Why);

    [Fact]
    public void AMeasuredLeadTellsTheForceButNoTorque()
    {
        TakeUp measured = new() { Thread = ScrewThread.FromMeasuredLead(Length.FromMillimeters(1.2)) };
        ScrewCheck check = BoltCheck.Of(Level.Machine with { TakeUp = measured }).Value.Screw;
        Assert.Equal(1000, check.AxialForce.Newtons, tolerance: 1e-9);
        Assert.Equal(new Shortfall(Reason.InputUnknown, "NominalDiameter"), check.TighteningTorque.Missing);
        Assert.Null(measured.Thread.FlankAngle);
    }

    [Fact]
    public void FrictionOutsideItsRangeIsRefusedByName()
    {
        OutOfRangeException error = Assert.Throws<OutOfRangeException>(() => BoltCheck.Of(Level.Machine, 0));
        Assert.Contains("friction: 0 is outside 0.02 to 0.6", error.Message, StringComparison.Ordinal);
        Assert.Equal(new Bounds(0.02, 0.6), error.Permitted);
    }

    private static double Axial(Func<TakeUp, TakeUp> change) =>
        BoltCheck.Of(Level.Machine with { TakeUp = change(Level.Machine.TakeUp) }).Value.Screw.AxialForce.Newtons;
}
