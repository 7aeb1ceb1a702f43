namespace TreadmillMech.Model.Transient;

/// <summary>What is not a number about a machine whose speeds change. Uniform in a set of eight.</summary>
/// <param name="Machine">What is not a number about the machine and the demand.</param>
/// <param name="CanBrake">Whether the controller can brake.</param>
/// <param name="Sensor">Where the speed is measured.</param>
/// <param name="MotorHeats">Whether winding and magnet change their temperature.</param>
/// <param name="DeckHeats">Whether belt and deck change their temperature.</param>
/// <param name="DeckSticks">Whether static friction under the foot differs from kinetic.</param>
/// <param name="RollerSticks">Whether static friction on the drive roller differs from kinetic.</param>
/// <param name="PulleySticks">Whether static friction on the motor's pulley differs from kinetic.</param>
internal readonly record struct DriveKinds(
    MachineKinds Machine,
    bool CanBrake,
    SpeedSensor Sensor,
    bool MotorHeats,
    bool DeckHeats,
    bool DeckSticks,
    bool RollerSticks,
    bool PulleySticks
)
{
    /// <summary>Whether the motor sits on the roller's shaft.</summary>
    internal bool Direct => Machine.Tensioning == Tensioning.DirectDrive;
}
