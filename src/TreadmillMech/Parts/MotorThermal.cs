using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>How a motor warms: the winding in its housing with the magnets, and the housing in the air.</summary>
public sealed partial record MotorThermal
{
    /// <summary>How the housing gives off heat.</summary>
    /// <exception cref="ArgumentNullException">The part is null.</exception>
    public required MotorCooling Cooling
    {
        get;
        init => field = Guard.Present(value);
    }

    /// <summary>Heat capacity of the winding, 5 J/K to 5 kJ/K. Copper: 385 J/K for each kilogram.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The capacity is outside the range.</exception>
    public required HeatCapacity Winding
    {
        get;
        init => field = Guard.Within(value, Si.HeatCapacity, 5, 5000);
    }

    /// <summary>Heat capacity of magnets and housing, 20 J/K to 50 kJ/K. Steel: 460 J/K for each kilogram.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The capacity is outside the range.</exception>
    public required HeatCapacity Housing
    {
        get;
        init => field = Guard.Within(value, Si.HeatCapacity, 20, 50000);
    }

    /// <summary>Heat that passes from the winding to the housing for each kelvin, 0.1 to 100 W/K.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The conductance is outside the range.</exception>
    public required ThermalConductance WindingToHousing
    {
        get;
        init => field = Guard.Within(value, Si.ThermalConductance, 0.1, 100);
    }

    /// <summary>
    /// Share of the flux that the magnets lose in each kelvin, 0 to 1 %: about 0.2 % for ferrite, 0.1 % for neodymium (from
    /// memory).
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside the range.</exception>
    public required Ratio FluxLossPerKelvin
    {
        get;
        init => field = Guard.Within(value, Si.Ratio, 0, 0.01);
    }

    /// <summary>Temperature of the magnets at the beginning, to which the motor constant belongs, -20 to 150 deg C; 20 where not given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside the range.</exception>
    public Temperature MagnetTemperature
    {
        get;
        init => field = Guard.Within(value, Si.Celsius, -20, 150);
    } = Si.Celsius.FromSi(20);
}
