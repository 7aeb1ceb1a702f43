using ScottPlot;
using TreadmillMech.Figures.Drawing;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Figures.Rollers;

/// <summary>Life of bearings that is left after more load.</summary>
internal static class BearingLife
{
    internal static Chart Draw() =>
        new Chart("bearing-life", "load over load before [1]", "life over life before [1]", Alignment.UpperRight)
            .Curve("ball bearing, exponent 3", 0.8, 2.2, load => BearingLaws.BallLifeRatio<Real>(load, 1))
            .Curve("roller bearing, exponent 10/3", 0.8, 2.2, load => BearingLaws.RollerLifeRatio<Real>(load, 1))
            .Marks([(1.1, BearingLaws.BallLifeRatio<Real>(1.1, 1)), (2, BearingLaws.BallLifeRatio<Real>(2, 1))])
            .Note("a tenth more: three quarters", 1.13, 0.75)
            .Note("twice: an eighth", 1.75, 0.17)
            .Window(0.8, 2.2, 0, 2.1);
}
