using TreadmillMech.Service.Events;
using TreadmillMech.Service.Review;

namespace TreadmillMech.Service.Causes;

/// <summary>What to do about a cause, and how grave it is.</summary>
/// <param name="Subject">What it is about.</param>
/// <param name="Severity">How much it weighs.</param>
/// <param name="Statement">What was found, one sentence.</param>
/// <param name="ForOwner">The same for the owner.</param>
/// <param name="Next">The step.</param>
/// <param name="AlsoBy">Limits that the step names.</param>
internal sealed record CauseAdvice(
    Subject Subject,
    Severity Severity,
    string Statement,
    string ForOwner,
    NextStep Next,
    params Threshold[] AlsoBy
)
{
    /// <summary>The advice; null where other findings give it, or there is nothing to do.</summary>
    internal static CauseAdvice? Of(VisitFacts facts, Cause cause) =>
        cause switch
        {
            Cause.PulleyLoose => new(
                Subject.DriveBelt,
                Severity.OutOfService,
                "A pulley seems loose on its shaft.",
                "A pulley of the drive seems loose; it must be looked at, and fastened, before anybody steps on.",
                new()
                {
                    Action =
                        "Take the machine out of service. Hood open, unplugged, try each pulley by hand on its shaft. Fasten or replace the pulley that is loose as the maker says, its set screw with it, and look along both pulleys for line.",
                    Expect = "A chalk line across shaft and pulley that stays whole under load.",
                    StopAt = "Stop at a worn shaft: that is for the maker's service.",
                    EffortMinutes = 30,
                    Cautions = [Cautions.Unplug, Cautions.StandStill],
                }
            ),
            Cause.RollerBearing => new(
                Subject.Rollers,
                Severity.Restrict,
                "A roller bearing is failing.",
                "A bearing of a roller is failing and must be replaced.",
                new()
                {
                    Action =
                        "Loosen the running belt, unplugged, turn both rollers by hand and feel which one is rough; replace that roller or its bearings.",
                    Expect =
                        "A roller that turns without rumble, and a pull of the empty belt as at the earlier visit.",
                    StopAt =
                        "Do not run on with a roller that grows hot: a bearing that seizes stops the belt under the feet.",
                    Undo = "Tighten the belt again by the turns that were taken off.",
                    EffortMinutes = 45,
                    Cautions = [Cautions.Unplug, Cautions.StandStill],
                }
            ),
            Cause.OverTightened => new(
                Subject.RunningBelt,
                Severity.Attend,
                "The running belt is tighter than it need be.",
                "The running belt is tighter than it need be and is being loosened in small steps.",
                new()
                {
                    Action =
                        $"Take {facts.Say.Bolts} back by {Words.Turns(facts.Options.TurnStep.Value, signed: false)}{facts.Say.Equally}, then repeat the slip test under {facts.Say.TestDemand}; go on so while it holds.{facts.Say.Sense(tighten: false)}",
                    Expect =
                        $"A margin that comes down to about {facts.Options.WantedMargin}, a cooler bearing, and a smaller pull of the empty belt.",
                    StopAt = "Stop at the first sign of slip, and give the last step back.",
                    Undo =
                        $"Tighten {facts.Say.Bolts} by {Words.Turns(facts.Options.TurnStep.Value, signed: false)} again.",
                    EffortMinutes = 10,
                    Cautions = [Cautions.StandStill, Cautions.Clear, Cautions.Key, Cautions.TestUser],
                },
                facts.Options.TurnStep,
                facts.Options.WantedMargin
            ),
            Cause.BoltsAtTheirEnd when !facts.Slip.ShowsNow && facts.Bolts.TurnHard && !facts.Bolts.ThreadAtItsEnd =>
                new(
                    Subject.RunningBelt,
                    Severity.Attend,
                    "A take-up bolt turns hard.",
                    "An adjusting bolt of the running belt is stuck and is being freed or replaced.",
                    NoMoreTurns.HardBolt(facts)
                ),
            Cause.BoltsAtTheirEnd when !facts.Slip.ShowsNow => new(
                Subject.RunningBelt,
                Severity.Attend,
                "The take-up bolts are at the end of their thread.",
                "The running belt cannot be tightened any further; a new one may be due.",
                NoMoreTurns.Thread(facts)
            ),
            Cause.MotorWeak => new(
                Subject.Motor,
                Severity.Attend,
                "The motor is weak or hot, or its brushes are worn.",
                "The motor needs to be looked at by a qualified person.",
                new()
                {
                    Action =
                        "Have a qualified person look at brushes and commutator and measure the winding cold; read voltage, current and speed at two unloaded points again.",
                    Expect =
                        "A motor constant near that of the plate, and brushes longer than the maker's least length.",
                    StopAt = "Stop at a winding that smells: a motor that was that hot has weaker magnets for good.",
                    EffortMinutes = 30,
                    Cautions = [Cautions.Unplug, Cautions.Electrical],
                }
            ),
            Cause.ControllerLimit => new(
                Subject.Motor,
                Severity.Attend,
                "The controller reaches its limit under the test demand.",
                "The drive reaches its limit under a heavy runner; what makes it work so hard is being looked for.",
                new()
                {
                    Action =
                        "Look for what asks for the current first: deck friction, a rough bearing, a demand beyond the machine. Raise no limit.",
                    Expect =
                        $"A motor current under load below {Words.Percent(facts.Options.AtLimit.Value)} of the controller's limit.",
                    StopAt = "Do not run on with a controller that shuts off: the belt stops under the feet.",
                    EffortMinutes = 15,
                    Cautions = [Cautions.Electrical, Cautions.TestUser],
                },
                facts.Options.AtLimit.InPercent()
            ),
            Cause.SupplyWeak => new(
                Subject.Supply,
                Severity.Attend,
                "The mains supply is weak: the socket's voltage falls under load.",
                "The electrical outlet needs to be looked at by a qualified person.",
                new()
                {
                    Action =
                        "Take out extension cords and other loads on the circuit, then have a qualified person look at plug, socket and cord. Fit no bigger breaker.",
                    Expect =
                        "A voltage under load within a few per cent of the unloaded one, and a plug as cool as the air.",
                    StopAt = "Stop at a warm plug or cord.",
                    EffortMinutes = 20,
                    Cautions = [Cautions.Electrical],
                }
            ),
            Cause.DriveOverrun => new(
                Subject.Motor,
                Severity.Restrict,
                "Uphill the person drives the belt, and this drive cannot hold it back.",
                "Uphill the belt may run faster than set; the incline is limited until the drive was looked at.",
                new()
                {
                    Action =
                        "Limit the incline for users of that mass until the maker's service has looked at the drive. Do not grease the deck further: less friction makes it worse.",
                    Expect = "At a smaller grade a belt that keeps the set speed with the user on it.",
                    StopAt = "Stop as soon as the belt runs faster than set.",
                    EffortMinutes = 15,
                    Cautions = [Cautions.Key, Cautions.TestUser, Cautions.Clear],
                }
            ),
            Cause.BeltAndDeckWorn when !facts.Friction.Serviced && !DeckRules.TriedByService(facts) => new(
                Subject.Deck,
                Severity.Attend,
                "Belt and deck look worn.",
                "Belt and board look worn and may have to be replaced together.",
                new()
                {
                    Action =
                        "Look at the underside of the belt and at the deck's foot zone together; replace belt and deck as a pair where they are glazed or worn through.",
                    Expect = $"Deck friction about {facts.Options.FrictionAfterService} with both new.",
                    StopAt = "Do not run on with a motor that grows hot or a fuse that trips; raise no limit.",
                    EffortMinutes = 90,
                    Cautions = [Cautions.Unplug, Cautions.StandStill],
                },
                facts.Options.FrictionAfterService
            ),
            Cause.DriveBeltSlack
            or Cause.DriveBeltGlazed
                when !facts.Slip.ShowsNow
                    && !facts.Slip.DriveBeltMended
                    && facts.DriveBeltLook is not (DriveBeltLook.Glazed or DriveBeltLook.Cracked) => new(
                Subject.DriveBelt,
                Severity.Attend,
                cause == Cause.DriveBeltSlack ? "The drive belt is slack." : "The drive belt is glazed or worn.",
                "The belt between motor and roller needs work or replacement.",
                new()
                {
                    Action =
                        cause == Cause.DriveBeltSlack
                        && facts.Machine.DriveBelt?.Tensioning is Tensioning.StretchFit or Tensioning.FixedCentres
                            ? "Replace the drive belt: this kind is replaced, not tensioned. Look at the pulleys for wear and line, and that the new belt is of the length that the maker names."
                        : cause == Cause.DriveBeltSlack
                            ? "Tension the drive belt by its kind, as the maker says, and pluck its span again."
                        : "Replace the drive belt, and look at the pulleys for wear and line.",
                    Expect = "No squeal, and a motor-to-roller ratio under load as unloaded.",
                    StopAt = "Stop at cracked or missing ribs, or a pulley that moves on its shaft.",
                    EffortMinutes = 30,
                    Cautions = [Cautions.Unplug, Cautions.StandStill],
                }
            ),
            _ => null,
        };
}
