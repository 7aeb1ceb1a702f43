using System.Globalization;

namespace TreadmillMech;

/// <summary>A closed range of numbers; both ends belong to it.</summary>
/// <param name="From">Lower end.</param>
/// <param name="To">Upper end.</param>
public readonly record struct Bounds(double From, double To)
{
    /// <summary>Whether a number lies inside; NaN does not.</summary>
    /// <param name="value">The number.</param>
    public bool Holds(double value) => value >= From && value <= To;

    /// <summary>The range in words, invariant culture.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{From:0.######} to {To:0.######}");
}
