using MathNet.Numerics.Distributions;
using TreadmillMech.Numbers;

namespace TreadmillMech.Studies;

/// <summary>The law of propagation of uncertainty, with exact derivatives.</summary>
internal static class Propagation
{
    // Beyond so many degrees of freedom Student's t is the normal distribution to nine digits.
    private const double AsGoodAsNormal = 1e9;

    internal static Answer<PropagatedUncertainty> Run(Trials trials, UncertainSet set)
    {
        UncertainInput[] inputs = set.Inputs;
        Answer<double> answer = trials.At([.. inputs.Select(input => input.Value.Si)]);
        if (!answer.Is(out double value))
        {
            return answer.Missing;
        }

        double[] slopes = Slopes(trials, inputs);
        double[] parts = [.. inputs.Select((input, i) => slopes[i] * input.StandardUncertainty.Si)];
        if (Array.Exists(parts, part => !double.IsFinite(part)))
        {
            return new Shortfall(Reason.NotInRange, trials.Name);
        }

        double[] squares = Squares(parts, set.Matrix);
        double variance = Math.Max(0, squares.Sum());
        double uncertainty = Math.Sqrt(variance);
        double freedom = EffectiveFreedom(parts, inputs, variance);
        double factor = Factor(freedom, set.Options.Coverage);
        IEnumerable<BudgetRow> budget = inputs.Select(
            (input, i) =>
                new BudgetRow(
                    input,
                    PhysicalValue.Of(slopes[i], SlopeUnit.Of(trials.Unit, input.Value.Unit)),
                    PhysicalValue.Of(Math.Abs(parts[i]), trials.Unit),
                    Si.Ratio.FromSi(variance > 0 ? squares[i] / variance : 0)
                )
        );
        return new PropagatedUncertainty
        {
            Name = trials.Name,
            Value = PhysicalValue.Of(value, trials.Unit),
            StandardUncertainty = PhysicalValue.Of(uncertainty, trials.Unit),
            EffectiveDegreesOfFreedom = freedom,
            DegreesOfFreedomAreAGuide = inputs
                .Where((input, i) => set.Correlated[i] && double.IsFinite(input.DegreesOfFreedom))
                .Any(),
            Coverage = set.Options.Coverage,
            CoverageFactor = factor,
            ExpandedUncertainty = PhysicalValue.Of(factor * uncertainty, trials.Unit),
            Budget = [.. budget.OrderByDescending(row => Math.Abs(Si.Ratio.ToSi(row.Share)))],
        };
    }

    /// <summary>Student's t, or the normal quantile, for an interval that covers a probability on both sides.</summary>
    internal static double Factor(double freedom, double coverage)
    {
        double upTo = 0.5 * (1 + coverage);
        return freedom < AsGoodAsNormal
            ? StudentT.InvCDF(0, 1, Math.Max(1, Math.Floor(freedom)), upTo)
            : Normal.InvCDF(0, 1, upTo);
    }

    /// <summary>Derivatives by every input, eight at a time.</summary>
    private static double[] Slopes(Trials trials, UncertainInput[] inputs)
    {
        double[] slopes = new double[inputs.Length];
        Dual<Lanes>[] numbers = new Dual<Lanes>[inputs.Length];
        Span<double> direction = stackalloc double[Lanes.Count];
        for (int from = 0; from < inputs.Length; from += Lanes.Count)
        {
            for (int i = 0; i < inputs.Length; i++)
            {
                direction.Clear();
                if (i >= from && i < from + Lanes.Count)
                {
                    direction[i - from] = 1;
                }

                numbers[i] = new(inputs[i].Value.Si, new Lanes(direction));
            }

            Lanes found = trials.Slopes(numbers);
            for (int i = from; i < Math.Min(inputs.Length, from + Lanes.Count); i++)
            {
                slopes[i] = found[i - from];
            }
        }

        return slopes;
    }

    /// <summary>What each input adds to the variance, with half of what it shares with others.</summary>
    private static double[] Squares(double[] parts, double[,] correlations)
    {
        double[] squares = new double[parts.Length];
        for (int i = 0; i < parts.Length; i++)
        {
            for (int j = 0; j < parts.Length; j++)
            {
                squares[i] += parts[i] * parts[j] * correlations[i, j];
            }
        }

        return squares;
    }

    private static double EffectiveFreedom(double[] parts, UncertainInput[] inputs, double variance)
    {
        double sum = 0;
        for (int i = 0; i < parts.Length; i++)
        {
            sum += Math.Pow(parts[i], 4) / inputs[i].DegreesOfFreedom;
        }

        double freedom = variance * variance / sum;
        return sum > 0 ? freedom : double.PositiveInfinity;
    }
}
