using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>How hard the rollers bend the belt, and how small a roller may be.</summary>
/// <remarks>A belt whose thickness was not measured counts as 2 mm thick (common practice); the strain goes with it.</remarks>
public sealed record BeltBending
{
    /// <summary>Bending strain at the belt's face on the drive roller.</summary>
    public required Ratio OnDriveRoller { get; init; }

    /// <summary>Bending strain at the belt's face on the undriven roller.</summary>
    public required Ratio OnTailRoller { get; init; }

    /// <summary>Least outside diameter of a roller for the strain allowed.</summary>
    public required Length LeastDiameter { get; init; }

    /// <summary>Whether both rollers are at least as large.</summary>
    public required bool BothLargeEnough { get; init; }

    /// <summary>Bending and tension together at the outer face on the smaller roller; no answer without tension and stiffness.</summary>
    public required Answer<Ratio> LargestFaceStrain { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(BeltBending),
            (nameof(OnDriveRoller), OnDriveRoller),
            (nameof(OnTailRoller), OnTailRoller),
            (nameof(LeastDiameter), LeastDiameter),
            (nameof(BothLargeEnough), BothLargeEnough),
            (nameof(LargestFaceStrain), LargestFaceStrain)
        );

    /// <summary>The bending of a machine's belt.</summary>
    /// <param name="machine">The machine; of it belt and rollers.</param>
    /// <param name="allowed">Bending strain that the belt's maker allows, 0.1 to 50 %.</param>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The strain is outside its range.</exception>
    public static BeltBending Of(Treadmill machine, Ratio allowed)
    {
        ArgumentNullException.ThrowIfNull(machine);
        double most = Si.Ratio.ToSi(Guard.Within(allowed, Si.Ratio, 0.001, 0.5, nameof(allowed)));
        LoopGeometry loop = new(machine);
        double thickness = loop.Numbers.BeltThickness;
        double drive = BeltLifeLaws.BendingStrain<Real>(thickness, loop.Numbers.DriveRollerDiameter);
        double tail = BeltLifeLaws.BendingStrain<Real>(thickness, loop.Numbers.TailRollerDiameter);
        double larger = Math.Max(drive, tail);
        return new()
        {
            OnDriveRoller = Si.Ratio.FromSi(drive),
            OnTailRoller = Si.Ratio.FromSi(tail),
            LeastDiameter = Si.Length.FromSi(BeltLifeLaws.LeastRollerDiameter<Real>(thickness, most)),
            BothLargeEnough = larger <= most,
            LargestFaceStrain = Inquiry
                .Stiffness(loop)
                .Ask(stiffness =>
                    Inquiry.TautTension(loop).Then(tension => Si.Ratio.FromSi(larger + (tension / stiffness)))
                ),
        };
    }
}
