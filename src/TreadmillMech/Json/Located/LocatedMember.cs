namespace TreadmillMech.Json.Located;

/// <summary>One field of an object, with the place its name stands at.</summary>
internal sealed record LocatedMember(string Name, int Line, int Column, LocatedNode Value);
