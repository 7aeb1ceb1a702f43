using System.Globalization;

namespace TreadmillMech.Json.Units;

/// <summary>Moves the decimal point of a number that is written in digits, so that nothing is rounded twice.</summary>
internal static class DecimalText
{
    // Longer texts get an exponent.
    private const int MostZeros = 6;
    private const int MostPlaces = 21;

    /// <summary>The number times a power of ten; null where its exponent is beyond all measure.</summary>
    /// <param name="number">Digits with point, sign and exponent, all of them optional but the digits.</param>
    /// <param name="power">The power of ten.</param>
    internal static double? Scaled(string number, int power)
    {
        (string digits, string exponent) = Split(number);
        return
            exponent.Length <= MostZeros
            && double.TryParse(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{digits}e{(exponent.Length == 0 ? 0 : int.Parse(exponent, CultureInfo.InvariantCulture)) + power}"
                ),
                NumberStyles.Float,
                CultureInfo.InvariantCulture,
                out double value
            )
            ? value
            : null;
    }

    /// <summary>The shortest text of a value divided by a power of ten.</summary>
    internal static string Divided(double value, int power)
    {
        (string mantissa, string exponent) = Split(value.ToString("R", CultureInfo.InvariantCulture));
        string sign = mantissa.StartsWith('-') ? "-" : "";
        string[] parts = mantissa.TrimStart('-').Split('.');
        string digits = string.Concat(parts).TrimStart('0');
        int leading = string.Concat(parts).Length - digits.Length;
        digits = digits.TrimEnd('0');

        // The value is 0.digits times ten to this power.
        int point =
            parts[0].Length
            - leading
            + (exponent.Length == 0 ? 0 : int.Parse(exponent, CultureInfo.InvariantCulture))
            - power;
        return digits.Length == 0 ? $"{sign}0" : $"{sign}{Placed(digits, point)}";
    }

    private static string Placed(string digits, int point) =>
        point switch
        {
            <= 0 when point > -MostZeros => $"0.{new string('0', -point)}{digits}",
            > 0 when point >= digits.Length && point <= MostPlaces => digits.PadRight(point, '0'),
            > 0 when point < digits.Length => $"{digits[..point]}.{digits[point..]}",
            _ => string.Create(
                CultureInfo.InvariantCulture,
                $"{digits[0]}{(digits.Length > 1 ? "." : "")}{digits[1..]}E{point - 1}"
            ),
        };

    private static (string Digits, string Exponent) Split(string number)
    {
        int at = number.IndexOfAny(['e', 'E']);
        return at < 0 ? (number, "") : (number[..at], number[(at + 1)..]);
    }
}
