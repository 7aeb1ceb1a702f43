using TreadmillMech.Numbers;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>A quantity held at a value, by its logarithm; no reading.</summary>
internal sealed class HeldRow(VisitRow quantity, double logarithm, double uncertainty)
    : VisitRow(-1, "", "", logarithm, quantity.Unknowns.ToArray())
{
    private const double Least = 1e-12;

    internal override Dual<Lanes> Expect(ReadOnlySpan<Dual<Lanes>> at) =>
        Dual<Lanes>.Log(Dual<Lanes>.Max(Least, quantity.Expect(at)));

    internal override double Uncertainty(ReadOnlySpan<Dual<Lanes>> at, double value) => uncertainty;
}
