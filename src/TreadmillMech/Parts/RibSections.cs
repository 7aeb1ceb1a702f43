using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>The table of rib sections.</summary>
/// <remarks>
/// Pitches by ISO 9982, read in a glossary of power transmission that quotes the standard. Line differentials: that of PK read in
/// ISO 9981:2020, 5.4, which has the same profile; the others by ISO 9982 from memory, so measure where the ratio has to be
/// known to better than one per cent. Mass and tension of a rib stand in no standard: they are the belt maker's.
/// </remarks>
public static class RibSections
{
    private const double NearEnough = 0.05;

    /// <summary>Distance from rib to rib.</summary>
    /// <param name="section">The section.</param>
    /// <exception cref="ArgumentOutOfRangeException">The section is not defined.</exception>
    public static Length Pitch(RibSection section) => Si.Length.FromSi(Row(section).Pitch);

    /// <summary>Effective line differential: how far the cord runs outside of the effective diameter. Nominal.</summary>
    /// <param name="section">The section.</param>
    /// <exception cref="ArgumentOutOfRangeException">The section is not defined.</exception>
    public static Length LineDifferential(RibSection section) => Si.Length.FromSi(Row(section).Differential);

    /// <summary>Nominal width of a belt.</summary>
    /// <param name="section">The section.</param>
    /// <param name="ribs">Number of ribs, 1 to 40.</param>
    /// <exception cref="ArgumentOutOfRangeException">The section is not defined, or the number is outside the range.</exception>
    public static Length Width(RibSection section, int ribs) =>
        Si.Length.FromSi(
            DriveBeltLaws.RibbedWidth<Real>(Row(section).Pitch, Guard.Within(ribs, Si.One, 1, 40, nameof(ribs)))
        );

    /// <summary>The section of a belt from its measured width and counted ribs.</summary>
    /// <param name="width">Width, 1 mm to 400 mm.</param>
    /// <param name="ribs">Number of ribs, 1 to 40.</param>
    /// <returns>
    /// The section whose pitch is nearest; no answer where it is off by more than a twentieth (common practice, no source): count
    /// again.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Answer<RibSection> Of(Length width, int ribs)
    {
        double across = Si.Length.ToSi(Guard.Within(width, Si.Length, 0.001, 0.4, nameof(width)));
        double pitch = across / Guard.Within(ribs, Si.One, 1, 40, nameof(ribs));
        RibSection nearest = Enum.GetValues<RibSection>().MinBy(section => Math.Abs(pitch - Row(section).Pitch));
        double own = Row(nearest).Pitch;
        return Math.Abs(pitch - own) <= NearEnough * own
            ? nearest
            : new Shortfall(Reason.NotInRange, nameof(Pitch), own, pitch, "m");
    }

    private static (double Pitch, double Differential) Row(RibSection section) =>
        Guard.Defined(section, nameof(section)) switch
        {
            RibSection.PH => (1.60e-3, 0.8e-3),
            RibSection.PJ => (2.34e-3, 1.2e-3),
            RibSection.PK => (3.56e-3, 2e-3),
            RibSection.PL => (4.70e-3, 3e-3),
            _ => (9.40e-3, 4e-3),
        };
}
