using TreadmillMech.Figures.Drawing;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Figures.Screws;

/// <summary>Torque in the thread of one of two M8x1.25 take-up bolts over the strand tension.</summary>
internal static class BoltTorque
{
    private const double Flank = Math.PI / 6;

    internal static Chart Draw() =>
        new Chart("bolt-torque", "strand tension [N]", "torque in the thread [N m]")
            .Curve("tighten, friction 0.20", 0, 2500, tension => Tighten(tension, 0.20))
            .Curve("tighten, friction 0.12", 0, 2500, tension => Tighten(tension, 0.12))
            .Curve("loosen, friction 0.20", 0, 2500, tension => Loosen(tension, 0.20))
            .Curve("loosen, friction 0.12", 0, 2500, tension => Loosen(tension, 0.12))
            .Window(0, 2500, 0, 3.2);

    // Two strands on two bolts: each bolt carries the tension of one strand.
    private static double Tighten(double tension, double friction) =>
        ScrewTorqueLaws.RaisingTorque<Real>(tension, Pitch, Example.Lead, friction, Flank);

    private static double Loosen(double tension, double friction) =>
        ScrewTorqueLaws.LoweringTorque<Real>(tension, Pitch, Example.Lead, friction, Flank);

    private static double Pitch => ScrewThreadLaws.PitchDiameter<Real>(0.008, Example.Lead);
}
