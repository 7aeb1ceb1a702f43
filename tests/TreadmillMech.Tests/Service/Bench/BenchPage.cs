using System.Globalization;
using System.Text;
using TreadmillMech.Service;

namespace TreadmillMech.Tests.Service.Bench;

/// <summary>The page of the bench, written from its runs.</summary>
internal static class BenchPage
{
    private static readonly (string Name, double Thoroughness, ModelError Error)[] Kinds =
    [
        ("thorough: 97 of 100 usual readings taken", 0.97, ModelError.None),
        ("usual: 80 of 100", 0.8, ModelError.None),
        ("hasty: 50 of 100", 0.5, ModelError.None),
        ("thorough, friction read 25 % low and slip half as large as the model has it", 0.97, new(0.75, 0.5)),
        ("thorough, friction read 25 % high and slip twice as large", 0.97, new(1.25, 2)),
    ];

    private static readonly Lazy<IReadOnlyList<(string Name, BenchRun Run)>> Usual = new(() =>
        Of(BenchRun.UsualOfEach, BenchRun.UsualSeed)
    );

    internal static IReadOnlyList<(string Name, BenchRun Run)> Runs => Usual.Value;

    internal static IReadOnlyList<(string Name, BenchRun Run)> Of(int eachCause, int firstSeed) =>
        [.. Kinds.Select(k => (k.Name, new BenchRun(k.Thoroughness, k.Error, eachCause, firstSeed)))];

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
            faults come one at a time. Currents, powers, lifts and drags are reckoned apart, and the ranges of its machines
            are its own, but its kinds of machine and the chances of the review were set side by side by the same hands, on
            other seeds than these. Real machines will do worse. The last two lines put error into the model.

            Where a symptom was read, its own step comes first, and the cause's step counts when it follows. Tension and deck
            friction count as found, where the sheet tells them, within 1.96 of the uncertainty it states.

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

    private static string Held(BenchRun run, ReadingKind kind)
    {
        (int told, double share) = run.Coverage(kind);
        return string.Create(CultureInfo.InvariantCulture, $"{100 * share:0.0} % of {told}");
    }
}
