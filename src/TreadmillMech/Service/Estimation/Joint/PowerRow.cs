using TreadmillMech.Numbers;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>Mean mains power by the operating point.</summary>
internal sealed class PowerRow(
    int happened,
    string name,
    double power,
    ModelCase model,
    (double Relative, double Least) uncertainty
) : VisitRow(happened, name, "W", power, model.Unknowns)
{
    internal override Dual<Lanes> Expect(ReadOnlySpan<Dual<Lanes>> at) => model.Run(at).MainsPower;

    internal override Lanes Values(ReadOnlySpan<Lanes> at) => model.Run(at).MainsPower;

    internal override double Uncertainty(ReadOnlySpan<Dual<Lanes>> at, double value) =>
        Math.Max(uncertainty.Least, uncertainty.Relative * value);
}
