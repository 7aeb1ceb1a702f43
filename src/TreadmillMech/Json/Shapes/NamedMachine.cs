namespace TreadmillMech.Json.Shapes;

/// <summary>A machine with the name that its owner knows it by; the model needs none.</summary>
internal sealed record NamedMachine(string Name, Treadmill Machine);
