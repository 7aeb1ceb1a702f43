using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>A drag in proportion to speed, at the motor's shaft, as coasting down or an unloaded run shows it.</summary>
/// <param name="Torque">Torque of the drag at the speed, without the dry friction.</param>
/// <param name="Speed">The speed at which it was found.</param>
public readonly record struct SpeedDrag(Torque Torque, RotationalSpeed Speed)
{
    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(nameof(SpeedDrag), (nameof(Torque), Torque), (nameof(Speed), Speed));
}
