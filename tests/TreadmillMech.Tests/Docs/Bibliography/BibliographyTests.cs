using System.Text.RegularExpressions;
using TreadmillMech.Tests.Laws;

namespace TreadmillMech.Tests.Docs.Bibliography;

/// <summary>The bibliography has every work that a law names, and no work that nothing names.</summary>
public sealed partial class BibliographyTests
{
    private const string Renew =
        "docs/articles/bibliography.md is not what the code and its tests say. Renew it: "
        + "dotnet test --project tests/TreadmillMech.Tests --filter-method '*WritesTheBibliography' --explicit on";

    // Laws of nature and methods are called after people; that alone names no work. BW is a body weight.
    private static readonly HashSet<string> CalledAfter =
    [
        "Alexander-Jayes",
        "BW",
        "Coulomb",
        "Euler",
        "Eytelwein",
        "Froude",
        "Hooke's",
        "Kelvin",
        "Kelvin-Voigt",
        "Mises",
        "Thevenin",
        "Voigt",
        "Drillis",
        "Contini",
    ];

    // Methods that no law stands for; the pages on studies, on the machine in time and on the joint estimate cite them, or a type.
    private static readonly HashSet<string> OfMethods =
    [
        "JCGM 101",
        "xoshiro",
        "Hairer",
        "Minka",
        "Soderlind",
        "Particle Data Group",
    ];

    private static string Page => Path.Combine(SourceTree.Root(), "docs", "articles", "bibliography.md");

    public static TheoryData<string> Laws => [.. BibliographyPage.Citations.Keys.Order(StringComparer.Ordinal)];

    public static TheoryData<Work> Listed => [.. Works.All];

    [Fact]
    public void ThePageIsUpToDate() =>
        Assert.True(
            File.Exists(Page) && File.ReadAllText(Page).ReplaceLineEndings("\n") == BibliographyPage.Text(),
            Renew
        );

    [Fact(Explicit = true)]
    public void WritesTheBibliography() => File.WriteAllText(Page, BibliographyPage.Text());

    [Theory]
    [MemberData(nameof(Laws))]
    public void EveryNameAndYearInACitationIsThatOfAListedWork(string law) =>
        Assert.Empty(Unlisted(BibliographyPage.Citations[law]));

    [Theory]
    [InlineData("Newton and Raphson, Opticks, 1704", "Raphson Opticks 1704")]
    [InlineData("Archard 1954, Contact", "1954")]
    [InlineData("Derived from Hooke's law, docs/articles/Gait.md; Statics of a lever", "")]
    public void WhatIsNotListedIsFound(string citation, string unlisted) =>
        Assert.Equal(unlisted, string.Join(' ', Unlisted(citation)));

    [Theory]
    [MemberData(nameof(Listed), DisableDiscoveryEnumeration = true)]
    public void EveryListedWorkIsNamedBySomething(Work work)
    {
        ArgumentNullException.ThrowIfNull(work);
        Assert.True(
            OfMethods.Contains(work.Mark)
                || BibliographyPage.Citations.Values.Concat(BibliographyPage.Checked).Any(work.IsNamedIn)
                || LawChecks.GaitFit.Rows.Any(row => work.IsNamedIn(row.Source)),
            $"{work.Mark} is named by no law and by no check"
        );
        Assert.True(
            work.IsNamedIn(work.Reference) || work.Reference.Contains(work.Mark.Split(' ')[0], StringComparison.Ordinal)
        );
    }

    /// <summary>Names and years of a citation that no listed work has; the first word of each clause begins with a capital anyway.</summary>
    private static IEnumerable<string> Unlisted(string citation)
    {
        string known = string.Join(
            ' ',
            Works.All.Where(work => work.IsNamedIn(citation)).Select(work => work.Reference)
        );
        return Clause()
            .Split(Article().Replace(citation, ""))
            .SelectMany(clause =>
                Word().Matches(clause.Trim()).Where(word => word.Index > 0 || char.IsDigit(word.Value[0]))
            )
            .Select(word => word.Value)
            .Where(word => !CalledAfter.Contains(word) && !known.Contains(word, StringComparison.Ordinal))
            .Where(word => !LawCatalogue.All.Keys.Any(law => law.EndsWith("." + word, StringComparison.Ordinal)));
    }

    [GeneratedRegex(@"docs/articles/[\w-]+\.md")]
    private static partial Regex Article();

    [GeneratedRegex("[;:] ")]
    private static partial Regex Clause();

    // Two letters at least: single capitals are symbols, tables and shapes.
    [GeneratedRegex(@"\b(?:[A-Z][A-Za-z][\w'-]*|(?:1[6-9]|20)\d\d)\b")]
    private static partial Regex Word();
}
