namespace TreadmillMech.Json.Units;

/// <summary>All units of a visit file, each by its exact definition.</summary>
internal static class UnitTables
{
    private const double Inch = 0.0254;
    private const double Foot = 0.3048;
    private const double Mile = 1609.344;
    private const double Pound = 0.45359237;
    private const double StandardGravity = 9.80665;
    private const double PoundForce = Pound * StandardGravity;

    internal static readonly UnitTable Length = new(
        "a length",
        new("mm", 1, 1000),
        new("cm", 1, 100),
        new("m"),
        new("in", Inch),
        new("ft", Foot)
    );
    internal static readonly UnitTable Mass = new("a mass", new("kg"), new("g", 1, 1000), new("lb", Pound));
    internal static readonly UnitTable Force = new(
        "a force",
        new("N"),
        new("kN", 1000),
        new("kgf", StandardGravity),
        new("lbf", PoundForce)
    );
    internal static readonly UnitTable Torque = new(
        "a torque",
        new("N m"),
        new("N cm", 1, 100),
        new("lbf ft", PoundForce * Foot),
        new("lbf in", PoundForce * Inch)
    );
    internal static readonly UnitTable Speed = new(
        "a speed",
        new("m/s"),
        new("km/h", 1000, 3600),
        new("mph", Mile, 3600),
        new("ft/min", Foot, 60)
    );
    internal static readonly UnitTable RotationalSpeed = new(
        "a rotational speed",
        new("rpm", 2 * Math.PI, 60),
        new("1/min", 2 * Math.PI, 60),
        new("1/s", 2 * Math.PI),
        new("rad/s")
    );
    internal static readonly UnitTable Frequency = new(
        "a frequency",
        new("Hz"),
        new("1/s"),
        new("1/min", 1, 60),
        new("steps/min", 1, 60)
    );
    internal static readonly UnitTable Duration = new("a time", new("s"), new("min", 60), new("h", 3600));
    internal static readonly UnitTable Angle = new(
        "an angle",
        new("deg", Math.PI, 180),
        new("°", Math.PI, 180),
        new("rad")
    );
    internal static readonly UnitTable Turns = new("turns of a bolt", new WrittenUnit("turn"), new("turns"));
    internal static readonly UnitTable Share = new("a share", new WrittenUnit("%", 1, 100));
    internal static readonly UnitTable Efficiency = new("an efficiency or factor", new("%", 1, 100), new(""));
    internal static readonly UnitTable PlainNumber = new("a ratio without unit", new WrittenUnit(""));
    internal static readonly UnitTable Count = new("a whole count", new WrittenUnit(""));
    internal static readonly UnitTable Volume = new(
        "a volume",
        new("mL", 1, 1e6),
        new("ml", 1, 1e6),
        new("cm3", 1, 1e6),
        new("L", 1, 1000),
        new("US fl oz", 231 * Inch * Inch * Inch, 128)
    );
    internal static readonly UnitTable Power = new("a power", new("W"), new("kW", 1000));
    internal static readonly UnitTable Voltage = new("a voltage", new("V"), new("mV", 1, 1000));
    internal static readonly UnitTable Current = new("a current", new("A"), new("mA", 1, 1000));
    internal static readonly UnitTable Resistance = new(
        "a resistance",
        new("ohm"),
        new("Ω"),
        new("mohm", 1, 1000),
        new("mΩ", 1, 1000)
    );
    internal static readonly UnitTable Celsius = new(
        "a temperature",
        new("°C"),
        new("deg C"),
        new("°F", 5, 9, -160.0 / 9),
        new("deg F", 5, 9, -160.0 / 9),
        new("K", 1, 1, -273.15)
    );
    internal static readonly UnitTable ForcePerLength = new(
        "a force per length",
        new("N/mm", 1000),
        new("N/m"),
        new("kN/m", 1000),
        new("lbf/in", PoundForce, Inch)
    );
    internal static readonly UnitTable MassPerArea = new(
        "a mass per area",
        new("kg/m2"),
        new("g/m2", 1, 1000),
        new("lb/ft2", Pound, Foot * Foot)
    );
    internal static readonly UnitTable MassPerLength = new(
        "a mass per length",
        new("kg/m"),
        new("g/m", 1, 1000),
        new("lb/ft", Pound, Foot)
    );
    internal static readonly UnitTable Inertia = new(
        "a moment of inertia",
        new("kg m2"),
        new("kg cm2", 1, 10000),
        new("g m2", 1, 1000),
        new("lb in2", Pound * Inch * Inch)
    );
    internal static readonly UnitTable Inductance = new(
        "an inductance",
        new("mH", 1, 1000),
        new("H"),
        new("uH", 1, 1e6),
        new("µH", 1, 1e6)
    );
    internal static readonly UnitTable MotorConstant = new(
        "a motor constant",
        new("V s/rad"),
        new("N m/A"),
        new("V/krpm", 60, 2000 * Math.PI)
    );

    internal static readonly UnitTable Acceleration = new("an acceleration", new("m/s2"), new("ft/s2", Foot));
    internal static readonly UnitTable Energy = new(
        "an energy",
        new("J"),
        new("kJ", 1000),
        new("Wh", 3600),
        new("kWh", 3.6e6)
    );
    internal static readonly UnitTable Pressure = new(
        "a pressure or stress",
        new("Pa"),
        new("kPa", 1000),
        new("MPa", 1e6),
        new("GPa", 1e9),
        new("N/mm2", 1e6)
    );
    internal static readonly UnitTable HeatCapacity = new("a heat capacity", new("J/K"), new("kJ/K", 1000));
    internal static readonly UnitTable ThermalConductance = new("a thermal conductance", new WrittenUnit("W/K"));
    internal static readonly UnitTable Area = new(
        "an area",
        new("m2"),
        new("cm2", 1, 10000),
        new("mm2", 1, 1e6),
        new("in2", Inch * Inch)
    );
    internal static readonly UnitTable TemperatureRise = new("a temperature difference", new WrittenUnit("K"));
    internal static readonly UnitTable Compliance = new("a compliance", new("m/N"), new("mm/N", 1, 1000));
    internal static readonly UnitTable BendingStiffness = new("a bending stiffness", new WrittenUnit("N m2"));

    /// <summary>All tables, for the help text and for tests.</summary>
    internal static readonly IReadOnlyList<UnitTable> All =
    [
        Length,
        Mass,
        Force,
        Torque,
        Speed,
        RotationalSpeed,
        Frequency,
        Duration,
        Angle,
        Turns,
        Share,
        Efficiency,
        PlainNumber,
        Count,
        Volume,
        Power,
        Voltage,
        Current,
        Resistance,
        Celsius,
        ForcePerLength,
        MassPerArea,
        MassPerLength,
        Inertia,
        Inductance,
        MotorConstant,
        Acceleration,
        Energy,
        Pressure,
        HeatCapacity,
        ThermalConductance,
        Area,
        TemperatureRise,
        Compliance,
        BendingStiffness,
    ];
}
