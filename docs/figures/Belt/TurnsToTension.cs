using TreadmillMech.Figures.Drawing;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Figures.Belt;

/// <summary>Tension gained by turns of both bolts, for belts and mountings of different stiffness.</summary>
internal static class TurnsToTension
{
    internal static Chart Draw() =>
        new Chart("turns-to-tension", "turns of both M8x1.25 bolts [1]", "strand tension gained [N]")
            .Curve("12 N/mm at 1 %, rigid frame", 0, 2, turns => Gain(turns, 12000, 0))
            .Curve("8 N/mm, rigid frame", 0, 2, turns => Gain(turns, 8000, 0))
            .Curve("8 N/mm, each hub gives 1 mm for 4 kN", 0, 2, turns => Gain(turns, 8000, 2 * 0.25e-6))
            .Curve("5 N/mm, rigid frame", 0, 2, turns => Gain(turns, 5000, 0))
            .Window(0, 2, 0, 1600);

    private static double Gain(double turns, double perWidth, double compliance)
    {
        Real stiffness = BeltLaws.Stiffness<Real>(perWidth, Example.BeltWidth);
        Real lengthening =
            LoopLaws.LengthSlope<Real>(Example.StrandAngle) * ScrewThreadLaws.Travel<Real>(Example.Lead, turns);
        return BeltLaws.TensionGain<Real>(
            stiffness,
            lengthening,
            Example.LoopLength,
            BeltLaws.CompliantLength<Real>(stiffness, compliance)
        );
    }
}
