using ScottPlot;
using TreadmillMech.Figures.Drawing;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Figures.Belt;

/// <summary>Tension left over time since a new belt was fitted, for three shares lost in a decade.</summary>
internal static class Relaxation
{
    internal static Chart Draw() =>
        new Chart("belt-relaxation", "time since fitting [h]", "tension over that at one hour [%]", Alignment.LowerLeft)
            .CurveOverDecades("3 % in a decade", 0, 4, hours => Left(0.03, hours))
            .CurveOverDecades("6 % in a decade", 0, 4, hours => Left(0.06, hours))
            .CurveOverDecades("10 % in a decade", 0, 4, hours => Left(0.10, hours))
            .Window(0, 4, 50, 105);

    private static double Left(double share, double hours) =>
        BeltLifeLaws.RelaxedTension<Real>(100, share, Math.Log10(hours));
}
