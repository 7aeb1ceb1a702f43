using System.Collections.Immutable;
using System.Globalization;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Printing;

/// <summary>The possible causes, the likeliest first, each with what speaks for and against it.</summary>
internal static class CauseText
{
    internal const string Heading = "Causes";

    /// <summary>What the numbers are, and what they are not.</summary>
    internal const string Caveat =
        "How well each explains the readings, taken that one of them is behind all. A help in choosing what to look at "
        + "next, not a proof.";

    private const int Indent = 6;

    /// <summary>Nothing where there are no causes to rank.</summary>
    internal static void Write(Page page, ImmutableArray<RankedCause> causes, string chancesFrom)
    {
        if (causes.IsDefaultOrEmpty)
        {
            return;
        }

        page.Heading(Heading);
        page.Paragraph($"{Caveat} {chancesFrom}", 2);
        foreach (RankedCause cause in causes)
        {
            page.Paragraph(Words.Of(cause.Cause), 2, $"{Percent(cause.Probability), 5}  ");
            foreach (string evidence in cause.For)
            {
                page.Paragraph(evidence, Indent, "For:     ");
            }

            foreach (string evidence in cause.Against)
            {
                page.Paragraph(evidence, Indent, "Against: ");
            }
        }
    }

    /// <summary>Whole per cent: the model behind the ranking does not carry more.</summary>
    internal static string Percent(double probability) =>
        probability is > 0 and < 0.01
            ? "< 1 %"
            : Math.Round(100 * probability).ToString("0", CultureInfo.InvariantCulture) + " %";
}
