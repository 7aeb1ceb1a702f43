using TreadmillMech.Service;

namespace TreadmillMech.Samples.WebApi;

/// <summary>The sheet of a visit, with the name of its machine.</summary>
internal sealed record SheetResponse(string Machine, VisitSheet Sheet);
