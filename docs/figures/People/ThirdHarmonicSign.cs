using ScottPlot;
using TreadmillMech.Figures.Drawing;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Figures.People;

/// <summary>What the wrong sign of the third harmonic does to a walker: the dip becomes a hump, the mean stays.</summary>
internal static class ThirdHarmonicSign
{
    internal static Chart Draw()
    {
        Foot foot = Foot.Walking(1.4);
        return new Chart(
            "third-harmonic-sign",
            "phase of the stance [1]",
            "force of one foot [body weights]",
            Alignment.UpperRight
        )
            .Curve("sin πu + q sin 3πu", 0, 1, phase => Force(phase, foot.ThirdHarmonic))
            .Curve("sin πu − q sin 3πu: wrong", 0, 1, phase => Force(phase, -foot.ThirdHarmonic))
            .Window(0, 1, -0.6, 3.8);

        double Force(double phase, double third) =>
            GaitLaws.NormalAmplitude<Real>(1, foot.DutyFactor, third).Value
            * GaitLaws.NormalShape<Real>(phase, third).Value;
    }
}
