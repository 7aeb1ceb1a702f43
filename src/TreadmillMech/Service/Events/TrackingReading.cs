using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Events;

/// <summary>Sideways movement of the running belt over counted passes at a jog, seen by the user facing the console.</summary>
public sealed partial record TrackingReading : Reading
{
    /// <summary>Movement to the right, -100 mm to 100 mm; negative to the left.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The movement is outside the range.</exception>
    public required Length DriftToRight
    {
        get;
        init => field = Guard.Within(value, Si.Length, -0.1, 0.1);
    }

    /// <summary>Passes of the belt counted, 1 to 10000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside the range.</exception>
    public required int Passes
    {
        get;
        init => field = (int)Guard.Within(value, Si.One, 1, 10000);
    }

    /// <summary>Movement to the right for each pass [m].</summary>
    internal double ForEachPass => Si.Length.ToSi(DriftToRight) / Passes;

    /// <summary>Whether somebody ran on the belt meanwhile; an off-centre user adds drift under load only.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not defined.</exception>
    public LoadState State
    {
        get;
        init => field = Guard.Defined(value);
    }
}
