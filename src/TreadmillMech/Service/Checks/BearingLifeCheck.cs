using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>Life of a roller's bearings under one lasting demand, and against the belt at another tension.</summary>
/// <remarks>
/// Basic rating life by ISO 281, each bearing with half of the belt's mean load; dirt, mounting, lubricant and the drive belt's
/// load are not in it.
/// </remarks>
public sealed record BearingLifeCheck
{
    /// <summary>Load of one bearing.</summary>
    public required Force Load { get; init; }

    /// <summary>Speed of the roller.</summary>
    public required RotationalSpeed Speed { get; init; }

    /// <summary>Revolutions that nine in ten such bearings reach; no answer without their rating.</summary>
    public required Answer<double> Revolutions { get; init; }

    /// <summary>Running time that nine in ten such bearings reach; no answer without their rating.</summary>
    public required Answer<Duration> Life { get; init; }

    /// <summary>Life over that at a reference load; no answer where none was given.</summary>
    public required Answer<double> LifeRatio { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(BearingLifeCheck),
            (nameof(Load), Load),
            (nameof(Speed), Speed),
            (nameof(Revolutions), Revolutions),
            (nameof(Life), Life),
            (nameof(LifeRatio), LifeRatio)
        );

    /// <summary>The life of a roller's bearings.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="demand">The demand, taken as lasting.</param>
    /// <param name="place">Which roller.</param>
    /// <param name="bearing">The bearing.</param>
    /// <param name="referenceLoad">Load of one bearing that the ratio is told against, 1 N to 100 kN; null for none.</param>
    /// <returns>The life; no answer where the load is not known, or the belt would hang loose.</returns>
    /// <exception cref="ArgumentNullException">Machine, demand or bearing is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Place or load is outside its range.</exception>
    public static Answer<BearingLifeCheck> Of(
        Treadmill machine,
        Demand demand,
        RollerPlace place,
        Bearing bearing,
        Force? referenceLoad = null
    )
    {
        ArgumentNullException.ThrowIfNull(machine);
        ArgumentNullException.ThrowIfNull(demand);
        ArgumentNullException.ThrowIfNull(bearing);
        RollerPlace roller = Guard.Defined(place, nameof(place));
        Answer<double> reference = Inquiry
            .Of(Guard.Within(referenceLoad, Si.Force, 1, 1e5, nameof(referenceLoad)), "ReferenceLoad")
            .Then(Si.Force.ToSi);
        double speed = RollerLoads.Speed(machine, roller, demand);
        return RollerLoads
            .Of(machine, roller, demand)
            .Then(both => new BearingLifeCheck
            {
                Load = Si.Force.FromSi(0.5 * both),
                Speed = Si.RotationalSpeed.FromSi(speed),
                Revolutions = BearingLife.Revolutions(bearing, 0.5 * both),
                Life = BearingLife.Time(bearing, 0.5 * both, speed),
                LifeRatio = reference.Then(old => BearingLife.Ratio(bearing, 0.5 * both, old)),
            });
    }
}
