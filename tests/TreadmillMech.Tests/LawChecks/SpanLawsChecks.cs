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
    ];
}
