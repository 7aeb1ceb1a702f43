using TreadmillMech.Service.Events;
using TreadmillMech.Service.Review;

namespace TreadmillMech.Service.Causes;

/// <summary>Display against belt and deck, and the user against the plate. Chances: common practice, no source.</summary>
internal static class CalibrationEvidence
{
    private static readonly Chance DisplayOff = new(
        0.03,
        (Cause.OutOfCalibration, 0.8),
        (Cause.WrongReading, 0.2),
        (Cause.DriveOverrun, 0.3)
    );

    internal static readonly Chance InclineOff = new(0.03, (Cause.OutOfCalibration, 0.6), (Cause.WrongReading, 0.1));

    private static readonly Chance AbovePlate = new(0.01, (Cause.UserBeyondPlate, 0.995));

    private static readonly Chance CannotBrake = new(0.02, (Cause.DriveOverrun, 0.95));

    internal static IEnumerable<Evidence> Of(VisitFacts facts)
    {
        if (
            SpeedRules.DisplayError(facts) is { } error
            && !SpeedRules.IsGross(facts, error)
            && !SpeedRules.RollerContradicts(facts)
        )
        {
            yield return DisplayOff.Seen(
                Math.Abs(error.Value) > 100 * facts.Options.DisplayError.Value,
                $"The displayed speed is off by {error}.",
                $"The displayed speed is within {error}.",
                facts.Options.DisplayError.InPercent()
            );
        }

        if (facts.Used<InclineReading>().LastOrDefault() is { } incline)
        {
            double off = Si.Ratio.ToSi(incline.Display) - Si.Ratio.ToSi(incline.Measured);
            yield return InclineOff.Seen(
                Math.Abs(off) > facts.Options.InclineError.Value,
                $"The displayed grade is off by {Words.Percent(off)}.",
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
