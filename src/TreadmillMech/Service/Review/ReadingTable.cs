using TreadmillMech.Service.Estimation;
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
            .Concat(Display(facts))
            .Concat(Tracking(facts))
            .Concat(Electrical(facts));

    private static IEnumerable<ReadingRow> Tension(VisitFacts facts)
    {
        if (!facts.Tension.Is(out TensionEstimate? tension))
        {
            yield break;
        }

        yield return new(
            "Strand tension at rest, from all lifts",
            "N",
            facts.TensionAsFound.Is(out Figure? found) ? found : null,
            facts.TensionNow.Is(out Figure? now) ? now : null,
            null
        );
        if (tension.StiffnessObserved)
        {
            Figure stiffness = new(
                "relaxed force per width at 1 %",
                Si.ForcePerLength.ToSi(tension.RelaxedForcePerWidth.Value) / 1000,
                "N/mm",
                Si.ForcePerLength.ToSi(tension.RelaxedForcePerWidth.StandardUncertainty) / 1000
            );
            yield return new("Belt's relaxed force per width at 1 %", "N/mm", stiffness, stiffness, null);
        }
    }

    private static IEnumerable<ReadingRow> Friction(VisitFacts facts)
    {
        Figure? found = facts.Friction.AsFound.Is(out FrictionFact? asFound) ? asFound.Figure : null;
        Figure? left = facts.Friction.AsLeft.Is(out FrictionFact? asLeft) ? asLeft.Figure : null;
        if (found is not null || left is not null)
        {
            yield return new("Deck friction", "", found, left, facts.Options.HighFriction);
        }
    }

    private static IEnumerable<ReadingRow> Locked(VisitFacts facts)
    {
        if (facts.LockedPull is not { } reading)
        {
            yield break;
        }

        string what = reading.Slid switch
        {
            SlidContact.RunningBelt => "the running belt slid",
            SlidContact.DriveBelt => $"the {facts.Say.Drive} slid",
            _ => "nothing slid",
        };
        Figure pull = new("pull", Si.Force.ToSi(reading.Pull), "N");
        yield return new($"Locked pull at which {what}", "N", pull, pull, null);
        if (facts.RollerFriction.Is(out Estimate<double> friction))
        {
            Figure grip = new("friction", friction.Value, "", friction.StandardUncertainty);
            yield return new("Friction of belt on drive roller", "", grip, grip, null);
        }
    }

    private static IEnumerable<ReadingRow> Display(VisitFacts facts)
    {
        if (SpeedRules.DisplayError(facts) is { } error)
        {
            yield return new("Error of the displayed speed", "%", error, error, facts.Options.DisplayError.InPercent());
        }
    }

    private static IEnumerable<ReadingRow> Slips(VisitFacts facts)
    {
        SlipLocation? found = facts.SlipAsFound.Is(out SlipLocation? a) ? a : null;
        SlipLocation? left = facts.SlipNow.Is(out SlipLocation? b) ? b : null;
        (string Name, Figure? Found, Figure? Left)[] rows =
        [
            ("Slip of the running belt", Percent(found?.RunningBelt), Percent(left?.RunningBelt)),
            ($"Slip of the {facts.Say.Drive}", Percent(found?.DriveBelt), Percent(left?.DriveBelt)),
            ("Slip of both together", Percent(found?.Whole), Percent(left?.Whole)),
        ];
        return rows.Where(r => r.Found is not null || r.Left is not null)
            .Select(r => new ReadingRow(r.Name, "%", r.Found, r.Left, facts.Options.Slip.InPercent()));
    }

    private static IEnumerable<ReadingRow> Tracking(VisitFacts facts)
    {
        if (facts.Tracking is not null || facts.TrackingAsFound is not null)
        {
            yield return new(
                "Drift to the right for each pass",
                "mm",
                Drift(facts.TrackingAsFound),
                Drift(facts.Tracking),
                TrackingRules.Straight(facts.Options)
            );
        }
    }

    private static IEnumerable<ReadingRow> Electrical(VisitFacts facts)
    {
        List<MotorCurrentReading> motor =
        [
            .. facts.Used<MotorCurrentReading>().Where(r => r.State == LoadState.Loaded),
        ];
        if (motor.Count > 0)
        {
            yield return new(
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
            yield return new("Mains power under load", "W", Watts(power[0].Power), Watts(power[^1].Power), null);
        }

        List<MainsCurrentReading> mains =
        [
            .. facts.Used<MainsCurrentReading>().Where(r => r.State == LoadState.Loaded),
        ];
        if (mains.Count > 0)
        {
            yield return new(
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

    private static Figure? Drift(TrackingReading? reading) =>
        reading is null ? null : new("drift", 1000 * Si.Length.ToSi(reading.DriftToRight) / reading.Passes, "mm");

    private static Figure? Percent(Answer<Estimate<double>>? slip) =>
        slip is { } answer && answer.Is(out Estimate<double> found)
            ? new("slip", 100 * found.Value, "%", 100 * found.StandardUncertainty)
            : null;
}
