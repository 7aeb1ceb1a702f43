using System.Globalization;

namespace TreadmillMech.Service;

/// <summary>A number to print: name, value, unit, and how sure it is.</summary>
/// <param name="Name">What it is, in words.</param>
/// <param name="Value">The value, in the unit.</param>
/// <param name="Unit">The unit; empty for a plain number.</param>
/// <param name="StandardUncertainty">Standard uncertainty in the same unit; null where it has none of its own.</param>
public sealed partial record Figure(string Name, double Value, string Unit, double? StandardUncertainty = null)
{
    private const int MostDecimals = 12;
    private const double FirstOfOneDigit = 355;

    /// <summary>
    /// Lower end of the interval that holds it with 95 % probability, in the unit, where that interval is bent; null where
    /// it is the value and 1.96 standard uncertainties to both sides, or nothing is told of it.
    /// </summary>
    public double? Lower { get; init; }

    /// <summary>Upper end of that interval; null where the lower one is.</summary>
    public double? Upper { get; init; }

    /// <summary>
    /// Value and unit, invariant, with the standard uncertainty behind the sign ± or, where it is bent, the 95 % interval in
    /// brackets. The uncertainty has two digits where they begin with less than 355, otherwise one, and the value ends at the
    /// same place (Particle Data Group, Review of Particle Physics, Introduction, 5.3); without an uncertainty the value has
    /// three digits or so.
    /// </summary>
    public override string ToString()
    {
        string number = StandardUncertainty is > 0 and < double.PositiveInfinity and var u
            ? WithSpread(u, Decimals(u))
            : Digits(Value);
        return $"{number}{(Unit.Length == 0 ? "" : " ")}{Named(Unit, Value)}";
    }

    /// <summary>A turn is the one unit that is a word; of more than one there are turns.</summary>
    internal static string Named(string unit, double value) =>
        unit == "turn" && Math.Abs(value) is not (> 0 and <= 1 + 1e-9) ? "turns" : unit;

    private string WithSpread(double uncertainty, int decimals) =>
        Lower is { } from && Upper is { } to
            ? $"{AtPlace(Value, decimals)} ({AtPlace(from, decimals)} to {AtPlace(to, decimals)})"
            : $"{AtPlace(Value, decimals)} ± {AtPlace(uncertainty, decimals)}";

    private static int Decimals(double uncertainty)
    {
        int exponent = (int)Math.Floor(Math.Log10(uncertainty));
        bool two = Math.Round(uncertainty * Math.Pow(10, 2 - exponent)) < FirstOfOneDigit;
        return Math.Min((two ? 1 : 0) - exponent, MostDecimals);
    }

    private static string AtPlace(double value, int decimals)
    {
        double step = Math.Pow(10, Math.Max(-decimals, 0));
        return Invariant(
            step * Math.Round(value / step, Math.Max(decimals, 0)),
            $"0.{new string('0', Math.Max(decimals, 0))}"
        );
    }

    private static string Digits(double value)
    {
        string format = Math.Abs(value) switch
        {
            >= 100 => "0",
            >= 10 => "0.#",
            >= 1 => "0.##",
            _ => "0.###",
        };

        return Invariant(value, format);
    }

    // The third part keeps a small negative number from reading "-0".
    private static string Invariant(double value, string format) =>
        value.ToString($"{format};-{format};{format}", CultureInfo.InvariantCulture);
}
