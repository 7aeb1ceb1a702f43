using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>How belt and deck warm by the friction between them. Found from a run with a thermometer.</summary>
public sealed partial record DeckThermal
{
    /// <summary>Heat capacity of the running belt, 100 J/K to 50 kJ/K: about 1.5 kJ/K for each kilogram (from memory).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The capacity is outside the range.</exception>
    public required HeatCapacity Belt
    {
        get;
        init => field = Guard.Within(value, Si.HeatCapacity, 100, 50000);
    }

    /// <summary>Heat that the moving belt gives to the air for each kelvin, 0.1 to 200 W/K.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The conductance is outside the range.</exception>
    public required ThermalConductance BeltToAir
    {
        get;
        init => field = Guard.Within(value, Si.ThermalConductance, 0.1, 200);
    }

    /// <summary>Heat capacity of the part of the deck that warms, 100 J/K to 100 kJ/K.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The capacity is outside the range.</exception>
    public required HeatCapacity Deck
    {
        get;
        init => field = Guard.Within(value, Si.HeatCapacity, 100, 100000);
    }

    /// <summary>Heat that the deck gives to the air for each kelvin, 0.1 to 200 W/K.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The conductance is outside the range.</exception>
    public required ThermalConductance DeckToAir
    {
        get;
        init => field = Guard.Within(value, Si.ThermalConductance, 0.1, 200);
    }

    /// <summary>Share of the friction heat that goes into the belt, 0 to 100 %; half where not given: an estimate.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside the range.</exception>
    public Ratio BeltShare
    {
        get;
        init => field = Guard.Within(value, Si.Ratio, 0, 1);
    } = Si.Ratio.FromSi(0.5);

    /// <summary>Temperature of the air, where belt and deck begin, -20 to 60 deg C; 20 where not given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside the range.</exception>
    public Temperature Ambient
    {
        get;
        init => field = Guard.Within(value, Si.Celsius, -20, 60);
    } = Si.Celsius.FromSi(20);
}
