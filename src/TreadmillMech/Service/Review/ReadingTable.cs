using TreadmillMech.Service.Estimation;
using TreadmillMech.Service.Estimation.Joint;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Service.Review;

/// <summary>The table of readings as found and as left.</summary>
internal static class ReadingTable
{
    internal static IEnumerable<ReadingRow> Of(VisitFacts facts) =>
        Tension(facts)
            .Concat(Friction(facts))
            .Concat(Locked(facts))
            .Concat(Slips(facts))
            .Concat(Margins(facts))
            .Concat(DriveBelt(facts))
            .Concat(Display(facts))
            .Concat(Tracking(facts))
            .Concat(Rolling(facts))
            .Concat(Electrical(facts));

    private static IEnumerable<ReadingRow> Tension(VisitFacts facts)
    {
        (Figure? found, Figure? now) = Bent(
            facts,
            (Told(facts.TensionAsFound), VisitQuantity.RestTensionAsFound),
            (Told(facts.TensionNow), VisitQuantity.RestTensionNow)
        );
        if (facts.Lifts.Count > 0 && (found is not null || now is not null))
        {
            yield return new(ReadingKind.RestTension, "Strand tension at rest", "N", found, now, null);
        }

        if (Stiffness(facts) is { } perWidth)
        {
            Figure? stiffness = facts.Joint.Bent(
                new(
                    "relaxed force per width at 1 %",
                    Si.ForcePerLength.ToSi(perWidth.Value) / 1000,
                    "N/mm",
                    Si.ForcePerLength.ToSi(perWidth.StandardUncertainty) / 1000
                ),
                VisitQuantity.RelaxedForcePerWidth,
                ofSi: 1000
            );
            yield return new(
                ReadingKind.BeltStiffness,
                "Belt's relaxed force per width at 1 %",
                "N/mm",
                stiffness,
                stiffness,
                null
            );
        }
    }

    /// <summary>As found and as left, with the ends of their intervals where these are bent.</summary>
    private static (Figure? Found, Figure? Left) Bent(
        VisitFacts facts,
        (Figure? Figure, VisitQuantity Of) found,
        (Figure? Figure, VisitQuantity Of) left
    )
    {
        Figure? bent = facts.Joint.Bent(found.Figure, found.Of);
        return (bent, left.Figure == found.Figure ? bent : facts.Joint.Bent(left.Figure, left.Of));
    }

    /// <summary>Stiffness by the readings; null where they do not tell, or it was given.</summary>
    private static Estimate<ForcePerLength>? Stiffness(VisitFacts facts) =>
        facts.Lifts.Count == 0 ? null
        : facts.Joint.Agreed is { } joint
            ? joint.RelaxedForcePerWidth.Is(out Estimate<ForcePerLength> told) ? told
                : null
        : facts.Tension.Is(out TensionEstimate? lifted) && lifted.StiffnessObserved ? lifted.RelaxedForcePerWidth
        : null;

    private static IEnumerable<ReadingRow> Friction(VisitFacts facts)
    {
        (Figure? found, Figure? left) = Bent(
            facts,
            (
                facts.FrictionAsFound.Is(out FrictionFact? asFound) ? asFound.Figure : null,
                VisitQuantity.DeckFrictionAsFound
            ),
            (facts.FrictionAsLeft.Is(out FrictionFact? asLeft) ? asLeft.Figure : null, VisitQuantity.DeckFrictionNow)
        );
        if (found is not null || left is not null)
        {
            yield return new(ReadingKind.DeckFriction, "Deck friction", "", found, left, facts.Options.HighFriction);
        }
    }

    private static IEnumerable<ReadingRow> Locked(VisitFacts facts)
    {
        if (facts.LockedPull is { } reading)
        {
            string what = reading.Slid switch
            {
                SlidContact.RunningBelt => "the running belt slid",
                SlidContact.DriveBelt => $"the {facts.Say.Drive} slid",
                _ => "nothing slid",
            };
            Figure pull = new("pull", Si.Force.ToSi(reading.Pull), "N");
            yield return new(ReadingKind.LockedPull, $"Locked pull at which {what}", "N", pull, pull, null);
        }

        Figure? found = null;
        Figure? left = null;
        if (facts.Joint.Agreed is { } joint && facts.Visit.Machine.DriveRoller.Friction is null)
        {
            (found, left) = Bent(
                facts,
                (Plain("friction", joint.DriveRollerFrictionAsFound), VisitQuantity.DriveRollerFrictionAsFound),
                (Plain("friction", joint.DriveRollerFrictionNow), VisitQuantity.DriveRollerFrictionNow)
            );
        }
        else if (facts.Joint.Agreed is null && facts.RollerFriction.Is(out Estimate<double> friction))
        {
            found = left = new("friction", friction.Value, "", friction.StandardUncertainty);
        }

        if (found is not null || left is not null)
        {
            yield return new(ReadingKind.RollerFriction, "Friction of belt on drive roller", "", found, left, null);
        }
    }

