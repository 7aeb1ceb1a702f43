using TreadmillMech.Service.Estimation;
using UnitsNet;

namespace TreadmillMech.Service.Review;

/// <summary>The table of readings as found and as left.</summary>
internal static class ReadingTable
{
    internal static IEnumerable<ReadingRow> Of(VisitFacts facts)
    {
        if (facts.Tension.Is(out TensionEstimate? tension))
        {
            Figure found = new(
                "strand tension",
                Si.Force.ToSi(tension.RestTension.Value),
                "N",
                Si.Force.ToSi(tension.RestTension.StandardUncertainty)
            );
            Figure? left =
                facts.Turns.Equals(0) ? found
                : facts.Point.RestTension.Is(out Force now) ? new("strand tension", Si.Force.ToSi(now), "N")
                : null;
            yield return new("Strand tension at rest", "N", found, left, null);
            double perMillimetre = Si.ForcePerLength.ToSi(tension.RelaxedForcePerWidth.Value) / 1000;
            double spread = Si.ForcePerLength.ToSi(tension.RelaxedForcePerWidth.StandardUncertainty) / 1000;
            if (tension.StiffnessObserved)
            {
                Figure stiffness = new("relaxed force per width at 1 %", perMillimetre, "N/mm", spread);
                yield return new("Belt's relaxed force per width at 1 %", "N/mm", stiffness, stiffness, null);
            }
        }

        Figure? friction = facts.Friction.AsFound.Is(out FrictionFact? asFound) ? asFound.Figure : null;
        Figure? frictionLeft = facts.Friction.AsLeft.Is(out FrictionFact? asLeft) ? asLeft.Figure : null;
        if (friction is not null || frictionLeft is not null)
        {
            yield return new("Deck friction", "", friction, frictionLeft, facts.Options.HighFriction);
        }

        foreach (ReadingRow row in Slips(facts))
        {
            yield return row;
        }

        if (facts.Tracking is { } tracking)
        {
            Figure drift = new("drift", 1000 * Si.Length.ToSi(tracking.DriftToRight) / tracking.Passes, "mm");
            yield return new("Drift to the right for each pass", "mm", null, drift, null);
        }
    }

    private static IEnumerable<ReadingRow> Slips(VisitFacts facts)
    {
        SlipLocation? found = facts.SlipAsFound.Is(out SlipLocation? a) ? a : null;
        SlipLocation? left = facts.SlipNow.Is(out SlipLocation? b) ? b : null;
        (string Name, Figure? Found, Figure? Left)[] rows =
        [
            ("Slip of the running belt", Percent(found?.RunningBelt), Percent(left?.RunningBelt)),
            ("Slip of the drive belt", Percent(found?.DriveBelt), Percent(left?.DriveBelt)),
            ("Slip of both together", Percent(found?.Whole), Percent(left?.Whole)),
        ];
        return rows.Where(r => r.Found is not null || r.Left is not null)
            .Select(r => new ReadingRow(r.Name, "%", r.Found, r.Left, facts.Options.Slip.InPercent()));
    }

    private static Figure? Percent(Answer<Estimate<double>>? slip) =>
        slip is { } answer && answer.Is(out Estimate<double> found)
            ? new("slip", 100 * found.Value, "%", 100 * found.StandardUncertainty)
            : null;
}
