using TreadmillMech.Laws;
using TreadmillMech.Model;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;

namespace TreadmillMech;

/// <summary>A machine and a demand as plain numbers, with the set of inputs that are not known.</summary>
/// <remarks>
/// The bridge from parts to the model. Each quantity is read once. An unknown input gets a harmless number, and its bit in
/// <see cref="Unknown"/>; the outputs that need it are not given.
/// </remarks>
internal struct Scenario
{
    internal MachineNumbers<Real> Numbers;
    internal MachineKinds Kinds;
    internal bool CanBrake;
    private ulong unknown;

    /// <summary>
    /// Inputs that are not known, as bits. The belt's stiffness matters only where turns were given or the mountings give
    /// way.
    /// </summary>
    internal readonly ulong Unknown => StiffnessMatters ? unknown : unknown & ~Inputs.BeltStiffness.Bit;

    /// <summary>Inputs whose change is nothing without a known stiffness of the belt, as bits.</summary>
    internal static ulong OnStiffness =>
        Inputs.LeftTurns.Bit | Inputs.RightTurns.Bit | Inputs.DriveHubCompliance.Bit | Inputs.TailHubCompliance.Bit;

    private readonly bool StiffnessMatters =>
        !Numbers.LeftTurns.Value.Equals(0)
        || !Numbers.RightTurns.Value.Equals(0)
        || !Numbers.DriveHubCompliance.Value.Equals(0)
        || !Numbers.TailHubCompliance.Value.Equals(0);

    internal static Scenario Of(Treadmill machine, Demand demand)
    {
        ArgumentNullException.ThrowIfNull(demand);
        Scenario scenario = OfMachine(machine);
        scenario.ReadDemand(demand);
        return scenario;
    }

    /// <summary>The demand alone, without a machine.</summary>
    internal static Scenario OfDemand(Demand demand)
    {
        ArgumentNullException.ThrowIfNull(demand);
        Scenario scenario = default;
        scenario.ReadDemand(demand);
        return scenario;
    }

    /// <summary>The machine alone, with nobody on it.</summary>
    internal static Scenario OfMachine(Treadmill machine)
    {
        ArgumentNullException.ThrowIfNull(machine);
        Scenario scenario = default;
        scenario.Kinds = new(
            machine.DriveEnd,
            machine.DriveBelt?.Tensioning ?? Tensioning.DirectDrive,
            Gait.BySpeed,
            false,
            false
        );
        scenario.CanBrake = machine.Motor is null || machine.Motor.CanBrake;
        scenario.ReadBelt(machine);
        scenario.ReadTakeUp(machine.TakeUp);
        scenario.ReadDriveBelt(machine.DriveBelt);
        scenario.ReadMotor(machine.Motor);
        scenario.ReadSupply(machine.Supply);
        return scenario;
    }

    /// <summary>Gives one input a number; with it, the input is known, and given where it is optional.</summary>
    internal void Set(Input input, double value)
    {
        Numbers.AsSpan()[input.Index] = value;
        unknown &= ~input.Bit;
        if (input == Inputs.StepFrequency)
        {
            Kinds = Kinds with { StepFrequencyGiven = true };
        }
        else if (input == Inputs.BrakingPeak)
        {
            Kinds = Kinds with { BrakingPeakGiven = true };
        }
    }

    /// <summary>Why an input has no number here; found where it has one.</summary>
    internal readonly Shortfall Lacks(Input input)
    {
        if (Refuses(input) is { Why: not Reason.Found } refused)
        {
            return refused;
        }

        MachineNumbers<Real> numbers = Numbers;
        bool given =
            (unknown & input.Bit) == 0
            && (input != Inputs.StepFrequency || Kinds.StepFrequencyGiven)
            && (input != Inputs.BrakingPeak || Kinds.BrakingPeakGiven)
            && double.IsFinite(numbers.AsSpan()[input.Index]);
        return given ? new(Reason.Found, "") : new(Reason.InputUnknown, input.Name);
    }

