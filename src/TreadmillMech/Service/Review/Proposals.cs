namespace TreadmillMech.Service.Review;

/// <summary>What is unknown, and the one reading that would tell; minutes are common practice.</summary>
internal static class Proposals
{
    internal static IEnumerable<ReadingProposal> Of(VisitFacts facts)
    {
        if (facts.Machine.RestTension is null)
        {
            yield return new(
                "Lift test: full-width bar under the middle of the top strand, 30 mm up, rollers free, machine unplugged.",
                "The strand tension, within about a tenth.",
                2
            );
        }

        if (facts.Machine.Belt.RelaxedForcePerWidth is null)
        {
            yield return new(
                "Lift tests at 30 and 50 mm, each at two bolt positions.",
                "The belt's stiffness, and with it what a turn does in newtons.",
                4
            );
        }

        if (facts.Machine.DriveRoller.Friction is null && facts.LockedPull is null)
        {
            yield return new(
                "Locked pull: machine unplugged, motor held, belt pulled towards the console by a scale until something slides.",
                "Which contact gives way first, and where it is the belt on its roller, with a lift test their friction and the margin.",
                5
            );
        }

        if (!facts.Friction.Now.Found)
        {
            yield return new(
                "Dead-weight pull: machine unplugged, belt drawn slowly by a scale, empty and with a known mass on it.",
                "The deck friction, and whether lubricant is due.",
                5
            );
        }

        if (!facts.Friction.MotorConstant.Found)
        {
            yield return new(
                "Voltage, current and speed of the motor, belt unloaded, at two speeds.",
                "The motor constant, and with it the friction from any later current.",
                5
            );
        }

        if (!facts.SpeedsSettle)
        {
            yield return new(
                $"Speeds of motor, drive roller and belt together, unloaded and under {facts.Say.TestDemand}.",
                "Which of the two belts slips, if one does.",
                6
            );
        }

        if (!facts.RollerWiped)
        {
            yield return new(
                "Machine unplugged, wipe the drive roller with a dry white cloth while turning it by hand.",
                "Whether oil takes the grip away.",
                1
            );
        }
    }
}
