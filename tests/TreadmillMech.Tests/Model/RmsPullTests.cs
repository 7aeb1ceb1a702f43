namespace TreadmillMech.Tests.Model;

/// <summary>The root mean square of the pull, from integrals in closed form, against a dense quadrature.</summary>
public sealed class RmsPullTests
{
    [Fact]
    public void AtSpeedsInsideTheMeasurementsItIsThatOfAQuadrature() => Compare(insideOnly: true);

    private static void Compare(bool insideOnly)
    {
        double worst = 0;
        int compared = 0;
        MeansOverAStepTests.Each(
            (x, s, y) =>
            {
                double expected = Math.Sqrt(MeansOverAStepTests.Quadrature(s, pull => pull * pull));
                bool outside = ((long)y.NoticeBits.Value & 3) != 0;
                if (!(insideOnly && outside))
                {
                    worst = Math.Max(worst, Math.Abs(y.RmsPull - expected) / expected);
                    compared++;
                }
            }
        );
        Assert.True(compared > 200, $"{compared} machines");
        Assert.True(worst <= 1e-10, $"worst {worst:E2} of {compared}");
    }
}
