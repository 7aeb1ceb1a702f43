using TreadmillMech.Numbers;

namespace TreadmillMech.Model.Transient;

/// <summary>Slopes on the way to those of the rates, by what they are taken.</summary>
internal struct DriveSlopeWork<T>
    where T : struct, IReal<T>
{
    /// <summary>Sum of the loads on the belt [N].</summary>
    internal T Load;

    /// <summary>Its slope by the belt's speed [N s/m].</summary>
    internal T LoadBySpeed;

    /// <summary>Its slope by time [N/s].</summary>
    internal T LoadByTime;

    /// <summary>Mean tension at the drive roller above the centrifugal part [N].</summary>
    internal T MeanTension;

    /// <summary>Its slope by the belt's speed [N s/m].</summary>
    internal T MeanTensionBySpeed;

    /// <summary>Its slope by time [N/s].</summary>
    internal T MeanTensionByTime;

    /// <summary>Slope of the heat of deck, jam and drag by the belt's speed [N].</summary>
    internal T HeatBySpeed;

    /// <summary>Slope of the heat between belt and deck, the jam's included, by the belt's speed [N].</summary>
    internal T DeckHeatBySpeed;

    /// <summary>Slope of the same heat by time [W/s]; that of the drag has none.</summary>
    internal T DeckHeatByTime;

    /// <summary>Speed of the drive roller's face [m/s].</summary>
    internal T FaceSpeed;

    /// <summary>1 where the running belt slides, 0 where it grips.</summary>
    internal T Slips;

    /// <summary>Pull of the roller on the belt [N].</summary>
    internal T Pull;

    /// <summary>Its slope by the belt's speed [N s/m].</summary>
    internal T PullBySpeed;

    /// <summary>Its slope by the angular speed of the roller [N s].</summary>
    internal T PullByRoller;

    /// <summary>Its slope by the stretch [N/m].</summary>
    internal T PullByStretch;

    /// <summary>Its slope by time [N/s].</summary>
    internal T PullByTime;

    /// <summary>Slope of the drive belt's force by the angular speed of the roller [N s].</summary>
    internal T DriveByRoller;

    /// <summary>Its slope by the angular speed of the motor [N s].</summary>
    internal T DriveByMotor;

    /// <summary>Slope of the drive belt's heat by the angular speed of the motor [N m].</summary>
    internal T PulleyHeatByMotor;

    /// <summary>1 while the drive is on, 0 once the key is pulled.</summary>
    internal T On;

    /// <summary>Current asked for [A].</summary>
    internal T Target;

    /// <summary>Its slope by the controller's integrator [1].</summary>
    internal T TargetByIntegral;

    /// <summary>Its slope by the state that the controller's sensor reads.</summary>
    internal T TargetByMeasured;

    /// <summary>Its slope by time [A/s].</summary>
    internal T TargetByTime;

    /// <summary>Motor constant, with its slope by the magnets' temperature [V s/rad].</summary>
    internal Dual<T> MotorConstant;

    /// <summary>Armature resistance, with its slope by the winding's temperature [ohm].</summary>
    internal Dual<T> Resistance;

    /// <summary>Brush voltage, with its slope by the current [V].</summary>
    internal Dual<T> Brush;

    /// <summary>Voltage at the motor's terminals [V].</summary>
    internal T Voltage;

    /// <summary>Slope of the current's rate by the current asked for [1/s].</summary>
    internal T CurrentByTarget;

    /// <summary>Its slope by the current, the target held [1/s].</summary>
    internal T CurrentByCurrent;

    /// <summary>Its slope by the angular speed of the motor, the target held [A].</summary>
    internal T CurrentByMotor;

    /// <summary>Its slope by the magnets' temperature [A/(s K)].</summary>
    internal T CurrentByMagnet;

    /// <summary>Its slope by the winding's temperature [A/(s K)].</summary>
    internal T CurrentByWinding;

    /// <summary>Slope of the armature's heat by the current [V].</summary>
    internal T HeatByCurrent;

    /// <summary>Its slope by the winding's temperature [W/K].</summary>
    internal T HeatByWinding;

    /// <summary>Slope of the heat of the motor's friction by its angular speed [N m].</summary>
    internal T FrictionHeatByMotor;
}
