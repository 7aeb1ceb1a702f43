using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>Life of a roller's bearings under several demands in turn.</summary>
/// <remarks>
/// Each demand wears by its revolutions and its load (Palmgren and Miner); each bearing bears half of the belt's mean load. What the
/// shares leave of the time the machine stands.
/// </remarks>
public sealed record LoadSpectrum
{
    /// <summary>Constant load of one bearing that wears it as all of them together.</summary>
    public required Force EquivalentLoad { get; init; }

    /// <summary>Mean speed over all of the time, standing included.</summary>
    public required RotationalSpeed MeanSpeed { get; init; }

    /// <summary>Time, standing included, that nine in ten such bearings reach; no answer without their rating.</summary>
    public required Answer<Duration> Life { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(LoadSpectrum),
            (nameof(EquivalentLoad), EquivalentLoad),
            (nameof(MeanSpeed), MeanSpeed),
            (nameof(Life), Life)
        );

    /// <summary>The life of a roller's bearings.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="place">Which roller.</param>
    /// <param name="bearing">The bearing.</param>
    /// <param name="shares">Demands with their shares of the time, together not above 100 %.</param>
    /// <returns>The life; no answer where a load is not known, or the belt would hang loose.</returns>
    /// <exception cref="ArgumentNullException">Machine, bearing, shares or one of them is null.</exception>
    /// <exception cref="ArgumentException">There are no shares.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The place is not defined, or the shares are more than the whole.</exception>
    public static Answer<LoadSpectrum> Of(
        Treadmill machine,
        RollerPlace place,
        Bearing bearing,
        IReadOnlyList<DemandShare> shares
    )
    {
        ArgumentNullException.ThrowIfNull(machine);
        ArgumentNullException.ThrowIfNull(bearing);
        ArgumentNullException.ThrowIfNull(shares);
        RollerPlace roller = Guard.Defined(place, nameof(place));
        if (shares.Count == 0)
        {
            throw new ArgumentException("shares: at least one demand is needed.", nameof(shares));
        }

        double whole = 0;
        double turning = 0;
        double load = 0;
        foreach (DemandShare share in shares)
        {
            DemandShare part = share ?? throw new ArgumentNullException(nameof(shares));
            Answer<double> both = RollerLoads.Of(machine, roller, part.Demand);
            if (!both.Is(out double now))
            {
                return both.Missing;
            }

            double time = Si.Ratio.ToSi(part.TimeShare);
            double turns = time * RollerLoads.Speed(machine, roller, part.Demand);
            whole += time;
            turning += turns;
            load = BearingLife.Together(bearing, 0.5 * now, turns / turning, load);
        }

        // Thirds written in decimals may add up to a little more than one.
        _ = Guard.Within(whole, Si.One, 0, 1 + 1e-9, nameof(shares));
        return new LoadSpectrum
        {
            EquivalentLoad = Si.Force.FromSi(load),
            MeanSpeed = Si.RotationalSpeed.FromSi(turning),
            Life = BearingLife.Time(bearing, load, turning),
        };
    }
}
