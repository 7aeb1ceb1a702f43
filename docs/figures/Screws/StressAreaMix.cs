using ScottPlot;
using TreadmillMech.Figures.Drawing;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Figures.Screws;

/// <summary>Error of a stress area taken from the other family's formula, over pitch for each diameter.</summary>
internal static class StressAreaMix
{
    private const double Diameter = 0.008;

    internal static Chart Draw() =>
        new Chart("stress-area-mix", "pitch over diameter [%]", "error of the stress area [%]", Alignment.LowerLeft)
            .Curve("unified bolt, metric formula", 8, 21, share => 100 * ((Metric(share) / Unified(share)) - 1))
            .Curve("metric bolt, unified formula", 8, 21, share => 100 * ((Unified(share) / Metric(share)) - 1))
            .Marks([(100 * 1.25 / 8, 100 * ((Unified(100 * 1.25 / 8) / Metric(100 * 1.25 / 8)) - 1))])
            .Note("M8x1.25", 15.9, -1.3)
            .Marks([(20, 100 * ((Metric(20) / Unified(20)) - 1))])
            .Note("1/4-20 UNC", 17.2, 2.0)
            .Window(8, 21, -2.5, 2.5);

    private static double Metric(double share) =>
        ScrewThreadLaws.MetricStressArea<Real>(Diameter, Diameter * share / 100);

    private static double Unified(double share) =>
        ScrewThreadLaws.UnifiedStressArea<Real>(Diameter, Diameter * share / 100);
}
