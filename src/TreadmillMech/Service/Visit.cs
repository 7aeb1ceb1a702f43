using System.Collections.Immutable;
using TreadmillMech.Parts;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Service;

/// <summary>A visit to one machine: what is known of it, and what was read and done, in order.</summary>
public sealed record Visit
{
    /// <summary>The machine as its plate and ruler tell; what readings of the visit find is not filled in here.</summary>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    public required Treadmill Machine
    {
        get;
        init => field = Guard.Present(value);
    }

    /// <summary>The demand that the machine is tested under.</summary>
    /// <exception cref="ArgumentNullException">The demand is null.</exception>
    public required Demand TestDemand
    {
        get;
        init => field = Guard.Present(value);
    }

    /// <summary>Readings and actions, in the order in which they happened.</summary>
    public required ImmutableArray<VisitEvent> Events
    {
        get => field.IsDefault ? [] : field;
        init;
    }

    /// <summary>Turns given at earlier visits to both bolts since the belt was new, -20 to 20; null where unknown.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The turns are outside the range.</exception>
    public double? EarlierTurns
    {
        get;
        init => field = Guard.Within(value, Si.One, -20, 20);
    }
}
