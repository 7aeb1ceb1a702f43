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

    internal static IEnumerable<(Symptom Symptom, double Chance)> Of(Cause cause) =>
        Table.Select(t => (t.Symptom, t.Often.Contains(cause) ? t.Chance : Stray));
}
