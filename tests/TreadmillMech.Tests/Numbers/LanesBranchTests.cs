namespace TreadmillMech.Tests.Numbers;

/// <summary>Each lane takes its own branch.</summary>
public sealed class LanesBranchTests
{
    [Fact]
    public void NaNAndInfinityStayInTheirLaneAndBranch()
    {
        Dual<Lanes> left = new(new Lanes([0, double.NaN, 0, 5, 0, 5, double.NegativeInfinity, 0]), 1);
        Dual<Lanes> right = new(new Lanes([1, 1, double.NaN, 1, 1, 1, 0, 0]), 1);
        Dual<Lanes> bad = new(double.PositiveInfinity, double.NaN);
        Dual<Lanes> chosen = Dual<Lanes>.IfLess(right, left, 7, Dual<Lanes>.IfLess(left, right, 8, 9));
        Dual<Lanes> other = Dual<Lanes>.IfLess(left, right, 2, bad);

        // By the comparisons of IEEE 754, lane by lane.
        double[] expected = [8, 9, 9, 7, 8, 7, 8, 9];
        double[] slope = [0, double.NaN, double.NaN, double.NaN, 0, double.NaN, 0, double.NaN];
        for (int k = 0; k < Lanes.Count; k++)
        {
            Assert.Equal(expected[k], chosen.Value[k]);
            Assert.Equal(0, chosen.Slope[k]);
            Assert.Equal(slope[k], other.Slope[k]);
        }
    }
}
