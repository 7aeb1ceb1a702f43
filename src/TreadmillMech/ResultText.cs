using System.Collections;
using System.Globalization;
using UnitsNet;

namespace TreadmillMech;

/// <summary>Results in words for whoever prints one: short, on one line, in the invariant culture.</summary>
internal static class ResultText
{
    private const string Digits = "G5";

    /// <summary>A result with its members: "RelaxedBelt: Tension 900 N, Lost 10 %".</summary>
    internal static string Of(string name, params ReadOnlySpan<(string Name, object Value)> members)
    {
        List<string> told = [];
        foreach ((string member, object value) in members)
        {
            told.Add($"{member} {Of(value)}");
        }

        return $"{name}: {string.Join(", ", told)}";
    }

    /// <summary>A value with five digits at most.</summary>
    internal static string Of(object value) =>
        value switch
        {
            IShortText known => known.Short,
            string text => text,
            double number => number.ToString(Digits, CultureInfo.InvariantCulture),
            IQuantity quantity => quantity.ToString(Digits, CultureInfo.InvariantCulture),
            IEnumerable several => $"[{string.Join("; ", several.Cast<object>().Select(Of))}]",
            _ => Full(value),
        };

    /// <summary>A value with all its digits.</summary>
    internal static string Full(object value) =>
        value switch
        {
            DateOnly day => day.ToString("O", CultureInfo.InvariantCulture),
            IFormattable formattable => formattable.ToString(null, CultureInfo.InvariantCulture),
            _ => value.ToString() ?? "",
        };
}
