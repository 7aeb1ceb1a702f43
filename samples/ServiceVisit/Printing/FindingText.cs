using System.Collections.Immutable;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Printing;

/// <summary>The reasons: each finding with its number, its limit, and what speaks for and against it.</summary>
internal static class FindingText
{
    private const int Indent = 4;

    internal static void Write(Page page, ImmutableArray<Finding> findings)
    {
        page.Heading("Why");
        foreach (Finding finding in findings)
        {
            page.Paragraph(finding.Statement, 2, $"{Words.Of(finding.Subject)} ({Words.Of(finding.Severity)}): ");
            if (finding.Number is { } number)
            {
                page.Paragraph($"{number.Name} {number}", Indent, "Number:  ");
            }

            foreach (Threshold limit in finding.Limits)
            {
                page.Paragraph($"{limit.Name} {limit}", Indent, "Limit:   ");
            }

            foreach (string evidence in finding.For)
            {
                page.Paragraph(evidence, Indent, "For:     ");
            }

            foreach (string evidence in finding.Against)
            {
                page.Paragraph(evidence, Indent, "Against: ");
            }
        }

        if (findings.IsEmpty)
        {
            page.Paragraph("Nothing was found that needs a reason.", 2);
        }
    }
}
