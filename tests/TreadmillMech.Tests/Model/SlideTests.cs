using TreadmillMech.Model;

namespace TreadmillMech.Tests.Model;

/// <summary>How far the belts slide in a step: its bounds, and how it grows.</summary>
public sealed class SlideTests
{
    private const int Machines = 1500;

    [Fact]
    public void WithAMarginOfOneOrMoreNothingSlides() =>
        Each(
            (x, s, y) =>
            {
                Assert.True(y.BeltMargin < 1 || y.BeltSlide == 0);
                Assert.True(y.DriveBeltMargin < 1 || y.DriveBeltSlide == 0);
            }
        );

    [Fact]
    public void NothingSlidesFurtherThanTheBeltRunsInAStep() =>
        Each(
            (x, s, y) =>
            {
                double run = x.BeltSpeed * s.StepTime * (1 + 1e-12);
                Assert.InRange(y.BeltSlide.Value, 0, run);
                Assert.InRange(y.DriveBeltSlide.Value, 0, run);
            }
        );

    [Fact]
    public void TheSlideGrowsSteadilyAsTheTensionFalls()
    {
        MachineKinds kinds = new(DriveEnd.Front, Tensioning.FixedCentres, Gait.Running, false, false);
        MachineNumbers<Real> x = RandomMachines.Numbers(new Random(2), in kinds);
        (x.BeltSpeed, x.PersonMass, x.DriveRollerFriction, x.DeckFriction) = (3, 90, 0.25, 0.2);
        (x.Incline, x.RailSupport, x.RailForce, x.LeftTurns, x.RightTurns) = (0, 0, 0, 0, 0);
        double before = 0;
        double marginBefore = double.PositiveInfinity;
        for (double tension = 1500; tension > 300; tension -= 1)
        {
            x.RestTension = tension;
            OperatingPointModel.Run(in x, in kinds, out OutputNumbers<Real> y);
            Assert.True(y.BeltMargin < marginBefore);
            Assert.True(y.BeltSlide >= before, $"{tension} N: {y.BeltSlide} after {before}");

            // No jump: a newton is worth less than 5 mm of slide.
            Assert.True(y.BeltSlide - before < 0.005, $"{tension} N: {y.BeltSlide} after {before}");
            (before, marginBefore) = (y.BeltSlide, y.BeltMargin);
        }

        Assert.True(before > 0.05);
    }

    internal static void Each(Action<MachineNumbers<Real>, PlainStride, OutputNumbers<Real>> check)
    {
        Random random = new(17);
        for (int i = 0; i < Machines; i++)
        {
            MachineKinds kinds = RandomMachines.Kinds(random);
            MachineNumbers<Real> x = RandomMachines.Numbers(random, in kinds);
            x.RestTension *= RandomMachines.Between(random, 0.1, 1);
            OperatingPointModel.Run(in x, in kinds, out OutputNumbers<Real> y);
            check(x, new PlainStride(x, kinds), y);
        }
    }
}
