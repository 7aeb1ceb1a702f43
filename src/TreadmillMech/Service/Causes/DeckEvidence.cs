using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Service.Events;
using TreadmillMech.Service.Review;

namespace TreadmillMech.Service.Causes;

/// <summary>Friction of the deck, what service did to it, and how it looks. Bells and chances: common practice, no source.</summary>
internal static class DeckEvidence
{
    /// <summary>Logarithm of the friction as found.</summary>
    private static readonly Bell Friction = new(
        4,
        Math.Log(0.17),
        0.2,
        (Cause.DeckDry, Math.Log(0.33), 0.17),
        (Cause.BeltAndDeckWorn, Math.Log(0.35), 0.17),
        (Cause.OverLubricated, Math.Log(0.13), 0.2),
        (Cause.OilOnDriveRoller, Math.Log(0.14), 0.25),
        (Cause.WrongReading, Math.Log(0.2), 0.6)
    );

    /// <summary>Fall of the friction by cleaning and lubricating.</summary>
    private static readonly Bell Fall = new(
        1,
        0.05,
        0.08,
        (Cause.DeckDry, 0.45, 0.1),
        (Cause.BeltAndDeckWorn, 0.07, 0.06)
    );

    /// <summary>Depth of the groove in the foot zone [mm].</summary>
    internal static readonly Bell Groove = new(
        10,
        0.2,
        0.15,
        (Cause.BeltAndDeckWorn, 1.2, 0.5),
        (Cause.DeckDry, 0.3, 0.2)
    );

    internal static IEnumerable<Evidence> Of(VisitFacts facts)
    {
        if (facts.Friction.AsFound.Is(out FrictionFact? found) && !StandsAlone(facts, found))
        {
            yield return Friction.Read(
                Math.Log(found.Friction.Value),
                found.Friction.StandardUncertainty / found.Friction.Value,
                $"Deck friction as found {found.Figure}, from {found.Method}."
            );
            if (
                facts.Friction.Serviced
                && facts.Friction.AsLeft.Is(out FrictionFact? left)
                && left.Method == found.Method
            )
            {
                double fall = 1 - (left.Friction.Value / found.Friction.Value);
                double relative = MeasurementLaws.RelativeUncertaintyOfTwo<Real>(
                    left.Friction.StandardUncertainty / left.Friction.Value,
                    found.Friction.StandardUncertainty / found.Friction.Value
                );
                yield return Fall.Read(
                    fall,
                    (1 - fall) * relative,
                    $"Service lowered the deck's friction by {Words.Percent(fall)}."
                );
            }
        }

        if (facts.Used<GrooveReading>().LastOrDefault() is { } groove)
        {
            double depth = 1000 * Si.Length.ToSi(groove.Depth);
            yield return Groove.Read(depth, 0.1, $"Groove in the deck {new Figure("", depth, "mm")} deep.");
        }
    }

    /// <summary>A friction from a reading that another of the same work contradicts tells nothing of the deck.</summary>
    private static bool StandsAlone(VisitFacts facts, FrictionFact found) =>
        found.Method switch
        {
            FrictionFact.ByPull => ReadingEvidence.FarOffAmong<PullReading>(facts),
            FrictionFact.ByCurrent => ReadingEvidence.FarOffAmong<MotorCurrentReading>(facts),
            _ => ReadingEvidence.FarOffAmong<MainsPowerReading>(facts),
        };
}
