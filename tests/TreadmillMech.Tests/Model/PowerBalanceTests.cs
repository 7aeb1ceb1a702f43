using FsCheck;
using FsCheck.Xunit;
using TreadmillMech.Model;

namespace TreadmillMech.Tests.Model;

/// <summary>Energy: what the roller gives is what friction, drag and rails take, less what the user gives uphill.</summary>
public sealed class PowerBalanceTests
{
    private const double StandardGravity = 9.80665;

    [Property(MaxTest = 500)]
    public void TheRollersPowerBalances(DoNotSize<int> seed)
    {
        (MachineNumbers<Real> x, OutputNumbers<Real> y) = Machine(seed.Item);
        double v = x.BeltSpeed;
        double uphill = (1 - x.RailSupport) * x.PersonMass * StandardGravity * Math.Sin(x.Incline) * v;
        double expected = y.DeckFrictionPower + (x.BeltDrag * v) + (x.RailForce * v) - uphill;
        Assert.Equal(expected, y.PullPower, tolerance: 1e-10 * x.PersonMass * StandardGravity * v);
    }

    [Property(MaxTest = 500)]
    public void TheMotorsShaftCarriesTheRollersPower(DoNotSize<int> seed)
    {
        (_, OutputNumbers<Real> y) = Machine(seed.Item);
        double shaft = y.MotorTorque * y.MotorSpeed;
        Assert.Equal(y.PullPower, shaft, tolerance: 1e-12 * (1 + Math.Abs(y.PullPower)));
    }

    // Electrical power is shaft power, friction, copper and brushes, which take from either direction of current; the mains sees it through the efficiency.
    [Property(MaxTest = 500)]
    public void TheMainsPaysForShaftFrictionCopperAndBrushes(DoNotSize<int> seed)
    {
        (MachineNumbers<Real> x, OutputNumbers<Real> y) = Machine(seed.Item);
        double electrical =
            y.PullPower
            + (x.MotorFrictionTorque * y.MotorSpeed)
            + (x.ArmatureResistance * y.RmsCurrent * y.RmsCurrent)
            + (x.BrushDrop * Math.Abs(y.MeanCurrent));
        double expected = x.StandbyPower + (Math.Max(0, electrical) / x.ControllerEfficiency);
        Assert.Equal(expected, y.MainsPower, tolerance: 1e-9 * (1 + Math.Abs(electrical)));
        double apparent = x.MainsVoltage * y.MainsCurrent;
        Assert.Equal(y.MainsPower, apparent * x.PowerFactor, tolerance: 1e-9 * y.MainsPower);
    }

    [Property(MaxTest = 500)]
    public void CurrentsAreOrderedAsTheirNamesSay(DoNotSize<int> seed)
    {
        (_, OutputNumbers<Real> y) = Machine(seed.Item);
        Assert.True(y.RmsCurrent >= Math.Abs(y.MeanCurrent) * (1 - 1e-12));
        Assert.True(y.PeakCurrent >= y.MeanCurrent);
        Assert.True(y.PeakPull >= y.MeanPull);
        Assert.True(y.LeastPull <= y.MeanPull);
        Assert.True(y.RmsPull >= Math.Abs(y.MeanPull) * (1 - 1e-9));
    }

    private static (MachineNumbers<Real> Machine, OutputNumbers<Real> Output) Machine(int seed)
    {
        Random random = new(seed);
        MachineKinds kinds = RandomMachines.Kinds(random);
        MachineNumbers<Real> x = RandomMachines.Numbers(random, in kinds);
        OperatingPointModel.Run(in x, in kinds, out OutputNumbers<Real> y);
        return (x, y);
    }
}
