using System.Runtime.CompilerServices;

namespace TreadmillMech.Model;

/// <summary>The table of inputs: every study, file and document takes names and units from here.</summary>
public static class Inputs
{
    private static readonly List<Input> Table = [];

    /// <summary>Width of the running belt.</summary>
    public static Input BeltWidth { get; } = Add("b", "m", "Width of the running belt");

    /// <summary>Thickness of the running belt.</summary>
    public static Input BeltThickness { get; } = Add("h", "m", "Thickness of the running belt");

    /// <summary>Mass of the running belt for each area.</summary>
    public static Input BeltMassPerArea { get; } = Add("m''", "kg/m2", "Mass of the running belt for each area");

    /// <summary>Stiffness of the running belt: strand force at a strain of one.</summary>
    public static Input BeltStiffness { get; } =
        Add("EA", "N", "Stiffness of the running belt: strand force at a strain of one");

    /// <summary>Strand tension of the running belt at rest, before the turns given here.</summary>
    public static Input RestTension { get; } =
        Add("T0", "N", "Strand tension of the running belt at rest, before the turns given here");

    /// <summary>Outside diameter of the drive roller.</summary>
    public static Input DriveRollerDiameter { get; } = Add("d1", "m", "Outside diameter of the drive roller");

    /// <summary>Outside diameter of the undriven roller.</summary>
    public static Input TailRollerDiameter { get; } = Add("d2", "m", "Outside diameter of the undriven roller");

    /// <summary>Moment of inertia of the drive roller with its pulley and flywheel.</summary>
    public static Input DriveRollerInertia { get; } =
        Add("J1", "kg m2", "Moment of inertia of the drive roller with its pulley and flywheel");

    /// <summary>Moment of inertia of the undriven roller.</summary>
    public static Input TailRollerInertia { get; } = Add("J2", "kg m2", "Moment of inertia of the undriven roller");

    /// <summary>Distance between the roller axes.</summary>
    public static Input CentreDistance { get; } = Add("C", "m", "Distance between the roller axes");

    /// <summary>Travel of the drive roller's mounting for each newton on it.</summary>
    public static Input DriveHubCompliance { get; } =
        Add("1/k1", "m/N", "Travel of the drive roller's mounting for each newton on it");

    /// <summary>Travel of the undriven roller's mounting for each newton on it.</summary>
    public static Input TailHubCompliance { get; } =
        Add("1/k2", "m/N", "Travel of the undriven roller's mounting for each newton on it");

    /// <summary>Travel of a take-up bolt in one turn.</summary>
    public static Input ThreadLead { get; } = Add("l", "m", "Travel of a take-up bolt in one turn");

    /// <summary>Angle between the take-up bolts and the line of centres.</summary>
    public static Input BoltAngle { get; } =
        Add("gamma", "rad", "Angle between the take-up bolts and the line of centres");

    /// <summary>Turns given to the left bolt, positive tightens.</summary>
    public static Input LeftTurns { get; } = Add("n_l", "1", "Turns given to the left bolt, positive tightens");

    /// <summary>Turns given to the right bolt, positive tightens.</summary>
    public static Input RightTurns { get; } = Add("n_r", "1", "Turns given to the right bolt, positive tightens");

    /// <summary>Friction between running belt and drive roller.</summary>
    public static Input DriveRollerFriction { get; } =
        Add("mu_r", "1", "Friction between running belt and drive roller");

    /// <summary>Friction between running belt and deck, kinetic.</summary>
    public static Input DeckFriction { get; } = Add("mu_d", "1", "Friction between running belt and deck, kinetic");

    /// <summary>Pull of the moving belt with nobody on it.</summary>
    public static Input BeltDrag { get; } = Add("F0", "N", "Pull of the moving belt with nobody on it");

    /// <summary>Strand tension of the drive belt at rest, of the strand its tensioner keeps.</summary>
    public static Input DriveBeltTension { get; } =
        Add("T_d", "N", "Strand tension of the drive belt at rest, of the strand its tensioner keeps");

    /// <summary>Friction between drive belt and motor pulley, on its face.</summary>
    public static Input DriveBeltFriction { get; } =
        Add("mu_p", "1", "Friction between drive belt and motor pulley, on its face");

    /// <summary>Half of the angle of the drive belt's grooves.</summary>
    public static Input GrooveHalfAngle { get; } =
        Add("beta_g", "rad", "Half of the angle of the drive belt's grooves");

