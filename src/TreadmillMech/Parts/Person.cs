using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>The person on the belt.</summary>
public sealed partial record Person
{
    /// <summary>Mass, 10 kg to 350 kg.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The mass is outside the range.</exception>
    public required Mass Mass
    {
        get;
        init => field = Guard.Within(value, Si.Mass, 10, 350);
    }

    /// <summary>Cadence: steps of both feet, 0.5 Hz to 5 Hz; null to take the usual one at the speed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The cadence is outside the range.</exception>
    public Frequency? Cadence
    {
        get;
        init => field = Guard.Within(value, Si.Frequency, 0.5, 5);
    }

    /// <summary>
    /// Leg length, hip to ground, 0.4 m to 1.3 m; null to take the relations of speed alone, which are those of a leg of
    /// 0.92 m. Shorter legs step faster and change to running at a lower speed. See <see cref="LegLengthOf"/>.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The length is outside the range.</exception>
    public Length? LegLength
    {
        get;
        init => field = Guard.Within(value, Si.Length, 0.4, 1.3);
    }

    /// <summary>Speed at which a person changes from walking to running: a Froude number of one half, 2.1 m/s for a leg of 0.92 m.</summary>
    /// <remarks>
    /// Unless the demand gives the gait, an operating point takes running from a little lower on, 2.0 m/s for that leg, where people
    /// on treadmills were told apart best.
    /// </remarks>
    public Speed WalkRunSpeed =>
        Si.Speed.FromSi(
            GaitLaws.WalkRunSpeed<Real>(
                LegLength is { } leg ? Si.Length.ToSi(leg) : Model.OperatingPointModel.ReferenceLeg
            )
        );

    /// <summary>The usual leg length of an adult, 0.53 of the height; people of one height differ by some 3 %.</summary>
    /// <param name="height">Height, 0.8 m to 2.4 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">The height is outside the range.</exception>
    public static Length LegLengthOf(Length height) =>
        Si.Length.FromSi(
            GaitLaws.LegLengthFromHeight<Real>(
                Si.Length.ToSi(Guard.Within(height, Si.Length, 0.8, 2.4, nameof(height)))
            )
        );
}
