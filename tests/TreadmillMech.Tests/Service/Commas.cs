using System.Globalization;

namespace TreadmillMech.Tests.Service;

/// <summary>Numbers as a German reads them: comma for decimals, dot for thousands, a real minus sign.</summary>
internal static class Commas
{
    internal static CultureInfo Culture { get; } = Make();

    private static CultureInfo Make()
    {
        // Built by hand, for the tests run without the tables of cultures.
        CultureInfo culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = ",";
        culture.NumberFormat.NumberGroupSeparator = ".";
        culture.NumberFormat.PercentDecimalSeparator = ",";
        culture.NumberFormat.NegativeSign = "\u2212";
        return culture;
    }
}
