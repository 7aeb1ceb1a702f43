using System.Runtime.InteropServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>Loads on the belt over one step, as the numbers that the worst phases are searched on.</summary>
/// <remarks>
/// Phase u is time since foot strike over contact time. The window of one step period that needs looking at is cut into
/// three pieces on which the loads are smooth: [0, overlap], while the foot before is still on the belt (empty when
/// running); [overlap, braking share]; [braking share, window]. A phase is held as its piece and its place in the piece,
/// so that a maximum at the edge of a piece moves with the edge and keeps its derivative.
/// </remarks>
[StructLayout(LayoutKind.Sequential)]
internal struct StrideNumbers<T>
    where T : struct, IReal<T>
{
    /// <summary>Step time over contact time [1].</summary>
    internal T StepPhase;

    /// <summary>End of the first piece [1].</summary>
    internal T Overlap;

    /// <summary>End of the second piece [1].</summary>
    internal T BrakingShare;

    /// <summary>End of the third piece [1].</summary>
    internal T Window;

    /// <summary>Load that goes with the normal force: amplitude of friction, incline and rails [N].</summary>
    internal T NormalLoad;

    /// <summary>Third harmonic of the normal force [1].</summary>
    internal T ThirdHarmonic;

    /// <summary>Braking peak [N].</summary>
    internal T Braking;

    /// <summary>Peak of the push-off as a load [N]: not above zero.</summary>
    internal T Push;

    /// <summary>Half waves of the braking lobe in a stance [1].</summary>
    internal T BrakingRate;

    /// <summary>Half waves of the push-off lobe in a stance [1].</summary>
    internal T PushRate;

    /// <summary>Share of the loop from drive roller to foot strike [1].</summary>
    internal T StrikeShare;

    /// <summary>Share of the loop that the foot rides back over the whole stance [1].</summary>
    internal T RideShare;

    /// <summary>Drag of the empty belt [N], at the undriven roller: share one half.</summary>
    internal T Drag;

    /// <summary>Largest tension ratio at the drive roller [1].</summary>
    internal T TensionRatio;
}
