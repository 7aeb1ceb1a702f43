using TreadmillMech.Model;
using TreadmillMech.Model.Transient;

namespace TreadmillMech.Tests.Transient;

/// <summary>What a tolerance buys: the belt's speed through a whole run, and its deepest dip, against a tolerance of 1e-10.</summary>
/// <remarks>That such a run is right is held against another solver on equations of its own in ReferenceTests.</remarks>
public sealed class ToleranceTests(ITestOutputHelper output)
{
    // Allowed errors: of the speed at 600 even times, over the speed; of the deepest dip in percentage points.
    [Theory]
    [InlineData("run", 1e-4, 1e-4, 0.01)]
    [InlineData("walk", 1e-4, 3e-4, 0.01)]
    [InlineData("slip", 1e-4, 3e-4, 0.01)]
    [InlineData("run", 1e-5, 1e-4, 0.01)]
    [InlineData("walk", 1e-5, 1e-4, 0.01)]
    [InlineData("slip", 1e-5, 1e-4, 0.01)]
    public void SpeedAndDipAreRight(string name, double tolerance, double allowed, double points)
    {
        double[] exact = Speeds(name, 1e-10);
        double[] speeds = Speeds(name, tolerance);
        Assert.Equal(exact.Length, speeds.Length);
        double worst = speeds.Zip(exact, (found, right) => Math.Abs((found / right) - 1)).Max();
        double dip = 100 * Math.Abs(speeds.Min() - exact.Min()) / exact[0];
        output.WriteLine($"{name} at {tolerance}: speed {worst:E1}, dip {dip:F4} points");
        Assert.True(worst <= allowed, $"{worst:E2}");
        Assert.True(dip <= points, $"{dip:F4}");
    }

    private static double[] Speeds(string name, double tolerance)
    {
        (MachineNumbers<Real> machine, DriveKinds kinds, DynamicsNumbers dynamics, PlanNumbers plan) =
            ReferenceTests.Case(name, tolerance);
        PlanNumbers fine = new()
        {
            Duration = plan.Duration,
            SetTimes = plan.SetTimes,
            SetSpeeds = plan.SetSpeeds,
            Interval = plan.Duration / 600,
            Tolerance = tolerance,
        };
        DriveRecord record = Bench.Run(machine, kinds, dynamics, fine);
        Assert.Equal(FailureReason.None, record.Failure);
        return record.Column(DriveStates.Belt).ToArray();
    }
}
