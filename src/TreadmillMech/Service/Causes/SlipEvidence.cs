using TreadmillMech.Service.Estimation;
using TreadmillMech.Service.Events;
using TreadmillMech.Service.Review;

namespace TreadmillMech.Service.Causes;

/// <summary>Whether it gives way, where the speeds put it, and what cured it. Chances: common practice, no source.</summary>
internal static class SlipEvidence
{
    internal static readonly Chance GivesWay = new(
        0.02,
        (Cause.RunningBeltSlack, 0.9),
        (Cause.OilOnDriveRoller, 0.7),
        (Cause.BoltsAtTheirEnd, 0.8),
        (Cause.DriveBeltSlack, 0.85),
        (Cause.DriveBeltGlazed, 0.85),
        (Cause.DriveBeltCracked, 0.3),
        (Cause.PulleyLoose, 0.95),
        (Cause.OverLubricated, 0.6),
        (Cause.UserBeyondPlate, 0.4),
        (Cause.ControllerLimit, 0.15),
        (Cause.SupplyWeak, 0.1),
        (Cause.MotorWeak, 0.1),
        (Cause.BeltAndDeckWorn, 0.05),
        (Cause.WrongReading, 0.1)
    );

    private static readonly Slipping Belt = new(
        new(
            0.01,
            (Cause.RunningBeltSlack, 0.85),
            (Cause.OilOnDriveRoller, 0.7),
            (Cause.BoltsAtTheirEnd, 0.85),
            (Cause.OverLubricated, 0.4),
            (Cause.UserBeyondPlate, 0.3),
            (Cause.WrongReading, 0.05)
        ),
        creep: 0.003
    );

    private static readonly Slipping Drive = new(
        new(
            0.01,
            (Cause.DriveBeltSlack, 0.85),
            (Cause.DriveBeltGlazed, 0.85),
            (Cause.DriveBeltCracked, 0.3),
            (Cause.PulleyLoose, 0.95),
            (Cause.WrongReading, 0.05)
        ),
        creep: 0.002
    );

    /// <summary>Held before lubricant went in, and slipped after it: lubricant is what changed.</summary>
    private static readonly Chance SinceLubricant = new(
        0.03,
        (Cause.OilOnDriveRoller, 0.6),
        (Cause.OverLubricated, 0.6),
        (Cause.WrongReading, 0.1)
    );

    /// <summary>
    /// Of a machine that gives way, what slides first in a locked pull is the contact that gives way: what slides there at
    /// a machine that holds tells only which of two sound contacts is the weaker.
    /// </summary>
    private static readonly Chance DriveSlidFirst = new(
        0.5,
        (Cause.DriveBeltSlack, 0.95),
        (Cause.DriveBeltGlazed, 0.95),
        (Cause.DriveBeltCracked, 0.8),
        (Cause.PulleyLoose, 0.8),
        (Cause.RunningBeltSlack, 0.05),
        (Cause.BoltsAtTheirEnd, 0.05),
        (Cause.OilOnDriveRoller, 0.05),
        (Cause.OverLubricated, 0.1)
    );

    /// <summary>More tension makes up for an oily roller as well, for as long as the oil does not spread.</summary>
    private static readonly Chance CuredByTurns = new(
        0.03,
        (Cause.RunningBeltSlack, 0.9),
        (Cause.OilOnDriveRoller, 0.4),
        (Cause.BoltsAtTheirEnd, 0.3),
        (Cause.UserBeyondPlate, 0.4)
    );

    private static readonly Chance CuredByCleaning = new(
        0.03,
        (Cause.OilOnDriveRoller, 0.93),
        (Cause.OverLubricated, 0.4)
    );

    private static readonly Chance CuredByDriveBelt = new(
        0.02,
        (Cause.DriveBeltSlack, 0.93),
        (Cause.DriveBeltGlazed, 0.9),
        (Cause.DriveBeltCracked, 0.9),
        (Cause.PulleyLoose, 0.3)
    );

    internal static IEnumerable<Evidence> Of(VisitFacts facts)
    {
        if (facts.Slip.Tests.Count > 0)
        {
            // A belt that was loosened until it slips tells nothing of the belt as found.
            yield return GivesWay.Seen(
                facts.Slip.Tests.Any(t => t.Slipped && t.Turns >= facts.Slip.Tests[0].Turns - 1e-9),
                "It gives way under the test demand.",
                "It does not give way under the test demand."
            );
        }

        if (facts.Slip.SinceLubricant)
        {
            yield return SinceLubricant.Seen(
                there: true,
                "It held before the deck was lubricated, and gives way since.",
                "It gave way before the deck was lubricated."
            );
        }

        if (
            facts is { Slip.SlippedLast: true, LockedPull: { Slid: not SlidContact.Nothing } pulled }
            && !facts.Used<DriveBeltAction>().Any()
        )
        {
            yield return DriveSlidFirst.Seen(
                pulled.Slid == SlidContact.DriveBelt,
                $"In the locked pull the {facts.Say.Drive} slid first.",
                "In the locked pull the running belt slid first."
            );
        }

        if (facts.Slip.AsFound.Is(out SlipLocation? found))
        {
            if (found.RunningBelt.Is(out Estimate<double> belt))
            {
                yield return Belt.Read(belt.Value, belt.StandardUncertainty, Told("running belt", belt));
            }

            if (found.DriveBelt.Is(out Estimate<double> drive))
            {
                yield return Drive.Read(drive.Value, drive.StandardUncertainty, Told(facts.Say.Drive, drive));
            }

            if (!found.RunningBelt.Found && !found.DriveBelt.Found && found.Whole.Is(out Estimate<double> whole))
            {
                Evidence ofBelt = Belt.Read(whole.Value, whole.StandardUncertainty, Told("belts together", whole));
                Evidence ofDrive = Drive.Read(whole.Value, whole.StandardUncertainty, ofBelt.Text);
                yield return ofBelt with
                {
                    LogLikelihood = c => Math.Max(ofBelt.LogLikelihood(c), ofDrive.LogLikelihood(c)),
                };
            }
        }

        foreach (SlipTrial trial in facts.Slip.Trials)
        {
            yield return OfTrial(facts, trial);
        }
    }

    private static Evidence OfTrial(VisitFacts facts, SlipTrial trial) =>
        trial.Work switch
        {
            TrialWork.Turns => CuredByTurns.Seen(
                trial.Cured,
                $"More tension alone cured it, by {Words.Turns(trial.Turns, signed: false)}.",
                $"{Words.Turns(trial.Turns, signed: false)} {facts.Say.OnBolts} did not cure it.",
                facts.Options.TurnsWorthJudging
            ),
            TrialWork.Cleaning => CuredByCleaning.Seen(
                trial.Cured,
                "Cleaning the drive roller cured it.",
                "Cleaning the drive roller did not cure it."
            ),
            _ => CuredByDriveBelt.Seen(
                trial.Cured,
                $"Work on the {facts.Say.Drive} cured it.",
                $"Work on the {facts.Say.Drive} did not cure it."
            ),
        };

    private static string Told(string what, Estimate<double> slip) =>
        $"Slip of the {what}: {new Figure("", 100 * slip.Value, "%", 100 * slip.StandardUncertainty)}.";
}
