using TreadmillMech.Json.Shapes;

namespace TreadmillMech.Json;

/// <summary>The name of a machine.</summary>
internal static class FileName
{
    internal static string Checked(string value, string name) =>
        value is null ? throw new ArgumentNullException(nameof(value), $"{name} is required.")
        : NameKind.Accepted(value) is { } accepted ? accepted
        : throw new ArgumentException($"{name}: expected {JsonKinds.Name.Expected}.", nameof(value));
}
