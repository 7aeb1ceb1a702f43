using TreadmillMech.Laws;
using TreadmillMech.Model;
using TreadmillMech.Model.Transient;
using TreadmillMech.Tests.Model;

namespace TreadmillMech.Tests.Transient;

/// <summary>What the rates write with quotients taken once, against the laws as they are published.</summary>
public sealed class LawsInRatesTests
{
    // Rounding alone.
    private const double Agreement = 1e-11;

    [Fact]
    public void AreTheLaws()
    {
        for (int seed = 0; seed < 400; seed++)
        {
            Agree(new Random(seed));
        }
    }

    private static void Agree(Random random)
    {
        MachineKinds of = RandomMachines.Kinds(random);
        DriveKinds kinds = new(of, true, (SpeedSensor)random.Next(3), false, false, true, false, false);
        MachineNumbers<Real> machine = RandomMachines.Numbers(random, in of);
        DynamicsNumbers dynamics = Bench.Dynamics;
        DriveNumbers<Real> x = DriveSetup.Numbers(in machine, in dynamics, in kinds);
        double speed = RandomMachines.Between(random, 0.2, 5);
        Real[] state = new Real[DriveStates.Count];
        state[DriveStates.Belt] = speed;
        state[DriveStates.Roller] = (speed + RandomMachines.Between(random, -0.05, 0.1)) / x.RollerRadius;
        state[DriveStates.Motor] = (double)state[DriveStates.Roller] * x.RollerPulleyRadius / x.MotorPulleyRadius;
        state[DriveStates.Stretch] = RandomMachines.Between(random, -500, 500) / x.StrandStiffness;
        state[DriveStates.Current] = RandomMachines.Between(random, -20, 20);
        state[DriveStates.Integrator] = RandomMachines.Between(random, -60, 60);
        LoadNumbers<Real> loads = new()
        {
            Normal = 700,
            SharedNormal = 300,
            Along = 50,
            SharedAlong = 20,
            SetSpeed = RandomMachines.Between(random, 0.2, 5),
            On = 1,
        };
        Real[] rates = new Real[state.Length];
        DriveRates.Run(in x, in kinds, in loads, state, rates, out DriveWork<Real> work);
        Real approach = work.FaceSpeed - state[DriveStates.Belt];
        Real gripping = TransientLaws.GrippingPull(
            state[DriveStates.Stretch],
            approach,
            work.FaceSpeed,
            x.StrandStiffness,
            x.StrandDamping,
            x.Stiffness
        );
        Near(gripping, work.GrippingPull, 1);
        Near(
            TransientLaws.StretchRate(work.Pull, state[DriveStates.Stretch], x.StrandStiffness, x.StrandDamping),
            rates[DriveStates.Stretch],
            1
        );
        Near(
            TransientLaws.SlidingSpeed(approach, work.FaceSpeed, work.Pull, x.Stiffness, rates[DriveStates.Stretch]),
            work.Sliding,
            1
        );
        Near(
            DriveBeltLaws.CapacityOfTensionSum<Real>(2 * Math.Max(work.MeanTension, 0), x.RollerRatio),
            work.LargestPull,
            1
        );
        Real measured = kinds.Sensor switch
        {
            SpeedSensor.Belt => state[DriveStates.Belt],
            SpeedSensor.DriveRoller => work.FaceSpeed,
            _ => state[DriveStates.Motor] * x.MotorPulleyRadius / x.RollerPulleyRadius * x.RollerRadius,
        };
        Real error = loads.SetSpeed - measured;
        Real demand = TransientLaws.CurrentDemand(x.Gain, error, state[DriveStates.Integrator]);
        Real target = Math.Clamp(demand, -x.CurrentLimit, x.CurrentLimit);
        Near(
            TransientLaws.IntegratorRate(x.Gain, error, demand - target, x.IntegralTime),
            rates[DriveStates.Integrator],
            100
        );
        Real asked = TransientLaws.LoopVoltage(
            DcMotorLaws.Voltage(x.MotorConstant, state[DriveStates.Motor], target, x.Resistance, work.Brush),
            x.Inductance,
            target - state[DriveStates.Current],
            x.CurrentTime
        );
        Real given = Math.Clamp(asked, -x.VoltageLimit, x.VoltageLimit);
        Near(given, work.Voltage, 1);
        Real steady = DcMotorLaws.Voltage(
            x.MotorConstant,
            state[DriveStates.Motor],
            state[DriveStates.Current],
            x.Resistance,
            work.Brush
        );
        Near(TransientLaws.CurrentRate(given, steady, x.Inductance), rates[DriveStates.Current], 1e4);
    }

    private static void Near(double expected, double actual, double usual) =>
        Assert.Equal(expected, actual, Agreement * (Math.Abs(expected) + usual));
}
