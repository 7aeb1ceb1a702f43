namespace TreadmillMech.Studies;

/// <summary>How an uncertainty is evaluated.</summary>
public sealed record UncertaintyOptions
{
    /// <summary>Probability that the interval is to cover, 0.5 to 0.9999; 0.95 where not given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The probability is outside the range.</exception>
    public double Coverage
    {
        get;
        init => field = Given.Number(value, 0.5, 0.9999, nameof(Coverage));
    } = 0.95;

    /// <summary>
    /// Correlations of pairs of inputs; pairs not named are independent. In the drawing they are those of the normal
    /// numbers behind each input (a Gaussian copula): exact for normal inputs, nearly so for others.
    /// </summary>
    public IReadOnlyList<Correlation> Correlations { get; init; } = [];

    /// <summary>
    /// How many draws, 1000 to 50 000 000; a million where not given, which settles two digits of most uncertainties (JCGM
    /// 101:2008, 7.2.2).
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside the range.</exception>
    public int Draws
    {
        get;
        init => field = Given.Count(value, 1000, 50_000_000, nameof(Draws));
    } = 1_000_000;

    /// <summary>Significant digits of the standard uncertainty that matter to you, 1 or 2; 2 where not given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside the range.</exception>
    public int SignificantDigits
    {
        get;
        init => field = Given.Count(value, 1, 2, nameof(SignificantDigits));
    } = 2;

    /// <summary>Most threads; null for all there are. The answer does not depend on it.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside 1 to 1024.</exception>
    public int? MostThreads
    {
        get;
        init => field = value is { } threads ? Given.Count(threads, 1, 1024, nameof(MostThreads)) : null;
    }

    /// <summary>Told the share of the draws that is done, 0 to 1.</summary>
    public IProgress<double>? Progress { get; init; }
}
