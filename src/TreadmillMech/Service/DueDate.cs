using UnitsNet;

namespace TreadmillMech.Service;

/// <summary>When the deck is due for service again, by each way that tells it, beside the common interval.</summary>
/// <remarks>
/// A trend holds as long as use stays as it was. What waiting costs in wear is told in friction work for each belt area,
/// beside that of a served deck under the same use: wear goes with that work at the least (energy form of Archard's law),
/// and dry coats wear faster. In millimetres it is not told: wear for each joule differs by tens from pair to pair.
/// </remarks>
public sealed partial record DueDate
{
    /// <summary>Day on which the fitted trend of friction reaches its limit; no answer where no trend is known.</summary>
    public required Answer<DateOnly> ByTrend { get; init; }

    /// <summary>First and last day of that, two standard uncertainties to either side; no answer where it has no end.</summary>
    public required Answer<(DateOnly First, DateOnly Last)> TrendBounds { get; init; }

    /// <summary>Day on which the friction work for each area reaches its limit; no answer where use is not known.</summary>
    public required Answer<DateOnly> ByUse { get; init; }

    /// <summary>Common interval after the last service, first and last day.</summary>
    public required (DateOnly First, DateOnly Last) CommonPractice { get; init; }

    /// <summary>Friction that the trend runs towards, with its source.</summary>
    public required Threshold Limit { get; init; }

    /// <summary>Friction work for each belt area that use runs towards, with its source.</summary>
    public required Threshold WorkLimit { get; init; }

    /// <summary>Growth of the friction in a year, from the visits since the last service; no answer where no trend is known.</summary>
    public required Answer<Figure> GrowthInAYear { get; init; }

    /// <summary>Friction work for each belt area in a year without service, the friction growing as it did; no answer where use or friction is not known.</summary>
    public required Answer<Figure> WorkOfWaitingAYear { get; init; }

    /// <summary>The same with the friction of a served deck all year; no answer where use is not known.</summary>
    public required Answer<Figure> WorkOfAServedYear { get; init; }

    /// <summary>
    /// Mains energy that the friction above that after a service costs in a year without service, the friction growing as it
    /// did; no answer where use is not known.
    /// </summary>
    public required Answer<Energy> EnergyOfWaitingAYear { get; init; }

    /// <summary>The first of the days that are known: by trend, by use, and the last day of the common interval.</summary>
    public DateOnly First
    {
        get
        {
            DateOnly first = CommonPractice.Last;
            first = ByTrend.Is(out DateOnly trend) && trend < first ? trend : first;
            return ByUse.Is(out DateOnly use) && use < first ? use : first;
        }
    }

    /// <summary>The day it is due and where that comes from, invariant.</summary>
    public override string ToString() =>
        $"due {Day(First)}: trend {Day(ByTrend)}, use {Day(ByUse)}, common practice {Day(CommonPractice.First)} to {Day(CommonPractice.Last)}";

    private static string Day(Answer<DateOnly> day) => day.ToString();
}
