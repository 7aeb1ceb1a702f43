using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>What one kind of tensioning holds with one tension kept, driving and braking, ribs new and worn.</summary>
/// <param name="Tensioning">The kind.</param>
/// <param name="Driving">Largest circumferential force driving, ribs wedged as new: an upper bound.</param>
/// <param name="DrivingWorn">The same with ribs worn to a flat belt: a lower bound.</param>
/// <param name="Braking">Largest circumferential force braking, as when a user drives the belt uphill; ribs as new.</param>
/// <param name="BrakingWorn">The same with ribs worn to a flat belt.</param>
/// <remarks>An idler on the slack side holds less braking than driving, by the ratio of the tensions: its side is then the tight one.</remarks>
public sealed record TensioningGrip(
    Tensioning Tensioning,
    Force Driving,
    Force DrivingWorn,
    Force Braking,
    Force BrakingWorn
)
{
    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(TensioningGrip),
            (nameof(Tensioning), Tensioning),
            (nameof(Driving), Driving),
            (nameof(DrivingWorn), DrivingWorn),
            (nameof(Braking), Braking),
            (nameof(BrakingWorn), BrakingWorn)
        );
}
