using System.Runtime.InteropServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model.Transient;

/// <summary>What stays the same during a run, as the rates need it.</summary>
[StructLayout(LayoutKind.Sequential)]
internal struct DriveNumbers<T>
    where T : struct, IReal<T>
{
    /// <summary>Radius of the drive roller to the belt's neutral line [m].</summary>
    internal T RollerRadius;

    /// <summary>Mass of belt and tail roller, reckoned at the belt [kg].</summary>
    internal T Mass;

    /// <summary>Moment of inertia of the drive roller [kg m2].</summary>
    internal T RollerInertia;

    /// <summary>Moment of inertia of the motor with its flywheel [kg m2].</summary>
    internal T MotorInertia;

    /// <summary>Belt stiffness [N].</summary>
    internal T Stiffness;

    /// <summary>Stiffness of the strands [N/m].</summary>
    internal T StrandStiffness;

    /// <summary>Damping of the strands [N s/m].</summary>
    internal T StrandDamping;

    /// <summary>Strand tension at rest [N].</summary>
    internal T Tension;

    /// <summary>Mass of the belt for each length [kg/m].</summary>
    internal T MassPerLength;

    /// <summary>Wrap on the drive roller [rad].</summary>
    internal T RollerWrap;

    /// <summary>Kinetic friction on the drive roller [1].</summary>
    internal T RollerKinetic;

    /// <summary>Static friction on the drive roller [1].</summary>
    internal T RollerStatic;

    /// <summary>Largest tension ratio on the drive roller at kinetic friction [1].</summary>
    internal T RollerRatio;

    /// <summary>Kinetic friction on the deck [1].</summary>
    internal T DeckKinetic;

    /// <summary>Static friction on the deck [1].</summary>
    internal T DeckStatic;

    /// <summary>Speed over which static friction falls to kinetic [m/s].</summary>
    internal T StribeckSpeed;

    /// <summary>Drag of the empty belt [N].</summary>
    internal T Drag;

    /// <summary>Radius of the motor's pulley [m]; of direct drive 1.</summary>
    internal T MotorPulleyRadius;

    /// <summary>Radius of the drive roller's pulley [m]; of direct drive 1.</summary>
    internal T RollerPulleyRadius;

    /// <summary>Kept tension of the drive belt [N].</summary>
    internal T DriveBeltTension;

    /// <summary>Mass of the drive belt for each length [kg/m].</summary>
    internal T DriveBeltMassPerLength;

    /// <summary>Wrap on the motor's pulley [rad].</summary>
    internal T PulleyWrap;

    /// <summary>Kinetic friction on the motor's pulley, as if flat [1].</summary>
    internal T PulleyKinetic;

    /// <summary>Static friction on the motor's pulley, as if flat [1].</summary>
    internal T PulleyStatic;

    /// <summary>Largest tension ratio on the motor's pulley at kinetic friction [1].</summary>
    internal T PulleyRatio;

    /// <summary>Motor constant at the magnets' reference [V s/rad].</summary>
    internal T MotorConstant;

    /// <summary>Loss of flux for each kelvin [1/K].</summary>
    internal T MagnetCoefficient;

    /// <summary>Temperature the motor constant belongs to [deg C].</summary>
    internal T MagnetReference;

    /// <summary>Armature resistance at its reference [ohm].</summary>
    internal T Resistance;

    /// <summary>Temperature the resistance belongs to [deg C].</summary>
    internal T WindingReference;

    /// <summary>Voltage lost at both brushes [V].</summary>
    internal T BrushDrop;

    /// <summary>Torque lost inside the motor [N m].</summary>
    internal T MotorFriction;

    /// <summary>Inductance of the armature [ohm s].</summary>
    internal T Inductance;

    /// <summary>Highest voltage [V].</summary>
    internal T VoltageLimit;

    /// <summary>Highest current [A].</summary>
    internal T CurrentLimit;

    /// <summary>Proportional gain [A s/m].</summary>
    internal T Gain;

    /// <summary>Integral time [s].</summary>
    internal T IntegralTime;

    /// <summary>Time constant of the current [s].</summary>
    internal T CurrentTime;

    /// <summary>Heat capacity of the winding [J/K].</summary>
    internal T WindingCapacity;

    /// <summary>Conductance from winding to housing [W/K].</summary>
    internal T WindingConductance;

    /// <summary>Heat capacity of magnets and housing [J/K].</summary>
    internal T HousingCapacity;

    /// <summary>Conductance from the housing to the air at rest [W/K].</summary>
    internal T StillConductance;

    /// <summary>What the fan adds at rated speed [W/K].</summary>
    internal T FanConductance;

    /// <summary>Rated speed [rad/s].</summary>
    internal T RatedSpeed;

    /// <summary>Temperature of the air at the motor [deg C].</summary>
    internal T MotorAir;

    /// <summary>Share of the deck's friction heat that goes into the belt [1].</summary>
    internal T BeltHeatShare;

    /// <summary>Heat capacity of the belt [J/K].</summary>
    internal T BeltCapacity;

    /// <summary>Conductance from the belt to the air [W/K].</summary>
    internal T BeltConductance;

    /// <summary>Heat capacity of the deck [J/K].</summary>
    internal T DeckCapacity;

    /// <summary>Conductance from the deck to the air [W/K].</summary>
    internal T DeckConductance;

    /// <summary>Temperature of the air at the deck [deg C].</summary>
    internal T DeckAir;

    /// <summary>Largest pull on the drive roller for each newton of the sum of its tensions, at kinetic friction [1].</summary>
    internal T RollerGrip;

    /// <summary>Force of the drive belt for each newton of its kept tension, driving, at kinetic friction [1].</summary>
    internal T PulleyGrip;

    /// <summary>The same braking [1].</summary>
    internal T PulleyGripBackwards;

    /// <summary>One over <see cref="Mass"/> [1/kg].</summary>
    internal T PerMass;

    /// <summary>One over <see cref="RollerInertia"/> [1/(kg m2)].</summary>
    internal T PerRollerInertia;

    /// <summary>One over <see cref="MotorInertia"/> [1/(kg m2)].</summary>
    internal T PerMotorInertia;

    /// <summary>One over <see cref="StrandDamping"/> [m/(N s)].</summary>
    internal T PerStrandDamping;

    /// <summary>One over <see cref="Stiffness"/> [1/N].</summary>
    internal T PerStiffness;

    /// <summary>One over <see cref="Inductance"/> [1/(ohm s)].</summary>
    internal T PerInductance;

    /// <summary>One over <see cref="IntegralTime"/> [1/s].</summary>
    internal T PerIntegralTime;

    /// <summary>One over <see cref="CurrentTime"/> [1/s].</summary>
    internal T PerCurrentTime;

    /// <summary>Inductance over the time constant of the current [ohm].</summary>
    internal T LoopResistance;

    /// <summary>Speed of the roller's face for each speed of the motor [m], where the drive belt does not slide.</summary>
    internal T FacePerMotor;
}
