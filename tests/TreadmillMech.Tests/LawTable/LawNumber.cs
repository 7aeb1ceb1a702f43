using System.Globalization;
using TreadmillMech.Tests.LawChecks;

namespace TreadmillMech.Tests.LawTable;

/// <summary>Numbers as the table of laws prints them: rounded so far that every machine prints the same.</summary>
internal static class LawNumber
{
    /// <summary>More digits than this may differ between machines.</summary>
    private const int MostDigits = 11;

    private const string Times = "\u00A0×\u00A0";

    /// <summary>
    /// The value from outside with the digits that its source prints, where the tolerance tells them; otherwise as far as
    /// the computed value.
    /// </summary>
    internal static string Expected(LawCheck check) =>
        IsPrinted(check)
            ? Fixed(check.Expected, -Exponent(check.Tolerance) - 1, Far(check.Expected))
            : WithoutZeros(Computed(check, check.Expected));

    /// <summary>The computed value with two digits more than the tolerance tells.</summary>
    internal static string Computed(LawCheck check, double value)
    {
        int decimals = check.Tolerance == 0 ? MostDigits : -Exponent(check.Tolerance) + 1;
        int most = MostDigits - 1 - Exponent(check.Expected);
        string text = Fixed(value, Math.Clamp(decimals, 0, Math.Max(most, 0)), Far(check.Expected));
        return decimals <= most || IsPrinted(check) ? text : WithoutZeros(text);
    }

    /// <summary>The tolerance as the table shows it, with the sign in front.</summary>
    internal static string Tolerance(LawCheck check) =>
        check.Tolerance == 0 ? "exactly" : $"±\u00A0{Short(check.Tolerance, 3)}";

    /// <summary>The shortest way to write a number, of eleven digits at most.</summary>
    internal static string Short(double value, int digits = MostDigits) =>
        WithoutZeros(Fixed(value, Math.Max(digits - 1 - Exponent(value), 0), Far(value)));

    /// <summary>Whether the tolerance is half a unit of the last digit that the source prints.</summary>
    private static bool IsPrinted(LawCheck check)
    {
        int decimals = -Exponent(check.Tolerance) - 1;
        return check
                .Tolerance.ToString("E3", CultureInfo.InvariantCulture)
                .StartsWith("5.000", StringComparison.Ordinal)
            && decimals >= 0
            && decimals < Math.Min(16, MostDigits - Exponent(check.Expected))
            && Math.Abs(Math.Round(check.Expected, decimals) - check.Expected) <= 1e-14 * Math.Abs(check.Expected);
    }

    /// <summary>Whether a number needs a power of ten to be readable.</summary>
    private static bool Far(double value) => value != 0 && Exponent(value) is < -4 or > 6;

    private static int Exponent(double value) =>
        value == 0
            ? 0
            : int.Parse(
                value.ToString("E16", CultureInfo.InvariantCulture).Split('E')[1],
                NumberStyles.AllowLeadingSign,
                CultureInfo.InvariantCulture
            );

    private static string Fixed(double value, int decimals, bool power)
    {
        if (!power || value == 0)
        {
            string text = value.ToString($"F{Math.Max(decimals, 0)}", CultureInfo.InvariantCulture);
            return text.Trim('-', '0', '.').Length == 0 ? text.TrimStart('-') : text;
        }

        int digits = Math.Max(decimals + Exponent(value), 0);
        string[] parts = value.ToString($"E{digits}", CultureInfo.InvariantCulture).Split('E');
        int exponent = int.Parse(parts[1], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        return $"{parts[0]}{Times}10{Raised(exponent)}";
    }

    private static string WithoutZeros(string number)
    {
        string[] parts = number.Split(Times);
        string mantissa = parts[0].Contains('.', StringComparison.Ordinal)
            ? parts[0].TrimEnd('0').TrimEnd('.')
            : parts[0];
        return parts.Length == 1 ? mantissa
            : mantissa == "1" ? parts[1]
            : $"{mantissa}{Times}{parts[1]}";
    }

    private static string Raised(int exponent) =>
        string.Concat(exponent.ToString(CultureInfo.InvariantCulture).Select(LawProse.Raised));
}
