using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Reading;

/// <summary>What a visit file holds: the machine's name and the visit.</summary>
internal sealed record VisitDocument(string MachineName, Visit Visit);
