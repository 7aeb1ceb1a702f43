using TreadmillMech.Figures.Drawing;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Figures.Deck;

/// <summary>Peak force of a mass that falls on the deck, for three stiffnesses.</summary>
internal static class DropForce
{
    internal static Chart Draw() =>
        new Chart("drop-force", "height of fall [mm]", "peak force over weight [1]")
            .Curve("rigid supports, 800 N/mm", 0, 100, height => Peak(height, 800e3))
            .Curve("cushions, 300 N/mm", 0, 100, height => Peak(height, 300e3))
            .Curve("soft cushions, 100 N/mm", 0, 100, height => Peak(height, 100e3))
            .Level("twice the weight", 2, 62)
            .Window(0, 100, 0, 18);

    private static double Peak(double height, double stiffness) =>
        DeckWearLaws.DropForce<Real>(80, height / 1000, stiffness).Value / (80 * Example.FreeFall);
}
