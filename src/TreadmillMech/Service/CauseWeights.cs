using System.Collections.Immutable;
using TreadmillMech.Parts;

namespace TreadmillMech.Service;

/// <summary>How common each cause is among the machines that somebody is called to, before anything is read.</summary>
/// <remarks>Weights against each other; only their ratios count. Whoever has counted visits states the counts.</remarks>
public sealed class CauseWeights : IEquatable<CauseWeights>
{
    private readonly double[] weights;

    /// <param name="weights">Weight of each cause, 0 to 1000000; causes that are not named keep the default.</param>
    /// <param name="source">Where the weights come from.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A weight is outside the range, or a cause is not defined.</exception>
    /// <exception cref="ArgumentException">The source is empty, or all weights are 0.</exception>
    public CauseWeights(IReadOnlyDictionary<Cause, double> weights, string source)
    {
        ArgumentNullException.ThrowIfNull(weights);
        ArgumentException.ThrowIfNullOrWhiteSpace(source);
        this.weights = [.. Common];
        foreach ((Cause cause, double weight) in weights)
        {
            this.weights[(int)Guard.Defined(cause, nameof(weights))] = Guard.Within(
                weight,
                Si.One,
                0,
                1e6,
                $"weight of {cause}"
            );
        }

        Source = source;
        Sum = this.weights.Sum();
        if (!(Sum > 0))
        {
            throw new ArgumentException("All weights are 0: one cause must be possible.", nameof(weights));
        }
    }

    /// <summary>The default weights: common practice, no source.</summary>
    public static CauseWeights Default { get; } =
        new(ImmutableDictionary<Cause, double>.Empty, "common practice, no source");

    /// <summary>Where the weights come from.</summary>
    public string Source { get; }

    private double Sum { get; }

    /// <summary>Weight of each cause, in the order of the causes, before anybody has counted.</summary>
    private static ReadOnlySpan<double> Common =>
        [
            15, // nothing wrong
            15, // running belt slack
            5, // oil on the drive roller
            4, // over-tightened
            2, // bolts at their end
            5, // drive belt slack
            5, // drive belt glazed
            2, // drive belt cracked
            1.5, // pulley loose
            15, // deck dry
            8, // belt and deck worn
            2, // over-lubricated
            4, // roller bearing
            3, // motor weak
            2, // controller limit
            3, // supply weak
            1, // drive overrun
            6, // belt off centre
            4, // out of calibration
            2, // user beyond the plate
            4, // wrong reading
        ];

    /// <summary>Share of a cause among all, 0 to 1.</summary>
    /// <param name="cause">The cause.</param>
    /// <exception cref="ArgumentOutOfRangeException">The cause is not defined.</exception>
    public double this[Cause cause] => weights[(int)Guard.Defined(cause, nameof(cause))] / Sum;

    /// <inheritdoc/>
    public bool Equals(CauseWeights? other) =>
        other is not null && Source == other.Source && weights.AsSpan().SequenceEqual(other.weights);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as CauseWeights);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Source, Sum);
}
