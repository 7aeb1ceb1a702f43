using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Service.Checks;

/// <summary>Steady load that heats the copper as much as a cycle of loads.</summary>
public static class LoadCycle
{
    /// <summary>Root mean square of a cycle that is short against the motor's time constant, over the rating.</summary>
    /// <param name="spells">Its parts, at least one; rest counts, with a load of nothing.</param>
    /// <returns>The load; above 1 the motor grows hotter than rated.</returns>
    /// <exception cref="ArgumentNullException">The list or a part is null.</exception>
    /// <exception cref="ArgumentException">There is no part.</exception>
    public static double Rms(params IReadOnlyList<LoadSpell> spells)
    {
        ArgumentNullException.ThrowIfNull(spells);
        if (spells.Count == 0)
        {
            throw new ArgumentException("A cycle has at least one part.", nameof(spells));
        }

        double load = 0;
        double time = 0;
        foreach (LoadSpell spell in spells)
        {
            ArgumentNullException.ThrowIfNull(spell, nameof(spells));
            double length = Si.Duration.ToSi(spell.Time);
            time += length;
            load = SupplyLaws.RmsOfTwo<Real>(SupplyLaws.RmsOfRamp<Real>(spell.From, spell.To), length / time, load);
        }

        return load;
    }
}
