using TreadmillMech.Parts;
using TreadmillMech.Service.Checks;
using TreadmillMech.Tests.OperatingPoints;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Checks;

public sealed class BoltCheckTests
{
    // Equal rollers: each bolt of two carries one strand, here 1000 N exactly.
    private static readonly Treadmill Even = Example.Machine with
    {
        TailRoller = Example.Machine.TailRoller with { Diameter = Example.Machine.DriveRoller.Diameter },
        TakeUp = new() { Thread = ScrewThread.Parse("M8x1.25") },
        RestTension = Force.FromNewtons(1000),
    };

    [Fact]
    public void EachOfTwoBoltsCarriesOneStrand() =>
        Assert.Equal(1000, BoltCheck.Of(Even).Value.AxialForce.Newtons, tolerance: 1e-9);

    [Fact]
    public void OneBoltCarriesBothStrands() =>
        Assert.Equal(
            2000,
            BoltCheck.Of(Even with { TakeUp = Even.TakeUp with { Bolts = 1 } }).Value.AxialForce.Newtons,
            tolerance: 1e-9
        );

    // By hand, Shigley 8-2: 1 kN on M8x1.25, sec 30 deg, f = 0.15.
    [Fact]
    public void TheTorqueOfAQuarterTurnIsThatOfThePowerScrew()
    {
        double mean = 8 - (3 * Math.Sqrt(3) / 8 * 1.25);
        double sec = 2 / Math.Sqrt(3);
        double turning = Math.PI * mean * 0.15 * sec;
        double up = 0.5 * mean * (1.25 + turning) / ((Math.PI * mean) - (0.15 * 1.25 * sec));
        double down = 0.5 * mean * (turning - 1.25) / ((Math.PI * mean) + (0.15 * 1.25 * sec));
        BoltCheck check = BoltCheck.Of(Even).Value;
        Assert.Equal(up, check.TighteningTorque.Value.NewtonMeters, tolerance: 1e-9);
        Assert.Equal(down, check.LooseningTorque.Value.NewtonMeters, tolerance: 1e-9);
        Assert.Equal(turning / 1.25, check.LockingRatio.Value, tolerance: 1e-9);
    }

    // ISO 898-1 prints a proof load of 21 200 N for M8, class 8.8: As x 580 MPa within 1 %.
    [Fact]
    public void TheProofLoadOfAnM8BoltIsPrinted() =>
        Assert.Equal(1000 / 21200.0, BoltCheck.Of(Even).Value.ProofShare.Value, tolerance: 0.01 * 1000 / 21200.0);

    [Fact]
    public void TurnsWithAStiffnessRaiseTheBoltsForce()
    {
        Treadmill turned = Even with { TakeUp = Even.TakeUp with { LeftTurns = 1, RightTurns = 1 } };

        // One turn of 1.25 mm lengthens the loop by 2.5 mm; EA = 100 * 8 N/mm * 450 mm = 360 kN.
        double loop = (2 * 1350) + (Math.PI * (50 + 2));
        Assert.Equal(1000 + (360000 * 2.5 / loop), BoltCheck.Of(turned).Value.AxialForce.Newtons, tolerance: 1e-6);
    }

    [Fact]
    public void AnUnknownTensionIsNamed() =>
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "RestTension"),
            BoltCheck.Of(Even with { RestTension = null }).Missing
        );

    [Fact]
    public void AMeasuredLeadTellsTheForceButNoTorque()
    {
        TakeUp measured = new() { Thread = ScrewThread.FromMeasuredLead(Length.FromMillimeters(1.2)) };
        BoltCheck check = BoltCheck.Of(Even with { TakeUp = measured }).Value;
        Assert.Equal(1000, check.AxialForce.Newtons, tolerance: 1e-9);
        Assert.Equal(new Shortfall(Reason.InputUnknown, "NominalDiameter"), check.TighteningTorque.Missing);
    }

    [Fact]
    public void FrictionOutsideItsRangeIsRefusedByName()
    {
        ArgumentOutOfRangeException error = Assert.Throws<OutOfRangeException>(() => BoltCheck.Of(Even, 0));
        Assert.Contains("friction: 0 is outside 0.02 to 0.6", error.Message, StringComparison.Ordinal);
    }
}
