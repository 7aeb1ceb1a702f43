using TreadmillMech.Figures.Drawing;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Figures.Reading;

/// <summary>Force of a lift over its height: free rollers, locked rollers, and a belt that does not stretch.</summary>
internal static class LiftForce
{
    internal static Chart Draw() =>
        new Chart("lift-force", "height of the lift [mm]", "force on the bar [N]")
            .Curve("both rollers locked", 0, 60, height => Force(height, Span))
            .Curve("rollers free to turn", 0, 60, height => Force(height, Example.LoopLength))
            .Curve("stretch left out", 0, 60, height => Force(height, double.PositiveInfinity))
            .Window(0, 60, 0, 420);

    private static double Span => LoopLaws.StrandLength<Real>(Example.CentreDistance, Example.StrandAngle);

    private static double Force(double height, double stretched) =>
        LiftLaws.LiftForce<Real>(
            Example.Tension,
            Example.Stiffness,
            height / 1000,
            Span,
            stretched,
            2.4 * Example.BeltWidth * Example.FreeFall
        );
}
