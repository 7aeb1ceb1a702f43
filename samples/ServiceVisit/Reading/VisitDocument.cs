using TreadmillMech.Parts;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Reading;

/// <summary>What a visit file holds: the machine's name, the visit, and what decides how the speeds change, where known.</summary>
internal sealed record VisitDocument(string MachineName, Visit Visit, DriveDynamics? Dynamics = null);
