using System.Globalization;
using System.Text;
using TreadmillMech.Service;

namespace TreadmillMech.Tests.Service.Bench;

/// <summary>The page of the bench, written from its runs.</summary>
internal static class BenchPage
{
    internal const int Followed = 3;

    private static readonly (string Name, double Thoroughness, ModelError Error, int Follow)[] Kinds =
    [
        ("thorough: 97 of 100 usual readings taken", 0.97, ModelError.None, 0),
        ("usual: 80 of 100", 0.8, ModelError.None, 0),
        ("usual, and up to three readings that the sheet then proposes", 0.8, ModelError.None, Followed),
        ("hasty: 50 of 100", 0.5, ModelError.None, 0),
        ("hasty, and up to three readings that the sheet then proposes", 0.5, ModelError.None, Followed),
        ("thorough, friction read 25 % low and slip half as large as the model has it", 0.97, new(0.75, 0.5), 0),
        ("thorough, friction read 25 % high and slip twice as large", 0.97, new(1.25, 2), 0),
    ];

    private static readonly (ReadingKind Kind, string Name)[] Told =
    [
        (ReadingKind.RestTension, "tension"),
        (ReadingKind.BeltStiffness, "stiffness of the belt"),
        (ReadingKind.DeckFriction, "deck friction"),
        (ReadingKind.RollerFriction, "friction of the drive roller"),
        (ReadingKind.NoLoadPull, "no-load pull"),
        (ReadingKind.DriveBeltTension, "drive-belt tension"),
        (ReadingKind.MotorConstant, "motor constant"),
        (ReadingKind.BeltMargin, "margin of the running belt"),
        (ReadingKind.DriveBeltMargin, "margin of the drive belt"),
    ];

    private static readonly Lazy<IReadOnlyList<(string Name, BenchRun Run)>> Usual = new(() =>
        Of(BenchRun.UsualOfEach, BenchRun.UsualSeed)
    );

    internal static IReadOnlyList<(string Name, BenchRun Run)> Runs => Usual.Value;

    internal static IReadOnlyList<(string Name, BenchRun Run)> Of(int eachCause, int firstSeed) =>
        [.. Kinds.Select(k => (k.Name, new BenchRun(k.Thoroughness, k.Error, k.Follow, eachCause, firstSeed)))];

    internal static string Text() => Text(Runs, BenchRun.UsualOfEach);

    internal static string Text(IReadOnlyList<(string Name, BenchRun Run)> runs, int eachCause)
    {
        StringBuilder page = new();
        page.Append(
            """
            # Bench of simulated visits

            Invented machines with one hidden fault each, an invented technician who reads them with noise, works on what
            they show and reads again, and what the review made of the readings. The page is generated from a fixed seed, and
            a test fails when it no longer agrees. See [Causes](causes.md) for how causes are ranked.

            **What flatters.** The bench's machines slip by the same operating point that the review predicts with, and its
            faults come one at a time. Currents, powers, lifts and drags are reckoned apart, and what a cause moves has
            ranges of the bench's own, but its kinds of machine and the chances of the review were set side by side by the
            same hands, on other seeds than these. Real machines will do worse. The last two lines put error into the model.

            **Laws.** An interval can hold what it says only over the machines that it speaks of. What no cause moves and
            nobody reads by itself (stiffness of the belt, friction of a dry drive roller, losses of motor, controller and
            supply) is drawn from the laws that the review states as its priors, so are a healthy motor's constant about its
            plate's and a sound drive belt about what is stated of it, and the noise of every reading from the uncertainty
            that it states; all are common practice, no source. Tension, deck friction, friction of an oily roller and drags
            come from the ranges of the causes instead.

            **The first step** serves the cause where it is the work that mends it, or the look or reading by which it is
            found. A symptom that was seen or heard, and oil on a cloth, have a step of their own, which comes first where
            it is a danger, and the cause's step counts when it follows. Parts in vain are replaced where the cause asks for
            none.

            **Within 95 %**: tension and deck friction as found, where the sheet tells them, inside the interval that it
            states: from and to where it is bent, otherwise 1.96 standard uncertainties to both sides.

            | Technician | Visits | Right cause first | First step serves the cause | Parts in vain | Guards broken | Tension within 95 % | Deck friction within 95 % |
            |---|---|---|---|---|---|---|---|

            """
        );
        foreach ((string name, BenchRun run) in runs)
        {
            page.Append(
                CultureInfo.InvariantCulture,
                $"| {name} | {run.Visits} | {100 * run.RightFirst:0.0} % | {100 * run.RightAction:0.0} % | {100 * run.UnneededParts:0.0} % | {run.GuardsBroken} | {Held(run, ReadingKind.RestTension)} | {Held(run, ReadingKind.DeckFriction)} |\n"
            );
        }

        Intervals(page, runs);
        page.Append(
            """

            ## What was not read cannot be known

            Each cause has readings without which nobody can know it: no look under the hood, no cracked belt. Right cause
            first in the visits that have those of their hidden cause, and in the others:

            | Technician | Visits with them | Right cause first | Visits without | Right cause first |
            |---|---|---|---|---|

            """
        );
        foreach ((string name, BenchRun run) in runs)
        {
            page.Append(
                CultureInfo.InvariantCulture,
                $"| {name} | {run.Told.Visits} | {100 * run.Told.Right:0.0} % | {run.Untold.Visits} | {100 * run.Untold.Right:0.0} % |\n"
            );
        }

        Sureness(page, runs);
        page.Append(
            CultureInfo.InvariantCulture,
            $"\n## Who is taken for whom\n\nThorough visits, {eachCause} of each cause:\n\n"
        );
        page.Append("| Hidden cause | Right | Taken for |\n|---|---|---|\n");
        foreach ((Cause hidden, int right, string others) in runs[0].Run.Rows)
        {
            page.Append(CultureInfo.InvariantCulture, $"| {hidden} | {right} | {others} |\n");
        }

        return page.ToString().ReplaceLineEndings("\n");
    }

