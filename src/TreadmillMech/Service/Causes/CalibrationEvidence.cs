using TreadmillMech.Service.Events;
using TreadmillMech.Service.Review;

namespace TreadmillMech.Service.Causes;

/// <summary>Display against belt and deck, and the user against the plate. Chances: common practice, no source.</summary>
internal static class CalibrationEvidence
{
    private static readonly Chance DisplayOff = Chance.OfAFault(
        0.03,
        (Cause.OutOfCalibration, 0.8),
        (Cause.WrongReading, 0.2),
        (Cause.DriveOverrun, 0.3)
    );

    internal static readonly Chance InclineOff = Chance.OfAFault(
        0.03,
        (Cause.OutOfCalibration, 0.6),
        (Cause.WrongReading, 0.1)
    );

    private static readonly Chance AbovePlate = new(0.01, (Cause.UserBeyondPlate, 0.995));

    private static readonly Chance CannotBrake = new(0.02, (Cause.DriveOverrun, 0.95));

    internal static IEnumerable<Evidence> Of(VisitFacts facts)
    {
        Figure? speed =
            SpeedRules.DisplayError(facts) is { } error
            && !SpeedRules.IsGross(facts, error)
            && !SpeedRules.RollerContradicts(facts)
            && !SpeedRules.DisplaysContradict(facts)
                ? error
                : null;
        double? grade = facts.Used<InclineReading>().LastOrDefault() is { } incline
            ? Si.Ratio.ToSi(incline.Display) - Si.Ratio.ToSi(incline.Measured)
            : null;
        bool speedOff = speed is not null && Math.Abs(speed.Value) > 100 * facts.Options.DisplayError.Value;
        bool gradeOff = grade is { } off && Math.Abs(off) > facts.Options.InclineError.Value;

        // One of the two is out of calibration: that the other is right then tells nothing against it.
        if (speed is not null && (speedOff || !gradeOff))
        {
            yield return DisplayOff.Seen(
                speedOff,
                $"The displayed speed is off by {speed}.",
                $"The displayed speed is within {speed}.",
                facts.Options.DisplayError.InPercent()
            );
        }

        if (grade is { } by && (gradeOff || !speedOff))
        {
            yield return InclineOff.Seen(
                gradeOff,
                $"The displayed grade is off by {Words.Percent(by)}.",
                "The displayed grade is that of the deck.",
                facts.Options.InclineError.InPercent()
            );
        }

        if (facts.Visit.Machine.Plate?.LargestUserMass is not null)
        {
            yield return AbovePlate.Seen(
                facts.Say.AbovePlate,
                "The person is heavier than the plate allows.",
                "The person is within the plate."
            );
        }

        Reason current = facts.Point.MeanCurrent.Missing.Why;
        if (
            Si.Ratio.ToSi(facts.Visit.TestDemand.Grade) > 0
            && facts.Visit.Machine.Motor is not null
            && current is Reason.Found or Reason.DriveCannotBrake
        )
        {
            yield return CannotBrake.Seen(
                current == Reason.DriveCannotBrake,
                "Uphill at the test demand the person drives the belt, and this drive cannot brake.",
                "Uphill at the test demand the drive still pulls, or can brake."
            );
        }
    }
}
