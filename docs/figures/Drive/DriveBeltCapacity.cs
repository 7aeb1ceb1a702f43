using ScottPlot;
using TreadmillMech.Figures.Drawing;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Figures.Drive;

/// <summary>What a ribbed belt transmits while the motor drives and while it brakes, by its tensioner.</summary>
internal static class DriveBeltCapacity
{
    internal static Chart Draw()
    {
        Real angle = LoopLaws.StrandAngle<Real>(0.0375, 0.0125, 0.18);
        Real ratio = TractionLaws.TensionRatio(WornFriction, LoopLaws.Wrap(-angle));
        double sum = DriveBeltLaws.CapacityOfTensionSum<Real>(2 * Kept, ratio);
        double slack = DriveBeltLaws.CapacityOfSlackSide<Real>(Kept, ratio);
        double tight = DriveBeltLaws.CapacityOfTightSide<Real>(Kept, ratio);
        return new Chart("drive-belt-capacity", "", "largest force at the pulley [N]", Alignment.UpperRight)
            .Columns("motor drives", [sum, slack, tight], 0, 2)
            .Columns("motor brakes", [sum, tight, slack], 1, 2)
            .Names("fixed centres or\nsprung motor", "idler on the\nslack side", "idler on the\ntight side")
            .Window(-0.6, 2.6, 0, 1.25 * slack);
    }

    private const double Kept = 150;

    // Between a flat belt and the full wedge of new ribs.
    private static readonly Real WornFriction = 0.5;
}
