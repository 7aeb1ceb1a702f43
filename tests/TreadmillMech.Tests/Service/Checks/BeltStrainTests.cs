using TreadmillMech.Service.Checks;
using TreadmillMech.Tests.OperatingPoints;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Checks;

/// <summary>Creep, bending and marks of the belt.</summary>
public sealed class BeltStrainTests
{
    // On the level the mean pull is friction of the weight and the belt's drag: 0.2 times 90 kg times g, and 20 N.
    private const double Pull = (0.2 * 90 * 9.80665) + 20;

    [Fact]
    public void CreepIsThePullOverTheStiffness()
    {
        BeltCreep creep = BeltCreep.Of(Level.Machine, Example.Runner, Ratio.FromPercent(2)).Value;
        Assert.Equal(Pull / Level.Stiffness, creep.AtMeanPull.DecimalFractions, tolerance: 1e-9);
        Assert.True(creep.AtPeakPull > creep.AtMeanPull);
        Assert.Equal(0.02 - (Pull / Level.Stiffness), creep.SlipBeyondCreep.Value.DecimalFractions, tolerance: 1e-9);
    }

    [Fact]
    public void WithoutAMeasuredSlipOnlyCreepIsTold()
    {
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "MeasuredSlip"),
            BeltCreep.Of(Level.Machine, Example.Runner).Value.SlipBeyondCreep.Missing
        );
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "BeltStiffness"),
            BeltCreep.Of(Level.WithoutStiffness, Example.Runner).Missing
        );
        Assert.Throws<OutOfRangeException>(
            "measuredSlip",
            () => BeltCreep.Of(Level.Machine, Example.Runner, Ratio.FromPercent(120))
        );
    }

    // By hand: 2 mm on 50 and 45 mm; 4 % need a middle line of 50 mm.
    [Fact]
    public void SmallRollersBendTheBeltMore()
    {
        BeltBending bending = BeltBending.Of(Example.Machine, Ratio.FromPercent(4));
        Assert.Equal(2 / 52.0, bending.OnDriveRoller.DecimalFractions, tolerance: 1e-12);
        Assert.Equal(2 / 47.0, bending.OnTailRoller.DecimalFractions, tolerance: 1e-12);
        Assert.Equal(48, bending.LeastDiameter.Millimeters, tolerance: 1e-9);
        Assert.False(bending.BothLargeEnough);
        Assert.Equal((2 / 47.0) + (1000 / Level.Stiffness), bending.LargestFaceStrain.Value.DecimalFractions, 1e-12);
        Assert.True(BeltBending.Of(Example.Machine, Ratio.FromPercent(4.3)).BothLargeEnough);
        Assert.Throws<OutOfRangeException>("allowed", () => BeltBending.Of(Example.Machine, Ratio.Zero));
    }

    // By hand: 5 mm on a metre are half a per cent, 1800 N of 360 kN; GUM with both partial derivatives.
    [Fact]
    public void MarksTellElongationAndTension()
    {
        BeltMarks marks = Marks(Level.Machine, 1000, 1005, 0.5);
        double relative = Math.Sqrt(Math.Pow(0.5 / 1000, 2) + Math.Pow(0.5 * 1005 / 1e6, 2));
        Assert.Equal(0.5, marks.Elongation.Value.Percent, tolerance: 1e-9);
        Assert.Equal(relative, marks.Elongation.StandardUncertainty.DecimalFractions, tolerance: 1e-12);
        Assert.Equal(1800, marks.Tension.Value.Value.Newtons, tolerance: 1e-6);
        Assert.Equal(relative * Level.Stiffness, marks.Tension.Value.StandardUncertainty.Newtons, tolerance: 1e-6);
    }

    [Fact]
    public void MarksThatCameNearerContradictATension()
    {
        Assert.Equal(Reason.ReadingsContradict, Marks(Level.Machine, 1000, 999, 0.5).Tension.Missing.Why);
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "BeltStiffness"),
            Marks(Level.WithoutStiffness, 1000, 1005, 0.5).Tension.Missing
        );
        Assert.Throws<OutOfRangeException>("reference", () => Marks(Level.Machine, 50, 1005, 0.5));
    }

    private static BeltMarks Marks(Treadmill machine, double reference, double distance, double uncertainty) =>
        BeltMarks.Of(
            machine,
            Length.FromMillimeters(reference),
            Length.FromMillimeters(distance),
            Length.FromMillimeters(uncertainty)
        );
}
