using TreadmillMech.Service.Causes;

namespace TreadmillMech.Service.Review;

/// <summary>Where nothing is to be done and no cause stands out, the next reading is the next step.</summary>
internal static class ReadNext
{
    internal static NextStep? Of(
        VisitFacts facts,
        IReadOnlyList<RankedCause> causes,
        IReadOnlyList<ReadingProposal> proposals
    )
    {
        RankedCause first = causes[0];
        if (first.Probability >= facts.Options.LikelyCause.Value || proposals.Count == 0)
        {
            return null;
        }

        // Looks that tell the causes apart stand behind the readings that tell numbers; here the cause is what is asked.
        ReadingProposal next =
            proposals.FirstOrDefault(static p => p.Gain.StartsWith(TellingLooks.GainBegins, StringComparison.Ordinal))
            ?? proposals[0];
        return new()
        {
            Action = $"Turn, clean and replace nothing yet: no cause stands out. Read next: {next.Reading}",
            Expect = $"It settles: {next.Settles}",
            StopAt = "Stop if the belt catches, smells or drifts to an edge.",
            EffortMinutes = next.Minutes,
            Cautions = [Cautions.StandStill, Cautions.Clear, Cautions.Key, Cautions.TestUser],
        };
    }
}
