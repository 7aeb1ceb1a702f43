namespace TreadmillMech.Service;

/// <summary>What a meter is to read.</summary>
public enum MeteredQuantity
{
    /// <summary>Mean current in the motor's lead, direct and switched by the controller: it goes with torque.</summary>
    MotorCurrent = 0,

    /// <summary>Root mean square current in the motor's lead: it heats the winding.</summary>
    MotorHeatingCurrent,

    /// <summary>Root mean square current in a mains lead: it loads the branch circuit.</summary>
    MainsCurrent,

    /// <summary>Power from the mains.</summary>
    MainsPower,
}