    private static IEnumerable<ReadingRow> Margins(VisitFacts facts)
    {
        if (facts.Joint.Agreed is null || !facts.Used<Reading>().Any())
        {
            yield break;
        }

        if (Told(facts.Margin) is { StandardUncertainty: not null } belt)
        {
            yield return new(
                ReadingKind.BeltMargin,
                "Margin of the running belt",
                "",
                null,
                belt,
                facts.Options.WantedMargin
            );
        }

        if (Told(facts.DriveBeltMargin) is { StandardUncertainty: not null } drive)
        {
            yield return new(ReadingKind.DriveBeltMargin, $"Margin of the {facts.Say.Drive}", "", null, drive, null);
        }
    }

    private static IEnumerable<ReadingRow> DriveBelt(VisitFacts facts)
    {
        if (
            facts.Joint.Agreed is not { } joint
            || !facts.Used<Reading>().Any(r => r is SpanFrequencyReading or LockedPullReading or SpeedReading)
            || facts.Visit.Machine.DriveBelt is not { } belt
        )
        {
            yield break;
        }

        (Figure? found, Figure? left) = Bent(
            facts,
            (Newtons(joint.DriveBeltTensionAsFound), VisitQuantity.DriveBeltTensionAsFound),
            (Newtons(joint.DriveBeltTensionNow), VisitQuantity.DriveBeltTensionNow)
        );
        if (found is not null || left is not null)
        {
            yield return new(
                ReadingKind.DriveBeltTension,
                "Strand tension of the drive belt",
                "N",
                found,
                left,
                belt.Tension is { } stated
                    ? new("tension stated for it", Si.Force.ToSi(stated), "N", "the machine as described")
                    : null
            );
        }
    }

    private static IEnumerable<ReadingRow> Display(VisitFacts facts)
    {
        if (SpeedRules.DisplayError(facts) is { } error)
        {
            yield return new(
                ReadingKind.DisplayError,
                "Error of the displayed speed",
                "%",
                error,
                error,
                facts.Options.DisplayError.InPercent()
            );
        }
    }

    private static IEnumerable<ReadingRow> Slips(VisitFacts facts)
    {
        SlipLocation? found = facts.Slip.AsFound.Is(out SlipLocation? a) ? a : null;
        SlipLocation? left = facts.Slip.Now.Is(out SlipLocation? b) ? b : null;
        (ReadingKind Kind, string Name, Figure? Found, Figure? Left)[] rows =
        [
            (ReadingKind.BeltSlip, "Slip of the running belt", Percent(found?.RunningBelt), Percent(left?.RunningBelt)),
            (
                ReadingKind.DriveSlip,
                $"Slip of the {facts.Say.Drive}",
                Percent(found?.DriveBelt),
                Percent(left?.DriveBelt)
            ),
            (ReadingKind.WholeSlip, "Slip of both together", Percent(found?.Whole), Percent(left?.Whole)),
        ];
        return rows.Where(r => r.Found is not null || r.Left is not null)
            .Select(r => new ReadingRow(r.Kind, r.Name, "%", r.Found, r.Left, facts.Options.Slip.InPercent()));
    }

    private static IEnumerable<ReadingRow> Tracking(VisitFacts facts)
    {
        if (facts.Tracking.Empty is not null || facts.Tracking.AsFound is not null)
        {
            yield return new(
                ReadingKind.Drift,
                "Drift to the right for each pass",
                "mm",
                Drift(facts.Tracking.AsFound),
                Drift(facts.Tracking.Empty),
                TrackingRules.Straight(facts.Options)
            );
        }
    }

