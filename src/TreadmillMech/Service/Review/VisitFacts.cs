using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using TreadmillMech.Service.Causes;
using TreadmillMech.Service.Checks;
using TreadmillMech.Service.Estimation;
using TreadmillMech.Service.Estimation.Joint;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Service.Review;

/// <summary>What the events of a visit come to: the state of the machine now, and how it was found.</summary>
internal sealed class VisitFacts
{
    /// <summary>Turns up to which a ladder goes.</summary>
    internal const double LongestLadder = 10;

    private readonly HashSet<int> refusedIndices;
    private readonly double atLiftLeft;
    private readonly double atLiftRight;
    private readonly List<TakeUpAction> turnedBefore = [];
    private readonly List<double> heldAt = [];
    private bool topWasOily;
    private bool heldLast;
    private bool lubricatedSinceHeld;
    private bool workSinceTest;
    private bool workSinceSpeeds;
    private (double Left, double Right) lockedPullAt;

    internal VisitFacts(Visit visit, VisitOptions options)
    {
        Visit = visit;
        Options = options;
        Say = new(visit);
        Refused = ReadingCheck.Refuse(visit, options);
        refusedIndices = [.. Refused.Select(r => r.Event)];
        ThreadTurnsAsFound = visit.Machine.TakeUp.ThreadLeft is { } left ? TurnsIn(left) : null;
        Friction = new(visit, options, refusedIndices);
        Walk();
        (atLiftLeft, atLiftRight) = Lifts.Count > 0 ? (Lifts[^1].LeftTurns, Lifts[^1].RightTurns) : (0, 0);
        Tension = LiftTest.Evaluate(
            visit.Machine,
            [
                .. Lifts.Select(l =>
                    l with
                    {
                        LeftTurns = l.LeftTurns - atLiftLeft,
                        RightTurns = l.RightTurns - atLiftRight,
                    }
                ),
            ],
            options
        );
        RollerFriction = FrictionOfRoller();
        Joint = new(visit, options, Used<Reading>().Any());
        Machine = MachineNow();
        SlipAsFound = Locate(first: true);
        SlipNow = Locate(first: false);
    }

    internal Visit Visit { get; }

    /// <summary>Words for this machine.</summary>
    internal MachineWords Say { get; }

    internal VisitOptions Options { get; }

    internal List<RefusedReading> Refused { get; }

    /// <summary>Refused readings that are wrong by themselves; one speed without another is only half a reading.</summary>
    internal IEnumerable<RefusedReading> CannotBeRight => Refused.Where(r => Visit.Events[r.Event] is not SpeedReading);

    /// <summary>Speeds that were read alone: no ratio comes of them, but with the display beside it one tells its error.</summary>
    internal IEnumerable<SpeedReading> LoneSpeeds => Refused.Select(r => Visit.Events[r.Event]).OfType<SpeedReading>();

    /// <summary>Deck friction by the best single reading there is for each state.</summary>
    internal FrictionFacts Friction { get; }

    /// <summary>What all readings together tell.</summary>
    internal JointFacts Joint { get; }

    /// <summary>Deck friction before the first work on the deck: from all readings, otherwise from the best single one.</summary>
    internal Answer<FrictionFact> FrictionAsFound => Together(Joint.Agreed?.DeckFrictionAsFound, Friction.AsFound);

    /// <summary>Deck friction now.</summary>
    internal Answer<FrictionFact> FrictionNow => Together(Joint.Agreed?.DeckFrictionNow, Friction.Now);

    /// <summary>Deck friction after the last work on the deck; as found where there was none.</summary>
    internal Answer<FrictionFact> FrictionAsLeft => Friction.Serviced ? FrictionNow : FrictionAsFound;

    internal List<LiftAtTurns> Lifts { get; } = [];

    internal List<(double Turns, bool Slipped)> SlipTests { get; } = [];

    /// <summary>What was tried against slip, one kind of work at a time, with its outcome.</summary>
    internal List<SlipTrial> Trials => SlipTrials.Of(Used<VisitEvent>(), Options.TurnsWorthJudging.Value);

