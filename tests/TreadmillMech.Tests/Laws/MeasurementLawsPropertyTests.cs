using FsCheck.Xunit;
using TreadmillMech.Laws;

namespace TreadmillMech.Tests.Laws;

[Properties(Arbitrary = [typeof(Fraction)])]
public sealed class MeasurementLawsPropertyTests
{
    [Property]
    public void PassesAndSpeedUndoEachOther(Fraction loop, Fraction speed, Fraction time)
    {
        double l = loop.Between(2, 4);
        double v = speed.Between(0.2, 6);
        double t = time.Between(10, 120);
        Close.To(v, MeasurementLaws.SpeedFromPasses<Real>(l, v * t / l, t));
    }

    [Property]
    public void RollerAndBeltSpeedUndoEachOther(Fraction diameter, Fraction thickness, Fraction speed)
    {
        double d = diameter.Between(0.03, 0.1);
        double h = thickness.Between(0, 0.004);
        double v = speed.Between(0.2, 6);
        Close.To(v, MeasurementLaws.SpeedFromRoller<Real>(2 * v / (d + h), d, h));
    }

    [Property]
    public void ShownIsMeasuredAndItsError(Fraction shown, Fraction measured)
    {
        double s = shown.Between(0.2, 6);
        double m = measured.Between(0.2, 6);
        Close.To(s, m * (1 + MeasurementLaws.DisplayError<Real>(s, m)));
        Assert.Equal(0, (double)MeasurementLaws.DisplayError<Real>(m, m));
    }

    [Property]
    public void GradeIsTheTangentOfTheSumOfBothAngles(Fraction rise, Fraction run, Fraction floor)
    {
        double z = rise.Between(-0.05, 0.25);
        double x = run.Between(0.8, 1.5);
        double g = floor.Between(-0.05, 0.05);
        Close.Within(Math.Tan(Math.Atan2(z, x) + Math.Atan(g)), MeasurementLaws.Grade<Real>(z, x, g), 1e-14);
    }

    // Turned about on the same floor the two grades have the deck's own in the middle of their angles.
    [Property]
    public void TheMeanOfBothDirectionsIsTheDecksOwnAngle(Fraction rise, Fraction floor)
    {
        double z = rise.Between(0, 0.25);
        double g = floor.Between(-0.05, 0.05);
        double there = Math.Atan(MeasurementLaws.Grade<Real>(z, 1.2, g));
        double back = Math.Atan(MeasurementLaws.Grade<Real>(z, 1.2, -g));
        Close.Within(Math.Atan(z / 1.2), (there + back) / 2, 1e-14);
    }

    // Scaling all speeds, or reading both ratios with a wrong diameter, changes no slip.
    [Property]
    public void SlipNeedsNoDiameter(Fraction ratio, Fraction slip, Fraction error)
    {
        double i = ratio.Between(0.2, 5);
        double s = slip.Between(0, 0.2);
        double e = error.Between(0.9, 1.1);
        Close.Within(s, MeasurementLaws.Slip<Real>(i * e * (1 - s), i * e), 1e-14);
    }

    [Property]
    public void UncertaintiesAddAsASumOfSquares(Fraction first, Fraction second)
    {
        double a = first.Between(0, 0.1);
        double b = second.Between(0, 0.1);
        double u = MeasurementLaws.RelativeUncertaintyOfTwo<Real>(a, b);
        Close.Within(a * a, (u * u) - (b * b), 1e-16);
        Assert.True(u >= Math.Max(a, b) * (1 - 1e-15) && u <= a + b + 1e-17);
    }
}
