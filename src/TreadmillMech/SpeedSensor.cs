namespace TreadmillMech;

/// <summary>Where the speed controller takes the speed from.</summary>
/// <remarks>It decides what slip does: a sensor ahead of the slipping contact does not see it.</remarks>
public enum SpeedSensor
{
    /// <summary>On the motor's shaft, also a controller that reckons the speed from the motor's voltage.</summary>
    Motor = 0,

    /// <summary>On the drive roller.</summary>
    DriveRoller,

    /// <summary>On the running belt itself.</summary>
    Belt,
}
