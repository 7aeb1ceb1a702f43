using FsCheck.Xunit;
using TreadmillMech.Laws;

namespace TreadmillMech.Tests.Laws;

[Properties(Arbitrary = [typeof(Fraction)])]
public sealed class SpanAndLiftPropertyTests
{
    [Property]
    public void FrequencyAndTensionUndoEachOther(Fraction mass, Fraction span, Fraction tension)
    {
        double m = mass.Between(0.01, 0.2);
        double l = span.Between(0.1, 1);
        double t = tension.Between(50, 1000);
        Close.To(t, SpanLaws.TensionFromFrequency<Real>(m, l, SpanLaws.Frequency<Real>(m, l, t)));
    }

    // The lowest mode runs there and back once a period at the speed of the string's waves.
    [Property]
    public void AWaveRunsThereAndBackOnceAPeriod(Fraction mass, Fraction span, Fraction tension)
    {
        double m = mass.Between(0.01, 0.2);
        double l = span.Between(0.1, 1);
        double t = tension.Between(50, 1000);
        Close.To(2 * l / Math.Sqrt(t / m), 1 / SpanLaws.Frequency<Real>(m, l, t));
    }

    [Property]
    public void TensionIsFoundAgainFromALift(Fraction tension, Fraction height, Fraction span, Fraction weight)
    {
        double t = tension.Between(200, 3000);
        double h = height.Between(0.005, 0.08);
        double l = span.Between(0.8, 2);
        double w = weight.Between(0, 20);

        // Two lifts of one belt differ by their tensions alone: the law is a straight line in the tension.
        double F(double strand) => LiftLaws.LiftForce<Real>(strand, 3.6e5, h, l, 2.85, w);
        double found = (F(t) - F(0)) / (F(1000) - F(0)) * 1000;
        Close.To(t, found, 1e-10);
    }

    // Work of the hand is energy of the loop: the force is the energy's slope.
    [Property]
    public void LiftForceIsTheSlopeOfTheLoopsEnergy(
        Fraction tension,
        Fraction stiffness,
        Fraction height,
        Fraction span
    )
    {
        double t = tension.Between(200, 3000);
        double ea = stiffness.Between(0, 1e6);
        double l = span.Between(0.8, 2);
        double at = height.Between(0.005, 0.08);
        double force = LiftLaws.LiftForce<Real>(t, ea, at, l, 2.85, 0);
        Close.To(Close.Slope(Energy, at, 1e-4 * at), force, 1e-6);

        double Energy(double h)
        {
            double longer = (2 * Math.Sqrt((l * l / 4) + (h * h))) - l;
            return (t * longer) + (ea * longer * longer / (2 * 2.85));
        }
    }

    [Property]
    public void ALockedTestReadsHigher(Fraction height, Fraction span)
    {
        double h = height.Between(0.01, 0.08);
        double l = span.Between(0.8, 1.4);
        Assert.True(
            LiftLaws.LiftForce<Real>(1000, 3.6e5, h, l, l, 8) > LiftLaws.LiftForce<Real>(1000, 3.6e5, h, l, 2.85, 8)
        );
    }

    // Small and large lifts: a triangle's longer sides less its base.
    [Property]
    public void LengtheningIsThatOfATriangle(Fraction height, Fraction span)
    {
        double h = height.Between(0.1, 3);
        double l = span.Between(0.5, 2);
        Close.To((2 * Math.Sqrt((l * l / 4) + (h * h))) - l, LiftLaws.SpanLengthening<Real>(h, l), 1e-12);
        Assert.Equal(0, (double)LiftLaws.SpanLengthening<Real>(0, l));
    }

    // Where the plain difference has lost half of its digits the law has lost none: 2h^2/l to 1e-12.
    [Fact]
    public void TinyLiftsKeepTheirDigits() => Close.To(2e-14 / 1.35, LiftLaws.SpanLengthening<Real>(1e-7, 1.35), 1e-13);

    [Property]
    public void DeflectionAndLiftAgreeOnTheForceOfASmallPush(Fraction tension, Fraction span)
    {
        double t = tension.Between(50, 1000);
        double l = span.Between(0.1, 1);
        double push = l / 1000;
        double force = LiftLaws.LiftForce<Real>(t, 0, push, l, l, 0);

        // The slope of a thousandth: sine for tangent is 2 in a million.
        Close.To(t, SpanLaws.TensionFromDeflection<Real>(force, push, l), 2.1e-6);
    }

    // The equation of a beam in tension, F l/4T (1 - tanh u/u), which the law inverts in closed form.
    [Property(MaxTest = 1000)]
    public void StiffTensionIsFoundFromTheExactDeflection(Fraction slenderness, Fraction span)
    {
        double u = slenderness.Ratio(0.1, 1000);
        double l = span.Between(0.1, 1);
        const double tension = 300;
        double stiffness = tension * l * l / (4 * u * u);
        double deflection = 40 * l / (4 * tension) * (1 - (Math.Tanh(u) / u));
        double share = SpanLaws.StiffTensionFromDeflection<Real>(40, deflection, l, stiffness) / tension;
        Assert.InRange(
            share,
            u > 10 ? 0.999
                : u > 3 ? 0.986
                : 0.96,
            1 + 1e-9
        );
    }

    [Property]
    public void StiffTensionsWithoutStiffnessAreThoseOfStrings(Fraction force, Fraction span)
    {
        double f = force.Between(5, 200);
        double l = span.Between(0.1, 1);
        Close.To(
            SpanLaws.TensionFromDeflection<Real>(f, 0.005, l),
            SpanLaws.StiffTensionFromDeflection<Real>(f, 0.005, l, 0)
        );
        Close.To(
            SpanLaws.TensionFromFrequency<Real>(0.1, l, f),
            SpanLaws.StiffTensionFromFrequency<Real>(0.1, l, f, 0)
        );
        Dual<Real> slope = SpanLaws.StiffTensionFromDeflection<Dual<Real>>(Dual<Real>.Variable(f), 0.005, l, 0);
        Close.To(l / 0.02, slope.Slope);
    }

    // A sine of one half wave: the energy of bending, of pulling and of motion.
    [Property]
    public void StiffFrequencyIsRayleighsQuotientOfItsOwnShape(Fraction tension, Fraction span, Fraction stiffness)
    {
        double t = tension.Between(50, 1000);
        double l = span.Between(0.1, 1);
        double ei = stiffness.Between(0, 0.1);
        double k = Math.PI / l;
        double omega2 = ((ei * k * k * k * k) + (t * k * k)) / 0.1;
        Close.To(t, SpanLaws.StiffTensionFromFrequency<Real>(0.1, l, Math.Sqrt(omega2) / 2 / Math.PI, ei), 1e-10);
    }
}
