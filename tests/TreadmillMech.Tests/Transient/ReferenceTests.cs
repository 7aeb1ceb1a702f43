using TreadmillMech.Model;
using TreadmillMech.Model.Transient;

namespace TreadmillMech.Tests.Transient;

/// <summary>Whole runs against scipy's Radau at 1e-11 on equations that were coded a second time, in Python.</summary>
public sealed class ReferenceTests(ITestOutputHelper output)
{
    // State for state, over the size of the state: what a step at 1e-8 accumulates, and the stored digits.
    private const double Agreement = 2e-6;

    public static TheoryData<string> Cases => [.. Reference.Rows.Select(group => group.Key)];

    [Fact]
    public void TheTableIsThere() => Assert.Equal(9, Reference.Rows.Count);

    [Theory]
    [MemberData(nameof(Cases))]
    public void AgreesWithRadau(string name)
    {
        DriveRecord record = Run(name, 1e-8);
        double worst = Worst(name, record, out string where);
        output.WriteLine($"{name}: {worst:E1} at {where}, {record.Steps} steps");
        Assert.True(worst < Agreement, $"{name}: {worst:E2} at {where}");
    }

    // A wrong equation does not come nearer when the steps get smaller.
    [Theory]
    [MemberData(nameof(Cases))]
    public void ComesNearerWithSmallerSteps(string name) =>
        Assert.True(
            Worst(name, Run(name, 1e-8), out _) < 0.1 * Worst(name, Run(name, 1e-4), out _),
            $"{Worst(name, Run(name, 1e-8), out _)} {Worst(name, Run(name, 1e-4), out _)}"
        );

    internal static DriveRecord Run(string name, double tolerance)
    {
        (MachineNumbers<Real> machine, DriveKinds kinds, DynamicsNumbers dynamics, PlanNumbers plan) = Case(
            name,
            tolerance
        );
        return Bench.Run(machine, kinds, dynamics, plan);
    }

    internal static (MachineNumbers<Real>, DriveKinds, DynamicsNumbers, PlanNumbers) Case(string name, double tolerance)
    {
        MachineNumbers<Real> machine = Bench.Machine(OperatingPoints.Example.Runner);
        DriveKinds kinds = Bench.Kinds;
        DynamicsNumbers dynamics = Bench.Dynamics;
        PlanNumbers plan = Bench.Plan(tolerance, 1.5, 3);
        switch (name)
        {
            case "run":
                plan = Bench.Plan(tolerance, 1, 3);
                break;
            case "walk":
                plan = Bench.Plan(tolerance, 1.5, 1);
                break;
            case "slip":
                machine.RestTension = 600;
                plan = Bench.Plan(tolerance, 1, 3);
                break;
            case "motor-sensor":
                machine.DriveBeltTension = 120;
                kinds = kinds with { Sensor = SpeedSensor.Motor };
                plan = Bench.Plan(tolerance, 1, 3);
                break;
            case "one-quadrant":
                kinds = kinds with { CanBrake = false };
                plan = Bench.Plan(tolerance, 1.5, [0, 0.3, 0.8], [3, 3, 1]);
                break;
            case "ramp":
                plan = Bench.Plan(tolerance, 2, [0, 0.2, 1.2], [1, 1, 3]);
                break;
            case "coast":
                plan = Bench.Plan(tolerance, 1.5, [0], [2.5], 0.4);
                break;
            case "empty-coast":
                machine.PersonMass = 0;
                plan = Bench.Plan(tolerance, 1.5, [0], [3], 0.2);
                break;
            case "warm":
                kinds = kinds with { MotorHeats = true, DeckHeats = true };
                dynamics = Bench.WithHeat(dynamics);
                plan = Bench.Plan(tolerance, 2, 3);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(name));
        }

        return (machine, kinds, dynamics, plan);
    }

    private static double Worst(string name, DriveRecord record, out string where)
    {
        Assert.Equal(FailureReason.None, record.Failure);
        double worst = 0;
        where = "";
        foreach ((double time, double[] state) in Reference.Rows[name])
        {
            int row = (int)Math.Round(time / record.TimeOf(1));
            Assert.Equal(time, record.TimeOf(row), 9);
            for (int i = 0; i < state.Length; i++)
            {
                double error =
                    Math.Abs(record.Column(i)[row] - state[i]) / (DriveStates.Scales[i] + Math.Abs(state[i]));
                if (error > worst)
                {
                    worst = error;
                    where = $"state {i} at {time} s";
                }
            }
        }

        return worst;
    }
}
