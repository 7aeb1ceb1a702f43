using TreadmillMech.Parts;

namespace TreadmillMech.Service.Events;

/// <summary>Turns given to the take-up bolts, machine standing.</summary>
public sealed partial record TakeUpAction : VisitEvent
{
    /// <summary>Turns of the left bolt, -5 to 5; positive tightens.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The turns are outside the range.</exception>
    public required double LeftTurns
    {
        get;
        init => field = Guard.Within(value, Si.One, -5, 5);
    }

    /// <summary>Turns of the right bolt, -5 to 5; positive tightens.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The turns are outside the range.</exception>
    public required double RightTurns
    {
        get;
        init => field = Guard.Within(value, Si.One, -5, 5);
    }

    /// <summary>Whose hand it was.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not defined.</exception>
    public TurnedBy By
    {
        get;
        init => field = Guard.Defined(value);
    }
}
