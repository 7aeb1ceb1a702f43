using FsCheck.Xunit;
using TreadmillMech.Laws;

namespace TreadmillMech.Tests.Laws;

[Properties(Arbitrary = [typeof(Fraction)])]
public sealed class TakeUpLawsPropertyTests
{
    [Property]
    public void EqualTurnsDoNotSkewAndOppositeTurnsDoNotTighten(Fraction travel, Fraction angle, Fraction spacing)
    {
        double s = travel.Between(-0.02, 0.02);
        double bolts = angle.Between(0, 1);
        Assert.Equal(0, (double)TakeUpLaws.Skew<Real>(s, s, bolts, spacing.Between(0.3, 0.8)));
        Assert.Equal(0, (double)TakeUpLaws.CentreDistanceChange<Real>(s, -s, bolts));
    }

    // Each end of the roller moves by its bolt: middle plus and minus the skew over half the spacing.
    [Property]
    public void MiddleAndSkewGiveBackBothBolts(Fraction left, Fraction right, Fraction angle, Fraction spacing)
    {
        double sl = left.Between(-0.02, 0.02);
        double sr = right.Between(-0.02, 0.02);
        double bolts = angle.Between(0, 1);
        double w = spacing.Between(0.3, 0.8);
        double middle = TakeUpLaws.CentreDistanceChange<Real>(sl, sr, bolts);
        double skew = TakeUpLaws.Skew<Real>(sl, sr, bolts, w);
        Close.Within(sl * Math.Cos(bolts), middle + (skew * w / 2), 1e-16);
        Close.Within(sr * Math.Cos(bolts), middle - (skew * w / 2), 1e-16);
    }

    // Strains from two whole loops, not from a derivative.
    [Property]
    public void ElongationIsTheDifferenceOfTwoLoops(Fraction radius, Fraction change)
    {
        double r1 = radius.Between(0.02, 0.06);
        double dc = change.Between(1e-5, 1e-2);
        double before = LoopLaws.Length<Real>(r1, 0.03, 1.35);
        double after = LoopLaws.Length<Real>(r1, 0.03, 1.35 + dc);
        double strain = TakeUpLaws.Elongation<Real>(dc, LoopLaws.StrandAngle<Real>(r1, 0.03, 1.35), before);
        Close.Within((after - before) / before, strain, (1e-5 * strain) + 1e-15);
    }

    // The left edge is a loop of its own, on centres longer by the skew over half the width.
    [Property]
    public void EdgesAreLoopsOfTheirOwn(Fraction skew, Fraction width)
    {
        double phi = skew.Between(-0.02, 0.02);
        double b = width.Between(0.3, 0.6);
        double length = LoopLaws.Length<Real>(0.03, 0.025, 1.35);
        double angle = LoopLaws.StrandAngle<Real>(0.03, 0.025, 1.35);
        double left = LoopLaws.Length<Real>(0.03, 0.025, 1.35 + (phi * b / 2));
        double right = LoopLaws.Length<Real>(0.03, 0.025, 1.35 - (phi * b / 2));
        double edge = TakeUpLaws.EdgeStrain<Real>(phi, b, angle, length);
        Close.Within((left - right) / (2 * length), edge, (1e-8 * Math.Abs(edge)) + 1e-15);
    }
}
