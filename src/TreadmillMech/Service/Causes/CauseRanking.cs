using System.Collections.Immutable;
using TreadmillMech.Service.Review;

namespace TreadmillMech.Service.Causes;

/// <summary>The causes of a visit by their posterior probability.</summary>
/// <remarks>
/// Bayes' rule over causes that exclude each other, with evidence taken as independent once the cause is given. A machine
/// with two faults shows both near the top, not their true probabilities; findings are judged one by one beside it.
/// </remarks>
internal static class CauseRanking
{
    /// <summary>A weight of evidence, in natural logarithms, below which it is not worth a sentence.</summary>
    private const double WorthTelling = 0.4;

    internal static ImmutableArray<RankedCause> Of(VisitFacts facts)
    {
        Cause[] causes = Enum.GetValues<Cause>();
        Evidence[] evidence = [.. Everything(facts)];
        double[] score =
        [
            .. causes.Select(c =>
                Math.Log(CausePriors.On(facts.Visit.Machine, c)) + evidence.Sum(e => e.LogLikelihood(c))
            ),
        ];
        double most = score.Max();
        double sum = score.Sum(s => Math.Exp(s - most));
        double[] probability = [.. score.Select(s => Math.Exp(s - most) / sum)];
        return
        [
            .. causes
                .Select((cause, i) => Ranked(cause, probability[i], evidence, causes, probability))
                .OrderByDescending(r => r.Probability)
                .ThenBy(r => r.Cause),
        ];
    }

    private static IEnumerable<Evidence> Everything(VisitFacts facts) =>
        SlipEvidence
            .Of(facts)
            .Concat(OilEvidence.Of(facts))
            .Concat(TensionEvidence.Of(facts))
            .Concat(DriveBeltEvidence.Of(facts))
            .Concat(DeckEvidence.Of(facts))
            .Concat(RollerEvidence.Of(facts))
            .Concat(MotorEvidence.Of(facts))
            .Concat(SupplyEvidence.Of(facts))
            .Concat(TrackingEvidence.Of(facts))
            .Concat(CalibrationEvidence.Of(facts))
            .Concat(ReadingEvidence.Of(facts))
            .Concat(SymptomEvidence.Of(facts));

    private static RankedCause Ranked(
        Cause cause,
        double probability,
        Evidence[] evidence,
        Cause[] causes,
        double[] probabilities
    )
    {
        (string Text, double Weight)[] weighed =
        [
            .. evidence
                .Select(e => (e.Text, Weight: e.LogLikelihood(cause) - Others(e, cause, causes, probabilities)))
                .Where(e => Math.Abs(e.Weight) > WorthTelling)
                .OrderByDescending(e => Math.Abs(e.Weight)),
        ];
        return new(
            cause,
            probability,
            [.. weighed.Where(e => e.Weight > 0).Select(e => e.Text)],
            [.. weighed.Where(e => e.Weight < 0).Select(e => e.Text)]
        );
    }

    /// <summary>Logarithm of the likelihood of evidence under all other causes, each with its share.</summary>
    private static double Others(Evidence evidence, Cause cause, Cause[] causes, double[] probabilities)
    {
        double weight = 0;
        double likelihood = 0;
        for (int i = 0; i < causes.Length; i++)
        {
            if (causes[i] != cause)
            {
                // The prior keeps causes in the sum that this very evidence has ruled out.
                double share = 0.5 * (probabilities[i] + CausePriors.Of(causes[i]));
                weight += share;
                likelihood += share * Math.Exp(evidence.LogLikelihood(causes[i]));
            }
        }

        return Math.Log(likelihood / weight);
    }
}
