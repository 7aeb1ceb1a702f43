using System.Globalization;
using TreadmillMech.Json.Located;
using TreadmillMech.Json.Shapes;

namespace TreadmillMech.Json.Units;

/// <summary>Reads "20 in": a number with a decimal point, then a unit out of a table. No culture has a say in it.</summary>
internal static class QuantityText
{
    private const int MostWritten = 9;

    /// <summary>The value in SI, or why it cannot be taken.</summary>
    internal static Refusal? Read(LocatedNode node, UnitTable table, out double si)
    {
        si = double.NaN;
        if (node.Kind is not (NodeKind.Text or NodeKind.Number))
        {
            return new(node.Shown, table.Expected);
        }

        // A comma is a decimal mark to one reader and a thousands mark to the next; a guess could be out by ten.
        if (node.Text.Contains(',', StringComparison.Ordinal))
        {
            return new($"{node.Shown} with a comma", $"a decimal point and no other mark; {table.Expected}");
        }

        string text = node.Text.Trim();
        int end = NumberLength(text);
        if (
            end == 0
            || !double.TryParse(text.AsSpan(0, end), NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
        )
        {
            return new($"{node.Shown}, which does not begin with a number", table.Expected);
        }

        string symbol = text[end..].Trim();
        if (table.Find(symbol) is not { } unit)
        {
            return symbol.Length == 0
                ? new($"{node.Shown} without a unit", table.Expected)
                : new($"{node.Shown}, where \"{symbol}\" is no unit for it", table.Expected + Hint(table, symbol));
        }

        si = InSi(unit, text[..end], value);
        return double.IsFinite(si)
            ? null
            : new($"{node.Shown}, which is not a finite number", $"a finite number; {table.Expected}");
    }

    /// <summary>A hanging scale shows a mass; what it feels is a force.</summary>
    private static string Hint(UnitTable table, string symbol) =>
        symbol is "kg" or "lb" && table.Find(symbol + "f") is not null
            ? $"; a scale that shows {symbol} feels {symbol}f"
            : "";

    /// <summary>
    /// The value with the unit that needs the fewest digits to give just this value again: that of whoever wrote it down. A
    /// value with more digits than anybody writes stays in the first unit that loses nothing.
    /// </summary>
    /// <exception cref="ArgumentException">The value is not finite.</exception>
    internal static string Write(UnitTable table, double si)
    {
        if (!double.IsFinite(si))
        {
            throw new ArgumentException($"{si} is not a finite number, and has no text.", nameof(si));
        }

        (string Text, int Digits) best = ("", int.MaxValue);
        foreach (WrittenUnit unit in table.Units)
        {
            if (Number(unit, si) is not { } number)
            {
                continue;
            }

            int digits = SignificantDigits(number);
            int rank =
                digits <= MostWritten ? digits
                : unit.PowerOfTen is null ? int.MaxValue
                : MostWritten + 1;
            if (rank < best.Digits)
            {
                best = (unit.Symbol.Length == 0 ? number : $"{number} {unit.Symbol}", rank);
            }
        }

        return best.Text;
    }

    /// <summary>The texts that <see cref="Read"/> takes, as a regular expression of JSON schema.</summary>
    internal static string Pattern(UnitTable table)
    {
        const string Number = @"[+-]?([0-9]+\.?[0-9]*|\.[0-9]+)([eE][+-]?[0-9]+)?";
        string[] units =
        [
            .. table
                .Units.Where(static unit => unit.Symbol.Length > 0)
                .Select(static unit => UnitTable.Pattern(unit.Symbol))
                .Distinct(StringComparer.Ordinal),
        ];
        string named = $"({string.Join('|', units)})";
        string unit =
            units.Length == 0 ? ""
            : table.AllowsPlainNumber ? $"{named}?"
            : named;

        // A unit may begin with a digit: "20 1/min" is twenty a minute, "201/min" is nothing.
        return $@"^\s*{Number}(?![0-9])\s*{unit}\s*$";
    }

    /// <summary>The number in a unit that is read as just this value; null where none is near.</summary>
    private static string? Number(WrittenUnit unit, double si)
    {
        if (unit.PowerOfTen is { } power)
        {
            return DecimalText.Divided(si, power);
        }

        double about = unit.FromSi(si);
        foreach (string format in (string[])["G15", "R"])
        {
            string text = about.ToString(format, CultureInfo.InvariantCulture);
            double back = unit.ToSi(double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture));
            if (BitConverter.DoubleToInt64Bits(back) == BitConverter.DoubleToInt64Bits(si))
            {
                return text;
            }
        }

        return null;
    }

    private static double InSi(WrittenUnit unit, string number, double value) =>
        (unit.PowerOfTen is { } power ? DecimalText.Scaled(number, power) : null) ?? unit.ToSi(value);

    /// <summary>Digits without sign, point, exponent and the zeros at both ends.</summary>
    private static int SignificantDigits(string number) =>
        number.Split('E')[0].Replace(".", "", StringComparison.Ordinal).Trim('-', '0').Length;

    /// <summary>Length of sign, digits, point, digits and exponent at the start; 0 where there is no digit.</summary>
    private static int NumberLength(string text)
    {
        int at = text.StartsWith('-') || text.StartsWith('+') ? 1 : 0;
        int whole = Digits(text, at);
        int part = at + whole < text.Length && text[at + whole] == '.' ? Digits(text, at + whole + 1) : -1;
        if (whole == 0 && part <= 0)
        {
            return 0;
        }

        at += whole + part + 1;
        return at + ExponentLength(text, at);
    }

    private static int ExponentLength(string text, int at)
    {
        if (at >= text.Length || text[at] is not ('e' or 'E'))
        {
            return 0;
        }

        int sign = at + 1 < text.Length && text[at + 1] is '-' or '+' ? 1 : 0;
        int digits = Digits(text, at + 1 + sign);
        return digits == 0 ? 0 : 1 + sign + digits;
    }

    private static int Digits(string text, int from)
    {
        int at = from;
        while (at < text.Length && char.IsAsciiDigit(text[at]))
        {
            at++;
        }

        return at - from;
    }
}
