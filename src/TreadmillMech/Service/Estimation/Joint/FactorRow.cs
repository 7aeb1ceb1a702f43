using TreadmillMech.Numbers;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>A pass or fail as the normal factor that stands for it: a measured distance from the limit.</summary>
internal sealed class FactorRow(VisitRow outcome, double distance, double uncertainty)
    : VisitRow(outcome.Event, outcome.Name, "", distance, outcome.Unknowns.ToArray())
{
    internal override Dual<Lanes> Expect(ReadOnlySpan<Dual<Lanes>> at) => outcome.Expect(at);

    internal override double Uncertainty(ReadOnlySpan<Dual<Lanes>> at, double value) => uncertainty;
}
