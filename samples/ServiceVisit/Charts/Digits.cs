using System.Globalization;

namespace TreadmillMech.Samples.ServiceVisit.Charts;

/// <summary>Numbers as text, the same in every country.</summary>
internal static class Digits
{
    /// <summary>A place on a drawing, to a hundredth of its unit.</summary>
    internal static string Place(double value) => value.ToString("0.##;-0.##;0", CultureInfo.InvariantCulture);

    /// <summary>A number beside an axis, with the digits that its step needs.</summary>
    internal static string Tick(double value, double step)
    {
        int decimals = Math.Clamp((int)Math.Ceiling(-Math.Log10(step) - 1e-9), 0, 6);
        string format = decimals == 0 ? "0" : "0." + new string('0', decimals);
        return value.ToString($"{format};-{format};{format}", CultureInfo.InvariantCulture);
    }
}
