using TreadmillMech.Service.Causes;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Service.Review;

/// <summary>
/// Readings that can hurt somebody, each a finding of its own: causes exclude each other in the ranking, dangers do not.
/// </summary>
internal static class SafetyRules
{
    /// <summary>The findings, each with the cause that it settles; null where it settles none.</summary>
    internal static IEnumerable<(Cause? Settles, Finding Finding)> Of(
        VisitFacts facts,
        IReadOnlyList<RankedCause> causes
    ) =>
        Bearings(facts)
            .Concat(Drive(facts))
            .Concat(Motor(facts, causes))
            .Concat(Supply(facts, causes))
            .Concat(BeltAndDeck(facts));

    private static IEnumerable<(Cause?, Finding)> Bearings(VisitFacts facts)
    {
        (string Place, double Rise)[] bearings =
        [
            ("drive roller", Rise(facts, WarmPlace.DriveRollerBearing) ?? double.NegativeInfinity),
            ("undriven roller", Rise(facts, WarmPlace.TailRollerBearing) ?? double.NegativeInfinity),
        ];
        (string place, double rise) = bearings.MaxBy(b => b.Rise);
        Threshold limit = facts.Options.HotBearing;
        bool hot = rise > limit.Value;
        bool rumbles = There(facts, Symptom.Rumble);
        if (!hot && !rumbles)
        {
            yield break;
        }

        bool both = hot && rumbles;
        yield return (
            Cause.RollerBearing,
            From(CauseAdvice.Of(facts, Cause.RollerBearing)!) with
            {
                Severity = both ? Severity.OutOfService : Severity.Restrict,
                Statement =
                    both ? $"A bearing of the {place} is hot and a roller rumbles: it is failing, and may seize."
                    : hot ? $"A bearing of the {place} is hot: it is failing, or carries too much tension."
                    : "A roller rumbles: a bearing is failing.",
                Number = double.IsFinite(rise)
                    ? new($"warmth of the {place}'s bearing above the air", rise, "K")
                    : null,
                Limit = double.IsFinite(rise) ? limit : null,
                For = rumbles ? ["Heard with the belt empty."] : [],
                Against = rumbles && double.IsFinite(rise) && !hot ? ["The bearings that were felt are not hot."] : [],
                ForOwner = both
                    ? "A bearing of a roller is failing and must be replaced before anybody steps on."
                    : "A bearing of a roller seems to be failing and is being looked at.",
            }
        );
    }

    private static IEnumerable<(Cause?, Finding)> Drive(VisitFacts facts)
    {
        if (There(facts, Symptom.PulleyMoves))
        {
            yield return (
                Cause.PulleyLoose,
                From(CauseAdvice.Of(facts, Cause.PulleyLoose)!) with
                {
                    Statement = "A pulley is loose on its shaft.",
                    For = ["Seen: a pulley shifts or turns on its shaft."],
                    ForOwner = "A pulley of the drive is loose and must be fastened before anybody steps on.",
                }
            );
        }
        else if (There(facts, Symptom.KnockEachTurn) && facts.DriveBeltLook != DriveBeltLook.Cracked)
        {
            yield return (
                null,
                new()
                {
                    Subject = Subject.Rollers,
                    Severity = Severity.Restrict,
                    Statement =
                        "It knocks once in each turn: a pulley that is loose, a belt that is torn, or a bearing.",
                    For = ["Heard."],
                    ForOwner = "Something in the drive knocks and is being looked for.",
                    Next = new()
                    {
                        Action =
                            $"Open the hood, unplugged, and turn the drive by hand through several turns: look at the {facts.Say.Drive}, the pulleys and their set screws, and the seam of the running belt.",
                        Expect = "The part that knocks, or a drive that turns quietly.",
                        StopAt = "Stop at a pulley that shifts or a torn belt: nobody steps on until it is mended.",
                        EffortMinutes = 10,
                        Cautions = [Cautions.Unplug, Cautions.StandStill],
                    },
                }
            );
        }

        if (There(facts, Symptom.BurntRubber) && facts.Slip.DriveBeltMended)
        {
            yield return (
                null,
                new()
                {
                    Subject = Subject.DriveBelt,
                    Severity = Severity.Note,
                    Statement = $"It smelt of burnt rubber; the {facts.Say.Drive} was worked on, and it holds since.",
                    For = ["The slip test, or the speeds under load, after the work."],
                    ForOwner = "The belt between motor and roller had slipped and was put right.",
                }
            );
        }
        else if (There(facts, Symptom.BurntRubber))
        {
            yield return (
                null,
                new()
                {
                    Subject = Subject.DriveBelt,
                    Severity = Severity.Restrict,
                    Statement = "It smells of burnt rubber: a belt slips or rubs.",
                    For = ["Smelt."],
                    ForOwner = "There was a smell of burnt rubber; where it comes from is being looked for.",
                    Next = new()
                    {
                        Action =
                            $"Open the hood, unplugged: look at the {facts.Say.Drive} for glaze and rubber dust, and along both edges of the running belt for a place where it rubs.",
                        Expect = "The belt that slips or rubs; after it is mended, no smell under load.",
                        StopAt = "Stop at smoke, or a pulley too hot to touch.",
                        EffortMinutes = 10,
                        Cautions = [Cautions.Unplug, Cautions.StandStill],
                    },
                }
            );
        }

        if (There(facts, Symptom.BeltRunsAway))
        {
            yield return (
                Cause.DriveOverrun,
                From(CauseAdvice.Of(facts, Cause.DriveOverrun)!) with
                {
                    Statement =
                        "Uphill the belt runs faster than set: the person drives it, and this drive cannot hold it back.",
                    For = ["Seen."],
                }
            );
        }
    }

