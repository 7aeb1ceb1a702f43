using ScottPlot;
using TreadmillMech.Figures.Drawing;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Figures.Rollers;

/// <summary>Deflection of a roller over the share of its bearing span that the belt covers.</summary>
internal static class RollerDeflection
{
    private const double Span = 0.56;

    internal static Chart Draw() =>
        new Chart(
            "roller-deflection",
            "belt width over bearing span [1]",
            "deflection at the middle [mm]",
            Alignment.LowerLeft
        )
            .Curve("load on the belt's width", 0.3, 1, share => Deflection(share))
            .Flat("load spread over the whole span", 0.3, 1, Deflection(1))
            .Marks([(Example.BeltWidth / Span, Deflection(Example.BeltWidth / Span))])
            .Note("belt 508 mm", 0.8, 0.315)
            .Window(0.3, 1, 0, 0.45);

    // A steel tube of 45 mm and 3 mm wall under two strands of 1000 N.
    private static double Deflection(double share) =>
        1000
        * RollerLaws
            .Deflection<Real>(2000, share * Span, Span, 206e9, RollerLaws.TubeSecondMoment<Real>(0.045, 0.003))
            .Value;
}
