using TreadmillMech.Laws;
using static TreadmillMech.Tests.LawChecks.Factors;

namespace TreadmillMech.Tests.LawChecks;

/// <summary>The shapes and balances of a foot's force; the relations of speed are in the table of people.</summary>
public static class GaitLawsChecks
{
    private const string Hamner = "Hamner, Seth and Delp 2010 (open data), one person at 3.96 m/s; within 18 %";

    public static readonly IReadOnlyList<LawCheck> All =
    [
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.DoubleSupport)}",
            "Perry, Gait Analysis (1992): two double supports of 10 % each with a stance of 60 %",
            Mark.Memory,
            0.20,
            1e-12,
            "1",
            () => GaitLaws.DoubleSupport<Real>(0.60)
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.Flight)}",
            "Karamanidis and Arampatzis 2005, young runners: two flights of 112 ms in a stride of 1.31 Hz at duty factor 0.355; rounded numbers",
            Mark.Read,
            2 * 0.112 * 1.31,
            0.004,
            "1",
            () => GaitLaws.Flight<Real>(0.355)
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.BrakingPeak)}",
            $"{Hamner}, braking peak",
            Mark.Read,
            0.336,
            0.18 * 0.336,
            "1",
            () => GaitLaws.BrakingPeak<Real>(3.96)
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.ForeAftShape)}",
            $"{Hamner}, propulsion peak",
            Mark.Read,
            0.277,
            0.18 * 0.277,
            "1",
            () => GaitLaws.BrakingPeak<Real>(3.96) * Propulsion(GaitLaws.RunningBrakingShare<Real>(3.96))
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.RunningBrakingShare)}",
            $"{Hamner}: equal impulses make the shares of the stance as the peaks, 0.277/(0.277 + 0.336)",
            Mark.Read,
            0.277 / (0.277 + 0.336),
            0.18 * 0.277 / (0.277 + 0.336),
            "1",
            () => GaitLaws.RunningBrakingShare<Real>(3.96)
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.WalkingBrakingShare)}",
            "Force records of walking in gait analysis textbooks: the fore-aft force changes sign between mid-stance and "
                + "three fifths of the stance",
            Mark.Memory,
            0.55,
            0.05,
            "1",
            () => GaitLaws.WalkingBrakingShare<Real>()
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.ForeAftShape)}",
            "By hand: at 4/10 of the stance braking, propulsion peaks at 2/3 of the braking, half-way through the rest",
            Mark.Derived,
            -2.0 / 3,
            1e-12,
            "1",
            () => GaitLaws.ForeAftShape<Real>(0.7, 0.4)
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.ForeAftShape)}",
            "By hand: a third of the way through braking, sin 60 deg",
            Mark.Derived,
            Math.Sqrt(0.75),
            1e-12,
            "1",
            () => GaitLaws.ForeAftShape<Real>(0.2, 0.6)
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.NormalAmplitude)}",
            "Alexander 1979: F = pi m g/(4 beta) for a half sine; beta 0.25 gives pi",
            Mark.Memory,
            Math.PI,
            1e-12,
            "1",
            () => GaitLaws.NormalAmplitude<Real>(1, 0.25, 0)
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.NormalAmplitude)}",
            "By hand: q = 1 adds a third to the impulse, so that the amplitude is three quarters",
            Mark.Derived,
            0.75 * Math.PI,
            1e-12,
            "1",
            () => GaitLaws.NormalAmplitude<Real>(1, 0.25, 1)
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.NormalShapeOfSine)}",
            "By hand: at 30 deg 0.5 + q",
            Mark.Derived,
            0.9,
            1e-15,
            "1",
            () => GaitLaws.NormalShapeOfSine<Real>(0.5, 0.4)
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.NormalShape)}",
            "By hand: sin 30 deg + q sin 90 deg at a sixth of the stance, q = 0.4",
            Mark.Derived,
            0.9,
            1e-12,
            "1",
            () => GaitLaws.NormalShape<Real>(1.0 / 6, 0.4)
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.NormalShape)}",
            "By hand: sin 90 deg + q sin 270 deg at mid-stance, q = 0.4",
            Mark.Derived,
            0.6,
            1e-12,
            "1",
            () => GaitLaws.NormalShape<Real>(0.5, 0.4)
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.NormalShapePeak)}",
            "By hand: sin x + sin 3x = 4 s (1 - s2) is largest at s2 = 1/3: 8/(3 sqrt 3)",
            Mark.Derived,
            8 / (3 * Math.Sqrt(3)),
            1e-12,
            "1",
            () => GaitLaws.NormalShapePeak<Real>(1)
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.NormalShapePeak)}",
            "By hand: q = -1/3 is 4/3 sin^3, largest at mid-stance",
            Mark.Derived,
            4.0 / 3,
            1e-12,
            "1",
            () => GaitLaws.NormalShapePeak<Real>(-1.0 / 3)
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.MeanNormalForce)}",
            "By hand: 3-4-5 triangle, 100 kg, a tenth on the rails: 0.9 x 980.665 N x 0.8",
            Mark.Derived,
            706.0788,
            1e-9,
            "N",
            () => GaitLaws.MeanNormalForce<Real>(100, Math.Asin(0.6), 0.1)
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.MeanTangentialForce)}",
            "By hand: 3-4-5 triangle, 100 kg, a tenth on the rails, pulled forwards by 50 N: 50 N - 0.9 x 980.665 N x 0.6",
            Mark.Derived,
            50 - 529.5591,
            1e-9,
            "N",
            () => GaitLaws.MeanTangentialForce<Real>(100, Math.Asin(0.6), 0.1, 50)
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.MeanTangentialForce)}",
            "By hand: on a 15 % grade weight and friction cancel at mu = 0.15",
            Mark.Derived,
            0.15,
            1e-12,
            "1",
            () =>
                -GaitLaws.MeanTangentialForce<Real>(80, Math.Atan(0.15), 0, 0)
                / GaitLaws.MeanNormalForce<Real>(80, Math.Atan(0.15), 0)
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.MeanNormalForce)}",
            "Weight of 80 kg under standard gravity, CGPM 1901",
            Mark.Derived,
            80 * FreeFall,
            1e-9,
            "N",
            () => GaitLaws.MeanNormalForce<Real>(80, 0, 0)
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.WalkRunSpeed)}",
            "Alexander 1989 and later texts: about 2.1 m/s for a leg of 0.9 m",
            Mark.Memory,
            2.1,
            0.05,
            "m/s",
            () => GaitLaws.WalkRunSpeed<Real>(0.9)
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.WalkRunSpeed)}",
            "By hand: a leg of 0.9 m at half of 9.80665 m/s2",
            Mark.Derived,
            2.10071,
            5e-6,
            "m/s",
            () => GaitLaws.WalkRunSpeed<Real>(0.9)
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.WalkRunSpeed)}",
            "28 adults, Hum. Mov. Sci. 2023: change to running best told by 1.9 to 2.0 m/s; Kram et al. 1997: Froude number 0.5; within 10 % for a leg of 0.92 m",
            Mark.Read,
            1.95,
            0.195,
            "m/s",
            () => GaitLaws.WalkRunSpeed<Real>(0.92)
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.LegLengthFromHeight)}",
            "Winter: 0.530 of the height, as others quote it; 1.75 m by hand",
            Mark.Transcribed,
            0.9275,
            5e-5,
            "m",
            () => GaitLaws.LegLengthFromHeight<Real>(1.75)
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.LegScale)}",
            "By hand: a leg of a quarter of 0.92 m has half the times, twice the frequency",
            Mark.Derived,
            2,
            1e-12,
            "1",
            () => GaitLaws.LegScale<Real>(0.23, 0.92)
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.StanceMeanForce)}",
            "Weyand and Davis 2005: 1.27 + 0.105 v for men at 3.8 m/s; duty factor 0.310 of 37 people (Alcantara et al. 2021), a regression, within 10 %",
            Mark.Read,
            1.669,
            0.1669,
            "1",
            () => GaitLaws.StanceMeanForce<Real>(0.310)
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.StanceMeanForce)}",
            "Weyand and Davis 2005: 1.24 + 0.106 v for women at 4.9 m/s; duty factor 0.288 of 24 people (Alcantara et al. 2021), a regression, within 10 %",
            Mark.Read,
            1.7594,
            0.17594,
            "1",
            () => GaitLaws.StanceMeanForce<Real>(0.288)
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.AsymmetryFactor)}",
            "Robinson, Herzog and Nigg 1987 by definition: feet of 1.1 and 0.9 have an index of 20 %, a ratio of 0.1",
            Mark.Derived,
            1.1,
            1e-15,
            "1",
            () => GaitLaws.AsymmetryFactor<Real>((1.1 - 0.9) / (1.1 + 0.9))
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.OffCentreMoment)}",
            "By hand: 784.532 N at 50 mm",
            Mark.Derived,
            39.2266,
            1e-9,
            "N m",
            () => GaitLaws.OffCentreMoment<Real>(80 * FreeFall, 0.05)
        ),
        Generated.Check(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.StanceMeanForce)}",
            "gait.stance",
            "1",
            () => GaitLaws.StanceMeanForce<Real>(0.34)
        ),
    ];

    // The deepest point of the propulsion lobe, by looking for it.
    private static double Propulsion(double brakingShare)
    {
        double deepest = 0;
        for (int i = 0; i <= 2000; i++)
        {
            deepest = Math.Min(deepest, GaitLaws.ForeAftShape<Real>(i / 2000.0, brakingShare));
        }

        return -deepest;
    }
}
