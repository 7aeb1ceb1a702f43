using TreadmillMech.Samples.ServiceVisit.Printing;
using TreadmillMech.Service;
using TreadmillMech.Tests.Service;

namespace TreadmillMech.Tests.ServiceVisit;

/// <summary>A sheet made by hand that uses everything a sheet can hold, and what is printed of it.</summary>
internal static class SheetPages
{
    private static readonly Threshold Limit = new("slip", 0.02, "", "a rule of thumb");

    private static readonly NextStep Step = new()
    {
        Action = "Unplug the machine, then give both bolts a quarter turn.",
        Expect = "The belt holds under the test demand.",
        StopAt = "The bolt is suddenly hard to turn.",
        Undo = "Turn both bolts back by a quarter turn.",
        Cautions = ["Do not adjust while the belt moves."],
    };

    internal static readonly VisitSheet Full = new()
    {
        Verdict = Verdict.OutOfService,
        VerdictText = "Nobody steps on it until the drive belt is replaced.",
        SafetyNow = ["Unplug the machine.", "Hang a sign on the console."],
        MakerFirst = "The maker's manual comes first.",
        NextSteps = [Step, Step with { Action = "Clean the deck.", Undo = null, Cautions = [] }],
        Findings =
        [
            new()
            {
                Subject = Subject.RunningBelt,
                Severity = Severity.OutOfService,
                Statement = "The running belt slips on its drive roller.",
                Number = new("slip of the belt", 0.06, "", 0.007),
                Limit = Limit,
                For = ["The ratio of roller and belt fell."],
                Against = ["The belt looks sound."],
                Next = Step,
            },
            new()
            {
                Subject = Subject.Tracking,
                Severity = Severity.Note,
                Statement = "The belt runs straight.",
            },
        ],
        ChancesFrom = "Chances: a rule of thumb.",
        DriveBeltMargin = new Shortfall(Reason.InputUnknown, "DriveBeltTension"),
        MachineAsLeft = Machines.Plain,
        NotTold = ["the drive belt's margin"],
        Due = new Shortfall(Reason.InputUnknown, "Day"),
        Causes = [new(Cause.RunningBeltSlack, 0.9, ["It slips."], ["It is tight."])],
        Readings =
        [
            new(ReadingKind.RestTension, "strand tension", "N", new("tension", 612, "N", 31), null, null),
            new(
                ReadingKind.DeckFriction,
                "deck friction",
                "",
                new("friction", 0.31, ""),
                new("friction", 0.17, "", 0.02),
                Limit
            ),
        ],
        Refused = [new(4, "motor current", "The meter was not zeroed; zero it and read again.")],
        Budget = new()
        {
            TurnsThisVisit = 0.75,
            EarlierTurns = null,
            MostTurns = new("most turns in a visit", 2, "turn", "a rule of thumb"),
            TurnsLeft = 1.25,
            ThreadTurnsLeft = 23.4,
            StrainAdded = new("elongation", 0.12, "%", 0.01),
            Tension = new Shortfall(Reason.InputUnknown, "BeltStiffness"),
            Limit = TurnLimit.TurnsOfAVisit,
            LimitedBy = "the most turns in one visit",
        },
        Ladder =
        [
            new(
                0.25,
                new("elongation", 0.02, "%"),
                new Figure("tension", 655, "N", 40),
                new Figure("margin", 1.07, "", 0.05)
            ),
            new(
                0.5,
                new("elongation", 0.04, "%"),
                new Shortfall(Reason.SlackBelt, "TensionNow", 120, 80, "N"),
                new Shortfall(Reason.NotObservable, "")
            ),
        ],
        OneMoreReading =
        [
            new("A lift of 25 mm.", "the strand tension to a tenth.", "Margin known to 30 % now, to 12 % with it.", 5),
        ],
        Notices = ["The speed lies outside the range of the relation."],
        OwnerPage = ["The machine needs a new belt.", "Please leave it unplugged."],
    };

    internal static readonly VisitSheet Empty = Full with
    {
        Verdict = Verdict.Use,
        SafetyNow = [],
        NextSteps = [],
        Findings = [],
        Readings = [],
        Refused = [],
        Ladder = [],
        OneMoreReading = [],
        Notices = [],
    };

    internal static readonly string Text = Print();
    internal static readonly string Json = Write();

    internal static string Print() => TextSheet.Of("Larkspur 12 (invented)", Full);

    internal static string Write() => JsonSheet.Of("Larkspur 12 (invented)", Full);
}
