using FsCheck.Xunit;
using TreadmillMech.Laws;

namespace TreadmillMech.Tests.Laws;

[Properties(Arbitrary = [typeof(Fraction)])]
public sealed class ScrewThreadLawsPropertyTests
{
    // The 60 degree triangle is sqrt(3)/2 of the pitch high; each diameter is cut by a share of that height.
    [Property]
    public void DiametersAreSharesOfTheTrianglesHeight(Fraction diameter, Fraction pitch)
    {
        double d = diameter.Between(0.005, 0.02);
        double p = pitch.Between(5e-4, 2.5e-3);
        double height = p * Math.Sqrt(3) / 2;
        Close.To(d - (2 * 3.0 / 8 * height), ScrewThreadLaws.PitchDiameter<Real>(d, p), 1e-14);
        Close.To(d - (2 * 5.0 / 8 * height), ScrewThreadLaws.MinorDiameter<Real>(d, p), 1e-14);
        Close.To(d - (2 * 17.0 / 24 * height), ScrewThreadLaws.RootDiameter<Real>(d, p), 1e-14);
    }

    // ISO 898-1: a circle on the mean of pitch and root diameter.
    [Property]
    public void MetricStressAreaIsThatOfTheMeanDiameter(Fraction diameter, Fraction pitch)
    {
        double d = diameter.Between(0.005, 0.02);
        double p = pitch.Between(5e-4, 2.5e-3);
        double mean = (ScrewThreadLaws.PitchDiameter<Real>(d, p) + ScrewThreadLaws.RootDiameter<Real>(d, p)) / 2;
        Close.To(Math.PI / 4 * mean * mean, ScrewThreadLaws.MetricStressArea<Real>(d, p), 1e-13);
    }

    // ASME B1.1: the printed constant is 9 sqrt(3)/16.
    [Property]
    public void UnifiedStressAreaIsSmallerByOneOrTwoPerCent(Fraction size)
    {
        // Coarse threads: the pitch is about an eighth to a fifth of the diameter.
        double d = 0.008;
        double p = size.Between(d / 8, d / 5);
        double share = ScrewThreadLaws.UnifiedStressArea<Real>(d, p) / ScrewThreadLaws.MetricStressArea<Real>(d, p);
        Assert.InRange(share, 0.98, 0.99);
        double mean = d - (9 * Math.Sqrt(3) / 16 * p);
        Close.To(Math.PI / 4 * mean * mean, ScrewThreadLaws.UnifiedStressArea<Real>(d, p), 1e-13);
    }

    [Property]
    public void ScrewsNarrowInwards(Fraction diameter, Fraction pitch)
    {
        double d = diameter.Between(0.005, 0.02);
        double p = pitch.Between(5e-4, 2.5e-3);
        double pitchDiameter = ScrewThreadLaws.PitchDiameter<Real>(d, p);
        double minor = ScrewThreadLaws.MinorDiameter<Real>(d, p);
        double root = ScrewThreadLaws.RootDiameter<Real>(d, p);
        Assert.True(d > pitchDiameter && pitchDiameter > minor && minor > root);
    }

    [Property]
    public void TurningBackUndoesTheTravel(Fraction lead, Fraction turns)
    {
        double l = lead.Between(5e-4, 3e-3);
        double n = turns.Between(-4, 4);
        Assert.Equal(0, ScrewThreadLaws.Travel<Real>(l, n) + ScrewThreadLaws.Travel<Real>(l, -n));
        Close.To(n, ScrewThreadLaws.Travel<Real>(l, n) / l);
    }
}
