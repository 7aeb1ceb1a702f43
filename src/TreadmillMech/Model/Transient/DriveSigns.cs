namespace TreadmillMech.Model.Transient;

/// <summary>What has its event when it changes, a bit for each case.</summary>
/// <param name="Belt">Whether the running belt slides.</param>
/// <param name="Pulley">Whether the drive belt slips.</param>
/// <param name="Limited">Whether the current is at its limit.</param>
/// <param name="Rests">Whether the belt rests.</param>
internal readonly record struct DriveSigns(uint Belt, uint Pulley, uint Limited, uint Rests)
{
    /// <summary>Cases in which any of them differs.</summary>
    internal uint Changed(in DriveSigns other) =>
        (Belt ^ other.Belt) | (Pulley ^ other.Pulley) | (Limited ^ other.Limited) | (Rests ^ other.Rests);

    /// <summary>The others where the bit of a case is set.</summary>
    internal DriveSigns With(uint cases, in DriveSigns other) =>
        new(
            (Belt & ~cases) | (other.Belt & cases),
            (Pulley & ~cases) | (other.Pulley & cases),
            (Limited & ~cases) | (other.Limited & cases),
            (Rests & ~cases) | (other.Rests & cases)
        );
}