    /// <summary>Why an input cannot be set on this machine; found where it can.</summary>
    internal readonly Shortfall Refuses(Input input)
    {
        bool ofDriveBelt =
            input == Inputs.DriveBeltTension
            || input == Inputs.DriveBeltFriction
            || input == Inputs.GrooveHalfAngle
            || input == Inputs.DriveBeltMassPerLength
            || input == Inputs.MotorPulleyDiameter
            || input == Inputs.RollerPulleyDiameter
            || input == Inputs.PulleyCentreDistance;
        return ofDriveBelt && Kinds.Tensioning == Tensioning.DirectDrive
            ? new(Reason.NotOnThisMachine, "DriveBelt")
            : new(Reason.Found, "");
    }

    private void ReadBelt(Treadmill machine)
    {
        ref MachineNumbers<Real> x = ref Numbers;
        x.BeltWidth = Si.Length.ToSi(machine.Belt.Width);
        x.BeltThickness = Si.Length.ToSi(machine.Belt.Thickness);
        x.BeltMassPerArea = Si.MassPerArea.ToSi(machine.Belt.MassPerArea);
        x.DriveRollerDiameter = Si.Length.ToSi(machine.DriveRoller.Diameter);
        x.TailRollerDiameter = Si.Length.ToSi(machine.TailRoller.Diameter);
        x.DriveRollerInertia = Inertia(machine.DriveRoller, x.DriveRollerDiameter, x.BeltWidth);
        x.TailRollerInertia = Inertia(machine.TailRoller, x.TailRollerDiameter, x.BeltWidth);
        x.CentreDistance = Si.Length.ToSi(machine.CentreDistance);
        x.DriveHubCompliance = Compliance(machine.DriveRoller);
        x.TailHubCompliance = Compliance(machine.TailRoller);
        x.RestTension = Known(machine.RestTension, Si.Force, Inputs.RestTension, 0);
        x.DriveRollerFriction = Known(machine.DriveRoller.Friction, Si.One, Inputs.DriveRollerFriction, 0);
        x.DeckFriction = Known(machine.Deck.Friction, Si.One, Inputs.DeckFriction, 0);
        x.BeltDrag = Known(machine.BeltDrag, Si.Force, Inputs.BeltDrag, 0);

        if (machine.Belt.RelaxedForcePerWidth is { } relaxed)
        {
            x.BeltStiffness = BeltLaws.Stiffness<Real>(Si.ForcePerLength.ToSi(relaxed), x.BeltWidth);
        }
        else
        {
            unknown |= Inputs.BeltStiffness.Bit;
        }
    }

    private void ReadTakeUp(TakeUp takeUp)
    {
        Numbers.ThreadLead = Si.Length.ToSi(takeUp.Thread.Lead);
        Numbers.BoltAngle = Si.Angle.ToSi(takeUp.BoltAngle);
        Numbers.LeftTurns = takeUp.LeftTurns;
        Numbers.RightTurns = takeUp.RightTurns;
    }

    private void ReadDriveBelt(DriveBelt? belt)
    {
        ref MachineNumbers<Real> x = ref Numbers;
        if (belt is null)
        {
            (x.MotorPulleyDiameter, x.RollerPulleyDiameter, x.PulleyCentreDistance) = (1, 1, 2);
            x.GrooveHalfAngle = Math.PI / 2;
            return;
        }

        x.DriveBeltTension = Known(belt.Tension, Si.Force, Inputs.DriveBeltTension, 0);
        x.DriveBeltFriction = Known(belt.Friction, Si.One, Inputs.DriveBeltFriction, 0);
        x.GrooveHalfAngle = 0.5 * Si.Angle.ToSi(belt.GrooveAngle);
        x.DriveBeltMassPerLength = belt.MassPerLength is { } mass ? Si.MassPerLength.ToSi(mass) : 0;
        x.MotorPulleyDiameter = Si.Length.ToSi(belt.MotorPulleyDiameter);
        x.RollerPulleyDiameter = Si.Length.ToSi(belt.RollerPulleyDiameter);
        x.PulleyCentreDistance = Si.Length.ToSi(belt.CentreDistance);
    }

