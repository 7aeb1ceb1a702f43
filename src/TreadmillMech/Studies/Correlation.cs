using TreadmillMech.Model;

namespace TreadmillMech.Studies;

/// <summary>Correlation of two uncertain inputs.</summary>
/// <param name="First">Name of one.</param>
/// <param name="Second">Name of the other.</param>
/// <param name="Coefficient">Correlation coefficient, -1 to 1.</param>
public sealed record Correlation(string First, string Second, double Coefficient)
{
    /// <summary>Correlation of two inputs of the model.</summary>
    /// <param name="first">One.</param>
    /// <param name="second">The other.</param>
    /// <param name="coefficient">Correlation coefficient, -1 to 1.</param>
    /// <exception cref="ArgumentNullException">An input is null.</exception>
    /// <exception cref="ArgumentException">An input is no row of the table.</exception>
    public static Correlation Between(Input first, Input second, double coefficient) =>
        new(Given.Row(first).Name, Given.Row(second).Name, coefficient);
}
