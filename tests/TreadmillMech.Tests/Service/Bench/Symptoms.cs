using TreadmillMech.Service;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Tests.Service.Bench;

/// <summary>How often each symptom shows on the bench.</summary>
internal static class Symptoms
{
    private const double Stray = 0.02;

    private static readonly (Symptom Symptom, Cause[] Often, double Chance)[] Table =
    [
        (Symptom.HighSqueal, [Cause.DriveBeltSlack, Cause.DriveBeltGlazed], 0.7),
        (Symptom.Rumble, [Cause.RollerBearing], 0.9),
        (Symptom.KnockEachTurn, [Cause.DriveBeltCracked, Cause.PulleyLoose], 0.5),
        (Symptom.HotMotor, [Cause.MotorWeak], 0.7),
        (Symptom.GlazedUnderside, [Cause.BeltAndDeckWorn], 0.8),
        (Symptom.WornDeck, [Cause.BeltAndDeckWorn], 0.7),
        (Symptom.PulleyMoves, [Cause.PulleyLoose], 0.9),
        (Symptom.ShutsOff, [Cause.ControllerLimit], 0.8),
        (Symptom.LightsDim, [Cause.SupplyWeak], 0.8),
        (Symptom.BeltRunsAway, [Cause.DriveOverrun], 0.9),
        (Symptom.CurledEdge, [Cause.BeltOffCentre], 0.4),
    ];

    internal static IEnumerable<(Symptom Symptom, double Chance, string? Proposal)> Of(Cause cause) =>
        Table.Select(t => (t.Symptom, t.Often.Contains(cause) ? t.Chance : Stray, Proposal(t.Symptom)));

    /// <summary>Words of the sheet's proposal to look or listen for it; null where it proposes no such thing.</summary>
    private static string? Proposal(Symptom symptom) =>
        symptom switch
        {
            Symptom.HighSqueal => "It squeals high",
            Symptom.Rumble => "A roller rumbles",
            Symptom.KnockEachTurn => "It knocks once",
            Symptom.PulleyMoves => "A pulley shifts",
            Symptom.GlazedUnderside => "is glazed",
            Symptom.CurledEdge => "is curled or frayed",
            _ => null,
        };
}