    /// <summary>Mass of the drive belt for each length.</summary>
    public static Input DriveBeltMassPerLength { get; } = Add("m'_d", "kg/m", "Mass of the drive belt for each length");

    /// <summary>Effective diameter of the motor's pulley.</summary>
    public static Input MotorPulleyDiameter { get; } = Add("d_m", "m", "Effective diameter of the motor's pulley");

    /// <summary>Effective diameter of the drive roller's pulley.</summary>
    public static Input RollerPulleyDiameter { get; } =
        Add("d_p", "m", "Effective diameter of the drive roller's pulley");

    /// <summary>Distance between the pulley axes.</summary>
    public static Input PulleyCentreDistance { get; } = Add("C_d", "m", "Distance between the pulley axes");

    /// <summary>Motor constant, both volt seconds per radian and newton metres per ampere.</summary>
    public static Input MotorConstant { get; } =
        Add("k", "V s/rad", "Motor constant, both volt seconds per radian and newton metres per ampere");

    /// <summary>Resistance of the armature at its temperature, brushes included.</summary>
    public static Input ArmatureResistance { get; } =
        Add("R", "ohm", "Resistance of the armature at its temperature, brushes included");

    /// <summary>Voltage lost at both brushes.</summary>
    public static Input BrushDrop { get; } = Add("V_b", "V", "Voltage lost at both brushes");

    /// <summary>Torque lost inside the motor.</summary>
    public static Input MotorFrictionTorque { get; } = Add("M_f", "N m", "Torque lost inside the motor");

    /// <summary>Efficiency of the motor controller.</summary>
    public static Input ControllerEfficiency { get; } = Add("eta", "1", "Efficiency of the motor controller");

    /// <summary>Mains power at rest, console and controller.</summary>
    public static Input StandbyPower { get; } = Add("P_0", "W", "Mains power at rest, console and controller");

    /// <summary>Power factor at the mains.</summary>
    public static Input PowerFactor { get; } = Add("lambda_p", "1", "Power factor at the mains");

    /// <summary>Mains voltage, root mean square.</summary>
    public static Input MainsVoltage { get; } = Add("V_m", "V", "Mains voltage, root mean square");

    /// <summary>Highest voltage that the controller gives the motor.</summary>
    public static Input MotorVoltageLimit { get; } =
        Add("V_max", "V", "Highest voltage that the controller gives the motor");

    /// <summary>Highest current that the controller gives the motor.</summary>
    public static Input MotorCurrentLimit { get; } =
        Add("I_max", "A", "Highest current that the controller gives the motor");

    /// <summary>Mass of the person on the belt.</summary>
    public static Input PersonMass { get; } = Add("m", "kg", "Mass of the person on the belt");

    /// <summary>Leg length of the person, hip to ground.</summary>
    public static Input LegLength { get; } = Add("l_h", "m", "Leg length of the person, hip to ground");

    /// <summary>Speed of the running belt.</summary>
    public static Input BeltSpeed { get; } = Add("v", "m/s", "Speed of the running belt");

    /// <summary>Angle of the deck, positive uphill.</summary>
    public static Input Incline { get; } = Add("theta", "rad", "Angle of the deck, positive uphill");

    /// <summary>Place of foot strike behind the axis of the front roller.</summary>
    public static Input StrikePosition { get; } =
        Add("x_0", "m", "Place of foot strike behind the axis of the front roller");

    /// <summary>Step frequency, both feet counted, where it is given.</summary>
    public static Input StepFrequency { get; } = Add("f", "Hz", "Step frequency, both feet counted, where it is given");

    /// <summary>Peak of the braking push over the body's weight, where it is given.</summary>
    public static Input BrakingPeak { get; } =
        Add("B", "1", "Peak of the braking push over the body's weight, where it is given");

    /// <summary>Share of the weight that the hands carry on the rails.</summary>
    public static Input RailSupport { get; } =
        Add("lambda", "1", "Share of the weight that the hands carry on the rails");

    /// <summary>Force of the rails on the hands along the deck, positive forwards.</summary>
    public static Input RailForce { get; } =
        Add("F_h", "N", "Force of the rails on the hands along the deck, positive forwards");

    /// <summary>All of them, in order.</summary>
    public static IReadOnlyList<Input> All => Table;

    private static Input Add(string symbol, string unit, string description, [CallerMemberName] string name = "")
    {
        Input input = new(name, symbol, unit, description) { Index = Table.Count };
        Table.Add(input);
        return input;
    }
}
