using TreadmillMech.Laws;
using static TreadmillMech.Tests.LawChecks.Factors;

namespace TreadmillMech.Tests.LawChecks;

public static class MeasurementLawsChecks
{
    public static readonly IReadOnlyList<LawCheck> All =
    [
        Row(
            nameof(MeasurementLaws.SpeedFromPasses),
            "By hand: 20 passes of 2.85 m in 41.04 s are 5 km/h",
            Mark.Derived,
            5,
            1e-12,
            "km/h",
            () => 3.6 * MeasurementLaws.SpeedFromPasses<Real>(2.85, 20, 41.04)
        ),
        Row(
            nameof(MeasurementLaws.SpeedFromRoller),
            "By hand: 600 rpm of 46 mm with a belt of 2 mm: pi times 48 mm, ten times a second",
            Mark.Derived,
            0.48 * Math.PI,
            1e-14,
            "m/s",
            () => MeasurementLaws.SpeedFromRoller<Real>(Rpm(600), 0.046, 0.002)
        ),
        Row(
            nameof(MeasurementLaws.DisplayError),
            "By hand: 10.3 shown for 10",
            Mark.Derived,
            0.03,
            1e-15,
            "1",
            () => MeasurementLaws.DisplayError<Real>(10.3 / 3.6, 10 / 3.6)
        ),
        Row(
            nameof(MeasurementLaws.Grade),
            "Euler's sum: the angles of 1/2 and 1/3 make 45 degrees",
            Mark.Derived,
            1,
            1e-15,
            "1",
            () => MeasurementLaws.Grade<Real>(1, 2, 1.0 / 3)
        ),
        Row(
            nameof(MeasurementLaws.Slip),
            "Khurmi and Gupta, Theory of Machines, Ex. 11.1: two belts of ratio 10 and 2 % slip each, printed 9.6; 1 - 0.98 squared, tolerance: half a unit of 9.6",
            Mark.Transcribed,
            0.0396,
            0.005,
            "1",
            () => MeasurementLaws.Slip<Real>(9.6, 10)
        ),
        Row(
            nameof(MeasurementLaws.Slip),
            "By hand: 0.97 loaded of 1 unloaded",
            Mark.Derived,
            0.03,
            1e-15,
            "1",
            () => MeasurementLaws.Slip<Real>(0.97, 1)
        ),
        Row(
            nameof(MeasurementLaws.RelativeUncertaintyOfTwo),
            "JCGM 100:2008, 5.1.6 by hand: 0.3 % and 0.4 %",
            Mark.Derived,
            0.5,
            1e-12,
            "%",
            () => 100 * MeasurementLaws.RelativeUncertaintyOfTwo<Real>(0.003, 0.004)
        ),
        Scipy(
            nameof(MeasurementLaws.Grade),
            "measure.grade",
            "1",
            () => MeasurementLaws.Grade<Real>(0.16, 1.12, 0.011)
        ),
        new(
            $"{nameof(MeasurementLaws)}.{nameof(MeasurementLaws.CombinedUncertainty)}",
            "By hand: 5 and 4 times 3 make 13",
            Mark.Derived,
            13,
            1e-12,
            "1",
            () => MeasurementLaws.CombinedUncertainty<Real>(5, -4, 3)
        ),
        new(
            $"{nameof(MeasurementLaws)}.{nameof(MeasurementLaws.CombinedUncertainty)}",
            "JCGM 100:2008, H.1: 25 nm, 9.7 nm, 50 mm at 0.1 K and 0.58e-6 1/K (2.9 nm), at 11.5e-6 1/K and 0.029 K (16.6 nm)",
            Mark.Read,
            32,
            0.5,
            "nm",
            () =>
                MeasurementLaws.CombinedUncertainty<Real>(
                    MeasurementLaws.CombinedUncertainty<Real>(
                        MeasurementLaws.CombinedUncertainty<Real>(25, 1, 9.7),
                        50_000_623 * -0.1,
                        0.58e-6
                    ),
                    50_000_623 * 11.5e-6,
                    0.029
                )
        ),
        new(
            $"{nameof(MeasurementLaws)}.{nameof(MeasurementLaws.RollerSpeed)}",
            "By hand: 50 mm with the belt, 1 m/s are 40 rad/s",
            Mark.Derived,
            40,
            1e-12,
            "rad/s",
            () => MeasurementLaws.RollerSpeed<Real>(1, 0.048, 0.002)
        ),
    ];

    private static LawCheck Row(
        string law,
        string source,
        Mark mark,
        double expected,
        double tolerance,
        string unit,
        Func<double> compute
    ) => new($"{nameof(MeasurementLaws)}.{law}", source, mark, expected, tolerance, unit, compute);

    private static LawCheck Scipy(string law, string name, string unit, Func<double> compute) =>
        Generated.Check($"{nameof(MeasurementLaws)}.{law}", name, unit, compute);
}
