using ScottPlot;
using TreadmillMech.Figures.Drawing;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Figures.Belt;

/// <summary>Elongation across the width for a turn given evenly, and for the same on one side only.</summary>
internal static class UnevenTakeUp
{
    private const double BoltSpacing = 0.56;

    internal static Chart Draw() =>
        new Chart("uneven-take-up", "place across the belt, left to right [mm]", "elongation [%]", Alignment.LowerLeft)
            .Curve("both bolts ½ turn", -254, 254, place => Strain(place, 0.5, 0.5))
            .Curve("left bolt 1 turn", -254, 254, place => Strain(place, 1, 0))
            .Curve("left bolt 1 turn, right ½ back", -254, 254, place => Strain(place, 1, -0.5))
            .Window(-254, 254, 0.14, 0.38);

    private static double Strain(double place, double left, double right)
    {
        Real leftTravel = ScrewThreadLaws.Travel<Real>(Example.Lead, left);
        Real rightTravel = ScrewThreadLaws.Travel<Real>(Example.Lead, right);
        Real before = Example.Tension / Example.Stiffness;
        Real mean = TakeUpLaws.Elongation<Real>(
            TakeUpLaws.CentreDistanceChange(leftTravel, rightTravel, 0),
            Example.StrandAngle,
            Example.LoopLength
        );

        // The law gives the edge of a belt as wide as its argument: twice the distance from the middle.
        Real edge = TakeUpLaws.EdgeStrain<Real>(
            TakeUpLaws.Skew<Real>(leftTravel, rightTravel, 0, BoltSpacing),
            -2e-3 * place,
            Example.StrandAngle,
            Example.LoopLength
        );
        return 100 * (before + mean + edge);
    }
}
