using TreadmillMech;
using TreadmillMech.Model;
using TreadmillMech.Numbers;

namespace AotCheck;

/// <summary>Number types: the model on plain numbers, with first and with second derivatives.</summary>
internal static class NumbersRoom
{
    private static readonly MachineKinds Kinds = new(
        DriveEnd.Front,
        Tensioning.SlackSideIdler,
        Gait.BySpeed,
        StepFrequencyGiven: false,
        BrakingPeakGiven: false
    );

    internal static void Visit(Report report)
    {
        foreach (
            (string name, double speed, double tension) in (ReadOnlySpan<(string, double, double)>)
                [("walk", 1.4, 900), ("run", 3.2, 900), ("slip", 3.6, 420)]
        )
        {
            MachineNumbers<Real> machine = Plain(speed, tension);
            foreach (Input input in Inputs.All)
            {
                First(report, name, machine, input);
            }

            Second(report, name, machine, Inputs.RestTension, Inputs.DriveRollerFriction);
            Second(report, name, machine, Inputs.BeltSpeed, Inputs.BeltSpeed);
            Second(report, name, machine, Inputs.StrikePosition, Inputs.PersonMass);
        }

        Functions(report);
    }

    private static void First(Report report, string name, MachineNumbers<Real> machine, Input input)
    {
        MachineNumbers<Dual<Real>> lifted = machine.Lift<Dual<Real>>();
        Span<Dual<Real>> values = lifted.AsSpan();
        values[input.Index] = Dual<Real>.Variable(values[input.Index].Value);
        OperatingPointModel.Run(in lifted, in Kinds, out OutputNumbers<Dual<Real>> found);
        string by = $"slope {name} by {input.Name}:";
        report.Add($"{by} BeltMargin", found.BeltMargin.Slope);
        report.Add($"{by} PeakPull", found.PeakPull.Slope);
        report.Add($"{by} BeltSlide", found.BeltSlide.Slope);
        report.Add($"{by} DriveBeltMargin", found.DriveBeltMargin.Slope);
        report.Add($"{by} MainsPower", found.MainsPower.Slope);
    }

    private static void Second(Report report, string name, MachineNumbers<Real> machine, Input one, Input other)
    {
        MachineNumbers<Dual<Dual<Real>>> lifted = machine.Lift<Dual<Dual<Real>>>();
        Span<Dual<Dual<Real>>> values = lifted.AsSpan();
        values[one.Index] += new Dual<Dual<Real>>(0, 1);
        values[other.Index] += new Dual<Dual<Real>>(new(0, 1), 0);
        OperatingPointModel.Run(in lifted, in Kinds, out OutputNumbers<Dual<Dual<Real>>> found);
        string by = $"curvature {name} by {one.Name}, {other.Name}:";
        report.Add($"{by} RmsPull", found.RmsPull.Slope.Slope);
        report.Add($"{by} DriveRollerHubLoad", found.DriveRollerHubLoad.Slope.Slope);
        report.Add($"{by} MainsPower", found.MainsPower.Slope.Slope);
    }

    private static void Functions(Report report)
    {
        Dual<Dual<Real>> x = new(new(0.4, 1), new(1, 0));
        (Dual<Dual<Real>> sin, Dual<Dual<Real>> cos) = Dual<Dual<Real>>.SinCos(x);
        Dual<Dual<Real>> sum =
            (sin * cos / x)
            + Dual<Dual<Real>>.Exp(x)
            + Dual<Dual<Real>>.Log(x)
            + Dual<Dual<Real>>.Sqrt(x)
            + Dual<Dual<Real>>.Asin(x)
            + Dual<Dual<Real>>.Atan2(x, 2)
            + Dual<Dual<Real>>.Tanh(x)
            + Dual<Dual<Real>>.Pow(x, 1.7)
            + Dual<Dual<Real>>.Abs(-x)
            + Dual<Dual<Real>>.IfLess(x, 1, x * x, 0);
        report.Add("functions: value", sum.Value.Value);
        report.Add("functions: slope", sum.Slope.Value);
        report.Add("functions: curvature", sum.Slope.Slope);
        report.Add("functions: text", sum.ToString());
    }

    private static MachineNumbers<Real> Plain(double speed, double tension) =>
        new()
        {
            BeltWidth = 0.5,
            BeltThickness = 0.002,
            BeltMassPerArea = 2.4,
            BeltStiffness = 4.5e5,
            RestTension = tension,
            DriveRollerDiameter = 0.06,
            TailRollerDiameter = 0.05,
            DriveRollerInertia = 0.004,
            TailRollerInertia = 0.001,
            CentreDistance = 1.4,
            DriveHubCompliance = 2e-7,
            TailHubCompliance = 4e-7,
            ThreadLead = 0.00125,
            BoltAngle = 0.1,
            LeftTurns = 0.25,
            RightTurns = 0.5,
            DriveRollerFriction = 0.3,
            DeckFriction = 0.2,
            BeltDrag = 25,
            DriveBeltTension = 200,
            DriveBeltFriction = 0.35,
            GrooveHalfAngle = 0.35,
            DriveBeltMassPerLength = 0.06,
            MotorPulleyDiameter = 0.03,
            RollerPulleyDiameter = 0.09,
            PulleyCentreDistance = 0.2,
            MotorConstant = 0.3,
            ArmatureResistance = 0.8,
            BrushDrop = 2,
            MotorFrictionTorque = 0.1,
            ControllerEfficiency = 0.9,
            StandbyPower = 10,
            PowerFactor = 0.65,
            MainsVoltage = 230,
            MotorVoltageLimit = 180,
            MotorCurrentLimit = 20,
            PersonMass = 90,
            LegLength = 0.92,
            BeltSpeed = speed,
            Incline = 0.02,
            StrikePosition = 0.35,
            StepFrequency = 2.6,
            BrakingPeak = 0.3,
            RailSupport = 0.05,
            RailForce = 5,
        };
}
