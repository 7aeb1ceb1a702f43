using TreadmillMech.Service;

namespace TreadmillMech.Tests.Service.Bench;

/// <summary>Visits of every cause, one kind of technician, and what the review made of them.</summary>
internal sealed class BenchRun
{
    internal const int UsualOfEach = 30;

    // The chances were set while looking at runs from seed 0, laws and steps while looking at those from 100 000, 200 000 and
    // 300 000; these machines were never looked at.
    internal const int UsualSeed = 7_000_000;

    private readonly int eachCause;
    private readonly int follow;
    private (int Visits, int Right) told;
    private (int Visits, int Right) untold;
    private readonly Dictionary<ReadingKind, (int Told, int Held)> held = [];
    private readonly Dictionary<Cause, Dictionary<Cause, int>> confusion = [];

    internal BenchRun(
        double thoroughness,
        ModelError error,
        int follow = 0,
        int eachCause = UsualOfEach,
        int firstSeed = UsualSeed
    )
    {
        this.eachCause = eachCause;
        this.follow = follow;
        ModelIsRight = error == ModelError.None;
        foreach (Cause cause in Enum.GetValues<Cause>())
        {
            confusion[cause] = [];
            for (int i = 0; i < eachCause; i++)
            {
                Judge(cause, new(firstSeed + (1000 * (int)cause) + i), thoroughness, error);
            }
        }
    }

    /// <summary>Whether the bench's truth follows the model that the review holds in mind.</summary>
    internal bool ModelIsRight { get; }

    internal int Visits => eachCause * confusion.Count;

    /// <summary>Share of visits in which the hidden cause stands first.</summary>
    internal double RightFirst => confusion.Sum(c => (double)c.Value.GetValueOrDefault(c.Key)) / Visits;

    /// <summary>Visits with the readings without which their cause cannot be known, and the share of them that is right.</summary>
    internal (int Visits, double Right) Told => (told.Visits, (double)told.Right / told.Visits);

    /// <summary>The other visits.</summary>
    internal (int Visits, double Right) Untold => (untold.Visits, (double)untold.Right / untold.Visits);

    /// <summary>Share of visits before any work whose first step serves the hidden cause.</summary>
    internal double RightAction { get; private set; }

    /// <summary>Share of visits whose steps replace a part that the hidden cause does not ask for.</summary>
    internal double UnneededParts { get; private set; }

    /// <summary>Visits in which bolts were to be turned before the readings that must come first.</summary>
    internal int GuardsBroken { get; private set; }

    /// <summary>How many values of a kind were told, and the share whose stated 95 % hold the truth.</summary>
    internal (int Told, double Held) Coverage(ReadingKind kind) =>
        held.TryGetValue(kind, out (int Told, int Held) count) ? (count.Told, (double)count.Held / count.Told) : (0, 0);

    /// <summary>Chances stated for the first cause, and how often it was right.</summary>
    internal Calibration Calibration { get; } = new();

    internal IEnumerable<(Cause Hidden, int Right, string Others)> Rows =>
        confusion.Select(c =>
            (
                c.Key,
                c.Value.GetValueOrDefault(c.Key),
                string.Join(
                    ", ",
                    c.Value.Where(f => f.Key != c.Key).OrderBy(f => f.Key).Select(f => $"{f.Key} {f.Value}")
                )
            )
        );

    private void Judge(Cause cause, Random random, double thoroughness, ModelError error)
    {
        HiddenState state = Draw.State(cause, random);
        (ReadingKind Kind, double Value)[] truths = [.. Truths(state)];
        Technician technician = new(state, random, thoroughness, error);
        Visit before = technician.Read();
        VisitSheet early = VisitReview.Of(before);
        if (follow > 0)
        {
            before = technician.Follow(early, follow);
            early = VisitReview.Of(before);
        }

        Visit after = technician.Work();
        VisitSheet late = VisitReview.Of(after);
        Cause first = late.Causes[0].Cause;
        confusion[cause][first] = confusion[cause].GetValueOrDefault(first) + 1;
        Calibration.Add(late.Causes[0], cause);
        int right = first == cause ? 1 : 0;
        if (Telling.WasRead(cause, after))
        {
            told = (told.Visits + 1, told.Right + right);
        }
        else
        {
            untold = (untold.Visits + 1, untold.Right + right);
        }

        RightAction += Actions.Serve(cause, before, early) ? 1.0 / Total : 0;
        UnneededParts += Actions.ReplacesInVain(cause, late) ? 1.0 / Total : 0;
        foreach ((ReadingKind kind, double truth) in truths)
        {
            Cover(early, kind, truth);
        }

        GuardsBroken += Broken(before, early) || Broken(after, late) ? 1 : 0;
    }

    /// <summary>What the sheet before any work may tell of the machine, in the sheet's units.</summary>
    private static IEnumerable<(ReadingKind Kind, double Value)> Truths(HiddenState state)
    {
        OperatingPoint point = state.Truth(0).At(state.Demand);
        yield return (ReadingKind.RestTension, state.Tension);
        yield return (ReadingKind.BeltStiffness, state.PerWidth);
        yield return (ReadingKind.DeckFriction, state.DeckFriction);
        yield return (ReadingKind.RollerFriction, state.RollerFriction);
        yield return (ReadingKind.DriveBeltTension, state.DriveBeltTension);
        yield return (ReadingKind.NoLoadPull, Technician.NoLoadPullOf(state));
        yield return (ReadingKind.MotorConstant, Technician.ConstantOf(state));
        yield return (ReadingKind.BeltMargin, point.BeltMargin.Value);
        yield return (ReadingKind.DriveBeltMargin, point.DriveBeltMargin.Value);
    }

    private void Cover(VisitSheet sheet, ReadingKind kind, double truth)
    {
        ReadingRow? row = sheet.Readings.FirstOrDefault(r => r.Kind == kind);

        // Before any work what is told as left is as found.
        if ((row?.AsFound ?? row?.AsLeft) is { StandardUncertainty: { } uncertainty } found)
        {
            double lower = found.Lower ?? found.Value - (1.96 * uncertainty);
            double upper = found.Upper ?? found.Value + (1.96 * uncertainty);
            (int told, int inside) = held.GetValueOrDefault(kind);
            held[kind] = (told + 1, inside + (truth >= lower && truth <= upper ? 1 : 0));
        }
    }

    private static bool Broken(Visit visit, VisitSheet sheet) =>
        sheet.AdvisesATurnOfBoth()
        && Guards.Of(visit, sheet)
            is not {
                RollerWiped: true,
                RollerDry: true,
                DriveBeltRead: true,
                Reference: true,
                TurnsLeft: >= 0.25 - 1e-9,
                Retested: true
            };

    private int Total => eachCause * Enum.GetValues<Cause>().Length;
}
