using System.Runtime.CompilerServices;

namespace TreadmillMech.Model;

/// <summary>The table of inputs: every study, file and document takes names and units from here.</summary>
public static class Inputs
{
    private static readonly List<Input> Table = [];

    /// <summary>Width of the running belt.</summary>
    public static Input BeltWidth { get; } = Add("b", "m", "Width of the running belt", 0.2, 1.2);

    /// <summary>Thickness of the running belt.</summary>
    public static Input BeltThickness { get; } = Add("h", "m", "Thickness of the running belt", 0.0005, 0.006);

    /// <summary>Mass of the running belt for each area.</summary>
    public static Input BeltMassPerArea { get; } =
        Add("m''", "kg/m2", "Mass of the running belt for each area", 0.5, 8);

    /// <summary>Stiffness of the running belt: strand force at a strain of one.</summary>
    public static Input BeltStiffness { get; } =
        Add("EA", "N", "Stiffness of the running belt: strand force at a strain of one", 20000, 4.8e6);

    /// <summary>Strand tension of the running belt at rest, before the turns given here.</summary>
    public static Input RestTension { get; } =
        Add("T0", "N", "Strand tension of the running belt at rest, before the turns given here", 0, 20000);

    /// <summary>Outside diameter of the drive roller.</summary>
    public static Input DriveRollerDiameter { get; } =
        Add("d1", "m", "Outside diameter of the drive roller", 0.02, 0.2);

    /// <summary>Outside diameter of the undriven roller.</summary>
    public static Input TailRollerDiameter { get; } =
        Add("d2", "m", "Outside diameter of the undriven roller", 0.02, 0.2);

    /// <summary>Moment of inertia of the drive roller with its pulley and flywheel.</summary>
    public static Input DriveRollerInertia { get; } =
        Add("J1", "kg m2", "Moment of inertia of the drive roller with its pulley and flywheel", 1e-6, 1);

    /// <summary>Moment of inertia of the undriven roller.</summary>
    public static Input TailRollerInertia { get; } =
        Add("J2", "kg m2", "Moment of inertia of the undriven roller", 1e-6, 1);

    /// <summary>Distance between the roller axes.</summary>
    public static Input CentreDistance { get; } = Add("C", "m", "Distance between the roller axes", 0.6, 4);

    /// <summary>Travel of the drive roller's mounting for each newton on it.</summary>
    public static Input DriveHubCompliance { get; } =
        Add("1/k1", "m/N", "Travel of the drive roller's mounting for each newton on it", 0, 2e-5);

    /// <summary>Travel of the undriven roller's mounting for each newton on it.</summary>
    public static Input TailHubCompliance { get; } =
        Add("1/k2", "m/N", "Travel of the undriven roller's mounting for each newton on it", 0, 2e-5);

    /// <summary>Travel of a take-up bolt in one turn.</summary>
    public static Input ThreadLead { get; } = Add("l", "m", "Travel of a take-up bolt in one turn", 0.0002, 0.006);

    /// <summary>Angle between the take-up bolts and the line of centres.</summary>
    public static Input BoltAngle { get; } =
        Add("gamma", "rad", "Angle between the take-up bolts and the line of centres", 0, Math.PI / 3);

    /// <summary>Turns given to the left bolt, positive tightens.</summary>
    public static Input LeftTurns { get; } =
        Add("n_l", "1", "Turns given to the left bolt, positive tightens", -20, 20);

    /// <summary>Turns given to the right bolt, positive tightens.</summary>
    public static Input RightTurns { get; } =
        Add("n_r", "1", "Turns given to the right bolt, positive tightens", -20, 20);

    /// <summary>Friction between running belt and drive roller.</summary>
    public static Input DriveRollerFriction { get; } =
        Add("mu_r", "1", "Friction between running belt and drive roller", 0.02, 1.5);

    /// <summary>Friction between running belt and deck, kinetic.</summary>
    public static Input DeckFriction { get; } =
        Add("mu_d", "1", "Friction between running belt and deck, kinetic", 0.02, 1);

    /// <summary>Pull of the moving belt with nobody on it.</summary>
    public static Input BeltDrag { get; } = Add("F0", "N", "Pull of the moving belt with nobody on it", 0, 500);

    /// <summary>Strand tension of the drive belt at rest, of the strand its tensioner keeps.</summary>
    public static Input DriveBeltTension { get; } =
        Add("T_d", "N", "Strand tension of the drive belt at rest, of the strand its tensioner keeps", 5, 3000);

    /// <summary>Friction between drive belt and motor pulley, on its face.</summary>
    public static Input DriveBeltFriction { get; } =
        Add("mu_p", "1", "Friction between drive belt and motor pulley, on its face", 0.05, 1.5);

    /// <summary>Half of the angle of the drive belt's grooves.</summary>
    public static Input GrooveHalfAngle { get; } =
        Add("beta_g", "rad", "Half of the angle of the drive belt's grooves", Math.PI / 18, Math.PI / 2);

