using TreadmillMech.Laws;
using static TreadmillMech.Tests.LawChecks.Factors;

namespace TreadmillMech.Tests.LawChecks;

public static class ScrewThreadLawsChecks
{
    private const string Iso898 = "ISO 898-1, stress area";
    private const string Shigley = "Shigley 9th ed., Table 8-2, p. 413 (ANSI B1.1-1974)";
    private const string Basic = "ISO 724, table of basic dimensions";
    private const string Unified = "ASME B1.1, table of basic pitch diameters";

    public static readonly IReadOnlyList<LawCheck> All =
    [
        Metric(6, 1, 20.1, Mark.Read),
        Metric(8, 1.25, 36.6, Mark.Read),
        Metric(10, 1.5, 58.0, Mark.Read),
        Metric(12, 1.75, 84.3, Mark.Read),
        Metric(8, 1, 39.2, Mark.Memory),
        Proof(6, 1, 11_600),
        Proof(8, 1.25, 21_200),
        Proof(10, 1.5, 33_700),
        Proof(12, 1.75, 48_900),
        Inches(0.25, 20, 0.0318),
        Inches(0.25, 28, 0.0364),
        Inches(0.3125, 18, 0.0524),
        Inches(0.375, 16, 0.0775),
        Inches(0.375, 24, 0.0878),
        Pitch(10, 1.5, 9.026, "DIN 13-19", Mark.Read),
        Pitch(6, 1, 5.350, Basic, Mark.Memory),
        Pitch(8, 1.25, 7.188, Basic, Mark.Memory),
        Pitch(12, 1.75, 10.863, Basic, Mark.Memory),
        PitchInches(0.25, 20, 0.2175),
        PitchInches(0.3125, 18, 0.2764),
        PitchInches(0.375, 16, 0.3344),
        Minor(10, 1.5, 8.376, "DIN 13-19", Mark.Read),
        Minor(6, 1, 4.917, Basic, Mark.Memory),
        Minor(8, 1.25, 6.647, Basic, Mark.Memory),
        Minor(12, 1.75, 10.106, Basic, Mark.Memory),
        Root(10, 1.5, 8.160, "DIN 13-19", Mark.Read),
        Root(8, 1.25, 6.466, "DIN 13-1, table", Mark.Memory),
        new(
            $"{nameof(ScrewThreadLaws)}.{nameof(ScrewThreadLaws.Travel)}",
            "By hand: two turns and a quarter of 1.25 mm",
            Mark.Derived,
            2.8125,
            1e-12,
            "mm",
            () => ScrewThreadLaws.Travel<Real>(1.25 * Millimetre, 2.25) / Millimetre
        ),
        new(
            $"{nameof(ScrewThreadLaws)}.{nameof(ScrewThreadLaws.Turns)}",
            "By hand: 20 mm on a thread of 1.25 mm",
            Mark.Derived,
            16,
            1e-12,
            "1",
            () => ScrewThreadLaws.Turns<Real>(1.25, 20)
        ),
        new(
            $"{nameof(ScrewThreadLaws)}.{nameof(ScrewThreadLaws.StressDiameter)}",
            "By hand: a circle of pi/4 square millimetres is 1 mm wide",
            Mark.Derived,
            1,
            1e-15,
            "mm",
            () => ScrewThreadLaws.StressDiameter<Real>(Math.PI / 4)
        ),
    ];

    private static LawCheck Metric(double diameter, double pitch, double expected, Mark mark) =>
        new(
            $"{nameof(ScrewThreadLaws)}.{nameof(ScrewThreadLaws.MetricStressArea)}",
            FormattableString.Invariant($"{Iso898}, M{diameter}x{pitch}"),
            mark,
            expected,
            0.05,
            "mm2",
            () => ScrewThreadLaws.MetricStressArea<Real>(diameter * Millimetre, pitch * Millimetre) / SquareMillimetre
        );

    // The standard multiplies areas it has rounded before, so its loads are the area's within 1 % only.
    private static LawCheck Proof(double diameter, double pitch, double expected) =>
        new(
            $"{nameof(ScrewThreadLaws)}.{nameof(ScrewThreadLaws.MetricStressArea)}",
            FormattableString.Invariant($"ISO 898-1, proof load of class 8.8 at 580 MPa, M{diameter}; within 1 %"),
            Mark.Read,
            expected,
            0.01 * expected,
            "N",
            () => ScrewThreadLaws.MetricStressArea<Real>(diameter * Millimetre, pitch * Millimetre) * 580e6
        );

    private static LawCheck Inches(double diameter, double threads, double expected) =>
        new(
            $"{nameof(ScrewThreadLaws)}.{nameof(ScrewThreadLaws.UnifiedStressArea)}",
            FormattableString.Invariant($"{Shigley}, {diameter}-{threads}"),
            Mark.Read,
            expected,
            0.00005,
            "in2",
            () => ScrewThreadLaws.UnifiedStressArea<Real>(diameter * Inch, Inch / threads) / SquareInch
        );

    private static LawCheck Pitch(double diameter, double pitch, double expected, string source, Mark mark) =>
        new(
            $"{nameof(ScrewThreadLaws)}.{nameof(ScrewThreadLaws.PitchDiameter)}",
            FormattableString.Invariant($"{source}, M{diameter}"),
            mark,
            expected,
            0.0005,
            "mm",
            () => ScrewThreadLaws.PitchDiameter<Real>(diameter * Millimetre, pitch * Millimetre) / Millimetre
        );

    private static LawCheck PitchInches(double diameter, double threads, double expected) =>
        new(
            $"{nameof(ScrewThreadLaws)}.{nameof(ScrewThreadLaws.PitchDiameter)}",
            FormattableString.Invariant($"{Unified}, {diameter}-{threads}"),
            Mark.Memory,
            expected,
            0.00005,
            "in",
            () => ScrewThreadLaws.PitchDiameter<Real>(diameter * Inch, Inch / threads) / Inch
        );

    private static LawCheck Minor(double diameter, double pitch, double expected, string source, Mark mark) =>
        new(
            $"{nameof(ScrewThreadLaws)}.{nameof(ScrewThreadLaws.MinorDiameter)}",
            FormattableString.Invariant($"{source}, M{diameter}"),
            mark,
            expected,
            0.0005,
            "mm",
            () => ScrewThreadLaws.MinorDiameter<Real>(diameter * Millimetre, pitch * Millimetre) / Millimetre
        );

    private static LawCheck Root(double diameter, double pitch, double expected, string source, Mark mark) =>
        new(
            $"{nameof(ScrewThreadLaws)}.{nameof(ScrewThreadLaws.RootDiameter)}",
            FormattableString.Invariant($"{source}, M{diameter}"),
            mark,
            expected,
            0.0005,
            "mm",
            () => ScrewThreadLaws.RootDiameter<Real>(diameter * Millimetre, pitch * Millimetre) / Millimetre
        );
}
