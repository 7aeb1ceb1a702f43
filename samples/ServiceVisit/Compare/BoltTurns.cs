using TreadmillMech.Service;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Samples.ServiceVisit.Compare;

/// <summary>Turns of the take-up bolts in a visit, mean of left and right, by whose hand they were.</summary>
internal static class BoltTurns
{
    internal static double By(TurnedBy hand, Visit visit) =>
        visit
            .Events.OfType<TakeUpAction>()
            .Where(turned => turned.By == hand)
            .Sum(static turned => 0.5 * (turned.LeftTurns + turned.RightTurns));

    /// <summary>
    /// Turns between two visits: those known before the second that the first neither knew nor gave, and those that
    /// somebody gave and told of. Null where one of the visits does not know the turns before it.
    /// </summary>
    internal static double? Between(Visit first, Visit second) =>
        first.EarlierTurns is { } before && second.EarlierTurns is { } since
            ? since
                - before
                - By(TurnedBy.SomebodyBefore, first)
                - By(TurnedBy.Technician, first)
                + By(TurnedBy.SomebodyBefore, second)
            : null;
}