    /// <summary>Mass of the drive belt for each length.</summary>
    public static Input DriveBeltMassPerLength { get; } =
        Add("m'_d", "kg/m", "Mass of the drive belt for each length", 0, 1);

    /// <summary>Effective diameter of the motor's pulley.</summary>
    public static Input MotorPulleyDiameter { get; } =
        Add("d_m", "m", "Effective diameter of the motor's pulley", 0.01, 0.15);

    /// <summary>Effective diameter of the drive roller's pulley.</summary>
    public static Input RollerPulleyDiameter { get; } =
        Add("d_p", "m", "Effective diameter of the drive roller's pulley", 0.02, 0.3);

    /// <summary>Distance between the pulley axes.</summary>
    public static Input PulleyCentreDistance { get; } = Add("C_d", "m", "Distance between the pulley axes", 0.05, 0.6);

    /// <summary>Motor constant, both volt seconds per radian and newton metres per ampere.</summary>
    public static Input MotorConstant { get; } =
        Add("k", "V s/rad", "Motor constant, both volt seconds per radian and newton metres per ampere", 0.02, 5);

    /// <summary>Resistance of the armature at its temperature, brushes included.</summary>
    public static Input ArmatureResistance { get; } =
        Add("R", "ohm", "Resistance of the armature at its temperature, brushes included", 0.005, 100);

    /// <summary>Voltage lost at both brushes.</summary>
    public static Input BrushDrop { get; } = Add("V_b", "V", "Voltage lost at both brushes", 0, 5);

    /// <summary>Torque lost inside the motor.</summary>
    public static Input MotorFrictionTorque { get; } = Add("M_f", "N m", "Torque lost inside the motor", 0, 5);

    /// <summary>Efficiency of the motor controller.</summary>
    public static Input ControllerEfficiency { get; } = Add("eta", "1", "Efficiency of the motor controller", 0.3, 1);

    /// <summary>Mains power at rest, console and controller.</summary>
    public static Input StandbyPower { get; } = Add("P_0", "W", "Mains power at rest, console and controller", 0, 200);

    /// <summary>Power factor at the mains.</summary>
    public static Input PowerFactor { get; } = Add("lambda_p", "1", "Power factor at the mains", 0.3, 1);

    /// <summary>Mains voltage, root mean square.</summary>
    public static Input MainsVoltage { get; } = Add("V_m", "V", "Mains voltage, root mean square", 80, 300);

    /// <summary>Highest voltage that the controller gives the motor.</summary>
    public static Input MotorVoltageLimit { get; } =
        Add("V_max", "V", "Highest voltage that the controller gives the motor", 10, 500);

    /// <summary>Highest current that the controller gives the motor.</summary>
    public static Input MotorCurrentLimit { get; } =
        Add("I_max", "A", "Highest current that the controller gives the motor", 0.5, 100);

    /// <summary>Mass of the person on the belt.</summary>
    public static Input PersonMass { get; } = Add("m", "kg", "Mass of the person on the belt", 10, 350);

    /// <summary>Leg length of the person, hip to ground.</summary>
    public static Input LegLength { get; } = Add("l_h", "m", "Leg length of the person, hip to ground", 0.4, 1.3);

    /// <summary>Speed of the running belt.</summary>
    public static Input BeltSpeed { get; } = Add("v", "m/s", "Speed of the running belt", 0.1, 8);

    /// <summary>Angle of the deck, positive uphill.</summary>
    public static Input Incline { get; } =
        Add("theta", "rad", "Angle of the deck, positive uphill", Math.Atan(-0.1), Math.Atan(0.4));

    /// <summary>Place of foot strike behind the axis of the front roller.</summary>
    public static Input StrikePosition { get; } =
        Add("x_0", "m", "Place of foot strike behind the axis of the front roller", 0.05, 1.5);

    /// <summary>Step frequency, both feet counted, where it is given.</summary>
    public static Input StepFrequency { get; } =
        Add("f", "Hz", "Step frequency, both feet counted, where it is given", 0.5, 5);

    /// <summary>Peak of the braking push over the body's weight, where it is given.</summary>
    public static Input BrakingPeak { get; } =
        Add("B", "1", "Peak of the braking push over the body's weight, where it is given", 0.01, 1.5);

    /// <summary>Share of the weight that the hands carry on the rails.</summary>
    public static Input RailSupport { get; } =
        Add("lambda", "1", "Share of the weight that the hands carry on the rails", 0, 0.9);

    /// <summary>Force of the rails on the hands along the deck, positive forwards.</summary>
    public static Input RailForce { get; } =
        Add("F_h", "N", "Force of the rails on the hands along the deck, positive forwards", -500, 500);

    /// <summary>All of them, in order.</summary>
    public static IReadOnlyList<Input> All => Table;

    private static Input Add(
        string symbol,
        string unit,
        string description,
        double from,
        double to,
        [CallerMemberName] string name = ""
    )
    {
        Input input = new(name, symbol, unit, description) { Index = Table.Count, Range = new(from, to) };
        Table.Add(input);
        return input;
    }
}
