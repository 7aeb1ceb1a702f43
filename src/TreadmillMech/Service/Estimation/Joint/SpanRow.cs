using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>Pitch of the drive belt's span: its tension.</summary>
internal sealed class SpanRow(
    int happened,
    double frequency,
    double massPerLength,
    double span,
    double relative,
    int tension
) : VisitRow(happened, "pitch of the drive belt", "Hz", frequency, tension)
{
    internal override Dual<Lanes> Expect(ReadOnlySpan<Dual<Lanes>> at) =>
        SpanLaws.Frequency<Dual<Lanes>>(massPerLength, span, at[0]);

    internal override double Uncertainty(ReadOnlySpan<Dual<Lanes>> at, double value) => relative * value;
}
