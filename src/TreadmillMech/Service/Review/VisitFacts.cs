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
    private readonly List<EventAtTurns> moments;
    private readonly double atLiftLeft;
    private readonly double atLiftRight;

    internal VisitFacts(Visit visit, VisitOptions options)
    {
        Visit = visit;
        Options = options;
        Say = new(visit);
        Refused = ReadingCheck.Refuse(visit, options);
        refusedIndices = [.. Refused.Select(r => r.Event)];
        moments = EventAtTurns.Of(Used<VisitEvent>());
        Bolts = new(visit, options, moments);
        Traces = new(moments);
        Tracking = new(moments);
        Slip = new(visit, options, moments, Bolts);
        Friction = new(visit, options, refusedIndices);
        Lifts =
        [
            .. from moment in moments
            where moment.Happened is LiftReading
            select new LiftAtTurns((LiftReading)moment.Happened, moment.LeftTurns, moment.RightTurns),
        ];
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

    /// <summary>How far the bolts were turned, and what their thread leaves.</summary>
    internal BoltFacts Bolts { get; }

    /// <summary>What a cloth came off with.</summary>
    internal TraceFacts Traces { get; }

    /// <summary>Sideways movement of the belt.</summary>
    internal TrackingFacts Tracking { get; }

    /// <summary>Whether a belt slips, and which one.</summary>
    internal SlipFacts Slip { get; }

    internal List<LiftAtTurns> Lifts { get; }

    /// <summary>Pull of the empty belt as found; null where it was not read.</summary>
    internal Force? EmptyPullAsFound => Used<PullReading>().FirstOrDefault()?.EmptyPull;

    /// <summary>The drive belt as last seen; null where nobody looked, or it was replaced since.</summary>
    internal DriveBeltLook? DriveBeltLook =>
        Used<VisitEvent>().LastOrDefault(static e => e is DriveBeltReading or DriveBeltAction { Replaced: true })
            is DriveBeltReading seen
            ? seen.Look
            : null;

    internal MainsCurrentReading? MainsCurrent =>
        Used<MainsCurrentReading>().LastOrDefault(static m => m.State == LoadState.Loaded);

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
    internal LockedPullReading? LockedPull => LockedPullAt?.Happened as LockedPullReading;

    private EventAtTurns? LockedPullAt =>
        moments
            .Where(static m => m.Happened is LockedPullReading or CleanAction { Place: CleanedPlace.Rollers })
            .Select(static m => (EventAtTurns?)m)
            .LastOrDefault();

    /// <summary>Friction of the drive roller by the locked pull; no answer where it did not slide there.</summary>
    internal Answer<Estimate<double>> RollerFriction { get; }

    /// <summary>The machine as it is now, with what the readings of this visit found.</summary>
    internal Treadmill Machine { get; }

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
    /// Whether the thread ends before the belt holds: it gives way, and with all turns that the thread has left the margin
    /// is still below 1.
    /// </summary>
    internal bool ThreadEndsFirst =>
        Slip.ShowsNow
        && Bolts.ThreadTurnsLeft is { } left
        && left < LongestLadder
        && MarginAfter(Math.Max(0, left)).Is(out Figure? margin)
        && margin.Value + (margin.StandardUncertainty ?? 0) < 1;

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

        if (MachineAt(Bolts.LeftTurns + turns, Bolts.RightTurns + turns) is not { } machine)
        {
            return new Shortfall(Reason.NotInRange, "turns");
        }

        Answer<double> known = machine.At(Visit.TestDemand).BeltMargin;
        return known.Found ? known.Then(m => new Figure("margin", m, ""))
            : SlipBracket.Margin(this, Bolts.Turns + turns) is { } bracketed ? bracketed
            : known.Missing;
    }

    /// <summary>Strand tension at rest with further turns on both bolts.</summary>
    internal Answer<Figure> TensionAfter(double turns)
    {
        if (TensionTogether(Bolts.LeftTurns + turns, Bolts.RightTurns + turns) is { Found: true } together)
        {
            return together;
        }

        return Tension.Found
            ? TensionAt(Bolts.LeftTurns + turns, Bolts.RightTurns + turns)
            : (MachineAt(Bolts.LeftTurns + turns, Bolts.RightTurns + turns) ?? Machine)
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
            && !Bolts.TurnedBySomebody;
        if (Joint.Agreed is not { } told || Lifts.Count == 0 || !TurnsFit)
        {
            return new Shortfall(Reason.InputUnknown, "RestTension");
        }

        bool At(double left, double right) => Near(leftTurns, left) && Near(rightTurns, right);
        bool read =
            (Lifts.Count > 0 && At(atLiftLeft, atLiftRight))
            || (At(0, 0) && (given || Lifts.Any(l => Near(l.LeftTurns, 0) && Near(l.RightTurns, 0))));
        double further = (0.5 * (leftTurns + rightTurns)) - Bolts.Turns;
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
    private bool TurnsFit =>
        Math.Max(Math.Abs(Bolts.LeftTurns), Math.Abs(Bolts.RightTurns)) <= TakeUp.MostTurns - LongestLadder;

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
        (double left, double right) = SinceTension(Bolts.LeftTurns, Bolts.RightTurns);
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
        if (LockedPullAt is not { Happened: LockedPullReading { Slid: SlidContact.RunningBelt } reading } pulled)
        {
            return new Shortfall(Reason.InputUnknown, "DriveRollerFriction");
        }

        (double left, double right) = (pulled.LeftTurns, pulled.RightTurns);
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
}
