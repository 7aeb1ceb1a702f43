using System.Runtime.InteropServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>A machine and the demand on it as plain numbers in SI units: the inputs of the model.</summary>
/// <typeparam name="T">Number type.</typeparam>
/// <remarks>A new input is one field here and one line in <see cref="Inputs"/>, in the same place; a test keeps them in step.</remarks>
[StructLayout(LayoutKind.Sequential)]
public struct MachineNumbers<T>
    where T : struct, IReal<T>
{
    /// <summary>Width of the running belt [m].</summary>
    public T BeltWidth;

    /// <summary>Thickness of the running belt [m].</summary>
    public T BeltThickness;

    /// <summary>Mass of the running belt for each area [kg/m2].</summary>
    public T BeltMassPerArea;

    /// <summary>Stiffness of the running belt: strand force at a strain of one [N].</summary>
    public T BeltStiffness;

    /// <summary>Strand tension of the running belt at rest, before the turns given here [N].</summary>
    public T RestTension;

    /// <summary>Outside diameter of the drive roller [m].</summary>
    public T DriveRollerDiameter;

    /// <summary>Outside diameter of the undriven roller [m].</summary>
    public T TailRollerDiameter;

    /// <summary>Moment of inertia of the drive roller with its pulley and flywheel [kg m2].</summary>
    public T DriveRollerInertia;

    /// <summary>Moment of inertia of the undriven roller [kg m2].</summary>
    public T TailRollerInertia;

    /// <summary>Distance between the roller axes [m].</summary>
    public T CentreDistance;

    /// <summary>Travel of the drive roller's mounting for each newton on it [m/N].</summary>
    public T DriveHubCompliance;

    /// <summary>Travel of the undriven roller's mounting for each newton on it [m/N].</summary>
    public T TailHubCompliance;

    /// <summary>Travel of a take-up bolt in one turn [m].</summary>
    public T ThreadLead;

    /// <summary>Angle between the take-up bolts and the line of centres [rad].</summary>
    public T BoltAngle;

    /// <summary>Turns given to the left bolt, positive tightens [1].</summary>
    public T LeftTurns;

    /// <summary>Turns given to the right bolt, positive tightens [1].</summary>
    public T RightTurns;

    /// <summary>Friction between running belt and drive roller [1].</summary>
    public T DriveRollerFriction;

    /// <summary>Friction between running belt and deck, kinetic [1].</summary>
    public T DeckFriction;

    /// <summary>Pull of the moving belt with nobody on it [N].</summary>
    public T BeltDrag;

    /// <summary>Strand tension of the drive belt at rest, of the strand its tensioner keeps [N].</summary>
    public T DriveBeltTension;

    /// <summary>Friction between drive belt and motor pulley, on its face [1].</summary>
    public T DriveBeltFriction;

    /// <summary>Half of the angle of the drive belt's grooves [rad].</summary>
    public T GrooveHalfAngle;

    /// <summary>Mass of the drive belt for each length [kg/m].</summary>
    public T DriveBeltMassPerLength;

    /// <summary>Effective diameter of the motor's pulley [m].</summary>
    public T MotorPulleyDiameter;

    /// <summary>Effective diameter of the drive roller's pulley [m].</summary>
    public T RollerPulleyDiameter;

    /// <summary>Distance between the pulley axes [m].</summary>
    public T PulleyCentreDistance;

    /// <summary>Motor constant, both volt seconds per radian and newton metres per ampere [V s/rad].</summary>
    public T MotorConstant;

    /// <summary>Resistance of the armature at its temperature, brushes included [ohm].</summary>
    public T ArmatureResistance;

    /// <summary>Voltage lost at both brushes [V].</summary>
    public T BrushDrop;

    /// <summary>Torque lost inside the motor [N m].</summary>
    public T MotorFrictionTorque;

    /// <summary>Efficiency of the motor controller [1].</summary>
    public T ControllerEfficiency;

    /// <summary>Mains power at rest, console and controller [W].</summary>
    public T StandbyPower;

    /// <summary>Power factor at the mains [1].</summary>
    public T PowerFactor;

    /// <summary>Mains voltage, root mean square [V].</summary>
    public T MainsVoltage;

    /// <summary>Highest voltage that the controller gives the motor [V].</summary>
    public T MotorVoltageLimit;

    /// <summary>Highest current that the controller gives the motor [A].</summary>
    public T MotorCurrentLimit;

    /// <summary>Mass of the person on the belt [kg].</summary>
    public T PersonMass;

    /// <summary>Leg length of the person, hip to ground [m].</summary>
    public T LegLength;

    /// <summary>Speed of the running belt [m/s].</summary>
    public T BeltSpeed;

    /// <summary>Angle of the deck, positive uphill [rad].</summary>
    public T Incline;

    /// <summary>Place of foot strike behind the axis of the front roller [m].</summary>
    public T StrikePosition;

    /// <summary>Step frequency, both feet counted, where it is given [Hz].</summary>
    public T StepFrequency;

    /// <summary>Peak of the braking push over the body's weight, where it is given [1].</summary>
    public T BrakingPeak;

    /// <summary>Share of the weight that the hands carry on the rails [1].</summary>
    public T RailSupport;

    /// <summary>Force of the rails on the hands along the deck, positive forwards [N].</summary>
    public T RailForce;
}