    /// <summary>Turns given before this visit, as known from earlier visits and from what others told.</summary>
    internal double? TurnsBefore
    {
        get
        {
            double told = turnedBefore.Sum(t => 0.5 * (t.LeftTurns + t.RightTurns));
            double? known =
                Visit.EarlierTurns ?? (Visit.Earlier.IsEmpty ? null : Visit.Earlier.Sum(static e => e.Turns));
            return known is null && turnedBefore.Count == 0 ? null : (known ?? 0) + told;
        }
    }

    /// <summary>Turns that the thread left allowed before the first turn of this visit; null where not measured.</summary>
    internal double? ThreadTurnsAsFound { get; private set; }

    /// <summary>Whether the thread was measured, and is at its end.</summary>
    internal bool ThreadAtItsEnd => ThreadTurnsAsFound - Math.Max(LeftTurns, RightTurns) < Options.TurnStep.Value;

    /// <summary>
    /// Whether the thread ends before the belt holds: it gives way, and with all turns that the thread has left the margin
    /// is still below 1.
    /// </summary>
    internal bool ThreadEndsFirst =>
        SlipsNow
        && ThreadTurnsAsFound - Math.Max(LeftTurns, RightTurns) is { } left
        && left < LongestLadder
        && MarginAfter(Math.Max(0, left)).Is(out Figure? margin)
        && margin.Value + (margin.StandardUncertainty ?? 0) < 1;

    /// <summary>Whether a bolt turned hard when it was last tried.</summary>
    internal bool BoltTurnsHard => Used<BoltReading>().LastOrDefault()?.Feel == BoltFeel.Hard;

    /// <summary>Pull of the empty belt as found; null where it was not read.</summary>
    internal Force? EmptyPullAsFound => Used<PullReading>().FirstOrDefault()?.EmptyPull;

    internal double LeftTurns { get; private set; }

    internal double RightTurns { get; private set; }

    /// <summary>Turns given to both bolts in this visit, net mean of left and right.</summary>
    internal double Turns => 0.5 * (LeftTurns + RightTurns);

    internal bool OilOnRoller { get; private set; }

    internal bool DustOnRoller { get; private set; }

    internal bool RollerWiped { get; private set; }

    internal bool OilOnTop { get; private set; }

    /// <summary>Whether an oily top was cleaned, and no cloth has told since that it is dry.</summary>
    internal bool TopNotWipedSince { get; private set; }

    /// <summary>Whether the top of the belt was oily at this visit, and a cloth has come off it dry since.</summary>
    internal bool TopDriedUp => !OilOnTop && !TopNotWipedSince && topWasOily;

    /// <summary>Whether it held before lubricant went in, gives way since, and nothing was done about that yet.</summary>
    internal bool SlipsSinceLubricant { get; private set; }

    /// <summary>Turns at which a slip test held, though with as many or more it slips now; null where none did.</summary>
    internal double? HeldWithLess { get; private set; }

    /// <summary>Turns of the right bolt more than of the left since the drift was last counted.</summary>
    internal double UnequalTurns { get; private set; }

    /// <summary>Sideways movement with somebody on the belt, as last counted; null where not counted.</summary>
    internal TrackingReading? TrackingUnderLoad { get; private set; }

    /// <summary>Turns that somebody gave both bolts before the visit, and told of.</summary>
    internal double TurnsBySomebody => turnedBefore.Sum(static t => 0.5 * (t.LeftTurns + t.RightTurns));

    internal bool OilUnderneath { get; private set; }

    internal DriveBeltLook? DriveBeltLook { get; private set; }

    internal TrackingReading? Tracking { get; private set; }

    /// <summary>Lubricant given since the deck was last cleaned in this visit [m3].</summary>
    internal double Lubricant { get; private set; }

    internal MainsCurrentReading? MainsCurrent { get; private set; }

    /// <summary>Drift as found; the last one counts as left where no bolt was turned after it.</summary>
    internal TrackingReading? TrackingAsFound { get; private set; }

    /// <summary>
    /// Strand tension at the bolt position of the last lift: what is measured there needs no stiffness to be told.
    /// </summary>
    internal Answer<TensionEstimate> Tension { get; }

