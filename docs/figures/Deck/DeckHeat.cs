using TreadmillMech.Figures.Drawing;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Figures.Deck;

/// <summary>Heat between belt and deck over belt speed for one user and three frictions.</summary>
internal static class DeckHeat
{
    internal static Chart Draw() =>
        new Chart("deck-heat", "belt speed [m/s]", "heat between belt and deck [W]")
            .Curve("friction 0.35, dry and worn", 0, 4.5, speed => Heat(0.35, speed))
            .Curve("friction 0.20", 0, 4.5, speed => Heat(0.20, speed))
            .Curve("friction 0.10, lubricated", 0, 4.5, speed => Heat(0.10, speed))
            .Note("user of 80 kg, level deck", 2.5, 60)
            .Window(0, 4.5, 0, 1300);

    private static double Heat(double friction, double speed) =>
        DeckLaws.FrictionPower<Real>(friction, GaitLaws.MeanNormalForce<Real>(80, 0, 0), speed);
}
