using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>The take-up: the bolts that tighten and centre the running belt.</summary>
public sealed partial record TakeUp
{
    internal const double MostTurns = 20;

    /// <summary>Thread of the bolts.</summary>
    /// <exception cref="ArgumentNullException">The thread is null.</exception>
    public required ScrewThread Thread
    {
        get;
        init => field = Guard.Present(value);
    }

    /// <summary>Which roller the bolts move.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not defined.</exception>
    public DriveEnd AdjustedEnd
    {
        get;
        init => field = Guard.Defined(value);
    } = DriveEnd.Rear;

    /// <summary>How many bolts there are, 1 or 2. With one bolt, its turns are given as both left and right.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is neither 1 nor 2.</exception>
    public int Bolts
    {
        get;
        init => field = (int)Guard.Within(value, Si.One, 1, 2);
    } = 2;

    /// <summary>
    /// Whether turning clockwise tightens, seen from where the bolt's head is; null where nobody looked. It does on most
    /// machines.
    /// </summary>
    public bool? ClockwiseTightens { get; init; }

    /// <summary>Distance between the bolts across the belt, 0.2 m to 1.5 m; null where not measured.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The distance is outside the range.</exception>
    public Length? BoltSpacing
    {
        get;
        init => field = Guard.Within(value, Si.Length, 0.2, 1.5);
    }

    /// <summary>Angle between the bolts and the line of centres, 0 to 60 degrees.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside the range.</exception>
    public Angle BoltAngle
    {
        get;
        init => field = Guard.Within(value, Si.Angle, 0, Math.PI / 3);
    } = Si.Angle.FromSi(0);

    /// <summary>Thread left on the bolts for tightening, up to 0.2 m; null where not measured.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The length is outside the range.</exception>
    public Length? ThreadLeft
    {
        get;
        init => field = Guard.Within(value, Si.Length, 0, 0.2);
    }

    /// <summary>Turns given to the left bolt since the tension at rest was found, -20 to 20; positive tightens.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The turns are outside the range.</exception>
    public double LeftTurns
    {
        get;
        init => field = Guard.Within(value, Si.One, -MostTurns, MostTurns);
    }

    /// <summary>Turns given to the right bolt since the tension at rest was found, -20 to 20; positive tightens.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The turns are outside the range.</exception>
    public double RightTurns
    {
        get;
        init => field = Guard.Within(value, Si.One, -MostTurns, MostTurns);
    }
}