    /// <summary>Strand tension at rest before the first turn of the visit, by the lifts alone.</summary>
    internal Answer<Figure> TensionByLifts => TensionAt(0, 0);

    /// <summary>Strand tension at rest before the first turn of the visit, with its uncertainty.</summary>
    internal Answer<Figure> TensionAsFound => TensionTogether(0, 0) is { } all && all.Found ? all : TensionAt(0, 0);

    /// <summary>Strand tension at rest now, with its uncertainty.</summary>
    internal Answer<Figure> TensionNow => TensionAfter(0);

    /// <summary>Margin of the running belt under the test demand now.</summary>
    internal Answer<Figure> Margin => MarginAfter(0);

    /// <summary>Margin of the drive belt under the test demand now.</summary>
    internal Answer<Figure> DriveBeltMargin =>
        Joint.Agreed?.DriveBeltMargin is { } together && together.Is(out Estimate<double> told)
            ? MarginFigure(told, static joint => joint.Interval(VisitQuantity.DriveBeltMargin))
            : Point.DriveBeltMargin.Then(m => new Figure("margin", m, ""));

    /// <summary>The last locked pull since the rollers were last cleaned; null where there is none.</summary>
    internal LockedPullReading? LockedPull { get; private set; }

    /// <summary>Friction of the drive roller by the locked pull; no answer where it did not slide there.</summary>
    internal Answer<Estimate<double>> RollerFriction { get; }

    /// <summary>The machine as it is now, with what the readings of this visit found.</summary>
    internal Treadmill Machine { get; }

    internal Answer<SlipLocation> SlipAsFound { get; }

    internal Answer<SlipLocation> SlipNow { get; }

    /// <summary>The last slip test; null where there was none.</summary>
    internal bool? SlippedLast => SlipTests.Count == 0 ? null : SlipTests[^1].Slipped;

    /// <summary>Whether the visit tells at all if a belt slips: by a slip test, or by speeds under load.</summary>
    internal bool SlipJudged =>
        SlippedLast is not null || (SlipLocated.Is(out SlipLocation? located) && Tells(located));

    /// <summary>Whether slip shows now, by the last test, otherwise by the last speeds under load.</summary>
    internal bool SlipsNow => SlippedLast ?? (SlipLocated.Is(out SlipLocation? located) && Shows(located));

    /// <summary>Whether the speeds as left settle where slip is, if there is any.</summary>
    internal bool SpeedsSettle =>
        SlipNow.Is(out SlipLocation? located)
        && Tells(located)
        && (!Shows(located) || located.DriveBelt.Found || Machine.DriveBelt is null);

    /// <summary>Whether speeds show slip at any place.</summary>
    internal static bool Shows(SlipLocation located) => located.Place is not (SlipPlace.Nowhere or SlipPlace.NotTold);

    /// <summary>A roller that sits on the motor's shaft has no second contact to be read.</summary>
    private bool Tells(SlipLocation located) => located.Place != SlipPlace.NotTold || Machine.DriveBelt is null;

    /// <summary>
    /// Whether bolts, drive belt or rollers were worked on since the last slip test, or where there was none, since the
    /// last speeds under load: then nobody knows whether it still slips.
    /// </summary>
    internal bool RetestDue => SlipTests.Count > 0 ? workSinceTest : workSinceSpeeds;

    /// <summary>Whether the drive belt was worked on at this visit, and a test has held since.</summary>
    internal bool DriveBeltMended => Used<DriveBeltAction>().Any() && SlipJudged && !SlipsNow && !RetestDue;

    /// <summary>Whether rollers were cleaned or the drive belt worked on since a test slipped.</summary>
    internal bool OtherWorkSinceSlip { get; private set; }

    /// <summary>Where the speeds put the slip: those after the last work on the belts, otherwise those as found.</summary>
    internal Answer<SlipLocation> SlipLocated => SlipNow.Found ? SlipNow : SlipAsFound;

    /// <summary>Whether roller and motor were both read under load, so that the drive belt is judged.</summary>
    internal bool DriveBeltRead => SlipLocated.Is(out SlipLocation? located) && located.DriveBelt.Found;

