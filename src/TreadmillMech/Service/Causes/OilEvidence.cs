using TreadmillMech.Service.Estimation;
using TreadmillMech.Service.Events;
using TreadmillMech.Service.Review;

namespace TreadmillMech.Service.Causes;

/// <summary>Lubricant where none may be. Chances: common practice, no source.</summary>
internal static class OilEvidence
{
    private static readonly Chance OnRoller = new(0.03, (Cause.OilOnDriveRoller, 0.96), (Cause.OverLubricated, 0.7));

    internal static readonly Chance OnTop = new(0.01, (Cause.OverLubricated, 0.93), (Cause.OilOnDriveRoller, 0.05));

    /// <summary>A dry deck is not wet; a worn one often is, of what was given it in vain.</summary>
    internal static readonly Chance Underneath = new(
        0.04,
        (Cause.OverLubricated, 0.8),
        (Cause.OilOnDriveRoller, 0.4),
        (Cause.DeckDry, 0.01),
        (Cause.BeltAndDeckWorn, 0.08)
    );

    /// <summary>Logarithm of the roller's friction from a locked pull.</summary>
    private static readonly Bell Grip = new(
        3,
        Math.Log(0.3),
        0.2,
        (Cause.OilOnDriveRoller, Math.Log(0.14), 0.25),
        (Cause.OverLubricated, Math.Log(0.18), 0.25)
    );

    internal static IEnumerable<Evidence> Of(VisitFacts facts)
    {
        foreach (WipeReading wipe in facts.Used<WipeReading>().DistinctBy(w => w.Place))
        {
            if (
                facts.Slip.SinceLubricant
                && wipe is { Place: WipedPlace.DriveRoller, Trace: WipedTrace.Dry or WipedTrace.Dust }
            )
            {
                // A roller that was dry before the lubricant went in tells nothing of it after.
                continue;
            }

            yield return wipe.Place switch
            {
                WipedPlace.DriveRoller => OnRoller.Seen(
                    wipe.Trace is WipedTrace.Oil or WipedTrace.Film,
                    "There is oil on the drive roller.",
                    "The drive roller is free of oil."
                ),
                WipedPlace.BeltTop => OnTop.Seen(
                    wipe.Trace is WipedTrace.Oil or WipedTrace.Film,
                    "There is oil on top of the running belt.",
                    "The top of the running belt is free of oil."
                ),
                _ => Underneath.Seen(
                    wipe.Trace == WipedTrace.Oil,
                    "The underside of the running belt is wet with oil.",
                    "The underside of the running belt is not wet."
                ),
            };
        }

        if (facts.RollerFriction.Is(out Estimate<double> grip))
        {
            yield return Grip.Read(
                Math.Log(grip.Value),
                grip.StandardUncertainty / grip.Value,
                $"Friction of belt on drive roller {new Figure("", grip.Value, "", grip.StandardUncertainty)}."
            );
        }
    }
}
