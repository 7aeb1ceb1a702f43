namespace TreadmillMech.Studies;

/// <summary>A result with its uncertainty by both ways, and whether they agree (JCGM 101:2008, 8.1).</summary>
public sealed class ComparedUncertainty
{
    private ComparedUncertainty(PropagatedUncertainty propagated, SampledUncertainty sampled, int digits)
    {
        Propagated = propagated;
        Sampled = sampled;
        string unit = propagated.Value.Unit;
        Tolerance = PhysicalValue.Of(Sampling.Tolerance(propagated.StandardUncertainty.Si, digits), unit);
        LowDifference = PhysicalValue.Of(Math.Abs(propagated.Low.Si - sampled.Low.Si), unit);
        HighDifference = PhysicalValue.Of(Math.Abs(propagated.High.Si - sampled.High.Si), unit);
    }

    /// <summary>By the law of propagation: the budget, and a symmetric interval.</summary>
    public PropagatedUncertainty Propagated { get; }

    /// <summary>By drawing: the whole distribution.</summary>
    public SampledUncertainty Sampled { get; }

    /// <summary>Half a unit in the last digit that matters of the standard uncertainty.</summary>
    public PhysicalValue Tolerance { get; }

    /// <summary>Distance of the two lower ends of the intervals.</summary>
    public PhysicalValue LowDifference { get; }

    /// <summary>Distance of the two upper ends.</summary>
    public PhysicalValue HighDifference { get; }

    /// <summary>Whether both ends agree within the tolerance, the error of the drawing allowed for.</summary>
    /// <remarks>
    /// Where they differ, go by the drawing: the result bends too much over the uncertainty, one input that is not normal
    /// outweighs the others, or some draws have no answer.
    /// </remarks>
    public Agreement Agreement
    {
        get
        {
            double low = LowDifference.Si;
            double high = HighDifference.Si;
            double lowError = 2 * Sampled.Convergence.OfLow.Si;
            double highError = 2 * Sampled.Convergence.OfHigh.Si;
            return Sampled.WithoutAnswer > 0 || Math.Max(low - lowError, high - highError) > Tolerance.Si
                    ? Agreement.Differ
                : Math.Max(low + lowError, high + highError) <= Tolerance.Si ? Agreement.Agree
                : Agreement.Undecided;
        }
    }

    internal static Answer<ComparedUncertainty> Run(
        Trials trials,
        UncertainSet set,
        ulong seed,
        CancellationToken cancellation
    )
    {
        Answer<PropagatedUncertainty> propagated = Propagation.Run(trials, set);
        if (!propagated.Is(out PropagatedUncertainty? first))
        {
            return propagated.Missing;
        }

        Answer<SampledUncertainty> sampled = Sampling.Run(trials, set, seed, cancellation);
        return sampled.Is(out SampledUncertainty? second)
            ? new ComparedUncertainty(first, second, set.Options.SignificantDigits)
            : sampled.Missing;
    }
}
