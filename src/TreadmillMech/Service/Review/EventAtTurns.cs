using TreadmillMech.Service.Events;

namespace TreadmillMech.Service.Review;

/// <summary>An event of a visit and the bolt position at which it happened.</summary>
/// <param name="Happened">The event.</param>
/// <param name="LeftTurns">Turns of the left bolt in this visit before it.</param>
/// <param name="RightTurns">Turns of the right bolt in this visit before it.</param>
internal readonly record struct EventAtTurns(VisitEvent Happened, double LeftTurns, double RightTurns)
{
    /// <summary>Turns of both bolts, the mean of left and right.</summary>
    internal double Turns => 0.5 * (LeftTurns + RightTurns);

    /// <summary>Events in order, each with the turns that the technician gave before it.</summary>
    internal static List<EventAtTurns> Of(IEnumerable<VisitEvent> events)
    {
        List<EventAtTurns> moments = [];
        double left = 0;
        double right = 0;
        foreach (VisitEvent happened in events)
        {
            moments.Add(new(happened, left, right));
            if (happened is TakeUpAction { By: TurnedBy.Technician } turned)
            {
                left += turned.LeftTurns;
                right += turned.RightTurns;
            }
        }

        return moments;
    }
}
