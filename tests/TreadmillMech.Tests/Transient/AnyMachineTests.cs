using FsCheck.Xunit;
using TreadmillMech.Model;
using TreadmillMech.Model.Transient;
using TreadmillMech.Tests.Model;

namespace TreadmillMech.Tests.Transient;

/// <summary>Whatever machine and person: runs end, numbers are finite, energy is accounted for.</summary>
public sealed class AnyMachineTests
{
    [Property(MaxTest = 60)]
    public void EveryRunEndsFiniteWithItsEnergyClosed(int seed)
    {
        Random random = new(seed);
        MachineKinds of = RandomMachines.Kinds(random);
        MachineNumbers<Real> machine = RandomMachines.Numbers(random, in of);
        DynamicsNumbers dynamics = Bench.WithHeat(Bench.Dynamics);
        dynamics.MotorInertia = Math.Pow(10, RandomMachines.Between(random, -3, -1.3));
        dynamics.Inductance = Math.Pow(10, RandomMachines.Between(random, -3.3, -2));
        dynamics.Gain = RandomMachines.Between(random, 5, 80);
        dynamics.IntegralTime = RandomMachines.Between(random, 0.1, 1);
        dynamics.LossFactor = RandomMachines.Between(random, 0.03, 0.3);
        dynamics.DeckStatic = machine.DeckFriction * RandomMachines.Between(random, 1, 1.8);
        dynamics.RollerStaticRatio = RandomMachines.Between(random, 1, 1.5);
        dynamics.PulleyStaticRatio = RandomMachines.Between(random, 1, 1.5);
        DriveKinds kinds = new(
            of,
            random.Next(2) == 0,
            (SpeedSensor)random.Next(3),
            random.Next(2) == 0,
            random.Next(2) == 0,
            true,
            random.Next(2) == 0,
            random.Next(2) == 0
        );
        bool fromRest = random.Next(4) == 0;
        double speed = machine.BeltSpeed;
        PlanNumbers plan = new()
        {
            Duration = 1.2,
            SetTimes = fromRest ? [0, 1] : [0, 0.2, 0.7],
            SetSpeeds = fromRest ? [0, speed] : [speed, speed, speed * RandomMachines.Between(random, 0.3, 1.2)],
            FromRest = fromRest,
            KeyAt = random.Next(3) == 0 ? 0.8 : double.PositiveInfinity,
            JamFrom = random.Next(4) == 0 ? 0.5 : double.PositiveInfinity,
            JamUntil = 0.9,
            JamForce = RandomMachines.Between(random, 50, 3000),
            Steps = [new(0.3, RandomMachines.Between(random, 0.1, 1), 1.2, random.Next(2) == 0)],
            Interval = 0.01,
            Tolerance = 1e-6,
        };
        DriveRecord record = Bench.Run(machine, kinds, dynamics, plan);
        Assert.Equal(FailureReason.None, record.Failure);
        Assert.Equal(121, record.Rows);
        Assert.True(record.Steps + record.Rejected < 200_000, $"{record.Steps} steps, {record.Rejected} taken back");
        for (int column = 0; column < DriveColumns.Count; column++)
        {
            foreach (double value in record.Column(column))
            {
                Assert.True(double.IsFinite(value), $"column {column}");
            }
        }

        double passed = 1;
        for (int row = 0; row < record.Rows; row++)
        {
            double stored = record.Column(DriveColumns.Stored)[row] - record.Column(DriveColumns.Stored)[0];
            double supplied = record.Column(DriveStates.Supplied)[row];
            double lost = record.Column(DriveStates.Lost)[row];
            double given = record.Column(DriveStates.Given)[row];
            passed = Math.Max(passed, Math.Abs(supplied) + lost + Math.Abs(given) + Math.Abs(stored));
            double open = Math.Abs(supplied - lost - given - stored);
            Assert.True(open <= 2e-4 * passed, $"at {record.TimeOf(row)} s {open} J of {passed} J are open");
        }
    }
}
