using TreadmillMech.Parts;

namespace TreadmillMech.Json.Shapes;

/// <summary>
/// A machine with the name that its owner knows it by, and what decides how its speeds change, where known; the operating
/// point needs neither.
/// </summary>
internal sealed record NamedMachine(string Name, Treadmill Machine, DriveDynamics? Dynamics);
