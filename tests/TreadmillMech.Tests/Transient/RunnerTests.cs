using TreadmillMech.Model;
using TreadmillMech.Model.Transient;

namespace TreadmillMech.Tests.Transient;

/// <summary>Runs: allocation, eight at once, known motions.</summary>
public sealed class RunnerTests
{
    [Fact]
    public void OneRunAllocatesNothing() => AllocatesNothing<Real>(1);

    [Fact]
    public void EightRunsAllocateNothing() => AllocatesNothing<Lanes>(8);

    private static void AllocatesNothing<T>(int count)
        where T : struct, IReal<T>
    {
        CancellationToken token = TestContext.Current.CancellationToken;
        Prepared<T>(count).Run(null, token);
        DriveRunner<T> runner = Prepared<T>(count);
        long before = GC.GetAllocatedBytesForCurrentThread();
        runner.Run(null, token);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    private static DriveRunner<T> Prepared<T>(int count)
        where T : struct, IReal<T>
    {
        DriveCase[] cases = [.. Enumerable.Range(0, count).Select(i => Case("slip", 600 + (20 * i)))];
        return new DriveRunner<T>(cases);
    }

    private static DriveCase Case(string name, double tension)
    {
        (MachineNumbers<Real> machine, DriveKinds kinds, DynamicsNumbers dynamics, PlanNumbers plan) =
            ReferenceTests.Case(name, 1e-6);
        machine.RestTension = tension;
        return new(in machine, in kinds, in dynamics, plan);
    }

    // Eight machines side by side, each with steps of its own: to the tolerance what each does alone.
    [Theory]
    [InlineData("run")]
    [InlineData("slip")]
    [InlineData("walk")]
    [InlineData("coast")]
    [InlineData("warm")]
    public void EightSideBySideDoWhatEachDoesAlone(string name)
    {
        double[] tensions = [560, 600, 650, 700, 800, 1000, 1500];
        DriveCase[] together = [.. tensions.Select(tension => Case(name, tension))];
        new DriveRunner<Lanes>(together).Run(null, TestContext.Current.CancellationToken);
        for (int i = 0; i < tensions.Length; i++)
        {
            DriveCase alone = Case(name, tensions[i]);
            new DriveRunner<Real>([alone]).Run(null, TestContext.Current.CancellationToken);
            Assert.Equal(alone.Record.Rows, together[i].Record.Rows);
            for (int column = 0; column < DriveStates.Count; column++)
            {
                ReadOnlySpan<double> expected = alone.Record.Column(column);
                ReadOnlySpan<double> actual = together[i].Record.Column(column);
                for (int row = 0; row < expected.Length; row++)
                {
                    double allowed = 2e-5 * (DriveStates.Scales[column] + Math.Abs(expected[row]));
                    Assert.True(
                        Math.Abs(expected[row] - actual[row]) <= allowed,
                        $"{name} {tensions[i]} N, column {column}, row {row}: {expected[row]} alone, {actual[row]}"
                    );
                }
            }
        }
    }

    // A force that is not a number, half-way: the run ends there, says where and why, and keeps what came before.
    [Fact]
    public void AFailureIsToldWithWhatWasComputedSoFar()
    {
        (MachineNumbers<Real> machine, DriveKinds kinds, DynamicsNumbers dynamics, _) = ReferenceTests.Case(
            "run",
            1e-6
        );
        PlanNumbers plan = new()
        {
            Duration = 1,
            SetTimes = [0],
            SetSpeeds = [3],
            JamFrom = 0.5,
            JamForce = double.NaN,
            Interval = 0.01,
            Tolerance = 1e-6,
        };
        DriveRun run = new(Bench.Run(machine, kinds, dynamics, plan), in kinds);
        Assert.False(run.Complete);
        Assert.Equal(FailureReason.NotFinite, run.Failure!.Why);
        Assert.Equal(0.5, run.Failure.Time.Seconds, 1e-9);
        Assert.InRange(run.Failure.BeltSpeed.MetersPerSecond, 2.5, 3.5);
        Assert.Equal(51, run.Count);
        Assert.All(run.Values(DriveRun.Columns[1]), speed => Assert.InRange(speed, 2.5, 3.5));
    }

    // Nobody on the belt, the key pulled: drag and motor friction are constant, the machine slows in a straight line, all
    // its masses reckoned at the belt. Creep and strands do not matter between two even times.
    [Fact]
    public void AnEmptyMachineRunsDownInAStraightLine()
    {
        (MachineNumbers<Real> machine, DriveKinds kinds, DynamicsNumbers dynamics, PlanNumbers plan) =
            ReferenceTests.Case("empty-coast", 1e-7);
        DriveRecord record = Bench.Run(machine, kinds, dynamics, plan);
        const double R1 = 0.026;
        double ratio = 100.0 / 30;
        double angle = Math.Asin((0.026 - 0.0235) / 1.35);
        double loop =
            (2 * 1.35 * Math.Cos(angle)) + (R1 * (Math.PI + (2 * angle))) + (0.0235 * (Math.PI - (2 * angle)));
        double mass =
            (2.4 * 0.45 * loop)
            + (Tube(0.045) / (0.0235 * 0.0235))
            + (Tube(0.05) / (R1 * R1))
            + (0.01 * ratio * ratio / (R1 * R1));
        double expected = -(20 + (0.1 * ratio / R1)) / mass;
        double from = record.Column(DriveStates.Belt)[40];
        double to = record.Column(DriveStates.Belt)[100];
        Assert.Equal(expected, (to - from) / (record.TimeOf(100) - record.TimeOf(40)), 2e-4 * Math.Abs(expected));
    }

    private static double Tube(double diameter)
    {
        double outer = 0.5 * diameter;
        double inner = outer - 0.003;
        double mass = 7850 * Math.PI * ((outer * outer) - (inner * inner)) * 0.45;
        return 0.5 * mass * ((outer * outer) + (inner * inner));
    }
}