    private void ReadMotor(DcMotor? motor)
    {
        ref MachineNumbers<Real> x = ref Numbers;
        x.MotorConstant = Known(motor?.Constant, Si.MotorConstant, Inputs.MotorConstant, 1);
        x.ArmatureResistance = Known(motor?.ResistanceAtWork, Si.Resistance, Inputs.ArmatureResistance, 0);
        x.MotorFrictionTorque = Known(motor?.FrictionTorque, Si.Torque, Inputs.MotorFrictionTorque, 0);
        x.BrushDrop = motor is null ? 0 : Si.Voltage.ToSi(motor.BrushDrop);
        x.MotorVoltageLimit = motor?.VoltageLimit is { } volts ? Si.Voltage.ToSi(volts) : double.PositiveInfinity;
        x.MotorCurrentLimit = motor?.CurrentLimit is { } amperes ? Si.Current.ToSi(amperes) : double.PositiveInfinity;
    }

    private void ReadSupply(Supply? supply)
    {
        ref MachineNumbers<Real> x = ref Numbers;
        x.MainsVoltage = Known(supply?.Voltage, Si.Voltage, Inputs.MainsVoltage, 1);
        x.ControllerEfficiency = Known(supply?.ControllerEfficiency, Si.Ratio, Inputs.ControllerEfficiency, 1);
        x.PowerFactor = Known(supply?.PowerFactor, Si.One, Inputs.PowerFactor, 1);
        x.StandbyPower = supply is null ? 0 : Si.Power.ToSi(supply.StandbyPower);
    }

    private void ReadDemand(Demand demand)
    {
        Kinds = Kinds with
        {
            Gait = demand.Gait,
            StepFrequencyGiven = demand.Person.Cadence is not null,
            BrakingPeakGiven = demand.BrakingStep is not null,
        };
        ref MachineNumbers<Real> x = ref Numbers;
        x.PersonMass = Si.Mass.ToSi(demand.Person.Mass);
        x.LegLength = demand.Person.LegLength is { } leg ? Si.Length.ToSi(leg) : OperatingPointModel.ReferenceLeg;
        x.BeltSpeed = Si.Speed.ToSi(demand.Speed);
        x.Incline = Math.Atan(Si.Ratio.ToSi(demand.Grade));
        x.StrikePosition = Si.Length.ToSi(demand.StrikePosition);
        x.StepFrequency = demand.Person.Cadence is { } cadence ? Si.Frequency.ToSi(cadence) : 0;
        x.BrakingPeak = demand.BrakingStep ?? 0;
        x.RailSupport = demand.Rails is null ? 0 : Si.Ratio.ToSi(demand.Rails.WeightShare);
        x.RailForce = demand.Rails is null ? 0 : Si.Force.ToSi(demand.Rails.ForwardForce);
    }

    private double Known<TQuantity>(TQuantity? value, Dimension<TQuantity> dimension, Input input, double otherwise)
        where TQuantity : struct
    {
        if (value is { } known)
        {
            return dimension.ToSi(known);
        }

        unknown |= input.Bit;
        return otherwise;
    }

    private static double Compliance(Roller roller) =>
        roller.HubStiffness is { } stiffness ? 1 / Si.ForcePerLength.ToSi(stiffness) : 0;

    private static double Inertia(Roller roller, double diameter, double length) =>
        roller.Inertia is { } inertia
            ? Si.Inertia.ToSi(inertia)
            : RollerLaws.TubeInertia<Real>(SteelDensity, diameter, TubeWall, length);

    private const double SteelDensity = 7850;
    private const double TubeWall = 0.003;
}