    /// <summary>Whether the speeds put slip at a place.</summary>
    internal bool LocatedAt(SlipPlace place) => SlipLocated.Is(out SlipLocation? located) && located.Place == place;

    internal OperatingPoint Point => Machine.At(Visit.TestDemand);

    /// <summary>Events of a kind, in order, without the refused ones.</summary>
    internal IEnumerable<TEvent> Used<TEvent>()
        where TEvent : VisitEvent => Visit.Events.Where((_, i) => !refusedIndices.Contains(i)).OfType<TEvent>();

    /// <summary>The machine as known now, with both bolts at turns of this visit; null beyond what bolts allow.</summary>
    internal Treadmill? MachineAt(double leftTurns, double rightTurns)
    {
        (double left, double right) = SinceTension(leftTurns, rightTurns);
        return Math.Abs(left) > TakeUp.MostTurns || Math.Abs(right) > TakeUp.MostTurns
            ? null
            : Machine with
            {
                TakeUp = Machine.TakeUp with { LeftTurns = left, RightTurns = right },
            };
    }

    /// <summary>Turns since the position that the tension stands for: the last lift's, or the machine's as given.</summary>
    private (double Left, double Right) SinceTension(double leftTurns, double rightTurns) =>
        Tension.Found
            ? (leftTurns - atLiftLeft, rightTurns - atLiftRight)
            : (leftTurns + Visit.Machine.TakeUp.LeftTurns, rightTurns + Visit.Machine.TakeUp.RightTurns);

    /// <summary>
    /// Margin with further turns on both bolts: from all readings, otherwise from the machine where everything of it is
    /// known, otherwise from the slip tests on the ladder.
    /// </summary>
    internal Answer<Figure> MarginAfter(double turns)
    {
        if (TurnsFit && Joint.Agreed?.BeltMarginAfter(turns) is { } together && together.Is(out Estimate<double> told))
        {
            return MarginFigure(told, joint => joint.BeltMarginIntervalAfter(turns));
        }

        if (MachineAt(LeftTurns + turns, RightTurns + turns) is not { } machine)
        {
            return new Shortfall(Reason.NotInRange, "turns");
        }

        Answer<double> known = machine.At(Visit.TestDemand).BeltMargin;
        return known.Found ? known.Then(m => new Figure("margin", m, ""))
            : SlipBracket.Margin(this, Turns + turns) is { } bracketed ? bracketed
            : known.Missing;
    }

    /// <summary>Strand tension at rest with further turns on both bolts.</summary>
    internal Answer<Figure> TensionAfter(double turns)
    {
        if (TensionTogether(LeftTurns + turns, RightTurns + turns) is { Found: true } together)
        {
            return together;
        }

        return Tension.Found
            ? TensionAt(LeftTurns + turns, RightTurns + turns)
            : (MachineAt(LeftTurns + turns, RightTurns + turns) ?? Machine)
                .At(Visit.TestDemand)
                .RestTension.Then(t => new Figure("strand tension", Si.Force.ToSi(t), "N"));
    }

    private Figure MarginFigure(Estimate<double> told, Func<VisitEstimate, Answer<QuantityInterval>> interval) =>
        Joint.Bent(new("margin", told.Value, "", told.StandardUncertainty), interval);

    /// <summary>
    /// A friction that was read, and that a deck can have; what the machine was described with is no reading.
    /// </summary>
    private Answer<FrictionFact> Together(Answer<Estimate<double>>? joint, Answer<FrictionFact> single) =>
        joint is { } answer
        && answer.Is(out Estimate<double> told)
        && told.Value is >= Deck.LeastFriction and <= Deck.MostFriction
        && (single.Found || Visit.Machine.Deck.Friction is null)
            ? new FrictionFact(told, "all readings together")
            : single;

