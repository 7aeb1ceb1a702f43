using System.Collections.Immutable;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>The belt speed at which a motor grows hottest under one person, as cooling falls with the shaft's speed.</summary>
/// <remarks>
/// Friction asks nearly the same current at every speed, and a fan on the shaft gives least air at the slowest: heavy slow
/// walking is the usual worst case.
/// </remarks>
public sealed record WorstHeat
{
    /// <summary>Belt speed at which the motor grows hottest, among those walked over.</summary>
    public required Speed Speed { get; init; }

    /// <summary>The heat there; its settled temperature has no answer where it runs away.</summary>
    public required MotorHeat Heat { get; init; }

    /// <summary>Every speed walked over, from the slowest.</summary>
    public required ImmutableArray<HeatAtSpeed> Speeds { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(nameof(WorstHeat), (nameof(Speed), Speed), (nameof(Heat), Heat), (nameof(Speeds), Speeds.Length));

    /// <summary>Walks over belt speeds and names the worst.</summary>
    /// <param name="machine">The machine; motor constant, friction and resistance must be known.</param>
    /// <param name="demand">Person, grade and so on; its speed is replaced.</param>
    /// <param name="cooling">How the motor gives off heat.</param>
    /// <param name="limit">Temperature the winding must not pass, 40 to 220 deg C.</param>
    /// <param name="from">Slowest speed, 0.1 to 8 m/s.</param>
    /// <param name="to">Fastest speed, above the slowest, up to 8 m/s.</param>
    /// <param name="steps">Speeds walked over, 2 to 1000, evenly spaced.</param>
    /// <returns>The worst; no answer where none of the speeds has one, for the reason of the slowest.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Answer<WorstHeat> Of(
        Treadmill machine,
        Demand demand,
        MotorCooling cooling,
        Temperature limit,
        Speed from,
        Speed to,
        int steps = 40
    )
    {
        ArgumentNullException.ThrowIfNull(demand);
        double slowest = Si.Speed.ToSi(Guard.Within(from, Si.Speed, 0.1, 8, nameof(from)));
        double fastest = Si.Speed.ToSi(Guard.Within(to, Si.Speed, slowest, 8, nameof(to)));
        int last = (int)Guard.Within(steps, Si.One, 2, 1000, nameof(steps)) - 1;
        ImmutableArray<HeatAtSpeed> speeds =
        [
            .. Enumerable
                .Range(0, last + 1)
                .Select(i => Si.Speed.FromSi(Math.Min(fastest, slowest + ((fastest - slowest) * i / last))))
                .Select(v => new HeatAtSpeed(v, MotorHeat.Of(machine, demand with { Speed = v }, cooling, limit))),
        ];

        // The settled rise grows with the ratio of running away, so the largest ratio is the hottest on both sides of 1.
        HeatAtSpeed? worst = speeds.Where(at => at.Heat.Found).MaxBy(at => at.Heat.Value.RunawayRatio);
        return worst is null
            ? speeds[0].Heat.Missing
            : new WorstHeat
            {
                Speed = worst.Speed,
                Heat = worst.Heat.Value,
                Speeds = speeds,
            };
    }
}
