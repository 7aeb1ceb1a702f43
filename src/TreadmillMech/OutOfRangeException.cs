using System.Diagnostics.CodeAnalysis;

namespace TreadmillMech;

/// <summary>A value that lies outside its permitted range, with value, unit and range as data.</summary>
/// <remarks>Its name is <see cref="ArgumentException.ParamName"/>; the message says all of it in words.</remarks>
[SuppressMessage("Design", "CA1032", Justification = "It says nothing without its data; only the library makes it.")]
public sealed class OutOfRangeException : ArgumentOutOfRangeException
{
    internal OutOfRangeException(string name, double value, Bounds permitted, string unit, string message)
        : base(name, message)
    {
        Value = value;
        Permitted = permitted;
        Unit = unit;
    }

    /// <summary>The value that was refused, in <see cref="Unit"/>.</summary>
    public double Value { get; }

    /// <summary>The permitted range, in <see cref="Unit"/>.</summary>
    public Bounds Permitted { get; }

    /// <summary>The SI unit of value and range; degrees Celsius for temperatures, empty for plain numbers.</summary>
    public string Unit { get; }
}
