using TreadmillMech.Service.Events;
using TreadmillMech.Service.Review;

namespace TreadmillMech.Service.Causes;

/// <summary>What was seen, heard, felt and smelt, each a fault by itself. Chances: common practice, no source.</summary>
internal static class SymptomEvidence
{
    private static readonly Dictionary<Symptom, (Chance Chance, string There, string Absent)> Table = new()
    {
        [Symptom.HighSqueal] = (
            Chance.OfAFault(
                0.03,
                (Cause.DriveBeltSlack, 0.6),
                (Cause.DriveBeltGlazed, 0.75),
                (Cause.DriveBeltCracked, 0.3),
                (Cause.PulleyLoose, 0.1)
            ),
            "It squeals high.",
            "No squeal."
        ),
        [Symptom.Rumble] = (
            Chance.OfAFault(0.03, (Cause.RollerBearing, 0.85), (Cause.OverTightened, 0.12)),
            "A roller rumbles, empty as well.",
            "No roller rumbles."
        ),
        [Symptom.KnockEachTurn] = (
            Chance.OfAFault(0.03, (Cause.DriveBeltCracked, 0.6), (Cause.PulleyLoose, 0.5), (Cause.RollerBearing, 0.2)),
            "It knocks once in each turn.",
            "No knock."
        ),
        [Symptom.BurntRubber] = (
            Chance.OfAFault(
                0.02,
                (Cause.DriveBeltSlack, 0.35),
                (Cause.DriveBeltGlazed, 0.4),
                (Cause.RunningBeltSlack, 0.05)
            ),
            "It smells of burnt rubber.",
            "No smell of rubber."
        ),
        [Symptom.HotMotor] = (
            Chance.OfAFault(
                0.03,
                (Cause.MotorWeak, 0.7),
                (Cause.DeckDry, 0.2),
                (Cause.BeltAndDeckWorn, 0.25),
                (Cause.ControllerLimit, 0.25)
            ),
            "The motor is too hot to touch, or smells of it.",
            "The motor is not hot."
        ),
        [Symptom.GlazedUnderside] = (
            Chance.OfAFault(0.04, (Cause.BeltAndDeckWorn, 0.8), (Cause.DeckDry, 0.12)),
            "The underside of the running belt is glazed.",
            "The underside of the running belt is not glazed."
        ),
        [Symptom.WornDeck] = (
            Chance.OfAFault(0.02, (Cause.BeltAndDeckWorn, 0.7), (Cause.DeckDry, 0.05)),
            "The deck is worn through its coat.",
            "The deck's coat is whole."
        ),
        [Symptom.PulleyMoves] = (
            Chance.OfAFault(0.01, (Cause.PulleyLoose, 0.9)),
            "A pulley shifts or turns on its shaft.",
            "The pulleys sit firmly."
        ),
        [Symptom.Hunting] = (
            Chance.OfAFault(0.03, (Cause.ControllerLimit, 0.15), (Cause.MotorWeak, 0.2), (Cause.SupplyWeak, 0.2)),
            "The speed hunts with nobody on the belt.",
            "The speed is steady."
        ),
        [Symptom.ShutsOff] = (
            Chance.OfAFault(
                0.02,
                (Cause.ControllerLimit, 0.8),
                (Cause.SupplyWeak, 0.25),
                (Cause.MotorWeak, 0.15),
                (Cause.BeltAndDeckWorn, 0.15),
                (Cause.DeckDry, 0.12)
            ),
            "The controller shuts off under load.",
            "The controller does not shut off."
        ),
        [Symptom.LightsDim] = (
            Chance.OfAFault(0.04, (Cause.SupplyWeak, 0.8)),
            "The lights dim as the user lands.",
            "The lights stay."
        ),
        [Symptom.BeltRunsAway] = (
            Chance.OfAFault(0.005, (Cause.DriveOverrun, 0.92)),
            "Uphill the belt runs faster than set.",
            "Uphill the belt keeps its speed."
        ),
        [Symptom.CurledEdge] = (
            Chance.OfAFault(0.03, (Cause.BeltOffCentre, 0.4)),
            "An edge of the running belt is curled or frayed.",
            "The edges of the running belt are sound."
        ),
    };

    /// <summary>How often a symptom is there under each cause, and the sentence that says it is.</summary>
    internal static (Chance Chance, string There) At(Symptom symptom) => (Table[symptom].Chance, Table[symptom].There);

    internal static IEnumerable<Evidence> Of(VisitFacts facts) =>
        facts
            .Used<SymptomReading>()
            .GroupBy(s => s.Symptom)
            .Select(g => Table[g.Key].Chance.Seen(g.Any(s => s.Present), Table[g.Key].There, Table[g.Key].Absent));
}