    /// <summary>What it takes to keep the empty belt moving, and how it comes to rest.</summary>
    private static IEnumerable<ReadingRow> Rolling(VisitFacts facts)
    {
        if (
            facts.Joint.Agreed is { } joint
            && facts.Used<Reading>().Any(r => r is PullReading or MotorCurrentReading or MainsPowerReading)
            && facts.Joint.Bent(Newtons(joint.NoLoadPull), VisitQuantity.NoLoadPull) is { } pull
        )
        {
            yield return new(ReadingKind.NoLoadPull, "Pull of the empty belt, motor counted in", "N", null, pull, null);
        }

        List<CoastDownReading> coasts = [.. facts.Used<CoastDownReading>()];
        if (coasts.Count > 0)
        {
            EarlierVisit? before = facts.Visit.Earlier.LastOrDefault(static e => e.Slowing is not null);
            yield return new(
                ReadingKind.Slowing,
                "Slowing of the empty belt",
                "m/s2",
                Slowing(coasts[0], facts.Options),
                Slowing(coasts[^1], facts.Options),
                before is { Slowing: { } slowing }
                    ? new("slowing as left before", Si.Acceleration.ToSi(slowing), "m/s2", "the earlier visit")
                    : null
            );
        }
    }

    private static Figure Slowing(CoastDownReading coast, VisitOptions options)
    {
        double slowing = Si.Speed.ToSi(coast.From) / Si.Duration.ToSi(coast.Time);
        double own = coast.RelativeUncertainty is { } stated ? Si.Ratio.ToSi(stated) : options.CoastDown.Value;
        return new("slowing", slowing, "m/s2", own * slowing);
    }

    private static IEnumerable<ReadingRow> Electrical(VisitFacts facts)
    {
        if (
            facts.Joint.Agreed is { } joint
            && facts.Used<MotorCurrentReading>().Any(r => r.Voltage is not null)
            && joint.MotorConstant.Is(out Estimate<MotorConstant> constant)
        )
        {
            Figure? told = facts.Joint.Bent(
                new(
                    "motor constant",
                    constant.Value.VoltSecondsPerRadian,
                    "V s/rad",
                    constant.StandardUncertainty.VoltSecondsPerRadian
                ),
                VisitQuantity.MotorConstant
            );
            yield return new(
                ReadingKind.MotorConstant,
                "Motor constant",
                "V s/rad",
                told,
                told,
                facts.Visit.Machine.Motor?.Constant is { } plate
                    ? new("constant of the plate", plate.VoltSecondsPerRadian, "V s/rad", "the machine as described")
                    : null
            );
        }

        List<MotorCurrentReading> motor =
        [
            .. facts.Used<MotorCurrentReading>().Where(r => r.State == LoadState.Loaded),
        ];
        if (motor.Count > 0)
        {
            yield return new(
                ReadingKind.MotorCurrent,
                "Motor current under load",
                "A",
                Amperes(motor[0].Current),
                Amperes(motor[^1].Current),
                null
            );
        }

        List<MainsPowerReading> power = [.. facts.Used<MainsPowerReading>().Where(r => r.State == LoadState.Loaded)];
        if (power.Count > 0)
        {
            yield return new(
                ReadingKind.MainsPower,
                "Mains power under load",
                "W",
                Watts(power[0].Power),
                Watts(power[^1].Power),
                null
            );
        }

        List<MainsCurrentReading> mains =
        [
            .. facts.Used<MainsCurrentReading>().Where(r => r.State == LoadState.Loaded),
        ];
        if (mains.Count > 0)
        {
            yield return new(
                ReadingKind.MainsCurrent,
                "Mains current under load",
                "A",
                Amperes(mains[0].Current),
                Amperes(mains[^1].Current),
                LimitRules.LastingLoad(facts)
            );
        }
    }

    private static Figure Amperes(ElectricCurrent current) => new("current", Si.Current.ToSi(current), "A");

    private static Figure Watts(Power power) => new("power", Si.Power.ToSi(power), "W");

    private static Figure? Newtons(Answer<Estimate<Force>> answer) =>
        answer.Is(out Estimate<Force> told)
            ? new("force", Si.Force.ToSi(told.Value), "N", Si.Force.ToSi(told.StandardUncertainty))
            : null;

    private static Figure? Plain(string name, Answer<Estimate<double>> answer) =>
        answer.Is(out Estimate<double> told) ? new(name, told.Value, "", told.StandardUncertainty) : null;

    private static Figure? Told(Answer<Figure> answer) => answer.Is(out Figure? figure) ? figure : null;

    private static Figure? Drift(TrackingReading? reading) =>
        reading is null ? null : new("drift", 1000 * reading.ForEachPass, "mm");

    private static Figure? Percent(Answer<Estimate<double>>? slip) =>
        slip is { } answer && answer.Is(out Estimate<double> found)
            ? new("slip", 100 * found.Value, "%", 100 * found.StandardUncertainty)
            : null;
}
