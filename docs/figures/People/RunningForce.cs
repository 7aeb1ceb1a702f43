using ScottPlot;
using TreadmillMech.Figures.Drawing;

namespace TreadmillMech.Figures.People;

/// <summary>Force of one foot square to the deck over its stance, running, at four speeds.</summary>
internal static class RunningForce
{
    internal static Chart Draw()
    {
        Chart chart = new(
            "foot-force-running",
            "time since foot strike [s]",
            "force of one foot [body weights]",
            Alignment.UpperRight
        );
        foreach (double speed in (double[])[2.5, 3.3, 4.1, 4.9])
        {
            Foot foot = Foot.Running(speed);
            chart.Curve($"{speed:0.0} m/s", 0, foot.ContactTime, foot.Normal);
        }

        return chart;
    }
}
