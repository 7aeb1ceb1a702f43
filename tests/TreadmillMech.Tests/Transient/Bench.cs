using TreadmillMech.Model;
using TreadmillMech.Model.Transient;
using UnitsNet;

namespace TreadmillMech.Tests.Transient;

/// <summary>The invented machine as plain numbers, with a drive that is wholly known.</summary>
internal static class Bench
{
    internal static DynamicsNumbers Dynamics { get; } =
        new()
        {
            MotorInertia = 0.01,
            Inductance = 0.002,
            Gain = 40,
            IntegralTime = 0.3,
            CurrentTime = 0.005,
            LossFactor = 0.1,
            DeckStatic = 0.3,
            RollerStaticRatio = 1,
            PulleyStaticRatio = 1,
            StribeckSpeed = 0.1,
            WindingStart = 20,
            MagnetStart = 20,
            DeckAir = 20,
        };

    internal static MachineNumbers<Real> Machine(Demand demand, double restTension = 1000)
    {
        Treadmill machine = OperatingPoints.Example.Machine with { RestTension = Force.FromNewtons(restTension) };
        MachineNumbers<Real> numbers = Scenario.Of(machine, demand).Numbers;
        numbers.MotorVoltageLimit = 180;
        numbers.MotorCurrentLimit = 20;
        return numbers;
    }

    internal static DriveKinds Kinds { get; } =
        new(
            new(DriveEnd.Front, Tensioning.SlidingMotor, Gait.BySpeed, false, false),
            true,
            SpeedSensor.DriveRoller,
            false,
            false,
            true,
            false,
            false
        );

    internal static PlanNumbers Plan(double tolerance, double duration, double speed) =>
        Plan(tolerance, duration, [0], [speed]);

    /// <summary>A plan with rows at a hundredth of its length.</summary>
    internal static PlanNumbers Plan(
        double tolerance,
        double duration,
        double[] times,
        double[] speeds,
        double keyAt = double.PositiveInfinity
    ) =>
        new()
        {
            Duration = duration,
            SetTimes = times,
            SetSpeeds = speeds,
            KeyAt = keyAt,
            Interval = duration / 100,
            Tolerance = tolerance,
        };

    internal static DynamicsNumbers WithHeat(DynamicsNumbers dynamics)
    {
        dynamics.MagnetCoefficient = 0.002;
        dynamics.WindingCapacity = 200;
        dynamics.WindingConductance = 3;
        dynamics.HousingCapacity = 1500;
        dynamics.StillConductance = 0.8;
        dynamics.FanConductance = 2;
        dynamics.RatedSpeed = 400;
        dynamics.MotorAir = 20;
        dynamics.BeltHeatShare = 0.5;
        dynamics.BeltCapacity = 4000;
        dynamics.BeltConductance = 8;
        dynamics.DeckCapacity = 6000;
        dynamics.DeckConductance = 3;
        dynamics.DeckAir = 20;
        return dynamics;
    }

    internal static PlanNumbers Steady(double speed, double duration, double tolerance = 1e-6) =>
        new()
        {
            Duration = duration,
            SetTimes = [0],
            SetSpeeds = [speed],
            Interval = 0.005,
            Tolerance = tolerance,
        };

    internal static DriveRecord Run(
        MachineNumbers<Real> machine,
        DriveKinds kinds,
        DynamicsNumbers dynamics,
        PlanNumbers plan
    )
    {
        DriveCase one = new(in machine, in kinds, in dynamics, plan);
        new DriveRunner<Real>([one]).Run(null, default);
        return one.Record;
    }
}
