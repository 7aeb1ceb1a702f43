using System.Globalization;
using TreadmillMech.Samples.ServiceVisit.Json;
using TreadmillMech.Samples.ServiceVisit.Reading;

namespace TreadmillMech.Samples.ServiceVisit.Units;

/// <summary>Reads "20 in": a number with a decimal point, then a unit out of a table. No culture has a say in it.</summary>
internal static class QuantityText
{
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
                : new($"{node.Shown}, where \"{symbol}\" is no unit for it", table.Expected);
        }

        si = unit.ToSi(value);
        return double.IsFinite(si)
            ? null
            : new($"{node.Shown}, which is not a finite number", $"a finite number; {table.Expected}");
    }

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
