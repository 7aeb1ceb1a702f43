using TreadmillMech.Figures.Drawing;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Figures.Belt;

/// <summary>Sideways way of a belt over the belt that has passed, after a quarter turn on one side.</summary>
internal static class Tracking
{
    private const double Crown = 40;

    internal static Chart Draw() =>
        new Chart("tracking-drift", "belt passed [m]", "moved to the right [mm]")
            .Curve("string", 0, 120, length => 1000 * Slope(1) * length)
            .Curve("stiff wide belt", 0, 120, length => 1000 * Slope(Factor) * length)
            .Curve("stiff wide belt, crowned roller", 0, 120, length => 1000 * Crowned(length))
            .Window(0, 120, 0, 34);

    private static double Factor =>
        TrackingLaws.BeamFactor<Real>(Example.CentreDistance, Example.BeltWidth, Example.Tension / Example.Stiffness);

    private static double Slope(double factor) =>
        factor
        * TrackingLaws
            .StringDrift<Real>(
                TakeUpLaws.Skew<Real>(ScrewThreadLaws.Travel<Real>(Example.Lead, 0.25), 0, 0, 0.56),
                Example.CentreDistance,
                Example.LoopLength
            )
            .Value;

    private static double Crowned(double length) =>
        TrackingLaws.OffsetAfter<Real>(0, TrackingLaws.SettledOffset<Real>(Slope(Factor), Crown), length, Crown);
}
