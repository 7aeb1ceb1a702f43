using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Events;

/// <summary>
/// Lift test: the machine unplugged, a full-width bar under the middle of the top strand raised by a scale. The turns
/// given before it in the visit tell at which bolt position it was taken.
/// </summary>
public sealed partial record LiftReading : Reading
{
    /// <summary>Height of the lift above the belt's own line, 5 mm to 120 mm; at most 30 mm tells the tension best.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The height is outside the range.</exception>
    public required Length Height
    {
        get;
        init => field = Guard.Within(value, Si.Length, 0.005, 0.12);
    }

    /// <summary>Force on the scale, bar taken off, 1 to 2000 N.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The force is outside the range.</exception>
    public required Force Force
    {
        get;
        init => field = Guard.Within(value, Si.Force, 1, 2000);
    }

    /// <summary>Whether the rollers could not turn: the span alone stretches then, and the force reads high.</summary>
    public bool RollersLocked { get; init; }
}
