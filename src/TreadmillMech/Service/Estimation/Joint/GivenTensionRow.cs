using TreadmillMech.Numbers;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>The tension that the machine was described with, before the turns since: tension, stiffness.</summary>
internal sealed class GivenTensionRow(
    LoopGeometry loop,
    double lengthening,
    double given,
    double uncertainty,
    int tension,
    int stiffness
) : VisitRow(-1, "tension at rest as described", "N", given, tension, stiffness)
{
    internal override Dual<Lanes> Expect(ReadOnlySpan<Dual<Lanes>> at) =>
        at[0] - LiftedLoop.Gain(loop, at[1], lengthening);

    internal override double Uncertainty(ReadOnlySpan<Dual<Lanes>> at, double value) => uncertainty;
}
