using System.Globalization;
using UnitsNet;

namespace TreadmillMech;

/// <summary>A value of whatever dimension: a number in its SI unit, and that unit. Every quantity turns into one by itself.</summary>
/// <remarks>
/// Studies take inputs and give outputs by their row of a table, so the dimension is known only when the program runs:
/// a value carries it, and a wrong one is refused by name. <see cref="As{TQuantity}"/> gives the quantity back. The
/// default is the plain number 0.
/// </remarks>
public readonly record struct PhysicalValue
{
    private const string Plain = "1";

    private readonly string? unit;

    private PhysicalValue(double si, string unit)
    {
        Si = si;
        this.unit = unit.Length == 0 || unit == Plain ? null : unit;
    }

    /// <summary>The number, in the SI unit.</summary>
    public double Si { get; }

    /// <summary>The SI unit as in the tables of inputs and outputs; "1" for a plain number.</summary>
    public string Unit => unit ?? Plain;

    /// <summary>A value in a unit that no quantity of the library has.</summary>
    /// <param name="si">The number.</param>
    /// <param name="unit">Its unit, "1" for a plain number.</param>
    /// <exception cref="ArgumentNullException">The unit is null.</exception>
    public static PhysicalValue Of(double si, string unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return new(si, unit);
    }

    /// <summary>Wraps a plain number.</summary>
    /// <param name="value">The plain number.</param>
    public static implicit operator PhysicalValue(double value) => Wrap(TreadmillMech.Si.One, value);

    /// <summary>Wraps a ratio.</summary>
    /// <param name="value">The ratio.</param>
    public static implicit operator PhysicalValue(Ratio value) => Wrap(TreadmillMech.Si.Ratio, value);

    /// <summary>Wraps a length.</summary>
    /// <param name="value">The length.</param>
    public static implicit operator PhysicalValue(Length value) => Wrap(TreadmillMech.Si.Length, value);

    /// <summary>Wraps a force.</summary>
    /// <param name="value">The force.</param>
    public static implicit operator PhysicalValue(Force value) => Wrap(TreadmillMech.Si.Force, value);

    /// <summary>Wraps a mass.</summary>
    /// <param name="value">The mass.</param>
    public static implicit operator PhysicalValue(Mass value) => Wrap(TreadmillMech.Si.Mass, value);

    /// <summary>Wraps a angle.</summary>
    /// <param name="value">The angle.</param>
    public static implicit operator PhysicalValue(Angle value) => Wrap(TreadmillMech.Si.Angle, value);

    /// <summary>Wraps a volume.</summary>
    /// <param name="value">The volume.</param>
    public static implicit operator PhysicalValue(Volume value) => Wrap(TreadmillMech.Si.Volume, value);

    /// <summary>Wraps a area.</summary>
    /// <param name="value">The area.</param>
    public static implicit operator PhysicalValue(Area value) => Wrap(TreadmillMech.Si.Area, value);

    /// <summary>Wraps a speed.</summary>
    /// <param name="value">The speed.</param>
    public static implicit operator PhysicalValue(Speed value) => Wrap(TreadmillMech.Si.Speed, value);

    /// <summary>Wraps a frequency.</summary>
    /// <param name="value">The frequency.</param>
    public static implicit operator PhysicalValue(Frequency value) => Wrap(TreadmillMech.Si.Frequency, value);

    /// <summary>Wraps a duration.</summary>
    /// <param name="value">The duration.</param>
    public static implicit operator PhysicalValue(Duration value) => Wrap(TreadmillMech.Si.Duration, value);

    /// <summary>Wraps a torque.</summary>
    /// <param name="value">The torque.</param>
    public static implicit operator PhysicalValue(Torque value) => Wrap(TreadmillMech.Si.Torque, value);

    /// <summary>Wraps a speed of rotation.</summary>
    /// <param name="value">The speed of rotation.</param>
    public static implicit operator PhysicalValue(RotationalSpeed value) =>
        Wrap(TreadmillMech.Si.RotationalSpeed, value);

    /// <summary>Wraps a power.</summary>
    /// <param name="value">The power.</param>
    public static implicit operator PhysicalValue(Power value) => Wrap(TreadmillMech.Si.Power, value);

    /// <summary>Wraps a voltage.</summary>
    /// <param name="value">The voltage.</param>
    public static implicit operator PhysicalValue(ElectricPotential value) => Wrap(TreadmillMech.Si.Voltage, value);

    /// <summary>Wraps a current.</summary>
    /// <param name="value">The current.</param>
    public static implicit operator PhysicalValue(ElectricCurrent value) => Wrap(TreadmillMech.Si.Current, value);

    /// <summary>Wraps a resistance.</summary>
    /// <param name="value">The resistance.</param>
    public static implicit operator PhysicalValue(ElectricResistance value) => Wrap(TreadmillMech.Si.Resistance, value);

    /// <summary>Wraps a temperature, in degrees Celsius.</summary>
    /// <param name="value">The temperature.</param>
    public static implicit operator PhysicalValue(Temperature value) => Wrap(TreadmillMech.Si.Celsius, value);

    /// <summary>Wraps a force for each length.</summary>
    /// <param name="value">The force for each length.</param>
    public static implicit operator PhysicalValue(ForcePerLength value) => Wrap(TreadmillMech.Si.ForcePerLength, value);

    /// <summary>Wraps a mass for each length.</summary>
    /// <param name="value">The mass for each length.</param>
    public static implicit operator PhysicalValue(LinearDensity value) => Wrap(TreadmillMech.Si.MassPerLength, value);

    /// <summary>Wraps a mass for each area.</summary>
    /// <param name="value">The mass for each area.</param>
    public static implicit operator PhysicalValue(AreaDensity value) => Wrap(TreadmillMech.Si.MassPerArea, value);

    /// <summary>Wraps a moment of inertia.</summary>
    /// <param name="value">The moment of inertia.</param>
    public static implicit operator PhysicalValue(MassMomentOfInertia value) => Wrap(TreadmillMech.Si.Inertia, value);

    /// <summary>Wraps a thermal conductance.</summary>
    /// <param name="value">The thermal conductance.</param>
    public static implicit operator PhysicalValue(ThermalConductance value) =>
        Wrap(TreadmillMech.Si.ThermalConductance, value);

    /// <summary>Wraps a motor constant.</summary>
    /// <param name="value">The motor constant.</param>
    public static implicit operator PhysicalValue(MotorConstant value) => Wrap(TreadmillMech.Si.MotorConstant, value);

    /// <summary>Wraps a compliance.</summary>
    /// <param name="value">The compliance.</param>
    public static implicit operator PhysicalValue(Compliance value) => Wrap(TreadmillMech.Si.Compliance, value);

    /// <summary>The value as a quantity.</summary>
    /// <typeparam name="TQuantity">The quantity, such as a length; double or a ratio for a plain number.</typeparam>
    /// <exception cref="InvalidOperationException">The value has another dimension.</exception>
    public TQuantity As<TQuantity>()
        where TQuantity : struct =>
        TreadmillMech.Si.Of<TQuantity>() is { } dimension && Same(dimension.Unit)
            ? dimension.FromSi(Si)
            : throw new InvalidOperationException($"{this} is no {typeof(TQuantity).Name}.");

    /// <summary>Number and unit, invariant.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Si:G6}{(unit is null ? "" : " ")}{unit}");

    /// <summary>Whether the value has a unit, given as in the tables.</summary>
    internal bool Same(string other) => Unit == (other.Length == 0 ? Plain : other);

    private static PhysicalValue Wrap<TQuantity>(Dimension<TQuantity> dimension, TQuantity value)
        where TQuantity : struct => new(dimension.ToSi(value), dimension.Unit);
}
