using TreadmillMech.Numbers;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>Mean motor current by the operating point: deck, drag, constant, friction inside the motor.</summary>
internal sealed class CurrentRow(
    int happened,
    string name,
    double current,
    ModelCase model,
    (double Relative, double Least) uncertainty
) : VisitRow(happened, name, "A", current, model.Unknowns)
{
    internal override Dual<Lanes> Expect(ReadOnlySpan<Dual<Lanes>> at) => model.Run(at).MeanCurrent;

    internal override Lanes Values(ReadOnlySpan<Lanes> at) => model.Run(at).MeanCurrent;

    internal override double Uncertainty(ReadOnlySpan<Dual<Lanes>> at, double value) =>
        Math.Max(uncertainty.Least, uncertainty.Relative * value);
}
