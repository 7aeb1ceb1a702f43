using TreadmillMech.Figures.Drawing;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Figures.Motor;

/// <summary>Mains current over belt speed for two users, beside what branch circuits bear for long.</summary>
internal static class BranchCircuit
{
    internal static Chart Draw() =>
        new Chart("branch-circuit", "belt speed [m/s]", "mains current [A]")
            .Curve("user of 118 kg", 0.5, 4.5, speed => Amperes(118, speed))
            .Curve("user of 75 kg", 0.5, 4.5, speed => Amperes(75, speed))
            .Level("80 % of a 15 A circuit", SupplyLaws.LastingCurrent<Real>(15), 0.55)
            .Level("80 % of a 20 A circuit", SupplyLaws.LastingCurrent<Real>(20), 0.55)
            .Window(0.5, 4.5, 0, 26);

    private static double Amperes(double mass, double speed) => Example.At(mass, speed).MainsCurrent.Value.Amperes;
}
