namespace TreadmillMech.Samples.ServiceVisit.Json;

/// <summary>One field of an object, with the line its name stands on.</summary>
internal sealed record LocatedMember(string Name, int Line, LocatedNode Value);
