using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using UnitsNet;

namespace TreadmillMech.Service;

/// <summary>How much lubricant between belt and deck: the plate's value first, otherwise a film on the foot zone.</summary>
/// <param name="Volume">Volume for this time.</param>
/// <param name="Basis">Where it comes from.</param>
public sealed record LubricantDose(Volume Volume, string Basis)
{
    /// <summary>The dose for a machine.</summary>
    /// <param name="machine">The machine; of it the plate and the deck.</param>
    /// <param name="sinceCleaning">Lubricant given since the deck was last cleaned.</param>
    /// <param name="options">Film thickness; the default where null.</param>
    /// <returns>
    /// The dose, less what was given since the last cleaning; no answer for a deck that comes waxed, for a deck that
    /// already has its dose, or where neither plate nor foot zone is known.
    /// </returns>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    public static Answer<LubricantDose> Of(Treadmill machine, Volume sinceCleaning, VisitOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(machine);
        if (machine.Deck.PreWaxed)
        {
            return new Shortfall(Reason.NotOnThisMachine, "lubricant on a waxed deck");
        }

        double full;
        string basis;
        if (machine.Plate?.LubricantDose is { } plate)
        {
            full = Si.Volume.ToSi(plate);
            basis = "maker's plate";
        }
        else if (machine.Deck is { FootZoneLength: { } length, FootZoneWidth: { } width })
        {
            Threshold film = (options ?? VisitOptions.Default).LubricantFilm;
            full = DeckLaws.LubricantVolume<Real>(Si.Length.ToSi(length) * Si.Length.ToSi(width), film.Value);
            basis = $"film on the foot zone, {film.Source}";
        }
        else
        {
            return new Shortfall(Reason.InputUnknown, "LubricantDose");
        }

        double given = Si.Volume.ToSi(sinceCleaning);
        return full > given
            ? new LubricantDose(Si.Volume.FromSi(full - given), basis)
            : new Shortfall(Reason.NotInRange, "lubricant since the last cleaning", full * 1e6, given * 1e6, "mL");
    }

    /// <summary>The volume and where it comes from, invariant.</summary>
    public override string ToString() => $"{ResultText.Of(Volume)} ({Basis})";
}
