using ScottPlot;
using TreadmillMech.Figures.Drawing;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Figures.Grip;

/// <summary>Largest pull before slip over the place of the load, by the loop's length and by the textbook.</summary>
internal static class HoldingPull
{
    internal static Chart Draw() =>
        new Chart(
            "holding-pull",
            "share of the loop between drive roller and load [1]",
            "largest pull over strand tension [1]"
        )
            .Curve("length of the belt is kept", 0, 1, Share)
            .Flat("T₁ + T₂ is kept (textbook)", 0, 1, Share(0.5))
            .Marks([(0.137, Share(0.137)), (0.65, Share(0.65))])
            .Note("foot strike, front drive", 0.16, Share(0.137), Alignment.UpperLeft)
            .Note("foot strike, rear drive", 0.63, Share(0.65), Alignment.LowerRight)
            .Window(0, 1, 0.4, 1.7);

    private static double Share(double share) => TractionLaws.HoldingPull<Real>(1, Example.TensionRatio, share);
}
