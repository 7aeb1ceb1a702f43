using UnitsNet;

namespace TreadmillMech;

/// <summary>Something that happened in a run.</summary>
/// <param name="Time">When.</param>
/// <param name="Kind">What.</param>
public readonly record struct DriveEvent(Duration Time, DriveEventKind Kind);
