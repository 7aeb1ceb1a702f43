using TreadmillMech.Service.Causes;

namespace TreadmillMech.Service.Review;

/// <summary>Where something speaks for a cause, and none is likely enough to act on, the next reading is the next step.</summary>
internal static class ReadNext
{
    /// <summary>Times the probability that nothing is wrong from which what was read speaks for a cause.</summary>
    private const double Stands = 2;

    internal static Finding? Of(
        VisitFacts facts,
        IReadOnlyList<RankedCause> causes,
        IReadOnlyList<ReadingProposal> proposals
    )
    {
        RankedCause first = causes[0];
        double nothing = causes.First(static c => c.Cause == Cause.NothingWrong).Probability;
        bool speaks = first.Probability >= Stands * nothing;
        if (!speaks || first.Probability >= facts.Options.LikelyCause.Value || proposals.Count == 0)
        {
            return null;
        }

        // Looks that tell the causes apart stand behind the readings that tell numbers; here the cause is what is asked.
        (string reading, string settles, _, int lasts) =
            proposals.FirstOrDefault(static p => p.Gain.StartsWith(TellingLooks.GainBegins, StringComparison.Ordinal))
            ?? proposals[0];
        return new()
        {
            Subject = Subject.Readings,
            Severity = Severity.Note,
            Statement =
                "What was read speaks for a fault, and for none of them enough; the next reading is the next step.",
            Number = new("probability of the first cause", 100 * first.Probability, "%"),
            Limit = facts.Options.LikelyCause.InPercent(),
            Next = new()
            {
                Action = $"Turn, clean and replace nothing yet. Read next: {reading}",
                Expect = $"It settles: {settles}",
                StopAt = "Stop if the belt catches, smells or drifts to an edge.",
                EffortMinutes = lasts,
                Cautions = [Cautions.Unplug, Cautions.StandStill, Cautions.Clear, Cautions.Key, Cautions.TestUser],
            },
        };
    }
}
