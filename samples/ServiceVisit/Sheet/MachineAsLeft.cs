using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using TreadmillMech.Service;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Samples.ServiceVisit.Sheet;

/// <summary>The machine of a visit with what its readings say of load and drive belt, for the curves of the charts.</summary>
internal static class MachineAsLeft
{
    // The range that the library takes for the pull of the empty belt.
    private const double MostDrag = 500;

    internal static Treadmill Of(Visit visit, VisitSheet sheet)
    {
        Treadmill machine = visit.Machine;
        ReadingRow? friction = sheet.Find(Rows.Friction);
        return machine with
        {
            Deck = (friction?.AsLeft ?? friction?.AsFound) is { } read
                ? machine.Deck with
                {
                    Friction = read.Value,
                }
                : machine.Deck,
            BeltDrag = machine.BeltDrag ?? PulledEmpty(visit, sheet),
            DriveBelt = machine.DriveBelt is { } belt
                ? belt with
                {
                    Tension = Plucked(visit, sheet, belt) ?? belt.Tension,
                }
                : null,
        };
    }

    /// <summary>The readings of a kind that the sheet used, with their places among the events.</summary>
    internal static IEnumerable<(int At, TReading Reading)> Used<TReading>(Visit visit, VisitSheet sheet)
        where TReading : VisitEvent
    {
        for (int i = 0; i < visit.Events.Length; i++)
        {
            if (visit.Events[i] is TReading reading && sheet.Refused.All(refused => refused.Event != i))
            {
                yield return (i, reading);
            }
        }
    }

    private static Force? PulledEmpty(Visit visit, VisitSheet sheet) =>
        Used<PullReading>(visit, sheet)
            .LastOrDefault(static p => p.Reading.MotorUncoupled && p.Reading.EmptyPull.Newtons <= MostDrag)
            .Reading?.EmptyPull;

    /// <summary>Strand tension by the pitch of the plucked span, where length and mass of the span are known.</summary>
    private static Force? Plucked(Visit visit, VisitSheet sheet, DriveBelt belt)
    {
        if (
            belt.MassPerLength is not { } mass
            || Used<SpanFrequencyReading>(visit, sheet).LastOrDefault().Reading is not { Span: { } span } reading
        )
        {
            return null;
        }

        double tension = SpanLaws.TensionFromFrequency<Real>(
            mass.KilogramsPerMeter,
            span.Meters,
            reading.Frequency.Hertz
        );
        return tension is >= 5 and <= 3000 ? Force.FromNewtons(tension) : null;
    }
}
