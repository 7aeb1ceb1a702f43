using System.Globalization;
using TreadmillMech;
using TreadmillMech.Parts;
using UnitsNet;

namespace AotCheck;

/// <summary>The machine in time: a runner, a loose belt, a pulled key, a stall, eight machines side by side.</summary>
/// <remarks>
/// The just-in-time compiler may use wider registers and fused operations than the native program was compiled for, and each
/// step hands its last digits on. So these results are told with the digits that a run at a tolerance of 1e-8 fixes.
/// </remarks>
internal static class TransientRoom
{
    private static readonly DriveDynamics Dynamics = new()
    {
        MotorInertia = MassMomentOfInertia.FromKilogramSquareMeters(0.011),
        ArmatureInductance = ElectricInductance.FromMillihenries(2.2),
        Controller = new()
        {
            Sensor = SpeedSensor.DriveRoller,
            Gain = ElectricCurrent.FromAmperes(38),
            IntegralTime = Duration.FromMilliseconds(350),
        },
        DeckStaticFriction = 0.32,
        RollerStaticRatio = 1.2,
    };

    internal static void Visit(Report report)
    {
        Duration two = Duration.FromSeconds(2);
        Run(report, "steady run", 0.82, DrivePlan.Steady(two));
        Run(report, "loose belt", 0.5, DrivePlan.Steady(two));
        Run(report, "key pulled", 0.82, DrivePlan.CoastDown(two, Duration.FromSeconds(0.7)));
        Run(report, "braking step", 0.82, DrivePlan.BrakingStep(two, Duration.FromSeconds(1), 0.7));
        Run(report, "stumble", 0.82, DrivePlan.Stumble(two, Duration.FromSeconds(1), 0.5, 1.2));
        Run(report, "stall", 2, DrivePlan.Stall(two, Duration.FromSeconds(0.5), Force.FromNewtons(1500)));
        Run(
            report,
            "standing start",
            0.82,
            DrivePlan.StandingStart(two, Speed.FromMetersPerSecond(1.2), Acceleration.FromMetersPerSecondSquared(0.8))
        );
        SideBySide(report);
        report.Add("transient, unknown", Simulation(null));
    }

    private static Shortfall Simulation(double? kilonewtons) => Of(kilonewtons).Missing;

    private static Answer<DriveSimulation> Of(double? kilonewtons) =>
        DriveSimulation.Of(
            Example.Machine with
            {
                RestTension = kilonewtons is { } known ? Force.FromKilonewtons(known) : null,
                DriveBelt = Example.Machine.DriveBelt! with { Tension = Force.FromNewtons(300), Friction = 0.4 },
            },
            new()
            {
                Person = new() { Mass = Mass.FromKilograms(95) },
                Speed = Speed.FromMetersPerSecond(2.8),
            },
            Dynamics
        );

    private static void Run(Report report, string name, double kilonewtons, DrivePlan plan)
    {
        DriveRun run = Of(kilonewtons).Value.Run(plan with { Tolerance = 1e-8 }).Value;
        Tell(report, name, run);
        report.Add($"{name}: events", string.Join(", ", run.Events.Select(e => e.Kind)));
    }

    private static void SideBySide(Report report)
    {
        DriveSimulation[] many = [.. Enumerable.Range(0, 9).Select(i => Of(0.5 + (0.1 * i)).Value)];
        IReadOnlyList<Answer<DriveRun>> runs = DriveSimulation.RunAll(
            many,
            DrivePlan.Steady(Duration.FromSeconds(1)) with
            {
                Tolerance = 1e-8,
            }
        );
        for (int i = 0; i < runs.Count; i++)
        {
            Tell(report, $"side by side {i}", runs[i].Value);
        }
    }

    private static void Tell(Report report, string name, DriveRun run)
    {
        DriveSummary sum = run.Summary();
        Digits(report, $"{name}: mean speed [m/s]", sum.MeanSpeed.MetersPerSecond, "F6");
        Digits(report, $"{name}: slide [m]", sum.Slide.Meters, "F5");
        Digits(report, $"{name}: peak current [A]", sum.PeakCurrent.Amperes, "F3");
        Digits(report, $"{name}: rms current [A]", sum.RmsCurrent.Amperes, "F5");
        Digits(report, $"{name}: supplied [J]", sum.Supplied.Joules, "F3");
        Digits(report, $"{name}: last speed [m/s]", run[run.Count - 1].BeltSpeed.MetersPerSecond, "F5");
    }

    private static void Digits(Report report, string name, double value, string format)
    {
        string text = value.ToString(format, CultureInfo.InvariantCulture);
        report.Add(name, text == 0.0.ToString("-" + format, CultureInfo.InvariantCulture) ? text[1..] : text);
    }
}
