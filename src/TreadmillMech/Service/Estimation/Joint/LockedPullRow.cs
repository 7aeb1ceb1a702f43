using TreadmillMech.Numbers;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>
/// A locked pull and one of its contacts: where it slid, the pull is what the contact holds; where it did not, the
/// contact holds more.
/// </summary>
internal sealed class LockedPullRow(int happened, LockedContact contact, double pull, bool slid, double relative)
    : VisitRow(
        happened,
        slid ? $"locked pull, {contact.Name} slid" : $"locked pull, {contact.Name} held",
        "N",
        pull,
        contact.Unknowns
    )
{
    internal override bool PassFail => !slid;

    internal override Dual<Lanes> Expect(ReadOnlySpan<Dual<Lanes>> at) =>
        slid ? contact.Holds(at) : Probit.Within(Probit.LogMargin(contact.Holds(at) * (1 / Measured)) * (1 / relative));

    internal override double Uncertainty(ReadOnlySpan<Dual<Lanes>> at, double value) => slid ? relative * value : 1;
}
