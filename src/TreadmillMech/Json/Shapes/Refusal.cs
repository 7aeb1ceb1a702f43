namespace TreadmillMech.Json.Shapes;

/// <summary>Why one value cannot be taken.</summary>
internal sealed record Refusal(string Found, string Expected);
