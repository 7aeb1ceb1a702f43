using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Service.Review;

/// <summary>How far the take-up bolts were turned, by whom, and what their thread leaves.</summary>
internal sealed class BoltFacts
{
    private readonly Visit visit;
    private readonly VisitOptions options;
    private readonly List<TakeUpAction> before = [];

    internal BoltFacts(Visit visit, VisitOptions options, IEnumerable<EventAtTurns> moments)
    {
        this.visit = visit;
        this.options = options;
        ThreadTurnsAsFound = visit.Machine.TakeUp.ThreadLeft is { } told ? TurnsIn(told) : null;
        foreach (EventAtTurns moment in moments)
        {
            switch (moment.Happened)
            {
                case ThreadReading thread:
                    ThreadTurnsAsFound = TurnsIn(thread.Left) + Math.Max(moment.LeftTurns, moment.RightTurns);
                    break;
                case BoltReading bolt:
                    TurnHard = bolt.Feel == BoltFeel.Hard;
                    break;
                case TakeUpAction { By: TurnedBy.SomebodyBefore } turned:
                    before.Add(turned);
                    break;
                case TakeUpAction turned:
                    LeftTurns += turned.LeftTurns;
                    RightTurns += turned.RightTurns;
                    break;
                default:
                    break;
            }
        }
    }

    internal double LeftTurns { get; }

    internal double RightTurns { get; }

    /// <summary>Turns given to both bolts in this visit, net mean of left and right.</summary>
    internal double Turns => 0.5 * (LeftTurns + RightTurns);

    /// <summary>Whether somebody turned bolts before the visit, and told of it.</summary>
    internal bool TurnedBySomebody => before.Count > 0;

    /// <summary>Turns that somebody gave both bolts before the visit, and told of.</summary>
    internal double TurnsBySomebody => before.Sum(static t => 0.5 * (t.LeftTurns + t.RightTurns));

    /// <summary>Turns given before this visit, as known from earlier visits and from what others told.</summary>
    internal double? TurnsBefore
    {
        get
        {
            double? known =
                visit.EarlierTurns ?? (visit.Earlier.IsEmpty ? null : visit.Earlier.Sum(static e => e.Turns));
            return known is null && !TurnedBySomebody ? null : (known ?? 0) + TurnsBySomebody;
        }
    }

    /// <summary>Turns that the thread left allowed before the first turn of this visit; null where not measured.</summary>
    internal double? ThreadTurnsAsFound { get; }

    /// <summary>Turns that the thread left allows from here; null where not measured.</summary>
    internal double? ThreadTurnsLeft => ThreadTurnsAsFound - Math.Max(LeftTurns, RightTurns);

    /// <summary>Whether the thread was measured, and is at its end.</summary>
    internal bool ThreadAtItsEnd => ThreadTurnsLeft < options.TurnStep.Value;

    /// <summary>Whether a bolt turned hard when it was last tried.</summary>
    internal bool TurnHard { get; }

    private double TurnsIn(Length thread) =>
        ScrewThreadLaws.Turns<Real>(Si.Length.ToSi(visit.Machine.TakeUp.Thread.Lead), Si.Length.ToSi(thread));
}
