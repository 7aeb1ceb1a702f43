using System.Collections.Immutable;
using System.Globalization;
using TreadmillMech.Service.Causes;
using TreadmillMech.Service.Estimation.Joint;

namespace TreadmillMech.Service.Review;

/// <summary>
/// The one list of readings that would tell more: first what must be known before a bolt is turned, then what the joint
/// estimate expects to gain most from for each minute, then what would tell the causes apart. Minutes are common practice.
/// </summary>
internal static class Proposals
{
    private const int Most = 4;

    internal static IEnumerable<ReadingProposal> Of(VisitFacts facts, IReadOnlyList<RankedCause> causes) =>
        BeforeATurn(facts).Concat(Ranked(facts)).Concat(TellingLooks.Of(facts, causes));

    private static IEnumerable<ReadingProposal> BeforeATurn(VisitFacts facts)
    {
        if (!facts.Traces.RollerWiped)
        {
            yield return new(
                "Machine unplugged, wipe the drive roller with a dry white cloth while turning it by hand.",
                "Whether oil takes the grip away.",
                "No bolt is turned before it.",
                1
            );
        }

        if (!facts.Slip.SpeedsSettle)
        {
            yield return new(
                $"Speeds of motor, drive roller and belt together, unloaded and under {facts.Say.TestDemand}.",
                "Which of the two belts slips, if one does.",
                "No bolt is turned before it.",
                6
            );
        }
    }

    private static IEnumerable<ReadingProposal> Ranked(VisitFacts facts)
    {
        if (
            !facts.Joint.Estimate.Is(out VisitEstimate? estimate)
            || !estimate.BestNextReading().Is(out ImmutableArray<ProposedReading> ranked)
        )
        {
            // Nothing can be weighed: what tells most of nearly every machine.
            return
            [
                NextReadings.Proposal(NextReading.LowLift, facts.Say, ""),
                NextReadings.Proposal(NextReading.DeadWeightPull, facts.Say, ""),
            ];
        }

        return ranked
            .Select(p => (Reading: p.Reading, Gains: Gains(p, facts.Options).ToList()))
            .Where(p => p.Gains.Count > 0)
            .DistinctBy(p => p.Reading == NextReading.HighLift ? NextReading.LowLift : p.Reading)
            .Take(Most)
            .Select(p => NextReadings.Proposal(p.Reading, facts.Say, Sentence(p.Gains)));
    }

    private static IEnumerable<string> Gains(ProposedReading reading, VisitOptions options)
    {
        if (Worth(reading.MarginNow, reading.MarginAfter, options))
        {
            yield return $"margin known to {Percent(reading.MarginNow)} now, to {Percent(reading.MarginAfter)} with it";
        }

        if (Worth(reading.FrictionNow, reading.FrictionAfter, options))
        {
            yield return $"deck friction known to {Percent(reading.FrictionNow)} now, to {Percent(reading.FrictionAfter)} with it";
        }
    }

    /// <summary>Whether an uncertainty is worth lowering, and is lowered.</summary>
    private static bool Worth(double now, double after, VisitOptions options) =>
        now > options.FineEnough.Value && after < (1 - options.WorthReading.Value) * now;

    private static string Sentence(List<string> gains)
    {
        string all = string.Join("; ", gains);
        return char.ToUpperInvariant(all[0]) + all[1..] + ".";
    }

    private static string Percent(double share) =>
        (100 * share).ToString(share < 0.095 ? "0.#" : "0", CultureInfo.InvariantCulture) + " %";
}
