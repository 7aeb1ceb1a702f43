using TreadmillMech.Service;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Tests.Service;

/// <summary>What must hold before a bolt is turned, told from the events of a visit, apart from the library.</summary>
/// <param name="RollerWiped">Whether the drive roller was wiped.</param>
/// <param name="RollerDry">Whether the last cloth over it was clean, or it was cleaned since.</param>
/// <param name="DriveBeltRead">Whether motor and roller were read with and without load, or there is no drive belt.</param>
/// <param name="Reference">Whether there is a lift or a slip test.</param>
/// <param name="TurnsLeft">Turns left of two in a visit, and of the thread.</param>
/// <param name="Retested">Whether a slip test, or speeds under load, came after the last work on belts and rollers.</param>
internal sealed record Guards(
    bool RollerWiped,
    bool RollerDry,
    bool DriveBeltRead,
    bool Reference,
    double TurnsLeft,
    bool Retested
)
{
    internal static Guards Of(Visit visit, VisitSheet sheet)
    {
        HashSet<int> refused = [.. sheet.Refused.Select(r => r.Event)];
        VisitEvent[] events =
        [
            .. visit
                .Events.Where((_, i) => !refused.Contains(i))
                .Where(e => e is not TakeUpAction { By: TurnedBy.SomebodyBefore }),
        ];
        WipeReading[] wiped = [.. events.OfType<WipeReading>().Where(w => w.Place == WipedPlace.DriveRoller)];
        int lastWipe = Array.FindLastIndex(events, e => e is WipeReading { Place: WipedPlace.DriveRoller });
        int lastClean = Array.FindLastIndex(events, e => e is CleanAction { Place: CleanedPlace.Rollers });
        int lastWork = Array.FindLastIndex(
            events,
            e => e is TakeUpAction or DriveBeltAction or CleanAction { Place: CleanedPlace.Rollers }
        );
        int lastTest = Array.FindLastIndex(
            events,
            e => e is SlipTestReading or SpeedReading { State: LoadState.Loaded }
        );
        double turns = events.OfType<TakeUpAction>().Sum(t => (t.LeftTurns + t.RightTurns) / 2);
        double most = Math.Max(
            events.OfType<TakeUpAction>().Sum(t => t.LeftTurns),
            events.OfType<TakeUpAction>().Sum(t => t.RightTurns)
        );
        double thread = visit.Machine.TakeUp.ThreadLeft is { } left
            ? (left / visit.Machine.TakeUp.Thread.Lead) - most
            : double.PositiveInfinity;
        int measured = Array.FindLastIndex(events, e => e is ThreadReading);
        if (measured >= 0)
        {
            TakeUpAction[] since = [.. events.Skip(measured).OfType<TakeUpAction>()];
            double given = Math.Max(since.Sum(t => t.LeftTurns), since.Sum(t => t.RightTurns));

            // Turns before and after it, of whichever bolt was turned most, leave some doubt: the lesser counts.
            thread =
                (((ThreadReading)events[measured]).Left / visit.Machine.TakeUp.Thread.Lead) - Math.Min(given, most);
        }

        if (events.OfType<BoltReading>().LastOrDefault()?.Feel == BoltFeel.Hard)
        {
            thread = 0;
        }
        return new(
            wiped.Length > 0,
            wiped.Length > 0 && (wiped[^1].Trace == WipedTrace.Dry || lastClean > lastWipe),
            visit.Machine.DriveBelt is null || (Both(LoadState.Unloaded) && Both(LoadState.Loaded)),
            events.Any(e => e is LiftReading or SlipTestReading),
            Math.Min(2 - turns, thread),
            lastTest > lastWork || lastWork < 0
        );

        bool Both(LoadState state) =>
            events
                .OfType<SpeedReading>()
                .Any(s => s.State == state && s.Motor is not null && s.DriveRoller is not null);
    }
}
