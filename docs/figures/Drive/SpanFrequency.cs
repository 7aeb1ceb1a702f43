using TreadmillMech.Figures.Drawing;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Figures.Drive;

/// <summary>Tension of a drive-belt span over its lowest frequency.</summary>
internal static class SpanFrequency
{
    private const double MassPerLength = 0.06;

    internal static Chart Draw() =>
        new Chart("span-frequency", "lowest frequency [Hz]", "tension [N]")
            .Curve(
                "flexible, span 180 mm",
                40,
                240,
                hertz => SpanLaws.TensionFromFrequency<Real>(MassPerLength, 0.18, hertz)
            )
            .Curve(
                "the same, stiffness 0.05 N m²",
                40,
                240,
                hertz => SpanLaws.StiffTensionFromFrequency<Real>(MassPerLength, 0.18, hertz, 0.05)
            )
            .Curve(
                "span 5 mm too long",
                40,
                240,
                hertz => SpanLaws.TensionFromFrequency<Real>(MassPerLength, 0.185, hertz)
            )
            .Window(40, 240, 0, 500);
}
