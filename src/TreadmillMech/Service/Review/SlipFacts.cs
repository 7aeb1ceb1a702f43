using TreadmillMech.Service.Causes;
using TreadmillMech.Service.Estimation;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Service.Review;

/// <summary>Whether a belt slips, which one, and what was done about it since.</summary>
internal sealed class SlipFacts
{
    private readonly Visit visit;
    private readonly VisitOptions options;
    private readonly List<EventAtTurns> moments;
    private readonly BoltFacts bolts;
    private readonly List<double> heldAt = [];
    private bool heldLast;
    private bool lubricatedSinceHeld;
    private bool workSinceTest;
    private bool workSinceSpeeds;

    internal SlipFacts(Visit visit, VisitOptions options, List<EventAtTurns> moments, BoltFacts bolts)
    {
        this.visit = visit;
        this.options = options;
        this.moments = moments;
        this.bolts = bolts;
        moments.ForEach(Take);
        AsFound = Locate(first: true);
        Now = Locate(first: false);
    }

    /// <summary>Slip tests in order, each with the turns of both bolts at which it was made.</summary>
    internal List<(double Turns, bool Slipped)> Tests { get; } = [];

    /// <summary>What was tried against slip, one kind of work at a time, with its outcome.</summary>
    internal List<SlipTrial> Trials =>
        SlipTrials.Of(moments.Select(static m => m.Happened), options.TurnsWorthJudging.Value);

    /// <summary>The last slip test; null where there was none.</summary>
    internal bool? SlippedLast => Tests.Count == 0 ? null : Tests[^1].Slipped;

    /// <summary>Where speeds put the slip before any work on the belts.</summary>
    internal Answer<SlipLocation> AsFound { get; }

    /// <summary>Where speeds put the slip after the last work on the belts.</summary>
    internal Answer<SlipLocation> Now { get; }

    /// <summary>Where the speeds put the slip: those after the last work on the belts, otherwise those as found.</summary>
    internal Answer<SlipLocation> Located => Now.Found ? Now : AsFound;

    /// <summary>Whether the visit tells at all if a belt slips: by a slip test, or by speeds under load.</summary>
    internal bool Judged => SlippedLast is not null || (Located.Is(out SlipLocation? located) && Tells(located));

    /// <summary>Whether slip shows now, by the last test, otherwise by the last speeds under load.</summary>
    internal bool ShowsNow => SlippedLast ?? (Located.Is(out SlipLocation? located) && Shows(located));

    /// <summary>Whether the speeds as left settle where slip is, if there is any.</summary>
    internal bool SpeedsSettle =>
        Now.Is(out SlipLocation? located) && Tells(located) && (!Shows(located) || located.DriveBelt.Found || Direct);

    /// <summary>
    /// Whether bolts, drive belt or rollers were worked on since the last slip test, or where there was none, since the
    /// last speeds under load: then nobody knows whether it still slips.
    /// </summary>
    internal bool RetestDue => Tests.Count > 0 ? workSinceTest : workSinceSpeeds;

    /// <summary>Whether the drive belt was worked on at this visit, and a test has held since.</summary>
    internal bool DriveBeltMended =>
        moments.Any(static m => m.Happened is DriveBeltAction) && Judged && !ShowsNow && !RetestDue;

    /// <summary>Whether rollers were cleaned or the drive belt worked on since a test slipped.</summary>
    internal bool OtherWorkSince { get; private set; }

    /// <summary>Whether it held before lubricant went in, gives way since, and nothing was done about that yet.</summary>
    internal bool SinceLubricant { get; private set; }

    /// <summary>Turns at which a slip test held, though with as many or more it slips now; null where none did.</summary>
    internal double? HeldWithLess { get; private set; }

    /// <summary>Whether roller and motor were both read under load, so that the drive belt is judged.</summary>
    internal bool DriveBeltRead => Located.Is(out SlipLocation? located) && located.DriveBelt.Found;

