using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>A permanent-magnet direct-current motor and the limits of its controller.</summary>
public sealed partial record DcMotor
{
    /// <summary>Motor constant, 0.02 to 5 V s/rad; null where unknown. Plates are often wrong: measure it unloaded.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The constant is outside the range.</exception>
    public MotorConstant? Constant
    {
        get;
        init => field = Guard.Within(value, Si.MotorConstant, 0.02, 5);
    }

    /// <summary>Resistance of the armature at <see cref="ResistanceTemperature"/>, 0.01 to 50 ohm; null where unknown.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is outside the range.</exception>
    public ElectricResistance? Resistance
    {
        get;
        init => field = Guard.Within(value, Si.Resistance, 0.01, 50);
    }

    /// <summary>Temperature at which the resistance was measured, -20 to 200 deg C; 20 where not given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside the range.</exception>
    public Temperature ResistanceTemperature
    {
        get;
        init => field = Guard.Within(value, Si.Celsius, -20, 200);
    } = Si.Celsius.FromSi(20);

    /// <summary>Temperature of the winding at work, -20 to 200 deg C; 20 where not given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside the range.</exception>
    public Temperature WindingTemperature
    {
        get;
        init => field = Guard.Within(value, Si.Celsius, -20, 200);
    } = Si.Celsius.FromSi(20);

    /// <summary>Voltage lost at both brushes, up to 5 V; 2 V where not given (common practice, no source).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is outside the range.</exception>
    public ElectricPotential BrushDrop
    {
        get;
        init => field = Guard.Within(value, Si.Voltage, 0, 5);
    } = Si.Voltage.FromSi(2);

    /// <summary>Torque lost inside the motor, up to 5 N m; null where unknown.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The torque is outside the range.</exception>
    public Torque? FrictionTorque
    {
        get;
        init => field = Guard.Within(value, Si.Torque, 0, 5);
    }

    /// <summary>Highest voltage the controller gives, 10 to 500 V; null where unknown, and then not checked.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is outside the range.</exception>
    public ElectricPotential? VoltageLimit
    {
        get;
        init => field = Guard.Within(value, Si.Voltage, 10, 500);
    }

    /// <summary>Highest current the controller gives, 0.5 to 100 A; null where unknown, and then not checked.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside the range.</exception>
    public ElectricCurrent? CurrentLimit
    {
        get;
        init => field = Guard.Within(value, Si.Current, 0.5, 100);
    }

    /// <summary>Whether the controller can brake; one that only pushes lets the belt overrun under a user uphill.</summary>
    public bool CanBrake { get; init; }

    /// <summary>Resistance of the armature at the winding's temperature; null where unknown.</summary>
    public ElectricResistance? ResistanceAtWork =>
        Resistance is { } cold
            ? Si.Resistance.FromSi(
                DcMotorLaws.CopperResistance<Real>(
                    Si.Resistance.ToSi(cold),
                    Si.Celsius.ToSi(ResistanceTemperature),
                    Si.Celsius.ToSi(WindingTemperature)
                )
            )
            : null;
}
