using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>Where a drifting belt ends: at an offset that the crown holds, or at a rail.</summary>
/// <remarks>
/// A crown pulls back in proportion to the offset, so on a roller out of square the belt settles beside the middle. That is in
/// order while it keeps clear of the rails. Offsets count to the right.
/// </remarks>
public sealed record CrownOutlook
{
    private readonly double driftPerMeter;
    private readonly double beginning;
    private readonly double? restoring;

    private CrownOutlook(double drift, double first, double? crown) =>
        (driftPerMeter, beginning, restoring) = (drift, first, crown);

    /// <summary>Offset at which the belt settles; no answer without a crown.</summary>
    public required Answer<Length> SettledOffset { get; init; }

    /// <summary>Belt that passes until an edge reaches a rail; no answer where it never does: the crown holds it, or it runs straight.</summary>
    public required Answer<Length> BeltToRail { get; init; }

    /// <summary>The rail it reaches; no answer where it never does.</summary>
    public required Answer<Side> Rail { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(CrownOutlook),
            (nameof(SettledOffset), SettledOffset),
            (nameof(BeltToRail), BeltToRail),
            (nameof(Rail), Rail)
        );

    /// <summary>Where the belt goes.</summary>
    /// <param name="driftToRight">Drift for each metre of belt in the middle of the rollers, to the right, -5 % to 5 %.</param>
    /// <param name="crownLength">
    /// Length of belt in which the crown brings an offset down to 1/e, 0.5 m to 1 km, see <see cref="CrownLength"/>; null for rollers
    /// without a crown.
    /// </param>
    /// <param name="room">Distance from the belt's edge to the rail while it runs in the middle, 1 mm to 200 mm, on both sides.</param>
    /// <param name="firstOffset">Offset now, within the room; in the middle where null.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static CrownOutlook Of(Ratio driftToRight, Length? crownLength, Length room, Length? firstOffset = null)
    {
        double drift = Si.Ratio.ToSi(Guard.Within(driftToRight, Si.Ratio, -0.05, 0.05, nameof(driftToRight)));
        double? crown = crownLength is { } known
            ? Si.Length.ToSi(Guard.Within(known, Si.Length, 0.5, 1000, nameof(crownLength)))
            : null;
        double space = Si.Length.ToSi(Guard.Within(room, Si.Length, 0.001, 0.2, nameof(room)));
        double first = firstOffset is { } given
            ? Si.Length.ToSi(Guard.Within(given, Si.Length, -space, space, nameof(firstOffset)))
            : 0;
        double rail = Math.CopySign(space, drift);
        double? settled = crown is { } length ? TrackingLaws.SettledOffset<Real>(drift, length) : null;
        Shortfall never = new(Reason.NotInRange, nameof(Rail), space, Math.Abs(settled ?? first), "m");
        bool reaches = drift != 0 && (settled is null || Math.Abs(settled.Value) > space);
        return new(drift, first, crown)
        {
            SettledOffset = settled is { } at
                ? Si.Length.FromSi(at)
                : new Shortfall(Reason.InputUnknown, nameof(crownLength)),
            BeltToRail = reaches ? Si.Length.FromSi(ToRail(first, rail, drift, settled, crown)) : never,
            Rail = reaches
                ? drift > 0
                    ? Side.Right
                    : Side.Left
                : never,
        };
    }

    /// <summary>Offset after a length of belt has passed, rails or not.</summary>
    /// <param name="belt">Length of belt passed, 0 to 100 km.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is outside the range.</exception>
    public Length OffsetAfter(Length belt)
    {
        double passed = Si.Length.ToSi(Guard.Within(belt, Si.Length, 0, 1e5, nameof(belt)));
        return Si.Length.FromSi(
            restoring is { } length
                ? TrackingLaws.OffsetAfter<Real>(
                    beginning,
                    TrackingLaws.SettledOffset<Real>(driftPerMeter, length),
                    passed,
                    length
                )
                : TrackingLaws.OffsetAtSteadyDrift<Real>(beginning, driftPerMeter, passed)
        );
    }

    /// <summary>Crown length from an offset that was watched on its way to where it settled.</summary>
    /// <param name="first">Offset at the beginning, -200 mm to 200 mm.</param>
    /// <param name="settled">Offset at which it came to rest.</param>
    /// <param name="later">Offset in between.</param>
    /// <param name="passed">Belt that passed between the first and the later one, 1 m to 10 km.</param>
    /// <returns>The length; no answer where the later offset is not between the other two.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Answer<Length> CrownLength(Length first, Length settled, Length later, Length passed)
    {
        double begin = Offset(first, nameof(first));
        double end = Offset(settled, nameof(settled));
        double between = Offset(later, nameof(later));
        double length = Si.Length.ToSi(Guard.Within(passed, Si.Length, 1, 10000, nameof(passed)));
        bool inside = (begin < between && between < end) || (end < between && between < begin);
        return inside
            ? Si.Length.FromSi(TrackingLaws.CrownLength<Real>(begin, end, between, length))
            : new Shortfall(Reason.NotObservable, nameof(later), end, between, "m");
    }

    private static double Offset(Length offset, string name) =>
        Si.Length.ToSi(Guard.Within(offset, Si.Length, -0.2, 0.2, name));

    private static double ToRail(double first, double rail, double drift, double? settled, double? crown) =>
        settled is { } end && crown is { } length
            ? TrackingLaws.LengthToOffset<Real>(first, end, rail, length)
            : TrackingLaws.LengthAtSteadyDrift<Real>(first, rail, drift);
}
