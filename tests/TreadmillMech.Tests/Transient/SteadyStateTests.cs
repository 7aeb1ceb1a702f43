using TreadmillMech.Laws;
using TreadmillMech.Model;
using TreadmillMech.Model.Transient;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Tests.Transient;

/// <summary>Steady runs: against the operating point, and against what was measured on real machines.</summary>
public sealed class SteadyStateTests(ITestOutputHelper output)
{
    // With voltage enough for every speed here.
    private static Treadmill Machine { get; } =
        Typed.Machine with
        {
            Motor = Typed.Machine.Motor! with { VoltageLimit = ElectricPotential.FromVolts(260) },
        };

    // Over ten whole steps after five seconds; the operating point is another code on the same laws.
    [Theory]
    [InlineData(1.2)]
    [InlineData(3.0)]
    [InlineData(4.5)]
    public void TheMeanIsTheOperatingPoint(double speed)
    {
        OperatingPoint point = Machine.At(Typed.Demand(speed));
        DriveRun run = DriveSimulation
            .Of(Machine, Typed.Demand(speed), Typed.Dynamics)
            .Value.Through(DrivePlan.Steady(Typed.Seconds(12)));
        double step = 1 / point.StepFrequency.Hertz;
        DriveSummary mean = run.Summary(Typed.Seconds(6), Typed.Seconds(6 + (Math.Floor(5.5 / step) * step)));
        output.WriteLine(
            $"{speed}: pull {mean.MeanPull} of {point.MeanPull}, current {mean.MeanCurrent} of {point.MeanCurrent}"
        );
        Near(point.MeanPull.Value.Newtons, mean.MeanPull.Newtons, 0.02);
        Near(point.MeanCurrent.Value.Amperes, mean.MeanCurrent.Amperes, 0.02);

        // The controller holds the roller's face; the belt creeps behind it by 1 or 2 in a thousand.
        Near(speed, mean.MeanSpeed.MetersPerSecond, 0.004);
    }

    // Willwacher et al. 2021 (read): mean belt speed 98-103 % of the set value; dips at foot strike of 2-6 % when running. An
    // invented machine must land among real ones.
    [Theory]
    [InlineData(2.5, 90)]
    [InlineData(3.0, 75)]
    [InlineData(4.0, 75)]
    public void ARunnersDipsAreThoseOfRealMachines(double speed, double mass)
    {
        DriveSummary mean = Settled(speed, mass);
        output.WriteLine($"{speed} m/s, {mass} kg: dip {mean.Dip.Value.Percent:F2} %");
        Assert.InRange(mean.MeanSpeed.MetersPerSecond / speed, 0.98, 1.03);
        Assert.InRange(mean.Dip.Value.Percent, 2, 6);
    }

    // Willwacher et al. 2021 (read): 2.8 % at a walk of 0.99 m/s; here by the machine that the runners had.
    [Fact]
    public void AWalkersDipIsThatOfARealMachine()
    {
        DriveSummary mean = Settled(0.99, 75);
        output.WriteLine($"walk: dip {mean.Dip.Value.Percent:F2} %");
        Assert.InRange(mean.MeanSpeed.MetersPerSecond / 0.99, 0.98, 1.03);
        Assert.InRange(mean.Dip.Value.Percent, 2.5, 3.5);
    }

    // Measured braking impulse 0.019-0.021 body weights times seconds a step at 3-5 m/s, by the sum over the force of a foot
    // that a run uses.
    [Theory]
    [InlineData(3.0)]
    [InlineData(4.0)]
    [InlineData(5.0)]
    public void TheBrakingImpulseIsTheMeasuredOne(double speed)
    {
        MachineNumbers<Real> machine = Bench.Machine(Typed.Demand(speed));
        MachineKinds kinds = Bench.Kinds.Machine;
        StepStage.Land(in machine, in kinds, speed, out FootNumbers<Real> foot, out _);
        double impulse = 0;
        double whole = 0;
        const int Parts = 20000;
        for (int i = 0; i < Parts; i++)
        {
            (Real sin, Real cos) = Real.SinCos(Math.PI * (i + 0.5) / Parts);
            double force = ForeAftLaws.SineSum(
                sin,
                cos,
                foot.FirstSine,
                foot.SecondSine,
                foot.ThirdSine,
                foot.FourthSine
            );
            impulse += Math.Max(0, force) / Parts / foot.PerContact;
            whole += force / Parts / foot.PerContact;
        }

        double weight = 90 * 9.80665;
        output.WriteLine($"{speed} m/s: {impulse / weight:F4} BW s");
        Assert.InRange(impulse / weight, 0.019 - 1e-6, 0.021 + 1e-6);
        Assert.Equal(0, whole / weight, 1e-8);
    }

    private static DriveSummary Settled(double speed, double mass)
    {
        DriveDynamics dynamics = Typed.Dynamics with
        {
            MotorInertia = MassMomentOfInertia.FromKilogramSquareMeters(0.007),
            Controller = Typed.Dynamics.Controller with
            {
                Gain = ElectricCurrent.FromAmperes(60),
                IntegralTime = Duration.FromSeconds(0.6),
            },
        };
        return DriveSimulation
            .Of(Machine, Typed.Demand(speed, mass), dynamics)
            .Value.Through(DrivePlan.Steady(Typed.Seconds(10)))
            .Summary(Typed.Seconds(6), Typed.Seconds(10));
    }

    private static void Near(double expected, double actual, double relative) =>
        Assert.True(
            Math.Abs(expected - actual) <= relative * Math.Abs(expected),
            $"expected {expected}, found {actual}: {Math.Abs((actual / expected) - 1):P2} off"
        );
}
