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
        double[][] likelihood = [.. evidence.Select(e => causes.Select(e.LogLikelihood).ToArray())];
        double[] score =
        [
            .. causes.Select((c, i) => Math.Log(Math.Max(double.Epsilon, Prior(facts, c))) + likelihood.Sum(l => l[i])),
        ];
        double most = score.Max();
        double sum = score.Sum(s => Math.Exp(s - most));
        double[] probability = [.. score.Select(s => Math.Exp(s - most) / sum)];

        // The prior keeps causes in the comparison that this very evidence has ruled out.
        double[] share = [.. causes.Select((c, i) => 0.5 * (probability[i] + facts.Options.Weights[c]))];
        return [.. causes.Select((_, i) => Ranked(i)).OrderByDescending(r => r.Probability).ThenBy(r => r.Cause)];

        RankedCause Ranked(int cause)
        {
            (string Text, Threshold? Limit, double Weight)[] weighed =
            [
                .. evidence
                    .Select(
                        (e, n) => (e.Text, e.Limit, Weight: likelihood[n][cause] - Others(likelihood[n], share, cause))
                    )
                    .Where(e => Math.Abs(e.Weight) > WorthTelling)
                    .OrderByDescending(e => Math.Abs(e.Weight)),
            ];
            return new(
                causes[cause],
                probability[cause],
                [.. weighed.Where(e => e.Weight > 0).Select(e => e.Text)],
                [.. weighed.Where(e => e.Weight < 0).Select(e => e.Text)]
            )
            {
                Limits = [.. weighed.Select(e => e.Limit).OfType<Threshold>().Distinct()],
            };
        }
    }

    /// <summary>Where priors and chances come from.</summary>
    internal static string Source(VisitOptions options) =>
        $"How common each cause is: {options.Weights.Source}. How often each shows what was read: common practice, no source.";

    /// <summary>The prior on a machine: what has no drive belt has none that is slack, glazed or cracked.</summary>
    private static double Prior(VisitFacts facts, Cause cause) =>
        facts.Visit.Machine.DriveBelt is null
        && cause is (Cause.DriveBeltSlack or Cause.DriveBeltGlazed or Cause.DriveBeltCracked)
            ? 0
            : facts.Options.Weights[cause];

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

    /// <summary>Logarithm of the likelihood of evidence under all other causes, each with its share.</summary>
    private static double Others(double[] likelihood, double[] share, int cause)
    {
        double weight = 0;
        double sum = 0;
        for (int i = 0; i < share.Length; i++)
        {
            if (i != cause)
            {
                weight += share[i];
                sum += share[i] * Math.Exp(likelihood[i]);
            }
        }

        return Math.Log(sum / weight);
    }
}
