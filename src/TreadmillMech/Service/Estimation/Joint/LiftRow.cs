using TreadmillMech.Numbers;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>Force of a lift test: tension, stiffness.</summary>
internal sealed class LiftRow(
    int happened,
    in LiftedLoop lifted,
    double height,
    double force,
    (double Relative, double Height) uncertainty,
    int tension,
    int stiffness
) : VisitRow(happened, "lift test", "N", force, tension, stiffness)
{
    private readonly LiftedLoop loop = lifted;

    internal override Dual<Lanes> Expect(ReadOnlySpan<Dual<Lanes>> at) => loop.Force(at[0], at[1], height);

    internal override double Uncertainty(ReadOnlySpan<Dual<Lanes>> at, double value)
    {
        double ofForce = uncertainty.Relative * value;
        double ofHeight =
            loop.Force(at[0].Value[0], at[1].Value[0], Dual<Real>.Variable(height)).Slope * uncertainty.Height;
        return Math.Sqrt((ofForce * ofForce) + (ofHeight * ofHeight));
    }
}
