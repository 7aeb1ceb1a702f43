using System.Globalization;
using TreadmillMech.Samples.ServiceVisit.Html;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Charts;

/// <summary>Turns given at this visit, and those that may still be given.</summary>
internal static class BudgetBar
{
    private const double Left = 14;
    private const double Right = Drawing.Width - 14;

    internal static void Write(Markup page, TensionBudget budget)
    {
        double given = budget.TurnsThisVisit;
        double end = given + budget.TurnsLeft;
        string most = $"at most {budget.MostTurns.Value.ToString("0.##", CultureInfo.InvariantCulture)} in one visit";
        Axis axis = Axis.OfNumbers([0, given, end, budget.MostTurns.Value]);
        double Place(double turns) => Left + ((Right - Left) * axis.Share(turns));

        Drawing.Write(
            page,
            "Turns of the take-up bolts: given and left",
            $"{Turns(given)} given at this visit, {Turns(budget.TurnsLeft)} left, limited by {budget.LimitedBy}; {most}.",
            124,
            drawing =>
            {
                drawing.Text("left", Left, 14, $"given {Turns(given)}");
                drawing.Text("right", Right, 14, $"left {Turns(budget.TurnsLeft)}");
                drawing.Box("room", Place(given), 24, Place(end) - Place(given), 28);
                drawing.Box("before", Math.Min(Place(0), Place(given)), 24, Math.Abs(Place(given) - Place(0)), 28);
                drawing.Line("limit", Place(budget.MostTurns.Value), 20, Place(budget.MostTurns.Value), 58);
                foreach ((double at, string label) in axis.Ticks)
                {
                    drawing.Line("tick", Place(at), 58, Place(at), 62);
                    drawing.Text("middle", Place(at), 76, label);
                }

                drawing.Line("frame", Left, 58, Right, 58);
                drawing.Text("middle axis", (Left + Right) / 2, 94, $"turns on both bolts; {most}");
                drawing.Text("middle small", (Left + Right) / 2, 112, $"limited by {budget.LimitedBy}");
            }
        );
    }

    private static string Turns(double turns) => $"{new Figure("", turns, "turn")}";
}