    /// <summary>
    /// Tension from all readings. Without a lift it is not told in newtons; away from the bolt position of a lift, or of a
    /// tension that is given, only where the stiffness is told as well.
    /// </summary>
    private Answer<Figure> TensionTogether(double leftTurns, double rightTurns)
    {
        bool given =
            Visit.Machine.RestTension is not null
            && Visit.Machine.TakeUp is { LeftTurns: 0, RightTurns: 0 }
            && turnedBefore.Count == 0;
        if (Joint.Agreed is not { } told || Lifts.Count == 0 || !TurnsFit)
        {
            return new Shortfall(Reason.InputUnknown, "RestTension");
        }

        bool At(double left, double right) => Near(leftTurns, left) && Near(rightTurns, right);
        bool read =
            (Lifts.Count > 0 && At(atLiftLeft, atLiftRight))
            || (At(0, 0) && (given || Lifts.Any(l => Near(l.LeftTurns, 0) && Near(l.RightTurns, 0))));
        double further = (0.5 * (leftTurns + rightTurns)) - Turns;
        return !read && !told.RelaxedForcePerWidth.Found ? new Shortfall(Reason.InputUnknown, "BeltStiffness")
            : Math.Abs(further) > LongestLadder ? new Shortfall(Reason.NotInRange, "turns")
            : told.RestTensionAfter(further)
                .Then(t =>
                    Joint.Bent(
                        new("strand tension", Si.Force.ToSi(t.Value), "N", Si.Force.ToSi(t.StandardUncertainty)),
                        joint => joint.RestTensionIntervalAfter(further)
                    )
                );
    }

    /// <summary>Whether bolts have as many turns: what a belt does beyond them is nobody's guess.</summary>
    private bool TurnsFit => Math.Max(Math.Abs(LeftTurns), Math.Abs(RightTurns)) <= TakeUp.MostTurns - LongestLadder;

    private static bool Near(double turns, double other) => Math.Abs(turns - other) < 1e-9;

    private Answer<Figure> TensionAt(double leftTurns, double rightTurns) =>
        Tension.Is(out TensionEstimate? estimate)
            ? LiftTest
                .TensionAfter(Visit.Machine, estimate, leftTurns - atLiftLeft, rightTurns - atLiftRight)
                .Then(t => new Figure(
                    "strand tension",
                    Si.Force.ToSi(t.Value),
                    "N",
                    Si.Force.ToSi(t.StandardUncertainty)
                ))
            : Tension.Missing;

    private double TurnsIn(Length thread) =>
        ScrewThreadLaws.Turns<Real>(Si.Length.ToSi(Visit.Machine.TakeUp.Thread.Lead), Si.Length.ToSi(thread));

    private void Walk()
    {
        for (int i = 0; i < Visit.Events.Length; i++)
        {
            if (!refusedIndices.Contains(i))
            {
                Take(Visit.Events[i]);
            }
        }
    }

    private void Take(VisitEvent happened)
    {
        switch (happened)
        {
            case LiftReading lift:
                Lifts.Add(new(lift, LeftTurns, RightTurns));
                break;
            case SlipTestReading test:
                SlipTests.Add((Turns, test.Slipped));
                Tested(test.Slipped);
                workSinceTest = false;
                OtherWorkSinceSlip = OtherWorkSinceSlip && !test.Slipped;
                break;
            case SpeedReading { State: LoadState.Loaded }:
                workSinceSpeeds = false;
                break;
            case LockedPullReading locked:
                LockedPull = locked;
                lockedPullAt = (LeftTurns, RightTurns);
                break;
            case TrackingReading { State: LoadState.Unloaded } tracking:
                Tracking = tracking;
                UnequalTurns = 0;
                TrackingAsFound ??= Turns.Equals(0) && LeftTurns.Equals(0) ? tracking : null;
                break;
            case TrackingReading tracking:
                TrackingUnderLoad = tracking;
                break;
            case WipeReading wipe:
                Wiped(wipe);
                break;
            case DriveBeltReading look:
                DriveBeltLook = look.Look;
                break;
            case MainsCurrentReading { State: LoadState.Loaded } mains:
                MainsCurrent = mains;
                break;
            case ThreadReading thread:
                ThreadTurnsAsFound = TurnsIn(thread.Left) + Math.Max(LeftTurns, RightTurns);
                break;
            case TakeUpAction { By: TurnedBy.SomebodyBefore } before:
                turnedBefore.Add(before);
                break;
            case TakeUpAction turned:
                LeftTurns += turned.LeftTurns;
                RightTurns += turned.RightTurns;
                UnequalTurns += turned.RightTurns - turned.LeftTurns;
                Tracking = null;
                workSinceTest = workSinceSpeeds = true;
                break;
            case CleanAction clean:
                Cleaned(clean.Place);
                break;
            case LubricateAction oil:
                Lubricant += Si.Volume.ToSi(oil.Volume);
                lubricatedSinceHeld = heldLast;
                heldAt.Clear();
                break;
            case DriveBeltAction work:
                DriveBeltLook = work.Replaced ? null : DriveBeltLook;
                workSinceTest = workSinceSpeeds = OtherWorkSinceSlip = true;
                heldAt.Clear();
                break;
            default:
                break;
        }
    }

