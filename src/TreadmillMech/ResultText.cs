using System.Collections;
using System.Globalization;
using UnitsNet;

namespace TreadmillMech;

/// <summary>Results in words for whoever prints one: short, on one line, the same in every culture.</summary>
internal static class ResultText
{
    // A comma between thousands is a decimal mark to half of the world.
    private static readonly CultureInfo Plain = Ungrouped();

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

    /// <summary>A value in few digits.</summary>
    internal static string Of(object value) =>
        value switch
        {
            IShortText known => known.Short,
            string text => text,
            double number => Rounded(number),
            IQuantity quantity => $"{Rounded((double)quantity.Value)} {quantity.ToString("A", Plain)}".TrimEnd(),
            IEnumerable several => $"[{string.Join("; ", several.Cast<object>().Select(Of))}]",
            _ => Full(value),
        };

    /// <summary>A value as it is written by itself.</summary>
    internal static string Full(object value) =>
        value switch
        {
            DateOnly day => day.ToString("O", Plain),
            IFormattable formattable => formattable.ToString(null, Plain),
            _ => value.ToString() ?? "",
        };

    private static string Rounded(double number) =>
        number.ToString(Math.Abs(number) is >= 1e5 and < 1e10 ? "0" : "G5", Plain);

    private static CultureInfo Ungrouped()
    {
        CultureInfo culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberGroupSeparator = "";
        return CultureInfo.ReadOnly(culture);
    }
}
