using TreadmillMech.Service.Events;

namespace TreadmillMech.Service.Review;

/// <summary>Oil where it does harm: on the drive roller, on top of the belt; and what the drive belt looks like.</summary>
internal static class RollerRules
{
    internal static IEnumerable<Finding> Of(VisitFacts facts)
    {
        if (facts.Traces.OilOnTop)
        {
            yield return new()
            {
                Subject = Subject.RunningBelt,
                Severity = Severity.OutOfService,
                Statement = "There is oil on top of the running belt: feet slip.",
                For = ["The cloth drawn over the top shows it."],
                ForOwner = "The walking surface is oily and must be cleaned.",
                Next = new()
                {
                    Action =
                        "Take the machine out of service. Degrease the top of the belt as the maker says, and take up what seeps from under it.",
                    Expect = "A white cloth drawn over the top stays dry.",
                    StopAt =
                        "If it comes back after a day of standing, the belt is soaked: replace it with the deck looked at.",
                    EffortMinutes = 40,
                    Cautions = [Cautions.StandStill],
                },
            };
        }
        else if (facts.Traces.TopNotWipedSince)
        {
            yield return new()
            {
                Subject = Subject.RunningBelt,
                Severity = Severity.OutOfService,
                Statement =
                    "There was oil on top of the running belt; it was cleaned, and no cloth has told since that it is dry.",
                For = ["The cloth drawn over the top before it was cleaned."],
                ForOwner = "The walking surface was oily; it is to be dry to a cloth before anybody steps on.",
                Next = new()
                {
                    Action = "Draw a dry white cloth over the top of the running belt along its whole loop, unplugged.",
                    Expect = "A cloth that stays dry.",
                    StopAt = "If it shows oil, clean again; nobody steps on before it stays dry.",
                    EffortMinutes = 2,
                    Cautions = [Cautions.Unplug, Cautions.StandStill],
                },
            };
        }
        else if (facts.Traces.TopDriedUp)
        {
            yield return new()
            {
                Subject = Subject.RunningBelt,
                Severity = Severity.Note,
                Statement =
                    "The top of the running belt was oily, and is dry now; oil may seep up from under it within a day: wipe it again before the next use.",
                For = ["The cloths, before and after."],
                ForOwner =
                    "The walking surface was oily and is clean now; wipe it with a dry white cloth before the next use.",
            };
        }

        if (facts.Traces.OilOnRoller)
        {
            yield return new()
            {
                Subject = Subject.Rollers,
                Severity = facts.Slip.ShowsNow ? Severity.Restrict : Severity.Attend,
                Statement =
                    "There is oil or lubricant on the drive roller: it lowers the grip, however tight the belt is.",
                For =
                [
                    "The cloth drawn over the roller shows it.",
                    .. facts.Slip.ShowsNow ? ["The belt gives way under load."] : Array.Empty<string>(),
                ],
                ForOwner = "The roller that moves the belt is oily and is being cleaned.",
                Next = new()
                {
                    Action =
                        $"Do not tighten. Clean the drive roller and the belt's edges and ends of its underside, then repeat the slip test under {facts.Say.TestDemand}.",
                    Expect = "A dry cloth, and no giving way at the same bolt position.",
                    StopAt =
                        "If it still slips on a clean dry roller, read the speeds of motor and roller before any turn.",
                    EffortMinutes = 15,
                    Cautions = [Cautions.Unplug, Cautions.StandStill, Cautions.TestUser],
                },
            };
        }

        if (facts.DriveBeltLook is DriveBeltLook.Cracked or DriveBeltLook.Glazed)
        {
            bool cracked = facts.DriveBeltLook == DriveBeltLook.Cracked;
            yield return new()
            {
                Subject = Subject.DriveBelt,
                Severity = cracked ? Severity.OutOfService : Severity.Attend,
                Statement = cracked
                    ? "The drive belt is cracked: one that breaks lets the running belt run free under the feet."
                    : "The drive belt is glazed: its ribs have lost grip.",
                For = ["Seen with the hood open."],
                ForOwner = cracked
                    ? "The belt between motor and roller is cracked and must be replaced before anybody steps on."
                    : "The belt between motor and roller is worn and is being replaced.",
                Next = new()
                {
                    Action =
                        (cracked ? "Take the machine out of service. " : "")
                        + "Replace the drive belt, and look at the pulleys for wear and line.",
                    Expect = "No squeal, and motor-to-roller ratio under load as unloaded.",
                    StopAt = "Stop if a pulley wobbles or moves on its shaft.",
                    EffortMinutes = 30,
                    Cautions = [Cautions.Unplug],
                },
            };
        }
    }
}
