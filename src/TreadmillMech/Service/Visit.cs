using System.Collections.Immutable;
using System.Globalization;
using TreadmillMech.Parts;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Service;

/// <summary>A visit to one machine: what is known of it, and what was read and done, in order.</summary>
public sealed partial record Visit
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

    /// <summary>Day of the visit; null where not stated. The library has no clock.</summary>
    /// <exception cref="ArgumentException">An earlier visit lies after it.</exception>
    public DateOnly? Day
    {
        get;
        init
        {
            field = value;
            NotLater(Earlier, value);
        }
    }

    /// <summary>Earlier visits to the machine, the oldest first.</summary>
    /// <exception cref="ArgumentException">
    /// The visits are not in the order of their days, or one lies after this visit.
    /// </exception>
    public ImmutableArray<EarlierVisit> Earlier
    {
        get => field.IsDefault ? [] : field;
        init
        {
            field = InOrder(value);
            NotLater(value, Day);
        }
    }

    /// <summary>How the machine is used; null where not known.</summary>
    public Usage? Usage { get; init; }

    /// <summary>Day, number of events and the demand it is tested under, invariant.</summary>
    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"visit{(Day is { } day ? $" of {day:O}" : "")}, {Events.Length} events, tested under {TestDemand}"
        );

    private static void NotLater(ImmutableArray<EarlierVisit> visits, DateOnly? day)
    {
        if (day is { } today && !visits.IsDefaultOrEmpty && visits[^1].Day > today)
        {
            throw new ArgumentException(
                $"Earlier: the visit of {visits[^1].Day:O} lies after this one of {today:O}; an earlier visit does not.",
                nameof(visits)
            );
        }
    }

    private static ImmutableArray<EarlierVisit> InOrder(ImmutableArray<EarlierVisit> visits)
    {
        for (int i = 1; i < (visits.IsDefault ? 0 : visits.Length); i++)
        {
            if (visits[i].Day < visits[i - 1].Day)
            {
                throw new ArgumentException(
                    $"Earlier: the visit of {visits[i].Day:O} stands after that of {visits[i - 1].Day:O}; the oldest comes first.",
                    nameof(visits)
                );
            }
        }

        return visits;
    }
}
