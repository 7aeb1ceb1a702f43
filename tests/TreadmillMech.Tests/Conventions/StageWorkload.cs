using TreadmillMech.Model;
using TreadmillMech.Tests.Model;

namespace TreadmillMech.Tests.Conventions;

/// <summary>Every stage once, on the number types whose listing is read; a child process runs this test alone.</summary>
public sealed class StageWorkload
{
    [Fact]
    public void EveryStageRunsOnEveryNumberType()
    {
        // Loose and slippery, so that both belts slide and no stage is skipped.
        MachineKinds kinds = new(DriveEnd.Front, Tensioning.FixedCentres, Gait.Walking, false, false);
        MachineNumbers<Real> x = RandomMachines.Numbers(new Random(1), in kinds);
        (x.BeltSpeed, x.RestTension, x.DriveBeltTension) = (1.2, 100, 10);
        double plain = Slide(x, kinds);
        Assert.True(plain > 0);
        Assert.Equal(plain, Slide(x.Lift<Dual<Real>>(), kinds).Value.Value);
        Assert.Equal(plain, Slide(x.Lift<Lanes>(), kinds)[0], tolerance: 1e-9);
        Assert.Equal(plain, Slide(x.Lift<FourLanes>(), kinds)[0], tolerance: 1e-9);
        Assert.Equal(plain, Slide(x.Lift<Dual<Lanes>>(), kinds).Value[0], tolerance: 1e-9);
    }

    private static T Slide<T>(MachineNumbers<T> machine, MachineKinds kinds)
        where T : struct, IReal<T>
    {
        OperatingPointModel.Run(in machine, in kinds, out OutputNumbers<T> y);
        return y.BeltSlide + y.DriveBeltSlide;
    }
}
