using ScottPlot;
using TreadmillMech.Figures.Drawing;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Figures.Belt;

/// <summary>Bending strain at the belt's face over the roller's diameter, beside the strain of the take-up.</summary>
internal static class BendingOnRoller
{
    internal static Chart Draw() =>
        new Chart("bending-on-roller", "roller diameter [mm]", "strain at the belt's face [%]", Alignment.UpperRight)
            .Curve("belt 2.5 mm thick", 25, 90, d => Percent(2.5, d))
            .Curve("belt 2.0 mm thick", 25, 90, d => Percent(2.0, d))
            .Curve("belt 1.6 mm thick", 25, 90, d => Percent(1.6, d))
            .Level("take-up: 0.25 %", 0.25, 27)
            .Window(25, 90, 0, 10);

    private static double Percent(double thickness, double diameter) =>
        100 * BeltLifeLaws.BendingStrain<Real>(thickness / 1000, diameter / 1000).Value;
}
