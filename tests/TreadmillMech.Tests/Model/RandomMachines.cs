using TreadmillMech.Model;

namespace TreadmillMech.Tests.Model;

/// <summary>Machines with people on them, drawn over what is found in the field and somewhat beyond.</summary>
internal static class RandomMachines
{
    internal static IEnumerable<MachineKinds> AllKinds =>
        from end in Enum.GetValues<DriveEnd>()
        from tensioning in Enum.GetValues<Tensioning>()
        from gait in Enum.GetValues<Gait>()
        from cadence in (bool[])[false, true]
        from braking in (bool[])[false, true]
        select new MachineKinds(end, tensioning, gait, cadence, braking);

    internal static MachineKinds Kinds(Random random) =>
        new(
            random.Next(2) == 0 ? DriveEnd.Front : DriveEnd.Rear,
            (Tensioning)random.Next(7),
            (Gait)random.Next(3),
            random.Next(3) == 0,
            random.Next(3) == 0
        );

    internal static MachineNumbers<Real> Numbers(Random random, in MachineKinds kinds)
    {
        MachineNumbers<Real> x = default;
        Body(random, ref x);
        Drive(random, ref x);
        Demand(random, in kinds, ref x);
        return x;
    }

    internal static double Between(Random random, double from, double to) => from + ((to - from) * random.NextDouble());

    private static double Sometimes(Random random, double value) => random.Next(2) == 0 ? 0 : value;

    private static void Body(Random random, ref MachineNumbers<Real> x)
    {
        x.BeltWidth = Between(random, 0.3, 0.6);
        x.BeltThickness = Between(random, 0.001, 0.003);
        x.BeltMassPerArea = Between(random, 1.5, 3.5);
        x.BeltStiffness = Between(random, 1e5, 1e6);
        x.RestTension = Between(random, 300, 3000);
        x.DriveRollerDiameter = Between(random, 0.03, 0.1);
        x.TailRollerDiameter = Between(random, 0.03, 0.1);
        x.DriveRollerInertia = Between(random, 0.001, 0.1);
        x.TailRollerInertia = Between(random, 1e-4, 1e-2);
        x.CentreDistance = Between(random, 1.2, 2);
        x.DriveHubCompliance = Sometimes(random, Between(random, 1e-8, 1e-6));
        x.TailHubCompliance = Sometimes(random, Between(random, 1e-8, 1e-6));
        x.ThreadLead = Between(random, 0.001, 0.002);
        x.BoltAngle = Sometimes(random, Between(random, 0, 0.5));
        x.LeftTurns = Between(random, 0, 1);
        x.RightTurns = Between(random, 0, 1);
        x.DriveRollerFriction = Between(random, 0.05, 0.6);
        x.DeckFriction = Between(random, 0.03, 0.4);
        x.BeltDrag = Between(random, 0, 100);
    }

    private static void Drive(Random random, ref MachineNumbers<Real> x)
    {
        x.DriveBeltTension = Between(random, 50, 600);
        x.DriveBeltFriction = Between(random, 0.2, 0.8);
        x.GrooveHalfAngle = random.Next(2) == 0 ? 0.349 : 1.5;
        x.DriveBeltMassPerLength = Between(random, 0.01, 0.1);
        x.MotorPulleyDiameter = Between(random, 0.02, 0.06);
        x.RollerPulleyDiameter = Between(random, 0.05, 0.2);
        x.PulleyCentreDistance = Between(random, 0.15, 0.4);
        x.MotorConstant = Between(random, 0.1, 1.5);
        x.ArmatureResistance = Between(random, 0.1, 3);
        x.BrushDrop = Between(random, 0, 3);
        x.MotorFrictionTorque = Between(random, 0, 0.5);
        x.ControllerEfficiency = Between(random, 0.6, 0.95);
        x.StandbyPower = Between(random, 0, 20);
        x.PowerFactor = Between(random, 0.5, 1);
        x.MainsVoltage = Between(random, 100, 240);
        x.MotorVoltageLimit = 300;
        x.MotorCurrentLimit = 50;
    }

    private static void Demand(Random random, in MachineKinds kinds, ref MachineNumbers<Real> x)
    {
        x.PersonMass = Between(random, 40, 180);
        x.LegLength = Between(random, 0.7, 1.1);
        x.BeltSpeed = kinds.Gait switch
        {
            Gait.Walking => Between(random, 0.3, 3),
            Gait.Running => Between(random, 1.5, 7),
            _ => Between(random, 0.3, 7),
        };
        x.Incline = Sometimes(random, Between(random, -0.1, 0.38));
        x.StrikePosition = Between(random, 0.1, 0.6);
        x.StepFrequency = Between(random, 1.2, 3.5);
        x.BrakingPeak = Between(random, 0.05, 1);
        x.RailSupport = Sometimes(random, Between(random, 0, 0.8));
        x.RailForce = Sometimes(random, Between(random, -200, 200));
    }
}
