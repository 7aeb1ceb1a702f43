using System.Collections.Immutable;

namespace TreadmillMech.Samples.ServiceVisit.Charts;

/// <summary>A chart of values over one axis, before it is drawn.</summary>
internal sealed record LineChart
{
    /// <summary>What it shows, one short sentence.</summary>
    public required string Title { get; init; }

    /// <summary>The same in words, for those who do not see it.</summary>
    public required string Description { get; init; }

    /// <summary>What runs to the right, with its unit.</summary>
    public required string Along { get; init; }

    /// <summary>What runs upwards, with its unit.</summary>
    public required string Up { get; init; }

    public required ImmutableArray<Series> Series { get; init; }

    /// <summary>Limits drawn across.</summary>
    public ImmutableArray<Limit> Across { get; init; } = [];

    /// <summary>Days or other places drawn upwards.</summary>
    public ImmutableArray<Limit> Upright { get; init; } = [];

    /// <summary>The axis to the right; one of plain numbers where null.</summary>
    public Axis? Right { get; init; }

    internal Axis RightAxis() =>
        Right
        ?? Axis.OfNumbers(
            Series.SelectMany(static s => s.Spots).Select(static s => s.X).Concat(Upright.Select(static l => l.At))
        );

    internal Axis UpAxis()
    {
        IEnumerable<double> values = Series
            .SelectMany(static s => s.Spots)
            .SelectMany(static s => s.Bar is (var from, var to) ? (double[])[from, to] : [s.Y])
            .Concat(Across.Select(static l => l.At));
        return Axis.OfNumbers(values.Append(0));
    }
}
