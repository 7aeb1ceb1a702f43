using System.Globalization;
using TreadmillMech.Laws;

namespace TreadmillMech.Tests.LawChecks;

public static class SpanLawsChecks
{
    public static readonly IReadOnlyList<LawCheck> All =
    [
        new(
            $"{nameof(SpanLaws)}.{nameof(SpanLaws.Frequency)}",
            "Verma, Concepts of Physics 1, Ex. 15.7: 0.04 kg/m, 0.40 m, 16 N",
            Mark.Transcribed,
            25,
            0.5,
            "Hz",
            () => SpanLaws.Frequency<Real>(0.04, 0.40, 16)
        ),
        new(
            $"{nameof(SpanLaws)}.{nameof(SpanLaws.TensionFromFrequency)}",
            "Verma, Concepts of Physics 1, Ex. 15.7, read backwards: 25 Hz",
            Mark.Transcribed,
            16,
            0.5,
            "N",
            () => SpanLaws.TensionFromFrequency<Real>(0.04, 0.40, 25)
        ),
        new(
            $"{nameof(SpanLaws)}.{nameof(SpanLaws.TensionFromFrequency)}",
            "Worked example of ch. 15 kind: a wire of 500 N at 500 Hz brought to 512 Hz; any wire will do, here 0.5 m "
                + "of 2 g/m",
            Mark.Transcribed,
            524.29,
            0.005,
            "N",
            () => SpanLaws.TensionFromFrequency<Real>(0.002, 0.5, 512)
        ),
        new(
            $"{nameof(SpanLaws)}.{nameof(SpanLaws.TensionFromDeflection)}",
            "The trade's deflection rule: at span/64 the force is a sixteenth of the tension",
            Mark.Read,
            16,
            1e-12,
            "1",
            () => SpanLaws.TensionFromDeflection<Real>(1, 0.3 / 64, 0.3)
        ),
        new(
            $"{nameof(SpanLaws)}.{nameof(SpanLaws.StiffTensionFromFrequency)}",
            "Verma, Concepts of Physics 1, Ex. 15.7, read backwards, no stiffness: 25 Hz",
            Mark.Transcribed,
            16,
            0.5,
            "N",
            () => SpanLaws.StiffTensionFromFrequency<Real>(0.04, 0.40, 25, 0)
        ),
        Generated.Check(
            $"{nameof(SpanLaws)}.{nameof(SpanLaws.StiffTensionFromFrequency)}",
            "span.frequency",
            "Hz",
            () => FrequencyOf300()
        ),
        new(
            $"{nameof(SpanLaws)}.{nameof(SpanLaws.StiffTensionFromDeflection)}",
            "The trade's deflection rule, no stiffness: at span/64 the force is a sixteenth of the tension",
            Mark.Read,
            16,
            1e-12,
            "1",
            () => SpanLaws.StiffTensionFromDeflection<Real>(1, 0.3 / 64, 0.3, 0)
        ),
        new(
            $"{nameof(SpanLaws)}.{nameof(SpanLaws.StiffTensionFromDeflection)}",
            "By hand: a beam without tension bends F l3/48 EI; 1 added to the 0 N that are left",
            Mark.Derived,
            1,
            1e-12,
            "1",
            () => 1 + SpanLaws.StiffTensionFromDeflection<Real>(48, 1, 1, 1)
        ),
        // The law is a closed approximation; the tolerance is the 0.1 per cent that it owns up to.
        new(
            $"{nameof(SpanLaws)}.{nameof(SpanLaws.StiffTensionFromDeflection)}",
            $"{Generated.Rows["span.pressed"].Call}; tolerance 0.1 % (span.pressed)",
            Mark.Library,
            300,
            0.3,
            "N",
            () =>
                SpanLaws.StiffTensionFromDeflection<Real>(
                    40,
                    double.Parse(Generated.Rows["span.pressed"].Value, CultureInfo.InvariantCulture) / 1000,
                    0.3,
                    0.05
                )
        ),
    ];

    /// <summary>The frequency at which the law, a constant plus a square, reads 300 N.</summary>
    private static double FrequencyOf300()
    {
        double still = SpanLaws.StiffTensionFromFrequency<Real>(0.1, 0.3, 0, 0.05);
        double at50 = SpanLaws.StiffTensionFromFrequency<Real>(0.1, 0.3, 50, 0.05);
        return 50 * Math.Sqrt((300 - still) / (at50 - still));
    }
}