    private static IEnumerable<(Cause?, Finding)> Motor(VisitFacts facts, IReadOnlyList<RankedCause> causes)
    {
        Threshold limit = facts.Options.HotMotor;
        double? rise =
            Rise(facts, WarmPlace.MotorCase)
            ?? (Rise(facts, WarmPlace.MotorWinding) - facts.Options.WindingOverCase.Value);
        bool smells = There(facts, Symptom.HotMotor);
        if (smells || rise > limit.Value)
        {
            yield return HotMotor(facts, smells, rise);
        }

        if (SupplyShutsOff(facts, causes))
        {
            yield return (
                Cause.SupplyWeak,
                From(CauseAdvice.Of(facts, Cause.SupplyWeak)!) with
                {
                    Severity = Severity.Restrict,
                    Statement =
                        "The controller shuts off under load, and the mains supply is weak: the belt stops under the feet.",
                    For = causes.First(static c => c.Cause == Cause.SupplyWeak).For,
                }
            );
        }
        else if (There(facts, Symptom.ShutsOff))
        {
            yield return (
                Cause.ControllerLimit,
                From(CauseAdvice.Of(facts, Cause.ControllerLimit)!) with
                {
                    Severity = Severity.Restrict,
                    Statement = "The controller shuts off under load: the belt stops under the feet.",
                    For = ["Seen."],
                }
            );
        }

        if (There(facts, Symptom.Hunting))
        {
            yield return (
                null,
                new()
                {
                    Subject = Subject.Motor,
                    Severity = Severity.Restrict,
                    Statement = "The speed surges and falls with nobody on the belt.",
                    For = ["Seen."],
                    ForOwner = "The belt does not keep its speed; nobody runs on it until it does.",
                    Next = new()
                    {
                        Action =
                            "Look at the speed sensor, its magnet or disc and its lead, and have a qualified person look at brushes and connections.",
                        Expect = "A speed that stays within a hair of what is set, empty and loaded.",
                        StopAt = "Stop at a speed that jumps: pull the safety key.",
                        EffortMinutes = 20,
                        Cautions = [Cautions.Unplug, Cautions.Electrical, Cautions.Key],
                    },
                }
            );
        }

        if (
            facts.Used<BrushReading>().LastOrDefault() is { Least: null } unstated
            && 1000 * Si.Length.ToSi(unstated.Left) < facts.Options.ShortBrush.Value
        )
        {
            yield return (null, ShortBrush(facts, 1000 * Si.Length.ToSi(unstated.Left)));
        }

        if (
            facts.Used<BrushReading>().LastOrDefault() is { Least: { } least } brush
            && Si.Length.ToSi(brush.Left) < Si.Length.ToSi(least)
        )
        {
            yield return (
                Cause.MotorWeak,
                new()
                {
                    Subject = Subject.Motor,
                    Severity = Severity.Attend,
                    Statement = "A brush of the motor is shorter than its maker allows.",
                    Number = new("shortest brush", 1000 * Si.Length.ToSi(brush.Left), "mm"),
                    Limit = new("least brush", 1000 * Si.Length.ToSi(least), "mm", "the maker, as stated"),
                    ForOwner = "The motor's brushes are worn and are due for replacement.",
                    Next = new()
                    {
                        Action =
                            "Have a qualified person replace the brushes in pairs and look at brushes' springs and commutator.",
                        Expect =
                            "Brushes that slide freely and are bedded in, and a motor as strong as its plate says.",
                        StopAt = "Stop at a commutator that is scored or burnt.",
                        EffortMinutes = 30,
                        Cautions = [Cautions.Unplug, Cautions.Electrical],
                    },
                }
            );
        }
    }

