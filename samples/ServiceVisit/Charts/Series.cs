using System.Collections.Immutable;

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

/// <summary>One value on a chart, with its standard uncertainty where it has one.</summary>
internal readonly record struct Spot(double X, double Y, double? Spread = null);

/// <summary>Values that belong together.</summary>
/// <param name="Name">What they are, in words.</param>
/// <param name="Sign">How each is drawn.</param>
/// <param name="Joined">Whether a line joins them.</param>
/// <param name="Spots">The values, from left to right.</param>
internal sealed record Series(string Name, Sign Sign, bool Joined, ImmutableArray<Spot> Spots);

/// <summary>A line across the whole chart: a limit, or a day.</summary>
internal sealed record Limit(string Name, double At);
