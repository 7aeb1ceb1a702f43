using System.Runtime.InteropServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model.Transient;

/// <summary>What the rates are made of at one moment; also what is read off for series and events.</summary>
[StructLayout(LayoutKind.Sequential)]
internal struct DriveWork<T>
    where T : struct, IReal<T>
{
    /// <summary>Sum of the loads on the belt [N].</summary>
    internal T Load;

    /// <summary>Heat between belt and deck [W], the jam's included.</summary>
    internal T DeckHeat;

    /// <summary>Heat of the empty belt's drag [W].</summary>
    internal T DragHeat;

    /// <summary>Mean tension at the drive roller above the centrifugal part [N].</summary>
    internal T MeanTension;

    /// <summary>Centrifugal tension [N].</summary>
    internal T CentrifugalTension;

    /// <summary>Speed of the drive roller's face [m/s].</summary>
    internal T FaceSpeed;

    /// <summary>Pull of the roller if the friction had no limit [N].</summary>
    internal T GrippingPull;

    /// <summary>Largest pull by friction [N].</summary>
    internal T LargestPull;

    /// <summary>Pull of the roller on the belt [N].</summary>
    internal T Pull;

    /// <summary>Rate of the stretch [m/s].</summary>
    internal T StretchRate;

    /// <summary>Sliding speed of the roller's face under the belt [m/s].</summary>
    internal T Sliding;

    /// <summary>Force of the drive belt [N].</summary>
    internal T DriveBeltForce;

    /// <summary>Speed of the motor's pulley above the roller's pulley [m/s].</summary>
    internal T PulleySliding;

    /// <summary>Motor constant at the magnets' temperature [V s/rad].</summary>
    internal T MotorConstant;

    /// <summary>Armature resistance at the winding's temperature [ohm].</summary>
    internal T Resistance;

    /// <summary>Voltage at the motor's terminals [V].</summary>
    internal T Voltage;

    /// <summary>Brush voltage [V].</summary>
    internal T Brush;

    /// <summary>Heat of the armature with its brushes [W].</summary>
    internal T ArmatureHeat;

    /// <summary>Heat of the motor's friction [W].</summary>
    internal T MotorFrictionHeat;
}
