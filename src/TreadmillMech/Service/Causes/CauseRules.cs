using TreadmillMech.Service.Events;
using TreadmillMech.Service.Review;

namespace TreadmillMech.Service.Causes;

/// <summary>Findings from the ranking of causes, for those that no single reading settles.</summary>
internal static class CauseRules
{
    internal static IEnumerable<Finding> Of(VisitFacts facts, IReadOnlyList<RankedCause> ranking) =>
        ranking
            .Where(r => r.Probability >= facts.Options.LikelyCause.Value)
            .Select(r => Advice(facts, r))
            .OfType<Finding>()
            .Concat(Incline(facts));

    private static Finding? Advice(VisitFacts facts, RankedCause cause) =>
        cause.Cause switch
        {
            Cause.PulleyLoose => Make(
                facts,
                cause,
                Subject.DriveBelt,
                Severity.OutOfService,
                "A pulley is loose on its shaft.",
                new()
                {
                    Action =
                        "Take the machine out of service. Fasten or replace the pulley as the maker says, its set screw with it, and look along both pulleys for line.",
                    Expect = "A chalk line across shaft and pulley that stays whole under load.",
                    StopAt = "Stop at a worn shaft: that is for the maker's service.",
                    EffortMinutes = 30,
                    Cautions = [Cautions.Unplug, Cautions.StandStill],
                }
            ),
            Cause.RollerBearing => Make(
                facts,
                cause,
                Subject.Rollers,
                Severity.Restrict,
                "A roller bearing is failing.",
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
            Cause.OverTightened => Make(
                facts,
                cause,
                Subject.RunningBelt,
                Severity.Attend,
                "The running belt is tighter than it need be.",
                new()
                {
                    Action =
                        $"Take {facts.Say.Bolts} back by {Words.Turns(facts.Options.TurnStep.Value, signed: false)}{facts.Say.Equally}, then repeat the slip test under {facts.Say.TestDemand}; go on so while it holds.",
                    Expect =
                        $"A margin that comes down to about {facts.Options.WantedMargin}, a cooler bearing, and a smaller pull of the empty belt.",
                    StopAt = "Stop at the first sign of slip, and give the last step back.",
                    Undo =
                        $"Tighten {facts.Say.Bolts} by {Words.Turns(facts.Options.TurnStep.Value, signed: false)} again.",
                    EffortMinutes = 10,
                    Cautions = [Cautions.StandStill, Cautions.Clear, Cautions.Key, Cautions.TestUser],
                }
            ),
            Cause.BoltsAtTheirEnd when !facts.SlipsNow => Make(
                facts,
                cause,
                Subject.RunningBelt,
                Severity.Attend,
                "The take-up bolts are at the end of their thread, or seize.",
                new()
                {
                    Action =
                        "Do not tighten further. Measure the belt's marks or loop length; a belt stretched that far is replaced, and a bolt that seizes with it.",
                    Expect = "With a new belt, thread left for tightening and bolts that turn evenly.",
                    StopAt = "Do not lengthen the adjustment with spacers or longer bolts.",
                    EffortMinutes = 60,
                    Cautions = [Cautions.Unplug, Cautions.StandStill],
                }
            ),
            Cause.MotorWeak => Make(
                facts,
                cause,
                Subject.Motor,
                Severity.Attend,
                "The motor is weak or hot, or its brushes are worn.",
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
            Cause.ControllerLimit => Make(
                facts,
                cause,
                Subject.Motor,
                Severity.Attend,
                "The controller reaches its limit under the test demand.",
                new()
                {
                    Action =
                        "Look for what asks for the current first: deck friction, a rough bearing, a demand beyond the machine. Raise no limit.",
                    Expect =
                        $"A motor current under load below {Words.Percent(facts.Options.AtLimit.Value)} of the controller's limit.",
                    StopAt = "Do not run on with a controller that shuts off: the belt stops under the feet.",
                    EffortMinutes = 15,
                    Cautions = [Cautions.Electrical, Cautions.TestUser],
                }
            ),
            Cause.SupplyWeak => Make(
                facts,
                cause,
                Subject.Supply,
                PlugIsHot(facts) ? Severity.OutOfService : Severity.Attend,
                PlugIsHot(facts)
                    ? "The mains plug grows hot."
                    : "The mains supply is weak: the socket's voltage falls under load.",
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
            Cause.DriveOverrun => Make(
                facts,
                cause,
                Subject.Motor,
                Severity.Restrict,
                "Uphill the person drives the belt, and this drive cannot hold it back.",
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
            Cause.BeltAndDeckWorn when !facts.Friction.Serviced => Make(
                facts,
                cause,
                Subject.Deck,
                Severity.Attend,
                "Belt and deck look worn.",
                new()
                {
                    Action =
                        "Look at the underside of the belt and at the deck's foot zone together; replace belt and deck as a pair where they are glazed or worn through.",
                    Expect = $"Deck friction about {facts.Options.FrictionAfterService} with both new.",
                    StopAt = "Do not run on with a motor that grows hot or a fuse that trips; raise no limit.",
                    EffortMinutes = 90,
                    Cautions = [Cautions.Unplug, Cautions.StandStill],
                }
            ),
            Cause.DriveBeltSlack
            or Cause.DriveBeltGlazed
                when !facts.SlipsNow && facts.DriveBeltLook is not (DriveBeltLook.Glazed or DriveBeltLook.Cracked) =>
                Make(
                    facts,
                    cause,
                    Subject.DriveBelt,
                    Severity.Attend,
                    cause.Cause == Cause.DriveBeltSlack
                        ? "The drive belt is slack."
                        : "The drive belt is glazed or worn.",
                    new()
                    {
                        Action =
                            cause.Cause == Cause.DriveBeltSlack
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

    private static bool PlugIsHot(VisitFacts facts) =>
        facts
            .Used<TemperatureReading>()
            .Any(t =>
                t.Place == WarmPlace.MainsPlug
                && Si.Celsius.ToSi(t.Temperature) - Si.Celsius.ToSi(t.Air) > facts.Options.HotPlug.Value
            );

    private static Finding Make(
        VisitFacts facts,
        RankedCause cause,
        Subject subject,
        Severity severity,
        string statement,
        NextStep next
    ) =>
        new()
        {
            Subject = subject,
            Severity = severity,
            Statement = statement,
            Number = new("probability", 100 * cause.Probability, "%"),
            Limit = facts.Options.LikelyCause.InPercent(),
            For = cause.For,
            Against = cause.Against,
            Next = next,
        };

    private static IEnumerable<Finding> Incline(VisitFacts facts)
    {
        if (facts.Used<InclineReading>().LastOrDefault() is not { } reading)
        {
            yield break;
        }

        double off = Si.Ratio.ToSi(reading.Display) - Si.Ratio.ToSi(reading.Measured);
        if (Math.Abs(off) > facts.Options.InclineError.Value)
        {
            yield return new()
            {
                Subject = Subject.Speed,
                Severity = Severity.Attend,
                Statement = "The displayed grade is not that of the deck.",
                Number = new("error of the displayed grade", 100 * off, "%"),
                Limit = facts.Options.InclineError.InPercent(),
                Next = new()
                {
                    Action = "Level the frame, then set the displayed grade anew by the maker's manual.",
                    Expect = $"Display and deck within {facts.Options.InclineError.InPercent()}.",
                    StopAt =
                        "Keep hands and feet from under the deck while it moves; until then nobody trains by the displayed grade.",
                    EffortMinutes = 15,
                    Cautions = [Cautions.Clear, Cautions.Key],
                },
            };
        }
    }
}
