using ScottPlot;
using TreadmillMech.Figures.Drawing;

namespace TreadmillMech.Figures.People;

/// <summary>Two steps of a walker: each foot by itself, and both added while both are down.</summary>
internal static class DoubleSupport
{
    internal static Chart Draw()
    {
        Foot foot = Foot.Walking(1.4);
        double step = foot.StepTime;
        return new Chart(
            "double-support",
            "time since foot strike [s]",
            "force square to the deck [body weights]",
            Alignment.UpperRight
        )
            .Curve(
                "both feet, added",
                0,
                2 * step,
                time => foot.Normal(time) + foot.Normal(time - step) + foot.Normal(time + step)
            )
            .Curve("this foot", 0, foot.ContactTime, foot.Normal)
            .Curve("the other foot", step, 2 * step, time => foot.Normal(time - step))
            .Flat("mean of both: the weight", 0, 2 * step, 1)
            .Window(0, 2 * step, 0, 2.8);
    }
}
