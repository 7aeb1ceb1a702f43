using System.Globalization;

namespace TreadmillMech.Service;

/// <summary>A number to print: name, value, unit, and how sure it is.</summary>
/// <param name="Name">What it is, in words.</param>
/// <param name="Value">The value, in the unit.</param>
/// <param name="Unit">The unit; empty for a plain number.</param>
/// <param name="StandardUncertainty">Standard uncertainty in the same unit; null where it has none of its own.</param>
public sealed partial record Figure(string Name, double Value, string Unit, double? StandardUncertainty = null)
{
    /// <summary>
    /// Lower end of the interval that holds it with 95 % probability, in the unit, where that interval is bent; null where
    /// it is the value and 1.96 standard uncertainties to both sides, or nothing is told of it.
    /// </summary>
    public double? Lower { get; init; }

    /// <summary>Upper end of that interval; null where the lower one is.</summary>
    public double? Upper { get; init; }

    /// <summary>Value, standard uncertainty or bent interval, and unit with sensible digits, invariant.</summary>
    public override string ToString()
    {
        string spread =
            Lower is { } from && Upper is { } to
                ? string.Create(CultureInfo.InvariantCulture, $" (95 %: {Digits(from)} to {Digits(to)})")
            : StandardUncertainty is { } u ? string.Create(CultureInfo.InvariantCulture, $" ± {Digits(u)}")
            : "";
        return $"{Digits(Value)}{spread}{(Unit.Length == 0 ? "" : " ")}{Named(Unit, Value)}";
    }

    /// <summary>A turn is the one unit that is a word; of more than one there are turns.</summary>
    internal static string Named(string unit, double value) =>
        unit == "turn" && Math.Abs(value) is not (> 0 and <= 1 + 1e-9) ? "turns" : unit;

    private static string Digits(double value)
    {
        string format = Math.Abs(value) switch
        {
            >= 100 => "0",
            >= 10 => "0.#",
            >= 1 => "0.##",
            _ => "0.###",
        };

        // The third part keeps a small negative number from reading "-0".
        return value.ToString($"{format};-{format};0", CultureInfo.InvariantCulture);
    }
}
