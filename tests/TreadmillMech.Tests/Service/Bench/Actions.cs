using TreadmillMech.Service;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Tests.Service.Bench;

/// <summary>What a good colleague would do first for each hidden cause, by the words of the step.</summary>
internal static class Actions
{
    private static readonly Dictionary<Cause, string[]> Good = new()
    {
        [Cause.RunningBeltSlack] = ["Tighten", "Do not turn a bolt yet"],
        [Cause.OilOnDriveRoller] = ["Clean the drive roller", "Wipe the drive roller"],
        [Cause.OverTightened] = [" back by"],
        [Cause.BoltsAtTheirEnd] = ["Do not tighten further", "Do not tighten against", "Do not turn a bolt yet"],
        [Cause.DriveBeltSlack] = ["slide the motor", "Tension the drive belt", "motor and roller speed"],
        [Cause.DriveBeltGlazed] = ["Replace the drive belt", "slide the motor", "motor and roller speed"],
        [Cause.DriveBeltCracked] = ["Replace the drive belt", "Open the hood"],
        [Cause.PulleyLoose] = ["Fasten or replace the pulley", "slide the motor", "set screws", "Open the hood"],
        [Cause.DeckDry] = ["Clean deck", "Serve the deck"],
        [Cause.BeltAndDeckWorn] = ["Look at the underside", "Clean deck", "Serve the deck"],
        [Cause.OverLubricated] = ["Degrease", "Clean the drive roller"],
        [Cause.RollerBearing] = ["turn both rollers by hand"],
        [Cause.MotorWeak] = ["brushes"],
        [Cause.ControllerLimit] = ["Raise no limit"],
        [Cause.SupplyWeak] = ["extension cords"],
        [Cause.DriveOverrun] = ["Limit the incline"],
        [Cause.BeltOffCentre] = ["bolt by", "centre it", "Level the frame"],
        [Cause.OutOfCalibration] = ["set the displayed"],
        [Cause.UserBeyondPlate] = ["Do not test or use"],
        [Cause.WrongReading] = ["again", "Repeat"],
    };

    /// <summary>Causes that a new part mends, or that ask to look whether it must be.</summary>
    private static readonly Cause[] AskForAPart =
    [
        Cause.DriveBeltGlazed,
        Cause.DriveBeltCracked,
        Cause.DriveBeltSlack,
        Cause.PulleyLoose,
        Cause.BeltAndDeckWorn,
        Cause.RollerBearing,
        Cause.BoltsAtTheirEnd,
        Cause.MotorWeak,
    ];

    /// <summary>
    /// Whether the first step serves the cause: the work that mends it, or the look or reading by which it is found. A
    /// symptom that was seen or heard, and oil on a cloth, have a step of their own, which comes first where it is a
    /// danger: the cause's step may stand behind as many.
    /// </summary>
    internal static bool Serve(Cause cause, Visit visit, VisitSheet sheet)
    {
        int seen = visit.Events.Count(static e =>
            e
                is SymptomReading { Present: true }
                    or WipeReading
                    {
                        Place: WipedPlace.DriveRoller or WipedPlace.BeltTop,
                        Trace: WipedTrace.Oil or WipedTrace.Film
                    }
        );
        if (cause == Cause.NothingWrong)
        {
            return seen > 0 || sheet.Verdict is Verdict.Use or Verdict.NotEnoughRead;
        }

        // A reading that was refused is named on the sheet, with what to do instead.
        return (cause == Cause.WrongReading && !sheet.Refused.IsEmpty)
            || sheet
                .NextSteps.Take(1 + seen)
                .Any(step => Good[cause].Any(words => step.Action.Contains(words, StringComparison.OrdinalIgnoreCase)));
    }

    internal static bool ReplacesInVain(Cause cause, VisitSheet sheet) =>
        !AskForAPart.Contains(cause)
        && sheet.NextSteps.Any(step => step.Action.StartsWith("Replace", StringComparison.Ordinal));
}
