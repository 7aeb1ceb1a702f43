using System.Globalization;
using UnitsNet;

namespace TreadmillMech;

/// <summary>Something that happened in a run.</summary>
/// <param name="Time">When.</param>
/// <param name="Kind">What.</param>
public readonly record struct DriveEvent(Duration Time, DriveEventKind Kind)
{
    /// <summary>Time and kind, invariant.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Si.Duration.ToSi(Time):0.000} s: {Kind}");
}
