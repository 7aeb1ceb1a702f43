using System.Collections.Immutable;
using TreadmillMech.Samples.ServiceVisit.Printing;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Html;

/// <summary>The possible causes as a ranked list, for the technician only.</summary>
internal static class CauseHtml
{
    /// <summary>Nothing where there are no causes to rank.</summary>
    internal static void Write(Markup page, ImmutableArray<RankedCause> causes, string chancesFrom)
    {
        if (causes.IsDefaultOrEmpty)
        {
            return;
        }

        page.Element("h3", CauseText.Heading);
        page.Element("p", $"{CauseText.Caveat} {chancesFrom}", ("class", "quiet"));
        page.Open("ol");
        foreach (RankedCause cause in causes)
        {
            page.Open("li");
            page.Element("b", $"{Words.Of(cause.Cause)} ({CauseText.Percent(cause.Probability)})");
            if (!(cause.For.IsDefaultOrEmpty && cause.Against.IsDefaultOrEmpty))
            {
                page.Open("dl", ("class", "rows"));
                TechnicianPart.Evidence(page, cause.For, cause.Against);
                page.Close();
            }

            page.Close();
        }

        page.Close();
    }
}