    /// <summary>A brush that is short by practice, its maker's least length not being stated.</summary>
    private static Finding ShortBrush(VisitFacts facts, double left) =>
        new()
        {
            Subject = Subject.Motor,
            Severity = Severity.Attend,
            Statement = "A brush of the motor is short; the maker's least length is not stated.",
            Number = new("shortest brush", left, "mm"),
            Limit = facts.Options.ShortBrush,
            ForOwner = "The motor's brushes are short and may be due for replacement.",
            Next = new()
            {
                Action =
                    "Look up the maker's least length of the brushes, or compare with a new one; have a qualified person replace them in pairs where they are below it.",
                Expect = "Brushes longer than the maker's least length.",
                StopAt = "Stop at a brush whose lead or spring touches the commutator.",
                EffortMinutes = 10,
                Cautions = [Cautions.Unplug, Cautions.Electrical],
            },
        };

    private static (Cause?, Finding) HotMotor(VisitFacts facts, bool smells, double? rise)
    {
        bool dry = facts.FrictionNow.Is(out FrictionFact? now) && now.Friction.Value > facts.Options.HighFriction.Value;
        bool mended = facts.Friction.Serviced && facts.FrictionNow.Found && !dry;
        return (
            mended || dry ? null : Cause.MotorWeak,
            new()
            {
                Subject = Subject.Motor,
                Severity = mended ? Severity.Attend : Severity.Restrict,
                Statement = mended
                    ? "The motor was too hot; the deck has been served since, and its warmth is not read again yet."
                    : "The motor is too hot.",
                Number = rise is { } warm ? new("warmth of the motor's case above the air", warm, "K") : null,
                Limit = facts.Options.HotMotor,
                AlsoBy = now is null ? [] : [facts.Options.HighFriction],
                For = smells ? ["Felt or smelt."] : [],
                ForOwner = mended
                    ? "The motor was hot before the service; it is to be felt again after a run."
                    : "The motor grows too hot and is being looked at.",
                Next =
                    mended ? Again(facts)
                    : dry
                        ? Again(facts) with
                        {
                            Action =
                                "Serve the deck first: its friction is what the motor works against. Then have a qualified person read the motor's warmth after a walk.",
                        }
                    : CauseAdvice.Of(facts, Cause.MotorWeak)!.Next,
            }
        );
    }

    private static NextStep Again(VisitFacts facts) =>
        new()
        {
            Action =
                "Have a qualified person read the warmth of the motor's case again after a walk at the usual load.",
            Expect = $"A case less than {new Figure("", facts.Options.HotMotor.Value, "K")} above the air.",
            StopAt = "Stop at a winding that smells: a motor that was that hot has weaker magnets for good.",
            EffortMinutes = 15,
            Cautions = [Cautions.Unplug, Cautions.Electrical, Cautions.TestUser],
        };

