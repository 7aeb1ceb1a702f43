using TreadmillMech.Numbers;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>A quantity that follows from unknowns, with its derivatives; no reading.</summary>
internal sealed class DerivedRow(Func<ReadOnlySpan<Dual<Lanes>>, Dual<Lanes>> derivation, params int[] unknowns)
    : VisitRow(-1, "", "", 0, unknowns)
{
    /// <summary>The unknown itself.</summary>
    internal static DerivedRow Of(int unknown) => new(static at => at[0], unknown);

    internal override Dual<Lanes> Expect(ReadOnlySpan<Dual<Lanes>> at) => derivation(at);

    internal override double Uncertainty(ReadOnlySpan<Dual<Lanes>> at, double value) => 1;
}
