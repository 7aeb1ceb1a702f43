using TreadmillMech.Service;

namespace TreadmillMech.Tests.Service.Bench;

/// <summary>How often the first cause is right among visits that state a like chance for it.</summary>
/// <remarks>
/// The bench draws every cause equally often, the review holds some more common than others: each visit counts as
/// often as the review holds its hidden cause to come up.
/// </remarks>
internal sealed class Calibration
{
    private readonly List<(double Stated, bool Right, double Weight)> visits = [];

    internal int Visits => visits.Count;

    /// <summary>Mean chance that was stated for the first cause.</summary>
    internal double Stated => Mean(visit => visit.Stated);

    /// <summary>Share of visits whose first cause is the hidden one.</summary>
    internal double Right => Mean(visit => visit.Right ? 1 : 0);

    /// <summary>Binomial error of that share, by the stated chances; weighted visits count as fewer.</summary>
    internal double Error =>
        Math.Sqrt(Stated * (1 - Stated) * visits.Sum(visit => visit.Weight * visit.Weight))
        / visits.Sum(visit => visit.Weight);

    internal void Add(RankedCause first, Cause hidden) =>
        visits.Add((first.Probability, first.Cause == hidden, CauseWeights.Default[hidden]));

    /// <summary>Those of several that state a chance from one to below another.</summary>
    internal static Calibration Between(IEnumerable<Calibration> several, double from, double to)
    {
        Calibration found = new();
        found.visits.AddRange(
            several.SelectMany(one => one.visits).Where(visit => visit.Stated >= from && visit.Stated < to)
        );
        return found;
    }

    private double Mean(Func<(double Stated, bool Right, double Weight), double> of) =>
        visits.Sum(visit => visit.Weight * of(visit)) / visits.Sum(visit => visit.Weight);
}