    private static void Sureness(StringBuilder page, IReadOnlyList<(string Name, BenchRun Run)> runs)
    {
        page.Append(
            """

            ## How sure the sheet is, and how often it is right

            The chance that the sheet states for its first cause, on the average, beside the share of visits in which that
            cause is the hidden one. Each visit counts as often as the review holds its cause to come up; in the tables
            above every cause counts alike. What is right as often as it is stated cannot be ranked better by the same
            readings; what is right more often is stated with more care than need be.

            | Technician | Stated | Right |
            |---|---|---|

            """
        );
        foreach ((string name, BenchRun run) in runs)
        {
            page.Append(CultureInfo.InvariantCulture, $"| {name} | {Both(run.Calibration)} |\n");
        }

        page.Append(
            """

            All lines without error in the model together, by the chance stated:

            | Stated | Visits | Stated, on the average | Right |
            |---|---|---|---|

            """
        );
        IEnumerable<Calibration> all = runs.Where(r => r.Run.ModelIsRight).Select(r => r.Run.Calibration);
        foreach ((double from, double to) in Bins)
        {
            Calibration some = Calibration.Between(all, from, to);
            page.Append(
                CultureInfo.InvariantCulture,
                $"| {100 * from:0} to {100 * Math.Min(1, to):0} % | {some.Visits} | {Both(some)} |\n"
            );
        }
    }

    private static string Both(Calibration some) =>
        FormattableString.Invariant($"{100 * some.Stated:0.0} % | {100 * some.Right:0.0} %");

    /// <summary>Chances that are looked at together.</summary>
    internal static readonly (double From, double To)[] Bins =
    [
        (0, 0.5),
        (0.5, 0.7),
        (0.7, 0.9),
        (0.9, 0.97),
        (0.97, 1.01),
    ];

    private static void Intervals(StringBuilder page, IReadOnlyList<(string Name, BenchRun Run)> runs)
    {
        page.Append(
            """

            ## How often the intervals hold

            Share of stated 95 % intervals that hold the truth before any work, where the sheet tells the quantity, and
            of how many. Of so many a share of 95 % scatters by 2.2 (100), 1.3 (300) and 0.9 (600) of 100. Stiffness is told by
            lifts at two heights or bolt positions, which nobody makes here. Nothing reads the drive roller's friction by
            itself: a dry roller's prior rules the margin of the running belt, and the friction is told only where a belt
            that slips on it bounds it. Slip that somebody feels on an oily belt top, or with a loose pulley, is no reading
            of it. A load that was read while nobody tested for slip counts as one on a belt that slips as likely as not, and
            a motor that is hot, slow under load or short of brushes as one that may have left its plate. A drive
            belt that looks glazed has a prior of less grip. Where all is drawn from the priors:
            [joint estimate](joint-estimate.md).

            """
        );
        (string Name, BenchRun Run)[] right = [.. runs.Where(static r => r.Run.ModelIsRight)];
        page.Append("\n| Quantity | ").AppendJoin(" | ", right.Select(static r => r.Name)).Append(" |\n|---|");
        page.Insert(page.Length, "---|", right.Length).Append('\n');
        foreach ((ReadingKind kind, string name) in Told)
        {
            page.Append(
                CultureInfo.InvariantCulture,
                $"| {name} | {string.Join(" | ", right.Select(r => Held(r.Run, kind)))} |\n"
            );
        }
    }

    private static string Held(BenchRun run, ReadingKind kind)
    {
        (int told, double share) = run.Coverage(kind);
        if (told == 0)
        {
            return "not told";
        }

        return string.Create(CultureInfo.InvariantCulture, $"{100 * share:0.0} % of {told}");
    }
}
