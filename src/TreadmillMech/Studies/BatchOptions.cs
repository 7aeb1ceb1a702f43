using TreadmillMech.Model;

namespace TreadmillMech.Studies;

/// <summary>How a batch is run and what is told about its outputs besides their counts, means and extremes.</summary>
public sealed record BatchOptions
{
    /// <summary>Most threads; null for all there are. The answer does not depend on it.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside 1 to 1024.</exception>
    public int? MostThreads
    {
        get;
        init => field = value is { } threads ? Given.Count(threads, 1, 1024, nameof(MostThreads)) : null;
    }

    /// <summary>Told the share of the rows that is done, 0 to 1; in a stream the share of a chunk.</summary>
    public IProgress<double>? Progress { get; init; }

    /// <summary>Values of outputs that rows are counted below and above of.</summary>
    public IReadOnlyList<Limit> Limits { get; init; } = [];

    /// <summary>Outputs whose percentiles will be asked for.</summary>
    public IReadOnlyList<Output> Percentiles { get; init; } = [];

    /// <summary>Shares whose percentiles are found exactly, 0 to 1; a twentieth, a half and nineteen twentieths where not given.</summary>
    /// <exception cref="ArgumentNullException">The list is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A share is outside the range.</exception>
    public IReadOnlyList<double> Shares
    {
        get;
        init
        {
            ArgumentNullException.ThrowIfNull(value);
            field = [.. value.Select(share => Given.Number(share, 0, 1, nameof(Shares)))];
        }
    } = [0.05, 0.5, 0.95];

    /// <summary>How many rows to name at either end of every output, 0 to 100 000; none where not given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside the range.</exception>
    public int Ranked
    {
        get;
        init => field = Given.Count(value, 0, 100_000, nameof(Ranked));
    }
}
