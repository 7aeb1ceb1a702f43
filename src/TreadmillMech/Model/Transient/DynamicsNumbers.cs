namespace TreadmillMech.Model.Transient;

/// <summary>What a run needs beyond the inputs of the operating point, SI.</summary>
internal struct DynamicsNumbers
{
    /// <summary>Moment of inertia of the motor with its flywheel [kg m2].</summary>
    internal double MotorInertia;

    /// <summary>Inductance of the armature [ohm s].</summary>
    internal double Inductance;

    /// <summary>Proportional gain [A s/m].</summary>
    internal double Gain;

    /// <summary>Integral time [s].</summary>
    internal double IntegralTime;

    /// <summary>Time constant of the current [s].</summary>
    internal double CurrentTime;

    /// <summary>Loss factor of the belt [1].</summary>
    internal double LossFactor;

    /// <summary>Static friction on the deck [1].</summary>
    internal double DeckStatic;

    /// <summary>Static over kinetic friction on the drive roller [1].</summary>
    internal double RollerStaticRatio;

    /// <summary>Static over kinetic friction on the motor's pulley [1].</summary>
    internal double PulleyStaticRatio;

    /// <summary>Speed over which static friction falls to kinetic [m/s].</summary>
    internal double StribeckSpeed;

    /// <summary>Temperature at which resistance and motor constant hold, and winding and magnets begin [deg C].</summary>
    internal double WindingStart;

    /// <summary>Temperature of the magnets at the beginning, to which the motor constant belongs [deg C].</summary>
    internal double MagnetStart;

    /// <summary>Loss of flux for each kelvin [1/K].</summary>
    internal double MagnetCoefficient;

    /// <summary>Heat capacity of the winding [J/K].</summary>
    internal double WindingCapacity;

    /// <summary>Conductance from winding to housing [W/K].</summary>
    internal double WindingConductance;

    /// <summary>Heat capacity of magnets and housing [J/K].</summary>
    internal double HousingCapacity;

    /// <summary>Conductance to the air at rest [W/K].</summary>
    internal double StillConductance;

    /// <summary>What the fan adds at rated speed [W/K].</summary>
    internal double FanConductance;

    /// <summary>Rated speed [rad/s].</summary>
    internal double RatedSpeed;

    /// <summary>Temperature of the air at the motor [deg C].</summary>
    internal double MotorAir;

    /// <summary>Share of the deck's friction heat that goes into the belt [1].</summary>
    internal double BeltHeatShare;

    /// <summary>Heat capacity of the belt [J/K].</summary>
    internal double BeltCapacity;

    /// <summary>Conductance from the belt to the air [W/K].</summary>
    internal double BeltConductance;

    /// <summary>Heat capacity of the deck [J/K].</summary>
    internal double DeckCapacity;

    /// <summary>Conductance from the deck to the air [W/K].</summary>
    internal double DeckConductance;

    /// <summary>Temperature of the air at the deck, where belt and deck begin [deg C].</summary>
    internal double DeckAir;
}
