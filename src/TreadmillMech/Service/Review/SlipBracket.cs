using System.Collections.Immutable;
using TreadmillMech.Service.Estimation.Joint;
using UnitsNet;

namespace TreadmillMech.Service.Review;

/// <summary>
/// The margin from slip tests on the ladder of turns: slipping at one tension and holding at the next, the belt's limit
/// for this demand lies between, whatever the friction.
/// </summary>
internal static class SlipBracket
{
    /// <summary>The ladder from now, with what the readings tell of tension and margin at each rung.</summary>
    internal static ImmutableArray<LadderStep> Ladder(VisitFacts facts, double turns) =>
        InOneForm([
            .. QuarterTurns
                .Ladder(facts.Machine, facts.Visit.TestDemand, turns, facts.Options)
                .Select(rung =>
                    rung with
                    {
                        Tension = facts.TensionAfter(rung.Turns) is { Found: true } told ? told : rung.Tension,
                        Margin = facts.MarginAfter(rung.Turns) is { Found: true } margin ? margin : rung.Margin,
                    }
                ),
        ]);

    /// <summary>Where one interval of the ladder is told from and to, all are: rungs are compared with each other.</summary>
    private static ImmutableArray<LadderStep> InOneForm(ImmutableArray<LadderStep> rungs)
    {
        bool bent = rungs.Any(static r => FromAndTo(r.Tension) || FromAndTo(r.Margin));
        return bent
            ? [.. rungs.Select(static r => r with { Tension = Ends(r.Tension), Margin = Ends(r.Margin) })]
            : rungs;
    }

    private static bool FromAndTo(Answer<Figure> told) => told.Is(out Figure? figure) && figure.Lower is not null;

    private static Answer<Figure> Ends(Answer<Figure> told) =>
        told.Then(static figure =>
            figure is { Lower: null, StandardUncertainty: { } uncertainty }
                ? figure with
                {
                    Lower = Math.Max(0, figure.Value - (VisitEstimate.Factor95 * uncertainty)),
                    Upper = figure.Value + (VisitEstimate.Factor95 * uncertainty),
                }
                : figure
        );

    /// <summary>Margin at a number of turns of this visit; null where the tests or the tension do not tell.</summary>
    internal static Figure? Margin(VisitFacts facts, double turns)
    {
        double[] slipped = [.. facts.Slip.Tests.Where(t => t.Slipped).Select(t => t.Turns)];
        double[] held = [.. facts.Slip.Tests.Where(t => !t.Slipped).Select(t => t.Turns)];
        if (slipped.Length == 0 || held.Length == 0 || slipped.Max() >= held.Min())
        {
            return null;
        }

        if (
            Pressing(facts, slipped.Max()) is not { } low
            || Pressing(facts, held.Min()) is not { } high
            || Pressing(facts, turns) is not { } here
            || low <= 0
        )
        {
            return null;
        }

        double least = here / high;
        double most = here / low;
        return new("margin", 0.5 * (least + most), "", (most - least) / Math.Sqrt(12));
    }

    /// <summary>Strand tension above its centrifugal part at a number of turns of this visit [N].</summary>
    private static double? Pressing(VisitFacts facts, double turns)
    {
        if (facts.MachineAt(turns, turns) is not { } machine)
        {
            return null;
        }

        OperatingPoint point = machine.At(facts.Visit.TestDemand);
        return point.RestTension.Is(out Force tension)
            ? Si.Force.ToSi(tension) - point.Numbers.CentrifugalTension
            : null;
    }
}
