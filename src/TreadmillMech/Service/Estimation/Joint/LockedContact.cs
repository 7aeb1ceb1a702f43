using TreadmillMech.Numbers;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>A contact in a locked pull at the middle of the top strand, towards the console.</summary>
internal abstract class LockedContact(string name, params int[] unknowns)
{
    internal string Name => name;

    internal int[] Unknowns => unknowns;

    /// <summary>Largest pull at the running belt that the contact holds [N].</summary>
    internal abstract Dual<Lanes> Holds(ReadOnlySpan<Dual<Lanes>> at);
}