    private static IEnumerable<(Cause?, Finding)> Supply(VisitFacts facts, IReadOnlyList<RankedCause> causes)
    {
        CauseAdvice supply = CauseAdvice.Of(facts, Cause.SupplyWeak)!;
        if (Rise(facts, WarmPlace.MainsPlug) is { } plug && plug > facts.Options.HotPlug.Value)
        {
            yield return (
                Cause.SupplyWeak,
                From(supply) with
                {
                    Severity = Severity.OutOfService,
                    Next = supply.Next with
                    {
                        Action = "Switch off, unplug, and leave it unplugged. " + supply.Next.Action,
                        Cautions = [Cautions.Electrical, Cautions.Unplug],
                    },
                    Statement = "The mains plug or cord grows hot: it may burn.",
                    Number = new("warmth of the plug above the air", plug, "K"),
                    Limit = facts.Options.HotPlug,
                    ForOwner =
                        "The plug or cord grows hot; the machine stays unplugged until a qualified person has looked at it.",
                }
            );
        }
        else if (There(facts, Symptom.LightsDim) && !SupplyShutsOff(facts, causes))
        {
            yield return (
                Cause.SupplyWeak,
                From(supply) with
                {
                    Statement = "The lights dim as the user lands: the mains supply is weak.",
                    For = ["Seen."],
                }
            );
        }
    }

    /// <summary>A controller that starves on a weak supply shuts off as one that is asked for too much: the supply comes first.</summary>
    private static bool SupplyShutsOff(VisitFacts facts, IReadOnlyList<RankedCause> causes) =>
        There(facts, Symptom.ShutsOff)
        && !(Rise(facts, WarmPlace.MainsPlug) > facts.Options.HotPlug.Value)
        && causes.Any(c => c.Cause == Cause.SupplyWeak && c.Probability >= facts.Options.LikelyCause.Value);

    private static IEnumerable<(Cause?, Finding)> BeltAndDeck(VisitFacts facts)
    {
        if (There(facts, Symptom.CurledEdge))
        {
            yield return (
                null,
                new()
                {
                    Subject = Subject.RunningBelt,
                    Severity = Severity.Restrict,
                    Statement = "An edge of the running belt is curled or frayed: it can catch, and tear.",
                    For = ["Seen."],
                    ForOwner = "An edge of the running belt is damaged; nobody runs on it until it was looked at.",
                    Next = new()
                    {
                        Action =
                            "Look along both edges and at the seam, the belt turned by hand, unplugged; find what it rubs on and centre it. Replace a belt with a torn edge or an open seam.",
                        Expect = "Edges that run clear of frame and guards, with no loose threads.",
                        StopAt = "Nobody steps on a belt whose edge is torn into, or whose seam opens.",
                        EffortMinutes = 10,
                        Cautions = [Cautions.Unplug, Cautions.StandStill, Cautions.Clear],
                    },
                }
            );
        }

        double? groove = facts.Used<GrooveReading>().LastOrDefault() is { } read
            ? 1000 * Si.Length.ToSi(read.Depth)
            : null;
        bool deep = groove >= facts.Options.DeepGroove.Value;
        if ((There(facts, Symptom.WornDeck) || deep) && CauseAdvice.Of(facts, Cause.BeltAndDeckWorn) is { } worn)
        {
            bool seen = There(facts, Symptom.WornDeck);
            yield return (
                Cause.BeltAndDeckWorn,
                From(worn) with
                {
                    Statement = seen
                        ? "The deck is worn through its coat in the foot zone."
                        : "The deck is worn hollow in the foot zone.",
                    Number = groove is { } depth ? new("groove", depth, "mm") : null,
                    Limit = groove is null ? null : facts.Options.DeepGroove,
                    For = seen ? ["Seen."] : ["By the straightedge."],
                }
            );
        }
    }

    private static Finding From(CauseAdvice advice) =>
        new()
        {
            Subject = advice.Subject,
            Severity = advice.Severity,
            Statement = advice.Statement,
            AlsoBy = [.. advice.AlsoBy],
            ForOwner = advice.ForOwner,
            Next = advice.Next,
        };

    /// <summary>Whether a symptom was there when it was last looked for.</summary>
    private static bool There(VisitFacts facts, Symptom symptom) =>
        facts.Used<SymptomReading>().LastOrDefault(s => s.Symptom == symptom)?.Present == true;

    /// <summary>Warmth above the air as last read [K]; null where not read.</summary>
    private static double? Rise(VisitFacts facts, WarmPlace place) =>
        facts.Used<TemperatureReading>().LastOrDefault(t => t.Place == place) is { } read
            ? Si.Celsius.ToSi(read.Temperature) - Si.Celsius.ToSi(read.Air)
            : null;
}
