using FsCheck;
using FsCheck.Fluent;

namespace TreadmillMech.Tests.Laws;

/// <summary>A random number from 0 to 1, both included, for properties to place in the range they mean.</summary>
/// <param name="Value">The number.</param>
public readonly record struct Fraction(double Value)
{
    private const int Steps = 1 << 20;

    /// <summary>Found by the property runner by its type.</summary>
    public static Arbitrary<Fraction> Arbitrary() =>
        Gen.Choose(0, Steps).Select(step => new Fraction(step / (double)Steps)).ToArbitrary();

    /// <summary>The number placed between two ends.</summary>
    public double Between(double from, double to) => from + (Value * (to - from));

    /// <summary>The number placed between two positive ends, evenly by ratio.</summary>
    public double Ratio(double from, double to) => from * Math.Pow(to / from, Value);
}
