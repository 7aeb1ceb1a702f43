using System.Collections.Immutable;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>A further reading with what it is expected to bring.</summary>
/// <remarks>
/// From the linearised model: the covariance with the reading added at its expected value. A pass and fail counts with
/// the mean over both outcomes.
/// </remarks>
public sealed record ProposedReading
{
    /// <summary>Which reading.</summary>
    public required NextReading Reading { get; init; }

    /// <summary>How it is taken, what it settles, and how long it takes.</summary>
    public required ReadingProposal Proposal { get; init; }

    /// <summary>What to heed.</summary>
    public required ImmutableArray<string> Cautions { get; init; }

    /// <summary>Relative standard uncertainty of the running belt's margin now [1].</summary>
    public required double MarginNow { get; init; }

    /// <summary>The same to be expected with the reading [1].</summary>
    public required double MarginAfter { get; init; }

    /// <summary>Relative standard uncertainty of the deck friction now [1].</summary>
    public required double FrictionNow { get; init; }

    /// <summary>The same to be expected with the reading [1].</summary>
    public required double FrictionAfter { get; init; }

    /// <summary>
    /// What it is worth for each minute: the logarithms of both quotients of uncertainty now and after, added, over the
    /// minutes. By this the readings are ranked.
    /// </summary>
    public double GainPerMinute =>
        Proposal is { Minutes: var minutes }
            ? (Math.Log(MarginNow / MarginAfter) + Math.Log(FrictionNow / FrictionAfter)) / minutes
            : 0;
}
