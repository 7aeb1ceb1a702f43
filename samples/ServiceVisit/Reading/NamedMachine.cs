using TreadmillMech.Parts;

namespace TreadmillMech.Samples.ServiceVisit.Reading;

/// <summary>A machine with the name that its owner knows it by; the library needs none.</summary>
internal sealed record NamedMachine(string Name, Treadmill Machine, DriveDynamics? Dynamics);
