using UnitsNet;

namespace TreadmillMech;

/// <summary>Where and why a run ended before its time. What was computed up to there is in the run.</summary>
/// <param name="Why">The reason.</param>
/// <param name="Time">Time reached.</param>
/// <param name="BeltSpeed">Belt speed there.</param>
/// <param name="RollerSpeed">Speed of the drive roller there.</param>
/// <param name="MotorSpeed">Speed of the motor there.</param>
/// <param name="Current">Armature current there.</param>
public sealed record DriveFailure(
    FailureReason Why,
    Duration Time,
    Speed BeltSpeed,
    RotationalSpeed RollerSpeed,
    RotationalSpeed MotorSpeed,
    ElectricCurrent Current
);
