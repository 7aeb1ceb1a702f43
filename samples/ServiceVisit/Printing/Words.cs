using System.Text;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Printing;

/// <summary>Words for what the library keeps as kinds.</summary>
internal static class Words
{
    /// <summary>What stands behind the sign in every number of the sheet.</summary>
    internal const string PlusMinus =
        "± is one standard uncertainty: the truth lies within it in about two cases of three, within twice it in nineteen of "
        + "twenty. Where it reaches further to one side, brackets hold nineteen of twenty instead.";

    internal static string Of(Verdict verdict) =>
        verdict switch
        {
            Verdict.Use => "use",
            Verdict.NotEnoughRead => "not enough read",
            Verdict.Restrict => "restrict",
            _ => "out of service",
        };

    internal static string Of(Severity severity) =>
        severity switch
        {
            Severity.Note => "note",
            Severity.Attend => "attend",
            Severity.Restrict => "restrict",
            _ => "out of service",
        };

    internal static string Of(Subject subject) =>
        subject switch
        {
            Subject.RunningBelt => "running belt",
            Subject.DriveBelt => "drive belt",
            Subject.Rollers => "rollers",
            Subject.Deck => "deck",
            Subject.Tracking => "tracking",
            Subject.Motor => "motor",
            Subject.Supply => "supply",
            Subject.Fitness => "fitness for use",
            Subject.User => "user",
            Subject.Speed => "speed",
            _ => "readings",
        };

    internal static string Of(Cause cause) =>
        cause switch
        {
            Cause.NothingWrong => "nothing is wrong",
            Cause.RunningBeltSlack => "the running belt is slack",
            Cause.OilOnDriveRoller => "there is oil on the drive roller",
            Cause.OverTightened => "the running belt is tighter than it need be",
            Cause.BoltsAtTheirEnd => "the take-up bolts are at their end, or seize",
            Cause.DriveBeltSlack => "the drive belt is slack",
            Cause.DriveBeltGlazed => "the drive belt is glazed or worn",
            Cause.DriveBeltCracked => "the drive belt is cracked",
            Cause.PulleyLoose => "a pulley is loose on its shaft",
            Cause.DeckDry => "the deck is dry or dirty",
            Cause.BeltAndDeckWorn => "running belt and deck are worn",
            Cause.OverLubricated => "there is too much lubricant",
            Cause.RollerBearing => "a roller bearing is failing",
            Cause.MotorWeak => "the motor is weak or hot, or its brushes are worn",
            Cause.ControllerLimit => "the controller reaches its limit",
            Cause.SupplyWeak => "the mains supply is weak",
            Cause.DriveOverrun => "uphill the user overruns a drive that cannot brake",
            Cause.BeltOffCentre => "the belt is off centre, or the frame is not level",
            Cause.OutOfCalibration => "speed or incline of the display are out of calibration",
            Cause.UserBeyondPlate => "the user is beyond the maker's plate",
            Cause.WrongReading => "a reading is wrong",
            _ => "a cause without a name here",
        };

    /// <summary>Why there is no answer. No number is put in its place.</summary>
    internal static string Of(Shortfall missing)
    {
        string about = Spaced(missing.About);
        string reason = missing.Why switch
        {
            Reason.InputUnknown => "not known",
            Reason.NotOnThisMachine => "not on this machine",
            Reason.SlackBelt => "the belt is too loose for an answer",
            Reason.MotorCannotReachSpeed => "the motor does not reach the speed",
            Reason.CurrentLimit => "the controller does not allow the current",
            Reason.DriveCannotBrake => "the drive cannot brake",
            Reason.ThermalRunaway => "the winding would warm without end",
            Reason.PartsOverlap => "two parts would be in one place",
            Reason.NotInRange => "no value in the range gives it",
            Reason.SeveralSolutions => "more than one value gives it",
            Reason.NotObservable => "the readings do not tell",
            Reason.ReadingsContradict => "the readings contradict each other",
            _ => "no answer",
        };
        string unit = missing.Unit == "1" ? "" : missing.Unit;
        string numbers =
            missing.Unit.Length == 0
                ? ""
                : $", {new Figure("", missing.Needed, unit)} needed, {new Figure("", missing.Available, unit)} there";
        return about.Length == 0 ? reason + numbers : $"{reason}: {about}{numbers}";
    }

    /// <summary>"BeltStiffness" as "belt stiffness"; a name that is already in words stays.</summary>
    internal static string Spaced(string name)
    {
        if (name is null || name.Contains(' ', StringComparison.Ordinal))
        {
            return name ?? "";
        }

        StringBuilder words = new();
        foreach (char c in name)
        {
            if (char.IsUpper(c) && words.Length > 0)
            {
                words.Append(' ');
            }

            words.Append(char.ToLowerInvariant(c));
        }

        return words.ToString();
    }

    /// <summary>"out of service" as "outOfService", for machines.</summary>
    internal static string Joined(string words)
    {
        string[] parts = words.Split(' ');
        return parts[0] + string.Concat(parts[1..].Select(static word => char.ToUpperInvariant(word[0]) + word[1..]));
    }

    /// <summary>A name of the library with a small first letter, for machines.</summary>
    internal static string Camel(string name) => name.Length == 0 ? name : char.ToLowerInvariant(name[0]) + name[1..];
}
