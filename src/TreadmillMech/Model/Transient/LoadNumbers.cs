using System.Runtime.InteropServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model.Transient;

/// <summary>What the feet do to the belt at a time.</summary>
[StructLayout(LayoutKind.Sequential)]
internal struct LoadNumbers<T>
    where T : struct, IReal<T>
{
    /// <summary>Normal force of both feet [N].</summary>
    internal T Normal;

    /// <summary>Each normal force times its share of the loop, summed [N].</summary>
    internal T SharedNormal;

    /// <summary>Force along the belt, positive where it resists [N].</summary>
    internal T Along;

    /// <summary>Each force along the belt times its share, summed [N].</summary>
    internal T SharedAlong;

    /// <summary>Friction that jams the belt [N].</summary>
    internal T Jam;

    /// <summary>The same times its share [N].</summary>
    internal T SharedJam;

    /// <summary>Set speed [m/s].</summary>
    internal T SetSpeed;

    /// <summary>1 while the drive is on.</summary>
    internal T On;
}
