using System.Collections.Immutable;
using TreadmillMech.Samples.ServiceVisit.Html;

namespace TreadmillMech.Samples.ServiceVisit.Charts;

/// <summary>One thing before and after: each pair has its own scale, for newtons and shares share none.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Before">The value before.</param>
/// <param name="BeforeText">The value before as text.</param>
/// <param name="After">The value after.</param>
/// <param name="AfterText">The value after as text.</param>
/// <param name="Limit">A limit to hold both against; null where there is none.</param>
/// <param name="LimitText">The limit as text.</param>
internal sealed record Pair(
    string Name,
    double Before,
    string BeforeText,
    double After,
    string AfterText,
    double? Limit = null,
    string LimitText = ""
);

/// <summary>Draws pairs of bars, before over after.</summary>
internal static class PairBars
{
    private const double Left = 78;
    private const double Right = Drawing.Width - 126;
    private const double Row = 74;

    internal static void Write(Markup page, string title, ImmutableArray<Pair> pairs, string before, string after)
    {
        string told = string.Join(
            " ",
            pairs.Select(p =>
                $"{p.Name}: {before} {p.BeforeText}, {after} {p.AfterText}{(p.Limit is null ? "" : $", {p.LimitText}")}."
            )
        );
        Drawing.Write(
            page,
            title,
            told,
            (Row * pairs.Length) + 4,
            drawing =>
            {
                for (int i = 0; i < pairs.Length; i++)
                {
                    Pair(drawing, pairs[i], Row * i, before, after);
                }
            }
        );
    }

    private static void Pair(Drawing drawing, Pair pair, double top, string before, string after)
    {
        double least = Math.Min(0, Math.Min(pair.Before, pair.After));
        double most = Math.Max(0, Math.Max(Math.Max(pair.Before, pair.After), pair.Limit ?? 0));
        double Place(double value) => most > least ? Left + ((Right - Left) * (value - least) / (most - least)) : Left;

        drawing.Text("left strong", 2, top + 14, pair.Name);
        Bar(drawing, "before", top + 22, Place(0), Place(pair.Before), before, pair.BeforeText);
        Bar(drawing, "after", top + 41, Place(0), Place(pair.After), after, pair.AfterText);
        if (pair.Limit is { } limit && limit >= least)
        {
            drawing.Line("limit", Place(limit), top + 20, Place(limit), top + 58);
            bool room = Place(limit) > 120;
            drawing.Text(room ? "right small" : "left small", Place(limit), top + 69, pair.LimitText);
        }
    }

    private static void Bar(
        Drawing drawing,
        string look,
        double top,
        double zero,
        double end,
        string name,
        string value
    )
    {
        drawing.Text("right", Left - 6, top + 12, name);
        drawing.Box(look, Math.Min(zero, end), top, Math.Max(1, Math.Abs(end - zero)), 15);
        drawing.Text("left", Right + 8, top + 12, value);
    }
}
