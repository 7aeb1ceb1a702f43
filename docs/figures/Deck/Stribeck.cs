using ScottPlot;
using TreadmillMech.Figures.Drawing;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Figures.Deck;

/// <summary>Friction between standstill and running over the sliding speed.</summary>
internal static class Stribeck
{
    internal static Chart Draw() =>
        new Chart("stribeck", "sliding speed [m/s]", "friction [1]", Alignment.UpperRight)
            .Curve("static 0.30, kinetic 0.20, 0.15 m/s", 0, 1, speed => Friction(0.20, 0.30, speed))
            .Curve("lubricated: 0.16, 0.12, 0.15 m/s", 0, 1, speed => Friction(0.12, 0.16, speed))
            .Window(0, 1, 0, 0.4);

    private static double Friction(double kinetic, double still, double speed) =>
        DeckWearLaws.StribeckFriction<Real>(kinetic, still, speed, 0.15);
}
