using System.Globalization;
using System.Reflection;
using System.Text;
using System.Text.RegularExpressions;
using TreadmillMech.Tests.LawChecks;
using TreadmillMech.Tests.Laws;

namespace TreadmillMech.Tests.Docs.Bibliography;

/// <summary>The page of the site that lists every work, what it is used for, and which laws rest on it.</summary>
internal static partial class BibliographyPage
{
    /// <summary>What each law names as its source.</summary>
    internal static IReadOnlyDictionary<string, string> Citations { get; } =
        LawCatalogue.All.ToDictionary(
            law => law.Key,
            law => law.Value.GetCustomAttribute<SourceAttribute>()!.Citation,
            StringComparer.Ordinal
        );

    /// <summary>Where the numbers come from that laws are compared with.</summary>
    internal static IReadOnlyList<string> Checked { get; } = [.. LawCheckTests.All.Select(check => check.Source)];

    /// <summary>The whole page, with line feeds only.</summary>
    internal static string Text()
    {
        StringBuilder page = new();
        page.Append(
            """
            <!-- Generated from the code and its tests; changes by hand are lost. -->

            # Bibliography

            Every work that a law names as its source, that a law was compared with, or that a method rests on: what it is used
            for, the classes of laws that name it, and how many numbers of the [table of laws](laws.md) come from it. Whether a
            number was read in the work, in a copy of its example, or quoted from memory is said there, number by number. Titles of
            works that were not seen may be inexact. What is derived here, rather than taken from a work, is derived in the
            articles.

            """
        );
        Section(page, "Standards, codes and guides", WorkKind.Standard);
        page.Append("\nA result of this library is no statement of conformity with any of them.\n");
        Section(page, "Books", WorkKind.Book);
        Section(page, "Papers and theses", WorkKind.Paper);
        Section(page, "Open data", WorkKind.OpenData);
        return page.ToString().ReplaceLineEndings("\n");
    }

    private static void Section(StringBuilder page, string title, WorkKind kind)
    {
        page.Append(CultureInfo.InvariantCulture, $"\n## {title}\n\n");
        page.Append("| Work | Used for | Laws | Numbers |\n|---|---|---|---|\n");
        foreach (Work work in Works.All.Where(work => work.Kind == kind).OrderBy(Title, StringComparer.Ordinal))
        {
            int numbers = Checked.Count(work.IsNamedIn);
            page.Append(
                CultureInfo.InvariantCulture,
                $"| {work.Reference} | {work.Use} | {Classes(work)} | {(numbers == 0 ? "" : numbers)} |\n"
            );
        }
    }

    // Sorted by the first author's name, not by initials.
    private static string Title(Work work) => Initials().Replace(work.Reference, "").ToUpperInvariant();

    private static string Classes(Work work) =>
        string.Join(
            ", ",
            Citations
                .Where(law => work.IsNamedIn(law.Value))
                .Select(law => law.Key.Split('.')[0])
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal)
                .Select(name => $"[{name}](laws.md#{name.ToLowerInvariant()})")
        );

    [GeneratedRegex(@"^(?:[A-Z][A-Za-z]*\. )+")]
    private static partial Regex Initials();
}
