using FsCheck.Xunit;
using MathNet.Numerics.Integration;
using TreadmillMech.Laws;

namespace TreadmillMech.Tests.Laws;

[Properties(Arbitrary = [typeof(Fraction)])]
public sealed class LoopLawsPropertyTests
{
    [Property]
    public void LengthSlopeIsTheDerivativeOfTheLength(Fraction radius, Fraction other, Fraction distance)
    {
        double r1 = radius.Between(0.02, 0.3);
        double r2 = other.Between(0.02, 0.3);
        double c = distance.Between(0.7, 2);
        double slope = LoopLaws.LengthSlope(LoopLaws.StrandAngle<Real>(r1, r2, c));
        Close.To(Close.Slope(x => LoopLaws.Length<Real>(r1, r2, x), c, 1e-5), slope, 1e-8);
        Close.To(LoopLaws.Length<Dual<Real>>(r1, r2, Dual<Real>.Variable(c)).Slope, slope, 1e-13);
    }

    [Property]
    public void BothRollersSeeTheSameLoop(Fraction radius, Fraction other, Fraction distance)
    {
        double r1 = radius.Between(0.02, 0.3);
        double r2 = other.Between(0.02, 0.3);
        double c = distance.Between(0.7, 2);
        Close.To(LoopLaws.Length<Real>(r1, r2, c), LoopLaws.Length<Real>(r2, r1, c), 1e-14);
        double angle = LoopLaws.StrandAngle<Real>(r1, r2, c);
        Close.Within(-angle, LoopLaws.StrandAngle<Real>(r2, r1, c), 1e-15);
        Close.To(2 * Math.PI, LoopLaws.Wrap<Real>(angle) + LoopLaws.Wrap<Real>(-angle), 1e-14);
    }

    [Property]
    public void EqualRollersAreTwoHalfCirclesAndTwoLines(Fraction radius, Fraction distance)
    {
        double r = radius.Between(0.02, 0.3);
        double c = distance.Between(0.7, 2);
        Close.To((2 * c) + (2 * Math.PI * r), LoopLaws.Length<Real>(r, r, c), 1e-14);
    }

    /// <summary>The length of a convex curve is the integral of its width by direction (Cauchy): no angles of contact.</summary>
    [Property(MaxTest = 30)]
    public void LengthIsThatOfTheConvexHullOfTwoCircles(Fraction radius, Fraction other, Fraction distance)
    {
        double r1 = radius.Between(0.02, 0.3);
        double r2 = other.Between(0.02, 0.3);
        double c = distance.Between(0.7, 2);

        // Support function of the hull; its corner is where both circles reach equally far.
        double corner = Math.Acos((r1 - r2) / c);
        double Support(double direction) => Math.Max(r1, r2 + (c * Math.Cos(direction)));
        double half =
            GaussLegendreRule.Integrate(Support, 0, corner, 32)
            + GaussLegendreRule.Integrate(Support, corner, Math.PI, 32);
        Close.To(2 * half, LoopLaws.Length<Real>(r1, r2, c), 1e-13);
    }
}
