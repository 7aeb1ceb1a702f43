using System.Runtime.InteropServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model.Transient;

/// <summary>What acts on the machine between two edges, as numbers; time is the only thing that moves.</summary>
[StructLayout(LayoutKind.Sequential)]
internal struct FeetNumbers<T>
    where T : struct, IReal<T>
{
    /// <summary>The foot that landed last.</summary>
    internal FootNumbers<T> Last;

    /// <summary>The foot before it.</summary>
    internal FootNumbers<T> Before;

    /// <summary>Normal force of a person who stands [N].</summary>
    internal T Standing;

    /// <summary>Share of the loop at which the person stands [1].</summary>
    internal T StandingShare;

    /// <summary>Force of incline and rails along the belt for each normal force [1].</summary>
    internal T Tangential;

    /// <summary>Friction that jams the belt [N].</summary>
    internal T Jam;

    /// <summary>Share of the loop at which it jams [1].</summary>
    internal T JamShare;

    /// <summary>Set speed at <see cref="SetFrom"/> [m/s].</summary>
    internal T SetSpeed;

    /// <summary>Rise of the set speed [m/s2].</summary>
    internal T SetRise;

    /// <summary>Time the set speed belongs to [s].</summary>
    internal T SetFrom;

    /// <summary>1 while the drive is on, 0 once the key is pulled.</summary>
    internal T On;
}
