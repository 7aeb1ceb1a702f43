using System.Collections.Immutable;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Charts;

/// <summary>The sign that a value is drawn as; shapes, because colours do not survive a copier.</summary>
internal enum Sign
{
    None = 0,
    Dot,
    Ring,
    Square,
    OpenSquare,
}

/// <summary>One value on a chart.</summary>
/// <param name="X">Where it stands.</param>
/// <param name="Y">The value.</param>
/// <param name="Told">The value as a figure, with how sure it is; null where that is not known.</param>
internal readonly record struct Spot(double X, double Y, Figure? Told = null)
{
    // Standard deviations on each side of a normal law that leave 95 % between them.
    private const double Ends = 1.96;

    /// <summary>The figure in words.</summary>
    internal string Words => (Told ?? new("", Y, "")).ToString();

    /// <summary>
    /// Ends of its bar: a standard uncertainty off, and of a bent interval as large a share of the way to each end.
    /// </summary>
    internal (double From, double To)? Bar =>
        Told is not { StandardUncertainty: { } spread } || !double.IsFinite(spread) ? null
        : Told is { Lower: { } lower, Upper: { } upper } ? (Y - ((Y - lower) / Ends), Y + ((upper - Y) / Ends))
        : (Y - spread, Y + spread);
}

/// <summary>Values that belong together.</summary>
/// <param name="Name">What they are, in words.</param>
/// <param name="Sign">How each is drawn.</param>
/// <param name="Joined">Whether a line joins them.</param>
/// <param name="Spots">The values, from left to right.</param>
internal sealed record Series(string Name, Sign Sign, bool Joined, ImmutableArray<Spot> Spots);

/// <summary>A line across the whole chart: a limit, or a day.</summary>
internal sealed record Limit(string Name, double At);
