using TreadmillMech.Model;

namespace TreadmillMech.Tests.Model;

/// <summary>Hub loads as vector sums of the strands.</summary>
public sealed class HubLoadTests
{
    [Fact]
    public void WithNextToNothingOnTheBeltBothRollersCarryTwoStrandsAtRest()
    {
        MachineKinds kinds = new(DriveEnd.Front, Tensioning.FixedCentres, Gait.Walking, false, false);
        MachineNumbers<Real> x = RandomMachines.Numbers(new Random(4), in kinds);
        (x.PersonMass, x.BeltDrag, x.RailForce, x.BeltMassPerArea) = (1e-9, 0, 0, 1e-9);
        (x.LeftTurns, x.RightTurns, x.RestTension) = (0, 0, 1000);
        (x.DriveRollerDiameter, x.TailRollerDiameter) = (0.05, 0.05);
        OperatingPointModel.Run(in x, in kinds, out OutputNumbers<Real> y);
        Assert.Equal(2000, y.DriveRollerHubLoad, tolerance: 1e-5);
        Assert.Equal(2000, y.TailRollerHubLoad, tolerance: 1e-5);
    }

    [Theory]
    [InlineData(DriveEnd.Front)]
    [InlineData(DriveEnd.Rear)]
    public void TheDriveRollersHubCarriesTheVectorSumOfItsStrands(DriveEnd end)
    {
        Random random = new(6);
        for (int i = 0; i < 200; i++)
        {
            MachineKinds kinds = RandomMachines.Kinds(random) with { DriveEnd = end };
            MachineNumbers<Real> x = RandomMachines.Numbers(random, in kinds);
            OperatingPointModel.Run(in x, in kinds, out OutputNumbers<Real> y);

            // Mean tensions from the loads of the stride, less the centrifugal part.
            (double pull, double shared) = Means(new PlainStride(x, kinds));
            double rest = y.TensionNow - y.CentrifugalTension;
            double tight = rest + shared;
            double slack = tight - pull;

            // The strands leave the roller at half the wrap on either side of the line of centres' far end.
            double half = 0.5 * y.DriveRollerWrap;
            double along = (tight + slack) * Math.Sin(half);
            double across = (tight - slack) * Math.Cos(half);
            double expected = Math.Sqrt((along * along) + (across * across));
            Assert.Equal(expected, y.DriveRollerHubLoad, tolerance: 1e-4 * expected);

            // The undriven roller: two strands that differ by the drag, on the tight side with a front drive.
            double before = end == DriveEnd.Rear ? slack : tight - x.BeltDrag;
            double after = before + x.BeltDrag;
            double otherHalf = Math.PI - half;
            along = (before + after) * Math.Sin(otherHalf);
            across = (after - before) * Math.Cos(otherHalf);
            expected = Math.Sqrt((along * along) + (across * across));
            Assert.Equal(expected, y.TailRollerHubLoad, tolerance: 1e-4 * expected);
        }
    }

    private static (double Pull, double Shared) Means(PlainStride stride)
    {
        const int Steps = 4000;
        double pull = 0;
        double shared = 0;
        for (int i = 0; i < Steps; i++)
        {
            (double p, double s) = stride.At((i + 0.5) * stride.StepTime / Steps);
            pull += p / Steps;
            shared += s / Steps;
        }

        return (pull, shared);
    }
}
