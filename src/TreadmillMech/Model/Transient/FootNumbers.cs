using System.Runtime.InteropServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model.Transient;

/// <summary>One foot on the belt: force and place as functions of time.</summary>
[StructLayout(LayoutKind.Sequential)]
internal struct FootNumbers<T>
    where T : struct, IReal<T>
{
    /// <summary>Time of its strike [s].</summary>
    internal T Strike;

    /// <summary>One over its contact time [1/s].</summary>
    internal T PerContact;

    /// <summary>Amplitude of the normal force [N]; 0 where the foot is off the belt.</summary>
    internal T Normal;

    /// <summary>Third harmonic [1].</summary>
    internal T ThirdHarmonic;

    /// <summary>Force along the belt, positive where it resists: weight of the sine of the phase's angle [N].</summary>
    internal T FirstSine;

    /// <summary>Weight of the sine of twice the angle [N].</summary>
    internal T SecondSine;

    /// <summary>Weight of the sine of three times the angle [N].</summary>
    internal T ThirdSine;

    /// <summary>Weight of the sine of four times the angle [N].</summary>
    internal T FourthSine;

    /// <summary>Share of the loop at foot strike [1].</summary>
    internal T StrikeShare;

    /// <summary>Share of the loop it rides back over the stance [1].</summary>
    internal T RideShare;
}
