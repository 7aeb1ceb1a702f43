namespace TreadmillMech.Studies;

/// <summary>How far the numbers of a drawing have settled: standard errors, from parts of the draws.</summary>
/// <param name="OfMean">Of the mean.</param>
/// <param name="OfStandardUncertainty">Of the standard uncertainty.</param>
/// <param name="OfLow">Of the lower end of the interval.</param>
/// <param name="OfHigh">Of the upper end of the interval.</param>
/// <param name="Tolerance">Half a unit in the last digit that matters (JCGM 101:2008, 7.9.2).</param>
public sealed record Convergence(
    PhysicalValue OfMean,
    PhysicalValue OfStandardUncertainty,
    PhysicalValue OfLow,
    PhysicalValue OfHigh,
    PhysicalValue Tolerance
)
{
    /// <summary>Whether twice every standard error is within the tolerance (JCGM 101:2008, 7.9.4).</summary>
    public bool Settled =>
        2 * Math.Max(Math.Max(OfMean.Si, OfStandardUncertainty.Si), Math.Max(OfLow.Si, OfHigh.Si)) <= Tolerance.Si;
}
