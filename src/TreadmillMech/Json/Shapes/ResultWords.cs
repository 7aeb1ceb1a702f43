using TreadmillMech.Service;

namespace TreadmillMech.Json.Shapes;

/// <summary>The words of results, written out so that nothing is looked up at run time.</summary>
internal static class ResultWords
{
    internal static readonly WordTable<Verdict> Verdicts = new(
        ("use", Verdict.Use),
        ("not enough read", Verdict.NotEnoughRead),
        ("restrict", Verdict.Restrict),
        ("out of service", Verdict.OutOfService)
    );
    internal static readonly WordTable<Subject> Subjects = new(
        ("running belt", Subject.RunningBelt),
        ("drive belt", Subject.DriveBelt),
        ("rollers", Subject.Rollers),
        ("deck", Subject.Deck),
        ("tracking", Subject.Tracking),
        ("motor", Subject.Motor),
        ("supply", Subject.Supply),
        ("user", Subject.User),
        ("speed", Subject.Speed),
        ("readings", Subject.Readings),
        ("fitness", Subject.Fitness)
    );
    internal static readonly WordTable<Severity> Severities = new(
        ("note", Severity.Note),
        ("attend", Severity.Attend),
        ("restrict", Severity.Restrict),
        ("out of service", Severity.OutOfService)
    );
    internal static readonly WordTable<Cause> Causes = new(
        ("nothing wrong", Cause.NothingWrong),
        ("running belt slack", Cause.RunningBeltSlack),
        ("oil on drive roller", Cause.OilOnDriveRoller),
        ("over tightened", Cause.OverTightened),
        ("bolts at their end", Cause.BoltsAtTheirEnd),
        ("drive belt slack", Cause.DriveBeltSlack),
        ("drive belt glazed", Cause.DriveBeltGlazed),
        ("drive belt cracked", Cause.DriveBeltCracked),
        ("pulley loose", Cause.PulleyLoose),
        ("deck dry", Cause.DeckDry),
        ("belt and deck worn", Cause.BeltAndDeckWorn),
        ("over lubricated", Cause.OverLubricated),
        ("roller bearing", Cause.RollerBearing),
        ("motor weak", Cause.MotorWeak),
        ("controller limit", Cause.ControllerLimit),
        ("supply weak", Cause.SupplyWeak),
        ("drive overrun", Cause.DriveOverrun),
        ("belt off centre", Cause.BeltOffCentre),
        ("out of calibration", Cause.OutOfCalibration),
        ("user beyond plate", Cause.UserBeyondPlate),
        ("wrong reading", Cause.WrongReading)
    );
    internal static readonly WordTable<Reason> Reasons = new(
        ("input unknown", Reason.InputUnknown),
        ("not on this machine", Reason.NotOnThisMachine),
        ("slack belt", Reason.SlackBelt),
        ("motor cannot reach speed", Reason.MotorCannotReachSpeed),
        ("current limit", Reason.CurrentLimit),
        ("drive cannot brake", Reason.DriveCannotBrake),
        ("thermal runaway", Reason.ThermalRunaway),
        ("parts overlap", Reason.PartsOverlap),
        ("not in range", Reason.NotInRange),
        ("several solutions", Reason.SeveralSolutions),
        ("not observable", Reason.NotObservable),
        ("readings contradict", Reason.ReadingsContradict)
    );
    internal static readonly WordTable<WeakContact> WeakContacts = new(
        ("running belt", WeakContact.RunningBelt),
        ("drive belt", WeakContact.DriveBelt)
    );
    internal static readonly WordTable<ReadingKind> ReadingKinds = new(
        ("rest tension", ReadingKind.RestTension),
        ("belt stiffness", ReadingKind.BeltStiffness),
        ("deck friction", ReadingKind.DeckFriction),
        ("locked pull", ReadingKind.LockedPull),
        ("roller friction", ReadingKind.RollerFriction),
        ("belt slip", ReadingKind.BeltSlip),
        ("drive slip", ReadingKind.DriveSlip),
        ("whole slip", ReadingKind.WholeSlip),
        ("belt margin", ReadingKind.BeltMargin),
        ("drive belt margin", ReadingKind.DriveBeltMargin),
        ("drive belt tension", ReadingKind.DriveBeltTension),
        ("display error", ReadingKind.DisplayError),
        ("drift", ReadingKind.Drift),
        ("no load pull", ReadingKind.NoLoadPull),
        ("slowing", ReadingKind.Slowing),
        ("motor constant", ReadingKind.MotorConstant),
        ("motor current", ReadingKind.MotorCurrent),
        ("mains power", ReadingKind.MainsPower),
        ("mains current", ReadingKind.MainsCurrent)
    );
    internal static readonly WordTable<TurnLimit> TurnLimits = new(
        ("turns of a visit", TurnLimit.TurnsOfAVisit),
        ("thread", TurnLimit.Thread),
        ("elongation", TurnLimit.Elongation),
        ("earlier tension", TurnLimit.EarlierTension),
        ("hard bolt", TurnLimit.HardBolt)
    );
}