    private void Tested(bool slipped)
    {
        if (!slipped)
        {
            heldAt.Add(Turns);
            HeldWithLess = null;
            SlipsSinceLubricant = lubricatedSinceHeld = false;
        }
        else
        {
            // What held with less tension cannot slip for want of it; the two tests do not go together.
            HeldWithLess = heldAt.Where(t => t <= Turns + 1e-9).Select(static t => (double?)t).LastOrDefault();
            SlipsSinceLubricant = SlipsSinceLubricant || lubricatedSinceHeld;
        }

        heldLast = !slipped;
    }

    private void Wiped(WipeReading wipe)
    {
        // Under the foot a thin film belongs; on the roller and on top it is lubricant where none may be.
        bool oil = wipe.Trace == WipedTrace.Oil;
        bool film = wipe.Trace == WipedTrace.Film;
        switch (wipe.Place)
        {
            case WipedPlace.DriveRoller:
                RollerWiped = true;
                OilOnRoller = oil || film;
                SlipsSinceLubricant = false;
                DustOnRoller = wipe.Trace == WipedTrace.Dust;
                break;
            case WipedPlace.BeltTop:
                OilOnTop = oil || film;
                topWasOily = topWasOily || OilOnTop;
                TopNotWipedSince = false;
                break;
            default:
                OilUnderneath = oil;
                break;
        }
    }

    private void Cleaned(CleanedPlace place)
    {
        switch (place)
        {
            case CleanedPlace.Rollers:
                OilOnRoller = DustOnRoller = SlipsSinceLubricant = lubricatedSinceHeld = false;
                heldAt.Clear();
                LockedPull = null;
                workSinceTest = workSinceSpeeds = OtherWorkSinceSlip = true;
                break;
            case CleanedPlace.BeltTop:
                TopNotWipedSince = TopNotWipedSince || OilOnTop;
                OilOnTop = false;
                break;
            default:
                OilUnderneath = false;
                Lubricant = 0;
                break;
        }
    }

    private Treadmill MachineNow()
    {
        Treadmill machine = Joint.Fill(Visit.Machine, lifted: Lifts.Count > 0);
        Force? tension = machine.RestTension;
        RunningBelt belt = machine.Belt;
        if (Tension.Is(out TensionEstimate? lifted))
        {
            tension = TensionTogether(atLiftLeft, atLiftRight).Is(out Figure? together)
                ? Si.Force.FromSi(together.Value)
                : lifted.RestTension.Value;
            belt =
                Joint.Agreed is null && lifted.StiffnessObserved
                    ? belt with
                    {
                        RelaxedForcePerWidth = lifted.RelaxedForcePerWidth.Value,
                    }
                    : belt;
        }

        // More turns than any bolt has: their tension is nobody's guess, and the ladder goes on from here.
        (double left, double right) = SinceTension(LeftTurns, RightTurns);
        bool turnsFit = Math.Max(Math.Abs(left), Math.Abs(right)) <= TakeUp.MostTurns - LongestLadder;
        return machine with
        {
            Belt = belt,
            RestTension = turnsFit ? tension : null,
            Deck = FrictionNow.Is(out FrictionFact? fact)
                ? machine.Deck with
                {
                    Friction = fact.Friction.Value,
                }
                : machine.Deck,
            TakeUp = machine.TakeUp with { LeftTurns = turnsFit ? left : 0, RightTurns = turnsFit ? right : 0 },
            BeltDrag = machine.BeltDrag ?? PulledEmpty(),
            DriveRoller =
                Joint.Agreed is null && RollerFriction.Is(out Estimate<double> gripping)
                    ? machine.DriveRoller with
                    {
                        Friction = gripping.Value,
                    }
                    : machine.DriveRoller,
            DriveBelt =
                Joint.Agreed is null && machine.DriveBelt is { } drive
                    ? drive with
                    {
                        Tension = SpanShare.Now(this) ?? drive.Tension,
                    }
                    : machine.DriveBelt,
        };
    }

