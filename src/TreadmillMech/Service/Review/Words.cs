using System.Globalization;

namespace TreadmillMech.Service.Review;

/// <summary>Numbers in sentences, invariant.</summary>
internal static class Words
{
    internal static string Turns(double turns, bool signed)
    {
        string number = turns.ToString(signed ? "+0.###;-0.###;0" : "0.###", CultureInfo.InvariantCulture);
        return $"{number} {Figure.Named("turn", turns)}";
    }

    internal static string Percent(double share) =>
        share.ToString("0.#%", CultureInfo.InvariantCulture).Replace("%", " %", StringComparison.Ordinal);

    internal static string Side(Side side) => side == Service.Side.Left ? "left" : "right";
}
