using ScottPlot;
using TreadmillMech.Figures.Drawing;

namespace TreadmillMech.Figures.People;

/// <summary>Force of one foot along the deck over its stance: braking first, then pushing off.</summary>
internal static class ForeAft
{
    internal static Chart Draw()
    {
        Chart chart = new(
            "foot-force-along",
            "phase of the stance [1]",
            "force along the deck [body weights]",
            Alignment.UpperRight
        );
        Foot walk = Foot.Walking(1.4);
        Foot run = Foot.Running(3.6);
        return chart
            .Curve("running, 3.6 m/s", 0, 1, phase => run.Along(phase * run.ContactTime))
            .Curve("walking, 1.4 m/s", 0, 1, phase => walk.Along(phase * walk.ContactTime))
            .Note("brakes: resists the belt", 0.02, 0.33)
            .Note("pushes off: drives the belt", 0.02, -0.31)
            .Window(0, 1, -0.4, 0.4);
    }
}
