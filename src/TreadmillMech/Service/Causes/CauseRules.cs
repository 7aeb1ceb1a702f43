using TreadmillMech.Service.Events;
using TreadmillMech.Service.Review;

namespace TreadmillMech.Service.Causes;

/// <summary>Findings from the ranking of causes, for those that no single reading settles.</summary>
internal static class CauseRules
{
    /// <param name="facts">The visit.</param>
    /// <param name="ranking">The causes.</param>
    /// <param name="read">Causes that a reading has settled by itself.</param>
    internal static IEnumerable<Finding> Of(
        VisitFacts facts,
        IReadOnlyList<RankedCause> ranking,
        IReadOnlySet<Cause> read
    ) =>
        ranking
            .Where(r => r.Probability >= facts.Options.LikelyCause.Value && !read.Contains(r.Cause))
            .Select(r => Advice(facts, r))
            .OfType<Finding>()
            .Concat(Incline(facts));

    private static Finding? Advice(VisitFacts facts, RankedCause cause) =>
        CauseAdvice.Of(facts, cause.Cause) is { } advice
            ? new()
            {
                Subject = advice.Subject,
                Severity = advice.Severity,
                Statement = advice.Statement,
                Number = new("probability", 100 * cause.Probability, "%"),
                Limit = facts.Options.LikelyCause.InPercent(),
                AlsoBy = [.. advice.AlsoBy, .. cause.Limits],
                For = cause.For,
                Against = cause.Against,
                ForOwner = advice.ForOwner,
                Next = advice.Next,
            }
            : null;

    private static IEnumerable<Finding> Incline(VisitFacts facts)
    {
        if (facts.Used<InclineReading>().LastOrDefault() is not { } reading)
        {
            yield break;
        }

        double off = Si.Ratio.ToSi(reading.Display) - Si.Ratio.ToSi(reading.Measured);
        if (Math.Abs(off) > facts.Options.InclineError.Value)
        {
            yield return new()
            {
                Subject = Subject.Speed,
                Severity = Severity.Attend,
                Statement = "The displayed grade is not that of the deck.",
                Number = new("error of the displayed grade", 100 * off, "%"),
                Limit = facts.Options.InclineError.InPercent(),
                ForOwner = "The grade on the display is not the grade of the belt and needs to be set.",
                Next = new()
                {
                    Action = "Level the frame, then set the displayed grade anew by the maker's manual.",
                    Expect = $"Display and deck within {facts.Options.InclineError.InPercent()}.",
                    StopAt =
                        "Keep hands and feet from under the deck while it moves; until then nobody trains by the displayed grade.",
                    EffortMinutes = 15,
                    Cautions = [Cautions.Clear, Cautions.Key],
                },
            };
        }
    }
}
