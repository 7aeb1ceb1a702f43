using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>The mains and what stands between them and the motor.</summary>
public sealed partial record Supply
{
    /// <summary>Mains voltage, root mean square, 80 to 300 V.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is outside the range.</exception>
    public required ElectricPotential Voltage
    {
        get;
        init => field = Guard.Within(value, Si.Voltage, 80, 300);
    }

    /// <summary>Efficiency of the motor controller, 0.3 to 1; null where unknown.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The efficiency is outside the range.</exception>
    public Ratio? ControllerEfficiency
    {
        get;
        init => field = Guard.Within(value, Si.Ratio, 0.3, 1);
    }

    /// <summary>Power factor at the mains, 0.3 to 1; null where unknown.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The factor is outside the range.</exception>
    public double? PowerFactor
    {
        get;
        init => field = Guard.Within(value, Si.One, 0.3, 1);
    }

    /// <summary>Mains power at rest, console and controller, up to 200 W; 10 W where not given (common practice).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The power is outside the range.</exception>
    public Power StandbyPower
    {
        get;
        init => field = Guard.Within(value, Si.Power, 0, 200);
    } = Si.Power.FromSi(10);

    /// <summary>Rating of the branch circuit, 5 to 63 A; null where unknown.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside the range.</exception>
    public ElectricCurrent? CircuitRating
    {
        get;
        init => field = Guard.Within(value, Si.Current, 5, 63);
    }
}
