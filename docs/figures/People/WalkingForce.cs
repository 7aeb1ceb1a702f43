using ScottPlot;
using TreadmillMech.Figures.Drawing;

namespace TreadmillMech.Figures.People;

/// <summary>Force of one foot square to the deck over its stance, walking, at four speeds.</summary>
internal static class WalkingForce
{
    internal static Chart Draw()
    {
        Chart chart = new(
            "foot-force-walking",
            "time since foot strike [s]",
            "force of one foot [body weights]",
            Alignment.UpperRight
        );
        foreach (double speed in (double[])[0.7, 1.1, 1.5, 2.0])
        {
            Foot foot = Foot.Walking(speed);
            chart.Curve($"{speed:0.0} m/s", 0, foot.ContactTime, foot.Normal);
        }

        return chart;
    }
}
