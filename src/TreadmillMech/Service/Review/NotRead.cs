using TreadmillMech.Service.Events;

namespace TreadmillMech.Service.Review;

/// <summary>
/// What is to be read before anybody may say that a machine is fit: looks at the standing machine first, then the empty
/// belt, then a person on it. Order and minutes are common practice, no source.
/// </summary>
internal static class NotRead
{
    internal static IEnumerable<Finding> Of(VisitFacts facts)
    {
        List<string> looks = [.. Looks(facts)];
        if (looks.Count > 0)
        {
            yield return Told(
                "Not all was looked at that can hurt somebody.",
                new()
                {
                    Action = $"Machine unplugged: {string.Join("; ", looks)}.",
                    Expect = "Dry cloths, firm pulleys, sound edges: then it may run empty.",
                    StopAt =
                        "Stop at oil on top, a loose pulley or a torn belt: then nobody steps on, and nothing runs.",
                    EffortMinutes = 5,
                    Cautions = [Cautions.Unplug, Cautions.StandStill],
                }
            );
        }

        if (!EmptyRunWasRead(facts))
        {
            yield return Told(
                "The empty machine was not read.",
                new()
                {
                    Action =
                        $"Run it empty at a jog: listen for rumble, knock and squeal, count the drift over fifty passes, read {Speeds(facts)}.",
                    Expect =
                        "A belt that runs straight and quietly, and the speeds that those under load are held against.",
                    StopAt = "Stop if the belt catches, smells or nears an edge.",
                    EffortMinutes = 6,
                    Cautions = [Cautions.Clear, Cautions.Key],
                }
            );
        }

        yield return Told(
            facts.Slip.Judged
                ? "Whether a belt gives way under a person was not tried since the last work."
                : "Whether a belt gives way under a person was not tried.",
            new()
            {
                Action = $"One slip test under {facts.Say.TestDemand}, and with it {Speeds(facts)}.",
                Expect =
                    $"No giving way under the feet, and slip below {Words.Percent(facts.Options.Slip.Value)}: only then is it fit for use.",
                StopAt = "Stop at the first giving way, smell or noise.",
                EffortMinutes = 8,
                Cautions = [Cautions.Clear, Cautions.Key, Cautions.TestUser],
            }
        );
    }

    /// <summary>
    /// Whether belts or rollers were worked on since somebody tried that they hold, in a way that can make them slip: more
    /// tension cannot.
    /// </summary>
    internal static bool UntriedSinceWork(VisitFacts facts)
    {
        double turns = 0;
        bool worked = false;
        foreach (VisitEvent happened in facts.Used<VisitEvent>())
        {
            switch (happened)
            {
                case SlipTestReading or SpeedReading { State: LoadState.Loaded }:
                    turns = 0;
                    worked = false;
                    break;
                case TakeUpAction { By: TurnedBy.Technician } turned:
                    turns += turned.LeftTurns + turned.RightTurns;
                    break;
                case DriveBeltAction or CleanAction { Place: CleanedPlace.Rollers }:
                    worked = true;
                    break;
                default:
                    break;
            }
        }

        return worked || turns < -1e-9;
    }

    private static string Speeds(VisitFacts facts) =>
        facts.Machine.DriveBelt is null
            ? "the speeds of roller and belt"
            : "the speeds of motor, drive roller and belt";

    private static bool EmptyRunWasRead(VisitFacts facts) =>
        facts.Used<SpeedReading>().Any(static s => s.State == LoadState.Unloaded)
        || facts.Used<PassesReading>().Any(static s => s.State == LoadState.Unloaded)
        || facts.Used<TrackingReading>().Any(static t => t.State == LoadState.Unloaded);

    private static IEnumerable<string> Looks(VisitFacts facts)
    {
        bool Wiped(WipedPlace place) => facts.Used<WipeReading>().Any(w => w.Place == place);
        bool Asked(Symptom symptom) => facts.Used<SymptomReading>().Any(s => s.Symptom == symptom);
        bool top = Wiped(WipedPlace.BeltTop);
        if (!top || !Wiped(WipedPlace.DriveRoller))
        {
            yield return top ? "a dry white cloth over the drive roller, turned by hand"
            : Wiped(WipedPlace.DriveRoller) ? "a dry white cloth over the top of the running belt"
            : "a dry white cloth over the top of the running belt and another over the drive roller, turned by hand";
        }

        if (!Asked(Symptom.CurledEdge))
        {
            yield return "a look along both edges of the running belt";
        }

        bool belt = facts.Machine.DriveBelt is not null && facts.DriveBeltLook is null;
        if (belt || (!Asked(Symptom.PulleyMoves) && facts.Machine.DriveBelt is not null))
        {
            yield return belt
                ? "hood open, the drive belt's ribs all around and both pulleys by hand"
                : "hood open, both pulleys by hand";
        }

        if (!facts.Used<TemperatureReading>().Any(static t => t.Place == WarmPlace.MainsPlug))
        {
            yield return "plug, cord and safety key for damage";
        }
    }

    private static Finding Told(string statement, NextStep next) =>
        new()
        {
            Subject = Subject.Fitness,
            Severity = Severity.Note,
            Statement = statement,
            Next = next,
        };
}