    private Force? PulledEmpty() =>
        Used<PullReading>()
            .LastOrDefault(p => p.MotorUncoupled && Si.Force.ToSi(p.EmptyPull) <= Treadmill.MostBeltDrag)
            ?.EmptyPull;

    private Answer<Estimate<double>> FrictionOfRoller()
    {
        if (LockedPull is not { Slid: SlidContact.RunningBelt } reading)
        {
            return new Shortfall(Reason.InputUnknown, "DriveRollerFriction");
        }

        (double left, double right) = lockedPullAt;
        Answer<Estimate<Force>> tension =
            Tension.Is(out TensionEstimate? lifted)
                ? LiftTest.TensionAfter(Visit.Machine, lifted, left - atLiftLeft, right - atLiftRight)
            : Math.Max(Math.Abs(left), Math.Abs(right)) > LongestLadder
                ? new Shortfall(Reason.InputUnknown, "RestTension")
            : new LoopGeometry(ChangedMachine.Turned(Visit.Machine, left, right)).Tension.Then(t => new Estimate<Force>(
                Si.Force.FromSi(t),
                default
            ));
        double? own = reading.RelativeUncertainty is { } stated ? Si.Ratio.ToSi(stated) : Options.ScaleForce.Value;
        return tension.Is(out Estimate<Force> rest)
            ? Estimation.RollerFriction.FromLockedPull(Visit.Machine, reading.Pull, rest, own)
            : tension.Missing;
    }

    private Answer<SlipLocation> Locate(bool first)
    {
        // A reading stands for the belts as they are now while no work but turns taken back lies after it, and for the
        // belts as found while no work lies before it.
        List<(int Work, double Left, double Right, SpeedReading Reading)> speeds = [];
        int work = 0;
        double left = 0;
        double right = 0;
        for (int i = 0; i < Visit.Events.Length; i++)
        {
            switch (Visit.Events[i])
            {
                case SpeedReading reading when !refusedIndices.Contains(i):
                    speeds.Add((work, left, right, reading));
                    break;
                case TakeUpAction { By: TurnedBy.Technician } turned:
                    left += turned.LeftTurns;
                    right += turned.RightTurns;
                    break;
                case DriveBeltAction or CleanAction { Place: CleanedPlace.Rollers }:
                    work++;
                    break;
                default:
                    break;
            }
        }

        (int asked, double atLeft, double atRight) = first ? (0, 0, 0) : (work, LeftTurns, RightTurns);
        bool Stands((int Work, double Left, double Right, SpeedReading Reading) s) =>
            s.Work == asked && Math.Abs(s.Left - atLeft) < 1e-9 && Math.Abs(s.Right - atRight) < 1e-9;
        SpeedReading? loaded = speeds.LastOrDefault(s => s.Reading.State == LoadState.Loaded && Stands(s)).Reading;
        SpeedReading? unloaded =
            speeds.LastOrDefault(s => s.Reading.State == LoadState.Unloaded && Stands(s)).Reading
            ?? speeds.LastOrDefault(s => s.Reading.State == LoadState.Unloaded).Reading;
        return loaded is null || unloaded is null
            ? new Shortfall(Reason.InputUnknown, "speeds")
            : SlipLocation.Of(unloaded, loaded, Options);
    }
}
