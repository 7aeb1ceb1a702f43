using TreadmillMech.Model;

namespace TreadmillMech.Studies;

/// <summary>The unit of a derivative.</summary>
internal static class SlopeUnit
{
    internal static string Of(Output output, Input input) => Of(output.Unit, input.Unit);

    internal static string Of(string above, string below) =>
        below == "1" ? above
        : below == above ? "1"
        : below.Contains(' ', StringComparison.Ordinal) || below.Contains('/', StringComparison.Ordinal)
            ? $"{above}/({below})"
        : $"{above}/{below}";
}