    /// <summary>Whether the speeds put slip at a place.</summary>
    internal bool LocatedAt(SlipPlace place) => Located.Is(out SlipLocation? located) && located.Place == place;

    /// <summary>Whether speeds show slip at any place.</summary>
    internal static bool Shows(SlipLocation located) => located.Place is not (SlipPlace.Nowhere or SlipPlace.NotTold);

    /// <summary>A roller that sits on the motor's shaft has no second contact to be read.</summary>
    private bool Direct => visit.Machine.DriveBelt is null;

    private bool Tells(SlipLocation located) => located.Place != SlipPlace.NotTold || Direct;

    private void Take(EventAtTurns moment)
    {
        switch (moment.Happened)
        {
            case SlipTestReading test:
                Tested(test.Slipped, moment.Turns);
                break;
            case SpeedReading { State: LoadState.Loaded }:
                workSinceSpeeds = false;
                break;
            case WipeReading { Place: WipedPlace.DriveRoller }:
                SinceLubricant = false;
                break;
            case TakeUpAction { By: TurnedBy.Technician }:
                workSinceTest = workSinceSpeeds = true;
                break;
            case LubricateAction:
                lubricatedSinceHeld = heldLast;
                heldAt.Clear();
                break;
            case CleanAction { Place: CleanedPlace.Rollers }:
                SinceLubricant = lubricatedSinceHeld = false;
                Worked();
                break;
            case DriveBeltAction:
                Worked();
                break;
            default:
                break;
        }
    }

    private void Worked()
    {
        workSinceTest = workSinceSpeeds = OtherWorkSince = true;
        heldAt.Clear();
    }

    private void Tested(bool slipped, double turns)
    {
        Tests.Add((turns, slipped));
        if (!slipped)
        {
            heldAt.Add(turns);
            HeldWithLess = null;
            SinceLubricant = lubricatedSinceHeld = false;
        }
        else
        {
            // What held with less tension cannot slip for want of it; the two tests do not go together.
            HeldWithLess = heldAt.Where(t => t <= turns + 1e-9).Select(static t => (double?)t).LastOrDefault();
            SinceLubricant = SinceLubricant || lubricatedSinceHeld;
            OtherWorkSince = false;
        }

        heldLast = !slipped;
        workSinceTest = false;
    }

    private Answer<SlipLocation> Locate(bool first)
    {
        // A reading stands for the belts as they are now while no work but turns taken back lies after it, and for the
        // belts as found while no work lies before it.
        List<(int Work, EventAtTurns At, SpeedReading Reading)> speeds = [];
        int work = 0;
        foreach (EventAtTurns moment in moments)
        {
            switch (moment.Happened)
            {
                case SpeedReading reading:
                    speeds.Add((work, moment, reading));
                    break;
                case DriveBeltAction or CleanAction { Place: CleanedPlace.Rollers }:
                    work++;
                    break;
                default:
                    break;
            }
        }

        (int asked, double atLeft, double atRight) = first ? (0, 0, 0) : (work, bolts.LeftTurns, bolts.RightTurns);
        bool Stands((int Work, EventAtTurns At, SpeedReading Reading) s) =>
            s.Work == asked && Math.Abs(s.At.LeftTurns - atLeft) < 1e-9 && Math.Abs(s.At.RightTurns - atRight) < 1e-9;
        SpeedReading? loaded = speeds.LastOrDefault(s => s.Reading.State == LoadState.Loaded && Stands(s)).Reading;
        SpeedReading? unloaded =
            speeds.LastOrDefault(s => s.Reading.State == LoadState.Unloaded && Stands(s)).Reading
            ?? speeds.LastOrDefault(s => s.Reading.State == LoadState.Unloaded).Reading;
        return loaded is null || unloaded is null
            ? new Shortfall(Reason.InputUnknown, "speeds")
            : SlipLocation.Of(unloaded, loaded, options);
    }
}
